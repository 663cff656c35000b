/**
 * The public face of the model: what the shells (page, worker, command line) may use, in the
 * order of the work.
 */

export { CrosscoatError, type ErrorCode, type Place, type Warning, type WarningCode } from './base/errors.ts';
export { parseQuantity, unitSize, type QuantityName } from './base/units.ts';
export { cellAt, cellCount, type Grid } from './base/grid.ts';
export { gunAxes, type GunAxes, type Vector } from './base/gunAxes.ts';
export { fanScale, raySource } from './base/raySource.ts';

export * from './job/defaults.ts';
export * from './job/demo.ts';
export { jobJsonSchema } from './job/jsonSchema.ts';
export { parseJob, type ParsedJob } from './job/parse.ts';
export {
  JobSchema,
  LONGEST_RECORDING,
  SCHEMA_VERSION,
  type CoatSpec,
  type Job,
  type PanelSpec,
  type PlanSpec,
  type RecordingSpec,
  type SetUpSpec,
  type ShapeSpec,
  type TargetSpec,
} from './job/schema.ts';
export { serialiseJob } from './job/serialise.ts';

export { makePanel } from './panel/makePanel.ts';
export { nearestEdge, type NearestEdge } from './panel/nearestEdge.ts';
export type { Attitude, Panel, Polygon } from './panel/panel.ts';
export type { PanelGrid } from './panel/panelGrid.ts';
export { rasterisePanel } from './panel/rasterisePanel.ts';

export { makeSpray } from './gun/makeSpray.ts';
export type { Profile, SetUp } from './gun/setUp.ts';
export { makeSetUp } from './gun/setUpFromSpec.ts';
export type { Arrival, Footprint, Spray } from './gun/spray.ts';

export { aimOf, poseAt, type Aim, type Path, type Pose } from './stroke/path.ts';
export type { Planned, StrokePlan } from './stroke/plan.ts';
export { createRecordingReader, type Recording, type RecordingReader } from './stroke/recordingReader.ts';
export type { MeantStroke, Stop, Stroke, StrokeMeasures } from './stroke/stroke.ts';
export { RECORDING_HEADER, writeRecording } from './stroke/writeRecording.ts';

export type { PaintAccount } from './deposit/deposit.ts';
export type { LayMethod } from './deposit/pieces.ts';
export { strokesAt, type StrokeShare } from './deposit/strokesAt.ts';
export type { Film } from './film/film.ts';
export type { FilmLaw } from './film/law.ts';
export { PEEL_BANDS_M } from './film/level/peel.ts';
export { momentFigures, type MomentFigures } from './film/life/momentFigures.ts';
export type { FilmMoment } from './film/life/snapshot.ts';

export { filmFigures, inTargetFraction } from './verdict/figures.ts';
export { JUDGED_COVER, limitOf, marginOf } from './verdict/judged.ts';
export type { LifeFigures, LifeVerdict } from './verdict/lifeVerdict.ts';
export type { LifeLimits, Target } from './verdict/target.ts';
export type { Cause, CauseKind, Change, ConditionChange, Cure, Fault, FaultKind, FilmFigures, RunCourse, TravelChange, Verdict, Zone } from './verdict/verdict.ts';

export { changedStrokes } from './run/changedStrokes.ts';
export { dryTimes, LONGEST_WATCH_S, runLife, type CoatLife, type LifeOptions } from './run/coatLife.ts';
export { fanWidth_m } from './run/fan.ts';
export { flattestOverlap, overlapCv, strokeAcross } from './run/flattestOverlap.ts';
export { judgeCoat, type JudgeOptions } from './run/judge.ts';
export { judgeLife, type JudgeLifeOptions } from './run/judgeLife.ts';
export { layCoat, type LayOptions, type Travel } from './run/lay.ts';
export { filmsAtPlaces, type PlaceFilms } from './run/placeFilms.ts';
export { coatMoment, copyCoat, liveUntil, startCoat, type LivingCoat } from './run/livingCoat.ts';
export { meanPlannedFilm_m } from './run/planTrials.ts';
export { readRecording } from './run/readRecording.ts';
export { recordingOf } from './run/recordingOf.ts';
export type { CoatResult, CoatSetting, CoatStrokes, LaidCoat } from './run/result.ts';
export { runJob, type RunOptions } from './run/runJob.ts';
export { settleCoat, type SettleOptions } from './run/settle.ts';
export { strokesOf } from './run/strokes.ts';

