// The public library, written by hand: what other programs may rely on. Leaves out everything they should not depend on.

// Errors
export { DomainError, isDomainError, problemOf } from './errors.ts'
export type { ErrorCode, Limit, Problem } from './errors.ts'

// Gas
export {
  entrainedO2Fraction,
  entrainmentRatio,
  entrainmentTotalFlowLpm,
  mixedStream,
} from './physics/gas-mixing.ts'
export { barometricPressureKpa } from './physics/atmosphere.ts'
export { flowmeterToBtpsFactor } from './physics/gas-condition.ts'
export { standardFlowLpm } from './physics/flowmeter.ts'
export {
  oxygenCompressibility,
  oxygenContentsLitres,
  oxygenDensityMolPerL,
  oxygenPressureAtKpa,
} from './physics/real-gas-oxygen.ts'
export type { FlowmeterKind, FlowmeterReading } from './physics/flowmeter.ts'

// Blood
export { alveolarPo2Kpa, effectiveInspiredO2Fraction } from './physiology/alveolar-gas.ts'
export { standardPo2Kpa, standardSaturation } from './physiology/dissociation.ts'
export { arterialFromInspired, gasExchange } from './physiology/shunt-shift.ts'
export type { ArterialOxygen, GasExchange } from './physiology/shunt-shift.ts'
export type { AirwayState } from './physiology/airway-state.ts'

// One breath on any network of pockets
export { deliveredBreath, effectiveO2Fraction } from './delivery/delivered-breath.ts'
export type { BreathQuestion, DeliveredBreath, RibbonStep } from './delivery/delivered-breath.ts'
export { createPeriodicSolver } from './delivery/periodic.ts'
export { peakInspiratoryFlowLpmBtps } from './delivery/breath.ts'
export type { BreathPattern } from './delivery/breath.ts'
export { BARE_NETWORK } from './delivery/network.ts'
export type { Network } from './delivery/network.ts'

// Kit
export { INTERFACE_FAMILIES } from './kit/interface-families.ts'
export type { InterfaceFamily } from './kit/interface-family.ts'
export type { FamilyId, FitId, SizeId } from './kit/family-id.ts'
export type { SetUp } from './kit/set-up.ts'
export type { SourceRow } from './kit/source-row.ts'
export { candidateSetUps } from './kit/build-set-ups.ts'
export { readShelf } from './kit/read-shelf.ts'
export type { Shelf } from './kit/shelf.ts'
export { DEMO_SHELF } from './kit/demo-shelf/demo-shelf.ts'

// Chains of parts
export { humidifiersOf, mainLine, placed, sourceOf } from './joining/chain.ts'
export { checkChain } from './joining/check-chain.ts'
export type { ChainCheck, ChainQuestion } from './joining/check-chain.ts'
export { solveChains } from './joining/solve-chains.ts'
export type { ChainAnswer, CheckedChain, MissingPart } from './joining/solve-chains.ts'
export type { Wanted } from './joining/wanted.ts'
export type { Refusal, RefusalCode } from './joining/refusal.ts'
export type { ChainRemark } from './joining/remarks.ts'
export { WRONG_ON_PURPOSE } from './joining/wrong-on-purpose.ts'
export type { Chain, Join, PartSetting, PlacedPart } from './joining/chain.ts'
export type { Part, PartKind, TubeSize } from './joining/part.ts'
export {
  airMeterPart,
  fittingPart,
  humidifierPart,
  interfacePart,
  outletPart,
  sourcePart,
  tubePart,
} from './joining/parts-of-shelf.ts'
export { openingsOf, patientPart, patientPartFor } from './joining/patient-part.ts'
export type { ChainPatient } from './joining/patient-part.ts'

// Cases and plans
export { readCase } from './patient/read-case.ts'
export { writeCase } from './patient/write-case.ts'
export type { Case, Goal, OnNow } from './patient/case.ts'
export { GOAL_REASONS } from './planning/goal-reasons.ts'
export { makePlan, MODEL_VERSION } from './planning/plan.ts'
export type { PlanQuestion } from './planning/plan-setting.ts'
export { bedsideBreath } from './planning/bedside-breath.ts'
export { setUpOfOnNow } from './planning/on-now.ts'
export type {
  Band,
  Chance,
  ExcludedSetUp,
  Flip,
  Plan,
  RankedSetUp,
  Reason,
  Remark,
} from './planning/plan-types.ts'

