/**
 * A decision in words. For the patient: one plain sentence for each rule, approved by the clinic before
 * use. For the clinician: what was found, the threshold, who says so and how that was seen.
 */
import type { Mark } from '../sources/citation.ts';
import { symptomSources } from '../sources/symptoms.ts';
import type { Answers, DecisionWord, Reason, Step, Today } from './answers.ts';
import { decisionRank } from './decide.ts';
import { ruleById } from './rules/table.ts';

/** What each answer means to the patient. */
export const answerSentences = {
  progress: 'Your answers allow a little more, once your physiotherapist agrees.',
  hold: 'Stay where you are: do the same again next time.',
  'ease-back': 'Do a little less next time.',
  pause: 'Stop your exercises until we have spoken with you.',
} as const satisfies Readonly<Record<DecisionWord, string>>;

export const todaySentences = {
  'as-planned': 'You can do your session as planned today.',
  'bad-day': 'Do the easier session today.',
  'rest-this-joint': 'Rest this joint today.',
  none: 'No exercises today.',
} as const satisfies Readonly<Record<Today, string>>;

export interface PatientExplanation {
  readonly decision: string;
  readonly today: string;
  /** The reasons that made the decision, most cautious first; at most the three that weigh most. */
  readonly because: readonly string[];
}

const mostSentences = 3;

const weight = (reason: Reason): number => decisionRank[reason.effect.decision ?? 'progress'];

export const explainToPatient = (answers: Answers): PatientExplanation => {
  const telling = answers.reasons
    .filter((reason) => reason.effect.decision === answers.decision || reason.effect.today === answers.today)
    .sort((a, b) => weight(a) - weight(b));
  return {
    decision: answerSentences[answers.decision],
    today: todaySentences[answers.today],
    because: [...new Set(telling.map((reason) => ruleById.get(reason.rule)?.patientSentence ?? ''))]
      .filter((text) => text !== '')
      .slice(0, mostSentences),
  };
};

const shown = (value: unknown): string => {
  if (value === null) return 'not answered';
  if (value === true) return 'yes';
  if (value === false) return 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.join(', ');
  return typeof value === 'number' ? String(Math.round(value * 100) / 100) : String(value);
};

/** "painNextMorning" → "pain next morning". */
const inWords = (name: string): string =>
  name
    .replace(/([A-Z])/g, ' $1')
    .replace(/(\d+)/g, ' $1')
    .toLowerCase();

const markWords: Readonly<Record<Mark, string>> = {
  seen: 'seen',
  'second-hand': 'restated by others',
  memory: 'from memory, not seen',
  computed: 'computed',
  design: 'choice of this project',
  'common-practice': 'common practice, no source',
};

const supportInWords = (reason: Reason): string => {
  const rule = ruleById.get(reason.rule);
  const cited = rule?.citations[0];
  if (!cited) return 'clinic choice';
  const source = symptomSources[cited.source];
  const who = `${source.authors}${source.year === null ? '' : ` ${source.year}`}, ${cited.locator} (${markWords[cited.mark]})`;
  return reason.support === 'clinic-choice' ? `clinic choice; near it: ${who}` : who;
};

const effectInWords = ({ effect }: Reason): string =>
  [
    effect.decision && `decision at most ${effect.decision}`,
    effect.largestStep && `step at most ${effect.largestStep}`,
    effect.today && `today at most ${effect.today}`,
    effect.contact && effect.contact !== 'none' && `contact ${effect.contact}`,
  ]
    .filter(Boolean)
    .join(', ');

/** One line of the trace: "P2 Pain over the personal ceiling. Found: … Threshold: … Says: … Effect: …" */
export const explainToClinician = (reason: Reason): string => {
  const found = Object.entries(reason.observed)
    .map(([name, value]) => `${inWords(name)} ${shown(value)}`)
    .join(', ');
  const title = ruleById.get(reason.rule)?.title ?? '';
  return `${reason.rule} ${title}. Found: ${found}. Threshold: ${reason.threshold}. Support: ${supportInWords(reason)}. Effect: ${effectInWords(reason)}.`;
};

export const stepInWords: Readonly<Record<Step, string>> = {
  repetitions: 'repetitions only',
  load: 'load, harder variation or set',
};
