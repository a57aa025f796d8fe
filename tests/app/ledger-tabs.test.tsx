import { act, cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Ledger } from "../../app/ledger/Ledger.tsx";
import { useLedger } from "../../app/ledger/ledger-state.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { gardenOf } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const tab = (name: string) => screen.getByRole("tab", { name });
const chosen = () => screen.getAllByRole("tab", { selected: true }).map((one) => one.textContent);

describe("the ledger's leaves", () => {
  beforeEach(() => onTheBoard(gardenOf()));
  afterEach(cleanup);

  it("turn by click, and the panel says whose it is", async () => {
    render(<Ledger />);
    await userEvent.click(tab("Year round"));
    expect(chosen()).toEqual(["Year round"]);
    const panel = screen.getByRole("tabpanel", { name: "Year round" });
    expect(await within(panel).findByText(/its year stands here/)).toBeTruthy();
  });

  it("are one stop for the Tab key, with arrows, Home and End between them", async () => {
    render(<Ledger />);
    act(() => tab("Snags").focus());
    await userEvent.keyboard("{ArrowRight}");
    expect(chosen()).toEqual(["Takeoff"]);
    expect(document.activeElement).toBe(tab("Takeoff"));
    await userEvent.keyboard("{ArrowLeft}{ArrowLeft}");
    expect(chosen()).toEqual(["Site"]);
    await userEvent.keyboard("{Home}");
    expect(chosen()).toEqual(["Snags"]);
    await userEvent.keyboard("{End}");
    expect(document.activeElement).toBe(tab("Site"));
    expect(screen.getAllByRole("tab").filter((one) => one.tabIndex === 0)).toEqual([tab("Site")]);
  });

  it("lead to where their dates are set", async () => {
    render(<Ledger />);
    await userEvent.click(tab("Year round"));
    await userEvent.click(await screen.findByRole("button", { name: "under Site" }));
    expect(useEditor.getState().leaf).toBe("site");
  });

  it("draw a lowered sheet half way up when one is tapped", async () => {
    render(<Ledger />);
    expect(useLedger.getState().stop).toBe("low");
    await userEvent.click(tab("Snags"));
    expect(useLedger.getState().stop).toBe("half");
  });
});

describe("the grab bar", () => {
  beforeEach(() => onTheBoard(gardenOf()));
  afterEach(cleanup);

  const bar = () => screen.getByRole("button", { name: /^Ledger:/ });

  it("goes round its three stops by tap, and up and down by arrow keys", async () => {
    render(<Ledger />);
    const stops: string[] = [];
    for (let i = 0; i < 3; i++) {
      await userEvent.click(bar());
      stops.push(useLedger.getState().stop);
    }
    expect(stops).toEqual(["half", "full", "low"]);
    await userEvent.keyboard("{ArrowUp}{ArrowUp}{ArrowUp}");
    expect(useLedger.getState().stop).toBe("full");
    await userEvent.keyboard("{ArrowDown}");
    expect(useLedger.getState().stop).toBe("half");
    expect(bar().getAttribute("aria-label")).toMatch(/half way up/);
  });

  it("follows a drag, and does not take its end for a tap", async () => {
    render(<Ledger />);
    const user = userEvent.setup();
    await user.pointer([
      { keys: "[TouchA>]", target: bar(), coords: { x: 100, y: 700 } },
      { pointerName: "TouchA", target: bar(), coords: { x: 100, y: 700 - window.innerHeight / 3 } },
      { keys: "[/TouchA]", target: bar() },
    ]);
    expect(useLedger.getState().stop).toBe("half");
  });
});
