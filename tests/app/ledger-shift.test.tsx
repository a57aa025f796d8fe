import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Ledger } from "../../app/ledger/Ledger.tsx";
import { provideShiftSearch } from "../../app/live/shift-search.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import type { ShiftSearch } from "../../src/index.ts";
import { gardenOf, thing } from "../helpers/garden-of.ts";
import { itemNow, moveWay, onTheBoard, snagOf } from "./ledger-scene.ts";

const roots = thing("bed", "roots", { name: "Roots", at: [700, 900] });
const garden = gardenOf(roots);
const narrow = snagOf(roots, {
  key: "narrow-path:roots",
  title: "Roots: path 4 in too narrow",
  waysOut: [moveWay(roots, "Shift 4 in east", [101.6, 0])],
});

const lookAt = () => userEvent.click(screen.getByRole("button", { name: /path 4 in/ }));

describe("shift to clear, of the snag that is looked at", () => {
  const search = vi.fn(async (): Promise<ShiftSearch> => ({ found: "nothing to clear" }));
  beforeEach(() => {
    search.mockClear();
    provideShiftSearch(search);
    onTheBoard(garden, { snags: [narrow] });
  });
  afterEach(() => {
    cleanup();
    provideShiftSearch(null);
  });

  it("is looked for only when the snag is looked at", async () => {
    render(<Ledger />);
    expect(search).not.toHaveBeenCalled();
    await lookAt();
    expect(search).toHaveBeenCalledWith(garden, ["roots"]);
  });

  it("is offered with its way and what it clears, and is one step to take and to undo", async () => {
    search.mockResolvedValue({
      found: "shift",
      shift: { by: [0, 254], clears: [narrow.key, "other:roots"] },
    });
    render(<Ledger />);
    await lookAt();
    await userEvent.click(
      await screen.findByRole("button", { name: "Shift Roots 10 in south to clear (clears 2)" }),
    );
    expect(itemNow(roots.id).at).toEqual([700, 1154]);
    useEditor.getState().undo();
    expect(itemNow(roots.id).at).toEqual([700, 900]);
  });

  it("is not offered twice where the rule offers the same", async () => {
    search.mockResolvedValue({ found: "shift", shift: { by: [101.6, 0], clears: [narrow.key] } });
    render(<Ledger />);
    await lookAt();
    await vi.waitFor(() => expect(search).toHaveBeenCalled());
    expect(screen.queryByRole("button", { name: /to clear/ })).toBeNull();
  });

  it("says honestly which limit is in the way where no shift does it", async () => {
    search.mockResolvedValue({
      found: "no shift",
      inTheWay: { rule: "sealed-off-bed", title: "No way to Roots" },
      proven: false,
    });
    render(<Ledger />);
    await lookAt();
    expect(
      await screen.findByText("No shift of Roots was found that clears it. In the way: No way to Roots."),
    ).toBeTruthy();
  });

  it("says so where it is certain that the yard has no place for it", async () => {
    search.mockResolvedValue({
      found: "no shift",
      inTheWay: { rule: "outside-yard", title: "Roots: 3 in outside the yard" },
      proven: true,
    });
    render(<Ledger />);
    await lookAt();
    expect(
      await screen.findByText(
        "No shift of Roots clears it: the yard has no such place. In the way: Roots: 3 in outside the yard.",
      ),
    ).toBeTruthy();
  });

  it("is silent about a shift that leaves this snag as it is", async () => {
    search.mockResolvedValue({ found: "shift", shift: { by: [0, 300], clears: ["other:roots"] } });
    render(<Ledger />);
    await lookAt();
    await vi.waitFor(() => expect(search).toHaveBeenCalled());
    expect(screen.queryByText(/to clear|No shift/)).toBeNull();
  });
});
