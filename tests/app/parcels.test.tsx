import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ParcelsDialog } from "../../app/parcels/ParcelsDialog.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { boundsOf, emptyGarden, itemId, newItem, signedArea } from "../../src/index.ts";
import { onTheBoard } from "./ledger-scene.ts";

const tap = newItem("tap", { id: itemId("tap"), at: [3000, 3000], units: "metric" });
const yard = emptyGarden("metric");
const garden = () => useEditor.getState().garden;

/** A box about a place, some metres wide and long, near 50° north: a degree there is 71,696 by 111,229 m. */
const plot = (name: string, east: number, width: number, length: number) => {
  const [lon, w, h] = [8 + east / 71_696, width / 2 / 71_696, length / 2 / 111_229];
  const corners = [
    [lon - w, 50 - h],
    [lon + w, 50 - h],
    [lon + w, 50 + h],
    [lon - w, 50 + h],
    [lon - w, 50 - h],
  ];
  return {
    type: "Feature",
    properties: { name },
    geometry: { type: "Polygon", coordinates: [corners] },
  };
};
const street = {
  type: "FeatureCollection",
  features: [plot("12 Heron Lane", 0, 20, 30), plot("14 Heron Lane", 25, 20, 30), plot("House 12", 2, 8, 10)],
};
const choose = (text: string) =>
  userEvent.upload(
    screen.getByLabelText("Choose a file"),
    new File([text], "street.geojson", { type: "application/geo+json" }),
  );
const row = (label: string) => within(screen.getByText(label).closest("li")!);

describe("the yard from a parcel file", () => {
  beforeEach(() => {
    onTheBoard({ ...yard, items: [tap] });
    render(<ParcelsDialog />);
  });
  afterEach(cleanup);

  it("takes one outline for the yard and others for houses, in one step", async () => {
    await choose(JSON.stringify(street));
    expect(screen.getByRole("status").textContent).toBe("3 outlines");
    await userEvent.click(row("12 Heron Lane").getByRole("radio"));
    await userEvent.click(row("House 12").getByRole("checkbox"));
    await userEvent.click(screen.getByRole("button", { name: "Make this the yard" }));
    expect(Math.abs(signedArea(garden().yard)) / 1e6).toBeCloseTo(600, 0);
    // Middle on middle of the yard that was: 12 by 9 m.
    const { minX, maxX, minY, maxY } = boundsOf(garden().yard);
    expect([(minX + maxX) / 2, (minY + maxY) / 2]).toEqual([6000, 4500]);
    const house = garden().items.find(({ kind }) => kind === "house");
    expect(house?.at[0]).toBeCloseTo(8000, -1);
    expect(garden().site.latitude).toBeCloseTo(50, 5);
    expect(garden().site.longitude).toBeCloseTo(8, 5);
    expect(garden().items.some(({ id }) => id === tap.id)).toBe(true);
    useEditor.getState().undo();
    expect(garden()).toEqual({ ...yard, items: [tap] });
  });

  it("says why a file cannot be used, and leaves the garden as it was", async () => {
    await choose('{"type":"Topology"}');
    expect(screen.getByRole("alert").textContent).toContain("type is not a type of GeoJSON");
    expect(garden()).toEqual({ ...yard, items: [tap] });
  });

  it("says why an outline cannot be a yard", async () => {
    await choose(JSON.stringify(plot("The moor", 0, 4000, 4000)));
    expect(screen.getByRole("alert").textContent).toContain("more than 1 km");
    await userEvent.click(screen.getByRole("button", { name: "Make this the yard" }));
    expect(garden()).toEqual({ ...yard, items: [tap] });
  });
});
