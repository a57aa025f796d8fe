import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { BoardField } from "../../app/device/BoardField.tsx";
import { chooseBoard, inksFor, startBoard, useBoard } from "../../app/device/board.ts";
import { DARK, INK, inkAge, LIGHT, layInks, SHARPER } from "../../app/style/ink.ts";
import { LampButton } from "../../app/topbar/LampButton.tsx";

/** A device that asks for these, and tells whoever listens when it asks for others. */
function device(...asked: string[]) {
  const listeners = new Set<() => void>();
  const wishes = new Set(asked);
  vi.stubGlobal("matchMedia", (query: string) => ({
    get matches() {
      return [...wishes].some((wish) => query === `(${wish})`);
    },
    addEventListener: (_: string, listener: () => void) => listeners.add(listener),
  }));
  return (...now: string[]) => {
    wishes.clear();
    for (const wish of now) wishes.add(wish);
    for (const listener of listeners) listener();
  };
}
const root = document.documentElement;

beforeEach(() => localStorage.clear());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  useBoard.setState({ choice: "device" });
  delete root.dataset.board;
  layInks(LIGHT);
});

describe("the drawing board", () => {
  it("is the device's, and goes with it from day to evening", () => {
    const ask = device();
    startBoard();
    expect(INK.paper).toBe(LIGHT.paper);
    const before = inkAge();
    ask("prefers-color-scheme: dark");
    expect(INK).toEqual(DARK);
    expect(root.dataset.board).toBeUndefined();
    expect(inkAge(), "what is drawn knows it is out of date").toBeGreaterThan(before);
  });

  it("is the one that was chosen on this device, whatever the device asks for", () => {
    device("prefers-color-scheme: dark");
    chooseBoard("light");
    expect(INK).toEqual(LIGHT);
    useBoard.setState({ choice: "device" });
    startBoard();
    expect(useBoard.getState().choice).toBe("light");
    expect(root.dataset.board).toBe("light");
  });

  it("is the device's again where what was kept is none of the three", () => {
    localStorage.setItem("bedwright-board", "purple");
    device();
    startBoard();
    expect(useBoard.getState().choice).toBe("device");
  });

  it("lasts as long as the page where nothing can be kept", () => {
    device();
    vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    chooseBoard("dark");
    expect(INK.paper).toBe(DARK.paper);
    vi.restoreAllMocks();
  });

  it("is sharper where the device asks for more contrast, and keeps all else", () => {
    expect(inksFor("device", { dark: false, sharp: true })).toEqual({ ...LIGHT, ...SHARPER.light });
    expect(inksFor("dark", { dark: false, sharp: true })).toEqual({ ...DARK, ...SHARPER.dark });
  });

  it("is turned by the lamp in the bar, whose name says where to", async () => {
    device();
    startBoard();
    render(<LampButton />);
    await userEvent.click(screen.getByRole("button", { name: "To the dark board" }));
    expect(root.dataset.board).toBe("dark");
    await userEvent.click(screen.getByRole("button", { name: "To the light board" }));
    expect(root.dataset.board).toBe("light");
    expect(INK.paper).toBe(LIGHT.paper);
  });

  it("is chosen under Site, and can be left to the device again", async () => {
    device();
    startBoard();
    render(<BoardField />);
    await userEvent.click(screen.getByRole("button", { name: "Dark" }));
    expect(screen.getByRole("button", { name: "Dark" }).getAttribute("aria-pressed")).toBe("true");
    await userEvent.click(screen.getByRole("button", { name: "As the device" }));
    expect(root.dataset.board).toBeUndefined();
    expect(INK.paper).toBe(LIGHT.paper);
  });
});
