import { deflateRawSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { createBoard, unkeptGarden } from "../../../app/keeping/board.ts";
import { createGardens } from "../../../app/keeping/gardens.ts";
import { createKeeper } from "../../../app/keeping/keeper.ts";
import { provideGardens } from "../../../app/keeping/page-gardens.ts";
import { ALONE } from "../../../app/keeping/tabs.ts";
import { dismissLinkNotice, openLink, useLinkNotice } from "../../../app/sharing/open-link.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { emptyGarden, type Garden, writeGarden } from "../../../src/index.ts";
import { fullGarden } from "../../helpers/full-garden.ts";
import { mutated } from "../../helpers/mutations.ts";
import { seeded } from "../../helpers/scenes.ts";
import { deepFrozen } from "../../helpers/test-op.ts";
import { createMapShelf } from "../keeping/map-shelf.ts";

const LINKS = 6000;
const HANG = 1000;

const packed = (text: string | Uint8Array): string => deflateRawSync(text).toString("base64url");

/** What unpacks to far more than it is: a few kilobytes that would fill the memory. */
const bombs = (): readonly string[] =>
  ["[", " ", '{"a":', "0,", "\u0000"].map((letters) =>
    packed(letters.repeat(Math.ceil(9_000_000 / letters.length))),
  );

/** The packed code itself, broken as a mail program or a tired hand breaks it. */
function brokenCode(code: string, chance: () => number): string {
  const at = Math.floor(chance() * code.length);
  const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  switch (Math.floor(chance() * 7)) {
    case 0:
      return code.slice(0, at);
    case 1:
      return code.slice(0, at) + letters[Math.floor(chance() * letters.length)] + code.slice(at + 1);
    case 2:
      return code.slice(0, at) + code.slice(at + 1 + Math.floor(chance() * 20));
    case 3:
      return code + code.slice(at);
    case 4:
      return (
        code.slice(0, at) +
        ["=", "%3D", " ", "\n", "#", "é", "\u202E"][Math.floor(chance() * 7)] +
        code.slice(at)
      );
    case 5: {
      const bytes = Buffer.from(code, "base64url");
      const place = Math.floor(chance() * bytes.length);
      bytes[place] = (bytes[place] ?? 0) ^ (1 << Math.floor(chance() * 8));
      return bytes.toString("base64url");
    }
    default:
      return code.toUpperCase();
  }
}

describe(`${LINKS} links with something wrong`, () => {
  const editor = createEditor(emptyGarden("metric"));
  const shelf = createMapShelf();
  const outcomes = { opened: 0, refused: 0, slowest: 0 };
  const wrong: string[] = [];

  beforeAll(async () => {
    let ids = 0;
    const world = { now: () => 1_700_000_000_000, newId: () => `new-${++ids}` };
    const keeper = createKeeper(editor, shelf, world);
    const board = createBoard(editor, shelf, keeper, () => ALONE, world);
    provideGardens(createGardens(editor, shelf, keeper, board, world.newId));
    const mine: Garden = deepFrozen({ ...emptyGarden("metric"), name: "Mine" });
    await board.lay(unkeptGarden(mine, "mine"));

    const full = fullGarden("us");
    const gardens = full.items.map((item): Garden => ({ ...emptyGarden("us"), items: [item] }));
    const texts = gardens.map((garden) => JSON.stringify(JSON.parse(writeGarden(garden))));
    const explosive = bombs();

    for (let n = 0; n < LINKS; n++) {
      const chance = seeded(n + 90_001);
      const text = texts[n % texts.length]!;
      const kind = chance();
      const code =
        n % 200 === 0
          ? explosive[(n / 200) % explosive.length]!
          : kind < 0.5
            ? packed(mutated(text, chance))
            : kind < 0.55
              ? packed(Buffer.from(mutated(text, chance), "latin1"))
              : brokenCode(packed(text), chance);
      const before = editor.getState().garden;
      dismissLinkNotice();
      const start = performance.now();
      try {
        await openLink({
          location: { hash: `#garden=${code}`, pathname: "/", search: "" },
          history: { replaceState: () => undefined },
        });
      } catch (cause) {
        throw new Error(`link ${n}`, { cause });
      }
      outcomes.slowest = Math.max(outcomes.slowest, performance.now() - start);

      const notice = useLinkNotice.getState();
      const { garden } = editor.getState();
      if (!notice.failed) {
        outcomes.opened++;
        if (garden === before) wrong.push(`${n}: was said to be open, and was not`);
        // Back to the garden that is to stay as it is.
        await board.lay(unkeptGarden(mine, "mine"));
        shelf.gardens.clear();
        continue;
      }
      outcomes.refused++;
      if (garden !== mine) wrong.push(`${n}: was refused, and the board changed`);
      if (!/^The garden in (this|the) link .{20,}\.$/su.test(notice.text ?? ""))
        wrong.push(`${n}: ${notice.text}`);
    }
  }, 60_000);

  it("are each opened or refused in a sentence, and the garden on the board stays where they are refused", () => {
    expect(wrong).toEqual([]);
    expect(outcomes.opened + outcomes.refused).toBe(LINKS);
    expect(outcomes.opened).toBeGreaterThan(LINKS / 200);
    expect(outcomes.refused).toBeGreaterThan(LINKS / 2);
  });

  it("hang nobody up, not even those that unpack to more than any garden", () => {
    expect(outcomes.slowest).toBeLessThan(HANG);
  });
});
