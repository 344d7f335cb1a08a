import { LinkButton } from '#ui/shared/button.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { say } from '#ui/words.ts';

const NotFound = () => (
  <PageFrame audience="public">
    <div className="stack">
      <PageHeading>{say('lost.title')}</PageHeading>
      <p>{say('lost.text')}</p>
      <LinkButton href="/">{say('lost.home')}</LinkButton>
    </div>
  </PageFrame>
);

export default NotFound;
