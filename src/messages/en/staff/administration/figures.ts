/** What a clinic learns from its own records. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Clinic figures',
  lead: 'The last {weeks} weeks of this clinic, {people} people with a record. Figures of groups, and none of who treats. Where one to four people are behind a figure it is left out. A count within a larger group can still be of one person, and with few people a quartile is one person’s own figure: hand it on as you would a record.',
  'not-compared':
    'Nothing here compares methods or shows what brought a figure about: people are not given a method by lot.',
  file: 'These figures as a file (CSV)',
  few: 'Left out: one to four people are behind it.',
  nobody: 'Nobody yet.',
  quartiles: 'quarter {low}, half {middle}, three quarters {high}',
  'quartiles.what':
    'Quartiles: a quarter, half and three quarters of all lie at or under the figure (nearest rank).',
  contact: 'From danger to contact',
  'contact.what':
    'Hours from a warning sign until somebody reached the patient or a carer. A sign that is still open counts as longer than all others, so a quartile among open ones is not reached yet.',
  'contact.all': 'All warning signs',
  'contact.emergency': 'Emergency',
  'contact.same-day': 'Same day',
  'contact.routine': 'Routine',
  'contact.by-few': 'By urgency it is left out: one kind would stand for one to four people.',
  'col.which': 'Which',
  'col.people': 'People',
  'col.signs': 'Signs',
  'col.open': 'Still open',
  'col.quarter': 'A quarter within, h',
  'col.half': 'Half within, h',
  'col.three': 'Three quarters within, h',
  'not-reached': 'not reached yet',
  none: 'none',
  mornings: 'Morning checks',
  'mornings.what':
    'Asked: each day after the first signed dose that is over, without days of a break or after the end of care. Answered: a pain was given. An answer with a doubtful time is a missing one.',
  'mornings.line':
    '{answered} of {asked} answered, {missing} missing, of {people} people. Share answered by person: {quartiles}.',
  sessions: 'Sessions',
  'sessions.what':
    'Days with a session of days planned, week by week: one more than planned makes up for no other week. Whoever has no planned week is not counted.',
  'sessions.line': '{done} of {planned} planned done, of {people} people. Share done by person: {quartiles}.',
  work: 'What a week takes',
  'work.what':
    'People with a dose in force for a week or longer. Signatures by a clinician; doses that acted by themselves are not among them. Contacts about a warning sign, those that reached nobody too.',
  'work.line':
    '{signatures} signatures and {contacts} contacts in {weeks} weeks of {people} people. Signatures a person and week: {a}. Contacts a person and week: {b}.',
  methods: 'Dose reached and outcomes, by method',
  'methods.what':
    'A person with doses of several methods counts with each. Dose: newest signed dose of an exercise as a share of its first, once four weeks lie between. Outcomes: measured twice from four weeks before the first dose on, held against the error of measuring; of several measures a worse one counts before a better one. In brackets: 95 % score interval.',
  'method.low-load': 'Low load',
  'method.variation': 'Variations',
  'method.occlusion': 'Cuff',
  'col.method': 'Method',
  'col.dose': 'Newest dose, first = 1.00',
  'col.above': 'People above their first dose',
  'col.better': 'Better beyond error',
  'col.worse': 'Worse beyond error',
  'col.within-error': 'Within error',
  'col.judged': 'People measured twice',
  share: '{count} of {of} ({low}–{high} %)',
  'csv.figure': 'Figure',
  'csv.group': 'Group',
  'csv.value': 'Value',
  'csv.of': 'Of',
  'csv.low': '95 % interval, low',
  'csv.high': '95 % interval, high',
  'csv.people': 'People',
  'csv.quarter': 'first quartile',
  'csv.half': 'median',
  'csv.three': 'third quartile',
  'csv.hours': 'hours',
  'csv.answered': 'answered',
  'csv.done': 'done',
  'csv.share-of-people': 'share by person',
  'csv.signatures': 'signatures',
  'csv.contacts': 'contacts',
  'csv.a-week': 'a person and week',
  'csv.weeks': 'weeks with a dose in force',
  'csv.left-out': 'left out: one to four people',
} as const;

export const say = sayIn(words);
