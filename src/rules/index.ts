import { bedInPath } from "./bed-in-path.ts";
import { bedInTreeRoots } from "./bed-in-tree-roots.ts";
import { blockedDoor } from "./blocked-door.ts";
import { blockedTap } from "./blocked-tap.ts";
import { boardWastingSize } from "./board-wasting-size.ts";
import { coarseMesh } from "./coarse-mesh.ts";
import { deckLoad } from "./deck-load.ts";
import { layeredShallowBed } from "./layered-shallow-bed.ts";
import { longHose } from "./long-hose.ts";
import { longRootsOverMesh } from "./long-roots-over-mesh.ts";
import { longWalk } from "./long-walk.ts";
import { narrowDrawnPath } from "./narrow-drawn-path.ts";
import { narrowMainWay } from "./narrow-main-way.ts";
import { narrowPath } from "./narrow-path.ts";
import { nativeFill } from "./native-fill.ts";
import { nearOldPaint } from "./near-old-paint.ts";
import { nearWalnut } from "./near-walnut.ts";
import { noDoor } from "./no-door.ts";
import { noLiner } from "./no-liner.ts";
import { noMesh } from "./no-mesh.ts";
import { noRoomForPlanting } from "./no-room-for-planting.ts";
import { noTap } from "./no-tap.ts";
import { noTrellis } from "./no-trellis.ts";
import { outOfSeasonPlanting } from "./out-of-season.ts";
import { outsideYard } from "./outside-yard.ts";
import { overlapping } from "./overlapping.ts";
import { overlappingPlantings } from "./overlapping-plantings.ts";
import { plantingOutsideBed } from "./planting-outside-bed.ts";
import { plantsTooClose } from "./plants-too-close.ts";
import { postsThroughMesh } from "./posts-through-mesh.ts";
import type { Rule } from "./rule.ts";
import { sameFamilyAgain } from "./same-family-again.ts";
import { sealedOffBed } from "./sealed-off-bed.ts";
import { shadedByBed } from "./shaded-by-bed.ts";
import { shadedByCrop } from "./shaded-by-crop.ts";
import { shallowSoil } from "./shallow-soil.ts";
import { slopingBed } from "./sloping-bed.ts";
import { sunHungryCrops } from "./sun-hungry-crops.ts";
import { tallWall } from "./tall-wall.ts";
import { thinMixOnTop } from "./thin-mix-on-top.ts";
import { thirstyDripBed } from "./thirsty-drip-bed.ts";
import { tooLittleSun } from "./too-little-sun.ts";
import { trellisInWind } from "./trellis-in-wind.ts";
import { undrainedBed } from "./undrained-bed.ts";
import { unevenDripLine } from "./uneven-drip-line.ts";
import { unfedDripLines } from "./unfed-drip-lines.ts";
import { unlayeredDeepFill } from "./unlayered-deep-fill.ts";
import { unreachableSoil } from "./unreachable-soil.ts";
import { unsafeTap } from "./unsafe-tap.ts";
import { unsafeTimber } from "./unsafe-timber.ts";
import { untestedFill } from "./untested-fill.ts";
import { untiedFrame } from "./untied-frame.ts";
import { weakFrame } from "./weak-frame.ts";
import { wheelchairDeadEnd } from "./wheelchair-dead-end.ts";
import { wheelchairGateRoom } from "./wheelchair-gate-room.ts";
import { wheelchairHighRim } from "./wheelchair-high-rim.ts";
import { wheelchairLowSoil } from "./wheelchair-low-soil.ts";
import { wheelchairNarrowGate } from "./wheelchair-narrow-gate.ts";
import { wheelchairNarrowWay } from "./wheelchair-narrow-way.ts";
import { wheelchairNoKneeRoom } from "./wheelchair-no-knee-room.ts";
import { wheelchairNoPassingSpace } from "./wheelchair-no-passing-space.ts";
import { wheelchairNoTurningSpace } from "./wheelchair-no-turning-space.ts";
import { wheelchairSoftWay } from "./wheelchair-soft-way.ts";
import { wheelchairSteepWay } from "./wheelchair-steep-way.ts";
import { wheelchairTightHalfTurn } from "./wheelchair-tight-half-turn.ts";

/** Every rule a garden is held to: must fix, then should fix, then worth knowing; snags of a grade keep this order. */
export const RULES: readonly Rule[] = [
  // must fix
  unreachableSoil,
  narrowPath,
  narrowDrawnPath,
  outsideYard,
  overlapping,
  bedInPath,
  blockedDoor,
  sealedOffBed,
  shallowSoil,
  tooLittleSun,
  noLiner,
  noMesh,
  coarseMesh,
  undrainedBed,
  deckLoad,
  wheelchairNarrowWay,
  wheelchairNarrowGate,
  wheelchairGateRoom,
  wheelchairTightHalfTurn,
  wheelchairNoTurningSpace,
  wheelchairDeadEnd,
  wheelchairNoPassingSpace,
  wheelchairSoftWay,
  wheelchairSteepWay,
  wheelchairHighRim,
  wheelchairLowSoil,
  wheelchairNoKneeRoom,
  // should fix
  narrowMainWay,
  longWalk,
  longHose,
  blockedTap,
  weakFrame,
  untiedFrame,
  tallWall,
  unsafeTimber,
  nearOldPaint,
  bedInTreeRoots,
  nearWalnut,
  sunHungryCrops,
  shadedByBed,
  shadedByCrop,
  longRootsOverMesh,
  noTrellis,
  trellisInWind,
  sameFamilyAgain,
  outOfSeasonPlanting,
  overlappingPlantings,
  plantingOutsideBed,
  plantsTooClose,
  noRoomForPlanting,
  unlayeredDeepFill,
  layeredShallowBed,
  thinMixOnTop,
  nativeFill,
  unsafeTap,
  unfedDripLines,
  thirstyDripBed,
  unevenDripLine,
  // worth knowing
  noDoor,
  noTap,
  slopingBed,
  postsThroughMesh,
  untestedFill,
  boardWastingSize,
];
