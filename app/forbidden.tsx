'use client'
import { Told } from './ui/told'

export default function Forbidden() {
	return <Told title="Not yours to do" says="You may look at this, but not do it." />
}
