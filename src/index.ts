/**
 * The public face of the engine, and the only file of it that `app/` imports. Pure functions on plain data: nothing
 * here touches the page, the clock or chance.
 */

export { access } from "./access/access.ts";
export { freeGround } from "./access/free-ground.ts";
export { gapsFrom, gapsOf } from "./access/gaps.ts";
export { type Direction, type SideDimension, sideDimensions } from "./access/side-dimensions.ts";
export { roomToStand } from "./access/standing.ts";
export type {
  Access,
  BedAccess,
  Gap,
  Purpose,
  Route,
  Side,
  TurningSpace,
  Way,
  WheelchairAccess,
} from "./access/types.ts";
export { walkBetween } from "./access/walk-between.ts";
export {
  CROP_SOURCE_CODES,
  CROP_SOURCES,
  CROPS,
  type Crop,
  cropById,
  type Range,
  type RootClass,
} from "./crops/crop-table.ts";
export { cropWord } from "./crops/crop-word.ts";
export { type Below, ROOT_RUN_SOURCES, rootRun } from "./crops/root-run.ts";
export { poundsPerAcre, seedFor } from "./crops/seed-rate.ts";
export { EXAMPLES, type Example } from "./examples/index.ts";
export { type Alignment, alignOps, spaceOps, turnOps } from "./garden/arrange.ts";
export { boundsOfItem, boundsOfItems } from "./garden/bounds-of-item.ts";
export type { GardenClimate } from "./garden/climate-field.ts";
export { duplicateOps, removeOps } from "./garden/copies.ts";
export { type CropId, isCropId } from "./garden/crop-ids.ts";
export { describeItem } from "./garden/describe-item.ts";
export { EDITIONS, type EditionId, editionIds } from "./garden/editions.ts";
export { emptyGarden } from "./garden/empty-garden.ts";
export { type ItemId, itemId } from "./garden/fields.ts";
export { type Frame, frameOf, wallSize } from "./garden/frame.ts";
export type { Garden, Gardener, GardenPrices, Site } from "./garden/garden.ts";
export { GardenFileError, readGarden, readGardenText, writeGarden } from "./garden/garden-file.ts";
export { headingOf } from "./garden/heading.ts";
export { type Item, type ItemOf, type Kind, unreachable } from "./garden/item.ts";
export { defaultLimit, LIMITS, type LimitId, type Limits, limitIds, limitsOf } from "./garden/limits.ts";
export { nameOf, ownName } from "./garden/name-of.ts";
export { BARROW, freshId, isPreset, newItem, type Preset } from "./garden/new-item.ts";
export type { Op } from "./garden/op.ts";
export { applyOps } from "./garden/operations.ts";
export { outlineOf } from "./garden/outline.ts";
export { plainText } from "./garden/plain-text.ts";
export { cropIdsOf, growing, newPlanting, type Planting, withoutCrops } from "./garden/plantings.ts";
export { LEAD_LEVELS, type LeadLevel, leadVerdicts } from "./garden/soil-lead.ts";
export type { Source } from "./garden/source.ts";
export { orderOps, type Stacking } from "./garden/stacking.ts";
export { BOARD_SIZES, type BoardSize, boardSize, ownBoardName } from "./garden/timber-sizes.ts";
export type { Underlay } from "./garden/underlay.ts";
export { COVER_CROP_IDS, type CoverCropId, type Upkeep } from "./garden/upkeep-field.ts";
export type { BedWatering, GardenWater } from "./garden/watering.ts";
export { insertCorner, removeCorner, yardWithSide } from "./garden/yard-sides.ts";
export { boundsOf, centroid, clockwise, contains, signedArea } from "./geometry/ring.ts";
export type { Shape } from "./geometry/shape.ts";
export { isSimple } from "./geometry/simple.ts";
export type { Box, Point, Region, Ring } from "./geometry/types.ts";
export {
  add,
  cross,
  distance,
  dot,
  midpoint,
  placed,
  scale,
  subtract,
  turned,
  turnedAbout,
  unplaced,
} from "./geometry/vector.ts";
export { bedWaterYears } from "./irrigation/bed-water-year.ts";
export { dripPlan } from "./irrigation/drip-plan.ts";
export { type ClimateFound, climateOf, type KnownClimate } from "./irrigation/garden-climate.ts";
export { tubingWords } from "./irrigation/tubing-words.ts";
export type {
  BedDrip,
  BedWaterYear,
  DripPlan,
  DripSupply,
  DripTrouble,
  DripZone,
  Fitting,
  FittingKey,
} from "./irrigation/types.ts";
export { type BestPlace, bestPlace } from "./layout/best-place.ts";
export {
  type InTheWay,
  type Shift,
  type ShiftSearch,
  searchShift,
  shiftToClear,
  whyNoShift,
} from "./layout/shift-to-clear.ts";
export { shiftWay } from "./layout/shift-way.ts";
export { LAYERS, type Layer, linework, type Stroke } from "./linework/linework.ts";
export { type KnownPoint, knownPoints, ownPoints } from "./measuring/known-points.ts";
export { placesByTape, type Tape, TapeError } from "./measuring/tape.ts";
export { type Leg, legsOf, type Traverse, traverse } from "./measuring/traverse.ts";
export { centreOf, type LaidOut, laidOut } from "./parcels/laid-out.ts";
export { type Parcel, ParcelFileError, readParcels } from "./parcels/read-parcels.ts";
export type { LonLat } from "./parcels/tangent-plane.ts";
export { type PlantCount, plantCount } from "./planting/counts.ts";
export { type FrostSite, type Frosts, frostsOf, USUAL_FROSTS } from "./planting/frosts.ts";
export { longSide } from "./planting/long-side.ts";
export { plantsOf } from "./planting/plants.ts";
export { HARDINESS, isPerennial, SOWING_SOURCES, type Sowing, sowingOf } from "./planting/sowing-table.ts";
export { type SetWindow, type SowingWindow, sowingWindow } from "./planting/sowing-window.ts";
export { bedSpacing, SPACING_SOURCES, type Spacing, spacingOf } from "./planting/spacing.ts";
export { standingsOf } from "./planting/standings.ts";
export type { PlantedPatch, Standing } from "./planting/types.ts";
export {
  daysFrom,
  meetInTime,
  monthDayOf,
  type Stretch as YearStretch,
  yearDay,
} from "./planting/year-day.ts";
export { checkGarden, type Depth } from "./rules/check-garden.ts";
export type { Grade, Snag, SnagUnit, WayOut } from "./rules/rule.ts";
export { type RuleRow, rulesMarkdown, rulesTable } from "./rules/rules-table.ts";
export { isLeftOut, type Survey, survey } from "./rules/survey.ts";
export { buildSheet, type SheetOptions } from "./sheet/build-sheet.ts";
export { GRADE_SIGNS, SIGN_PARTS } from "./sheet/grade-signs.ts";
export { HATCH_TILES } from "./sheet/hatch-tiles.ts";
export { PAPER_IDS, PAPERS, type PaperId } from "./sheet/papers.ts";
export { type PlanPicture, planPicture } from "./sheet/plan-picture.ts";
export { sawAngleWords } from "./sheet/saw-angles.ts";
export type { Hatch, Mark, Sheet } from "./sheet/types.ts";
export { type YearSheet, yearSheet } from "./sheet/year-sheet.ts";
export { type BedMonth, bedMonths, type ShadeSpell, type SunStretch } from "./sun/bed-months.ts";
export { bedPlane, hoursOn } from "./sun/bed-plane.ts";
export { TRELLIS } from "./sun/casters.ts";
export { type ClockTime, clockTime, formatClock, instantAt, isTimeZone } from "./sun/clock.ts";
export { formatMonthDay, MONTH_NAMES, monthName } from "./sun/day.ts";
export { LEAF_MONTHS, leafMonths } from "./sun/leaf.ts";
export { SUN_CLOSER, SUN_LIVE, SUN_SETTLED, type SunOptions } from "./sun/options.ts";
export { SUN_PLACES, SUN_PLACES_SOURCE, type SunPlace } from "./sun/places.ts";
export {
  GROWING_SEASON,
  growingSeason,
  isInSeason,
  type Season,
  sampleDays,
  seasonDays,
  seasonOf,
} from "./sun/season.ts";
export { shadeSentences } from "./sun/shade-sentences.ts";
export { type Shadow, shadowsAt } from "./sun/shadow.ts";
export { type SkylinePoint, skylineAt } from "./sun/skyline.ts";
export { type SunCost, sunCosts } from "./sun/sun-costs.ts";
export { sunFollowing } from "./sun/sun-following.ts";
export { bedShade, sunHours } from "./sun/sun-hours.ts";
export type { BedSun, DayHours, Shade, Spell, SunGrid, SunMap } from "./sun/sun-map.ts";
export { type SunPosition, sunPosition } from "./sun/sun-position.ts";
export { type SunTimes, sunTimes } from "./sun/sun-times.ts";
export type { AimedPlan, CutJob } from "./takeoff/aimed-plan.ts";
export type { ProvenPlans } from "./takeoff/buy-boards.ts";
export { type Carrying, carrying } from "./takeoff/carrying.ts";
export { costOf } from "./takeoff/cost-of.ts";
export { countedBy } from "./takeoff/counted.ts";
export { takeoffCsv } from "./takeoff/csv.ts";
export { cutBoards, proveCutPlan } from "./takeoff/cutting/cut-boards.ts";
export { type LayeringSaving, layeringSavings } from "./takeoff/layering.ts";
export { proveBoardPlan } from "./takeoff/proof.ts";
export { type Stage, stagesOf } from "./takeoff/stages.ts";
export { type PriceRow, priceKeysOf, type TakeoffOptions, takeoff } from "./takeoff/takeoff.ts";
export { TIMBERS, type Timber, timberById } from "./takeoff/timbers.ts";
export type {
  Aim,
  BedTakeoff,
  BoardPlan,
  CutBoard,
  CutPlan,
  Ends,
  Line,
  Piece,
  Stock,
  Takeoff,
} from "./takeoff/types.ts";
export { compareWalls, type WallChoice } from "./takeoff/wall-choices.ts";
export { costAYear, type Renewal, type YearCost } from "./takeoff/year-cost.ts";
export { decimalMark, fixed } from "./units/decimals.ts";
export {
  figure,
  formatArea,
  formatBulk,
  formatHours,
  formatMoney,
  formatRatio,
  formatShare,
  formatVolume,
  formatWeight,
} from "./units/format-figure.ts";
export { formatDistance, formatLength, formatShort, formatSpoken } from "./units/format-length.ts";
export { FOOT, INCH, SAME_LENGTH, type Units } from "./units/length.ts";
export { LengthError } from "./units/length-error.ts";
export { parseLength } from "./units/parse-length.ts";
export { parseRatio } from "./units/parse-ratio.ts";
export {
  formatFlow,
  formatPressure,
  formatWater,
  KPA_PER_PSI,
  LITRES_PER_GALLON,
} from "./units/water-measures.ts";
export { type CalendarOptions, calendarText } from "./upkeep/calendar-text.ts";
export { COVER_CROPS, type CoverCrop, coverCropAt } from "./upkeep/cover-crops.ts";
export { TASK_KIND_LABELS } from "./upkeep/kind-labels.ts";
export { type Lane, lanesOf } from "./upkeep/lanes.ts";
export { comesUpIn, TASK_KINDS, type Task, type TaskKind } from "./upkeep/types.ts";
export { yearRound } from "./upkeep/year-round.ts";
export {
  YEAR_PARTS,
  type YearAhead,
  type YearlyPrice,
  type YearParts,
  type YearsAhead,
  yearsAhead,
} from "./upkeep/years-ahead.ts";
export { type BedWater, bedNeed, type MonthNeed, type WateredCrop } from "./water/bed-need.ts";
export { dayOfYear, MONTH_DAYS } from "./water/calendar.ts";
export {
  type Climate,
  type Guessed,
  type MonthWeather,
  type Place,
  type ReferenceMonth,
  referenceMonths,
} from "./water/climate.ts";
export { type KcCurve, kcOn, type StageAir, stagesOver } from "./water/crop-coefficient.ts";
export {
  CROP_WATER_SOURCES,
  type CropWater,
  cropStagesSource,
  cropWater,
  cropWaterSource,
  type Stages,
} from "./water/crop-water.ts";
export { type Delivery, EFFICIENCY } from "./water/delivery.ts";
export { type DripLine, type DripLineFlow, dripLine, longestLine } from "./water/drip-line.ts";
export { EFFECTIVE_RAIN_SOURCE, effectiveRain } from "./water/effective-rain.ts";
export { type Emitter, emitterExponent, emitterFlowLh } from "./water/emitter.ts";
export type { Humidity } from "./water/humidity.ts";
export { MULCHED_SOURCE } from "./water/mulched-soil.ts";
export { christiansenFactor, lateralLossKPa } from "./water/outlets.ts";
export { hazenWilliamsKPa, KPA_PER_M, type PipeRun, pipeLossKPa, speedMs } from "./water/pipe.ts";
export type { Setting, Sunshine } from "./water/radiation.ts";
export { hargreaves, penmanMonteith, type ReferenceSteps, type Weather } from "./water/reference.ts";
export { type GroundBelow, rootRoomOf } from "./water/root-room.ts";
export {
  easyShareAt,
  type RootRoom,
  readilyAvailable,
  rootDepthOn,
  totalAvailable,
} from "./water/root-store.ts";
export {
  dripRate,
  minutesFor,
  type Runs,
  rainRate,
  runsOf,
  type ZoneBed,
  zoneMinutes,
  zoneYear,
} from "./water/run-time.ts";
export { type Sky, skyOf } from "./water/sky.ts";
export {
  MIX_SOURCE,
  type SoilWater,
  soilOfMix,
  soilOfTexture,
  TEXTURES,
  TEXTURES_SOURCE,
  type Texture,
  type TextureId,
} from "./water/soil-water.ts";
export {
  bucketFlowLh,
  pressureAtLines,
  type TapSupply,
  type TapToLines,
  tapPressureKPa,
  USABLE_SHARE,
  USABLE_SHARE_SOURCE,
  zoneLimitLh,
} from "./water/tap-flow.ts";
export {
  DRIP_TAPE,
  GARDEN_LINE,
  LINE_VARIATION,
  PLASTIC_SMOOTHNESS,
  RUN_LIMITS,
  TUBING,
  type Tubing,
} from "./water/tubing.ts";
export { type Uniformity, uniformityOf } from "./water/uniformity.ts";
export { type BalanceDay, type BalanceResult, waterBalance } from "./water/water-balance.ts";
export { litresByRule, WEEKLY_RULE } from "./water/weekly-rule.ts";
export { WETTED, WETTED_SOURCE, WETTING_SOURCE, type Wetting } from "./water/wetted-soil.ts";
export { type BedLines, planZones, type Zone, type ZonePart, type ZonePlan } from "./water/zones.ts";
export { capital, listed, midSentence, numberWord } from "./words/phrases.ts";
export { say, sayCount, told, toldWhenRead, word } from "./words/say.ts";
export { speakIn } from "./words/speak-in.ts";
export { LANGUAGES, type Language, language } from "./words/speaker.ts";
