import type { JSX } from 'preact';
import { RULE_NAMES, surveyRuleWords, type RuleSpec, type SurveySpec } from '../../../../sim/index.ts';
import { chooseRule, setInRule } from '../../../app/survey/surveyCommands.ts';
import { RULE_KINDS } from '../../../app/survey/surveyRules.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { SurveyNumberField, SurveyTextField } from '../SurveyFields.tsx';

const LEVELS: readonly (readonly [value: string, words: string])[] = [
  ['1', 'Level 1: spots as specified'], ['2', 'Level 2: spots up to 120 % of the most'], ['3', 'Level 3: spots 80 to 120 %'], ['4', 'Level 4: spots 80 to 150 %'], ['5', 'Level 5: spots from 80 %, no most'],
];

/** The rule that judges: which one, whose it is, what it asks, and its figures to be changed. */
export function RuleForm({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const { rule } = survey;
  const words = surveyRuleWords(rule, state.units.value);
  return (
    <section class="form survey-verdict-rule" aria-labelledby="survey-rule-head">
      <h2 id="survey-rule-head">Rule</h2>
      <fieldset class="survey-verdict-open" disabled={survey.signed !== undefined}>
        <ChoiceField id="survey-rule" label="Judged by" value={rule.kind} options={RULE_KINDS.map((kind) => [kind, RULE_NAMES[kind]] as const)} choose={chooseRule} />
        <p><strong>{words.borrowed}</strong></p>
        <p>It asks:</p>
        <ul>{words.asks.map((text) => <li key={text}>{text}</li>)}</ul>
        <p>{words.note}</p>
        <div key={rule.kind} class="form"><Parameters rule={rule} /></div>
      </fieldset>
    </section>
  );
}

function Parameters({ rule }: { readonly rule: RuleSpec }): JSX.Element {
  switch (rule.kind) {
    case 'mean-80':
      return (
        <>
          <SurveyNumberField at={['rule', 'nominal_um']} label="Nominal film, dry" />
          <SurveyNumberField at={['rule', 'low_percent']} label="No reading below, of the nominal film" />
          <SurveyNumberField at={['rule', 'share_percent']} label="Share of readings that may lie between" />
          <ChoiceField
            id="survey-boundary"
            label="Boundary of that share"
            value={rule.boundary}
            options={[['strict', `Strict: fewer than ${rule.share_percent} %`], ['lenient', `Lenient: ${rule.share_percent} % itself will do`]]}
            hint="The standard's words have been read both ways; five readings with one low one are 20 %, and differ by it."
            choose={(boundary) => setInRule('Boundary of the rule', 'boundary', boundary)}
          />
          <SurveyNumberField at={['rule', 'maximum_um']} label="No reading above, dry" isOptional hint="Empty: three times the nominal film." />
          <SurveyNumberField at={['rule', 'correction_um']} label="Taken off each gauge reading" hint="For a rough blasted surface beneath; 0 for cloth, sheet and anything smooth." />
        </>
      );
    case 'spots-areas':
      return (
        <>
          <SurveyNumberField at={['rule', 'min_um']} label="Least specified film, dry" />
          <SurveyNumberField at={['rule', 'max_um']} label="Most specified film, dry" isOptional hint="Empty: there is no most." />
          <ChoiceField id="survey-level" label="Restriction level" value={String(rule.level)} options={LEVELS} choose={(level) => setInRule('Restriction level', 'level', Number(level))} />
        </>
      );
    case 'ninety-ten':
      return (
        <>
          <SurveyNumberField at={['rule', 'nominal_um']} label="Nominal film, dry" />
          <SurveyNumberField at={['rule', 'low_percent']} label="No reading below, of the nominal film" />
          <SurveyNumberField at={['rule', 'share_percent']} label="Share of readings that may lie below it" />
        </>
      );
    case 'shop':
      return (
        <>
          <SurveyTextField at={['rule', 'name']} label="Whose rule it is" longest={200} />
          <SurveyNumberField at={['rule', 'meanMin_um']} label="Mean at least, dry" isOptional />
          <SurveyNumberField at={['rule', 'meanMax_um']} label="Mean at most, dry" isOptional />
          <SurveyNumberField at={['rule', 'eachMin_um']} label="Every reading at least, dry" isOptional />
          <SurveyNumberField at={['rule', 'eachMax_um']} label="Every reading at most, dry" isOptional />
          <SurveyNumberField at={['rule', 'spread_percent']} label="Spread at most" isOptional hint="Standard deviation over mean. Each limit may be left empty." />
        </>
      );
  }
}
