import type { words as english } from '#messages/en/pages/dose.ts';
import type { Same } from '#messages/sentence.ts';

/** An exercise and its dose, in German. */
export const words = {
  'dose.sets': { by: 'sets', one: '1 Satz mit {repetitions}', other: '{sets} Sätze mit je {repetitions}' },
  'dose.repetitions': { by: 'count', one: '{count} Wiederholung', other: '{count} Wiederholungen' },
  'dose.repetitions-span': '{low} bis {high} Wiederholungen',
  'dose.sets-held': { by: 'sets', one: '1 Satz: {holds}', other: '{sets} Sätze: je {holds}' },
  'dose.holds': {
    by: 'count',
    one: 'einmal {seconds}\u00a0Sekunden halten',
    other: '{count}-mal {seconds}\u00a0Sekunden halten',
  },
  'dose.holds-span': '{low}- bis {high}-mal {seconds}\u00a0Sekunden halten',
  'dose.hold':
    'Halten Sie jedes Mal {seconds}\u00a0Sekunden, dann lassen Sie {between}\u00a0Sekunden locker.',
  'dose.hold-reserve': {
    by: 'count',
    one: 'Hören Sie auf, wenn Sie noch 1-mal gut halten könnten.',
    other: 'Hören Sie auf, wenn Sie noch {count}-mal gut halten könnten.',
  },
  'dose.hold-last': 'Machen Sie weiter, bis Sie kein Halten mehr bis zum Ende schaffen würden.',
  'dose.mark': 'Knete oder Ring mit der Nummer {mark}',
  'dose.mark-band': 'Band mit der Nummer {mark}',
  'dose.machine': 'in der Praxis: {machine}',
  'dose.scheme': '{sets} Sätze: {scheme} Wiederholungen',
  'dose.load': 'mit {weight}',
  'dose.no-load': 'ohne Gewicht',
  'dose.added': 'mit {weight} zusätzlich',
  'dose.rest': '{seconds}\u00a0Sekunden Pause zwischen den Sätzen',
  'dose.weekly': { by: 'count', one: 'An {count} Tag in der Woche', other: 'An {count} Tagen in der Woche' },
  'dose.left': 'linke Seite',
  'dose.right': 'rechte Seite',
  'dose.both': 'beide Seiten',
  'dose.cuff': 'Manschette auf {mmhg}\u00a0mmHg',
  'dose.wrap': 'elastische Binde, Festigkeit {tightness} von 10',
  'dose.pulse': 'Den Puls fühlen, wie gezeigt',
  'cuff.supervised': 'Nur mit einer Physiotherapeutin oder einem Physiotherapeuten neben Ihnen, nie allein',
  'dose.at-clinic': 'Nur in der Praxis',
  'dose.at-clinic-note':
    'Machen Sie diese Übungen nur in der Praxis, an den vereinbarten Tagen. Versuchen Sie sie zu Hause nicht auf andere Art. Möchten Sie eine Übung für zu Hause, fragen Sie uns.',
  'dose.signed': 'Festgelegt von {name}.',
  'dose.how': 'So geht es',
  'dose.keep': 'Denken Sie daran',
  'pain.in': '{joint:label}',
  'pain.limit': 'Schmerz bis {limit} von 10 ist erlaubt ({where}). Über {limit}: aufhören.',
} as const satisfies Same<typeof english>;
