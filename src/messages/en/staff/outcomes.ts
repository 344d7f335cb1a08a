/** Outcomes: goals, and each thing measured over time. */
import { sayIn } from '../../say.ts';

export const words = {
  'goal.set': 'Set this goal',
  'goal.day-hint': 'Leave empty if no date was agreed.',
  first: 'first {value}, {date}',
  'by-day-passed': 'to be reached by {date}, which has passed',
  'by-day': 'to be reached by {date}',
  'recorded-by': 'recorded by {name}, {time}',
  'set-at-start': 'set at the start of the episode',
  progress: 'Record progress',
  goals: 'Goals set with the patient',
  'no-goal': 'No goal is set yet.',
  'set-goal': 'Set a goal',
  again: 'Measure again',
  calculation: 'Calculation and source',
  readings: 'Every reading and signed dose, oldest first',
  'picture.of': 'Readings of {title} by day; each stands in the table below',
  'picture.key':
    'ring: first · dot: later · bar: range of estimates · band: error around the first · dotted: dose signed · short: dose changed within what was signed, or eased back',
  'picture.signed': 'Dose signed',
  'picture.changed': 'Dose changed within what was signed, or eased back',
  'picture.repetitions': '{count} repetitions',
  'picture.doses': { by: 'count', one: '1 dose', other: '{count} doses' },
  'better.higher': 'higher is better',
  'better.lower': 'lower is better',
  'measures-note':
    'The latest reading beside the first. A difference counts as a change only when it exceeds the measurement error. This does not show what caused it.',
  'home.title': 'Asked at home',
  'home.note':
    'The patient answers on the phone when the questions are due. No sum is made of the answers, and nothing of them reaches the decision rules, a dose or the plan. Nobody is asked on a break, after the end of care, or while everything is paused, a pause was decided, a warning sign is open or a call is due today.',
  'home.nobody': 'Nothing is asked at home.',
  'home.activities': 'Activities chosen by the patient',
  'home.no-activity': 'No activity is on record yet, so chosen activities cannot be asked.',
  'home.no-questionnaire':
    'Your clinic has written no questionnaire. An administrator can, in Administration.',
  'home.offered': {
    by: 'count',
    one: '{title} (1 question)',
    other: '{title} ({count} questions)',
  },
  'home.rhythm': 'From {date} on, every {days} days. Asked by {name}, {time}.',
  'home.due': 'Due since {date}.',
  'home.next': 'Next due on {date}.',
  'home.retired': 'The questionnaire is retired: it is no longer asked.',
  'home.ended': 'Ended by {name}, {time}.',
  'home.ask': 'Ask at home',
  'home.ask-save': 'Ask this from that day on',
  'home.every-hint': '7 to 84 days; 28 is common practice, no source.',
  'home.end': 'End',
  'home.end-question': 'End “{title}”? It is no longer asked. What was answered stays.',
  'home.end-yes': 'End it',
  'home.end-no': 'Go on asking',
  'home.answers': 'Answers at home: {title}',
  'home.none-answered': 'Not answered yet.',
  'home.version': 'version {version}',
  'home.typed-by': 'typed by: {who}',
  none: 'No outcome is measured yet.',
  record: 'Record a measurement',
} as const;

export const say = sayIn(words);
