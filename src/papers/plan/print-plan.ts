/** The plan as a file to print: a page a week; in large type two, or as many as it needs where two are too few. */
import { everyLanguage } from '#messages/every-language.ts';
import type { Look } from '../look.ts';
import { type Typeset, typeset } from '../typesetting/typeset.ts';
import { planData } from './plan-data.ts';
import type { PlanPaper } from './plan-paper.ts';

/** Points. The first is wanted; the others are taken where much is signed, before a page more is. */
const sizesPt = [12, 11.5, 11, 10.5, 10, 9.5, 9, 8.5] as const;
const largeSizesPt = [17, 16, 15, 14, 13, 12, 11.5] as const;
/** Small type that runs over two pages all the same helps nobody: then it is large, as the other papers are. */
const overTwoPagesPt = [16] as const;

/** Every week is laid out alike, so its size is found on the first one. */
export const printPlan = async (plan: PlanPaper, look: Look): Promise<Typeset> => {
  const pt = look.isLarge ? largeSizesPt : sizesPt;
  const pagesAWeek = look.isLarge ? 2 : 1;
  const weeksOf = (weeks: PlanPaper['weeks'], sizes: readonly number[]) =>
    typeset('plan', planData({ ...plan, weeks }, look), look, {
      pt: sizes,
      mostPages: weeks.length * pagesAWeek,
    });
  const first = await weeksOf(plan.weeks.slice(0, 1), pt);
  if (look.isLarge && first.pages > pagesAWeek) return weeksOf(plan.weeks, overTwoPagesPt);
  return plan.weeks.length === 1
    ? first
    : weeksOf(
        plan.weeks,
        pt.filter((size) => size <= first.sizePt),
      );
};

export const planFileName = ({ language, printedOn }: Look): string =>
  `${everyLanguage[language].sentences['plan-paper'].file}-${printedOn}.pdf`;