export * from './picture/colours.ts';
export * from './picture/field.ts';
export * from './picture/filmPicture.ts';
export * from './picture/hatch.ts';
export * from './picture/legend.ts';
export * from './picture/momentField.ts';
export * from './picture/strokeLines.ts';
export * from './picture/strokesSvg.ts';
export * from './picture/zoneRim.ts';

export * from './report/causeText.ts';
export * from './report/cautions.ts';
export * from './report/cureText.ts';
export * from './report/faultFigures.ts';
export * from './report/faultJson.ts';
export * from './report/filmCsv.ts';
export * from './report/lifeReport.ts';
export * from './report/planReport.ts';
export * from './report/reportJson.ts';
export * from './report/reportText.ts';
export * from './report/reported.ts';
export * from './report/sentences.ts';
export * from './report/strokeJson.ts';
export * from './report/strokesCsv.ts';
export * from './report/strokesTable.ts';
export * from './report/units.ts';
export * from './report/words.ts';

export type { AirSpec, BackingWord, MixSpec } from './job/schema.ts';

export { backingById, BACKINGS, type Backing } from './materials/backings.ts';
export { blendDensity_kg_m3, moleFractions, volumeFractions, type BlendPart, type MolePart } from './materials/blend.ts';
export { cupById, CUPS, type Cup } from './materials/cups.ts';
export type { Finish } from './materials/finish.ts';
export { finishById, FINISHES } from './materials/finishes.ts';
export { vapourPressure_Pa, type Solvent } from './materials/solvent.ts';
export { solventById, SOLVENTS } from './materials/solvents.ts';
export type { Sourced } from './materials/sourced.ts';
export { thinnerById, THINNERS, type Thinner } from './materials/thinners.ts';

export { changedMixSpec, genericMixSpec, USUAL_RETARDER, type MixChange } from './mix/changedMixSpec.ts';
export { cupSeconds, cupViscosity_m2_s, isInCupRange } from './mix/cups.ts';
export { genericMix } from './mix/genericMix.ts';
export { makeMix } from './mix/makeMix.ts';
export type { Mix, MixSolvent, SolventClass, ViscosityLaw } from './mix/mix.ts';
export { fittedSensitivity_K, viscosity_Pa_s } from './mix/viscosity.ts';

export { airAnswer, type AirAnswer, type AirQuestion, type RetardedMix, type RetarderAnswer } from './air/airAnswer.ts';
export { dryingFactor, ruleDryingRatio, type DryingFactor } from './air/dryingFactor.ts';
export { evaporationLaw, pressureShareAt, type ClassEvaporation, type EvaporationLaw } from './air/evaporationLaw.ts';
export { criticalHumidityFraction, filmTemperature_K } from './air/filmTemperature.ts';
export { heatedAir, makeAir, type MoistAir } from './air/moistAir.ts';

export * from './report/airJson.ts';
export * from './report/airReport.ts';

export type { Demonstration, LessonMap, OtherSide } from './run/demonstrations/demonstration.ts';
export { SHOWN_COAT } from './run/demonstrations/demonstration.ts';
export { demonstrationById, DEMONSTRATIONS } from './run/demonstrations/demonstrations.ts';
export { lessonFields } from './run/demonstrations/lessonField.ts';
export { judgedAt, runDemonstration, runSide, sidesOf, type DemonstrationOptions, type DemonstrationResult, type DemonstrationSide, type SideChoice } from './run/demonstrations/runDemonstration.ts';
export type * from './report/reportedDemonstration.ts';
export * from './report/demonstrationText.ts';
export * from './report/demonstrationJson.ts';

