import { cleanup, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { costWords, WayOutButton } from "../../app/ledger/snags/WayOutButton.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { applyOps, type Op, takeoff, type WayOut } from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { moveWay, onTheBoard } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
const garden = gardenOf(salads);

const nothing = () => {};
const hands = { onTry: nothing, onPoint: nothing, onLeave: nothing, onTake: nothing };
const shorten = (length: number): WayOut => ({
  label: `Shorten to ${length}`,
  ops: [{ op: "set", id: salads.id, changes: { shape: { type: "rectangle", width: 1219.2, length } } }],
});
const changeBy = (ops: readonly Op[]) => takeoff(applyOps(garden, ops)).total - takeoff(garden).total;

describe("a way out", () => {
  afterEach(cleanup);

  it("says beside its button what it saves, once that is reckoned, by the takeoff itself", async () => {
    onTheBoard(garden);
    const way = shorten(1219.2);
    const saved = changeBy(way.ops);
    expect(saved).toBeLessThan(-5);
    render(<WayOutButton way={way} {...hands} />);
    const words = await screen.findByText(costWords(saved, "USD"));
    expect(words.textContent).toMatch(/^saves \$/);
    const button = screen.getByRole("button", { name: way.label });
    expect(button.getAttribute("aria-describedby")).toBe(words.id);
  });

  it("says what it costs, and nothing of a move that buys nothing", async () => {
    onTheBoard(garden);
    const dearer = shorten(3657.6);
    expect(changeBy(dearer.ops)).toBeGreaterThan(5);
    const { rerender } = render(<WayOutButton way={dearer} {...hands} />);
    expect(await screen.findByText(/^costs \$/)).toBeTruthy();

    rerender(<WayOutButton way={moveWay(salads, "Shift 4 in east", [101.6, 0])} {...hands} />);
    await new Promise((done) => setTimeout(done, 200));
    expect(screen.queryByText(/^(costs|saves) /)).toBeNull();
  });

  it("reckons nothing while something is dragged", async () => {
    onTheBoard(garden);
    useEditor.getState().preview([{ op: "move", id: salads.id, by: [10, 0] }]);
    render(<WayOutButton way={shorten(1219.2)} {...hands} />);
    await new Promise((done) => setTimeout(done, 200));
    expect(screen.queryByText(/^saves /)).toBeNull();
    useEditor.getState().dropPreview();
    expect(await screen.findByText(/^saves /)).toBeTruthy();
  });
});

it("says money in whole units, and what is little to the cent", () => {
  expect(costWords(41.3, "USD")).toBe("costs $41");
  expect(costWords(-41.6, "EUR")).toBe("saves €42");
  expect(costWords(0.45, "USD")).toBe("costs $0.45");
});
