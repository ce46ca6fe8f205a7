/** The mark of the site in a browser's tab: a track from above, on paper in any scheme. */
export const icon =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><rect width="64" height="64" rx="10" fill="#fff"/><rect x="6" y="15" width="52" height="34" rx="17" fill="#5c4a3a"/><rect x="17" y="26" width="30" height="12" rx="6" fill="#fff" stroke="#1d1a17" stroke-width="2"/><path d="M32 38v11" stroke="#fff" stroke-width="3"/></svg>\n'
