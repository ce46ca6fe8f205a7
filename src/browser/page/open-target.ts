/** Opens what holds the place that the address names, where the browser does not do so by itself. */
function open(): void {
  const place = document.getElementById(decodeURIComponent(location.hash.slice(1)))
  for (let at = place?.closest('details'); at; at = at.parentElement?.closest('details'))
    at.open = true
}

export function openTarget(): void {
  addEventListener('hashchange', open)
  open()
}
