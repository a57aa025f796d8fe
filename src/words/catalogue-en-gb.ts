import type { Catalogue } from "./catalogue.ts";
import words from "./en-GB/words.json" with { type: "json" };

const british: Catalogue = { ...words };

export default british;