// Supply
export { chainTaken } from './supply/chain-taken.ts'
export type { ChainTaken, TakenChain } from './supply/chain-taken.ts'
export { chooseCylinders } from './supply/choose-cylinders.ts'
export type { ChoiceQuestion, CylinderChoice } from './supply/choose-cylinders.ts'
export { usableContents } from './supply/cylinder.ts'
export { cylinderAnswer } from './supply/cylinder-answer.ts'
export type { CylinderAnswer, CylinderQuestion } from './supply/cylinder-answer.ts'
export { HANDBOOK_ROWS, handbookBeside } from './supply/handbook.ts'
export type { HandbookRow } from './supply/handbook.ts'
export type { ScannerAnswer, ScannerTube } from './supply/scanner-rule.ts'
export type { MrSafety, StoreRow } from './supply/store.ts'
export type { SupplyCode, SupplyRemark } from './supply/supply-remark.ts'
export type { Cylinder, CylinderUse, UsableContents } from './supply/cylinder.ts'
export { clockAfter, cylinderClock, handbookMinutes } from './supply/duration.ts'
export type { ClockTime, CylinderClock } from './supply/duration.ts'
export { gasDrawn } from './supply/gas-drawn.ts'
export type { BesideFlows, GasDrawn } from './supply/gas-drawn.ts'
export { lightsOut } from './supply/lights-out.ts'
export type { BedDrill, LightsOut } from './supply/lights-out.ts'
export type { BedOutage, Failure, OutageState } from './supply/bed-outage.ts'
export {
  concentratorPurity,
  fractionWithPurity,
  pulseSettingAsFlow,
} from './supply/home-concentrator.ts'
export { liquidAnswer } from './supply/liquid-oxygen.ts'
export { designFlowLpm, manifoldHours, tankHours } from './supply/pipeline.ts'
export { questionOf, readTransfer } from './supply/read-transfer.ts'
export type { TransferFile } from './supply/read-transfer.ts'
export { readStock } from './supply/read-stock.ts'
export type { StockFile } from './supply/read-stock.ts'
export { readWard } from './supply/read-ward.ts'
export { roomCourse } from './supply/room-answer.ts'
export type { RoomCourse, RoomQuestion } from './supply/room-answer.ts'
export { stockAnswer, stockAnswers } from './supply/stock.ts'
export type { StockAnswer, StockItem } from './supply/stock.ts'
export { wardDemand } from './supply/ward-demand.ts'
export type { DemandQuestion, WardDemand } from './supply/ward-demand.ts'
export type { Bed, WardFile } from './supply/ward.ts'
export { DEMO_WARDS } from './supply/demo-wards/demo-wards.ts'
export { roomEnrichment, roomO2Fraction } from './supply/room-enrichment.ts'
export type { EnrichedRoom, RoomAnswer } from './supply/room-enrichment.ts'
export { planTransfer, whenItStandsStill, withChains } from './supply/transfer.ts'
export type { Course, CylinderRun, TransferPlan, TransferQuestion } from './supply/transfer.ts'
export type { LegAnswer, PlannedLeg } from './supply/transfer-leg.ts'
export { changeOvers, transportNeed, withDelay } from './supply/transport.ts'
export type { ReserveRule, TransportLeg, TransportNeed } from './supply/transport.ts'

// Bedside sheet
export { makeSheet } from './sheet/sheet.ts'
export type { Sheet, SheetAnswer, SheetQuestion } from './sheet/sheet.ts'
export { readFragment, writeFragment } from './sheet/fragment.ts'
export type { SheetRequest } from './sheet/fragment.ts'
export { sheetState } from './sheet/validity.ts'

// Humidity
export { humidityOf } from './humidity/humidity-of.ts'
export type { ChainHumidityQuestion } from './humidity/humidity-of.ts'
export { humidityOfPath } from './humidity/humidity-of-path.ts'
export type { HumidityAnswer, HumidityQuestion } from './humidity/humidity-of-path.ts'
export type { AirwayFacts } from './humidity/facts.ts'
export type { Stage, WaterPath } from './humidity/water-path.ts'
export { perBodyLitreMg, perOwnLitreMg, saturatedMgPerLBtps } from './humidity/body-litre.ts'
export { shelfHumidity } from './planning/shelf-humidity.ts'
export { setUpHumidity } from './planning/set-up-humidity.ts'
export { airwayFactsOf } from './planning/airway-facts.ts'

// Outside checks
export { evidenceReport } from './evidence/report.ts'
