/** What was decided and why, and what is urgent, in German. Figures stand where the core's own words have them. */
import type { OpenDanger } from '#core/episode/documents/handover.ts';
import { pageWord } from '../../page-words.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { forms } from '../forms.ts';

const top = 'über der Obergrenze des üblichen Schmerzes';
const farOver = (morning: string): string =>
  `stärkster Schmerz #; oder # oder mehr und # über dem Üblichen; oder am ${morning} # oder mehr und # über dem Üblichen; oder zweimal hintereinander # oder mehr und # über dem Üblichen`;
const farOverInEnglish = (morning: string): string =>
  `highest pain #; or # or more and # over usual; or ${morning} # or more and # over usual; or # or more twice running and # over usual`;

const pain = {
  [farOverInEnglish('next or later morning')]: farOver('nächsten oder einem späteren Morgen'),
  [farOverInEnglish('next morning')]: farOver('nächsten Morgen'),
  'highest pain # or more; the call can wait for the week under # over a known usual pain':
    'stärkster Schmerz # oder mehr; der Anruf hat eine Woche Zeit, wenn er weniger als # über dem bekannten üblichen Schmerz liegt',
  'highest pain # or more': 'stärkster Schmerz # oder mehr',
  'highest pain over the acceptable pain limit, # unless a clinician set # or #':
    'stärkster Schmerz über der erlaubten Grenze: #, wenn nicht # oder # festgelegt ist',
  'before the session # or more and at least # over the top of usual pain': `vor dem Training # oder mehr und mindestens # ${top}`,
  'before the session # or more and at least # over the top of usual pain; for that session alone': `vor dem Training # oder mehr und mindestens # ${top}; nur für diese Einheit`,
  'before the session # or more over the top of usual pain': `vor dem Training # oder mehr ${top}`,
  'during or after # or more and at least # over the top of usual pain': `beim oder nach dem Training # oder mehr und mindestens # ${top}`,
  'next or later morning # over the top of usual pain, or # over it as on one of the two mornings before the session': `am nächsten oder einem späteren Morgen # ${top}, oder # darüber wie schon an einem der beiden Morgen vor der Einheit`,
  'next morning # over the top of usual pain, or # over it on two mornings running': `am nächsten Morgen # ${top}, oder # darüber an zwei Morgen hintereinander`,
  'next or later morning # over the top of usual pain': `am nächsten oder einem späteren Morgen # ${top}`,
  'next morning # over the top of usual pain': `am nächsten Morgen # ${top}`,
  '# answered mornings in a row # over the top of usual pain': `an # beantworteten Morgen hintereinander # ${top}`,
  'two hours after # over the top of usual pain': `zwei Stunden danach # ${top}`,
  'mean of seven mornings # over usual pain': 'Mittel aus sieben Morgen # über dem üblichen Schmerz',
  'sum of mornings over usual reached # standard deviations, and no # mornings at usual since':
    'Summe der Morgen über dem Üblichen bei # Standardabweichungen, und seitdem keine # Morgen beim Üblichen',
  'sum of mornings over usual reached # standard deviations':
    'Summe der Morgen über dem Üblichen bei # Standardabweichungen',
} as const;

const joint = {
  'swelling answered as clear': 'Schwellung als deutlich angegeben',
  'swelling answered as severe': 'Schwellung als stark angegeben',
  'swelling answered as slight where none is usual': 'Schwellung als leicht angegeben, üblich ist keine',
  'effusion #+': 'Erguss #+',
  'effusion #+ in two tests running': 'Erguss #+ bei zwei Untersuchungen hintereinander',
  'effusion #+ where zero or trace is usual': 'Erguss #+, üblich ist keiner oder eine Spur',
  'over # min, over usual + # min and over # × usual':
    'Steifigkeit über # min, mehr als # min länger als üblich und über dem #-Fachen des Üblichen',
  'flare of # day or more': 'Schub von mindestens # Tag',
  'flare of # days or more, no inflammatory arthritis':
    'Schub von mindestens # Tagen, keine entzündliche Arthritis',
  'flare of # days or more in inflammatory arthritis':
    'Schub von mindestens # Tagen bei entzündlicher Arthritis',
  'another joint in flare as well, or tiredness # over usual':
    'Schub auch in einem anderen Gelenk, oder Müdigkeit # über dem Üblichen',
  'the joint gave way, or not said': 'Gelenk hat nachgegeben, oder nicht angegeben',
  'any red flag': 'ein Warnzeichen',
} as const;

