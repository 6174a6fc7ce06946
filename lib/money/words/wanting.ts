import { numberWord } from '../../format/words'

const papers = (count: number, of: string) => `${numberWord(count)} ${of}${count === 1 ? '' : 's'}`

/** "Four invoices were written and sent." */
export function billedInWords({ invoices, credits }: { readonly invoices: number; readonly credits: number }): string {
	if (invoices + credits === 0) return 'There was nothing to ask for. Nothing was written.'
	const sent =
		invoices === 0 ? '' : `${papers(invoices, 'invoice')} ${invoices === 1 ? 'was' : 'were'} written and sent.`
	const back = credits === 0 ? '' : `${papers(credits, 'credit note')} ${credits === 1 ? 'was' : 'were'} written.`
	return [sent, back].filter(Boolean).join(' ')
}

export const remindedLateInWords = (count: number): string =>
	count === 0 ? 'Nobody was reminded.' : `${papers(count, 'client')} ${count === 1 ? 'was' : 'were'} reminded.`
