/**
 * Whether this browser prints what stands in the margins of pages: it is one that reads the rules for
 * it.
 */
export function printsMargins(): boolean {
  const style = document.createElement('style')
  style.textContent = '@page{@top-left{content:"1"}}'
  document.body.append(style)
  const [rule] = style.sheet?.cssRules ?? []
  style.remove()
  return rule?.cssText.includes('top-left') === true
}
