import type { Metadata } from 'next';
import { sheetInWords } from '#ui/care/papers/paper-in-words.ts';
import { recordPage } from '../../../clinic-page.ts';
import { PaperFrame, type PaperPageProps, paperFacts } from '../../../paper-frame.tsx';

export const metadata: Metadata = { title: 'Self-management sheet' };

const SelfManagementPage = async ({ params, searchParams }: PaperPageProps) => {
  const at = await recordPage(params);
  const facts = await paperFacts(at, searchParams);
  return <PaperFrame at={at} paper={sheetInWords(facts)} />;
};

export default SelfManagementPage;
