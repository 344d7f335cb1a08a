/** The morning after the session, for the rules that read it. */
import type { Facts } from '../../facts/facts.ts';
import { reaches } from '../rule.ts';

/** The next morning, or the later one that speaks for it. */
export const nextOrLaterReaches = ({ painNextMorning, painLaterMorning }: Facts, height: number): boolean =>
  reaches(painNextMorning, height) || reaches(painLaterMorning, height);
