import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Fallback } from "../../app/Fallback.tsx";

let broken = true;
function Fragile() {
  if (broken) throw new Error("the ink has run out");
  return <p>drawn</p>;
}

describe("a part of the page that fails", () => {
  // React tells the console of every fault it hands to a boundary.
  beforeEach(() => vi.spyOn(console, "error").mockImplementation(() => undefined));
  afterEach(() => {
    cleanup();
    vi.restoreAllMocks();
  });

  it("says what failed and why, leaves the rest standing, and can be tried again", async () => {
    broken = true;
    render(
      <>
        <p>the rest</p>
        <Fallback what="The plan">
          <Fragile />
        </Fallback>
      </>,
    );
    expect(screen.getByRole("alert").textContent).toMatch(/The plan could not be shown: the ink has run out/);
    expect(screen.getByText("the rest")).toBeTruthy();
    broken = false;
    await userEvent.click(screen.getByRole("button", { name: "Try again" }));
    expect(screen.getByText("drawn")).toBeTruthy();
  });

  it("is tried again of itself when it is about something else", () => {
    broken = true;
    const part = (about: string) => (
      <Fallback what="The card" about={about}>
        <Fragile />
      </Fallback>
    );
    const { rerender } = render(part("roots"));
    broken = false;
    rerender(part("roots"));
    expect(screen.getByRole("alert")).toBeTruthy();
    rerender(part("beans"));
    expect(screen.getByText("drawn")).toBeTruthy();
  });
});
