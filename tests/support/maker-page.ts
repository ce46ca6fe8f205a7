import { loadMakerPage } from '../../src/cli/load/load-form-page.ts'
import { type PageData, pageDataId } from '../../src/model/page-data.ts'
import type { TemplateSet } from '../../src/render/text/templates.ts'
import { folders } from './demo.ts'

/** The page that makes manuals alone, and what stands in it. */
export async function makerPage() {
  const { html, policy } = await loadMakerPage(folders)
  const json = new RegExp(`id="${pageDataId}">(.*?)</script>`, 's').exec(html)?.[1] ?? ''
  const script = /<script>(var pageTemplates=.*?)<\/script>/s.exec(html)?.[1] ?? ''
  return {
    html,
    policy,
    data: JSON.parse(json) as PageData,
    templates: new Function(`${script};return pageTemplates`)() as TemplateSet,
  }
}
