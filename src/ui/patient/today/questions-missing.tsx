'use client';
/** The signal went before the pages with the questions had come. */
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { t } from '../words.ts';

export const QuestionsMissing = () => (
  <Notice tone="care" title={t('today.questions-missing')}>
    <Button tone="plain" onClick={() => window.location.reload()}>
      {t('today.fetch-questions')}
    </Button>
  </Notice>
);
