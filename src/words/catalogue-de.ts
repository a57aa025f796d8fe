import type { Catalogue } from "./catalogue.ts";
import barrow from "./de/barrow.json" with { type: "json" };
import crops from "./de/crops.json" with { type: "json" };
import planting from "./de/planting.json" with { type: "json" };
import rules from "./de/rules.json" with { type: "json" };
import sharing from "./de/sharing.json" with { type: "json" };
import sheet from "./de/sheet.json" with { type: "json" };
import takeoffDrip from "./de/takeoff-drip.json" with { type: "json" };
import takeoffLasting from "./de/takeoff-lasting.json" with { type: "json" };
import underlay from "./de/underlay.json" with { type: "json" };
import words from "./de/words.json" with { type: "json" };

const german: Catalogue = {
  ...barrow,
  ...crops,
  ...planting,
  ...rules,
  ...sharing,
  ...sheet,
  ...takeoffDrip,
  ...takeoffLasting,
  ...underlay,
  ...words,
};

export default german;
