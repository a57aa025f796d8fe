import { act, cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { setSingleKeys } from "../../app/device/single-keys.ts";
import { Dialogs } from "../../app/dialogs/Dialogs.tsx";
import { closeDialog, useDialog } from "../../app/dialogs/open-dialog.ts";
import { KeepingNotices } from "../../app/keeping/KeepingNotices.tsx";
import { provideGardens } from "../../app/keeping/page-gardens.ts";
import type { Gardens, KeptGarden } from "../../app/keeping/types.ts";
import { useKeeping } from "../../app/keeping/use-keeping.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { useShortcuts } from "../../app/topbar/shortcuts.ts";
import { TopBar } from "../../app/topbar/TopBar.tsx";
import { Welcome } from "../../app/topbar/Welcome.tsx";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { foundNow, itemNow, onTheBoard, snagOf } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads", x: 300, y: 500 });
const garden = () => useEditor.getState().garden;
const button = (name: string | RegExp) => screen.getByRole("button", { name });
const move = () =>
  act(() => useEditor.getState().commit("Move Salads", [{ op: "move", id: salads.id, by: [70, 110] }]));

beforeEach(() => onTheBoard(gardenOf(salads)));
afterEach(() => {
  cleanup();
  closeDialog();
});

describe("the top bar", () => {
  it("renames the garden where its name stands, on Enter; Escape and an empty name keep the old one", async () => {
    render(<TopBar />);
    const name = screen.getByLabelText<HTMLInputElement>("Name of the garden");
    await userEvent.clear(name);
    await userEvent.type(name, "Wren Hill{Enter}");
    expect(garden().name).toBe("Wren Hill");
    await userEvent.clear(name);
    await userEvent.type(name, "Other{Escape}");
    expect(name.value).toBe("Wren Hill");
    await userEvent.clear(name);
    await userEvent.tab();
    expect(garden().name).toBe("Wren Hill");
    expect(useEditor.getState().past).toHaveLength(1);
  });

  it("takes one step back and forth, and its title says which", async () => {
    render(<TopBar />);
    move();
    expect(button("Undo").title).toMatch(/^Undo: Move Salads/);
    await userEvent.click(button("Undo"));
    expect(itemNow(salads.id)).toBe(salads);
    expect(button("Undo").getAttribute("aria-disabled")).toBe("true");
    expect(button("Redo").title).toMatch(/^Redo: Move Salads/);
    await userEvent.click(button("Redo"));
    expect(itemNow(salads.id).at).not.toEqual(salads.at);
  });

  it("shows lengths in the other units as a step of history", async () => {
    render(<TopBar />);
    expect(button("ft-in").getAttribute("aria-pressed")).toBe("true");
    await userEvent.click(button("metric"));
    expect(garden().units).toBe("metric");
    expect(button("metric").getAttribute("aria-pressed")).toBe("true");
  });

  it("goes from scale to scale of the rule and says which one the plan is drawn at", async () => {
    useEditor.setState({ view: { x: 0, y: 0, scale: 96 / 25.4 / 53 } });
    render(<TopBar />);
    expect(screen.getByText("1 : 53")).toBeTruthy();
    await userEvent.click(button("Draw larger"));
    expect(screen.getByText("¼″ = 1′")).toBeTruthy();
    await userEvent.click(button("Draw smaller"));
    expect(screen.getByText("3/16″ = 1′")).toBeTruthy();
  });

  it("says whether what was done is kept, and if not, why", () => {
    render(
      <>
        <TopBar />
        <KeepingNotices />
      </>,
    );
    act(() => useKeeping.setState({ gardenId: "g", keeping: { state: "kept", at: 1 } }));
    expect(screen.getByText("Saved")).toBeTruthy();
    act(() => useKeeping.setState({ keeping: { state: "not-kept", reason: "The disk is full." } }));
    expect(screen.getByRole("alert").textContent).toBe("Not saved. The disk is full.");
    expect(button("Save to a file")).toBeTruthy();
    act(() => useKeeping.setState({ gardenId: null, keeping: { state: "kept", at: null } }));
    expect(screen.getByText("Example")).toBeTruthy();
  });
});

function Page() {
  useShortcuts();
  return (
    <>
      <input aria-label="Any field" />
      <Dialogs />
    </>
  );
}

describe("the page's keys", () => {
  afterEach(() => setSingleKeys(true));

  it("mean nothing alone where that is turned off, and undo all the same", async () => {
    render(<Page />);
    setSingleKeys(false);
    move();
    await userEvent.keyboard("?");
    expect(useDialog.getState().open).toBeNull();
    await userEvent.keyboard("{Control>}z{/Control}");
    expect(itemNow(salads.id)).toBe(salads);
    setSingleKeys(true);
    await userEvent.keyboard("?");
    expect(useDialog.getState().open).toBe("help");
  });

  it("undo and redo by the platform's keys", async () => {
    render(<Page />);
    move();
    await userEvent.keyboard("{Control>}z{/Control}");
    expect(itemNow(salads.id)).toBe(salads);
    await userEvent.keyboard("{Control>}{Shift>}z{/Shift}{/Control}");
    expect(itemNow(salads.id)).not.toBe(salads);
    await userEvent.keyboard("{Meta>}z{/Meta}");
    expect(itemNow(salads.id)).toBe(salads);
    await userEvent.keyboard("{Control>}y{/Control}");
    expect(itemNow(salads.id)).not.toBe(salads);
  });

  it("are text while somebody types", async () => {
    render(<Page />);
    move();
    const field = screen.getByLabelText("Any field");
    await userEvent.type(field, "0+?");
    await userEvent.keyboard("{Control>}z{/Control}");
    expect(useDialog.getState().open).toBeNull();
    expect(itemNow(salads.id)).not.toBe(salads);
  });

  it("zoom, and open the help with every key in it", async () => {
    render(<Page />);
    const before = useEditor.getState().view.scale;
    await userEvent.keyboard("+");
    expect(useEditor.getState().view.scale).toBeGreaterThan(before);
    await userEvent.keyboard("?");
    expect(await screen.findByRole("heading", { name: "How it works" })).toBeTruthy();
    for (const keys of ["Delete", "Shift + arrows", "Ctrl+Z", "?"]) {
      expect(screen.getByText(keys, { selector: "dt" })).toBeTruthy();
    }
    await userEvent.click(button("Close"));
    expect(screen.queryByRole("heading", { name: "How it works" })).toBeNull();
  });
});

describe("the Gardens dialog", () => {
  const kept: KeptGarden[] = [
    { id: "one", name: "Wren Hill", changed: 1_790_000_000_000, beds: 7, problem: null },
    { id: "two", name: "Old file", changed: 1_780_000_000_000, beds: 0, problem: "it is not JSON" },
  ];
  const ok = { ok: true as const, garden: gardenOf() };

  function gardens(changes: Partial<Gardens> = {}): Gardens {
    return {
      list: vi.fn(async () => kept),
      open: vi.fn(async () => ok),
      startNew: vi.fn(async () => ok),
      startExample: vi.fn(async () => ok),
      duplicate: vi.fn(async () => ok),
      remove: vi.fn(async () => ({ ok: true as const, garden: null })),
      saveToFile: vi.fn(),
      rescue: vi.fn(async () => ({ ok: true as const, garden: null })),
      openFromFile: vi.fn(async () => ok),
      earlier: vi.fn(async () => []),
      goBackTo: vi.fn(async () => ok),
      takeOver: vi.fn(async () => undefined),
      ...changes,
    };
  }

  async function opened(made: Gardens) {
    provideGardens(made);
    render(
      <>
        <TopBar />
        <Dialogs />
      </>,
    );
    await userEvent.click(button("Gardens"));
    await screen.findByText("Wren Hill");
  }

  it("opens a kept garden and closes", async () => {
    const made = gardens();
    await opened(made);
    await userEvent.click(button("Open Wren Hill"));
    expect(made.open).toHaveBeenCalledWith("one");
    expect(useDialog.getState().open).toBeNull();
  });

  it("starts a yard in either units, an example, a copy", async () => {
    for (const [name, call] of [
      ["New yard, feet and inches", (made: Gardens) => expect(made.startNew).toHaveBeenCalledWith("us")],
      ["New yard, metric", (made: Gardens) => expect(made.startNew).toHaveBeenCalledWith("metric")],
      [
        /^Worked example: Heron/,
        (made: Gardens) => expect(made.startExample).toHaveBeenCalledWith("northern-yard"),
      ],
      ["Duplicate it", (made: Gardens) => expect(made.duplicate).toHaveBeenCalledTimes(1)],
    ] as const) {
      const made = gardens();
      await opened(made);
      await userEvent.click(button(name));
      call(made);
      cleanup();
    }
  });

  it("asks once more before it removes, and stays open", async () => {
    const made = gardens();
    await opened(made);
    await userEvent.click(button("Remove Wren Hill"));
    expect(made.remove).not.toHaveBeenCalled();
    await userEvent.click(button("Remove for good"));
    expect(made.remove).toHaveBeenCalledWith("one");
    expect(useDialog.getState().open).toBe("gardens");
    expect(made.list).toHaveBeenCalledTimes(2);
  });

  it("offers a garden that could not be read as a file, not to be opened", async () => {
    const made = gardens();
    await opened(made);
    expect(screen.queryByRole("button", { name: "Open Old file" })).toBeNull();
    await userEvent.click(button("Save as file: Old file"));
    expect(made.rescue).toHaveBeenCalledWith("two");
  });

  it("tells why a file was refused, and stays open", async () => {
    const reason = "holiday.json was not opened: it is not a Bedwright garden.";
    const made = gardens({ openFromFile: vi.fn(async () => ({ ok: false as const, reason })) });
    await opened(made);
    const file = new File(["{}"], "holiday.json", { type: "application/json" });
    await userEvent.upload(screen.getByLabelText("Open from a file"), file);
    expect(made.openFromFile).toHaveBeenCalledWith(file);
    expect(screen.getByRole("alert").textContent).toBe(reason);
    expect(useDialog.getState().open).toBe("gardens");
  });

  it("saves the garden on the board to a file", async () => {
    const made = gardens();
    await opened(made);
    await userEvent.click(button("Save to a file"));
    expect(made.saveToFile).toHaveBeenCalledTimes(1);
  });
});

describe("the welcome", () => {
  const wide = snagOf(salads);
  beforeEach(() => onTheBoard(gardenOf(salads), { snags: [wide] }));
  afterEach(() => localStorage.clear());

  it("is one sentence, and once dismissed does not come again", async () => {
    const { unmount } = render(<Welcome />);
    expect(screen.getByText(/Drag the beds until nothing is left to fix/)).toBeTruthy();
    await userEvent.click(button("Got it: dismiss this hint"));
    expect(screen.queryByText(/Drag the beds/)).toBeNull();
    unmount();
    render(<Welcome />);
    expect(screen.queryByText(/Drag the beds/)).toBeNull();
  });

  it("keeps its place once there is nothing to fix, and says what comes next", () => {
    render(<Welcome />);
    expect(screen.getByText(/Drag the beds/)).toBeTruthy();
    act(() => foundNow({ snags: [] }));
    expect(screen.queryByText(/Drag the beds/)).toBeNull();
    expect(screen.getByText(/Nothing is left to fix: press Build sheet/)).toBeTruthy();
  });

  it("asks for a bed where there is none", () => {
    onTheBoard(gardenOf());
    render(<Welcome />);
    expect(screen.getByText(/Drag a bed out of the barrow/)).toBeTruthy();
  });
});
