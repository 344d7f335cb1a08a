/** Four weeks in a small picture, with the same in words. Each class of marks is one path. */
import type { StripDrawing } from './strip-drawing.ts';
import { missingPath, overPath, withinPath } from './strip-marks.ts';

const height = 40;
const weeks = `M42 0V${height}M84 0V${height}M126 0V${height}`;

export const StripPicture = ({ drawing }: { readonly drawing: StripDrawing }) => {
  const { label, width, dose, within, over } = drawing;
  return (
    <svg className="strip" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <path className="strip-week" d={weeks} />
      <path className="strip-dose" d={dose} />
      <path className="strip-within" d={withinPath(within)} />
      <path className="strip-over" d={overPath(within, over)} />
      <path className="strip-missing" d={missingPath(within)} />
    </svg>
  );
};
