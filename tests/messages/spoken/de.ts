/** What is asked of German sentences. */
import type { Spoken } from '../spoken.ts';

export const spoken: Spoken = {
  unwanted: [
    /(?<!\p{L})(?:sicher|gefahrlos|unbedenklich|harmlos|garantiert)/iu,
    /(?<!\p{L})(?:Okklusion|Restriktion|RPE|Kontraindikation|Abduktion|Flexion|proximal|distal)/iu,
    /\b(the|you|your|and|of|if|not|with|stop|limit)\b/i,
  ],
  marksOfPages: /["”]|--| - /,
  mostWordsOfName: 10,
  frightening: /nicht|\bnie\b|gefähr|brüchig/i,
  skinColours: /\b(rosa|weiß\b(?!, dass)|blau(?!er Fleck|en Fleck|e Flecken))\b/,
  cautionDigests: {
    1: '7b989f4fb38052e5',
    2: '88b951a9d2cf72d1',
    3: '333f4822ab829e2a',
    4: 'a5937cd1336bdabc',
    5: '4d8574842bb7843f',
    6: 'ca9c1cae3351e388',
    7: '276a2ef2880dc6ce',
    8: '09257f7ff603ecca',
  },
  acts: {
    'emergency care': /Notruf/,
    'the same day': /am selben Tag/,
    today: /\bheute\b/i,
    'at once': /sofort/i,
    ringing: /(rufen? .*\ban\b|angerufen)/i,
    help: /\bHilfe\b|Hilferuf/,
    'telling the clinic': /sagen Sie( es)? uns|sagen Sie es uns/i,
    stopping: /hören Sie .*auf|aufhören|beenden Sie|keine Übungen (mehr|und)|nicht mehr machen/i,
    'taking it off': /abnehmen|nehmen? (Sie|ich) .*\bab\b|nehme ich sie ab/i,
    breath: /Atmen Sie weiter/,
    'help at this moment': /jetzt Hilfe/,
    'what must not be': /\b(nicht|keine?[nrs]?|nie|niemand(en)?|nichts|ohne)\b/i,
    'leaving something undone': /\bnicht\b/i,
    slowness: /langsam(?!( bis))/i,
    'the other side': /\bandere[nrs]?\b/i,
  },
  counts: { half: /halb/i, two: /\bzwei|\bbeide/i, three: /\bdrei/i, five: /\bfünf/i, ten: /\bzehn/i },
};
