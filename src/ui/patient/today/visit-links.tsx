/** Ways to the questions before a visit, when some wait, and to what was agreed to. */
import { say } from '#ui/words.ts';

export const VisitLinks = ({ questionsWait }: { readonly questionsWait: boolean }) => (
  <section className="stack-close">
    {questionsWait ? (
      <p>
        {say('visit.waits')} <a href="/before-visit">{say('visit.title')}</a>
      </p>
    ) : null}
    <p>
      <a href="/before-visit/agreements">{say('agree.link')}</a>
    </p>
  </section>
);
