import { z } from 'zod';

export const CopySiteSchema = z
  .strictObject({
    site: z
      .string()
      .regex(/^[a-z0-9-]+(\.[a-z0-9-]+)+$/)
      .describe('name of a host; it stands for its subdomains too'),
    what: z.string().min(1).describe('what it holds copies of'),
  })
  .describe('a site that holds copies of what others published');
export type CopySite = z.infer<typeof CopySiteSchema>;

/** Whether an address is of a site that copies, so that who read there has not opened the original. */
export function isCopy(url: string, sites: readonly CopySite[]): boolean {
  const { hostname } = new URL(url);
  return sites.some(({ site }) => hostname === site || hostname.endsWith(`.${site}`));
}
