import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { LengthField } from "../../app/ledger/fields/LengthField.tsx";
import { gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const field = () => screen.getByLabelText<HTMLInputElement>("Width");

describe("LengthField", () => {
  beforeEach(() => onTheBoard(gardenOf()));
  afterEach(cleanup);

  it("shows a length in the garden's units and commits what is typed on Enter, in mm", async () => {
    const onCommit = vi.fn();
    render(<LengthField label="Width" value={1219.2} onCommit={onCommit} />);
    expect(field().value).toBe("4′ 0″");

    await userEvent.clear(field());
    await userEvent.type(field(), "4' 6 1/2\"{Enter}");
    expect(onCommit.mock.calls).toEqual([[1384.3]]);
  });

  it("commits on leaving, and reads a bare number as centimetres in a metric garden", async () => {
    onTheBoard(gardenWith({ units: "metric" }));
    const onCommit = vi.fn();
    render(<LengthField label="Width" value={1200} onCommit={onCommit} />);
    expect(field().value).toBe("1.20 m");

    await userEvent.clear(field());
    await userEvent.type(field(), "138");
    expect(onCommit).not.toHaveBeenCalled();
    await userEvent.tab();
    expect(onCommit.mock.calls).toEqual([[1380]]);
  });

  it("keeps what cannot be read, says why, and commits nothing", async () => {
    const onCommit = vi.fn();
    render(<LengthField label="Width" value={1219.2} onCommit={onCommit} />);
    await userEvent.clear(field());
    await userEvent.type(field(), "four feet{Enter}");

    expect(field().value).toBe("four feet");
    expect(field().getAttribute("aria-invalid")).toBe("true");
    const problem = screen.getByRole("alert");
    expect(problem.textContent).toMatch(/not a length/);
    expect(field().getAttribute("aria-describedby")).toBe(problem.id);
    expect(onCommit).not.toHaveBeenCalled();

    // Mended, it is taken and the sentence goes.
    await userEvent.clear(field());
    await userEvent.type(field(), "52{Enter}");
    expect(onCommit.mock.calls).toEqual([[52 * 25.4]]);
    expect(screen.queryByRole("alert")).toBeNull();
  });

  it("puts the value back on Escape, and lets that Escape go no further", async () => {
    const onCommit = vi.fn();
    const page = vi.fn();
    const heard = (event: KeyboardEvent) => page(event.key);
    window.addEventListener("keydown", heard);
    render(<LengthField label="Width" value={1219.2} onCommit={onCommit} />);
    await userEvent.clear(field());
    await userEvent.type(field(), "9 ft");
    page.mockClear();
    await userEvent.keyboard("{Escape}");
    expect(field().value).toBe("4′ 0″");
    expect(page).not.toHaveBeenCalled();

    // With nothing typed, Escape is the page's.
    await userEvent.keyboard("{Escape}");
    expect(page.mock.calls).toEqual([["Escape"]]);
    window.removeEventListener("keydown", heard);
    await userEvent.tab();
    expect(onCommit).not.toHaveBeenCalled();
  });

  it("leaves a length alone that is finer than it is shown", async () => {
    const onCommit = vi.fn();
    render(<LengthField label="Width" value={1219.7} onCommit={onCommit} />);
    await userEvent.click(field());
    await userEvent.keyboard("{Enter}");
    await userEvent.tab();
    expect(onCommit).not.toHaveBeenCalled();
  });

  it("does not take the same length in other words for a change", async () => {
    const onCommit = vi.fn();
    render(<LengthField label="Width" value={24 * 25.4} onCommit={onCommit} />);
    for (const text of ["2 ft", "24 in", "609.6 mm"]) {
      await userEvent.clear(field());
      await userEvent.type(field(), `${text}{Enter}`);
      expect(field().value).toBe("2′ 0″");
    }
    expect(onCommit).not.toHaveBeenCalled();
  });

  it("takes 0 and lengths below it only where they make sense", async () => {
    const onCommit = vi.fn();
    const { rerender } = render(<LengthField label="Width" value={700} onCommit={onCommit} />);
    const type = async (text: string) => {
      await userEvent.clear(field());
      await userEvent.type(field(), `${text}{Enter}`);
    };
    await type("0");
    expect(screen.getByRole("alert").textContent).toBe("Width must be above 0.");
    await type("-3 in");
    expect(screen.getByRole("alert").textContent).toMatch(/below zero/);

    rerender(<LengthField label="Width" value={700} may="zero" onCommit={onCommit} />);
    await type("0");
    rerender(<LengthField label="Width" value={700} may="negative" onCommit={onCommit} />);
    await type("-3 in");
    expect(onCommit.mock.calls).toEqual([[0], [-76.2]]);
  });

  it("shows why the garden itself refuses a value", async () => {
    const refuse = () => {
      throw new RangeError("an L's arms must be thinner than its sides");
    };
    render(<LengthField label="Width" value={1219.2} onCommit={refuse} />);
    await userEvent.clear(field());
    await userEvent.type(field(), "7 ft{Enter}");
    expect(screen.getByRole("alert").textContent).toMatch(/thinner than its sides/);
    expect(field().value).toBe("7 ft");
  });
});
