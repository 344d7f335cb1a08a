/** A code for a phone's camera, as one path: dark on light in both themes, with its quiet zone. */
import { encode } from 'uqr';

export const QrCode = ({ text, label }: { readonly text: string; readonly label: string }) => {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  const path = data
    .flatMap((row, y) => row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : '')))
    .join('');
  return (
    <svg
      className="qr-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect className="qr-light" width={size} height={size} />
      <path className="qr-dark" d={path} />
    </svg>
  );
};