const work = {
  '# or more missed in # days and under # % done':
    '# oder mehr Einheiten in # Tagen ausgefallen und unter # % gemacht',
  '# days or more without a session': '# Tage oder länger ohne Trainingseinheit',
  'extra pain relief taken, or not said': 'zusätzliches Schmerzmittel genommen, oder nicht angegeben',
  'medicine change or joint injection within # days':
    'Medikament geändert oder Gelenkinjektion innerhalb von # Tagen',
  'more than # % over the load, more than # % over the top of the band, or extra sets or sessions, or not said':
    'mehr als # % über der Last, mehr als # % über der Obergrenze der Wiederholungen, zusätzliche Sätze oder Einheiten, oder nicht angegeben',
  'more than # % over the load, or extra sets or sessions, or not said':
    'mehr als # % über der Last, zusätzliche Sätze oder Einheiten, oder nicht angegeben',
  '# or more repetitions nearer to failure than prescribed, or not said':
    '# oder mehr Wiederholungen näher am Muskelversagen als verordnet, oder nicht angegeben',
  'under # % of the repetitions, stopped for pain, a symptom or an unknown reason':
    'unter # % der Wiederholungen, abgebrochen wegen Schmerz, eines Symptoms oder aus unbekanntem Grund',
  'under # % of the repetitions': 'unter # % der Wiederholungen',
  'no session on target holds; fewer than # in a row allow repetitions only':
    'ohne Einheit im Zielbereich bleibt die Dosis; unter # hintereinander steigen nur die Wiederholungen',
  'any required answer not given': 'eine nötige Antwort fehlt',
  'next morning not answered, a later one answered before any new session':
    'nächster Morgen nicht beantwortet, ein späterer vor der nächsten Einheit beantwortet',
  '#-day mean of mornings once # or more under usual pain, not cleared by a clinician':
    '#-Tage-Mittel der Morgen einmal # oder mehr unter dem üblichen Schmerz, therapeutisch noch nicht geklärt',
  'usual pain not frozen yet': 'üblicher Schmerz noch nicht festgelegt',
  'usual pain told at a first visit': 'üblicher Schmerz beim ersten Termin angegeben',
  'usual values older than # days': 'übliche Werte älter als # Tage',
  'usual pain # or more over the first of this plan, not acknowledged by a clinician':
    'üblicher Schmerz # oder mehr über dem ersten dieses Plans, therapeutisch noch nicht bestätigt',
} as const;

const thresholds: Readonly<Record<string, string>> = { ...pain, ...joint, ...work };

const figures = /\d+(?:\.\d+)?/g;

/** Each figure in its place: the German one names them in the same order. */
const threshold: ColleaguePhrases['threshold'] = (said) => {
  const german = thresholds[said.replace(figures, '#')];
  if (!german) return said;
  const found = said.match(figures) ?? [];
  let next = 0;
  return german.replace(/#/g, () => found[next++]?.replace('.', ',') ?? '');
};

const whereIn = ({ joint: name }: OpenDanger): string => (name ? (forms.joint?.(name, 'label') ?? name) : '');

const becauseOf = ({ facts: { rule, threshold: why } }: OpenDanger): string =>
  rule ? ` (${rule}: ${threshold(String(why))})` : '';

/** The signs in the patient's words, as every German paper to colleagues has them. */
const signIn = ({ flags, facts }: OpenDanger): string => {
  const what = flags.map((flag) => `„${pageWord('de', `flag.${flag}`)}“`).join('; ');
  const tries = Number(facts.failedAttempts);
  const reached =
    tries === 0
      ? 'noch kein Kontakt erfasst'
      : `${tries === 1 ? 'ein Kontaktversuch' : `${tries} Kontaktversuche`}, niemand erreicht`;
  return `Warnzeichen (${what || 'eigene Bedenken der Praxis'}): Alles ist ausgesetzt; ${reached}.`;
};

const dangers: Readonly<Partial<Record<OpenDanger['kind'], (danger: OpenDanger) => string>>> = {
  'red-flag': signIn,
  pause: (one) =>
    `${whereIn(one)}: ausgesetzt; weiter geht es nur, wenn eine Therapeutin oder ein Therapeut das entscheidet${becauseOf(one)}.`,
  'same-day-contact': (one) => `${whereIn(one)}: heute noch anrufen${becauseOf(one)}.`,
  'danger-passed': (one) => {
    const where = one.joint ? ` (${whereIn(one)})` : '';
    const to = one.facts.coveringClinician;
    return `Dringendes${where} nicht rechtzeitig bestätigt; ${to ? `übergegangen an ${to}` : 'eine Vertretung ist nicht benannt'}.`;
  },
};

export const decided: Pick<ColleaguePhrases, 'threshold' | 'danger'> = {
  threshold,
  danger: (one) => dangers[one.kind]?.(one) ?? one.sentence,
};
