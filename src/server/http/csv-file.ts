/** Rows of RFC 4180 as a file to save, kept by nothing on the way. */
export const csvFile = (text: string, name: string): Response =>
  new Response(text, {
    headers: {
      'Content-Type': 'text/csv; charset=utf-8; header=present',
      'Content-Disposition': `attachment; filename="${name}.csv"`,
      'Cache-Control': 'no-store',
    },
  });
