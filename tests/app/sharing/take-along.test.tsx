import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { provideGardens } from "../../../app/keeping/page-gardens.ts";
import type { Gardens } from "../../../app/keeping/types.ts";
import { LinkNotice } from "../../../app/sharing/LinkNotice.tsx";
import { dismissLinkNotice, openLink, type Page } from "../../../app/sharing/open-link.ts";
import { linkTo, textInLink } from "../../../app/sharing/share-link.ts";
import { TakeAlongDialog } from "../../../app/sharing/TakeAlongDialog.tsx";
import { useEditor } from "../../../app/store/use-editor.ts";
import { EXAMPLES, emptyGarden, GardenFileError, readGardenText } from "../../../src/index.ts";
import { onTheBoard } from "../ledger-scene.ts";

const example = EXAMPLES[0].garden;

/** As large as a plan gets on the paper it is drawn for: 38 by 24.9 m at 1 : 100. */
const LARGEST = [
  [0, 0],
  [38_000, 0],
  [38_000, 24_900],
  [0, 24_900],
] as const;

/** Gardens that open files as the page's do, without a shelf to keep them on. */
function gardensWithoutShelf(): Gardens {
  const never = () => Promise.reject(new Error("not asked for here"));
  return {
    list: never,
    open: never,
    startNew: never,
    startExample: never,
    duplicate: never,
    remove: never,
    rescue: never,
    earlier: never,
    goBackTo: never,
    takeOver: never,
    saveToFile: async () => undefined,
    async openFromFile(file) {
      try {
        const garden = readGardenText(await file.text());
        useEditor.getState().open(garden);
        return { ok: true, garden };
      } catch (error) {
        if (error instanceof GardenFileError) return { ok: false, reason: error.message };
        throw error;
      }
    },
  };
}

/** A page at an address, which remembers what the address is changed to. */
function pageAt(link: string) {
  const location = new URL(link);
  const shown: string[] = [];
  const history: Page["history"] = {
    replaceState: (_state, _title, address) => {
      shown.push(String(address));
    },
  };
  return { page: { location, history } satisfies Page, shown };
}

afterEach(cleanup);

describe("a link to the garden", () => {
  it("is made of the garden on the board and comes back as it", async () => {
    onTheBoard(example);
    render(<TakeAlongDialog />);
    await userEvent.click(screen.getByRole("button", { name: "Make a link" }));
    const field = await screen.findByLabelText<HTMLInputElement>(/the link/i);
    const { hash } = new URL(field.value);
    expect(readGardenText(await textInLink(hash))).toEqual(example);
  });
});

describe("a file of the plan", () => {
  const saved: { name: string; blob: Blob }[] = [];
  const click = HTMLAnchorElement.prototype.click;

  beforeEach(() => {
    saved.length = 0;
    const blobs = new Map<string, Blob>();
    vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
      if (!(blob instanceof Blob)) throw new TypeError("not a file");
      blobs.set(`blob:${blobs.size}`, blob);
      return `blob:${blobs.size - 1}`;
    });
    HTMLAnchorElement.prototype.click = function keep(this: HTMLAnchorElement) {
      saved.push({ name: this.download, blob: blobs.get(this.href) ?? new Blob() });
    };
  });
  afterEach(() => {
    HTMLAnchorElement.prototype.click = click;
    vi.restoreAllMocks();
  });

  it("is a picture true to scale, under the garden's name", async () => {
    onTheBoard(example);
    render(<TakeAlongDialog />);
    await userEvent.click(screen.getByRole("button", { name: "Save as Picture (SVG)" }));
    await waitFor(() => expect(saved).toHaveLength(1));
    expect(saved[0]?.name).toBe("heron-lane-back-yard.svg");
    expect(saved[0]?.blob.type).toBe("image/svg+xml");
    const svg = new DOMParser().parseFromString((await saved[0]?.blob.text()) ?? "", "image/svg+xml");
    expect(svg.documentElement.getAttribute("width")).toMatch(/^[\d.]+mm$/);
    expect(svg.querySelector("title")?.textContent).toBe(`Plan of ${example.name}`);
  });

  it("that would have more dots than a browser draws is refused in a sentence, and nothing is saved", async () => {
    onTheBoard({ ...emptyGarden("metric"), yard: LARGEST });
    render(<TakeAlongDialog />);
    await userEvent.selectOptions(screen.getByLabelText("Dots to the inch"), "300 dots to the inch");
    await userEvent.click(screen.getByRole("button", { name: "Save as Picture (PNG)" }));
    expect((await screen.findByRole("alert")).textContent).toMatch(/more than every browser can draw/);
    expect(saved).toEqual([]);
  });
});

describe("a page opened with a link", () => {
  beforeEach(() => {
    provideGardens(gardensWithoutShelf());
    onTheBoard(emptyGarden("metric"));
    dismissLinkNotice();
  });

  it("puts the garden on the board, says so, and clears the address", async () => {
    const { page, shown } = pageAt(await linkTo(example, "https://example.org/plans/?a=1"));
    await openLink(page);
    expect(useEditor.getState().garden).toEqual(example);
    expect(shown).toEqual(["/plans/?a=1"]);
    render(<LinkNotice />);
    expect(screen.getByRole("status").textContent).toContain("came with the link");
    await userEvent.click(screen.getByRole("button"));
    expect(screen.queryByRole("status")).toBeNull();
  });

  it("says why a broken link cannot be read, and leaves the board as it is", async () => {
    const link = await linkTo(example, "https://example.org/");
    const { page } = pageAt(link.slice(0, link.length / 2));
    await openLink(page);
    expect(useEditor.getState().garden).toEqual(emptyGarden("metric"));
    render(<LinkNotice />);
    expect(screen.getByRole("alert").textContent).toContain("cut short or changed");
  });

  it("does nothing about any other address", async () => {
    const { page, shown } = pageAt("https://example.org/#card");
    await openLink(page);
    expect(shown).toEqual([]);
    expect(useEditor.getState().garden).toEqual(emptyGarden("metric"));
  });
});
