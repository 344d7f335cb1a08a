import type { Metadata } from 'next';
import { letterInWords } from '#ui/care/papers/paper-in-words.ts';
import { recordPage } from '../../../clinic-page.ts';
import { PaperFrame, type PaperPageProps, paperFacts } from '../../../paper-frame.tsx';

export const metadata: Metadata = { title: 'Letter at the end of care' };

const LetterPage = async ({ params, searchParams }: PaperPageProps) => {
  const at = await recordPage(params);
  const facts = await paperFacts(at, searchParams);
  return <PaperFrame at={at} paper={letterInWords(facts, at.day)} />;
};

export default LetterPage;
