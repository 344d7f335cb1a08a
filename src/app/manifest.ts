/** So that the page can be put on the phone's start screen. The PNG files are made by `npm run icons`. */
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
  icons: [
    { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
    { src: '/icons/192/icon.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: '/icons/512/icon.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
    { src: '/icons/maskable/icon.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
});

export default manifest;