export * from './report/measureWords.ts';

export { MEASURES, MORE_IS_BETTER, type Measure } from './job/measures.ts';
export { parseRubric, RUBRIC_VERSION, USUAL_RUBRIC, type RubricRowSpec, type RubricSpec } from './job/rubric.ts';
export { parseSession, serialiseSession, SESSION_VERSION, type SessionSpec, type TaskSpec } from './job/session.ts';
export type { HandSample, Wander } from './stroke/handStatistics.ts';
export type { StrokeTrace } from './stroke/traces.ts';
export type { Rubric, Score, ScoreRow, SessionFigures } from './verdict/score.ts';
export { debriefSession, markAgain, type Debrief, type DebriefOptions } from './run/practice/debrief.ts';
export { whatIf, WHAT_IFS } from './run/practice/whatIf.ts';
export type * from './report/reportedDebrief.ts';
export * from './report/debriefText.ts';
export * from './report/debriefJson.ts';

export { numberCell, textCell } from './report/csvCell.ts';
export { pooledHand } from './stroke/handStatistics.ts';
export { rubricFromSpec } from './verdict/score.ts';
export type { HandSpec, OwnHandSpec } from './job/schema.ts';
export { handSample, triggerWander } from './stroke/handStatistics.ts';
export { ownHand, ownHandSpec } from './stroke/ownHand.ts';
export { wanderNoise } from './base/noise.ts';
export { LiveSpray } from './run/practice/liveSpray.ts';
export { emptyShownFilm, writeShown, type LiveValue, type ShownFilm } from './run/practice/liveView.ts';
export { filmBeneath } from './run/coatLife.ts';
export { PathBuilder } from './stroke/pathBuilder.ts';
export { handNow, type HandNow } from './stroke/handNow.ts';
export { courseOf } from './stroke/course.ts';
export { taskOf, type Drill } from './run/drills/drill.ts';
export { drillById, DRILLS } from './run/drills/drills.ts';
export { ownDrill } from './run/drills/ownDrill.ts';
export { rubricJsonSchema, sessionJsonSchema } from './job/jsonSchema.ts';
export { drillList, drillText, type ReportedDrill } from './report/drillText.ts';
export { drillJson } from './report/drillJson.ts';
export { AIR_ONLY, fluidShare } from './base/trigger.ts';
export { fanWidthRatio } from './run/fan.ts';
export { MEASURE_SIZE } from './verdict/score.ts';

// set-ups: card
export type { CardReadings } from './gun/card/cardReadings.ts';
export { caughtFlow } from './gun/card/caughtFlow.ts';
export type { FanFit, FitFamily, FitIntervals } from './gun/card/fanFit.ts';
export { fanFaults, type FanFault, type SpotShape } from './gun/card/fanFaults.ts';
export type { FanOpening } from './gun/card/fanOpening.ts';
export { fitFan } from './gun/card/fitFan.ts';
export { fitIntervals } from './gun/card/fitIntervals.ts';
export { fittedFilm } from './gun/card/fittedFilm.ts';
export type { Measured } from './gun/card/measured.ts';
export { parseReadings } from './gun/card/parseReadings.ts';
export type { CardPhoto, FilmMap, PhotoFan, PhotoTask } from './gun/card/photo/cardPhoto.ts';
export { readPhoto } from './gun/card/photo/readPhoto.ts';
export type { ProvedNumber } from './gun/card/provedNumber.ts';
export { proveSetUp, type ProvedFit, type ProvedSetUp } from './gun/card/proveSetUp.ts';
export { LONGEST_READINGS } from './job/cardSchema.ts';
export type { CardSpec } from './job/schema.ts';
export { FAN_CAUSE_WORDS, FAN_FAULT_WORDS, FAN_TEST_WORDS } from './report/fanFaultWords.ts';

