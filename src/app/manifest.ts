/** So that the page can be put on the phone's start screen. */
import type { MetadataRoute } from 'next';

const manifest = (): MetadataRoute.Manifest => ({
  id: '/today',
  name: 'Loadgate',
  short_name: 'Loadgate',
  start_url: '/today',
  scope: '/',
  display: 'standalone',
  background_color: '#f5efe3',
  theme_color: '#f5efe3',
  icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' }],
});

export default manifest;
