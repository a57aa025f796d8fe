import { expect, type Locator, type Page } from "@playwright/test";
import { fitView } from "../../app/plan/navigation.ts";
import { toScreen } from "../../app/plan/viewport.ts";
import { createEditor, type View } from "../../app/store/editor.ts";
import { EXAMPLES, type Garden, type Point, readGardenText } from "../../src/index.ts";

/** The planner as a person works it: by what can be seen on it, and by mouse and keys. */
export class Planner {
  readonly page: Page;
  /** The ledger's two figures. */
  readonly summary: Locator;
  readonly snags: Locator;
  readonly card: Locator;
  readonly board: Locator;
  /** The plan's list twin. */
  readonly things: Locator;

  constructor(page: Page) {
    this.page = page;
    this.summary = page.locator(".summary");
    this.snags = page.locator("[data-snag]");
    this.card = page.getByRole("region", { name: "Selected" });
    this.board = page.getByRole("application", { name: /^Plan of/ });
    this.things = page.getByRole("application", { name: "Things on the plan" }).locator("[data-item]");
  }

  /** Opens the page and waits until the plan is drawn and the ledger knows of it. */
  async open(): Promise<void> {
    await this.page.goto("./");
    await this.ready();
  }

  async ready(): Promise<void> {
    await expect(this.board.locator("canvas").first()).toBeVisible();
    await expect(this.summary).toContainText(/to fix/);
    // The total is what it stays at once the cut plans are proven.
    await expect(this.summary.locator('[data-proof="settled"]')).toBeVisible();
    await this.page.evaluate(() => document.fonts.ready);
  }

  /** How many the ledger says are left to fix. */
  async left(): Promise<number> {
    const words = (await this.summary.textContent()) ?? "";
    if (/Nothing to fix/.test(words)) return 0;
    const [, count] = /(\d+) to fix/.exec(words) ?? [];
    if (count === undefined) throw new Error(`the ledger does not say how many are to fix: ${words}`);
    return Number(count);
  }

  /** The total as the ledger shows it, with its sign: "$1,110". */
  async total(): Promise<string> {
    const [total] = /[$€£][\d,.]+/.exec((await this.summary.textContent()) ?? "") ?? [];
    if (total === undefined) throw new Error("the ledger shows no total");
    return total;
  }

  /** The button of a thing in the plan's list, by its name. */
  thing(name: string | RegExp): Locator {
    return this.things.filter({ hasText: name });
  }

  /** Where a thing stands, mm, as last committed. */
  async placeOf(name: string | RegExp): Promise<Point> {
    const thing = this.thing(name);
    const [x, y] = [await thing.getAttribute("data-x"), await thing.getAttribute("data-y")];
    return [Number(x), Number(y)];
  }

  /** Waits until everything that was done is kept on this device. */
  async kept(): Promise<void> {
    await expect(this.page.locator(".kept-line")).toHaveText("Saved");
  }

  /** The garden on the board, as it is kept on this device; the first worked example until something is changed. */
  async garden(): Promise<Garden> {
    await expect(this.page.locator(".kept-line")).toHaveText(/Saved|Example/);
    const text = await this.page.evaluate(keptText);
    return text === null ? EXAMPLES[0].garden : readGardenText(text);
  }

  /** Shows the whole garden and reckons the view of it, as the page does. */
  async view(): Promise<View> {
    const fit = this.page.getByRole("button", { name: "Fit the whole yard" });
    if (await fit.isVisible()) await fit.click();
    const editor = createEditor(await this.garden());
    fitView(editor, await this.boardBox());
    return editor.getState().view;
  }

  /** Shows the whole garden, and tells at which pixel of the page a point of the plan lies from now on. */
  async lay(): Promise<(point: Point) => Point> {
    const view = await this.view();
    const box = await this.boardBox();
    return (point) => {
      const [x, y] = toScreen(view, point);
      return [box.x + x, box.y + y];
    };
  }

  /** Presses the middle of a thing on the plan with the mouse: it is selected. */
  async press(name: string | RegExp): Promise<void> {
    const pixelOf = await this.lay();
    await this.page.mouse.click(...pixelOf(await this.placeOf(name)));
    await expect(this.thing(name)).toHaveAttribute("aria-pressed", "true");
  }

  /** Takes a thing by its middle and carries it, with the mouse; it stays held. */
  async carry(name: string | RegExp, by: Point, steps = 12): Promise<void> {
    const [x, y] = await this.placeOf(name);
    const pixelOf = await this.lay();
    await this.page.mouse.move(...pixelOf([x, y]));
    await this.page.mouse.down();
    await this.page.mouse.move(...pixelOf([x + by[0], y + by[1]]), { steps });
  }

  /** Drags a thing with the mouse and lets go. It snaps as it does for anybody. */
  async drag(name: string | RegExp, by: Point): Promise<void> {
    await this.carry(name, by);
    await this.page.mouse.up();
  }

  async undo(): Promise<void> {
    await this.page.getByRole("button", { name: "Undo" }).click();
  }

  async turnTo(leaf: "Snags" | "Takeoff" | "Sun" | "Year round" | "Site"): Promise<void> {
    await this.page.getByRole("tab", { name: leaf }).click();
    await expect(this.page.getByRole("tabpanel", { name: leaf })).not.toContainText("Turning the leaf");
  }

  async openGardens(): Promise<Locator> {
    await this.page.getByRole("button", { name: "Gardens", exact: true }).click();
    const dialog = this.page.getByRole("dialog", { name: "Gardens" });
    await expect(dialog).not.toContainText("Looking…");
    return dialog;
  }

  async startNew(units: "feet and inches" | "metric"): Promise<void> {
    const dialog = await this.openGardens();
    await dialog.getByRole("button", { name: `New yard, ${units}` }).click();
    await expect(dialog).toBeHidden();
    await expect(this.page.getByRole("textbox", { name: "Name of the garden" })).toHaveValue("New yard");
  }

  /** Chooses a file in the Gardens dialog, which is open. */
  async chooseFile(name: string, text: string): Promise<void> {
    const buffer = Buffer.from(text);
    await this.page
      .getByLabel("Open from a file")
      .setInputFiles({ name, mimeType: "application/json", buffer });
  }

  async openGarden(garden: Garden): Promise<void> {
    const dialog = await this.openGardens();
    await this.chooseFile("garden.json", JSON.stringify(garden));
    await expect(dialog).toBeHidden();
    await this.ready();
  }

  async openSheet(): Promise<Locator> {
    await this.page.getByRole("button", { name: "Build sheet" }).click();
    const desk = this.page.getByRole("dialog", { name: "Build sheet" });
    await expect(desk.getByRole("img", { name: /^Build sheet of/ })).toBeVisible();
    await this.page.evaluate(() => document.fonts.ready);
    return desk;
  }

  /** Prints what is open, on the paper the page itself asks for. */
  print(): Promise<Uint8Array> {
    return this.page.pdf({ preferCSSPageSize: true, printBackground: true });
  }

  private async boardBox() {
    const box = await this.board.boundingBox();
    if (!box) throw new Error("the plan is not on the screen");
    return box;
  }
}

/** Runs in the page: the text of the garden that was last on the board, as it lies in the browser's storage. */
function keptText(): Promise<string | null> {
  const id = localStorage.getItem("bedwright-last-open");
  if (id === null) return Promise.resolve(null);
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("bedwright");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const database = opening.result;
      const asked = database.transaction("gardens").objectStore("gardens").get(id);
      asked.onerror = () => reject(asked.error);
      asked.onsuccess = () => {
        database.close();
        resolve(asked.result ? asked.result.text : null);
      };
    };
  });
}
