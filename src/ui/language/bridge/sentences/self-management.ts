import type { Sentences } from '../translator.ts';

/** The sheet for the time after care, in German. Read by nobody yet; whoever hands it over has read it. */
export const summarySentences: Sentences = {
  'Telephone {phone}': 'Telefon {phone}',
  '{name}, born {=day}': '{name}, geboren am {=day}',
  'What to do on your own': 'Was Sie selbst tun können',
  'Your exercises on the last day of care': 'Ihre Übungen am letzten Tag der Behandlung',
  'No exercise to do without the cuff was in force.': 'Es galt keine Übung, die ohne Manschette geht.',
  'Work with the cuff or wrap': 'Üben mit Manschette oder Wickel',
  'It ended with your care and is not on this sheet.':
    'Es endete mit Ihrer Behandlung und steht nicht auf diesem Blatt.',
  'Do not use the cuff or wrap before you have asked a clinician.':
    'Benutzen Sie Manschette oder Wickel nicht, bevor Sie eine Fachperson gefragt haben.',
  'Everything rested when your care ended.': 'Als Ihre Behandlung endete, ruhte alles.',
  'This joint rested when your care ended.': 'Als Ihre Behandlung endete, ruhte dieses Gelenk.',
  'When your care ended, only the easier session was planned for this.':
    'Als Ihre Behandlung endete, war hierfür nur das leichtere Training geplant.',
  'Do not do this before you have rung the clinic.':
    'Machen Sie das nicht, bevor Sie die Praxis angerufen haben.',
  'Signed by {name} on {=day}.': 'Unterschrieben von {name} am {=day}.',
  'The easier session, for a bad day: {=dose}.': 'Das leichtere Training, für einen schlechten Tag: {=dose}.',
  '{#count} times a week.': '{#count}-mal in der Woche.',
  'Your {=joint}': 'Ihr Gelenk: {=joint}',
  'No usual values were set for it.': 'Dafür wurden keine üblichen Werte festgelegt.',
  'Ask the clinic how to read it: {phone}.': 'Fragen Sie die Praxis, wie das zu verstehen ist: {phone}.',
  'No usual pain was set.': 'Es wurde kein üblicher Schmerz festgelegt.',
  'Your usual pain, 0 to 10: {#value}.': 'Ihr üblicher Schmerz, 0 bis 10: {#value}.',
  'Your usual pain, 0 to 10: {#value}, up to {#top}.':
    'Ihr üblicher Schmerz, 0 bis 10: {#value}, höchstens {#top}.',
  'Your own ceiling for pain, 0 to 10: {#value}.': 'Ihre eigene Obergrenze für Schmerz, 0 bis 10: {#value}.',
  'Your usual morning stiffness: {#minutes} minutes. Your usual swelling: {=swelling}.':
    'Ihre übliche Steifheit am Morgen: {#minutes} Minuten. Ihre übliche Schwellung: {=swelling}.',
  none: 'keine',
  slight: 'leicht',
  'Set by {name} on {=day}.': 'Festgelegt von {name} am {=day}.',
  'Your mornings had lain well under these values.':
    'Ihre Morgen hatten deutlich unter diesen Werten gelegen.',
  'Ask the clinic whether these values still fit.': 'Fragen Sie die Praxis, ob diese Werte noch stimmen.',
  'If pain goes over your ceiling, stop. Ring the clinic before the next session: {phone}.':
    'Steigt der Schmerz über Ihre Obergrenze, hören Sie auf. Rufen Sie vor dem nächsten Training die Praxis an: {phone}.',
  'If a morning is worse than your usual values, do not do more. Ring the clinic if it is so again the next morning.':
    'Ist ein Morgen schlechter als Ihre üblichen Werte, machen Sie nicht mehr. Ist es am nächsten Morgen wieder so, rufen Sie die Praxis an.',
  'Stop and ring {number} at once': 'Hören Sie auf und rufen Sie sofort {number} an',
  'Stop and speak with a clinician the same day: {phone}':
    'Hören Sie auf und sprechen Sie noch am selben Tag mit einer Fachperson: {phone}',
  'If you reach nobody there, do not wait: ring {number}.':
    'Erreichen Sie dort niemanden, warten Sie nicht: Rufen Sie {number} an.',
  'Stop and ring the clinic: {phone}': 'Hören Sie auf und rufen Sie die Praxis an: {phone}',
  'Who is there for you': 'Wer für Sie da ist',
  'This care ended on {=day}.': 'Diese Behandlung endete am {=day}.',
  'You have other care at {clinic} that goes on.':
    'Sie sind bei {clinic} noch in anderer Behandlung, die weitergeht.',
  'Times at which the clinic looks at what you send: {hours}':
    'Zeiten, zu denen die Praxis ansieht, was Sie senden: {hours}',
  'Nobody looks at other times.': 'Zu anderen Zeiten sieht niemand hin.',
  'Nobody watches what you send any more, and nothing changes your exercises for you.':
    'Niemand sieht mehr an, was Sie senden, und nichts ändert Ihre Übungen für Sie.',
  '{clinic}: {phone}. Emergency: {number}.': '{clinic}: {phone}. Notruf: {number}.',
  'This sheet repeats what is in your record. What your clinician tells you stands above it.':
    'Dieses Blatt wiederholt, was in Ihrer Akte steht. Was Ihre Fachperson Ihnen sagt, geht vor.',
  '{#day} Jan {#year}': '{#day}. Januar {#year}',
  '{#day} Feb {#year}': '{#day}. Februar {#year}',
  '{#day} Mar {#year}': '{#day}. März {#year}',
  '{#day} Apr {#year}': '{#day}. April {#year}',
  '{#day} May {#year}': '{#day}. Mai {#year}',
  '{#day} Jun {#year}': '{#day}. Juni {#year}',
  '{#day} Jul {#year}': '{#day}. Juli {#year}',
  '{#day} Aug {#year}': '{#day}. August {#year}',
  '{#day} Sep {#year}': '{#day}. September {#year}',
  '{#day} Oct {#year}': '{#day}. Oktober {#year}',
  '{#day} Nov {#year}': '{#day}. November {#year}',
  '{#day} Dec {#year}': '{#day}. Dezember {#year}',
  'Advice of the clinic': 'Rat der Praxis',
  'Read and signed by the clinician, with name and date:':
    'Von der Fachperson gelesen und unterschrieben, mit Name und Datum:',
};
