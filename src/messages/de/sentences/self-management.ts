/** The document for the time after care. */

import type { selfManagement as english } from '#messages/en/sentences/self-management.ts';
import type { Same } from '#messages/sentence.ts';

export const selfManagement = {
  telephone: 'Telefon {phone}',
  about: '{name}, geboren am {day}',
  title: 'Was Sie selbst tun können',
  exercises: 'Ihre Übungen am letzten Tag der Behandlung',
  'none-without-cuff': 'Sie hatten keine Übung ohne Manschette.',
  'none-without-cuff-now': 'Sie haben keine Übung ohne Manschette.',
  cuff: 'Üben mit Manschette oder elastischer Binde',
  'cuff-ended': 'Das endete mit Ihrer Behandlung und steht nicht auf diesem Blatt.',
  'cuff-left-out': 'Das gehört zu Ihrer Behandlung und steht nicht auf diesem Blatt.',
  'cuff-after-care':
    'Ist Ihre Behandlung zu Ende: Benutzen Sie Manschette oder elastische Binde nicht, bevor Sie in der Praxis gefragt haben.',
  'cuff-ask-first':
    'Benutzen Sie Manschette oder elastische Binde nicht, bevor Sie eine Physiotherapeutin oder einen Physiotherapeuten gefragt haben.',
  'exercises-now': 'Ihre Übungen zurzeit',
  'everything-rests': 'Als Ihre Behandlung endete, sollten Sie mit allen Übungen pausieren.',
  'joint-rests': 'Als Ihre Behandlung endete, sollten Sie dieses Gelenk ruhen lassen.',
  'easier-only': 'Als Ihre Behandlung endete, war hierfür nur das leichtere Training geplant.',
  'everything-rests-now': 'Sie sollen zurzeit mit allen Übungen pausieren.',
  'joint-rests-now': 'Sie sollen dieses Gelenk zurzeit ruhen lassen.',
  'easier-only-now': 'Hierfür ist zurzeit nur das leichtere Training geplant.',
  'ring-first': 'Machen Sie das nicht, bevor Sie die Praxis angerufen haben.',
  signed: 'Unterschrieben von {name} am {day}.',
  easier: 'Das leichtere Training, für einen schlechten Tag: {dose}.',
  weekly: { by: 'count', one: 'Einmal in der Woche.', other: '{count}-mal in der Woche.' },
  joint: 'Ihr Gelenk: {joint:label}',
  'no-usual-values': 'Dafür wurden keine üblichen Werte festgelegt.',
  'ask-how-to-read': 'Fragen Sie die Praxis, wie das zu verstehen ist: {phone}.',
  'no-usual-pain': 'Es wurde kein üblicher Schmerz festgelegt.',
  'usual-pain': 'Ihr üblicher Schmerz, 0 bis 10: {value}.',
  'usual-pain-span': 'Ihr üblicher Schmerz, 0 bis 10: {value}, höchstens {top}.',
  'pain-limit': 'Ihre eigene Grenze für Schmerz, 0 bis 10: {value}.',
  'usual-morning':
    'Ihre übliche Steifheit am Morgen: {minutes} Minuten. Ihre übliche Schwellung: {swelling}.',
  'swelling-none': 'keine',
  'swelling-slight': 'leicht',
  'set-by': 'Festgelegt von {name} am {day}.',
  'followed-mornings': 'Am {day} gesenkt, weil es Ihnen morgens besser ging.',
  'values-too-high': 'Am Morgen waren Ihre Werte deutlich niedriger als diese.',
  'ask-whether-values-fit': 'Fragen Sie die Praxis, ob diese Werte noch stimmen.',
  'over-pain-limit':
    'Steigt der Schmerz über Ihre Grenze, hören Sie auf. Rufen Sie vor dem nächsten Training die Praxis an: {phone}.',
  'worse-morning':
    'Ist ein Morgen schlechter als Ihre üblichen Werte, machen Sie nicht mehr als bisher. Ist es am nächsten Morgen wieder so, rufen Sie die Praxis an.',
  'ring-emergency': 'Hören Sie auf und rufen Sie sofort {number} an',
  'speak-same-day':
    'Hören Sie auf und sprechen Sie noch am selben Tag mit einer Physiotherapeutin oder einem Physiotherapeuten: {phone}',
  'nobody-there': 'Erreichen Sie dort niemanden, warten Sie nicht: Rufen Sie {number} an.',
  'ring-clinic': 'Hören Sie auf und rufen Sie die Praxis an: {phone}',
  'who-is-there': 'Wer für Sie da ist',
  'care-ended': 'Diese Behandlung endete am {day}.',
  'care-goes-on': 'Ihre Behandlung geht weiter; ein Ende ist nicht eingetragen.',
  'other-care': 'Bei {clinic} sind Sie noch in einer anderen Behandlung.',
  hours: 'Die Praxis liest zu diesen Zeiten, was Sie senden: {hours}',
  'outside-hours': 'Außerhalb dieser Zeiten liest es niemand.',
  'nobody-reads': 'Niemand liest mehr, was Sie senden. Niemand ändert Ihre Übungen für Sie.',
  clinic: '{clinic}: {phone}. Notruf: {number}.',
  'clinician-first':
    'Dieses Blatt wiederholt, was in Ihrer Akte steht. Was Ihre Physiotherapeutin oder Ihr Physiotherapeut Ihnen sagt, geht vor.',
  advice: 'Rat der Praxis',
  signature:
    'Gelesen und unterschrieben von der Physiotherapeutin oder dem Physiotherapeuten, mit Name und Datum:',
} as const satisfies Same<typeof english>;
