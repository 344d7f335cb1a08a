import type { words as english } from '#messages/en/pages/handout.ts';
import type { Same } from '#messages/sentence.ts';
import { words as dose } from './dose.ts';
import { words as figures } from './figures.ts';
import { words as warningSigns } from './warning-signs.ts';

/** The plan on one page, to read or to print, in German. */
export const words = {
  ...dose,
  ...figures,
  ...warningSigns,
  'handout.title': 'Mein Plan auf einer Seite',
  'handout.for': '{name}, Stand {date}',
  'handout.print': 'Diese Woche zum Drucken (PDF)',
  'handout.print-large': 'In großer Schrift (PDF)',
  'handout.none': 'Es sind noch keine Übungen für Sie festgelegt.',
  'handout.days': 'Am {days}.',
  'handout.every-day': 'An jedem Tag. Es sind keine bestimmten Tage festgelegt.',
  'handout.no-days': 'Zurzeit an keinem Tag.',
  'handout.easier': 'Leichteres Training, für einen schlechten Tag: {dose}.',
  'handout.easier-now':
    'Vorerst gilt das leichtere Training. Auf der Seite „Heute“ steht, wann das vorbei ist.',
  'handout.whole': 'Das ganze Training, wenn das vorbei ist: {dose}.',
  'handout.resting': 'Lassen Sie diese Übung vorerst aus. Auf der Seite „Heute“ steht, wann sie wiederkommt.',
  'handout.stop': 'Aufhören und anrufen',
  'handout.stop-call':
    'Bei einem Warnzeichen hören Sie sofort auf. Im Notfall rufen Sie {emergency} an, sonst {clinic}: {phone}.',
  'handout.signs': 'Die Warnzeichen',
  'handout.do-reserve': {
    by: 'count',
    one: 'Hören Sie auf, wenn Sie noch 1 Wiederholung sauber schaffen würden.',
    other: 'Hören Sie auf, wenn Sie noch {count} Wiederholungen sauber schaffen würden.',
  },
  'handout.do-last': 'Machen Sie weiter, bis Sie keine Wiederholung mehr sauber schaffen würden.',
  'handout.do-tempo': '{seconds} Sekunden für jede Wiederholung.',
  'handout.do-cuff-minutes': {
    by: 'minutes',
    one: 'Manschette höchstens {minutes} Minute anlegen, dann abnehmen.',
    other: 'Manschette höchstens {minutes} Minuten anlegen, dann abnehmen.',
  },
  'handout.do-cuff-supine': 'Manschette {width} cm breit, im Liegen.',
  'handout.do-cuff-seated': 'Manschette {width} cm breit, im Sitzen.',
  'handout.do-cuff-standing': 'Manschette {width} cm breit, im Stehen.',
  'handout.do-inflated': 'In den Pausen bleibt die Manschette aufgepumpt.',
  'handout.do-deflated': 'Lassen Sie in den Pausen die Luft ab.',
  'handout.do-no-pulse': 'Spüren Sie unterhalb der Manschette keinen Puls, nehmen Sie sie sofort ab.',
  'handout.protein': 'Eiweiß',
  'handout.protein-figures': {
    by: 'meals',
    one: '{low} bis {high} g Eiweiß am Tag, in {meals} Mahlzeit.',
    other: '{low} bis {high} g Eiweiß am Tag, verteilt auf {meals} Mahlzeiten.',
  },
  'handout.energy': 'Etwa {kcal} kcal am Tag mehr, als Sie brauchen, um Ihr Gewicht zu halten.',
  'handout.protein-about':
    'Festgelegt von {name}. Sagen Sie Ihrer Praxis vorher Bescheid, wenn Sie Nierenprobleme haben, schwanger sind oder ungewollt abnehmen.',
} as const satisfies Same<typeof english>;