// set-ups: reports
export * from './report/cardJson.ts';
export * from './report/cardText.ts';

// set-ups: window, side by side
export * from './picture/windowColours.ts';
export * from './picture/windowPicture.ts';
export * from './picture/windowSvg.ts';
export * from './report/comparedWords.ts';
export * from './report/compareJson.ts';
export * from './report/compareText.ts';
export * from './report/reportedComparison.ts';
export * from './report/overlapWords.ts';
export * from './report/sensitivityWords.ts';
export * from './report/windowJson.ts';
export * from './report/windowText.ts';
export * from './report/windowWords.ts';
export { compareSetUps } from './run/compare/compareSetUps.ts';
export type { CompareOptions, Comparison } from './run/compare/comparison.ts';
export { comparisonFields, type ComparedMap } from './run/compare/comparisonFields.ts';
export { setUpsPage, type SetUpsReport } from './run/compare/setUpsPage.ts';
export { settleSide, type StrokeChoice } from './run/compare/sideJob.ts';
export { describeWindow } from './run/window/describeWindow.ts';
export { overlapRipple, type OverlapRipple } from './run/window/overlapRipple.ts';
export { sensitivities } from './run/window/sensitivities.ts';
export { statedPoint, withAxis } from './run/window/sprayPoint.ts';
export { usualRange } from './run/window/usualRange.ts';
export { mapWindow, windowStrips } from './run/window/workingWindow.ts';
export { faultsOn, WINDOW_FAULTS } from './verdict/workingWindow.ts';
export type { PointFilm, Sensitivities, SprayPoint, WindowAxis, WindowDescription, WindowFault, WindowMap, WindowPlace, WindowPlane, WindowSide } from './verdict/workingWindow.ts';
export * from './picture/chanceField.ts';
export * from './report/handsJson.ts';
export * from './report/handsText.ts';
export { handsSetting, handsTable, type JudgedHands } from './run/hands/handsOfSetUps.ts';
export { HAND_FAULTS, mergeTallies, type HandsTally } from './run/hands/handsTally.ts';
export { judgeHands } from './run/hands/judgeHands.ts';
export { MOST_HANDS, sprayHands } from './run/hands/sprayHands.ts';
export type { HandsVerdict } from './verdict/handsVerdict.ts';
export * from './report/fitJson.ts';
export * from './report/fitText.ts';
export type * from './report/reportedFit.ts';
export { FIT_DISTANCES_M, FIT_OVERLAPS, FIT_SPEEDS_M_S, type FitLimits, type FitPasses, type FitRange, type Wish } from './run/fit/wish.ts';
export { workOut, type WorkedOut } from './run/fit/workOut.ts';

// scheme
export { LAYERS } from './job/schemeSchema.ts';
export type { ColourSpec, HourSpec, RoomSpec, SchemeSpec, StepSpec, SupplySpec, WorkingSpec } from './job/schema.ts';
export type { Origin, PlannedCoat, PlannedScheme, PlannedStep, Spread } from './scheme/planned.ts';

// scheme: air
export { CARE_MARGIN_K, CLIMATE_RULES, SURFACE_MARGIN_K, WARMEST_K } from './air/climateRules.ts';
export type { ClimateLimit, ClimateMeasure, ClimateRule, ClimateRuleId, ClimateVerdictWord } from './air/climateRules.ts';
export { climateVerdict, type ClimateReason, type ClimateVerdict, type RuleVerdict } from './air/climateVerdict.ts';
export { clockOf, localTimeOf, MINUTES_PER_DAY, minutesOf, weekdayOf } from './base/localTime.ts';
export * from './report/climateWords.ts';
export { dryEvenFilm, type EvenFilm, type EvenFilmDrying, type SolventLeft } from './run/scheme/evenFilm.ts';
export { planScheme, schemeOf } from './run/scheme/planScheme.ts';
