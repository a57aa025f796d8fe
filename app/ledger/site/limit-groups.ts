import { type LimitId, limitIds, word } from "../../../src/index.ts";

const GROUPS = [
  word("Reach"),
  word("Ways"),
  word("Wheelchair"),
  word("Sun"),
  word("Soil"),
  word("Frame"),
  word("Place"),
] as const;
export type LimitGroup = (typeof GROUPS)[number];

/** Where each limit stands in the Site leaf. A new limit does not compile until it has a place here. */
const GROUP_OF: Readonly<Record<LimitId, LimitGroup>> = {
  reach: "Reach",
  seatedReach: "Reach",
  childReach: "Reach",
  seatedRim: "Reach",
  seatedSoil: "Reach",
  knees: "Reach",
  standingRoom: "Ways",
  kneelingWay: "Ways",
  barrowWay: "Ways",
  together: "Ways",
  kitchenWalk: "Ways",
  hose: "Ways",
  wheelchairWay: "Wheelchair",
  wheelchairPinch: "Wheelchair",
  wheelchairPinchRun: "Wheelchair",
  wheelchairPinchApart: "Wheelchair",
  wheelchairGate: "Wheelchair",
  turnElement: "Wheelchair",
  turnApproach: "Wheelchair",
  turnAt: "Wheelchair",
  turnAtException: "Wheelchair",
  turningCircle: "Wheelchair",
  passingEvery: "Wheelchair",
  passingSpace: "Wheelchair",
  runningSlope: "Wheelchair",
  crossSlope: "Wheelchair",
  sun: "Sun",
  sunLeast: "Sun",
  bedShade: "Sun",
  hardDepth: "Soil",
  openDepth: "Soil",
  meshForGophers: "Soil",
  meshForVoles: "Soil",
  bedSlope: "Soil",
  allMixTo: "Soil",
  layeredFrom: "Soil",
  layeredMix: "Soil",
  stakeEvery: "Frame",
  tiesFrom: "Frame",
  engineerFrom: "Frame",
  bow: "Frame",
  gateClear: "Place",
  tapClear: "Place",
  rootZone: "Place",
  walnut: "Place",
  walnutCaution: "Place",
  oldPaint: "Place",
};

export const groupOf = (id: LimitId): LimitGroup => GROUP_OF[id];

export const LIMIT_GROUPS: readonly { readonly group: LimitGroup; readonly ids: readonly LimitId[] }[] =
  GROUPS.map((group) => ({ group, ids: limitIds.filter((id) => GROUP_OF[id] === group) }));
