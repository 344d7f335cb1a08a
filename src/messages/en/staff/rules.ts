/** The rules of the engine. */
import { sayIn } from '../../say.ts';

export const words = {
  'setting.default': '(default); from {min} to {max}.',
  'setting.own': '(set by this clinic); from {min} to {max}.',
  'setting.on': 'On',
  'setting.off': 'Off',
  search: 'Search the rules',
  'search.hint': 'By what was answered or what follows, also in German: morning, swelling, Schub, ease back',
  'patient-reads': 'The patient reads:',
  evidence: { by: 'count', one: 'Source', other: 'Sources ({count})' },
  id: 'Rule {id}.',
  'overridden-never': 'Never overridden here.',
  'overridden-once': 'Overridden once here.',
  overridden: 'Overridden {count} times here.',
  when: 'When {threshold}: {effect}.',
  'own-setting-sourced': 'Uses a clinic setting; related source:',
  'own-setting': 'Uses a clinic setting, no source.',
  lead: '{count} rules, version {version}. Each rule that applies limits the decision; the most cautious one counts. No rule makes a decision bolder, and a missing answer never lets a dose go up.',
  'to-invented': 'Invented people: ways of dosing beside each other',
  'invented-heading': 'Invented people',
  invented:
    'Every person here is invented, and so is how their joint answers to load. Nothing here says that loading helps or harms anybody.',
  'invented-more':
    'Each way of dosing is followed on the same people with the same days, so the figures compare ways of dosing under two invented models and nothing else. A clinician decides.',
  'invented-run':
    '{people} people of each of nine types, {weeks} weeks, seed {seed}, run on {date} with every clinic setting at its default; the settings of this clinic are not in it.',
  model: 'Model of people',
  'model-first': 'First: pain where load goes over what the joint tolerates',
  'model-second': 'Second: made without knowing the first; soreness and strain build up',
  type: 'People',
  'type-all': 'Mean of the nine types',
  'type-steady': 'Steady',
  'type-scatter': 'Much scatter from day to day',
  'type-high': 'High usual pain',
  'type-flaring': 'Frequent flares',
  'type-inflammatory': 'Inflammatory arthritis',
  'type-fragile': 'Joint that answers early to load',
  'type-forgetful': 'Many answers left out',
  'type-eager': 'Does more than planned',
  'type-creeping': 'Disease that creeps',
  'chart-loading': 'The chart is being drawn. The table below says the same.',
  'chart-name': 'Strength gained against bad days; the table below has the same figures.',
  'chart-caption':
    'Further up is stronger, further left is fewer bad days. The dashed line is what somebody reaches who sees the true joint and allows it more and more answer: about what could be reached, and no clinic can see it.',
  'axis-days': 'Bad days in 12 weeks',
  'axis-strength': 'Strength gained, %',
  'line-label': 'sees the joint',
  'table-about':
    'A bad day has pain 2 or more over the usual pain of the start. By load are days outside a flare on which load brought 1 or more.',
  'column-arm': 'Way of dosing',
  'column-strength': 'Strength gained, %',
  'column-bad-days': 'Bad days',
  'column-by-load': 'By load',
  'column-actions': 'Clinician actions',
  'column-dose': 'Last dose, first = 1',
  'own-rule': 'Your own rule',
  'own-label': 'your own rule',
  'own-heading': 'Try your clinic’s own rule',
  'own-about':
    'A clinician looks every Monday and changes the load by hand. Every answer of the week in order and the last morning at usual: more load. Otherwise the same, or less after bad answers. Your figures are run on the same {count} people of each type as the rest, and stand in the chart and the table above. Nothing is stored, and no patient’s plan changes.',
  'own-run': 'Run it on invented people',
  'own-running': 'Running…',
  'own-done': 'Your own rule now stands in the chart and the table.',
  'version-3': 'The settings of version 3 are in force here: tried on invented people alone.',
} as const;

export const say = sayIn(words);
