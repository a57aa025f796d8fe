import { describe, expect, it } from "vitest";
import {
  holdsGarden,
  LONGEST_LINK,
  linkTo,
  ShareLinkError,
  textInLink,
} from "../../../app/sharing/share-link.ts";
import { EXAMPLES, emptyGarden, type Garden, readGardenText } from "../../../src/index.ts";
import { fullGarden } from "../../helpers/full-garden.ts";
import { bed } from "../../helpers/garden-of.ts";

const PAGE = "https://example.org/bedwright/";
const hashOf = (link: string) => link.slice(link.indexOf("#"));

describe("a garden in a link", () => {
  it.each<[string, Garden]>([
    ["an empty yard", emptyGarden("us")],
    ["one of everything", fullGarden("metric")],
    ...EXAMPLES.map(({ id, garden }): [string, Garden] => [id, garden]),
  ])("comes back whole, but for a picture beneath the plan: %s", async (_name, garden) => {
    const link = await linkTo(garden, PAGE);
    expect(link.startsWith(`${PAGE}#`)).toBe(true);
    expect(holdsGarden(hashOf(link))).toBe(true);
    // Letters, digits, dashes and underscores: nothing that programs break links at.
    expect(hashOf(link)).toMatch(/^#garden=[\w-]+$/);
    expect(readGardenText(await textInLink(hashOf(link)))).toEqual({ ...garden, underlay: null });
  });

  it("too large for a link says so, and what to do", async () => {
    let seed = 1;
    const chance = () => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed / 2_147_483_647;
    };
    const items = Array.from({ length: 400 }, (_, i) =>
      bed(`bed-${i}`, {
        x: chance() * 1e5,
        y: chance() * 1e5,
        w: 900 + chance() * 300,
        h: 2000 + chance() * 400,
      }),
    );
    const refused = linkTo({ ...emptyGarden("us"), items }, PAGE);
    await expect(refused).rejects.toThrow(ShareLinkError);
    await expect(refused).rejects.toThrow(/too large for a link.*Save it to a file/s);
  });

  it("leaves out the picture beneath the plan, which has no room in it", async () => {
    const underlay = {
      picture: "d".repeat(64),
      pixels: [640, 480] as const,
      at: [1000, 2000] as const,
      turn: 0,
      mmPerPixel: 5,
      opacity: 0.5,
      locked: true,
      data: null,
    };
    const link = await linkTo({ ...emptyGarden("us"), underlay }, PAGE);
    expect(readGardenText(await textInLink(hashOf(link)))).toEqual(emptyGarden("us"));
  });

  it("cut short, changed or empty is refused in one sentence", async () => {
    const hash = hashOf(await linkTo(EXAMPLES[0].garden, PAGE));
    for (const bad of [
      hash.slice(0, -200),
      `${hash.slice(0, 300)}!${hash.slice(301)}`,
      `${hash.slice(0, 200)}AAAAAAAA${hash.slice(208)}`,
      "#garden=",
      `#garden=${"A".repeat(LONGEST_LINK + 1)}`,
    ]) {
      await expect(textInLink(bad), bad.slice(0, 40)).rejects.toThrow(ShareLinkError);
    }
  });

  it("that unpacks to more than any garden is stopped before it fills the memory", async () => {
    const packer = new CompressionStream("deflate-raw");
    const writer = packer.writable.getWriter();
    const written = writer.write(new Uint8Array(9_000_000)).then(() => writer.close());
    const packed = new Uint8Array(await new Response(packer.readable).arrayBuffer());
    await written;
    const code = btoa(String.fromCharCode(...packed))
      .replaceAll("+", "-")
      .replaceAll("/", "_")
      .replace(/=+$/, "");
    expect(code.length).toBeLessThan(LONGEST_LINK);
    await expect(textInLink(`#garden=${code}`)).rejects.toThrow(ShareLinkError);
  });
});
