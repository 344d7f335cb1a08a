/** The frame of every page: skip link, name and place, links, main, foot. */
import type { ReactNode } from 'react';

interface FrameLink {
  readonly href: string;
  readonly text: string;
  readonly isCurrent?: boolean;
}

export interface PageFrameProps {
  /** Patients get larger type, larger targets and a narrow column. */
  readonly audience: 'patient' | 'clinic' | 'public';
  /** Clinic's name, shown beside the product's. */
  readonly place?: string;
  readonly homeHref?: string;
  readonly links?: readonly FrameLink[];
  /** Stands after the links, such as a sign-out form. */
  readonly account?: ReactNode;
  readonly foot?: ReactNode;
  /** In the page's language; English where left out. */
  readonly skipText?: string;
  readonly pagesText?: string;
  readonly children: ReactNode;
}

const classes = {
  patient: 'frame frame-narrow frame-patient',
  public: 'frame frame-narrow frame-patient',
  clinic: 'frame',
};

export const PageFrame = (props: PageFrameProps) => (
  <div className={classes[props.audience]}>
    <a className="frame-skip" href="#main">
      {props.skipText ?? 'Skip to the page'}
    </a>
    <header className="frame-top">
      <div className="frame-top-inner">
        <a className="frame-name" href={props.homeHref ?? '/'}>
          Loadgate
        </a>
        {props.place ? <span className="frame-place">{props.place}</span> : null}
        {props.links || props.account ? (
          <nav aria-label={props.pagesText ?? 'Pages'} className="frame-nav">
            <ul className="frame-links">
              {(props.links ?? []).map((link) => (
                <li key={link.href}>
                  <a href={link.href} aria-current={link.isCurrent ? 'page' : undefined}>
                    {link.text}
                  </a>
                </li>
              ))}
              {props.account ? <li>{props.account}</li> : null}
            </ul>
          </nav>
        ) : null}
      </div>
    </header>
    <main id="main" className="frame-main" tabIndex={-1}>
      {props.children}
    </main>
    {props.foot ? (
      <footer className="frame-foot">
        <div className="frame-foot-inner">{props.foot}</div>
      </footer>
    ) : null}
  </div>
);
