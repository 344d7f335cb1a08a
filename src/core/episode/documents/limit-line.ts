/** A limit in one sentence. */
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import type { Limit } from '#core/record/limit.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { boundInWords } from '../limit-degrees.ts';

const limitWords: Readonly<Record<Limit['kind'], string>> = {
  'weight-bearing': 'weight-bearing limited',
  range: 'range limited',
  'load-limit': 'load limited',
  'no-impact': 'no impact',
  methods: 'not every method',
  none: 'no limit',
};

/** A limit with its figures, its days and who set it. */
export const limitLine = (limit: LimitInForce): string => {
  const { joint, kind, limitKg, from, to, author, isExpired } = limit;
  const most = limitKg === null ? boundInWords(limit) : ` to ${limitKg} kg`;
  const until = to === null ? 'until lifted' : `to ${dayInWords(to)}`;
  const over = isExpired ? ' Its last day has passed and nobody has lifted it.' : '';
  return `${jointInWords(joint)}: ${limitWords[kind]}${most}, from ${dayInWords(from)} ${until}. Set by ${author}.${over}`;
};
