import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openDialog, useDialog } from "../../app/dialogs/open-dialog.ts";
import { OutlineDialog } from "../../app/measuring/OutlineDialog.tsx";
import { TapeDialog } from "../../app/measuring/TapeDialog.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { emptyGarden, itemId, newItem } from "../../src/index.ts";
import { itemNow, onTheBoard } from "./ledger-scene.ts";

const tap = newItem("tap", { id: itemId("tap"), at: [3000, 3000], units: "metric" });
const yard = emptyGarden("metric");
const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
};
const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));

afterEach(cleanup);

describe("placing a thing by tape", () => {
  beforeEach(() => {
    onTheBoard({ ...yard, items: [tap] });
    useEditor.getState().select([tap.id]);
    openDialog("tape");
    render(<TapeDialog />);
  });

  it("puts it where two tapes from drawn points meet, on the side that is chosen", async () => {
    // The yard is 12 m wide: 5 m from the top left corner and 13 m from the top right one stands 5 m straight down.
    await type("A measures", "5 m");
    await type("B measures", "13 m");
    await userEvent.click(screen.getByLabelText(/^2, to the right/));
    await press("Put it there");
    expect(itemNow(tap.id).at[0]).toBeCloseTo(0, 6);
    expect(itemNow(tap.id).at[1]).toBeCloseTo(5000, 6);
    expect(useDialog.getState().open).toBeNull();
    useEditor.getState().undo();
    expect(itemNow(tap.id).at).toEqual([3000, 3000]);
  });

  it("refuses tapes that do not meet, and moves nothing", async () => {
    await type("A measures", "2 m");
    await type("B measures", "3 m");
    expect(screen.getByRole("alert").textContent).toContain("do not reach from one point to the other");
    await press("Put it there");
    expect(itemNow(tap.id).at).toEqual([3000, 3000]);
  });
});

describe("the yard by its sides and turns", () => {
  beforeEach(() => {
    onTheBoard(yard);
    render(<OutlineDialog />);
  });

  it("begins with the yard as it is drawn, which closes", () => {
    expect(screen.getByLabelText<HTMLInputElement>("Length of side 1").value).toBe("12.00 m");
    expect(screen.getByText("The outline closes.")).toBeTruthy();
  });

  it("says what the walk misses by, spreads it and takes the outline over", async () => {
    await type("Length of side 3", "11.97 m");
    expect(screen.getByRole("status").textContent).toMatch(/ends 3 cm from where it began, 1 in 1399/);
    await press("Make this the yard");
    const corners = useEditor.getState().garden.yard;
    // 12 + 9 + 11.97 + 9 m round, 30 mm astray: the corners take 12, 21 and 32.97 parts of 41.97 of it.
    expect(corners[1]![0]).toBeCloseTo(12_000 - (30 * 12) / 41.97, 3);
    expect(corners[2]![0]).toBeCloseTo(12_000 - (30 * 21) / 41.97, 3);
    expect(corners[3]![0]).toBeCloseTo(30 - (30 * 32.97) / 41.97, 3);
    useEditor.getState().undo();
    expect(useEditor.getState().garden.yard).toEqual(yard.yard);
  });

  it("says what is wrong with turns that make no outline, and changes nothing", async () => {
    await press("Put a side after side 1");
    expect(screen.getByRole("alert").textContent).toContain("the turns add up to 450°");
    await press("Make this the yard");
    expect(useEditor.getState().garden.yard).toEqual(yard.yard);
  });
});
