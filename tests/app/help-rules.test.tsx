import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Dialogs } from "../../app/dialogs/Dialogs.tsx";
import { closeDialog } from "../../app/dialogs/open-dialog.ts";
import { findRules } from "../../app/help/find-rules.ts";
import { openRules } from "../../app/help/rules-wanted.ts";
import { useLedger } from "../../app/ledger/ledger-state.ts";
import { LimitField } from "../../app/ledger/site/LimitField.tsx";
import { SourceLine } from "../../app/ledger/snags/SourceLine.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { INCH, LIMITS, limitIds, rulesTable } from "../../src/index.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { onTheBoard, snagOf } from "./ledger-scene.ts";

const rules = rulesTable();
const roots = bed("roots", { name: "Roots" });
const page = () => screen.findByRole("dialog", { name: "The rules, and why" }, { timeout: 20_000 });
const shownRules = () =>
  [...document.querySelectorAll("[data-rule]")].map((one) => one.getAttribute("data-rule"));

beforeEach(() => onTheBoard(gardenOf(roots)));
afterEach(() => {
  cleanup();
  closeDialog();
});

describe("the page of rules", () => {
  it("tells every rule there is: its promise, its why, its source or those of its limits", async () => {
    openRules(null);
    render(<Dialogs />);
    const dialog = await page();
    expect(shownRules().toSorted()).toEqual(rules.map(({ id }) => id).toSorted());
    for (const rule of rules) {
      const entry = dialog.querySelector(`[data-rule="${rule.id}"]`);
      expect(entry?.textContent).toContain(rule.promise);
      expect(entry?.textContent).toContain(rule.why);
      expect(entry?.textContent).toContain(rule.source.text);
    }
  });

  it("shows every limit the gardener can set, whether or not a rule is held to it", async () => {
    openRules(null);
    render(<Dialogs />);
    const text = (await page()).textContent;
    for (const id of limitIds) expect(text).toContain(`${LIMITS[id].label}:`);
  });

  it("says of a limit whether it is the gardener's own", async () => {
    onTheBoard(gardenWith({ limits: { reach: 20 * INCH } }, roots));
    openRules({ rule: "unreachable-soil" });
    render(<Dialogs />);
    const entry = (await page()).querySelector('[data-rule="unreachable-soil"]');
    expect(entry?.textContent).toContain("1′ 8″, your own; the default is 2′ 0″.");
    expect(entry?.textContent).toContain("A child's reach: 1′ 6″ (the default).");
  });

  it("goes to the rule that was asked about, and counts what of it is on the plan", async () => {
    onTheBoard(gardenOf(roots), { snags: [snagOf(roots, { rule: "unreachable-soil" })] });
    openRules({ rule: "unreachable-soil" });
    render(<Dialogs />);
    await page();
    const wanted = document.querySelector<HTMLElement>('[data-wanted="true"]')!;
    expect(wanted.dataset.rule).toBe("unreachable-soil");
    expect(document.activeElement?.tagName).toBe("H4");
    expect(wanted.contains(document.activeElement)).toBe(true);
    expect(wanted.textContent).toContain("1 snag on this plan now.");
    expect(document.querySelectorAll('[data-wanted="true"]')).toHaveLength(1);
  });

  it("finds rules as one types, says how many, and finds its way back from nothing", async () => {
    openRules(null);
    render(<Dialogs />);
    const dialog = await page();
    const search = screen.getByRole("searchbox", { name: "Search the rules" });
    await userEvent.type(search, "gopher mesh");
    const found = findRules(rules, "gopher mesh");
    expect(found.length).toBeGreaterThan(0);
    expect(shownRules()).toEqual(found.map(({ id }) => id));
    expect(within(dialog).getByRole("status").textContent).toBe(`${found.length} of ${rules.length} rules`);
    await userEvent.type(search, " zeppelin");
    expect(shownRules()).toEqual([]);
    await userEvent.click(screen.getByRole("button", { name: "Show them all" }));
    expect(shownRules()).toHaveLength(rules.length);
  });

  it("leads to where a limit is changed, on a phone with the ledger drawn up", async () => {
    openRules({ limit: "hose" });
    render(<Dialogs />);
    await page();
    expect(shownRules()).toContain("long-hose");
    await userEvent.click(screen.getByRole("button", { name: `Change the limit: ${LIMITS.hose.label}` }));
    expect(useEditor.getState().leaf).toBe("site");
    expect(useLedger.getState()).toMatchObject({ wantedLimit: "hose", stop: "half", cardOpen: false });
    expect(screen.queryByRole("dialog")).toBeNull();
  });
});

describe("a why", () => {
  it("stands beside a snag's source and opens its rule", async () => {
    const snag = snagOf(roots, { rule: "shallow-soil", title: "Roots: too shallow" });
    render(
      <>
        <SourceLine snag={snag} />
        <Dialogs />
      </>,
    );
    await userEvent.click(screen.getByRole("button", { name: /^Why/ }));
    await page();
    expect(document.querySelector<HTMLElement>('[data-wanted="true"]')?.dataset.rule).toBe("shallow-soil");
  });

  it("stands beside a limit and opens the rules that hold a garden to it", async () => {
    render(
      <>
        <LimitField id="seatedRim" own={undefined} edition="ada-2010" units="us" />
        <Dialogs />
      </>,
    );
    await userEvent.click(screen.getByRole("button", { name: /^Why\W+Highest rim/ }));
    await page();
    const held = rules
      .filter(({ limits }) => limits.some(({ id }) => id === "seatedRim"))
      .map(({ id }) => id);
    expect(held.length).toBeGreaterThan(0);
    expect(shownRules()).toEqual(expect.arrayContaining(held));
  });
});

describe("findRules", () => {
  it("takes small and capital letters and both apostrophes alike, in any order of the words", () => {
    const wanted = rules.find(({ limits }) => limits.some(({ label }) => label === "A child's reach"))!;
    for (const typed of ["CHILD’S reach", "reach child's", "  child's   reach "]) {
      expect(findRules(rules, typed).map(({ id }) => id)).toContain(wanted.id);
    }
  });
  it("finds by grade, and all for nothing typed", () => {
    expect(findRules(rules, "worth knowing").map(({ grade }) => grade)).toContain("note");
    expect(findRules(rules, "   ")).toEqual(rules);
  });
});
