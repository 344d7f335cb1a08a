/** What stands behind a rule, and what does not. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Rule {id}',
  back: 'All rules',
  link: 'What is behind this rule',
  rests: 'What it rests on',
  'rests.published': 'Its figure is printed in a source.',
  'rests.from-memory': 'Its figure is one of a source, from memory.',
  'rests.near-published': 'Its figure was chosen near one that a source prints.',
  'rests.chosen': 'Sources stand near it; its figure is a choice.',
  'rests.no-source': 'A choice of this project, no source.',
  studied: 'Studied in: {studied}.',
  'number.from-source': 'The figure is the one printed there.',
  'number.near-source': 'The figure was chosen near the one printed there.',
  'number.none': 'The source prints no such figure.',
  settings: 'Settings it reads',
  'settings.none': 'It reads no setting of the clinic.',
  unchanged: 'On diaries in which nothing changes',
  'unchanged.what':
    'Invented: {people} people whose pain strays by one point about the same mean of 2 to 4, with usual values set as proposed and all work done. {looks} looks, each on the morning after a session.',
  'unchanged.decided': 'It decided {decided} of {looks} looks ({share} %), and fired in {fired}.',
  'unchanged.false':
    'Whatever it decided there is scatter and no change of the joint. Real diaries may stray more.',
  'unchanged.never':
    'It never fired there. Swelling, changed stiffness, missing answers, warning signs and pain two hours later are not in these diaries: of a rule that reads them this says nothing.',
  tests: 'Its tests',
  'tests.own': {
    by: 'count',
    one: '{count} test of its own passed, under, at and over its thresholds: {file}.',
    other: '{count} tests of its own passed, under, at and over its thresholds: {file}.',
  },
  'tests.generated':
    '{facts} random sets of facts, each decided by the engine and looked up in a second statement of the table that shares no code with it: {disagreements} disagreements. The rule fired in {fired} of them.',
  'tests.run': 'Last run on {date}, seed {seed}, version {version} of the rules, settings as delivered.',
  'not-proven': 'What is not proven',
  'np.no-source': 'No source says that this should be done.',
  'np.figure-chosen': 'No source prints its figure: another one near it may be as good or better.',
  'np.remembered': 'Part of what it leans on is from memory and was not read.',
  'np.second-hand': 'Part of what it leans on was read where others restate it.',
  'np.nobody-studied': 'What it leans on is advice: nobody was studied for it.',
  'np.others-studied':
    'The people studied may be far from the person of a decision, and none of them was dosed by this rule.',
  'np.no-clinician': 'No licensed clinician has confirmed it for this release.',
  'np.no-patients':
    'No person’s course under this rule was compared with one without it. Tests show that it does what its words say, not that the words are right.',
} as const;

export const say = sayIn(words);
