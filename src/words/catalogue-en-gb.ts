import type { Catalogue } from "./catalogue.ts";
import crops from "./en-GB/crops.json" with { type: "json" };
import rules from "./en-GB/rules.json" with { type: "json" };
import words from "./en-GB/words.json" with { type: "json" };

const british: Catalogue = { ...crops, ...rules, ...words };

export default british;
