import { act, cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Ledger } from "../../app/ledger/Ledger.tsx";
import { useLedger } from "../../app/ledger/ledger-state.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads" });

/** A window of 390 pixels, as far as the page asks. */
const narrow = (query: string) => ({
  matches: query === "(max-width: 760px)",
  addEventListener: () => undefined,
  removeEventListener: () => undefined,
});

describe("the card on a narrow screen", () => {
  beforeEach(() => {
    vi.stubGlobal("matchMedia", narrow);
    onTheBoard(gardenOf(salads));
    act(() => useEditor.getState().select([salads.id]));
  });
  afterEach(() => {
    cleanup();
    vi.unstubAllGlobals();
  });

  it("is a line with a name until it is opened, and then takes the leaf's place", async () => {
    render(<Ledger />);
    expect(screen.getByRole("heading", { name: "Salads" })).toBeTruthy();
    expect(screen.queryByLabelText("Name")).toBeNull();

    await userEvent.click(screen.getByRole("button", { name: "Open card" }));
    expect(await screen.findByLabelText("Name")).toBeTruthy();
    expect(useLedger.getState()).toMatchObject({ cardOpen: true, stop: "half" });

    // A leaf turned to is a leaf wanted.
    await userEvent.click(screen.getByRole("tab", { name: "Sun" }));
    expect(useLedger.getState().cardOpen).toBe(false);
  });

  it("opens for the keyboard that is sent to it", async () => {
    render(<Ledger />);
    act(() => document.getElementById("card")?.focus());
    expect(useLedger.getState()).toMatchObject({ cardOpen: true, stop: "half" });
    expect(await screen.findByLabelText("Name")).toBeTruthy();
  });
});
