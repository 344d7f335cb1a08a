/**
 * Which network a request comes from. Whoever connects may write what they like into X-Forwarded-For; only what
 * a proxy that the settings name has added to it is believed.
 */
import { BlockList, isIP } from 'node:net';

/** "::ffff:127.0.0.1" is 127.0.0.1. @param {string} address */
const plain = (address) => address.replace(/^::ffff:(?=\d+\.)/i, '');

const familyOf = (address) => (isIP(address) === 6 ? 'ipv6' : 'ipv4');

/** Addresses, or ranges such as 10.0.0.0/8. Null when one of them is neither. @param {readonly string[]} texts */
export const addressesIn = (texts) => {
  const list = new BlockList();
  for (const text of texts) {
    const [address = '', bits, ...more] = text.split('/');
    const most = isIP(address) === 6 ? 128 : 32;
    const isRange = bits !== undefined;
    if (!isIP(address) || more.length > 0 || (isRange && !(/^\d{1,3}$/.test(bits) && Number(bits) <= most)))
      return null;
    if (isRange) list.addSubnet(address, Number(bits), familyOf(address));
    else list.addAddress(address, familyOf(address));
  }
  return list;
};

/**
 * @param {BlockList} trusted proxies that may say whom they speak for
 * @param {string} peer who has connected
 * @param {string | undefined} forwarded X-Forwarded-For as it came
 */
export const networkOfPeer = (trusted, peer, forwarded) => {
  const isTrusted = (address) => isIP(address) !== 0 && trusted.check(address, familyOf(address));
  let network = plain(peer);
  const said = (forwarded ?? '').split(',').map((one) => plain(one.trim()));
  // From the nearest on: each proxy has added whom it was connected by.
  while (isTrusted(network) && said.length > 0) {
    const before = said.pop() ?? '';
    if (isIP(before) === 0) break;
    network = before;
  }
  return network;
};
