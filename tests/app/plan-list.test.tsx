import { cleanup, render, screen } from "@testing-library/react";
import { userEvent } from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { SelectionActions } from "../../app/plan/hands/SelectionActions.tsx";
import { PlanList } from "../../app/plan/PlanList.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { growing, itemId } from "../../src/index.ts";
import { bed, gardenOf, tap } from "../helpers/garden-of.ts";

const salads = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
const beans = bed("beans", { name: "Beans", x: 4000, y: 700, w: 900, h: 1800 });
const roots = bed("roots", { name: "Roots", x: 9000, y: 300, w: 1000, h: 2000 });
const state = () => useEditor.getState();
const item = (id: string) => state().garden.items.find((one) => one.id === id)!;
const button = (id: string) => document.querySelector<HTMLElement>(`[data-item="${id}"]`)!;

afterEach(cleanup);
beforeEach(() => {
  state().open(gardenOf(salads, beans, roots, tap("tap", { at: [100, 9000] })));
});

describe("the plan's list twin", () => {
  it("names every thing and tells where it stands", () => {
    render(<PlanList />);
    expect(button("salads").textContent).toContain("Salads");
    expect(button("salads").textContent).toContain("4 ft by 8 ft");
    expect(button("tap").dataset).toMatchObject({ x: "100", y: "9000" });
    expect(screen.getAllByRole("button")).toHaveLength(5);
  });

  it("tells what grows in a bed", () => {
    state().open(gardenOf({ ...salads, plantings: growing("lettuce-leaf", "radish", "radish") }, beans));
    render(<PlanList />);
    expect(button("salads").textContent).toBe("Bed Salads, 4 ft by 8 ft; leaf lettuce, radish");
    expect(button("beans").textContent).toBe("Bed Beans, 2 ft 11 7/16 in by 5 ft 10⅞ in");
  });

  it("gives the bed in focus the crop that waits, with Enter", async () => {
    const user = userEvent.setup();
    render(<PlanList />);
    state().pick("crop:leek");
    button("beans").focus();
    await user.keyboard("{Enter}");
    expect(item("beans")).toMatchObject({ plantings: [{ crop: "leek", patch: null }] });
    expect(state().placing).toBeNull();
    expect(document.activeElement).toBe(button("beans"));
  });

  it("chooses with Space, more with Ctrl, and shows what is chosen", async () => {
    const user = userEvent.setup();
    render(<PlanList />);
    button("salads").focus();
    await user.keyboard(" ");
    expect([...state().selection]).toEqual(["salads"]);
    await user.keyboard("{Control>}");
    await user.click(button("beans"));
    await user.keyboard("{/Control}");
    expect([...state().selection]).toEqual(["salads", "beans"]);
    expect(button("beans").getAttribute("aria-pressed")).toBe("true");
    expect(button("roots").getAttribute("aria-pressed")).toBe("false");
  });

  it("moves the thing in focus with the arrow keys and says where it went", async () => {
    const user = userEvent.setup();
    render(<PlanList />);
    button("beans").focus();
    await user.keyboard("{ArrowRight}{Shift>}{ArrowDown}{/Shift}");
    expect(item("beans").at).toEqual([
      expect.closeTo(beans.at[0] + 25.4, 6),
      expect.closeTo(beans.at[1] + 304.8, 6),
    ]);
    expect(state().past).toHaveLength(1);
    expect(button("beans").dataset.x).toBe(String(item("beans").at[0]));
    expect(document.activeElement).toBe(button("beans"));
    await expect
      .poll(() => state().message.text, { timeout: 3000 })
      .toBe("Beans moved 1 in right and 1 ft down");
  });

  it("moves all that is chosen when the thing in focus is one of them", async () => {
    const user = userEvent.setup();
    render(<PlanList />);
    state().select([salads.id, beans.id]);
    button("beans").focus();
    await user.keyboard("{ArrowLeft}");
    expect(item("salads").at[0]).toBeCloseTo(salads.at[0] - 25.4, 6);
    expect(item("roots")).toBe(roots);
  });

  it("keeps the focus in the list when a thing is taken away", async () => {
    const user = userEvent.setup();
    render(<PlanList />);
    button("beans").focus();
    await user.keyboard("{Delete}");
    expect(state().garden.items.map(({ id }) => id)).toEqual(["salads", "roots", "tap"]);
    expect(document.activeElement).toBe(button("roots"));
  });

  it("goes to the card with Enter", async () => {
    const user = userEvent.setup();
    render(
      <>
        <PlanList />
        <section id="card" tabIndex={-1}>
          <input aria-label="Name" />
        </section>
      </>,
    );
    button("roots").focus();
    await user.keyboard("{Enter}");
    expect([...state().selection]).toEqual(["roots"]);
    expect(document.activeElement).toBe(screen.getByLabelText("Name"));
  });

  it("chooses the yard's outline", async () => {
    const user = userEvent.setup();
    render(<PlanList />);
    await user.click(button("yard"));
    expect(state().yardSelected).toBe(true);
    expect(button("yard").getAttribute("aria-pressed")).toBe("true");
  });
});

describe("what can be done with several at once", () => {
  beforeEach(() => state().select([itemId("salads"), itemId("beans"), itemId("roots")]));

  it("lines up and spaces evenly, each as one step", async () => {
    const user = userEvent.setup();
    render(<SelectionActions />);
    await user.click(screen.getByRole("button", { name: "Line up upper edges" }));
    const tops = ["salads", "beans", "roots"].map((id) => {
      const one = item(id);
      return one.kind === "bed" && one.shape.type === "rectangle"
        ? one.at[1] - one.shape.length / 2
        : Number.NaN;
    });
    expect(tops).toEqual([0, 0, 0].map((v) => expect.closeTo(v, 6)));
    await user.click(screen.getByRole("button", { name: "Space evenly across" }));
    const gaps = [item("beans").at[0] - 450 - 1219.2, 9000 - (item("beans").at[0] + 450)];
    expect(gaps[0]).toBeCloseTo(gaps[1]!, 6);
    expect(state().past.map(({ label }) => label)).toEqual(["Line up 3 things", "Space 3 things evenly"]);
  });

  it("offers for one thing only what makes sense for one", () => {
    state().select([salads.id]);
    render(<SelectionActions />);
    expect(screen.queryByRole("button", { name: /Line up/ })).toBeNull();
    expect(screen.getByRole("button", { name: "To the front" })).toBeTruthy();
    expect(screen.getByRole("button", { name: "Remove" })).toBeTruthy();
  });
});
