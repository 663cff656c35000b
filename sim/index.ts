/**
 * The public face of the model: what the shells (page, worker, command line) may use, in the
 * order of the work.
 */

export { CrosscoatError, type ErrorCode, type Place, type Warning, type WarningCode } from './base/errors.ts';
export { CELSIUS_0_K, M2_S_PER_MM2_S, parseQuantity, unitSize, type QuantityName } from './base/units.ts';
export { evenScale, roundEnds, type Ends, type EvenScale } from './base/evenScale.ts';
export { cellAt, cellCount, type Grid } from './base/grid.ts';
export { gunAxes, type GunAxes, type Vector } from './base/gunAxes.ts';
export { fanScale, raySource } from './base/raySource.ts';

export * from './job/defaults.ts';
export * from './job/demo.ts';
export { jobJsonSchema } from './job/jsonSchema.ts';
export { parseJob, type ParsedJob } from './job/parse.ts';
export { LONGEST_RECORDING, SCHEMA_VERSION } from './job/schemaFacts.ts';
export {
  JobSchema,
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
export { RECORDING_HEADER, recordingRows, writeRecording } from './stroke/writeRecording.ts';

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
export { CARE_MARGIN_K, CLIMATE_RULES, WARMEST_K } from './air/climateRules.ts';
export { SURFACE_MARGIN_K } from './materials/surfaceMargin.ts';
export type { ClimateLimit, ClimateMeasure, ClimateRule, ClimateRuleId, ClimateVerdictWord } from './air/climateRules.ts';
export type { AirAdvice } from './air/airAdvice.ts';
export { airAt, airByHour, type AirAtTime, type AirByHour, type AirRow } from './air/airByHour.ts';
export { climateVerdict, type ClimateReason, type ClimateVerdict, type RuleVerdict } from './air/climateVerdict.ts';
export { checkRange, type CheckedNumber } from './base/check.ts';
export { clockOf, localTimeOf, MINUTES_PER_DAY, minutesOf, weekdayOf } from './base/localTime.ts';
export { dayVerdicts, recheckAfter, type DayVerdicts, type HourVerdict, type SprayedFilm, type Stretch, type Worsening } from './air/dayVerdicts.ts';
export { LONGEST_HOURS, MOST_HOURS_KEPT, readHours, type HoursRead } from './air/readHours.ts';
export { remedies, type Remedies, type Remedy, type RemedyQuestion } from './air/remedies.ts';
export { airAdvice, RETARDER_STEPS_percent, retardedMixes, type AirAdviceQuestion } from './run/scheme/airAdvice.ts';
export * from './report/airAdviceJson.ts';
export * from './report/airAdviceText.ts';
export * from './report/airDayWords.ts';
export * from './report/climateWords.ts';
export * from './report/remedyWords.ts';
export { dryEvenFilm, type EvenFilm, type EvenFilmDrying, type SolventLeft } from './run/scheme/evenFilm.ts';
export { planScheme, schemeOf } from './run/scheme/planScheme.ts';

// today
export type { TodayAnswer, TodayPart, TodayQuestion } from './scheme/today.ts';
export * from './report/todayFigures.ts';
export * from './report/todayJson.ts';
export * from './report/todayTaken.ts';
export * from './report/todayText.ts';
export * from './report/todayWorking.ts';
export * from './report/todayWords.ts';
export { answerToday } from './run/today/today.ts';
export { jobOfToday } from './run/today/jobOfToday.ts';
export { TODAY_LIMITS, TODAY_TEMPERATURES_C, USUAL_TODAY } from './run/today/usualToday.ts';

// scheme: quantities, weight, time, money
export type { AddedWeight, PanelWeight, PublishedBand, StepWeight } from './scheme/addedWeight.ts';
export { COTTON_kg_m2 } from './scheme/addedWeight.ts';
export { USUAL_AMOUNTS, type AmountOptions, type CoatAmount, type LiquidParts, type ProductAmount, type SchemeAmounts } from './scheme/amounts.ts';
export type { AmountsAnswer, PanelBalance } from './scheme/amountsAnswer.ts';
export { coatCoverage, coverageOf, type CoverageAnswer, type CoverageReading } from './scheme/coverage.ts';
export type { Labour } from './scheme/labour.ts';
export { SUPPLY_PRODUCTS, type MissingForCost, type ProductPurchase, type Purchase, type TotalCost } from './scheme/purchase.ts';
export { chooseTins, type TinChoice, type TinSize } from './scheme/tins.ts';
export { amountsCsv } from './report/amountsCsv.ts';
export { amountsJson } from './report/amountsJson.ts';
export { amountsText } from './report/amountsText.ts';
export * from './report/amountsWords.ts';
export { coverageSentence, coverageWorking } from './report/coverageWords.ts';
export { tinLabel } from './report/tinLabel.ts';
export { amountsOf, type AmountsOptions } from './run/scheme/amountsOf.ts';
export { hingeBalances } from './run/scheme/hingeBalances.ts';

// scheme: ventilation and vapour
export { faceAir, type FaceAir } from './air/boothAir.ts';
export type { RoomAir, VapourCourse, VapourSource } from './air/roomVapour.ts';
export { spillAnswer, type Spill, type SpillAnswer } from './air/spill.ts';
export { SEA_PRESSURE_Pa, type LiquidPart, type PublishedLimit, type RoomVapour, type VapourAir, type VapourPart } from './air/vapour.ts';
export { USUAL_ROOM } from './job/usualRoom.ts';
export type { AirNeeded, ReportedVapour } from './report/reportedVapour.ts';
export * from './report/vapourJson.ts';
export * from './report/vapourText.ts';
export { about, aboutPercent, aboutShown, courseSentences, faceSentence, fanSentence, limitSentences, SHIPYARD_RULE, shownPpm, shutSentence, solventSentence, VAPOUR_ASSUMPTIONS, VAPOUR_CAUTIONS, VAPOUR_DECIDES, VAPOUR_STATEMENT, vapourSentence } from './report/vapourWords.ts';
export { coatVapour, roomAirOf } from './run/scheme/coatVapour.ts';
export { schemeSolvent, solventByMinute } from './run/scheme/solventByMinute.ts';
export type { MinuteSolvent, SolventByMinute } from './scheme/solvent.ts';

// mix
export { cupByWord } from './materials/cups.ts';
export type { Between } from './mix/between.ts';
export { cupTime, cupTimeAt, secondsInRange, viscosityInRange_m2_s, type CupTime, type WarmedCup } from './mix/cupTime.ts';
export { LEFT_IN_POT_M3 } from './materials/potLoss.ts';
export { coatLiquid } from './scheme/amounts.ts';
export { USUAL_LANDED, type BatchNeed, type MixedParts, type PotFill } from './mix/mixBatch.ts';
export { parseRatio, type MixRatio, type PartDensities } from './mix/mixRatio.ts';
export { partDensities, specRatio } from './mix/partDensities.ts';
export { MOST_RETARDER, USUAL_RETARDER_SHARES } from './mix/retarder.ts';
export { thinnedSpec } from './mix/thinnedSpec.ts';
export type { ThinningReading } from './mix/thinningLaw.ts';
export { potSvg } from './report/html/potSvg.ts';
export { mixSlip } from './report/html/mixSlip.ts';
export * from './report/mixCautions.ts';
export * from './report/mixJson.ts';
export * from './report/mixText.ts';
export * from './report/mixWords.ts';
export * from './report/ratioWords.ts';
export type * from './report/reportedMixing.ts';
export { planMixing, type BatchAsked, type MixingAsked } from './run/mix/planMixing.ts';
export { USUAL_SENSITIVITY_K, type ThinningAsked } from './run/mix/planThinning.ts';
export { retarderSteps, type RetarderStep } from './run/mix/retarderSteps.ts';

// job card
export * from './report/html/jobCardPage.ts';
export * from './report/jobCardJson.ts';
export { jobCardText } from './report/jobCardText.ts';
export type { JobCard } from './report/reportedCard.ts';
export { jobCardOf } from './run/scheme/jobCardOf.ts';

// scheme: steps, rules, hiding, presets
export { counted } from './base/counted.ts';
export { filmStack, type StackedFilm } from './scheme/filmStack.ts';
export type { HidingRow } from './scheme/hidingRows.ts';
export type { SchemeFinding, SchemeRule } from './scheme/finding.ts';
export type { Preset, PresetNeed, PresetOptions, PresetParts } from './scheme/preset.ts';
export { presetById, presetParts, PRESETS, schemeFromPreset, wholeCoatCount, type FoundParts } from './scheme/presets.ts';
export { NOT_CHECKED, COAT_DEFINITIONS, COAT_DEFINITIONS_SOURCE, FIELD_LIGHT_RULE, FIX_WORDS, LAYER_WORDS, LEAVING_OUT, stepDetails, STEP_KIND_WORDS, stepReason, waitWords } from './report/schemeWords.ts';
export { schemeFindingWords, SEVERITY_WORDS, type FindingWords } from './report/schemeRuleWords.ts';
export { afterWords, dryWords, hidingSentences, ledgerRows, lightSentence, spreadWords, STRENGTH_NOTE, strengthSentences, totalSentences } from './report/schemeSections.ts';
export type { ReportedScheme } from './report/reportedScheme.ts';
export { presetJson, schemeJson } from './report/schemeJson.ts';
export { presetText, schemeText } from './report/schemeText.ts';
export { reportScheme } from './run/scheme/reportScheme.ts';

// days
export * from './report/clockWords.ts';
export * from './report/dayPlanWords.ts';
export { daysCalendar } from './report/daysCalendar.ts';
export * from './report/daysJson.ts';
export * from './report/daysText.ts';
export { groundDays, planDays, type DaysGround } from './run/scheme/planDays.ts';
export type { DayFinding } from './scheme/dayFindings.ts';
export type { DayHour, DayPlan } from './scheme/dayPlan.ts';
export type { DayTask } from './scheme/dayTask.ts';
export type { LaidChain, LaidTask, Timeline } from './scheme/timeline.ts';
export { dayOf, type WorkingHours } from './scheme/workingHours.ts';

// The record: what was done, and what the gauges read.
export { momentOf, offsetOfMoment, secondsOfMoment } from './base/moment.ts';
export type { ChangeSpec, LogEntrySpec, LogKind, ReadingSpec, RuleSpec, SignedSpec, SurveySpec } from './job/schema.ts';
export { LOG_KINDS, LONGEST_PHOTO, MOST_ENTRIES } from './job/logSchema.ts';
export { MOST_READINGS } from './job/surveySchema.ts';

// log: changes, sign-off, digests
export { canonicalForm, sha256Of, signedForm } from './log/digest.ts';
export { ONE_CHANGE_S, withChange } from './log/history.ts';
export { schemeProgress, waitBefore, type StepProgress, type StepState, type WaitBefore } from './log/progress.ts';
export type { Done, Recorded } from './log/recorded.ts';
export { LONGEST_REASON, reopened, signatureState, signed, takenBack, type SignatureState } from './log/signing.ts';
export { ACT_CAUTIONS, actsOf, type Act } from './report/actCautions.ts';
export { changeLines, momentShown, SIGNATURE_STATE_WORDS, SIGNING_NOTE, type ChangeLine } from './report/changeWords.ts';
export { logJson } from './report/logJson.ts';
export { logText } from './report/logText.ts';
export { combWords, entryCautions, entryLines, LOG_FAULTS, LOG_KIND_WORDS, notedAirWords, STEP_STATE_WORDS, waitedWords, type LogLine } from './report/logWords.ts';
export type { ReportedEntry, ReportedEntryPlan, ReportedNotedAir } from './report/reportedLog.ts';
export { entryFromPlan } from './run/log/entryFromPlan.ts';
export { plannedFor, type AboutPlan, type PlannedFor } from './run/log/plannedFor.ts';
export { notedAir, reportEntry, reportLog } from './run/log/reportLog.ts';

// The workshop: all jobs and sessions as one zip.
export { workshopJsonSchema } from './job/jsonSchema.ts';
export * from './job/workshop.ts';
export { textTable } from './report/textTable.ts';
export { smallJob } from './run/smallJob.ts';

// survey: rules, readings, words
export { checkRule, type RuleInput } from './job/checkRule.ts';
export { nextAroundFailure, FAILURE_STEP_M, type NextPlace, type SurveyBox } from './survey/aroundFailure.ts';
export { middle_m, type FilmReading } from './survey/filmReading.ts';
export { filmReadings, type TakenForReadings } from './survey/filmReadings.ts';
export type { CheckCode, GroupMean, Grouping, JudgedSurvey, RuleCheck, SurveyAnswer, SurveyFigures } from './survey/judgedSurvey.ts';
export { judgeReadings } from './survey/judgeReadings.ts';
export { moreReadings, type MoreReadings } from './survey/moreReadings.ts';
export { singleValueRange, spotLimits, type SpotLimits } from './materials/filmRules.ts';
export { samplingNumbers, type SamplingNumbers, type SamplingUnit } from './survey/samplingNumbers.ts';
export type { ReportedSurvey, SurveyTaken, TakenFigure } from './report/survey/reportedSurvey.ts';
export { RULE_NAMES, ruleWords as surveyRuleWords, type RuleWords } from './report/survey/ruleWords.ts';
export { checkWords, SURVEY_ANSWER_WORDS, surveyReason } from './report/survey/surveyReason.ts';
export { samplingJson, surveyJson } from './report/survey/surveyJson.ts';
export { samplingWords, surveyText } from './report/survey/surveyText.ts';
export { groupMeanWords, MORE_NOTE, moreSentences, READING_KIND_WORDS, SURVEY_NOTE, takenSentences } from './report/survey/surveyWords.ts';
export { judgeAlone, judgeSurvey } from './run/survey/judgeSurvey.ts';
export type { SurveyAsked } from './run/survey/surveyTaken.ts';
export { parseSurveyReadings, type FilmUnit, type ReadingsOptions, type SurveyReadingsRead } from './run/survey/readings/parseSurveyReadings.ts';
export { foundWords, limitWords } from './report/survey/filmWords.ts';
export { readingsCsv } from './report/survey/readingsCsv.ts';

// survey: where to read, and the plan against truth
export type { ComparedReading, Estimate, FilmBetween, PlanComparison, SetUpOffer, Trend } from './survey/comparison.ts';
export type { PlaceKind, PlaceToRead, SamplingPlan } from './survey/sampling.ts';
export { classedPaths } from './picture/classedSvg.ts';
export * from './picture/truthFields.ts';
export { placesCsv } from './report/survey/placesCsv.ts';
export * from './report/survey/truthWords.ts';
export { compareWithPlan } from './run/survey/compareWithPlan.ts';
export { withOffer } from './run/survey/setUpOffers.ts';
export { whereToRead } from './run/survey/whereToRead.ts';

// record: the whole of a job for paper
export { CROSSCOAT_VERSION } from './base/version.ts';
export { recordPage } from './report/html/recordPage.ts';
export { KEEP_NOTE, keepRows, type KeepRow } from './report/record/keepRows.ts';
export { logCsv } from './report/record/logCsv.ts';
export { recordJson } from './report/record/recordJson.ts';
export { recordText } from './report/record/recordText.ts';
export { RECORD_STATEMENT, recordFaults, unsignedNames } from './report/record/recordWords.ts';
export { surveysCsv } from './report/record/surveysCsv.ts';
export type { RecordMade, ReportedRecord } from './report/record/reportedRecord.ts';
export { reportRecord } from './run/record/reportRecord.ts';
