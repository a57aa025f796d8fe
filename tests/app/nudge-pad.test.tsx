import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { NO_MARKS, useMarks } from "../../app/plan/hands/marks.ts";
import { NudgePad } from "../../app/plan/hands/NudgePad.tsx";
import { usePlanSize } from "../../app/plan/plan-size.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { INCH } from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { itemNow, onTheBoard } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads", at: [2000, 3000] });
const press = async (name: string | RegExp) => userEvent.click(screen.getByRole("button", { name }));
const past = () => useEditor.getState().past.map(({ label }) => label);

beforeEach(() => {
  localStorage.clear();
  useMarks.setState(NO_MARKS);
  onTheBoard(gardenOf(salads));
});
afterEach(cleanup);

async function opened() {
  useEditor.getState().select([salads.id]);
  render(<NudgePad />);
  await press("Arrow pad");
}

describe("the arrow pad", () => {
  it("carries the paper with nothing selected: what lies that way comes into sight", async () => {
    usePlanSize.setState({ width: 400, height: 200 });
    useEditor.getState().setView({ x: 0, y: 0, scale: 0.1 });
    render(<NudgePad />);
    await press("Arrow pad");
    await press("Show more, right");
    await press("Show more, up");
    expect(useEditor.getState().view).toEqual({ x: 1000, y: -500, scale: 0.1 });
    expect(past()).toEqual([]);
    expect(screen.getByRole("button", { name: "Turn left by 15°" }).getAttribute("aria-disabled")).toBe(
      "true",
    );
  });

  it("moves what is selected by the step, a run of presses as one step of history", async () => {
    await opened();
    await press("Move right by 1 in");
    await press("Move right by 1 in");
    await press("Move up by 1 in");
    expect(itemNow(salads.id).at).toEqual([2000 + 2 * INCH, 3000 - INCH]);
    expect(past()).toEqual(["Move Salads"]);
  });

  it("goes by the step that is chosen", async () => {
    await opened();
    await press("Step 1 in: choose the next");
    await press("Move down by 6 in");
    expect(itemNow(salads.id).at[1]).toBeCloseTo(3000 + 6 * INCH, 9);
    await press("Step 6 in: choose the next");
    await press("Step 1 ft: choose the next");
    await press("Move left by ¼ in");
    expect(itemNow(salads.id).at[0]).toBeCloseTo(2000 - INCH / 4, 9);
  });

  it("turns what is selected", async () => {
    await opened();
    await press("Turn right by 15°");
    expect(itemNow(salads.id)).toMatchObject({ turn: 15 });
    await press("Turn left by 15°");
    expect(itemNow(salads.id)).toMatchObject({ turn: 0 });
  });

  it("holds a corner of the yard and moves that", async () => {
    useEditor.getState().selectYard();
    render(<NudgePad />);
    await press("Arrow pad");
    const [x, y] = useEditor.getState().garden.yard[0]!;
    await press("Hold the next corner");
    await press("Corner left by 1 in");
    expect(useEditor.getState().garden.yard[0]).toEqual([x - INCH, y]);
    expect(past()).toEqual(["Reshape the yard"]);
  });

  it("stays as it was left, put away or not", async () => {
    await opened();
    cleanup();
    render(<NudgePad />);
    expect(screen.getByRole("toolbar", { name: "Move by steps" })).toBeTruthy();
    await press("Put the arrow pad away");
    cleanup();
    render(<NudgePad />);
    expect(screen.queryByRole("toolbar")).toBeNull();
  });
});
