export { type AuthorKind, authorKinds, isNote } from "./author/AuthorKind.ts";
export { type Advice, adviseRule } from "./author/adviseRule.ts";
export { appendExamples } from "./author/appendExamples.ts";
export { checkRule, type RuleReport, readRuleFile, shippedContext } from "./author/checkRule.ts";
export { type CatalogCount, countCatalog } from "./author/countCatalog.ts";
export { type Mutant, type MutantKind, mutantKinds } from "./author/Mutant.ts";
export { mutateRule } from "./author/mutateRule.ts";
export { printExample } from "./author/printExample.ts";
export { printRule } from "./author/printRule.ts";
export type { RuleContext, RuleProblem } from "./author/RuleProblem.ts";
export { readSources } from "./author/readSources.ts";
export { type RuleReview, reviewRule } from "./author/reviewRule.ts";
export {
  type Answers,
  type Question,
  type QuestionKey,
  questionKeys,
  questions,
  refuseAnswer,
} from "./author/scaffold/questions.ts";
export { readAnswers } from "./author/scaffold/readAnswers.ts";
export { type Scaffold, scaffoldRule } from "./author/scaffold/scaffoldRule.ts";
export { type RuleScore, scoreRule } from "./author/scoreRule.ts";
export { describeLists } from "./choose/lists/describeLists.ts";
export { CURRENCY, listColumns } from "./choose/lists/listColumns.ts";
export { type ListedPart, type PartsList, PRICE_SHARES } from "./choose/lists/PartsList.ts";
export { listLimits } from "./choose/lists/RawList.ts";
export { readPartsListText } from "./choose/lists/readPartsListText.ts";
export { type PartNamed, withParts } from "./choose/lists/withParts.ts";
export { changesOf } from "./choose/remedy/changesOf.ts";
export {
  describeFindingRemedies,
  type FindingLines,
  findingLines,
} from "./choose/remedy/describeFindingRemedies.ts";
export { describeRemedies, REMEDY_CAUTION, REMEDY_TERMS } from "./choose/remedy/describeRemedies.ts";
export { findRemedies, type RemedyOptions, type RemedyProgress } from "./choose/remedy/findRemedies.ts";
export { moveText } from "./choose/remedy/moveText.ts";
export type {
  Broken,
  Contradiction,
  FindingRemedies,
  NoRemedy,
  Remedy,
  RemedyReport,
  SizeChange,
  Worsened,
} from "./choose/remedy/Remedy.ts";
export { besideTexts } from "./choose/remedy/remedyLine.ts";
export { type Changes, type WorkKind, works } from "./choose/remedy/works.ts";
export { describeSearch } from "./choose/search/describeSearch.ts";
export { mergeSearches, type ShardResult } from "./choose/search/mergeSearches.ts";
export { type Aim, aimNames, aims } from "./choose/search/Objective.ts";
export type { WeightTexts } from "./choose/search/readWeights.ts";
export type {
  FallenRule,
  FoundParts,
  NearestMissed,
  SearchResult,
  SearchTerms,
} from "./choose/search/SearchResult.ts";
export { type SearchOptions, type SearchProgress, search } from "./choose/search/search.ts";
export { describeSolution, type SolutionParts, solutionParts } from "./choose/solve/describeSolution.ts";
export type { Solution, SolvedAim, SolvedField } from "./choose/solve/Solution.ts";
export { type SolveOptions, type SolvePhase, solve } from "./choose/solve/solve.ts";
export {
  type Aspect,
  aspects,
  type BuildChange,
  type Cause,
  type QuantityChange,
  type Side,
  type Span,
  type ValueChange,
  type VerdictChange,
} from "./compare/BuildChange.ts";
export { compareBuilds } from "./compare/compareBuilds.ts";
export type { JudgedBuild } from "./compare/compareInSteps.ts";
export { compareReports } from "./compare/compareReports.ts";
export { describeChange } from "./compare/describeChange.ts";
export { BriefJudge, type BriefVerdicts } from "./compile/BriefJudge.ts";
export { ChangingJudge, type ChangingJudgeCounts } from "./compile/ChangingJudge.ts";
export { cheapestFirst } from "./compile/cheapestFirst.ts";
export { type ColumnRules, compileColumns } from "./compile/compileColumns.ts";
export { compileSlots, type SlotRules } from "./compile/compileSlots.ts";
export type { FactColumns } from "./compile/FactColumns.ts";
export type { FactSlots } from "./compile/FactSlots.ts";
export { GradualJudge } from "./compile/GradualJudge.ts";
export type {
  PartialJudge,
  PartialJudgeCounts,
  PartialJudgeInput,
  PartKind,
  PartOption,
} from "./compile/PartialJudge.ts";
export { type FactPlan, planQuantities, type QuantityPlan, type RulePlan } from "./compile/planQuantities.ts";
export { VerdictCode, verdictCodes } from "./compile/verdictCodes.ts";
export type { Derivation, DerivedValue, Spread } from "./derive/Derivation.ts";
export { quantities } from "./derive/generated/quantities.ts";
export { version } from "./derive/generated/version.ts";
export { pathsOf } from "./derive/groupsOf.ts";
export type { Quantity, QuantityExample, Route, SourceReference, WhenHot } from "./derive/Quantity.ts";
export { outlineVertices } from "./derive/rodSweep.ts";
export { type Doubt, doubtWords } from "./derive/statistics/rootSumSquare.ts";
export type { Sampled } from "./derive/statistics/summarise.ts";
export { type EvaluateOptions, evaluate } from "./evaluate.ts";
export type { AppliedSet, Departure } from "./judge/AppliedSet.ts";
export { type CompiledRule, leavesOf } from "./judge/CompiledRule.ts";
export { compileRule } from "./judge/compileRule.ts";
export { compileRules } from "./judge/compileRules.ts";
export { decideLimit, type Lookup } from "./judge/decide.ts";
export { decidingFacts } from "./judge/decidingFacts.ts";
export type { Fact } from "./judge/Fact.ts";
export { factNames, factType } from "./judge/factCatalog.ts";
export { fieldsOfRule, fieldsUnder, type Ways } from "./judge/fieldsOfRule.ts";
export { RuleError } from "./judge/RuleError.ts";
export { checkDrawing, type Drawing, type HoldsIn, MOST_DRAWS } from "./judge/sampleVerdicts.ts";
export { type BandEnd, type TemplatePiece, templateNames, templatePieces } from "./judge/templateNames.ts";
export { type Comparison, type TraceBand, type VerdictWord, verdictWords } from "./judge/Verdict.ts";
export type { EvaluationOptions } from "./live/EvaluationOptions.ts";
export type { Refinement, StopSignal } from "./live/refine.ts";
export { type RefineOptions, refineBuild } from "./live/refineBuild.ts";
export type { Build } from "./read/Build.ts";
export { buildJsonSchema } from "./read/buildJsonSchema.ts";
export { BUILD_FORMAT, parts } from "./read/buildSchema.ts";
export { cellNumber } from "./read/cellNumber.ts";
export { type Confirmation, confirmationEntry, confirmationPath } from "./read/confirmations.ts";
export { countOf } from "./read/countOf.ts";
export { describeDefault } from "./read/describeDefault.ts";
export { describeTable } from "./read/describeTable.ts";
export { describeTolerance } from "./read/describeTolerance.ts";
export { type BuildEdit, editBuildText } from "./read/editBuildText.ts";
export type { FieldSpec, PartSpec } from "./read/FieldSpec.ts";
export {
  type PositionKind,
  type Provenance,
  positionKinds,
  provenances,
  type Stage,
  stages,
} from "./read/FieldSpec.ts";
export type { DimensionValue, FieldValue, TableRow } from "./read/FieldValue.ts";
export { type Field, fieldLabel, fields } from "./read/fieldCatalog.ts";
export { nearestWord } from "./read/nearestWord.ts";
export { describeProblem, formatProblem, InputError, type Problem } from "./read/Problem.ts";
export { MAX_SOURCE_LENGTH, parseSource } from "./read/parseSource.ts";
export { countOf as countPositions } from "./read/positions.ts";
export { readBuild, readBuildText } from "./read/readBuild.ts";
export { syntaxOf } from "./read/syntaxOf.ts";
export type { WantedValue, WrittenAim } from "./read/WantedValue.ts";
export { withField } from "./read/withField.ts";
export { briefOf } from "./report/briefOf.ts";
export { describeComparison, describeRelevance, operatorWords } from "./report/describeComparison.ts";
export { describeCondition } from "./report/describeCondition.ts";
export { type Detail, describeFinding } from "./report/describeFinding.ts";
export { coldPartners } from "./report/describeHot.ts";
export { DISCLAIMER, describeReport } from "./report/describeReport.ts";
export { describeRoutes } from "./report/describeRoutes.ts";
export { describeTrial } from "./report/describeTrial.ts";
export { describeTrials, type TrialVerdict } from "./report/describeTrials.ts";
export { doubtfulRelevance } from "./report/doubtfulRelevance.ts";
export { explainField } from "./report/explainField.ts";
export { explainQuantity } from "./report/explainQuantity.ts";
export { explainRule } from "./report/explainRule.ts";
export { findNames } from "./report/findNames.ts";
export { type FindingGroup, findingGroups, groupFindings, groupOf } from "./report/groupFindings.ts";
export { mostWanted } from "./report/mostWanted.ts";
export { printBand } from "./report/printValue.ts";
export type {
  Report,
  ReportField,
  ReportQuantity,
  ReportStatistics,
  ReportSummary,
  ReportVerdict,
} from "./report/Report.ts";
export type {
  BandBar,
  DocumentItem,
  DocumentLine,
  DocumentSection,
  ReportDocument,
  Tone,
} from "./report/ReportDocument.ts";
export type { PendingRule, ReportPending } from "./report/ReportPending.ts";
export { renderMarkdown } from "./report/renderMarkdown.ts";
export { renderText, type TextStyle } from "./report/renderText.ts";
export { type DerivationStep, type Derived, type StepInput, stepsTo } from "./report/stepsTo.ts";
export { applySet } from "./sets/applySet.ts";
export { explainSet } from "./sets/explainSet.ts";
export { SetError } from "./sets/findChain.ts";
export { readSetText } from "./sets/readSetText.ts";
export { bandOrigins } from "./tables/bandOrigins.ts";
export { instruments } from "./tables/instruments.ts";
export { type RecalledTable, recalledTables } from "./tables/recalledTables.ts";
export { waysOfMaking } from "./tables/waysOfMaking.ts";
export { type Contact, contactAt, traceAt } from "./trace/atAngle.ts";
export { Nominals } from "./trace/Nominals.ts";
export type {
  ContactPlace,
  Trace,
  TraceImpossible,
  TraceMissing,
  TracePoint,
  TraceValue,
} from "./trace/Trace.ts";
export type { NamedExtreme, Take, Taken, TraceKind } from "./trace/TraceKind.ts";
export { traceKinds } from "./trace/traceKinds.ts";
export { traceOverTurn } from "./trace/traceOverTurn.ts";
export { type Trial, tryRule } from "./tryRule.ts";
export { fromSi, toSi } from "./units/convert.ts";
export { findUnit, unitOf, unitsLike } from "./units/findUnit.ts";
export { formatInterval, formatNumber } from "./units/formatNumber.ts";
export { DimensionError, parseDimension } from "./units/parseDimension.ts";
export { type DimensionPieces, joinDimension, splitDimension } from "./units/splitDimension.ts";
export { type Unit, unitTable } from "./units/unitTable.ts";
