/** What is asked of English sentences. */
import type { Spoken } from '../spoken.ts';

export const spoken: Spoken = {
  unwanted: [
    // Who has rung the clinic, and a back that is level, are neither.
    /(?<!have )\brungs?\b/i,
    /(?<!is |back )\blevels?\b/i,
    /\bunlock/i,
    /\bgate[sd]?\b/i,
    /\bcaps?\b/i,
    /\bsafe(ly|ty|r|st)?\b|\bharmless\b|\bno risk\b|\bguarantee/i,
    /\bstreak|\bbadge|\breward|\bgoal\b/i,
    /\bplease\b|\bsorry\b|\binvalid\b|\boops\b/i,
    /\bocclusion\b|\brestriction\b|\bRPE\b|\bRIR\b|\b1RM\b/i,
    /\bfailed\b/i,
    /\b(flexion|extension|abduction|adduction|eccentric|concentric|prone|supine|dorsi|plantar)/i,
  ],
  marksOfPages: /"|--| - /,
  mostWordsOfName: 12,
  frightening: /do not|never|damage|fragile|weak back|danger/i,
  skinColours: /\b(pink|dusky|white|blue)\b/,
  cautionDigests: {
    1: '9179270c5fc82982',
    2: 'ebaab18419f23041',
    3: '080d38fd303359f1',
    4: 'ebb716c527db7e99',
    5: '43a5b4f96efd057b',
    6: 'bc7c5685ad2f7266',
    7: '2e3d672e0403c1b5',
    8: '9a5bd8ed6d80ae4f',
  },
  // English is what other languages are held against.
  acts: null,
  counts: null,
};
