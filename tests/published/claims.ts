/**
 * Which file checks which published case, and which cases are left out and why. `coverage.test.ts` fails for a case
 * that is in neither list, in both, or claimed by a file that does not mention it.
 */
export const CLAIMS: Readonly<Record<string, readonly string[]>> = {
  "reach.test.ts": ["AC-20", "AC-22", "AC-23", "AC-33"],
  "wheelchair.test.ts": [
    ...["AC-01", "AC-02", "AC-03", "AC-04", "AC-05", "AC-06", "AC-07", "AC-08", "AC-09", "AC-10", "AC-11"],
    ...["AC-12", "AC-13", "AC-14", "AC-15", "AC-16", "AC-17", "AC-18", "AC-19", "AC-21", "AC-24", "AC-25"],
    ...["AC-26", "AC-27", "AC-28", "AC-29", "AC-30", "AC-31", "AC-32"],
  ],
  "cover-crops.test.ts": ["HB-01", "HB-02", "HB-03"],
  "lead.test.ts": ["LD-PB", "LD-PB2"],
  "trees.test.ts": ["TR-01", "TR-02", "TR-03"],
  "timber.test.ts": [
    ...["BF-01", "BF-02", "BF-03", "BF-04", "BF-05", "BF-06"],
    ...["SZ-01", "SZ-02", "SZ-03", "SZ-04", "SZ-05", "SZ-06", "SZ-07", "SZ-08"],
  ],
  "mesh.test.ts": ["MS-01", "MS-02", "MS-03", "MS-04", "MS-05"],
  "fill.test.ts": [
    ...["VL-01", "VL-02", "VL-03", "VL-04", "VL-05", "VL-06", "VL-07", "VL-08"],
    ...["VL-09", "VL-10", "VL-11", "VL-12", "VL-13", "VL-14", "VL-15", "VL-16"],
    ...["WT-01", "WT-02", "WT-03"],
  ],
  "cutting.test.ts": [
    ...["KY-1", "KY-2"],
    ...["CS-01", "CS-02", "CS-03", "CS-04", "CS-05", "CS-06", "CS-07", "CS-08", "CS-09", "CS-10", "CS-11"],
    ...["CS-12", "CS-13", "CS-14", "CS-15", "CS-16", "CS-17", "CS-18", "CS-19", "CS-20", "CS-21", "CS-22"],
  ],
  "structure.test.ts": [
    ...["RK-01", "RK-02", "RK-03", "RK-04", "RK-05"],
    ...["BR-01", "BR-02", "BR-03", "BR-04", "BR-05"],
    ...["ST-01", "ST-02", "ST-03", "LD-01", "LD-02", "SC-01"],
  ],
};

const LIFTING = "lifting limits are printed as a caution in words; the equation is not worked out";

export const LEFT_OUT: Readonly<Record<string, string>> = {
  "NI-01": LIFTING,
  "NI-02": LIFTING,
};

/**
 * The sections of the compilation of water.json, and the file that runs each. Every case of a section is run unless it is
 * left out below.
 */
export const WATER_CLAIMS: Readonly<Record<string, readonly string[]>> = {
  "evapotranspiration.test.ts": ["fao_ra_examples", "fao_table26_27", "pm", "hargreaves"],
  "crop-water.test.ts": ["kc", "fw"],
  "soil-water.test.ts": ["p_adjust", "soil_water", "taw", "water_volume", "water_rules"],
  "pipes.test.ts": ["hazen_williams", "christiansen", "drip_lateral"],
  "drip.test.ts": ["drip_facts"],
  "rates.test.ts": ["drip_rate", "rate_conversion"],
};

const GROUP = "every crop of this group in the crop table has a row of its own, so the group's is not used";

export const WATER_LEFT_OUT: Readonly<Record<string, string>> = {
  "KC-D24": "dry beans are not a crop of the crop table; beans are grown for their pods",
  "KC-D32": GROUP,
  "KC-D33": GROUP,
  "KC-D34": GROUP,
};
