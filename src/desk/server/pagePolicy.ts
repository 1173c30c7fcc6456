/**
 * Only the page's own files: no other address is asked for a script, a style, a font, a picture or data. As a header a
 * server adds who may frame the page, which a policy inside the page cannot say.
 */
export const PAGE_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "frame-src 'self' blob:",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
