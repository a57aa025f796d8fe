import type { Catalogue } from "./catalogue.ts";
import crops from "./de/crops.json" with { type: "json" };
import sharing from "./de/sharing.json" with { type: "json" };
import sheet from "./de/sheet.json" with { type: "json" };
import underlay from "./de/underlay.json" with { type: "json" };
import words from "./de/words.json" with { type: "json" };

const german: Catalogue = { ...crops, ...sharing, ...sheet, ...underlay, ...words };

export default german;
