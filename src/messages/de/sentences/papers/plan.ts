/** The plan on paper, in German. */

import type { planPaper as english } from '#messages/en/sentences/papers/plan.ts';
import type { Same } from '#messages/sentence.ts';

export const planPaper = {
  title: 'Mein Übungsplan',
  file: 'uebungsplan',
  about: '{name}, geboren am {day}',
  clinic: '{clinic}, Telefon {phone}',
  exercise: 'Was zu tun ist',
  'any-day': {
    by: 'count',
    one: 'An einem Tag in der Woche. Den Tag wählen Sie.',
    other: 'An {count} Tagen in der Woche. Die Tage wählen Sie.',
  },
  'no-days': 'Zurzeit an keinem Tag.',
  supervised:
    'Nur an Tagen, die Sie mit Ihrer Physiotherapeutin oder Ihrem Physiotherapeuten ausgemacht haben.',
  easier: 'Leichteres Training, für einen schlechten Tag: {dose}.',
  'easier-now': 'Vorerst nur das leichtere Training.',
  whole: 'Das ganze Training, erst wenn die Praxis es sagt: {dose}.',
  resting: 'Lassen Sie diese Übung aus, bis die Praxis Ihnen Bescheid gibt.',
  none: 'Zurzeit ist nichts unterschrieben, was Sie zu Hause tun sollen. Fragen Sie die Praxis: {phone}.',
  off: 'Ihre Behandlung ruht oder ist beendet. Fragen Sie die Praxis, bevor Sie üben: {phone}.',
  tick: 'Kreuzen Sie an, was Sie wie angegeben gemacht haben. War es mehr oder weniger, schreiben Sie auf, wie viele Male.',
  'pain-during': 'Stärkster Schmerz {joint:in} beim Üben, 0 bis 10',
  'pain-morning': 'Schmerz {joint:in} am Morgen, 0 bis 10',
  stiffness: 'Steif am Morgen, Minuten: {joint:label}',
  'bring-it':
    'Niemand sieht, was Sie hier eintragen: Bringen Sie das Blatt mit oder rufen Sie die Praxis an.',
  pain: 'Wie viel Schmerz in Ordnung ist',
  'no-limit': 'Für Schmerz {joint:in} ist keine Grenze festgelegt. Fragen Sie die Praxis, bevor Sie üben.',
  'no-joint':
    'Es ist kein Gelenk festgelegt, auf das zu achten ist. Fragen Sie die Praxis, wie viel Schmerz in Ordnung ist: {phone}.',
  worse: 'Wenn es dem Gelenk danach schlechter geht',
  'worse-morning':
    'Am nächsten Morgen schlechter als sonst: beim nächsten Mal das leichtere Training, nicht mehr.',
  'worse-again':
    'Am Morgen darauf immer noch schlechter: Üben Sie nicht damit und rufen Sie die Praxis an: {phone}.',
  'missed-day': 'Einen Tag versäumt? Lassen Sie ihn aus. Holen Sie nichts nach.',
  signed: '{exercise}, Fassung {version}: unterschrieben von {name} am {day}.',
  'signed-within':
    '{exercise}, Fassung {version}: seit {day}, innerhalb der von {name} unterschriebenen Grenzen.',
  printed: 'Gedruckt am {day}.',
  'holds-until': 'Hat die Praxis oder Ihr Telefon Ihnen seither etwas anderes gesagt, gilt das.',
  'changes-after':
    'Dieses Blatt gilt bis {day}. Vom nächsten Tag an gilt etwas anderes: Üben Sie dann nicht mehr danach, sondern lassen Sie sich von der Praxis ein neues geben: {phone}.',
  unprintable: '▯ steht für ein Zeichen, das sich nicht drucken lässt: {names}.',
} as const satisfies Same<typeof english>;
