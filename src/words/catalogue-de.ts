import type { Catalogue } from "./catalogue.ts";
import barrow from "./de/barrow.json" with { type: "json" };
import card from "./de/card.json" with { type: "json" };
import climate from "./de/climate.json" with { type: "json" };
import crops from "./de/crops.json" with { type: "json" };
import garden from "./de/garden.json" with { type: "json" };
import irrigation from "./de/irrigation.json" with { type: "json" };
import keeping from "./de/keeping.json" with { type: "json" };
import layout from "./de/layout.json" with { type: "json" };
import ledgerShell from "./de/ledger-shell.json" with { type: "json" };
import ledgerSite from "./de/ledger-site.json" with { type: "json" };
import ledgerSnags from "./de/ledger-snags.json" with { type: "json" };
import ledgerSun from "./de/ledger-sun.json" with { type: "json" };
import ledgerTakeoff from "./de/ledger-takeoff.json" with { type: "json" };
import ledgerWater from "./de/ledger-water.json" with { type: "json" };
import ledgerYear from "./de/ledger-year.json" with { type: "json" };
import measuring from "./de/measuring.json" with { type: "json" };
import moment from "./de/moment.json" with { type: "json" };
import offline from "./de/offline.json" with { type: "json" };
import page from "./de/page.json" with { type: "json" };
import parcels from "./de/parcels.json" with { type: "json" };
import places from "./de/places.json" with { type: "json" };
import plan from "./de/plan.json" with { type: "json" };
import planting from "./de/planting.json" with { type: "json" };
import rules from "./de/rules.json" with { type: "json" };
import sharing from "./de/sharing.json" with { type: "json" };
import sheet from "./de/sheet.json" with { type: "json" };
import sheetDesk from "./de/sheet-desk.json" with { type: "json" };
import sheetYear from "./de/sheet-year.json" with { type: "json" };
import store from "./de/store.json" with { type: "json" };
import sun from "./de/sun.json" with { type: "json" };
import takeoff from "./de/takeoff.json" with { type: "json" };
import takeoffDrip from "./de/takeoff-drip.json" with { type: "json" };
import takeoffLasting from "./de/takeoff-lasting.json" with { type: "json" };
import underlay from "./de/underlay.json" with { type: "json" };
import units from "./de/units.json" with { type: "json" };
import upkeep from "./de/upkeep.json" with { type: "json" };
import water from "./de/water.json" with { type: "json" };
import words from "./de/words.json" with { type: "json" };

/** German: one file an area of the program, each text in one of them. */
const german: Catalogue = {
  ...barrow,
  ...card,
  ...climate,
  ...crops,
  ...garden,
  ...irrigation,
  ...keeping,
  ...layout,
  ...ledgerShell,
  ...ledgerSite,
  ...ledgerSnags,
  ...ledgerSun,
  ...ledgerTakeoff,
  ...ledgerWater,
  ...ledgerYear,
  ...measuring,
  ...moment,
  ...offline,
  ...page,
  ...parcels,
  ...places,
  ...plan,
  ...planting,
  ...rules,
  ...sharing,
  ...sheet,
  ...sheetDesk,
  ...sheetYear,
  ...store,
  ...sun,
  ...takeoff,
  ...takeoffDrip,
  ...takeoffLasting,
  ...underlay,
  ...units,
  ...upkeep,
  ...water,
  ...words,
};

export default german;
