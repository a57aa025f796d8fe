import type { Catalogue } from "./catalogue.ts";
import words from "./de/words.json" with { type: "json" };

const german: Catalogue = { ...words };

export default german;
