// One file, so that the project is read and parsed once.
import './promises/arrows'
import './promises/browser'
import './promises/libraries'
import './promises/record'
import './promises/sizes'
import './promises/text'
