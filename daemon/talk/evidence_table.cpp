// Made by build/learn-sayings from tests/sayings; see DEVELOPERS.md. Not to be edited.
// clang-format off
#include "talk/evidence.hpp"

namespace nutward::talk {

std::string_view learnt_table() {
  static constexpr const char* pieces[] = {
R"~(fit place shift all-right slots cuts cut-list labels stock supply order-list due jobs job persons whose press level suits lots balance saved tin-care safety held spring-back machines bookings stages hours agenda promise orders suppliers history not-understood help use hold let-go add scrap measured came-short finished pressed rechecked new-job set-due cancel-job define-wire receive reorder-level open-hours close-day open-extra set add-receiver drop-receiver new-person map-uid unmap-uid change-person retire-person return-person give-job free-job count weigh calibrate correct cut-from cut-new pulled from-lot slot-size shifted board-width lost remade handful measured-handful scrap-several use-several set-aside let-all-go define-bar drop-bar press-support wire-size reading crown-gap cause stands-low last-fret neck reseated glued levelled define-machine change-machine drop-machine machine-down machine-up stage-machine stage-minutes book cancel-booking start stop own-hours day-off day-on reopen-day priority after look-again ordered arrived order-promised cancel-order define-supplier change-supplier drop-supplier forget-not-understood undo -
$words	a about abrasive account across add address afresh after afternoon again against agenda ago ahead ai all allowed alone along already also altogether always am amend among an and anew another any anybody anyone anything anyway anywhere apprentice apron are around arrive arrived as aside ask asked asking asks assigned at away back bad balance bar barbs bare bars batch be became because become been before began begin begins begun behind being believe bell belong belongs below belt bend bending beneath bent besides best better between beyond big bin binding binned bins bit bits block board body book booked booking bookings books both bother bottom bottoms bought bound box break bridging bring broke broken brought business but buy by cake caliper calipers call called calliper calls came can cancel cancelled care change changed check checked christmas chuck clamp clamped clean cleaning clear close closed closing cloudevents cm coffee coil coils colleague come comes coming command complete computer corners correct cost could count counted counts cracked cradle cradled create crown crowning crowns curved customer cut cuts cutting dangerous date daughters day days dead dear december decided deep define delete deliver delivered deliveries delivery dentist depth did do does doing done door down drawer drawers dressed dressing drill drop dropped dry due dust each earliest early edge else elsewhere empty end ended ends enough enter entry even evening ever every everybody everyone everything exactly example exist expected extra eye fair fall falls far feeler feet fell ferro few fewest file filed filing filled finally find fine finger fingerboard finished fit fixed flat floor follow foot for forget forgot fortnight forward found fours free fresh fret frets fretted fri friday fridays from ft full further g gap gauge gave get gets getting give given gives glasses glue glued go goes going gone good got grab gram grams grip groove grooves group guess had hair half hammer hand handful hands hang happened happens hard has have having he head hear height held help her here hers hey high him his history hold holding holds holiday hollow home hook hour hours house how http https humidity hump humped hurry i i'd i've id idea idle if in inch inches included including instead instrument into inventory is it its january jig job jobs just keep keeping keeps kept kg kilo kind kindly kinked kitchen kn know known knows label labels laid lamp landed last late later latest lay lb lead least leave leaves leaving left leftover leftovers length lengths less let level levelled levelling lie lies lift lifted light like limit lindwurm line list little load log login long longer look looked looking looks loose loss lost lot lots love lovely low lower lunch lying m machine machines made make makes making man many mark marks match mate material may maybe me mean means meant measure measured measures measuring metals metre metres micrometer middle might mil millimetre millimetres min mind mine minimum minute minutes missing mistake mm moment mon monday mondays money month more morning most move moved much must my myself n name named nearly neck need needed needs neighbours never new news next nice nicely nickel night nip nipped nippers nipping no nobody none noon normal not note nothing november now number numbers nut nutward o'clock october of off offcut office often ok okay old on once ones only open opening or order ordered ordering orders other others ought our ours out outstanding over overview own owner pack packs paid pair paper partial particular pass passes past people per percent perhaps person phone piece pieces place placed places plan planned plate please point polish polishing poor popped positions possible post postman pounds pressed pressing price print priority promise promised proud provide pull pulled pulling push put quarter question queue quick quit rack radio radius ram ran rang rated rather raw re reach read reading readings reads ready really reason received receiver recheck rechecked rechecks reckon record refret refrets register regular release relief remade remake remember remind reminders remove rename reopen reorder report reported reports reseat reseated reservation reservations reserve reserved rest retire retired retirement rid right ring rock rocking rocks rod role roll round rounded rubbish rule ruler run running runs rush s safe safety said same sanded sanding sat saturday saturdays save saved savings saw sawed sawn say says scale schedule school scrap scrapped scratch screen seat seated seating see seen sell sells send sent september serve service set setting setup shall shallow shape she sheet shelf shift shifted shimmed shop short should show shows shuffle shut side sign sill silver since single sit sits sitting slid slot slots so soft sold sole some somebody someone something soon sorry sort source span spoilt spoken spool spot sprang spring sprung staff stage stages stainless stand standing stands start started starting starts state status stay stayed stays steady steel step steps stick sticks still stock stocktaking stone stood stop stopped stove straight straightedge straightened strike stuck stuff suit sunday sunk supplier suppliers supply suppose sure swears swept table tablet take taken takes taking tang tangs tell text than thanks that the their them then there these they they're they've thick thickness thing things think this those thought threw through throw thrown thu thursday thursdays tight till time times tin to today together told tomorrow tonight too took top total touch touched toward treat treble trim true truing trust tue tuesday tuesdays turn turned twice uid un under undo unfinished unmeasured until up urgent us use used useless user using usual usually van wait waiting waits wall want wanted wants was waste way we we'd we've wear webhook wed wednesday wednesdays wee week weekly weeks weigh weighed weighing weighs weight well went were what what've whatever wheel when where whether which while who whoever whole whom whose why wide width will window wire wires wish with withdraw within without wood work worked working works workshop worn worth would write written wrong wrote x y'all ye year yes yesterday yet you you'd 
$common	a about account across add after afternoon again against ago agre ahead ai all allow alon along already also altogether alway am amend among amount an and anew another answer any anybody anymor anyon anyth anyway apprentic are around arriv as asid ask assign at away back bad bar barb bare be becaus becom been befor begin behind being believ belong below belt bend bent beside best bet better between beyond big bin bind bit bless block board book both bother bought box break bring brok broken brother brought business but buy by cake caliper call calliper came can cancel care carri carry case chang check chip christma chuck clamp clean clear clock clos cm coffe coil cold com come corner correct cost could count crack cross crown current curv customer cut date daughter day dead dear dec december decid deep defin deliver delivery dentist did do doe doing done door down draw drawer dress drop dry due dust each early eat edge else elsewher empty end enough enter entry even ever every everybody everyon everyth exactly exist expect eye fair fall fan far feel feet fell ferro fetch few figur fil file fill finally find fine finger finish fit fix flat floor follow foot for forget forgot forgotten fortnight found free fresh fret friday from ft full further g gap gaug gave get give given glass glu glue go goe going gone gonna good got grab gram groov groove guess had hair half hammer hand hang happen hard has hav have he hear heat height held help her here hereby hey high him himself his hold holiday hollow home hour hous how hurt i i'd i've idea if in inch includ instead instrument into is it item its january job just keep kept kettl kill kilo kind kindly knock know known lad laid lamp last late later lay lead least leav leave left leftover length less let letter level levell lie lift light like limit lindwurm line list littl live load log long longer look loos lose lost lot love lovely low lower lucky lunch lying m machin machine made mak make man many mark match mate material matter may me mean meant measur measure mess metal metr metre middl mil millimetr millimetre mind mine minimum minut minute miss mistak mm moment monday money month more morn most mov move much must my myself nam name nearly neck need neighbour never new next nice nicely night nip nipper no nobody none noon not note noth notic november now number nut nutward o'clock of off offcut oh ok old on once one only open or order other our out over overview owe own owner pack paid paper part pass past pay peopl per person phon pick piec piece pin plac place plan plat play pleas plus point polish poor pop position post postman present press pric promis proud provid pull push put quantity quarter queu quick quicker quiet rack radio radius rain ram ran rang rather raw reach read ready really reason receiv recheck reckon record refret register remain remember remind remov replac report reserv rest retir return rid right ring rock rod roll room round rubbish rule ruler run said same sand sat saturday sav save saw sawn say scal schedul school scrap scratch seat see seen send sent serv set shall shar she sheet shelf shift shop short should show shut side sign sill sinc singl sit slip slot slow small smell snow so sold some somebody someon someth somewher sorry sort soul sourc spac spoken spot spring squeez staff stag stainless stand start stat stay steel step stick still stock stocktak stood stop stov straight straightedg strik stuck stuff suit sunday supplier supply suppos sure swear sweep tabl tablet tak take taken talk tang tea tell than thank that the their them then ther therefor thes they they'r they'v thin thing think this thos thought threw through throw thrown thursday tight till time tin tip to today together told tomorrow too took top toss total touch trim troubl tru true trust tuesday turn twic under until up us use used using usual usually van vice wait walk wall want was wast watch way we we'd we'v wed wednesday wee week well went were what what'v whatever when wher whether which whil who whoever whol whom whos why wide width will window wire wise with without wonder wood word work workshop worn worth would writ written wrong wrot x y'all ye year yes yesterday yet you you'd your 
)~",
R"~(fit==	1:28 4:-27 5:33 18:54 37:37 38:-8 82:9 92:-18 126:-10
slot==	0:165 1:109 2:-9 3:107 4:86 5:-34 6:-13 8:-8 10:-12 11:-12 12:-8 13:-65 14:-10 15:-22 16:-51 17:-20 18:37 22:-11 23:-9 24:-27 25:-12 26:-11 27:-13 28:-16 30:-18 31:-17 33:18 34:69 37:164 38:99 39:-23 40:-18 41:-24 42:82 43:126 44:-46 45:-25 46:-55 47:23 48:-17 49:-18 51:-9 56:-11 59:-9 65:-14 66:-14 70:-13 71:-72 72:-8 73:-19 74:-18 75:25 76:48 77:95 78:95 79:79 81:-14 82:10 83:-80 84:-19 85:-18 86:-8 88:-24 90:-42 91:-18 92:119 93:15 95:-9 96:22 97:-27 98:-38 100:-11 102:-13 103:-13 104:35 105:-13 106:-16 107:49 108:-32 109:-26 110:-10 111:-13 114:-24 115:-14 116:-17 118:-11 119:-8 122:-10 125:-8 126:-25
length==	0:14 1:18 2:-8 4:113 5:-8 7:11 13:-9 16:-14 22:43 26:-8 37:-11 38:-13 39:-11 40:22 41:-21 42:66 44:34 45:-9 50:-58 51:-22 56:10 67:13 69:35 71:-12 72:20 75:-13 76:-68 77:-12 78:-12 79:47 80:-11 81:-58 82:56 83:107 86:59 92:-19 93:-27 97:-11 104:14 115:-27 117:-19 121:29 122:-13 126:-32
job==	0:57 1:41 2:56 3:46 4:23 5:96 6:-38 7:-22 9:-25 10:-29 11:13 12:-9 13:156 14:-44 15:99 16:47 17:57 18:34 19:-24 20:-25 21:-20 22:-29 23:-20 24:65 25:42 26:-24 27:56 28:-15 29:-45 31:74 32:-27 33:-22 34:44 35:-8 36:22 37:-15 38:27 39:-61 40:-55 41:-56 44:51 45:41 46:59 47:81 48:9 49:101 50:-26 51:-35 52:-24 53:-38 54:-32 55:-42 56:-49 57:-11 58:-20 59:-34 60:-22 61:-22 62:-26 63:-33 64:-25 65:58 66:105 67:-25 68:-14 69:-32 70:-46 71:-29 72:30 73:33 74:30 75:69 76:-9 78:39 79:16 80:-42 81:-53 82:-90 83:-45 84:66 85:27 86:-39 87:-20 88:14 89:-20 90:78 91:8 92:28 93:32 94:42 95:59 96:55 97:21 98:-22 99:-57 100:-29 101:-16 102:-47 103:-35 104:10 105:-37 106:-22 107:-11 108:55 109:86 110:-25 111:-33 112:-47 113:-27 114:21 115:77 116:30 117:-28 118:-46 119:-38 120:-24 121:-32 122:-33 123:-13 124:-8 125:-19 126:239
pull==ed	0:97 2:-31 3:21 4:-19 13:9 15:-17 16:-10 17:-10 18:-10 34:26 37:-18 40:24 41:8 42:-8 44:48 45:-8 46:-9 49:14 66:-9 68:12 70:-11 71:-11 73:188 75:-8 76:-22 78:-15 79:-21 80:26 82:17 83:-10 90:-9 94:-9 96:40 98:-14 102:16 109:-15 114:-14 115:-9 126:35
long==	0:45 1:25 2:-18 3:27 4:92 5:-34 6:-19 9:49 11:54 13:-41 14:-10 16:-20 17:-22 18:-12 19:-8 20:-9 21:-9 22:12 23:-12 24:-10 25:-14 26:13 28:92 29:41 30:-26 31:-12 32:-25 33:64 34:15 36:-37 37:-22 38:-10 40:37 41:-23 42:29 43:25 44:-12 45:15 46:-15 47:-13 49:-8 50:17 51:44 53:-9 63:-10 68:-16 69:31 73:20 74:-11 76:-22 77:-8 78:-16 81:-13 83:-16 85:-10 86:68 87:81 88:-9 89:-8 90:-17 92:-16 93:-26 94:-20 96:-11 98:-15 99:-8 100:15 101:-11 102:12 104:-12 105:29 106:-16 108:-8 109:-13 111:-14 113:-8 114:-11 118:-9 122:-8 123:-8 125:-14 126:63
fit	0:115 1:19 2:-9 4:-37 5:33 13:-8 16:-11 18:59 34:-29 37:33 38:-10 76:-9 82:8 83:10 92:-21 103:11 126:-14
^ fit	0:28 4:-22 18:36 76:-8 83:10
slot	0:61 1:79 2:87 3:61 4:224 5:-58 6:-47 7:-11 8:-22 9:-17 10:-17 11:-30 12:-28 13:16 14:-21 15:-40 16:18 17:-25 18:152 19:-10 20:-12 21:-9 22:-18 23:-16 24:-44 25:-24 26:-21 27:18 28:34 29:-17 30:-42 31:36 32:-12 34:27 36:-23 37:63 38:49 39:-36 40:-40 41:-34 42:26 43:57 44:41 46:-53 47:25 48:-54 49:-48 50:-11 51:-18 53:-9 54:-12 55:-13 56:-22 58:-12 59:-18 63:-13 64:-11 65:-37 66:-32 67:-11 68:-8 69:-15 70:-22 71:82 72:96 73:-34 74:-41 75:164 76:64 77:40 78:75 79:66 80:-11 81:-44 82:-28 83:60 84:-28 85:-30 86:-13 88:-39 89:-12 90:-24 91:19 92:123 94:11 95:-18 96:25 97:20 98:21 99:-12 100:-21 101:-10 102:-24 103:-20 104:63 105:22 106:-27 107:39 108:61 109:20 110:-12 111:-19 112:-13 113:-16 114:-43 115:-69 116:-24 117:-13 118:-21 119:-12 121:-10 122:11 123:-11 125:-14 126:-50
fit slot	0:47 34:-14
the	0:-28 1:23 2:39 3:-28 4:17 6:59 7:56 10:15 11:10 12:10 13:-80 14:27 15:-25 16:36 17:39 18:27 19:25 20:14 21:34 22:-25 23:45 25:13 28:46 29:-8 30:21 32:18 34:42 35:-9 38:8 39:48 40:28 41:34 42:-15 43:28 44:19 45:43 46:43 48:22 49:26 50:-22 51:17 52:11 54:11 55:21 56:18 58:56 60:19 61:27 62:8 63:10 66:13 68:40 70:32 71:26 72:37 73:49 74:14 75:19 76:8 77:36 78:19 79:14 80:37 81:44 82:42 84:43 85:17 87:42 88:43 89:21 90:28 91:40 92:18 93:38 94:56 95:10 96:9 97:-9 98:37 99:22 100:30 101:63 102:10 103:19 104:60 105:13 106:47 107:23 109:16 110:-31 112:-16 113:41 116:12 117:-22 118:13 119:56 120:31 121:-8 122:22 123:14 124:-8 126:-38
slot the	0:-9 3:-11 16:17 34:17 37:-13 38:16 43:24 44:-9 45:13 71:17 72:36 75:-25 78:-13 92:-15 93:13 98:8
#o	0:72 1:-30 2:-65 3:44 5:-38 6:-33 7:-13 8:-22 10:-13 12:55 13:-48 14:-13 15:-25 17:12 18:-42 19:-19 20:13 21:24 22:-13 24:-21 25:-38 26:10 27:9 28:-53 29:31 30:34 31:32 32:-20 33:-11 35:13 36:-20 37:93 39:-14 40:-19 41:-18 42:47 43:58 44:-54 46:53 47:9 48:12 49:-43 50:-12 51:-14 53:-18 54:56 55:43 56:-23 58:-14 61:-12 62:-25 63:-22 64:-16 65:-31 66:20 67:-10 68:-16 70:-12 71:31 72:11 74:26 75:-42 76:22 77:25 78:48 79:78 80:-8 82:-15 83:-20 84:-14 85:-26 86:-13 87:-10 88:-59 89:-11 90:32 91:54 92:20 93:53 94:26 95:-23 96:76 97:74 98:41 99:-23 101:-22 102:37 103:35 104:-17 105:-15 106:10 107:17 108:-48 109:-46 110:-12 111:46 112:47 113:33 114:-27 115:47 116:33 118:-17 119:36 120:-27 121:-10 122:-18 125:13 126:-41
the #o	0:28 1:-28 2:-27 3:34 4:-12 5:-24 6:-18 7:-13 8:-17 9:-12 10:-8 11:29 12:-37 14:-10 15:-22 17:43 18:-24 19:-15 20:14 21:27 23:-8 24:-11 25:-24 26:-15 28:-39 29:34 30:-16 31:55 32:-13 34:9 35:11 37:27 38:22 39:-20 42:26 44:-35 45:8 46:18 47:12 48:74 49:-23 53:-11 54:18 55:48 56:-13 58:-10 61:-8 62:-10 63:-13 64:-12 65:-16 66:-15 68:-14 71:22 72:8 73:8 74:41 75:-34 76:21 77:17 78:32 79:20 82:-10 84:-16 85:-18 86:-8 88:-25 90:67 91:-12 93:37 94:25 95:-11 96:54 97:9 98:20 99:-10 100:-13 101:-15 102:47 103:16 104:-13 105:-8 106:-8 107:20 108:-33 109:-27 110:-9 111:70 112:52 113:36 115:-42 116:17 118:-21 119:38 120:-23 122:-12 126:-15
length	1:13 2:48 4:283 7:9 8:28 13:-11 16:-20 17:-14 18:-11 22:16 24:-9 26:-9 34:-10 37:-12 38:-15 39:-12 40:-9 41:-22 42:60 44:30 45:-27 46:-9 50:-59 51:-27 56:37 67:10 69:32 71:-14 73:11 75:-15 76:-76 77:-12 78:-18 79:46 80:48 81:34 82:45 83:40 86:55 88:-9 90:-16 92:-22 93:-28 94:-18 96:-8 97:-12 104:13 115:-28 117:-20 121:30 122:-8 126:-42
#o length	0:10
#d	0:38 1:76 2:109 3:96 4:-83 5:-34 6:-34 7:8 8:-78 9:-51 10:-15 11:-31 12:-19 13:-39 14:-17 15:-32 16:9 17:-57 18:17 19:-63 20:-48 21:-28 22:-64 23:-15 24:8 25:-31 26:-18 27:-32 28:-19 29:-18 30:-26 31:-26 32:-41 33:-36 34:-8 36:-15 37:84 38:59 39:88 40:130 41:57 42:118 43:114 44:-42 45:-41 46:-44 47:24 48:-15 49:-31 50:105 51:55 52:39 53:-11 54:8 55:-12 56:76 57:8 58:-24 59:-29 60:-10 61:-21 62:-13 63:-18 64:-14 65:-34 66:-29 67:76 68:13 69:125 70:147 71:73 72:-71 73:61 74:-19 75:168 76:-30 77:103 78:-67 79:94 80:-63 81:200 82:89 83:96 84:-27 85:-29 86:32 87:-13 89:93 90:-43 91:-32 92:-66 93:151 94:-35 95:-18 96:-36 97:-37 98:-48 99:-42 100:-18 101:-16 102:-17 103:-17 104:-13 105:-19 106:-22 107:-21 108:-34 109:-34 110:-8 111:-19 112:-12 113:-18 114:-26 115:-37 116:-23 118:17 119:-27 120:-33 121:36 122:-37 123:-13 125:-17 126:-21
length #d	0:46 1:19 2:25 4:-24 38:-8 42:13 43:17 45:-14 50:-45 51:-19 67:23 69:14 70:-19 72:-12 75:-8 76:-55 79:53 81:22 83:26 86:32 92:-11 93:-8 97:-8 115:-16 117:-14 121:24 122:-12
#d slot	0:12 42:-12 43:10 71:9 75:8
#o slot	0:29 1:-10 3:42 4:-17 18:-14 38:13 42:-16 77:32 78:-10 96:-11 126:21
#n	0:13 1:24 3:127 4:24 5:-43 6:-25 7:-13 8:-116 9:-97 10:-15 11:-35 12:-108 13:-93 14:-52 15:-13 16:44 18:-48 19:-86 20:-31 21:-19 22:-57 23:-33 24:-69 25:-72 26:-37 27:-61 28:-55 29:-46 30:-51 31:35 32:-92 33:-25 35:-32 36:-30 37:138 38:109 39:30 40:68 42:121 43:103 44:-43 45:113 46:102 47:44 48:52 49:-60 50:-31 51:77 52:16 53:99 54:-10 55:98 57:-61 58:-21 59:14 60:22 61:-16 62:-61 63:-18 64:-58 65:-29 66:-49 67:41 68:-17 69:64 70:20 71:177 72:116 73:67 74:75 76:194 77:83 78:55 79:84 80:22 81:93 82:158 83:216 85:-24 86:61 87:-27 88:-32 89:34 90:150 91:83 92:48 93:149 94:119 95:-40 96:97 97:109 98:150 99:39 100:75 101:-70 102:29 104:-44 105:86 106:106 107:10 108:-77 109:-41 110:27 111:-31 112:46 113:-35 114:105 115:80 116:74 117:88 118:68 119:15 120:-32 121:59 122:32 123:-50 124:-29 125:-20 126:69
slot #n	0:166 1:-118 2:69 3:60 4:-54 5:-30 6:-15 13:-44 15:-17 16:39 17:12 18:-46 24:-19 25:-8 28:-10 31:-8 34:66 37:90 38:59 39:-20 40:-15 41:-17 42:87 43:39 44:-39 47:30 48:-26 49:-16 51:-9 65:-10 66:-27 69:-8 70:-9 71:9 72:32 74:-15 75:-118 76:77 77:140 78:81 79:46 81:-26 82:-39 83:30 88:-10 90:11 91:31 92:-35 93:-8 94:30 97:25 100:-8 103:-9 105:-10 106:-13 108:-21 109:-14 114:-21 115:-32 118:-8 126:17
)~",
R"~(job	2:59 3:17 4:23 5:81 6:104 7:-29 8:-41 9:46 10:-41 11:98 12:248 13:53 14:45 15:83 16:52 17:54 18:75 19:-37 20:-34 21:-35 22:-48 23:-32 24:78 25:78 26:-57 27:-8 28:90 29:-62 30:69 31:43 32:-41 33:-37 34:54 35:-11 37:-44 38:9 39:-81 40:-62 41:-63 42:22 43:19 44:74 45:47 46:40 47:79 48:59 49:121 50:-28 51:-40 52:-30 53:-46 54:-38 55:-49 56:-60 57:-13 58:-26 59:-47 60:-30 61:-30 62:-46 63:-52 64:-38 65:97 66:110 67:-30 68:-18 69:-38 70:-52 71:-24 72:12 73:66 74:40 75:63 76:-21 77:35 78:56 79:34 80:-48 81:-54 82:-101 83:-65 84:93 85:98 86:-42 87:-24 88:81 89:-24 90:-8 91:87 92:104 93:52 94:40 95:87 96:75 97:59 98:70 99:-63 100:-45 101:-21 102:-58 103:-43 105:-50 106:17 107:-28 108:94 109:88 110:-33 111:-43 112:-67 113:-33 114:68 115:80 116:49 117:-33 118:-54 119:-46 120:-34 121:-35 122:-39 123:-17 124:-9 125:-25 126:-92
#n job	0:38 3:12 4:-68 11:22 13:-8 15:-10 16:25 18:-10 24:20 25:16 28:14 34:45 38:-12 45:-8 48:-35 49:-29 65:-8 66:-41 74:10 75:-8 76:67 77:24 79:8 83:-20 84:15 90:22 92:-40 97:30 98:17 108:-14 109:8 115:-71 116:-10
job job	0:28 4:-28 11:46 13:-27 15:-22 16:29 17:9 18:-12 24:26 25:36 28:23 34:37 37:-24 38:-9 43:16 44:-8 45:-8 46:-10 48:-29 49:-39 65:-15 66:-26 71:-13 72:-16 77:8 78:8 79:9 83:-20 84:9 88:-8 90:-21 91:39 92:62 93:28 95:21 97:29 98:46 108:-19 109:13 114:-19 115:-117 126:-13
job #n	0:-8 1:-47 2:91 3:-33 4:83 5:64 6:95 7:-21 8:-16 9:-26 10:-30 11:20 12:-76 13:70 14:-31 15:111 16:71 17:73 18:125 19:-23 20:-26 21:-21 22:-31 23:-17 24:-35 25:52 26:-22 27:26 28:63 29:-38 30:40 31:-51 32:-21 33:-22 35:-9 36:-41 37:14 38:28 39:-90 40:-56 41:-53 42:48 43:10 44:118 45:34 46:71 47:-40 48:165 49:89 50:-21 51:-37 52:-27 53:-44 54:-34 55:-47 56:-54 57:-11 58:-18 59:-23 60:-24 61:-26 62:-26 63:-33 64:-25 65:134 66:117 67:-27 68:-14 69:-25 70:-48 72:13 73:44 74:37 75:81 76:-16 77:29 78:55 80:-44 81:-51 82:-93 83:-24 84:92 85:98 86:-30 87:-20 88:120 89:-20 91:38 93:-8 94:23 95:70 97:25 98:-10 99:-46 100:-73 101:-14 102:-54 103:-39 104:-19 105:-77 106:27 107:-19 108:164 109:102 110:-28 111:-35 112:-63 113:-26 114:113 115:245 116:70 117:-27 118:-48 119:-42 120:-29 121:-30 122:-36 123:-11 125:-35 126:43
#n slot	0:44 1:-22 3:10 4:-10 13:-39 16:30 18:-12 28:11 31:43 34:16 37:-16 38:21 42:47 43:34 46:-28 66:-8 71:13 73:-32 75:13 77:-25 81:-10 90:-9 91:25 92:-57 93:11 94:13 96:-13 98:17 108:54 114:-9 115:-19 126:18
slot slot	1:-8 2:15 3:17 4:-21 16:12 17:12 37:13 43:-15 71:19 72:25 73:-14 75:-21 76:-17 77:-11 78:30 79:18 92:-21 94:10 98:8 115:-11
#n length	0:19 1:8 2:17 3:-15 4:-15 5:12 22:37 40:9 45:-9 70:-17 73:22 76:-16 79:18 82:16 115:-16
length #n	0:19 1:9 2:31 4:-17 40:11 43:-8 50:-12 70:-21 76:-18 82:27 86:27 115:-9 121:9
mm	0:67 1:27 2:16 3:57 4:-50 6:-15 7:78 8:-8 9:-25 13:-14 15:-11 16:56 17:-23 18:24 19:-21 20:-22 21:-15 22:-43 24:-24 28:-9 30:-8 31:-11 32:-15 33:-14 34:-19 36:-8 37:-48 39:13 40:80 42:73 43:76 44:-19 45:-35 46:-20 47:88 48:-10 49:-10 50:45 51:8 52:38 54:-8 56:91 57:-10 59:-20 61:-18 65:-9 66:-14 67:40 68:-42 69:53 70:62 72:-33 73:23 74:-11 75:87 76:-121 77:56 78:-36 79:13 80:-68 81:49 82:53 83:69 85:-8 86:106 87:-16 88:55 89:58 90:-30 91:-18 92:-34 93:57 94:-19 95:-8 96:-17 97:-18 98:-21 99:-14 100:-13 105:-14 106:-8 108:-13 109:-11 114:-16 115:-34 116:-11 117:-21 118:23 119:-15 120:-17 121:-23 126:-48
#n mm	0:38 1:39 2:42 3:49 4:-30 7:69 8:-11 16:53 17:-12 18:8 22:-29 34:-11 37:-30 38:-16 39:40 40:87 41:-33 42:49 44:-8 45:-15 46:-10 47:38 50:-8 51:-21 52:-15 56:69 59:-8 66:-8 67:-13 69:13 70:-8 71:-9 72:-19 73:-24 75:56 76:-69 77:32 78:-20 80:-51 81:29 82:33 83:54 86:77 88:13 89:45 90:-20 91:-10 92:-19 94:-11 96:-8 97:-8 98:-13 99:-8 100:-8 105:-8 114:-11 115:-14 117:-15 118:-14 121:-22 122:18 126:-13
mm length	0:14 1:30 4:-10 42:-12 50:-18 76:-13 79:9 81:10 83:24 86:9
mm job	0:10 2:15 3:16 4:-9 42:16 43:13 73:25 75:14 76:-27 77:-18 79:-21 93:9 115:-16
in	0:45 2:-40 3:17 4:-33 5:-19 6:-21 8:8 9:-10 11:-19 12:24 13:-13 14:20 15:-21 16:-35 17:-60 18:47 19:-19 20:50 21:54 22:41 23:39 24:13 26:10 28:-11 29:69 30:-17 31:-8 32:10 33:-32 35:-8 36:-12 37:37 38:-38 39:-34 40:45 41:-20 42:14 43:20 44:-29 46:-32 47:59 48:30 49:-14 50:42 51:49 52:-21 53:-14 54:-13 55:46 56:32 58:-20 60:25 61:-10 62:19 63:8 65:-46 67:11 69:-13 70:-20 71:-63 72:-35 73:12 74:-17 75:34 76:83 77:-20 78:-19 79:28 80:42 81:9 83:77 84:8 85:-16 86:12 87:-10 88:40 89:-10 90:-28 91:-29 92:43 93:-10 94:-39 95:24 96:55 97:19 98:-31 99:28 100:-20 102:-25 103:19 104:-18 106:-20 107:-32 108:-9 109:-43 110:24 111:28 112:68 113:-42 114:-8 115:-28 116:35 118:45 119:23 120:-34 121:42 123:-21 125:10 126:-20
#d in	0:12 2:84 4:-11 8:-10 40:19 41:-30 42:-10 47:38 50:-17 51:-11 52:11 56:-13 67:34 68:-18 72:-8 73:-36 76:-50 79:14 80:-12 81:33 82:34 83:53 86:22 88:25 92:-9 93:22 117:10 118:19 121:14
in slot	0:-34 1:-18 2:57 3:77 4:-8 34:-13 38:-11 42:21 43:-57 71:-33 72:-10 73:11 75:-16 76:45 78:-23 79:-17 82:-11 83:28 92:60 96:-9 126:43
#r	0:14 1:-33 2:-21 5:-52 6:-26 8:-17 9:-17 10:-10 11:-9 12:-15 13:-65 15:-24 16:40 17:-15 18:-32 19:-16 20:75 21:-8 22:-19 24:-34 25:-32 28:-29 29:-8 31:52 32:-16 33:-9 34:-8 35:12 36:-8 37:13 38:-21 39:-12 40:-11 41:-22 42:11 44:-56 45:29 46:33 48:37 49:-32 50:-10 51:-40 52:-9 53:31 54:68 55:90 56:-18 59:-8 61:-8 62:-27 63:-29 64:-18 65:-21 66:-38 67:-9 71:47 72:44 73:-24 74:-25 75:-40 76:175 78:16 81:-22 82:61 83:89 84:-19 85:-18 86:-11 87:-10 88:-30 90:83 91:10 92:24 93:18 94:9 95:-9 96:48 97:38 98:50 99:-14 100:-12 101:-9 102:25 103:-10 105:-8 106:86 107:-18 108:-46 109:-30 110:19 111:65 112:72 113:16 114:-25 115:-26 116:43 117:55 118:-22 119:61 120:-15 121:-9 122:-10 123:-8 126:-66
slot #r	0:34 1:-17 2:8 3:20 13:-14 18:-12 28:-8 37:24 42:13 43:10 44:-16 46:-18 48:-10 71:55 72:18 74:-10 75:-31 76:-27 77:-8 79:32 81:-10 83:52 90:-9 92:-28 93:13 98:28
#r slot	0:19 4:-15 42:-8 98:9
#r job	0:9 3:11 4:27 11:12 42:15 45:-10 48:-14 66:-8 72:-14 73:-9 75:-9 76:10 79:-11 83:31 90:-13 92:-9 106:35
@job	1:11 2:63 3:57 4:83 5:73 6:65 7:-49 8:-45 9:-73 10:-49 11:54 12:-62 13:105 14:-50 15:124 16:31 17:62 18:103 19:-52 20:-54 21:-56 22:-58 23:-47 25:25 26:-53 28:36 29:-62 32:-52 33:-46 34:34 35:-14 36:-57 37:25 38:40 39:-35 40:-59 41:-65 42:72 43:36 44:74 45:68 46:62 47:45 48:150 49:177 50:-20 51:-34 52:-22 53:-50 54:-45 55:-14 56:-69 57:-18 58:-40 59:-42 60:-28 61:-39 62:-65 63:-61 64:-59 65:127 66:56 67:-28 68:-32 69:-30 70:-50 71:27 72:68 73:86 74:100 75:69 76:36 77:60 78:46 79:69 80:-30 81:-55 82:-94 83:16 84:79 85:82 86:-27 87:-39 88:62 89:-40 90:77 91:51 92:44 93:44 94:71 95:65 96:51 97:46 98:55 99:-54 100:-51 101:-45 102:-68 103:-52 104:-53 105:-53 106:43 108:74 109:72 110:-32 111:-60 112:-64 113:-68 114:139 115:287 116:65 117:-24 118:-58 119:-48 120:-39 121:-28 122:-37 123:-30 124:-12 125:-14 126:29
job @job	0:9 2:-24 3:28 4:14 11:45 13:-34 15:-19 16:-22 17:13 18:-8 24:11 28:13 34:20 38:-13 42:-18 43:-30 45:17 48:-30 49:-56 65:-11 72:16 73:10 75:-11 76:10 78:18 79:44 83:-9 84:20 90:-8 91:11 92:22 93:11 94:14 97:20 98:26 108:-13 109:18 114:-8 115:-58 126:-13
@job length	3:39 42:-12 43:27 76:-19
#d mm	0:34 2:-24 3:12 4:-17 5:-15 7:21 8:27 9:-9 16:25 17:-9 18:25 19:-8 22:-11 24:-13 37:-16 38:10 39:-25 40:-38 41:41 43:69 44:-8 46:-9 47:22 50:53 51:29 56:47 59:-9 67:9 69:-14 70:-36 72:-11 73:56 75:32 76:-46 77:31 78:-14 79:21 81:22 82:24 83:19 86:9 89:24 90:-8 92:-14 93:70 96:-9 97:-8 98:-8 115:-20 118:33 122:-13 126:-64
fret	0:90 1:-35 2:104 3:44 4:71 5:20 6:-32 9:-55 10:-17 11:-37 13:31 14:-10 15:-49 16:37 17:79 18:-30 19:-31 21:15 23:15 24:-8 25:85 26:-52 27:-25 29:-26 30:-60 31:58 32:-23 33:-36 34:59 36:-23 37:31 38:-14 39:-12 41:-15 42:93 43:59 44:55 45:54 46:74 47:56 48:-56 49:-52 51:-34 52:-12 53:-18 54:-18 55:-18 56:-12 58:-16 59:-19 61:-12 62:-10 63:-12 64:-12 65:-31 66:-49 67:-17 68:-10 69:-23 70:-22 71:29 72:-17 73:100 74:47 75:-46 76:99 77:-35 78:120 79:61 80:15 81:-30 82:-16 83:27 84:-19 85:-45 86:-12 87:-12 88:-58 89:-21 91:69 92:22 93:67 94:133 95:-37 96:48 97:57 98:66 99:-19 100:-32 102:-20 103:-23 104:41 105:31 106:-27 107:-22 108:30 109:-23 111:-17 112:-17 113:-19 114:-42 115:-55 117:-18 118:-28 119:-13 120:-15 122:-18 123:-12 125:-14 126:15
)~",
R"~(slot fret	0:22 3:-12 4:-32 34:15 37:-11 38:14 43:22 71:10 72:16 73:-8 75:-9 79:8 83:19 92:-22
fret #n	0:12 1:-22 2:-10 3:47 5:-20 13:-46 15:-18 16:74 17:55 18:-13 24:-12 25:-36 28:-24 34:30 37:112 38:8 39:-13 40:-16 41:-9 42:33 43:28 44:-52 45:13 46:10 48:-15 49:-18 56:-10 65:-15 66:-15 71:45 72:95 73:-19 74:-29 75:-26 76:21 77:13 78:22 79:18 82:-25 83:31 88:-25 90:29 91:61 92:76 93:51 94:-31 95:-11 96:66 97:47 98:43 100:-8 105:-10 106:-17 108:-30 109:-21 114:-18 115:-16 118:-12 126:-60
@job slot	0:30 1:10 3:-8 4:29 13:-30 16:12 34:13 38:33 42:16 43:-19 45:9 46:-13 49:-8 71:-22 73:-24 75:62 76:-17 78:25 92:-20 93:14 96:10 98:9 109:11 115:-9 126:-29
pull	0:96 2:-50 3:22 5:-12 6:14 10:-17 11:-9 12:26 13:44 14:-9 15:-29 16:-18 17:-27 18:-15 23:-9 24:-13 25:-15 26:-16 28:37 30:-14 31:-13 32:-10 33:-8 36:-9 37:-21 38:-9 40:24 42:-14 44:92 45:-19 46:-20 48:-14 65:-36 66:-20 68:11 70:-12 71:-13 72:-8 73:193 74:-10 75:-11 76:-28 77:-8 78:18 79:-27 80:25 82:15 83:-11 84:-8 88:-13 90:-16 91:-10 92:-18 94:-20 96:57 97:-11 98:-20 100:-17 102:13 103:-8 104:54 105:71 108:123 109:61 114:-25 115:-21 116:-12 126:28
~	0:13 2:31 4:-39 8:-16 9:-27 10:-21 11:-66 13:-9 14:-34 15:-13 16:42 19:-17 20:-13 21:-11 22:-13 23:-30 24:-12 26:-37 27:-15 28:-59 30:-15 31:-8 32:-38 33:70 36:-8 37:-8 38:-8 39:-11 41:34 42:-20 48:-11 50:129 51:46 52:-13 53:-10 54:24 56:135 57:178 58:18 59:50 61:-26 62:42 63:-30 64:-11 65:34 66:-12 67:-26 70:24 71:-23 72:-16 73:-13 75:-19 76:-33 78:28 79:-9 80:16 81:-46 82:9 83:-9 86:23 87:32 92:-14 93:-11 97:-8 99:68 100:25 101:-34 102:21 103:-21 104:-26 105:-11 106:-9 107:-11 109:-34 110:-10 111:19 112:-25 113:-18 114:-8 117:43 118:79 119:52 120:14 121:17 122:187 123:41 125:-14 126:-97
pull ~	0:9
~ slot	0:14 2:9 4:-12 16:9 78:8
and	0:9 1:-55 2:44 3:-24 4:44 6:27 7:-35 9:17 10:70 11:17 12:-18 13:18 14:45 15:-21 16:37 17:32 18:8 20:62 21:27 22:-50 23:-38 24:39 25:-40 26:26 27:-33 28:29 29:-39 33:27 34:14 37:17 38:-51 39:-34 40:13 42:-23 44:12 45:29 46:39 47:-10 48:-25 49:-41 50:8 51:-28 54:12 55:-61 56:-29 57:13 58:-18 63:45 65:-29 66:-22 67:33 68:-18 70:-10 71:27 73:20 74:-11 76:21 77:-9 78:13 79:17 80:-18 81:11 82:23 84:44 86:21 87:-37 88:21 89:42 90:13 91:61 92:28 93:11 94:36 95:23 96:66 97:54 98:9 99:-29 100:-21 101:-19 103:10 105:-35 106:20 107:-25 108:-37 109:-25 111:14 112:-45 113:-37 114:-44 116:35 117:40 118:37 119:-23 120:28 121:8 125:-12 126:-74
#n and	0:-32 1:-20 2:-13 3:-42 4:44 5:-13 6:-11 10:-15 11:-8 13:29 15:-18 16:15 17:-9 24:-9 25:-12 27:-10 28:-15 29:-9 30:-13 34:35 37:-85 38:-39 39:-22 41:-18 43:11 44:36 46:50 48:-11 49:-11 51:-8 53:25 67:-8 71:55 72:55 73:-35 74:9 75:-11 76:-25 81:16 82:101 83:109 84:-14 86:-8 88:-13 90:38 91:20 92:68 94:19 96:42 97:34 98:54 99:-12 100:-9 102:10 103:-11 105:-10 108:-19 109:-9 114:-18 115:-27 116:-12 117:-12 118:-13 120:-10 126:93
and #n	0:-40 3:-59 4:-17 5:24 6:-16 10:-27 11:64 13:-26 15:-9 16:-9 20:-25 21:15 22:-9 24:-24 25:-12 27:-10 28:-15 29:-10 30:-10 31:-13 37:10 38:-32 39:20 40:-39 41:-53 42:-8 43:-19 44:19 45:78 46:47 47:13 48:-10 51:-37 52:-10 53:20 54:-10 56:-14 63:20 67:49 69:-13 70:-23 71:55 72:38 73:-22 74:-21 75:-18 76:37 77:-21 78:17 80:-20 81:11 82:76 83:54 84:-15 86:30 88:-15 89:-11 90:19 91:47 92:50 93:86 94:-54 97:24 98:29 99:-17 100:-16 103:-13 105:-15 106:-20 108:-10 109:-8 110:-21 111:8 114:-23 115:-24 116:88 117:47 118:-28 122:-23 126:103
#o job	3:-11 16:8 34:8 37:-14 43:9 46:12 72:-11 75:-10 76:-18 78:-9 90:16 93:8 115:51
long	0:45 1:25 2:-18 3:27 4:92 5:-34 6:-19 9:49 11:54 13:-41 14:-10 16:-20 17:-22 18:-12 19:-8 20:-9 21:-9 22:12 23:-12 24:-10 25:-14 26:13 28:92 29:41 30:-26 31:-12 32:-25 33:64 34:15 36:-37 37:-22 38:-10 40:37 41:-23 42:29 43:25 44:-12 45:15 46:-15 47:-13 49:-8 50:17 51:44 53:-9 63:-10 68:-16 69:31 73:20 74:-11 76:-22 77:-8 78:-16 81:-13 83:-16 85:-10 86:68 87:81 88:-9 89:-8 90:-17 92:-16 93:-26 94:-20 96:-11 98:-15 99:-8 100:15 101:-11 102:12 104:-12 105:29 106:-16 108:-8 109:-13 111:-14 113:-8 114:-11 118:-9 122:-8 123:-8 125:-14 126:63
long ~	0:9
&#d	0:33 1:74 2:-35 3:188 4:-66 5:-31 6:-33 7:-13 8:-74 9:-46 10:-14 11:-29 12:-18 13:-38 14:-16 15:-31 16:15 17:-56 18:16 19:-60 20:-45 21:-26 22:-61 23:-15 25:-30 26:-16 27:-31 28:-18 29:-17 30:-25 31:-25 32:-40 33:-35 34:-13 36:-14 37:89 38:74 39:100 40:143 41:65 42:213 43:116 44:-38 45:-31 46:-42 47:-15 48:-14 49:-26 50:33 51:57 52:47 53:-10 54:9 55:-11 56:99 58:-22 59:-18 60:-9 61:-20 62:-12 63:-16 64:-13 65:-32 66:-28 67:42 68:30 69:116 70:119 71:90 72:-65 73:-13 74:-18 75:108 76:-13 77:148 78:-60 79:67 80:-55 81:35 82:120 83:119 84:-25 85:-28 87:-11 88:-12 89:92 90:-41 91:-30 92:-49 93:183 94:-34 95:-17 96:-33 97:-25 98:-46 99:-25 100:-16 101:-15 102:-16 103:-16 104:-12 105:-18 106:-19 107:-20 108:-33 109:-33 111:-17 112:-11 113:-17 114:-24 115:-23 116:-23 117:27 119:-25 120:-32 121:-17 122:16 123:-12 125:-16
&#n	0:67 1:124 2:17 3:16 4:53 5:-15 6:43 8:-99 9:-78 10:39 11:-11 12:-90 13:115 14:-42 15:80 17:41 18:51 19:-76 20:-22 21:-30 23:-24 24:53 25:-12 26:-19 27:-26 28:23 29:-9 30:27 32:-71 33:-45 34:41 35:-27 36:-13 38:32 39:142 40:10 41:134 42:22 43:27 44:85 45:-12 46:17 47:-80 48:27 49:75 50:-13 51:85 52:39 53:-55 54:20 55:18 56:32 57:-51 58:-9 59:-18 60:39 61:9 62:-41 63:-10 64:-39 65:109 66:98 67:61 68:31 69:59 70:80 71:-57 73:32 74:58 75:77 76:-69 77:31 78:43 79:33 80:70 81:-37 83:-95 84:8 85:41 86:23 87:-12 88:50 89:8 90:28 91:12 92:30 94:40 96:38 97:12 98:-13 99:112 100:79 101:-49 102:14 103:28 104:-32 105:105 106:-27 107:40 108:91 109:23 110:-23 111:-63 112:64 115:-38 116:66 117:43 120:43 121:15 122:55 123:-41 124:-24 126:-22
&#o	0:59 1:-30 2:-61 3:52 5:-36 6:-31 7:-11 8:-20 10:-12 11:-15 12:47 13:-47 14:-13 15:-25 16:-14 17:18 18:-41 19:-19 21:23 22:-13 24:-21 25:-37 26:11 27:8 28:-47 30:30 31:36 32:-19 33:-11 35:13 36:-20 37:109 39:-13 40:-15 41:-17 42:65 43:71 44:-52 46:21 47:8 48:34 49:-42 50:-11 51:-12 53:-17 54:20 55:44 56:-22 58:-12 61:-11 62:-14 63:-16 64:-15 65:-30 66:12 67:-9 68:-15 70:-12 71:19 72:25 74:28 75:-32 76:16 77:22 78:61 79:76 80:-8 82:-14 83:-19 84:-13 85:-26 86:-13 87:-10 88:-57 89:-11 91:61 92:29 93:45 94:34 95:-22 96:44 97:74 98:41 99:-19 100:8 101:-19 102:41 103:36 104:-16 105:-14 107:19 108:-40 109:-44 110:-11 111:16 112:54 113:42 114:-27 115:51 116:41 118:-15 119:39 120:-26 121:-9 122:-17 125:13 126:-32
&#r	0:-8 1:-29 3:-10 4:24 5:-51 6:-25 8:-16 9:-15 10:-8 11:-18 12:-14 13:-63 15:-23 16:29 17:-14 18:-32 19:-13 20:31 22:-16 24:-33 25:-31 28:-29 29:-19 30:8 31:51 32:-15 33:-8 34:-9 35:12 36:-8 37:14 38:-15 39:-12 40:-11 41:-22 43:10 44:-54 45:32 46:16 48:79 49:-31 50:-10 51:-39 53:34 54:50 55:85 56:-17 62:-20 63:-24 64:-17 65:-20 66:-24 67:-8 71:48 72:55 73:-13 74:-24 75:-32 76:36 78:17 79:27 81:-21 82:62 83:90 84:-19 85:-18 86:-11 87:-10 88:-29 90:116 91:15 92:29 93:19 94:10 95:-9 96:53 97:40 98:51 99:-8 100:-11 101:-8 102:19 103:-10 105:-8 106:72 107:-17 108:-42 109:-29 110:22 111:38 112:68 113:18 114:-25 115:-24 116:46 117:58 118:-18 119:65 120:-15 121:-8 122:-10 123:-8 126:-61
&@job	1:8 2:91 4:121 5:24 6:66 7:-47 8:-44 9:-71 10:-47 11:-14 12:-59 13:154 14:-49 15:151 16:89 17:57 18:94 19:-50 20:-53 21:-55 22:-56 23:-46 24:-10 25:35 26:-52 27:-26 28:32 29:-59 30:10 32:-45 33:-44 34:-15 35:-14 36:-53 37:78 38:64 39:-29 40:-58 41:-64 42:80 43:47 44:115 45:59 46:82 47:45 48:110 49:103 50:-21 51:-33 52:-20 53:-47 54:-42 55:-20 56:-67 57:-17 58:-38 59:-36 60:-26 61:-37 62:-62 63:-59 64:-57 65:149 66:139 67:-27 68:-30 69:-27 70:-49 71:41 72:51 73:50 74:81 75:76 76:36 77:68 78:64 79:57 80:-28 81:-54 82:-87 83:27 84:81 85:72 86:-25 87:-37 88:92 89:-39 90:25 91:66 92:73 93:25 94:46 95:71 96:62 97:75 98:59 99:-52 100:-49 101:-42 102:-66 103:-50 104:-51 105:-52 106:23 108:105 109:89 110:-30 111:-57 112:-61 113:-64 114:126 115:11 116:74 117:-22 118:-54 119:-40 120:-34 121:-26 122:-36 123:-28 124:-11 125:-11 126:8
&#d#n#o#r@job	2:11 42:-10 43:8 93:9
#n $	0:53 1:29 2:-11 3:-26 4:73 5:12 6:41 7:-23 8:-15 9:-24 10:-13 11:-14 12:-30 13:119 14:-27 15:24 16:48 17:22 18:82 20:52 21:18 22:18 23:-17 24:58 25:27 26:13 27:33 28:74 29:-53 30:-57 31:-60 32:-18 34:49 35:-9 36:-31 37:65 38:70 39:64 40:23 41:29 42:-37 43:-37 44:63 45:25 46:-63 47:-8 48:-62 49:62 50:-12 51:-29 52:-30 54:-26 55:16 56:77 58:8 60:37 61:31 62:-24 63:-48 64:-26 65:31 67:8 68:-13 69:-26 70:-49 71:21 72:15 73:10 74:95 75:-54 76:15 77:10 78:-51 80:31 81:29 82:-60 83:14 84:43 86:-17 87:-9 88:-28 89:20 91:27 92:-44 93:-30 94:35 95:30 96:-18 97:-36 98:12 99:-9 100:25 101:-15 102:-41 103:-17 105:-27 106:19 107:28 108:17 109:16 110:57 111:-14 112:8 113:-9 114:59 115:37 116:-48 117:-18 119:-52 120:31 121:-14 122:-13 123:-20 125:24 126:-50
)~",
R"~(*	0:47 1:108 2:11 3:-11 4:46 5:29 6:85 7:54 8:107 9:100 11:121 12:69 13:193 14:65 15:40 16:42 17:121 18:-21 19:81 20:119 21:88 22:96 23:67 24:148 25:76 26:66 27:133 28:53 29:104 30:155 31:72 32:70 33:110 34:164 35:37 36:79 38:-57 39:104 40:-43 41:113 42:-62 43:-81 44:102 45:-8 46:25 47:-68 48:31 49:78 51:-41 52:14 53:29 54:134 55:-8 56:152 58:69 59:54 61:104 62:78 63:140 64:98 65:36 66:60 67:-15 69:-10 70:-11 71:-91 72:-92 73:-95 74:-56 76:-99 77:-55 78:52 79:-18 80:-28 81:-50 82:22 83:-109 84:13 86:-11 87:20 88:80 89:-10 90:36 91:-31 92:48 93:-60 94:-39 95:69 96:-12 97:-25 98:16 99:39 100:58 102:73 103:65 105:69 106:-36 107:125 108:81 109:110 110:-66 111:113 113:105 114:120 115:-44 116:-21 117:-109 118:86 119:49 120:52 122:77 123:19 124:10 125:123 126:281
wire==	0:20 2:-35 3:-28 4:-54 5:62 6:47 7:29 8:74 9:103 10:78 11:-50 12:-42 13:-27 14:-59 15:-22 16:-23 17:-45 18:109 19:53 20:76 21:52 23:-16 24:50 25:33 26:-43 27:-27 28:-33 29:-49 30:-59 31:-20 32:86 33:72 34:26 36:-36 37:-26 38:-28 39:-18 40:32 41:-17 42:-42 43:-10 44:31 45:-22 46:-19 47:35 48:-17 49:-23 50:174 51:45 52:8 54:-12 56:-26 58:-20 59:-38 60:-11 62:-9 63:-14 64:-12 65:-18 66:-16 67:-15 70:-14 71:-32 72:73 73:18 74:26 75:-38 76:-35 77:-16 78:-28 79:66 80:27 82:-9 83:-23 84:45 86:-67 87:-12 88:-19 89:34 90:-17 91:-14 92:80 93:-11 94:-15 95:-9 97:-12 98:-19 99:-27 100:-17 101:-17 102:-12 103:-11 104:-15 105:-13 106:-11 108:24 109:-33 113:-10 114:-19 115:-22 116:-13 117:18 119:25 120:26 121:64 122:40 123:41 125:-22 126:-33
#d length	1:9 81:-13 82:14 86:9
wire	0:19 2:-36 3:-29 4:-56 5:54 6:50 7:35 8:115 9:165 10:103 11:-54 12:-47 13:-28 14:-75 15:-23 16:-31 17:-58 18:107 19:76 20:91 21:48 22:9 23:-18 24:46 25:67 26:-53 27:-29 28:-38 29:-52 30:-63 31:-21 32:86 33:55 34:14 36:-45 37:-26 38:-28 39:-18 40:32 41:-17 42:-43 43:-11 44:27 45:-22 46:-21 47:35 48:-17 49:-23 50:176 51:45 54:-13 56:-29 58:-21 59:-39 60:-12 62:-9 63:-15 64:-14 65:-18 66:-16 67:-15 70:-14 71:-32 72:72 73:17 74:24 75:-38 76:-36 78:-25 79:65 80:26 82:-10 83:-23 84:41 86:-67 87:-12 88:-20 89:34 90:-18 91:-15 92:77 93:-11 94:-16 95:-9 97:-12 98:-20 99:-28 100:-18 101:-18 102:-13 103:-11 104:-17 105:-13 106:-11 108:23 109:-34 113:-11 114:-19 115:-22 116:-14 117:17 119:25 120:25 121:63 122:38 123:39 125:-24 126:-41
#n wire	24:9 51:-13 67:13 80:11 83:8 86:-8 92:11 118:9 126:11
@wire	0:31 1:63 2:-76 3:-72 4:-64 5:94 6:79 7:89 8:158 9:148 10:-70 11:-63 12:-64 13:-59 14:-38 15:-44 16:-53 17:-57 18:122 19:163 20:96 21:103 22:115 23:-25 24:104 25:102 26:-34 27:-53 28:-63 29:-53 30:-76 31:-45 32:132 33:107 34:31 35:-9 36:-39 37:18 38:58 39:34 40:133 41:15 42:-84 43:-56 44:-36 45:-44 46:-27 47:53 48:-43 49:-42 50:-52 51:131 52:137 53:-18 54:-29 55:-21 56:-67 57:-13 58:-23 59:-26 60:-19 61:-41 62:-25 63:-38 64:-30 65:-22 66:-28 67:132 68:131 69:82 70:111 71:34 72:23 73:28 75:-84 76:-63 77:-20 78:-26 79:-41 80:151 81:23 82:65 83:70 84:-35 85:-29 86:-55 87:-18 88:-38 89:119 90:-27 91:-21 92:-36 93:-59 94:-27 95:-20 96:-18 97:-19 98:-29 99:-46 100:-32 101:-23 102:-32 103:-27 104:-23 105:-33 106:-29 107:-30 108:-32 109:-37 110:-13 111:-45 112:-23 113:-35 114:-24 115:-23 116:-19 117:159 118:67 119:100 120:82 121:-36 122:-52 123:-11 125:-30 126:28
wire @wire	0:9 1:8 4:-9 5:23 7:22 8:-29 9:-34 18:-36 20:-19 21:24 22:31 24:14 25:8 38:-8 42:-16 47:35 50:-32 51:-13 67:9 68:23 69:-16 70:16 73:39 76:-11 80:25 81:22 86:-35 117:8
@wire slot	37:-8
#n long	3:16 72:10 86:27 126:-14
~ job	2:12 4:-19 43:8 45:14 73:-9 76:-10 78:8
@job wire	5:9 16:-8 18:17 45:-10 73:31 84:8
@wire wire	0:22 5:28 6:15 7:50 8:-37 9:-96 18:-28 19:-27 20:-41 21:26 22:44 25:20 32:-27 33:43 34:82 40:-10 47:26 50:-46 52:-25 69:10 70:22 72:13 73:-15 80:46 86:-46 89:62 119:9 120:33 126:-38
wire the	0:8 7:14 8:-15 9:-58 18:-22 20:-28 21:32 22:25 24:10 33:-10 40:12 42:-12 47:16 50:-30 52:19 61:13 70:15 80:23 82:9 83:8 86:-30 89:8 117:9 118:14 120:-10
the @wire	0:-13 1:-15 2:-13 4:-16 5:55 7:23 8:56 9:49 10:-12 11:-23 12:-20 13:-15 14:-15 15:-9 16:-14 17:-18 18:-15 19:39 20:11 21:-28 22:143 24:19 26:-11 27:-12 28:-20 29:-15 30:-29 31:-8 33:83 34:85 36:-10 37:-12 38:-16 39:-20 40:39 41:-33 42:-21 45:-10 47:12 48:-23 49:-19 50:-44 51:35 52:42 54:-9 56:-14 61:-10 63:-15 67:62 68:39 69:24 70:21 71:-10 72:-13 77:-8 81:12 84:-8 86:-32 88:-9 89:43 93:-15 100:-8 102:-10 104:-9 106:-9 107:-10 109:-9 111:-11 113:-14 117:45 118:101 119:65 120:28 122:-9 123:-19 125:-9 126:40
@wire length	1:8 40:10 50:-9 69:9 70:-11 81:22 83:-8
#n pull	40:21 65:-15 73:37 108:38 126:-18
@wire job	18:-9 24:14 25:13 37:8 73:29 76:-9 83:-9
job the	0:-9 3:39 4:-40 5:8 11:9 13:-14 17:8 18:-10 24:16 28:13 31:8 34:33 37:-23 43:24 44:9 46:-10 48:-20 49:-29 65:-9 66:-37 72:8 73:13 74:9 76:-8 78:-14 79:-15 85:11 90:35 92:35 93:24 94:15 95:11 96:20 97:-10 98:13 108:-8 115:-57
the @job	0:18 1:35 2:39 3:51 5:26 6:17 7:-25 8:-21 9:-35 10:-13 11:37 12:-24 13:41 14:-21 15:50 16:46 17:10 18:29 19:-17 20:-22 21:-26 22:-23 23:-21 24:-31 25:32 26:-21 28:25 29:-41 31:-10 33:-16 34:-8 36:-16 37:17 38:8 39:-38 41:-27 42:24 43:64 44:28 45:16 46:43 47:-8 48:33 49:34 50:-10 51:-9 53:-22 54:-18 56:-28 58:-18 59:-11 60:-10 61:-17 62:-19 63:-27 64:-25 65:79 66:71 67:-10 68:-13 69:-10 70:-18 72:20 73:46 74:38 75:11 77:30 78:15 79:10 80:-11 81:-29 82:-47 83:42 85:22 87:-12 88:14 89:-18 90:43 91:18 93:44 94:24 96:79 97:33 98:30 99:-18 100:-18 101:-22 102:-28 103:-22 104:-32 105:-19 107:20 108:67 109:24 110:-11 111:-22 112:-20 113:-32 114:38 115:53 116:46 118:-20 119:-12 120:-13 121:-11 122:-12 123:-11 125:-14 126:-53
@job job	2:16 3:38 4:25 11:11 13:10 15:-15 16:-13 18:-10 24:27 25:10 28:16 34:13 37:-21 42:-10 46:-9 48:-14 49:14 65:-17 66:16 72:16 73:-10 76:32 79:17 83:-10 84:11 88:-8 98:27 108:-20 109:12 114:-13 115:-66 126:-25
&@wire	0:17 1:54 2:-73 3:-71 4:-52 5:59 6:80 7:55 8:202 9:205 10:-70 11:-63 12:-64 13:-59 14:-38 15:-43 16:-48 17:-57 18:170 19:173 20:140 21:48 22:71 23:-25 24:73 25:95 26:-34 27:-53 28:-63 29:-53 30:-76 31:-45 32:123 33:118 34:21 35:-9 36:-39 37:32 38:49 39:36 40:121 41:19 42:-59 43:-56 44:-36 45:-37 46:-26 47:10 48:-43 49:-38 50:-17 51:153 52:156 53:-18 54:-29 55:-21 56:-67 57:-13 58:-23 59:-25 60:-19 61:-41 62:-25 63:-38 64:-30 65:-22 66:-27 67:125 68:121 69:100 70:65 71:38 72:23 73:23 75:-82 76:-54 77:-14 78:-26 79:-41 80:106 82:67 83:67 84:-35 85:-29 87:-18 88:-38 89:134 90:-27 91:-21 92:-36 93:-57 94:-27 95:-20 96:-18 97:-19 98:-29 99:-45 100:-32 101:-23 102:-32 103:-27 104:-23 105:-33 106:-29 107:-30 108:-31 109:-37 110:-13 111:-45 112:-23 113:-35 114:-24 115:-16 116:-19 117:142 118:50 119:100 120:84 121:-35 122:-52 123:-11 125:-30 126:13
@job $	0:39 1:61 2:-16 3:35 4:66 5:18 6:55 7:-17 8:-10 9:-26 10:-12 11:19 12:-16 13:123 14:-20 15:66 16:57 17:34 18:40 19:-14 20:-16 21:-16 22:-14 23:-17 24:86 25:45 26:-12 28:137 29:-11 31:24 32:-24 33:-13 34:90 36:-17 37:33 38:96 39:-61 41:-19 42:-19 43:-53 44:76 46:-63 47:52 48:-37 49:-33 52:-8 54:-10 55:-12 56:-12 58:-9 59:-9 61:-9 62:-9 63:-15 64:-12 65:33 66:-27 67:-8 68:-8 70:-11 71:40 72:-48 74:10 75:-41 76:-42 77:-26 78:-48 82:-37 83:19 84:25 85:16 87:-8 88:-16 90:15 91:32 92:10 93:-19 95:12 96:9 98:-27 99:-8 100:-11 101:-9 102:-11 103:-8 104:-10 105:-12 106:15 108:34 109:-67 110:-8 111:-15 112:-13 113:-11 114:12 115:70 116:-28 118:-10 119:-14 120:-12 122:-8 125:33 126:11
which==	0:87 1:82 2:42 3:-35 5:119 6:39 7:55 8:-11 9:20 10:50 11:44 12:62 13:45 14:68 15:96 16:46 17:74 18:18 19:50 20:-19 21:-15 22:82 23:-26 24:43 25:86 26:57 27:61 28:35 29:16 30:51 31:-13 32:17 33:68 34:43 35:10 36:29 37:-39 38:-36 39:-16 40:-22 41:-23 42:-14 43:-25 44:-20 45:-27 46:-37 48:-27 49:-20 53:-25 54:-22 55:-8 56:-18 59:-22 63:-16 64:-11 65:-35 66:-17 67:-16 68:-14 70:-18 71:-13 73:-13 75:-11 76:-20 77:-8 78:-22 79:-18 80:-11 82:-15 83:-14 84:-15 85:-14 87:-9 88:-14 89:-8 90:-23 91:-12 92:-16 93:-8 94:-14 95:-11 96:-8 98:-17 99:-14 100:-18 101:-20 102:-29 103:-18 104:-14 105:-11 106:-15 107:-12 108:-26 109:-23 110:25 111:-32 112:-23 113:-18 114:-19 115:-14 116:-8 118:-20 119:-20 120:-16 123:-17 125:-13 126:-75
)~",
R"~(offcut==	0:76 1:43 5:-8 36:12 71:-23 126:29
suit==s	0:39 1:-8 18:60 34:-8 36:9
of==	0:14 1:-20 2:-11 3:10 4:10 5:10 6:-13 8:25 9:15 10:-35 13:-9 14:33 16:24 17:10 18:-12 19:43 20:27 21:21 22:26 23:-33 24:-16 25:24 26:24 27:-35 28:49 30:-38 32:-36 34:10 35:-12 36:18 38:-9 39:-29 40:43 41:-16 42:11 43:8 44:-10 45:21 48:10 51:41 52:-11 53:-17 54:-12 55:19 58:11 59:30 60:-41 61:33 63:18 64:57 65:-68 66:-21 67:49 69:43 71:49 72:49 73:44 74:9 76:14 77:-22 78:-10 79:-15 80:43 81:42 82:67 83:51 85:40 86:-14 87:15 88:29 89:23 91:31 92:45 94:-24 96:18 97:21 98:20 99:34 100:8 103:19 104:-31 106:-18 108:19 109:11 111:31 112:-27 113:16 114:-37 115:-25 116:16 117:39 118:23 121:10 122:21 123:32 124:-11 125:-18 126:43
which	0:87 1:82 2:42 3:-35 5:119 6:39 7:55 8:-11 9:20 10:50 11:44 12:62 13:45 14:68 15:96 16:46 17:74 18:18 19:50 20:-19 21:-15 22:82 23:-26 24:43 25:86 26:57 27:61 28:35 29:16 30:51 31:-13 32:17 33:68 34:43 35:10 36:29 37:-39 38:-36 39:-16 40:-22 41:-23 42:-14 43:-25 44:-20 45:-27 46:-37 48:-27 49:-20 53:-25 54:-22 55:-8 56:-18 59:-22 63:-16 64:-11 65:-35 66:-17 67:-16 68:-14 70:-18 71:-13 73:-13 75:-11 76:-20 77:-8 78:-22 79:-18 80:-11 82:-15 83:-14 84:-15 85:-14 87:-9 88:-14 89:-8 90:-23 91:-12 92:-16 93:-8 94:-14 95:-11 96:-8 98:-17 99:-14 100:-18 101:-20 102:-29 103:-18 104:-14 105:-11 106:-15 107:-12 108:-26 109:-23 110:25 111:-32 112:-23 113:-18 114:-19 115:-14 116:-8 118:-20 119:-20 120:-16 123:-17 125:-13 126:-75
^ which	0:30 2:-16 3:-14 4:11 5:46 6:40 7:21 8:12 9:-14 10:48 11:48 12:55 13:33 14:22 15:10 16:42 17:17 18:21 19:25 20:-8 21:-9 23:-22 24:23 25:8 26:13 27:28 28:15 30:63 31:-11 32:47 33:74 34:37 35:11 36:39 37:-18 38:-25 42:-10 44:-23 45:-13 46:-12 48:-17 49:-8 52:-11 54:-17 56:-12 58:-8 59:-14 63:-8 65:-10 66:-8 74:27 78:-10 84:-10 85:-11 88:-8 92:-16 98:-10 100:-8 101:-11 102:-18 103:-8 104:-16 107:-8 108:-13 109:-13 113:-17 114:-9 115:-8 116:-12 118:-9 119:-9
offcut	0:58 1:35 5:46 8:23 17:-9 20:18 26:-11 34:-10 36:11 56:-11 71:-24 72:11 82:14 126:14
which offcut	0:26 5:25
suit	0:32 1:26 4:-8 18:130 34:-11 36:9 56:11 63:-12 64:14 75:-12
of	2:-11 3:9 4:9 5:8 6:-13 8:21 9:11 10:-36 11:8 13:-10 14:32 16:22 17:8 18:-16 19:38 20:31 21:26 22:25 23:-34 24:-20 25:23 26:22 27:-18 28:48 29:8 30:-13 32:-38 34:49 35:-9 36:17 37:10 38:14 39:-8 40:38 41:19 42:10 44:-10 45:19 51:35 52:-15 53:-18 54:10 55:28 58:10 59:29 60:-41 61:32 62:-16 63:12 64:56 65:-69 66:-22 67:39 69:38 71:50 72:43 73:42 74:9 76:14 77:-22 78:-11 79:-16 80:43 81:40 82:51 83:47 85:40 86:-17 87:15 88:28 89:15 91:30 92:44 94:-25 96:15 97:20 98:20 99:31 102:16 103:17 104:-31 106:11 108:18 109:10 111:14 112:-26 113:12 114:-37 115:-26 117:45 118:32 119:9 120:-8 121:10 122:20 123:31 124:-12 125:-18 126:13
#n of	0:82 1:-25 2:-31 3:115 4:17 5:-31 6:-31 7:-9 8:-12 11:-11 13:-64 14:-8 17:-15 18:-33 19:-18 20:-13 21:-8 22:-13 24:-20 25:-13 26:-12 27:-8 28:-19 30:-8 31:-16 33:-13 34:81 37:66 38:-36 41:-43 42:71 43:55 44:-64 46:-80 48:-20 49:-24 52:-16 55:-10 59:40 63:45 64:38 65:-24 66:-18 67:40 68:-10 69:-20 70:-14 71:30 72:57 73:17 74:-12 75:-19 76:-37 77:-42 78:88 79:78 81:-18 82:-18 83:46 84:-14 85:-15 87:15 88:-46 89:-12 90:79 91:21 92:52 93:15 94:-16 95:-10 96:54 97:26 98:38 99:25 101:-11 102:11 103:19 104:8 105:-16 106:-14 107:27 108:-39 109:-31 112:-9 114:-23 115:-29 117:73 118:70 119:-22 120:-17 121:-14 122:-21 123:8 126:75
of @job	0:24 2:24 3:41 4:11 5:8 8:-8 13:-20 15:-21 16:-10 17:20 24:-12 25:-17 28:11 29:-8 31:-14 34:18 37:43 42:15 43:27 44:14 45:46 46:24 48:-8 72:-12 73:11 75:-12 76:8 82:-13 83:19 88:12 90:43 92:10 93:-34 94:16 95:19 97:-10 108:58 109:43 114:-15 116:8 126:-38
&#n@job	0:107 2:-39 3:-17 4:14 6:-21 7:-9 10:-10 11:-19 13:-82 15:-15 16:13 17:20 18:-58 24:-18 27:-16 29:8 30:43 34:45 36:-10 38:126 39:29 41:-28 42:-42 43:-21 44:-9 46:-12 47:-8 48:-25 49:-8 50:-8 53:-9 54:-8 55:-13 56:-15 65:-44 66:-27 70:-13 72:14 73:55 74:95 75:36 76:58 77:13 78:69 79:42 80:-9 81:-11 82:-48 84:-43 86:-8 88:-27 91:52 92:110 93:-23 94:97 96:53 97:65 98:94 99:-18 100:-21 102:-10 103:-12 104:-9 105:-22 108:-16 109:33 112:-14 114:-62 116:15 118:-16 119:-19 122:-12 126:111
piec==e	0:118 1:114 2:-20 4:-32 6:11 7:-8 11:-8 13:-33 15:-25 16:-18 17:-20 18:-16 22:60 24:101 25:-11 27:-13 28:-10 30:-15 31:-16 34:100 36:14 37:123 38:114 39:123 40:42 41:158 42:-29 43:-19 44:-17 45:-14 46:-17 47:-13 48:-11 49:-15 51:-11 55:-8 65:-20 66:-27 70:129 71:129 72:-25 73:-12 74:-14 75:-10 76:-54 77:-14 78:-27 79:-17 80:-9 82:34 83:-54 84:-20 85:-14 86:-22 88:-15 90:-25 91:-9 92:-28 93:-13 94:-20 95:-25 96:-20 97:-20 98:-22 100:-14 102:-8 103:-11 105:-16 106:-16 107:-11 108:-11 109:-11 111:-8 112:-10 114:-27 115:-15 116:-13 117:-9 118:-10 122:-8 125:-13 126:48
fit==s	0:112 1:-8 4:-10 16:-8 34:-23 37:-10
piec	0:118 1:114 2:-20 4:-32 6:11 7:-8 11:-8 13:-33 15:-25 16:-18 17:-20 18:-16 22:60 24:101 25:-11 27:-13 28:-10 30:-15 31:-16 34:100 36:14 37:123 38:114 39:123 40:42 41:158 42:-29 43:-19 44:-17 45:-14 46:-17 47:-13 48:-11 49:-15 51:-11 55:-8 65:-20 66:-27 70:129 71:129 72:-25 73:-12 74:-14 75:-10 76:-54 77:-14 78:-27 79:-17 80:-9 82:34 83:-54 84:-20 85:-14 86:-22 88:-15 90:-25 91:-9 92:-28 93:-13 94:-20 95:-25 96:-20 97:-20 98:-22 100:-14 102:-8 103:-11 105:-16 106:-16 107:-11 108:-11 109:-11 111:-8 112:-10 114:-27 115:-15 116:-13 117:-9 118:-10 122:-8 125:-13 126:48
which piec	0:106 1:-32 5:39 24:-8 34:-9 37:-12 38:-13
piec fit	0:13
do==	0:17 1:-15 2:38 3:99 4:22 5:39 6:40 7:22 9:65 10:9 11:17 12:25 15:60 16:47 17:90 18:23 19:-30 21:-25 23:65 24:-22 25:14 26:26 27:13 28:32 29:39 30:42 33:76 34:30 36:68 37:-37 38:-8 40:-27 43:-20 44:-28 45:-22 46:-36 48:-11 49:-32 51:-26 53:12 55:-9 56:-29 57:-21 58:28 59:-8 61:-47 63:-13 64:-9 65:64 66:39 67:-23 68:-22 69:-8 70:-26 71:-35 72:32 73:-15 75:-9 76:-13 78:-26 79:-14 80:-15 81:-13 82:-18 83:-79 87:17 89:-10 90:-40 91:-9 92:-9 93:-16 94:-25 95:-16 96:-17 97:-11 98:-9 99:-15 100:-15 103:-18 104:25 106:-13 107:15 108:-24 109:-33 111:9 113:34 114:27 115:53 116:-11 117:-16 118:-33 119:-17 120:-12 121:-33 123:19 126:31
i==	0:30 1:27 3:27 6:31 7:22 8:12 9:39 10:40 12:16 13:-32 14:14 15:14 16:42 17:9 18:25 19:-25 21:-9 22:27 23:68 24:25 25:-43 26:-32 27:42 28:-16 29:45 30:9 31:23 32:-8 33:33 34:9 35:-13 36:58 38:-19 39:-24 40:-18 41:8 42:32 44:-13 47:-18 48:-21 49:-46 50:-12 51:-36 52:-14 54:-22 55:-38 56:25 58:-30 59:-27 62:9 63:-24 64:-30 65:46 66:16 67:37 70:8 71:20 74:-19 76:27 78:25 79:8 80:26 81:-22 82:8 84:-17 85:-35 86:-11 89:17 90:-12 92:-26 94:-57 95:12 96:15 97:-11 98:21 99:-25 102:-21 103:-8 104:-39 106:31 107:15 108:19 109:31 111:72 112:112 113:-21 114:-41 115:-22 118:-16 119:-24 120:15 121:-29 122:-23 125:58 126:39
use==	1:61 2:-11 3:10 4:-10 5:102 6:-9 8:-40 9:13 11:-10 12:-10 13:-10 17:-13 18:20 19:-14 20:19 21:-23 22:47 23:18 27:-11 28:-10 31:-16 33:-9 34:36 37:70 38:-60 39:-27 40:-9 41:15 42:-18 43:-10 44:-10 53:-8 56:9 58:-10 68:-16 70:-9 73:-11 74:21 76:-10 78:29 79:-8 83:89 87:45 90:-8 92:-12 93:-11 94:-9 101:-12 102:54 103:46 104:22 105:12 106:-20 111:-22 126:20
in==	2:-27 3:25 4:-22 5:-24 6:-18 8:17 10:8 11:-18 12:25 13:-12 14:20 15:-20 16:-38 17:-59 18:54 19:-15 20:53 21:56 22:46 23:40 24:19 26:11 28:-10 29:71 30:-16 32:13 33:-29 35:-8 36:-11 37:59 38:-33 39:-28 40:26 42:16 43:-23 44:-29 46:-27 47:20 48:31 49:-14 50:47 51:42 52:-32 53:-14 54:-12 55:47 56:43 57:9 58:-19 59:10 60:25 61:-9 62:19 63:9 65:-45 67:-26 68:10 69:-20 70:-17 71:-61 72:-28 73:47 74:-16 75:22 76:104 77:-28 78:-13 79:11 80:52 81:-26 82:-9 83:15 84:9 85:-16 87:-9 88:15 90:-26 91:-28 92:51 93:-28 94:-38 95:25 96:56 97:26 98:-31 99:29 100:-19 102:-24 103:20 104:-18 106:-19 107:-31 108:-9 109:-42 110:24 111:29 112:69 113:-42 115:-27 116:37 117:13 118:53 119:24 120:-33 121:26 123:-21 125:11
do	0:17 1:-15 2:38 3:99 4:22 5:39 6:40 7:22 9:65 10:9 11:17 12:25 15:60 16:47 17:90 18:23 19:-30 21:-25 23:65 24:-22 25:14 26:26 27:13 28:32 29:39 30:42 33:76 34:30 36:68 37:-37 38:-8 40:-27 43:-20 44:-28 45:-22 46:-36 48:-11 49:-32 51:-26 53:12 55:-9 56:-29 57:-21 58:28 59:-8 61:-47 63:-13 64:-9 65:64 66:39 67:-23 68:-22 69:-8 70:-26 71:-35 72:32 73:-15 75:-9 76:-13 78:-26 79:-14 80:-15 81:-13 82:-18 83:-79 87:17 89:-10 90:-40 91:-9 92:-9 93:-16 94:-25 95:-16 96:-17 97:-11 98:-9 99:-15 100:-15 103:-18 104:25 106:-13 107:15 108:-24 109:-33 111:9 113:34 114:27 115:53 116:-11 117:-16 118:-33 119:-17 120:-12 121:-33 123:19 126:31
)~",
R"~(piec do	0:8
i	0:30 1:27 3:27 6:31 7:22 8:12 9:39 10:40 12:16 13:-32 14:14 15:14 16:42 17:9 18:25 19:-25 21:-9 22:27 23:68 24:25 25:-43 26:-32 27:42 28:-16 29:45 30:9 31:23 32:-8 33:33 34:9 35:-13 36:58 38:-19 39:-24 40:-18 41:8 42:32 44:-13 47:-18 48:-21 49:-46 50:-12 51:-36 52:-14 54:-22 55:-38 56:25 58:-30 59:-27 62:9 63:-24 64:-30 65:46 66:16 67:37 70:8 71:20 74:-19 76:27 78:25 79:8 80:26 81:-22 82:8 84:-17 85:-35 86:-11 89:17 90:-12 92:-26 94:-57 95:12 96:15 97:-11 98:21 99:-25 102:-21 103:-8 104:-39 106:31 107:15 108:19 109:31 111:72 112:112 113:-21 114:-41 115:-22 118:-16 119:-24 120:15 121:-29 122:-23 125:58 126:39
do i	0:-9 1:-9 2:14 3:11 4:-19 5:48 6:9 8:-13 9:23 10:22 11:31 12:20 14:-15 15:15 16:56 17:67 18:24 22:-10 23:96 24:-12 25:-22 26:-18 27:56 28:-13 29:77 30:-50 33:15 34:-25 36:55 45:-9 46:-9 65:-10 81:-9 98:-8 111:-15 112:-20 116:-10 122:-8 125:-8 126:-76
use	1:61 2:-11 3:10 4:-10 5:91 6:-13 8:-40 9:13 11:-10 12:-10 13:-10 14:-11 17:-14 18:20 19:-14 20:19 21:-24 22:46 23:17 26:14 27:-11 28:-10 31:-16 33:-10 34:35 37:70 38:-60 39:-28 40:-9 41:15 42:-18 43:-10 44:-10 53:-8 56:9 58:-12 68:-17 70:-9 73:-11 74:22 76:-10 78:29 79:-8 83:89 84:14 87:47 90:-8 92:-12 93:-11 94:9 99:-9 100:-9 101:-9 102:73 103:39 104:52 105:11 106:-20 111:-22
i use	0:37 1:-15 3:45 5:45 16:-10 18:11 22:-8 23:34 24:22 31:-9 34:-8 36:-19 37:-28 74:10 126:-44
use in	0:18 37:-35 126:38
#r $	1:-11 2:-33 8:-9 9:-12 12:-8 13:-12 17:-12 19:-9 20:17 21:9 24:-13 28:-10 29:-16 32:-10 35:13 37:20 42:-11 44:-8 46:-34 47:9 48:85 51:-32 53:56 55:55 62:-8 63:-8 71:54 72:-18 75:-9 76:51 77:11 84:-8 85:-8 88:-12 90:-9 92:-13 93:11 94:11 96:17 98:23 102:24 109:-8 110:32 111:19 112:28 113:15 116:55 117:60 118:-9 119:63 120:-12 126:-54
what==	0:109 1:58 2:47 4:49 5:126 6:37 7:47 8:76 9:44 10:122 11:76 12:55 13:75 14:-19 15:-18 16:93 17:65 18:34 19:74 20:55 21:69 22:67 23:38 24:59 25:91 26:54 27:37 28:74 30:98 31:48 32:44 33:25 34:127 35:74 36:76 37:-17 38:-41 39:-28 40:-54 41:-32 42:-24 44:-53 45:-35 46:-28 47:-8 48:-36 49:-33 50:-16 51:-33 52:-26 53:-34 54:-25 55:-17 56:-42 58:-13 59:-29 60:-15 61:-13 62:-25 63:-32 64:-26 65:-47 66:-30 67:-23 68:-12 69:-18 70:31 71:-18 72:-24 73:-23 76:13 77:-17 78:-38 79:-15 80:-22 82:-17 83:-20 84:31 86:-11 87:-22 88:-20 90:-35 91:-18 92:-9 94:-26 95:-27 96:-20 97:-15 98:-21 99:-25 100:-9 101:-28 102:-40 103:-20 104:-22 105:58 106:-24 108:-32 109:-41 110:-43 111:-62 112:-37 113:-23 114:-11 115:-28 116:-33 117:-22 121:-21 122:-42 123:-50 124:36 125:17 126:-42
stick==	1:-11 2:-21 4:-19 5:78 6:12 7:13 9:-9 13:-8 15:-8 22:-8 24:-8 25:-9 28:-9 32:-16 33:10 34:17 37:-10 38:21 39:8 40:49 41:31 44:73 45:-8 49:-11 50:28 51:-28 52:-11 67:26 68:-17 69:29 70:30 71:-16 72:114 74:27 76:-15 79:-9 80:47 82:-17 83:-24 90:14 98:-11 100:-8 108:-9 109:-15 115:-8 118:21 120:-14 122:-9 126:-27
end==	0:-11 1:19 2:15 3:50 5:-12 8:-27 9:48 11:-13 16:-9 19:-9 20:-8 22:-8 28:13 30:18 31:33 34:16 36:-9 37:-12 38:30 40:60 41:24 42:44 43:-26 46:-8 47:-12 51:-12 53:18 58:19 67:-16 68:-10 69:-10 70:16 71:80 72:-19 73:-19 75:-8 76:-16 77:17 79:-8 80:-10 81:11 82:-14 83:-19 88:8 90:19 91:-11 92:-10 93:-16 94:75 97:10 108:-9 111:-8 112:-15 115:21 118:24 126:-77
what	0:109 1:58 2:47 4:49 5:126 6:37 7:47 8:76 9:44 10:122 11:76 12:55 13:75 14:-19 15:-18 16:93 17:65 18:34 19:74 20:55 21:69 22:67 23:38 24:59 25:91 26:54 27:37 28:74 30:98 31:48 32:44 33:25 34:127 35:74 36:76 37:-17 38:-41 39:-28 40:-54 41:-32 42:-24 44:-53 45:-35 46:-28 47:-8 48:-36 49:-33 50:-16 51:-33 52:-26 53:-34 54:-25 55:-17 56:-42 58:-13 59:-29 60:-15 61:-13 62:-25 63:-32 64:-26 65:-47 66:-30 67:-23 68:-12 69:-18 70:31 71:-18 72:-24 73:-23 76:13 77:-17 78:-38 79:-15 80:-22 82:-17 83:-20 84:31 86:-11 87:-22 88:-20 90:-35 91:-18 92:-9 94:-26 95:-27 96:-20 97:-15 98:-21 99:-25 100:-9 101:-28 102:-40 103:-20 104:-22 105:58 106:-24 108:-32 109:-41 110:-43 111:-62 112:-37 113:-23 114:-11 115:-28 116:-33 117:-22 121:-21 122:-42 123:-50 124:36 125:17 126:-42
^ what	0:-16 1:56 2:19 4:63 5:35 6:36 7:43 8:89 9:12 10:48 11:82 12:66 13:39 14:34 15:14 16:21 17:74 18:54 19:50 21:36 22:44 23:60 24:70 25:65 26:64 27:70 28:74 29:23 30:53 31:62 32:37 33:30 34:48 35:110 36:89 37:-36 38:-14 39:-15 40:-17 41:-16 42:-30 43:-11 44:-34 45:-25 46:-18 48:-30 49:-14 51:-11 52:-17 53:-16 54:-16 55:-11 56:-26 58:-15 59:-17 62:-18 63:-14 64:-11 65:-35 66:-18 67:-23 69:-15 71:-11 72:-9 73:-14 74:-12 76:-11 78:-17 79:-10 80:-9 82:-9 83:-17 84:-46 85:-53 87:-16 88:-13 89:-9 90:-13 91:-11 92:-20 94:-14 95:-27 96:-10 98:-12 99:-12 100:-16 101:-19 102:-22 103:-12 104:-40 105:-30 106:-14 107:-9 108:-19 109:-18 110:-13 111:-35 112:-20 113:-14 114:-20 115:-17 116:-25 117:-10 118:-20 120:-33 121:-10 122:-16 123:-13 124:-16 125:-41 126:14
stick	0:-20 1:-27 2:-35 3:-15 4:-30 5:99 6:66 8:83 9:-38 11:-9 13:-22 15:-12 16:-20 17:11 18:-24 19:-20 20:-25 21:-8 22:-22 24:-19 25:-19 28:-20 30:-13 32:39 37:-22 38:14 41:21 42:-9 44:60 45:-18 46:-19 47:-13 48:-11 49:-14 50:83 51:112 52:-34 61:-8 65:-9 67:107 68:75 69:-21 70:44 71:-27 72:155 73:-12 74:18 76:-20 77:-13 78:-26 79:-14 81:-10 82:-34 83:-39 84:20 85:-11 86:-8 88:-10 89:-16 90:67 91:-9 92:-18 93:-8 94:-9 96:-12 97:-9 98:-16 99:-13 100:-15 105:-11 106:-8 108:-12 109:-20 114:-9 115:-19 117:71 118:56 119:-39 120:-12 121:70 122:30
what stick	6:8
end	0:-35 1:90 3:46 4:-16 5:-17 6:-14 7:-11 8:-25 9:36 11:-18 13:-16 15:-8 16:-25 17:-16 18:-13 19:-12 20:-11 22:-8 23:52 24:-11 25:-8 26:-12 28:56 29:-8 31:54 32:-8 33:-10 36:-19 38:22 40:93 41:18 42:66 43:75 44:65 45:-9 46:-25 47:-10 48:-10 49:-8 50:-8 51:-23 53:16 58:17 63:12 64:-9 65:-9 66:-8 67:-26 68:-18 69:-13 70:8 71:91 72:-37 73:-31 75:-12 76:-31 78:-18 80:48 81:47 82:-28 83:-34 88:22 91:-15 92:-29 93:-38 94:110 96:-8 97:19 98:-22 99:-9 100:-14 103:-10 104:18 105:10 108:14 111:-10 112:-16 114:-12 115:16 116:-11 117:-9 118:14 126:-65
stick end	5:-9 34:21 38:34 39:11 40:28 41:34 51:-13 67:-16 69:-8 70:-16 71:63 72:-34 80:63 82:-13 83:-11 89:8
short==	0:14 2:26 3:40 5:27 6:-13 8:30 9:84 11:-13 12:-11 13:-16 14:-12 16:29 17:-27 18:-8 19:-14 20:-13 21:51 22:75 24:-15 25:-20 26:-20 30:-14 31:-15 32:-25 33:-10 34:-18 36:11 37:-18 38:-13 40:30 41:25 42:-75 43:253 44:-10 45:58 46:-14 52:35 62:21 63:-8 68:-8 71:-14 73:-19 74:-11 76:38 77:-12 78:-31 79:-34 80:17 83:-9 85:-10 86:20 87:101 89:-10 90:-35 91:-8 92:-19 93:-27 94:-13 96:-17 97:-16 98:-19 101:-9 102:-10 117:-8 126:45
fret==	0:72 2:-47 3:104 4:104 5:-22 6:-24 7:12 8:-9 9:-8 11:-20 12:-8 13:-53 15:-30 16:-26 17:62 18:-22 19:-10 20:-10 21:-10 23:18 24:20 25:-21 26:-10 27:-10 28:-61 29:-8 30:-20 36:12 37:90 40:31 42:135 43:62 44:-25 45:-11 46:34 47:-11 48:-25 49:-33 51:-15 53:-10 54:-8 55:-8 56:-13 59:-9 65:-26 66:-21 67:-10 69:-11 70:-17 71:-86 72:-20 73:14 74:-18 75:-23 76:74 77:-30 78:163 79:114 80:-16 81:-9 82:-15 84:-14 85:-15 86:10 88:-36 89:-12 90:15 91:62 92:20 93:80 94:109 95:-17 96:27 97:56 98:68 100:-13 102:-11 103:-11 104:-11 105:-17 107:-11 108:-43 109:-30 111:-9 113:-8 114:-27 115:-21 116:-32 118:-15 119:-8 120:-10 122:-9
short	0:13 2:25 3:39 5:26 6:-13 8:42 9:81 11:-13 12:-12 13:-16 14:-13 16:29 17:-27 18:-8 19:-16 20:-13 21:59 22:65 24:-17 25:-20 26:-21 29:-8 30:-14 31:-15 32:-26 33:-11 34:-19 36:10 37:-19 38:-15 40:19 41:24 42:-75 43:252 44:-11 45:58 46:-15 52:35 58:-8 62:21 63:-9 68:-8 71:-14 73:-20 74:-11 76:37 77:-12 78:-31 79:-35 80:76 81:-8 82:24 83:-10 85:-12 86:18 87:101 89:-11 90:-36 91:-9 92:-19 93:-27 94:-13 96:-17 97:-17 98:-19 99:-8 101:-9 102:-10 117:-8 126:26
which short	0:12 2:-9 5:27 22:27
short fret	0:45 2:-8 3:-12 5:43 8:55 9:-20 16:-8 19:-9 21:48 22:25 25:-15 26:-9 28:-9 31:-9 34:-9 40:21 43:-13 80:19 126:-21
fret do	2:17 3:8 5:10
#n in	1:34 2:-16 3:39 4:-18 5:-8 18:-10 22:-16 24:21 34:14 37:78 38:-14 39:-8 40:-10 44:20 46:-17 48:43 50:18 53:18 54:-17 55:15 73:19 76:-12 78:51 79:16 83:19 86:11 88:11 92:-35 96:-18 97:8 106:15 111:-17 114:-10 126:-26
in job	0:10 1:30 3:-28 4:16 12:-17 13:-11 14:24 15:-20 18:9 24:-8 34:37 43:28 44:-9 73:-22 75:23 76:-38 78:34 79:17 83:14 91:8 92:-15 95:38
)~",
R"~(what short	0:-8 5:24 8:25 22:-8
what piec	0:59 1:-9 5:-8 34:-9 126:-14
piec suit	0:16
suit the	0:10 18:13
&#r@job	0:8 1:-8 4:11 5:-11 13:-23 15:-8 18:-13 24:-16 25:-10 31:44 44:-13 45:-25 46:-8 48:80 49:-11 72:36 76:-10 79:9 90:16 91:8 92:56 96:12 98:15 108:-8 109:-10 116:31 126:10
fit the	0:14 18:20 92:-11
for==	0:73 1:54 2:26 3:11 4:29 5:55 6:69 7:42 8:-41 9:10 10:32 11:22 12:23 13:-44 14:-36 15:-50 16:24 17:-27 18:31 19:12 20:54 21:33 22:34 23:59 24:85 25:-31 27:65 28:46 29:-15 30:44 31:65 32:9 34:-35 35:-14 37:9 38:129 39:16 40:8 41:-14 42:15 45:-53 46:-28 47:9 48:35 49:-44 52:36 54:24 56:-13 57:-8 58:-10 59:9 62:-28 63:-17 64:-15 65:-8 66:-21 67:-41 68:16 69:15 71:20 72:32 73:-28 74:30 75:-31 76:-82 77:-59 78:-11 79:-12 81:-46 84:80 85:91 86:28 87:-8 88:-50 90:-60 91:-29 92:-12 93:-34 95:-25 96:-30 97:-19 98:-50 99:-16 100:-22 101:15 102:8 103:-61 104:9 105:53 106:103 107:27 109:41 111:-22 112:9 114:-52 115:-14 116:12 117:56 119:21 123:-18 124:-9 125:-17 126:-29
for	0:73 1:54 2:26 3:11 4:29 5:55 6:69 7:42 8:-41 9:10 10:32 11:22 12:23 13:-44 14:-36 15:-50 16:24 17:-27 18:31 19:12 20:54 21:33 22:34 23:59 24:85 25:-31 27:65 28:46 29:-15 30:44 31:65 32:9 34:-35 35:-14 37:9 38:129 39:16 40:8 41:-14 42:15 45:-53 46:-28 47:9 48:35 49:-44 52:36 54:24 56:-13 57:-8 58:-10 59:9 62:-28 63:-17 64:-15 65:-8 66:-21 67:-41 68:16 69:15 71:20 72:32 73:-28 74:30 75:-31 76:-82 77:-59 78:-11 79:-12 81:-46 84:80 85:91 86:28 87:-8 88:-50 90:-60 91:-29 92:-12 93:-34 95:-25 96:-30 97:-19 98:-50 99:-16 100:-22 101:15 102:8 103:-61 104:9 105:53 106:103 107:27 109:41 111:-22 112:9 114:-52 115:-14 116:12 117:56 119:21 123:-18 124:-9 125:-17 126:-29
for job	0:-9 1:-28 2:25 3:-16 4:66 5:35 6:10 10:-8 13:-41 15:19 16:-30 17:38 18:56 24:9 25:-9 27:79 30:-29 34:54 38:56 39:-23 42:-13 43:-12 44:-13 46:-13 48:-11 49:-25 65:-11 66:-61 71:22 72:8 73:-9 74:51 75:10 77:-10 78:-24 84:62 85:48 90:-15 94:-14 97:-9 98:-17 105:-17 106:49 107:47 108:-12 109:-43 114:-19 115:-15 116:-17 126:99
&#n#r	2:20 4:38 5:-22 13:-21 15:-8 16:-10 17:-13 18:-8 25:-8 28:-14 31:-8 44:-22 45:39 46:20 48:33 49:-8 53:-9 55:28 65:-8 66:-10 72:-13 74:-13 76:13 77:10 83:54 88:-15 90:60 96:33 97:34 108:-20 109:-10 114:-12 115:-13 116:12 119:26 126:44
piec for	0:121 1:-17 24:-16 37:-11 126:-19
for the	0:-54 1:-53 2:-8 3:17 4:55 5:-39 6:44 7:38 8:-13 9:13 11:16 13:-26 14:13 15:-34 16:63 17:-10 20:12 21:-10 23:11 24:46 25:-15 27:33 28:-48 29:60 30:85 32:12 33:-20 34:-10 36:39 37:17 38:44 40:58 41:9 42:44 44:13 49:-43 51:-28 53:13 54:9 56:29 58:-20 61:-14 62:-28 64:-15 65:-16 66:-29 68:44 69:18 70:-15 71:20 72:12 73:26 74:12 76:-32 77:-9 78:-27 79:9 80:28 81:-11 83:-43 85:22 86:17 88:-16 89:8 90:-10 91:-8 93:-16 94:-41 97:-11 98:-16 99:-15 100:-20 101:-16 103:-12 105:10 106:-9 108:34 109:12 111:16 112:-25 113:-16 114:-22 115:-11 116:-19 117:-19 119:31 120:-17 125:33 126:-21
what fit	0:69 16:-8 34:-18
anyth==ing	0:85 3:-11 4:-16 5:-9 6:-10 8:15 9:39 10:48 11:91 13:30 14:-16 15:-25 16:-11 17:41 18:-12 19:-9 20:-16 22:68 23:-19 24:63 25:57 26:22 27:70 28:-8 29:-14 30:-14 31:-14 32:73 33:-33 34:63 36:-13 37:16 38:-24 39:-21 40:-9 41:17 43:-17 44:-31 45:-9 46:-13 48:-18 55:-8 56:9 57:-10 58:33 65:-12 66:-14 67:-11 71:-19 73:-12 76:-11 78:-8 80:-8 84:-13 85:67 88:-9 90:-9 92:23 95:-9 97:-16 98:-9 101:-9 104:-11 106:-8 107:-12 108:-15 109:-29 114:-11 115:19 117:-13 118:-9 122:-9 123:-25 125:-10 126:-32
on==	1:27 2:10 3:38 5:-22 6:-15 7:33 10:-50 12:22 14:-21 16:19 17:19 19:-19 20:-34 22:-44 25:64 26:-19 27:14 28:28 29:41 30:48 31:-22 32:49 33:-8 34:8 35:-13 36:-18 37:-9 38:-27 39:14 40:28 42:10 43:29 45:35 46:34 47:-29 48:32 49:-56 51:8 52:-18 53:43 54:38 55:48 56:22 58:-17 59:26 61:-22 62:-9 63:-26 64:12 65:-12 68:14 70:12 71:-8 73:-38 75:9 77:-30 78:15 80:-20 81:-45 82:-40 84:-26 87:-31 88:29 89:9 90:43 91:27 92:31 93:12 94:18 95:11 96:24 97:19 98:25 100:13 101:-47 102:30 103:-38 104:28 105:-27 106:39 108:65 109:33 110:28 111:36 112:66 113:50 114:-29 116:36 117:50 119:28 120:-44 123:-19 124:-9 125:-34
anyth	0:85 3:-11 4:-16 5:-9 6:-10 8:15 9:39 10:48 11:91 13:30 14:-16 15:-25 16:-11 17:41 18:-12 19:-9 20:-16 22:68 23:-19 24:63 25:57 26:22 27:70 28:-8 29:-14 30:-14 31:-14 32:73 33:-33 34:63 36:-13 37:16 38:-24 39:-21 40:-9 41:17 43:-17 44:-31 45:-9 46:-13 48:-18 55:-8 56:9 57:-10 58:33 65:-12 66:-14 67:-11 71:-19 73:-12 76:-11 78:-8 80:-8 84:-13 85:67 88:-9 90:-9 92:23 95:-9 97:-16 98:-9 101:-9 104:-11 106:-8 107:-12 108:-15 109:-29 114:-11 115:19 117:-13 118:-9 122:-9 123:-25 125:-10 126:-32
^ anyth	0:69 8:39 9:-21 10:63 11:34 12:19 13:27 19:9 20:-22 22:8 24:35 25:21 34:-17 38:-11 44:-11 48:-8 126:-26
anyth for	0:25 13:-8 24:18 38:-15 85:88 109:-16 111:9 126:-23
for slot	0:65 1:-41 2:-14 3:82 4:-71 16:14 24:-8 34:-17 37:21 38:95 42:-26 43:61 72:-8 75:-10 76:-19 78:57 79:15 83:29 92:-24 93:-9 126:-39
on	1:27 2:10 3:38 5:-22 6:-15 7:33 10:-50 12:22 14:-21 16:19 17:19 19:-19 20:-34 22:-44 25:64 26:-19 27:14 28:28 29:41 30:48 31:-22 32:49 33:-8 34:8 35:-13 36:-18 37:-9 38:-27 39:14 40:28 42:10 43:29 45:35 46:34 47:-29 48:32 49:-56 51:8 52:-18 53:43 54:38 55:48 56:22 58:-17 59:26 61:-22 62:-9 63:-26 64:12 65:-12 68:14 70:12 71:-8 73:-38 75:9 77:-30 78:15 80:-20 81:-45 82:-40 84:-26 87:-31 88:29 89:9 90:43 91:27 92:31 93:12 94:18 95:11 96:24 97:19 98:25 100:13 101:-47 102:30 103:-38 104:28 105:-27 106:39 108:65 109:33 110:28 111:36 112:66 113:50 114:-29 116:36 117:50 119:28 120:-44 123:-19 124:-9 125:-34
#n on	0:86 1:-34 2:-19 3:61 4:100 5:-13 11:-8 13:-40 15:-21 16:17 17:15 18:-15 24:-19 25:-24 27:-10 28:-16 29:-12 30:-18 31:-9 34:49 37:57 38:-35 39:-15 40:-9 41:-10 43:48 44:-39 45:-17 46:-53 48:-14 49:-8 53:-22 54:19 55:13 59:17 65:-8 66:-16 71:24 72:17 73:-15 75:-16 76:-53 77:12 78:37 79:17 81:-25 82:-13 83:-22 88:-25 90:18 91:44 92:77 93:32 94:26 95:-12 96:90 97:28 98:59 99:-10 100:-10 106:-17 107:-15 108:-37 109:-34 110:-26 111:-34 112:97 114:21 115:-39 116:22 117:-8 118:-8 119:12 126:32
on the	1:96 2:-25 3:52 4:-26 5:-17 6:17 7:49 8:26 9:-17 11:49 12:21 13:15 15:27 16:-41 17:9 18:-10 19:-21 20:-25 21:-11 22:-25 23:29 25:18 26:-51 27:21 28:-23 29:27 30:-20 32:9 33:-21 34:-20 36:-20 37:30 38:-19 39:-10 40:61 41:-9 42:29 43:59 44:16 46:14 48:-50 49:9 50:-14 51:29 52:-11 54:9 57:-9 58:-19 59:33 60:24 62:-13 63:-10 64:14 65:-13 66:-29 68:29 69:15 70:-17 75:-30 76:20 79:16 80:16 81:-14 82:-10 83:22 84:-17 85:-15 87:-23 90:17 91:51 92:14 93:-18 94:-34 95:9 96:53 97:-19 98:17 100:21 101:-27 102:-8 103:-20 104:24 105:-30 106:11 107:-9 109:19 110:-8 111:-21 112:11 113:-12 115:-55 117:19 118:-10 120:-21 123:-8 126:-20
is==	0:-10 3:46 4:-26 5:-44 6:-21 7:-33 8:36 9:14 10:-22 11:12 12:50 13:43 14:40 15:82 16:-25 17:40 19:-49 20:-20 22:12 23:55 24:69 25:-15 26:72 27:36 28:28 29:42 30:37 31:29 32:57 33:25 34:-50 35:-18 36:-15 37:-16 38:-8 40:-40 41:22 43:-24 44:15 46:10 47:-12 49:20 50:-9 51:-15 52:38 53:-31 55:-31 56:45 57:13 60:35 61:16 62:33 63:12 66:10 67:23 68:21 69:20 70:13 71:-26 72:-17 73:-20 74:24 75:-16 76:15 77:36 78:9 79:-11 80:-28 82:-27 83:-48 84:-52 85:19 86:22 87:-21 88:54 89:18 90:44 92:41 93:21 94:43 95:51 97:25 98:-21 99:-12 101:-34 102:43 103:28 104:33 105:20 108:-8 111:8 112:-18 113:44 114:29 115:15 117:-15 118:13 119:32 120:28 121:-24 122:39 123:-24 124:-13 125:-67 126:44
ther==e	0:85 1:8 2:-15 5:-13 8:63 10:28 11:12 12:24 13:-44 14:37 15:-29 16:-25 17:12 18:16 19:37 20:-12 21:10 22:52 23:-39 24:-20 25:12 26:20 28:-17 29:14 32:-19 34:40 36:74 37:22 39:-21 41:-14 43:-23 44:-9 45:-8 46:-15 49:-13 50:8 54:-9 55:9 56:-19 59:10 61:-14 63:-12 65:11 66:-11 67:55 68:9 69:-20 70:18 71:-19 72:8 74:-19 78:-29 80:-12 82:-38 84:-17 85:-11 86:18 89:-13 90:10 91:35 92:17 94:29 95:22 96:-9 98:-22 99:31 100:71 101:12 103:-22 104:10 105:-14 106:-12 107:-18 108:-16 111:-9 112:-9 115:-14 117:-17 119:-11 126:-29
an==	0:8 2:-8 3:-14 5:-15 6:-10 8:21 9:-27 11:-12 12:10 13:-10 14:-17 16:-13 18:-18 19:-11 20:-11 22:-10 23:-9 24:-10 26:27 27:-8 29:-18 30:-12 31:25 32:39 33:-18 34:-14 36:32 37:-12 39:17 40:37 43:-9 45:8 47:-11 53:-15 55:28 56:-10 63:-11 65:-14 66:-9 71:13 73:23 76:14 78:18 80:15 83:9 89:-9 91:-9 93:-13 94:15 98:17 99:37 100:29 104:-15 105:55 106:29 108:-9 111:-11 112:-13 114:15 117:40 120:-20 121:11 122:27 126:-17
)~",
R"~(that==	0:16 1:-26 2:9 3:18 4:-10 5:-10 6:-8 7:-11 8:-18 9:-18 10:-16 11:16 13:-43 14:-20 15:20 17:-22 19:15 20:-21 21:-10 22:33 24:-21 25:64 26:22 27:-42 28:19 29:-44 30:-34 31:14 33:10 34:-13 35:25 36:-12 37:68 38:17 39:19 40:-23 41:34 42:-9 43:-10 44:19 46:-34 47:-13 48:-15 51:24 52:-9 53:-15 54:15 56:12 58:15 59:-22 60:41 62:-33 64:-32 65:27 68:12 70:-27 72:-9 73:-21 74:13 75:9 78:20 80:-13 81:25 82:-34 84:42 85:27 86:-22 89:-11 90:-29 91:-26 93:-22 94:26 95:-9 96:-10 97:9 99:-32 100:24 101:29 102:-16 105:15 106:-10 107:41 108:-22 109:30 110:-12 111:-32 112:-33 113:33 114:-27 115:40 117:-27 118:10 119:33 120:35 121:-23 123:14 124:64 125:104 126:-16
is	0:-10 3:46 4:-26 5:-44 6:-21 7:-33 8:36 9:14 10:-22 11:12 12:50 13:43 14:40 15:82 16:-25 17:40 19:-49 20:-20 22:12 23:55 24:69 25:-15 26:72 27:36 28:28 29:42 30:37 31:29 32:57 33:25 34:-50 35:-18 36:-15 37:-16 38:-8 40:-40 41:22 43:-24 44:15 46:10 47:-12 49:20 50:-9 51:-15 52:38 53:-31 55:-31 56:45 57:13 60:35 61:16 62:33 63:12 66:10 67:23 68:21 69:20 70:13 71:-26 72:-17 73:-20 74:24 75:-16 76:15 77:36 78:9 79:-11 80:-28 82:-27 83:-48 84:-52 85:19 86:22 87:-21 88:54 89:18 90:44 92:41 93:21 94:43 95:51 97:25 98:-21 99:-12 101:-34 102:43 103:28 104:33 105:20 108:-8 111:8 112:-18 113:44 114:29 115:15 117:-15 118:13 119:32 120:28 121:-24 122:39 123:-24 124:-13 125:-67 126:44
^ is	0:16 1:52 2:-11 3:76 5:-15 8:45 9:48 10:39 11:92 13:153 14:56 15:106 16:61 17:114 18:57 19:-10 20:-15 21:26 22:50 23:131 24:98 25:25 26:94 27:104 28:-20 29:140 30:9 31:125 32:64 33:62 34:-16 36:35 37:-27 38:-23 39:-47 41:-23 42:-29 43:-18 44:-52 45:-35 46:-13 48:-23 49:-17 52:-37 54:-20 55:-11 56:-30 58:-13 59:-11 60:-77 61:-16 62:-16 63:-25 64:-9 65:-57 66:-31 67:-14 68:-8 70:-14 74:-8 77:-9 78:-20 84:-8 85:-25 87:-19 88:-57 89:-25 90:-50 91:-15 92:-30 94:-15 95:-37 97:-8 98:-9 99:-9 100:-27 101:-8 102:-55 103:-51 104:-34 105:-10 106:-31 107:-38 108:-15 109:-21 110:-20 111:-31 112:-61 113:-17 114:-44 115:-17 116:-9 118:-15 119:-19 120:-16 122:-16 123:-18 126:58
ther	0:85 1:8 2:-15 5:-13 8:63 10:28 11:12 12:24 13:-44 14:37 15:-29 16:-25 17:12 18:16 19:37 20:-12 21:10 22:52 23:-39 24:-20 25:12 26:20 28:-17 29:14 32:-19 34:40 36:74 37:22 39:-21 41:-14 43:-23 44:-9 45:-8 46:-15 49:-13 50:8 54:-9 55:9 56:-19 59:10 61:-14 63:-12 65:11 66:-11 67:55 68:9 69:-20 70:18 71:-19 72:8 74:-19 78:-29 80:-12 82:-38 84:-17 85:-11 86:18 89:-13 90:10 91:35 92:17 94:29 95:22 96:-9 98:-22 99:31 100:71 101:12 103:-22 104:10 105:-14 106:-12 107:-18 108:-16 111:-9 112:-9 115:-14 117:-17 119:-11 126:-29
is ther	0:135 1:27 3:-24 4:22 6:17 8:102 9:23 10:32 11:24 12:50 13:-33 14:33 15:-20 16:-8 18:22 19:-10 21:10 22:76 23:-25 28:-28 29:17 30:10 33:8 34:-15 36:63 37:-20 43:-10 52:-12 56:-9 67:-12 84:-13 88:-38 91:-19 92:-13 94:-8 95:-13 100:-11 107:-10 120:-8 126:-56
an	0:8 2:-8 3:-14 5:-15 6:-10 8:21 9:-27 11:-12 12:10 13:-10 14:-17 16:-13 18:-18 19:-11 20:-11 22:-10 23:-9 24:-10 26:27 27:-8 29:-18 30:-12 31:25 32:39 33:-18 34:-14 36:32 37:-12 39:17 40:37 43:-9 45:8 47:-11 53:-15 55:28 56:-10 63:-11 65:-14 66:-9 71:13 73:23 76:14 78:18 80:15 83:9 89:-9 91:-9 93:-13 94:15 98:17 99:37 100:29 104:-15 105:55 106:29 108:-9 111:-11 112:-13 114:15 117:40 120:-20 121:11 122:27 126:-17
ther an	0:16
an offcut	0:30
that	0:16 1:-26 2:9 3:18 4:-10 5:-10 6:-8 7:-11 8:-18 9:-18 10:-16 11:16 13:-43 14:-20 15:20 17:-22 19:15 20:-21 21:-10 22:33 24:-21 25:64 26:22 27:-42 28:19 29:-44 30:-34 31:14 33:10 34:-13 35:25 36:-12 37:68 38:17 39:19 40:-23 41:34 42:-9 43:-10 44:19 46:-34 47:-13 48:-15 51:24 52:-9 53:-15 54:15 56:12 58:15 59:-22 60:41 62:-33 64:-32 65:27 68:12 70:-27 72:-9 73:-21 74:13 75:9 78:20 80:-13 81:25 82:-34 84:42 85:27 86:-22 89:-11 90:-29 91:-26 93:-22 94:26 95:-9 96:-10 97:9 99:-32 100:24 101:29 102:-16 105:15 106:-10 107:41 108:-22 109:30 110:-12 111:-32 112:-33 113:33 114:-27 115:40 117:-27 118:10 119:33 120:35 121:-23 123:14 124:64 125:104 126:-16
that fit	0:11
someth==ing	0:125 3:-20 4:-12 8:-11 9:-8 10:22 11:31 13:-14 18:8 23:-8 24:14 25:15 27:13 29:-9 32:10 34:23 37:-9 38:-8 40:10 58:16 73:-16 88:35 92:-8 103:-8 104:15 107:-12 119:12 126:-46
someth	0:125 3:-20 4:-12 8:-11 9:-8 10:22 11:31 13:-14 18:8 23:-8 24:14 25:15 27:13 29:-9 32:10 34:23 37:-9 38:-8 40:10 58:16 73:-16 88:35 92:-8 103:-8 104:15 107:-12 119:12 126:-46
^ someth	0:49 88:27
in @job	1:15 5:10 13:-17 18:48 24:-8 25:24 37:10 75:10 88:15 126:-15
^ an	8:28 41:9 45:11 59:8 67:8 68:10 73:16 74:9 76:-8 82:12 85:11 90:11 119:9 126:-15
offcut for	0:28
in the	0:53 1:27 2:-46 3:10 4:-41 5:-38 6:-13 7:-28 8:107 9:21 11:63 13:-24 14:58 17:-21 18:12 19:-11 20:-30 21:-99 22:62 23:13 24:9 25:-11 28:-15 29:-38 30:31 33:-20 34:11 36:-15 37:44 40:13 41:28 42:-13 43:-8 45:-19 47:10 48:-34 49:-15 50:31 51:-25 52:-29 53:13 54:16 56:-32 57:15 59:13 61:-9 62:49 63:-19 64:-13 65:-9 66:-8 67:11 68:-10 70:23 73:69 75:14 76:28 79:36 80:36 81:-10 82:41 83:-36 84:21 85:-23 88:-14 89:-8 90:-11 91:-11 92:41 93:-13 94:-18 95:10 96:-26 99:43 100:-19 102:13 103:-26 104:-27 105:-24 106:13 107:-11 108:-12 109:-8 110:12 111:25 112:-25 113:-11 115:-11 116:-20 118:12 119:-21 120:27 121:-16 122:-29 125:-9 126:44
a==	0:25 1:73 2:52 3:17 4:-43 5:17 6:8 7:43 8:-39 9:-20 12:-15 13:-14 15:-23 16:-22 17:-57 18:11 19:-37 21:-23 22:19 24:-32 26:-9 28:59 29:-46 30:-31 31:36 32:-47 33:-45 34:-59 36:47 37:-38 38:-18 39:-18 40:58 41:-9 42:-48 44:-57 45:-24 47:31 49:-33 50:56 51:41 52:-8 53:45 54:55 55:-18 57:13 58:-11 59:46 60:-9 61:15 63:-15 64:-9 65:-38 66:16 67:-21 68:-99 69:46 70:30 71:-25 72:24 73:-41 74:-23 75:31 76:-41 77:-19 78:18 79:52 80:49 82:-21 84:-15 85:-21 86:45 88:17 90:20 91:-10 92:-11 93:20 95:43 96:44 98:32 99:121 100:29 101:17 102:-29 103:-21 104:65 105:73 107:-43 109:41 110:-24 112:-30 114:46 115:-42 116:-15 118:-26 119:24 120:12 121:55 125:-16 126:73
a	0:25 1:73 2:52 3:17 4:-43 5:17 6:8 7:43 8:-39 9:-20 12:-15 13:-14 15:-23 16:-22 17:-57 18:11 19:-37 21:-23 22:19 24:-32 26:-9 28:59 29:-46 30:-31 31:36 32:-47 33:-45 34:-59 36:47 37:-38 38:-18 39:-18 40:58 41:-9 42:-48 44:-57 45:-24 47:31 49:-33 50:56 51:41 52:-8 53:45 54:55 55:-18 57:13 58:-11 59:46 60:-9 61:15 63:-15 64:-9 65:-38 66:16 67:-21 68:-99 69:46 70:30 71:-25 72:24 73:-41 74:-23 75:31 76:-41 77:-19 78:18 79:52 80:49 82:-21 84:-15 85:-21 86:45 88:17 90:20 91:-10 92:-11 93:20 95:43 96:44 98:32 99:121 100:29 101:17 102:-29 103:-21 104:65 105:73 107:-43 109:41 110:-24 112:-30 114:46 115:-42 116:-15 118:-26 119:24 120:12 121:55 125:-16 126:73
ther a	0:64 1:29 3:-27 4:26 8:8 11:40 12:37 14:-12 23:-14 27:10 36:53 37:-15 91:-13 95:-11 107:-8 126:-31
a piec	0:82 22:-12 36:20 37:-10 38:-13 56:24 69:16 126:-43
someth for	0:78 4:-9 40:18 73:-15
find==	0:17 1:25 2:11 4:-12 15:10 33:32 36:21 38:14 40:-22 65:-8 70:-10 78:60 90:-11 92:46 126:-35
me==	0:52 1:-16 2:21 3:36 4:57 5:14 6:29 7:11 8:55 9:18 10:37 12:51 13:79 14:41 15:25 16:38 17:17 18:-14 19:14 21:36 23:10 24:33 25:14 26:18 30:37 31:-25 32:18 33:43 34:81 35:22 36:43 37:-28 38:-26 39:-16 40:15 43:-40 45:-12 46:-16 47:-9 48:-31 49:-19 50:-9 51:-18 52:40 53:-23 54:-26 56:-29 58:-13 63:-20 64:-16 65:64 66:-18 67:11 68:-18 69:8 70:-22 71:21 73:-19 75:-14 76:-35 77:-13 78:-8 79:-18 80:-13 81:-14 82:-45 83:-14 84:-22 85:-30 87:-27 88:-18 91:-13 92:-18 93:-11 94:-16 96:-14 97:20 98:-9 99:-23 100:-29 101:-22 102:-34 103:-14 104:-30 105:-15 106:63 107:-25 109:-16 110:-15 111:91 112:20 113:-16 114:-12 115:-21 118:-28 120:-22 121:-16 123:-29 124:-17 125:23 126:36
find	0:17 1:26 2:11 4:-13 15:10 33:32 36:21 38:14 40:-22 65:-8 70:-10 78:60 90:-11 92:46 126:-35
^ find	0:40 1:13
me	0:52 1:-16 2:21 3:36 4:57 5:14 6:29 7:11 8:55 9:18 10:37 12:51 13:79 14:41 15:25 16:38 17:17 18:-14 19:14 21:36 23:10 24:33 25:14 26:18 30:37 31:-25 32:18 33:43 34:81 35:22 36:43 37:-28 38:-26 39:-16 40:15 43:-40 45:-12 46:-16 47:-9 48:-31 49:-19 50:-9 51:-18 52:40 53:-23 54:-26 56:-29 58:-13 63:-20 64:-16 65:64 66:-18 67:11 68:-18 69:8 70:-22 71:21 73:-19 75:-14 76:-35 77:-13 78:-8 79:-18 80:-13 81:-14 82:-45 83:-14 84:-22 85:-30 87:-27 88:-18 91:-13 92:-18 93:-11 94:-16 96:-14 97:20 98:-9 99:-23 100:-29 101:-22 102:-34 103:-14 104:-30 105:-15 106:63 107:-25 109:-16 110:-15 111:91 112:20 113:-16 114:-12 115:-21 118:-28 120:-22 121:-16 123:-29 124:-17 125:23 126:36
)~",
R"~(find me	0:32
me an	10:15 12:18 26:25 36:-9
find an	0:8
me a	0:46 1:-12 17:14 19:-10 36:-15 74:17 126:22
of job	0:21 1:-30 2:51 3:46 4:47 5:-57 6:36 11:34 12:-19 13:27 14:15 15:-45 16:24 17:36 18:-8 24:-21 25:-24 28:28 29:-8 30:13 31:-27 34:23 36:-9 39:-13 40:-17 41:-11 42:13 43:22 44:9 45:48 46:44 48:-18 49:-27 51:-8 55:-8 56:-8 65:-33 66:-33 67:-10 71:26 72:46 73:66 74:-17 75:-20 76:-17 77:13 78:39 79:59 80:-9 81:-8 82:-47 83:-38 84:9 85:45 88:51 90:21 91:16 93:10 94:-10 95:40 96:15 97:10 98:19 99:-9 100:-16 102:-9 103:-9 105:-14 106:-17 108:31 109:46 112:-9 114:-28 116:24 118:-15 121:-8 122:-9 126:19
of the	0:29 1:-14 2:14 3:24 5:-41 6:-11 7:18 9:-29 11:-9 13:-21 15:-32 16:-10 19:-9 20:31 21:27 22:14 23:-12 24:22 25:26 26:63 28:55 31:-21 32:-29 33:-20 36:-12 37:50 38:-31 39:-27 40:13 41:-35 42:28 43:-15 44:13 45:-13 47:-12 48:-30 49:29 51:20 55:14 56:15 59:19 61:-17 62:13 63:12 64:-13 65:-26 66:-30 67:23 68:-16 69:27 70:-8 71:14 72:8 73:-14 74:14 75:22 77:-18 78:27 79:-11 80:-13 81:37 82:20 83:84 84:-22 86:29 87:-28 88:20 89:15 91:10 93:18 94:23 95:-16 97:47 98:23 99:-35 100:-9 101:27 103:51 106:-21 107:39 108:-20 109:-16 110:-15 111:-24 114:-23 115:20 116:-14 117:36 118:15 119:-16 120:-25 122:-11 126:-44
make==s	0:60 1:-15 11:8 51:-8 66:15 68:-9 69:22 100:14 111:13
what offcut	0:8 1:-9 5:29
make	0:92 1:-9 2:14 3:25 4:-14 7:31 8:-8 10:19 12:-20 13:14 14:-12 15:-10 16:-12 17:-21 24:-12 25:-9 27:-9 28:-8 29:-8 30:18 32:-8 34:-24 36:-8 37:46 39:-12 40:-14 41:-18 44:-9 46:-17 48:-9 49:-9 50:8 51:-24 52:29 53:9 55:15 56:42 58:-12 59:34 62:35 64:-14 65:12 66:30 67:13 68:-12 69:21 70:31 71:-25 72:-9 73:-8 78:-20 79:61 82:-13 86:-12 89:-21 90:-15 91:-8 93:-14 94:-9 96:-9 98:-11 100:47 102:-17 104:9 105:30 106:-9 107:-10 108:9 109:-10 114:16 115:20 116:20 122:-9 125:24 126:-33
offcut make	0:17
make #d	0:46 1:-10
in $	0:15 1:-10 3:-33 7:18 11:-17 12:23 14:-11 19:43 20:-8 21:-10 22:-16 23:-11 24:-14 26:-18 29:64 30:-14 32:11 33:-16 36:9 37:71 38:-11 42:22 43:26 46:18 50:-8 51:-12 52:38 54:36 62:-21 63:58 64:-17 67:-10 73:-13 75:8 79:8 80:25 81:19 82:-8 86:20 88:19 90:-8 93:-14 96:32 100:13 110:15 111:-16 112:-10 113:-10 118:14 119:-10 126:-80
mm of	0:33 1:-19 5:-9 8:-16 22:-8 25:11 40:49 41:8 52:-14 67:28 68:-21 69:52 70:-10 71:19 82:-22 89:-13 93:11 126:55
of @wire	1:79 2:-22 3:-21 4:-16 6:-19 8:56 9:15 10:-20 11:-9 12:-9 13:-8 16:-11 17:-9 18:-29 19:50 20:25 21:-19 22:-31 24:38 25:-23 28:-10 32:50 33:-51 34:-12 36:-8 37:16 38:46 39:80 40:40 41:69 42:-11 43:-14 50:-22 51:47 56:-12 61:-11 64:-9 67:18 68:34 69:75 71:24 72:-33 73:-46 75:-15 79:-11 80:24 81:32 82:-28 83:-10 85:-8 88:-8 89:13 92:-12 93:-11 98:-12 99:-19 100:-8 105:-8 117:82 118:-27 119:8 120:52 121:-12 122:-16 126:104
&#n@wire	0:77 2:-9 4:-14 5:-36 6:-25 8:-34 9:-18 10:-9 13:-11 16:-10 17:-12 18:128 21:-21 22:-28 24:-33 25:-18 28:-8 31:-12 33:27 34:-25 37:-18 38:-26 39:21 40:40 41:-34 44:-12 46:-10 47:-22 50:15 51:96 52:134 56:-13 67:118 68:82 69:19 70:77 72:-10 73:19 76:-21 78:-8 80:158 82:-13 86:21 89:53 90:-13 91:-8 92:-14 93:-8 94:-9 98:-16 99:-26 100:-14 105:-16 106:-10 107:-8 108:-8 114:-8 117:36 119:8 122:-18 126:-65
@wire $	0:78 1:32 3:-8 5:-37 6:108 7:67 8:62 9:42 10:-10 12:-14 13:-10 14:-13 15:-11 17:-9 18:-32 19:53 21:-13 22:97 24:27 25:-15 27:-13 29:-10 30:-9 32:57 33:132 36:-8 37:31 38:-14 39:36 40:-25 41:58 51:16 52:-45 56:-8 67:62 68:-49 70:-38 72:35 73:14 75:-19 77:-10 80:-43 82:-11 83:-45 86:-9 89:-61 98:-8 117:47 118:-64 119:-39 120:19
which make	0:17
#d $	0:17 1:19 2:-25 3:-33 4:-10 13:-12 15:-13 16:-13 17:-16 18:-16 19:-8 24:8 27:-13 30:-11 31:-9 32:-8 33:-8 37:28 38:-13 39:20 40:105 41:-20 42:114 43:89 45:-8 50:-10 51:54 52:25 56:56 65:-8 66:-11 67:-26 68:24 69:-24 70:23 71:13 72:-16 75:22 76:17 77:20 78:-13 79:43 81:32 82:-41 83:-27 85:-9 88:13 89:43 90:-10 98:-18 99:-10 117:39 120:-9 121:-12 122:10 126:-11
fit #d	0:19
#d of	0:-15 1:70 3:-12 7:-8 8:-23 9:-12 18:-30 19:-14 22:-10 24:32 34:18 37:52 38:68 39:81 41:91 42:-15 43:17 51:-13 52:-15 67:17 68:-14 69:-10 70:25 71:19 72:-11 81:-16 82:-51 83:-27 89:-45
&#d@wire	0:178 1:89 2:-18 3:-27 5:-9 6:-8 7:-8 8:-56 9:-49 18:-36 19:-45 20:-29 21:-15 22:-43 25:-13 32:-27 33:-16 34:10 37:-16 38:-19 39:51 40:15 41:110 42:-11 50:-19 52:91 56:-21 67:112 68:53 69:-40 70:-14 73:-32 77:-11 80:-24 81:18 82:73 83:-21 89:132 93:-19 118:17 119:-11 120:-10 126:19
make #n	68:-9 69:23 83:8 100:15 115:32
mm $	0:14 1:-23 3:-34 7:54 8:-11 9:-8 16:-26 37:-16 39:-10 40:-8 41:-13 42:73 43:70 45:-8 47:-20 51:31 52:60 56:73 67:14 69:-26 70:8 72:-15 73:-12 77:34 78:-16 79:26 80:-25 81:68 83:-14 86:29 88:64 89:35 90:-8 92:-8 93:-31 94:-8 118:15 122:12 126:-41
piec make	0:15
in of	0:8 40:12 51:14 67:10 68:-9 69:18
for #d	0:58 1:-13 40:-15 51:44 69:9 117:18 126:-8
ther for	0:31 7:9 21:13 24:-8
for #n	0:42 1:75 3:-21 6:-10 10:34 11:-12 17:-18 18:-8 22:91 24:-38 27:-14 29:-8 30:17 31:12 34:-9 36:14 37:-24 38:-43 48:27 51:20 52:-8 65:10 67:-26 68:-8 71:11 72:21 73:-19 79:-12 80:-9 82:-11 83:19 85:-9 86:9 90:-9 92:34 94:-12 98:10 99:13 102:-15 105:20 106:52 109:-10 112:-11 113:10 115:28 116:10 117:75 119:-22 122:-8 126:-37
have==	0:9 1:14 3:-11 5:-40 7:16 8:34 9:10 11:50 12:51 13:-18 14:81 16:-46 17:-27 18:-36 19:38 20:-21 21:47 22:28 23:-25 24:39 25:-10 26:40 27:83 28:-33 29:-48 30:10 31:24 32:47 34:49 35:15 36:-50 37:-16 39:30 40:-11 41:-24 42:-11 43:-27 44:10 45:-56 46:20 47:-19 48:9 49:-24 51:9 53:-14 54:-10 55:-9 60:-18 61:-19 62:-13 63:-10 64:10 65:47 66:-19 67:11 68:-10 69:-9 70:23 71:-12 72:9 73:-31 74:-9 75:44 76:-23 77:-10 78:-13 81:14 82:14 83:-21 84:-8 85:-17 86:9 90:12 91:8 92:-10 93:-10 95:-13 96:12 97:-10 99:38 100:33 101:73 102:10 103:-9 105:-12 106:48 107:-14 108:-27 109:24 110:-9 112:-21 113:-17 117:-19 118:-26 121:-18 123:-9 125:12 126:36
we==	0:61 1:-19 2:29 4:-58 5:16 6:42 7:11 8:68 9:48 10:37 11:43 12:12 14:-18 16:11 17:-12 19:41 20:-25 21:50 22:18 24:23 25:-15 26:20 27:-48 28:-15 29:50 30:31 31:47 32:23 33:32 34:-9 35:-10 36:-20 37:-41 38:-39 40:-28 41:23 42:23 43:-23 44:-29 45:-11 46:-13 47:-9 49:27 51:13 52:21 53:40 54:45 55:33 56:-15 59:9 61:9 62:-18 64:8 65:-19 66:-27 68:-42 71:-24 72:-12 73:-25 75:-24 76:-20 77:-16 78:24 81:-8 82:-37 83:18 84:-44 85:-32 87:28 88:-29 89:-23 90:-32 91:-12 92:-28 93:-13 94:-29 95:-16 96:-20 97:-17 98:-27 99:29 100:21 101:53 104:10 106:34 107:20 108:41 111:-18 112:-51 113:57 114:-21 115:-21 116:17 117:-12 118:44 120:38 121:68 122:-24 123:27 125:-27 126:52
around==	0:37 1:-8 2:35 4:-8 8:24 9:-8 16:-12 17:-8 28:-8 29:20 30:-9 34:32 56:8 82:26 90:48 111:-11 126:-13
have	0:9 1:14 3:-11 5:-40 7:16 8:34 9:10 11:50 12:51 13:-18 14:81 16:-46 17:-27 18:-36 19:38 20:-21 21:47 22:28 23:-25 24:39 25:-10 26:40 27:83 28:-33 29:-48 30:10 31:24 32:47 34:49 35:15 36:-50 37:-16 39:30 40:-11 41:-24 42:-11 43:-27 44:10 45:-56 46:20 47:-19 48:9 49:-24 51:9 53:-14 54:-10 55:-9 60:-18 61:-19 62:-13 63:-10 64:10 65:47 66:-19 67:11 68:-10 69:-9 70:23 71:-12 72:9 73:-31 74:-9 75:44 76:-23 77:-10 78:-13 81:14 82:14 83:-21 84:-8 85:-17 86:9 90:12 91:8 92:-10 93:-10 95:-13 96:12 97:-10 99:38 100:33 101:73 102:10 103:-9 105:-12 106:48 107:-14 108:-27 109:24 110:-9 112:-21 113:-17 117:-19 118:-26 121:-18 123:-9 125:12 126:36
^ have	0:19 6:17 7:-8 8:-34 9:-20 19:-19 21:-9 22:20 26:26 30:8 32:38 33:-9 34:89 45:-28 95:-14 100:-13 109:27 115:14 116:8 120:-13 126:52
we	0:61 1:-19 2:29 4:-58 5:16 6:42 7:11 8:68 9:48 10:37 11:43 12:12 14:-18 16:11 17:-12 19:41 20:-25 21:50 22:18 24:23 25:-15 26:20 27:-48 28:-15 29:50 30:31 31:47 32:23 33:32 34:-9 35:-10 36:-20 37:-41 38:-39 40:-28 41:23 42:23 43:-23 44:-29 45:-11 46:-13 47:-9 49:27 51:13 52:21 53:40 54:45 55:33 56:-15 59:9 61:9 62:-18 64:8 65:-19 66:-27 68:-42 71:-24 72:-12 73:-25 75:-24 76:-20 77:-16 78:24 81:-8 82:-37 83:18 84:-44 85:-32 87:28 88:-29 89:-23 90:-32 91:-12 92:-28 93:-13 94:-29 95:-16 96:-20 97:-17 98:-27 99:29 100:21 101:53 104:10 106:34 107:20 108:41 111:-18 112:-51 113:57 114:-21 115:-21 116:17 117:-12 118:44 120:38 121:68 122:-24 123:27 125:-27 126:52
have we	0:31 4:-20 7:-19 8:42 9:21 10:-16 11:17 12:30 13:27 14:-20 16:-10 19:42 21:28 24:22 26:38 27:-8 28:-29 30:-10 31:-11 32:41 34:42 45:-28 99:-8 100:-15 120:-13 126:23
)~",
R"~(around	0:37 1:-8 2:35 4:-8 8:24 9:-8 16:-12 17:-8 28:-8 29:20 30:-9 34:32 56:8 82:26 90:48 111:-11 126:-13
someth around	0:27
around #d	0:15 82:22
like==	4:-11 5:-11 6:11 7:25 9:8 12:22 13:65 14:20 17:-10 19:8 26:11 27:9 29:-8 31:19 33:-8 37:-11 38:32 46:14 47:-10 53:-12 54:-11 55:-9 56:31 57:9 62:-37 63:-8 64:8 65:-15 72:-8 73:-14 74:17 75:28 79:-11 82:17 84:28 85:-8 88:-10 98:8 99:10 100:12 102:-9 104:16 106:37 108:-17 109:-15 110:-58 111:-14 112:-9 123:-15 125:18 126:58
^ do	1:-10 3:-17 4:-11 5:-17 8:19 9:36 10:-25 11:-21 13:-11 14:-9 15:-11 16:-8 20:32 22:29 23:91 24:-13 25:21 26:-20 29:54 30:28 32:16 33:46 34:-8 36:-13 37:-8 38:31 39:24 40:-13 41:-29 49:-15 52:13 54:-20 55:-14 57:-9 58:32 61:-71 65:19 66:-10 67:-9 71:-13 82:-8 85:26 87:-9 88:14 95:-10 101:-16 107:-24 109:-26 112:-19 113:36 114:35 115:63 118:-13 120:-38 121:-8 122:-9 123:-16 126:163
do we	0:30 2:9 3:-9 4:16 5:-16 6:35 7:35 8:79 9:33 10:54 11:26 12:13 13:-16 14:11 16:14 17:-19 18:11 19:-9 20:-11 21:-20 22:37 23:25 25:-9 26:79 28:46 29:27 30:-11 31:-21 32:-20 33:58 34:-36 36:-24 52:-10 55:-13 67:-8 87:-8 116:-8 118:-13 120:-12 123:-15 126:-100
we have	0:23 1:10 3:-9 4:18 5:-25 8:69 9:-41 10:14 11:14 12:22 14:11 18:-9 19:-19 20:-9 21:12 22:24 24:-16 26:30 27:-9 28:-15 29:-10 30:9 31:-22 34:-31 37:-9 39:-13 40:-11 41:-10 51:-28 52:11 64:12 67:74 70:20 71:-15 72:10 79:9 83:11 86:14 87:-10 99:53 100:52 102:20 103:9 105:-8 106:36 109:17 119:-9 121:-9 126:-86
have someth	0:21 32:18 126:-18
like	4:-11 5:-11 6:11 7:25 9:8 12:22 13:65 14:20 17:-10 19:8 26:11 27:9 29:-8 31:19 33:-8 37:-11 38:32 46:14 47:-10 53:-12 54:-11 55:-9 56:31 57:9 62:-37 63:-8 64:8 65:-15 72:-8 73:-14 74:17 75:28 79:-11 82:17 84:28 85:-8 88:-10 98:8 99:10 100:12 102:-9 104:16 106:37 108:-17 109:-15 110:-58 111:-14 112:-9 123:-15 125:18 126:58
someth like	0:13
like #d	0:8
about==	0:29 1:-16 2:42 3:21 4:-26 5:-15 8:8 9:19 10:25 11:-21 12:-10 13:79 14:-8 16:-29 17:74 20:-9 21:-8 22:23 23:21 24:-21 26:54 28:-15 29:-18 30:-26 31:-11 32:-21 33:33 34:18 36:31 37:-16 38:-9 39:-9 40:-20 41:-12 42:-40 43:-11 44:-15 45:8 46:-12 49:-19 52:35 54:-19 56:-11 63:-8 64:11 66:-8 76:-14 78:-10 80:48 81:-10 82:-8 90:76 94:-28 102:-8 103:-13 107:-20 108:-13 109:-12 113:18 115:-8 119:-16 120:9 125:-8 126:82
we me	0:18
me someth	0:36 30:14
about	0:29 1:-16 2:42 3:21 4:-26 5:-15 8:8 9:19 10:25 11:-21 12:-10 13:79 14:-8 16:-29 17:74 20:-9 21:-8 22:23 23:21 24:-21 26:54 28:-15 29:-18 30:-26 31:-11 32:-21 33:33 34:18 36:31 37:-16 38:-9 39:-9 40:-20 41:-12 42:-40 43:-11 44:-15 45:8 46:-12 49:-19 52:35 54:-19 56:-11 63:-8 64:11 66:-8 76:-14 78:-10 80:48 81:-10 82:-8 90:76 94:-28 102:-8 103:-13 107:-20 108:-13 109:-12 113:18 115:-8 119:-16 120:9 125:-8 126:82
someth about	0:8 17:14 34:12
about #d	0:18 42:-31 126:48
like #n	44:-8 126:25
ther someth	10:24 24:24 126:-9
around #n	0:12 90:18
could==	0:38 1:106 2:15 3:52 4:-15 5:21 7:28 8:-8 9:-13 10:16 11:-22 14:-13 15:61 16:-24 17:-20 18:24 19:-8 21:-16 22:47 23:-9 24:-16 25:27 29:-26 30:-11 31:138 32:-16 33:16 34:-34 37:-54 38:9 40:-17 41:17 42:-9 43:-9 44:-9 45:-17 46:-11 48:9 49:-9 51:-10 53:-8 54:-21 60:-8 64:28 65:-13 66:-8 68:-8 70:-11 71:-38 74:-16 75:-11 76:-10 77:-11 78:-18 79:8 80:-10 82:-15 89:9 90:-12 92:62 94:8 96:-9 100:-13 101:14 102:-13 103:-11 104:-8 105:-24 106:-13 108:-10 111:-9 112:-8 115:-13 117:14 121:-14 123:-9 126:78
could	0:38 1:106 2:15 3:52 4:-15 5:21 7:28 8:-8 9:-13 10:16 11:-22 14:-13 15:61 16:-24 17:-20 18:24 19:-8 21:-16 22:47 23:-9 24:-16 25:27 29:-26 30:-11 31:138 32:-16 33:16 34:-34 37:-54 38:9 40:-17 41:17 42:-9 43:-9 44:-9 45:-17 46:-11 48:9 49:-9 51:-10 53:-8 54:-21 60:-8 64:28 65:-13 66:-8 68:-8 70:-11 71:-38 74:-16 75:-11 76:-10 77:-11 78:-18 79:8 80:-10 82:-15 89:9 90:-12 92:62 94:8 96:-9 100:-13 101:14 102:-13 103:-11 104:-8 105:-24 106:-13 108:-10 111:-9 112:-8 115:-13 117:14 121:-14 123:-9 126:78
piec could	0:10
could we	1:9 5:10 18:14 22:36 31:42 116:13 126:-27
we use	1:8 2:-8 5:28 8:-17 9:15 18:13 20:16 21:-13 22:-8 24:-9 26:23 34:61 37:-12 68:-10 126:-14
use on	0:9 5:33
on slot	0:18 1:-8 3:11 42:-11 83:-18 126:21
#r of	1:-10 2:-39 3:-8 4:-23 5:-19 13:-10 16:57 28:-12 34:-8 37:16 42:21 43:13 44:-18 45:30 46:37 48:-12 72:-10 74:-11 76:31 77:-8 78:12 79:22 88:-8 90:38 91:16 96:10 97:18 108:-10 115:-10 126:40
may==	0:-14 1:27 2:42 4:14 12:-14 14:12 15:-12 17:9 18:-8 25:9 28:-9 29:-8 31:28 32:-9 33:-12 36:13 38:-14 39:25 40:-9 44:8 45:-18 48:-12 49:-12 56:11 57:-21 59:30 62:39 63:-11 64:-8 65:-15 66:20 77:-20 85:10 88:12 92:-30 100:-9 102:-8 103:11 107:25 108:-8 110:-14 111:8 112:-11 121:13 126:85
take==	0:10 1:41 2:-11 3:-18 4:-27 6:38 7:-8 8:-33 9:-43 10:-11 11:-28 12:-15 13:-23 14:-16 15:-17 20:-12 21:-12 22:-23 24:16 25:-25 27:-13 28:64 29:-20 30:-24 31:15 32:-13 33:44 34:-18 36:-16 37:111 38:-39 39:11 40:-12 41:-10 43:-8 44:-10 45:-26 48:31 49:25 50:-8 51:11 53:-13 54:-32 56:-11 58:62 59:-9 60:-28 61:62 63:32 65:12 66:97 67:-14 68:-19 71:-19 72:-11 74:13 75:-9 76:-10 79:-9 82:-17 83:34 85:-13 87:15 88:-19 92:-10 95:-8 96:-8 99:-15 100:-33 101:59 102:27 103:-9 104:-15 105:23 106:13 107:23 108:-15 109:-29 112:-11 113:51 114:-11 117:-19 118:-18 120:23 121:14 123:51 125:42 126:12
may	0:-14 1:27 2:42 4:14 8:-9 12:-15 14:11 15:-13 17:9 18:-8 20:30 25:9 28:-10 29:-9 31:28 32:-9 33:-12 36:12 38:-14 39:25 40:-9 44:8 45:-18 48:-12 49:-12 56:11 57:-21 59:30 62:39 63:-11 64:-8 65:-15 66:20 77:-20 85:10 88:12 92:-31 100:-9 102:-8 103:11 107:23 108:-8 110:-14 112:-12 121:13 126:82
may we	30:11
take	1:60 2:-18 3:-21 6:32 7:-10 8:-36 9:-47 10:-17 11:-31 12:-20 13:-29 14:-21 15:-21 19:-8 20:-15 21:-15 22:-19 23:-9 24:11 25:-28 27:-17 28:57 29:-27 30:-31 31:9 32:-18 33:16 34:-36 37:99 38:-49 39:25 40:-15 41:-13 42:-16 44:-21 45:-31 46:-17 48:29 49:19 50:-11 51:8 53:-12 54:-36 55:-10 56:-23 58:55 59:-17 60:-30 61:52 63:23 65:63 66:80 67:-17 68:-20 71:-21 72:-13 74:21 75:-11 76:-12 83:33 84:100 85:-18 87:12 88:-22 90:-8 91:-8 92:-16 95:-9 96:-13 98:-10 99:13 100:20 101:53 102:21 103:-15 104:32 105:136 106:15 107:18 108:-23 109:-36 110:-15 111:29 112:-18 113:35 114:-17 117:-20 118:-22 120:19 121:15 122:60 123:42 125:31 126:20
we take	1:13 6:12 16:10 19:8 28:13 106:19 126:-10
take for	0:72 1:-8 5:-9 18:-10 28:9 38:-16 84:29 126:-11
can==	0:37 1:34 2:59 3:69 4:-16 5:43 6:22 7:12 8:-27 9:-9 11:-28 12:-10 13:-25 14:-21 15:-16 17:18 18:23 19:-20 20:-9 21:-21 22:23 23:25 25:-18 26:23 27:-31 28:-23 30:28 31:117 32:-40 33:50 34:-36 36:76 37:-18 38:-25 39:28 40:-14 41:-45 42:-19 43:-21 44:37 45:-21 46:-18 48:-21 49:-9 50:-9 54:8 55:-16 56:-11 58:48 59:-11 62:9 64:-13 65:-27 66:44 67:-12 68:-23 70:-12 71:-8 72:-15 74:-13 76:-12 77:-10 78:30 79:-15 82:22 83:-8 84:-14 87:21 88:-9 89:-19 91:20 93:-19 96:-15 97:-10 98:-14 99:23 101:-12 102:46 103:35 104:-12 105:-11 107:55 108:-16 111:14 112:-10 113:-15 114:71 115:-41 116:-10 118:-26 121:37 123:46 125:-41
can	0:37 1:34 2:59 3:69 4:-16 5:43 6:22 7:12 8:-27 9:-9 11:-28 12:-10 13:-25 14:-21 15:-16 17:18 18:23 19:-20 20:-9 21:-21 22:23 23:25 25:-18 26:23 27:-31 28:-23 30:28 31:117 32:-40 33:50 34:-36 36:76 37:-18 38:-25 39:28 40:-14 41:-45 42:-19 43:-21 44:37 45:-21 46:-18 48:-21 49:-9 50:-9 54:8 55:-16 56:-11 58:48 59:-11 62:9 64:-13 65:-27 66:44 67:-12 68:-23 70:-12 71:-8 72:-15 74:-13 76:-12 77:-10 78:30 79:-15 82:22 83:-8 84:-14 87:21 88:-9 89:-19 91:20 93:-19 96:-15 97:-10 98:-14 99:23 101:-12 102:46 103:35 104:-12 105:-11 107:55 108:-16 111:14 112:-10 113:-15 114:71 115:-41 116:-10 118:-26 121:37 123:46 125:-41
can we	0:-11 1:23 2:-8 3:34 4:-15 5:22 6:8 8:-23 9:19 12:-9 22:10 31:82 36:47 48:-10 90:-10 126:-30
use for	1:47 5:29 22:-10 37:-8 74:10 84:15 107:13 126:-17
should==	0:15 1:15 2:36 3:-15 4:60 5:22 6:33 7:33 8:-15 9:40 10:49 12:-13 16:-14 17:37 18:58 19:-16 20:-17 21:-14 22:88 23:56 24:-13 25:-11 26:-15 27:-13 28:16 29:-11 30:43 31:-12 33:-18 34:-35 36:-27 37:-14 39:-28 41:-32 42:-37 44:-11 46:-14 48:12 53:-9 54:-9 56:16 57:12 58:17 61:8 67:-21 70:74 71:-9 72:-17 74:-8 75:-9 76:-20 78:-13 81:-12 82:-9 90:-14 96:-36 98:12 99:18 100:-21 101:-12 102:-8 103:-10 104:14 105:36 106:-31 107:19 108:-31 109:-9 115:-8 116:-18 118:-17 125:16 126:103
)~",
R"~(should	0:15 1:15 2:36 3:-15 4:60 5:22 6:33 7:33 8:-15 9:40 10:49 12:-13 16:-14 17:37 18:58 19:-16 20:-17 21:-14 22:88 23:56 24:-13 25:-11 26:-15 27:-13 28:16 29:-11 30:43 31:-12 33:-18 34:-35 36:-27 37:-14 39:-28 41:-32 42:-37 44:-11 46:-14 48:12 53:-9 54:-9 56:16 57:12 58:17 61:8 67:-21 70:74 71:-9 72:-17 74:-8 75:-9 76:-20 78:-13 81:-12 82:-9 90:-14 96:-36 98:12 99:18 100:-21 101:-12 102:-8 103:-10 104:14 105:36 106:-31 107:19 108:-31 109:-9 115:-8 116:-18 118:-17 125:16 126:103
should we	6:19 9:21 17:22 30:-9 32:-12
take on	28:22 29:-8 31:33 67:10
fret could	1:8 5:13
could i	0:35 3:55 5:14 7:13 12:13 18:14 22:16 27:20 30:-8 31:24 32:-12 33:35 34:-16 36:17 37:-30 107:-11 126:-71
one==s	0:39 1:8 2:33 3:-9 4:-10 5:-18 7:12 8:19 9:-20 12:71 13:-11 14:22 16:12 17:34 19:-9 22:65 24:13 26:-8 30:-9 32:82 33:-16 34:-9 36:-9 37:-22 40:-13 41:-36 42:-21 43:-22 44:-17 46:-10 53:-10 64:-8 65:10 67:-10 73:40 76:36 78:9 79:-10 80:12 82:56 83:68 93:28 110:-25 112:15 113:-16 117:-13 125:-8 126:-38
one	0:37 2:33 4:-13 5:-18 7:11 8:19 9:-21 12:70 13:-12 14:21 16:12 17:34 19:-9 22:64 24:12 26:-10 27:-8 30:-11 32:80 33:-18 34:-9 36:-10 37:-23 39:29 40:-14 41:-38 42:-21 43:-26 44:-18 46:-11 53:-10 56:-8 64:-10 65:10 67:-10 73:35 76:34 78:8 80:12 82:55 83:67 93:23 110:-25 112:15 113:-16 117:-13 125:23 126:-47
one could	22:21 126:-13
the==	0:18 1:-52 2:15 3:-24 4:56 5:59 6:-24 7:38 8:39 9:29 10:21 11:8 12:33 13:62 14:35 16:16 17:38 18:36 19:26 20:39 21:12 22:8 23:53 24:-47 25:-13 27:10 30:-8 33:-21 34:9 35:-19 37:28 39:43 40:-42 41:19 42:41 43:-29 44:33 45:20 46:-8 47:-15 49:50 50:10 51:-93 52:-30 55:12 56:35 58:60 60:22 61:37 62:13 63:15 64:8 65:30 66:14 67:-14 68:49 69:-37 70:34 72:16 73:18 75:57 76:-45 77:33 78:36 79:12 81:30 82:52 83:31 84:34 85:22 86:29 87:45 88:13 89:33 91:21 94:30 96:-29 97:15 98:-9 99:26 100:40 101:72 102:18 103:31 104:65 105:18 106:-11 107:28 108:26 109:37 110:-24 111:-12 112:-12 113:14 114:-14 115:34 116:9 117:-70 118:54 119:12 120:47 122:31 123:17 126:103
tin==	0:111 1:10 2:121 3:-30 4:-49 5:115 6:-17 7:66 8:87 9:-28 10:-25 11:-21 12:-30 13:-24 14:-28 16:-26 17:-20 18:-20 19:-21 20:-24 21:124 22:161 23:-28 24:40 25:-12 26:-28 27:-17 28:-22 29:-11 30:-30 31:-14 32:-20 33:-17 34:12 36:-16 39:10 40:151 41:8 42:-18 43:15 44:-22 45:-19 46:-15 47:-9 48:-10 49:-9 51:-25 52:-12 54:-11 56:67 58:-15 59:-10 63:-13 66:-8 67:-18 68:-10 69:-11 71:-30 73:128 74:-11 75:-9 76:66 78:-26 79:29 80:86 81:-22 82:40 83:13 84:21 85:-16 87:-8 88:-9 89:-17 90:-17 91:-8 92:-18 93:-11 94:-10 96:-23 97:-10 98:-12 99:-16 100:-17 101:-14 102:-10 103:-9 104:-11 105:-12 106:-11 107:-10 108:-8 109:-18 114:-8 117:-9 118:-17 119:-10 120:-8 122:-8 123:26 125:-15
would==	0:93 1:95 2:24 3:60 4:-11 5:87 6:-9 7:17 9:20 10:19 12:11 14:-12 16:38 17:-13 18:47 19:25 20:-9 21:16 22:-14 24:-17 26:17 27:12 28:16 30:-10 31:75 32:-21 34:-15 36:27 37:-27 38:-12 39:26 40:-19 42:-24 43:-36 44:-13 45:-35 46:-17 48:-25 50:8 51:-11 52:-9 53:-24 55:-23 56:15 59:10 62:-24 63:-10 64:23 65:11 66:-14 69:-10 71:-37 73:-29 74:-17 75:-21 76:-16 78:-12 82:-12 83:-59 86:8 87:-18 92:-18 93:-25 94:-34 95:9 99:-17 100:-11 101:9 104:-12 107:17 109:-12 110:-39 111:-19 113:25 117:-12 118:-9 121:-16 125:-10 126:157
tin	0:107 1:10 2:121 3:-34 4:-49 5:115 6:-17 7:66 8:87 9:-28 10:-25 11:-21 12:-30 13:-24 14:-28 16:-26 17:-20 18:-20 19:-21 20:-24 21:124 22:161 23:-28 24:40 25:-12 26:-28 27:-17 28:-22 29:-11 30:-30 31:-14 32:-20 33:-17 34:12 36:-16 39:10 40:151 41:8 42:-22 43:13 44:-22 45:-19 46:-15 47:-9 48:-10 49:-9 51:-25 52:-12 54:-11 56:67 58:-15 59:-10 63:-13 66:-8 67:-18 68:-10 69:-11 71:-30 73:122 74:-11 75:-9 76:65 78:-26 79:53 80:86 81:-22 82:40 83:13 84:21 85:-16 87:-8 88:-9 89:-17 90:-17 91:-8 92:-20 93:-11 94:-10 96:-23 97:-10 98:-12 99:-16 100:-17 101:-14 102:-10 103:-9 104:-11 105:-12 106:-11 107:-10 108:-8 109:-18 114:-8 117:-9 118:-17 119:-10 120:-8 122:-8 123:26 125:-15
the tin	0:35 1:32 2:46 3:-24 4:-30 5:89 6:-11 7:61 8:26 9:-19 10:-24 11:-17 12:-24 13:-14 14:-22 16:-21 17:-13 18:-14 19:-13 20:-17 21:119 22:94 23:-23 24:60 25:-8 26:-21 27:-14 28:-17 29:-8 30:-25 31:-11 32:-13 33:-9 34:20 36:-10 39:9 40:90 41:19 42:-17 43:15 44:-15 45:-12 46:-10 51:-11 56:40 58:-12 63:-11 67:-8 71:-27 72:9 73:66 74:-8 75:-8 76:72 78:-23 79:39 80:53 81:-20 82:62 83:22 84:13 85:-12 89:-12 90:-12 92:-14 93:-9 94:-9 96:-16 97:-9 98:-9 99:-8 100:-14 101:-11 104:-9 105:-9 106:-9 107:-8 109:-13 118:-14 123:-10 125:-10
would	0:93 1:95 2:24 3:60 4:-11 5:87 6:-9 7:17 9:20 10:19 12:11 14:-12 16:38 17:-13 18:47 19:25 20:-9 21:16 22:-14 24:-17 26:17 27:12 28:16 30:-10 31:75 32:-21 34:-15 36:27 37:-27 38:-12 39:26 40:-19 42:-24 43:-36 44:-13 45:-35 46:-17 48:-25 50:8 51:-11 52:-9 53:-24 55:-23 56:15 59:10 62:-24 63:-10 64:23 65:11 66:-14 69:-10 71:-37 73:-29 74:-17 75:-21 76:-16 78:-12 82:-12 83:-59 86:8 87:-18 92:-18 93:-25 94:-34 95:9 99:-17 100:-11 101:9 104:-12 107:17 109:-12 110:-39 111:-19 113:25 117:-12 118:-9 121:-16 125:-10 126:157
tin would	5:-8 72:46 126:-21
would do	0:41 3:-9 5:34 16:-11 72:57 83:-66 126:33
do in	3:14 5:11 83:-22 126:15
offcut in	0:12 20:20 21:-12
do slot	0:27 4:8
work==	1:-22 2:48 4:-15 5:26 6:-17 7:13 8:-16 10:-15 11:-19 12:47 13:-10 14:-22 15:-18 16:-18 17:-17 20:-8 22:-10 23:-11 24:-17 25:-16 27:-13 28:71 29:46 30:49 32:-9 33:-9 34:-15 36:33 39:-28 41:-9 44:-20 45:-8 48:-17 53:-14 54:58 62:32 63:33 64:-11 66:41 81:-9 88:-8 99:32 100:46 101:-9 102:-13 104:-8 105:-14 106:-16 107:-9 108:52 109:88 110:-13 111:17 112:34 113:22 116:-8 125:-9 126:-15
piec would	0:20 126:-13
work	0:-16 1:-26 2:45 4:-23 5:22 6:-21 7:11 8:-33 10:-19 11:-31 12:41 13:-13 14:20 15:8 16:-28 17:-25 20:-12 21:-10 22:-14 23:-20 24:-25 25:-21 26:68 27:-34 28:65 29:139 30:49 31:-8 32:-22 33:-22 34:-33 36:46 37:-10 39:-32 41:-11 43:-9 44:-25 45:-11 46:-12 48:-24 54:39 55:11 56:-12 58:-12 59:53 61:-8 62:55 63:14 64:22 65:-8 66:35 81:-10 84:-8 85:-9 88:-11 90:-11 91:-8 92:-11 96:-13 98:-8 99:24 100:31 101:-15 102:15 103:37 104:-23 105:-19 106:-30 107:-26 108:41 109:84 110:64 111:-43 112:141 113:33 114:-9 115:-8 116:-15 118:-13 119:-13 121:15 122:-21 123:-10 125:-14 126:9
would work	5:9 126:10
fret in	0:-27 2:-8 3:26 4:17 13:38 17:-9 34:30 37:-19 40:16 42:53 43:-12 44:-18 76:-18 78:8 92:-12
do for	0:35 3:33 4:-13 5:12 10:-15 13:51 16:10 24:-9 28:17 30:-18 74:-11 83:-34 126:30
fret would	5:17
would fit	5:34
fit for	0:-11 5:19
have an	0:-11 1:12 9:-13 32:30 94:12
tin that	0:8 8:-8 22:26 80:19 82:8
that would	0:37 93:-11
ther anyth	11:8 13:-14 17:27 22:25 34:32
anyth in	0:36 22:31 73:-10
tin for	0:24 1:-13 2:8 5:19 7:-10 22:8 37:15 38:15 39:19 40:-19 41:13 73:-8 82:23
the slot	0:-22 1:-8 2:-14 3:13 4:46 6:-9 8:-8 13:-33 16:-18 17:-18 18:57 28:32 30:-9 34:-8 37:-15 44:57 45:-8 65:-9 71:-14 72:43 73:9 75:17 76:22 78:-36 79:-14 82:-9 83:15 88:-15 90:-11 92:90 93:-8 104:36 105:18 109:42 126:21
we anyth	8:-11 24:16 32:19
have anyth	0:16
anyth that	0:12 22:15
fret fret	3:-8 43:10 72:-11 76:22 79:12 92:12 93:-9 94:-13
for fret	0:40 3:-32 4:-12 12:34 16:29 17:26 23:-11 34:-20 37:47 38:-25 42:35 43:-11 72:13 78:-20 93:14 94:-11
plac==e	1:60 2:30 3:-11 13:34 14:44 16:15 17:-11 19:-10 26:11 45:13 46:-8 48:-22 53:-16 54:25 55:40 62:23 73:-10 76:15 80:12 99:21 100:-10 110:-13 113:-9 116:8 123:27 126:-58
plac	0:-8 1:61 2:28 3:-12 13:34 14:44 16:13 17:-12 19:-10 26:11 32:-8 39:9 40:-8 41:-14 45:12 46:-13 48:-22 51:-18 53:-17 54:24 55:40 62:22 67:-9 76:17 80:11 99:20 100:-10 110:-13 113:-9 117:50 118:-17 120:16 123:27 126:-60
^ plac	1:18 117:8
piec the	1:18 37:-9 70:-12
the #d	0:-52 1:38 2:-15 3:-32 7:-13 8:-8 9:-10 15:-8 16:-10 18:-41 19:-8 20:-8 24:55 37:152 38:131 39:106 40:-45 41:169 42:-52 43:-15 49:-8 51:-10 52:-12 56:-18 65:-11 67:-25 68:-22 69:-8 71:145 73:-10 75:-17 76:-11 77:-20 79:-11 81:-21 82:11 83:23 84:-11 85:-10 89:-40 93:-21 118:-9 122:12 126:36
mm piec	0:-11 40:31 82:10 86:-8 126:9
piece	0:82 1:59 2:15 3:-12 4:-53 5:37 6:31 8:112 9:-29 10:-17 11:-9 12:-17 13:-25 14:-14 15:-30 16:-17 17:-11 18:-13 19:-27 20:-20 21:19 22:98 24:115 26:-10 27:-18 28:-14 30:-21 31:-8 32:-13 33:-16 34:-24 36:-12 37:8 38:12 39:60 40:15 41:67 42:-16 43:-15 44:-14 45:-8 46:-12 47:-12 49:-8 51:9 56:-12 58:-9 66:-11 67:-19 69:-9 71:-24 72:-11 73:-8 76:-67 78:-10 79:-9 80:96 81:18 82:64 83:109 84:77 85:37 90:-12 91:-12 92:-24 96:-17 97:-11 98:-20 105:-8 109:-11 114:-11 115:-11 118:-9
)~",
R"~(piec piece	1:12 71:-9
piece #n	0:-29 1:88 4:-36 15:-18 24:40 30:-8 34:-8 37:26 38:21 39:72 41:86 72:-40 76:-64 80:-8 82:60 83:62 90:-9 91:-8 92:-19 96:-13 97:-9 98:-18 126:88
piec #d	1:-13 24:11 37:21 42:-8 43:-8 70:22 86:-11
@wire piec	1:13 38:23 39:9 86:-11 126:-11
number	1:47 2:-22 4:-24 5:-26 6:-8 7:-10 8:-12 10:-20 11:-16 12:-29 13:24 14:18 17:-30 18:-11 19:35 20:-12 21:-12 22:-27 24:26 25:36 26:-20 27:-13 28:-13 29:-10 30:-25 31:-19 32:-14 33:-17 34:-14 36:-14 37:60 38:37 39:56 40:-10 41:67 42:-22 43:8 46:35 47:-10 49:30 51:-11 53:-10 54:-13 55:-11 56:-27 58:16 59:21 60:32 61:11 62:-8 63:-10 65:38 66:21 67:-8 71:33 72:-13 73:-14 74:33 76:-32 78:28 80:-8 82:-10 83:25 84:12 85:13 86:-12 88:-15 92:-19 93:12 94:-14 96:11 97:-15 100:13 101:-17 102:78 103:75 105:-29 106:-17 107:36 108:10 109:-23 111:-13 112:-17 113:-10 116:-16 117:12 118:8 119:18 120:35 121:-11 123:-8 125:-10 126:-20
piec number	1:9 24:11 37:-25 39:8 41:9
number #n	1:49 2:-21 4:-21 5:-22 10:-19 11:-10 13:81 17:-21 18:-10 19:-14 21:-10 22:-25 24:33 26:-8 27:-10 28:-15 30:-18 31:-16 32:-11 34:-10 37:61 38:38 39:61 40:-8 41:70 42:-22 43:8 45:12 46:36 47:-10 49:32 51:-9 53:-9 54:-10 55:-9 56:-21 58:20 59:9 61:-9 65:43 66:25 71:38 72:-12 73:-13 74:35 76:-30 78:29 83:19 84:9 85:15 86:-11 88:-13 92:-18 93:13 94:-13 96:13 97:-14 99:-23 100:-47 101:-11 102:32 103:43 105:-24 106:-13 107:47 108:11 109:-21 112:-15 114:8 116:-15 117:14 118:12 119:20 120:41 122:-13 126:-84
#n piec	0:-12 24:8 34:24 37:-21 38:22 41:13 71:-13 95:-20 99:13 126:34
#d piec	37:16 38:-18 40:10
in wire	21:12 51:-10 67:9
mm wire	47:10 51:-19 67:14 70:-8 81:9
#d wire	9:14 47:14 52:9 69:-14 81:12 89:-8
piec #n	0:-161 1:149 2:-12 3:9 4:-23 5:-13 6:-8 13:-28 15:-20 16:-11 17:-16 18:-8 22:79 24:75 30:-12 31:-12 34:104 37:177 38:102 39:113 40:-11 41:141 42:-15 43:-9 44:-15 45:-12 46:-10 48:-10 49:-9 56:-17 65:-18 66:-25 70:146 71:134 72:-51 74:-11 76:-52 77:-11 78:-25 79:-13 82:29 83:-52 84:-18 85:-11 86:-8 88:-14 90:-24 91:-8 92:-25 93:-11 94:-18 96:-19 97:-19 98:-20 99:-16 100:-12 103:-10 105:-13 106:-11 107:-10 108:-9 109:-9 112:-9 114:-21 115:-12 116:-8 118:-8 125:-12 126:108
&#d#n@wire	0:-28 1:-18 2:-9 3:-13 9:17 18:34 24:11 37:29 39:-17 40:118 41:-13 42:-12 43:-28 51:71 52:-13 67:-42 68:-8 69:52 70:8 71:32 72:-10 75:-29 76:-11 80:-14 81:12 82:68 83:14 89:14 93:-14 117:33 118:-36 120:-8 122:-10 126:-35
&#d#n	0:-84 1:-51 3:22 4:-17 16:21 17:-11 18:22 24:-10 34:-9 37:-12 38:-26 39:-55 41:-67 42:32 43:96 44:-9 45:-9 46:-15 47:-22 51:-16 56:-14 69:-8 70:170 72:-12 75:114 76:11 77:82 78:-20 79:53 81:30 82:-14 83:26 88:16 89:-13 90:-17 91:-8 92:-21 93:86 94:-12 96:-11 98:-15 99:-10 108:-8 117:-10 118:56 126:8
#d job	37:12 42:8 43:-21 71:-10 73:21 76:-16 79:13
end==s	0:-21 1:74 2:-14 4:-9 6:-8 9:-12 13:-9 16:-14 17:-11 23:57 26:-11 28:43 30:-11 31:21 34:-13 36:-9 37:-13 40:33 42:34 43:58 44:70 45:-12 46:-15 51:-11 56:9 67:-10 68:-8 71:13 72:-18 73:-12 76:-14 77:-16 78:-10 80:58 81:36 82:-14 83:-13 88:14 90:-10 92:-13 93:-21 94:41 97:11 98:-14 100:-10 104:21 105:13 108:24 109:8 116:-9 118:-8 126:-17
@job long	3:12 42:-9
~ piec	41:12
@wire end	1:-9 37:-21 71:51 76:-9
raw	0:-8 1:41 3:60 38:17 40:39 42:-25 43:33 47:-12 70:-15 79:12 80:-23 81:26 126:-14
end raw	3:10 40:31 47:-11 80:-13 81:25
in long	0:11 50:20
&#d#n@job@wire	0:-11 37:29 38:23 40:-16 71:26 72:-10 73:-8 82:-12 83:61 126:17
any==	0:19 1:94 2:21 3:-21 4:-15 6:-10 7:-20 8:28 9:-11 10:-16 11:39 13:-19 14:-14 15:-23 16:9 17:31 18:24 19:-27 20:-14 22:71 23:29 24:50 25:13 26:-32 27:62 28:-11 29:-19 32:65 33:-35 34:-25 36:-13 37:-16 38:-41 39:61 40:-18 41:10 44:-28 45:-16 46:-11 48:27 51:-9 54:-25 55:-9 56:-10 58:43 60:-27 61:43 62:-9 63:46 65:-11 66:68 67:-11 68:-8 70:-10 72:-19 73:-28 75:-8 78:-14 83:-14 84:-18 85:20 87:23 88:14 90:-11 93:-8 94:13 96:-8 98:13 99:-10 101:63 102:-41 103:12 104:-9 105:11 106:-8 107:8 108:-21 109:-22 110:8 111:-35 112:17 113:39 115:11 116:-8 117:-16 118:-32 119:-24 121:-31 122:97 125:-13 126:-48
good==	0:-31 1:58 3:80 4:-8 8:-23 9:47 11:-13 13:-10 18:54 20:-8 22:31 24:-44 26:-14 27:-15 30:-16 32:-20 33:-16 34:-9 36:-11 37:-14 38:-23 39:-11 40:10 41:24 42:9 43:-18 45:-17 46:10 48:-9 51:-24 53:19 54:17 56:19 58:26 61:9 62:-10 63:25 64:22 66:-11 67:-15 68:12 69:-12 71:-8 75:-13 78:28 79:-9 82:32 83:-12 84:9 85:-8 87:12 90:15 93:13 94:69 96:-8 100:-15 101:41 102:-32 103:57 106:-14 107:-9 109:-19 110:18 111:-68 112:-10 119:25 125:-14 126:52
is #d	0:-25 2:52 3:45 8:33 16:16 17:-12 18:-13 24:-12 37:-30 38:-19 39:-15 40:-16 41:-32 42:105 43:17 50:-8 51:-8 56:-18 67:19 68:-14 69:28 70:52 75:59 77:49 78:-8 81:16 82:-11 88:-18 89:74 92:-15 122:20 126:-77
any	0:19 1:94 2:21 3:-21 4:-15 6:-10 7:-20 8:28 9:-11 10:-16 11:39 13:-19 14:-14 15:-23 16:9 17:31 18:24 19:-27 20:-14 22:71 23:29 24:50 25:13 26:-32 27:62 28:-11 29:-19 32:65 33:-35 34:-25 36:-13 37:-16 38:-41 39:61 40:-18 41:10 44:-28 45:-16 46:-11 48:27 51:-9 54:-25 55:-9 56:-10 58:43 60:-27 61:43 62:-9 63:46 65:-11 66:68 67:-11 68:-8 70:-10 72:-19 73:-28 75:-8 78:-14 83:-14 84:-18 85:20 87:23 88:14 90:-11 93:-8 94:13 96:-8 98:13 99:-10 101:63 102:-41 103:12 104:-9 105:11 106:-8 107:8 108:-21 109:-22 110:8 111:-35 112:17 113:39 115:11 116:-8 117:-16 118:-32 119:-24 121:-31 122:97 125:-13 126:-48
#d any	39:15
good	0:-31 1:57 3:80 4:-8 8:-23 9:47 11:-13 13:-10 18:54 19:8 20:-9 22:31 24:-46 26:-14 27:-15 30:-16 32:-20 33:-18 34:-9 36:-11 37:-14 38:-23 39:-11 40:9 41:24 42:9 43:-18 45:-17 46:10 48:-9 51:-13 53:19 54:17 56:19 58:26 61:8 62:-10 63:25 64:22 66:-11 67:-19 68:12 69:-12 71:-8 75:-13 78:28 79:-9 80:-8 82:32 83:-12 84:9 85:-8 87:12 90:15 93:13 94:69 96:-8 100:-15 101:41 102:-32 103:57 106:-14 107:-9 109:-19 110:18 111:-68 112:-10 119:25 125:-14 126:52
any good	1:41 16:16 18:56 22:12 24:-13 83:-8 126:-9
good for	1:69 9:32 18:21 24:-33 37:-10 38:-37 40:14 41:-13 54:11 75:-11 78:38 82:-9 94:-12 126:53
&#d@job	1:21 2:-9 3:-10 16:9 18:-31 42:-20 73:13 75:110 126:38
is #n	0:-23 3:-22 4:-8 8:-16 13:-21 15:-14 17:43 27:-9 28:-9 30:-10 31:32 37:-14 38:-11 39:-13 41:-15 42:77 44:-17 45:-8 46:-11 48:9 50:8 52:-9 53:13 54:19 63:-11 64:41 66:-8 67:24 68:25 69:46 70:35 71:13 72:-14 77:47 78:-20 79:-10 80:8 81:20 86:24 88:-23 89:19 90:-44 91:-12 92:-20 93:17 94:54 96:-10 98:-11 99:29 100:54 105:24 118:-20 122:28 126:-80
of any	1:21 8:-13 9:34
good in	1:14 51:10
is number	1:17 13:-9 24:21 45:27 102:10 126:-9
#n any	1:20 24:-17 41:22 48:28 66:22 85:33 101:14 120:12 126:-24
is the	0:11 2:29 3:24 4:64 5:13 6:24 7:-13 8:12 9:132 10:-17 12:-40 13:101 14:26 15:56 18:46 19:40 20:17 21:54 23:41 25:-10 27:-33 28:-24 29:45 30:57 31:41 33:51 34:-30 36:36 38:-11 39:-12 41:-10 42:-36 43:-14 44:19 46:-26 48:-11 49:-17 52:-17 54:-27 55:-10 56:9 62:24 65:-14 66:-10 68:-10 73:-8 74:-29 75:-14 77:15 84:-12 85:-8 87:-18 88:-9 89:-9 90:-18 93:-12 94:57 95:-57 98:-9 100:-17 101:-8 102:-31 103:-38 104:-8 105:-9 106:-16 107:-25 108:-14 109:-18 111:43 113:-10 115:-18 116:-12 118:39 119:-24 120:-43 126:-36
for @job	0:-38 1:-9 2:27 3:-9 4:27 5:32 6:40 9:-9 10:-11 15:-15 16:21 17:-12 18:12 24:69 25:-9 27:-28 28:-35 30:-19 31:35 37:-27 38:39 39:18 44:53 48:13 49:10 65:-21 66:-17 71:14 74:23 79:-8 83:14 84:29 85:76 88:-11 92:-15 106:42 107:22 108:13 109:-10 114:-14 126:-25
are==	2:-10 3:-17 4:-9 5:-48 6:-29 7:13 8:31 9:38 10:-21 11:32 12:60 13:24 15:-24 16:-12 17:36 18:22 19:-14 20:-23 21:-26 22:19 23:18 24:32 25:-26 26:20 27:44 28:13 29:43 30:15 31:-36 32:57 33:31 34:-45 36:24 37:-25 38:-21 41:-16 43:-26 44:56 45:-15 46:-17 48:-25 49:24 51:-20 52:-14 53:33 55:27 56:40 58:-22 59:-8 60:-24 64:-16 66:-18 67:39 70:-18 71:11 72:23 75:44 76:-17 77:-20 78:-16 79:-16 80:-18 81:14 83:-21 84:-15 85:16 86:-9 87:-10 88:-20 89:20 91:30 92:27 93:-14 97:15 100:38 101:-18 102:43 103:58 105:-20 106:-25 107:-13 108:14 109:26 110:49 111:-37 112:36 115:-19 116:-15 117:-13 118:17 121:-11 122:-17 123:-30 125:-24 126:-8
are	2:-10 3:-17 4:-9 5:-48 6:-29 7:13 8:31 9:38 10:-21 11:32 12:60 13:24 15:-24 16:-12 17:36 18:22 19:-14 20:-23 21:-26 22:19 23:18 24:32 25:-26 26:20 27:44 28:13 29:43 30:15 31:-36 32:57 33:31 34:-45 36:24 37:-25 38:-21 41:-16 43:-26 44:56 45:-15 46:-17 48:-25 49:24 51:-20 52:-14 53:33 55:27 56:40 58:-22 59:-8 60:-24 64:-16 66:-18 67:39 70:-18 71:11 72:23 75:44 76:-17 77:-20 78:-16 79:-16 80:-18 81:14 83:-21 84:-15 85:16 86:-9 87:-10 88:-20 89:20 91:30 92:27 93:-14 97:15 100:38 101:-18 102:43 103:58 105:-20 106:-25 107:-13 108:14 109:26 110:49 111:-37 112:36 115:-19 116:-15 117:-13 118:17 121:-11 122:-17 123:-30 125:-24 126:-8
)~",
R"~(^ are	1:40 4:-9 8:19 9:15 11:19 12:-15 13:30 17:30 23:49 26:54 29:125 32:28 33:25 44:-22 53:-8 54:-39 55:-25 77:-8 102:-10 103:-19 113:-33 122:-8 126:-33
are piece	1:8
are #d	1:14 18:53 69:14 72:-8 73:12 75:8 81:-8 126:-25
are the	0:-8 4:43 8:-8 9:18 13:-20 14:27 17:-18 18:-20 24:-8 26:-28 28:12 29:9 30:24 33:37 36:30 53:-8 71:14 75:-9 126:37
any use	1:19
^ can	1:90 2:11 3:43 5:36 6:13 7:19 10:11 11:-10 12:-11 16:18 17:38 18:37 22:-19 23:16 24:17 26:45 27:-10 30:22 31:74 34:-11 36:-50 38:8 39:-21 44:-20 45:-15 48:-19 58:-8 63:13 66:-8 78:9 82:-12 87:13 91:-16 92:14 100:-13 101:-10 102:-31 103:-13 104:10 106:23 107:-19 109:-9 111:10 114:-8 120:-20 125:-41 126:18
use piece	1:11
on job	0:27 1:39 2:9 3:26 4:33 5:15 6:-15 12:-8 13:-79 17:32 18:42 24:9 25:64 27:-14 29:-8 30:-24 31:-10 34:42 37:9 38:-18 39:-12 42:11 43:-14 44:77 45:-18 46:50 48:12 49:-24 55:-8 56:-8 65:-14 66:-12 71:-18 73:-11 74:-15 75:18 76:12 78:57 79:-16 81:-15 82:-11 84:-18 85:34 88:22 90:16 92:48 94:21 96:18 98:-28 100:-9 105:-8 106:-42 108:-22 109:47 112:-15 114:-44 126:27
^ may	1:22 3:13 11:11 12:-10 17:27 19:10 27:9 31:20 36:22 48:-13 126:-33
may i	1:11 11:11 12:-10 13:17 16:15 19:10 27:9 31:42 36:21 48:-13 126:-35
use the	0:-9 3:-12 5:15 18:25 22:-10 23:34 37:18 38:-12 42:-9 71:36 83:-17 102:18 104:33 106:-11
#d for	0:-21 3:33 39:-15 42:52 43:-9 51:27 79:-9 89:12 93:-11 117:-9 126:47
^ could	0:-12 1:42 2:16 3:56 8:13 10:25 11:-12 12:9 13:15 15:56 16:-8 17:-9 18:19 22:-9 24:-8 26:-11 27:13 30:-14 31:37 33:-12 34:-10 37:-40 38:23 39:-10 41:15 64:9 65:-9 70:-9 71:10 75:-9 89:11 92:22 101:20 107:8 113:10 121:-13 126:-44
could use	0:16 126:-16
use number	1:13 37:8
#n for	0:-62 1:-12 3:-35 4:-18 6:-12 16:-16 17:-8 24:-29 28:-17 30:-9 31:10 34:-21 37:84 38:84 39:39 42:-19 43:50 44:-24 46:14 65:12 66:10 71:74 72:52 74:25 76:-11 77:-14 81:-10 82:51 83:-23 84:-26 85:-28 90:-13 91:-8 92:-17 93:-12 94:31 97:8 98:-11 100:-11 105:-8 106:29 108:-22 109:-11 112:-9 114:36 115:-10 126:69
use #d	1:41 37:18
@wire in	0:-13 1:-10 8:53 9:18 18:60 19:-9 20:17 22:-36 32:-11 37:29 38:-9 40:35 41:-14 51:46 52:-9 70:12 71:-16 73:-8 82:-20 83:20 117:-27 126:21
&#d@job@wire	1:15 18:49 24:-10 38:63 73:9 75:-27 126:-15
can i	0:58 1:14 2:12 4:29 6:24 8:-9 9:-12 16:31 17:22 18:10 22:19 23:8 24:14 26:-9 30:13 31:21 33:28 34:-10 37:-8 44:-12 45:-14 82:-10 102:-10 106:29 125:-40 126:37
use #n	1:9 3:-11 37:22 83:19
wher==e	0:-22 1:194 2:30 3:35 4:94 6:66 8:-9 9:-25 11:-8 13:70 14:17 15:46 16:68 17:39 18:-17 19:12 20:98 21:-12 22:-12 23:-13 24:-18 26:-14 28:-12 30:25 31:-8 32:-15 33:37 34:37 36:16 37:-23 38:-19 39:-22 40:-37 41:-31 42:-19 43:-17 44:-25 45:-11 46:25 49:-10 51:-10 52:-16 65:-12 66:-8 67:-8 70:-19 71:-18 73:-12 74:-11 75:-9 80:-8 82:-14 87:-9 89:-11 92:-13 94:-9 96:-8 98:-8 99:14 100:-13 101:-12 109:-23 114:-8 115:-8 123:14 125:-10
wher	0:-22 1:194 2:30 3:35 4:94 6:66 8:-9 9:-25 11:-8 13:70 14:17 15:46 16:68 17:39 18:-17 19:12 20:98 21:-12 22:-12 23:-13 24:-18 26:-14 28:-12 30:25 31:-8 32:-15 33:37 34:37 36:16 37:-23 38:-19 39:-22 40:-37 41:-31 42:-19 43:-17 44:-25 45:-11 46:25 49:-10 51:-10 52:-16 65:-12 66:-8 67:-8 70:-19 71:-18 73:-12 74:-11 75:-9 80:-8 82:-14 87:-9 89:-11 92:-13 94:-9 96:-8 98:-8 99:14 100:-13 101:-12 109:-23 114:-8 115:-8 123:14 125:-10
^ wher	0:-9 1:17 2:-17 3:-17 4:56 5:-10 6:63 8:-25 9:-21 13:38 15:10 16:41 17:67 18:-9 19:26 20:91 21:-8 23:-12 24:-9 25:-12 30:18 32:-11 33:64 34:11 36:19 37:-8 39:-12 40:-10 44:-11 108:-15 109:-16 126:-28
wher on	1:23
#n would	1:36 37:-12 71:-38 83:-14 96:11 97:-12 126:70
would #d	3:19
fit $	0:34 16:-8 37:33 82:9
go==	0:11 1:39 2:20 3:10 4:-17 7:-8 8:-19 10:11 11:35 12:19 13:-33 14:-13 15:-19 16:30 17:-19 18:19 19:-36 20:58 21:-15 22:10 23:-10 24:-35 25:-8 26:-12 27:-20 28:17 29:-8 30:10 31:-15 32:-10 33:-33 36:-10 37:-8 38:-32 39:109 41:-14 45:-21 46:18 49:-16 51:-14 52:10 56:-11 58:40 59:-8 62:-9 63:46 64:-29 65:-24 70:-11 71:-19 72:-10 76:-11 77:-8 78:-12 79:-8 80:11 82:21 83:38 84:-26 85:113 86:-10 87:12 92:15 94:12 95:-22 97:-10 99:15 100:-18 102:-16 104:-10 105:41 107:60 108:29 111:-8 112:24 113:-10 114:-16 116:-8 118:-10 123:49 125:21
@job would	0:-17 2:-10 18:10 25:23 31:28 43:-24 48:-16 126:51
would #n	0:-13 1:19 3:13 18:-12 126:16
go	0:11 1:39 2:20 3:10 4:-17 7:-8 8:-19 10:11 11:35 12:19 13:-33 14:-13 15:-19 16:30 17:-19 18:19 19:-36 20:58 21:-15 22:10 23:-10 24:-35 25:-8 26:-12 27:-20 28:17 29:-8 30:10 31:-15 32:-10 33:-33 36:-10 37:-8 38:-32 39:109 41:-14 45:-21 46:18 49:-16 51:-14 52:10 56:-11 58:40 59:-8 62:-9 63:46 64:-29 65:-24 70:-11 71:-19 72:-10 76:-11 77:-8 78:-12 79:-8 80:11 82:21 83:38 84:-26 85:113 86:-10 87:12 92:15 94:12 95:-22 97:-10 99:15 100:-18 102:-16 104:-10 105:41 107:60 108:29 111:-8 112:24 113:-10 114:-16 116:-8 118:-10 123:49 125:21
#n go	1:23 2:11 34:11 39:17 66:22 71:11 76:-9 99:24 126:-22
go $	0:-14 1:33 2:23 3:10 11:-9 18:-8 19:-12 20:21 22:23 27:-11 30:14 33:-21 39:40 40:-10 46:12 56:-8 58:33 71:10 76:-9 85:30 87:26 100:-11 102:-12 103:22 107:74 108:35 112:18 123:48 125:-10 126:-60
would number	1:12
@job should	17:14 42:-30 48:19 126:39
doe==s	0:-27 1:55 3:73 4:-10 6:32 7:-11 9:49 10:-28 11:-9 12:23 13:20 14:58 15:80 18:62 20:20 21:12 22:23 23:-17 24:44 26:37 27:11 28:77 29:45 30:40 31:67 32:42 33:69 34:-38 36:77 37:-17 38:-20 39:-26 40:-11 41:-10 42:-16 43:-18 44:-22 45:-12 46:-27 55:-14 56:-11 58:-12 59:-9 61:-8 62:-11 64:-20 65:48 66:20 67:-12 70:-8 71:-13 73:-14 74:-40 75:-30 76:-9 77:-11 78:-23 79:-17 82:-9 84:-12 88:-14 90:11 91:-12 93:-27 94:-19 96:-17 97:-8 98:-18 99:-10 100:-28 103:-13 104:-47 105:-14 106:-9 107:-8 108:-25 109:-19 110:62 111:-20 114:-9 116:-9 118:-18 119:-9 122:-32 123:-21 125:-16 126:38
doe	0:-27 1:55 3:73 4:-10 6:32 7:-11 9:49 10:-28 11:-9 12:23 13:20 14:58 15:80 18:62 20:20 21:12 22:23 23:-17 24:44 26:37 27:11 28:77 29:45 30:40 31:67 32:42 33:69 34:-38 36:77 37:-17 38:-20 39:-26 40:-11 41:-10 42:-16 43:-18 44:-22 45:-12 46:-27 55:-14 56:-11 58:-12 59:-9 61:-8 62:-11 64:-20 65:48 66:20 67:-12 70:-8 71:-13 73:-14 74:-40 75:-30 76:-9 77:-11 78:-23 79:-17 82:-9 84:-12 88:-14 90:11 91:-12 93:-27 94:-19 96:-17 97:-8 98:-18 99:-10 100:-28 103:-13 104:-47 105:-14 106:-9 107:-8 108:-25 109:-19 110:62 111:-20 114:-9 116:-9 118:-18 119:-9 122:-32 123:-21 125:-16 126:38
#n doe	46:-13 74:-34 85:18 90:75 92:10 115:15 126:-15
doe the	0:15 1:-16 2:-10 8:18 9:17 10:-8 11:16 12:-11 15:10 16:31 17:42 18:20 20:34 21:-12 22:10 24:32 26:85 28:-31 29:9 31:-9 32:9 34:-12 54:-8 66:12 75:-8 100:-16 108:-8 110:32 123:-10 126:-44
belong==	1:18 14:10 15:24 65:-14 126:-14
@job could	1:19 2:10 45:-10 126:12
belong	1:26 5:-8 14:31 15:42 38:-8 39:-9 51:30 60:10 61:36 62:-8 63:28 64:-11 66:50 118:-16 126:-33
belong $	1:16
#d go	39:15 40:13 82:-11
wher doe	2:23 3:-9 4:13 13:19 16:38 19:-9 20:-11 33:24 34:39 71:-8 73:-8 126:-11
doe a	3:15 126:56
a #d	0:-14 1:65 3:60 18:-11 40:54 41:-8 42:-10 70:-11 77:-9 82:-14
piec of	40:36 69:14 70:-16 72:30 82:9 126:-30
wher would	1:41 16:-8 17:24 19:21 40:-8 126:-14
would a	1:-16 18:45 126:-22
offcut of	0:-14 1:29 40:9
in fret	92:15
fret of	2:76 3:42 4:-29 5:28 8:38 9:-27 13:8 16:-30 18:16 19:-12 22:-11 28:-16 34:-35 38:10 40:45 43:-8 44:32 45:21 46:73 47:13 51:-17 71:-18 72:-20 73:29 74:13 76:70 79:-23 83:-11 88:-10 90:-11 91:37 92:-29 94:-18 96:-9 98:-9 108:9 109:27 116:-11 126:-31
@wire go	1:20 18:26 19:-18 20:47 52:13 71:-20 75:-11 83:22 126:-35
this==	0:-9 1:18 3:-8 5:-23 7:-8 8:-30 9:11 10:38 11:38 12:-32 13:-17 14:25 18:-10 19:-17 20:61 21:27 22:-23 23:13 24:-34 25:-10 26:-21 27:25 28:-20 29:23 30:47 31:20 32:19 33:-27 34:-10 37:-13 38:-8 40:8 44:22 48:-17 49:-11 51:25 53:-68 54:46 55:53 56:-18 58:-14 60:-8 61:-12 62:-21 63:10 64:-27 66:-11 68:-11 70:-10 73:-11 76:13 78:-15 79:-12 80:-11 82:-15 83:-8 85:-11 88:11 89:-10 90:-12 92:-13 94:25 96:16 99:50 100:-11 101:35 106:21 107:15 108:8 109:-17 110:-79 111:83 112:73 113:-14 117:-13 119:-12 120:-18 122:13 123:-8 126:19
this	0:-10 1:17 3:-13 4:-9 5:-25 7:-8 8:-30 9:10 10:37 11:39 12:-33 13:-20 14:23 16:-8 18:-12 19:-17 20:60 21:27 22:-23 23:12 24:-36 25:-15 26:-28 27:17 28:-21 29:18 30:49 31:24 32:16 33:-28 34:-12 37:-20 44:18 45:11 46:9 48:-26 49:-13 50:-9 51:26 53:-74 54:48 55:66 56:-22 58:-15 60:-9 61:-13 62:-24 63:8 64:-29 65:-9 66:-15 68:-11 69:10 70:-10 72:11 73:-14 74:-8 76:28 77:20 78:-10 79:-17 80:-11 82:-10 83:-11 84:13 85:-13 88:8 89:-11 90:-15 92:-16 94:23 96:27 99:46 100:-12 101:23 102:41 106:23 107:15 108:18 110:-79 111:70 112:95 113:-16 115:-9 116:44 117:-14 119:-13 120:-19 122:12 123:-9
)~",
R"~(doe this	36:14
wher should	3:9 6:10 30:13 126:-14
a #n	1:58 7:-9 22:-11 28:-8 31:14 40:37 80:-21 100:31 105:44 126:-43
mm offcut	56:-9 82:16
should the	9:-8 10:-9 18:23 23:34 72:-21 100:-8 104:-8 126:46
this #n	1:-8 16:12 37:-10 45:-11 46:10 54:17 55:-9 56:-19 94:13 126:54
mm the	82:18
@wire offcut	1:24 21:9 80:8
@wire fret	0:25 8:-10 24:18 25:34 40:-8 73:11 80:16 82:17 126:-27
fret go	0:12
wher could	1:21
could the	2:39 5:9 27:-9 29:-11 31:-13 54:-12 107:10 116:-8 126:71
#d @wire	0:21 1:8 18:-24 24:-14 38:58 41:37 42:-8 43:-18 51:-8 70:-10 71:55 76:-10 82:40 83:59 89:-14 93:-9 126:-15
would the	0:-23 1:9 4:12 5:23 7:15 16:24 18:17 21:-10 28:20 45:-16 126:-20
in @wire	0:24 1:9 8:-44 9:-22 19:-15 20:-28 21:91 22:13 24:43 25:12 32:9 40:-8 82:40 83:15 126:-16
#d the	51:16
the #n	0:97 1:-10 2:-23 3:46 4:11 6:-9 7:-11 12:23 13:35 15:61 16:-37 20:-9 24:38 25:26 26:30 27:-11 28:-15 29:12 30:42 31:25 32:29 38:-9 39:25 40:-18 41:-26 42:-18 43:19 45:-28 46:-18 49:16 51:-45 52:-9 55:-12 56:-15 64:12 65:26 66:8 67:-34 70:-11 71:-28 72:-30 74:-8 76:39 79:14 80:-16 83:22 84:-9 85:19 88:24 90:-13 91:-19 92:-27 93:-13 94:-15 96:-21 98:-20 99:-8 100:-17 103:-9 107:-13 108:26 109:8 112:-9 113:21 114:-12 115:20 117:-27 118:34 119:15 120:47 122:-11 126:-15
doe #n	5:9 16:-10 17:-24 36:55 90:-48 126:97
#n belong	1:12 15:56 41:8 65:-13 66:21 126:-15
to==	0:-24 1:-9 2:12 3:-35 4:24 5:23 7:12 8:-24 9:21 10:104 11:28 12:14 13:19 14:-28 15:35 16:9 17:8 18:21 23:9 25:-22 26:-27 27:-42 28:13 29:14 30:33 31:-9 34:-45 35:-9 36:38 37:-67 38:35 39:12 40:-9 41:9 42:-15 43:-32 44:-14 45:43 46:-37 48:23 50:-22 51:-26 52:34 54:23 55:-9 56:36 57:28 58:54 59:39 60:19 61:-10 62:67 63:-16 64:22 65:42 66:48 68:-13 70:17 71:-19 75:-9 76:81 77:9 78:-33 79:-18 80:-18 81:-19 82:23 83:-26 84:13 85:-19 86:-10 88:16 89:17 90:44 91:-9 93:-23 94:-33 95:-53 96:-16 98:-12 99:18 100:36 101:-20 102:-19 103:14 104:9 105:-8 107:-47 108:37 109:10 110:-26 111:16 112:-15 113:-35 114:33 115:38 116:25 117:19 118:-65 119:60 120:-32 121:17 122:31 123:-17 126:29
put==	0:-27 1:16 2:-20 3:-27 4:-25 5:-13 7:-8 9:20 10:-16 11:-23 12:-21 13:-33 14:-26 15:37 16:-9 19:-15 20:-11 21:-12 22:-24 23:-9 24:41 27:20 28:-17 29:-15 30:-16 31:-28 32:-22 33:-22 36:-15 37:42 38:68 39:-9 40:33 41:-12 43:15 44:-32 47:-8 48:14 49:-19 50:18 51:26 54:26 56:42 58:-9 59:25 62:26 63:28 65:43 67:-18 68:-14 69:16 70:30 71:-27 73:27 77:9 78:-21 79:-16 80:9 82:-20 83:14 84:47 85:27 88:-15 89:8 90:-22 91:-18 92:-21 93:-9 94:-14 96:42 97:19 98:-26 99:23 101:-17 102:-12 103:13 104:8 105:15 106:17 107:-11 108:-33 109:34 112:16 113:-9 114:34 116:8 117:9 118:-27 119:35 121:43 122:12 123:-21 126:-31
to	0:-24 1:-10 2:12 3:-35 4:21 5:23 7:12 8:-24 9:20 10:103 11:27 12:13 13:18 14:-28 15:35 16:8 17:8 18:20 23:9 25:-22 26:-27 27:-43 28:13 29:-17 30:33 31:-9 34:-46 35:-9 36:38 37:-69 38:32 39:11 40:-9 41:9 42:-15 43:-32 44:-14 45:40 46:-38 48:21 50:-22 51:-26 52:33 53:64 55:20 56:33 57:28 58:54 59:39 60:19 61:-10 62:67 63:-17 64:21 65:41 66:47 68:-13 70:17 71:-21 72:-8 74:-8 75:-9 76:70 77:8 78:-33 79:-18 80:-18 81:-19 82:22 83:-27 84:13 85:-20 86:-10 88:16 89:17 90:30 91:-9 93:-24 94:-34 95:-53 96:-17 98:-14 99:13 100:33 101:-21 102:-20 103:14 104:9 105:-9 106:32 107:-48 108:36 109:9 110:29 112:12 113:-36 114:32 115:38 116:24 117:19 118:-65 119:58 120:-33 121:16 122:30 123:-17
wher to	1:60 40:-12
put	0:-27 1:16 2:-20 3:-27 4:-25 5:-13 7:-8 9:20 10:-16 11:-23 12:-21 13:-33 14:-26 15:37 16:-9 19:-15 20:-11 21:-12 22:-24 23:-9 24:41 27:20 28:-17 29:-15 30:-16 31:-28 32:-22 33:-22 36:-15 37:42 38:68 39:-9 40:33 41:-12 43:15 44:-32 47:-8 48:14 49:-19 50:18 51:26 54:26 56:42 58:-9 59:25 62:26 63:28 65:43 67:-18 68:-14 69:18 70:30 71:-27 73:27 77:9 78:-21 79:-16 80:9 82:-20 83:14 84:47 85:27 88:-15 89:8 90:-22 91:-18 92:-21 93:-9 94:-14 96:42 97:19 98:-26 99:23 101:-17 102:-12 103:13 104:8 105:15 106:17 107:-11 108:-33 109:34 112:16 113:-9 114:34 116:8 117:9 118:-27 119:35 121:43 122:12 123:-21 126:-31
to put	1:21 106:9 126:-11
put #d	1:10 37:12
offcut $	0:12 8:9
piec $	0:32 36:20 37:-10 95:-20 126:31
put a	0:-10 3:-9 38:44 50:35 51:-8 68:-11 69:19 80:14 91:-10 96:15 126:19
mm fret	0:37 1:-15 3:33 22:-8 40:-9
fret $	0:31 1:-16 2:23 4:9 5:16 8:-10 13:66 15:-9 16:-17 17:32 22:13 24:18 28:99 31:-9 34:-9 37:29 40:-12 44:-19 46:-8 73:-9 74:-24 78:11 80:9 82:9 94:48 99:-9 105:15 109:-13 114:-8 125:-9 126:-16
put #n	39:19 40:8 45:12 51:24 71:-10 76:-12 83:38 105:11 117:-10
what slot	0:-13 1:38 13:11
slot for	0:-24 1:78 3:-10 4:14 18:37
for a	1:33 22:20 31:51 32:-10 38:-8 40:-19 61:14 65:12 70:11 100:33 102:-15 103:-10 104:-8 109:16 114:-12 115:-21 118:18 126:32
take==s	0:-10 1:19 2:-8 4:21 5:-11 33:-28 34:-18 36:12 37:-12 38:-10 39:14 42:-12 44:-10 46:-9 56:-12 59:-8 61:-10 63:-8 65:52 66:-18 74:8 79:8 82:15 84:94 99:28 100:53 104:47 105:113 108:-8 110:-19 111:27 113:-16 122:67 123:-10 125:-11 126:9
which slot	0:-56 1:95 2:15 12:-14 13:119 27:8 43:-10 76:-9 126:-35
slot take	1:23 18:11 28:14 42:-10 43:9
take a	100:13 111:11
take this	93:11
take #d	37:25 51:-9 70:12
take the	11:-8 16:17 37:47 39:39 41:-14 48:28 49:-19 58:25 65:63 66:36 70:-11 74:11 82:-8 83:19 87:-31 100:-10 101:43 102:10 104:10 105:15 107:-9 110:9 122:10 123:-10 126:-44
wher can	1:-11 33:27 36:22
i put	0:12 1:24 9:40 10:-20 16:23 17:16 18:18 32:-13 37:22 51:14 68:-14 70:11 71:-16 77:16 126:-31
put the	15:26 17:26 18:-11 26:10 30:12 38:10 40:-10 44:-10 45:-8 46:-10 48:12 53:22 57:8 65:-22 66:17 67:14 68:14 73:29 77:15 83:-10 97:9 103:10 109:44 118:-11 119:-9 120:15
use a	9:8 104:17
we put	8:26 9:-8 15:29 19:-8 24:12 25:8 48:14 65:-8 80:9 96:-9 126:9
put this	126:17
wher do	4:18 6:25 17:33 33:32
use this	69:9
mm @wire	0:51 1:48 5:-10 7:-28 18:-16 37:17 38:42 39:36 40:-28 41:19 42:-9 50:9 51:-9 52:-8 67:-8 70:-17 71:-8 77:10 82:26 83:33 89:-19 126:-13
want==ed	1:32 4:14 9:14 13:-10 24:-11 37:8 42:10 45:-11 48:8 49:-14 53:10 59:-8 63:-8 64:18 76:-8 85:-8 88:10 99:16 107:33 116:-9 122:13 126:56
what is	0:12 1:44 2:84 3:12 4:12 5:9 6:-19 7:-10 8:18 9:66 10:-15 11:89 12:64 13:25 14:14 15:-31 17:-10 18:-25 19:15 20:23 21:14 22:16 23:-34 24:-23 25:-21 26:14 27:72 28:47 29:-42 30:48 33:49 34:46 36:35 38:-15 40:-26 41:-9 42:-16 43:-9 44:-17 45:-9 48:-12 49:-8 52:-8 56:-12 62:-9 67:-8 69:-12 78:-12 85:52 88:-18 92:-14 94:-12 99:-8 100:-8 101:-9 102:-14 104:-31 109:-14 111:-15 114:-14 115:-9 118:-22 119:-17 120:-26 122:-11 126:69
want	0:-15 1:102 2:-13 4:17 7:13 8:9 9:39 12:8 13:13 14:-9 15:-14 20:12 22:25 24:-14 25:-9 26:11 27:18 28:-14 29:10 30:-29 31:8 33:-32 34:-53 37:-11 38:23 39:61 41:-9 43:-8 44:-25 45:-16 46:-14 48:11 49:39 50:-13 51:-14 54:-11 56:31 57:16 58:-13 61:23 63:-39 65:-44 66:-37 67:-15 68:-9 70:16 71:-11 72:-10 73:-8 76:-11 78:-8 80:16 84:31 85:-21 89:-9 90:-14 92:12 95:-43 96:-13 98:-20 99:28 100:-15 101:-14 102:-9 103:-8 104:68 106:10 107:34 110:-8 111:-27 112:-30 114:-14 115:9 117:19 118:-10 119:-9 120:31 122:35 123:23 126:69
#n want	1:16 48:13 84:11 92:17 98:-10 126:43
want for	1:18
for $	0:-22 1:63 5:20 8:-19 9:-18 10:12 11:13 12:44 13:46 19:-16 20:-11 21:44 22:-18 23:-24 24:26 26:87 27:9 28:-13 30:-52 32:42 33:-9 34:-14 38:-8 39:-11 41:-8 48:-21 51:12 126:-11
#n good	1:32 24:-18
@wire good	9:30
#d good	3:9
plan==ned	1:8 24:-14 26:-14 27:-14 30:75 37:9 38:-12 76:18 84:38 85:-19 99:8 101:17 105:15 126:-8
is piece	1:19 24:12
plan	2:73 4:-15 5:139 6:-31 10:-13 12:-13 13:-20 14:-8 15:-16 16:73 17:-10 23:-15 24:-26 26:-12 27:-27 28:11 29:-14 30:166 34:-11 36:-11 38:-26 44:-15 45:-12 49:-9 56:-8 58:-8 62:-12 63:10 65:-9 76:16 84:133 85:-40 99:64 100:-23 101:25 104:38 105:50 106:-10 107:-12 108:-10 109:-8 110:-18 111:30 112:-9 115:-13 118:-8 126:-44
#n plan	1:8
plan for	1:8 2:28 4:-8 5:58 6:-11 10:-10 11:9 16:30 24:-18 26:-10 27:-15 28:21 30:98 84:11 85:-21 101:12 102:-14 110:-14 111:-24
@wire want	1:9
need==ed	1:13 5:24 8:-11 9:-10 16:37 20:-8 22:17 23:45 24:-9 26:11 28:10 39:12 88:32 100:26 104:-19 107:10 109:11 122:-21
need	0:44 1:64 4:9 6:73 7:80 8:-56 9:19 11:16 12:-33 14:-16 15:-29 16:21 17:-34 18:-12 19:12 21:-16 22:28 23:75 24:-50 25:-9 26:32 27:-30 28:68 30:-31 31:-10 32:-11 33:32 34:33 37:-19 38:-23 39:83 40:-13 42:-17 43:14 44:-23 45:-14 47:8 48:9 49:-23 51:-9 52:-12 53:-17 54:-12 56:-18 58:23 59:-16 61:-11 62:-21 64:-9 65:-10 66:-26 67:-8 68:-13 70:-8 71:-8 74:-9 75:-9 77:-15 78:-27 79:-9 84:24 85:61 88:11 89:-8 90:-10 92:-12 93:-9 94:-16 99:-14 100:49 101:-35 102:-27 103:-32 104:132 105:29 106:13 107:61 108:-21 109:-13 110:-11 111:-14 112:-17 113:-10 114:9 115:38 116:-18 118:-9 119:-17 120:8 121:8 122:34 123:9 125:-17 126:18
)~",
R"~(#n need	1:13 2:9 6:21 13:-11 24:-18 28:11 38:24 39:38 48:15 84:30 85:-8 104:11 115:24 126:-42
need for	4:11 5:18 6:27 9:-8 16:14 23:46 24:-10 26:13 28:17 33:-8 115:21 126:-9
for anyth	1:15 13:18 22:10 24:-10 41:15 82:9 115:18 126:-14
anyth $	1:12 9:91 10:-38 13:17 22:22 24:-15 27:22 32:38 33:-21 34:-8 92:11 115:9 126:-21
elsewher==e	1:35 2:14 49:26 94:9 109:10
elsewher	1:35 2:14 49:26 94:9 109:10
want elsewher	1:16
elsewher $	1:35 3:14 49:26 94:9 109:10
are #n	0:14 1:8 18:-10 29:-12 51:-19 55:9 59:19 62:9 63:19 67:28 75:45 81:20 82:-10 100:27 110:11 122:9 126:-10
need elsewher	1:19 109:14
@wire need	1:9 9:10 126:23
what would	0:34 2:-11 5:8 7:15 21:26 30:-11 31:38 34:-13 36:41 126:10
to take	1:16 6:10 17:8 24:31 28:17 36:15 105:-16 111:21 122:36 126:-16
take #n	69:8 71:-11 83:25 86:8 99:33 100:28 105:-14 122:35 126:45
will==	0:-47 2:-29 3:61 4:-18 5:24 6:35 7:11 8:-18 9:58 10:-10 11:-26 12:-18 13:-26 14:-12 16:-27 17:-25 18:49 19:-21 20:-11 21:-14 22:11 23:-8 24:-16 25:-15 26:-21 27:-11 29:31 30:47 31:20 32:-16 36:-23 37:42 39:24 44:-47 46:-21 49:96 51:-33 54:20 55:13 56:-22 62:-10 63:38 64:-20 65:65 66:-10 67:-13 68:-14 70:-8 72:-8 73:-11 75:-11 77:-8 78:-16 79:-20 80:-9 81:-9 82:29 83:-11 85:-11 86:-17 87:10 88:-21 90:-10 92:-10 93:-8 94:68 95:-44 96:-12 98:-13 100:-34 101:-11 103:35 104:-8 105:-9 108:-51 110:-11 111:40 112:38 113:14 114:-18 115:-8 116:45 117:-10 118:-10 119:64 120:79 121:10 122:-11 123:37 125:-18 126:90
cost==	1:42 5:-10 8:-18 9:-21 19:82 21:-10 28:-25 40:-8 51:12 80:11 118:26 126:36
will	0:-47 2:-29 3:61 4:-18 5:24 6:35 7:11 8:-18 9:58 10:-10 11:-26 12:-18 13:-26 14:-12 16:-27 17:-25 18:49 19:-21 20:-11 21:-14 22:11 23:-8 24:-16 25:-15 26:-21 27:-11 29:31 30:47 31:20 32:-16 36:-23 37:42 39:24 44:-47 46:-21 49:96 51:-33 54:20 55:13 56:-22 62:-10 63:38 64:-20 65:65 66:-10 67:-13 68:-14 70:-8 72:-8 73:-11 75:-11 77:-8 78:-16 79:-20 80:-9 81:-9 82:29 83:-11 85:-11 86:-17 87:10 88:-21 90:-10 92:-10 93:-8 94:68 95:-44 96:-12 98:-13 100:-34 101:-11 103:35 104:-8 105:-9 108:-51 110:-11 111:40 112:38 113:14 114:-18 115:-8 116:45 117:-10 118:-10 119:64 120:79 121:10 122:-11 123:37 125:-18 126:90
what will	1:22 10:8 30:9 31:11
cost	1:41 5:-11 8:-18 9:-21 10:9 19:82 21:-10 28:-25 40:-8 51:12 80:11 100:12 118:26 126:33
cost $	1:10 8:-16 9:-20 10:8 19:74 28:-24 126:50
tak==ing	1:11 2:10 4:-13 5:-17 22:11 28:17 33:14 49:-9 65:26 70:14 81:-9 85:19 109:33 110:8 111:55 112:-8 126:-19
tak	1:11 2:10 4:-13 5:-17 22:11 28:17 33:14 49:-9 65:26 70:14 81:-9 85:19 109:33 110:8 111:55 112:-8 126:-19
it==	1:45 2:-59 3:55 4:-25 5:17 6:-25 7:9 11:11 12:-44 13:18 14:-51 15:-21 16:-27 17:29 18:20 19:-20 20:-29 22:-38 25:24 27:-19 28:-44 29:-39 30:-20 31:17 32:-24 33:-22 34:-8 35:-8 36:-19 37:48 38:53 39:27 40:20 41:54 43:33 44:31 46:-15 47:-15 48:25 49:24 51:10 52:39 55:-17 56:-25 57:9 59:-48 60:19 63:-35 64:-30 65:25 66:18 67:22 68:-19 69:-9 70:49 71:27 72:-10 73:-13 74:-25 75:-30 76:11 78:53 79:31 80:-21 81:-14 82:-31 83:-28 84:56 85:-24 86:21 87:51 88:21 89:-26 90:69 92:16 93:36 94:55 95:51 96:21 98:20 99:21 100:9 101:40 102:14 103:15 104:8 106:12 107:30 108:-10 109:18 110:-52 111:-37 112:-12 113:-15 114:14 119:10 120:21 121:-14 123:-13 125:64 126:-32
what doe	8:41 11:-11 12:11 17:15 18:-8 24:32 25:-15 26:-18 28:17 30:24 31:-8 32:-11 33:-11 34:-11 36:28 126:19
it	1:45 2:-59 3:55 4:-25 5:17 6:-25 7:9 11:11 12:-44 13:18 14:-51 15:-21 16:-27 17:29 18:20 19:-20 20:-29 22:-38 25:24 27:-19 28:-44 29:-39 30:-20 31:17 32:-24 33:-22 34:-8 35:-8 36:-19 37:48 38:53 39:27 40:20 41:54 43:33 44:31 46:-15 47:-15 48:25 49:24 51:10 52:39 55:-17 56:-25 57:9 59:-48 60:19 63:-35 64:-30 65:25 66:18 67:22 68:-19 69:-9 70:49 71:27 72:-10 73:-13 74:-25 75:-30 76:11 78:53 79:31 80:-21 81:-14 82:-31 83:-28 84:56 85:-24 86:21 87:51 88:21 89:-26 90:69 92:16 93:36 94:55 95:51 96:21 98:20 99:21 100:9 101:40 102:14 103:15 104:8 106:12 107:30 108:-10 109:18 110:-52 111:-37 112:-12 113:-15 114:14 119:10 120:21 121:-14 123:-13 125:64 126:-32
doe it	1:18 3:36 8:10 9:-16 11:35 13:40 16:26 17:-9 20:-10 26:39 30:-28 31:59 33:22 36:-8 49:-11 65:18 90:-8 104:-8 126:-27
it cost	1:23 10:8
@wire cost	8:-18 9:-19 19:76 21:-8
if==	0:82 1:49 2:84 3:109 4:-8 5:54 6:-10 7:10 11:-13 12:-9 13:-18 14:16 15:-8 16:71 17:-18 18:97 21:-18 22:-22 23:-8 24:-41 25:-9 27:-9 31:107 32:-11 33:-11 34:-25 36:22 37:-15 38:-19 39:-8 40:-15 41:-10 42:-13 43:34 45:-27 46:-10 48:13 49:-9 51:-12 52:12 55:-10 56:-15 57:-20 64:-17 66:-8 68:-12 70:-15 71:-16 72:-9 74:-14 75:-40 76:-13 78:-17 83:-12 85:-24 87:-12 88:11 90:-22 91:-9 93:-18 95:-8 98:8 102:-20 103:-12 104:-8 111:-16 120:-12 125:14 126:163
used==	2:-9 3:-22 4:-10 9:22 13:-11 14:8 15:-9 16:-12 18:-9 19:-8 20:52 21:-20 22:34 24:-10 26:53 29:-9 30:-9 32:-14 34:45 36:21 37:106 38:-45 39:-12 45:-16 55:-14 71:-15 72:11 78:-11 80:-13 83:96 85:10 87:11 89:8 90:-15 92:-10 94:-12 102:34 104:-11 107:-12 122:-32 126:81
if	0:82 1:49 2:84 3:109 4:-8 5:54 6:-10 7:10 11:-13 12:-9 13:-18 14:16 15:-8 16:71 17:-18 18:97 21:-18 22:-22 23:-8 24:-41 25:-9 27:-9 31:107 32:-11 33:-11 34:-25 36:22 37:-15 38:-19 39:-8 40:-15 41:-10 42:-13 43:34 45:-27 46:-10 48:13 49:-9 51:-12 52:12 55:-10 56:-15 57:-20 64:-17 66:-8 68:-12 70:-15 71:-16 72:-9 74:-14 75:-40 76:-13 78:-17 83:-12 85:-24 87:-12 88:11 90:-22 91:-9 93:-18 95:-8 98:8 102:-20 103:-12 104:-8 111:-16 120:-12 125:14 126:163
if i	0:16 1:36 2:11 16:42 22:-8 31:16 34:9 36:39 40:-17 45:-23 78:-8 106:9 125:21 126:-29
used	2:-9 3:-22 4:-10 9:22 13:-11 14:8 15:-9 16:-12 18:-9 19:-8 20:52 21:-20 22:34 24:-10 26:53 29:-9 30:-9 32:-14 34:45 36:21 37:106 38:-45 39:-12 45:-16 55:-14 71:-15 72:11 78:-11 80:-13 83:96 85:10 87:11 89:8 90:-15 92:-10 94:-12 102:34 104:-11 107:-12 122:-32 126:81
i used	0:28 1:9 3:-17 37:11 45:-9 70:11 83:10 98:10 126:-29
used #d	34:15
will it	9:20 10:8 18:11 30:11 42:24 126:-13
cost to	1:14
take piece	1:26
would it	0:40 1:22 58:-8 126:-15
to use	1:19 16:13 34:-11 37:-36 82:10 126:39
take number	0:-26 37:39
i take	0:54 36:11 39:8 111:10 126:-23
have #d	8:-8 67:50
i have	0:-16 1:15 2:-10 5:18 7:10 8:-13 9:8 11:15 12:16 27:71 29:-14 30:38 32:8 34:-12 36:-11 37:14 38:-12 40:13 44:11 47:-10 48:-10 67:-21 73:10 75:8 76:-17 78:9 79:15 80:20 82:15 83:-28 88:9 89:9 90:13 95:12 98:-14 99:9 100:13 102:-12 106:30 109:-9 112:-12 120:8 122:-8 126:-38
have #n	0:-15 1:21 22:9 51:12 67:12 100:75 101:12 102:-8 122:-11 126:-9
want==s	1:67 13:14 20:8 22:19 24:-10 26:17 27:14 29:27 30:-17 31:20 34:-41 36:18 37:-15 38:32 39:61 41:-14 44:-17 48:10 55:9 56:-10 57:35 58:-8 59:10 62:-10 63:-23 64:-11 66:-14 67:-9 70:23 84:8 90:-10 94:-16 96:-8 98:-13 100:-18 104:37 106:10 111:-18 112:-23 113:-9 115:-11 116:13 122:23 126:25
which job	0:-29 1:73 9:10 12:26 13:-9 14:-21 24:18 27:-8 29:-9 30:77
job want	1:34 36:16
want piece	39:17 126:-12
want #n	0:10 31:10 38:10 94:-14 105:8 122:23
need==s	0:8 1:27 3:-13 4:-15 5:10 8:-29 11:19 12:-13 13:-15 19:10 21:-11 22:36 23:-17 24:-13 34:-13 37:-9 38:29 39:18 43:18 44:-11 47:9 48:30 56:-9 59:-8 62:-18 66:-17 78:-12 84:40 85:33 88:-8 100:37 101:-20 102:-12 103:-20 104:164 105:14 107:-21 110:-9 116:-10 119:-12 122:51 126:58
job need	1:19 11:20 12:-9
need #d	0:13 1:22
who==	0:-23 1:27 3:-10 4:-15 5:-15 8:-28 9:-50 10:9 11:-23 12:-11 13:-61 14:179 15:209 16:-18 18:-11 20:-16 21:-10 22:-14 23:-15 24:70 25:-10 26:69 27:107 28:-14 29:107 30:50 32:22 33:99 34:160 36:-21 37:-24 38:-8 39:-30 40:-15 41:-21 44:-31 45:-18 46:-8 48:-17 49:-14 51:-8 54:-13 55:-11 56:-12 61:12 63:19 64:58 65:18 66:-9 67:-9 71:-9 78:-8 79:-8 88:-9 90:-10 92:-22 94:-10 95:-11 96:-10 97:10 99:-8 100:-19 101:-11 102:-24 103:-13 104:-23 105:-12 106:-18 107:-13 108:-24 109:-17 110:-10 111:-21 112:-8 113:-12 114:-17 115:-14 116:-17 118:-11 120:-8 121:10 122:-11 123:29 125:-12
who	0:-23 1:27 3:-10 4:-15 5:-15 8:-28 9:-50 10:9 11:-23 12:-11 13:-61 14:179 15:209 16:-18 18:-11 20:-16 21:-10 22:-14 23:-15 24:70 25:-10 26:69 27:107 28:-14 29:107 30:50 32:22 33:99 34:160 36:-21 37:-24 38:-8 39:-30 40:-15 41:-21 44:-31 45:-18 46:-8 48:-17 49:-14 51:-8 54:-13 55:-11 56:-12 61:12 63:19 64:58 65:18 66:-9 67:-9 71:-9 78:-8 79:-8 88:-9 90:-10 92:-22 94:-10 95:-11 96:-10 97:10 99:-8 100:-19 101:-11 102:-24 103:-13 104:-23 105:-12 106:-18 107:-13 108:-24 109:-17 110:-10 111:-21 112:-8 113:-12 114:-17 115:-14 116:-17 118:-11 120:-8 121:10 122:-11 123:29 125:-12
)~",
R"~(^ who	0:-8 1:45 2:-8 4:-8 8:-21 9:-44 11:-13 13:-31 14:71 15:68 16:-11 17:-25 19:10 20:-11 22:-10 23:-10 24:83 26:21 27:47 28:-8 29:115 30:65 31:-8 32:39 33:123 34:121 36:-9 37:-16 39:-21 41:-10 44:-26 45:-15 48:-10 56:-8 58:-11 59:-20 65:-12 100:-11 102:-16 104:-14 106:-8 107:-9 108:-16 115:-9 123:-8 126:19
who need	1:18
need piece	39:40 126:-18
anybody==	1:46 12:-9 13:17 14:17 15:104 17:-20 19:-8 20:-9 21:-14 24:32 26:58 27:18 29:77 30:-10 31:8 32:30 33:-9 35:10 38:-18 39:18 41:-16 44:-20 48:-10 49:-9 61:37 62:-13 65:-21 66:56 84:-8 85:14 102:-8 103:-10 104:-21 108:-21 109:-16 114:-9 126:29
need==	0:40 1:23 3:15 4:27 5:-32 6:78 7:89 8:-16 9:33 12:-16 13:17 14:-9 15:-23 16:-16 17:-24 20:16 21:-8 22:-25 23:47 24:-27 26:25 27:-17 28:56 30:-20 33:32 34:48 37:-10 38:-48 39:52 41:12 42:-10 48:-18 49:-15 50:-8 52:-10 53:-15 54:-8 56:-8 58:32 65:-11 77:-12 78:-14 82:11 84:-13 85:29 88:-13 94:-9 99:-9 100:-14 101:-13 102:-12 103:-9 104:-14 105:18 106:15 107:69 108:-12 109:-18 111:-16 112:-11 114:8 115:37 116:-8 121:12 123:13 125:-10 126:-44
^ doe	0:-10 1:49 3:45 4:-9 8:-11 9:26 13:-21 15:53 16:-12 17:43 18:32 19:-12 20:14 21:36 22:46 24:41 25:25 26:41 28:90 29:33 30:-15 32:41 33:25 34:-8 36:-17 38:-13 39:-23 65:-28 78:-10 90:-56 92:-14 104:-25 112:-8 115:-8 122:-23 126:-23
anybody	1:46 12:-9 13:17 14:17 15:104 17:-20 19:-8 20:-9 21:-14 24:32 26:58 27:18 29:77 30:-10 31:8 32:30 33:-9 35:10 38:-18 39:18 41:-16 44:-20 48:-10 49:-9 61:37 62:-13 65:-21 66:56 84:-8 85:14 102:-8 103:-10 104:-21 108:-21 109:-16 114:-9 126:29
doe anybody	1:28 13:-13 15:49 126:-15
anybody need	1:18
need number	1:18
want==	0:-13 2:-12 7:16 8:13 9:28 13:9 15:-13 21:9 22:8 28:-16 29:-16 31:-9 32:9 33:-27 34:-11 36:-11 39:-8 41:8 49:49 51:-8 52:14 56:43 57:-19 61:28 62:21 63:-9 65:-39 66:-21 80:19 84:24 85:-9 92:20 94:12 95:-36 99:9 101:-9 104:33 108:14 109:-9 110:-8 111:-8 114:-9 115:24 117:18 120:30 123:18 126:-13
anybody want	1:9 126:19
want the	1:10 5:-15 6:21 7:10 16:-8 20:15 29:-10 49:9 56:15 104:20 106:8 107:11 110:10 115:24 126:-22
anyon==e	1:-9 3:-8 8:18 11:-9 13:-30 15:108 17:-23 24:29 26:29 27:15 33:20 34:76 37:-11 38:12 39:-13 41:-20 42:10 48:-11 54:-13 65:-17 66:100 81:-14 97:10 98:-9 102:-10 106:-15 108:-12
anyon	1:-9 3:-8 8:18 11:-9 13:-30 15:108 17:-23 24:29 26:29 27:15 33:20 34:76 37:-11 38:12 39:-13 41:-20 42:10 48:-11 54:-13 65:-17 66:100 81:-14 97:10 98:-9 102:-10 106:-15 108:-12
doe anyon	24:46 38:-9 39:-16 126:-9
anyon need	1:13
need #n	1:15 10:-11 105:34 119:-9 121:16 122:34 126:14
somebody==	0:-12 5:-8 8:-13 9:-9 11:-8 12:-9 13:-18 14:-8 15:74 16:-8 19:-14 20:15 22:-14 23:35 24:47 26:34 29:14 30:10 31:14 34:-22 37:-17 38:8 39:-31 59:27 66:20 68:-11 70:20 75:10 77:-18 87:9 91:-16 101:-10 102:-11 103:-9 104:-14 107:11 108:-10 109:13 121:19 125:-14 126:118
somebody	0:-12 5:-8 8:-13 9:-9 11:-8 12:-9 13:-18 14:-8 15:74 16:-8 19:-14 20:15 22:-14 23:35 24:47 26:34 29:14 30:10 31:14 34:-22 37:-17 38:8 39:-31 59:27 66:20 68:-11 70:20 75:10 77:-18 87:9 91:-16 101:-10 102:-11 103:-9 104:-14 107:11 108:-10 109:13 121:19 125:-14 126:118
doe somebody	11:-17 30:24
somebody need	88:11
got==	0:21 3:-31 4:-31 5:-23 6:15 8:50 9:11 10:-26 11:25 12:50 13:9 14:31 15:45 16:-16 17:-10 18:-13 21:-12 22:21 23:33 24:13 25:-18 27:49 28:-43 29:-28 30:18 31:-11 32:34 33:-15 34:-31 36:-11 37:16 38:-19 41:-18 42:11 43:-11 44:30 45:61 49:-15 51:52 54:-8 56:-19 58:-8 61:12 65:43 66:-9 67:-28 68:-18 69:-14 70:14 71:38 72:-12 73:-17 76:-11 77:15 78:10 80:-9 83:-19 84:-10 85:-14 88:-12 89:-8 90:-17 91:12 92:-19 95:54 96:11 97:9 98:-13 99:19 100:55 101:-10 102:-18 103:52 104:-9 105:-21 107:-14 109:-15 110:-20 111:-16 114:-12 115:-10 116:-8 117:15 118:80 120:-14 121:-15 125:-13 126:-46
^ we	0:-18 2:-33 3:-9 4:-10 5:-19 6:-22 7:8 8:-25 9:-24 10:-24 11:-30 12:-14 13:-19 14:-8 15:-8 17:-10 19:-24 20:-17 21:-14 22:-20 23:-13 24:-26 25:-11 26:-52 27:-14 28:-13 29:-45 30:-28 31:-35 32:-42 33:-37 34:-18 38:-11 39:13 40:-10 41:61 42:-8 44:20 45:22 46:-11 48:19 49:36 51:9 52:8 54:84 55:61 61:21 62:-9 63:15 64:20 65:23 66:-9 67:75 68:-22 69:-9 70:-12 72:19 73:-8 78:56 79:17 80:11 82:-26 83:15 86:13 87:24 92:-9 94:-15 97:-9 98:-8 99:40 100:15 101:38 102:37 103:24 105:19 106:56 107:24 108:13 109:38 110:-9 112:-32 114:-8 115:-13 116:10 117:32 118:-29 119:-17 120:-47 121:83 122:-27 123:65 126:71
got	0:21 3:-31 4:-31 5:-23 6:15 8:50 9:11 10:-26 11:25 12:50 13:9 14:31 15:45 16:-16 17:-10 18:-13 21:-12 22:21 23:33 24:13 25:-18 27:49 28:-43 29:-28 30:18 31:-11 32:34 33:-15 34:-31 36:-11 37:16 38:-19 41:-18 42:11 43:-11 44:30 45:61 49:-15 51:52 54:-8 56:-19 58:-8 61:12 65:43 66:-9 67:-28 68:-18 69:-14 70:14 71:38 72:-12 73:-17 76:-11 77:15 78:10 80:-9 83:-19 84:-10 85:-14 88:-12 89:-8 90:-17 91:12 92:-19 95:54 96:11 97:9 98:-13 99:19 100:55 101:-10 102:-18 103:52 104:-9 105:-21 107:-14 109:-15 110:-20 111:-16 114:-12 115:-10 116:-8 117:15 118:80 120:-14 121:-15 125:-13 126:-46
we got	0:27 4:-18 8:39 9:25 11:40 12:21 13:-8 14:20 19:-24 22:21 26:16 28:-21 30:-16 32:24 34:-15 51:61 68:-19 78:-9 100:10 117:-16 118:10
got a	0:8 1:10 2:8 3:-8 19:10 27:11 30:34 37:-9 38:-9 48:9 51:33 59:-11 61:20 68:-22 91:10 96:24 99:-12 112:14 118:-9 119:11 126:12
it go	1:28 3:12 39:34 85:20 103:-11 125:-9 126:10
^ i	0:-26 2:-15 3:-38 4:9 5:-32 6:-18 8:11 9:-14 10:9 12:-30 16:-52 17:-60 18:-26 20:11 22:-23 23:-45 27:-31 28:-29 29:-36 30:-34 31:-29 33:-49 34:33 36:12 37:29 38:-11 39:-39 41:19 42:-16 43:10 44:14 45:18 46:-8 48:8 49:-8 53:8 54:-31 55:-10 56:41 57:10 58:-9 59:-11 60:12 62:14 64:-12 65:55 66:64 68:8 70:-20 71:-13 72:18 73:-25 74:12 75:10 78:51 79:28 81:-8 82:9 83:17 84:17 85:-17 89:-12 90:11 91:21 92:-20 93:-11 97:-11 100:27 101:35 102:-12 103:-18 104:-21 106:27 107:61 108:72 109:109 110:-9 111:131 112:56 114:-26 117:-17 119:-29 120:26 121:-8 125:-19 126:73
have a	6:10 7:11 11:-10 12:-11 27:-13 29:-14 30:54 31:12 48:20 59:9 75:28 86:15 87:-8 94:8 99:64 100:-12 101:16 126:-22
should it	3:11 116:-11
@wire wher	1:9 52:-19 126:27
here==	0:-18 2:-13 4:-9 5:-9 7:-10 8:15 9:-30 10:-17 11:-21 12:-19 14:46 15:-15 16:-19 18:-14 19:-10 20:-12 21:-8 22:-17 23:40 24:-15 27:-20 28:14 29:59 30:-52 31:-13 32:24 33:-26 36:37 39:-8 42:11 44:-12 48:-13 50:9 51:24 54:44 55:-12 56:26 58:-9 59:88 60:-9 61:13 62:17 63:75 64:36 65:27 66:-12 67:-26 70:-9 78:-26 79:-10 87:10 88:-13 92:-8 100:-16 101:21 103:-13 106:-14 107:-15 108:24 109:22 110:17 112:27 113:-16 117:18 118:111 119:23 120:-38 126:-59
i got	12:8 23:14 30:26 37:-8 42:11 44:37 71:33 108:14 109:-11 126:-13
here	0:-18 2:-13 4:-9 5:-9 7:-10 8:15 9:-30 10:-17 11:-21 12:-19 14:46 15:-15 16:-19 18:-14 19:-10 20:-12 21:-8 22:-17 23:40 24:-15 27:-20 28:14 29:59 30:-52 31:-13 32:24 33:-26 36:37 39:-8 40:12 42:11 44:-12 48:-13 50:9 51:24 54:44 55:-12 56:26 58:-9 59:88 60:-9 61:13 62:17 63:75 64:36 65:27 66:-12 67:-26 70:-9 78:-26 79:-10 87:10 88:-13 92:-8 100:-16 101:21 103:-13 106:-14 107:-15 108:24 109:22 110:17 112:27 113:-16 117:18 118:111 119:23 120:-38 126:-59
@wire here	1:14 8:-9 118:49 126:8
have got	73:-11 100:42 126:21
got #n	2:11 3:-8 37:-10 40:-11 42:-17 51:52 67:-12 70:9 71:42 77:25 83:-14 99:47 100:21 126:-20
an #n	31:15 40:8 114:21
^ got	1:8 3:-11 41:-12 44:10 45:11 51:81 67:-11 71:38 83:-28 99:15 100:-9 103:12 117:-14 118:20 119:10
got #d	40:15 42:31
an #d	40:14
shift==	2:249 4:-13 13:-17 16:-14 17:-12 30:-9 36:15 43:-10 45:-11 48:17 63:-9 75:-9 76:34 81:-8 83:-13 90:-20 96:-10 106:-13 110:-16 112:34 126:69
slot==s	0:-66 1:-21 2:84 3:-49 4:191 5:-23 6:-32 8:-14 9:-10 11:-17 12:-20 13:92 14:-11 15:-16 16:32 17:-34 18:123 24:-12 25:-8 26:-9 27:32 28:49 29:-9 30:-23 31:53 32:-11 33:-18 34:-42 36:-15 37:-106 38:-44 39:-9 40:-21 42:-62 43:-46 44:102 45:36 46:-33 48:-22 49:-23 51:-9 56:-9 59:-9 63:-8 65:-21 69:-8 70:-8 71:141 72:105 73:11 74:-22 75:162 76:-35 77:-37 78:-47 79:-59 81:-30 82:-38 83:149 84:-9 85:-11 88:-14 90:-30 92:33 93:-33 94:-16 95:-8 97:24 98:16 99:-8 100:-9 102:-11 104:22 105:33 106:-11 107:-9 108:89 109:48 113:-10 114:-17 115:-40 118:-10 122:22
length==s	0:-10 2:56 4:170 5:8 8:34 17:-8 22:-27 40:-31 43:-10 45:-18 56:27 72:-22 76:-9 80:60 81:91 82:-11 83:-67 90:-13 94:-13 126:-10
)~",
R"~(open==	0:-29 1:27 2:51 4:-26 5:-13 6:20 8:-15 9:14 10:-19 11:-31 12:121 13:85 14:15 15:-19 16:-10 17:-12 18:-12 19:-9 20:-14 22:-10 24:-20 26:-21 27:-13 28:-18 29:89 30:-42 31:-19 32:41 33:-15 34:-17 36:-15 38:-8 39:13 41:-10 44:-12 48:-8 53:104 54:65 55:142 56:-13 58:-8 59:-8 62:-10 63:-41 65:-11 66:31 76:-19 78:20 84:-8 90:-11 92:-9 95:8 100:-13 101:21 102:-14 103:-8 106:-30 107:-8 110:18 111:-24 112:-45 113:98 114:-10 116:-11 117:-8 118:-9 119:-16 120:8 125:-9 126:54
shift	2:213 3:-9 4:-14 13:-18 16:-14 17:-13 30:-10 36:13 42:-19 43:-17 44:-9 45:-14 46:-12 63:-10 65:-9 66:-10 71:-10 72:-10 73:-9 75:-9 76:223 81:-9 82:-13 83:-17 90:-29 96:-12 106:-13 108:-8 110:-16 112:33 114:-8 126:83
^ shift	2:154 4:-10 13:-11 42:-15 48:15 63:-9 76:114 82:-8 90:-8 126:-12
#n tin	2:28 4:-12
tin ~	2:34 4:-15 76:-8
open	0:-18 1:24 2:41 4:-27 5:12 6:19 8:-22 9:12 10:-21 11:-36 12:118 13:83 14:13 15:-19 16:-10 17:-13 18:-13 19:-11 20:16 22:-12 23:-9 24:-20 25:-8 26:-24 27:-15 28:-19 29:147 30:-48 31:-20 32:40 33:-19 34:-19 36:-16 38:-9 39:12 41:-11 44:-14 45:-8 46:-8 48:-15 53:108 54:55 55:238 56:-16 58:-9 59:-9 62:-11 63:-41 65:-12 66:24 72:-11 76:-21 78:20 84:-8 85:-8 90:-12 92:-10 100:-16 101:20 102:-19 103:-9 106:-38 107:-9 109:-8 110:34 111:-30 112:-58 113:79 114:-11 116:-15 117:-8 118:-10 119:-21 125:-10 126:55
open ~	2:14 4:-8
~ length	2:16 81:-14 86:19
mm slot	2:10 4:-8 75:17 79:9
shift job	2:89 13:-10 48:19 76:8 126:-21
#n open	29:22 55:-8
#r length	2:11 42:9
@job open	42:11
shift the	2:19 16:-8 76:10 126:11
&#d#n#r@job	3:10
lay==	1:-9 2:108 5:-9 13:-9 14:8 16:-21 17:46 19:9 38:18 84:59 90:-33 100:-8 126:11
out==	2:61 3:-23 4:9 5:42 6:-10 7:-17 9:61 11:30 12:-24 13:-32 14:-15 15:-12 16:-37 17:-25 18:-19 19:-40 20:62 21:9 22:57 23:-10 24:-21 25:-18 27:-18 28:10 29:-13 30:-39 31:-14 32:-8 33:-22 34:-31 36:-12 37:23 38:-11 40:-34 41:84 42:-39 43:38 44:17 45:-33 46:-24 48:30 49:46 51:-31 53:-15 54:-9 55:-10 56:-19 58:26 59:-12 62:-24 63:11 64:31 65:-17 66:-19 67:-17 69:-10 70:-16 71:74 72:8 73:93 74:51 78:-40 79:-37 80:-8 81:-16 82:67 83:17 84:-17 86:-12 87:28 88:33 90:-24 91:-26 92:17 94:-22 95:-25 96:40 97:-18 98:-17 99:-14 100:-27 101:25 102:102 103:-8 105:-10 106:-23 107:19 111:54 112:23 113:-14 114:-17 115:16 116:-18 118:-8 119:-28 121:-21 122:-11 123:88 125:10
fret==s	1:-36 2:165 3:-35 5:46 8:13 9:-46 10:-11 11:-14 12:-25 13:56 14:-27 15:-31 16:52 17:8 19:-20 21:26 23:8 24:-24 25:113 26:-34 27:-13 28:68 29:-17 30:-35 31:67 32:-13 33:-29 34:41 36:-34 37:-48 38:-26 39:-10 40:-31 41:-8 42:-36 43:-22 44:90 45:66 46:12 47:67 48:-27 49:-27 50:-8 51:-19 54:-9 55:-9 58:-8 59:-10 66:-22 69:-11 71:103 73:99 74:19 75:-14 76:34 77:-20 78:-45 79:-70 80:31 81:-21 83:11 85:-29 86:-22 88:-19 89:-9 90:-50 93:-8 94:41 95:-20 96:21 98:-11 99:-21 100:-17 102:-8 103:-11 104:53 105:50 106:-23 108:78 109:11 112:-9 113:-9 114:-11 115:-26 116:42 117:-11 118:-11 122:-9 125:-9 126:45
and==	1:-53 2:25 3:-12 4:64 6:27 7:-34 9:17 10:70 11:18 12:-18 13:20 14:45 15:-20 16:15 17:15 18:8 20:62 21:27 22:-50 23:-38 24:40 25:-39 26:26 27:-33 28:36 29:-39 33:27 34:-14 37:-25 38:-44 39:-33 40:13 42:-55 43:-27 44:15 45:28 46:12 47:-15 48:-24 49:-40 50:8 51:-28 54:12 55:-61 56:-28 57:13 58:-18 63:45 65:-28 66:-21 67:33 68:-18 70:-10 71:61 73:27 74:-10 76:63 77:-8 78:-19 79:-15 80:-18 81:11 82:27 83:50 84:44 86:21 87:-37 88:22 89:42 90:-9 91:62 92:25 93:15 94:35 95:24 96:73 97:46 98:27 99:-28 100:-20 101:-19 103:17 105:-34 106:22 107:-24 108:-36 109:-24 111:14 112:-44 113:-37 114:-40 115:8 116:39 117:42 118:38 119:-23 120:29 121:9 125:-12 126:-34
lay	1:-9 2:108 5:-9 13:-9 14:8 16:-21 17:46 19:9 38:18 84:59 90:-33 100:-8 126:11
^ lay	2:16 38:19 84:55 90:-29 126:31
out	2:61 3:-23 4:9 5:41 6:-10 7:-29 9:54 11:30 12:-24 13:-33 14:-15 15:-12 16:-37 17:-25 18:-19 19:-41 20:107 21:9 22:57 23:-10 24:-21 25:-19 27:-18 28:10 29:-13 30:-39 31:-14 32:-9 33:-23 34:-31 36:-12 37:23 38:-11 40:-34 41:83 42:-39 43:38 44:17 45:-33 46:-24 48:30 49:46 51:-31 53:-15 54:-9 55:-10 56:-19 58:26 59:-12 62:-24 63:11 64:31 65:-17 66:-19 67:-18 68:-9 69:-11 70:-16 71:74 72:8 73:93 74:51 78:-40 79:-37 80:-8 81:-16 82:66 83:17 84:-17 86:-12 87:28 88:33 90:-24 91:-26 92:17 94:-22 95:-25 96:40 97:-18 98:-17 99:-14 100:-27 101:25 102:102 103:-8 105:-10 106:-23 107:19 111:54 112:23 113:-14 114:-17 115:16 116:-18 118:-8 119:-28 121:-21 122:-11 123:88 125:10
lay out	2:8 4:8 14:9
out the	4:19 8:17 14:8 22:11 28:19 82:13 87:9 92:-8 93:9 126:-8
the fret	0:-42 2:80 3:11 4:63 5:-15 6:-9 7:25 13:41 14:20 15:-12 16:-15 17:-20 18:16 25:-15 31:-8 34:13 37:-29 42:45 43:23 44:28 73:-14 75:-8 76:66 77:-22 78:48 79:-11 88:-11 91:27 92:-27 94:-25 97:9 101:8 105:-13 108:53 109:23 126:-76
and the	0:110 1:11 11:60 14:-16 16:-18 17:42 18:-8 20:17 21:-14 24:-12 28:-10 31:-8 34:-19 37:-24 44:36 45:-11 48:-10 67:17 71:10 73:-9 76:29 78:-30 79:27 82:-10 84:36 85:-8 88:19 89:17 90:12 91:8 94:-16 100:-13 106:28 109:-10 118:11 119:-14 126:-13
tin $	0:-33 1:11 2:72 3:-12 4:-10 5:-27 7:25 8:126 9:-8 11:-9 12:-8 14:-13 16:-10 21:-51 22:24 23:-12 24:51 26:-10 28:-8 30:-12 34:30 36:-10 37:-29 39:-8 40:98 41:-19 42:-12 45:-9 72:-9 73:68 76:88 78:-16 79:44 80:49 82:-11 83:27 89:-8 92:-9 96:-15 126:-11
anew==	2:41 4:-8 13:-8 16:-8 34:-8 42:-13 46:-11 72:-40 73:-10 76:-11 79:130 90:-10 96:80 102:-19 103:19 116:32 126:24
anew	2:41 4:-8 13:-8 16:-8 34:-8 42:-13 46:-11 72:-40 73:-10 76:-11 79:130 90:-10 96:80 102:-19 103:19 116:32 126:24
#n anew	72:-39 79:51 116:19 126:-23
anew and	42:-10 79:11
the open	2:10 8:-9 9:34 12:24 29:21 32:22 53:23 55:-22 101:10 120:15 126:-14
open slot	2:57 4:-8 126:-9
slot $	0:-9 1:19 2:-16 4:128 13:-28 16:-9 18:26 31:39 33:-14 37:32 42:-8 44:-14 66:19 75:-21 76:12 77:15 78:-8 83:-9 92:49 122:15 126:-25
with==	0:-34 2:50 3:20 4:-18 7:42 8:-50 10:13 11:18 12:-25 13:23 15:40 16:27 17:11 18:28 19:10 20:-16 22:-41 23:36 24:-33 25:38 26:20 27:-29 28:30 29:-14 30:-11 31:16 33:-15 34:16 36:23 37:10 38:42 39:-39 40:-14 41:14 42:-11 43:12 44:38 45:18 46:-28 47:11 48:-15 49:-24 50:21 51:-15 52:-8 54:-19 56:-27 57:24 59:18 60:18 61:-16 62:-35 64:22 65:-9 66:-52 67:-9 68:20 70:-30 72:-24 73:13 74:43 76:-27 77:-16 79:-21 80:-23 82:30 84:-9 85:-21 87:-11 88:-25 90:-12 91:-14 92:-22 93:-18 94:-10 95:10 97:30 98:41 100:-14 101:14 103:10 104:-9 105:35 108:60 110:10 112:-22 113:-16 114:50 115:13 116:-20 117:43 118:-21 119:-8 120:15 121:-13 123:58 125:-14 126:-11
the the	9:-8 19:10 119:18
@job anew	2:25 79:9
with	0:-34 2:50 3:20 4:-18 7:42 8:-50 10:13 11:18 12:-25 13:23 15:40 16:27 17:11 18:28 19:10 20:-16 22:-41 23:36 24:-33 25:38 26:20 27:-29 28:30 29:-14 30:-11 31:16 33:-15 34:16 36:23 37:10 38:42 39:-39 40:-14 41:14 42:-11 43:12 44:38 45:18 46:-28 47:11 48:-15 49:-24 50:21 51:-15 52:-8 54:-19 56:-27 57:24 59:18 60:18 61:-16 62:-35 64:22 65:-9 66:-52 67:-9 68:20 70:-30 72:-24 73:13 74:43 76:-27 77:-16 79:-21 80:-23 82:30 84:-9 85:-21 87:-11 88:-25 90:-12 91:-14 92:-22 93:-18 94:-10 95:10 97:30 98:41 100:-14 101:14 103:10 104:-9 105:35 108:60 110:10 112:-22 113:-16 114:50 115:13 116:-20 117:43 118:-21 119:-8 120:15 121:-13 123:58 125:-14 126:-11
with the	1:12 2:56 3:-33 6:11 8:-32 9:15 11:-16 12:-16 13:-23 14:8 16:61 17:-28 20:-14 22:-13 23:37 24:-8 25:9 26:-16 30:-20 31:-9 32:12 34:14 38:-9 39:-17 40:-12 42:43 44:-18 45:45 49:-8 51:15 55:-8 56:-9 58:-8 64:-9 65:-17 68:-14 71:-18 73:22 74:9 76:-12 78:32 79:-29 81:10 83:-15 87:-31 88:-25 90:19 94:-10 95:14 96:-8 97:-8 98:54 99:-9 100:9 101:34 102:-13 103:10 104:-9 105:16 107:21 108:46 109:-19 112:8 115:18 116:-8 117:-8 118:-15 119:10 123:-10 126:-24
shift @job	2:17
tin and	5:20 34:10 82:8 84:14
@job with	4:34 15:44 37:11 65:-9 74:11 83:-11 96:12 97:14 98:13 126:-21
shift fret	2:-18 76:26 82:-8 126:35
#n with	0:12 15:10 16:29 17:-20 41:10 42:16 45:-15 46:8 66:13 71:-8 76:-11 83:24 90:-8 93:-9 98:24 102:10 114:-9 126:-15
being==	3:18 12:-20 13:-28 15:43 24:67 30:-8 44:-40 48:-12 54:24 66:-9 85:9 102:8 104:11 108:81 109:12 111:-9 114:-10 115:31 118:25 119:-15 126:10
with slot	18:26 34:10 75:-8
being	3:18 12:-20 13:-28 15:43 24:67 30:-8 44:-40 48:-12 54:24 66:-9 85:9 102:8 104:11 108:81 109:12 111:-9 114:-10 115:31 118:25 119:-15 126:10
)~",
R"~(being #n	3:12
mm and	40:13 73:8 83:-10
at==	0:-24 1:-23 3:33 4:-20 5:-13 6:10 8:8 9:-10 10:26 11:14 12:35 13:29 14:35 15:17 17:-31 18:-21 19:-26 20:-28 21:-15 22:-27 23:33 24:-26 25:-29 26:80 27:10 28:-29 30:23 31:-20 32:-14 33:35 34:-42 36:-20 37:-24 39:-28 40:-31 41:-13 42:-25 43:41 44:-11 45:14 46:11 47:48 48:-20 49:-23 52:33 53:21 54:37 55:56 56:10 57:57 58:-15 59:30 60:-9 61:-19 62:20 63:-36 64:-20 65:-23 66:-33 68:19 69:-21 71:-30 72:-24 73:-27 74:-11 75:-13 76:17 77:130 78:-34 79:17 81:-14 83:-35 84:12 85:-15 86:-20 87:-10 88:28 90:14 92:48 93:-10 94:20 96:-23 99:-8 100:-9 101:-30 102:-41 103:25 104:40 106:12 107:-35 108:30 109:15 111:-16 112:62 113:-13 114:-13 115:-36 116:131 117:38 119:-11 121:29 122:52 123:-9 125:-12
at	0:-26 1:-24 3:23 4:-25 5:-16 9:-11 10:25 11:12 12:35 13:20 14:34 15:14 17:-36 18:-21 19:-26 20:-28 21:-16 22:-27 23:33 24:-28 25:-31 26:78 27:8 28:-30 30:23 31:-21 32:-14 33:35 34:-49 36:-20 37:-43 38:31 39:-32 40:-29 41:-13 42:-21 43:32 44:48 45:51 46:67 47:47 48:-27 49:-25 52:31 54:51 55:42 57:57 58:-16 59:29 60:-10 61:-22 62:20 63:-36 64:-21 65:-27 66:-35 68:18 69:-21 71:-48 72:12 73:-28 74:-13 75:-16 76:12 77:119 78:-31 79:9 81:-14 83:-40 84:30 85:-18 86:-20 87:-10 88:25 92:40 93:-12 94:9 96:10 97:25 98:16 99:-12 100:-16 101:-36 102:16 103:23 104:40 106:16 107:-40 108:54 109:33 110:-9 111:-19 112:83 113:-16 114:-22 115:-42 116:71 117:33 118:31 119:-16 121:27 122:49 123:-9 125:-12 126:-29
#n at	0:-17 2:27 3:-14 17:-9 18:12 34:-10 37:21 42:-12 45:10 47:22 52:-9 55:16 56:-8 65:-12 67:32 71:-10 76:30 78:24 79:-8 80:11 82:-12 83:-21 84:20 90:33 92:-14 93:-14 94:-21 96:8 98:13 100:13 112:-14 114:14 116:79 126:11
at #n	1:-11 6:-13 10:16 11:-17 13:-15 15:-14 16:-25 17:-15 18:-10 25:-9 27:24 29:-16 30:10 31:-11 33:29 34:-17 37:-31 38:17 39:-14 44:69 45:27 46:36 48:-16 49:-13 52:13 53:9 54:13 55:28 56:42 60:-8 62:-8 63:-25 64:-12 65:-24 70:26 71:-15 72:19 74:-15 75:-16 76:-29 77:11 78:-36 80:-8 82:-13 83:-10 84:13 88:23 90:26 92:28 93:-12 94:67 97:18 99:-14 100:-31 102:40 103:17 105:12 106:32 107:-18 108:-24 109:33 111:-29 112:51 114:-27 115:-14 116:59 117:-10 118:29 119:-12 120:-12 121:-10 126:38
mm with	75:10
measur==ing	3:12 80:40 126:-11
measur	0:-36 1:-12 3:-19 4:69 8:-19 9:-12 11:-8 16:-9 17:-14 18:-11 22:23 26:-8 28:-8 32:-8 34:-12 37:-22 39:-8 40:-12 41:-8 42:164 43:-27 46:-11 47:-27 67:-8 69:11 71:-17 73:15 75:16 76:21 78:-14 79:-14 80:97 81:96 82:-26 83:-26 88:-14 89:35 90:-8 92:-17 93:42 94:-8 98:-8 100:14 118:14 126:94
#n measur	3:-8 4:45 40:-8 42:19 43:-8 75:-8 77:8 126:-9
measur #n	2:11 3:-8 22:-14 42:18 75:-8 76:49 80:21 81:-10 83:-18 126:23
#o at	3:22 98:9
at #d	2:53 3:47 17:-9 18:17 37:-11 41:-10 43:65 51:-32 52:24 56:10 67:-11 68:9 70:10 71:-9 75:9 76:47 77:-52 79:42 81:-13 82:26 83:-18 93:-16 126:-15
&#d#o@job	0:-11 3:37 42:58 43:38 75:-8 77:27 126:-8
#d with	42:18
&#n#o	0:-28 1:-9 2:-8 3:33 4:41 6:-9 11:-26 12:22 13:-29 15:-15 16:-22 17:-33 26:31 29:-11 30:51 31:-10 34:22 37:25 38:-10 39:13 42:15 43:11 44:-9 46:17 48:83 55:51 66:12 71:-20 72:29 73:9 78:14 79:-18 85:-9 88:-9 92:-9 93:9 94:-10 96:10 97:-12 98:-15 100:23 102:-15 103:8 107:-13 109:-11 113:-14 115:49 119:9 120:-11 126:-17
how==	0:-19 1:-9 2:94 3:-42 4:68 5:124 6:12 8:82 9:101 10:30 11:22 13:103 14:37 15:-36 16:132 17:-9 18:36 19:37 20:44 21:62 22:-13 25:104 26:66 27:-20 28:126 29:23 30:84 31:13 33:75 34:-27 36:139 37:-10 38:-8 39:-9 40:-10 41:-10 42:-27 43:-12 44:-27 45:-40 46:-15 48:-12 49:-21 50:-11 51:-15 52:-12 54:-9 55:-10 56:-17 58:-14 59:-13 62:-8 63:-11 64:-9 65:-23 66:-16 67:-17 68:-24 70:-9 72:-16 73:-14 74:-8 76:-16 77:-33 78:-20 79:-12 81:-22 82:-8 83:-11 84:-17 85:-12 87:-13 88:-15 89:-9 90:-26 91:-15 92:-21 93:22 94:-21 95:-25 96:-14 97:-8 98:-16 99:-21 101:-17 103:-14 104:-23 105:-20 106:-13 107:-14 108:-29 109:-23 111:-22 112:-10 113:-9 114:-10 115:-15 116:-12 117:-10 118:-30 119:-14 120:-19 121:-9 122:-35 123:-13 126:-46
how	0:-19 1:-9 2:94 3:-42 4:68 5:124 6:12 8:82 9:101 10:30 11:22 13:103 14:37 15:-36 16:132 17:-9 18:36 19:37 20:44 21:62 22:-13 25:104 26:66 27:-20 28:126 29:23 30:84 31:13 33:75 34:-27 36:139 37:-10 38:-8 39:-9 40:-10 41:-10 42:-27 43:-12 44:-27 45:-40 46:-15 48:-12 49:-21 50:-11 51:-15 52:-12 54:-9 55:-10 56:-17 58:-14 59:-13 62:-8 63:-11 64:-9 65:-23 66:-16 67:-17 68:-24 70:-9 72:-16 73:-14 74:-8 76:-16 77:-33 78:-20 79:-12 81:-22 82:-8 83:-11 84:-17 85:-12 87:-13 88:-15 89:-9 90:-26 91:-15 92:-21 93:22 94:-21 95:-25 96:-14 97:-8 98:-16 99:-21 101:-17 103:-14 104:-23 105:-20 106:-13 107:-14 108:-29 109:-23 111:-22 112:-10 113:-9 114:-10 115:-15 116:-12 117:-10 118:-30 119:-14 120:-19 121:-9 122:-35 123:-13 126:-46
^ how	0:-17 1:-11 2:-26 3:-19 4:45 5:55 6:30 8:54 9:12 11:36 12:50 13:-18 14:8 15:-27 16:43 17:16 18:52 19:18 20:60 21:57 22:-9 23:14 24:8 25:88 26:51 27:-14 28:44 29:17 30:75 31:23 32:35 33:24 34:-14 36:50 42:-23 44:-16 45:-15 46:-9 48:-8 49:-12 51:-8 52:-8 56:-12 58:-10 65:-16 66:-12 67:-10 68:-8 73:-8 78:-8 79:-8 84:-12 87:-9 88:-9 90:-12 91:-8 92:-10 93:13 94:-12 95:-21 98:-12 99:-8 100:-16 101:-11 102:-12 103:-9 104:-18 106:-10 107:-10 108:-21 109:-16 111:-14 112:-8 114:-13 115:-11 116:-8 118:-10 119:-11 120:-15 122:-25 123:-8 125:-16 126:48
how do	2:55 4:-12 5:32 6:-10 9:-15 13:-8 16:39 17:-15 23:41 25:-18 28:-16 33:-12 36:89 81:-9 126:-18
anew $	2:33 79:38 96:-11 126:60
how should	2:24 5:60 6:-24 9:-12 18:32 76:-9 81:-10 126:-22
lay the	1:-8 2:27 16:-15 17:36 38:19 90:-30 126:37
how can	2:8 16:15 36:10
we shift	126:30
rearrang==e	2:65 3:-12 34:17 40:-8
rearrang	2:65 3:-12 34:17 40:-8
we rearrang	2:19
rearrang the	2:38 40:-8
how we	2:18 8:25 9:-9 126:15
i lay	14:9 16:-11 17:43
move==	0:-8 2:138 4:-8 5:-9 13:-16 16:-14 17:-14 25:-10 34:-11 44:-8 46:-14 48:45 63:9 65:11 76:-25 116:29 120:9 126:21
what fret	2:48 3:-13 13:8 28:-9 34:-9 42:28
#n can	1:-21 36:11 39:29 49:9 58:26 82:8 99:33 102:-20 103:18 114:32 120:10 126:-40
move	0:-8 2:138 4:-8 5:-9 11:-9 13:-16 16:-14 17:-15 25:-10 34:-12 44:-8 46:-14 48:58 65:-13 76:-25 116:27 120:9 126:55
can move	2:13
move $	2:28
@job can	31:-8 38:-23 39:26 44:20 48:8 49:8 66:-8 84:-9 85:22 114:52 115:-27 126:56
i shift	2:14 16:-9 76:21
shift $	2:50 76:27
should i	0:39 1:-21 2:16 3:-12 5:27 6:18 8:-14 9:64 13:-17 15:8 16:-18 17:47 18:30 22:80 23:27 28:18 30:35 32:-27 34:-18 36:-18 39:-11 41:-22 76:-10 108:-25 126:-61
which fret	0:-25 1:23 2:12 5:29 12:-10 13:43 14:-8 15:-8 16:8 17:42 22:-13 23:-10 25:23 26:-9 28:-10 30:-9 33:-8 34:55 44:-10 72:-9 126:55
i move	2:54 16:-8
#n should	11:-8 17:13 70:8 90:-10 96:-33 107:30 116:15 119:23 126:44
we move	2:26
#n do	3:30 74:-10 115:17
fret can	0:21 2:27 5:13 126:-12
move in	2:20
fret should	2:8
shift on	76:53 81:-8
move on	2:10 48:12
on @job	0:41 1:-16 2:48 3:-9 4:40 5:-8 6:-10 8:-8 9:-11 11:-20 13:9 15:-22 16:27 17:64 18:31 24:-22 25:32 27:-9 28:28 29:-9 30:-13 31:-9 34:55 37:25 38:-33 39:-9 40:-12 43:-11 44:24 45:10 46:28 49:-12 65:-13 66:-20 71:36 72:13 73:-8 74:-8 75:35 76:14 77:-14 78:-19 79:23 83:-17 84:-8 90:-11 92:43 93:36 94:18 96:20 106:-9 108:-38 109:23 114:-21 115:17 116:-19 126:-38
all==	0:-17 1:-38 3:52 4:32 5:40 6:-24 8:53 9:-12 12:8 14:49 15:-33 16:74 17:16 19:45 20:44 22:-34 23:-32 24:10 25:-53 27:11 28:-15 31:-23 32:-12 33:-16 34:20 35:-13 36:16 37:-28 38:-38 39:-27 40:-19 41:-52 42:-22 43:-29 44:76 45:83 46:115 47:-12 48:-10 49:11 50:-15 51:14 52:-27 53:23 54:39 55:-41 56:-20 57:-8 58:-18 59:-23 60:-15 62:-10 63:-30 64:-17 65:-27 66:10 67:64 68:62 69:-35 71:-15 72:40 73:-11 74:23 75:-9 76:22 77:-26 78:-22 79:-25 80:-11 82:65 83:26 84:148 85:146 86:-9 87:-14 88:16 89:-10 91:45 94:-24 95:-20 96:-11 97:-16 98:-32 101:-18 102:21 104:-10 105:-16 106:21 107:-9 108:-46 109:-43 110:-47 112:22 113:49 115:-36 116:-21 118:39 119:-37 120:-29 121:-16 122:-13 124:30 125:-36
right==	0:14 1:-12 3:88 8:20 9:-11 12:21 13:-8 16:8 17:-12 18:76 20:23 22:-19 24:-17 26:19 30:-19 33:-8 38:-15 42:-17 43:-25 44:-19 46:-14 49:8 51:8 52:-19 63:15 65:-9 67:-30 68:10 70:61 71:9 73:-12 74:8 75:-10 78:10 88:9 91:31 94:10 96:8 98:-8 104:-8 106:32 108:9 126:12
)~",
R"~(by==	0:-16 1:-27 3:-15 4:-22 5:-19 6:35 7:11 8:-21 9:31 10:17 11:45 12:-12 13:-41 14:-10 15:24 16:-27 17:9 18:-22 19:27 21:11 23:-12 24:68 25:58 27:13 30:28 31:136 32:-24 33:26 36:-10 37:-36 38:57 39:-23 40:-17 41:-10 42:-15 43:39 44:-9 45:-31 46:-26 48:37 49:-27 50:17 52:-28 54:-15 55:-10 56:-26 58:-10 59:-15 63:-13 64:-15 65:-20 66:-15 67:27 68:25 70:44 71:-8 72:-21 73:-14 74:-17 75:43 77:24 78:14 79:-13 80:25 81:-15 83:-8 84:66 86:50 87:-8 88:-8 90:25 91:-12 92:-31 93:44 94:-18 96:-16 97:-8 98:21 99:-10 100:-18 102:-19 104:-11 105:38 107:-14 108:-20 109:-21 110:-11 111:-17 112:-13 113:-15 114:-23 115:-20 116:-17 117:-12 118:-21 119:-19 120:19 121:31 125:-11 126:38
one==	3:16 39:33 79:9 125:31 126:-10
side==	0:-11 1:-13 3:77 4:-19 12:-8 13:-25 16:81 17:75 24:12 36:-11 37:-14 38:27 42:-9 43:-9 45:-8 46:37 49:-17 84:28 90:97 91:-17 93:8 115:-10 118:-8 123:9 125:-10 126:-20
all	0:-17 1:-38 3:52 4:32 5:40 6:-24 8:53 9:-12 12:8 14:49 15:-33 16:74 17:16 19:45 20:44 22:-34 23:-32 24:10 25:-53 27:11 28:-15 31:-23 32:-12 33:-16 34:20 35:-13 36:16 37:-28 38:-38 39:-27 40:-19 41:-52 42:-22 43:-29 44:76 45:83 46:115 47:-12 48:-10 49:11 50:-15 51:14 52:-27 53:23 54:39 55:-41 56:-20 57:-8 58:-18 59:-23 60:-15 62:-10 63:-30 64:-17 65:-27 66:10 67:64 68:62 69:-35 71:-15 72:40 73:-11 74:23 75:-9 76:22 77:-26 78:-22 79:-25 80:-11 82:65 83:26 84:148 85:146 86:-9 87:-14 88:16 89:-10 91:45 94:-24 95:-20 96:-11 97:-16 98:-32 101:-18 102:21 104:-10 105:-16 106:21 107:-9 108:-46 109:-43 110:-47 112:22 113:49 115:-36 116:-21 118:39 119:-37 120:-29 121:-16 122:-13 124:30 125:-36
^ all	2:-14 3:52 6:-9 8:-23 10:-8 11:20 12:16 13:-23 14:-14 19:38 21:9 24:84 26:22 27:22 30:-10 32:-11 33:10 36:8 43:-17 44:43 45:77 46:27 48:-16 54:-13 66:-12 67:8 68:12 71:-18 72:14 73:-12 74:31 76:14 83:35 84:-9 85:23 88:-8 90:-19 92:-8 98:-14 106:11 107:-10 108:-8 109:-9 113:-8 119:-11 126:-54
right	0:14 1:-12 3:88 8:20 9:-11 12:15 13:-8 16:8 17:-12 18:76 20:23 22:-19 24:-17 26:19 30:-20 33:-8 38:-15 42:-17 43:-25 44:-19 46:-14 49:8 51:8 52:-19 59:-8 62:46 63:10 65:-16 67:-30 68:10 70:61 71:9 73:-12 74:8 75:-10 78:10 88:9 91:31 94:10 96:8 98:-8 104:-9 106:31 108:9 111:-8
all right	0:-10 3:98 16:12 18:40 42:-10 43:-18 91:11 96:8 126:-11
right job	3:16 43:-8
by	0:-16 1:-27 3:-15 4:-22 5:-19 6:35 7:11 8:-21 9:31 10:17 11:45 12:-12 13:-41 14:-10 15:24 16:-27 17:9 18:-22 19:27 21:11 23:-12 24:68 25:58 27:13 30:28 31:136 32:-24 33:26 36:-10 37:-36 38:57 39:-23 40:-17 41:-10 42:-15 43:39 44:-9 45:-31 46:-26 48:37 49:-27 50:17 52:-28 54:-15 55:-10 56:-26 58:-10 59:-15 63:-13 64:-15 65:-20 66:-15 67:27 68:25 70:44 71:-8 72:-21 73:-14 74:-17 75:43 77:24 78:14 79:-13 80:25 81:-15 83:-8 84:66 86:50 87:-8 88:-8 90:25 91:-12 92:-31 93:44 94:-18 96:-16 97:-8 98:21 99:-10 100:-18 102:-19 104:-11 105:38 107:-14 108:-20 109:-21 110:-11 111:-17 112:-13 113:-15 114:-23 115:-20 116:-17 117:-12 118:-21 119:-19 120:19 121:31 125:-11 126:38
short by	43:72 79:-11
by #n	19:11 31:45 45:-11 46:-15 48:-14 51:-9 70:25 75:36 76:21 86:47 89:10 90:-15 93:-10 98:16 99:-9
side	0:-11 1:-9 3:77 4:-19 12:-8 13:-25 16:80 17:75 24:12 36:-11 37:-14 38:27 42:-9 43:-9 45:-8 46:37 49:-17 84:28 90:97 91:-17 93:8 115:-10 118:-8 123:9 125:-10 126:-20
one side	3:16
side ~	3:16
~ $	8:-12 9:-13 10:-11 11:-12 12:-14 14:-25 19:-11 20:-10 21:-8 22:-10 23:-23 24:-9 26:-28 27:-11 28:-17 29:-12 30:-21 32:-22 33:47 41:15 49:8 50:108 54:32 56:116 57:68 58:42 59:36 62:46 63:-12 64:-9 65:10 70:35 78:13 82:14 87:36 99:53 100:38 101:-27 102:26 103:-18 104:-11 107:-9 109:-30 110:-8 111:25 112:-16 113:-15 119:-9 120:23 121:61 122:-28 123:45 125:-12 126:-56
in short	3:9 43:8
by #d	7:12 42:-37 43:30 50:8 56:-12 67:-11 68:-10 69:9 70:9 75:9 77:-9 79:-10 89:10 93:94
&#d#n@job	0:-32 1:-20 2:48 3:74 4:-16 13:-8 16:-13 17:-16 18:-10 38:-16 40:-17 42:85 43:52 73:28 75:24 76:-21 77:72 78:-15 79:-14 81:-20 83:-11 90:-10 91:-10 92:-8 93:75 94:-10 96:-8 98:-19 126:23
#n end	1:21 2:21 3:20 40:16 43:19 47:-10 81:15 94:18 126:-22
one_raw	3:9 40:8 81:13 83:-10
end one_raw	3:9 81:13 83:-10
right the	51:17 67:-12
enough==	0:-20 3:92 4:-20 5:-10 6:58 8:-37 9:124 12:-11 13:-13 17:34 18:23 22:-10 24:-30 26:-11 32:-13 37:-8 38:-8 39:17 42:-35 43:46 44:-10 49:-10 56:44 66:8 69:8 72:8 74:-14 75:-10 78:-12 79:-11 82:-11 83:-31 92:26 98:-9 100:28 107:25 109:20 126:12
is a	0:-26 1:-14 3:19 17:-17 21:8 22:-9 23:-9 26:18 27:-8 28:20 30:-13 31:-16 37:-10 38:22 40:18 42:-11 47:12 51:14 52:10 54:71 56:-8 58:9 59:11 62:16 63:16 66:-8 69:-13 70:-20 76:-13 78:18 79:12 80:9 88:14 90:22 91:38 99:13 100:11 103:-8 104:26 105:27 109:-9 111:-38 113:14 122:24 126:-34
enough	0:-20 3:92 4:-20 5:-10 6:58 8:-37 9:124 12:-11 13:-13 17:34 18:23 22:-10 24:-30 26:-11 32:-13 37:-8 38:-8 39:17 42:-35 43:46 44:-10 49:-10 56:44 66:8 69:8 72:8 74:-14 75:-10 78:-12 79:-11 82:-11 83:-31 92:26 98:-9 100:28 107:25 109:20 126:12
good enough	0:-13 3:91 9:-12 126:-11
enough for	0:-14 3:31 4:-12 6:17 18:13 75:-10 82:-9 83:-31 126:61
#d all	3:10
right for	3:10 18:36 24:-9 37:8 62:24
#o of	0:-21 2:-12 5:-14 6:-9 8:-12 9:-9 11:24 12:-15 13:19 15:-11 16:-10 17:44 19:-11 21:42 25:-13 27:13 28:-20 31:31 34:28 37:37 38:-17 42:24 44:-19 45:-10 46:-28 48:67 49:-8 54:33 55:31 62:-12 63:-11 66:-11 71:14 72:17 73:14 74:-12 78:18 79:9 85:-11 88:-9 90:-12 91:17 93:14 94:-13 97:21 102:-8 103:-8 106:19 107:18 108:-13 109:-9 112:32 113:35 114:-11 115:-16 116:15 119:29 120:-8 126:-10
my==	0:-15 1:11 2:-13 3:10 4:21 5:-9 7:-8 9:-15 10:-16 11:11 12:100 13:39 14:-15 17:-8 18:-8 19:-10 20:-14 21:-9 22:-16 23:78 24:-8 25:-12 26:-45 27:30 28:-15 29:39 30:56 31:-15 32:-19 33:-20 34:43 37:-19 39:50 41:-8 42:26 43:-9 48:-14 49:-10 50:-11 51:-10 53:-33 55:-22 56:-14 58:11 59:13 62:-8 63:-14 64:-24 65:45 66:-15 67:25 69:-9 76:-14 78:-19 85:-14 88:-13 89:15 90:29 92:11 93:-11 94:-10 95:-24 96:-9 98:8 100:-15 101:-11 102:-14 103:-18 104:-14 107:34 108:-30 110:-8 111:37 112:81 113:-12 114:-15 115:-12 116:-15 118:19 119:-29 120:-13 122:-8 125:75 126:39
my	0:-15 1:11 2:-13 3:10 4:21 5:-9 7:-8 9:-15 10:-16 11:11 12:100 13:39 14:-15 17:-8 18:-8 19:-10 20:-14 21:-9 22:-16 23:78 24:-8 25:-12 26:-45 27:30 28:-15 29:39 30:56 31:-15 32:-19 33:-20 34:43 37:-19 39:50 41:-8 42:26 43:-9 48:-14 49:-10 50:-11 51:-10 53:-33 55:-22 56:-14 58:11 59:13 62:-8 63:-14 64:-24 65:45 66:-15 67:25 69:-9 76:-14 78:-19 85:-14 88:-13 89:15 90:29 92:11 93:-11 94:-10 95:-24 96:-9 98:8 100:-15 101:-11 102:-14 103:-18 104:-14 107:34 108:-30 110:-8 111:37 112:81 113:-12 114:-15 115:-12 116:-15 118:19 119:-29 120:-13 122:-8 125:75 126:39
is my	11:-9 12:30 13:50 15:-10 23:-9 36:-8 65:34 95:-16 108:-8 126:24
fret all	74:10
&#d#r@job	42:15 71:11 83:18
ok==	0:20 2:-9 3:45 11:-9 23:36 24:-16 26:43 31:21 38:26 39:21 40:-11 42:-9 43:-10 46:31 81:9 102:-19 103:10 116:-25 117:24 126:33
ok	0:20 2:-9 3:45 11:-9 23:36 24:-16 26:43 31:21 38:26 39:21 40:-11 42:-9 43:-10 46:31 81:9 102:-19 103:10 116:-25 117:24 126:33
ok for	3:13
^ will	0:-16 3:63 4:-17 9:37 13:-15 18:27 29:73 30:22 31:14 49:110 54:-8 65:-14 88:-20 111:-16 113:8 118:-9 119:-11 120:38 126:-83
will a	3:15 30:-8 31:16
can the	0:9 5:26 9:-23 26:62 30:-8 31:17 32:-12 33:45 102:-14 107:-8 126:-22
will the	2:-15 3:20 5:75 6:-9 9:36 18:45 30:25 88:-19 126:-12
#d do	3:8
&#d#n#r	2:-9 16:13 37:18 42:-11 76:22 81:-19 93:11
my #n	126:24
okay==	0:-17 2:12 3:128 17:-35 18:9 42:-11 94:-8
^ it	1:-17 3:41 4:14 7:15 11:-11 13:-10 17:-12 23:-15 25:-13 26:-15 30:-10 38:-8 39:-13 42:23 43:-23 44:-11 45:26 48:-8 52:-16 55:-12 56:-8 58:-12 63:23 65:17 74:9 75:-8 76:-12 77:12 78:-8 82:16 90:94 92:88 93:21 95:38 97:9 99:-12 101:-10 102:-8 103:67 104:-13 105:-10 107:-8 109:-10 111:11 115:33 117:12 118:14 119:16 122:-21 123:16 125:-28 126:-17
it is	0:-11 1:25 2:-12 3:-8 5:15 6:12 7:10 8:-28 9:-29 11:-23 12:-13 13:-41 14:-12 15:-34 16:-10 17:-54 18:-19 19:-15 20:-10 22:-18 23:-20 24:-41 25:8 26:-28 27:-21 30:-10 31:-12 32:-34 36:-9 37:84 38:19 39:11 40:27 41:-15 42:21 43:16 44:-47 45:23 48:-20 49:56 50:20 51:-9 53:9 55:15 56:-15 58:13 60:17 62:15 63:13 64:-9 67:14 68:17 69:-8 70:-8 72:-19 73:13 76:16 77:39 82:8 84:-10 86:17 87:-35 90:-12 92:43 93:27 94:40 95:40 96:-12 97:15 98:22 100:12 101:-18 102:16 103:82 104:-33 105:12 107:-19 108:-13 109:9 110:-8 112:-9 114:-29 115:10 117:15 118:-8 119:48 120:-29 121:-10 125:-33 126:58
)~",
R"~(mm is	93:11
is that	0:-11 3:93 8:-13 9:-14 15:38 17:23 18:12 23:46 24:15 25:53 26:-20 30:-8 32:19 42:-32 43:-13 54:8 60:-24 65:-19 70:-24 75:-9 87:-16 102:-14 126:58
okay	0:-17 2:12 3:128 17:-35 18:9 42:-11 94:-8
that okay	3:9
okay for	18:9
measure==s	0:-20 1:10 17:-8 37:-21 40:-10 42:64 70:33 75:-9 77:42 78:-18 79:31 81:12 89:19 93:-32 96:-8 122:15 126:35
measure	0:-20 1:10 17:-8 37:-21 40:-10 42:64 70:33 75:-9 77:42 78:-18 79:31 81:12 89:19 93:-32 96:-8 122:15 126:35
it measure	3:13 42:-22 50:11 79:35 93:-10
measure #d	0:-16 1:11 3:13 37:-17 40:-9 42:29 50:9 70:35 75:-9 77:35 79:39 89:16 93:-25 118:8 126:-16
is all	8:-11 20:27 26:14 44:14 46:31 56:13 70:18 74:10 90:-9 114:-8 116:10 118:16
mine==	0:-13 3:62 11:-10 12:71 13:-28 15:48 17:-12 26:-9 27:32 30:-10 32:-9 43:8 49:-8 50:28 54:-22 56:-13 62:-19 63:-9 65:143 66:24 70:17 80:-8 101:11 102:-16 106:72 109:-15 110:-11 113:-13 114:-11 125:-8 126:13
mine	0:-13 3:62 11:-10 12:71 13:-28 15:48 17:-12 26:-9 27:32 30:-10 32:-9 43:8 49:-8 50:28 54:-22 56:-13 62:-19 63:-9 65:143 66:24 70:17 80:-8 101:11 102:-16 106:72 109:-15 110:-11 113:-13 114:-11 125:-8 126:13
^ mine	3:78 12:14 42:-9
in that	22:13 71:-8 83:9
that all	3:9
&#d#n#o	3:19 37:-11 42:50 71:13 93:17
#d is	3:8 39:14 41:10 42:-10
mine is	0:-11 3:61 43:9
mm enough	3:10
in is	42:14 88:18 126:-13
mm that	93:11
^ #d	0:35 3:61 8:-11 41:40 42:10 43:-33 51:25 52:-8 54:26 67:20 68:-19 69:20 70:-18 82:-16 89:-10 126:-18
mm for	0:-17 3:51 42:16 43:-22
#n all	3:28 13:9 34:18 84:23 100:23 112:-12
right $	3:32 4:22 16:14 18:-9 20:25 68:13 70:15 76:10 91:13
in for	12:32 23:-15 26:-8 42:12 53:-13 110:16 126:39
alright==	0:-9 3:20
^ #n	0:-19 1:15 2:-18 3:-14 4:21 5:19 8:-9 10:-10 11:-12 13:46 15:17 16:17 17:-47 18:24 20:-11 22:-21 24:-30 25:-21 26:-8 27:-10 28:-10 29:-13 30:-17 32:-15 33:-9 36:-9 37:-23 38:26 39:-25 40:43 41:42 42:48 43:45 44:-44 45:-24 46:18 47:-10 49:-18 50:-16 51:81 52:-14 53:-33 54:38 56:-16 60:-9 61:-9 62:-10 63:24 64:-12 65:19 66:-14 68:-12 69:61 70:-15 71:-36 72:-28 73:27 74:-20 76:-42 77:-30 78:39 79:-24 81:-34 82:16 83:39 84:21 85:-29 86:-24 89:-13 90:138 91:31 92:9 93:45 94:58 96:43 97:33 98:-22 100:30 101:-9 103:-16 105:-13 106:13 107:-17 108:-29 109:-11 110:-16 111:-10 112:-18 114:17 117:-12 118:85 119:-31 120:-20 121:-22 125:-8 126:24
alright	0:-9 3:20
ok $	3:14 23:37 26:47 31:23 46:32 102:-18 116:-24 126:78
@job all	13:24 44:-13 46:23
shy==	43:54
matter==	3:11 16:24 43:-9 50:10 70:-8 89:8 108:10 114:15
shy	43:54
#n is	0:-23 1:-35 2:36 3:-86 4:-33 5:-15 6:-11 11:-36 12:-10 13:-89 15:-59 16:-23 17:-63 18:-16 24:-63 26:-14 28:-14 30:-23 31:-10 32:-9 34:-20 37:-54 38:41 39:44 41:81 44:49 45:-37 46:26 49:29 52:17 56:-23 59:-9 60:40 61:12 62:28 63:-10 65:67 66:35 70:70 73:-9 74:18 75:23 76:53 77:23 78:29 79:10 82:-23 83:-9 84:-17 85:-16 88:18 89:11 90:9 91:21 92:-22 93:24 95:33 97:15 98:12 99:-10 100:-22 102:48 103:11 105:-19 106:-11 107:41 109:53 113:-9 114:50 115:54 116:-15 117:-15 118:26 119:15 120:42 122:-11 126:44
is it	0:-23 1:27 3:20 4:-8 5:16 8:42 9:51 11:8 13:29 15:33 16:24 17:68 18:15 23:80 24:47 26:42 27:15 30:29 32:-8 33:-9 36:13 37:-12 38:-10 39:-13 41:-17 42:-8 44:-14 48:-12 49:-10 52:-8 65:-17 66:-11 70:-9 78:-38 89:-23 92:-18 94:36 102:-13 103:-45 109:24 126:-84
it doe	39:-8 41:9 43:10 66:-10 114:15 115:11
matter	3:11 16:24 43:-9 50:10 70:-8 89:8 108:8 114:70
it matter	16:16
matter $	3:13 16:25 43:-9 50:11
too==	0:78 1:13 2:31 3:34 4:-15 6:55 7:8 8:-23 9:-19 10:-8 11:17 12:-13 13:-16 14:24 16:12 18:14 21:-8 22:93 23:-11 24:-21 25:-8 26:-15 27:-9 28:-12 29:-10 30:-16 32:19 33:-19 34:-16 36:-13 37:-16 38:-14 39:-8 40:16 41:20 42:-40 43:71 44:-13 45:9 46:-12 48:-8 51:-8 53:-30 54:-11 55:27 58:-9 59:18 62:25 65:-8 70:22 72:15 73:-8 75:-10 76:-12 77:-8 79:-17 84:-15 88:15 90:-17 91:36 92:50 93:17 94:-8 99:10 100:-13 105:14 106:-13 108:-13 109:-11 112:25 118:-14 119:-9 120:39 121:23 122:-12 123:-11 126:-23
too	0:78 1:13 2:31 3:34 4:-15 6:55 7:8 8:-23 9:-19 10:-8 11:17 12:-13 13:-16 14:24 16:12 18:14 21:-8 22:93 23:-11 24:-21 25:-8 26:-15 27:-9 28:-12 29:-10 30:-16 32:19 33:-19 34:-16 36:-13 37:-16 38:-14 39:-8 40:16 41:20 42:-40 43:71 44:-13 45:9 46:-12 48:-8 51:-8 53:-30 54:-11 55:27 58:-9 59:18 62:25 65:-8 70:22 72:15 73:-8 75:-10 76:-12 77:-8 79:-17 84:-15 88:15 90:-17 91:36 92:50 93:17 94:-8 99:10 100:-13 105:14 106:-13 108:-13 109:-11 112:25 118:-14 119:-9 120:39 121:23 122:-12 123:-11 126:-23
mm too	3:9 16:22
that ok	3:9 23:48 26:-11 102:-13 126:-8
too short	0:-37 2:13 3:47 9:-10 22:69 32:-9 41:36 42:-19 43:32 72:12 78:-10 90:-9 93:-9 126:57
short in	3:10 72:8 80:24 126:-8
short is	3:10 43:-8 87:31 126:15
that matter	16:9
at slot	0:-18 3:13 37:12 38:-23 42:10 43:-20 47:30 77:103 93:-13 97:-8 126:36
#r is	17:11 94:10
#d short	3:10
trebl==e	4:-11 16:37 17:72 45:-12 46:20 90:70 126:-10
short on	43:10 90:-9 126:20
trebl	2:-8 4:-12 16:71 17:97 28:-8 36:-12 45:-13 46:37 76:-15 90:80 126:-12
on trebl	17:12
trebl side	16:24 17:61 46:15 90:12
side is	17:-11 90:23
doe that	1:-11 3:21 15:-11 31:21 34:40 43:-12 65:43 126:-10
bass	46:13 90:32 126:23
on bass	90:11
bass side	90:23
it all	8:15 20:8 62:14 85:10 126:16
edge==	3:22 16:-22 17:15 42:-13 45:-11 46:46 76:-14 77:53 86:9 87:10 90:90 91:-9 94:-8 95:12 98:-9 116:-9 126:10
short at	0:12 3:12 42:-14 43:30
edge	2:-8 3:18 16:-22 17:15 28:11 31:-8 42:-14 45:-11 46:46 76:-14 77:52 86:9 87:10 90:90 91:-9 94:-8 95:12 98:-9 116:-9 126:10
mm short	43:20
^ slot	1:-20 2:-25 3:-60 4:116 13:-31 18:-22 34:-9 37:46 38:-30 42:62 43:48 44:75 72:42 75:55 76:-19 77:-22 78:-20 81:-18 83:32 90:-13 92:49 94:-9 97:8 98:-9 104:37 108:-22 109:-12 126:14
slot job	4:33 44:-9
&#n#o#r@job	46:8
slot @job	4:13
show==	0:18 4:55 5:18 6:23 7:17 8:57 9:-15 10:28 11:11 12:36 13:55 14:27 15:-8 16:57 17:22 18:-8 19:22 20:9 21:27 22:-13 23:-15 24:48 26:36 27:31 28:17 29:8 30:18 33:53 34:13 35:19 36:25 38:-9 44:-16 49:-9 53:-11 54:-9 56:10 58:-11 59:-11 63:-12 64:-11 65:-11 66:-8 84:-21 85:-17 90:-16 91:21 92:-13 101:-17 104:-9 108:-10 109:-10 110:-9 111:-21 112:-10 114:-9 118:-17 120:-8 121:-8 122:-25 123:-31 124:-11 125:-14 126:-18
show	0:14 2:-8 4:53 5:17 6:23 7:16 8:56 9:-16 10:28 11:11 12:26 13:53 14:37 15:-8 16:70 17:19 18:-9 19:20 21:26 22:-13 23:-15 24:47 26:36 27:31 28:17 30:17 33:53 34:12 35:19 36:25 37:-8 38:-10 42:9 44:-17 49:-9 51:12 53:-9 54:-10 56:10 58:-11 59:-11 63:-13 64:-12 65:-11 66:-8 68:-9 69:18 77:-8 78:-9 84:-21 85:-17 90:-21 91:27 92:-15 101:-17 104:-9 108:-13 109:-10 110:-11 111:-26 114:-9 118:14 120:-9 121:-9 122:-27 123:-32 124:-11 125:-14 126:-19
^ show	0:20 4:42 5:21 6:24 7:20 8:66 10:33 11:13 12:49 13:58 14:24 16:75 17:22 19:8 21:17 22:-18 23:-12 24:35 26:30 27:33 30:23 33:10 34:21 35:19 36:24 38:-9 44:-15 49:-8 53:-10 56:-13 58:-9 63:-11 64:-11 65:-11 84:-17 85:-14 92:-11 101:-12 108:-9 109:-9 110:-8 111:-17 114:-8 118:-13 119:-8 123:-27 124:-11 125:-10 126:-47
show the	4:18 5:-11 6:14 9:8 10:28 12:14 16:12 17:11 24:-9 26:59 27:11 29:14 101:-8 126:-8
slot of	0:-12 2:-22 3:17 4:19 13:50 16:-14 17:-8 18:22 27:10 28:-15 34:-18 37:-18 38:10 42:-12 44:50 72:-8 75:58 78:-16 79:-8 82:19 83:-14 92:12 107:8 108:9 109:26 126:48
show me	0:15 4:35 6:24 7:15 8:20 10:-10 12:-12 13:9 14:-20 16:47 17:8 21:30 22:8 24:34 26:-9 27:-13 28:19 30:20 34:17 35:10 36:23 111:-13 123:-16 126:-29
me the	0:-19 2:51 4:69 5:9 8:30 9:19 10:18 11:-8 13:25 14:33 17:41 20:18 21:25 22:-15 24:10 25:21 27:10 28:-8 29:-15 30:28 32:44 34:-31 36:36 44:-11 65:-15 75:-8 76:-10 78:-8 82:-73 87:-8 108:-8 111:-9 118:-12 123:-18 126:55
me slot	4:32 13:-11 71:12 76:-9
slot on	0:65 1:22 4:11 13:19 17:-9 34:-16 42:-8 44:14 75:35 92:-23 107:32 108:-24 109:36 126:-11
^ the	0:-56 1:-43 2:-30 3:-30 4:-19 6:41 7:21 8:-49 9:-46 10:14 11:43 12:39 13:66 14:20 15:-45 16:-52 17:-51 18:-59 19:-38 20:43 21:-16 22:-38 23:-41 24:-23 26:-49 27:-37 28:-40 29:-49 30:16 31:-17 32:-82 33:43 34:51 36:-39 38:-22 39:15 40:-40 41:23 42:29 43:29 45:20 46:76 47:-14 48:27 49:-46 50:-15 51:42 52:28 53:-14 54:51 55:19 56:33 58:-50 59:-36 60:27 62:-19 63:-18 64:22 65:54 67:12 68:9 69:-20 70:18 71:47 73:35 75:28 76:-38 77:18 78:50 79:-42 80:-27 81:33 82:-39 83:-16 84:-31 85:-24 86:36 87:29 88:68 89:24 90:-14 91:-33 92:26 93:-16 96:-21 98:-37 99:18 100:33 101:27 102:103 103:80 104:-29 105:13 106:-20 107:26 108:-37 109:-47 110:-19 111:-19 113:37 114:76 115:33 116:22 117:-14 118:91 119:69 120:24 121:-20 122:47 123:14 125:18 126:45
)~",
R"~(list==	1:-9 2:-12 4:51 5:-36 6:167 7:-18 8:27 10:181 12:92 13:-23 14:76 15:-9 16:28 18:-12 19:39 20:-22 21:-18 23:-29 24:92 25:-10 26:28 27:21 28:12 29:-14 31:-11 33:77 34:-21 35:21 36:60 38:-9 39:-9 41:-8 44:-13 46:-8 48:-18 49:29 54:-12 56:-24 58:-9 62:-9 63:15 65:-8 66:-10 71:-21 72:-10 76:8 78:-12 80:-8 82:-8 84:-19 85:-12 87:17 88:-13 92:-13 100:-15 101:40 102:-14 103:-11 104:-29 105:-9 106:-11 107:-35 108:-14 109:-27 111:-14 113:-18 117:-9 118:-20 119:-13 120:-16 123:14 124:-12 125:-20 126:-54
list	1:-9 2:-12 4:51 5:-36 6:167 7:-18 8:27 10:181 12:92 13:-23 14:76 15:-9 16:28 18:-12 19:39 20:-22 21:-18 23:-29 24:92 25:-10 26:28 27:21 28:12 29:-14 31:-11 33:77 34:-21 35:21 36:60 38:-9 39:-9 41:-8 44:-13 46:-8 48:-18 49:29 54:-12 56:-24 58:-9 62:-9 63:15 65:-8 66:-10 71:-21 72:-10 76:8 78:-12 80:-8 82:-8 84:-19 85:-12 87:17 88:-13 92:-13 100:-15 101:40 102:-14 103:-11 104:-29 105:-9 106:-11 107:-35 108:-14 109:-27 111:-14 113:-18 117:-9 118:-20 119:-13 120:-16 123:14 124:-12 125:-20 126:-54
^ list	4:37 6:-9 8:71 9:-21 10:-38 12:18 16:21 19:39 20:-8 23:-10 24:61 26:59 28:37 30:-12 32:17 33:31 35:24 36:44 58:-8 59:-8 84:-13 92:-8 101:-17 123:-13 124:-10 126:-16
list the	0:13 4:9 6:-28 8:65 9:-9 10:-14 14:-14 19:-13 22:-14 24:65 26:59 27:-14 28:49 32:17 35:15 36:-11 101:-9
list slot	4:15
tabl==e	0:-9 2:-8 4:123 5:-9 13:-15 14:25 16:37 17:77 18:-9 25:16 30:-9 32:-8 59:-13 85:-12 92:-14 99:41 100:19 101:44 108:-15 118:16 120:-8 126:-15
tabl	0:-9 2:-8 4:123 5:-9 13:-15 14:25 16:37 17:77 18:-9 25:16 30:-9 32:-8 59:-13 85:-12 92:-14 99:41 100:19 101:44 108:-15 118:16 120:-8 126:-15
slot tabl	4:90 92:-8
tabl for	4:18 17:48
tabl of	4:24 16:27 17:17 85:-8
#o on	0:23 3:15 4:14 12:25 34:-14 37:11 42:29 43:23 46:-17 48:-10 66:-14 71:12 76:9 78:23 79:35 92:21 94:19 96:22 116:-9 126:-23
#r on	4:10 13:-10 18:-12 25:-10 83:49 90:20 92:48 96:20 97:11 106:10 108:-11
&#o@job	0:93 1:-10 2:-23 3:-36 5:-15 6:-9 11:-34 13:-32 16:14 17:14 18:-11 25:-17 28:-22 31:21 34:-15 37:-45 42:-9 44:-23 45:-8 49:-18 65:-8 66:-18 73:18 74:26 76:8 78:79 79:21 88:-14 90:11 91:90 92:36 94:53 95:-8 96:34 97:56 98:20 108:-11 109:-10 113:-8 119:-15
how long	2:-22 4:128 5:-31 6:-16 8:-25 9:60 11:62 13:-30 16:-34 17:-12 18:-8 23:-8 25:-11 26:18 28:121 29:45 30:-22 31:-8 32:-12 33:71 36:-31 44:-9 94:-8 100:15 102:15 105:16 111:-13 125:-9 126:39
long is	4:55 9:36 13:-8 28:9 29:15 87:8 126:-21
fret the	0:-9 4:12 16:12 17:-9 28:-14 37:-11 73:9 74:13 76:19 78:26 92:10 96:14 116:-10
be==	1:16 2:57 4:51 5:24 6:-16 7:22 8:-13 9:8 10:50 11:37 13:-43 15:-22 16:19 18:37 19:-24 21:-15 22:13 23:-25 24:-47 25:14 26:13 27:-20 28:8 29:49 30:42 31:39 33:12 34:-47 36:33 37:-35 38:21 39:36 40:-22 42:-21 43:-21 45:-48 46:-34 48:19 49:22 50:-11 51:-18 52:31 54:-12 56:53 58:23 59:14 60:-17 61:29 62:37 64:-20 66:10 67:-37 68:-12 69:-10 70:-9 71:-47 72:-52 73:-26 74:-12 75:-23 76:-23 77:-23 79:-25 80:-8 81:-14 82:20 83:-16 84:49 87:17 88:-48 90:-33 91:-39 92:19 94:8 96:-49 98:-44 99:33 100:20 101:22 102:34 105:27 107:46 108:-23 109:-15 110:-16 111:10 112:36 113:21 114:-17 115:10 116:53 117:-11 118:-40 119:23 121:16 122:-17 123:18 125:11 126:42
long are	4:40 13:-8
fret #r	0:-8 2:-13 3:-8 5:-12 13:-14 16:21 25:-21 28:-8 34:-8 43:11 44:-9 45:41 46:8 71:17 72:-39 73:-9 76:30 78:23 79:8 81:-9 90:-10 92:17 96:38 97:18 98:44 116:12 126:22
#r for	38:-8 71:16 106:12
be	1:16 2:57 4:51 5:24 6:-16 7:22 8:-13 9:8 10:50 11:37 13:-43 15:-22 16:19 18:37 19:-24 21:-15 22:13 23:-25 24:-47 25:14 26:13 27:-20 28:8 29:49 30:42 31:39 33:12 34:-47 36:33 37:-35 38:21 39:36 40:-22 42:-21 43:-21 45:-48 46:-34 48:19 49:22 50:-11 51:-18 52:31 54:-12 56:53 58:23 59:14 60:-17 61:29 62:37 64:-20 66:10 67:-37 68:-12 69:-10 70:-9 71:-47 72:-52 73:-26 74:-12 75:-23 76:-23 77:-23 79:-25 80:-8 81:-14 82:20 83:-16 84:49 87:17 88:-48 90:-33 91:-39 92:19 94:8 96:-49 98:-44 99:33 100:20 101:22 102:34 105:27 107:46 108:-23 109:-15 110:-16 111:10 112:36 113:21 114:-17 115:10 116:53 117:-11 118:-40 119:23 121:16 122:-17 123:18 125:11 126:42
#n be	2:-17 4:31 16:20 30:21 31:44 38:9 46:-9 48:-8 74:11 88:-19 116:14 126:-16
be $	2:-18 3:-8 4:100 8:23 28:-13 41:-10 94:10 126:-18
are fret	4:11 71:-10 76:-13 83:39
cut==s	5:126 6:70 13:-27 44:-16 59:-9 126:34
only==	0:-33 1:102 2:36 3:61 4:65 5:92 8:-20 9:-21 10:-8 12:-12 13:-33 14:34 15:-18 16:23 17:19 18:-16 19:-8 20:-13 21:47 22:34 24:-20 25:-12 28:28 29:-31 30:-19 31:24 32:-16 33:-16 36:-8 37:-15 38:-8 39:-18 40:-10 41:-14 42:-14 43:44 44:-23 45:52 46:46 47:-10 48:-13 49:-30 50:-14 51:-13 53:-22 55:52 57:11 59:30 61:-14 62:37 63:-8 64:-10 65:-26 66:-12 67:42 70:33 71:-20 73:-8 74:12 75:-8 76:-14 78:-17 79:-8 80:-22 81:-10 82:-13 83:-9 85:-9 86:9 90:-27 91:-16 92:-14 94:-13 96:-9 97:-47 99:38 101:-8 102:-13 104:15 105:-9 106:-18 107:-16 108:-29 109:-21 110:9 111:-36 112:44 113:-20 114:-10 115:29 116:-9 117:-13 119:49 120:-14 122:18 123:10 126:16
cut	0:-8 3:-28 4:-39 5:359 6:248 7:-9 8:-32 9:-35 10:-23 11:-22 12:-41 13:9 15:-26 16:-37 17:-34 19:-16 21:-8 22:-15 23:17 24:-28 25:-13 26:-22 27:-9 28:29 30:-56 31:-16 32:-10 33:-26 34:-17 36:9 37:-18 38:-22 39:-22 40:-9 41:-14 42:-23 43:27 44:142 45:-20 46:-19 48:-12 49:-17 50:-9 51:-11 52:19 56:-8 58:27 59:-19 60:-19 61:27 65:-17 66:-18 67:-8 69:16 70:11 71:126 72:157 73:-19 74:-36 75:12 76:-32 77:-8 78:-26 79:66 81:-11 82:-8 83:-47 84:16 85:-25 88:-13 90:-18 91:-8 92:-28 93:-8 94:-14 96:-18 97:-10 98:-23 99:-15 100:-20 101:-10 104:58 105:39 106:-13 107:-8 108:50 109:36 110:-12 113:8 114:-17 115:-22 116:-11 118:-10 121:-9 123:-8 125:-9 126:50
^ cut	0:-35 1:-9 5:30 6:-22 36:13 38:-13 43:10 44:49 58:38 60:-13 61:11 62:11 71:146 72:29 76:-11 79:63 83:-11 84:-9 98:-8 100:-9 104:17 108:16 109:-10 126:-31
cut wire	23:21
only	0:-33 1:102 2:36 3:61 4:65 5:92 8:-20 9:-21 10:-8 12:-12 13:-33 14:34 15:-18 16:23 17:19 18:-16 19:-8 20:-13 21:47 22:34 24:-20 25:-12 28:28 29:-31 30:-19 31:24 32:-16 33:-16 36:-8 37:-15 38:-8 39:-18 40:-10 41:-14 42:-14 43:44 44:-23 45:52 46:46 47:-10 48:-13 49:-30 50:-14 51:-13 53:-22 55:52 57:11 59:30 61:-14 62:37 63:-8 64:-10 65:-26 66:-12 67:42 70:33 71:-20 73:-8 74:12 75:-8 76:-14 78:-17 79:-8 80:-22 81:-10 82:-13 83:-9 85:-9 86:9 90:-27 91:-16 92:-14 94:-13 96:-9 97:-47 99:38 101:-8 102:-13 104:15 105:-9 106:-18 107:-16 108:-29 109:-21 110:9 111:-36 112:44 113:-20 114:-10 115:29 116:-9 117:-13 119:49 120:-14 122:18 123:10 126:16
tin only	5:65 21:-18
&@job@wire	0:-8 1:-8 6:-9 8:13 9:-13 13:-9 18:142 24:-12 32:18 49:-11
stick==s	0:-12 1:-15 5:21 6:54 8:90 9:-27 13:-12 16:-13 17:-9 18:-18 19:-14 20:-18 22:-13 24:-10 25:-8 28:-11 30:-9 32:61 34:-11 37:-11 39:-11 40:-37 41:-10 44:-9 45:-9 47:-8 50:56 51:72 52:-23 67:109 68:92 69:-48 70:15 71:-10 72:16 73:-8 74:-9 80:-47 82:-16 83:-15 84:25 89:-14 99:-9 105:-9 117:51 118:51 119:-10 121:76 122:41 126:24
cut the	2:-8 4:-10 5:31 8:-8 9:-10 28:16 37:-17 43:41 44:-11 60:-12 61:13 71:13 72:60 76:-10 109:25 126:-26
@wire stick	8:47 18:-8 38:25 41:24 51:39 67:-36 68:77 69:-21 70:-10 82:-8 117:28 118:-31
stick #n	5:-10 6:-10 50:48 51:-15 67:43 71:-58 72:89 76:-11 117:-9 118:-19 126:33
&#n@job@wire	0:-19 1:28 18:34 39:19 47:-15 71:-29 72:46 73:32 74:18 119:23 126:-13
cut @wire	18:20
cut==	0:-12 2:17 3:-23 4:-36 5:116 6:149 8:-17 9:-20 10:-19 11:-14 12:-30 13:66 14:-10 15:-15 16:-18 17:-21 18:-11 19:-10 22:-10 24:-15 26:-8 28:-12 30:-27 33:-12 34:-8 36:20 37:-13 38:-11 39:-18 42:-19 43:36 44:111 45:-11 46:-11 49:-10 58:33 59:-8 60:-18 61:29 62:9 66:-9 69:17 70:16 71:125 72:185 73:-13 74:-31 75:8 76:-30 78:-23 79:72 81:-10 83:-46 85:-14 88:-9 90:-11 92:-23 96:-14 97:-8 98:-21 104:11 105:13 108:-10 109:-17 110:-11 112:8 113:10 114:-9 115:-9 116:-9 126:36
plan==	2:76 4:-12 5:136 6:-29 10:-12 12:-11 13:-18 15:-12 16:78 17:-8 23:-12 24:-11 27:-12 28:14 29:-10 30:91 34:-9 36:-10 38:-14 44:-13 45:-11 49:-9 62:-11 63:11 65:-8 84:96 85:-21 99:29 100:-11 102:15 104:32 105:35 107:-9 108:-10 109:-8 110:-18 111:30 112:-11 115:-12 126:-28
the cut	2:-13 4:-11 5:68 6:71 13:-23 16:-8 28:20 36:14 44:8 71:-20 84:27 104:9 108:-23 109:13 126:15
)~",
R"~(cut plan	5:115 6:-22 30:-10 84:28
&	0:-31 1:-62 2:-14 3:-31 4:-90 5:-10 6:-152 7:38 8:61 9:66 10:61 11:85 12:120 13:-64 14:213 15:-134 16:-48 17:-9 19:49 20:18 21:49 22:88 23:191 25:-9 26:177 28:73 29:67 30:82 31:22 32:126 33:123 34:-52 35:32 36:161 37:65 38:57 39:-56 40:-45 41:-80 42:10 43:-25 44:-33 45:-10 46:-27 47:11 48:-52 49:-92 50:22 51:-33 52:-23 53:24 54:-11 55:-38 56:31 57:62 58:149 59:144 61:-63 62:-91 63:-52 65:-52 66:-59 67:-15 68:-10 69:15 71:9 72:-23 74:-14 76:41 77:-18 78:-50 79:-11 80:12 81:-36 82:-39 83:47 84:-69 85:-68 86:-46 87:100 88:-16 89:-13 90:40 91:-8 92:88 93:-8 94:-25 95:21 96:-29 97:-23 98:-12 99:38 100:37 101:131 102:20 103:41 104:163 105:23 106:8 107:-18 108:-53 109:105 110:24 111:-25 112:-20 113:-14 114:-66 115:-14 116:-37 117:-35 118:32 119:-41 121:51 122:-18 123:125 124:66 125:141 126:23
plan $	2:38 5:19 11:-9 13:-10 15:-10 30:39 37:9 38:-10 99:38 101:-13 102:24 126:27
for @wire	0:-32 1:-26 5:11 6:68 7:26 8:46 9:-41 18:22 19:39 20:54 22:-27 24:-60 25:21 33:70 38:-18 39:-10 40:-12 51:-29 52:49 67:24 68:-19 70:17 75:-21 89:9 117:-23 118:-11 119:-17 120:57 126:20
plan of	5:8 16:24
cut==ting	2:-8 5:118 6:30 8:-13 9:-11 12:-8 13:-28 15:-8 16:-12 17:-9 18:16 23:16 24:-10 26:-10 28:46 30:-28 33:-12 36:-8 38:-8 43:-8 44:33 52:24 72:-21 84:15 85:-8 95:12 100:-11 104:37 105:27 108:61 109:50 126:-19
from==	1:-32 2:-24 3:-23 5:53 6:18 7:-21 8:-14 9:-49 12:9 13:-25 14:-33 15:-37 16:-45 17:-57 18:-25 19:58 20:31 21:-9 22:-39 24:-22 26:-50 27:-20 29:23 31:-30 32:22 33:16 34:11 36:-27 37:40 38:-22 39:10 41:-31 42:-15 43:-76 44:-16 45:-41 46:23 48:-24 51:61 52:52 54:43 56:50 58:29 60:-44 61:73 62:27 63:23 64:-10 65:14 66:77 67:-28 69:-12 70:-20 71:95 72:47 73:38 74:64 75:-27 76:11 77:-14 78:-17 80:-15 81:10 82:-16 83:-9 84:-13 85:-23 87:48 88:58 89:-21 90:19 91:-30 92:-10 94:-28 95:-13 98:-34 99:9 100:12 101:15 102:20 103:-17 104:11 106:32 107:-33 108:-11 110:43 111:29 112:17 113:-38 114:-29 115:-63 116:-29 117:40 118:33 119:-26 120:-9 121:94 122:34 123:99 125:-14 126:42
show a	3:10 5:18 6:-15 16:14
a cut	5:15
from	1:-32 2:-24 3:-23 5:53 6:18 7:-21 8:-14 9:-49 12:9 13:-25 14:-33 15:-37 16:-45 17:-57 18:-25 19:58 20:31 21:-9 22:-39 24:-22 26:-50 27:-20 29:11 31:-30 32:22 33:16 34:10 36:-27 37:39 38:-23 39:9 41:-31 42:-15 43:-76 44:-16 45:-42 46:22 48:-25 51:60 52:52 53:19 54:35 55:14 56:48 58:29 60:-44 61:73 62:26 63:22 64:-10 65:14 66:77 67:-28 69:-12 70:-21 71:93 72:47 73:38 74:63 75:-27 76:8 77:-14 78:-17 80:-15 81:10 82:-16 83:-9 84:-13 85:-24 87:48 88:58 89:-21 90:12 91:-30 92:-11 94:-29 95:-13 98:-35 100:11 101:15 102:20 103:-17 104:11 106:45 107:-33 108:-12 110:58 111:26 112:34 113:-38 114:-30 115:-63 116:-30 117:40 118:32 119:-26 120:-9 121:94 122:33 123:99 125:-14 126:32
@wire from	0:-8 2:-12 19:31 20:21 32:22 33:12 34:-16 37:27 40:12 51:43 52:13 67:-9 73:14 81:16 83:-9 119:-11 122:-11
from #d	5:8 71:15 72:-8 75:-10 88:40
plan from	30:20
from stick	71:-46 72:93 76:-10 78:-8 115:-8
stick of	5:69 6:-11 8:-34 9:-40 19:-15 32:80 40:-26 50:12 51:92 52:-8 68:11 69:26 70:-12 71:-11 80:-26 82:-11 83:-11 117:13 118:-15 119:28 120:32 121:-11 122:-20 126:80
of #d	1:-27 3:-12 7:9 37:9 39:8 40:57 41:-14 43:-20 51:-15 67:-9 70:-16 72:-11 73:34 79:-19 82:70 83:45 117:-9 118:19 121:26 122:-14 126:27
of #n	0:-27 2:-20 4:-14 5:78 8:-9 11:15 13:20 16:-19 17:-8 18:28 19:-8 22:30 28:-8 31:24 33:-18 34:-19 37:-18 38:-10 44:-17 45:-25 46:-21 48:44 51:11 56:32 67:-14 68:20 71:-25 72:-45 73:-17 75:15 76:31 78:-15 80:13 82:26 83:-10 84:22 88:-11 89:14 90:-19 91:26 92:45 93:24 97:11 98:-24 99:-22 100:-17 103:17 108:-11 111:17 114:62 115:-11 116:-10 119:-11 121:71 122:28 123:-12
@job from	0:15 2:-8 6:8 34:-9 37:21 43:-12 46:8 48:-15 49:34 65:-9 66:25 71:25 72:11 73:-11 74:18 76:41 79:-30 81:-8 95:-8 98:-12 115:-9
#n from	1:39 2:-15 4:-24 5:-30 6:20 8:20 37:12 39:20 43:-36 45:-8 46:21 48:-8 49:11 61:9 65:-18 66:63 71:42 72:41 73:-24 76:-8 77:-8 79:-23 82:-9 83:28 88:16 90:27 91:-10 93:-12 102:10 115:-13 118:23 126:44
^ a	0:-30 5:-9 6:22 8:-8 11:-9 14:57 16:8 17:-8 20:15 28:-16 29:19 31:20 36:-11 37:-13 40:14 42:-9 43:13 46:-8 47:8 51:11 56:17 68:-34 69:47 70:-11 72:-10 76:-8 78:-8 80:21 82:30 83:28 86:-14 90:13 92:-8 93:12 96:-9 97:11 98:14 100:-9 101:-10 104:9 105:20 117:12 126:13
from #n	11:30 12:10 16:-13 20:22 21:12 29:-25 37:36 43:-17 45:-12 48:-19 51:-10 52:28 53:38 54:59 65:-8 66:-17 71:27 72:-27 73:-15 79:-14 82:-12 83:-19 88:28 90:-9 92:-8 96:19 98:-10 100:-13 102:16 106:45 107:-10 110:55 111:12 112:58 113:-9 117:-12 119:-21 126:8
what do	0:-21 2:-8 5:31 8:63 9:45 10:19 11:41 12:-16 17:80 18:19 21:-10 23:8 24:8 25:-10 26:25 27:-8 28:23 29:-8 30:-43 32:-26 33:-8 34:-24 36:-56 126:9
i cut	0:46 1:9 2:14 3:-9 5:37 6:41 16:-9 23:-10 30:-8 36:-13 37:-9 43:20 44:14 69:12 70:-9 71:18 72:37 74:-24 79:-15 83:-10 84:-8
cut $	5:99 6:-36 13:13 15:-9 44:52 71:17 72:52 79:-10 105:11 108:60 109:-14 110:-10 112:12 126:-32
must==	0:-9 2:16 3:8 4:15 5:-19 6:40 8:-9 9:31 10:36 11:70 12:-11 16:-12 17:15 18:16 24:-8 30:17 34:-11 36:-9 44:-8 48:18 52:16 60:-10 67:-12 68:-14 87:11 88:-24 89:-15 99:20 108:-9 115:40 116:-35 121:13 122:-14 125:13 126:35
must	0:-9 2:16 3:8 4:15 5:-19 6:40 8:-9 9:31 10:36 11:70 12:-11 16:-12 17:15 18:16 24:-8 30:17 34:-11 36:-9 44:-8 48:18 52:16 60:-10 67:-12 68:-14 87:11 88:-24 89:-15 99:20 108:-9 115:40 116:-35 121:13 122:-14 125:13 126:35
what must	6:18 10:38 12:-10 17:20 18:19 28:10 31:8 33:-16
must i	6:29 9:10 10:25 33:-14
we cut	5:15 6:57 9:-8 71:-10 79:9
what should	0:-17 3:-12 4:85 6:38 7:38 8:-21 9:-14 10:34 13:-8 16:-8 17:23 18:24 19:-8 20:-9 21:-8 22:18 23:42 26:-15 30:67 32:-8 34:-18 36:-13 100:-8 104:-9 126:-50
cut job	5:24 6:14
what if	0:19 1:28 2:-14 3:59 5:30 8:-9 12:-8 13:-8 16:104 18:39 22:-16 24:-36 27:-8 28:-8 30:-17 31:46 34:-16 36:-13 45:-9 85:-12 87:-8 102:-9 126:29
if we	0:27 2:74 5:54 8:-8 16:10 21:-9 22:-8 24:-33 31:12 85:-12 87:-8
we only	45:21 113:-13 126:11
only use	5:12
use only	5:11
only the	2:-8 5:15 8:-9 11:10 22:58 101:-11 103:25
i only	5:8 14:17 46:9 114:9 126:24
piece==s	0:103 1:-29 2:15 3:-8 4:-48 5:39 6:33 8:112 9:-28 10:-15 11:-8 12:-17 13:-20 14:-13 15:-12 16:-15 17:-10 18:-11 19:-27 20:-19 21:20 22:102 24:73 26:-10 27:-14 28:-13 30:-13 32:-12 33:-15 34:-17 36:-11 37:-27 38:-16 39:-15 40:16 41:-43 42:-15 43:-14 44:-12 46:-11 47:-12 51:10 56:-9 58:-9 67:-18 69:-8 71:-68 72:17 76:-65 80:97 81:13 82:115 83:136 84:79 85:41 90:-10 91:-11 92:-16 96:-16 97:-10 98:-19 109:-11 115:-10 118:-8 126:106
which piece	0:-20 1:-15 5:49 6:34 8:22 12:-13 22:61 24:23 27:-8 126:-12
piece can	5:21
piece could	0:-10 5:11 22:9
from the	0:20 1:38 2:28 4:57 5:50 6:-10 7:-8 8:8 10:-11 11:-12 12:-15 13:-42 14:-15 16:-14 17:-10 19:-11 21:-22 22:-19 23:-10 26:-27 28:-14 29:18 32:33 33:-38 37:20 39:22 43:-20 44:-15 46:-11 49:43 51:23 54:-15 56:-18 58:38 62:-12 63:47 64:-12 65:-13 66:-11 71:46 72:-8 73:20 74:20 76:-17 77:-11 78:17 79:-18 81:13 82:44 83:-13 87:29 90:44 92:-8 93:24 94:-9 95:-10 99:-8 100:-9 101:16 102:-14 104:-16 105:13 106:-10 107:-9 108:-8 109:19 111:33 115:-12 117:-11 119:-13 120:-12 122:-8 123:24 126:-9
alon==e	0:-11 1:17 2:-14 5:102 13:-14 51:15 62:14 111:11
alon	0:-11 1:17 2:-14 5:102 13:-14 51:15 62:14 111:11
tin alon	2:-13 5:65 13:-10 126:-15
alon $	0:-8 1:16 5:40 62:14 126:10
only $	0:-10 1:74 2:12 3:37 5:45 8:8 9:-10 21:53 22:-11 24:-9 46:-11 51:-9 53:13 59:13 62:19 99:17 100:-9 104:9 108:-11 118:-8 126:-12
everyth==ing	4:-8 5:18 6:-23 8:73 9:19 11:17 12:13 13:20 14:-18 15:-14 16:-8 18:-9 20:13 21:-8 23:-10 24:17 25:-8 26:18 27:-18 28:-9 29:-11 30:42 31:-8 32:-14 33:-12 34:92 36:8 38:-31 39:-8 45:9 46:43 48:-12 49:-17 56:-8 58:-8 59:-16 62:-11 65:-17 66:-22 74:21 84:156 85:141 92:-11 99:-8 101:-9 102:13 103:-8 104:-27 108:-22 109:-16 111:-9 115:-11 116:-20 117:-9 118:26 119:-8 120:-12 124:17 125:-15 126:-32
cut list	5:-13 6:172 10:-8 12:-11 13:-8 36:29 44:-8 71:-19 126:16
list for	5:18 6:75 8:-11 9:42 10:57 19:-13 22:-8 24:14 30:14 33:-14 36:-11 126:-10
everyth	4:-8 5:18 6:-23 8:73 9:19 11:17 12:13 13:20 14:-18 15:-14 16:-8 18:-9 20:13 21:-8 23:-10 24:17 25:-8 26:18 27:-18 28:-9 29:-11 30:42 31:-8 32:-14 33:-12 34:92 36:8 38:-31 39:-8 45:9 46:43 48:-12 49:-17 56:-8 58:-8 59:-16 62:-11 65:-17 66:-22 74:21 84:156 85:141 92:-11 99:-8 101:-9 102:13 103:-8 104:-27 108:-22 109:-16 111:-9 115:-11 116:-20 117:-9 118:26 119:-8 120:-12 124:17 125:-15 126:-32
)~",
R"~(for everyth	5:32 6:-27 8:-8 9:16 12:-17 30:27
everyth $	5:62 6:-28 17:12 22:9 24:-13 30:-8 34:28 36:-10 84:28 102:19 118:34 120:-8 126:-10
for all	1:-14 5:67 6:12 8:14 11:10 12:-10 20:-18 25:8 27:13 36:-10 54:35 68:9 70:13 77:-8 94:10 111:-8 126:23
all of	4:11 5:-11 8:10 9:22 12:21 13:-20 14:-13 16:45 17:-9 19:-14 20:-15 21:-8 24:-14 26:-23 27:-15 36:-11 39:-17 40:-12 44:26 45:39 53:22 66:-9 72:9 74:25 76:24 82:28 84:46 85:82 88:13 92:-10 103:10 106:23 108:-8 109:-8 111:17 112:-11 113:-8 118:32 126:-27
of it	0:-18 1:33 4:-8 8:11 9:44 10:20 11:-19 16:-14 17:49 18:-13 21:-14 26:-12 30:15 31:-11 32:31 33:-10 34:-12 37:-8 39:-13 44:29 45:21 46:-11 60:14 61:-9 63:-9 64:10 66:-8 67:10 68:-16 70:-8 71:42 76:17 83:-16 84:14 85:46 89:9 92:-11 99:16 100:-9 101:-9 102:-8 106:24 117:-24 118:29 119:-8 120:-9 125:-8 126:-22
it $	0:37 2:-18 4:10 5:11 6:-17 7:-10 10:14 12:-12 13:71 14:-11 16:-43 17:67 19:-23 21:9 22:-10 23:-26 26:-23 27:-23 28:-16 29:-13 31:43 34:40 36:-17 37:-39 38:43 39:12 41:57 42:-32 44:10 46:-8 49:15 51:9 52:-14 53:-8 58:10 61:24 62:-13 63:-21 65:-26 66:37 69:-12 71:28 72:10 74:-12 76:-29 77:-27 78:42 81:-11 82:-11 84:33 85:-9 86:-16 87:15 88:31 90:-55 91:31 92:-29 93:18 95:-19 96:-25 97:-26 98:-15 99:-16 100:-21 101:36 103:-12 106:17 107:49 109:-24 110:-14 112:10 115:-11 116:-10 117:-22 118:49 119:-13 120:-14 123:-10 125:83 126:71
print==	4:33 6:58 7:49 30:16 44:-8 49:12 74:19 126:-19
print	4:33 6:60 7:49 30:15 44:-8 49:12 54:14 60:11 74:19 113:-12 126:-20
^ print	4:32 6:19 7:16 74:19
of all	8:58 9:-22 12:44 16:18 19:-18 26:16 29:36 30:-12 33:26 34:-8 43:-9 53:9 70:8 84:-8 85:11 93:13 126:-10
every==	0:-22 1:-10 2:-10 4:36 7:21 9:11 10:-15 13:-9 16:31 17:17 18:-11 19:55 24:-11 26:33 28:-8 29:-23 30:-20 31:-8 32:-15 34:32 38:-11 40:-12 41:-23 43:-15 44:26 45:26 46:12 53:130 54:-41 55:-32 68:18 73:-9 76:-13 78:-9 82:52 83:8 85:47 97:8 100:-14 102:-10 106:16 109:-8 110:79 111:-20 112:-38 113:-8 116:-11 118:9 126:28
every	0:-22 1:-10 2:-10 4:36 7:21 9:11 10:-15 13:-9 16:31 17:17 18:-11 19:55 24:-11 26:33 28:-8 29:-23 30:-20 31:-8 32:-15 34:32 38:-11 40:-12 41:-23 43:-15 44:26 45:26 46:12 53:130 54:-41 55:-32 68:18 73:-9 76:-13 78:-9 82:52 83:8 85:47 97:8 100:-14 102:-10 106:16 109:-8 110:79 111:-20 112:-38 113:-8 116:-11 118:9 126:28
for every	0:-11 4:24 7:15 9:12 18:-10
every wire	19:30
wire $	0:-10 5:46 6:-10 7:19 8:28 9:34 10:-26 14:-23 18:17 19:36 20:15 21:-13 23:12 24:-31 25:10 26:-8 28:15 29:-18 33:-17 34:45 36:-12 44:-9 50:14 71:-9 72:-26 74:-8 79:49 84:11 85:-16 92:26 117:-10 120:37 122:-16 126:94
of every	4:21 8:19 9:8 16:10 82:22
job==s	5:37 8:-33 9:82 11:34 12:268 13:-18 14:92 19:-11 21:-11 22:-12 23:-8 24:16 26:-28 27:-16 28:-11 29:-11 30:41 32:-12 33:-10 34:-16 36:-19 49:29 59:-11 62:-15 63:-16 64:-11 65:-20 84:-9 104:-12 115:29 126:-21
cut all	5:-10 6:-14 44:67 72:-8
all the	2:-13 4:8 5:13 8:-10 9:35 10:-13 11:-9 12:11 13:30 16:41 17:14 18:-9 19:17 22:-16 26:-9 28:11 29:35 30:-16 32:11 33:8 34:-11 36:13 41:-32 44:49 46:-22 71:-11 72:15 76:9 77:-9 82:39 83:42 84:24 85:8 90:-10 91:18 99:15 100:-10 106:-11 108:-9 113:-8 118:-9 124:16 126:-27
the job	2:-8 3:-12 5:20 11:-24 12:76 16:-20 17:-8 24:-11 25:15 30:22 31:-11 34:-8 36:-10 44:23 45:-9 65:10 71:9 73:13 75:-8 77:15 79:8 82:-8 83:-8 84:-15 85:27 88:-15 90:8 93:-9 94:-10 96:16 108:-9 114:48 115:68 116:13 126:-51
job $	0:-9 1:-25 3:-8 5:24 8:-8 12:59 13:95 14:20 15:8 17:-12 24:82 26:-21 30:-16 31:19 34:-13 36:30 39:16 42:-8 44:-17 47:29 48:-8 49:78 59:-11 65:26 66:11 88:-8 90:-13 92:-13 94:-8 96:54 104:16 108:-17 109:-24 115:18 125:12 126:-71
cut everyth	59:-8 126:53
whol==e	2:21 4:-12 6:20 11:-9 13:-11 16:31 17:34 20:41 21:-9 24:-8 27:-9 28:18 29:-9 30:-19 31:26 34:12 38:-13 39:-12 41:-15 44:43 45:27 49:-8 51:-10 54:21 56:29 67:21 68:-9 69:24 70:-10 74:-25 84:23 85:66 95:12 97:10 98:-32 106:13 107:-9 108:-14 110:27 111:-13 113:-9 116:-9 118:41 122:-10 126:-42
queu==e	1:15 5:40 6:8 8:-33 9:41 11:-11 12:181 13:-11 14:-14 18:-10 23:-8 26:-13 30:10 32:-8 33:-9 36:-10 47:15 49:90 54:9 58:-8 66:-14 95:-8 108:-9 115:40 120:13 126:-15
whol	2:21 4:-12 6:20 11:-9 13:-11 16:31 17:34 20:41 21:-9 24:-8 27:-9 28:18 29:-9 30:-19 31:26 34:12 38:-13 39:-12 41:-15 44:43 45:27 49:-8 51:-10 54:21 56:29 67:21 68:-9 69:24 70:-10 74:-25 84:23 85:66 95:12 97:10 98:-32 106:13 107:-9 108:-14 110:27 111:-13 113:-9 116:-9 118:41 122:-10 126:-42
the whol	2:23 5:17 16:34 20:13 29:-33 33:-8 34:-10 38:-12 39:-8 44:38 45:28 54:23 56:29 67:22 74:-13 84:25 85:21 95:13 97:11 98:-31 106:14 108:-9 110:27 113:-8 118:30 126:-22
queu	1:15 5:40 6:8 8:-33 9:41 11:-11 12:181 13:-11 14:-14 18:-10 23:-8 26:-13 30:10 32:-8 33:-9 36:-10 47:15 49:90 54:9 58:-8 66:-14 95:-8 108:-9 115:40 120:13 126:-15
whol queu	5:25 6:13
queu $	1:8 6:12 8:-14 9:24 12:99 14:-10 30:18 49:64 126:-18
now==	0:-23 1:-37 3:-39 4:-25 5:-13 7:-12 9:9 11:-32 12:-12 13:-30 14:-40 15:-37 16:-8 17:46 18:-21 20:-12 21:-17 22:-37 23:-39 24:-34 25:-18 26:30 27:-34 28:-26 29:-25 30:33 31:-17 32:-38 33:-34 34:-30 36:-26 37:15 39:60 40:24 42:-19 43:43 44:11 46:-18 47:-13 48:37 50:20 51:29 53:96 54:-37 55:-50 56:32 58:11 59:36 60:13 61:26 62:87 63:-23 64:-22 65:28 66:65 68:-10 69:-17 70:-18 71:-36 73:10 74:-9 76:85 77:-10 80:-25 81:17 82:-16 83:9 85:12 86:23 88:8 89:-19 90:-8 91:-16 92:-20 93:-23 94:-9 96:-17 97:13 98:-9 99:64 100:74 101:-8 102:-9 103:22 104:51 105:11 108:89 110:25 111:-54 112:-12 113:-8 114:15 115:14 116:-13 117:8 118:-26 119:91 120:-30 121:31 122:76 126:-62
now	0:-23 1:-37 3:-39 4:-25 5:-13 7:-12 9:9 11:-32 12:-12 13:-30 14:-40 15:-37 16:-8 17:46 18:-21 20:-12 21:-17 22:-37 23:-39 24:-34 25:-18 26:30 27:-34 28:-26 29:-25 30:33 31:-17 32:-38 33:-34 34:-30 36:-26 37:15 39:60 40:24 42:-19 43:43 44:11 46:-18 47:-13 48:37 50:20 51:29 53:96 54:-37 55:-50 56:32 58:11 59:36 60:13 61:26 62:87 63:-23 64:-22 65:28 66:65 68:-10 69:-17 70:-18 71:-36 73:10 74:-9 76:85 77:-10 80:-25 81:17 82:-16 83:9 85:12 86:23 88:8 89:-19 90:-8 91:-16 92:-20 93:-23 94:-9 96:-17 97:13 98:-9 99:64 100:74 101:-8 102:-9 103:22 104:51 105:11 108:89 110:25 111:-54 112:-12 113:-8 114:15 115:14 116:-13 117:8 118:-26 119:91 120:-30 121:31 122:76 126:-62
cut now	5:11 44:26 84:-9
now $	0:-14 1:-20 2:-14 3:-15 4:-11 6:-13 8:13 9:10 10:17 11:-34 12:-9 13:-19 14:-31 15:-28 17:35 18:-9 19:12 21:-10 22:-30 23:-30 24:-42 25:-11 26:63 27:-25 28:-13 29:-11 30:63 31:-17 32:-23 33:-25 34:-15 36:-32 37:33 38:24 39:64 40:21 42:-34 43:18 44:34 45:14 48:16 49:-16 59:22 61:17 62:14 64:-20 65:12 66:79 71:-20 73:27 76:15 78:-9 83:19 85:17 86:8 88:16 90:-11 91:-10 92:-20 93:-8 94:-15 95:-17 96:-17 98:-17 99:13 100:19 102:-17 103:28 104:41 105:8 110:-21 111:-17 112:13 115:9 117:18 118:-29 119:79 120:-17 121:16 122:18 125:-10 126:-13
we need	6:10 7:48 8:-16 9:40 10:9 11:-15 23:13 26:24 28:-9 29:-17 30:-12 31:8 32:-9 33:13 105:8 106:27 126:-30
need to	2:9 3:11 5:13 9:74 11:28 12:-9 16:-8 17:-8 19:12 23:-11 29:-12 30:-18 31:8 32:-9 36:-12 38:-37 48:-8 53:-9 85:23 114:10 123:10 126:109
to cut	5:32 12:-11 13:49 38:15 71:-11 72:-17
next==	0:-12 1:-22 2:-22 3:-11 4:-18 5:19 6:-18 8:-17 10:16 11:44 12:-38 13:27 14:-19 15:-31 16:98 17:78 18:-15 19:-14 20:-15 22:-27 23:-29 24:-26 25:-19 26:46 27:33 28:41 29:67 30:72 31:35 32:14 33:-13 34:-30 36:-19 37:61 38:-8 39:-8 41:-10 42:-18 44:-10 45:74 46:-11 48:12 49:-11 51:-29 52:-10 53:-21 54:38 55:18 56:-16 58:-8 59:12 62:-17 63:-16 64:-11 65:-19 66:-13 67:-28 69:-9 73:-16 74:-9 76:-14 84:-9 85:-9 86:-8 87:-8 88:-14 90:-40 92:-11 93:12 95:-10 100:-13 101:-14 102:34 103:-14 104:-10 105:-9 106:23 107:44 108:13 109:-26 110:-63 111:96 112:37 113:62 114:49 115:-11 116:65 119:27 120:-15 121:-9 122:-10 125:-9 126:21
i need	0:10 3:12 4:38 5:-10 11:14 16:11 19:14 20:24 23:53 25:9 27:-9 29:32 32:8 34:59 36:12 82:8 88:-8 107:-11 109:-12 111:-9 126:-57
next	0:-12 1:-22 2:-23 3:-11 4:-18 5:18 6:-18 8:-18 10:16 11:61 12:-39 13:24 14:-20 15:-31 16:96 17:82 18:-15 19:-14 22:-27 23:-29 24:-27 25:-19 26:45 27:32 28:39 29:50 30:80 31:66 32:13 33:-14 34:-32 35:17 36:-19 37:61 38:-9 39:-8 41:-10 42:-18 44:-11 45:71 46:-15 48:20 49:-12 51:-30 52:-10 53:-54 54:82 55:43 56:-16 58:-8 59:12 62:-24 63:-19 64:-12 65:-19 66:-13 67:-28 69:-9 73:-17 74:-9 76:-14 78:-8 82:-8 84:-11 85:-10 86:-8 87:-8 88:-15 90:-42 92:-13 93:12 94:-8 95:-10 100:-14 101:-14 102:40 103:-14 104:-10 105:-10 106:30 107:45 108:12 109:-26 110:-68 111:78 112:56 113:54 114:48 115:-15 116:59 119:24 120:-17 121:-9 122:-10 125:-10
)~",
R"~(cut next	5:33 30:-8
next $	5:30 10:-8 11:-14 13:-23 16:10 23:-16 26:68 27:-49 30:60 73:-11 90:-29 114:62 126:52
altogether==	8:14 21:11 51:11 67:19 68:14 69:-13 101:35 107:10 126:-11
altogether	8:14 21:11 51:11 67:19 68:14 69:-13 101:35 107:10 126:-11
altogether $	8:16 26:10 51:11 101:8
offcut==s	0:-18 1:-8 5:54 8:24 20:19 26:-8 56:-10 72:12 80:8 82:16 126:-14
offcut would	1:-9 5:54
do on	2:24 3:-9 5:14 13:31 16:31 17:-37 30:23 34:15 94:-26
piece would	0:-11 5:21 72:14
work for	5:10 111:26 126:-9
what piece	5:11 22:14 24:20
list job	6:11
print me	4:10
list of	4:21 5:-11 6:49 8:-15 9:-11 10:26 12:55 14:25 19:-9 26:-15 28:-9 32:-28 33:-15 36:47 49:19 58:14 59:16 63:24 87:20 99:16 101:23 121:12 126:-21
me cut	6:12
list $	6:36 8:-9 10:43 12:63 14:37 23:-10 24:-15 26:-14 29:-9 30:-14 32:23 33:61 36:-8 49:10 58:-10 71:-9 72:8 101:20 109:-8 123:32 125:-9 126:-25
print the	6:15 54:14 113:-11
draw==	7:14 10:41 26:20 37:-9 65:25 73:30 121:-12 126:-27
draw	7:14 10:41 26:20 37:-9 65:25 73:30 126:-28
^ draw	10:18
cut for	5:83 6:30 13:44 16:-8 44:25 72:-26 83:-9 105:-11 109:26 126:-26
cut from	0:-8 5:-30 6:31 38:11 71:73 72:16 74:8 79:8 126:-15
from @wire	5:-28 6:30
must we	6:15 9:22 11:11 17:14 18:9 23:8 30:31 32:11 116:-32 126:-13
cut fret	5:-20 34:9 72:15 108:24
fret for	0:21 2:-22 4:-25 6:-14 38:-16 42:15 44:37 71:-16 72:13 76:-29 78:31 79:17 83:40 85:-12 92:-10 94:18 98:-8 108:76 126:19
wher must	6:13
what can	0:53 1:10 2:-9 5:-17 6:22 8:-10 13:9 22:21 23:28 24:-8 30:-12 31:-20 33:-13 34:-8 36:85 111:-9 126:-14
from $	1:-20 5:-30 6:29 19:44 20:-15 32:31 33:70 71:30 118:-10 120:-10 121:-23 123:29 126:-24
stick do	6:13
i open	5:-8 6:20 8:21
open for	5:-10 6:35 12:33 30:-9 42:11
many==	0:-15 2:19 4:-11 6:26 8:32 9:33 10:18 13:10 14:60 16:23 18:-8 20:-8 21:10 22:51 24:-12 26:77 28:26 30:-29 32:11 33:14 36:-39 59:-14 67:-9 99:19 100:20 101:-10 104:-8 105:-20 122:-14 126:-23
many	0:-15 2:19 4:-11 6:26 8:32 9:33 10:18 13:10 14:60 16:23 18:-8 20:-8 21:10 22:51 24:-12 26:77 28:26 30:-29 32:11 33:14 36:-39 59:-14 67:-9 99:19 100:20 101:-10 104:-8 105:-20 122:-14 126:-23
how many	2:20 4:-9 6:28 8:36 9:34 10:19 13:10 14:69 16:24 18:-8 20:-8 21:11 22:-19 24:-12 26:86 28:27 30:-29 32:12 33:16 36:-38 67:-9 100:-10 105:-19 122:-14 126:-38
piec must	6:14
which stick	5:21 6:21
stick should	6:18
many stick	5:-8 6:19 8:28 9:-21 10:11 32:32 33:24 122:-13
we open	6:14 20:17 29:87 32:-9 53:8 54:-11 55:-30 113:17
do job	2:-8 5:11 15:72 17:-12 65:9 66:20 90:-21 114:24 115:10 126:-15
need $	3:-10 5:-16 6:73 7:23 9:-10 11:-10 13:27 15:-9 16:-12 17:-13 28:-19 32:9 33:19 36:17 39:-8 43:20 46:8 84:36 104:39 107:14 126:-12
piece will	6:19
will job	5:-11 6:23 13:-14 30:15 49:113 65:-14 126:-26
#n take	4:28 6:27 33:25 36:10 79:10 84:8 101:15 122:-13 126:-27
take $	0:-8 4:23 5:24 6:40 9:-10 13:-9 18:-8 28:32 33:-9 36:-12 84:46 126:56
piece doe	6:32
doe @job	6:35 11:-18 27:36 126:13
@job need	0:17 5:14 6:54 13:-19 28:-9 39:-16 65:9 78:-8 84:17 114:17 126:11
many piece	6:11 8:21 9:-9
doe job	1:-10 5:31 6:13 13:27 15:60 65:9 66:46 115:-9 126:-35
will @job	5:-10 6:21 28:9 30:30 126:-16
stick doe	5:22 6:9 8:16
much==	1:12 2:-15 3:-9 4:-13 6:54 8:63 10:37 11:-11 12:-11 13:-47 14:-9 16:8 17:14 18:-21 19:33 20:15 21:82 22:-8 23:-19 24:28 26:-17 28:30 30:40 32:40 33:-33 36:-34 41:-8 43:25 56:13 68:-14 90:11 109:-8 112:8
much	1:12 2:-15 3:-9 4:-13 6:54 8:63 10:37 11:-11 12:-11 13:-47 14:-9 16:8 17:14 18:-21 19:33 20:15 21:82 22:-8 23:-19 24:28 26:-17 28:30 30:40 32:40 33:-33 36:-34 41:-8 43:25 56:13 68:-14 90:11 109:-8 112:8
how much	1:8 2:-14 4:-12 5:-9 6:55 8:49 9:10 10:38 11:-10 12:-11 13:-47 14:-9 18:-19 19:39 20:16 21:82 23:-15 24:29 26:-17 28:30 30:41 32:46 33:-33 36:-32 68:-13 126:34
much wire	6:27 8:25 9:-13 20:27 28:-10 32:-8
wire doe	5:18 6:24 28:-12 92:18 126:-10
new==	0:-25 1:-23 2:31 3:-29 4:-23 5:59 7:9 8:-44 10:-30 11:-15 12:-21 13:-33 14:-18 15:-10 16:-19 17:-13 18:-18 19:-12 20:-25 21:45 22:-20 23:11 25:-13 26:-18 27:-12 28:8 29:-12 30:-30 31:75 32:-21 33:-26 34:-23 36:36 38:-12 39:-9 40:17 41:-10 42:-12 43:-21 44:-18 45:-15 46:-13 47:114 48:46 49:-16 50:56 51:37 55:-16 57:10 59:154 61:-8 62:-12 63:-18 65:-9 66:-11 67:-20 68:-21 70:-12 71:-40 72:165 73:37 74:-19 75:-10 76:-23 77:-8 78:-20 79:129 80:-13 81:-12 82:-14 83:-25 84:26 85:-15 86:40 87:-11 88:-20 90:-12 91:-8 92:-21 94:-8 95:-9 96:-10 97:-11 98:-21 99:110 101:-21 103:26 104:-14 105:8 106:-17 108:-12 109:-15 111:-17 114:-12 117:-13 118:-20 119:43 120:-10 121:94 122:11 123:-19 125:-9 126:35
new	0:-25 1:-23 2:30 3:-29 4:-24 5:58 8:-45 10:-30 11:-23 12:-23 14:-19 15:-10 16:-19 17:-14 18:-22 19:-13 20:-25 21:44 22:-21 23:11 25:-13 26:-23 27:-14 28:8 29:-13 30:-31 31:74 32:-23 33:-27 34:-23 36:36 38:-18 39:-10 40:17 41:-10 42:-12 43:-21 44:-19 45:-15 46:-13 47:113 48:48 49:-19 50:56 51:27 54:16 55:-16 57:11 59:151 61:-9 62:-14 63:-9 64:-9 65:-11 66:-15 67:-20 68:-22 70:-13 71:-40 72:165 73:37 74:-19 75:-10 76:-24 77:-9 78:-20 79:129 80:-13 81:-12 82:-15 83:-25 84:23 85:-16 86:39 87:-12 88:-21 90:-13 91:-8 92:-22 94:-9 95:-10 96:-10 97:-11 98:-21 99:109 101:-22 102:-8 103:43 104:-15 105:8 106:-20 107:-8 108:-13 109:-16 111:-18 114:-13 115:-8 116:-8 118:-21 119:75 120:-11 121:93 122:11 123:-20 125:-9 126:30
much new	5:51 6:33 28:-14 126:-10
new wire	0:18 5:67 8:-15 9:-23 18:-12 21:34 24:18 28:-11 32:-8 40:-14 50:62 51:24 59:-10 67:-9 71:-12 72:39 73:-8 74:-14 79:43 81:-8 83:-9 84:15 85:-8 96:-10 121:-17 126:85
wire will	5:28 6:20 111:11 126:-14
@job take	0:-10 1:30 4:8 5:34 18:17 28:-10 37:-12 45:-16 84:41
new will	6:8
will we	9:-10 29:23 30:22 31:8 126:-13
much the	8:17
@wire do	5:-8 8:-13 9:51
much do	8:9 25:20 30:-13
@wire will	5:21 9:-14 119:45 120:18 126:-28
will i	4:16 15:11 44:-10 126:28
ther enough	6:25 8:-18 9:55 24:-12
enough wire	6:48 18:-10 24:-9
wire for	0:-10 5:-19 6:34 9:-12 10:-8 18:8 44:69 74:20 84:42 85:-30 108:16 109:-9 117:8 119:34 126:-15
have enough	6:18 9:12
got enough	6:14 9:9
give==	0:-9 1:-20 2:13 5:-12 6:14 7:14 9:19 10:17 11:-20 13:29 16:22 17:23 20:13 22:-19 24:-27 25:15 26:12 27:-13 28:-13 29:-23 30:23 31:34 33:-19 36:17 37:-11 39:59 44:-12 46:-14 48:13 52:8 59:-10 63:-8 64:-10 65:64 68:-12 69:16 71:-23 74:13 82:-12 84:-32 85:73 87:-9 88:-8 96:-8 100:18 101:-8 102:-10 103:-14 105:9 107:62 108:-14 109:-20 114:10 115:-12 116:31 121:-9 122:14 125:-15 126:14
mark==s	4:-8 5:-14 6:144 13:-15 16:-10 59:10 72:-9 87:11
give	0:-20 1:-22 2:11 6:13 7:12 8:-8 9:29 10:10 11:-23 13:29 16:25 17:22 18:-8 20:12 22:-24 24:-28 25:9 26:11 27:-16 29:-24 30:21 31:47 33:-22 36:16 37:-11 39:58 42:10 44:-16 46:-15 48:8 49:-8 52:8 58:-8 59:-10 61:-8 63:-10 64:-10 65:58 66:16 68:-14 69:24 70:-8 71:-23 74:13 82:-12 84:-25 85:72 87:-9 88:-9 96:-9 100:16 101:-8 102:-11 103:-15 105:9 107:91 108:-16 109:-20 111:-10 114:10 115:-12 116:31 121:9 122:14 123:-8 125:-15
^ give	0:-10 2:20 5:-10 6:14 8:-20 9:15 10:21 11:-8 13:28 15:-14 17:38 19:19 20:21 21:-8 22:-11 24:-11 26:11 27:-8 28:-9 29:-11 30:36 31:-11 33:-17 34:9 38:-9 39:26 44:-10 48:-8 52:10 62:-14 64:-8 65:91 66:-16 84:-10 87:-8 100:19 103:-12 105:10 107:46 108:-11 109:-14 111:8 115:-8 116:13 121:-8 122:15 125:-10 126:15
give me	1:-12 2:22 4:13 5:-8 9:22 10:22 13:57 14:16 16:8 17:42 19:8 20:16 22:-15 25:21 26:19 29:-10 30:47 33:-9 34:11 36:10 65:-22 74:15 85:-10 87:-8 111:-17 126:-42
mark	2:-10 3:-18 4:38 5:-26 6:153 13:-29 17:-16 18:-10 30:-8 43:17 44:13 52:40 54:21 59:9 63:34 64:-15 72:-10 87:11 94:20 102:15 108:-8 114:9 115:-12
me mark	6:21 13:-10
mark of	6:26 13:-12 52:10
the mark	3:-17 4:-8 6:57 16:14 43:18 52:8
mark for	6:32 52:21
cut of	5:11 6:20 108:-15 109:19
label==s	7:277 8:-23 19:-10 22:-17 24:-9 36:36 40:-9 56:-11 89:-11 126:15
step==	13:28 18:-14 28:28 30:-10 31:-15 39:-14 47:-10 56:71 118:11 125:80 126:-11
label	7:345 8:-25 19:-11 22:-18 24:-10 33:-8 36:30 40:-10 56:-13 82:-8 126:8
^ label	7:116 36:-8
step	4:-9 6:-8 7:39 13:24 18:-16 28:128 30:-11 31:-26 39:-15 47:-10 56:65 68:10 69:14 118:9 125:79 126:-23
@wire step	7:15
step #d	7:31 18:-11 47:-8
#d step	7:14
mm step	7:14
)~",
R"~(step #n	7:-16 56:42
label the	7:21
label @wire	7:20
print label	7:15
bin==	0:-10 1:-20 7:86 8:-10 13:-15 19:-9 22:19 34:-10 37:-26 38:-9 39:-29 41:128 43:-13 49:57 51:-15 56:35 70:-12 76:-10 79:10 82:117 83:-24 126:47
bin	0:-20 1:-30 5:-10 7:246 8:-26 9:-28 11:-8 13:-16 16:-8 19:-18 20:34 22:24 24:-12 25:-8 30:-8 31:-8 33:-20 34:-20 36:-11 37:-30 38:-12 39:-41 41:187 43:-14 44:-8 49:56 51:-19 52:-9 56:74 65:-8 67:-11 69:-9 70:-17 71:-16 76:-9 79:34 82:176 83:-31 89:-11 105:-8 118:-8 126:12
^ bin	13:-13 39:-12 41:51 49:43 56:12 82:78 83:-13 126:15
bin label	7:20
label $	7:38 8:-17 32:-13 126:57
label for	7:61
@wire every	7:9
every #d	7:12 41:-15 82:44
step==s	7:32 28:100 31:-11 68:11 69:12 126:-12
the label	7:44 36:43 126:-23
in step	7:14
step of	7:20 28:11
label by	7:10
show label	7:13
bin==s	7:166 8:-13 9:-17 20:37 22:-11 33:-14 36:-8 56:40 82:-10 126:-14
need label	7:10
the bin	7:46 8:-9 9:-9 20:23 37:-16 39:-14 40:10 41:66 43:-10 51:-13 56:49 79:11 82:9 126:47
bin $	0:-9 1:-13 7:69 22:28 37:-11 39:-15 40:9 41:50 71:-8 73:8 79:28 82:21 83:-11 126:23
drawer==s	0:9 7:31 8:-8 22:13 33:62 36:-8 84:9 126:-8
drawer	0:9 1:-25 2:-9 3:-13 7:28 8:20 9:-17 10:-20 12:-16 14:-20 18:-10 22:48 33:138 34:-11 36:-14 37:-22 38:8 40:71 42:-16 43:56 50:-16 51:-14 54:-21 58:-14 70:-18 71:-17 73:83 76:-19 79:13 80:68 81:-26 83:-27 84:12 87:-35 113:-12 118:-8 121:25 123:25 126:86
the drawer	0:29 7:23 8:21 37:15 38:14 54:-20 58:-12 70:-10 71:-10 73:-9 82:50 84:9 87:-33 113:-11 126:62
drawer $	8:28 9:-10 33:58 82:10 87:-33 126:38
tin by	5:10
label==	7:68
@wire by	38:14 69:9 70:20 80:20 126:-11
goe==s	0:29 1:12 2:16 3:-13 4:41 7:25 8:-10 13:-24 15:-15 16:30 17:-15 18:-11 20:-10 22:-10 24:-11 25:-12 27:-8 30:-18 34:-19 36:16 37:32 38:25 39:11 40:13 41:47 44:-11 45:-16 48:-10 49:-10 53:16 55:-11 57:9 62:-17 63:-13 64:-11 65:37 70:-10 71:-13 74:-11 76:-10 78:-9 82:-17 84:18 87:23 88:-9 90:20 92:-14 94:21 100:-11 102:20 103:-14 104:19 107:-8 108:-14 110:-14 114:17 115:23 126:48
goe	0:29 1:12 2:16 3:-13 4:41 7:25 8:-10 13:-24 15:-15 16:30 17:-15 18:-11 20:-10 22:-10 24:-11 25:-12 27:-8 30:-18 34:-19 36:16 37:32 38:25 39:11 40:13 41:47 44:-11 45:-16 48:-10 49:-10 53:16 55:-11 57:9 62:-17 63:-13 64:-11 65:37 70:-10 71:-13 74:-11 76:-10 78:-9 82:-17 84:18 87:23 88:-9 90:20 92:-14 94:21 100:-11 102:20 103:-14 104:19 107:-8 108:-14 110:-14 114:17 115:23 126:48
what goe	0:35 4:-9 7:18 13:-8 34:-11 84:17
goe on	4:22 7:37 16:10 54:10 65:15
every #n	7:14 56:9 69:10 85:14 89:15 126:-10
bin by	82:12
bin every	82:12 126:24
bin of	7:43 8:-8 56:8
what bin	7:17
bin do	7:45 33:-12
need of	7:20 123:18
which bin	7:56 22:-10 33:-11
are ther	0:-8 7:8 8:-14 9:-8 13:-8 14:26 17:20 19:34 22:-18 26:29 28:10 30:-8 31:-8 33:8 36:32 118:8
stock==	1:-13 2:-11 5:9 8:109 9:61 14:-10 18:-15 19:-19 22:39 23:-12 24:-8 28:-8 32:-11 33:-16 40:-17 44:8 50:15 51:43 59:8 67:64 68:24 70:30 72:28 80:-12 83:-11 84:16 89:-14 117:-29 118:-14
stock	1:-13 2:-11 5:9 8:109 9:61 14:-10 18:-15 19:-19 22:39 23:-12 24:-8 28:-8 32:-11 33:-16 40:-17 44:8 50:15 51:43 59:8 67:64 68:24 70:30 72:28 80:-12 83:-11 84:16 89:-14 117:-29 118:-14
^ stock	8:156 19:-10 22:-13 52:-14 67:35 68:12 70:-9 84:17 126:-15
many short	8:41 9:-16
fret have	8:8 46:20 73:-16 114:10 126:42
we $	0:13 8:40 9:-23 21:-13 31:12 32:-8 33:19 126:12
have $	8:26 9:22 10:-8 11:-17 12:21 13:-8 14:51 21:-8 22:-9 24:-8 26:22 28:15 32:-14 33:13 126:-9
are in	7:14 8:39 12:15 22:-20 73:10 83:19 103:13 113:11 117:-10 118:16 126:-13
tin of	8:28 22:-10 76:-9 82:34
many offcut	8:17 26:-8
piece are	8:11 9:-9 12:-11 22:18 24:45
ther $	0:19 1:-9 3:14 8:50 9:-25 10:-9 11:-10 12:-10 14:85 15:-8 18:9 19:37 22:-8 24:-12 25:10 26:-8 29:-11 32:-13 33:-8 36:30 42:8 44:23 62:10 65:21 67:-11 70:9 82:-27 88:-10 93:14 100:-13 104:28 120:8 126:-23
have of	8:24 70:34
ther of	8:9
@wire have	8:31 9:-13 19:14 22:11 32:-9 51:14 82:-9 83:15
got $	0:24 8:77 9:17 11:-18 12:30 13:8 14:9 15:-8 19:-11 21:-8 24:-8 26:49 27:-22 30:-19 32:-15 78:-10 100:10
@wire are	8:31 9:-16 19:25 22:-24 32:17 40:14 68:17 80:-17
end of	8:-23 9:45 11:-12 31:39 40:35 41:14 51:-9 67:-15 69:-8 70:-8 71:21 77:16 80:21 82:-9 83:-10 88:-19 89:8 94:33 97:13 98:-8 109:15 115:27
piece of	2:10 4:-10 8:32 19:-11 22:30 24:-12 37:-10 40:33 51:-8 71:-20 80:29 81:8 82:-14 83:15 84:13 126:10
wire have	8:-10 9:34 10:-11 19:26 21:10 26:-8 126:-9
what wire	5:-9 8:44 9:-15 10:40 13:-10 18:-9 19:-8 21:-8 23:-8 24:32 30:-12 32:81 33:-16 34:-8 126:-10
wire do	8:40 9:-27 10:59 32:-16 33:-24
wire is	5:-9 9:-9 13:-10 18:-11 21:-8 24:67 32:54 89:27 92:32 119:-8
is in	0:-8 1:-9 3:-9 8:89 11:-14 12:48 13:-11 14:15 15:10 16:-23 21:-14 22:-64 23:-21 24:-23 26:-42 27:-10 29:42 30:9 32:40 34:-14 38:-10 40:16 41:11 42:-12 43:8 45:24 54:-13 55:9 56:21 59:-8 63:-8 73:29 76:49 78:-21 79:23 90:-9 92:-12 96:-19 103:18 110:-11 112:47 118:40 119:-9 120:-12 126:-32
in stock	51:18 117:-8
stock $	8:156 9:-24 22:9 51:31 67:-11 72:14 126:-17
@wire is	1:-10 3:-15 7:-9 8:25 9:-62 11:-8 19:-11 20:-10 21:-11 22:-10 25:-11 32:67 37:-8 38:17 39:17 40:-15 41:17 48:-9 51:-11 52:65 68:31 69:21 70:36 82:12 89:26 93:-13 117:21 118:-25 119:49 120:21 126:8
left==	0:-13 1:9 4:-18 5:-38 6:-19 8:61 9:61 11:-11 12:-10 13:68 14:38 17:12 18:-13 19:-18 21:-13 22:-24 24:-17 25:-12 28:48 30:12 32:-14 33:-14 34:-27 37:-11 38:-10 40:22 43:20 44:-12 46:32 50:8 51:-36 56:-15 58:9 62:-25 63:84 64:-14 65:-19 67:94 68:27 69:-13 70:-8 72:16 73:-12 76:-20 80:12 89:-12 90:-15 100:44 102:-9 109:24 111:-13 117:-10 118:9 120:19 121:9 126:14
left	0:-13 1:9 4:-18 5:-38 6:-19 8:61 9:61 11:-11 12:-10 13:68 14:38 17:12 18:-13 19:-18 21:-13 22:-24 24:-17 25:-12 28:48 30:12 32:-14 33:-14 34:-27 37:-11 38:-10 40:22 43:20 44:-12 46:32 50:8 51:-36 56:-15 58:9 62:-25 63:84 64:-14 65:-19 67:94 68:27 69:-13 70:-8 72:16 73:-12 76:-20 80:12 89:-12 90:-15 100:44 102:-9 109:24 111:-13 117:-10 118:9 120:19 121:9 126:14
is left	5:-26 8:27 9:-19 11:-9 13:22 17:26 20:18 24:-10 27:8 28:50 67:31 68:12
left $	1:-10 14:26 32:-9 43:14 51:-9 62:-17 63:33 65:-16 67:54 68:29 69:-9 100:35 109:21 120:20
much @wire	9:42 19:-11 20:17 21:-22 25:-10 32:74
stock of	8:14 9:32 19:-12 22:-14 51:-11 52:11 67:21 68:10 83:-9 126:33
left of	8:71 9:-21 13:-51 20:-21 27:11 28:63 41:10
free==	1:-36 8:16 9:-15 10:18 11:-13 12:-8 13:-28 14:-8 17:-11 23:-12 24:28 26:25 27:-37 29:-32 30:146 33:-8 34:-12 36:-11 37:-19 38:-25 39:127 41:-27 42:-11 48:-12 49:-16 60:-19 61:31 66:187 70:-8 78:9 84:-47 85:164 88:13 92:-10 100:-18 102:-18 103:-14 107:65 108:-12 109:-12 111:61 112:-17 113:-9 114:-19 119:-10 126:-34
free	1:-36 8:16 9:-15 10:18 11:-13 12:-8 13:-28 14:-8 17:-11 23:-12 24:28 26:25 27:-37 29:-32 30:146 33:-8 34:-12 36:-11 37:-19 38:-25 39:127 41:-27 42:-11 48:-12 49:-16 60:-19 61:31 66:187 70:-8 78:9 84:-47 85:164 88:13 92:-10 100:-18 102:-18 103:-14 107:65 108:-12 109:-12 111:61 112:-17 113:-9 114:-19 119:-10 126:-34
is free	8:21 15:-10 24:-12 26:14 30:11 39:38 66:88 78:15 114:-11 126:-25
free $	1:-20 8:21 13:-9 15:23 24:90 26:55 30:-17 38:-15 66:37 78:15 104:-8 111:24 126:-37
spar==e	1:-12 12:-14 21:17 26:66 28:-8 32:-11 40:24 65:-9 99:19 101:16 115:20 117:13
spar	1:-12 12:-14 21:17 26:66 28:-8 32:-11 40:24 65:-9 99:19 101:16 115:20 117:13
is spar	8:10
spar $	12:-13 26:56
^ tin	0:89 1:-12 2:-33 5:26 8:24 22:74 24:-9 40:14 51:-8 56:11 73:16 76:8 82:-11 84:-8 123:37 126:-9
show tin	8:34 22:-8
what @wire	8:47 24:11
what the	5:-8 21:22 76:10 84:21 89:19 95:8 104:9 126:-16
supply==	8:-22 9:180 10:-11 19:-13 20:-8 26:-12 30:-8 32:-10 36:-12 51:29 56:28 118:-11 119:21 121:14 122:26 123:28 126:-21
supply	8:-25 9:166 10:-12 19:-20 20:-8 22:-17 26:-13 30:-9 32:-11 33:62 36:-13 51:29 56:27 59:-8 118:-11 119:21 121:39 122:26 123:26 126:-22
^ supply	9:105 19:-9 33:-9
supply $	9:69 33:52 36:-8 51:17 122:-14 123:-17 126:-8
supply the	9:-13 14:15 22:-9 33:46 123:19
buy==	8:-15 9:33 10:123 11:-26 19:17 20:-10 23:-9 29:-15 30:-25 32:-10 33:34 34:-15 52:15 121:35 122:-16 123:10
have to	0:8 2:36 3:13 4:23 5:8 6:-11 8:-12 9:41 10:12 11:100 12:-8 15:-8 16:-10 22:-8 23:11 25:14 26:-12 28:13 29:22 30:-34 32:-11 36:-13 39:19 52:16 60:-13 61:-8 65:-9 66:-16 78:8 79:-10 109:18 111:9 115:14 117:-20 121:-12 122:11 126:-20
)~",
R"~(buy	8:-29 9:30 10:175 11:-30 12:-10 14:-17 20:-11 21:20 22:-9 23:-9 26:-8 29:-16 30:-27 32:-13 33:23 34:-15 36:-9 52:14 99:25 121:51 122:-18 123:16 126:23
to buy	9:28 10:49 11:-11 52:9
buy wire	9:23 10:-32 33:21 121:20 123:9
wire now	9:19 10:-16
^ should	0:29 1:-10 9:32 22:89 34:-8 39:-11 41:-21 72:-23 108:-23 116:-11 126:62
order==	0:-13 1:15 2:-13 4:-9 6:-8 7:-10 8:-40 9:85 10:137 11:-33 12:26 14:-18 15:10 16:-12 17:-19 18:-12 19:-42 20:-16 21:-13 23:-18 24:-15 25:-12 27:-15 29:-17 30:-39 31:-14 32:22 33:93 34:-30 36:11 37:-10 39:-26 40:-18 41:-22 42:-9 43:-8 44:-11 45:-8 46:-8 47:-12 48:-40 49:-23 50:-11 51:-19 52:60 53:-11 54:-13 55:-10 56:-20 58:-13 59:-11 61:-15 63:-8 64:-9 67:-24 68:-13 70:-13 71:-14 76:-8 80:-8 82:-17 88:-10 89:-13 90:-9 92:-11 93:-11 94:-8 96:-14 99:-11 100:-12 101:-20 102:-17 103:52 104:-12 105:-13 106:-8 108:-8 109:-10 111:-25 112:-16 113:-12 117:46 118:177 119:169 120:227 121:93 122:31 123:36 125:-10 126:57
soon==	2:-12 4:-14 5:-9 8:-13 9:58 10:-11 11:19 31:50 44:13 50:-11 52:13 84:11 121:36 126:-14
order	0:-21 2:-15 3:-8 4:-12 6:-21 7:-17 8:-79 9:87 10:271 11:-72 12:35 13:-12 14:-32 15:8 16:-15 17:-24 18:-19 19:-66 20:-32 21:-19 22:-31 23:-27 24:-30 25:-18 26:-10 27:-21 29:-29 30:-64 31:-19 32:335 33:68 34:-39 37:-12 38:-9 39:-30 40:-26 41:-25 42:-10 43:-9 44:-18 45:-10 46:-10 47:-18 48:-43 49:-25 50:-9 51:-32 52:49 53:-13 54:-18 56:-25 58:-19 59:-16 61:-17 63:-10 64:-11 65:-8 66:-9 67:-66 68:-30 69:-12 70:-17 71:-16 72:-10 76:-9 78:-8 80:-19 81:-8 82:-24 85:-8 88:-11 89:-23 90:-10 92:-14 93:-12 94:-9 96:-16 99:-15 100:-15 101:-25 102:-21 103:48 104:-15 105:-16 106:-10 108:-9 109:-13 111:-28 112:-22 113:-15 114:-8 116:-9 117:287 118:198 119:178 120:255 121:84 123:31 125:-15 126:60
we order	8:-23 9:-17 10:9 19:-27 32:17 33:30 34:-11 51:-8 118:27 119:14 120:42 121:67 123:-15
order wire	10:-9 32:-11 33:20 117:16
soon	2:-12 4:-14 5:-9 8:-13 9:58 10:-11 11:19 31:50 44:13 50:-11 52:13 84:11 121:36 126:-14
soon $	44:13 50:-11 121:27
to order	9:72 10:89 32:-56 33:-23 111:-11 117:37 119:-15 120:-12 126:18
order any	10:-8 32:17 126:13
any wire	8:-13 9:45 10:-8 24:9
order now	10:44
shall==	7:13 9:13 10:15 14:-8 30:46 32:-13 43:16 52:8 55:-13 57:18 58:8 59:8 62:14 66:10 72:-23 79:-10 100:17 102:-8 104:9 105:16 108:-26 109:-17 111:13 115:15 116:9 123:18 126:10
shall	7:13 9:13 10:15 14:-8 30:46 32:-13 43:16 52:8 55:-13 57:18 58:8 59:8 62:14 66:10 72:-23 79:-10 100:17 102:-8 104:9 105:16 108:-26 109:-17 111:13 115:15 116:9 123:18 126:10
^ shall	9:9 30:50 72:-23 79:-8 108:-23 109:-15 126:46
shall i	9:10 30:49 72:-23 79:-8 108:-23 109:-15 126:43
^ must	11:37 116:-32
more==	0:-16 1:-12 2:-10 3:-18 5:-13 6:-15 7:-9 8:-38 9:46 11:-17 12:-12 13:-23 14:-15 15:-13 16:9 17:-16 18:-13 19:-10 22:20 23:-20 24:-28 25:-11 26:13 27:-16 28:-10 29:-25 30:-12 31:39 32:21 33:17 34:-9 37:-8 38:-17 39:32 41:10 43:-20 44:-15 46:-16 48:28 51:52 53:42 54:-52 55:12 58:69 59:-8 60:-18 61:24 62:-8 63:20 64:38 65:-14 66:18 70:12 77:-8 78:-11 80:17 81:9 82:-10 84:-25 85:46 87:29 88:34 91:-20 92:-8 93:-38 94:58 96:-14 100:12 101:55 102:-35 103:60 106:-12 107:16 108:-9 109:16 110:25 111:-38 112:18 114:12 115:28 117:18 118:-37 119:-16 122:8 123:56 125:-15 126:-43
shall we	10:14 32:-12
more	0:-16 1:-12 2:-10 3:-18 5:-13 6:-15 7:-9 8:-38 9:46 11:-17 12:-12 13:-23 14:-15 15:-13 16:9 17:-16 18:-13 19:-10 22:20 23:-20 24:-28 25:-11 26:13 27:-16 28:-10 29:-25 30:-12 31:39 32:21 33:17 34:-9 37:-8 38:-17 39:32 41:10 43:-20 44:-15 46:-16 48:28 51:52 53:42 54:-52 55:12 58:69 59:-8 60:-18 61:24 62:-8 63:20 64:38 65:-14 66:18 70:12 77:-8 78:-11 80:17 81:9 82:-10 84:-25 85:46 87:29 88:34 91:-20 92:-8 93:-38 94:58 96:-14 100:12 101:55 102:-35 103:60 106:-12 107:16 108:-9 109:16 110:25 111:-38 112:18 114:12 115:28 117:18 118:-37 119:-16 122:8 123:56 125:-15 126:-43
more @wire	8:-17 9:20 32:15 33:14 40:9 80:17 117:9
order more	9:18
@wire now	9:23
more the	100:27 102:-9 112:17 113:-9
buy @wire	33:11
some==	0:10 1:-12 2:14 8:15 22:-16 24:29 28:15 31:18 32:16 33:10 40:-9 48:10 50:8 56:-11 70:19 80:35 98:-30 107:8 116:-9 126:78
some	0:10 1:-12 2:14 8:15 22:-16 24:29 28:15 31:18 32:16 33:10 40:-9 48:10 50:8 56:-11 70:19 80:35 98:-30 107:8 116:-9 126:78
order some	32:10
some @wire	8:19
enough $	3:62 8:-8 9:27 18:12 42:-9 69:9 74:-11 107:27
enough the	8:-9 9:17
@wire left	8:39 32:-9 40:21 51:-15 67:57 120:10 126:-14
enough @wire	8:-12 9:56
left for	28:-8 30:10
all job	5:38 12:12 30:16
the queu	1:15 5:15 8:-31 9:46 12:78 14:-8 18:-9 26:-9 30:16 47:15 49:107 54:10 66:-11 95:-8 115:-10 120:14
@wire for	1:-32 5:26 7:-8 8:-12 9:34 18:19 19:-12 20:30 21:16 22:-8 24:-23 38:58 40:48 51:-13 75:-8 80:22 81:-14 83:18 117:19 126:-35
open job	1:12 8:-9 9:38 12:-14 13:41 14:44
shop==	5:-20 6:-8 7:-11 8:-10 10:-18 11:-30 12:-24 13:-9 14:44 15:-8 16:-8 17:-8 19:24 20:-16 22:-19 23:-22 24:22 25:-8 26:50 27:-27 28:-17 29:29 32:-29 33:34 34:34 36:-17 41:-8 48:-10 49:19 50:13 52:-26 53:17 54:95 55:74 56:90 58:-14 59:31 63:64 64:48 66:-11 71:38 83:-29 84:-8 88:-8 99:-8 100:-16 101:22 102:-21 103:-11 104:-22 105:-19 106:-12 107:-9 109:-11 110:69 111:-27 112:-29 113:45 118:-21 119:-13 120:-9 122:-12 123:16 125:-9 126:55
run==ning	6:17 8:-8 9:96 11:8 12:16 14:-8 17:-11 26:44 27:-9 32:22 101:-10 102:-17 103:41 126:-21
shop	5:-21 6:-23 7:-13 8:-14 9:47 10:43 11:-32 12:-27 13:-9 14:39 15:-8 16:-8 17:-8 19:20 20:-18 22:-20 23:-24 25:-8 26:48 27:-31 28:-19 29:23 32:-32 33:19 34:32 36:-23 40:-8 41:-9 48:-10 49:19 50:11 51:-15 52:-27 53:14 54:93 55:74 56:88 59:30 63:64 64:48 66:-11 71:38 83:-29 84:-8 88:-8 99:-8 100:-17 101:20 102:-21 103:-11 104:-22 105:-20 106:-13 107:-11 109:-11 110:68 111:13 112:-36 113:44 117:20 118:-21 119:-14 120:-9 122:-13 123:15 125:-10 126:46
the shop	6:-8 7:-10 8:-8 9:-20 10:41 11:-18 12:-21 14:19 19:29 20:-11 22:-16 23:-19 24:21 26:64 27:-21 28:-16 29:23 30:21 32:-27 33:-22 34:38 36:-17 50:18 51:-14 53:43 54:37 55:62 56:41 59:45 62:8 63:18 64:77 85:8 101:-23 102:-13 104:-12 105:-10 106:-9 110:47 111:-11 112:-21 113:41 117:23 119:-8 123:20 126:-67
run	0:-10 5:-10 6:16 8:-22 9:177 11:25 12:20 13:-9 14:-13 17:-13 22:-14 23:15 24:-9 25:-8 26:90 27:-13 29:-11 30:-10 32:11 33:-15 36:-14 44:-10 53:-8 54:-11 55:20 63:24 64:-8 69:11 72:-22 89:-9 100:-12 101:-13 103:58 104:-8 108:8 109:-8 112:-8 120:18 126:23
shop run	54:-9 55:26 112:-8 113:8
run short	9:36
on wire	21:11
on anyth	9:35 115:14
low==	0:-11 1:-9 2:-8 3:-35 4:-9 8:-26 9:115 11:-11 13:-27 15:-23 16:-18 17:123 20:-8 24:-12 25:-9 26:-13 28:-9 32:-16 34:-9 37:-9 42:-53 43:-18 46:-11 50:-11 51:-11 52:148 57:13 67:-14 68:-13 70:-9 75:-10 77:-10 78:-11 79:-11 89:-8 90:61 92:-12 93:207 96:-8 98:-9 105:17 108:-8 126:71
low	0:-11 1:-9 2:-8 3:-35 4:-10 8:-26 9:115 11:-11 13:-31 15:-23 16:-18 17:149 18:-8 20:-8 24:-12 25:-9 26:-13 28:-10 30:-8 32:-16 34:-9 37:-9 42:-53 43:-18 46:-12 50:-11 51:-11 52:148 57:13 67:-14 68:-13 70:-9 75:-10 77:-10 78:-11 79:-11 89:-9 90:59 92:-12 93:206 96:-9 98:-10 105:17 108:-8 126:70
run low	9:73 17:-9 26:-11 126:-8
low of	9:13 17:14
of anyth	9:16 58:14 85:-11
low on	9:35 17:17
on any	27:8
shop short	9:12
are we	0:-9 1:-8 4:-9 6:-10 8:27 9:43 10:9 11:13 12:10 13:57 16:-12 18:-13 19:-19 20:-8 22:-16 24:28 26:-13 28:16 29:140 30:38 32:81 33:-31 44:-8 53:-10 54:-39 55:-27 108:-12 113:-33 126:-24
we short	8:-15 9:39
short of	3:10 8:-18 9:57 43:-16 52:15 82:17 85:-8 93:11 126:-13
is we	9:10
we low	8:-9 9:30
we run	9:13
on @wire	5:11 8:-29 9:56 19:-11 21:25 24:28 32:-12 33:-10 89:30
is run	6:22 9:40 11:-9 26:36 30:-13 103:9
short $	3:39 8:-11 9:45 22:15 36:22 41:25 42:-8 43:8 72:13 80:9 87:19 93:-19 126:40
is short	3:-8 9:12 43:25 85:-8
wire are	8:-9 9:40 17:-9 22:8 24:-12 32:44
are short	9:21
what are	0:-15 4:32 5:-11 6:-8 8:-13 10:11 11:20 12:-30 13:-10 14:30 17:-26 18:-17 24:57 26:-10 27:9 28:43 29:76 32:-18 33:31 34:-15 36:63 53:-9 85:-10 126:-20
are run	9:12 103:9
low $	9:62 13:-15 15:-19 17:61 26:-10 42:-13 50:-11 52:24 57:13 70:-11 90:18 93:90 94:8 126:-31
@wire run	9:35 69:11 126:-9
run out	9:81 11:28 72:-21 120:13 126:13
)~",
R"~(out $	0:-8 5:-8 8:-16 9:56 10:10 11:27 12:-8 14:-11 19:-11 20:21 22:28 30:-14 32:18 33:-12 36:-13 41:74 48:-8 58:33 61:9 73:-11 76:40 81:-11 82:-29 83:33 92:45 101:-9 102:-10 120:12 122:-9 123:40 126:-41
is @wire	1:90 8:-20 9:-17 18:40 24:-16 25:23 32:29 75:-9 81:-9 86:10 126:-15
wire run	9:24
wire==s	8:41 9:62 10:25 14:-15 16:-8 17:-13 19:23 20:15 22:8 25:33 26:-10 33:-17 34:-11 36:-8 77:12 118:-10 126:-8
the wire	2:-11 3:-13 4:-16 5:-18 6:-16 7:-9 8:80 9:106 10:-11 11:-9 13:-10 14:-22 17:-15 18:95 19:-17 20:38 21:-17 24:-20 25:18 26:-8 28:14 30:-19 33:-9 34:-13 36:-13 44:26 72:-11 74:35 75:-12 78:-8 84:9 91:-8 92:45 96:16 98:-8 108:38 109:-10 118:11 119:27 122:-31 123:10 126:-10
wire enough	126:15
refret==s	8:-67 9:135 12:61 14:-9 22:-8 65:25 126:-8
refret	2:-10 3:-11 8:-68 9:127 12:57 13:-8 14:-11 22:-13 26:-10 28:75 29:-13 30:-20 31:159 33:-9 34:-9 36:-16 43:8 49:62 65:23 78:21 97:-8 108:-8 126:-40
many refret	8:-42 9:70
refret are	8:-10 9:15 12:30
are are	90:11
are left	2:13 67:9 68:21
left in	8:-15 9:54
refret left	8:-18 9:44
refret can	8:-8 9:12
we do	2:-25 4:-15 11:-10 16:-10 17:40 21:12 23:-13 26:-8 29:-10 31:40 33:-13 39:-18 41:23 42:10 53:21 54:29 55:23 58:13 61:28 87:15 101:48 104:10 107:11 114:9 120:26 123:33 126:-140
still==	1:24 3:23 4:-23 8:33 9:23 10:-19 11:-18 12:47 13:92 14:-10 15:-16 16:16 17:18 19:-12 23:-10 24:26 25:-10 26:-8 27:-10 28:40 29:-9 30:-21 32:101 33:-24 34:-19 36:-12 37:-17 39:-12 42:-13 43:-9 44:-18 45:-19 46:89 57:-9 78:-12 82:-17 87:-32 88:46 90:58 92:-8 98:-12 102:32 107:-14 116:-10 117:-18 118:-10 125:-20 126:62
still	1:24 3:23 4:-23 8:33 9:23 10:-19 11:-18 12:47 13:92 14:-10 15:-16 16:16 17:18 19:-12 23:-10 24:26 25:-10 26:-8 27:-10 28:40 29:-9 30:-21 32:101 33:-24 34:-19 36:-12 37:-17 39:-12 42:-13 43:-9 44:-18 45:-19 46:89 57:-9 78:-12 82:-17 87:-32 88:46 90:58 92:-8 98:-12 102:32 107:-14 116:-10 117:-18 118:-10 125:-20 126:62
we still	8:-9 9:13 32:23
still have	8:-11 9:13 13:22 32:-8 117:-15 126:36
have in	9:-13 11:-9 12:48 14:-15 22:-10 26:42 50:9 126:-8
get==	0:-11 1:-19 2:23 4:-8 5:34 7:15 8:-21 9:63 11:-22 12:-9 13:-11 17:-10 19:24 20:-18 21:-20 22:-8 24:-11 25:-8 26:-23 29:-20 30:75 31:-9 32:-27 33:42 37:-13 38:14 39:-9 40:-10 41:43 42:8 49:9 54:8 58:37 62:-8 66:20 70:-15 72:-8 76:-18 77:-8 78:-13 81:-12 82:28 83:-8 84:-9 87:15 89:12 92:-8 93:20 101:33 102:-8 103:-8 106:26 107:-8 108:-10 109:9 113:-10 116:9 119:15 122:9 123:35 126:-16
get	0:-9 1:-14 2:26 3:-54 4:-11 5:63 6:-8 7:14 8:-31 9:56 11:-24 12:-11 13:11 14:-32 15:-16 17:-18 18:-10 19:19 20:-24 21:-22 22:-17 24:-15 25:-12 26:-27 27:-11 29:-28 30:59 31:-10 32:-26 33:38 34:-12 37:27 38:-14 39:-13 41:39 42:65 44:-18 45:-10 48:42 49:20 51:-11 53:-18 55:13 58:44 59:-22 62:13 65:21 66:28 67:-16 70:-17 72:-11 74:24 76:-19 77:-9 78:-21 81:-13 82:17 83:-10 87:13 88:-10 89:11 92:-11 93:18 94:37 100:20 101:26 103:-12 106:19 107:-11 113:-17 115:-8 118:-21 119:27 120:-8 123:52 126:37
still do	8:-8 9:11
we get	0:-16 3:16 5:15 8:-12 9:13 11:-12 12:-8 19:44 20:-11 30:29 32:-13 123:18
get in	10:8 54:11
refret is	9:8
good $	1:-13 2:9 8:-18 9:33 18:41 32:-11 41:26 44:14 46:13 58:21 63:27 64:17 82:9 94:61 101:22 102:-15 109:-11 110:28 111:-13 116:-12 118:8 126:-38
last==	0:-23 1:-10 2:-10 5:-12 9:75 10:43 11:33 12:-10 13:-18 14:-25 16:-10 17:-16 18:-13 19:47 20:54 21:43 22:-18 23:-9 24:-14 25:-14 26:-12 28:-24 29:-11 30:-10 32:-43 33:-31 34:59 36:-15 38:-8 39:-8 42:-13 43:-20 44:25 45:11 46:34 48:-31 53:-8 54:13 55:-12 56:-8 58:-10 62:-16 63:48 67:-41 78:-29 85:-13 88:-8 90:21 91:-11 92:-15 94:211 95:17 98:-8 102:-9 106:-13 109:-13 111:-10 112:-9 113:-8 114:-10 115:-8 117:-13 118:14 120:-14 122:-9 123:-8 125:157 126:45
last	0:-23 1:-10 2:-10 5:-12 9:100 10:42 11:33 12:-10 13:-19 14:-25 16:-10 17:-16 18:-14 19:43 20:53 21:42 22:-18 23:-10 24:-15 25:-14 26:-13 28:-13 29:-12 30:-11 32:-48 33:-32 34:57 36:-16 38:-8 39:-9 42:-14 43:-20 44:25 45:11 46:33 48:-31 53:-8 54:12 55:-12 56:-9 58:-10 62:-17 63:48 65:-8 67:-41 71:-8 78:-30 85:-13 88:-8 90:20 91:-11 92:-15 94:211 95:17 98:-8 100:-11 101:-8 102:-10 105:10 106:-13 109:-14 111:-10 112:-9 113:-8 114:-10 115:-8 117:-13 118:14 120:-14 122:-10 123:-8 125:156 126:42
@wire last	9:66 20:-10 21:12 32:-18 33:-8 34:23 52:9 126:-20
last $	9:75 28:-8 32:-20 33:-15 34:33 37:17 94:82 95:21 118:17 125:11 126:-47
which wire	9:37 10:62 17:-10 32:46 33:-20 126:-24
run==s	9:15 11:8 23:23 54:-9 55:25 63:27 69:11 103:13 112:-9 113:8 120:8 126:34
first==	13:-17 30:18 65:-10 114:90 115:33 126:-11
first	13:-17 30:18 65:-10 114:90 115:33 126:-11
first $	13:-8 30:19 65:-8 114:101 115:-13 126:-8
when==	3:-16 4:-12 5:-15 6:-10 8:-33 9:126 10:17 11:149 12:-21 13:-47 14:-17 15:-34 16:-16 17:-18 18:-18 19:52 20:-16 21:-11 22:-12 23:55 24:-27 25:-15 26:41 27:90 29:189 30:161 31:78 32:113 34:69 36:-13 37:-10 38:-20 39:-10 40:-8 44:-44 45:-10 48:-9 49:-31 51:-19 52:52 54:-13 55:-13 56:-8 60:18 62:-10 63:-13 64:-10 65:-34 66:-17 67:-17 80:-14 85:-8 88:-11 89:-9 91:-21 92:-10 94:-9 97:-9 99:-13 100:-9 101:-8 102:-21 103:-20 104:-10 106:-11 107:-16 108:-19 109:-17 110:-33 111:-11 112:-18 114:-15 115:-14 116:-17 117:-8 118:-19 120:-10 121:10 122:-9 123:15 125:-10 126:19
up==	0:-14 1:-21 2:18 3:-11 5:23 6:-12 8:-24 9:-29 10:26 11:47 13:41 15:-15 16:-19 17:22 18:-30 20:76 21:22 22:36 24:-17 25:97 27:-9 28:-41 29:-29 30:-11 31:-17 32:-19 33:-25 34:-21 36:-22 38:-26 39:29 41:-29 42:-28 43:43 46:73 48:-20 49:-12 51:10 52:-12 54:34 55:22 56:-17 57:8 58:-10 59:9 61:17 62:18 63:-11 64:-17 65:-29 66:75 67:18 68:-8 69:-13 70:14 71:34 72:-11 73:-15 74:-14 76:-28 77:-15 78:-25 79:-21 80:-10 82:-17 85:11 89:-11 90:33 91:-13 92:67 93:-11 96:-8 97:17 99:35 100:61 103:98 104:-12 105:-70 106:-29 107:46 108:16 109:-22 110:-14 111:-24 112:-11 114:-19 115:-18 116:-30 117:-31 118:35 119:-10 120:35 121:-20 122:13 125:-13 126:-29
when	3:-16 4:-12 5:-15 6:-10 8:-33 9:126 10:17 11:149 12:-21 13:-47 14:-17 15:-34 16:-16 17:-18 18:-18 19:52 20:-16 21:-11 22:-12 23:55 24:-27 25:-15 26:41 27:90 29:189 30:161 31:78 32:113 34:69 36:-13 37:-10 38:-20 39:-10 40:-8 44:-44 45:-10 48:-9 49:-31 51:-19 52:52 54:-13 55:-13 56:-8 60:18 62:-10 63:-13 64:-10 65:-34 66:-17 67:-17 80:-14 85:-8 88:-11 89:-9 91:-21 92:-10 94:-9 97:-9 99:-13 100:-9 101:-8 102:-21 103:-20 104:-10 106:-11 107:-16 108:-19 109:-17 110:-33 111:-11 112:-18 114:-15 115:-14 116:-17 117:-8 118:-19 120:-10 121:10 122:-9 123:15 125:-10 126:19
^ when	0:-9 3:-13 11:68 12:-9 13:-26 15:-9 19:60 23:-15 24:-14 26:61 27:89 29:79 30:71 31:44 32:105 33:-8 34:24 38:-9 44:-22 46:-13 48:-14 51:-15 54:-8 60:21 65:-24 66:-8 102:-9 103:-8 107:-8 108:-9 109:-11 111:-10 115:-16 116:-20 118:-11 120:-8 123:-11
when doe	9:20 11:45 26:11 27:32 29:37 30:-36 31:-13 32:68 118:-8 123:-10 126:-23
doe @wire	8:-8 9:28 18:29 19:14 25:30 32:-19 33:13 75:-14 126:-8
@wire be	5:17 18:11
be used	1:10 26:62 85:12 102:35 107:-11 126:-41
up	0:-14 1:-21 2:18 3:-11 5:23 6:-12 8:-24 9:-29 10:26 11:47 13:41 15:-15 16:-19 17:22 18:-30 20:76 21:22 22:36 24:-17 25:97 27:-9 28:-41 29:-29 30:-11 31:-17 32:-19 33:-25 34:-21 36:-22 38:-26 39:29 41:-29 42:-28 43:43 46:73 48:-20 49:-12 51:10 52:-12 54:34 55:22 56:-17 57:8 58:-10 59:9 61:17 62:18 63:-11 64:-17 65:-29 66:75 67:18 68:-8 69:-13 70:14 71:34 72:-11 73:-15 74:-14 76:-28 77:-15 78:-25 79:-21 80:-10 82:-17 85:11 89:-11 90:33 91:-13 92:67 93:-11 96:-8 97:17 99:35 100:61 103:98 104:-12 105:-70 106:-29 107:46 108:16 109:-22 110:-14 111:-24 112:-11 114:-19 115:-18 116:-30 117:-31 118:35 119:-10 120:35 121:-20 122:13 125:-13 126:-29
used up	9:26 20:26 21:-9 83:15
up $	2:24 3:-10 4:-9 8:-9 9:14 11:20 13:-10 16:-15 17:9 20:18 24:-16 25:-9 26:12 27:-10 28:-20 30:45 32:-9 33:-10 38:9 45:-8 46:50 51:-10 54:17 56:-11 70:18 71:-11 73:-8 77:-9 78:-13 87:8 90:53 92:35 97:18 98:-9 99:30 100:16 101:-11 102:30 103:65 104:-8 105:-15 107:-9 116:-11 118:39 122:14 126:-50
run==	8:-13 9:67 10:8 11:10 26:51 72:-21 89:-8 102:19 108:10 110:8 120:13 126:10
when do	9:24 11:45 17:-10 23:-9 27:61 29:57 30:-8 32:50 33:-17 51:-14 116:-11 126:-16
do the	4:34 5:-12 6:8 7:9 8:-17 9:22 12:-8 15:-9 16:-11 17:23 20:35 23:-9 28:-12 32:29 51:-14 65:80 66:18 104:18 115:13 126:-60
)~",
R"~(end $	0:-10 3:49 23:25 28:23 30:24 36:-8 37:17 42:18 43:9 71:12 72:-16 73:-8 80:8 88:11 93:-11 94:23 108:15 118:30 126:-30
when will	11:-15 29:-9 30:71 31:10 32:9 44:-13
will @wire	9:10 18:17
gone==	0:-9 1:-8 3:-19 7:12 8:33 9:-15 12:-12 15:10 19:-9 20:48 28:-9 30:-17 32:-13 33:-12 37:43 41:15 42:-11 43:9 46:-9 58:10 62:-9 63:76 64:-8 65:-10 70:-9 72:-12 73:-12 78:131 79:-8 82:36 87:24 90:-20 92:-24 94:-10 97:-11 101:37 108:9 111:34 112:-9 114:-10 118:-12 123:37 125:12 126:-30
gone	0:-9 1:-8 3:-19 7:12 8:33 9:-15 12:-12 15:10 19:-9 20:48 28:-9 30:-17 32:-13 33:-12 37:43 41:15 42:-11 43:9 46:-9 58:10 62:-9 63:76 64:-8 65:-10 70:-9 72:-12 73:-12 78:131 79:-8 82:36 87:24 90:-20 92:-24 94:-10 97:-11 101:37 108:9 111:34 112:-9 114:-10 118:-12 123:37 125:12 126:-30
gone $	8:41 9:-21 19:-8 20:22 32:-9 41:10 58:9 63:30 78:48 82:10 87:12 126:26
out of	1:8 2:-39 3:-15 4:-17 5:67 6:-11 7:-19 8:21 9:-39 11:-14 13:-13 15:-12 16:-20 19:-15 20:19 21:8 22:10 26:19 28:-11 32:-15 33:-9 34:-16 37:45 40:-27 41:-21 42:-26 44:30 45:-18 46:-8 48:-13 49:47 51:-15 63:10 64:47 66:-12 67:-8 71:95 72:42 73:64 74:78 78:-11 79:-26 80:-15 81:11 82:12 85:-14 87:11 88:48 90:-8 92:-16 94:-9 95:15 96:-25 98:-12 100:-14 101:27 102:54 106:-10 107:-9 109:-9 111:-15 115:22 116:-8 119:-12 120:-13 126:57
of wire	0:13 5:-9 8:-30 9:34 10:14 11:-8 12:-10 19:89 20:17 21:-11 24:16 25:10 26:-10 32:-10 33:-10 34:-8 44:34 50:24 51:21 68:-13 85:-10 99:-11 121:11 122:-9 123:16 126:-13
long do	3:11 4:21 9:-17 28:30 33:21
reach==	3:-16 9:17 42:-8 43:35 87:-14 88:9 94:11 126:25
long will	9:34 28:30 126:-12
reach	3:-16 8:-10 9:43 42:-8 43:35 87:-15 88:9 94:11 126:24
reach $	8:-9 9:32
long doe	4:-12 9:-9 16:-9 26:32 28:-8 33:41 36:-18 100:-14 126:82
do $	3:48 11:11 17:-8 23:-9 28:-9 33:-16 36:76 42:16 65:13 72:15 98:16 106:10 126:-13
wire last	9:11
our==	0:43 1:-24 4:-8 5:25 6:-10 9:25 10:47 11:-14 12:-20 13:-12 16:-12 17:-10 19:18 20:12 21:-14 23:-13 24:-30 25:30 26:12 27:-12 28:9 29:21 32:-19 33:51 34:-21 36:-20 39:15 41:-8 49:8 51:-15 53:18 55:-13 56:21 59:-10 64:22 67:-9 87:33 99:-11 100:16 101:21 103:12 104:-8 105:27 106:-11 107:-9 109:-8 110:-9 111:-15 116:10 117:10 118:33 119:29 120:25 121:8 122:-15 123:13 125:-8 126:-36
our	0:43 1:-24 4:-9 5:25 6:-10 9:24 10:47 11:-14 12:-20 13:-12 16:-12 17:-10 19:18 20:12 21:-14 23:-13 24:-31 25:30 26:11 27:-12 28:9 29:20 32:-19 33:49 34:-21 36:-20 39:14 41:-8 49:8 51:-15 53:18 55:-14 56:10 59:-13 61:17 62:11 64:39 67:-9 87:36 99:-12 100:12 101:31 103:10 104:-8 105:25 106:-11 107:-9 109:-8 110:-9 111:-15 112:-8 116:10 117:10 118:33 119:29 120:25 122:-18 123:30 125:-9 126:-33
will our	9:21
our wire	8:50 20:10 33:9 126:-11
doe our	9:28 20:-13 29:-8 32:16
day==	1:-10 2:-10 5:-13 8:-25 9:41 10:-17 11:12 13:22 14:-23 15:-9 16:-11 17:-12 18:-9 22:-25 23:-11 24:-13 26:-15 28:-15 29:25 30:31 31:80 32:46 33:-18 36:-14 44:-14 45:-11 46:52 48:70 49:-20 50:-11 53:-17 54:68 55:62 56:-13 57:-22 59:-8 62:-31 63:25 64:-16 65:-16 66:-15 72:-11 74:-10 80:19 85:-16 86:-15 88:-9 92:-12 94:-11 99:-19 100:-27 101:-20 102:19 103:-16 105:-9 107:-8 109:61 111:71 112:78 113:91 115:-14 118:-28 119:36 120:-14 121:-10 122:-10 125:-13 126:74
^ by	9:37 10:-18 11:9 15:33 27:9 30:47 31:-8 32:-26 33:41 51:-14 68:23 111:10 126:-28
by what	9:12 10:-8 25:13 105:30
day	0:-30 1:-23 2:-16 3:-10 4:-22 5:-21 6:-17 7:-12 8:-53 9:85 10:111 11:88 13:18 14:-16 15:-8 16:-28 17:-21 18:-17 19:-16 20:-15 21:-13 22:90 23:-14 24:-34 26:-32 27:50 28:-27 29:94 30:49 31:61 32:21 33:53 34:-8 36:-22 37:-18 38:-9 39:-19 40:-19 41:-13 44:-20 45:-17 46:33 48:80 49:-24 50:-12 51:-15 52:-12 54:67 55:35 56:53 57:-23 58:-11 59:-14 61:-12 62:-35 63:44 64:-19 65:-22 66:-20 67:-15 69:-8 70:-9 71:-8 72:-14 74:-15 76:-18 78:-10 79:-10 82:-10 83:-8 84:-17 85:-28 86:-21 88:-15 91:-9 92:-19 94:-17 96:-14 97:-12 98:-11 99:-37 100:-21 101:-34 103:-8 105:-21 106:-12 107:-18 108:-13 109:53 110:39 111:62 112:48 113:86 114:-18 115:-17 116:39 118:-51 119:59 120:-27 121:47 122:70 123:-9 125:-18 126:42
what day	8:-15 9:10 10:-10 11:-33 13:47 30:12 31:32 32:23 126:-8
day do	33:16
when must	9:34 11:25 30:37 32:-18 126:-13
order @wire	8:-9 9:44 19:-9 32:-29 52:34 119:9 120:-24 126:40
by when	9:36 10:38 12:-8 29:-8 30:52 32:-18 126:-21
i buy	9:8 10:29 33:28 34:-10
i order	9:51 10:20 32:-26 33:28 51:-12 117:48 120:-14 126:-15
we buy	10:32 19:25 20:-8 121:11
buy $	8:-18 10:52 19:-11 21:23 33:-16
order $	5:-11 8:-32 9:37 10:73 12:-27 14:-11 19:-9 22:-9 23:-12 26:19 28:17 30:-20 32:78 33:19 34:-9 36:25 49:-12 51:68 55:9 67:-17 71:-9 74:11 83:9 102:-41 103:57 118:56 119:-22 120:33 121:10 122:12 123:-8 126:-74
when should	9:20 11:20 32:-13
@wire shall	52:8
@wire should	9:35 32:-12 70:31
stand==s	3:-12 11:21 13:9 16:19 17:13 30:-23 42:-10 54:14 60:23 78:-10 90:32 92:9 93:101 98:-10 113:-12
stand	1:-13 3:-33 4:-21 8:22 11:18 13:35 14:20 16:25 17:70 26:8 28:-9 30:-31 33:-10 34:-10 37:-9 42:-14 48:-10 49:-8 54:28 59:-9 60:22 64:19 66:-9 70:-8 78:-21 90:33 92:20 93:82 94:-10 96:-9 98:-11 99:48 100:14 102:31 113:-17 114:-13 115:22 116:-17 126:29
supply of	8:-10 9:55 19:-9
stand the	53:9 54:17
the supply	9:40
how are	8:37 12:12 33:-9
how is	4:-12 8:35 12:33 13:109 16:33 17:-8 23:-16 25:-8 26:51 28:-17 30:-10 33:-11 45:-8 95:-16 126:-14
wait==	9:30 11:-9 12:-10 13:-13 29:12 36:-11 44:-19 46:10 49:-11 66:-24 72:-8 85:-15 88:-14 108:-15 109:15 111:-8 114:111 115:135 121:10 125:12 126:71
what job	9:24 11:12 12:20 24:-11 30:-17 84:23
wait	0:-8 1:-8 8:-15 9:41 11:25 12:89 15:-13 16:-8 17:-14 18:-8 19:-12 22:-11 23:-10 24:-20 28:-9 30:-28 31:12 32:56 33:-13 36:-24 38:-8 39:-34 44:-24 47:-11 48:-16 49:-20 51:-10 52:8 62:9 63:-9 65:-28 66:-35 67:-9 72:-9 81:10 84:-12 85:-27 88:-19 94:-8 108:-10 111:-9 114:91 115:226 118:26 119:28 121:8 122:-9 125:9 126:93
job wait	9:22
wait for	6:-8 8:-9 13:13 24:-13 32:55 48:-15 65:-12 66:-18 72:-8 85:-15 109:-9 114:-33 115:115 118:33 119:31 126:75
wait of	9:10
job are	11:27 30:31
short for	0:-13 3:-19 9:11 22:15 41:16 43:19 126:9
use of	0:-11 5:27 9:9
much doe	8:-17 19:41 28:-26 126:51
queu take	9:8
take of	9:13
doe open	113:11
each==	0:-25 1:-8 2:52 3:-16 4:34 9:36 10:-12 11:-10 12:-16 13:-20 14:66 15:-11 17:-26 19:54 20:-12 25:8 26:19 28:22 29:-12 30:34 32:-11 33:-13 36:-8 40:-19 47:-21 51:38 53:62 54:-15 55:-33 56:21 67:69 70:-9 71:-24 72:-9 73:-10 76:32 80:-9 82:-10 83:11 84:-11 98:9 100:21 117:35 118:-8 126:-31
month==	0:-9 8:16 9:-14 19:-20 20:129 21:59 22:21 24:-9 27:9 32:16 118:-8 122:17 126:-18
each	0:-25 1:-8 2:52 3:-16 4:34 9:36 10:-12 11:-10 12:-16 13:-20 14:66 15:-11 17:-26 19:54 20:-12 25:8 26:19 28:22 29:-12 30:34 32:-11 33:-13 36:-8 40:-19 47:-21 51:38 53:62 54:-15 55:-33 56:21 67:69 70:-9 71:-24 72:-9 73:-10 76:32 80:-9 82:-10 83:11 84:-11 98:9 100:21 117:35 118:-8 126:-31
use each	9:10
month	0:-9 8:16 9:-14 19:-20 20:129 21:59 22:31 24:-17 27:8 32:15 33:-8 85:8 118:-8 122:17 126:-22
each month	9:10
month $	8:24 19:-11 21:40 22:12 34:10 122:12 126:-8
through==	0:11 1:-17 2:8 4:12 5:-12 6:-11 8:-19 9:35 10:-13 11:-15 13:-20 16:-23 17:-11 19:-8 24:-10 27:-10 28:34 31:-8 33:-11 34:27 37:-28 38:-10 40:-15 41:9 42:-9 43:-8 44:42 45:67 46:9 53:38 54:17 65:-19 67:33 71:23 72:11 73:-10 75:11 76:21 78:24 79:-10 80:-8 82:23 83:-11 85:-11 86:-8 88:9 90:-21 94:-14 96:18 98:-12 102:-9 106:-8 107:21 108:-26 109:39 110:-20 111:32 113:17 114:-14 115:30 118:-8 119:-9 120:11 126:-17
we go	9:9 30:11 108:42
through	0:11 1:-17 2:8 4:12 5:-12 6:-11 8:-19 9:35 10:-13 11:-15 13:-20 16:-23 17:-11 19:-8 24:-10 27:-10 28:34 31:-8 33:-11 34:27 37:-28 38:-10 40:-15 41:9 42:-9 43:-8 44:42 45:67 46:9 53:38 54:17 65:-19 67:33 71:23 72:11 73:-10 75:11 76:21 78:24 79:-10 80:-8 82:23 83:-11 85:-11 86:-8 88:9 90:-21 94:-14 96:18 98:-12 102:-9 106:-8 107:21 108:-26 109:39 110:-20 111:32 113:17 114:-14 115:30 118:-8 119:-9 120:11 126:-17
go through	9:8 12:12 13:-9 28:42 34:24
through a	9:8
a month	8:-9 9:16 22:35
week==	5:-8 8:-10 9:-12 11:69 12:-16 13:-9 14:-41 16:-17 17:-15 19:-9 20:-11 21:-8 22:-9 23:-21 24:-11 26:-45 27:70 28:-19 29:76 30:81 31:60 32:14 33:-11 36:-19 46:-9 47:-12 51:-27 53:50 54:58 55:39 56:-9 58:-11 59:-12 60:-9 61:11 63:-23 64:-9 67:-24 96:10 99:8 100:-18 101:-10 102:59 103:-9 104:-14 106:-25 107:-21 108:-11 109:-18 110:26 111:87 116:16 117:-10 118:-8 119:54 120:-8 121:18 123:-8 125:-16 126:26
)~",
R"~(week	0:-15 1:-10 4:-13 5:-10 8:-43 9:45 10:46 11:125 13:-14 14:-43 16:-21 17:-22 19:-13 20:-13 21:-12 22:17 23:-22 24:-21 26:-51 27:64 28:-23 29:80 30:106 31:54 32:12 33:-12 36:-21 39:-9 45:-8 46:-14 48:55 50:-9 51:-58 53:38 54:55 55:35 56:-15 58:-12 60:-10 63:-24 64:-8 66:-8 67:-25 76:-8 82:-17 92:-8 100:-23 101:-14 102:56 103:-11 104:-15 105:-9 106:-27 107:-22 108:-12 109:-19 110:25 111:85 114:12 115:-10 116:12 117:12 118:-28 119:68 120:-14 121:60 122:63 123:-12 125:-17
each week	53:24 55:-15
week $	8:-8 9:-9 10:57 11:12 12:-19 14:-16 16:-11 17:-8 19:-8 22:13 23:-17 24:-13 26:-32 27:81 28:-10 29:80 30:54 31:19 32:22 33:-12 34:-8 36:-9 48:43 51:-55 53:56 54:35 55:-25 56:-9 59:-9 60:-8 61:9 63:-9 67:-24 82:-13 99:-10 100:-10 101:-14 102:62 104:-8 106:-16 107:-12 109:-8 110:47 111:-14 112:-23 113:-18 117:19 118:-17 119:55 121:30 122:51 125:-12 126:40
forecast==	8:-29 9:122
forecast	8:-29 9:122
stock forecast	8:-12 9:34
forecast $	8:-11 9:46
forecast for	9:17
forecast of	8:-8 9:11
the forecast	9:16
outlook==	8:-14 9:67
outlook	8:-14 9:67
^ me	10:11 35:16 36:10 111:38 124:-11 126:-8
^ order	9:-12 10:30 12:-10 32:39 33:-13 47:-11 51:-33 52:32 67:-8 115:10 117:121 118:26 119:74 120:41 121:-8 126:17
order list	10:74 32:29 36:-8
order==s	5:10 6:-8 8:-11 9:-8 10:14 11:-17 12:14 14:-10 19:-9 20:-10 22:-10 32:271 33:-16 36:-9 55:8 117:-17 120:-17 126:-22
the list	6:12 8:-14 10:25 12:13 14:-35 26:-25 32:-22 33:-9 34:-8 36:38 49:29 58:14 59:20 63:25 76:10 87:27 99:22 101:55 109:-8 121:14 123:13 126:-24
of order	10:15 12:33 26:18 32:-31 48:-18 103:44 117:-18 118:51 119:43 123:-11 126:9
^ our	10:26 32:-9 53:16 56:29 60:10 62:10 87:11 100:23 102:10 105:17 118:29 120:-8 126:-15
our order	33:-10 51:-11 117:10 118:22 119:17 120:34
make==	0:32 2:15 3:26 4:-13 7:34 10:24 11:-10 12:-19 13:15 14:-12 15:-8 16:-11 17:-20 24:-11 25:-8 30:13 32:-8 34:-19 37:48 39:-11 40:-12 41:-17 44:-9 46:-17 49:-9 51:-16 52:32 53:9 55:15 56:47 58:-12 59:35 62:36 64:-13 65:13 66:15 67:14 70:33 71:-26 72:-9 73:-8 75:-8 78:-19 79:62 82:-11 86:-13 89:-20 90:-15 91:-8 93:-13 94:-8 96:-9 98:-11 100:33 102:-15 104:9 105:31 106:-9 107:-9 108:9 109:-10 114:17 115:21 116:20 122:-9 125:25 126:-29
^ make	0:-18 3:-12 7:25 10:26 12:-8 13:-9 22:-12 24:-8 37:54 41:-10 52:25 53:12 55:17 56:42 59:16 62:53 63:-8 64:-8 65:17 66:18 71:-15 78:-11 79:45 90:-12 100:34 102:-9 104:13 105:30 114:8 115:36 122:-8 125:19 126:-28
make me	0:15 10:16 11:10
me our	10:18
our list	14:33 49:12
shop==ping	6:-15 9:47 10:62 24:-18 33:-14 51:-11 58:9 111:40 117:24 126:-9
our shop	10:21 29:10 61:10 63:21 64:-18
shop list	6:-15 9:48 10:62 24:-17 33:-14
the order	5:20 9:-9 10:30 12:68 13:11 15:16 19:-9 28:-8 30:-8 32:-17 33:-16 36:-8 51:-24 52:20 118:54 119:44 120:20 126:14
day==s	0:-23 1:-14 4:-15 5:-8 6:-11 8:-28 9:44 10:128 11:76 16:-17 17:-9 18:-9 19:-9 20:-8 21:-8 22:116 24:-22 25:-8 26:-17 27:51 28:-12 29:69 30:19 31:-18 32:-25 33:71 34:-11 36:-8 37:-13 39:-12 40:-14 41:-8 46:-20 48:10 51:-8 53:13 55:-27 56:65 63:20 67:-9 76:-17 80:-17 82:-11 84:-11 85:-12 90:-8 96:-9 99:-17 101:-14 102:-12 103:8 105:-12 106:-12 107:-10 109:-8 110:34 111:-9 112:-30 114:-11 116:41 118:-23 119:24 120:-13 121:57 122:79 126:-32
the next	9:9 10:28 11:51 15:-13 17:12 22:-12 27:8 28:15 29:24 30:-10 32:21 37:65 45:68 48:-14 55:-11 69:8 106:-12 108:23 109:-10 111:33 119:-9 126:9
next #n	10:27 11:56 16:-16 22:-11 27:30 29:55 30:37 31:-8 37:66 45:-18 48:-13 106:-11 111:33 116:-11 126:-30
#n day	0:-21 1:-11 4:-13 6:-9 9:-11 10:138 11:38 14:10 16:-12 22:123 24:-18 27:60 29:47 30:42 31:-20 32:-17 34:-10 37:-12 39:-11 46:-21 48:13 50:-13 55:-10 56:19 57:-21 62:-9 63:21 65:-16 67:-8 76:-19 82:-11 84:-8 86:-17 90:-9 96:-8 99:-15 100:-26 102:-9 103:11 105:-12 107:-9 113:-10 114:-10 116:43 118:-20 119:30 120:-11 121:69 122:40 126:48
day $	0:-11 1:-9 8:-19 9:-20 10:62 11:43 12:10 13:-11 16:-11 22:46 24:-17 27:66 28:-10 29:52 30:32 33:43 36:-8 46:-11 51:-13 53:-13 54:28 62:-8 63:-8 80:14 90:16 92:-8 99:-10 100:-14 103:-9 109:80 112:-9 113:-15 116:33 118:-13 119:25 120:-10 121:67 125:-8 126:-43
make the	0:29 3:39 7:-10 17:-12 22:-11 50:9 56:66 79:13 93:-10 114:12 116:9 118:8 126:-14
#c	0:-25 1:-28 2:-26 3:-27 4:-15 5:88 6:-19 7:-26 8:-70 9:-40 10:-10 11:-23 13:-23 14:54 15:-18 16:41 17:-16 18:-20 19:-38 20:22 21:20 22:-17 24:-24 25:-22 26:-17 27:-22 28:-14 29:-23 30:-25 31:-10 32:-31 33:-21 34:-28 36:-10 37:-15 39:-22 41:-29 44:-29 45:152 46:-16 47:32 49:-11 50:-30 51:91 52:74 54:8 55:-8 56:32 58:-10 59:40 60:133 61:181 62:-38 63:-39 64:-21 65:-21 66:-31 67:47 68:101 69:85 70:56 71:-8 73:21 74:28 75:-11 76:-56 77:-18 78:-14 79:-12 81:-15 82:19 83:46 84:-11 85:-16 86:100 87:-30 88:40 89:-20 90:-17 91:-17 92:-14 93:-17 94:-13 95:-8 96:-14 97:-9 99:-11 100:55 101:-18 102:-25 103:31 104:-14 106:11 107:-14 108:-31 109:-18 110:-15 111:-22 113:-12 115:-21 116:-12 117:44 118:35 120:-16 121:43 122:54 123:-10 125:-9
for #c	16:-8 45:-9 51:13 56:13 61:10 86:26 106:27
#c day	10:8 22:15 122:19
&#c	0:-23 1:-27 2:-19 3:-22 4:-14 5:26 6:-18 7:-23 8:-68 9:-38 10:-9 11:-22 13:-22 14:55 15:-17 16:76 17:-16 18:-20 19:-37 20:33 21:16 22:-17 24:-24 25:-21 26:-17 27:-22 28:-15 29:-23 30:-25 31:-11 32:-30 33:-20 34:-28 36:-9 37:-15 39:-22 40:14 41:-29 42:20 44:-29 45:140 46:-16 47:43 49:-11 51:65 52:76 54:8 55:-8 56:28 58:-10 59:43 60:137 61:208 62:-37 63:-38 64:-21 65:-21 66:-31 67:60 68:75 69:85 70:70 74:29 75:-9 76:-36 77:-18 78:-14 79:-12 80:10 81:-8 83:39 84:-11 85:-16 86:67 87:-29 88:35 89:-20 90:-16 91:-16 92:-14 93:-17 94:-13 95:-8 96:-13 97:-8 99:-19 100:58 101:-15 102:-21 103:24 104:-14 106:12 107:-14 108:-27 109:-17 110:-15 111:-21 113:-12 115:-11 116:-12 117:44 118:15 120:-15 122:54 123:-9 125:-9
buy now	10:18
buy this	10:26 11:-10
this week	10:8 11:19 14:-22 26:-14 27:31 29:59 31:30 32:31 54:13 63:-12 65:8 99:23 100:-11 102:-17 106:-11 109:-10 110:-19 111:27 112:31 114:8 121:8 126:-23
today==	2:9 5:12 9:-11 10:10 11:25 12:-36 13:19 14:-46 16:-10 17:-9 19:-10 22:-9 23:-15 24:-12 27:10 28:-11 29:52 30:91 33:-18 34:54 36:-29 41:-14 51:12 53:-8 55:14 56:8 57:8 59:22 60:-22 61:17 63:-12 64:10 66:-13 68:16 78:-18 84:-8 85:-12 94:-26 99:35 100:17 101:-14 103:-12 104:-25 105:-10 106:58 107:-9 109:57 110:-12 111:56 112:31 113:-13 117:-29 118:-17 119:20 120:-9 122:12 123:-17 125:-9 126:90
today	5:10 8:-14 9:-16 10:8 11:39 12:-44 13:15 14:-50 16:-12 17:-10 19:-13 22:-11 23:-24 24:-15 26:-11 27:12 28:-15 29:32 30:89 32:-19 33:-21 34:64 36:-34 38:-8 39:-8 41:-14 44:-8 45:-11 48:39 51:9 53:-23 54:46 55:53 57:8 58:-10 59:19 60:-22 61:15 62:-12 63:-17 66:-19 68:15 76:-8 78:-18 84:-9 85:-14 88:-9 90:-9 94:-27 99:33 100:8 101:-19 102:8 103:-17 104:-27 105:-11 106:83 109:34 110:-24 111:116 112:71 113:39 117:-28 118:-25 119:93 120:-16 122:9 123:-20 125:-11
order today	10:14
today $	2:10 5:13 9:-11 10:11 11:27 12:-32 13:-10 14:-41 19:-8 23:-13 24:-10 26:-20 27:17 28:-9 29:68 30:18 31:10 32:-22 33:-16 34:53 36:-15 48:49 51:15 53:-8 55:24 56:11 59:-11 60:-20 61:18 63:-36 65:-18 84:-9 85:-10 94:-25 99:18 100:23 102:8 104:-31 107:8 108:9 109:20 110:-11 111:71 113:9 117:-11 118:-14 119:80 120:-10 126:51
order==ed	8:-22 9:-14 10:29 11:-13 19:-13 22:-9 24:-9 26:-10 30:-17 32:57 51:-11 52:-10 67:-41 68:-16 80:-10 89:-9 117:258 118:23 119:14 120:47 122:-23 126:29
is to	0:21 10:17 12:-8 13:18 15:-16 16:-8 24:-8 26:-13 30:-21 32:-11 36:9 38:10 41:21 44:13 48:-17 55:17 62:36 65:21 66:8 70:8 84:36 85:-26 100:16 101:18 104:-9 106:-11 108:-12 115:41 116:20 117:11 126:-27
to be	1:-21 2:-8 3:-14 4:30 5:9 8:-14 9:40 10:45 11:36 12:20 13:-19 16:-13 19:-8 22:25 24:-23 25:-14 26:-16 29:15 30:-21 31:-18 34:-16 36:19 37:-18 38:37 39:-14 41:16 44:-21 45:-28 46:-10 48:24 49:18 52:11 54:-8 56:-9 58:-10 62:34 65:12 66:16 67:-11 70:-9 76:-12 77:14 78:15 79:-12 82:20 84:44 87:9 89:12 90:-15 91:-12 92:41 93:14 94:-21 98:-30 100:8 101:17 102:22 104:-11 108:-11 109:-9 116:24 123:17
be order	8:-8 9:44 10:98 11:-8 30:-16 32:-59 33:43 126:-15
has==	0:-28 1:-35 2:-30 3:27 4:-40 5:-17 6:-28 8:-20 9:-16 11:-14 13:31 14:12 15:72 16:-40 17:-26 18:-18 21:10 22:44 23:31 24:64 26:8 27:82 28:-21 29:-19 31:-21 32:90 33:-13 34:21 36:-8 37:-22 38:-24 39:-12 40:8 41:-15 42:-9 43:-10 44:13 45:9 46:31 47:-12 48:47 49:36 50:-12 51:-12 52:-11 55:-22 56:17 58:18 59:-9 60:32 61:-22 62:-23 63:34 65:-56 66:46 67:-21 68:-9 70:-13 71:-20 72:-9 73:-23 75:26 76:30 78:-16 79:13 82:-11 83:-21 85:-26 87:14 88:57 89:26 90:-25 92:9 94:-10 95:68 98:-26 99:27 100:11 101:-12 102:28 103:-20 104:-26 107:-19 108:26 109:-11 111:9 113:13 114:29 115:-18 116:-32 118:10 120:-29 121:-15 122:29 123:13 126:37
)~",
R"~(has	0:-28 1:-35 2:-30 3:27 4:-40 5:-17 6:-28 8:-20 9:-16 11:-14 13:31 14:12 15:72 16:-40 17:-26 18:-18 21:10 22:44 23:31 24:64 26:8 27:82 28:-21 29:-19 31:-21 32:90 33:-13 34:21 36:-8 37:-22 38:-24 39:-12 40:8 41:-15 42:-9 43:-10 44:13 45:9 46:31 47:-12 48:47 49:36 50:-12 51:-12 52:-11 55:-22 56:17 58:18 59:-9 60:32 61:-22 62:-23 63:34 65:-56 66:46 67:-21 68:-9 70:-13 71:-20 72:-9 73:-23 75:26 76:30 78:-16 79:13 82:-11 83:-21 85:-26 87:14 88:57 89:26 90:-25 92:9 94:-10 95:68 98:-26 99:27 100:11 101:-12 102:28 103:-20 104:-26 107:-19 108:26 109:-11 111:9 113:13 114:29 115:-18 116:-32 118:10 120:-29 121:-15 122:29 123:13 126:37
what has	4:-12 5:21 10:14 11:13 13:26 21:10 22:21 24:-8 28:-8 32:37 34:36 105:16 116:-12 120:12 126:-22
has to	0:10 1:-10 4:-13 5:21 9:21 10:27 11:21 13:-12 15:-10 24:-12 28:22 29:21 30:-29 32:-19 39:8 44:-10 48:61 49:11 51:-8 82:10 85:-9 108:-8 112:21 115:24 116:-17 122:12 126:-26
order with	9:-8 10:14 51:-14 117:45 118:-12 119:-9 120:8
order in	5:11 10:24 11:-9 32:-8 118:36
in #n	1:-17 2:-11 3:-9 10:31 11:-31 16:9 18:23 37:-13 41:8 46:-24 48:104 49:18 50:18 51:38 53:-10 56:-15 67:-27 73:-25 76:92 78:14 79:-25 80:-19 82:-28 83:-18 90:-10 92:-8 95:-21 96:-33 99:-14 105:39 109:-10 114:-10 116:81 117:32 118:-21 119:88 120:-9 121:13 122:-26 126:17
buy in	10:13
in #c	21:9 22:13
wire shall	10:19 32:-9
wire should	9:-9 10:19
due==	8:-8 9:-9 10:31 11:252 12:56 13:-30 15:-15 17:-14 20:-10 22:-11 24:-12 26:-8 27:-11 29:-19 30:-40 31:-12 32:51 34:-20 44:-8 45:-9 46:-19 47:21 48:177 49:-14 50:-14 51:-20 53:-9 54:-16 56:83 57:23 58:26 66:-11 84:-10 88:-8 109:-8 110:-8 111:-10 113:-17 115:-11 116:-20 117:63 119:16 121:-8 126:-27
part==	11:22 27:9 48:-13 54:17 101:-10 109:10 110:8 126:20
due	8:-8 9:-9 10:31 11:252 12:56 13:-30 15:-15 17:-14 20:-10 22:-11 24:-12 26:-8 27:-11 29:-19 30:-40 31:-12 32:51 34:-20 44:-8 45:-9 46:-19 47:21 48:177 49:-14 50:-14 51:-20 53:-9 54:-16 56:83 57:23 58:26 66:-11 84:-10 88:-8 109:-8 110:-8 111:-10 113:-17 115:-11 116:-20 117:63 119:16 121:-8 126:-27
^ due	11:94 48:23
due job	48:10
@job day	11:28 48:-14
@day	0:-20 1:-20 2:-22 3:-18 4:-18 5:-18 6:-19 7:-14 8:-25 9:-24 10:-25 11:80 12:-32 13:-29 14:-26 15:-41 16:-36 17:-36 18:-14 19:-17 21:-10 23:-14 24:-27 25:-21 26:19 27:57 28:-27 29:91 30:81 31:63 32:-34 33:-22 34:54 35:32 36:-23 37:-18 39:-21 40:-10 41:-10 43:-16 44:-15 45:-14 46:-30 48:97 49:-25 50:-9 52:-13 53:232 54:86 55:31 56:-28 59:-18 60:-12 61:-14 62:-39 63:-33 64:-39 65:-27 66:-28 67:-14 68:-11 69:-9 70:-11 71:-18 73:-11 75:-8 76:-29 77:-11 78:-16 79:-11 80:-9 85:-16 86:-9 88:-20 89:-9 90:-9 91:-11 92:-18 93:-11 94:-19 95:-16 98:-12 99:-17 100:-17 101:-21 102:95 103:-31 104:-35 105:-17 106:82 107:63 109:-32 110:220 111:96 112:54 113:97 114:-30 115:-24 116:102 117:28 118:30 119:118 120:-22 121:-11 122:-40 123:-16 125:-20 126:40
day @day	11:15 29:-16 48:-17 110:13 112:11
@day day	48:-12 112:8
day today	11:15 48:-9 112:11
@job last	11:11
next @day	16:-9 20:10 26:-9 27:39 29:13 30:-36 31:46 34:-10 35:19 45:-9 46:-12 48:52 53:-53 54:40 55:46 62:-8 102:-12 106:37 107:74 108:-10 110:-60 112:79 113:65 116:35 117:24 119:25 120:-12 126:-122
@day job	11:15
day #r	11:13 48:-12 54:24 55:11
part	11:22 27:9 48:-13 54:17 101:-10 109:10 110:8 126:20
today part	11:8
even	0:34 1:9 3:9 11:14 27:30 30:23 41:15 46:12 48:-10 53:-19 54:22 55:46 67:10 68:11 69:-10 102:29 110:9 111:42 113:-13 126:-85
part even	11:12 48:-9
even job	11:11
last #o	54:9
december	0:-17 1:-10 2:-8 3:-13 4:-16 8:-9 11:76 12:-18 13:12 15:-22 16:-16 17:-25 18:-8 19:-8 20:17 21:14 24:-16 25:-12 27:32 28:-12 29:86 30:24 31:106 32:-8 34:-9 37:-21 38:-14 39:-19 41:-11 44:-11 45:-12 46:-30 48:91 51:-32 53:-27 54:108 55:58 56:-14 62:-17 63:-20 64:-9 65:-15 66:-20 67:-14 68:-9 72:-9 74:-8 76:-13 78:-11 82:-11 85:-14 90:-26 91:-11 92:-11 94:-11 96:-13 97:-10 98:-12 99:-11 100:-19 102:36 103:-11 105:-12 106:16 107:30 108:-13 109:-11 110:-27 111:107 112:54 113:87 114:-20 115:-16 116:45 117:19 119:113 120:-18 122:-16
of december	0:-9 3:-8 11:34 12:-12 13:34 15:-9 17:-18 25:-9 27:18 29:8 30:10 31:43 37:-12 46:-17 48:71 54:39 55:38 62:-11 63:-9 85:-8 106:21 107:21 111:9 112:34 114:-8 115:-9 116:26 117:8 119:32
december last	54:8
tomorrow	1:-11 3:-8 4:-8 5:-8 6:-14 8:-17 9:-16 11:33 12:-30 13:-17 14:-42 15:-12 16:-13 17:-13 19:-11 22:-12 23:-31 24:-15 26:-57 27:42 28:-9 29:74 30:103 31:30 32:-31 33:-25 36:-20 37:-23 38:21 39:-13 41:-17 46:-26 48:82 49:-10 53:-21 54:81 55:86 56:-26 58:-14 59:-9 62:-11 63:-26 64:-15 65:-15 66:-10 71:-16 72:20 75:-9 77:-9 79:-8 88:-10 90:-15 92:-11 94:-13 97:9 99:-8 100:-25 101:-23 102:69 103:-31 104:-20 105:-8 106:87 107:39 108:-13 109:-26 110:-22 111:100 112:110 113:114 114:-10 115:-8 116:57 119:122 120:-21 122:-9 123:-13 125:-14 126:-27
day tomorrow	11:11 48:-9
tomorrow day	55:8
day #o	29:10 48:-10
december day	29:8
day next	11:11 48:-8 112:17
#n week	0:-8 10:43 11:61 12:10 22:27 24:-9 30:17 47:9 48:48 51:-32 53:-13 59:13 82:-13 99:-12 117:23 118:-20 119:15 121:53 122:48 126:-16
week this	11:8
&@day	0:-19 1:-20 2:-21 3:-17 4:-17 5:-17 6:-18 7:-14 8:-24 9:-22 10:-23 11:32 12:-31 13:-28 14:-26 15:-36 16:-35 17:-35 18:-13 19:-17 21:-11 23:-14 24:-27 25:-20 26:20 27:60 28:-26 29:63 30:34 31:69 32:-30 33:-22 34:63 35:32 36:-22 37:-17 39:-20 40:-10 41:-9 43:-15 44:-14 45:-11 46:-25 48:116 49:-22 50:-8 52:-11 53:141 54:66 55:107 56:-26 59:-16 60:-11 61:-13 62:-32 63:-27 64:-37 65:-25 66:-27 67:-14 68:-10 69:-9 70:-10 71:-16 73:-10 76:-24 77:-10 78:-15 79:-10 80:-8 84:8 85:-16 86:-8 88:-20 89:-9 91:-10 92:-17 93:-10 94:-18 95:-16 98:-11 99:-16 100:-15 101:-18 102:68 103:-30 104:-34 105:-16 106:119 107:67 109:-31 110:137 111:95 112:114 113:90 114:-29 115:-20 116:102 117:19 118:32 119:120 120:-21 121:-10 122:-38 123:-14 125:-19 126:35
#n last	34:15 90:-11 94:52 126:-12
@day week	48:14 53:-39 55:49 119:32 126:-11
@day last	106:-8 126:13
#r day	29:-9 112:9
morn	2:-12 3:-11 4:-10 11:39 12:-11 13:-9 16:-16 17:-9 18:-9 23:-9 24:-14 25:-8 26:-16 27:19 29:-21 30:45 32:-10 34:-18 37:-10 38:10 43:11 44:14 45:12 46:10 48:-12 49:-9 54:66 56:13 59:18 62:-15 63:-18 65:-12 66:-8 67:9 72:13 74:11 75:12 76:31 77:8 79:-13 83:-9 85:-10 90:-8 95:11 96:21 99:-9 101:-21 102:52 103:32 104:-10 106:81 107:-26 108:11 110:-11 111:73 113:-18 115:-8 116:53 117:-12 118:19 119:-9 120:-11 126:-60
morn day	112:9
day the	9:-10 32:48 55:9 119:-11 126:-14
afternoon	8:-9 11:45 12:-12 14:-12 23:-9 24:-12 26:-16 27:39 29:-18 30:34 34:-19 36:-8 41:14 44:24 53:-23 54:86 55:9 62:-11 63:-9 95:-10 101:-10 102:52 106:76 110:18 111:104 112:-27 113:-13 116:22 126:-31
last @day	34:16 51:23 55:-8 126:12
morn $	11:38 12:-10 27:59 29:-14 30:39 32:-8 34:-12 42:8 44:15 45:12 46:16 53:-12 54:36 55:12 63:-11 74:12 84:8 96:21 100:15 102:48 103:-23 106:-11 107:-10 108:18 109:9 110:-14 111:41 113:-8 116:32 118:24 120:-8 126:-44
due the	11:10 48:9
#n by	19:11 31:8 37:-13 38:19 39:-9 41:8 43:-11 46:-10 48:8 51:-13 67:13 75:-12 77:14 79:10 86:34 93:41 98:40 126:-20
by next	30:-16 31:28 48:19
@day part	54:8
last the	19:16 28:11
afternoon $	11:23 12:-12 14:-11 23:-8 24:-11 26:-10 27:68 29:-11 30:51 34:-8 41:15 44:25 54:45 55:-11 95:-9 102:20 106:37 107:-11 110:-8
come==s	0:-12 1:17 2:17 3:9 5:-11 8:-10 9:-15 11:14 16:11 17:-26 22:31 24:-14 25:-12 28:31 29:-13 30:21 32:20 33:-13 34:-28 40:-8 42:26 44:-8 45:-8 48:16 49:-16 50:33 51:-11 53:-14 54:10 60:24 61:-9 63:65 64:-27 67:9 68:8 71:8 74:15 80:-12 88:-10 92:8 93:-8 94:40 110:29 111:-20 112:24 114:11 115:31 118:-14 119:62 120:-9 122:-12 126:-25
come	2:-9 5:23 6:-9 7:-9 8:-17 9:-44 10:14 11:9 12:-18 13:-9 14:-11 15:-18 17:-33 18:-15 19:47 21:-16 22:15 23:-12 24:-24 25:30 27:-15 28:22 29:31 30:21 31:-15 32:104 36:-22 37:-17 40:-16 41:-18 42:-12 43:-11 44:-18 45:-13 47:-11 50:33 52:-8 53:-20 55:-15 56:-13 58:-8 60:21 61:-8 63:39 64:15 65:-12 66:8 67:-16 69:8 70:-14 71:30 72:-14 74:-9 76:-10 78:-10 80:-17 81:9 83:-13 85:-8 88:-16 89:32 90:-13 93:-13 94:44 98:-10 100:-9 102:-22 105:-10 106:-11 107:-10 109:-14 110:49 112:66 114:13 115:41 117:11 118:91 119:69 120:41 121:-12 122:-27 125:-10
)~",
R"~(what come	2:19 10:8 11:22 13:20 16:17 17:-21 24:-11 28:18 30:37 32:-8 34:-23
come due	11:25
due for	11:27
for this	0:11 5:-9 11:9 20:21 27:9 29:9 84:10 109:12
this morn	2:-10 3:-10 4:-8 16:-8 18:-8 24:-12 26:-8 27:-17 29:-9 30:15 34:-8 38:8 43:12 44:10 45:17 46:16 54:-12 59:20 62:-12 63:-8 65:-10 67:10 72:14 75:14 76:33 77:9 79:-12 83:-8 96:22 100:10 101:-13 102:49 103:20 106:13 108:19 109:8 111:12 112:15 116:22 117:-12 118:25 120:-9
come to	3:-8 4:10 8:27 9:-8 10:24 20:-10 28:10 32:-22 36:-10 47:-10 48:11 62:9 67:17 68:12 69:11 81:9 89:40 93:-10 126:33
to do	4:-14 10:-20 12:24 13:70 15:9 17:9 24:-8 27:-8 28:33 29:-33 30:56 31:8 36:-19 42:-8 62:-9 65:27 66:13 104:21 109:22 111:10 121:-10 125:9 126:-48
anyth is	11:11 24:-8 126:23
is due	11:47 12:30 30:-15 48:40 54:-9 56:20 58:18 119:23 126:-18
due $	11:66 32:8 48:38 57:8 126:-24
that is	0:14 1:-8 2:-17 3:-51 7:-12 8:-25 9:20 11:16 12:31 13:10 15:-21 16:-13 17:-9 18:-13 21:-11 22:40 23:-9 24:43 25:-10 26:22 27:-21 28:-8 29:-9 30:-15 32:-14 34:-8 38:-8 40:13 43:9 44:17 45:19 46:-9 49:-20 56:25 57:9 58:-8 60:33 61:-13 65:25 66:-22 67:26 68:18 70:-10 71:15 76:11 77:14 83:-8 85:20 88:-13 90:-10 92:37 94:15 96:8 98:-13 100:-23 101:10 103:-13 106:12 109:29 110:-13 115:-20 117:-12 118:26 122:10 125:-12 126:39
fall==s	11:44 30:-8 34:-10 52:18 57:13 58:11 107:27 111:-9 113:28 120:14 126:-15
befor==e	0:50 7:-8 8:14 9:9 11:11 12:-9 15:-24 16:-17 18:29 20:9 23:11 26:27 32:-9 33:-14 34:12 36:15 38:-10 39:14 40:23 42:-8 45:-13 46:-10 49:-10 51:9 52:9 56:-10 62:-8 63:-11 64:10 66:-15 71:23 76:-15 79:14 82:-13 90:-11 100:21 102:-9 103:-8 108:-13 109:-8 110:-9 111:-17 112:28 115:129 116:20 118:-10 119:21 122:-33 125:8
fall	10:9 11:92 30:-12 34:-11 48:-11 52:18 57:13 58:11 107:27 111:-9 113:28 119:-11 120:14 126:-18
fall to	11:8
befor	0:50 7:-8 8:14 9:9 11:11 12:-9 15:-24 16:-17 18:29 20:9 23:11 26:27 32:-9 33:-14 34:12 36:15 38:-10 39:14 40:23 42:-8 45:-13 46:-10 49:-10 51:9 52:9 56:-10 62:-8 63:-11 64:10 66:-15 71:23 76:-15 79:14 82:-13 90:-11 100:21 102:-9 103:-8 108:-13 109:-8 110:-9 111:-17 112:28 115:129 116:20 118:-10 119:21 122:-33 125:8
@day $	0:-8 5:-8 8:-9 9:-10 10:-9 11:73 12:-14 13:-19 14:-13 15:-15 16:-9 17:-10 24:-12 25:-8 26:-19 27:58 28:-8 29:128 30:75 31:52 32:-11 33:-8 34:48 35:38 36:-10 38:9 44:-9 45:-10 46:-21 47:13 48:46 49:-8 51:-11 53:-41 54:43 55:-21 62:-11 63:-13 64:-9 65:-10 66:-9 74:-10 76:-8 82:-8 90:-8 95:-9 100:12 102:23 103:-8 106:-52 108:-17 109:-17 110:-55 111:109 112:20 113:-27 114:-8 116:47 117:29 118:34 119:69 122:-10 125:-8
what fall	11:30 58:12
for today	27:9 29:-9 30:-11 84:-8 85:-8 102:16 106:13 109:63 111:15 112:8 126:-23
is anyth	11:47 13:14 17:-11 23:-10 24:15 26:39 27:39 85:-11 126:-14
com==ing	8:-36 9:-23 10:18 11:59 12:-12 13:36 14:-11 15:-17 17:-13 19:-12 22:-17 24:-13 26:-31 27:41 30:32 32:165 33:-10 36:-8 44:13 46:-14 53:-8 63:44 64:-21 90:19 94:11 101:-8 111:-9 117:9 118:17 119:60 120:67 122:-12 126:-27
com	8:-36 9:-23 10:18 11:59 12:-12 13:36 14:-11 15:-17 17:-13 19:-12 22:-17 24:-13 26:-31 27:41 30:32 32:165 33:-10 36:-8 44:13 46:-14 53:-8 63:44 64:-21 90:19 94:11 101:-8 111:-9 117:9 118:17 119:60 120:67 122:-12 126:-27
are com	11:28 32:-9
com up	11:44 46:-11
is com	11:19 13:11 15:-13 26:-19 27:-9 29:-11 30:18 44:15 117:11 118:9 119:72 120:-9 126:40
up on	2:10 4:-10 8:15 11:39 13:-27 16:-9 17:36 25:29 30:-21 34:-12 46:17 71:10 90:20 92:36 126:-29
by tomorrow	11:20 30:-25 31:12 48:38 84:-8 126:14
tomorrow $	8:-8 9:-11 11:11 12:-17 13:-9 14:-29 23:-14 24:-8 26:-36 27:23 29:86 30:20 31:28 32:-19 33:-11 36:-9 37:-13 41:-16 48:113 54:54 56:-8 63:-11 101:-8 103:-9 107:16 109:-17 111:50 112:-9 113:39 119:45 126:14
com $	15:-11 29:-11 30:-11 32:46 118:19 120:47 126:19
com on	119:32
on next	11:8 16:18 17:-9 30:-11 31:12 54:9 102:11 126:-9
until==	8:-9 9:20 11:16 13:-12 15:-12 16:-11 17:-8 19:-14 20:40 21:11 26:9 27:-15 28:-12 29:22 32:-13 33:22 34:-12 38:10 44:-15 45:-8 48:46 49:-14 51:-8 53:33 54:-15 55:67 62:16 63:-8 65:-9 66:-11 95:-8 98:14 100:-11 101:-9 102:62 103:-13 106:9 107:-12 109:-15 110:30 111:12 112:19 113:-20 114:-8 115:73 116:31 118:-14 119:15 120:-13 126:-36
up for	0:-9 6:-13 13:-16 18:-13 20:11 24:26 27:20 38:-16 39:43 44:-11 66:78 71:19 84:-11 85:18 100:8
until	8:-9 9:20 11:16 13:-12 15:-12 16:-11 17:-8 19:-14 20:40 21:11 26:9 27:-15 28:-12 29:22 32:-13 33:22 34:-12 38:10 44:-15 45:-8 48:46 49:-14 51:-8 53:33 54:-15 55:67 62:16 63:-8 65:-9 66:-11 95:-8 98:14 100:-11 101:-9 102:62 103:-13 106:9 107:-12 109:-15 110:30 111:12 112:19 113:-20 114:-8 115:73 116:31 118:-14 119:15 120:-13 126:-36
until next	102:10
come==	0:8 1:-24 2:-26 3:-13 4:12 5:34 9:-28 10:8 12:-14 13:-13 14:-9 15:-15 16:-8 18:-10 19:52 20:9 21:-10 22:-16 23:-10 24:-11 25:42 27:-10 28:-8 29:44 31:-11 32:85 33:10 34:33 36:-17 37:-11 40:-8 41:-16 42:-38 44:-10 47:-11 48:-11 49:10 55:-12 56:-8 63:-25 64:42 67:-25 70:-9 71:23 72:-9 74:-24 81:8 82:10 83:-11 89:37 90:-8 92:-10 102:-16 105:-9 110:21 111:18 112:41 113:12 115:10 118:105 120:50 122:-15 123:-8 125:-8 126:20
are to	8:-15 11:8 13:17 17:-11 32:19 82:16 84:13 126:-8
to come	0:24 1:-10 8:-16 9:-22 28:-11 29:28 32:55 33:21 49:15 117:9 119:20 120:15 126:-25
come $	19:-14 28:-13 30:-10 32:112 33:13 51:-20 117:-8 118:60 119:-9 120:12 123:-13 126:9
com @day	111:10
due on	11:57 12:-9 47:10 113:-10 117:16 126:25
on @day	1:-10 8:-8 11:28 12:-14 13:-10 14:-27 15:-8 16:-10 17:-8 25:-9 26:-12 27:31 29:76 30:47 31:-15 32:-13 34:-33 38:8 44:-11 46:-16 48:12 54:29 55:37 63:19 64:-17 84:17 100:15 102:11 107:18 108:-13 109:-8 110:12 111:73 112:108 113:-27 116:-12 119:37 126:89
for tomorrow	27:20 29:-13 30:37 31:17 55:17 102:-9 106:-11 112:8
due befor	11:9
must go	10:8 87:11
go out	10:8 11:36 30:-13 48:14
ready==	11:27 12:-28 13:26 14:-8 15:-11 30:118 31:69 38:-10 44:31 48:16 49:-14 99:18 100:27 105:-8 106:-9 107:15 109:12 116:-9
must be	2:13 10:10 11:37 13:13 20:12 28:9 30:-30 31:-12 48:8 60:-9 67:-10 99:20 115:10 121:17 125:15
ready	11:27 12:-28 13:26 14:-8 15:-11 30:118 31:69 38:-10 44:31 48:16 49:-14 99:18 100:27 105:-8 106:-9 107:15 109:12 116:-9
be ready	11:42 13:-8 30:37 31:48 48:18 49:-9 126:-28
ready for	7:9 11:8 30:-14 100:27 107:19
for #o	11:9 112:11
december $	4:-9 11:27 12:-11 13:-9 15:-11 17:-10 25:-8 27:16 29:99 31:24 37:-8 46:-16 48:118 51:-25 55:-38 67:-12 90:-14 96:-8 110:-16 111:73 112:-12 113:-28 116:30 117:10 118:15 119:98 120:-11 122:-10 126:37
finish==ed	0:51 1:-19 5:-10 11:10 13:23 15:-24 16:-17 17:-15 18:-11 22:-8 24:-8 27:-8 28:-9 30:-15 31:15 32:29 44:196 45:84 49:-17 63:21 65:-34 66:-8 73:-8 87:18 88:-8 90:-14 92:-9 94:9 96:16 102:-22 103:17 105:-16 108:-38 109:60 114:-11 115:67 118:-8 126:17
tonight==	10:13 11:24 26:-10 27:8 29:76 30:-10 54:-26 106:24 126:10
which have	19:10
finish	0:50 1:-19 5:-10 11:8 13:23 15:-24 16:-17 17:-16 18:-11 22:-9 24:-8 27:-10 28:-11 29:10 30:-20 31:24 32:28 34:16 44:192 45:84 49:-17 63:21 65:-36 66:-8 73:-8 87:18 88:-8 90:-14 92:-9 94:9 96:16 102:-22 103:17 105:-16 108:-38 109:60 114:-11 115:67 118:-8 126:8
be finish	11:21 31:8 48:12
finish on	44:26
tonight	10:13 11:24 26:-10 27:8 29:76 30:-10 54:-26 106:24 126:10
on tonight	11:15 106:8
tonight $	11:25 26:-10 27:9 29:77 54:-11 106:24 126:-26
job must	11:13 30:-10
on this	12:-16 15:9 16:12 24:-8 27:-9 30:27 46:-9 51:11 60:-18 65:10 94:17 102:9 106:19 111:9 116:18 126:21
done==	1:-19 2:-20 3:-9 4:-32 5:25 6:-14 8:-21 10:-21 12:27 13:55 14:-12 15:15 16:-63 17:-17 18:-15 19:-16 22:-9 23:-16 24:-19 25:-13 27:-18 28:52 29:-15 30:-10 31:19 33:-19 34:107 36:-13 37:56 38:-16 39:-11 40:-10 42:-16 44:174 45:101 46:22 49:-21 51:-13 53:-17 55:13 59:-8 62:-17 63:10 64:-11 66:-22 71:9 72:37 75:-8 76:73 78:-9 79:11 82:-11 84:-11 85:-10 87:-25 88:-17 90:-19 91:-12 92:-14 94:-11 95:-8 96:25 98:13 99:-10 100:-14 101:23 102:-13 103:-9 104:77 107:-8 108:-42 109:58 113:-8 114:-36 115:66 116:-32 117:22 125:-9 126:-15
done	1:-19 2:-20 3:-9 4:-32 5:25 6:-14 8:-21 10:-21 12:27 13:55 14:-12 15:15 16:-63 17:-17 18:-15 19:-16 22:-9 23:-16 24:-19 25:-13 27:-18 28:52 29:-15 30:-10 31:19 33:-19 34:107 36:-13 37:56 38:-16 39:-11 40:-10 42:-16 44:182 45:101 46:22 49:-22 51:-13 53:-17 55:13 59:-8 62:-17 63:10 64:-11 66:-22 71:9 72:37 75:-8 76:73 78:-9 79:11 82:-11 84:-11 85:-10 87:-25 88:-17 90:-19 91:-12 92:-14 94:-11 95:-8 96:25 98:13 99:-10 100:-14 101:23 102:-13 103:-9 104:77 107:-8 108:-44 109:58 113:-8 114:-36 115:64 116:-32 117:22 125:-9 126:-15
)~",
R"~(be done	4:-9 5:23 11:-10 12:16 28:46 30:37 34:-14 44:-15 48:12 56:15 62:-11 65:23 115:16 126:-8
done on	12:-8 13:31 15:-8 16:-15 17:-13 26:22 28:19 30:-28 31:-8 34:45 44:22 45:17 96:22 98:14 104:32 109:-10 126:-10
done the	51:-11 117:24
#o $	0:-14 2:-16 3:-13 4:-9 9:14 11:-8 12:46 13:-24 15:-12 16:14 17:-16 21:-8 23:12 24:-11 27:10 29:49 30:45 32:-8 35:12 37:34 38:11 42:-12 43:-9 44:-11 46:21 66:13 88:-22 94:25 98:-10 102:-11 107:13 109:-8 111:-10 113:18 114:11 115:9 116:11 118:-9 120:-13 126:63
what have	0:12 8:43 9:-11 10:-18 11:-44 12:10 13:27 14:-11 19:26 21:33 22:-16 24:29 26:-22 27:18 30:-20 31:-10 32:54 34:35 35:20 36:-9 126:-21
for next	11:51 27:-15 29:17 30:-13 48:8 102:18 111:-13 117:8 119:8
job is	2:15 11:-35 12:35 13:-14 15:33 17:-11 30:13 100:23 126:-20
out on	4:22 11:15 17:-8 40:10 76:11 98:12 104:14 111:16 126:-9
is ready	30:-23 44:8 126:67
ready to	13:38 30:-15 44:13
to go	10:8 11:24 28:30 30:-17 44:10 48:13 51:-8 82:12 100:-8 103:27
out for	5:-11 6:10 30:-8 102:9 109:22 126:-13
for befor	11:9
befor @day	119:13 126:15
is out	14:-8 29:15 62:-8 63:15 88:15 102:76 103:-24 106:-8 111:26 115:22 126:15
on #o	27:18 29:-9 39:18 54:-10 55:9 106:27 113:16 126:-9
are due	12:-18 56:25 118:9
out in	15:9 20:10
in tomorrow	29:11 111:39 112:13 126:-23
fall==	11:26 48:-8
fall due	11:66 34:-9 57:13 58:11
due today	11:15
befor the	9:18 10:10 55:10 71:21 82:-10 92:11 115:11 119:9 122:-32 126:16
this afternoon	11:34 12:-10 14:-10 23:-8 24:-11 26:-12 30:38 54:18 95:-9 102:20 106:28 107:13 111:46 116:20
on today	30:-8 48:8 54:23 55:11 102:13 106:13 107:14 113:21 119:28 126:-31
on #r	16:14 29:27 47:10 51:-20 53:-11 54:35 90:-8 102:16 106:16 111:44 112:-20 113:11 116:31 117:22 118:8 119:14 126:-52
due day	48:32 126:-8
day for	29:9 31:22 48:65 85:-11 110:17 112:-15 119:15 126:-8
the due	11:44 13:-10
day in	11:27 48:-12
in until	112:10
date==s	10:-8 11:46 12:-15 30:56 48:-15 97:15
rest==	13:-10 17:-11 30:-18 32:-15 36:-8 42:-8 44:-8 46:39 51:-9 54:16 61:9 63:-9 65:-10 66:-11 70:9 71:22 83:-11 88:23 93:18 102:32 107:-9 109:34 111:23 114:-11 118:71 119:48 120:84 126:-23
date	9:43 10:-15 11:80 13:-14 17:-9 28:-18 30:57 31:53 48:139 49:-13 66:-21 71:-11 78:8 97:14 107:-28 109:-10 119:25 126:27
due date	11:63 12:10 13:-10
date for	11:13 12:-15 30:37 31:27 119:20
rest	13:-10 17:-12 30:-18 32:-15 36:-8 42:-8 44:-8 46:37 51:-9 54:16 61:9 63:-9 65:-10 66:-11 70:9 71:22 83:-11 88:41 93:18 102:32 107:-9 109:34 111:23 114:-11 118:71 119:48 120:84 126:-36
rest of	30:-12 39:9 54:22 63:-8 88:11 102:39 109:-8 111:32 118:-10 119:29 120:14 126:-19
the week	2:11 11:57 29:17 30:8 53:10 102:33 110:-10 126:-14
date $	11:17 31:8
promise==s	11:9 30:16
promise	11:9 30:16
in tonight	11:8 27:9
recheck==	2:-8 11:66 13:-11 16:-10 17:-12 25:15 28:25 29:-11 30:-26 44:-19 45:-8 46:109 48:-25 56:101 65:-8 66:-8 76:-8 85:-10 90:-75 99:-10 100:-16 104:20 105:17 108:12 115:-10 116:246 126:-11
have i	8:-10 10:-10 11:-11 13:-8 14:-11 21:11 24:-9 27:32 32:24 34:82 36:-8 96:10 98:8 126:-8
i to	126:10
to have	11:21 30:-16 31:28 46:11 48:-8 90:34 106:16 125:16 126:-21
recheck	2:-11 4:-8 8:-8 10:19 11:230 12:-21 13:-16 14:-9 15:-9 16:-13 17:-33 22:-8 23:-8 24:-9 25:13 26:-10 27:-15 28:18 29:-20 30:-60 32:-18 34:-13 36:-11 39:-10 44:-25 45:-10 46:282 48:-29 49:-8 56:125 65:-9 66:-10 76:-21 84:-8 85:-12 88:-9 90:-104 92:-9 96:-11 98:-13 99:-12 100:-18 104:15 105:36 106:-9 108:10 114:-10 115:-12 116:243 125:-9 126:-27
recheck on	11:50 25:18 90:-14
on tomorrow	12:-8 29:-10 30:62 32:-8 54:9 55:12 112:18 113:16 119:18 126:-15
i recheck	11:39 17:-14 46:8 116:16
check==	0:-15 3:68 8:-12 9:-8 10:-11 11:33 13:-9 17:49 18:99 23:-13 30:-13 36:-14 37:-8 38:-9 42:-8 44:-9 45:-9 48:-9 52:-14 67:34 68:14 70:-9 75:-10 106:-13 108:-13 116:107 118:12 120:-10 122:9 126:-12
again==	0:-35 1:-21 2:8 3:-12 4:-29 5:-22 7:11 10:-14 11:65 12:-15 13:-21 14:-12 16:61 17:-43 18:-9 19:-9 20:-8 21:-8 22:-11 23:-17 24:-27 25:75 26:-32 27:-9 28:-15 29:-19 30:-33 31:-19 32:-17 33:-18 34:-31 36:9 37:-31 38:-29 39:88 40:-22 41:-26 44:-23 45:21 46:38 48:-41 49:-8 52:37 53:-14 54:-21 55:-13 56:-8 58:-12 59:-13 61:25 62:-18 63:-24 64:141 66:18 70:-13 71:-20 72:-19 73:46 76:-33 78:-11 79:85 81:-12 82:-18 83:10 84:-11 85:47 87:17 90:-27 91:-23 92:-26 94:-13 95:10 96:55 97:-15 98:-18 99:-18 100:-21 101:8 102:-50 103:164 104:20 105:55 106:-9 108:41 111:-13 112:-12 113:88 114:15 115:-11 116:129 117:10 118:-19 120:-13 125:10 126:-12
check	0:-18 1:-9 3:57 4:-8 8:-13 9:-8 10:-12 11:30 13:-16 16:-8 17:45 18:90 23:-14 25:-10 30:-17 36:-16 37:-10 38:-10 42:16 43:-8 44:-12 45:-11 46:47 48:-24 52:-15 67:32 68:13 70:-10 76:16 77:-8 87:10 91:17 92:21 93:-12 96:-10 102:16 106:-14 108:14 111:27 114:-9 115:-11 116:125 120:-12 122:8 126:-31
i check	11:11 17:53 23:-13 30:-8 36:-13 46:21 75:9 76:17 89:9 118:-8 126:14
again	0:-35 1:-21 2:8 3:-12 4:-29 5:-22 7:11 10:-14 11:65 12:-15 13:-21 14:-12 16:61 17:-43 18:-9 19:-9 20:-8 21:-8 22:-11 23:-17 24:-27 25:75 26:-32 27:-9 28:-15 29:-19 30:-33 31:-19 32:-17 33:-18 34:-31 36:9 37:-31 38:-29 39:88 40:-22 41:-26 44:-23 45:21 46:38 48:-41 49:-8 52:37 53:-14 54:-21 55:-13 56:-8 58:-12 59:-13 61:25 62:-18 63:-24 64:141 66:18 70:-13 71:-20 72:-19 73:46 76:-33 78:-11 79:85 81:-12 82:-18 83:10 84:-11 85:47 87:17 90:-27 91:-23 92:-26 94:-13 95:10 96:55 97:-15 98:-18 99:-18 100:-21 101:8 102:-50 103:164 104:20 105:55 106:-9 108:41 111:-13 112:-12 113:88 114:15 115:-11 116:129 117:10 118:-19 120:-13 125:10 126:-12
check again	11:25 48:-13 116:21
again $	0:-13 1:-10 2:35 4:-13 5:-12 11:13 12:-8 13:15 16:46 17:-10 23:-10 24:-18 25:-10 26:-22 29:-13 30:-19 34:-10 37:-18 38:-18 39:83 41:-17 44:-9 46:-11 48:-9 49:-9 53:-10 58:-8 61:29 62:-10 64:81 65:-13 66:38 71:-8 76:-12 79:28 83:-8 84:-10 85:51 87:11 90:-13 91:-18 92:-27 95:16 96:26 98:-14 99:-11 100:-12 101:13 102:-22 103:96 104:35 105:23 108:29 109:-8 110:-8 111:-21 113:67 114:14 116:-16 125:17 126:-19
recheck $	11:21
recheck==ed	17:-19 46:174 76:-13 90:-21 126:-8
be a	0:-9 59:8 61:18 91:-17 93:-11 94:9 119:24 126:33
a recheck	28:13 56:20 99:-8 104:13 105:19 126:-8
what need	8:-19 11:14 22:30 26:41 104:-11
need a	0:50 4:-14 10:14 11:22 20:26 23:33 78:-17 104:9 126:27
a check	11:14
again on	11:30 13:-20 25:79 31:-8 34:-11 90:-11 116:36
look==	0:22 2:-8 3:-8 4:-10 7:18 8:27 9:-10 10:-11 11:67 13:58 14:35 16:-26 17:29 22:12 24:-8 25:-8 26:-9 29:-9 30:42 31:-11 36:9 37:18 38:-11 40:-14 44:-12 45:-8 46:72 48:-13 49:-10 56:-9 59:88 60:-15 61:-16 62:59 63:-22 64:-10 65:21 66:-8 78:-10 84:-10 88:-15 90:31 91:-24 92:-9 94:-8 96:-18 98:-11 102:-27 103:-9 106:-9 108:-12 109:-13 114:-8 115:-8 116:144 126:-19
look	0:15 2:-16 4:-16 5:-15 7:16 8:53 9:-36 10:23 11:60 12:16 13:25 14:35 15:23 16:-12 17:15 20:-9 21:-11 22:38 23:-10 24:-11 25:-16 26:-14 27:-10 28:-10 29:-14 30:32 31:-15 33:-11 34:-13 37:23 38:-9 40:-15 41:-12 43:-37 44:-22 45:-12 46:139 48:-24 49:-16 50:-17 54:30 57:-14 59:109 60:-15 61:-18 62:91 63:-11 64:-18 65:28 66:-16 72:-8 76:-11 78:-25 80:8 85:-8 88:-12 90:126 92:23 93:-16 94:-18 96:-31 97:-14 98:-21 99:-9 102:-22 103:-13 106:-12 108:-14 109:-22 111:-17 112:-14 114:-14 115:-19 116:132 126:9
a look	37:23 62:17 91:9 92:9
look at	11:90 13:43 17:13 26:-8 30:-18 46:31 48:-11 82:10 88:14 94:-11 102:-17 108:-8 109:-15 116:64 125:8 126:25
at again	11:44 88:9 116:-12 126:-10
again for	48:-13 116:20
fret need	3:10 4:14 11:10
be look	11:19 88:9 90:-11 116:23 126:-11
wait==ing	6:14 8:-12 9:11 11:35 12:100 13:15 24:-12 29:-14 30:-22 32:59 33:-9 36:-13 39:-29 44:-13 47:-10 52:9 65:-10 67:-8 81:10 114:-15 115:8 118:32 119:29 126:29
^ any	0:15 1:14 4:-11 8:14 9:-9 11:37 12:11 13:15 17:57 18:-19 19:-8 22:34 23:25 24:35 27:24 31:18 32:36 38:-17 48:-15 107:-14 126:-19
any recheck	11:70
recheck is	56:22 126:8
is wait	9:17 12:44 30:-9 39:-27 44:-8 114:-12 115:-24 126:90
this even	30:24 54:16 126:-8
even $	20:9 27:16 53:-8 54:12 55:40 102:25 111:21 126:-29
the recheck	11:26 25:17 28:13 30:-8 44:-10 46:49 48:-10 90:-48 100:-8 108:21 109:9 116:59 126:19
wait $	9:21 11:45 12:13 32:-9 36:-12 39:-28 44:-13 48:-8 88:-9 114:126 115:-10 121:10 126:73
)~",
R"~(recheck==s	11:168 12:-13 27:-9 29:-9 30:-32 32:-11 46:-14 56:30
which recheck	11:19
recheck due	11:-21 46:-10 56:62 116:-13
recheck are	11:13 12:-10 56:24
are wait	11:17 12:34 32:-9 118:24 119:31 126:-16
wait on	29:-11 32:19 115:75 126:-20
which the	25:13
overdu==e	11:188 14:-9 23:-8 24:-8 26:-17 36:-9
overdu	11:188 14:-9 23:-8 24:-8 26:-17 36:-9
overdu $	11:74 26:-8
past==	0:-10 3:-10 14:8 15:-8 19:58 32:16 34:-11 43:16 44:-8 53:16 55:24 65:-10 78:37 79:9 88:10 90:-11 91:-16 92:-13 94:67 102:-10 103:24 108:40 109:17 112:32 116:-10 126:-15
past	0:-10 3:-10 14:8 15:-8 19:58 32:16 34:-11 43:16 44:-8 53:16 55:24 65:-10 78:37 79:9 88:10 90:-11 91:-16 92:-13 94:67 102:-10 103:24 108:40 109:17 112:32 116:-10 126:-15
anyth overdu	11:42 26:-9
^ overdu	11:65
overdu with	11:10
with anyth	11:34
am==	1:-11 3:49 4:-8 8:-14 9:19 10:12 11:-12 12:40 13:-19 17:-15 22:-15 23:-20 24:21 26:12 28:12 29:8 30:16 31:-12 32:-8 33:-11 34:-16 37:-11 39:-12 42:15 43:-17 44:18 46:11 52:9 53:9 54:-10 55:-8 57:-10 65:53 66:15 72:-21 74:15 75:-10 83:-11 88:-9 93:-11 98:-8 101:-9 102:-19 107:23 108:71 109:51 111:27 112:46 113:-9 122:-9 125:-20 126:8
am	1:-11 3:49 4:-8 8:-14 9:19 10:12 11:-12 12:40 13:-19 17:-15 22:-15 23:-20 24:21 26:12 28:12 29:8 30:16 31:-12 32:-8 33:-11 34:-16 37:-11 39:-12 42:15 43:-17 44:18 46:11 52:9 53:9 54:-10 55:-8 57:-10 65:53 66:15 72:-21 74:15 75:-10 83:-11 88:-9 93:-11 98:-8 101:-9 102:-19 107:23 108:71 109:51 111:27 112:46 113:-9 122:-9 125:-20 126:8
^ am	3:46 15:10 24:8 30:11 109:18 126:-14
am i	3:50 10:-10 12:59 15:10 16:-8 24:19 26:19 28:19 29:24 30:21 36:-22 102:-10 108:-9 126:-24
i overdu	11:8
with someth	11:10
someth $	11:10 27:13
behind==	11:37 15:-9 17:-8 28:-11 44:30 49:-20 51:41 60:10 61:-8 66:-10 70:20 94:17 113:-8 114:-10 115:106 117:-15 118:-10
behind	11:37 15:-9 17:-8 28:-11 44:30 49:-20 51:41 60:10 61:-8 66:-10 70:20 94:17 113:-8 114:-10 115:106 117:-15 118:-10
we behind	11:16
behind with	11:16
press==	0:-12 1:-9 2:-17 3:-8 4:-13 5:-16 6:-9 7:-8 8:-13 9:-19 10:-14 11:69 12:-24 14:-32 15:-18 16:105 17:-30 18:-10 19:-9 20:-12 21:-10 22:-15 23:38 24:-19 25:-18 26:132 27:97 28:-32 29:-57 30:54 31:-18 32:-23 33:-16 34:-49 36:-23 38:-17 39:-14 41:-8 42:-8 44:-29 45:-47 46:-12 48:-14 49:-15 53:-19 54:-27 55:-14 56:76 58:-27 59:-28 61:-11 63:-21 64:-15 65:-11 66:-13 70:-8 76:-21 78:-15 79:-11 84:-11 85:-22 86:37 87:62 88:-20 90:-8 91:-10 92:-9 94:-10 95:-8 96:-10 98:-8 99:19 100:102 101:59 102:187 103:178 104:72 105:-26 106:126 107:128 108:-23 109:-30 110:-24 111:-26 112:-34 113:-32 114:-12 115:-11 118:-17 119:-16 120:-11 121:-9 122:-8 123:-16 125:-21 126:69
press	0:-20 1:-18 2:-35 3:-18 4:-44 5:-31 6:-24 7:-13 8:-22 9:-33 10:-20 11:104 12:-50 13:-20 14:-48 15:-62 16:229 17:-56 18:-17 19:-16 20:-17 21:-16 22:-24 23:49 24:-33 25:61 26:191 27:87 28:12 29:-78 31:-25 32:-33 33:-36 34:42 36:-15 37:-14 38:-27 39:-23 41:-12 42:-13 43:-11 44:-102 45:289 46:17 48:-34 49:-29 50:-12 53:-22 54:-37 55:-21 56:79 57:-8 58:-37 59:-33 60:-9 61:-19 63:-24 64:-20 65:-31 66:-31 70:-10 71:-9 72:-13 73:-9 74:-16 75:-9 76:-35 77:-9 78:-32 79:-16 82:-11 83:-13 84:-30 85:-37 86:34 87:62 88:-33 90:-42 91:-22 92:-25 93:-10 94:-28 95:-16 96:-19 98:-18 99:-11 100:219 101:72 102:213 103:166 104:132 105:-16 106:191 107:161 108:36 109:-27 110:-26 111:-36 112:-44 113:-39 114:-22 115:-34 118:-23 119:-21 120:-14 121:-12 122:-14 123:-24 125:-30 126:55
to press	11:22 13:37 16:-9 23:15 26:-8 30:-14 76:-10 86:9 97:11
press $	2:-11 8:-9 9:-11 12:-23 13:30 14:-15 15:-12 16:12 17:-11 23:32 25:62 26:13 27:67 28:11 29:-11 30:14 33:-8 34:-25 36:37 44:-10 45:42 62:12 78:-10 80:10 87:18 88:-16 90:-14 99:18 100:46 103:-32 104:66 114:-9 126:-14
we press	13:-9 16:57 25:15 34:74 45:-28 104:10 126:-73
press for	16:-24 26:19 27:-19 28:-13 30:-13 38:-10 45:-20 100:-19 102:-11 104:13 106:43 107:-14 116:15 126:179
next week	10:-9 11:12 12:-10 14:-8 16:-10 17:-8 26:-22 27:51 29:32 30:-33 31:38 32:-8 51:-23 53:-8 54:48 55:18 67:-23 102:69 106:10 107:-12 111:54 112:-14 116:24 117:-18 119:10 126:55
press==ing	4:-14 5:-10 11:43 12:-13 13:-22 16:101 23:9 25:18 26:-17 28:70 30:-39 33:-13 34:-13 36:14 44:-40 45:32 46:29 56:31 84:-12 87:10 94:-9 100:-36 102:-17 103:-9 104:37 105:31 106:-14 108:78 109:10 115:-9 116:18 126:-20
job have	12:24
be press	11:70 12:-11 16:38 30:-21 45:-12
press==ed	2:-10 3:-9 4:-14 11:33 13:12 15:-38 16:20 17:-16 25:70 26:-14 27:-9 28:-16 30:-25 34:120 44:-26 45:333 48:-8 65:-12 66:-11 76:-12 78:-13 87:-13 90:-25 92:-9 94:-8 98:-16 100:-8 103:-16 106:-16 108:-17 109:-14 114:-13 115:-11 116:-12 126:64
need press	26:24 106:15 107:34 126:-18
press on	11:-8 16:-8 27:34 30:-8 34:-10 45:43 76:-8 100:8 104:8 106:26 107:25 110:-8 111:-8
latest==	9:41 11:108 13:-9 16:-10 30:83 32:-10 34:-9 106:-8 108:-16 114:13 125:33 126:-22
latest	9:41 11:108 13:-9 16:-10 30:83 32:-10 34:-9 106:-8 108:-16 114:13 125:33 126:-22
latest press	11:68
press by	11:39 30:-18 45:-8 126:30
by date	11:18
the latest	9:42 11:44 13:-8 30:74 32:-9 34:-8 108:-9 125:33 126:-16
by day	10:-15 29:10 30:29
date==	9:44 11:34 12:9 13:-13 17:-8 28:-17 31:55 48:154 49:-13 66:-17 71:-11 78:9 107:-26 109:-9 119:25 126:34
the press	2:-11 4:-11 5:-8 8:-8 9:-10 10:-8 11:-32 12:-14 13:-11 14:-23 16:-36 17:-11 20:-8 23:19 24:-10 26:113 27:110 28:-8 29:-39 30:99 31:-10 32:-17 34:-14 36:-15 38:-14 39:-10 44:-14 45:45 46:25 49:-10 53:-8 54:-21 55:-8 56:33 58:-18 59:-13 63:-12 64:-9 66:-8 76:-10 80:10 84:-9 85:-19 86:15 87:17 88:-10 91:-8 100:39 101:20 102:88 103:89 104:54 105:-11 106:103 107:47 108:-14 109:-13 110:-14 111:-13 112:-29 113:-19 118:-11 119:-10 123:-8 125:-10
^ latest	11:52 30:10
is press	11:14 23:8 25:9 26:25 27:14 30:-14 36:-11 45:22 103:-12 126:53
^ press	4:-10 5:-10 11:-29 13:-24 16:62 23:-16 25:-8 26:44 27:15 28:-19 34:-8 36:-9 44:-21 45:61 53:-10 56:51 84:-14 87:-12 100:-16 102:125 103:83 105:31 106:37 108:20 115:-11 116:-9 126:39
press of	11:12 28:14 45:24 109:8 126:-11
time==	0:-15 1:-9 2:-10 4:-10 5:-13 8:-24 9:29 10:14 11:-19 12:-12 13:-21 14:-19 15:-15 16:-23 17:-14 19:40 20:23 21:20 22:14 23:-20 24:-19 25:-8 26:-17 27:23 28:130 29:56 30:31 32:-22 33:20 34:-24 37:-9 40:-8 42:-13 44:-30 45:-36 46:-11 48:9 49:-22 53:-16 54:-9 56:18 59:-15 62:8 63:22 66:54 73:-12 78:-8 79:14 84:-16 85:10 86:8 88:-8 92:-8 96:47 98:-20 100:20 101:-10 102:-11 103:-11 104:-12 105:38 106:50 107:48 108:-17 110:66 112:-8 113:-12 114:-10 118:-22 119:-11 121:20 122:21 125:-9 126:55
time	0:-16 1:-10 2:-11 4:-20 5:-15 6:-10 8:-25 9:27 11:58 12:-24 13:-24 14:-16 15:-19 16:-29 17:-16 19:27 20:22 21:19 22:10 23:-22 24:-25 25:-9 26:-23 27:54 28:187 29:187 30:14 32:-24 33:82 34:-28 36:-10 37:-10 40:-9 42:-16 43:-10 44:-34 45:-37 46:-12 49:-23 51:-8 53:-17 54:-20 56:15 58:-13 59:-17 63:14 64:-13 66:52 71:-12 73:-12 75:-8 76:-8 78:-9 79:13 84:-20 88:-8 90:-8 91:-8 92:-10 93:13 96:46 98:-21 100:18 101:-18 102:-22 103:-13 104:-15 105:60 106:37 107:41 108:-21 110:55 111:-8 112:-21 113:-14 114:-12 115:-9 118:-23 119:-13 121:16 122:19 123:-9 125:-12 126:28
press time	11:107 27:-9 30:-8 102:-10 106:-8
time $	4:-8 8:-9 9:-12 10:19 11:-11 14:-15 19:33 20:28 22:15 27:-8 28:39 29:28 30:40 32:-11 33:45 34:-13 59:-11 62:16 63:-9 64:-8 66:32 79:-15 84:-10 94:10 96:53 98:11 100:-8 101:-8 105:25 106:59 108:-8 110:-13 112:-9 116:-10 118:-17 122:-32
time of	19:-12 28:-9 33:57 122:11
anyth due	11:21
#n due	12:26 48:38
when is	9:23 11:45 13:-13 15:-9 26:76 27:-8 29:39 30:49 31:-10 32:66 48:-11 102:-9 110:-15 126:-25
recheck of	44:-8 46:67 90:-43 108:20 109:9 116:63 126:14
@job due	11:23 48:8
^ recheck	11:35 17:-8 29:-8 30:-10 46:151 56:49 76:-17 90:-44 116:70 126:-15
we look	11:52 116:-18
at job	11:17 13:-19 15:22 30:-10 34:-13 46:15 88:21 90:8 108:-11 126:66
recheck job	11:30 17:-16 46:58 90:-19 116:50 126:-12
#n again	11:8 13:25 16:21 30:-11 39:9 45:8 46:25 48:-9 79:24 103:-11 116:28
recheck the	46:22 90:-17 116:9
check @job	11:11 42:9 91:12
i look	13:-9 17:14 41:-8 46:13 90:-8 94:-8 116:18 126:33
#n have	2:-9 4:-8 16:-15 24:8 28:22 46:19 71:15 72:-13 73:-12 76:20 82:11 90:-10 91:18 92:15 126:9
)~",
R"~(press at	11:14 45:13 106:25
at the	2:-19 3:-9 5:12 9:10 10:-11 11:-20 12:82 13:9 14:-13 15:-12 17:-11 23:59 25:10 26:48 27:-16 28:-8 29:-11 30:-14 32:23 33:-9 34:-12 36:-13 40:-8 42:-20 43:9 44:12 45:-15 46:31 47:38 49:9 50:15 51:42 53:-12 56:-9 59:49 62:37 65:20 67:-15 71:-11 73:-11 76:9 77:30 78:10 79:-17 86:-13 88:-28 90:-10 92:-13 93:10 94:-18 98:-8 99:-8 101:-14 102:15 103:-27 104:29 107:-8 111:28 112:-14 113:-10 115:-9 116:25 117:-23 120:-9 126:-60
latest $	9:9 11:24
when has	29:-8 30:12
has @job	13:40 15:-9 24:20 28:-12 66:14 126:-13
@job have	4:11 5:-9 11:22 27:36 28:-14 30:-16 44:15 46:-9 72:11 75:23 91:8 96:15 98:24 116:-9
must the	11:41 30:-17
should job	16:12
press job	13:-15 15:-23 16:51 30:-9 34:26 44:-29 45:89 108:37 126:-15
i press	11:8 16:12 96:11 126:24
press @job	16:39
press the	16:15 34:8 44:-14 45:72 107:9
is job	3:-9 4:-8 11:26 13:116 15:76 16:76 17:-11 24:-28 28:43 30:57 31:-10 34:-8 39:19 44:-19 45:-26 48:-12 49:-9 65:-37 66:-16 88:-10 114:16 115:-17 126:-36
want $	4:13 9:57 10:-15 13:18 28:-8 33:-9 84:12 99:19 100:11 126:-9
promis==ed	1:-22 8:8 10:-27 11:151 13:30 15:-8 17:-9 22:-8 24:53 27:-10 29:-15 30:-39 31:-17 32:-8 33:33 48:129 49:-10 53:-11 117:19 119:68 120:-15 126:-45
promis	0:-8 1:-23 2:8 5:-8 8:11 10:-28 11:158 12:-8 13:20 15:-11 16:-11 17:-16 22:-11 23:-8 24:47 27:-17 28:-16 29:-22 30:-48 31:127 32:-11 33:35 34:-25 36:15 38:-9 44:-8 48:184 49:-13 51:-11 53:-15 66:-15 85:-9 92:-8 106:-9 109:-13 112:-8 116:-9 117:33 119:95 120:-17 122:-12
#n promis	11:26 30:-9
promis $	11:40 13:-14 31:56 48:20 66:-8 119:14 126:-9
which day	9:32 11:28 29:36 30:-19 31:18 48:-8
day is	11:36 13:-17 29:10 30:-17 31:-9 48:36 110:24 111:42 119:-15 126:-18
is @job	11:24 13:45 15:69 17:24 24:-13 25:-13 28:-9 30:13 31:-9 44:-22 48:-12 126:56
promis for	11:55 13:47 24:-9 27:-8 30:-33 48:29 118:12
@job promis	13:52 48:-8
date of	11:56 13:-10 48:-15 126:17
deadlin==e	11:75 36:-11 48:76 88:-8 95:-9 114:-10 126:-11
deadlin	11:75 36:-11 48:76 88:-8 95:-9 114:-10 126:-11
the deadlin	11:8 48:14
day of	8:-15 9:25 11:10 46:11 103:16 113:9 119:26 126:-21
deadline==s	11:133 29:-18 34:-11
deadline	11:133 29:-18 34:-11
the deadline	11:24
deadline on	11:29
deadline for	11:11 30:9
due in	10:36 32:52 50:-9 56:-8
^ job	1:-34 3:-25 5:26 6:-26 11:-9 12:34 13:152 14:-15 15:14 16:-39 17:-17 18:-16 25:12 27:-10 28:-13 30:-61 31:-16 34:-70 36:-9 38:-38 39:-19 41:-8 42:20 43:-13 44:96 45:38 46:-29 48:80 49:28 53:-14 56:-11 59:-11 62:-11 63:-10 65:68 66:21 70:-10 71:8 73:-10 75:91 76:15 77:24 78:-9 79:-28 80:-12 81:-16 82:-18 86:-8 88:19 90:9 91:34 92:58 94:94 95:50 96:13 97:8 98:25 99:-11 100:-15 103:-8 104:-8 105:-12 106:-15 107:-11 108:27 109:-27 112:-9 114:61 115:53 116:13 118:-8 119:-10 120:-9 122:-8 126:-68
bench==	0:-9 2:-14 4:-14 5:-28 6:38 7:-8 8:-13 9:-10 10:-8 11:-14 12:54 13:-51 14:61 15:132 16:-12 17:-19 18:-8 19:-10 22:-9 24:-17 25:-8 26:12 27:-20 28:-19 29:-10 30:-31 31:-10 32:-10 33:-16 34:-27 36:-15 39:-10 44:-19 46:-9 48:-11 49:-14 50:-19 53:-11 54:-13 56:-12 58:-14 59:87 61:12 62:148 63:14 64:-30 65:122 66:10 68:12 76:-9 78:19 82:-8 84:-8 90:-9 92:-11 95:-8 99:-20 100:80 101:74 102:40 104:132 105:-13 106:10 107:31 108:-17 109:-21 110:-11 111:-26 112:-12 113:-10 114:-17 115:-25 116:-14 117:-11 118:16 119:-9 123:-8 125:-8 126:-11
bench	0:-13 2:-15 4:-16 5:-31 6:34 7:-11 8:-20 9:-20 10:-15 11:-31 12:31 13:-56 14:38 15:120 16:-14 17:-22 18:-9 19:-13 20:-9 21:-9 22:-16 23:-14 24:-39 25:-13 26:151 27:13 28:-26 29:-31 30:-20 31:-15 32:-20 33:-27 34:-32 36:-23 37:-11 38:-13 39:-21 41:-9 44:-26 45:-9 46:-13 48:-15 49:-16 50:-29 53:-18 54:-22 55:-11 56:-23 57:-15 58:-20 59:93 62:155 64:-35 65:105 67:-8 68:11 71:-8 76:-11 77:-9 78:15 82:-12 84:-9 85:-11 87:-9 90:-13 92:-13 94:-10 95:-10 96:-8 98:-8 99:-42 100:244 101:78 102:146 103:91 104:147 105:-30 106:142 107:49 108:-21 109:-26 110:-12 111:-50 112:-22 113:-15 114:-21 115:-26 116:-19 117:-13 118:11 119:-14 120:-12 121:-9 122:-14 123:-14 125:-18 126:-48
bench ~	50:-17 59:25 62:11 65:17
job do	12:25
are open	12:14 13:12 14:-11 29:-19 53:31 54:-22 55:12 110:21 113:58 126:-26
open $	8:-18 9:-9 11:-8 12:61 13:30 14:-13 29:25 30:-8 32:-12 55:10 63:-35 64:-9 101:16 106:-10 110:46 113:9 126:27
me job	13:79 17:-11 34:-18
show queu	12:14
^ queu	12:84 49:-15 115:38
my job	12:47 13:-12 65:25 108:-8
^ my	3:15 10:-9 11:-20 12:59 13:20 14:-13 17:-10 23:31 26:-8 27:29 30:67 33:-8 34:62 39:-9 44:-9 48:-10 51:-11 53:-22 54:-9 55:-14 56:-8 58:17 59:20 65:12 66:-9 100:-17 103:-8 106:11 108:-8 109:22 111:40 112:64 113:-9 117:9 119:-11 125:12 126:-25
show my	12:12
neck==	0:-14 4:-11 8:-8 11:31 12:32 13:51 14:-11 15:-24 16:28 24:18 26:12 27:-8 30:-23 33:-9 34:-9 36:-14 37:-17 40:-13 46:-13 48:-10 65:-15 66:-11 73:-8 74:-14 86:25 88:48 92:-10 94:-11 95:257 96:16 100:15 105:12 108:-15 109:-14 114:-12 115:-8 116:-9 126:38
neck	0:-14 4:-11 8:-14 11:29 12:104 13:51 14:-16 15:-29 16:26 24:17 26:8 27:-21 30:-28 33:-13 34:-10 36:-15 37:-17 40:-13 45:-8 46:-13 48:-10 65:-15 66:-11 73:-8 74:-14 86:23 88:48 92:-10 94:-11 95:255 96:16 99:30 100:12 105:11 108:-15 109:-15 114:-13 115:-8 116:-9 126:32
my neck	11:39 12:42 13:59 23:-12 26:-8 30:-18 36:-11 95:-28 126:-9
neck $	1:8 12:42 13:57 23:-12 26:-9 30:-16 36:-10 37:-8 40:-10 74:-10 88:-8 95:64 96:26 105:15 125:8
are my	29:42 30:-10 36:27 126:-8
are mine	12:62 27:26 29:-9 30:-15
mine $	12:48 13:-27 15:52 17:-11 27:-8 30:-15 32:-8 54:-21 65:118 102:-8 106:41 113:-11 114:-9 126:20
show job	13:63
job of	4:9 12:26 31:10 49:11
@person	0:-18 1:-39 2:-19 3:-20 4:-20 5:-35 6:-9 7:-26 9:-28 11:-46 12:115 13:-58 14:29 15:52 16:-20 17:-49 18:-40 20:-24 21:-18 23:-17 24:-45 25:-20 27:61 28:-26 29:130 30:80 31:40 32:-12 34:78 35:-9 36:-13 38:15 40:-20 41:-43 42:14 43:-14 44:31 45:-22 46:-24 47:-11 48:-54 49:-42 50:-19 51:-21 52:-23 53:-70 54:-51 55:-47 59:-81 60:129 61:-21 62:212 63:164 64:176 65:158 66:25 67:16 71:-15 72:-18 73:-12 74:22 76:-38 77:-12 80:23 81:-12 82:-11 85:-18 86:-15 88:-26 89:10 90:-25 91:-38 92:9 93:12 94:-24 95:-14 96:-12 98:9 99:-34 102:-41 103:-9 105:-20 106:46 107:45 108:46 109:-47 110:168 111:130 112:116 113:-30 114:-32 115:-30 116:-34 118:-32 119:-32 120:-8 121:-20 122:-25 123:-8 126:116
of @person	27:10 29:14 30:8 53:-15 62:14 63:-17 64:10 65:16 110:27 126:-27
&@person	0:-18 1:-39 2:-19 3:-19 4:-20 5:-35 6:-8 7:-25 9:-28 11:-46 12:119 13:-57 14:30 15:11 16:-20 17:-49 18:-40 20:-23 21:-18 23:-17 24:-44 25:-19 27:58 28:-25 29:73 30:51 31:41 32:-12 34:82 35:-9 36:-13 38:15 40:-20 41:-43 42:14 43:-12 44:32 45:-22 46:-23 47:-11 48:-53 49:-40 50:-19 51:-21 52:-22 53:-70 54:-51 55:-47 59:-34 60:141 61:-13 62:204 63:203 64:182 65:127 66:52 67:16 71:-15 72:-18 73:-12 74:22 76:-38 77:-12 80:24 81:-12 82:-11 85:-17 86:-15 88:-26 89:10 90:-25 91:-38 92:9 93:12 94:-24 95:-13 96:-12 98:10 99:-33 101:11 102:-40 103:-9 105:-20 106:47 107:46 108:29 109:-46 110:182 111:130 112:126 113:-30 114:-32 115:-21 116:-34 118:-32 119:-32 120:-8 121:-20 122:-25 123:-8 126:79
@person $	12:58 13:-18 14:81 15:64 24:-9 27:-25 29:20 30:55 31:-14 34:-12 44:19 56:-8 59:15 60:77 61:11 62:-55 63:56 64:17 65:80 66:19 72:-8 91:-11 99:-11 100:-28 105:-12 107:-9 110:17 111:-42 112:-24 126:-11
@person job	12:50
show @person	27:26
^ @person	1:-11 2:-8 3:12 5:-17 8:-14 11:-15 12:-31 15:-52 16:20 19:18 20:-10 24:-10 25:8 27:-24 28:12 29:-64 30:-44 31:-27 33:14 34:-11 37:-17 38:-13 39:-12 40:-14 41:13 42:20 44:57 45:-12 48:-18 50:-11 51:-12 52:9 53:-39 54:-23 55:-15 56:-18 58:-10 59:-23 60:50 61:-10 62:36 63:44 64:80 66:-10 69:29 70:-21 73:-8 74:9 76:-11 78:-16 80:30 88:-16 91:-10 92:14 93:24 96:11 97:9 98:20 100:-13 103:-8 105:-12 106:10 107:20 108:71 109:-17 110:116 111:114 112:121 114:-17 115:-8 116:-17 119:-28 122:-14 125:-11 126:25
job doe	12:-8 14:16 29:-8 30:15
doe @person	12:58 14:-8 29:96 63:-10 110:-10 112:-9 126:-15
job has	12:10 14:32 30:-10
has @person	8:15 10:-10 12:28 15:-9 24:32 27:48 29:-19 30:45 32:26 34:14 63:-9 65:-18 66:-8 108:-40 111:-8 126:23
@person have	12:57 29:-12 30:26 31:18 126:-17
on ~	36:13
~ bench	12:15 50:-12 59:25 65:27
)~",
R"~(bench $	0:-9 4:-10 5:-9 9:-8 10:-9 11:-15 12:41 13:-14 14:39 17:-10 26:56 27:14 28:-11 29:-19 32:-8 33:-11 34:-15 36:-12 44:-10 58:-8 59:60 62:76 63:-8 64:-13 65:94 78:20 88:10 100:8 101:64 102:-16 103:-10 104:114 105:-10 106:20 107:22 108:-9 109:-10 126:-52
the ~	12:10 16:16 59:11 65:13
job at	12:23 14:-8 24:13
at ~	11:-15 33:-8 57:86 58:-10 62:9 122:21
are on	27:16 40:22 80:-17 97:8
are at	25:16 67:8
how about	8:-20 9:58 13:26 26:30 33:-19
about @job	13:9 15:11 25:16 126:-9
about job	13:73 17:12 34:-10 114:8 126:-18
about the	0:25 2:19 4:-14 8:23 9:25 13:12 15:-8 19:11 22:-18 23:17 26:81 33:-32 34:62 36:10 39:-13 99:10 104:-16 117:11
far==	2:-22 4:23 5:12 8:-16 9:27 11:-8 12:8 13:80 15:-11 16:44 18:16 19:27 22:-9 25:23 26:-10 28:51 30:-17 32:-19 33:-12 36:-16 37:-10 39:-8 42:-12 45:23 46:-8 47:25 49:-9 69:-10 73:8 76:-8 84:-10 92:-8 93:17 103:8 107:22 108:-13 109:-9 113:-9 117:-8 118:9 123:8 126:46
far	2:-22 4:23 5:12 8:-16 9:27 11:-8 12:8 13:80 15:-11 16:44 18:16 19:27 22:-9 25:23 26:-10 28:51 30:-17 32:-19 33:-12 36:-16 37:-10 39:-8 42:-12 45:23 46:-8 47:25 49:-9 69:-10 73:8 76:-8 84:-10 92:-8 93:17 103:8 107:22 108:-13 109:-9 113:-9 117:-8 118:9 123:8 126:46
how far	2:-20 4:25 5:16 8:-12 9:30 13:75 15:-9 16:34 17:-12 18:18 21:-10 25:26 28:55 30:-9 32:-12 33:-10 34:-10 36:-12 42:-11 93:19 108:-10 126:-10
far are	28:12
we with	13:63 16:-8 21:9 28:18 108:-8
with @job	11:-21 13:47 15:-12 16:-10 30:23 38:18 44:16 55:8 108:-8 114:49 126:-23
wher are	1:-9 4:26 13:71 17:-8 108:-9
with job	13:17 15:-9 16:-13 17:-9 30:17 38:69 44:-8 70:-10 106:8 108:65 114:13 126:-17
stat==e	2:-12 5:10 13:93 22:11 26:102 29:9 84:17 102:-10 103:-9 126:-10
stat	2:-12 5:10 13:93 22:11 26:102 29:9 84:17 102:-10 103:-9 126:-10
^ stat	13:34 26:41 84:18
stat of	13:79 26:41 126:-8
status==	13:174 26:82 102:-14 103:-8 126:-14
status	13:174 26:82 102:-14 103:-8 126:-14
^ status	13:83 26:22
status of	13:88
the stat	13:44
slot is	0:-13 1:9 12:-14 13:40 42:-8 78:17 92:51 105:20 126:23
is open	12:44 13:17 15:-11 29:-38 30:-9 53:19 54:-15 110:37 113:9 126:31
fret is	3:-8 13:33 42:34 43:-15 46:11 79:10 82:18 94:15 105:14
to make	2:8 13:31 42:-10 79:30 103:12
make $	13:28
is still	0:16 8:13 10:-10 12:13 17:-14 23:-8 28:57 30:-10 32:55 33:-10 45:-12 46:64 87:-21 88:54 120:16 125:-19
still to	10:-10 13:-32 17:29 28:50 30:-10 32:43 45:-12 120:17 126:17
fret are	0:45 12:-9 13:10 17:45 22:41 28:-17 44:54 73:-10 74:13 126:-16
miss==ing	13:82 17:-19 30:-8 78:25 111:28 126:-25
miss	11:26 13:81 17:-19 30:-9 64:9 70:33 78:23 103:15 111:28 126:-43
is miss	13:25
@job are	2:-8 13:10 44:19 72:42 73:22 75:9 84:-8 85:9 92:13 94:12 126:-17
make for	5:22
left to	5:-26 6:-12 13:96 17:19 28:-10 30:-9
left left	13:15 28:-8
slot are	4:-20 18:34 28:15 44:50 75:24 108:13 126:-23
are still	2:12 3:10 12:24 17:25 32:29 42:-8
still left	13:8
which is	17:-10 30:-9 31:10 51:9 56:12 62:13 68:-10 69:10 70:-8 72:14 97:11 116:12
all done	13:20
done $	4:-11 11:-16 12:13 15:19 17:-10 28:10 30:30 31:29 32:-8 34:-9 44:33 45:17 46:12 49:-13 53:-15 55:17 65:-11 66:-9 72:11 76:27 87:-21 96:-9 97:8 104:-13 109:49 114:-18 115:53 116:-11 126:45
@job cut	5:10 6:23 13:13 126:-9
yet==	0:-11 9:19 13:78 15:48 16:79 17:43 19:-9 22:-8 24:-10 32:32 34:-18 39:-9 40:16 44:-20 45:-16 50:9 73:-17 80:-11 88:12 90:-15 91:-11 95:-17 98:-12 103:-12 109:18 111:-13 118:-28 126:86
yet	0:-11 9:19 13:78 15:48 16:79 17:43 19:-9 22:-8 24:-10 32:32 34:-18 39:-9 40:16 44:-20 45:-16 50:9 73:-17 80:-11 88:12 90:-15 91:-11 95:-17 98:-12 103:-12 109:18 111:-13 118:-28 126:86
yet $	9:-9 13:73 15:38 16:79 17:32 19:-9 32:30 34:-17 40:19 44:-15 45:-16 80:-18 88:13 90:-15 95:-17 103:-11 109:20 111:-13 118:-27 126:47
all cut	13:15 44:21
cut yet	13:17
done yet	13:22 15:-9 109:14 126:-19
#n press	13:44 15:-11 16:73 26:36 34:-21 45:31 100:53 102:-12 126:-60
#n cut	5:47 6:12 71:-26 126:36
person==s	14:134 34:10 59:-8 63:9 64:-10
person	0:-8 11:-9 12:-18 13:-27 14:104 15:80 17:-10 23:-12 24:-9 26:-18 28:-8 29:29 30:28 31:-10 33:-11 39:-10 48:-15 49:-26 50:-9 56:-17 58:-11 59:109 60:52 61:-17 62:85 63:103 64:74 65:-12 66:82 87:-8 88:-9 99:-23 100:-17 101:-17 103:-10 104:-14 105:-8 108:11 109:-12 110:15 111:-11 114:-11 115:-18 121:-11 125:-10 126:-27
^ person	14:96 59:-27 60:36 61:-31 62:73 63:63 64:20 100:-10 126:-17
person $	12:-14 14:107 23:-8 29:-8 34:9 48:-10 61:10 62:25 63:36 64:51 66:53 111:-8 126:-21
who is	1:-22 11:-8 13:-11 14:49 15:64 17:30 23:-8 24:40 26:93 27:16 29:104 30:16 32:-16 33:-18 34:-9 39:-10 41:-9 59:-9 65:-11 102:-12 104:-15 111:-8 126:12
work==s	12:-13 13:-8 14:43 15:36 26:-16 27:-12 29:24 30:-11 33:-8 34:-36 36:22 53:-9 54:-9 55:13 59:43 62:42 63:-31 64:34 65:-12 100:-10 102:-8 103:47 104:-10 106:-8 110:95 111:-27 112:39 121:21 122:-14 126:9
who work	14:39 15:19 27:-9 29:42 34:-10 63:21
work here	14:73 29:-53 36:-8 59:44 62:-11 63:88 64:61 109:-12 110:-28 112:-9 126:-16
here $	9:-19 12:-8 13:-10 14:53 22:-10 23:46 24:-10 28:20 29:-33 30:-12 32:42 33:-9 34:-9 36:26 51:25 59:26 62:27 63:38 64:-9 66:-10 78:-23 87:11 100:-10 102:11 107:-8 109:-8 110:-15 117:-8 118:116 119:-33 120:-13
shop $	10:-10 14:38 22:-10 23:-10 26:50 29:-29 30:78 32:-12 49:22 52:-23 54:-9 59:29 62:-10 63:49 64:68 101:19 104:-10 126:-25
who all	14:43
all is	14:22 24:16 102:-12 126:11
is here	14:-17 29:28 32:-14 51:43 67:-13 102:26 110:67 111:-21 118:62 119:-9 120:-13 126:-9
peopl==e	8:-14 9:-9 11:-8 12:-31 14:165 17:-14 24:-8 25:13 26:-20 29:28 32:-9 35:8 36:-12 43:-9 59:14 62:-8 63:49 64:37 80:-14 93:12 104:-8 112:-11 122:8 126:26
peopl	8:-14 9:-9 11:-8 12:-31 14:165 17:-14 24:-8 25:13 26:-20 29:28 32:-9 35:8 36:-12 43:-9 59:14 62:-8 63:49 64:37 80:-14 93:12 104:-8 112:-11 122:8 126:26
the peopl	12:-19 14:42 29:37 30:-12 63:15 126:-9
peopl $	12:-19 14:118 64:40 110:8 112:-10 126:-18
show peopl	14:13
the person	14:20 15:68 20:10 49:-18 61:13 63:21 64:-18 66:30 126:-17
retir==ed	12:-11 14:139 15:-8 26:-14 27:-11 29:-10 32:-9 33:-8 59:-8 62:-21 63:54 64:75 87:16 111:-8 126:-10
who has	14:15 15:28 24:47 26:13 27:68 29:12 30:-10 33:-8 34:-45 63:-10 64:12 66:14 114:-8 126:-19
retir	12:-15 14:122 15:-9 24:-8 26:-16 27:-13 29:-14 30:-9 32:-10 33:-10 50:8 56:-8 59:-12 60:-11 62:-42 63:174 64:83 65:-12 87:47 110:-13 111:-20 112:-19 126:32
has retir	14:22 63:41 64:-21
retir $	14:52 27:-8 62:-14 63:62 64:25 87:16 126:-8
whos==e	1:8 10:9 12:38 13:-24 15:221 17:-10 24:25 33:-8 51:8 126:-17
whos	1:8 10:9 12:38 13:-24 15:221 17:-10 24:25 33:-8 51:8 126:-17
^ whos	12:24 13:-14 15:124 126:-9
whos $	15:109 24:21
whos job	13:-10 15:49 24:9
whos is	15:31
who doe	14:-11 15:40 27:-8 29:-23 30:90 33:-8 34:-33 66:-9
build==s	15:9 50:-10 57:11 65:17 100:20 126:-9
build	15:15 34:-8 50:-10 57:11 62:16 65:17 100:17 126:-9
build the	15:11
doing==	8:13 10:9 11:-13 12:-10 13:21 15:37 17:-8 26:-11 27:-10 28:17 29:-21 30:81 31:29 33:12 34:-19 48:-12 49:43 53:8 65:53 66:18 109:-8 110:9 111:-11 113:-10 114:8 126:-63
doing	8:13 10:9 11:-13 12:-10 13:21 15:37 17:-8 26:-11 27:-10 28:17 29:-21 30:81 31:29 33:12 34:-19 48:-12 49:43 53:8 65:53 66:18 109:-8 110:9 111:-11 113:-10 114:8 126:-63
is doing	15:26 29:-8 30:36 34:-8 65:30 110:11 126:-14
doing job	15:12
has job	13:-11 15:69 17:12 27:8 66:10 126:-14
doing @job	31:20 48:-9 66:16 126:-14
with $	0:13 15:21
what bench	13:-22 15:82 34:-8
bench has	13:-9 15:42 100:36 126:-9
bench doe	15:48
has the	8:-14 9:-11 14:-21 15:47 19:23 21:30 22:-10 24:10 26:11 27:19 32:64 33:31 34:-21 41:11 44:8 53:-10 66:8 88:-8 92:21 103:-15 106:26 107:-10 110:10 111:8 112:-8 114:54 118:-11 126:-68
which bench	12:-8 13:-17 14:84 15:69 30:-8 65:-14
bar==	0:-8 1:-14 2:-20 4:-15 9:-13 13:-9 14:-13 15:-14 16:165 17:-16 22:-8 23:-9 26:-10 28:-10 29:-15 30:-10 31:-9 36:10 39:-9 40:-10 43:-19 45:111 47:-19 50:-14 55:-8 56:-18 58:-23 76:-12 81:-13 86:224 87:253 88:12 91:-8 92:-9 98:-16 100:-11 101:-28 102:-16 103:-9 109:-8 123:-13 125:-8 126:82
load==	0:-21 2:-17 4:-16 5:-14 8:-20 9:-10 13:-8 16:163 17:-12 19:-15 24:-12 25:147 26:-8 42:-12 45:63 56:30 76:-11 88:24 101:-8 115:22 126:-26
favour==	13:-11 16:59 17:-9 85:29 114:10
)~",
R"~(bar	1:-14 2:-13 5:-8 9:-13 11:-8 13:-10 14:-15 15:-14 16:157 17:-16 22:-9 23:-10 26:-14 28:-17 29:-15 30:-12 31:-10 33:-9 39:-9 40:-10 43:-19 45:108 47:-19 50:-14 55:-8 56:-19 58:-28 72:-8 76:-12 81:-13 86:222 87:332 88:11 91:-8 92:-9 98:-16 100:-13 101:-37 102:-20 103:-12 104:-9 107:-8 109:-9 123:-16 125:-9 126:65
press bar	45:-8 86:22 87:48 99:-10 126:-11
bar ~	2:-8 16:40 45:8 86:16 87:47 126:-8
#n bar	16:15
load	0:-25 2:-17 4:-19 5:-14 8:-22 9:-11 13:-9 14:-8 16:159 17:-14 19:-15 24:-12 25:149 26:-38 28:-9 30:78 33:-8 34:20 42:-13 45:60 56:54 76:-14 88:24 101:-9 108:-8 115:21 126:-29
#n load	45:23
load #c	16:-22 42:-11 45:58 76:-8
#c slot	45:15
~ bar	16:19
favour	13:-11 16:59 17:-9 85:29 114:10
favour trebl	16:19
trebl job	46:9
@job load	16:-14 45:23
pound	16:55 28:-11 45:50 56:21 83:-10 86:29 87:-9 98:-9 126:-13
#c pound	16:23 45:54 83:-10 86:29 87:-9 98:-9 126:-13
pound slot	45:9
#c job	16:-9 73:25
lb	5:-19 16:66 45:55 56:113 61:-13 76:-9 81:-9 86:42 100:-13 103:-8 126:17
#c lb	5:-19 16:67 45:55 56:94 61:-13 76:-9 81:-9 86:42 103:-8 126:23
lb job	45:8
pound $	16:14 86:25 87:-8
crown==	0:-8 1:-11 2:-9 3:-8 7:-9 8:18 13:-8 16:51 17:-10 18:-14 19:70 26:-9 28:34 40:-40 42:-11 43:-8 44:-15 45:-12 46:-8 50:140 51:55 52:-11 57:-8 59:-22 67:-26 69:-10 70:-33 72:-9 75:-14 76:-8 77:-14 79:-8 81:-11 82:-14 89:142 90:-14 91:143 92:42 94:-9 96:-14 98:-9 99:-10 100:-8 104:21 105:36 109:-9 117:-22 120:12 121:-26 126:-12
wide==	0:-11 2:-15 3:-13 4:-44 7:-9 8:33 9:-19 13:-9 16:25 18:48 19:-10 40:-17 42:-31 44:-12 45:-10 50:41 51:-8 56:8 70:-8 75:72 77:87 78:-9 81:-16 86:73 88:-14 89:36 92:31 93:-12 121:-8 126:109
with #c	16:18 40:10 98:13 105:8
with a	0:-12 3:-13 5:10 7:8 17:-10 18:17 37:15 41:17 47:9 50:10 61:8 63:23 66:12 68:14 71:-11 75:11 88:18 96:29 97:9 98:8 103:11 104:10 126:-24
crown	0:-11 1:-16 2:-13 3:-10 4:-14 7:-11 8:14 9:-10 12:-8 13:-22 14:-11 15:-9 16:38 17:-17 18:-16 19:101 20:-8 24:-9 25:-9 26:-15 28:85 30:-8 32:-8 33:-17 34:-17 37:-9 38:-11 39:-16 40:-43 42:-16 43:-13 44:147 45:-18 46:-15 48:-8 49:-11 50:136 51:52 52:-13 56:-15 57:-9 59:-37 63:-10 65:-14 66:-11 67:-27 68:-8 69:-11 70:-38 74:39 75:-16 76:-10 77:-16 78:-10 79:-10 81:-13 84:-8 86:-10 87:9 88:-12 89:131 90:-22 91:169 92:25 93:-11 94:-13 96:-20 98:-14 100:-39 101:-8 104:63 105:96 106:-8 108:47 109:25 114:-15 115:-27 116:-13 117:-24 118:39 120:9 121:-28 126:-26
a crown	89:10 126:23
crown #d	16:8 40:-15 50:59 51:24 56:-13 89:15
wide	0:-11 2:-15 3:-13 4:-44 7:-9 8:33 9:-19 13:-9 16:25 18:48 19:-10 40:-17 42:-31 44:-12 45:-10 50:41 51:-8 56:8 70:-8 75:72 77:87 78:-9 81:-16 86:73 88:-14 89:36 92:31 93:-12 121:-8 126:109
#d wide	16:9 18:24 42:-11 50:33 75:42 77:58 88:-8
&#c#d#n	3:-8 42:37 70:17 81:-10 121:11
wide $	4:-12 16:33 18:45 42:-11 44:-8 47:-10 50:-12 75:70 77:29 86:21 89:43 92:22 126:-19
@job a	18:9 114:9
crown #n	16:12 28:8 44:89 50:12 105:-11
mm wide	7:-8 16:21 18:10 40:-8 47:-10 56:12 75:11 77:28 81:-9 86:24 89:22 93:-8
&#c#n	5:16 16:46 45:76 56:-31 59:9 60:47 61:-20 66:-8 70:10 74:12 76:-19 81:10 83:8 86:16 98:-9 118:44 120:-9 122:-8 126:71
the bar	1:-8 16:25 45:-11 87:87 88:12 126:-21
~ at	16:11 45:-11 56:-13 57:86 58:-10 122:-8
at #c	16:75 45:23 47:-8 51:8 52:8 56:-17 67:13 68:11 69:10 70:-15 88:24 108:-9 117:20 126:17
&#c@job	16:16 73:11 74:28 88:20
lb $	5:-16 16:62 45:26 56:49 81:-9 86:29
in wide	77:9
&#c#d@job	48:13
under==	0:-18 3:-12 4:-22 9:22 11:16 13:-27 17:-28 24:30 28:-8 30:-18 32:9 33:-9 34:-11 37:-14 42:-29 43:-8 44:-10 45:56 46:-20 48:-8 49:-9 51:-12 52:78 57:10 60:13 61:-8 62:-9 63:8 66:-13 67:-12 70:17 72:-11 73:-9 76:-18 78:-11 79:-12 83:-11 87:-17 88:107 90:41 91:171 92:72 93:56 94:-27 96:19 97:49 98:-17 99:-12 100:-15 102:-12 103:-8 104:29 107:-10 108:-12 114:-16 115:-15 116:-14 122:30 123:-14
press fret	16:33 45:-15 46:18 56:14 126:17
fret slot	0:-21 3:-9 4:-12 16:28 43:11 46:12 72:-15 78:8 79:44
under	0:-18 3:-12 4:-22 9:22 11:16 13:-27 17:-28 24:30 28:-8 30:-18 32:9 33:-9 34:-11 37:-14 42:-29 43:-8 44:-10 45:56 46:-20 48:-8 49:-9 51:-12 52:78 57:10 60:13 61:-8 62:-9 63:8 66:-13 67:-12 70:17 72:-11 73:-9 76:-18 78:-11 79:-12 83:-11 87:-17 88:107 90:41 91:171 92:72 93:56 94:-27 96:19 97:49 98:-17 99:-12 100:-15 102:-12 103:-8 104:29 107:-10 108:-12 114:-16 115:-15 116:-14 122:30 123:-14
#n under	41:-11 70:10 90:-8 91:47
again under	45:14
&#c#n#r	16:-8 45:29 126:-17
~ with	57:26 58:-9 117:10
@job at	3:37 13:16 16:19 17:28 25:-9 43:-17 44:-20 45:-22 77:12 97:8 108:30 109:45 116:-14 126:-8
again with	7:12 16:8 82:-8
with crown	118:9
#c $	3:-10 5:52 11:-8 12:19 14:-8 16:-11 20:55 21:25 22:-8 34:-12 42:12 45:48 48:9 51:-17 59:67 60:8 61:25 67:22 69:-8 74:20 86:11 88:-14 98:9 108:-9 117:-8 118:17 121:-14 122:9 126:16
&#c#n@job	5:18 16:-26 45:24 83:-11 88:45 98:12 108:-12 126:35
pass==	3:95 4:-15 13:-17 16:107 17:-18 30:-11 36:-10 42:-19 43:-9 44:-10 45:109 65:11 87:-15 126:43
pass	3:94 4:-21 6:-12 13:-22 16:253 17:-20 28:-15 30:-12 36:-11 42:-19 43:-9 44:-17 45:106 46:17 65:10 84:-17 85:-14 87:-16 96:-8 108:-9 116:-11 126:52
next pass	13:-14 16:98 17:-16 30:-10 45:110 126:-17
pass of	16:12 45:52 126:-9
^ next	13:-15 16:49 17:26 29:-22 30:31 45:37 53:-14 55:25 110:-13 111:-11 112:29 113:30 116:13 126:-23
a bar	87:-18 88:14 126:56
#c with	60:21 61:-9
@job again	5:-9 11:32 46:9 73:16 79:15 96:-9 108:28
&#c#r@job	16:8
what load	0:-14 4:-8 8:-11 16:65 25:59 34:13
load is	16:14 26:-30 30:70
is too	0:-12 3:-25 4:15 7:17 22:21 41:10 43:53 52:8 78:-10 92:51 93:9 120:8 126:-21
too much	5:8 16:10 43:25 56:13 66:10
which load	16:10 25:27 34:15
would be	1:12 5:10 18:-18 27:9 38:-9 65:13 72:-38 73:-24 75:-14 93:-11 95:10 126:173
be too	0:44 18:-11 126:-13
safe==	3:48 23:108 26:-14 36:-12 126:-15
safe	3:48 23:108 26:-14 36:-12 126:-15
is right	63:17 76:10 78:-18 126:34
is enough	74:-11 126:12
much load	16:14
be right	3:14
is next	5:9 8:-8 11:17 12:-9 13:93 17:-50 27:-9 30:-14 31:12 48:25 114:45 119:-8
pass $	3:44 16:91 30:-8 45:-30 126:9
are next	44:17
next for	12:-8 13:-8 16:31 17:-13 27:-12 28:22 30:65
press next	16:35 27:8 102:-21 106:27 107:12 126:-15
next on	1:-8 11:-15 13:101 17:15 28:15 30:-8 45:-8 126:-8
fret come	16:11 25:10
come next	13:-14 17:-12 26:-8 28:44 30:52 111:10 117:11 118:-14 119:14 126:-8
did==	0:-19 1:-30 2:-28 3:-8 4:-13 5:-19 6:-10 8:-17 9:-35 10:-18 11:13 12:-11 13:40 14:-9 15:10 16:43 17:44 18:-11 19:152 20:55 21:101 23:-18 24:52 25:44 26:-10 27:94 28:-14 29:-11 30:-36 31:-39 32:93 33:-22 34:127 35:70 36:-32 38:-20 39:-30 41:-26 43:-9 44:23 45:21 48:-28 49:-17 51:-16 63:-13 64:18 65:9 66:-9 67:-14 72:-21 73:-11 76:-9 78:-9 79:22 80:-10 81:12 84:-31 85:-10 88:-12 90:-29 91:-16 94:12 96:10 106:-8 107:-14 108:-25 109:-17 111:-12 112:-8 114:-9 115:-9 116:-9 117:-10 118:-23 119:-12 124:36 125:22
stop==	1:-8 11:-9 13:-14 16:9 24:-26 32:-9 34:-9 37:-12 38:-12 39:71 41:-8 44:-11 58:94 85:49 108:-23 109:78 120:31 125:-8 126:41
did	0:-19 1:-30 2:-28 3:-8 4:-13 5:-19 6:-10 8:-17 9:-35 10:-18 11:13 12:-11 13:40 14:-9 15:10 16:43 17:44 18:-11 19:152 20:55 21:101 23:-18 24:52 25:44 26:-10 27:94 28:-14 29:-11 30:-36 31:-39 32:93 33:-22 34:127 35:70 36:-32 38:-20 39:-30 41:-26 43:-9 44:23 45:21 48:-28 49:-17 51:-16 63:-13 64:18 65:9 66:-9 67:-14 72:-21 73:-11 76:-9 78:-9 79:22 80:-10 81:12 84:-31 85:-10 88:-12 90:-29 91:-16 94:12 96:10 106:-8 107:-14 108:-25 109:-17 111:-12 112:-8 114:-9 115:-9 116:-9 117:-10 118:-23 119:-12 124:36 125:22
wher did	1:-45 13:25 16:21 19:16 20:60 33:-14 34:24 109:-8 126:27
did we	1:-8 5:-25 9:-22 11:30 15:26 16:64 17:-10 19:44 21:50 24:24 25:-9 30:-10 31:-31 32:69 33:-30 34:51 37:-15 41:-19 48:-23 65:-9 68:-11 84:-11 126:14
stop	1:-13 5:-10 6:-11 11:-11 12:-8 13:-24 15:-8 16:29 17:-9 24:-30 26:-9 29:-11 32:-12 33:-13 34:-15 37:-15 38:-16 39:65 40:-10 44:-47 49:-8 56:-9 58:91 63:37 65:-15 78:14 85:48 86:9 94:39 102:13 103:9 104:-10 108:-50 109:289 110:8 111:-8 112:-25 114:-8 115:-13 116:-11 118:-8 120:29 123:23 125:-11 126:43
we stop	16:16
stop press	16:14
stop==ped	13:-9 16:20 29:-8 40:-10 41:12 44:-22 63:41 65:-10 78:17 86:9 102:15 103:12 105:8 108:-23 109:181 112:-19 115:-9 122:9 123:25 126:-11
)~",
R"~(did i	13:-12 16:33 19:-11 23:-10 24:28 27:17 30:-8 33:23 34:29 36:-14 84:-16 125:-10 126:27
i stop	16:20 109:38 112:-15 126:19
stop of	16:14
were==	0:-18 1:33 2:-15 3:20 4:-8 8:-10 13:-8 16:-12 17:-26 19:45 21:13 30:-11 31:-9 34:75 35:15 37:-17 40:-10 43:-12 46:8 51:26 54:-10 68:9 70:8 71:-15 72:10 73:11 76:15 80:10 82:13 83:16 90:-9 91:-13 92:-9 98:22 102:-10 111:-18 112:-8 118:24 126:94
were	0:-18 1:33 2:-15 3:20 4:-8 8:-10 13:-8 16:-12 17:-26 19:45 21:13 30:-11 31:-9 34:75 35:15 37:-17 40:-10 43:-12 46:8 51:26 54:-10 68:9 70:8 71:-15 72:10 73:11 76:15 80:10 82:13 83:16 90:-9 91:-13 92:-9 98:22 102:-10 111:-18 112:-8 118:24 126:94
were i	126:9
press with	16:-22 23:10 45:19 87:30 126:-10
was==	0:-28 2:-17 3:-35 4:-26 5:-25 6:-8 7:-10 8:-19 9:-27 10:-14 11:-30 12:-16 13:53 14:-14 16:-49 17:-37 18:-8 19:81 20:21 21:47 22:-30 23:-11 24:-17 25:12 26:30 28:-24 29:-8 30:-26 31:-20 32:-17 34:76 35:29 36:-15 37:-11 38:-37 39:35 40:12 41:23 42:-23 44:31 47:-14 48:-27 49:-10 51:25 52:-10 53:-18 54:-23 55:-22 56:11 58:-12 60:-8 61:20 65:-9 66:-13 67:-31 68:-13 70:48 71:-8 72:30 73:-9 74:13 78:16 79:54 80:-14 81:10 82:-11 84:-26 85:17 86:14 88:18 91:-12 92:41 93:26 94:-24 96:33 98:44 99:-13 100:-18 101:11 102:-37 103:39 104:-20 105:79 106:-12 107:-8 108:-35 110:-28 111:-27 112:-17 113:35 114:-16 115:-8 116:-13 118:38 119:17 120:-15 121:-8 123:14 124:27 125:81 126:78
off==	2:-11 3:-41 4:-34 5:24 6:-19 8:-14 9:-19 10:-20 11:-24 12:-19 13:-27 14:-33 15:-29 17:64 18:-21 20:-18 21:-8 22:-18 23:-12 25:30 26:-38 27:-42 28:-20 29:10 30:-51 31:-23 32:-22 33:-25 34:-38 36:-26 37:-29 39:28 41:43 43:14 44:35 45:-18 46:-22 48:14 49:114 50:-9 51:-16 52:-16 53:-16 54:15 55:-11 56:-14 58:54 59:-17 60:-35 61:25 62:-23 63:10 64:-32 65:-53 66:44 67:-10 68:8 70:53 71:32 72:70 73:40 75:-13 76:-25 77:-10 78:33 79:-16 80:-10 81:10 82:-18 83:-11 84:-21 85:47 86:-9 87:22 88:71 89:-13 90:-22 91:-8 92:-21 93:-12 94:-8 95:-14 96:-16 97:-11 98:18 99:-15 100:-20 101:65 102:52 104:-14 105:-14 106:-14 107:77 108:-35 109:126 110:-15 111:127 112:37 113:24 114:-27 117:29 118:-27 119:-17 120:88 121:-9 122:-12 123:36 125:-23
was	0:-28 2:-17 3:-35 4:-26 5:-25 6:-8 7:-10 8:-19 9:-27 10:-14 11:-30 12:-16 13:53 14:-14 16:-49 17:-37 18:-8 19:81 20:21 21:47 22:-30 23:-11 24:-17 25:12 26:30 28:-24 29:-8 30:-26 31:-20 32:-17 34:76 35:29 36:-15 37:-11 38:-37 39:35 40:12 41:23 42:-23 44:31 47:-14 48:-27 49:-10 51:25 52:-10 53:-18 54:-23 55:-22 56:11 58:-12 60:-8 61:20 65:-9 66:-13 67:-31 68:-13 70:48 71:-8 72:30 73:-9 74:13 78:16 79:54 80:-14 81:10 82:-11 84:-26 85:17 86:14 88:18 91:-12 92:41 93:26 94:-24 96:33 98:44 99:-13 100:-18 101:11 102:-37 103:39 104:-20 105:79 106:-12 107:-8 108:-35 110:-28 111:-27 112:-17 113:35 114:-16 115:-8 116:-13 118:38 119:17 120:-15 121:-8 123:14 124:27 125:81 126:78
we left	5:11 8:-13 9:20 46:16
off	2:-11 3:-41 4:-34 5:24 6:-19 8:-14 9:-19 10:-20 11:-24 12:-19 13:-27 14:-33 15:-29 17:64 18:-21 20:-18 21:-8 22:-18 23:-12 25:30 26:-38 27:-42 28:-20 29:10 30:-51 31:-23 32:-22 33:-25 34:-38 36:-26 37:-29 39:28 41:43 43:14 44:35 45:-18 46:-22 48:14 49:114 50:-9 51:-16 52:-16 53:-16 54:15 55:-11 56:-14 58:54 59:-17 60:-35 61:25 62:-23 63:10 64:-32 65:-53 66:44 67:-10 68:8 70:53 71:32 72:70 73:40 75:-13 76:-25 77:-10 78:33 79:-16 80:-10 81:10 82:-18 83:-11 84:-21 85:47 86:-9 87:22 88:71 89:-13 90:-22 91:-8 92:-21 93:-12 94:-8 95:-14 96:-16 97:-11 98:18 99:-15 100:-20 101:65 102:52 104:-14 105:-14 106:-14 107:77 108:-35 109:126 110:-15 111:127 112:37 113:24 114:-27 117:29 118:-27 119:-17 120:88 121:-9 122:-12 123:36 125:-23
left off	108:12 109:8
wher am	16:8
stop with	16:8 108:-13 109:18
far did	13:8 16:22
i get	0:13 1:-11 3:-10 7:10 9:-9 13:-9 16:23 33:49 38:21 42:10 46:9 70:-10 82:-10 89:16 90:10 93:22 106:39 126:-29
get $	5:18 13:16 98:12
get on	13:29
press slot	27:30 30:-10 103:-8 107:36
again at	79:27 116:12
#o again	79:13
under the	2:-8 11:24 16:23 17:-8 30:-15 42:-24 45:64 57:11 70:29 80:8 82:9 87:-11 88:40 90:-14 91:21 92:-15 93:47 94:-11 95:8 96:-13 102:-9 104:30 107:-8 116:-9 126:20
bar $	16:48 36:12 45:58 59:10 86:27 101:-8 126:-23
bar of	86:-13 126:16
took==	2:18 7:14 10:-9 15:43 16:-19 17:-11 18:-9 21:-8 33:9 37:57 38:-16 40:-12 41:-8 42:-18 43:-8 44:56 46:-8 49:16 51:31 56:-22 67:26 68:10 72:48 78:-8 79:-11 82:-27 83:121 88:41 90:-8 95:19 96:12 98:23 100:-15 101:-8 105:-26 108:-11 109:-12 117:-26 118:-11 119:-10 120:21 122:-31 126:62
took	2:18 7:14 10:-9 15:43 16:-19 17:-11 18:-9 21:-8 33:9 37:57 38:-16 40:-12 41:-8 42:-18 43:-8 44:56 46:-8 49:16 51:31 56:-22 67:26 68:10 72:48 78:-8 79:-11 82:-27 83:121 88:41 90:-8 95:19 96:12 98:23 100:-15 101:-8 105:-26 108:-11 109:-12 117:-26 118:-11 119:-10 120:21 122:-31 126:62
i took	2:-12 37:39 42:-12 72:32 73:17 82:-22 83:54 88:23 98:15 126:-48
took the	2:-12 37:9 44:29 68:13 72:-9 73:17 88:10 95:26 98:-27 126:-20
press to	56:-13 100:67
to #c	16:8 42:33 45:70 52:27 61:-9 68:24 86:8 93:-9 126:-14
up with	53:23 78:22 112:-10
i go	0:14 16:19 38:-9 45:-8 84:11 112:9
up at	23:8 43:17 101:-8 103:18
went==	0:-17 1:-8 2:-12 3:-21 8:-17 10:-8 15:17 18:-11 20:50 21:-14 22:-11 29:-10 30:-13 34:57 36:-9 37:21 38:-13 40:-9 41:23 43:11 44:10 45:22 51:-11 61:10 62:-15 66:-9 67:30 71:12 72:27 73:-13 76:51 79:13 80:16 81:8 82:-18 83:30 90:-9 92:-14 97:-9 98:-9 100:29 101:26 103:-8 107:10 108:14 114:-8 116:-12 117:12 118:-17 119:8 126:15
went	0:-17 1:-8 2:-12 3:-21 8:-17 10:-8 15:17 18:-11 20:50 21:-14 22:-11 29:-10 30:-13 34:57 36:-9 37:21 38:-13 40:-9 41:23 43:11 44:10 45:22 51:-11 61:10 62:-15 66:-9 67:30 71:12 72:27 73:-13 76:51 79:13 80:16 81:8 82:-18 83:30 90:-9 92:-14 97:-9 98:-9 100:29 101:26 103:-8 107:10 108:14 114:-8 116:-12 117:12 118:-17 119:8 126:15
i went	16:19 41:10 45:-12 67:25 71:10 76:-10 90:10 126:-24
went up	45:22 120:14
went to	15:23 16:15 45:-23 61:11 71:10 76:19 100:10 101:14
if the	0:15 2:-9 3:19 5:-9 9:8 16:22 18:103 30:17 68:-10 75:-27 84:8 102:-17 126:27
the load	2:-11 16:74 45:10 88:27 126:-17
is #c	51:17 60:9 61:-15 68:16 70:-19 100:37 122:21
was #c	16:-16 45:9 51:-10 68:15 126:10
#c on	45:36 60:10 88:14 126:25
pass==es	6:-11 16:146 28:-12 46:21 84:-16 85:-12 116:-9 126:9
me all	12:-11 14:-15 16:74 26:-12 32:10 36:15 44:8 126:16
the pass	16:50 84:-11
pass for	4:-15 16:98 84:-14 85:-12
show all	8:-22 14:54 16:10 19:9 36:9
all pass	16:33
list all	6:-8 8:-8 10:-19 12:-9 14:-14 16:17 19:28 24:52 32:9 84:-11
list me	36:22
press plan	5:-8 16:94 30:-9 45:-8 84:-10
load for	16:49
load on	16:16
on fret	3:9 16:57 17:-18 37:-10 43:12 45:60 76:-12 78:-11 90:13 93:-9 96:-17 97:17 126:-16
load fret	16:21
middl==e	8:13 17:79 75:25 86:16 88:-8 90:42 92:8 98:-8 102:21 126:-11
load stand	16:10
stand #n	16:29 93:22 126:-18
mm to	7:25 40:9 47:13 56:-14 76:-12 88:13 93:16
bodyward	16:36 90:47 91:-20
bodyward of	16:11
middl	2:-9 8:13 17:105 46:22 75:22 86:16 88:-8 90:55 98:-9 102:21 116:-8 126:-13
the middl	8:13 17:60 46:10 75:25 76:-9 88:-8 90:35 92:8 98:-8 102:21
middl $	17:61 86:16 90:20 92:13 126:-14
stand #d	93:35
too far	16:18 78:33 113:-8
far to	16:15
to the	1:-11 2:-15 3:11 4:-20 5:-23 6:25 7:-15 8:-10 9:-15 10:-14 12:-24 13:-12 14:9 15:-14 16:10 17:-20 19:-10 20:26 21:9 22:9 23:-9 24:10 26:-10 30:11 34:11 36:-11 38:41 39:47 40:29 41:25 42:-10 43:-15 48:11 49:-8 54:21 55:-10 56:-26 58:34 59:15 61:8 62:31 63:-19 64:71 65:-29 66:46 71:8 72:-10 73:-11 75:-13 78:-9 82:-8 83:-18 84:-22 85:12 89:-8 90:19 91:27 92:11 96:-10 98:24 99:26 100:-15 101:13 102:-18 103:-26 105:-15 106:-10 107:-8 108:-17 109:-24 112:22 113:-11 115:-13 116:-9 118:-10 119:9 121:14 125:-8 126:33
nutward	0:-8 2:33 3:-15 16:37 76:40 90:85 91:-25 126:-15
nutward of	3:-11 16:30
middl of	17:17 18:-8 75:16 90:15 102:23 126:10
nutward on	16:10
#d off	42:19 70:11
off the	2:-10 4:-9 6:-8 14:-8 17:-16 18:-8 26:-13 33:-13 38:26 39:17 40:8 41:13 43:8 44:-11 49:22 58:30 63:65 64:-18 65:-31 66:16 68:8 70:20 72:70 75:-8 78:33 81:14 82:-9 87:26 101:26 102:13 103:17 108:-21 109:33 111:-16 116:8 118:-15 120:20 123:31 126:-59
toward==	2:27 16:21 76:10 90:8 126:-20
toward	2:27 16:23 76:10 90:29 91:-18 126:-20
)~",
R"~(@job stand	13:10 17:8 90:20 98:-10 126:22
nutward $	2:27 90:12 126:-8
@job is	3:-17 4:-32 5:-9 6:-11 11:-35 13:-80 15:-20 16:-13 17:-45 18:-18 24:-35 25:-10 30:-19 31:-11 34:-8 38:-19 39:-10 42:36 43:11 44:48 45:39 46:46 48:26 49:37 65:35 66:77 73:12 74:41 76:-13 79:-14 84:34 88:42 90:-20 93:39 94:37 95:9 96:12 97:10 98:-14 103:-8 107:40 109:-18 114:62 115:61 116:20 119:-14 126:-58
the trebl	4:-10 16:52 17:66 36:-10 46:28 90:37 126:-10
trebl $	16:12 17:8 46:13 90:35
far the	8:-8 9:25
over==	0:-21 1:15 2:-11 3:-12 4:-11 5:12 8:-16 11:-11 12:-21 13:8 14:17 16:18 17:-13 19:-16 20:51 21:27 22:15 26:25 27:10 29:55 30:-16 31:-16 37:-11 39:9 40:9 42:-16 43:37 44:42 46:25 49:-10 50:28 51:-14 54:-17 56:8 60:8 65:37 66:-26 69:-8 70:-9 71:-14 72:-11 73:-26 76:13 79:54 83:-12 87:-20 88:15 89:34 90:59 92:-13 93:9 96:-16 98:-21 104:-8 108:-15 109:-8 110:11 111:-15 116:14 118:-12 122:30 123:17 126:-32
over	0:-21 1:15 2:-11 3:-12 4:-11 5:12 8:-16 11:-11 12:-21 13:8 14:17 16:18 17:-13 19:-16 20:51 21:27 22:15 26:25 27:10 29:55 30:-16 31:-16 37:-11 39:9 40:9 42:-16 43:37 44:42 46:25 49:-10 50:28 51:-14 54:-17 56:8 60:8 65:37 66:-26 69:-8 70:-9 71:-14 72:-11 73:-26 76:13 79:54 83:-12 87:-20 88:15 89:34 90:59 92:-13 93:9 96:-16 98:-21 104:-8 108:-15 109:-8 110:11 111:-15 116:14 118:-12 122:30 123:17 126:-32
over fret	16:-8 45:9
side on	2:13 16:8 17:-8
side of	17:35 90:19 123:10
off toward	16:10
toward the	2:28 16:23 126:-19
mm off	16:51 70:19 126:-8
at fret	42:-12 46:12 76:-13 77:16 78:-10 91:-12 92:46 93:31 94:11 116:14 126:-22
&#n#r@job	2:-10 5:-9 13:-13 17:-9 28:-8 37:11 38:-9 44:-8 49:-8 71:43 72:23 74:-8 76:51 79:-8 90:44 91:20 93:10 96:12
we favour	16:13
favour the	13:-9 16:33 17:-8
favor==	16:24
favor	16:24
we favor	16:11
favor the	16:16
side $	3:-13 13:-10 16:14 17:77 36:-8 46:29 84:32 90:31 93:14 125:-9 126:-9
i favour	13:-9 16:35
the bass	126:25
i favor	16:13
on #n	0:-9 1:-9 2:35 4:-13 6:8 11:-11 13:31 15:-8 16:-36 17:-16 25:43 27:15 28:-10 29:24 30:-17 31:23 37:-15 38:24 39:13 41:-12 42:-12 43:20 44:-16 47:-11 48:17 53:-12 54:10 56:-13 72:-9 74:-8 76:-18 81:-9 86:8 88:17 90:38 91:-11 92:-14 93:10 94:27 98:55 100:-13 102:15 105:17 106:13 108:-18 109:-8 110:-12 111:-31 112:39 113:41 114:-13 116:21 119:-13
level==	4:-14 8:-18 9:20 13:-61 15:-18 16:-14 17:217 19:-8 28:-11 30:-8 31:-8 33:-8 34:31 44:18 46:108 49:-9 52:103 65:-10 66:-8 70:-9 76:-11 78:-13 88:-10 89:-10 90:-12 92:-10 96:-8 97:-10 98:126 108:-9 109:-8 114:-13 116:-15 126:22
line==	2:-13 11:10 13:-9 15:-20 16:-15 17:90 42:-25 43:-11 45:-10 46:20 49:-9 51:-11 52:22 59:19 71:-11 76:-19 90:33 91:-10 92:-17 93:76 94:10 98:13 115:8 117:27 118:-25 122:8 126:20
level	3:-9 4:-16 8:-19 9:20 13:-64 15:-20 16:-15 17:220 19:-8 26:-15 28:-12 30:-11 31:-9 33:-8 34:29 44:18 46:104 48:-8 49:-10 52:103 65:-11 66:-8 70:-9 76:-14 78:-17 88:-11 89:-10 90:-15 92:-16 94:-8 96:-10 97:-12 98:205 100:-9 104:33 108:-8 109:-9 114:-16 115:-11 116:-15 126:15
^ level	17:29 26:-9 98:33 104:33 126:-12
line	2:-13 11:10 13:-9 15:-20 16:-16 17:90 42:-25 43:-11 45:-10 46:20 49:-9 51:-11 52:22 59:19 71:-11 76:-19 90:33 91:-10 92:-17 93:76 94:10 98:13 115:8 117:27 118:-25 122:8 126:20
#n line	17:19 46:12
line middl	17:11
@job only	49:-11 115:11 126:13
middl line	17:29
@job line	15:-18 17:49
line trebl	17:13 46:13 76:-8
trebl line	45:-8 90:30
line bass	17:8 46:9
#n only	1:88 2:13 46:-10 55:13 99:20 108:-10 115:21 118:-9 119:15 126:-34
call	1:-18 2:-8 9:-11 10:-12 11:-10 12:-10 13:-24 14:23 15:-9 16:-8 17:84 23:-9 26:-26 27:-19 28:-8 29:-12 30:-20 31:-12 32:-10 33:-21 36:-11 38:9 39:-14 41:-11 44:-20 46:14 48:-9 49:126 50:70 52:12 54:-9 56:-33 57:12 58:13 59:-9 61:-9 62:98 63:-30 64:-16 65:-14 66:-13 70:-11 75:-15 84:-12 86:35 87:9 88:-11 89:-16 99:36 100:143 102:-28 103:17 104:-45 106:-12 107:26 108:-11 109:40 110:-11 111:16 112:-11 115:-26 118:-14 120:57 121:55 122:37 123:-35 125:-10
&#n#o@job	0:67 1:-10 2:-9 3:9 4:-18 13:26 17:-14 34:-22 37:111 39:-9 44:-8 46:14 48:-37 49:-12 66:10 71:8 74:9 78:-19 79:15 88:-24 97:23 108:-8 114:-13
level the	98:9
call job	17:10
it level	17:18 98:12
level on	98:22 126:-15
level yet	17:45 126:-18
level now	17:16 76:-9 98:13
now on	1:-11 16:20 17:16 29:-9 30:-11 32:-9 39:17 45:-9 48:17 49:38 50:18 52:11 53:30 54:-26 56:32 58:13 59:19 62:33 65:31 66:9 89:-9 99:29 100:15 102:-17 104:24 105:14 106:-9 108:-16 110:20 111:-27 112:-11 117:-8 118:-8 119:-14 121:14 122:8 123:9 126:-38
on middl	17:10 46:9 90:8
@job level	17:42 98:16 126:-15
how level	13:-34 17:92
level is	13:-34 17:68 104:20
@job on	24:-8 31:23 46:-11 48:37 65:8 106:42 108:-9 114:30 115:-12 116:26 126:-17
it on	16:18 17:-11 38:11 41:10 43:9 48:30 51:14 53:12 55:-8 68:-12 84:19 97:10 126:-26
call==	13:-18 17:72 26:-9 27:-14 40:8 41:-9 44:-13 49:72 50:25 52:15 56:-18 62:40 63:-13 65:-9 75:-9 86:30 100:59 103:22 104:-18 107:36 109:24 114:8 115:-23 118:-8 120:33 122:18 123:-9
we call	101:17 109:9
call it	17:47 44:-8 50:12 75:-8 82:8 86:31 98:8 99:-13 100:17 104:-8 109:62 114:19 126:-42
i call	17:58 120:8
level $	9:31 13:-15 15:-11 17:46 46:52 52:21 98:99 116:-12 126:-31
#n level	17:40
call the	17:8 62:-8 99:12 100:17 101:8 104:-15
call==ed	1:-13 10:-9 14:26 17:8 26:-16 30:-15 33:-15 38:11 39:-9 46:20 49:54 50:46 56:-14 57:8 58:20 62:60 63:-16 64:-11 68:8 74:11 84:-10 87:13 89:-12 99:40 100:69 101:-9 102:-18 103:-12 104:-19 107:-10 111:23 112:-8 120:24 121:62 123:-15 126:22
can @job	18:14
@job be	2:31 5:19 13:-14 16:11 18:19 28:-9 30:117 44:-12 48:-8 49:-12 83:-8 109:9 126:-31
be call	17:29 62:27 100:28 120:9 126:-11
call level	17:33
can it	1:13 3:30 17:25 42:-8 93:-8 125:9
it be	0:41 1:10 17:28 41:-14 97:10 125:9 126:-22
can job	31:9
level enough	17:9
reading==s	4:-22 13:-10 16:-15 17:216 34:-10 126:-12
say==	0:-18 1:-10 3:14 5:-23 7:11 8:25 24:-16 25:12 26:-15 27:16 30:-11 32:18 34:-10 36:68 38:13 41:12 43:-9 48:20 49:13 52:13 63:8 67:-9 68:-15 70:22 78:19 85:-9 91:-14 94:13 103:15 104:17 105:-19 106:-15 108:-9 111:-12 116:11 117:21 119:26 126:12
reading	4:-22 13:-10 16:-15 17:216 34:-10 126:-12
the reading	17:79
say	0:-21 1:-13 3:22 5:-25 9:-9 10:-11 12:-13 13:-11 15:-9 16:-9 19:35 20:-12 22:-12 23:-9 24:-31 25:8 26:-23 27:13 28:-10 29:-17 30:-20 33:19 34:-18 36:63 37:-14 40:-8 43:-19 45:-9 46:16 48:25 49:21 51:-17 52:16 53:49 54:-26 56:30 58:-10 59:-9 60:10 63:15 65:-22 67:43 70:29 74:27 75:25 78:36 84:-8 85:-16 89:22 90:14 91:-15 93:8 94:31 96:-9 98:-10 100:-14 102:-27 103:9 104:13 105:-27 106:-18 108:-21 110:-26 111:-21 113:-31 117:22 118:15 119:68 123:13 125:15 126:61
say #n	4:10 31:-8 51:-20 67:31 70:10 89:8 90:13 116:14 119:9 121:8 126:-19
say about	17:-8 33:18 36:8
about fret	17:30
what did	5:-18 8:-11 10:-11 11:-10 19:52 20:14 21:42 23:-8 27:16 30:-13 32:13 33:-8 34:62 35:71 36:-20 125:-9 126:-23
did the	2:-12 13:13 16:-33 19:97 20:45 21:33 32:-29 34:-47 45:34 46:17 65:13 77:8 81:10 118:-12
reading of	17:32
@job say	48:9 49:-12 94:12
say $	1:-8 5:-8 8:11 26:-11 30:-9 31:-8 33:26 36:42 38:21 51:-16 67:18 70:11 102:-15 103:17 104:9 105:-18 106:-13 126:85
mean==	1:57 6:-11 8:10 9:-11 11:31 13:-11 20:12 25:-12 27:-8 32:24 33:16 51:11 53:13 66:-8 71:9 72:-14 87:10 95:8 102:16 103:-13 110:14 111:-8 112:-8 115:28 117:-8 119:21 125:11 126:-31
mean	1:59 5:-8 6:-11 8:10 9:-11 11:31 13:-14 18:-8 20:12 25:-12 27:-9 30:-8 32:24 33:16 51:11 53:13 65:-8 66:-9 71:9 72:-15 87:10 95:8 100:-11 102:16 103:-13 108:-9 109:-11 110:25 111:-8 112:-14 115:28 117:-8 119:21 125:11 126:-12
mean #n	71:10 72:-10
tell==	0:-17 1:31 2:14 3:28 5:23 6:-8 8:43 11:-12 12:10 13:9 14:21 15:22 16:-12 17:15 18:-8 19:10 20:-11 21:8 24:20 26:27 29:8 30:-11 31:34 32:20 34:-13 36:47 37:-9 38:-9 39:-9 43:-15 51:10 52:18 56:-9 57:47 58:-9 65:-15 70:-9 76:-12 78:-8 91:-13 92:11 100:-13 101:-9 103:19 106:-10 108:-12 111:-11 118:-13 119:-15 120:24 122:-12 123:-9
tell	0:-17 1:30 2:11 3:27 5:21 8:31 11:-17 13:8 14:20 15:21 16:-12 17:14 18:-8 19:9 20:-11 21:11 24:16 26:25 28:-8 30:-12 31:33 32:19 34:-16 36:44 37:-10 38:-10 39:-9 43:-16 49:-9 51:9 52:18 56:-14 57:43 58:72 59:-8 65:-16 70:-9 76:-12 78:-9 84:11 85:-9 91:-13 92:10 100:-13 101:-9 103:18 104:-8 106:-11 108:-14 109:-21 111:-11 118:-13 119:-16 120:23 121:-10 123:-11 125:-8 126:-13
)~",
R"~(say for	8:-15 19:44 24:-12
mean for	16:11
high==	0:-9 1:-11 2:-9 3:-25 8:42 13:-26 15:-29 17:140 19:38 24:-9 25:-9 40:-14 46:35 50:26 59:-10 62:25 65:-10 70:9 76:-11 78:-11 83:-13 89:42 90:126 91:-8 92:-10 94:-11 98:39 100:-15 116:-17 118:-15 126:11
high	0:-9 1:-11 2:-9 3:-25 8:42 13:-30 15:-29 16:-8 17:167 19:38 24:-9 25:-9 40:-14 44:-9 46:34 50:26 59:-10 62:25 65:-10 70:9 76:-11 78:-11 83:-13 89:42 90:124 91:-8 92:-10 94:-11 96:-8 98:39 100:-15 114:-8 116:-17 118:-15 126:11
is high	15:-19 17:29 46:15 90:-14 126:16
high on	13:-17 17:36 90:68
uneven==	13:-9 17:45
uneven	13:-9 17:45
is uneven	17:38
uneven on	17:12
uneven $	17:26
trebl on	17:10
high $	3:-19 8:51 17:73 40:-12 50:8 65:-8 89:37 90:-10 126:42
is low	9:-12 15:-18 17:30 52:34 126:48
is off	14:-17 17:10 29:8 49:44 67:15 88:-16 102:24 107:69 109:-16 111:46 112:-10 113:39 118:-11 120:39 126:-50
off on	29:24 30:-21 41:25 44:13 88:41 107:-9 109:17 110:-21 112:24 113:-9 126:63
fret stand	17:14
stand low	93:48 126:10
stand==	1:-8 3:-20 4:-14 8:25 9:-9 13:47 14:30 16:8 17:34 30:-8 33:-8 46:8 54:14 64:19 78:-8 90:-13 92:18 93:-19 99:39 100:17 102:34 108:12 115:23 116:-13 126:25
stand high	46:13 116:-11
do with	0:-8 1:18 3:-16 8:-11 9:17 16:-16 17:58 21:13 23:-8 40:-8 126:47
with fret	34:38 79:10 94:14 126:-11
i do	0:-21 1:14 2:21 3:-11 9:-8 11:-13 16:-8 17:55 23:-9 24:23 27:-9 28:-15 29:-10 30:43 34:33 65:-9 74:20 90:-20 101:-8 102:12 107:51 111:16 112:17 123:24 125:10 126:-86
with #n	0:-11 2:-12 3:43 5:26 7:40 28:30 31:-13 43:-16 69:20 72:-14 76:13 83:9 92:9 99:-9 105:11 121:8 126:14
do about	0:-8 17:100 34:-8 36:-8
loos==e	0:-9 4:-43 17:56 18:26 23:14 24:-9 38:-10 39:43 41:-10 59:26 61:19 71:-11 78:-14 84:-19 85:30 88:10 92:132 109:-8 126:-12
glue==	4:-17 12:-8 13:-10 17:34 23:50 26:-12 28:-19 30:-9 31:14 36:9 37:-15 46:-11 48:-9 56:-8 76:-16 78:-14 83:-17 84:-9 88:130 90:-10 91:-21 92:56 94:-10 96:-20 97:160 98:-20 99:10 101:12 105:-8 109:-10 126:42
^ fret	0:-17 2:-13 3:-39 13:-13 17:-14 25:-12 34:-22 37:-18 42:24 43:26 45:17 46:8 47:-14 71:8 72:16 74:17 76:35 78:37 83:-22 90:41 91:21 116:26 126:109
loos	0:-9 4:-43 17:56 18:26 23:14 24:-9 38:-10 39:43 41:-10 59:26 61:19 71:-11 78:-14 84:-19 85:30 88:10 92:132 109:-8 126:-12
is loos	17:60 92:9
glue	4:-17 12:-8 13:-10 14:-8 17:34 23:68 26:-14 28:-19 30:-9 31:14 33:-8 36:8 37:-15 46:-11 48:-9 56:-8 76:-16 78:-14 83:-17 84:-9 88:130 90:-10 91:-21 92:55 94:-10 96:-20 97:160 98:-20 99:10 101:12 105:-8 109:-10 126:40
loos glue	17:49 92:-23
glue it	17:14
^ #r	4:-12 17:13 18:-11 45:-10 46:-8 90:90 92:21 97:9 112:17
glue $	17:34 64:9 92:-16 95:10 97:23 98:-13
#o is	42:8 43:32 94:14 96:10 97:9 98:8 126:-23
loos now	17:12
now what	17:12
what $	0:-10 5:45 8:-28 9:-9 10:12 11:33 14:-20 17:9 19:49 20:15 21:-12 24:45 25:-9 27:-12 29:-14 30:26 33:-14
with it	9:-14 17:21 29:13 32:15 36:12 41:26 43:26 44:19 49:8 65:30 87:12 90:-15 101:9 118:15
with that	11:14 17:12 36:11 58:27 61:11 78:10 105:18 123:8
that fret	0:-10 17:12 78:21 93:11 98:12 126:-8
about it	17:13 26:-10 41:-10 65:14 70:9 104:22 111:11 113:-14
why==	0:-8 3:-15 13:40 15:-10 16:-12 17:23 24:9 25:-38 26:43 30:93 41:20 46:-15 54:-9 70:-8 71:-11 72:11 78:23 83:-8 90:-17 92:54 93:-9 98:-8 102:-14 109:13 114:-13 116:10 126:10
why	0:-8 3:-15 13:40 15:-10 16:-12 17:23 24:9 25:-38 26:43 30:93 41:20 46:-15 54:-9 70:-8 71:-11 72:11 78:23 83:-8 90:-17 92:54 93:-9 98:-8 102:-14 109:13 114:-13 116:10 126:10
^ why	13:45 15:-8 17:35 25:-38 26:43 30:71 90:-16 92:12 93:-8 102:-13 114:-19
why is	13:46 15:-8 17:11 30:54 90:-8 114:-19 126:-48
is fret	3:63 4:23 17:91 37:36 43:-15 74:44 78:-15 90:-28 93:-19 94:-9 126:-68
#n low	17:38 90:25 93:-17 126:-16
#n high	17:19 90:62 126:-14
#n off	3:-11 17:45 24:-12 41:19 44:-12 49:8 66:43 85:33 107:12 109:-8 115:23 126:-40
why fret	17:15 92:14
why #n	92:20
read==ing	1:13 2:15 3:10 10:15 13:-12 16:-10 17:99 30:-14 36:16 51:-12 68:14 76:-9 90:36 91:-9
read	0:-11 2:8 3:26 4:28 8:12 9:-10 10:12 11:-12 12:20 16:-18 17:188 22:-9 23:11 28:-10 30:-28 34:45 40:-8 41:-18 42:34 44:-10 52:-11 54:-21 65:-14 68:41 69:-18 70:51 76:-10 78:-9 90:34 91:-12 100:11 108:-9 109:-9 111:-10 113:-8 126:18
which read	17:21
read next	17:22
span==	13:-19 16:-15 17:98 90:21
span	13:-40 16:-16 17:138 90:21
what span	17:14
span next	17:34
which span	13:-26 17:62
take next	17:8
read do	17:10
side for	24:16 38:10
next span	13:-9 16:-8 17:45
next read	17:53 30:-12
read on	3:10 13:-22 17:71 30:-12 42:-9
read $	2:12 13:-11 17:42 36:17 90:9 100:16
rocker==	14:15 17:8 29:15 30:-15 90:41 99:10 109:12 126:12
rocker	14:15 17:8 29:15 30:-15 90:41 99:10 109:12 126:12
the rocker	14:15 17:13 109:14
read==	3:8 4:11 8:15 9:-8 12:22 13:13 17:89 23:13 30:-14 34:51 36:-11 42:10 52:-10 54:-21 58:8 70:45 100:13 111:-9 126:21
i read	3:10 17:20 42:-9 126:-8
straightedg==e	2:-8 13:-17 16:-14 17:96 25:-10 37:-10 46:20 76:-9 90:47 93:9 109:-8 116:-8 126:21
straightedg	2:-8 13:-17 16:-14 17:96 25:-10 37:-10 46:20 76:-9 90:47 93:9 109:-8 116:-8 126:21
the straightedg	2:-8 13:-15 17:73 25:-9 37:-10 46:9 90:33 109:-8 126:21
which are	17:10 25:-9 26:13
are all	4:-8 13:32 14:10 17:15 26:8 28:22 36:13 54:15 72:20 77:-8 85:-13 126:-15
all reading	17:35
reading $	17:24
reading on	17:39
count==	8:31 9:-12 16:-21 17:11 20:-11 22:-13 25:38 38:-12 40:21 42:-37 45:-27 47:-26 55:14 56:20 60:10 61:-9 67:83 69:-11 70:-41 73:87 76:-33 81:-25 82:52 86:-19 99:42 100:20 105:14 106:-16 111:32 115:-33 117:38 120:-10 126:65
which reading	17:15
count	0:10 5:-8 7:-10 8:21 16:-21 17:10 19:-11 20:-13 22:-15 24:-8 25:55 32:-30 33:-12 34:25 37:18 38:-13 39:-8 40:16 42:-37 45:-27 47:-21 51:-28 55:13 56:20 60:9 61:19 67:180 68:-29 69:-23 70:-32 71:-12 73:79 76:-39 81:-25 82:45 86:-20 89:-8 99:40 100:18 105:14 106:-17 111:30 115:-33 117:21 118:14 119:-9 120:-18 126:96
count of	8:42 25:30 51:-8 80:-8 126:-16
reading still	17:8
still count	17:8
count $	0:15 17:8 25:9 67:31 73:-11 126:14
count for	25:8 67:11
to read	13:-19 17:51
levell==ing	7:25 13:-22 15:-9 17:90 26:-27 28:35 33:-27 34:-18 49:-13 65:-14 66:-14 99:13 100:-9 101:-9 104:43 105:38 108:60 109:68 115:-8 125:-22 126:54
levell	1:-8 2:-8 3:-8 4:-25 7:24 13:-41 15:-15 16:-14 17:75 25:-16 26:-29 28:31 33:-28 34:32 42:-10 44:92 45:-19 46:-21 49:-18 58:-8 65:-17 66:-17 71:-10 76:-15 78:-17 83:-15 84:-9 90:-21 92:-14 94:-9 96:-22 97:-10 98:271 99:12 100:-15 101:-11 104:53 105:34 108:44 109:58 114:-14 115:-12 125:-24 126:80
levell of	108:19 109:-10
#n stand	3:-20 4:-10 14:34 16:-10 17:30 92:17 93:14 126:42
stand $	1:-9 2:11 13:60 17:-15 90:11 99:35 126:55
level==ing	17:15
the level	17:9
level of	8:-14 9:22 17:8 52:20 89:-9 126:11
the levell	17:74 44:-8 104:17 108:16 109:-16 126:-8
levell on	13:-9 25:-13 34:66 98:-9 126:29
wher the	4:9 8:23 103:10 126:-14
depth==	0:-9 2:-22 3:-30 18:70 40:-9 42:-9 75:102 77:-16 89:37 126:-11
bottom==	2:-15 18:19 58:12 75:48 77:-13 92:44
width==	0:-11 2:-23 3:-27 4:-10 9:19 13:43 38:-8 42:-39 43:-18 47:34 50:24 59:-14 69:-18 70:-13 75:75 77:174 81:-22 86:63 88:-11 89:36 93:-14 117:-12 121:-20 126:-10
^ suit	18:41
suit job	18:29
depth	0:-9 2:-22 3:-30 18:70 40:-9 42:-9 75:102 77:-16 89:37 126:-11
slot depth	2:-19 3:-24 18:53 75:35 77:-13 126:-8
depth #d	2:-19 75:43 89:15
bottom	0:-11 2:-20 4:-9 11:-8 18:90 25:11 43:-8 44:-11 46:-8 58:10 75:86 77:-13 78:-14 90:-9 91:-10 92:174 109:-8 126:10
@job bottom	2:-12 75:11
flat	2:-11 17:21 18:29 30:19 41:11 42:12 43:18 44:-8 46:37 47:40 75:26 76:-67 77:-12 86:43 98:9
width	0:-11 2:-23 3:-27 4:-10 9:19 13:43 38:-8 42:-39 43:-18 47:34 50:24 59:-14 69:-18 70:-13 75:75 77:174 81:-22 86:63 88:-11 89:36 93:-14 117:-12 121:-20 126:-10
slot width	2:-11 18:10 75:86 77:-60
width #n	47:16 75:9 81:-9 86:11
curv	0:-8 2:-10 3:-10 4:-10 18:92 40:12 75:60 92:35 98:10 126:-34
bottom curv	2:-8 18:-15 75:40
curv bottom	75:11
width #d	2:-12 3:-12 9:20 42:-13 47:15 50:20 59:-9 69:-10 75:23 77:41 81:-13 86:41 89:-10 121:-13
depth #n	75:23 77:-9
suit==	1:33 18:70 56:12 63:-12 64:14 75:-11
@wire suit	0:-12 1:19 18:29
^ would	0:-18 1:36 3:45 4:-8 8:-12 9:12 16:24 18:54 31:15 34:16 37:-8 42:-19 59:18 65:13 74:-11 77:12 94:-25 99:-11 108:14 119:15 126:-35
)~",
R"~(would @wire	9:11 18:23 126:-10
wire suit	18:17
slot #d	2:-11 3:-11 18:68
@wire right	18:24 24:-9 67:-11 70:13
bend==	3:-9 5:-10 6:-10 13:-18 16:-10 17:-8 18:106 28:-10 40:15 42:40 43:-12 44:29 70:9 76:-13 81:19 91:-23 92:32 99:18 101:21 108:46 109:-8 115:-8 126:-14
bend	0:-9 3:-11 4:-12 5:-14 6:-18 9:-16 10:-32 11:-11 13:-28 15:-9 16:-13 17:-15 18:133 23:-10 24:-15 26:-27 28:73 29:-13 30:-16 31:-10 32:33 33:-14 34:-16 36:-9 38:-12 40:15 42:39 43:-14 44:106 58:-10 62:-13 65:-15 66:-8 70:8 76:-14 81:18 84:-11 85:-10 88:-10 91:-25 92:23 95:8 99:28 100:-13 101:42 104:30 105:47 106:-13 108:97 109:49 115:-16 126:22
we bend	18:38
bend it	18:43
it to	15:15 18:43 41:9 65:16 66:17 100:-11 105:12 126:-17
to for	6:-9 15:10 18:61 28:-11 31:8
i bend	18:36
bend the	9:-12 18:23 28:21 44:11 108:34 126:-9
@wire to	40:30 52:36 70:34 117:28 119:-10 126:-25
wire to	9:-19 10:59 18:16 72:-14 77:12 79:18
radius==	2:-8 3:-16 18:83 37:19 38:-9 40:17 42:49 44:-9 47:76 50:-10 76:-57 86:15 92:24 126:-8
radius	2:-8 3:-16 18:83 37:19 38:-9 40:17 42:49 44:-9 47:76 50:-10 76:-57 86:15 92:24 126:-8
what radius	18:15
radius do	18:13
what bend	18:35
bend radius	3:-8 18:65 40:15 42:31 43:-12 76:-13 81:19
radius for	18:54
bend==ing	4:-8 6:-8 9:-14 10:-27 13:-8 18:28 23:-8 24:-9 26:-25 28:81 29:-13 30:-11 31:-8 32:34 33:-12 38:-10 44:59 62:-13 65:-11 85:-8 92:-9 99:10 100:-11 101:21 104:33 105:44 106:-11 108:54 109:58 126:37
which bend	18:42
radius of	43:14
lot==s	8:-19 9:-13 14:-8 19:202 33:-10 62:-9 63:9 74:15 126:-10
lot	1:10 6:-14 9:-27 11:-9 13:-28 14:-12 15:-9 17:-14 18:-9 19:255 20:-13 22:-9 25:19 26:-10 28:-16 30:-12 31:-8 32:-11 34:-16 36:-10 37:-11 38:-25 41:-10 44:-21 45:26 46:-12 48:-16 49:-15 51:28 62:-10 63:30 65:-17 66:-16 67:-9 70:-10 71:-12 72:36 74:260 78:-12 81:9 82:16 84:45 85:94 88:-12 90:-11 92:-9 94:-13 95:-9 96:16 98:-12 99:-9 105:-8 106:-8 108:-20 109:-16 115:-14 116:-9 120:-8
^ lot	19:64 74:41
lot $	4:19 8:28 19:51 24:20 25:22 39:11 84:-12 85:117 126:-23
pay==	19:38 21:41 22:-9 80:-14 126:15
pay	19:38 21:41 22:-9 80:-14 126:15
we pay	19:38
pay for	19:38
the last	4:19 9:8 10:11 13:-8 19:11 21:-8 28:-10 32:-8 34:38 42:-8 44:14 46:46 62:-9 63:9 67:-10 72:11 90:-17 94:41 125:46 126:54
last @wire	9:-8 19:39 20:-8
for last	9:-8 20:45
much did	19:18 20:-11 21:13 68:-10 126:24
did last	125:29 126:-16
did @wire	20:10
pric==e	8:-30 9:-17 19:112 20:-8 33:-8 51:27 119:-10 120:40 121:-9
pric	8:-30 9:-17 19:112 20:-8 33:-8 51:27 119:-10 120:40 121:-9
the pric	8:-28 9:-14 19:76 118:-19 119:-10 120:45
pric of	8:-28 9:-13 19:64 118:15
what lot	19:51
lot of	2:14 8:-21 9:-15 13:-10 16:21 19:82 25:-9 28:-8 51:9 62:-9 63:33 67:-8 74:-26 82:15 126:39
which lot	0:-10 19:22 74:33
the lot	4:16 8:24 19:32 24:17 39:-9 45:41 51:25 74:-50 82:21 84:41 85:46 96:25 118:10 126:-30
show lot	19:18
delivery==es	8:-17 9:-15 11:-18 12:-14 14:-19 19:228 22:-10 26:-23 30:-11 32:91 33:-11 36:-8 74:14 126:-13
delivery	0:-8 5:-15 8:-25 9:-9 10:-25 11:-22 12:-17 13:14 14:-26 15:-9 17:-13 19:272 22:-13 23:-9 24:-11 26:-27 27:-9 28:-8 29:-27 30:-32 32:147 34:-22 36:-13 37:-9 38:-9 40:14 44:-16 46:-9 48:16 49:-9 51:35 56:-11 67:-27 71:-13 72:17 74:225 84:-9 94:-10 114:-19 115:-11 118:69 119:22 120:-10 122:11 123:-13 126:-16
which delivery	12:-8 13:34 19:33 32:36 74:-19
delivery of	8:-8 19:41 51:46 117:-17 118:22
delivery $	19:67 30:-12 32:48 33:-8 74:47 121:10
what delivery	19:15
delivery were	19:8
were ther	19:8 25:15 126:-13
balanc==e	8:-13 9:-12 17:-8 19:-13 20:251 21:-9 68:16 69:14 119:-14 126:-16
year==	5:-11 8:-12 19:-15 20:84 21:73 22:15 34:-12 43:-14 113:11 122:45 126:11
balanc	8:-13 9:-12 17:-8 19:-13 20:251 21:-9 68:16 69:14 119:-14 126:-16
^ balanc	20:117
last_year	20:19
year	0:-9 5:-12 8:-23 19:-17 20:83 21:72 22:13 34:-13 36:-8 43:-14 44:-9 63:-12 89:-16 113:11 122:44 126:128
year #n	20:-9 21:10
this_month	20:29
from @day	11:25 29:41 30:38 53:-27 54:8 55:-8 102:15 110:-19 112:-15 126:-11
february	20:12 21:12
#n until	53:28 90:9 106:20 110:24 112:-13 126:-20
until tomorrow	48:12 102:23
june	8:-18 20:17 21:44
september	5:-12 8:-12 20:95 21:72
september wire	20:14
&#n@day@wire	22:8 51:20 117:33 118:9 119:-13 126:-10
all_tim	20:15 21:9
january	9:14 20:11 21:22 29:18 48:72 54:50 55:-10 66:-11 111:33 113:64 126:-29
last_month	20:12 21:17
&#c@wire	5:37 8:-52 9:-25 18:-8 19:-23 20:15 22:-18 25:-8 32:-16 40:33 51:73 52:83 56:-8 61:-17 67:24 68:82 69:-57 70:51 80:20 89:-9 117:31 118:-30 119:-11 120:-10 126:21
last_month $	21:9
april	21:20 50:8
from #o	20:12
&#c#o@wire	20:11
&#c#n@wire	40:-8 51:11 67:57 68:-9 69:28 70:10 71:8 83:8 117:48 118:-25 126:-8
all_tim $	20:10
march	126:16
in march	126:16
the balanc	20:51 68:12 119:-12
last_month #n	20:15
august	20:81 21:22 54:-12 122:27
august #n	20:28
balanc for	20:37
this_month $	20:30
for august	20:11
balanc of	19:-10 20:48
book==s	12:19 14:15 20:157 27:-19 41:8 49:9 63:12 70:40 104:-9 107:-27 126:-38
book	0:-12 1:-10 4:-8 6:-11 7:-9 8:-12 9:-12 10:-29 11:-29 12:64 13:-29 14:-9 15:-9 16:-13 17:-14 18:-9 20:142 22:-9 23:-17 24:-24 26:25 27:284 28:-13 29:-21 30:-55 31:-16 32:33 33:-9 34:-37 37:-8 38:-16 39:-19 44:-13 45:-10 49:-26 50:18 51:24 54:-10 55:-8 56:-8 58:-12 64:-10 65:-8 66:-11 67:-22 68:-8 70:39 71:18 80:-8 85:-22 99:-16 101:-17 102:-21 103:-16 104:-20 106:137 107:256 109:-16 111:11 112:-14 113:-11 117:8 118:-10 119:-17 120:-15 123:-11 125:-15 126:52
the book	12:19 20:74 27:12 41:9 50:21 51:-10 63:13 67:-11 70:39 104:-9 107:18 117:15 120:21 126:-42
september $	20:22 21:26
^ book	12:-8 20:76 26:-13 27:51 51:40 67:-9 106:131 107:10 111:31 126:-45
july	20:39
book of	20:31 27:-13 107:44 126:-8
october	8:-13 19:-11 20:129 21:62 51:-10 102:-13 103:-9 126:38
october #c	20:24
may $	20:28
of august	20:21
all @wire	68:13
go in	0:26 7:-9 20:26 51:-8 80:12 82:22 83:21 90:9 126:-15
did our	19:15
in january	126:9
january #n	21:10
january $	21:10 29:24 48:26 54:9 111:34 112:-12 113:35 126:-16
wire go	20:19
june $	21:19
go over	34:12
over $	2:16 16:8 21:27 31:-10 65:19 79:17 87:-15 88:12
from today	34:29 56:21 57:10 59:-10 62:19 65:8 66:-10 87:13 100:40 102:-12 104:9 106:-8 119:18 122:11 123:-12 126:-41
today until	55:14
balanc from	20:21
@day until	20:8 55:11
until today	48:23
until #r	20:26 48:17
&#o#r	29:-8 54:-11 55:18
until the	5:10 33:11 111:12 115:18 119:-9 122:8 126:12
from next	20:8 110:-9 111:13
december to	11:30 29:45 48:-13 55:-8 102:11 111:21 112:-13 119:-20 126:-10
to today	62:22
@day to	11:24 20:10 29:17 30:54 48:-10 53:32 55:-42 102:18 106:-20 110:45 111:-9 112:-37 116:-10 119:-11
&#o@day	20:13 31:38 48:-15 54:10 102:-9 107:9 112:25 113:-16 119:-16
sav==ed	2:10 8:-23 12:-19 19:-18 20:-37 21:226 22:-18 24:17 31:-10 34:-12 42:-8 62:13 66:-9 73:18 85:11 126:-8
sinc==e	0:-10 5:-12 8:-35 9:-10 11:-14 12:-11 13:24 14:13 15:-11 16:-9 17:-12 19:-17 20:33 21:118 24:-12 25:22 26:-13 28:-9 29:-11 30:-31 31:-11 32:-10 33:-9 34:93 35:82 36:-12 37:-17 38:11 45:-25 46:20 48:-9 49:-8 56:22 60:8 65:20 67:-13 70:-9 72:12 74:23 78:-8 79:8 82:10 83:-10 85:8 92:-13 94:-13 96:-9 98:-12 99:13 100:23 102:38 103:24 104:12 105:-9 106:-9 108:79 109:8 111:-15 112:-11 113:-12 118:-15 119:-16 120:13 126:-51
sav	2:10 8:-23 12:-19 19:-19 20:-37 21:226 22:-18 24:17 31:-10 34:-13 37:-8 41:13 42:-9 59:8 62:30 66:-10 73:18 78:41 85:11 126:-19
^ sav	20:-18 21:84 73:19
sav wire	21:10
sinc	0:-10 5:-12 8:-35 9:-10 11:-14 12:-11 13:24 14:13 15:-11 16:-9 17:-12 19:-17 20:33 21:118 24:-12 25:22 26:-13 28:-9 29:-11 30:-31 31:-11 32:-10 33:-9 34:93 35:82 36:-12 37:-17 38:11 45:-25 46:20 48:-9 49:-8 56:22 60:8 65:20 67:-13 70:-9 72:12 74:23 78:-8 79:8 82:10 83:-10 85:8 92:-13 94:-13 96:-9 98:-12 99:13 100:23 102:38 103:24 104:12 105:-9 106:-9 108:79 109:8 111:-15 112:-11 113:-12 118:-15 119:-16 120:13 126:-51
@wire sinc	20:19 34:23
sinc the	10:12 20:-17 21:33 34:19 35:13 44:10 60:11 79:12 100:12
november	0:-9 8:-22 11:15 17:-8 19:-13 20:93 21:59 29:15 34:44 46:-8 51:-9 111:31 112:-13 116:27 126:9
&#n#o@wire	1:15 34:11 119:9 126:-21
november $	8:-11 11:16 19:-10 20:37 21:59 29:16 34:15 55:-9 111:32 112:-12 116:20 126:10
)~",
R"~(sinc @day	13:14 30:-16 34:96 35:22 74:13 108:14 119:-10 120:19 126:-11
#o until	111:20
sinc next	35:20
until @day	48:9 102:14 116:28 126:9
#n year	126:35
save==	0:-18 2:13 19:-15 20:-13 21:107 34:-20 37:-19 38:51 39:28 40:11 44:-10 62:14 84:30 126:-15
save	0:-18 2:12 8:-8 19:-15 20:-13 21:122 22:-8 34:-20 37:-19 38:51 39:28 40:11 44:-10 62:14 84:30 126:-19
tin save	21:49
us==	0:-12 1:-11 6:8 7:8 8:9 9:38 11:-14 12:-16 13:-34 14:71 15:54 16:-17 17:9 18:-8 20:-21 21:78 22:-25 24:-18 25:-14 26:-29 27:-10 28:12 29:-23 30:15 31:-9 32:63 33:19 34:-27 36:-9 39:-11 40:-12 41:-9 44:8 49:24 52:16 55:27 57:8 59:70 62:-18 63:81 64:44 65:-9 66:14 67:13 68:-8 70:-9 82:-9 85:-8 88:-10 92:-10 94:-9 99:-14 102:12 103:-11 104:-11 105:8 108:-11 109:-8 110:-17 111:-15 112:-10 115:-8 117:26 118:19 120:-8 121:25 122:-18 123:17 125:-8 126:-8
tin sav	21:18
us	0:-12 1:-11 6:8 7:8 8:9 9:38 11:-14 12:-16 13:-34 14:71 15:54 16:-17 17:9 18:-8 20:-21 21:78 22:-25 24:-18 25:-14 26:-29 27:-10 28:12 29:-23 30:15 31:-9 32:63 33:19 34:-27 36:-9 39:-11 40:-12 41:-9 44:8 49:24 52:16 55:27 57:8 59:70 62:-18 63:81 64:44 65:-9 66:14 67:13 68:-8 70:-9 82:-9 85:-8 88:-10 92:-10 94:-9 99:-14 102:12 103:-11 104:-11 105:8 108:-11 109:-8 110:-17 111:-15 112:-10 115:-8 117:26 118:19 120:-8 121:25 122:-18 123:17 125:-8 126:-8
sav us	21:8
us $	8:-17 9:20 14:-9 15:21 21:27 28:34 30:-9 32:21 33:-22 49:28 59:22 62:-8 63:57 66:10 111:-10 120:9
save us	21:37
sav in	20:-15 21:33 62:13
sav of	21:9
us sinc	21:9
july $	20:9
sinc august	21:11
august $	20:10 21:15 54:-11 122:27
sinc today	13:31 30:-8 99:10
sav sinc	21:16
have the	10:24 13:-10 14:-11 15:18 19:13 26:-17 27:63 30:-13 31:9 32:8 33:14 39:19 44:18 48:14 87:14 100:-12 103:13 104:16 106:34 122:10 126:-56
piece sav	21:13
money==	20:-12 21:71 29:-11 49:15 97:12 110:11 126:-13
money	20:-12 21:71 29:-11 49:15 97:12 110:11 126:-13
has piece	15:-14 24:28
piece save	21:10
us in	8:18 21:36 102:24 126:13
@wire did	8:-19 21:25 32:15
wire did	21:15
we save	19:-9 21:32
much have	21:21
we sav	21:21
us for	63:15
sav for	12:-17 24:21 66:-8 85:11
for november	21:8
&#o@wire	20:12 21:-15 34:34 119:44
sinc tomorrow	35:8
what was	8:-8 13:-23 19:-15 21:18 28:-8 34:100 35:26 44:-8 76:14 96:-10 105:51 124:14 125:-35 126:-17
was sav	21:27
scrap==ped	5:-8 19:-8 20:20 21:38 24:-8 34:36 41:12 42:-11 51:-17 79:14 82:33 99:30 101:16 126:23
scrap	0:-8 1:-17 3:-27 5:11 8:-18 9:-12 11:-12 13:-10 14:-8 17:-13 19:-22 20:19 21:100 22:87 24:-21 26:-15 28:-12 29:-10 30:-18 31:-12 32:12 33:-10 34:56 37:-29 38:-18 39:-39 40:-18 41:164 42:-16 49:17 51:-22 53:-12 54:-24 56:-10 70:-22 71:-9 76:-16 78:21 79:44 80:18 82:204 83:-29 87:60 88:-10 92:-13 96:-9 98:-13 100:-8 101:45 113:47 118:-19 120:45 125:-13
we scrap	19:-11 21:22 32:21 34:36
scrap over	21:8
thrown==	0:12 2:23 3:-8 21:34 39:-8 41:22 80:15 81:-9 82:12 83:-8 122:10 123:-10
away==	0:-13 1:-10 2:21 3:9 8:-10 9:-10 11:-25 14:-13 15:-10 16:-8 21:10 22:31 23:-10 24:73 26:-15 27:-10 28:-11 30:-35 31:-16 33:-26 34:-18 36:-11 37:-27 38:31 39:-8 41:100 44:-16 49:48 56:-8 58:47 60:-15 61:39 63:-17 65:-13 66:-11 78:32 81:-11 82:51 83:-21 87:18 94:-8 99:-8 100:-9 101:85 102:37 103:-11 104:-11 105:-8 106:-14 107:8 110:-16 111:89 112:-22 115:-10 116:8 120:-8 122:-10 123:49 126:-19
much is	8:16 13:-10 21:10 28:17
thrown	0:12 2:23 3:-8 21:34 39:-8 41:22 80:15 81:-9 82:12 83:-8 122:10 123:-10
is thrown	21:28
away	0:-13 1:-10 2:21 3:9 8:-10 9:-10 11:-25 14:-13 15:-10 16:-8 21:10 22:31 23:-10 24:73 26:-15 27:-10 28:-11 30:-35 31:-16 33:-26 34:-18 36:-11 37:-27 38:31 39:-8 41:100 44:-16 49:48 56:-8 58:47 60:-15 61:39 63:-17 65:-13 66:-11 78:32 81:-11 82:51 83:-21 87:18 94:-8 99:-8 100:-9 101:85 102:37 103:-11 104:-11 105:-8 106:-14 107:8 110:-16 111:89 112:-22 115:-10 116:8 120:-8 122:-10 123:49 126:-19
thrown away	0:12 2:23 3:-8 21:11 81:-9 82:13
away for	0:-13 13:-10 21:11 24:49 27:-13 30:-21 32:11 38:9 87:8 102:58 106:-10
thrown out	21:23
out over	21:23
scrap $	0:-16 1:18 3:-15 20:12 21:13 22:-9 40:-8 41:80 42:-13 51:-17 78:8 79:36 82:80 126:-13
was scrap	21:15
scrap of	21:14 22:-15 80:23 96:-9 126:25
scrap for	21:12
for april	21:15
april #c	21:13
much was	21:16
sinc september	21:12
sinc #r	21:12 35:15
&#r@wire	8:-8 9:-8 20:26 34:9 119:42
worth==	8:-19 9:11 10:10 21:86 22:-21 39:-10 41:37 51:-18 68:18 82:10 126:-29
worth	8:-19 9:11 10:10 21:86 22:-21 39:-10 41:37 51:-18 68:18 82:10 126:-29
tin worth	21:66 22:-10
worth it	21:21
troubl==e	3:13 18:25 21:11 65:10 103:10
worth the	21:13 82:11 126:-8
troubl	3:13 18:25 21:11 65:10 103:10
the troubl	21:11
troubl $	3:14 21:8 65:11
keep==ing	11:-9 13:-12 21:36 22:-12 24:29 29:18 30:-10 39:14 41:26 53:-8 55:8 85:71 109:-16 126:-25
keep	0:-13 1:-21 2:-11 3:11 4:-21 5:-25 6:-11 8:-25 9:34 11:21 13:-36 14:17 15:-13 16:-12 17:34 18:-8 21:31 23:-8 24:75 26:-13 27:-17 28:-13 31:18 33:32 34:-25 36:-10 37:-36 38:113 39:21 42:18 43:-15 44:-8 46:-10 47:-10 48:-22 49:-10 52:-9 53:30 54:-19 55:14 60:8 63:11 64:-9 66:-11 69:11 70:-12 75:12 77:15 78:-8 84:72 85:49 87:-22 92:65 93:-9 94:-9 101:11 106:25 107:-50 108:-9 109:-22 110:8 111:-10 113:-8 123:-9 126:53
worth keep	21:24 22:-12 39:-9 41:29 126:-14
keep $	3:26 8:-14 9:31
saving==s	20:-27 21:220 22:-13 34:-8 126:-10
saving	20:-27 21:220 22:-13 34:-8 126:-10
^ saving	21:86
saving for	20:-13 21:36
saving $	21:44
september #n	21:17
wast==e	0:16 1:34 21:14 22:25 40:-10 41:20 82:9
wast	0:16 1:36 5:17 8:-9 21:23 22:25 40:-10 41:20 82:8
i wast	21:15
wast for	21:11
throw==	8:-13 22:82 24:-8 36:-8 39:-12 41:81 82:70 83:-18
throw	8:-13 22:82 24:-8 36:-8 39:-12 41:81 82:70 83:-18
we throw	22:21
throw away	22:39 82:42
february #c	20:16
wast==ed	5:14 21:9
we wast	21:9
scrap==	1:-11 3:-25 5:-8 8:-19 17:-11 19:-13 21:64 22:89 24:-12 28:-9 29:-9 30:-15 32:-8 33:-8 34:21 37:-25 38:-16 39:-33 40:-9 41:154 49:18 53:-11 54:-22 56:-8 70:-17 71:-8 76:-13 78:24 79:21 82:163 83:-24 87:54 88:-9 92:-8 96:-17 99:-22 101:30 113:49 118:-18 120:46 125:-11 126:-25
much scrap	8:-12 21:73 30:-8
scrap is	21:21
made==	0:-19 2:28 3:-22 4:-10 7:8 16:-13 34:20 37:48 42:-28 43:24 45:-8 49:19 64:16 68:8 69:8 72:49 73:-20 78:-12 79:156 82:-24 83:55 86:9 92:-12 93:-11 95:19 96:-14 106:-15 116:-10 125:40 126:-42
made	0:-19 2:28 3:-22 4:-10 7:8 16:-13 34:20 37:48 42:-28 43:24 45:-8 49:19 64:16 68:8 69:8 72:49 73:-20 78:-12 79:156 82:-24 83:55 86:9 92:-12 93:-11 95:19 96:-14 106:-15 116:-10 125:40 126:-42
december #n	21:8 48:10 54:12
made in	125:23
scrap was	21:13
was ther	21:13 34:32
we make	5:11 116:16
in october	8:-9 20:34 21:32 102:-13 103:-9 126:32
october $	8:-10 20:87 21:37 126:15
worth to	21:17
to us	19:9 21:16 32:25 51:15
worth $	10:10 21:9
^ did	1:-10 11:-15 13:33 15:24 16:18 17:58 24:74 25:32 27:66 31:-25 32:49 34:59 37:-19 39:-30 41:-29 44:-20 45:24 48:-25 65:-12 76:-9 79:19 80:-8 84:-28 85:-8 90:-24 91:-13 107:-10 108:-15 118:-13 120:-10 126:57
any money	21:12
us any	21:12
money $	21:9 29:-10 49:15 110:11
^ has	9:-10 13:75 15:32 17:8 19:-10 20:-8 21:10 22:-17 24:35 25:25 26:33 27:73 30:26 32:97 34:73 41:-24 65:-12 66:-15 78:-23 81:-14 98:-8 102:-14 103:-16 107:-9 108:-46 118:-43 126:-26
us anyth	21:9 32:53 33:-17
care==	0:9 8:-14 21:-10 22:79 31:9 36:12 48:24 95:8 99:-10 112:20 126:-14
care	0:9 8:-14 21:-10 22:79 31:9 36:12 48:24 95:8 99:-10 112:20 126:-14
tin care	8:-13 22:83
day #n	56:19 122:10
care the	22:9
lie==	4:34 8:10 11:8 15:15 16:10 22:21 40:-8 73:12 76:22 80:-14 83:-13 96:-8 126:9
idle==	8:-11 22:79 56:70 65:-18 66:27 80:-9 126:-21
lie	0:-14 3:11 4:29 8:47 9:-8 15:13 17:-15 22:31 34:-8 37:-12 40:-12 43:-9 46:-8 63:32 76:64 83:-16 88:10 90:31 92:-8 93:61 95:-12 96:-10 114:12
idle	8:-11 22:79 56:70 65:-18 66:27 80:-9 126:-21
lie idle	22:17
idle $	8:-10 22:30
lying==	0:31 2:26 8:60 9:-10 13:-11 22:33 24:-11 32:-10 38:-9 40:11 68:18 72:19 82:-28 90:-10 126:38
lying	0:31 2:26 8:60 9:-10 13:-11 22:33 24:-11 32:-10 38:-9 40:11 68:18 72:19 82:-28 90:-10 126:38
are lying	22:23 72:11 76:9
lying idle	22:14
lying about	0:20 8:10 22:28
about $	0:12 22:19 36:23 94:-22 126:26
lain==	8:-9 22:12
lain	8:-9 22:12
)~",
R"~(have lain	8:-9 22:12
no==	0:11 1:-25 2:-23 3:-24 4:-35 6:-11 7:-9 8:16 9:-23 10:-15 11:-29 12:-25 14:-27 15:-20 16:54 17:-18 18:-19 19:-14 20:-16 21:-13 22:62 23:22 24:-32 25:-12 26:-45 27:-36 28:-14 29:-46 30:-43 31:-14 32:-25 33:-45 34:-27 36:-10 37:-35 39:48 40:-10 41:59 43:-16 44:-31 45:-24 46:-26 48:77 49:8 50:-8 51:28 52:-13 53:16 54:27 55:-23 56:-29 58:30 59:-25 60:-41 61:67 62:-11 63:16 64:31 65:-41 66:63 67:18 70:-12 71:22 73:-20 74:13 75:-9 76:-11 77:-10 78:-28 79:-13 81:10 82:20 84:-19 85:13 86:-11 87:22 88:69 90:47 91:63 92:25 93:-12 94:74 96:-19 97:-10 98:-24 99:-9 100:36 101:81 102:78 103:26 104:-33 106:-24 107:16 108:-33 110:29 112:-22 113:23 114:31 115:14 116:-11 117:-32 118:-11 119:-16 121:-19 122:15 123:79 125:54 126:73
is of	22:39 37:-34 42:9 126:45
no	0:11 1:-25 2:-23 3:-24 4:-35 6:-11 7:-9 8:16 9:-23 10:-15 11:-29 12:-25 14:-27 15:-20 16:54 17:-18 18:-19 19:-14 20:-16 21:-13 22:62 23:22 24:-32 25:-12 26:-45 27:-36 28:-14 29:-46 30:-43 31:-14 32:-25 33:-45 34:-27 36:-10 37:-35 39:48 40:-10 41:59 43:-16 44:-31 45:-24 46:-26 48:77 49:8 50:-8 51:28 52:-13 53:16 54:27 55:-23 56:-29 58:30 59:-25 60:-41 61:67 62:-11 63:16 64:31 65:-41 66:63 67:18 70:-12 71:22 73:-20 74:13 75:-9 76:-11 77:-10 78:-28 79:-13 81:10 82:20 84:-19 85:13 86:-11 87:22 88:69 90:47 91:63 92:25 93:-12 94:74 96:-19 97:-10 98:-24 99:-9 100:36 101:81 102:78 103:26 104:-33 106:-24 107:16 108:-33 110:29 112:-22 113:23 114:31 115:14 116:-11 117:-32 118:-11 119:-16 121:-19 122:15 123:79 125:54 126:73
of no	22:39 37:-34 126:29
no use	8:-12 22:59 37:-35 41:44 78:24 107:13
use $	0:36 5:-12 8:-12 22:45 36:-19 37:37 41:43 68:-10 71:-12 83:9 87:36
what in	8:-11 21:-8 22:58
tin is	0:15 2:-9 5:9 22:25
is no	3:-14 8:-15 13:-8 22:10 39:11 41:64 42:16 48:12 54:-17 63:24 64:-19 66:-15 78:21 80:-10 87:11 88:18 94:13 100:-11 101:21 102:-39 103:40 113:27 114:32 115:12 116:9 122:-20 123:28 126:-19
what of	11:23 22:19 24:17 30:-21
@wire can	5:18 8:-12 9:-14 22:20 82:8 89:-12 126:15
i throw	22:35
away $	2:23 3:-9 11:-13 14:-9 22:37 24:-11 26:-10 27:-8 33:-21 39:-12 41:63 58:30 61:24 78:19 81:-9 83:-15 87:10 101:31 102:-14 107:20 111:13 123:27 126:11
throw out	22:45 82:36 126:19
sort==	2:10 8:-11 9:8 11:9 22:41 36:16 50:13 89:-8 106:10
sort	2:9 8:-15 11:9 22:38 25:10 36:27 50:10 76:-8 82:13 89:-8 106:10 107:10
^ sort	22:33 82:14
sort the	22:12 82:13
clean==	3:10 5:-8 8:-16 18:-8 21:-11 22:111 25:-14 40:12 92:10 108:14
clean	2:-8 3:8 4:-51 5:-9 8:-17 13:-11 18:-21 21:-11 22:110 25:-15 28:18 40:11 44:104 46:-12 75:-8 78:19 92:10 97:-44 104:22 105:24 108:45 109:12 126:33
^ clean	22:19 105:21
clean out	28:19 44:14
tidy==	22:39 82:17
tidy	22:39 82:17
^ tidy	22:17
tidy the	22:26
sort out	2:11 22:11
nobody==	0:-13 1:-17 2:-10 8:-11 11:-16 12:-10 13:-26 17:-11 19:-17 21:-12 22:96 27:-13 28:-15 29:-9 32:23 33:-9 34:-36 35:68 36:-9 38:12 39:63 41:-12 44:-11 46:-14 48:-23 49:-16 51:30 54:76 55:-20 56:15 58:12 60:-26 61:90 65:-24 66:167 67:-29 70:24 71:-21 73:9 80:18 82:-18 84:31 85:-13 87:9 88:-15 89:8 90:-10 92:-8 95:-20 98:-31 99:-14 102:55 103:-9 104:-17 106:-14 107:-10 109:-11 114:-12 115:-21 117:-40 118:-19 124:46 125:-8 126:94
@wire has	9:20 32:-11 37:9 89:45 118:13 126:32
nobody	0:-13 1:-17 2:-10 8:-11 11:-16 12:-10 13:-26 17:-11 19:-17 21:-12 22:96 27:-13 28:-15 29:-9 32:23 33:-9 34:-36 35:68 36:-9 38:12 39:63 41:-12 44:-11 46:-14 48:-23 49:-16 51:30 54:76 55:-20 56:15 58:12 60:-26 61:90 65:-24 66:167 67:-29 70:24 71:-21 73:9 80:18 82:-18 84:31 85:-13 87:9 88:-15 89:8 90:-10 92:-8 95:-20 98:-31 99:-14 102:55 103:-9 104:-17 106:-14 107:-10 109:-11 114:-12 115:-21 117:-40 118:-19 124:46 125:-8 126:94
has nobody	22:16 126:-8
nobody used	22:28 126:16
used in	20:21 22:13 126:-13
touch==ed	0:-9 21:-13 22:66 34:41 126:-28
did nobody	19:-10 22:13 34:-17 35:55
touch	2:11 5:23 9:-15 17:-16 21:-13 22:71 24:-14 33:36 34:47 38:20 72:11 79:-10 84:10 88:40 91:9 98:30 102:21 111:16 120:-15 126:-86
nobody touch	22:16 24:-9 38:21 84:11 102:9
touch for	22:33
piece did	8:28 24:-8
used for	22:18 83:15 85:13
touch in	22:29 126:-14
touch==	2:14 17:-15 33:38 34:8 38:15 41:8 72:12 79:-10 96:8 98:31 102:12 111:16 120:-15 126:-36
piece has	24:23
nobody use	102:19 126:-10
been==	0:-27 2:-26 3:-20 4:-19 5:-26 6:-14 8:-43 9:-26 10:-10 12:17 13:44 15:35 16:-19 18:-10 19:28 20:-8 21:10 22:18 24:48 25:9 27:-15 28:-20 29:-12 30:-25 31:-11 32:9 34:75 36:10 37:-17 38:-9 39:-9 41:-10 42:-14 43:-15 44:14 45:33 46:11 47:-11 48:-20 51:14 54:-9 63:-13 64:-11 66:-14 67:-22 68:-9 71:21 73:-11 74:9 75:8 76:61 78:-35 79:48 81:18 82:9 83:-18 84:-28 85:45 86:12 88:-10 89:-15 90:-20 91:-10 93:-10 95:18 96:34 97:19 98:30 99:28 100:12 101:20 102:11 105:11 106:-8 107:-9 109:12 113:8 117:13 119:24 122:10 123:10 125:-13 126:10
been	0:-27 2:-26 3:-20 4:-19 5:-26 6:-14 8:-43 9:-26 10:-10 12:17 13:44 15:35 16:-19 18:-10 19:28 20:-8 21:10 22:18 24:48 25:9 27:-15 28:-20 29:-12 30:-25 31:-11 32:9 34:75 36:10 37:-17 38:-9 39:-9 41:-10 42:-14 43:-15 44:14 45:33 46:11 47:-11 48:-20 51:14 54:-9 63:-13 64:-11 66:-14 67:-22 68:-9 71:21 73:-11 74:9 75:8 76:61 78:-35 79:48 81:18 82:9 83:-18 84:-28 85:45 86:12 88:-10 89:-15 90:-20 91:-10 93:-10 95:18 96:34 97:19 98:30 99:28 100:12 101:20 102:11 105:11 106:-8 107:-9 109:12 113:8 117:13 119:24 122:10 123:10 125:-13 126:10
has been	0:-10 2:-12 3:-13 5:-12 12:22 13:-13 15:-10 34:-41 44:-9 45:45 46:-9 47:-10 49:-12 51:8 71:8 74:12 76:27 78:-10 79:27 81:21 83:-10 93:-8 94:-11 95:19 96:31 97:8 99:10 100:-12 101:12 103:17 105:10 108:24 109:28 118:9 119:8 123:14
long of	0:12
long $	2:-8 4:22 28:28 40:12 41:-10 42:19 43:-9 50:22 51:46 69:-8 70:18 73:32 87:10 93:-10 102:18 118:-20 126:-28
tin too	2:11
up the	4:39 5:26 6:13 8:-13 9:-10 10:49 12:34 13:22 20:-13 22:41 27:-13 30:-8 32:-12 44:-18 46:-9 54:-9 55:10 62:18 67:14 84:26 101:14 105:-13 106:-20 107:28 108:18 120:-8 121:-13 123:-11 126:33
clear==	5:-11 22:54 24:-15 35:-15 61:13 62:9 65:-10 66:44 84:-12 85:44 88:62 116:12 124:49 126:15
clear	5:-16 22:63 24:-15 35:-15 61:13 62:8 65:-11 66:44 84:-12 85:44 88:62 100:10 116:12 124:49
^ clear	24:-14 35:-14 61:14 66:48 84:-14 85:47 124:49
clear up	22:10
clean the	4:-13 18:-9 22:11 105:21 108:30 109:8 126:-10
clean up	3:10 22:31 44:10
through the	0:20 4:-8 8:-9 9:35 10:-9 12:11 30:19 40:-13 45:50 67:25 75:13 81:12 126:-25
clear out	5:-8 22:37 80:11 84:-11 85:18 126:-9
what could	0:47 1:18 5:15 22:8 126:-24
i clear	22:9 82:8
are too	2:16 22:21 113:-8 126:15
age==s	1:10 22:14
age	1:10 22:14
age $	22:15
month==s	22:10 24:-8 85:10
what nobody	22:14 124:18
nobody has	22:54 24:18 58:9 66:15 67:-10 71:-17 80:16 95:-16 98:-27 114:10 126:72
has used	22:11
for age	1:10 22:14
in a	22:36 31:-12 36:22 56:9 72:11 111:-11 114:30 116:9 117:14 118:9 121:9 126:-26
a long	22:21 28:-10 48:11 54:9 118:18 120:13 126:-13
long time	22:21 28:-9 126:-9
piece nobody	22:28 126:-15
has touch	22:32 126:-14
anyth to	10:61 11:-12 22:18 57:-9
to throw	1:15 22:20 126:-15
ther piece	24:10
piece in	8:11
that we	5:12 11:23 16:-8 42:13 45:9 50:9 54:8 56:-9 85:10 113:12 118:9 126:-15
we should	52:13 116:-8 126:57
should throw	126:8
i should	10:34 13:30 17:-9 23:13 38:11 57:10 65:8 105:12 120:11 126:-36
ther any	0:-13 1:12 3:11 11:8 18:20 24:13 26:-12 27:16 30:10 32:9 43:-8 84:-10
any piece	24:9
anyth we	41:10
we can	13:-8 30:25 31:8 33:17 39:17 44:12 68:-9 69:11 78:18 88:-13 102:16 107:10 118:-8 121:46 122:8 123:-16
we could	0:11 8:-11 18:10 28:-11 31:26 126:41
piece that	8:20
that i	30:21 33:16 68:11 71:11 108:10
i can	1:-13 3:9 4:-17 8:12 9:21 11:10 17:-12 18:8 23:-8 29:-8 30:13 31:-9 32:-9 34:12 36:-24 39:-27 44:17 53:8 54:14 62:11 66:32 78:16 82:11 88:11 90:25 91:22 92:-16 102:26 107:-13 108:9 109:-13 111:31 112:23 114:-20 126:13
safety==	8:-47 9:66 11:-8 23:220 26:-18 30:-14 36:-12 104:-12 126:-14
safety	8:-47 9:66 11:-8 23:220 26:-18 30:-14 36:-12 104:-12 126:-14
^ safety	23:123 26:-8 104:-11
safety $	23:57
the safety	8:-32 9:40 23:36
rule==s	23:23
rule	3:-21 6:66 23:22 28:8 40:14 42:53 53:48 54:-9 55:-11 56:19 70:23 79:-10 80:9 112:8 126:-13
safety rule	23:23
)~",
R"~(rule $	28:10 42:10 53:49 54:-9 55:-11 70:24
advic==e	15:22 23:24 102:15
what about	0:20 2:10 3:19 4:-10 8:69 9:-12 13:19 15:-10 17:-8 19:-15 22:-12 23:43 26:-9 126:-12
advic	15:22 23:24 102:15
safety advic	23:24
advic $	23:9
note==s	23:17 126:9
note	0:-11 6:-8 15:-8 17:-9 23:14 29:-8 34:-12 38:-9 40:15 41:9 42:34 50:-11 51:-11 54:56 60:14 61:-11 65:12 67:17 89:12 93:-10 96:10 98:28 100:13 106:20 109:23 111:46 112:-11 113:-24 117:22 122:69 126:-21
safety note	23:17
note $	0:-8 40:18 54:18 79:12 100:17
about safety	23:10
safety at	23:30 104:-10
at press	26:15 108:38
iron	23:78 86:17 126:-14
iron $	23:54
nip	0:22 3:-9 4:-11 5:-8 6:12 11:-8 13:-17 16:-10 17:-8 23:50 26:-8 28:11 29:-9 30:-16 40:9 43:23 44:91 59:-9 71:29 78:25 82:11 83:-8 85:-10 92:-8 93:-8 96:-10 99:24 100:-29 102:-12 104:88 105:40 106:-10 108:37 109:16 126:-20
nip $	23:44 29:-8 30:-11 44:8
dust	17:-8 18:12 22:11 23:99 26:-13 78:35 92:34 101:-53 126:50
dust $	23:35 92:13 126:-10
hammer	0:10 4:-8 18:9 23:44 28:9 36:-15 76:-9 78:62 92:-9 96:22 98:-10 104:21 126:26
hammer $	0:11 23:27 36:-12 78:31 126:38
safety with	23:16
the glue	9:-11 23:31 26:-10 28:-14 80:10 88:54 101:12 126:12
^ glue	88:41 126:18
iron safety	23:8
the dust	23:29 78:35 101:-51 126:70
sand	17:-10 23:21 26:11 27:11 54:10 82:16 93:-13 98:80 100:18 102:25 103:21 104:18 126:-32
^ sand	98:41
the hammer	0:11 36:-9 78:31 126:39
^ nip	26:-8 44:52 71:34 100:-9 102:-8 104:52 105:18 106:-8 108:10 109:-8 126:-18
it safe	23:57
safe to	23:57
to nip	0:17 108:8 126:-8
to sand	23:8
sand $	54:10 102:11
dangerous==	23:149 26:-29 126:-12
dangerous	23:149 26:-29 126:-12
dangerous $	23:87 26:-21
the iron	23:54
safe $	23:32 26:-8
harmful==	23:81
is glue	92:20
harmful	23:81
harmful $	23:81
the nip	23:15 99:18 104:21
wear==	5:-9 11:-9 17:-8 23:124 25:-16 26:-12 30:-18 36:-10 100:-8 104:-9 126:93
wear	5:-9 11:-9 17:-8 23:124 25:-16 26:-12 30:-18 36:-10 100:-8 104:-9 126:93
we wear	23:40
wear $	23:47
whil==e	7:8 13:-9 23:18 44:15 49:10 78:48 79:20 82:13 91:-12 104:-8 109:-8 118:11
i wear	23:56 30:-11
whil	7:8 13:-9 23:18 44:15 49:10 78:48 79:20 82:13 91:-12 104:-8 109:-8 118:11
wear for	23:25
glove==s	16:10 23:52 126:-11
glove	16:10 23:52 126:-11
a glove	23:24 126:-10
glove $	23:20 126:-8
need any	39:23
mask==	23:75 126:-8
mask	23:75 126:-8
a mask	23:15
mask $	23:11
mask for	23:10
whil the	7:8
held==	0:-21 1:-12 3:22 5:-8 8:-16 11:-9 12:-14 13:-25 15:-9 16:-19 17:-10 18:-12 22:-11 24:239 30:-15 37:-12 38:47 39:39 41:-12 44:-12 46:70 48:14 49:-14 64:-17 65:-12 66:-11 71:8 76:-14 78:-11 85:53 90:91 91:-43 92:9 96:-9 98:20 108:-12 114:-13 126:35
held	0:-21 1:-12 3:22 5:-8 8:-16 11:-9 12:-14 13:-25 15:-9 16:-19 17:-10 18:-12 22:-11 24:239 30:-15 37:-12 38:47 39:39 41:-12 44:-12 46:70 48:14 49:-14 64:-17 65:-12 66:-11 71:8 76:-14 78:-11 85:53 90:91 91:-43 92:9 96:-9 98:20 108:-12 114:-13 126:35
^ held	24:79 90:30 91:-10 126:-14
held wire	85:21
reserv==ed	8:-29 9:-12 11:-14 12:-8 13:-17 14:-12 18:-8 19:-10 22:-13 24:193 26:-23 27:195 29:-16 30:-30 32:-13 33:-11 34:-9 38:8 39:13 66:-9 84:20 85:58 106:16 126:-25
what all	24:17 29:-14 30:-8 34:46
reserv	0:-26 1:-12 5:-17 8:-31 9:-18 11:-20 12:-9 13:-27 14:-12 15:-9 16:-13 18:-14 19:-12 24:184 26:-26 27:193 28:-8 29:-17 30:-24 32:-15 33:-12 34:-22 37:-33 38:123 39:34 41:-16 44:-13 54:8 66:-10 71:-13 84:103 85:75 102:-8 104:15 106:55 109:-8 114:-8 126:-49
is reserv	8:-10 13:-8 14:-10 24:32 26:-10 27:52 30:-8 85:36 106:12
reserv for	13:-8 24:-39 27:71 30:-16 38:27 71:-10 85:53 106:10
is held	0:-13 8:-9 24:29 30:-8 84:-9 85:21 126:75
held $	8:-8 24:100 30:-8 38:25 39:13 46:13 126:-21
held for	13:-9 24:8 38:26 85:37 126:64
set==	0:-15 1:-25 2:27 6:-9 7:-11 8:-25 9:-12 11:-35 12:-9 13:-27 15:-10 16:-15 17:-17 18:-10 19:-9 20:-8 22:-10 24:82 26:30 27:-11 28:-34 30:-19 31:-10 32:-11 33:-11 34:-21 36:10 37:-13 38:39 39:32 40:-11 41:-17 44:-18 45:-16 46:-14 48:56 49:-12 51:-12 52:-10 53:24 55:-12 56:104 60:16 62:16 63:18 64:-14 65:-10 66:-14 70:28 74:-10 78:-9 79:-15 82:-15 83:9 84:108 85:41 88:77 90:-10 92:-12 96:20 99:37 100:19 101:9 102:-8 103:-14 105:89 106:-39 108:-12 109:-18 110:16 112:-22 115:-9 116:-11 119:11 122:13 125:-9 126:49
asid==e	2:-11 5:-8 8:-20 9:-9 13:-14 15:-9 19:-8 24:94 30:-11 32:-9 36:27 37:-17 38:50 44:-13 48:-12 56:-10 65:-9 66:-8 84:163 85:50 88:-9 108:-11 109:22 114:-9 115:-10 116:-13 126:73
set	0:-15 1:-25 2:27 6:-9 7:-12 8:-25 9:-13 10:-8 11:-36 12:-10 13:-27 15:-10 16:-15 17:-18 18:-10 19:-9 20:-9 21:-8 22:-13 24:81 26:28 27:-12 28:-34 30:-20 32:-12 33:-13 34:-21 36:9 37:-14 38:37 39:28 40:-12 41:-18 44:-19 45:-24 46:-15 48:55 49:-14 51:-12 52:-10 53:23 55:-12 56:178 60:15 62:16 63:18 64:-15 65:-11 66:-15 70:27 74:-10 78:-9 79:-15 82:-16 83:9 84:98 85:49 88:76 90:-10 92:-12 96:20 97:-8 99:56 100:106 102:-13 103:-28 104:-16 105:45 106:-40 107:-11 108:-14 110:15 111:-9 112:-22 115:-11 116:-11 119:11 122:11 125:-9 126:34
is set	4:8 8:-14 24:-17 84:-22 85:8 88:19 126:101
asid	2:-11 5:-8 8:-20 9:-9 13:-14 15:-9 19:-8 24:94 30:-11 32:-9 36:27 37:-17 38:50 44:-13 48:-12 56:-10 65:-9 66:-8 84:163 85:50 88:-9 108:-11 109:22 114:-9 115:-10 116:-13 126:73
set asid	8:-19 9:-8 13:-9 24:75 30:-8 32:-8 48:-9 84:32 85:75 116:-12 126:88
asid for	13:-8 24:23 34:10 36:15 37:-15 38:38 84:-91 85:66 126:77
for which	11:23 30:19
asid and	24:11
and for	0:11 2:-17 4:87 5:-15 6:72 9:-11 10:68 11:-15 13:-32 16:-38 17:-29 18:-16 19:31 20:-12 22:-11 24:174 28:-23 30:8 33:-8 41:8 44:-20 84:-35 85:-13 106:-9
who $	15:13 26:-8 29:36 34:-11
whom==	9:-44 10:35 11:-12 13:-21 15:106 17:-8 19:22 20:-13 24:52 26:-9 27:18 30:-13 31:-8 32:32 33:61 34:25 50:-9 126:-16
whom	9:-44 10:35 11:-12 13:-21 15:106 17:-8 19:22 20:-13 24:52 26:-9 27:18 30:-13 31:-8 32:32 33:61 34:25 50:-9 126:-16
for whom	24:72 30:-13
whom $	9:-10 11:-10 13:-14 15:49 19:9 24:35 27:9 32:60 33:-8 34:16 50:-9
hold==	0:-18 1:-39 3:-19 4:-8 5:-12 6:-8 9:16 13:-13 15:-11 16:-10 18:78 19:-8 22:-12 24:40 28:-10 31:9 32:-10 34:-20 36:44 37:-37 38:150 39:70 41:-25 44:-17 70:-14 71:-18 75:-9 84:93 85:30 90:39 91:-17 97:-12 114:-11 115:13 121:-8 122:15 126:52
hold	0:-24 1:-49 3:-18 4:-15 5:-16 6:-13 9:29 11:-16 12:-14 13:-28 14:-17 15:-18 16:-18 17:-15 18:68 19:-15 20:-11 21:-10 22:-17 24:236 26:-19 28:-16 29:-9 30:54 31:11 32:-11 33:-15 34:-36 36:27 37:-43 38:130 39:99 41:-42 44:-32 46:-9 48:-10 49:-11 51:-12 56:-8 58:-8 59:-9 65:-8 66:-10 67:27 70:-10 71:-20 75:-9 84:72 85:171 90:59 91:-34 99:-14 100:22 108:-11 109:-13 111:-8 114:-14 115:11 121:-10 122:14 125:-8 126:36
we hold	8:16 24:51
hold for	24:54 34:-10 38:-13 84:-8 85:79
you==	0:-43 1:-33 2:19 3:21 4:-21 6:-11 7:16 8:21 10:11 11:-17 13:15 14:-16 16:-36 18:-16 19:-19 20:-11 21:-13 22:-30 23:-18 24:20 26:-25 28:8 29:-12 30:-35 31:-23 32:-17 34:39 35:20 36:78 37:13 38:36 39:29 40:-10 41:27 42:-11 43:-8 44:-23 46:-9 48:30 49:-12 54:10 59:9 61:10 62:-11 65:8 67:-9 68:-17 70:30 71:-14 72:-18 75:-12 76:64 78:-13 80:-11 82:33 87:10 89:11 90:-12 92:-17 93:-8 96:-11 97:-12 99:-20 101:14 102:-27 103:28 104:14 107:10 109:-13 111:-11 113:22 114:21 115:13 117:-19 118:-12 119:18 121:-13 122:23 123:-15 124:35 125:46 126:-22
you	0:-43 1:-33 2:19 3:21 4:-21 6:-11 7:16 8:21 10:11 11:-17 13:15 14:-16 16:-36 18:-16 19:-19 20:-11 21:-13 22:-30 23:-18 24:20 26:-25 28:8 29:-12 30:-35 31:-23 32:-17 34:39 35:20 36:78 37:13 38:36 39:29 40:-10 41:27 42:-11 43:-8 44:-23 46:-9 48:30 49:-12 54:10 59:9 61:10 62:-11 65:8 67:-9 68:-17 70:30 71:-14 72:-18 75:-12 76:64 78:-13 80:-11 82:33 87:10 89:11 90:-12 92:-17 93:-8 96:-11 97:-12 99:-20 101:14 102:-27 103:28 104:14 107:10 109:-13 111:-11 113:22 114:21 115:13 117:-19 118:-12 119:18 121:-13 122:23 123:-15 124:35 125:46 126:-22
did you	24:10 34:-12
you hold	24:29
do you	1:16 5:-8 9:9 10:-17 25:14 28:24 33:11 34:11 126:17
have you	35:23
we keep	8:-15 9:27 22:15 24:29 30:22 31:24 38:-8 48:-11 52:12 53:25 54:-9 101:13 126:-27
keep for	24:62 30:-12 85:19
are you	24:27
you keep	24:16 38:10 39:-11 60:9
hold==ing	1:-8 8:19 9:9 24:25 32:8 36:-9 38:-17 39:38 41:-17 68:10 84:-9 85:43 90:22 91:-16 97:17 126:23
)~",
R"~(hold $	8:-10 14:-8 18:16 24:142 32:-8 36:-9 38:37 39:26 85:-15 126:-38
asid of	24:14
reserv of	24:15
held of	0:-12 24:22
are reserv	27:30
reserv $	8:-9 24:24 27:69
asid $	8:-10 24:56 32:-8 84:86 126:-32
hold==s	8:-26 13:-10 14:-9 17:-15 18:-8 24:171 26:-9 30:48 32:-8 34:-12 36:-8 39:-8 44:-14 67:32 84:-12 85:98 92:11 99:-10 100:24 126:-38
who hold	24:12 27:14
hold piece	38:11
reserv #d	24:11 38:12
keep==s	0:12 4:-13 11:17 13:-20 15:-10 17:41 24:15 34:-13 92:66 110:10 112:14 126:-15
keep number	24:17 38:8
hold #n	0:-9 38:35 97:-10 122:16
kept==	0:-14 1:-16 13:-11 17:-8 18:-8 21:9 24:128 26:-9 31:30 34:-9 37:-20 38:32 39:59 40:10 41:-13 79:12 84:29 85:36 126:-34
kept	0:-14 1:-16 13:-11 17:-8 18:-8 21:9 24:128 26:-9 31:30 34:-9 37:-20 38:32 39:59 40:10 41:-13 79:12 84:29 85:36 126:-34
kept for	1:-11 13:-8 24:93 38:19 39:8 84:22 85:42 126:-20
@wire reserv	24:28 27:-9
#n reserv	24:25 27:-10 37:-13 38:11
#n held	24:19 38:28 85:20 90:18 126:-9
#n kept	38:10 39:8
#n free	1:-9 24:67 39:-12 66:13 126:-10
@wire held	24:47
taken==	2:-9 5:9 11:-10 12:28 24:43 26:-14 27:108 30:-23 37:22 64:13 65:11 73:19 76:-12 96:23 98:15 102:-13 104:-10 105:18 113:-8 120:12 126:-34
taken	2:-9 5:9 11:-10 12:28 24:43 26:-14 27:108 30:-23 37:22 64:13 65:11 73:19 76:-12 96:23 98:15 102:-13 104:-10 105:18 113:-8 120:12 126:-34
taken $	24:15 26:-11 27:13
anyth set	24:16 85:-8
anyth held	24:8
anyth reserv	24:-22 27:43
much of	8:8 9:-8 10:20 21:-8 24:30
spring==	0:-10 7:15 8:-13 9:-12 13:-10 19:-9 22:51 25:138 26:-11 30:-8 37:-8 38:-8 39:17 46:30 51:-8 63:-11 64:-10 67:-27 76:-12 82:12 92:-8 96:-17 106:11 111:15 113:8 114:8 115:-8 116:15 125:-10 126:82
back==	0:-20 1:-14 2:-21 3:-18 4:-29 5:-12 6:-10 7:-10 8:-30 10:-10 11:-25 12:-14 13:-39 14:-17 15:-17 16:-30 17:-24 18:-15 20:-13 21:10 22:-15 24:22 25:151 26:30 27:-26 28:-19 29:-32 30:-38 32:-21 33:-15 34:13 36:8 37:-25 39:69 41:-21 44:-11 45:-25 46:101 48:13 49:-13 51:-9 53:-16 54:-20 56:-16 58:-10 59:-9 62:-9 63:-41 64:180 65:-35 66:48 67:-10 70:-10 71:-13 73:14 74:-9 76:-25 78:-16 79:-18 82:-11 83:-8 84:-24 85:51 87:-12 88:9 91:-9 92:-31 93:-9 94:-13 95:50 96:36 97:-10 100:-43 103:136 104:-11 105:-23 106:-21 107:77 108:58 109:14 111:-28 112:-21 113:53 114:24 115:25 117:-11 118:-15 119:16 120:23 123:-9 125:147 126:16
interval==	25:23
stay==	0:-11 3:88 16:-10 23:18 25:88 26:-10 36:-12 42:-9 43:-14 54:25 55:37 74:29 91:-14 93:-10 94:24 102:-10 103:39 110:-8 111:9 112:-9 113:-12 126:-52
spring	0:-10 7:15 8:-15 9:-15 13:-11 19:-9 22:50 25:188 26:-12 28:-8 30:-10 37:-8 38:-8 39:17 46:30 51:-8 63:-12 64:-11 67:-27 76:-13 82:12 92:-9 96:-18 106:11 111:15 113:8 114:8 115:-9 116:15 125:-11 126:69
^ spring	5:11 22:52 25:60 46:40 48:15 76:-12 126:-20
back	0:-20 1:-14 2:-21 3:-18 4:-29 5:-12 6:-10 7:-10 8:-30 10:-10 11:-25 12:-14 13:-40 14:-17 15:-18 16:-30 17:-25 18:-15 20:-13 21:10 22:-15 24:22 25:166 26:30 27:-26 28:-19 29:-32 30:-38 32:-21 33:-15 34:12 36:8 37:-25 39:69 41:-21 44:-11 45:-26 46:100 48:13 49:-13 51:-9 53:-16 54:-20 56:-16 58:-10 59:-9 62:-9 63:-41 64:180 65:-36 66:47 67:-10 70:-10 71:-13 73:14 74:-10 76:-25 78:-16 79:-18 82:-11 83:-8 84:-24 85:51 87:-12 88:9 91:-9 92:-31 93:-9 94:-13 95:50 96:35 97:-10 100:-43 103:136 104:-11 105:-23 106:-21 107:77 108:56 109:14 111:-28 112:-21 113:53 114:24 115:23 117:-11 118:-15 119:16 120:23 123:-9 125:147 126:16
spring back	25:113 46:-10 125:-8 126:43
interval	25:23
stay	0:-21 3:86 4:-8 9:-9 13:-8 15:-12 16:-14 17:-12 23:17 24:-9 25:117 26:-17 29:-11 30:-9 34:-10 36:-13 37:-19 38:48 39:-9 42:-13 43:-28 44:-13 45:-9 46:111 49:-16 53:29 54:38 55:37 63:-21 64:-8 65:18 66:-47 70:-12 74:16 78:-11 84:-8 91:-16 92:24 93:-11 94:53 96:-10 102:-12 103:61 107:-22 110:-23 111:39 113:-16 114:-10 115:-9 120:14 126:27
by load	8:-8 25:53
@job stay	3:22 49:-10 91:-13 94:8 120:16
back the	66:17 107:15 113:15 125:17
@job by	31:23 42:20 93:-10 126:8
mm by	50:9 56:-10 75:11 86:8 89:11
load $	8:-10 16:17 25:57 88:26 126:-10
sprang==	4:-9 13:-29 16:-10 17:-11 25:144 34:-16 46:187 76:-8 90:-16 98:-12 108:-8 126:-10
sprang	4:-9 13:-29 16:-10 17:-11 25:144 34:-16 46:187 76:-8 90:-16 98:-12 108:-8 126:-10
what sprang	13:-18 25:79 34:-9 46:-10
sprang in	13:-9 25:27
sprang on	13:-12 25:89 34:-8 46:31
sprang back	25:15 46:47
back in	26:-16 29:-9 39:32 64:13 73:-15 79:-11 96:57 102:-23 103:54 109:-8 111:-8 112:-8 126:86
sprang of	25:19
back on	25:30 39:37 46:44 64:35 76:-12 98:-8 116:21 126:-38
fret sprang	25:30
anyth spring	25:21
spring on	25:14
anyth sprang	25:19
did anyth	0:-12 25:38 34:9
back of	88:24 126:-14
often==	25:38 59:28
often	25:38 59:28
how often	25:29
often doe	25:16
@wire spring	25:20
back $	4:-9 11:-9 13:-10 17:-8 24:17 25:74 26:98 30:-12 32:-9 34:-8 38:-8 44:16 63:14 64:41 66:-10 86:9 102:-42 103:41 108:-10 109:18 113:15 125:46 126:-50
do @wire	25:34 126:-12
wire spring	25:9
back with	64:25 126:-8
the interval	25:15
interval $	25:20
spring with	25:12 106:12
spring $	25:26 39:19 48:8 113:12
fret spring	25:-18 126:70
with an	99:19
doe fret	3:24 16:-10 17:22 78:-8 93:-14 126:42
do someth	17:14 25:11 100:9
someth spring	25:11
doe someth	31:11
they==	0:-9 1:-15 2:49 3:-14 4:10 5:-11 8:-11 9:-16 10:-34 12:27 13:-13 14:-10 16:-20 17:-13 20:-10 22:-9 24:18 25:9 26:17 29:-9 30:-8 32:37 33:76 34:-13 36:-8 37:-10 38:-8 39:-10 40:-14 41:-8 42:22 43:-8 46:25 50:-8 51:9 56:-16 67:-11 71:11 73:-14 76:13 80:16 81:-15 83:-21 88:-8 89:13 90:-10 96:11 100:-13 101:12 104:-9 105:21 107:-9 108:-14 109:-8 114:15 115:8 117:36 119:17 120:13 121:51 122:13 123:31 126:10
they	0:-9 1:-15 2:49 3:-14 4:10 5:-11 8:-11 9:-16 10:-34 12:27 13:-13 14:-10 16:-20 17:-13 20:-10 22:-9 24:18 25:9 26:17 29:-9 30:-8 32:37 33:76 34:-13 36:-8 37:-10 38:-8 39:-10 40:-14 41:-8 42:22 43:-8 46:25 50:-8 51:9 56:-16 67:-11 71:11 73:-14 76:13 80:16 81:-15 83:-21 88:-8 89:13 90:-10 96:11 100:-13 101:12 104:-9 105:21 107:-9 108:-14 109:-8 114:15 115:8 117:36 119:17 120:13 121:51 122:13 123:31 126:10
do it	30:19 31:9 48:14 56:-11 62:12 65:17 66:17 104:21 122:10 126:-29
doe anyth	22:24 25:11
sure==	4:-9 8:-14 18:9 25:74 39:-8 46:20 62:10 76:-10 85:8 90:14
sure	4:-9 8:-14 18:9 25:74 39:-8 46:20 62:10 76:-10 85:8 90:14
how sure	8:-14 25:74
sure is	8:-12 25:57
that $	0:52 5:-17 11:-8 12:-9 17:-10 22:-8 23:-9 25:20 26:-12 28:-8 30:-9 31:-15 32:-10 33:-13 34:8 36:-32 37:74 42:12 44:-13 49:-8 52:-14 56:9 65:18 70:11 89:11 94:9 97:9 105:26 106:8 107:34 112:-8 118:-8 120:14 122:23 123:-18 125:58 126:49
that of	8:-11 25:26
the spring	25:19 126:8
@wire with	19:12 21:18 40:11 69:9
mm==	0:34 1:30 2:-23 3:15 4:-20 6:-12 7:70 9:-18 13:-10 15:-8 16:60 17:-19 18:32 19:-15 20:-18 21:-13 22:-33 24:-20 28:-8 31:-9 32:-11 33:-8 34:-14 37:-12 38:17 39:23 40:17 41:34 42:26 43:31 44:-15 45:-21 46:-11 47:12 49:-8 50:58 52:19 56:136 61:-16 66:-11 68:-42 69:23 70:63 72:-14 73:12 75:33 76:-24 77:54 78:-20 80:-32 81:9 82:-15 83:-19 86:71 87:-15 88:32 89:46 90:-19 91:-11 92:-15 93:50 94:-11 96:-13 98:-12 99:-13 100:-11 105:-11 108:-10 109:-10 114:-9 115:-8 117:-14 118:37 119:-11 120:-14 121:-14 122:-8
for each	0:-16 4:35 25:14
each mm	25:11
per==	7:14 12:-10 14:10 19:9 25:51 28:11 68:-12 69:29 105:22 121:9 126:-11
per	7:14 12:-10 14:10 19:9 25:51 28:11 68:-12 69:29 105:22 121:9 126:-11
per mm	25:9
down==	0:-18 1:-24 2:28 3:-40 4:-26 5:-20 6:-10 8:10 9:-25 10:-8 11:15 12:-18 13:-13 14:-16 17:-13 18:-20 20:-8 21:-8 22:-23 23:-18 24:-31 25:66 26:14 27:34 28:9 29:-15 30:-31 31:-15 32:-17 33:-15 34:-22 36:18 38:-33 39:-14 40:-17 42:30 43:16 44:-17 45:81 46:40 47:-11 48:10 49:-17 50:-18 51:-25 52:34 53:-18 56:10 58:16 62:19 63:8 64:-12 65:-10 70:20 73:-8 75:28 76:15 77:-10 79:-15 82:-10 83:-9 84:-19 85:-28 86:14 87:-9 88:-20 89:21 90:44 91:27 93:57 96:-14 97:60 98:140 100:16 101:-20 102:85 103:-28 104:-12 106:-15 107:-18 108:-23 109:63 112:13 114:-17 115:-13 116:-20 118:-16 122:18 123:23 125:-9 126:27
^ at	6:19 9:19 13:-13 15:30 16:-8 25:30 29:30 32:-11 37:-14 44:-8 46:28 51:-9 65:-8 67:-10 77:14 90:-17 97:10 108:11 120:10 126:22
at what	6:20 10:16 13:-9 14:-10 15:10 16:-8 19:10 25:21 26:11 29:49 30:-27
)~",
R"~(load doe	16:12 25:16
it stay	3:28 25:18 38:-16 42:-8 43:-10 92:10 93:-8 126:37
down	0:-19 1:-24 2:28 3:-40 4:-26 5:-21 6:-10 8:10 9:-25 10:-8 11:15 12:-19 13:-13 14:-16 17:-13 18:-21 20:-8 21:-9 22:-24 23:-19 24:-32 25:66 26:14 27:33 28:8 29:-15 30:-31 31:-15 32:-17 33:-15 34:-22 36:16 38:-33 39:-14 40:-17 42:30 43:16 44:-18 45:81 46:40 47:-11 48:10 49:-17 50:-18 51:-25 52:34 53:-18 56:10 58:15 62:19 63:8 64:-12 65:-10 70:20 73:-8 75:28 76:15 77:-10 79:-15 82:-10 83:-9 84:-19 85:-28 86:14 87:-9 88:-20 89:21 90:44 91:27 93:57 96:-14 97:60 98:140 100:16 101:-21 102:85 103:-28 104:-13 106:-16 107:-18 108:-23 109:87 112:13 114:-17 115:-13 116:-20 118:-16 122:18 123:23 125:-9 126:26
stay down	25:61 46:66 97:11 126:-44
down $	2:-11 8:-12 9:-10 11:-18 13:11 14:-10 15:-14 16:-11 17:-9 23:-9 24:-10 25:74 26:22 27:-26 30:-11 31:8 32:-9 36:31 42:20 44:-8 45:54 46:73 52:41 56:-10 68:-14 70:22 85:-20 90:-10 92:13 97:18 98:19 100:-17 101:-10 102:48 103:-15 109:-12 113:9 117:-10 126:93
^ from	0:15 5:40 10:-12 15:-11 19:18 21:-13 25:13 28:15 30:10 32:-17 33:-9 34:18 37:-22 39:18 41:-8 50:14 51:20 54:18 56:16 57:10 59:45 62:-11 65:28 66:-16 71:8 72:20 76:-13 80:11 83:15 86:9 88:8 89:-8 100:-13 102:20 105:13 106:-9 110:16 111:-11 112:-8 118:-9 120:-10 121:18 126:-37
from which	0:9 1:-9 4:-11 5:23 10:49 13:32 19:21 25:11 33:-18 52:18 74:-19
load do	25:22
fret stay	3:11 25:16 43:-8
down with	16:-9 45:14 89:11 97:31 98:56 126:-19
from what	5:68 19:-14 25:16 74:11
do fret	25:-9 126:74
do they	2:11 16:-12 26:11 28:11 32:26 33:27 126:-13
them==	0:-20 1:-10 2:93 3:-25 4:17 5:-9 6:-12 8:-27 10:15 11:-8 12:11 13:12 14:-24 16:34 17:-11 20:-10 21:-10 24:-14 25:11 26:22 27:-11 29:-15 30:-13 31:-20 33:18 34:-14 36:-20 37:-10 38:-10 39:-13 40:33 41:-8 43:-8 51:10 53:24 54:-12 56:-9 58:-9 59:-14 71:-18 73:65 75:24 76:63 77:-9 78:-8 79:-12 81:-28 82:59 84:11 85:23 88:-9 90:-15 92:-15 93:-10 96:19 97:11 99:54 100:16 101:23 104:12 106:-9 108:-10 111:-9 112:-15 113:-9 117:-23 118:-11 120:17 122:27 123:45 125:-10 126:-37
load hold	25:12
them	0:-20 1:-10 2:93 3:-25 4:17 5:-9 6:-12 8:-27 10:15 11:-8 12:11 13:12 14:-24 16:34 17:-11 20:-10 21:-10 24:-14 25:11 26:22 27:-11 29:-15 30:-13 31:-20 33:18 34:-14 36:-20 37:-10 38:-10 39:-13 40:33 41:-8 43:-8 51:10 53:24 54:-12 56:-9 58:-9 59:-14 71:-18 73:65 75:24 76:63 77:-9 78:-8 79:-12 81:-28 82:59 84:11 85:23 88:-9 90:-15 92:-15 93:-10 96:19 97:11 99:54 100:16 101:23 104:12 106:-9 108:-10 111:-9 112:-15 113:-9 117:-23 118:-11 120:17 122:27 123:45 125:-10 126:-37
hold them	25:9
them down	2:18 25:16 82:8 99:12 122:12 123:-11 126:-20
load keep	25:18
keep them	2:-8 73:9 84:10 126:24
hold fret	92:8
fret down	2:-12 16:20
keep the	31:25 37:-8 38:27 39:-12 48:-11 52:-19 53:-11 55:18 87:-21 126:59
@wire down	8:16 9:-10 25:10 51:-10 67:21 69:10 89:9 126:10
keep fret	92:10
hold the	23:13 27:12 30:27 39:-11 68:10 115:11 126:16
machine==s	8:-19 9:-12 10:-8 11:-21 12:-21 14:-32 22:-11 23:-13 24:-10 26:214 27:53 28:-10 29:-11 30:54 32:-10 33:-20 36:-12 56:-9 58:-21 99:103 101:123 103:-11 104:-12 107:-14 123:-11 126:27
machine	8:-19 9:-12 10:-8 11:-21 12:-21 14:-32 22:-11 23:-13 24:-10 26:214 27:53 28:-10 29:-11 30:54 32:-10 33:-20 36:-12 56:-9 58:-21 99:103 101:123 103:-11 104:-12 107:-14 123:-11 126:27
^ machine	26:60 99:29 126:-19
machine $	23:-8 26:18 30:27 58:-12 99:45 100:-8 101:58 102:-8 104:-9 123:-8 126:55
what machine	8:-12 26:67 30:-10
machine do	26:29
which machine	12:-10 26:32 27:48 30:-12
machine have	8:-8 26:35
machine are	26:43 27:25 30:-11
the machine	14:-11 23:-9 26:28 27:15 30:23 33:-9 58:-15 99:43 101:40 123:-8 126:58
is bench	24:-10 26:45 27:14
servic==e	26:84 56:-8 87:12 100:-17 102:54 103:114 106:-11
sander	0:-11 1:-10 3:-8 4:-9 5:-15 6:-9 7:-10 8:-30 9:-29 10:-13 11:-39 12:-31 13:-23 14:-56 15:-15 16:-12 17:-20 19:-9 20:-11 21:-13 22:-23 23:28 24:-22 25:-14 26:245 27:136 28:18 29:-67 30:57 31:-28 32:-27 33:-28 34:-28 36:-38 37:-10 38:-13 39:-32 41:-16 45:-10 46:-15 48:-17 49:-23 51:-9 53:-22 54:-31 55:-18 56:-27 58:-29 59:-17 60:-8 61:-18 62:-26 63:-21 64:-22 65:-12 66:-22 73:-8 78:14 79:-9 82:-12 84:-13 85:-18 87:-12 88:-14 90:-14 92:-12 94:-10 96:-8 98:-12 99:-50 100:256 101:130 102:247 103:215 104:141 105:-53 106:191 107:189 108:-13 109:-22 110:-23 111:-54 112:-35 113:-21 114:-13 116:-15 118:-14 119:-18 120:-11 121:-10 122:-16 123:-23 125:-23 126:44
is sander	23:-8 26:76 27:14 103:-16 126:-9
sander in	27:30 29:-10 100:22 101:16 102:11
servic	26:84 56:-8 87:12 100:-17 102:62 103:114 106:-19
in servic	26:92 102:-27 103:40 126:-12
servic $	26:46 100:-10 103:98 126:-8
^ bench	14:-13 24:-8 62:23 65:-10 100:49 102:93 103:54 106:13 126:-19
press in	26:74 103:-23 126:-9
who at	26:14
at at	102:-9 103:9
at bench	14:-13 26:16 62:12 104:12
^ anyon	26:10 39:23
is at	0:-9 14:-20 15:12 26:42 38:10 57:8 58:11 62:8 68:12 77:-24 102:13 112:18 126:24
belt	3:-10 12:-10 14:-9 23:27 26:16 29:-12 30:15 43:20 99:20 100:45 101:18 102:55 103:46 106:49 107:50 111:-12 126:-42
at belt	104:9
belt sander	14:-8 23:17 26:16 29:-11 30:23 99:-10 100:36 101:10 102:25 103:16 104:13 106:42 107:55 111:-11 126:-15
sander now	26:16 100:17 104:32 106:16
is anyon	15:28 24:-14 26:25 27:21 29:18 102:-8 106:-13
anyon at	26:11
at on	26:13 30:16 34:16
on bench	26:8
bench now	14:-12 26:25 62:21 104:12 106:10
press now	26:-8 45:27 100:10 104:29
on belt	30:8 104:19
sander $	11:-12 12:-12 13:-8 14:-18 23:44 26:28 27:55 28:47 30:66 32:-8 33:-8 36:-14 61:-8 70:10 78:24 100:25 101:71 102:-34 103:-26 104:123 106:-40 107:58 126:-71
has belt	26:22
using==	1:-13 2:8 14:-14 17:-8 21:79 22:-9 26:39 34:-10 36:20 37:26 39:14 83:-8 87:19 107:36 113:-10 126:-30
using	1:-13 2:8 14:-14 17:-8 21:79 22:-9 26:39 34:-10 36:20 37:26 39:14 83:-8 87:19 107:36 113:-10 126:-30
is using	14:-12 26:34
using bench	26:9
use==s	5:-11 84:16 94:18 102:19 104:29 126:-24
use bench	26:15 102:36 111:-15 126:-8
has bench	26:9
work==ing	8:-14 26:77 27:-8 29:82 30:-16 32:-8 36:-9 53:16 54:-9 59:12 62:-15 63:13 102:36 107:-14 111:-32 112:79 113:18 126:-48
is work	14:-10 26:8 29:16 113:22
work on	13:-31 14:-28 15:31 16:-12 17:-10 27:-9 28:23 30:19 39:-24 44:-13 48:-11 54:58 55:22 62:-9 63:-15 64:-10 66:46 102:18 107:-15 108:50 109:71 110:45 111:28 112:13 113:-35
on press	26:28 29:-8 30:17
work at	14:-8 29:-9 59:9 62:64 64:-8 65:-8 99:12 102:19 108:9 109:14 112:-18
is belt	26:11 30:13
okay $	0:-14 2:13 3:26
sander ok	26:12
sander all	106:13
press back	100:-10 103:54 107:11
fix==ed	8:43 9:-19 19:-12 26:-8 33:-8 48:14 53:22 66:-10 74:16 97:21 100:-9 102:-23 103:83 107:-8 112:-10 119:13
fix	8:43 9:-19 14:12 19:-12 26:-11 29:-10 33:-8 48:14 53:22 66:-10 70:41 74:19 97:21 100:-11 102:-23 103:81 107:-9 108:8 112:-10 119:13 126:10
sander fix	102:-9 103:32
fix $	100:-9 102:-21 103:66 107:-8
^ until	9:13 11:16 26:20 29:33 55:-8
until when	9:24 11:15 26:19 29:18 126:-8
bench out	102:13
of servic	26:9 102:79 103:-31 126:27
sander back	100:-8 103:19
bench back	26:8 107:38 126:-9
sander out	102:23 103:-13 126:13
which press	11:14 26:8
press is	11:-8 23:-11 26:-85 28:-10 30:9 45:-10 56:-9 100:28 102:90 103:88 104:29 105:-12 106:22 107:-21 116:10 126:24
is down	26:49 37:-8 42:-19 44:-10 68:15 85:-14 91:22 92:8 93:51 102:36 105:12
bench is	13:-15 14:26 15:24 24:-8 30:-8 100:44 102:28 106:16
which sander	26:13
sander is	27:-16 30:-21 100:16 101:18 103:49 106:45 107:-12 126:10
work $	1:-13 14:-24 26:49 28:-12 29:21 30:48 31:8 36:56 54:-13 62:31 63:-13 96:-10 99:21 100:-9 102:-8 109:22 111:-22 112:29 113:21
need bench	26:29
which work	26:11
work need	26:13
need belt	101:-9 106:11 107:27
stage==s	4:-13 15:-9 17:-15 26:10 28:257 31:-12 34:-9 109:-12 126:-11
stage	4:-13 15:-9 17:-15 26:10 28:257 31:-12 34:-9 109:-12 126:-11
which stage	26:12 28:15
need sander	26:27 28:-12 100:-10 104:23 106:12
sander need	100:18
bench for	26:34 62:-17 104:-27 106:71 126:54
sander for	26:18 27:25 102:-8 106:42 107:27 126:8
is done	11:-11 12:31 13:31 15:-11 23:-9 28:-10 30:-20 34:-21 37:67 41:-10 44:-11 45:49 46:27 49:-8 65:-8 76:41 100:-8 102:-10 104:91 109:-15 114:-15 115:65 116:-20 126:-36
)~",
R"~(done at	12:40 13:-12 16:-9 28:9 44:-12 45:11 46:12 65:32 104:13 116:-8
on sander	26:8 30:9
use press	102:8 126:-8
the sander	8:-9 11:-12 12:-13 14:-23 17:-9 23:-27 26:49 27:50 28:56 29:-20 30:21 31:-8 32:-8 33:-10 34:-11 36:-13 39:-10 44:14 49:-11 54:-10 56:-8 58:-14 62:-9 63:-8 70:8 78:23 85:-11 99:-18 100:33 101:20 102:26 103:53 104:98 105:-21 106:85 107:64 109:-8 110:-13 111:-16 112:-16 113:-9 125:-8 126:77
of bench	100:13
of press	16:19
of sander	30:11 100:44 102:-9
the bench	1:8 2:-9 5:-20 6:32 12:-13 14:-34 23:15 26:54 28:-8 30:-11 34:-13 53:-8 58:-8 59:-45 61:8 62:-12 63:31 64:-8 65:-14 68:11 78:25 88:13 99:-9 100:96 101:15 103:25 104:76 106:10 107:30 111:-13 112:-10 126:31
are free	65:16 85:13
are down	17:12 25:-9 100:10 102:34
many bench	26:23
sander are	26:-19 100:-14 101:12 102:70 103:27
many sander	8:-9 26:42
press do	30:23
booking==s	10:-13 11:-9 27:313 29:-12 30:-21 39:-17 54:-8 62:-10 63:-11 64:-8 106:-8 107:49 111:-11
machin==e	0:-8 1:-8 2:-9 9:-10 10:-20 11:-24 12:-16 13:-18 14:-43 15:-17 16:-8 17:-9 22:-12 23:-18 24:-18 25:-11 26:74 27:117 29:-27 30:66 31:-9 32:-14 33:-15 34:-14 36:32 39:-11 50:-11 56:-16 58:-21 59:-25 60:51 61:8 62:-25 63:-15 64:-11 86:-8 87:-10 99:166 100:48 101:175 102:9 103:77 104:82 105:-14 106:36 107:-12 109:-12 111:-8 113:-9 121:-11 123:-12 125:-17 126:-12
person==	12:-14 13:-26 14:-30 15:80 23:-8 26:-13 29:32 30:33 31:-9 34:-9 39:-9 48:-14 49:-25 50:-9 56:-15 59:118 60:53 61:-16 62:86 63:94 64:84 65:-12 66:83 88:-9 99:-22 100:-16 101:-15 103:-9 104:-12 108:11 109:-10 110:15 114:-11 115:-18 121:-11 126:-21
booking	10:-13 11:-9 27:313 29:-12 30:-21 39:-17 54:-8 62:-10 63:-11 64:-8 106:-8 107:49 111:-11
^ booking	27:73
machin	0:-8 1:-8 2:-9 9:-10 10:-20 11:-24 12:-16 13:-18 14:-43 15:-17 16:-8 17:-9 22:-12 23:-18 24:-18 25:-11 26:74 27:117 29:-27 30:66 31:-9 32:-14 33:-15 34:-14 36:32 39:-11 50:-11 56:-16 58:-21 59:-25 60:51 61:8 62:-25 63:-15 64:-11 86:-8 87:-10 99:166 100:48 101:175 102:9 103:77 104:82 105:-14 106:36 107:-12 109:-12 111:-8 113:-9 121:-11 123:-12 125:-17 126:-12
morn machin	101:-12 103:18
machin press	26:-16 99:-19 100:17 103:32 106:10
press machin	99:-9 101:-11 103:18
machin belt	27:8 99:-9 101:-17 102:8 103:16
sander machin	27:15 101:-30 103:20
machin bench	26:-8 99:-16 101:53 104:-15 106:10
bench machin	61:11 99:-9 106:8
person @person	29:42 30:32 59:-49 60:10 61:-10 63:26 64:-26 66:-10 101:-9 108:22 110:16 115:-13
@person day	62:-9 110:17 111:-16 112:21
machin sander	26:-19 99:-18 100:11 101:47 103:13
@person machin	30:9
the booking	27:44 39:-16 107:54 126:-8
booking $	27:79
show booking	27:12
booking for	10:-10 27:56
booking on	27:34 126:25
today even	102:15
my booking	27:20
booking in	27:16
booking of	27:36
sander tomorrow	106:10
the afternoon	11:18 34:-10 44:27 53:14 55:-11 106:27 110:17 111:25 112:-14
for press	28:23 45:-8 102:-11 104:34 107:10
#o in	79:-12 96:28
sander the	107:17
book==ed	11:-19 13:-18 14:-9 24:-14 26:21 27:208 29:-9 30:-37 31:-8 34:-13 49:-12 71:21 85:-14 100:18 102:-18 107:85 118:9
who book	27:19
book press	106:33
press book	26:58 27:-41 30:-13 107:29 126:-9
book on	20:16 27:42 107:10
has press	27:13
sander on	27:36 29:-11 100:-9 106:36 107:63 110:-10 111:-16 112:-13
has sander	27:9
bench book	107:12
book $	26:-11 27:30 71:21 106:19 107:40
book for	12:20 13:-19 24:-13 27:88 30:-8 49:-15 50:10 85:-19 107:106 126:-15
has book	27:9
is book	13:-17 24:-10 26:-19 27:71 49:-10 107:75 126:-25
book bench	106:34
bench reserv	27:13
reserv this	27:34
december afternoon	27:17 30:-8
bench on	102:30 106:25 111:-14
@person in	29:71 53:-13 63:-13 64:27 110:-32 111:-11 112:42 126:-17
in next	99:8
&@day@person	11:-12 12:-8 27:-16 30:46 31:-9 34:30 53:27 54:-14 62:-10 63:-42 64:-22 102:-13 107:53 110:106 111:33 112:-18 113:-23 126:32
by @person	44:33 62:-9 65:10 66:-8 105:-10 126:21
@person on	29:-11 34:-8 64:34 65:54 110:47 111:51 112:-51 126:-21
&#o@person	34:14 59:8 62:-9 111:20 112:13
for @person	12:22 24:-8 27:-38 29:-12 30:82 31:-17 38:-18 48:-10 61:22 62:15 63:-15 65:33 66:-10 72:-8 106:38 107:-10 110:57 111:67 112:10 119:13 126:-59
@person next	106:16 111:22 126:-10
which machin	13:-8 14:-21 15:-11 24:-10 27:48 28:19 29:-15 30:73
machin is	26:-23 27:-8 30:64 60:11
machine is	26:10
are book	27:9
reserv in	24:-10 27:15 84:13
i book	27:40
book in	51:33 118:9 119:-8
book==	10:-22 12:61 26:-10 27:-29 30:-9 32:45 34:-15 36:20 50:18 51:36 67:-19 99:-8 102:11 106:157 107:-28 111:31 112:-10 117:9 118:-14 119:-12 126:16
@day morn	11:10 27:18 30:-15 53:-9 54:60 74:14 106:10 107:-9 110:-11 111:26 112:-10 116:33 126:-20
tomorrow afternoon	27:-13 54:20 106:24 111:11
@person reserv	27:41 34:-9
@person book	27:30 34:-12 63:-9 107:25 126:13
did @person	24:-9 27:96 34:41 65:-9 107:-8 126:-18
the morn	53:14 54:14
for #r	16:12 45:10 48:29 92:10 113:23
&#r@person	29:10 54:17 62:-13 63:-15 110:-8 111:59
sander book	27:20 107:15
sander taken	26:-12 27:31
have belt	27:12 101:30 106:16
have bench	27:24 100:-8 101:9 106:34
have sander	27:19 29:-11 101:8
in @day	112:24
have press	101:8 106:16
#r even	27:9
in #r	48:-13 76:34 83:20 112:10
anyth book	27:28
book next	26:55 27:-27 30:-13
kind==	2:-22 8:21 14:20 25:13 28:47 31:10 39:14 41:19 45:-8 50:31 59:-9 65:9 67:-8 80:13 83:9 99:28 100:-8 101:27 110:16 111:11 112:-16 115:-11 120:17 121:-9 126:-39
bound==	13:33 15:-10 25:16 28:43 31:13 47:11 75:15
^ stage	13:-10 28:96
kind	2:-22 8:20 14:19 25:13 28:45 31:10 39:14 41:19 45:-8 50:31 59:-9 65:9 67:-8 80:13 83:9 99:28 100:-8 101:27 110:16 111:11 112:-16 115:-11 120:17 121:-9 126:-40
kind refret	28:21
@job fret	0:-18 2:28 3:-16 6:12 13:8 15:-9 16:-10 31:-11 34:14 37:22 40:-12 42:17 44:44 45:-16 48:-10 65:-9 72:15 73:-14 74:23 76:31 78:24 83:-10 90:10 93:11 94:-17 98:-8 109:-9 116:23 126:8
@job kind	28:9
some_slot	28:15
kind some_slot	28:14
some_slot kind	28:8
bound	13:33 15:-10 25:16 28:43 31:13 47:11 75:15
@job bound	13:34 15:-10
new_board	28:18
kind new_board	28:16
fil	0:-8 3:24 4:-8 9:-8 13:-17 14:-8 15:-9 17:-13 19:8 23:-8 25:12 26:-19 28:23 30:-9 31:13 34:-12 36:14 40:13 42:-15 43:36 44:61 46:-10 49:-12 56:26 64:12 65:-14 70:9 76:-12 78:14 90:-13 92:-10 94:-24 97:-10 98:109 99:-8 100:-8 104:54 105:18 108:61 109:25 126:11
end fil	1:9 40:16 44:42 94:-15 126:-15
stag==e	2:-8 4:-13 6:-11 11:-11 15:-11 16:-13 17:-20 26:-10 27:-10 28:126 30:-21 34:-9 44:48 45:-8 49:-9 65:-11 66:-8 99:-9 100:-20 101:-19 102:-8 104:133 105:120 108:45 109:15 115:-30 126:-14
#n fret	0:-19 1:-10 3:-13 4:33 5:-12 13:-34 16:-18 17:48 25:-11 28:88 31:94 34:-14 37:-9 42:39 44:-25 46:16 47:65 51:-13 65:9 71:18 72:-10 73:41 74:-13 76:-26 79:-23 80:-9 82:-12 86:10 90:-15 91:-9 92:29 96:12 97:13 105:48 108:-9 126:-61
#c fret	31:9
@job end	42:-8 43:22 94:12
round	2:-9 8:-16 11:-13 13:9 18:19 25:13 28:34 30:25 31:21 39:11 44:15 65:-10 76:-9 90:-8 104:27 105:31 108:11 109:-14 112:-12 113:19 115:8 126:-15
round end	28:10 31:23
stag	2:-8 4:-13 6:-11 11:-11 15:-11 16:-13 17:-20 26:-10 27:-10 28:126 30:-21 34:-9 44:48 45:-8 49:-9 65:-11 66:-8 99:-9 100:-20 101:-19 102:-8 104:133 105:120 108:45 109:15 115:-30 126:-14
stag slot	108:19 109:-10
fil fret	98:24 126:-9
#n kind	28:17
round job	46:8
stag pull	105:8
#n stag	44:10 109:13 115:-11
stag recheck	105:8
the stage	17:-10 28:78
stage of	13:-9 17:-10 28:65
stage for	28:48 109:-9
stage $	28:21
refret==	3:-11 9:-8 28:58 29:-12 30:-19 31:158 36:-11 43:8 49:63 78:21 126:-33
of refret	12:32
refret $	9:22 28:15 31:28
of a	1:16 4:16 28:27 56:16 70:9 81:18 91:-23 92:32 100:12 109:-8 110:8 112:-8 121:9
a whol	28:9 31:12 33:13 68:-9 69:16 105:9
whol job	31:22
whol refret	31:9
a job	12:40 27:-12 30:-9 31:15 36:27 104:11 126:-18
stage doe	28:36
fil==ed	3:25 13:-8 17:-10 28:18 31:15 36:20 40:14 42:-14 43:37 44:60 46:-8 56:29 64:14 70:10 76:-12 78:16 92:-8 94:-21 97:-9 98:115 104:9 108:-16 126:-61
what stage	13:19 28:27
refret with	28:15 31:11
with fil	3:8 28:18
fil end	28:25
stage has	13:24
has an	92:11
has a	13:-10 41:10 42:13 48:-8 58:22 59:-12 60:11 61:-9 63:-13 65:10 69:9 73:-8 74:-13 88:-8 89:32 91:26 95:62 99:19 100:17 102:-8 104:-13 111:40 119:22
)~",
R"~(a refret	28:41 31:13 36:-8 126:-8
the refret	49:53
refret have	9:11
at @job	11:31 28:10 46:14 116:-10
everyth of	13:-9 84:-22 85:73
refret take	28:9
doe work	110:-18 112:21
stag of	13:-13 28:24 108:39
the stag	105:11
round==ed	13:12 18:11 28:8 31:24 44:21 126:-10
with round	28:-8 31:20
end take	104:9 105:18
#n still	13:78 16:8 24:42 28:-13 39:-11 120:-16 126:-13
still take	28:9
@job still	0:11 13:25
far is	9:-18 13:16 28:43 45:27
far am	28:22
i on	28:10 29:15 30:-14
the work	9:18 13:-13 28:40 30:9 65:20
i with	28:12
we on	11:-12 12:15
much work	8:-9 13:-20 28:76
work is	12:40 24:-13 28:42 30:-18
left on	4:-8 9:37 13:37 28:14 30:9 67:8 72:14
is on	8:55 9:10 10:13 11:-32 13:-12 14:27 15:23 17:-18 23:-11 24:-20 25:-10 26:52 27:-52 29:-37 30:99 32:26 33:-11 34:-14 36:-10 40:10 42:-8 46:-23 49:-21 51:-10 66:9 68:9 69:-11 70:12 74:10 85:15 96:10 104:-8 109:26 111:17 116:40 118:16 119:-11 120:11
a fil	19:11 31:8
fil refret	31:10
next stag	13:-16 17:-11 28:30 108:39
stag for	28:27
stag on	13:-8 28:17
which stag	13:-14 28:34
stag come	28:17
stag is	13:31 28:10 44:21 105:23
true==ing	44:-8 104:12 105:20 108:47 109:24 126:-10
true	3:-10 8:53 13:-8 17:-9 44:71 49:-9 52:-13 88:-21 89:-15 92:-30 104:30 105:28 108:85 109:14 126:19
true the	44:-9 104:9 105:8 108:42 109:8 126:-22
fret take	104:16 105:12
pull==ing	2:-12 13:-27 15:-8 17:-8 26:-8 28:45 44:39 65:-13 73:-17 78:40 96:16 104:53 105:24 108:59 109:82 125:9 126:11
doe pull	28:9
pull the	2:-16 13:46 15:-9 17:-8 28:46 34:31 37:-8 49:12 58:11 73:-37 102:17 105:-10 108:49 109:10
the end	11:-12 16:-9 21:9 31:40 37:-9 42:35 43:20 44:45 73:-8 76:-13 79:-8 81:18 88:-16 90:-12 92:-9 94:78 97:24 98:-12 104:20 105:12 115:21 118:27 126:-29
pull fret	0:76 2:-16 4:-13 40:60 44:-12 73:44 80:9 82:18 104:42 105:9 108:23 109:9 126:-60
clean==ing	4:-11 18:-11 28:18 104:24 105:24 108:43 109:15 126:-11
doe clean	28:9
check==ing	108:29 111:28 126:-8
the take	105:10
doe crown	28:16
doe slot	0:-12 4:21
it take	9:-13 28:11 33:32 100:13
take to	6:24 9:-17 26:40 33:34 39:10 100:-14 126:-13
to clean	126:15
board==	0:-12 1:-10 3:-22 4:48 5:-10 10:-18 11:-8 13:-25 14:-9 15:-12 16:-27 22:-8 25:-9 26:12 27:10 28:94 30:-25 31:74 34:-16 36:-26 37:-14 42:-36 43:-15 44:98 45:-21 46:-25 48:-12 51:-12 65:-16 66:-13 71:-14 73:-8 74:-10 75:30 76:-11 77:146 78:-16 79:-10 83:-8 88:98 90:-23 91:98 92:8 93:-13 94:62 96:-10 97:-14 98:-35 99:-12 100:-9 104:15 105:26 107:9 108:19 109:23 114:-21 115:-12 116:-8 126:15
to bend	44:-9 108:32
board	0:-13 1:-10 3:-22 4:48 5:-11 10:-18 11:-8 13:-25 14:-9 15:-12 16:-27 22:13 25:-11 26:8 27:9 28:89 30:-26 31:74 34:-16 36:-27 37:-14 42:-36 43:-15 44:96 45:-21 46:-25 48:-12 51:-12 59:-8 65:-16 66:-13 71:-14 73:-8 74:-10 75:30 76:-11 77:146 78:-16 79:-10 83:-8 88:97 90:-23 91:98 92:8 93:-13 94:62 96:-10 97:-14 98:-35 99:-14 100:-14 104:52 105:31 107:8 108:19 109:23 114:-21 115:-12 116:-8 126:11
dress==	58:35 104:33 105:17 109:-8 118:-8 119:-12 120:-9 126:88
dress	0:-22 1:85 2:-16 3:32 4:-12 13:-14 15:-8 16:-8 17:-19 26:-17 27:-8 28:32 30:-8 33:-16 34:-10 36:-10 37:47 38:-10 40:49 42:-14 43:36 44:124 49:-11 50:-8 51:-19 56:43 58:32 65:-10 66:-11 70:-15 74:-9 78:-10 79:-8 80:-9 81:-8 84:-10 88:-9 90:-11 92:-8 94:-11 100:-12 101:-11 103:-10 104:100 105:40 108:54 109:27 114:-10 115:-8 118:-10 119:-13 120:-10 126:29
to dress	44:-9 58:36 105:14 108:29
dress the	17:-10 28:11 44:15 98:13 105:12 108:29 126:-8
the board	16:-15 27:15 28:-11 42:-11 44:-10 46:-14 49:15 75:39 76:-9 77:41 78:-11 88:12 90:-12 91:89 94:39 97:-9 104:10 107:14 108:12 109:-13
board for	26:23
pull==	4:33 6:19 10:-15 12:37 13:63 17:-9 34:-28 58:10 65:-16 73:21 92:-10 104:9 105:40 108:69 109:-12 126:-17
to pull	44:-10 73:50 108:41 126:-31
pull on	13:41 126:-18
board #n	108:13
true==	3:-10 8:54 17:-8 44:75 52:-13 88:-20 89:-15 92:-29 104:18 105:8 108:32 109:-9 126:31
to true	28:8 105:8 108:47 126:-17
true board	104:18
for pull	28:33
for cut	6:8 23:20 30:-14 105:29
to check	90:9
check the	18:14 22:9 46:21 75:-8 116:32 126:-23
of $	5:23 7:-8 28:8 82:13 99:10
fret job	0:-8 15:10 31:24 78:-8 94:32
hour==s	11:-42 12:-25 13:-8 14:-11 23:-11 26:14 28:-8 29:235 30:-46 31:-9 33:-8 34:-12 36:-16 44:23 48:-13 53:108 54:-31 55:90 56:51 62:-13 63:-11 64:-19 76:-12 90:-10 92:-11 99:-20 100:-13 102:-8 105:27 106:25 108:-11 110:108 111:-35 112:76 116:15 119:-15 125:-11 126:-11
hour	0:-18 1:-12 2:-13 3:-18 4:-12 5:-15 6:-13 7:-8 8:-12 9:-10 10:-10 11:-47 12:-30 13:-16 14:-14 15:-10 16:-19 17:-10 20:-8 22:-10 23:-15 24:-12 27:-12 29:226 31:-15 32:-13 33:-11 34:-26 36:-22 37:-22 38:11 39:13 40:10 44:29 45:17 46:-9 47:-10 53:102 54:-32 55:85 56:38 58:-9 59:-11 62:-18 63:-23 64:-24 65:-15 68:13 72:13 73:8 78:14 82:-10 83:9 84:-10 85:15 88:-9 90:-23 91:-10 92:-16 93:-14 94:-11 95:-8 96:14 97:14 98:23 101:-10 102:19 103:-14 104:-20 105:149 106:65 107:-12 109:-9 110:103 111:-53 112:78 115:-16 116:30 117:-9 118:23 119:-9 122:-9 125:-17 126:-36
^ hour	29:128 54:-9 55:34 112:-13
@person person	29:21 30:14 59:-25 62:9 63:-24 108:11 110:8
this person	63:9
mine ~	29:20 30:14 62:-18 63:-8
~ person	29:13 59:-11 63:-10
@person mine	29:10 62:-11
@person last	63:35 126:-15
what hour	29:25 30:-10
shop open	29:89 30:-11 53:-15 54:-21 55:18 113:8
open on	29:71 53:8 54:31 55:8 110:14 111:-9 112:-13 113:10
when are	9:18 29:14 32:-11
for from	111:8 118:9
from tomorrow	30:9 54:8 111:17 126:-15
tomorrow to	111:13 126:-12
to tomorrow	119:14
till==	0:-10 9:16 11:-10 15:-14 16:-11 22:8 26:-8 28:-16 29:23 30:-25 31:-14 33:-8 34:-9 38:14 44:8 48:24 49:-8 52:23 53:44 55:59 63:-9 70:-11 76:-8 97:-8 98:17 100:-10 102:49 103:-8 107:-10 108:-12 110:-8 111:-10 112:88 115:71 116:12 118:-8 119:24 126:11
till	0:-10 9:16 11:-10 15:-14 16:-11 22:8 26:-8 28:-16 29:23 30:-25 31:-14 33:-8 34:-9 38:14 44:8 48:24 49:-8 52:23 53:44 55:59 63:-9 70:-11 76:-8 97:-8 98:17 100:-10 102:49 103:-8 107:-10 108:-12 110:-8 111:-10 112:88 115:71 116:12 118:-8 119:24 126:11
december till	55:15
till @day	48:9 102:36 116:14
to #r	2:-25 20:13 29:9 46:-13 48:88 66:-9 76:55 90:-19 106:-8 111:32 116:17 119:40 126:-11
we be	9:14 29:23 33:8 126:-12
be open	29:12 53:15 55:-8 113:12 126:-19
clos==ed	2:-12 4:-10 9:-9 10:-9 11:-10 12:19 14:-12 20:-9 22:-12 26:-8 27:-8 29:12 30:-22 31:-15 32:86 33:-9 44:27 48:-14 53:187 54:131 55:-18 56:-11 59:-11 88:29 101:-12 102:-12 110:-35 111:-23 112:-9 113:99 119:-13 122:21 123:38 126:-17
clos	1:27 2:-13 4:-11 8:-10 9:-13 10:-10 11:-20 12:15 13:-10 14:-16 17:-9 19:-13 21:-8 22:-9 23:-9 26:-11 27:-13 28:-10 29:66 30:-39 31:-24 32:78 33:-15 34:-10 36:-9 39:-13 41:-8 44:61 48:-32 49:-13 53:146 54:253 55:8 56:-16 58:-12 59:-14 63:-10 66:-10 88:25 90:-9 92:-9 100:-9 101:-16 102:-22 103:-8 106:-13 107:-13 108:-11 109:-13 110:-30 111:-39 112:-29 113:180 114:-8 116:-15 117:-11 119:-27 120:-9 121:-8 122:31 123:51 125:-8 126:68
be clos	30:-8 31:-10 44:34 54:8 113:17 126:21
clos $	12:31 29:27 44:17 53:22 54:67 110:-11 113:22 126:-24
in this	14:46 23:16 26:18 30:-19 36:-15 101:48 111:13 116:9 126:-12
shop clos	29:11 54:13
of #r	76:9 91:13
our open	29:12
open hour	29:-15 53:118 55:-35
hour $	11:-9 12:-13 14:-8 23:-8 26:-15 29:27 36:-12 44:-8 46:-16 48:10 53:40 55:44 64:-8 66:13 100:10 102:-13 104:-9 105:56 106:53 109:-8 110:103 112:-15 114:14 115:-10 116:32
open==ing	0:11 2:-10 5:25 20:13 29:61 53:-11 54:-13 55:77 110:17 112:-12 113:-19
hour on	29:-16 30:34 53:18 64:-8 110:39 111:-11 112:-14 126:-9
on from	29:25 30:26 112:-9
#o to	30:8 46:-12 54:9 76:32 90:16 111:24
shop hour	29:-22 53:-13 55:14 64:-14 110:66
are our	29:8 33:13
^ shop	6:-10 9:73 10:-16 11:-11 24:-14 29:24 30:-12 33:-9 53:12 54:40 56:15 71:39 83:-27 111:-10 126:-16
hour for	27:-13 29:32 30:-8 53:38 105:35 110:-37 111:-8 112:46
#r to	20:21 29:9 30:11 46:9 48:-8 90:-9 111:31
our hour	29:8 53:11
in today	14:-14 29:27 111:36 126:-27
in from	51:23 88:11 110:17 117:-10 118:-8
the hour	29:12 53:13 55:26
@day till	53:31 55:-34
hour of	29:10 53:9 55:12 106:8 110:17 112:-9
clos==e	29:9 30:-14 44:36 49:-9 53:-20 54:109 55:18 111:-8 112:-15 122:12 123:14 126:44
we clos	29:75 30:-9 53:-20 54:9 55:24 113:-17 126:10
)~",
R"~(shut==	8:-12 11:-13 27:-8 29:22 30:-25 32:-10 36:-8 53:81 54:174 63:20 82:17 107:-12 110:-14 111:-15 112:-22 113:51 116:-11 119:-10 126:11
shut	8:-13 11:-14 26:-8 27:-9 29:18 30:-29 31:-8 32:-10 36:-9 53:81 54:169 63:20 82:16 107:-12 110:-14 111:-16 112:-22 113:106 116:-11 119:-10 122:-8
shop shut	29:22 54:23 113:-12
shut on	29:11 53:32 54:-10 112:-14 113:35 126:49
clos in	53:24 54:-20 122:27
late==	8:-9 9:-11 11:112 12:-32 13:-10 14:-10 22:-13 26:-11 30:33 33:10 36:-11 45:10 48:15 50:9 51:8 53:8 54:-13 55:23 58:-8 67:-9 99:53 101:18 111:-8 112:43 114:14 117:-8 119:42 126:-8
late	8:-9 9:-11 11:112 12:-32 13:-10 14:-10 22:-13 26:-11 30:33 33:10 36:-11 45:10 48:15 50:9 51:8 53:8 54:-13 55:23 58:-8 67:-9 99:53 101:18 111:-8 112:43 114:14 117:-8 119:42 126:-8
how late	29:14 33:26
late are	29:14
@person work	12:-10 29:21 30:-29 62:10 63:-43 64:22 65:-8 110:77 111:-29 112:50 126:61
from #r	20:44 29:12 43:-9 46:23 48:-11 54:-10 55:8 66:-10 76:26 79:-8 90:-15 106:13 111:18
@person come	29:37 53:-10 60:19 63:-13 64:13 110:-10 111:-11 112:24 113:19
come on	110:22 111:13 112:28 117:8 118:9 119:20 126:-37
to next	30:19 110:-9 116:20 119:31
is @person	11:-14 12:26 15:-17 27:-21 29:70 30:49 34:11 60:138 61:-62 62:-21 63:-25 64:-8 65:51 66:-14 106:18 110:-36 111:-32 112:-61 126:83
@person ther	29:24 59:8 65:-10
#r till	29:13
till the	0:-8 9:-10 16:-8 22:9 27:8 28:-14 48:18 115:35 126:46
@person here	16:-9 29:58 30:-17 45:9 110:-25 112:34
come in	19:33 21:-8 22:22 29:31 32:-16 50:35 51:-8 60:26 63:51 64:-25 80:-11 110:33 111:-20 119:9 126:-26
in on	4:-13 13:66 16:-24 17:-8 29:67 30:-9 44:-14 45:21 55:27 108:27 110:9 111:-64 112:39 126:-39
to @day	11:19 29:16 30:45 55:-35 102:22 106:-18 110:54 111:-9 112:-35 118:-8 119:23 126:14
&#o@day@person	111:9
to #o	30:16
till #r	29:8 102:23 119:9
here on	11:-8 30:-12 34:30 53:8 54:14 56:29 61:9 62:12 65:28 110:35 111:20 112:-23 119:11 126:-48
ther on	29:24
of this	14:20 23:18 30:-18 34:16 38:10 54:20 63:-8 99:18 100:14 102:-9 111:49 122:9 126:-22
i work	29:65 30:-15 111:-10 112:18
for @day	11:-13 27:13 30:50 31:38 48:13 102:-8 106:-41 107:9 109:-9 110:-30 111:-49 112:19 113:10 116:25 119:11 126:62
my hour	12:-13 29:71 30:-14 53:-29 55:-18 112:83
hour from	29:12 53:14 54:-12 55:-14 106:17 112:10
of today	60:-18 61:21 99:24 121:10
@person for	110:20 111:14 112:-12 126:21
@person of	60:-21 61:23
off $	0:-10 1:32 2:-10 3:-16 5:-8 13:-13 14:-19 15:-9 16:-12 17:106 24:-16 25:44 29:14 41:9 42:-8 49:55 54:20 66:-18 70:16 85:28 88:-17 92:-9 94:-9 95:-10 101:23 102:16 107:46 108:12 109:-23 110:16 111:107 112:-8 113:11 114:-11 116:-9 118:-19 119:-12 120:40 126:-73
ill==	14:-8 111:55 126:16
ill	14:-8 111:55 126:16
is ill	29:11
ill $	126:39
is away	29:8 102:16 111:32
is anybody	13:-50 14:31 15:17 17:-12 27:12 29:44 39:29 41:-10 85:20 103:-9 126:48
anybody in	29:17 61:10
anyon in	29:24
is somebody	13:-9 15:21 23:-10 26:27 29:18 126:-18
somebody here	29:9
everybody==	5:9 9:13 12:-49 14:91 26:-20 29:46 33:14 34:14 41:-13 49:-12 54:23 66:54 70:-12 78:11 82:-8 85:12 121:-11 126:21
everybody	5:9 9:13 12:-49 14:91 26:-20 29:46 33:14 34:14 41:-13 49:-12 54:23 66:54 70:-12 78:11 82:-8 85:12 121:-11 126:21
^ everybody	12:-14 14:20 29:25
everybody hour	29:21
agenda==	24:-9 27:-10 29:-9 30:177 36:8 105:11 106:-10 110:-9 111:-9 126:-9
agenda	24:-9 27:-10 29:-9 30:177 36:8 105:11 106:-10 110:-9 111:-9 126:-9
^ agenda	30:124 106:-9 110:-9
#n person	108:9
bench job	12:12 104:21
&#n@day@person	29:-13 38:14 53:-21 55:-19 82:8 100:22 106:36 110:92 111:-26 112:65 126:-27
&#n#o@job@person	37:23 66:14 106:10
agenda $	36:9
agenda for	24:-8 27:-10 30:108 106:-9
the agenda	30:25 105:12
@day in	29:-11 31:-9 48:9 53:-10 54:-13 102:8 111:15 126:43
the plan	2:8 11:12 16:-9 30:28 38:-11 63:15 84:87 85:-17 99:43 101:11 102:9 103:-12 104:14 126:-12
schedul==e	16:38 30:99 31:-10 53:9 55:-9 102:-11 104:10 106:-10 116:18 126:-8
schedul	16:37 24:-14 27:-8 29:-8 30:125 31:-11 53:9 55:-9 102:-11 104:10 106:-10 116:18 126:-8
the schedul	30:12 104:11
schedul of	16:20
schedul for	16:18 24:-13 30:117 31:-11 102:-9 106:-8
today in	54:11 111:22 126:-12
me my	30:19
schedul $	30:8
my agenda	30:9
my plan	126:37
is our	5:10 24:-9 25:14 28:28 33:12 118:12
#r until	20:24
-==	0:23 1:-12 2:62 4:-14 5:14 6:-15 7:9 8:-32 9:25 10:-19 11:29 12:-12 13:17 16:25 18:25 19:-8 20:-8 22:-11 23:-11 24:37 25:44 26:-20 27:-29 30:15 31:17 32:-12 33:-16 34:-14 36:123 37:-39 38:-16 39:-14 40:-10 42:9 43:16 44:15 45:-25 46:23 48:-11 50:46 53:36 54:-11 55:-16 56:16 60:13 61:-12 63:-45 64:74 65:-22 68:-13 70:-15 71:29 74:-17 76:8 77:-9 78:-14 79:-14 82:-14 84:24 85:36 88:24 89:-11 90:-31 91:-18 92:-34 93:-14 98:-12 99:13 100:18 103:-14 105:-12 108:12 110:24 111:-22 115:17 116:11 117:-11 118:-11 120:-10 125:-10 126:-36
@job today	94:-24 109:14 126:25
-	0:23 1:-12 2:62 4:-14 5:14 6:-15 7:9 8:-32 9:25 10:-19 11:29 12:-12 13:17 16:25 18:25 19:-8 20:-8 22:-11 23:-11 24:37 25:44 26:-20 27:-29 30:15 31:17 32:-12 33:-16 34:-14 36:123 37:-39 38:-16 39:-14 40:-10 42:9 43:16 44:15 45:-25 46:23 48:-11 50:46 53:36 54:-11 55:-16 56:16 60:13 61:-12 63:-45 64:74 65:-22 68:-13 70:-15 71:29 74:-17 76:8 77:-9 78:-14 79:-14 82:-14 84:24 85:36 88:24 89:-11 90:-31 91:-18 92:-34 93:-14 98:-12 99:13 100:18 103:-14 105:-12 108:12 110:24 111:-22 115:17 116:11 117:-11 118:-11 120:-10 125:-10 126:-36
- #r	48:10 53:-8
plan on	5:11 30:29 104:-9
week by	12:11 30:19
for belt	100:11
by machin	26:25
on @person	53:-11 63:20 65:14 110:37 111:-22 126:-8
^ this	30:15 42:12 44:19 53:-9 54:15 55:13 99:38 110:-21 126:25
machin for	102:-10 104:34
week for	102:15
machin $	14:-11 15:-8 27:22 28:-10 59:10 60:9 99:25 100:11 101:24 104:52 126:26
machine of	26:12
machin on	27:20
week on	59:10 111:15 121:8
^ week	30:24
week of	8:-27 9:38
week plan	30:24
of machin	99:17 101:24
we work	12:14 54:-12 113:27
on with	13:-11 17:-13 34:8 44:-10 108:126
start==	4:-9 5:-9 10:-11 11:-35 13:-19 17:-9 20:18 23:11 28:18 29:25 30:125 34:-9 36:-10 41:-11 44:-32 47:10 49:-12 51:-11 53:-8 59:-10 65:-22 108:76 109:-12 110:8 112:12 115:34 121:17 126:82
start	0:-15 4:-18 5:-17 6:-9 10:-11 11:-38 12:-8 13:-19 15:-53 16:-10 17:-16 18:-8 20:17 21:-8 23:10 24:26 27:-9 28:13 29:15 30:108 31:-10 34:21 36:-14 41:-12 44:-13 45:-10 46:-14 47:9 48:-9 49:-21 51:-12 59:37 63:22 65:-32 66:-17 84:15 88:14 90:-13 92:-8 94:-8 96:-11 98:-12 108:275 109:-36 110:51 111:-16 112:24 114:-16 115:22 116:-12 121:16 126:67
i start	4:-8 23:13 28:8 29:29 30:27 108:-18
begin==	11:-31 12:-9 13:-12 29:25 30:77 108:48 109:-8 115:36 126:-25
begin	10:8 11:-34 12:-9 13:-46 15:-8 16:-15 17:-10 18:-11 28:-9 29:16 30:84 34:28 44:-28 55:-10 88:43 102:13 103:-9 106:9 108:205 109:-19 112:17 115:33 126:-33
i begin	29:26
begin with	11:-17 30:25 108:10 126:9
we start	0:-9 5:-8 11:-18 20:19 24:34 30:44 126:-14
start with	5:-8 20:19 30:11 44:-9 108:31 126:8
next up	11:39 30:-10
what next	30:16
what now	8:-8 17:-13 26:-18 30:101 36:-10
done next	17:10
doing next	30:34
should @person	10:34 126:-12
@person start	15:-8 34:-11 74:10 84:18 108:-20 110:19 126:56
@person do	15:56 34:39 126:-45
do next	17:-33 30:62
for me	0:-36 1:-8 3:10 4:-9 5:-12 10:-8 12:28 16:-8 20:9 22:20 24:-18 27:-13 28:13 30:18 33:16 34:45 41:9 46:13 53:-11 55:16 58:11 59:25 81:-10 82:27 87:-13 92:15 97:14 100:-11 108:24 109:-8 126:42
me $	11:-15 12:26 13:-30 14:-13 15:13 16:13 24:-10 27:-9 28:16 29:13 30:-15 33:15 36:10 43:-14 48:-11 58:10 65:68 90:32 97:22 102:-12 106:28 108:15 109:-13 111:40 112:18 119:12 121:-10 122:9 126:30
why that	30:19
that first	30:12
i am	1:-13 5:10 8:-13 9:23 10:23 11:-10 12:-19 13:-12 15:-11 17:-21 22:-10 23:-12 29:-15 31:-9 33:-8 34:-13 36:29 37:-9 39:-8 42:16 43:-15 46:12 52:9 53:10 54:-9 57:-10 65:59 66:16 71:8 72:-21 74:16 75:-10 78:9 83:-10 88:-8 91:8 93:-11 101:-8 102:-10 107:24 108:79 109:37 111:34 112:52 113:-8 122:-8 125:-18 126:43
am free	30:23
free what	24:-33 85:44
hour==	0:-13 3:-12 5:-10 16:-11 26:-14 27:-10 30:35 34:-13 37:-9 39:23 40:14 41:8 45:8 48:9 55:-11 56:-12 63:-10 65:-9 68:14 71:16 73:16 74:10 76:18 78:24 83:13 85:8 93:-11 98:21 99:14 100:18 103:8 104:-13 105:127 106:36 111:-17 112:-13 114:12 115:-12 118:21 126:-19
)~",
R"~(an hour	0:-12 3:-11 5:-10 16:-10 26:-13 29:-13 34:-9 37:-8 39:25 40:14 41:9 45:9 63:-10 65:-9 68:14 71:16 72:8 73:17 74:11 76:19 78:25 83:14 85:9 93:-10 98:20 99:16 100:24 103:8 104:-13 105:59 106:34 111:-9 112:-10 118:22 119:8
someth to	0:13 30:8 34:13
begin $	30:15 108:43
go on	6:13 7:9 10:8 28:-10 30:12 46:22 84:10 94:-8 109:13 115:12 126:22
on $	3:-9 11:-12 12:-9 13:30 16:-9 17:-9 21:12 23:20 29:-23 30:36 32:-13 33:20 37:-8 39:18 42:-13 45:11 46:-8 48:22 49:-11 53:31 56:24 59:-8 61:16 62:25 65:45 78:-12 82:11 92:-10 97:16 99:35 102:-16 104:15 108:-15 109:-22 110:16 111:-13 112:15 113:-9 117:-8 119:-12 122:12 123:12 126:38
start $	23:13 44:-19 49:-8 108:62 115:10 126:-10
we doing	9:8 30:9
doing $	13:28 114:11
what am	12:61 17:8 24:-12 30:11 36:-15
i doing	30:8
&#r@day	29:-32 48:-9 53:73 54:-20 55:29 102:-12 106:33 110:-12 111:-17 112:19 113:-22 119:-12 126:35
do #o	34:9
have for	30:8 33:9
we to	10:22
got on	12:-10 14:14 24:8 27:-9 30:26 32:38 44:12
on for	9:-14 12:-15 24:-10 28:22 29:-12 30:32 32:19 85:16
on on	30:8
the even	54:-12 55:39 67:11 111:21 126:-26
have on	0:-18 4:24 11:16 12:16 19:10 27:-9 30:20 34:-15
we at	13:16
@person doing	8:22 10:14 19:8 31:14
doing on	30:19
doing for	9:8
schedul==ed	24:-12 30:26
on in	22:14 34:16
is plan	24:-12 26:-10 27:-10 30:67 84:34 85:-18 104:-10
@person from	14:-8 63:39 65:27 110:-10 111:36 126:-23
press today	27:10 106:11 126:19
sander @day	106:29
be in	10:-10 30:16 55:27 73:-24 99:21 111:29 112:-12 123:11
in press	104:13
in sander	102:10
day doe	29:21 33:10
go under	11:26 30:-10 91:8
@job go	11:26 16:9 30:-9 34:9 65:-10 75:16 126:18
in bench	104:19
get to	38:21 66:31 70:-10 126:-21
to @job	8:21 13:-22 15:27 37:28 39:-8 54:8 95:-17 114:8 126:12
@job start	88:23 108:-11
@job begin	88:8
busy==	26:-27 29:-14 30:107 36:-8 110:-12 112:24
busy	26:-27 29:-14 30:107 36:-8 110:-12 112:24
sander free	26:27 30:32 104:-8
@person free	30:39 110:-12 112:-12
press free	26:-10 30:44 102:-8
when am	29:31 30:-22
i free	24:10
free on	30:43 110:-12 112:-11
free for	39:15 44:25 66:11 126:-10
free from	106:8
@day even	29:15 53:-11 55:12 112:13 126:-20
on at	11:-12 12:25
#n hour	6:-8 11:-13 29:-24 37:-12 38:8 39:-8 44:31 45:11 55:25 56:33 76:-10 78:-9 85:8 90:-9 92:-12 96:13 97:12 100:-11 102:28 103:-19 105:103 106:34 108:8 116:50
ago	0:-18 1:-11 2:-12 3:-12 4:-8 5:-13 6:-8 13:-10 16:-20 17:-10 34:-15 37:-23 39:27 40:15 41:25 42:20 44:42 45:38 46:15 51:-8 65:-12 66:-9 67:15 68:14 70:-9 71:11 72:18 73:14 76:18 78:14 82:31 84:15 85:15 89:-18 90:-19 91:-8 92:-13 93:-13 94:-10 96:30 97:42 98:25 99:-8 100:-29 102:38 103:28 105:-50 108:39 109:47 112:9 114:-12 116:8 118:32 123:-9 125:10 126:-42
hour ago	0:-12 3:-10 5:-10 16:-12 34:-10 37:-14 38:10 39:24 40:12 41:12 44:34 45:13 46:-9 51:-9 67:11 68:14 71:11 72:17 73:10 74:9 76:16 78:22 80:8 83:12 85:18 90:-11 92:-10 93:-11 96:22 97:18 98:31 102:39 105:-18 108:14 112:10 116:18 118:36 126:-39
ago $	0:-12 2:-10 5:-12 16:-9 34:-9 38:-8 39:15 42:10 44:32 45:21 46:18 67:-8 71:26 72:21 73:15 82:32 84:20 89:-18 90:-13 92:-8 93:-10 96:24 97:31 98:23 100:-25 102:23 103:20 105:-29 108:24 109:14 112:12 114:-10 116:8 118:25 119:-9 126:-37
december at	106:13 116:23
yesterday	0:-10 1:-19 2:-8 3:-13 4:-13 8:-12 9:-8 11:-12 12:-10 13:-29 14:-10 15:-10 16:-15 17:-11 18:-11 19:-19 20:-9 22:-8 23:-8 24:-19 25:-8 26:-12 27:-9 29:-10 32:-15 33:-8 34:70 36:-10 37:11 38:24 39:19 40:14 41:22 44:23 45:55 46:-10 48:-10 49:-12 51:35 55:9 62:-14 63:-12 64:-9 65:-15 66:-8 67:9 68:28 69:-8 70:-13 71:32 72:25 73:17 74:16 75:8 76:-25 78:25 79:27 82:8 83:-9 88:-10 90:-16 92:-15 93:-14 96:51 97:27 98:40 102:45 103:-8 108:16 111:-10 112:31 114:-12 115:-9 116:63 117:25 118:27 119:12 125:-21 126:-25
at yesterday	30:9
yesterday $	1:-9 8:-8 12:-8 13:-18 19:-14 21:-9 24:-13 26:-8 34:41 37:9 38:20 39:18 41:-9 45:13 46:-11 49:-8 55:10 68:8 71:10 72:13 78:22 79:9 84:-10 90:-9 92:-9 96:37 97:11 98:23 102:40 103:-25 108:27 112:29 114:-10 116:53 117:14 126:15
at tomorrow	38:29 84:10 97:13 106:10 116:-16
tomorrow at	26:-8 27:31 30:16 37:-8 38:27 44:11 45:12 65:-8 71:-14 72:22 84:8 90:-9 97:12 102:21 106:-19 113:16 116:39 118:16 126:-8
&#n#o@person	55:12 94:11 98:-8 100:22 111:-11 112:36 113:19 126:-8
#t	2:-8 4:-8 11:-13 12:-8 13:-16 16:-14 17:-9 18:-8 26:-12 27:-31 29:-52 30:-10 31:-12 34:-10 36:-11 37:-15 38:11 41:9 42:17 44:63 45:22 46:-13 48:-16 50:-13 53:114 55:167 56:-17 58:-8 59:-10 62:-19 63:-15 64:-20 65:-16 66:-9 68:15 69:-15 77:-16 82:-9 84:-15 85:-13 88:-8 92:-10 96:19 100:-13 102:54 105:-9 106:123 107:-23 108:33 109:12 110:81 111:-45 112:130 113:-21 116:54 119:-9 126:-37
at #t	13:-10 26:-9 29:-11 30:33 37:-12 38:14 41:11 42:19 44:18 45:35 46:15 51:8 53:-9 54:50 55:9 68:17 69:-13 72:8 77:-14 78:8 92:-8 96:23 98:10 102:10 106:-19 108:8 109:35 110:15 111:-8 112:-13 113:-10 126:-30
&#t	11:-11 13:-14 16:-12 26:-11 27:-18 29:-30 30:9 34:-9 37:-14 38:12 41:9 42:18 44:42 45:25 46:-12 48:-12 50:-13 54:53 55:117 56:-14 62:-11 63:-11 64:-11 65:-13 68:16 69:-14 77:-15 82:-8 84:-9 85:-8 92:-9 96:20 98:8 100:-9 102:39 105:-8 106:71 107:-14 108:47 109:21 110:12 111:-32 112:97 113:-17 116:67 126:-33
&#t@person	55:9 110:8 112:19
#t $	13:-9 26:-8 27:-14 29:-16 30:28 41:11 44:49 45:32 46:-21 48:-8 53:33 55:39 65:-10 71:8 96:10 102:19 106:-17 108:26 109:28 110:49 111:-12 112:17 116:73 126:-38
today at	46:12 116:-11
&#n@person	1:-12 2:27 3:-19 4:-17 6:-10 7:-11 10:-15 11:-9 12:-14 13:11 15:73 18:-8 24:-10 27:-33 28:-17 29:58 31:26 34:-32 38:-14 39:18 41:-18 44:30 46:-17 48:-10 49:-16 54:-14 55:-12 56:43 59:19 60:48 62:-59 65:145 66:13 70:-11 72:-14 84:12 88:-13 91:-12 94:-13 97:15 99:10 103:-14 104:25 105:-18 108:40 111:93 112:45 115:-15 118:-14 119:-9 120:10 126:-11
free at	30:39 126:-19
at this	8:-11 9:28 44:-10 46:-10 76:16 77:14 84:10 98:9 101:-8 103:18 112:11
@day at	26:62 30:15 44:17 45:18 46:19 54:-13 55:-13 72:10 84:10 96:10 97:10 100:-9 102:28 104:-19 106:8 108:41 109:10 110:-21 112:-11 113:31 116:9 118:16 126:-50
any time	30:10
time on	16:-11 28:-12 29:-28 30:12 45:-32 106:-10 107:8 110:33 126:82
room==	22:21 44:12 78:20 94:8 99:17 100:22 111:11 126:-29
we any	8:37 126:-8
room	22:21 44:12 78:20 94:8 99:17 100:22 111:11 126:-29
time at	33:-8 122:27
can @person	30:10
@person get	0:16 5:12 108:21
sander next	27:34 107:12
use sander	30:10 102:8
sander at	106:19
#r at	2:10 76:16 81:-10
sander from	100:13 101:-11 104:14 106:-11 126:30
has time	15:-8 30:9 48:22 66:50 111:13 126:-13
load==ed	26:-30 30:73
how load	16:-15 26:-30 30:73
how busy	26:-24 29:-10 30:72
busy is	110:-10 112:12
are @person	110:12 111:-9 112:9
busy are	26:-24 30:50
week==s	0:-8 8:-33 9:57 10:43 11:56 12:10 22:26 24:-9 30:24 47:9 48:49 51:-31 53:-13 59:13 61:-8 82:-13 99:-8 117:23 118:-20 119:14 121:42 122:63 126:-22
the com	10:15 11:17 27:39 29:15 30:27 32:-8
com week	27:10 29:10
full==	0:22 4:-9 8:56 9:-10 16:17 17:27 20:8 21:-14 24:-15 31:9 34:21 41:-12 56:-9 82:-10 84:12 92:45 100:-8 105:14 110:29 126:55
full	0:22 4:-9 8:56 9:-10 16:17 17:27 20:8 21:-14 24:-15 31:9 34:21 41:-12 56:-9 82:-10 84:12 92:45 100:-8 105:14 110:29 126:55
how full	8:45 21:-13
@person this	106:-9 110:-16 111:26 112:35
shop this	21:8 55:10
busy am	30:22
i $	30:21 32:11
decide==s	30:14
decide	30:14
busiest==	30:10
busiest	30:10
is busiest	30:8
busiest $	30:10
bottleneck==	14:-11 26:-16 27:-8 30:78
bottleneck	14:-11 26:-16 27:-8 30:78
the bottleneck	14:-10 26:-15 30:52
bottleneck $	14:-11 26:-16 27:-8 30:78
what machin	27:24 104:8
our bottleneck	30:10
wher is	1:10 6:35 13:-27 15:19 17:14 20:41 25:-9 26:-10 30:20 126:-12
^ bottleneck	30:11
what hold	30:12 92:13
hold everyth	24:-18 30:45 38:-9 84:48 85:-16
everyth up	24:-8 30:48
is hold	85:13 90:11
hold us	30:15
us up	30:15 53:-10 55:12
the machin	26:-11 59:15 60:43 61:12 101:63 102:-12 103:-8 104:14 126:-8
machin load	30:16
load of	16:10 30:9
^ machin	14:-9 26:67 27:-11 102:16 103:60
of in	22:8
work do	30:8
slack==	28:-10 30:74 86:9
slack	28:-10 30:74 86:9
the slack	30:30
leeway==	30:40
leeway	30:40
^ leeway	30:10
leeway of	30:10
the leeway	30:16
)~",
R"~(much slack	28:-9 30:44
slack is	30:17
much leeway	30:14
ther with	0:12 30:8
much time	28:35 30:27 126:-8
time to	9:22 22:12 80:10 122:10
to spar	40:10
time has	27:22 29:-12 30:23
slack has	30:8
@job left	121:10
time is	27:18 28:-18 30:14 107:33
time do	29:26 30:-8
ther left	28:-9 30:10
deadline of	30:10
^ deadline	10:-12 11:88 29:-15
begun==	4:-9 11:-8 13:52 15:-32 30:15 44:-35 75:-9 108:161 109:-17 115:9 126:-15
begun	4:-9 11:-8 13:52 15:-32 30:15 44:-35 75:-9 108:161 109:-17 115:9 126:-15
be begun	30:17
begun at	13:32
begun $	13:-19 44:-12 75:-8 108:67 115:11
start==ed	0:-9 14:16 15:-46 24:30 30:-15 34:33 44:39 63:27 66:-10 74:9 96:-9 98:-9 108:91 109:-13 110:21 111:-8 112:-17 115:-9 126:29
when can	31:8
be start	112:20 126:-13
bent==	2:-9 4:-9 5:-13 10:-8 13:-18 17:-12 18:37 37:10 38:-21 39:11 42:29 43:11 44:61 51:-15 70:12 78:40 82:35 85:-9 90:-8 91:-8 92:98 93:-12 95:17 96:8 108:13 126:-29
bent	2:-9 4:-9 5:-13 10:-8 13:-18 17:-12 18:37 37:10 38:-21 39:11 42:29 43:11 44:61 51:-15 70:12 78:40 82:35 85:-9 90:-8 91:-8 92:98 93:-12 95:17 96:8 108:13 126:-29
be bent	5:-11 18:40
be cut	4:11 5:39 71:-37 72:-45 84:8 126:71
cut at	104:12
to begin	11:-17 30:31
begin on	16:-9 108:34
start on	11:-13 13:-13 15:-9 29:27 30:-16 34:-12 44:-12 63:32 74:10 108:41 109:-11 126:78
begin job	30:27 115:25 126:-23
to start	11:-13 30:27 108:-20 126:32
urgent==	13:20 15:-21 17:-13 48:-28 49:-19 65:-13 66:-18 114:233 115:-13 126:55
urgent	13:20 15:-21 17:-13 48:-28 49:-19 65:-13 66:-18 114:233 115:-13 126:55
is urgent	13:-11 30:8 48:-17 114:88 126:-8
urgent $	13:39 15:-19 17:-10 66:-9 114:58 126:43
tightest==	30:9 56:16
tightest	30:9 56:16
tightest $	30:9
begin==ning	13:-30 30:10 34:37 44:-11 108:33
latest begin	30:10
begin of	30:10
latest start	30:36 108:-9
start of	30:15 108:-8
#n ready	30:11 99:18
ready $	11:16 30:73 31:22 49:-9 99:17 126:44
ready by	30:-9 31:10
by the	0:21 4:-19 8:-9 11:-27 12:16 15:8 21:12 30:10 31:65 38:9 42:19 50:9 51:-8 67:-22 68:20 70:-11 77:14 78:14 80:37 89:-9 92:-8 99:21 101:-9 102:-8 105:15 121:25 122:20
when would	30:13 126:-12
would @job	5:10 31:11
#n done	13:-15 15:31 16:-8 41:21 44:18 72:20 115:20 126:-17
would job	16:16 126:-13
finish by	126:16
on time	33:27
be late	11:-8 12:-21 30:51 33:-9 126:24
late $	11:60 12:-26 22:-9 30:41 31:9 99:11 126:-14
@job in	5:19 6:-8 38:15 48:26 72:-8 79:11 114:9 126:-17
in time	30:38
@job ready	13:38 30:-9 44:13
is late	11:74 30:-22 45:10 114:15 119:9 126:-10
is behind	44:36
behind $	113:-8 126:8
run late	30:10
danger==	14:10 23:31 26:-16
run in	26:25
danger	14:10 23:31 26:-16
risk==	60:11
any job	1:-11 12:27 24:18
risk	60:11
we late	11:17
keep==	0:-21 1:-16 2:-9 3:15 5:-22 8:-20 9:36 11:13 14:19 22:10 24:31 26:-11 27:-13 29:-16 31:20 33:34 34:-9 37:-33 38:115 39:8 41:-19 42:19 43:-14 47:-10 48:-14 52:-9 53:38 54:-19 60:9 63:12 69:11 75:13 77:15 84:78 85:-21 87:-22 93:-9 101:11 106:26 107:-49 112:-15 113:-8 123:-9 126:93
keep all	21:12 30:23 84:17 85:-9 126:-9
all promise	30:10
promise $	30:16
all our	8:41 9:-15 14:-14 19:-9 20:39 26:28 33:-10
promis==e	2:11 13:-9 28:-13 30:-10 31:143 34:-19 36:18 48:55 66:-9 117:14 119:27 126:52
all promis	30:10
doe what	9:14 14:-11 20:19 29:-19 30:90 32:-8 33:-8 34:-30
what on	29:-15 30:41
on what	8:-22 20:19 21:-8 28:10 29:-16 30:24 32:23
doing what	29:-8 30:42
^ promis	33:36 48:73
by #r	31:13 48:9 117:10
by today	48:12 67:12
another==	0:-8 2:9 8:10 15:-9 16:21 29:11 30:-15 31:65 32:-12 38:18 40:115 41:-14 45:-9 46:15 47:8 49:20 67:-12 70:-14 72:-17 79:27 80:15 90:-13 94:8 98:29 100:11 116:14 117:16 118:8 120:-11 123:-13
would i	2:10 16:-12 17:22 36:9 126:-17
i promis	8:13 11:-9 31:61 48:10 65:8
another	0:-8 2:9 8:10 15:-9 16:21 29:11 30:-15 31:65 32:-12 38:18 40:115 41:-14 45:-9 46:15 47:8 49:20 67:-12 70:-14 72:-17 79:27 80:15 90:-13 94:8 98:29 100:11 116:14 117:16 118:8 120:-11 123:-13
glu==ed	13:-10 31:43 34:-8 37:-9 45:-9 46:-16 73:-12 76:-16 78:-13 90:-14 92:-13 94:-11 96:-15 97:301 98:-12 108:-10 121:13 126:49
day can	31:26
shop promis	31:9
glu	13:-10 23:39 28:-10 30:-10 31:42 34:-9 37:-9 45:-9 46:-16 73:-12 76:-16 78:-13 90:-14 92:-13 94:-11 96:-15 97:301 98:-13 99:15 108:-10 121:13 126:48
when could	29:-9 30:-10 31:80 126:-34
promis a	2:15 28:-10 31:19
job with	9:13 12:-8 31:37
we promis	11:34 13:-8 30:-10 31:48 126:-23
glu $	23:40 97:74 126:-18
a new	0:-15 2:-11 5:-10 28:14 30:-8 31:11 36:10 47:14 48:-8 58:22 59:18 61:16 63:-11 71:-10 72:29 76:-13 79:56 86:17 98:-8 99:-22 100:16 103:15 110:9 119:21 121:11 122:-13 126:63
new whol	31:17
another new	31:14
new board	10:-15 28:70 30:-9 31:87 36:-15 51:-10 59:-17
board $	2:9 4:44 16:-13 17:-10 28:31 31:21 44:-18 73:-16 75:44 91:45 107:14 108:26 109:20 126:-17
do a	31:10
finish==	29:18 31:9 34:11 126:-10
could you	1:-13 2:-21 8:19 10:19 13:29 22:-8 26:-9 31:-14 33:-10 37:-9 38:22 39:11 41:18 48:13 55:9 56:12 64:10 71:10 75:-8 89:11 101:22 107:11 113:14 121:-13 125:9
get a	0:20 30:-9 49:11 94:9 126:52
refret ready	31:10
have another	31:18 51:9 116:11 126:-15
refret of	8:-8 9:9 49:53
fret with	1:9
day could	31:16
finish $	13:34 15:-12 30:14 31:19 44:36 45:12 102:-20 103:19 108:-14 109:39 115:57 126:-34
another job	31:16 125:9 126:-9
would @person	29:9 126:8
more refret	9:10 31:15
will @person	29:39 30:9 111:-21 112:-13
&#c@person	12:-13 14:83 29:-11 30:-9 56:8 59:-9 60:178 61:35 62:-23 63:-30 64:-15 65:-13 66:-10 111:-11
of #c	3:-8 5:30 16:10 21:9 43:14 50:12 51:-11 52:14 61:9 67:34 71:8 86:-13 108:-8 117:-8 121:-34 122:47
fret be	2:20
end be	31:9
how soon	2:-10 4:-14 8:-12 9:43 10:-8 31:45
refret be	31:15
could #n	31:-18 126:37
with glue	97:37 98:-13 126:13
board be	31:11
december for	31:17 48:33 126:-11
a bound	28:17 31:21
bound board	28:21
promis on	31:12
for another	125:9
can you	5:-9 7:15 10:14 15:9 19:-10 20:8 30:-8 31:8 33:10 36:21 37:12 38:11 39:-8 51:19 63:14 68:-11 87:15 104:17
you promis	31:18
promis in	117:8 119:21
board with	2:12 3:-8 28:9 104:11
end in	38:10 80:11
of next	11:-9 31:32 54:13 111:13 126:-12
finish for	11:19 30:-17 109:33
job in	47:10 66:18 82:-10
done in	26:-9 104:32
job finish	31:17 126:-9
i finish	109:8
another refret	29:-9 31:35
end for	1:-15 37:-21 38:19 44:-9 58:23 71:37 94:23
by @day	11:39 27:11 30:-12 31:45 48:-17 111:-11 116:-13 126:26
promis the	48:13 119:19
new job	13:-11 36:19 47:115 49:-9 59:-10 86:-9 88:-9 99:-11 126:47
take in	19:8 36:23 51:20 67:-23
in one	41:-11 82:16 83:8
more job	31:31
finish a	31:9
glu in	73:-11 76:-10 97:19 126:8
could @person	15:59 29:-8 31:41 65:-15 126:-36
@person take	29:-8 31:29 65:60 66:-16 110:-18 111:29 126:-21
fret by	126:11
befor tomorrow	116:8
job be	30:14
done by	11:9 31:16 44:15 48:9 62:-8
possibl==e	5:11 9:-8 30:15 31:76 126:-16
is tomorrow	31:9
possibl	5:11 9:-8 30:15 31:76 126:-16
doabl==e	13:-8 24:-14 31:68
is #r	24:-14 31:62
doabl	13:-8 24:-14 31:68
#r doabl	24:-13 31:55
doabl for	24:-14 31:59
realistic==	13:-9 24:-9 31:50
realistic	13:-9 24:-9 31:50
realistic $	31:14
possibl $	5:12 9:-8 30:16 31:19
feasibl==e	31:9
feasibl	31:9
doabl $	31:9
ther time	31:13
time for	6:-9 9:9 11:26 27:-11 28:100 29:14 30:-13 31:8 105:24 106:-14
room for	99:17 100:22
job for	12:21 28:-9 49:24 104:11 105:27 126:13
happen==s	16:14 26:-15 31:9 34:-13 84:11 104:37 126:27
happen	0:-19 2:-11 4:-10 5:-13 8:-11 11:-13 13:-20 17:-13 20:12 26:-16 27:-8 30:24 34:145 36:40 49:36 51:-8 65:-8 66:-10 84:9 102:-13 104:37 107:16 125:15
what happen	0:-11 4:-8 5:-9 8:-10 13:-13 17:-10 20:13 31:8 34:120 84:11 126:21
happen if	31:9 34:-8 36:43
if you	8:28 19:8 48:28 98:11 126:-29
refret by	31:19
would move	31:9
move to	2:13 62:20 76:-9
mov==ed	2:21 4:-19 11:-9 46:43 54:-25 58:18 63:37 64:-8 65:-12 71:-9 76:166 78:-8 79:-11 83:-25 90:-12 93:-8 96:-15 98:-14 101:-12 113:11 118:-8 119:39
must have	31:12 89:-12 126:16
mov	2:68 3:-8 4:-19 11:-9 13:-9 17:-11 46:42 49:14 54:-25 58:18 62:11 63:37 64:-9 65:-17 71:-9 76:166 78:-9 79:-12 83:-25 90:-12 93:-8 96:-15 98:-14 101:-12 113:11 118:-8 119:39
be mov	2:20
&#n@day	11:-31 13:-8 16:-9 22:13 27:-11 29:-29 30:-13 34:-8 44:8 45:11 46:-14 48:25 53:29 54:45 55:68 76:-11 90:-13 96:-8 100:-11 102:34 103:-14 106:13 108:24 110:-43 111:8 112:44 116:42 117:-13 118:54 119:63 122:-13
)~",
R"~(move for	31:8
would give	0:14 1:-10 15:15 31:17 65:-8 71:-21 126:9
would have	31:9 43:-24 64:9 121:-10 126:57
to give	31:22
give if	31:27 126:-9
done for	32:15 41:21 44:21 109:14
to wait	31:8 66:-11 109:8 115:50 121:10 126:-11
will give	65:-9 126:10
give by	31:18
must wait	31:8
wait by	31:16
will have	37:14 48:13 79:-8 100:-11 111:12 116:13 126:24
would we	0:-11 16:-24 19:21 21:32 30:12
have @job	11:10 65:27 115:14 126:-9
it need	3:-9 43:21
possibl day	31:33 126:-11
day we	65:-9 100:-18 113:10 126:48
can promis	31:11
soonest==	17:-12 28:-10 31:60 37:16 52:8
soonest	17:-12 28:-10 31:60 37:16 52:8
the soonest	28:-10 31:37 126:-12
free day	30:-14 111:58
day i	86:-13 126:15
earliest==	12:22 21:9 31:133 48:-8 59:-12 126:-9
earliest	12:22 21:9 31:133 48:-8 59:-12 126:-9
the earliest	31:52
earliest day	31:42
^ earliest	31:50
free date	31:8
earliest refret	31:9
earliest new	31:16
done @day	46:10 116:-9
order the	19:-17 32:48 33:32 34:-9 118:-12 126:-20
on order	8:-10 10:-14 12:-27 30:-12 32:109 33:-10 49:-10 51:-20 74:11 117:29 118:28 119:-8 120:22 126:10
open order	1:30 10:-11 32:40 120:15
^ open	13:81 20:11 30:-8 31:-10 32:15 53:94 54:-26 55:40 110:-20 112:-18 113:70 126:19
is any	22:11 23:20 24:15
any the	32:8
@wire on	1:-10 8:-51 9:-34 18:58 24:28 25:-9 32:75 40:-15 52:9 67:41 68:18 69:-39 70:42 80:17 83:8 89:-12 117:10 118:13 126:-11
is some	32:10 33:15
any @wire	1:-14 7:-14 8:67 9:-39 18:-13 19:-18 22:12 24:33 27:-12 32:68 33:-11 120:-8 126:67
@wire com	8:-15 9:-11 32:67
arriv==e	9:-14 14:15 19:37 29:-11 32:67 51:-14 58:11 67:-10 118:-16 119:15 126:-12
arriv	9:-19 14:14 19:24 29:-12 32:81 40:-10 51:51 58:10 67:-27 68:-10 89:-17 100:9 117:-9 118:137 120:-18 126:14
@wire arriv	9:-9 19:35 32:52 40:-8 51:40 67:-13 117:-11 126:-22
arriv $	9:-14 19:29 29:-11 32:64 51:17 67:-16 118:59 120:-9
@wire due	32:8 119:8
@wire come	5:-10 8:-14 9:-28 19:53 20:19 25:24 32:16 33:25 34:-33 51:-8 69:12 71:8 89:24 118:27 119:20
order for	13:11 33:-8 51:-10 117:47 118:-14 119:-18 120:62 126:15
order of	15:16 19:-8 32:40 51:-23 115:11 117:16 118:-8 119:-8 120:23 122:11 126:17
doe order	32:20
order arriv	32:25
order come	10:23 32:8 118:14 120:-8
will order	118:-15 119:-9 120:40 123:10 126:-12
which order	11:-8 12:-11 28:31 32:24
order are	11:-9 32:20
all order	32:10
come yet	32:47 126:-10
has order	32:15 118:-31 126:28
have our	116:13
has our	51:-10 117:10
arriv==ed	19:-14 32:14 33:-8 40:-9 51:66 67:-16 68:-8 89:-17 100:9 117:-17 118:153 119:-10 120:-14 126:27
arriv yet	32:20 118:-24 126:31
have @wire	8:34 9:-20 70:11 89:11
when come	32:10
come the	32:9 126:16
delivery==	5:-13 10:-22 13:20 14:-8 15:-9 17:-9 19:44 29:-22 30:-22 32:55 33:17 34:-18 37:-9 38:-9 40:16 44:-15 48:17 49:-9 51:39 56:-8 67:-24 71:-13 72:18 74:211 84:-8 94:-10 114:-15 115:-10 118:73 119:24 120:-9 122:14 123:-11
next delivery	9:11 29:-15 30:-14 32:45
delivery arriv	29:-10 32:23
order late	32:10
are an	32:9
an order	9:-16 10:8 32:39 33:-8 36:38 51:9 117:55 118:-28 119:-8 120:-15 121:11 122:34 126:-13
order overdu	32:12
is an	32:8
were clos	54:-9 126:12
what order	12:9
are clos	53:18 54:88 55:-16 110:-18 113:-18
supplier==s	8:-13 9:-11 10:22 11:-12 12:-13 14:-13 19:-11 23:-9 26:-11 28:-9 30:-9 32:33 33:168 36:-13 101:-10 121:65 122:-27 123:76 126:-37
supplier==	5:-12 8:-18 9:23 10:41 11:-10 12:-11 14:-13 19:34 20:-8 22:-18 23:-9 24:-9 26:-12 29:-11 30:-12 33:44 36:-13 50:-9 51:10 56:-12 58:-16 59:-25 67:-8 68:-8 99:-19 101:-14 118:-12 119:14 120:-9 121:178 122:71 123:160 126:25
supplier	5:-15 6:-9 7:-9 8:-30 9:12 10:63 11:-21 12:-24 13:-8 14:-26 17:-10 19:24 20:-11 21:-8 22:-22 23:-19 24:-13 26:-23 27:-9 28:-15 29:-16 30:-21 31:-9 32:27 33:211 34:-10 36:-26 40:-8 50:-10 51:9 56:-15 58:-22 59:-30 67:-8 68:-9 87:-8 99:-22 100:-8 101:-24 104:-9 109:-8 118:-14 119:12 120:-11 121:243 122:44 123:235 125:-12 126:-11
^ supplier	8:-10 33:115 121:-32 122:107 123:-32
supplier supplier	33:12 121:-11 122:11 123:-11
supplier ~	33:-17 59:-9 121:-26 122:120 123:30
~ supplier	33:12 121:-30 122:29 123:-11
supplier $	10:36 14:-9 23:-8 32:36 33:47 101:-9 118:-9 121:29 123:65 126:-35
who are	29:-14 32:16 33:40
the supplier	9:31 10:-12 14:-8 23:-9 30:-8 32:54 33:17 36:-8 58:-9 101:-13 119:16 121:50 122:-8 123:123 126:-38
our supplier	33:13 121:14 123:25
deliver==s	33:26 119:40 121:14 122:18
deliver	9:-18 10:-19 11:10 14:-8 19:58 28:-16 30:-11 31:-8 32:28 33:24 34:-15 48:9 51:88 67:-22 68:-20 117:-15 118:73 119:51 121:13 122:54 126:-53
who deliver	33:30
deliver @wire	33:10
ship==s	33:10 118:-8 119:29 121:-8 122:10
ship	5:12 33:50 118:-9 119:29 121:-9 122:9
who ship	33:11
ship the	119:9
deliver the	33:8
supply==es	9:-13 14:-9 22:-8 33:62 121:16
who supply	14:-9 33:22
who did	0:-12 19:33 32:35 33:8 34:-19 65:31 126:-26
who do	9:-19 10:11 14:37 15:23 26:-8 29:-22 33:60 34:-16
get the	5:-8 7:20 14:-25 30:-9 33:34 34:-11 48:11 59:-9 62:20 74:8 82:-8 100:41 105:-10 106:34 113:-8 126:52
buy the	33:25 34:-9
from whom	9:-8 10:21 11:-8 19:10 20:-10 30:-10 32:51 33:25 50:-9
whom do	9:-9 10:15 32:-8 33:26
get @wire	1:-13 9:-8 19:11 33:29
@wire take	9:-14 28:-8 33:33
to arriv	33:9
deliver==ed	9:-16 10:-17 19:60 32:30 33:-17 34:-8 51:93 67:-22 68:-20 99:11 117:-21 118:82 120:-10 126:-33
be deliver	10:-8 32:22
deliver $	9:-10 10:-9 19:48 28:-16 32:9 33:22 126:18
arrive==s	33:8 119:12 126:22
take until	9:-12 33:27 119:12
arrive	33:8 119:12 126:22
@wire arrive	33:8 126:22
arrive $	33:9
until @wire	33:16
do ~	28:-22 33:30
~ need	28:-29 33:41 122:20
deliver==	11:13 28:-14 33:15 48:12 119:12 120:12 122:40 126:-19
doe ~	28:-20 33:26
~ take	28:-12 33:13 121:-11 122:37
to deliver	11:14 28:-14 33:17 122:19
wire from	10:-22 20:9 33:25 74:9 118:15 122:34
buy from	121:18
show supplier	33:9
lead==	10:-12 14:25 26:-11 28:-19 29:-16 30:-10 33:66 50:19 56:20 59:73 62:85 63:-13 64:-12 99:-13 122:65 123:-9 126:-24
lead	10:-12 14:25 26:-11 28:-19 29:-17 30:-10 33:66 50:13 56:19 57:-12 59:94 62:119 63:-20 64:-14 99:-13 111:-10 122:64 123:-9 126:-29
the lead	14:33 26:-8 28:-10 29:-9 33:33 62:14 122:21 126:-8
lead time	10:-8 14:-11 28:-17 33:80 121:24 122:25 126:-16
of ~	28:-10 33:83 56:-12 122:51 126:-9
time from	29:24 33:18 53:-12
from ~	10:-11 11:-12 32:-17 51:37 61:-11 67:-8 71:-15 117:47 118:33 120:-15 121:66 122:27 123:38 126:-22
what supplier	8:-8 33:47
supplier are	33:16
supplier do	33:40
supplier have	33:23
which supplier	5:-9 10:43 12:-9 19:20 22:-12 32:-11 33:64 123:-8
term==s	14:-18 33:97 121:13
term	14:-18 33:97 121:13
the term	33:61
term of	33:61
history==	0:-18 4:-9 13:-9 19:34 34:223 78:-9 126:-9
history	0:-18 4:-9 13:-9 19:34 34:223 78:-9 126:-9
^ history	34:133
history job	34:8
#o piec	24:8 38:8
&#d#n#o@job@wire	71:26 83:-12
story==	34:150 41:-15 92:-9
story	34:150 41:-15 92:-9
the story	34:66
story of	34:99 92:-9
#n next	45:-13 90:-29 107:12 112:12 116:9 118:15 126:32
the history	34:39
history of	34:81
#n sinc	46:10 74:14
^ story	34:33
@job #r	72:8 92:12
@job sinc	44:15 46:24 94:-8 108:8 109:17
@job tomorrow	116:16 126:13
of slot	0:-13 2:-30 4:12 34:20 43:15 73:28 76:25 78:21 83:-9 91:29
of number	16:10 39:14 71:27 72:-8 95:-16 126:16
wire #r	34:10
@wire the	52:20
&@day@wire	119:59 126:44
@person sinc	34:12
@person @day	29:-9 53:-11 82:10 108:16 110:26 111:44 112:-21 126:-8
of @day	29:-14 53:9 55:12 106:18 111:-8 113:27
@job been	15:17 25:13
been through	45:23 67:10
through $	7:11 9:-9 13:-13 28:41 34:26 53:41 82:15 88:15 107:11 109:16 111:-8 113:29 115:24
#n been	17:13 34:49 46:8 78:-21 97:18 98:18 120:11 126:-32
happen==ed	0:-10 4:-8 8:-10 13:-14 16:-9 20:13 34:168 125:17 126:-23
happen on	16:14 18:8 30:34 34:9
happen to	13:-12 20:17 34:43 84:11 126:24
to job	13:-13 34:23 65:12 74:18 114:8 126:25
was done	13:-11 34:35 65:13
done with	11:23 13:-10 17:16 19:-8 34:11 37:42 41:-9 44:37 45:11 108:-12 109:-8 115:17 126:8
happen with	34:27
@job next	16:9 17:-8 114:19
&@day@job	11:10 13:8 30:-16 31:68 48:119 74:-8 106:-10 109:-12 112:-10 116:14 119:-9 126:-21
done to	10:-10 13:44 34:9
to slot	0:-13 4:-17 34:19 76:83 90:18 126:-8
to fret	39:19 90:8 97:11 126:-14
)~",
R"~(load==s	34:15 56:25
load has	34:29
has slot	75:39
#n get	34:13 37:12 59:-9 62:26 100:-12 105:12 116:15
has fret	34:75 78:-11 126:-20
#n got	0:-11 15:16 27:10 34:10 37:29 44:21 71:-23 78:10 83:14 96:23 105:-10
had==	1:-25 2:-13 3:-8 4:-19 8:11 9:9 11:-12 13:16 14:-13 15:-18 16:-22 19:53 22:-8 25:37 26:-21 27:-20 31:-9 32:-14 34:32 37:10 38:-12 39:9 40:-11 41:-11 42:9 43:-9 44:-12 45:20 46:52 48:-18 50:-22 51:26 54:-10 55:-10 63:-19 64:30 66:13 67:11 70:43 71:11 73:70 75:11 79:10 80:-13 82:13 83:-11 89:-18 92:-19 93:-18 94:-9 96:34 98:-9 100:-24 102:-20 106:-25 107:14 108:-12 109:28 115:-10 116:-25 117:-10 118:9 120:21 122:10 125:20 126:76
did slot	71:8
had	1:-25 2:-13 3:-8 4:-19 8:11 9:9 11:-12 13:16 14:-13 15:-18 16:-22 19:53 22:-8 25:37 26:-21 27:-20 31:-9 32:-14 34:32 37:10 38:-12 39:9 40:-11 41:-11 42:9 43:-9 44:-12 45:20 46:52 48:-18 50:-22 51:26 54:-10 55:-10 63:-19 64:30 66:13 67:11 70:43 71:11 73:70 75:11 79:10 80:-13 82:13 83:-11 89:-18 92:-19 93:-18 94:-9 96:34 98:-9 100:-24 102:-20 106:-25 107:14 108:-12 109:28 115:-10 116:-25 117:-10 118:9 120:21 122:10 125:20 126:76
#n had	46:42 73:14 78:-8 116:-20 126:-10
with #d	3:33 16:-8 42:-13
who used	1:-15 14:9 15:-8 34:62
used the	0:-14 3:-16 16:-8 83:20 98:10 126:29
used #n	37:13 83:14
who made	34:25
made slot	37:21 79:28 83:-14
who cut	34:13
who press	15:-22 34:59 45:-12
#r in	48:-10 76:25
made the	37:12 46:8 71:-27 72:-9 76:13 79:10 82:-11 83:54
cut slot	0:-9 5:-19 37:-27 71:28 74:-10 76:-11 79:-12 83:-14 126:108
made fret	34:8 37:43 43:12 71:-42 72:42 73:-9 76:-11 79:-44 83:32 126:-14
#n @day	46:-10 48:12 72:8 97:10 108:19 109:10 126:-12
fret on	0:-8 2:28 4:21 13:-26 15:-9 16:-15 17:44 25:75 28:-30 34:20 42:10 44:-20 45:-9 46:-11 77:-9 78:-8 93:14 96:-12 104:11 108:-11 116:8 126:52
#n tomorrow	11:-16 30:30 37:-13 41:-14 48:38 54:11 55:15 111:-8 112:19 113:-9 116:16 126:20
#n today	78:-13 106:55 108:14 109:-9 111:-10 112:22
#n the	3:-12 4:-15 13:-33 17:34 42:-10 46:18 48:14 51:14 71:-10 73:-12 75:86 77:10 90:11 92:11 93:10 94:83 96:21 98:-8 115:-11 116:-9 118:-9 126:-27
work==ed	29:-13 30:27 34:20 96:-10 110:-18 112:-11 126:63
seat==ed	2:-14 4:-9 13:22 15:-9 17:-8 25:20 42:14 44:108 45:-8 76:13 78:-13 79:-10 83:-11 90:-8 92:-8 96:167 98:-10 105:10 108:-10 109:-8 114:-9 116:-11 118:11 126:-10
seat	2:-18 3:-9 4:-18 9:-8 15:-20 16:-13 17:-16 18:27 20:18 25:17 26:-12 28:41 30:-10 33:-25 37:9 42:13 44:140 45:-16 46:-14 48:-11 49:-15 56:-10 63:8 64:11 65:-20 66:-19 71:-13 72:-8 73:-13 76:11 78:-17 79:-12 83:-17 88:-9 90:-13 92:-16 94:-9 96:183 98:-17 99:-11 100:-24 104:105 105:59 106:-8 108:39 109:23 111:-9 114:-16 115:-18 116:-14 118:9 126:31
seat the	20:8 44:20 65:-9 74:-10 96:23
@job #o	0:42 1:-8 4:-10 13:-10 15:-11 17:-12 18:-9 37:61 38:-18 42:19 43:47 48:-14 66:-11 71:13 77:-9 78:34 79:19 83:-11 91:53 92:34 94:-10 96:9 97:52 98:18 109:-8 114:-10 115:-8 126:-22
@person done	63:16 72:10 126:15
do today	34:21
@person did	2:-10 37:13 44:59 64:11 76:-8 81:10 120:11 126:-45
did $	34:20
did on	96:9
&#o@job@person	66:11 98:24
&@job@person	4:-11 5:-15 6:27 13:-22 15:8 17:-14 18:-16 25:11 27:-11 30:-11 34:9 38:-11 44:31 49:-9 62:-31 63:-26 64:-17 65:169 66:95 84:11 88:12 90:-16 108:10 109:-10 126:56
did to	62:14
#n #r	91:10 92:9
&#n#r@person	16:50 45:-23 46:13 110:-8 112:24 126:-29
i done	12:-9 34:66
do last	34:9
thing==	0:14 2:12 4:-9 11:-14 14:-9 19:-9 24:-11 27:14 30:-11 34:49 36:32 39:17 42:11 46:-9 52:9 58:36 84:8 88:16 90:25 99:29 100:-12 101:-8 104:19 123:-10 125:62 126:-42
was the	5:-10 11:-44 13:56 19:56 20:15 26:51 33:-18 34:34 44:20 74:9 88:14 102:-14 125:-27 126:-41
thing	0:8 2:10 4:-10 13:-12 14:-12 19:-11 24:30 27:12 29:-10 30:-24 31:-9 34:52 36:59 39:14 42:10 44:-10 46:-14 52:8 58:32 59:11 62:17 63:26 82:-11 84:35 85:29 88:14 90:20 99:30 100:-14 101:-9 104:19 105:-13 123:-10 125:63 126:-34
last thing	19:-8 34:40
thing $	24:50 34:13 36:10 63:-9 104:22 105:-8 111:8
entry==	34:9 61:13 72:10 122:16 125:54 126:-14
entry	34:9 61:13 72:10 122:16 125:54 126:-14
last entry	34:9 125:26
entry $	34:9 61:13 125:34
my history	34:17
history $	0:-13 34:92
all happen	34:23
happen sinc	34:18
did what	34:33 76:10 126:-9
not==	0:-18 1:-14 2:-14 3:-22 4:-26 6:-15 7:-16 8:-15 9:10 10:-30 11:-15 14:-25 15:-29 16:-22 17:-28 18:-17 19:-31 20:-13 21:-20 24:-15 25:28 26:-12 27:-23 28:-36 29:-35 30:-34 31:-27 33:-36 34:-66 35:115 36:-28 38:-12 39:84 40:-22 42:-45 43:28 44:-77 45:-33 46:26 48:20 49:40 51:-9 52:34 54:25 56:10 57:-22 58:53 59:-11 60:-40 61:61 62:-32 63:52 65:-46 66:44 67:-8 69:-9 70:23 71:-51 72:-35 73:-10 74:-32 75:-12 76:-28 79:-13 80:36 81:-16 82:-9 83:-56 84:-18 85:28 86:-12 87:24 88:49 89:-13 90:41 91:-8 92:16 93:-17 94:25 96:-25 97:-47 99:-29 100:-8 101:15 102:66 103:15 105:39 106:-43 107:64 108:-25 109:42 110:17 111:85 113:81 115:56 117:-24 118:-25 119:9 120:110 121:-17 122:-16 123:74 124:84 125:37 126:160
understood==	22:-9 34:-15 35:115 42:-9 43:17 124:97 125:-12 126:-33
not	0:-18 1:-14 2:-14 3:-22 4:-26 6:-15 7:-16 8:-15 9:10 10:-30 11:-15 14:-25 15:-29 16:-22 17:-28 18:-17 19:-31 20:-13 21:-20 24:-15 25:28 26:-12 27:-23 28:-36 29:-35 30:-34 31:-27 33:-36 34:-66 35:115 36:-28 38:-12 39:84 40:-22 42:-45 43:28 44:-77 45:-33 46:26 48:20 49:40 51:-9 52:34 54:25 56:10 57:-22 58:53 59:-11 60:-40 61:61 62:-32 63:52 65:-46 66:44 67:-8 69:-9 70:23 71:-51 72:-35 73:-10 74:-32 75:-12 76:-28 79:-13 80:36 81:-16 82:-9 83:-56 84:-18 85:28 86:-12 87:24 88:49 89:-13 90:41 91:-8 92:16 93:-17 94:25 96:-25 97:-47 99:-29 100:-8 101:15 102:66 103:15 105:39 106:-43 107:64 108:-25 109:42 110:17 111:85 113:81 115:56 117:-24 118:-25 119:9 120:110 121:-17 122:-16 123:74 124:84 125:37 126:160
^ not	3:-27 13:9 15:13 35:42 42:-12 43:51 54:57 67:19 82:10 97:-42 98:10 108:-8 109:8 111:10 124:-13 126:-22
understood	22:-9 34:-15 35:115 42:-9 43:17 124:97 125:-12 126:-33
not understood	34:-10 35:101 124:49 125:-9 126:-31
understood $	22:-9 35:77 124:101 125:-12 126:-32
understood sinc	34:-12 35:37
you not	34:-8 35:30
was not	34:-17 35:14 124:34
understand==	0:-11 8:-9 18:13 19:-11 21:-9 34:-36 35:82 36:51 124:38 126:-8
understand	0:-11 8:-9 18:13 19:-11 21:-9 34:-36 35:82 36:51 124:38 126:-8
not understand	34:-18 35:25 124:40
understand sinc	34:-26 35:48
which was	35:8
sentence==s	16:19 35:42 124:46 126:-15
sentence	16:19 35:42 124:46 126:-15
me sentence	35:27 124:-14
sentence that	124:49 126:-12
that were	35:16 51:14 68:10 80:11 126:-26
were not	35:16 45:-10 68:11
sentence not	35:37
the sentence	35:12 124:22
ask==ed	9:11 10:-12 13:14 18:9 30:-8 32:21 34:-16 35:31 36:32 37:-8 41:8 44:15 48:-11 49:-15 51:-17 66:-8 90:13 94:11 110:-18 111:-22 115:-8 117:24 126:73
did anybody	13:60 32:23 34:-16 35:10 44:-11 108:-10
ask	0:-8 1:8 4:18 5:-8 12:-15 13:22 14:24 15:40 16:63 17:-19 22:-9 30:-11 32:19 33:-9 34:-31 35:31 36:79 37:-10 41:20 42:14 45:-23 48:-20 49:-20 50:10 51:-18 61:-8 62:20 63:-15 64:-8 66:-9 83:-8 90:11 110:-19 111:-24 115:-10 117:34 121:-10 122:19 126:40
anybody ask	35:10
ask that	35:32
that nobody	22:46 32:-8 35:19 51:15 124:29 126:-10
nobody understood	35:9 124:48
ask==	1:14 10:18 13:10 15:46 17:-13 31:-10 34:-12 36:53 41:12 62:15 117:11 121:-10 122:21 126:-25
was ask	35:17 90:9 126:13
that you	124:26
you did	35:-10 124:40
did not	0:10 1:31 13:-9 25:24 34:-19 37:11 49:-11 51:-8 62:-10 64:32 65:29 68:11 71:-9 72:-15 76:-9 90:-14 91:-13 92:-8 94:14 124:39 125:16 126:66
nobody did	126:16
understand $	8:-8 19:-11 34:-10 35:33 36:48 124:39
did peopl	34:12 35:9
peopl say	25:16
say that	36:15 63:10 118:23
nobody understand	19:-8 34:-15 35:58
help==	6:-31 23:-10 30:-9 36:248 59:9 60:10 62:-8 96:-8 126:10
topic==	36:28
help	2:16 6:-31 23:-10 30:-9 36:246 59:9 60:10 62:-8 96:-8 112:8 126:9
^ help	6:-18 36:177 126:-9
topic	36:28
help $	6:-13 36:59 96:-8
i ask	10:19 15:25 17:-13 34:-9 36:23
ask $	31:-8 36:32 49:-10 126:11
we ask	36:28
i say	3:12 31:15 36:35 126:-8
we say	36:14 62:9
help on	36:31
help ~	36:11
help with	6:-17 36:50
with ~	57:27 58:-9 117:12 122:-8
you do	36:35 59:9
setting==s	12:-12 14:-20 36:150
setting	12:-12 14:-20 36:150
)~",
R"~(the setting	36:58
setting $	14:-9 36:105
all setting	36:38
^ use	0:-13 1:-32 3:-22 34:-17 37:138 38:-28 42:-9 56:15 71:29 74:13 82:-10 83:102 93:-8 104:9
use slot	37:11
#d at	3:-9 47:11 77:29 88:-9 118:9 126:25
&#d#n#o@job	3:11 42:-12 73:-11 79:43
&#d#o	38:11 79:22 93:16
^ used	0:-10 37:69 38:-10 78:-9 83:27 94:-9
^ took	2:-8 44:34 51:17 67:29 68:11 83:39 88:20 95:22 96:9 98:12 117:-17 126:-15
^ take	0:-29 1:-11 11:-11 25:-9 26:-12 27:-11 28:-9 37:40 39:15 41:-11 42:-13 48:17 51:19 54:-17 58:38 60:-31 61:84 63:27 64:19 65:-30 66:86 67:-24 70:17 74:13 83:25 87:-22 88:-12 101:30 102:13 105:19 107:30 109:-9 111:-19 113:23 117:-9 120:16 122:-9 123:10 125:22
&#d#o@job@wire	37:36 77:11
#d on	1:-13 3:-17 37:44 42:59 43:-12 75:-9 93:-18 118:22 126:15
into==	1:-11 2:-10 3:-23 4:-17 5:-14 6:-13 7:-10 8:-10 9:10 10:12 16:-8 20:20 21:-25 22:-10 24:-9 26:-9 28:24 33:42 37:85 38:-22 39:-16 40:57 41:11 42:-20 43:25 45:-9 46:-10 51:41 53:9 55:-9 63:35 64:-12 65:-12 66:15 67:-13 71:35 72:-27 73:39 74:-8 76:53 77:-8 79:14 80:55 83:34 84:27 87:19 90:-16 93:-12 96:-22 97:13 98:-13 103:19 109:-12 117:-10 122:-8 123:-39
^ put	0:-11 1:-17 3:-9 4:-10 8:-10 9:-8 11:-12 12:-10 13:-10 14:-15 15:-21 16:-8 24:-19 26:-19 27:-10 29:-8 30:-10 33:-12 34:-13 37:35 38:72 39:9 40:42 42:14 43:-16 44:-21 46:-16 47:-13 48:-13 49:-8 50:26 54:15 56:34 59:14 62:17 64:13 65:47 70:13 71:-15 73:27 76:-17 80:8 82:-10 84:49 85:-28 86:9 90:-12 91:-15 92:-10 96:13 97:11 98:-14 100:-12 103:18 105:9 106:18 108:-16 109:45 111:10 112:15 114:45 116:16 119:-9 121:42 126:-70
into	1:-11 2:-10 3:-23 4:-17 5:-14 6:-13 7:-10 8:-10 9:10 10:12 16:-8 20:20 21:-25 22:-10 24:-9 26:-9 28:24 33:42 37:85 38:-22 39:-16 40:57 41:11 42:-20 43:25 45:-9 46:-10 51:41 53:9 55:-9 63:35 64:-12 65:-12 66:15 67:-13 71:35 72:-27 73:39 74:-8 76:53 77:-8 79:14 80:55 83:34 84:27 87:19 90:-16 93:-12 96:-22 97:13 98:-13 103:19 109:-12 117:-10 122:-8 123:-39
#n into	4:-8 34:8 37:61 40:8 71:43 72:-28 73:13 76:35 82:11 90:-11 126:-24
into slot	0:24 37:49 38:-9 71:29 76:-11 92:-12 97:11 126:-11
put number	37:20 38:19 71:-10 114:14
^ number	0:-9 3:15 15:31 17:-13 19:16 22:-8 34:23 37:50 38:-11 39:-13 41:23 42:-8 65:37 71:8 76:-11 78:-10 94:-11 96:11 98:9 100:19 102:-24 103:35 107:34 119:14 126:-16
#n goe	0:-8 1:26 4:17 37:23 38:9 39:14 41:35 43:-10 65:31 71:-9 79:9 82:-9 90:-9 94:25 115:11 126:-21
goe in	1:-20 2:-10 4:46 13:-9 34:-8 37:8 40:9 41:36 69:9 73:9 79:8 82:-9 126:25
went into	40:-11 41:12 72:32 76:8 80:13 82:-13 83:22 126:-11
^ piece	0:-12 4:-8 22:29 24:19 37:23 41:34 71:-30 76:-32 82:17 92:-9 98:-8 126:90
goe into	37:8 41:12 84:17
#n went	34:-8 37:25 41:24 76:40 78:11 83:13 96:9 126:-19
went in	18:-9 34:-8 37:25 41:-15 45:9 76:8 79:12 80:8 83:10 96:10 109:11 116:-9 126:36
make fret	0:-8 37:56 71:-13 78:-8 79:35
#n out	0:-21 5:21 37:30 38:9 41:37 43:19 44:18 49:19 66:-9 72:33 73:16 74:23 76:-13 79:-33 82:9 88:21 102:10 126:-10
make slot	79:22
@job out	15:9 16:-8 37:26 49:18 71:32 72:-14 74:24 83:-15 115:15 126:-10
of piece	37:11 39:10 82:38 83:-11
^ made	37:58 71:-50 72:72 76:17 83:9 116:-8
from number	72:-14 83:19
^ hold	0:-11 8:-10 13:-10 17:-9 18:-10 24:21 30:-10 37:-26 38:145 39:-13 44:-13 71:-11 84:75 85:-37 90:55 91:-22 115:26 126:74
hold piec	1:-14 24:66 37:-22 38:22 39:-11 41:-22 71:-12 126:48
at @day	42:9 84:10 116:-8
hold number	39:23
hold #d	38:10 39:16
reserv==e	0:-19 5:-13 13:-10 16:-10 22:18 24:-10 34:-13 37:-30 38:115 39:21 41:-9 44:-9 54:9 71:-10 84:83 85:17 104:18 106:39 126:-24
^ reserv	0:-10 5:-13 8:-12 9:-8 24:72 27:-24 37:-13 38:65 84:73 85:-20 106:42
reserv #n	38:10
^ keep	0:-12 3:-17 5:-12 37:-22 38:80 39:-34 42:9 52:-20 55:8 77:12 84:44 85:-11 87:-21 106:25 107:-46 122:20 126:129
keep #n	4:-10 13:-11 17:54 25:-14 38:23 41:14
reserv number	38:14
reserv piece	24:60
keep #d	3:-11 42:13
let==	0:15 1:-16 2:-8 3:-12 4:9 9:-12 10:8 11:-18 12:-11 13:-26 14:21 15:-22 17:-11 20:-10 22:-10 23:-10 26:-12 27:11 28:-8 30:-17 31:-12 32:-9 33:12 36:-10 38:25 39:87 41:-15 46:18 48:20 49:-11 52:14 53:22 54:-22 56:46 58:-10 59:18 60:11 61:17 62:35 63:32 64:11 65:59 66:79 70:-8 71:-17 82:-24 83:-32 84:-18 85:64 90:-9 91:-8 94:-10 96:-11 100:23 102:-8 103:-20 104:19 106:-9 110:20 111:-24 112:-20 113:-25 115:36 118:-10 119:-10 122:-12 125:-21 126:63
let	0:15 1:-16 3:-12 4:8 9:-12 10:8 11:-18 12:-11 13:-26 14:21 15:-22 17:-11 20:-10 22:-10 23:-10 26:-12 27:11 28:-10 30:-17 31:-12 32:-9 33:12 36:-10 38:25 39:82 41:-15 46:18 48:20 49:-11 52:14 53:22 54:-22 56:46 58:-10 59:18 60:11 61:17 62:35 63:32 64:11 65:59 66:79 70:-8 71:-17 82:-24 83:-32 84:-18 85:64 90:-9 91:-9 94:-10 96:-11 100:22 102:-8 103:-20 104:19 106:-9 110:20 111:-24 112:-20 113:-25 115:36 118:-12 119:-10 122:-12 125:-21 126:79
^ let	0:-12 1:-12 4:11 9:-10 10:13 11:-11 13:-22 14:25 15:-9 20:-8 22:-15 24:-22 26:-9 27:11 29:-15 30:-11 33:-12 34:11 36:-10 39:78 41:-12 44:-17 46:-21 48:23 49:-8 54:-15 56:41 59:14 60:8 61:8 62:28 63:23 65:53 66:80 71:-16 82:-23 83:-31 85:77 100:26 103:-12 104:26 107:-11 109:-10 110:28 111:-11 112:-8 113:-32 115:33 116:12 125:-8
let go	1:-11 16:-9 24:-16 39:87 46:40 61:11 85:22 126:66
go of	1:-8 24:-13 39:44 85:12 126:49
go #n	39:8
let number	39:9
let the	46:-10 52:17 65:8 99:10 100:26 108:10 109:9 115:8 116:9 123:8 126:-19
let #d	39:12
let #n	2:10 39:8
^ free	13:-13 24:-47 27:-13 30:-29 37:-9 39:84 61:14 66:93 84:-34 85:87 107:67 126:-10
free #d	39:46
unhold==	13:-14 34:-9 39:117 74:-8 84:-9 85:70 126:-10
unhold	13:-14 34:-9 39:117 74:-8 84:-9 85:70 126:-10
^ unhold	13:-14 34:-9 39:117 74:-8 84:-9 85:70 126:-10
unhold #n	39:92
releas==e	1:-9 24:-32 27:-12 34:-32 39:112 41:-16 49:-10 65:-26 66:59 74:-9 84:-42 85:158 107:48
releas	1:-11 24:-64 27:-12 34:-45 37:-9 38:-8 39:170 41:-27 49:-11 65:-27 66:58 74:-10 84:-42 85:145 107:68 126:25
^ releas	24:-26 27:-10 39:103 41:-9 65:-26 66:65 84:-19 85:60 107:29 126:-34
unhold the	39:8 85:20
do not	1:-10 2:14 9:-11 10:-12 17:-22 22:11 24:10 26:-8 28:-18 30:-9 32:-14 33:-13 37:-9 38:31 39:-16 41:-12 46:-9 49:-14 51:-8 52:19 53:19 54:13 55:23 56:-15 57:-18 58:44 61:-43 62:-8 65:-36 66:-14 68:-16 70:-11 71:-22 72:-10 74:15 85:23 87:24 88:8 92:12 94:12 95:-9 98:-8 101:15 102:31 105:14 107:16 109:-29 111:38 113:8 114:-10 115:27 121:-11 122:11 123:41 125:9 126:170
not hold	18:11 38:-13 39:16 85:35 126:-14
any more	1:-20 11:-9 22:14 23:-10 24:-18 27:-8 32:-13 33:-8 38:-10 39:50 41:21 43:10 48:30 49:10 54:-24 58:19 60:-16 61:29 63:41 65:-8 66:21 84:-9 85:36 87:21 88:27 94:-12 100:12 101:37 102:-29 103:21 105:15 107:26 109:-8 110:12 111:-28 112:24 113:32 115:18 120:20 123:11 126:-113
more $	1:-18 11:-8 22:13 23:-9 24:-17 26:-8 27:-8 29:-11 32:-17 33:-9 38:-8 39:68 41:-12 48:31 54:-15 58:21 61:9 63:17 64:52 66:28 84:-19 85:55 87:24 88:24 94:-23 101:39 102:-30 103:67 110:26 111:-15 112:-13 113:27 114:-8 115:28 120:9 122:21 123:18 126:-80
@wire any	18:12
^ nobody	1:-18 13:-12 15:9 24:13 32:39 37:-19 38:18 39:54 41:-9 48:-11 54:38 56:11 58:8 66:52 71:-20 82:-28 89:10 94:14 95:-17 98:-27 102:27 106:-11 108:18 113:9 114:-13 117:-23 126:83
nobody need	39:24 120:9 126:-15
^ no	0:19 1:27 4:-14 5:-9 6:-10 8:44 9:-17 11:-10 13:-44 14:-10 15:-8 16:73 17:-12 18:-10 20:-10 22:-21 23:-10 24:-12 26:-9 27:-11 29:-27 30:-27 31:-15 33:-19 34:-18 36:-10 38:47 39:19 41:-16 44:-11 45:-8 46:-8 48:40 49:30 51:-13 53:34 54:64 55:-13 56:-11 58:40 59:-8 61:15 64:-24 66:-27 71:-8 72:25 74:-11 76:-9 78:-25 81:12 82:-10 84:-10 88:46 90:65 92:52 94:25 96:-9 98:-10 101:12 102:89 103:-8 104:-30 106:-14 107:-16 108:-11 109:-19 110:29 111:55 112:-15 113:-30 114:15 115:-11 119:-8 122:-8 123:8 125:17 126:35
no one	39:34
one need	39:23
nobody want	37:9 39:44 126:-17
want number	39:27
longer==	0:84 1:-11 8:-14 11:-13 14:-10 15:-10 20:31 21:-21 22:-34 23:-11 24:-15 26:-12 32:-10 33:-13 36:-8 38:-9 39:50 41:-17 48:20 49:-10 54:-21 58:34 60:-49 61:56 62:-11 63:48 64:36 66:33 70:40 71:-16 82:24 83:-12 87:36 98:12 100:-17 101:64 102:-47 103:36 107:28 110:-16 111:-18 112:13 113:45 114:-10 115:29 118:-8 120:-11 121:-14 122:-9 123:66 125:-11 126:-53
longer	0:84 1:-11 8:-14 11:-13 14:-10 15:-10 20:31 21:-21 22:-34 23:-11 24:-15 26:-12 32:-10 33:-13 36:-8 38:-9 39:50 41:-17 48:20 49:-10 54:-21 58:34 60:-49 61:56 62:-11 63:48 64:36 66:33 70:40 71:-16 82:24 83:-12 87:36 98:12 100:-17 101:64 102:-47 103:36 107:28 110:-16 111:-18 112:13 113:45 114:-10 115:29 118:-8 120:-11 121:-14 122:-9 123:66 125:-11 126:-53
)~",
R"~(no longer	33:-9 39:24 41:-8 54:-28 60:-40 61:39 62:-10 63:29 64:38 66:13 82:16 87:31 88:8 100:-8 101:31 102:-41 103:42 107:29 110:-10 111:-9 113:32 114:-13 115:22 121:-13 123:52 126:-50
longer held	39:9
held any	39:19
longer need	58:11 101:-13 107:37
is not	3:-13 11:-13 14:-8 24:-16 26:-14 30:-9 39:61 41:16 42:-9 43:-30 44:-18 48:13 49:13 52:-13 54:-17 60:-37 61:116 62:-15 64:-18 65:-14 66:20 70:11 76:-10 78:-39 80:-8 81:-11 85:-8 88:44 90:-15 91:9 92:-65 94:-26 95:27 102:-59 103:24 107:58 109:41 110:-12 112:38 113:47 114:16 118:8 120:61 122:-8 123:13 126:77
not need	10:-9 26:-9 39:32 41:22 58:17 85:22 104:-16 105:8 106:-17 107:72 120:9
not want	0:-8 24:25 41:15 49:18 61:27 65:-19 66:-11 94:15 107:28 120:33 123:25 125:8 126:-51
want any	39:11 94:16 107:17 126:-10
longer want	39:11
add==	0:-8 1:-21 8:-13 9:-19 10:-9 14:-11 19:-8 20:61 22:-10 25:-12 26:-8 30:-8 33:-21 39:-12 40:129 50:40 53:-16 55:15 56:-12 57:58 58:-56 59:80 67:-14 68:-16 69:-8 70:21 82:-12 86:27 89:-14 94:15 99:87 100:-14 101:-12 104:-12 105:-14 117:30 118:-11 121:91 122:-22 123:-23 126:71
add	0:-8 1:-21 5:-8 8:-13 9:-21 10:-15 14:-11 19:-9 20:52 22:-11 25:-13 26:-8 28:-8 30:-9 33:-23 39:-14 40:128 50:40 52:-15 53:-16 55:15 56:-12 57:58 58:-57 59:80 61:-8 67:28 68:-17 69:-8 70:18 82:-13 86:27 89:-15 94:15 99:100 100:-23 101:-19 104:-13 105:-21 117:30 118:-12 119:-8 121:105 122:-23 123:-9 126:75
^ add	1:-19 14:-8 20:-15 22:-8 33:-13 36:-8 40:141 50:49 51:-21 53:-15 55:16 56:-10 57:74 58:-42 59:74 67:-13 70:24 82:-11 86:28 89:-11 99:41 100:-10 104:-11 105:-10 117:31 121:73 122:-14 123:-19 126:-15
in length	82:8 83:11 86:8
@wire count	40:14 42:-8 47:-11 51:18 67:-30 70:-8 83:18 117:20 126:21
count #n	16:-14 42:-16 45:-19 47:-19 51:-13 67:15 73:65 76:-13 80:27 81:-17 82:34 86:-13 94:18 99:33 100:22 105:16 115:-19 117:24 118:22 120:-12
count #c	42:-19 51:14 70:-13 73:39 76:-16 82:21 83:9 99:10 115:-13 117:10
radius #d	42:20 47:59 76:-27 86:-15
in count	42:-8 73:-11 83:23
&#c#d#n@wire	47:13 51:32 69:26 70:-12 117:-20
lot==	0:9 1:11 6:-11 8:12 9:-14 13:-26 15:-9 17:-13 19:53 25:23 28:-15 30:-9 33:11 34:-11 37:-10 38:-24 39:8 41:-9 44:-20 45:27 46:-12 48:-16 49:-15 51:31 63:20 65:-16 66:-16 70:-8 71:-12 72:39 74:245 78:-12 81:9 82:19 84:46 85:95 88:-12 90:-11 92:-8 94:-12 95:-9 96:17 98:-11 99:-8 106:-8 108:-20 109:-15 115:-14 116:-9 118:9 126:12
#c count	51:9 60:10 61:21 82:9 83:-8 99:8 126:-29
@wire lot	19:26 40:8
lot #n	44:-9 65:-10 72:40 74:161 94:-8 98:-8 108:-12 114:-12 115:-9 126:48
plac ~	80:15
raw end	3:52 40:8 43:10
add #d	40:34 70:8
in ~	40:12 56:26
add #n	40:35 51:-14 70:20 80:-8 99:17 117:37 126:-28
tin in	0:12 21:34 22:-18
from lot	19:-18 72:20 74:52 126:35
lot #c	40:8 74:45
&#c#d@wire	51:-21 68:14 69:96
@wire of	40:25 51:-15 69:13 73:9 82:39 83:-11 126:-12
of lot	74:39 126:-13
@wire into	0:-8 37:-8 40:26 51:16 67:-10 71:18 83:17 96:-10 126:16
into the	0:-14 1:-12 2:-12 7:-10 10:8 18:12 34:11 40:53 41:21 42:-8 43:24 66:18 71:8 73:22 76:12 78:11 79:23 80:25 82:16 83:18 84:8 85:9 126:-34
^ throw	39:-9 41:68 82:92 83:-18 126:-10
throw #d	41:27 82:-12
drop==	13:-19 15:-10 16:-8 17:-9 24:-25 26:-27 27:-18 30:-9 33:-29 34:-11 36:-9 38:-13 39:48 44:-13 48:46 49:100 52:15 56:-8 58:65 61:16 65:-9 66:30 84:-8 85:56 87:45 88:-8 91:-8 97:13 99:-17 100:-19 101:123 102:-11 103:-18 104:-24 107:20 108:-10 109:-14 114:17 115:-9 122:-15 123:83 125:-9 126:21
drop	0:16 1:-13 9:-8 13:-20 15:-11 16:-21 17:-10 19:-13 24:-25 26:-28 27:-18 30:-9 33:-43 34:-14 36:-10 37:-21 38:-15 39:46 40:12 44:-23 48:46 49:99 51:13 52:43 56:-9 58:63 61:15 65:-12 66:28 70:-12 78:12 80:8 84:-9 85:55 86:-8 87:50 88:-9 91:-9 92:-13 97:13 99:-23 100:-21 101:129 102:-12 103:-18 104:-26 107:19 108:-11 109:-17 114:16 115:-9 121:-12 123:91 125:-11 126:65
^ drop	13:-14 17:-8 24:-19 26:-20 27:-16 33:-22 34:-9 38:-11 39:33 44:-11 48:53 49:67 52:15 58:62 61:17 66:32 78:12 80:11 84:-8 85:57 87:43 99:-9 100:-8 101:50 104:-18 107:27 108:-8 114:10 120:9 122:-10 123:60 126:-45
in tin	73:9 80:9
into tin	80:17
add a	1:-16 36:13 40:19 50:13 57:-10 58:-17 59:26 80:9 99:12 104:-9 105:-10 121:28 122:-8 126:63
long piec	39:10
bit==	0:92 1:17 8:9 13:-17 22:-12 31:-9 34:-8 37:14 39:21 41:23 43:-10 44:20 46:-11 47:-10 51:-19 67:8 70:20 79:-8 80:-15 82:-13 90:43 109:10 126:-12
mm long	42:21 47:-10 51:-9 69:8 73:19 81:-11 86:34 117:8
bit	0:89 1:13 2:9 4:-9 6:-9 8:22 9:-15 13:-18 17:-11 19:-12 20:-10 22:65 24:14 31:-10 34:-11 39:19 40:20 41:20 43:-11 44:13 46:-14 47:-10 51:-23 69:-8 70:18 72:-13 73:-9 79:-9 80:34 82:-8 83:21 84:18 89:-8 90:41 92:13 109:8 117:-8 126:-39
long bit	40:9
bit of	0:36 1:16 19:-10 22:33 37:11 40:37 41:23 47:-9 51:-8 72:-8 80:17 82:-15 126:-10
#d long	0:-11 1:11 2:19 3:19 37:-12 40:29 41:-11 43:-9 51:-11 70:22 72:-8 73:8 76:-13 79:8 82:20 83:20 93:-12 126:-9
in bit	40:8
long offcut	71:-23 126:31
put an	40:17
mm bit	0:-15 1:20 41:26 82:-10
add #c	40:15
#n piece	37:-9 40:22 51:18 67:-11 80:21 82:12 84:14 85:-8
#c piece	40:11
in each	4:8 9:11
each $	2:-8 4:12 16:17 26:32 28:-12 51:46 67:14 71:-20 72:-8 76:23 83:21 126:-8
@wire at	8:32 24:-10 32:-11 33:37 38:-10 52:32 67:-9 70:-9 77:21 82:39 117:46 118:-25 126:-8
@wire each	19:9 51:-9 67:14 117:10
each #d	51:-9 67:26 117:18
#d each	51:18 67:-8
#c of	60:9 83:36 118:24
mm each	40:-11 51:28 67:30 83:-12
dress end	1:9 3:17 40:8 42:-11
dress $	1:32 3:-23 40:51 43:34 70:-9 104:17 108:40
both==	0:-11 1:10 9:-8 26:11 29:-15 30:14 37:-17 40:25 41:-11 43:-11 51:9 53:19 55:8 71:33 72:-9 80:-10 82:48 83:40 89:-9 90:-11 91:9 93:11 98:8 100:-19 101:43 102:47 103:15 115:15 117:-12 118:12 121:-8 126:-20
both	0:-11 1:10 9:-8 26:11 29:-15 30:14 37:-17 40:25 41:-11 43:-11 51:9 53:19 55:8 71:33 72:-9 80:-10 82:48 83:40 89:-9 90:-11 91:9 93:11 98:8 100:-19 101:43 102:47 103:15 115:15 117:-12 118:12 121:-8 126:-20
both end	0:-8 1:32 40:11 80:-9
end dress	1:10 43:16 44:17
raw $	40:25 43:17 81:8
drop==ped	16:-13 19:-9 33:-13 40:13 44:-9 51:17 78:17 80:12 122:17 123:13 126:39
chuck==ed	22:-9 40:13 80:63 82:13 83:-15 126:-10
chuck	1:-8 22:-10 39:-14 41:80 80:63 82:85 83:-22 126:-28
^ chuck	22:-10 39:-9 40:13 41:41 80:59 82:41 126:-8
chuck #n	80:19 82:92 83:-18 126:-11
threw==	2:-9 17:11 22:-11 39:-12 40:9 41:93 73:8 80:29 87:12 126:-16
threw	2:-9 17:11 22:-11 39:-12 40:9 41:93 73:8 80:29 87:12 126:-16
^ threw	40:10 41:42 80:16
threw #d	40:11 41:15
chuck #d	40:19
into $	40:10
across==	3:-17 11:14 19:9 26:-16 33:-20 40:27 42:34 43:27 50:10 76:-13 77:76 79:-8 81:8 86:19 89:35 90:14 92:-8 93:-20 99:-14 101:22 123:19 126:-14
its==	0:-15 1:23 2:-31 3:-14 4:15 6:12 8:-8 9:-9 11:-18 13:-28 14:-10 15:-10 16:25 18:29 22:-11 23:-9 24:-28 25:20 27:-9 29:-9 30:-14 31:-19 32:18 33:27 34:30 37:-30 38:-9 39:16 40:15 41:-13 44:-18 45:-12 46:33 47:-11 48:27 49:-23 50:-11 51:16 52:15 53:-11 55:13 57:8 59:-11 61:33 62:-10 65:-12 69:-8 70:-8 73:-18 74:15 76:10 81:17 84:40 85:8 86:14 87:-9 88:71 89:31 91:-9 92:17 93:34 94:28 95:10 96:21 98:28 99:-8 100:-15 101:-16 102:23 103:-37 104:29 105:-8 106:-9 107:-8 108:-14 109:-25 112:-8 115:-11 118:-8 119:-14 120:-22 126:19
across	3:-18 11:14 19:9 26:-16 33:-20 40:27 42:37 43:31 50:10 76:-15 77:76 79:-12 81:8 86:19 89:35 90:14 92:-8 93:-20 99:-14 101:22 123:19 126:-14
its	0:-15 1:23 2:-31 3:-14 4:15 6:12 8:-8 9:-9 11:-18 13:-28 14:-10 15:-10 16:25 18:29 22:-11 23:-9 24:-28 25:20 27:-9 29:-9 30:-14 31:-19 32:18 33:27 34:30 37:-30 38:-9 39:16 40:15 41:-13 44:-18 45:-12 46:33 47:-11 48:27 49:-23 50:-11 51:16 52:15 53:-11 55:13 57:8 59:-11 61:33 62:-10 65:-12 69:-8 70:-8 73:-18 74:15 76:10 81:17 84:40 85:8 86:14 87:-9 88:71 89:31 91:-9 92:17 93:34 94:28 95:10 96:21 98:28 99:-8 100:-15 101:-16 102:23 103:-37 104:29 105:-8 106:-9 107:-8 108:-14 109:-25 112:-8 115:-11 118:-8 119:-14 120:-22 126:19
across its	42:29 89:9 93:-12
its end	1:41 42:24 88:20 93:-12 126:-24
their==	2:-12 4:9 9:25 12:-34 14:59 15:11 17:-13 18:20 19:17 26:13 27:20 30:-9 32:-8 33:51 34:-9 36:-9 71:-9 82:18 90:-10 92:18 96:9 106:-9 107:-8 116:12 119:12 121:-8 123:17
their	2:-12 4:8 9:41 12:-34 14:59 15:11 17:-13 18:19 19:15 26:13 27:20 30:-9 32:-8 33:51 34:-10 36:-9 71:-9 82:18 90:-10 92:18 96:9 106:-9 107:-8 116:12 119:12 121:-8 123:17
)~",
R"~(measur==ed	0:-17 1:-8 2:-22 3:-27 8:-14 9:-12 22:25 37:-20 42:169 43:-24 46:-10 47:-22 69:11 71:-16 73:8 76:35 77:42 78:-8 79:-8 80:40 81:111 82:-24 83:-25 89:33 92:-12 93:53 100:15 126:21
@wire measur	40:13
measur across	40:16 42:-29 43:14 77:27
mm in	1:9 3:9 67:13 70:-9 82:16
tin #n	40:16
tin #d	0:-8 40:25
#n short	76:31
short==s	8:12 21:8 22:-10 40:-10 72:8 80:59 82:17 126:-19
^ scrap	1:-10 20:-17 22:-13 34:-11 38:-10 41:153 49:19 54:-17 70:-8 76:-8 78:15 82:72 83:-13 87:55 99:-20 101:31 113:39 118:-14 120:51 126:-38
scrap piec	1:-18 22:92 24:-9 34:62 37:-9 38:-11 39:-19 41:-46 82:-14 126:11
why ~	41:22 49:8 70:-8 78:23
#n why	49:8 78:23
scrap the	41:32 54:-16 82:-31 87:47 99:-21 101:42 113:41
scrap piece	41:18 82:-17 83:-8 126:30
ago piec	38:11 41:12
becaus==e	0:8 3:-10 4:-13 13:-11 15:-8 16:10 17:-8 19:8 22:-9 24:22 29:-14 30:-11 33:-8 39:-8 41:41 44:19 45:-9 49:48 51:-12 52:-8 53:-9 54:68 56:-23 65:-12 70:88 72:28 78:27 82:42 85:-15 89:-9 91:-27 92:45 96:17 98:9 100:-12 102:50 103:-8 110:11 111:46 112:-16 113:-9 118:-27 120:72 122:20 126:-83
becaus	0:8 3:-10 4:-13 13:-11 15:-8 16:10 17:-8 19:8 22:-9 24:22 29:-14 30:-11 33:-8 39:-8 41:41 44:19 45:-9 49:48 51:-12 52:-8 53:-9 54:68 56:-23 65:-12 70:88 72:28 78:27 82:42 85:-15 89:-9 91:-27 92:45 96:17 98:9 100:-12 102:50 103:-8 110:11 111:46 112:-16 113:-9 118:-27 120:72 122:20 126:-83
#n becaus	41:27 49:21 72:22 82:-12 126:-19
becaus ~	41:16 49:9 54:43 56:-20 70:37 78:8 82:17 102:44 111:43 112:-13 113:-12 120:31 126:-14
@wire becaus	51:-10 70:11 82:21
scrap #n	41:48
bin the	13:-12 49:45 79:8 82:25
out #n	41:11 43:12 82:22 96:8
bin number	82:9
out piece	41:17 82:-22 126:18
away #n	41:10
bin piece	41:9 82:33 83:-14 126:-16
@wire out	40:-8 83:27 126:-10
throw #n	82:12 83:-13
#n away	37:-13 38:40 41:41 49:25 61:16 66:-9 82:-14 126:-26
#d out	41:34 82:-8
#d away	41:17
#d goe	40:10 41:16
we threw	41:26 87:10
threw out	22:-8 37:9 41:16 82:18 87:10 126:-10
i threw	22:-8 41:26 80:8 82:8 126:-9
threw #n	41:14
threw number	41:14
threw the	41:12
threw piece	82:-9 126:10
is scrap	36:14 39:-8 41:42 78:10 79:9 82:-12
no good	1:-26 22:24 38:-33 41:37 42:17 82:14 116:11 126:41
^ measur	0:-10 2:-14 3:-20 37:-14 40:11 42:113 43:-16 73:-12 75:10 76:17 80:-31 81:92 83:-22 93:32 126:-22
measur length	42:18
@job measur	0:-10 2:10 4:24 81:-10
#d measur	42:12 43:11
straight	0:21 3:-14 8:11 9:-11 13:34 23:-8 24:-13 37:-14 39:-11 40:21 41:-12 42:77 46:-14 51:9 53:40 66:19 73:-15 76:-15 79:-15 81:10 82:-16 88:-12 90:25 93:-14 95:135 96:-9 126:44
measur straight	3:-8 42:57 43:-11 79:-9 81:10 82:-9 93:-10
straight job	42:13
#n bend	42:20 109:12
radius #n	42:12 47:20 76:-18 86:8
measur slot	2:10 37:-9 42:19
&#d#n#r@day@job	42:9
measur the	3:14 9:-9 42:-10 75:10 76:-13 77:14 89:13 126:56
#n measure	3:-8 42:55 43:-14 70:23 77:20 78:-12 79:-21 93:-12 118:8 126:45
@job measure	37:-11 42:55 77:21
measure #n	42:21 81:12 122:16
measur #d	3:9 42:32 51:21 75:18 76:12 77:-15 80:-9 81:15 89:-9 118:20 126:-15
mm at	0:-15 3:23 42:26 47:27 50:11 76:-8 77:16 86:-12 88:-16
#d across	42:31 77:21 89:25
mm across	42:10 50:10 89:12
across $	11:15 40:-9 42:14 86:25 89:23 99:-12
bent to	18:24 42:23 43:15 92:25 93:-9
to #d	3:17 40:-10 42:57 43:21 47:12 68:9 70:70 76:-13 81:10 86:-18 88:20 89:29 93:-18 98:-11 126:-52
came==	0:-10 1:-15 2:25 3:-13 4:-12 8:-14 9:-13 12:8 13:-19 17:-24 20:30 21:-13 22:-9 25:40 26:17 28:-8 30:-10 32:-9 33:-8 34:-15 36:34 37:-25 39:-8 40:14 42:15 43:71 44:-15 45:23 46:41 47:10 48:-8 49:-11 51:136 55:-13 60:8 64:27 65:-14 66:-13 68:-34 71:21 72:48 73:9 75:11 76:-31 77:-8 78:-12 79:-9 80:-10 81:-14 82:-24 86:-8 88:-15 90:-10 92:-13 94:-10 95:-13 96:-8 98:-13 103:14 108:-11 111:-8 113:-8 114:-16 116:-9 118:187 119:-12 120:-17 126:57
came	0:-10 1:-15 2:25 3:-13 4:-12 8:-14 9:-13 12:8 13:-19 17:-24 20:30 21:-13 22:-9 25:40 26:17 28:-8 30:-10 32:-9 33:-8 34:-15 36:34 37:-25 39:-8 40:14 42:15 43:71 44:-15 45:23 46:41 47:10 48:-8 49:-11 51:136 55:-13 60:8 64:27 65:-14 66:-13 68:-34 71:21 72:48 73:9 75:11 76:-31 77:-8 78:-12 79:-9 80:-10 81:-14 82:-24 86:-8 88:-15 90:-10 92:-13 94:-10 95:-13 96:-8 98:-13 103:14 108:-11 111:-8 113:-8 114:-16 116:-9 118:187 119:-12 120:-17 126:57
^ came	43:37
came short	43:51
short job	43:21
@job if	16:10 43:8 126:15
if short	43:16
short ~	43:16
#n if	2:32 5:14 16:17 18:10 34:-10 43:8
with end	43:10
@job came	42:-12 43:18 72:18 74:9 95:8 126:26
came out	2:25 18:12 36:17 42:-29 43:27 44:-8 60:10 64:24 73:8 74:-8 75:16 126:19
out too	3:-12 126:14
measur==e	0:-12 2:21 4:76 17:-11 40:-9 73:11 75:19 76:-11 77:-43 80:18 81:-14 93:-10 118:14 126:84
out short	2:9 3:-9 36:17 43:14 126:61
#n came	2:20 16:21 17:-12 18:11 25:-11 37:-16 42:-19 43:30 45:-8 46:43 70:9 72:19 76:-10 93:12 118:77 126:-34
short it	1:11
came #n	2:-8 73:16
out #d	42:13 43:19
#o came	42:31 43:-9
end==ed	3:-10 37:20 42:-13 43:42 63:15 126:28
end up	2:22 3:-11 37:18 42:-13 43:40 126:24
turn==ed	3:-11 20:19 21:-20 39:9 42:27 43:34 51:29 70:19 75:8 78:-16 93:-8 95:9 117:-21 118:52 120:-14 126:-9
turn	1:-10 2:-8 3:-12 9:-9 11:-18 20:17 21:-22 23:11 29:-13 30:31 32:23 39:13 40:-10 42:26 43:32 49:26 50:-12 51:28 56:17 70:18 73:-8 76:-8 77:13 78:-21 85:9 87:19 88:-8 93:-9 95:-21 100:-13 102:21 107:9 111:-17 112:50 117:-21 118:51 120:-15 121:24
#n turn	3:-10 11:-10 30:41 42:29 43:13 77:17 93:-8 103:11 126:-14
turn out	3:-10 29:-8 37:-12 39:19 42:27 43:33 77:14 93:-8 95:-37 107:11 111:-16 112:50 126:30
out at	2:15 3:11 42:-11 43:8 75:12 77:-9 92:18
#o turn	43:15
^ too	3:17 42:-12 43:11
short slot	43:22
^ short	43:30 87:12
have cut	43:11 71:-26 72:24 79:26
@job too	43:39 79:-8
#n too	0:-18 1:9 3:16 6:68 43:17 91:41 126:18
#o too	43:17
^ finish	13:-10 16:-8 44:73 45:54 108:-14 115:-9 126:-8
finish job	65:-12 126:28
@job stag	44:17 115:-11
file	3:8 16:20 27:15 30:-8 42:-14 56:11 66:17 76:-12 78:12 90:-8 98:52 104:14 105:8 109:25 126:19
stag crown	44:9 105:8
polish	13:-22 15:-11 26:-25 28:68 29:-8 30:-14 34:-9 36:-8 44:149 49:-14 66:-12 88:-8 99:9 100:-19 101:12 103:-9 104:69 105:58 108:41 109:59 114:-10 115:-11 126:-9
polish job	44:17 108:16 109:10
start at	44:58 88:24 108:-44 110:22 112:18
#t job	108:9
start @day	14:17
seat job	13:-23 18:32 44:71 49:-8 96:-15 108:9 115:-9 126:21
stag nip	105:11
corner	13:-10 26:-10 28:43 44:63 59:-8 65:-8 96:13 99:18 100:-11 102:9 104:32 105:67 108:-21 126:22
stag corner	108:-9
pull job	44:35 108:-25 126:28
crown job	109:20
&#n@job@person	0:24 3:20 4:22 13:-13 15:-19 16:-12 17:-8 38:22 42:-10 44:24 49:8 64:-9 65:29 74:30 75:11 76:-13 78:30 81:-8 90:11 91:-15 92:37 96:16 98:12 126:-53
bend stag	105:9
true $	105:9
&#t@job	44:30 45:12 106:-10 108:27 109:17
finish pull	34:17 44:47 108:-8 109:-9
finish bend	44:19
bend of	44:37
true of	108:8
the bend	42:9 44:42 101:44 109:15 126:-15
@job this	34:8 37:10 44:23 46:10 106:16 114:8
^ dress	26:-9 44:19 56:22 104:53 105:12
dress is	44:13 104:13
^ crown	13:-12 19:35 26:-10 28:33 40:-10 44:112 50:-9 51:-11 89:52 91:24 96:-10 100:-8 104:49 105:12 108:26 109:10 126:-14
are done	28:16 123:8 126:9
#n this	41:-8 42:-13 43:15 44:8 71:8 76:19 102:15 106:-13 116:26 117:-8 118:20
^ corner	44:26 104:10 108:-11
&#n#t	44:10 45:13 46:-24 54:11 55:-8 96:10 108:16 109:31 116:61 126:-14
#n #n	0:-10 3:-10 4:-14 37:-10 38:-10 41:-31 42:24 44:9 45:-8 46:-15 48:-8 51:10 53:23 55:-8 59:59 67:-8 71:-42 76:15 81:76 82:37 83:29 89:44 91:20 92:22 93:18 97:11 99:-28 106:-10 109:18 114:-10 121:9 122:-11 126:-23
are finish	32:17 44:34
is finish	13:-8 44:37 45:18 87:12 94:15 96:20 102:-21 103:19 115:58 126:-23
the seat	12:11 28:10 64:14 109:41 126:-26
seat is	26:-8 44:13 104:40
^ @job	0:12 1:-23 2:8 3:-15 4:19 5:-12 11:-19 13:9 15:-10 16:42 17:-19 24:-21 25:-27 28:-22 30:-28 31:-11 32:-8 34:-36 37:35 38:-69 39:28 41:-8 42:40 43:-13 45:-9 46:28 47:-12 48:68 56:-8 62:-16 65:16 66:46 71:-22 72:35 74:24 75:46 76:36 77:27 78:34 79:-9 83:-31 84:-12 85:13 88:26 91:18 92:28 93:17 94:47 95:60 97:17 98:20 99:-8 108:-35 109:-28 112:-11 113:-11 114:40 115:12 116:22 119:-10 120:9 125:-9 126:56
@job pull	49:14
nip is	105:13
)~",
R"~(true is	44:11
@job the	0:-8 2:-12 5:16 11:-8 17:13 31:-27 46:-9 48:-12 75:22 90:29 92:13 116:-10 126:68
is seat	96:12
seat $	25:17 96:27 105:13 108:39 126:-18
is cut	6:-10 28:17 44:39 52:26 72:33 74:8 84:-9 110:-10 112:12 126:-25
is crown	44:16 89:8
crown $	19:20 28:13 41:9 44:15 50:17 59:-8 89:22 91:36 92:-9 104:-11 105:9 120:14 126:23
is bend	108:20 126:-8
bend $	44:9 70:11 105:10
polish $	28:23 30:-8 44:8 101:19 105:37
is nip	28:18
^ done	13:-11 34:-9 44:18 45:33 73:13 76:42 96:31 126:-8
corner on	13:-8 28:12 44:46 108:-13 126:9
with bend	44:25 108:-8
nip for	44:32
polish of	108:19 109:31
with cut	44:22 108:9
all fret	44:8 74:13
@job @day	48:19
&#n@day@job	17:-10 29:22 46:15 48:28 54:8 55:8 84:8 90:22 106:10 126:-8
all for	0:25 6:-9 38:-15 44:21
@job #n	0:31 2:-27 3:17 5:15 6:10 15:11 16:-16 17:-30 24:12 37:-31 38:-20 39:-13 42:80 44:-11 45:10 49:-13 65:9 66:-19 71:-22 75:-8 76:26 77:-10 78:36 79:37 82:-12 83:64 84:-10 88:-9 90:-19 91:28 92:38 93:32 94:-16 97:12 98:26 105:-8 108:11 109:14 114:10 115:-14 116:-14 126:-73
cut #n	0:32 1:12 2:14 43:-11 71:13 73:-10 79:42 81:-8 105:19 126:-37
of fret	2:-8 3:8 4:38 8:-10 13:-12 16:9 25:45 28:-9 34:20 42:16 74:-14 76:-9 78:-15 90:-14 91:8 92:13 93:-8 96:14 126:33
have been	2:-9 5:-9 11:-11 13:-8 16:-12 24:39 34:-11 37:-10 44:15 48:-9 67:-18 71:14 76:25 89:-12 90:-8 96:18 98:24 102:11 114:10 117:16 119:26 126:54
been cut	5:-18 44:22 71:23 72:11
@job has	0:-11 3:-10 4:-10 13:-48 15:-19 24:-11 28:18 30:-8 34:-17 37:-21 42:9 44:13 45:18 46:-10 48:30 49:26 66:16 73:-12 75:18 76:23 78:40 79:8 84:-14 88:28 92:19 95:27 96:-8 108:14 126:81
are cut	71:51 72:28 76:-9 126:-16
#n are	2:-17 4:-20 16:32 46:-12 71:25 72:-14 75:16 81:9 82:14 83:-31 84:10 85:22 90:-15 91:34 92:24 97:10 98:-8 99:-8 126:49
cut tomorrow	71:-8 72:20
finish #n	44:24 105:-10
^ seat	13:-13 26:-9 44:85 96:40 100:-10 104:57 105:13 108:-8 109:-8 126:16
seat fret	96:32
@job yesterday	13:-11 34:-8 37:8 38:10 44:22 45:9 84:14 96:11 108:15 126:18
wire of	9:8 92:11 108:17 126:-8
#n yesterday	34:-30 37:11 38:-9 39:-24 41:10 45:11 46:10 71:9 98:13 116:10 118:13 126:28
we am	44:16
am finish	44:8 109:10
finish with	44:20
with pull	109:19 126:-16
done pull	44:14
i are	109:46 126:-14
am done	44:37 108:-12
we are	0:10 5:9 7:8 8:25 9:-21 11:-15 12:-8 24:-9 26:-11 29:-49 30:-15 32:-17 33:-20 39:15 44:-15 49:49 53:35 54:58 55:30 59:20 63:19 72:-14 108:25 109:14 110:15 112:-9 113:55 118:8 119:27 120:18 126:34
board of	44:84 47:10 51:-10 77:10 88:60 91:-19 94:20 98:-35 108:15
tru==ing	13:-14 17:-8 26:-8 28:28 30:-13 34:-10 44:55 65:-9 88:-9 100:-11 104:75 105:23 108:75 109:46 112:8 114:-11 126:11
tru	13:-20 15:-8 17:-10 26:-8 28:24 30:-15 34:-10 44:154 49:-10 65:-20 66:-9 85:-8 88:-20 100:-11 104:75 105:23 108:70 109:43 114:-14 116:-8 126:34
with tru	44:22
tru $	44:53 108:25 109:-15
fil==ing	13:-9 19:9 25:15 26:-16 65:-11 104:46 105:19 108:77 109:31 126:73
have finish	126:26
fil $	28:11 44:8 64:15
pull $	13:-11 73:36 78:42 96:16 108:78 109:14 126:-15
pull #n	0:-10 44:8 73:28 80:-8 96:8 105:11 126:17
pull at	105:9
^ pull	0:-10 4:33 6:22 10:-15 12:35 26:-10 28:9 34:-8 37:-9 40:-13 44:40 45:-8 73:111 76:-9 96:13 100:-9 104:63 105:55 108:-8 126:24
pull done	44:10
^ true	44:9 104:12 105:12
nip==ping	0:9 4:-8 13:-12 23:21 28:13 29:-8 30:-11 44:51 99:26 100:-23 104:45 105:25 108:35 109:22 126:-21
^ tru	13:-10 44:62 104:14 105:14 108:14
tru done	44:18
pull finish	44:9
@person is	0:11 12:-8 15:-11 18:-11 27:-10 29:-39 30:-31 44:-8 56:-8 60:20 61:-9 62:30 63:77 66:11 76:-14 92:-9 103:-14 107:-15 108:64 110:39 111:75 112:79 126:-19
&#n#t@person	44:8 55:-10 112:30
@person has	13:-8 18:10 27:-28 29:-16 30:-14 34:9 36:11 44:38 53:17 54:17 55:-12 58:21 60:25 61:-14 63:32 64:-25 66:-9 69:9 73:-8 78:-11 87:14 98:20 103:23 106:35 107:15 108:53 110:10 111:-27
has finish	63:25
board on	44:-19 77:-9 88:21 94:22 109:8 126:13
tang==s	4:-11 28:19 44:10 85:-8 89:16 92:17 96:-8 104:14 106:-8 108:47 109:22 126:-13
with clean	109:9
tang	0:-13 1:-13 4:-40 12:-17 13:-11 14:23 16:-9 18:72 28:16 37:-9 39:-10 40:-8 41:47 42:-9 44:19 50:48 67:-10 70:-18 73:-9 75:-12 78:18 81:-10 82:-13 85:-9 89:139 90:-13 91:-9 92:125 94:-16 100:-13 102:14 104:13 106:-9 108:38 109:14 121:-9
the tang	4:-16 12:-16 14:25 18:34 28:17 39:-8 41:17 44:12 50:8 70:-9 89:51 92:17 96:8 106:-8 108:25 126:31
tang of	89:44 92:13 126:-14
&#n@day@job@person	74:14 108:18
&#t@job@person	45:11 108:20
clean slot	109:9
tru==ed	44:98 65:-11 88:-10 126:23
has bent	44:12
tru board	104:11
nip==ped	40:10 43:24 44:26 71:30 78:31 82:12 83:-8 106:-8 108:-9 126:-22
nip fret	71:14
has pull	44:15 108:-11
bent wire	44:8 92:8
^ bend	10:-25 13:-9 26:-14 28:54 29:-11 32:35 44:23 104:24 105:38 109:21
bend is	28:-8 42:9 104:25 105:26 109:11
have tru	44:9
whol of	44:9 106:18 118:12 126:9
crown==ed	44:102 59:-8 104:-8 126:36
have crown	44:12
tru the	44:11 104:9 108:22 112:9 126:15
whol board	44:50 98:-31 105:9 108:-8
is pull	44:14 108:15
is tru	44:30 48:10
dress==ed	0:-19 1:92 2:-10 3:36 17:-11 37:49 38:-8 40:48 42:-10 43:33 44:77 51:-19 70:-11 79:-9 80:-8 81:-8 104:17 108:-19 126:-33
is dress	104:18
is bent	38:-15 39:25 42:17 44:8 82:10 93:-9
pound job	45:11
next ~	45:9
ago job	98:13
again of	45:9
@job to	4:-8 11:-8 13:-22 15:12 17:-9 30:13 43:-9 46:-13 49:-10 65:96 66:-12 74:17 76:39 90:21 109:-9 115:11 116:28 126:-10
#c the	51:22 68:-11 80:10 88:8 117:11
&#c#r#t@job	98:8
#n to	0:-24 1:-8 3:-24 4:62 5:-24 6:-15 10:-15 11:-16 13:-23 15:-28 16:80 17:16 18:-10 19:-11 28:-9 29:-24 30:-20 34:-20 37:-28 38:-12 39:-30 41:-27 42:-32 43:-14 44:-14 45:62 46:45 48:39 49:-8 51:-9 53:73 54:-16 55:92 56:-26 62:-15 65:17 66:-30 67:-9 70:15 71:31 72:48 76:40 78:-16 79:-11 81:-13 83:14 84:14 86:-9 90:43 92:9 93:-14 94:-23 98:9 99:-21 100:-41 102:-10 103:15 105:-19 106:92 107:-13 108:-22 109:8 110:39 111:18 112:57 113:-9 115:-12 116:-19 117:-9 118:14 119:41 122:-10 126:23
press it	16:-8 17:-11 25:10 45:9 126:30
it again	6:10 17:-12 42:10 45:11 46:-11 87:16 99:-11 101:20 116:18 126:14
press them	97:11 126:-10
them to	2:-25 76:41 80:-14 82:22 83:-8 104:16 126:13
&#c#n@day	102:11
again tomorrow	116:8
thes==e	2:-11 7:11 11:-13 12:15 29:8 50:8 51:8 66:11 81:10 82:-9 100:18 101:-10 104:9 105:8 110:8 112:-8 122:16 126:34
thes	2:-11 7:11 11:-13 12:15 29:8 50:8 51:8 66:11 81:10 82:-9 100:18 101:-10 104:9 105:8 110:8 112:-8 122:16 126:34
press that	27:-10 107:28
it at	3:12 19:-8 33:17 45:8 65:9 99:12
^ they	65:9 96:12 114:18 119:8
they is	45:12
^ that	0:-15 2:-17 3:-24 9:8 11:-13 13:-15 15:-13 32:-10 37:66 39:-11 40:-10 41:15 43:34 44:19 45:12 54:-15 58:13 67:14 76:16 77:8 78:-10 79:14 81:15 87:10 90:15 94:-17 101:-9 103:10 109:40 113:32 114:9 115:45 118:15 126:-18
press again	16:12 85:-9 107:13
again @day	45:8 48:-9 116:54 126:-12
pass at	3:12
pass with	3:30 42:-12
pass is	16:-23 45:36
only got	45:55 46:10 56:-10
got to	10:-11 20:13 30:27 45:51 46:16 56:-10 73:-11 109:14 126:10
lb on	16:27 126:-20
up to	3:16 4:35 5:-8 9:-9 11:11 12:-9 16:-19 17:10 19:27 20:-10 34:22 45:37 46:-9 56:13 67:42 71:-10 72:11 76:-14 88:18 90:-21 92:-15 94:27 97:8 100:-9 118:-8 122:9
only came	45:18
came to	2:9 16:-11 26:21 42:45 43:-18 45:30 67:9 70:9 76:-9 126:-15
#c for	60:16
came up	13:-11 16:17 17:-18 25:45 43:12 45:9
^ only	1:84 2:9 4:90 5:-9 8:-10 13:-16 16:-14 17:-9 22:63 34:17 39:-8 45:29 46:62 55:-8 56:-13 67:16 90:-8 100:14 108:-9 114:-11 119:-8 126:-19
pound on	16:48 83:-8 126:-9
lot with	19:11
of them	0:-10 2:34 3:-9 8:-18 12:23 14:-12 16:58 28:8 34:-9 36:-9 40:-19 46:15 51:-13 53:22 71:-10 73:25 76:-11 82:-10 83:27 84:-13 85:16 98:8 99:28 100:20 102:16 112:-12 118:32 126:10
them of	45:9
@job got	13:28 15:-9 24:21 28:-10 37:24 45:21 95:44 126:-15
got press	45:22 126:-12
press yesterday	45:34 126:-11
#n was	3:-10 16:-11 34:-31 37:21 38:-10 39:49 44:-24 45:23 78:22 79:8 92:18 93:9 96:28 98:14 108:-14 109:14 114:-10 120:13 125:11 126:-10
was press	25:37 34:-10 36:8 90:-9
done #n	109:20
finish press	44:-29 45:57
recheck from	56:22
#r from	21:-12 46:18 54:16 82:55 90:-8 112:9
#o from	46:9
from fret	46:23 76:-32 90:16
)~",
R"~(#n sprang	25:-18 46:83 90:-8 98:-9
from slot	43:-14 46:9 48:-9 66:-10 72:-9 76:71 79:-8 126:-8
@job high	46:8 98:14
high #n	83:-9 90:44 98:22 100:-8
recheck @job	46:15 116:13
to #n	0:-22 1:-26 2:14 3:-25 4:125 5:-32 6:-16 10:-16 11:21 13:-22 15:-19 16:70 17:13 18:-13 24:-9 28:-16 30:-12 34:-19 37:-42 38:-31 39:-28 41:-19 42:-32 43:-10 44:-16 45:57 46:30 47:11 48:-33 51:-13 52:18 53:95 54:11 55:59 56:38 60:-9 62:-10 63:-8 65:-28 66:-21 67:52 68:-13 70:13 71:25 72:67 74:-45 76:36 78:-14 79:-13 80:-9 81:-13 84:11 86:-18 89:-8 90:23 93:-23 96:17 97:11 98:16 99:-24 100:-19 103:-11 105:29 106:57 107:-13 108:-17 109:13 110:20 111:42 112:52 113:-11 114:19 115:-24 116:-21 117:-14 118:-23 119:-11 121:-12 122:34 126:13
@job sprang	46:21
still level	17:-24 46:73 126:-8
level #n	17:-34 34:44 126:29
fine==	3:71 6:14 7:11 42:-11 43:-45 46:41 48:15 52:25 53:-9 56:-22 62:-10 64:-8 70:-10 81:-8 82:-12 90:54 92:-8 93:8 103:25 106:11 126:31
fine	3:71 6:14 7:11 42:-11 43:-45 46:41 48:15 52:25 53:-9 56:-22 62:-10 64:-8 70:-10 81:-8 82:-12 90:54 92:-8 93:8 103:25 106:11 126:31
still fine	16:10
still good	2:12 87:-21 126:24
fine $	3:26 42:-8 43:-8 46:40 52:26 56:-21 90:55 93:8 106:11 126:10
still $	8:10 9:-8 102:36 126:-10
&#n#t@job	44:-8 71:9 78:12 96:10
all still	46:13
is $	1:-8 3:17 8:18 13:-10 17:-8 25:14 33:33 37:-14 38:-8 43:-11 51:-10 52:-20 66:-8 67:12 78:-8 95:17 100:14 107:-20 109:11 114:-11 119:9 126:116
sprang $	46:66
back at	23:13 25:-44 26:-11 44:-9 46:-13 64:19 103:22 108:72 126:65
back @day	102:20
back #n	39:-21 100:-9 102:26 103:-16 125:79
back again	64:9
sprang up	46:11
up of	20:13 100:14
up again	13:-8 16:19 17:-12 25:34 46:15 49:9 66:-14 78:-13 103:8 108:38 116:-8
&#n#o@day@job	30:-13 55:9 96:8 116:23
is good	78:38 94:-10 103:27
proud==	3:-17 13:-15 17:69 46:11 60:16 71:8 78:-9 90:38 96:8 98:21 126:-33
@job and	4:-9 9:11 17:-9 24:-26 30:43 38:-16 39:23 42:16 44:-11 49:-8 55:8 65:-11 75:12 78:12 83:-11 85:8 90:20 91:-10 95:13 96:23 97:27 115:27 126:-15
and fret	37:-12 71:13 83:21 92:-10 93:-8 96:26 97:10 126:-8
proud	3:-17 13:-15 17:69 46:11 60:16 71:8 78:-9 90:38 96:8 98:21 126:-33
stand proud	3:-16 13:-14 17:83 90:18 126:-14
proud $	3:-16 17:53 90:41 126:-22
still high	17:13
stand still	102:36 126:-10
proud on	13:-13 17:28
say==s	2:11 3:8 4:-10 8:-11 12:-9 18:-14 29:-9 30:-9 31:-8 32:-11 33:25 37:-9 39:-8 41:-19 43:-10 46:13 49:8 51:-21 53:46 54:-24 56:36 58:-8 60:11 62:-12 63:8 65:-17 66:9 67:53 68:13 74:20 75:29 89:19 90:8 93:9 94:18 98:-8 102:-21 108:-11 110:-20 111:-9 113:-30 114:10 116:-17 118:10 119:33 123:16 125:22 126:80
#n say	46:11 116:-10 125:16 126:-16
say fret	46:15 90:10 116:-15
#o stand	46:8
&#n#o@day	55:11 84:9 116:16 126:-17
high at	89:11
rock==s	16:-13 17:-18 45:-9 46:69 76:-13 90:152 98:-14 116:-18 126:32
rock	2:-9 3:-9 4:-11 13:-11 15:-8 16:-19 17:52 27:-11 37:-12 45:-35 46:84 59:15 70:11 76:-31 90:230 92:-9 94:-23 96:-10 98:12 102:34 106:-8 114:-11 115:-9 116:-23 126:55
@job rock	90:10
rock on	16:-17 17:73 37:-10 46:56 76:-9 116:-8 126:11
and it	3:17 17:-12 18:-12 24:-11 37:35 38:-23 42:-16 46:18 51:8 57:18 59:-8 69:23 71:-8 73:9 76:-15 77:14 80:9 85:9 86:8 88:-11 90:33 92:-11 95:29 96:-31 98:20 101:13 104:-8 120:-21 126:56
it rock	90:30
@job it	27:13
#r rock	90:11
and #r	45:9 54:20
#n rock	16:-16 17:61 46:15 76:-10 90:16 94:-18 126:35
&#n#o#r	97:11 98:9
and slot	2:-10 4:21 18:35 33:-9 37:-10 97:12 122:28
#n through	1:-9 2:14 4:29 37:-22 44:-10 45:38 71:28 72:14 73:-8 76:25 82:14 83:-8 90:-12 94:-12 96:26 126:-12
rock at	46:15 90:14
&#n#r#t@job	106:8
show==s	3:9 16:14 51:24 68:8 112:11
#n show	3:12 118:8
through #n	1:-9 2:14 4:29 20:11 37:-23 44:-10 45:25 71:28 72:15 73:-8 76:31 82:14 83:-8 90:-12 94:-12 96:27 126:-12
rock #n	91:9
@job show	90:-14 91:25
edge $	28:12 77:28 95:11
middl #n	8:16
show #n	51:31 68:-17 69:-9
rock $	45:-8 90:126 94:-17 98:12
steady==	13:-10 17:-21 44:-17 45:-12 46:89 49:-10 76:-11 85:-8 90:173 104:-20 114:-9 116:-10 126:22
recheck all	46:9
steady	13:-10 17:-21 44:-17 45:-12 46:89 49:-10 76:-14 85:-8 90:175 104:-20 114:-9 116:-10 126:22
all steady	44:-15 46:102 90:-17
steady $	17:-14 46:17 90:77 126:-11
is steady	17:-15 90:73
steady this	46:20
steady of	46:23
steady on	46:29 90:8
all down	46:19
still down	46:21
scal==e	2:-16 4:31 13:29 40:-8 45:-11 47:110 52:-12 67:-10 68:107 70:-12 82:-14 86:-15 117:-18 126:19
nut==	0:12 2:44 3:-12 4:74 6:-11 13:21 17:-19 34:-11 37:16 42:-10 44:-14 45:-11 47:77 49:-19 71:-15 73:-10 75:-18 76:-9 77:80 82:-11 86:-14 88:122 90:42 91:-26 108:-8 109:-27 126:-19
^ new	1:-15 5:-11 13:-13 24:16 31:23 33:-10 36:-10 40:21 43:-9 47:100 48:28 49:-10 50:60 51:29 59:48 61:-13 67:-16 72:20 84:-13 86:26 98:-8 99:80 100:-11 101:-12 103:9 117:-8 119:25 121:92 122:-25 123:-14 126:-20
scal	2:-16 4:31 13:29 40:-8 45:-11 47:110 52:-12 67:-10 68:107 70:-12 82:-14 86:-15 117:-18 126:19
scal #d	47:27 68:17 69:-32 117:-11
@wire scal	47:27 69:-16 117:-11
@wire far	47:11
far width	47:26 69:-9
scal #n	47:23 68:11 69:-13
nut	0:12 2:44 3:-12 4:74 6:-11 13:21 17:-19 34:-11 37:16 42:-10 44:-14 45:-11 47:77 49:-19 71:-15 73:-10 75:-18 76:-9 77:80 82:-11 86:-14 88:122 90:42 91:-26 108:-8 109:-27 126:-19
nut width	4:-8 13:45 77:26 126:-11
mm scal	47:18
distanc==e	4:26
distanc	4:26
flat==	17:21 18:27 30:19 41:11 42:12 43:18 44:-8 46:37 47:40 75:19 76:-67 77:-9 86:43 98:9
compound==	47:13 76:-9
zero==	47:10
~ for	51:10 117:8
flat radius	47:41 76:-24 86:-16
in flat	47:16 76:-9
flat flat	47:22 76:-37 86:17
mm radius	42:13 47:15
compound	47:13 76:-9
compound radius	47:13 76:-9
mm flat	47:22 76:-15
#d to	47:12 50:8 86:-12
zero	47:10
zero fret	47:10
flat $	43:21 46:26 75:12 86:8
bind==ing	47:17 56:31 82:-11 92:10
in to	47:13 86:-9 88:10
#d radius	47:9
bind	47:17 56:31 82:-11 92:10
bind #d	47:17 82:-10
radius $	86:15 92:19
division==s	2:-14 4:34 45:-9 56:22
octav==e	101:-11 103:29
division	2:-14 4:34 45:-10 56:48 68:11 126:-11
octav	101:-11 103:29
the octav	101:-11 103:29
fret #d	3:9 42:-14 93:17
to $	1:33 2:8 4:8 5:-8 8:19 9:-15 10:18 14:16 15:47 17:28 18:22 28:8 32:-11 34:-12 36:-8 65:-12 76:-9 126:-20
division #c	56:8 69:10
^ set	1:-19 11:-26 24:-51 36:-14 37:-18 38:44 39:37 41:-11 45:-8 48:36 51:-10 52:-9 53:15 55:-10 56:40 70:35 79:-12 84:128 85:-10 96:27 99:13 100:37 103:-8 105:18 106:-29 110:17 112:-14 119:14 122:27
set due	11:-16 48:40
due next	48:8
due #o	11:-40 12:81
due @day	47:9 48:14 117:22
promis job	31:15 48:37
promis @job	11:9 13:-10 31:10 34:-12 126:62
@job for	0:-19 1:13 16:19 30:-16 31:36 44:-22 48:19 49:9 73:15 78:11 106:-8 109:73 116:20 126:-21
^ move	2:11 46:-10 48:34 116:32 119:9 126:-9
move the	2:31 48:13 62:-16 119:11 126:24
chang==e	5:9 9:-11 14:-8 30:-8 48:11 53:24 55:-9 56:77 62:57 77:11 99:-18 100:73 101:-17 110:-13 121:-13 122:42 123:-10 125:9 126:8
chang	5:9 9:-12 14:-10 27:-9 29:-10 30:-9 33:-40 34:50 39:48 49:32 53:24 55:-10 56:75 62:60 63:-10 64:12 77:11 100:65 101:-19 104:12 106:-8 110:-13 113:9 114:-9 121:-16 122:46 123:-10 126:-18
^ chang	39:22 48:9 53:16 55:-8 56:71 59:-10 62:45 99:-14 100:66 101:-17 104:-9 121:-13 122:43 123:-8 125:-9 126:-21
chang the	9:-9 33:-33 34:54 48:9 53:25 55:-9 56:26 77:12 100:23
set the	16:-8 48:-10 52:10 53:21 56:28 60:10 67:9 79:-12 84:30 85:-18 96:28 100:26 103:-8 105:15 106:-8 109:12 110:-10 119:15 122:8 126:8
#n must	48:8 52:18 115:39 126:-11
#n has	13:-24 15:-12 24:-12 28:-8 34:-18 37:21 39:17 41:22 42:-9 45:20 46:11 48:57 49:12 66:-19 75:18 76:18 78:-16 79:10 82:-9 88:25 92:-12 96:28 108:13 109:19 111:10 114:51 118:16 122:11 126:-52
should be	0:-11 1:24 2:-8 5:-15 7:38 9:-19 10:24 22:11 26:-13 32:44 39:-13 48:22 56:30 62:8 70:17 90:-10 96:-32 99:21 104:25 105:26 107:30 116:8 118:-9 119:-8 125:8 126:-51
time until	48:24
has until	48:14
#o for	43:8 48:11
promis @day	119:14
@day for	31:12 48:18 53:13 110:51 111:-12 126:-16
promis #r	117:26
is promis	48:48
owner==	11:36 32:55 33:-17 47:16 48:32 49:12 82:-10 101:12
owner	11:36 32:55 33:-17 47:16 48:32 49:12 82:-10 101:12
^ owner	48:11
owner of	48:25
need it	38:32 39:11 48:33 84:-12 85:10 88:16 115:9 120:11 126:-29
)~",
R"~(it by	31:13 38:41 48:21 52:-11 67:16 70:10 84:11 120:11 126:-15
the owner	21:9 48:14 49:16 101:13
customer==	3:9 13:-9 24:12 29:21 31:11 42:-10 47:10 48:17 49:28 85:-8 126:32
customer	3:8 10:-21 12:53 13:-9 24:12 29:20 31:10 42:-10 47:10 48:16 49:27 85:-8 109:12 126:30
the customer	3:10 13:-8 42:-10 48:17 49:28 85:-8 126:49
customer of	48:9
want it	1:8 22:23 38:10 39:15 41:-8 48:17 66:-10 99:15 104:11 107:14 108:21 120:22 126:-8
@job want	2:-8 5:14 37:-9 38:16 49:-12 50:10 94:-14 106:10 115:-11 126:37
it for	0:-8 27:-9 37:38 38:10 39:16 44:-9 47:-9 65:10 85:-8 106:20 109:58 125:-19 126:-32
has no	23:48 26:-12 36:12 48:16 66:18 88:22 92:17 100:10 102:-16 107:12 110:12 111:-11 114:-13 122:22 123:-12 126:-23
no promis	31:10 48:54 66:-8
promis date	48:11
date any	48:17 66:-10
longer due	48:13
due any	48:9
not due	11:-8 48:25
no deadlin	48:29
deadlin $	48:16
deadlin any	48:13
remov==e	11:-13 13:-8 23:-9 26:-27 27:-12 30:-8 33:-20 39:-8 48:14 49:73 56:-8 58:67 60:-10 61:53 62:-13 63:47 64:-9 66:14 87:35 95:-15 99:-14 100:-12 101:79 103:-10 104:-26 107:12 113:20 121:-8 122:-10 123:58 126:10
remov	11:-13 13:-8 23:-9 26:-27 27:-12 30:-8 33:-30 39:-8 48:14 49:73 56:-9 58:66 60:-10 61:53 62:-13 63:47 64:-9 66:14 73:11 87:41 95:-15 99:-14 100:-12 101:79 103:-10 104:-27 107:11 113:20 121:-8 122:-12 123:72
^ remov	11:-12 23:-8 26:-19 27:-10 33:-18 48:15 49:73 58:18 60:-10 61:55 62:-12 63:31 64:-8 87:30 95:-14 100:-8 101:31 104:-23 123:53 126:56
remov due	48:10
remov the	26:-16 33:-9 49:15 58:15 61:54 66:19 95:-14 104:-12 123:20 126:52
take away	39:21 41:-8 48:10 101:15 126:-12
away the	39:19 41:-12 48:10 49:28 82:26
day off	29:-19 48:15 54:26 109:-12 112:45 113:-12
off @job	43:14 49:17 73:18 78:9 88:14 109:-13
the promis	36:16 48:41 119:23
promis day	10:-8 11:43 12:11 29:-10 48:50 119:14 126:-9
day from	48:12
from @job	40:-10 73:50 115:-21 126:55
date off	48:16
off job	13:-9 16:-8 42:-8 44:-11 73:27 88:54 109:24
no day	48:40 85:-8
no date	48:20
date is	48:14
@job any	38:-13 39:35 66:24 85:11 115:18 126:-13
for no	39:9
day any	54:-9 113:11
cancel==	9:-11 10:-10 11:-11 12:-9 13:-24 15:-10 17:-8 23:-8 24:-9 26:-8 30:-10 32:-38 33:-13 34:-12 36:30 44:-11 49:163 65:-10 66:-11 85:16 102:-12 106:-14 107:170 109:-10 113:49 114:-14 115:-13 117:-8 118:-23 119:-13 120:140 125:28 126:28
cancel	1:-8 9:-11 10:-10 11:-11 12:-9 13:-25 15:-12 17:-8 23:-8 24:-9 26:-8 30:-10 32:-38 33:-13 34:-12 36:30 39:-9 44:-12 49:162 65:-10 66:-11 85:12 102:-12 106:-14 107:170 108:-8 109:-10 113:48 114:-15 115:-14 117:-8 118:-23 119:-13 120:140 125:28 126:58
^ cancel	13:-18 15:-8 24:-8 27:-13 36:-13 44:-8 49:147 85:17 107:86 113:48 118:-17 120:94 125:32 126:-26
cancel job	13:-12 49:99 107:-11 126:15
cancel the	27:44 32:-20 49:20 107:21 113:53 118:-11 120:74 126:-36
cancel @job	49:30
@job becaus	49:9 109:11
is call	8:9 26:-9 46:22 49:27 57:8 62:39 100:31 111:-12 122:21 126:-26
call off	17:-18 27:-12 49:115 101:-11 103:27 107:32 109:-21 120:58 126:-15
cancell==ed	9:-9 13:-12 20:-12 27:-12 32:-12 33:-10 44:-11 48:-15 49:154 65:-12 67:-26 103:9 107:34 108:-8 113:25 114:-12 115:-9 117:-10 118:-20 120:188 123:-20 126:64
cancell	9:-9 13:-12 20:-12 27:-12 32:-12 33:-10 44:-11 48:-15 49:154 65:-12 67:-26 103:9 107:34 108:-8 113:25 114:-12 115:-9 117:-10 118:-20 120:188 123:-20 126:64
is cancell	49:57 107:10 120:30 126:-15
cancell $	13:-8 27:-11 49:62 103:10 107:36 118:-11 120:12 126:46
^ call	17:-14 49:98 56:-8 62:46 63:-13 98:11 99:9 100:38 101:-12 103:23 104:-12 109:32 120:14 126:-22
defin==e	33:-9 36:16 50:67 59:-9 86:64 87:-29 99:85 101:-9 121:46 122:-16 123:-13
tang==	0:-12 1:-12 4:-29 12:-17 14:24 18:75 37:-8 39:-10 40:-8 41:48 44:9 50:49 67:-10 70:-18 73:-8 75:-12 78:19 81:-10 82:-11 89:123 91:-9 92:108 94:-16 100:-12 102:17 108:-9 109:-8 121:-9 126:13
material==	5:12 44:-15 50:81 59:-28 84:83 85:15 121:-34 126:-9
name==	3:-13 7:22 12:43 13:-10 14:-17 15:79 26:-15 27:53 30:-32 33:-13 38:38 44:-10 50:12 57:16 59:41 62:53 65:-16 66:49 81:-37 86:39 87:14 99:8 100:53 104:-20 106:10 108:-11 110:-12 121:52 122:-11 123:-16 126:-48
height==	17:21 40:-9 50:14 51:14 77:-9 89:46 117:-15 126:21
defin	33:-9 36:16 50:67 59:-9 86:64 87:-29 99:85 101:-9 121:46 122:-16 123:-13
^ defin	33:-9 50:70 59:-8 86:55 87:-22 99:76 101:-9 121:49 122:-15 123:-13 126:-11
defin wire	50:58
wire tang	89:8
tang depth	89:30
material	5:11 13:-11 24:36 44:-16 50:81 59:-28 84:94 85:11 121:-34 126:-10
material ~	50:70 59:-28 121:-34
~ crown	50:42 59:-16 121:-22
crown width	9:20 50:39 59:-13 89:29 121:-19
name	3:-13 7:18 8:-9 12:38 13:-11 14:95 15:79 20:-10 23:-8 26:-17 27:52 30:-33 33:-14 34:-9 38:37 44:-10 50:12 56:-8 57:16 58:-9 59:37 62:52 65:-16 66:49 81:-37 86:39 87:13 100:51 101:-9 104:-22 106:9 108:-11 109:-8 110:-12 121:51 122:-11 123:-18 126:-53
~ name	50:21 81:-14 99:12 121:8 122:-12
name ~	57:-11 59:12 62:8 81:-31 86:14 87:9 99:27 121:45 122:-45
~ material	50:63 59:-25 121:-31
#d name	86:10
height	17:21 19:33 40:-9 50:14 51:13 77:-9 89:43 117:-15 126:18
crown height	19:19 40:-8 50:10 51:15 89:28 117:-15 126:21
height #d	50:8 51:19 89:14 117:-15
thickness==	40:-9 50:8 89:40 91:11 99:8
mm name	50:14 59:-9 81:-11 86:25 121:-10
thickness	40:-9 50:8 89:40 91:11 99:8
tang thickness	89:30
width $	77:30 89:9
wire ~	50:102 59:-12 99:-8 121:-11
mm crown	50:20 89:-8 118:16
wire call	50:52 68:11 99:-10 121:-17 126:33
call ~	50:30 62:38 99:26 111:-12 121:14
defin a	50:10 86:10 126:15
a wire	40:-15 50:74 89:-22 99:-9 121:19 126:32
deep==	2:-13 3:-20 4:-11 18:70 42:-19 43:-16 70:-8 75:71 77:-8 89:58 92:28 93:41 126:-11
#d high	50:20 89:23
wide crown	50:14 89:-14
mm high	3:-10 8:53 50:11
tang #d	50:32 81:-9
deep	2:-13 3:-20 4:-11 18:70 42:-19 43:-16 70:-8 75:71 77:-8 89:58 92:28 93:41 126:-11
#d deep	50:13 75:57 89:36 126:-10
in high	89:10
~ #d	86:12
thick==	8:9 17:17 50:11 89:47 126:-10
thick	8:9 17:17 50:11 89:47 126:-10
#d thick	89:28 126:-9
mm deep	18:17 75:17 89:9 126:9
add wire	50:42
a kind	41:14 50:17
kind of	25:13 36:9 50:23 59:-8 65:10 99:23 101:9 121:-8 126:-9
receiv==e	19:12 36:11 51:56 67:-8 117:-13 126:24
form==	8:14 10:24 51:15 62:23 67:-15 117:22
gross==	51:24 68:-9
mass==	50:-18 69:35 117:10 121:16 122:-10 126:9
receiv	5:-8 7:-15 8:-21 9:-13 10:-10 19:45 24:-8 32:-21 33:-8 36:10 40:-8 51:146 67:-19 68:-18 80:-8 105:17 117:-35 118:77 120:-22 125:9 126:66
^ receiv	51:157 67:-14 68:-17 117:-29 118:64 120:-19 126:-26
receiv wire	51:18 117:-10
mm count	70:-11 82:33 83:-8
form	8:14 10:24 51:15 62:23 67:-15 117:22
#n form	67:-9 117:12
coil	0:9 1:-16 2:-13 4:-12 5:28 8:56 17:11 18:-10 20:-18 21:-10 22:-13 25:-10 32:-19 33:-20 34:-12 39:-8 40:-32 41:-9 49:-8 51:110 52:-19 67:-15 68:75 71:-15 72:156 74:-20 78:-8 80:-17 82:-12 89:-16 109:-8 117:72 121:15 122:22 123:15 126:29
form coil	117:11
gross	51:24 68:-9
gram	3:41 5:-9 9:-8 19:-8 40:-21 50:-15 52:-14 67:-31 68:116 69:149 70:-30 117:14 121:9 122:22 126:-30
#c gram	5:-8 40:-8 50:-15 51:24 52:-9 67:-24 68:87 69:46 70:-18 117:17 121:9 122:23 126:-15
#n count	37:21 45:-10 67:-9 71:-10 73:49 76:-13 82:12 83:-15 94:-13 115:-9 117:15 126:30
mass	50:-18 69:35 117:10 121:16 122:-10 126:9
mass #c	50:-18 69:28 117:10 121:17 122:-10
g	1:-10 5:-12 8:-13 19:-11 20:-19 40:-25 51:44 52:-25 67:-51 68:128 69:189 70:-27 80:-8 82:-9 89:-12 117:29 118:-10 121:15 122:29 126:14
#c g	5:-9 8:-9 19:-9 20:-13 40:-9 50:-9 51:41 52:-8 67:-20 68:85 69:-9 117:39 121:17 122:29
g wire	69:9
@wire form	51:10
form stick	51:8 67:-9 117:11
#d count	83:12
each #n	2:15 14:34 17:-13 76:17 100:10
@wire mass	50:-9 69:14
gram wire	50:-9 69:14
receiv==ed	5:-8 7:-14 8:-19 9:-11 10:-10 19:33 20:10 32:-20 34:13 51:90 67:-11 68:-17 105:18 117:-22 118:81 120:-22 125:10 126:43
receiv #c	51:9
#c stick	8:-11 67:43 68:-11 121:11
receiv #n	51:30 67:-8 117:-17 126:23
#n coil	51:27 72:22 74:-19 117:33 121:-10 122:37 123:19 126:-11
coil of	8:10 9:-12 19:-12 40:-18 51:107 52:-11 67:-10 68:26 69:-20 80:-11 117:73 118:-14 121:11
got #c	51:19 100:31
@wire #d	1:-16 7:17 37:-10 40:64 68:21 70:-8
#n stick	1:-10 5:40 8:-32 9:20 17:19 20:-10 32:37 34:-8 37:-8 39:-10 40:-41 41:-9 44:-8 51:74 52:-20 67:117 68:-33 69:-14 70:35 72:-21 77:-10 80:-14 82:-11 83:-13 89:-12 90:16 105:-8 117:74 118:42 120:10 121:70 122:31 126:34
)~",
R"~(each from	51:-22 117:31
@wire #n	9:18 34:9 39:-12 40:-8 41:33 50:10 51:25 52:-8 68:-10 69:24 70:8 71:8 80:-10 81:14 82:-13 89:-13 118:15 126:-12
each for	51:11
$	51:13
$ #n	51:13
~ from	51:11 71:-9 117:30 121:8 122:-21
yesterday for	72:16 73:23 76:-10
#c #d	56:-12 82:20 83:16
bought==	7:-10 9:16 10:33 30:-16 51:47 56:20 67:-10 68:-10 99:50 100:24 117:20 122:16 126:9
bought	7:-10 9:16 10:33 30:-16 51:47 56:20 67:-10 68:-10 99:50 100:24 117:20 122:16 126:9
^ bought	51:54 68:-8
bought #n	99:34 117:31
#n #d	3:-9 37:-15 40:-21 41:-17 42:-24 43:-9 69:-10 71:-29 73:-10 79:21 81:24 82:55 83:81 126:44
dollar	51:11
#n dollar	51:11
high from	90:15
#d #n	1:-13 40:21 81:41 89:-10
morn from	76:16
bought #c	51:18
#c coil	51:10 118:10 121:9
@wire crown	89:26
#d #d	40:-8 81:58 89:-14
#c from	60:-27 61:67 112:14
#d from	37:-8 51:21 77:11 93:16 117:-15
#n @wire	0:-14 1:35 8:-10 18:-10 22:-24 33:-16 39:-11 40:30 41:-11 51:166 52:-15 67:23 68:-19 69:-11 70:-15 71:-13 73:16 80:52 82:38 83:10 89:-11 111:-11 117:70 119:-19 120:-24 126:-18
stick for	6:21 51:27 67:9 117:-15
stick at	33:25 51:17
#t for	106:28
&#d#n#t@wire	38:12
stick $	2:-12 5:10 8:49 32:-10 37:-8 50:22 51:-56 52:-9 67:120 68:11 69:-9 72:59 79:-23 80:-16 83:-10 117:16 118:-9 119:-8 120:-8 121:34 122:59 126:-42
stick from	118:8
^ #c	16:-10 45:9 51:12 52:-8 60:22 61:56 67:-24 68:20 69:29 118:20 126:-29
@wire came	51:69 68:-29 117:-9 118:39 126:-13
came in	19:15 20:36 21:-10 36:11 51:25 80:-16 118:-18 126:14
have come	9:29 19:10 46:12 51:24 126:-11
arriv from	58:12
arriv #n	118:10
stick came	51:14 118:14
came $	2:13 51:31 55:-8 81:-10 118:80 126:32
#c @wire	40:-8 71:9 80:19
stick arriv	118:13
stick are	118:29
are here	8:20 51:20
a delivery	51:8
^ delivery	19:35 32:-9 33:32 48:30 51:35 67:-18 74:-12 117:-8 118:34
^ ~	51:22 61:-8 117:-12 118:62 119:56 122:37
~ deliver	51:9 118:19 119:39 121:-9 122:18
deliver us	118:9
us #n	51:-13 63:-8 100:11 117:44 118:12 126:38
sent==	5:12 9:-11 19:8 30:-8 32:14 33:-15 51:11 57:10 58:16 67:-11 95:14 117:20 118:39 126:24
sent	5:12 9:-11 19:8 30:-8 32:14 33:-15 51:11 57:10 58:16 67:-11 95:14 117:20 118:39 126:24
~ sent	51:10 118:13
sent #n	51:27 117:-18 118:21
deliver #n	118:18 126:-10
brought==	21:28 31:20 44:20 51:51 67:-9 98:25 117:-13 118:59 119:-10 120:-11 126:-21
brought	21:28 31:20 44:20 51:51 67:-9 98:25 117:-13 118:59 119:-10 120:-11 126:-21
~ brought	118:30
brought #n	51:43 67:-9 118:-13
sent us	19:11 118:13
brought #c	118:9
^ ther	0:-33 3:-13 8:-39 14:-10 17:-10 18:-8 22:-25 23:-9 26:-27 31:8 34:12 37:-8 48:-10 50:8 51:20 55:8 56:-11 59:15 61:-8 62:12 67:25 68:-13 69:-13 70:29 71:-15 72:17 80:10 83:8 88:29 90:26 91:80 92:11 93:-9 95:40 98:-10 100:102 101:20 102:12 103:-8 113:-8 114:17 118:-10 121:16 122:-8 126:31
ther came	51:8
#n more	29:-8 31:77 40:10 46:-8 50:8 51:71 53:-17 55:18 80:14 88:21 94:-24 99:9 117:21 118:-41 121:9 126:18
more stick	51:24
the stock	9:9 18:-8 59:12 68:25
rack==	1:-8 2:-13 5:-8 8:49 9:-8 13:10 34:13 40:51 43:8 51:12 67:64 68:-10 70:-11 71:12 73:9 76:-10 78:24 80:20 82:-8 84:14 114:42 118:-8 126:-32
rack	1:-8 2:-13 5:-8 8:49 9:-8 13:10 34:13 40:51 43:8 51:12 67:64 68:-10 70:-11 71:12 73:9 76:-10 78:24 80:20 82:-8 84:14 114:42 118:-8 126:-32
rack $	40:45 67:-9 73:9 80:22
shelf==	8:97 9:-11 12:-8 19:-9 32:-14 58:10 67:29 80:14 102:17 121:10
new stick	5:11 9:-17 72:47 79:-9 84:18
shelf	8:97 9:-11 12:-8 19:-9 32:-14 58:10 67:29 80:14 102:17 121:10
shelf $	8:33 12:-10 67:33 126:8
took #n	7:16 33:-11 37:28 72:-9 82:-20 83:78 98:23 100:-11 105:-16 122:-29 126:47
the rack	1:-8 8:46 13:13 34:14 38:8 40:51 43:9 51:12 67:55 68:-10 70:-11 71:12 73:12 76:-9 80:17 126:-24
without==	1:-8 2:11 5:9 8:-16 9:-13 21:30 23:24 29:-13 30:-10 31:20 38:-22 39:26 40:-12 51:9 53:33 54:-13 66:36 72:-8 73:8 75:10 80:33 109:-9 111:36 114:-8 118:-17 126:28
without	1:-8 2:11 5:9 8:-16 9:-13 21:30 23:24 29:-13 30:-10 31:20 38:-22 39:26 40:-12 51:9 53:33 54:-13 66:36 72:-8 73:8 75:10 80:33 109:-9 111:36 114:-8 118:-17 126:28
came without	51:17 117:-10
without an	51:30 117:-12 118:-14
arriv without	51:13 118:-10
@wire that	9:9 19:16 32:-17 39:12 49:-10 51:18 68:11 83:8 120:23 126:-14
not order	32:-10 51:35 87:12 117:-28 120:-27 123:43
that was	38:-9 44:13 47:-10 68:-12 73:-10 76:10 78:11 80:-16 81:10 84:-11 90:9 104:-8 107:12 118:56 124:14 125:50 126:17
bought a	51:23 99:20 100:19 117:-8 126:21
a coil	40:-12 51:82 68:-36 69:-10 117:28
a stick	5:10 40:20 56:10 69:23 70:15 71:-9 89:10 126:-10
receiv a	51:16 68:-14
#t from	51:8 110:14
mm from	42:8 56:27 73:16 82:-8 93:-8
coil==	0:9 1:-14 5:29 7:-8 8:51 9:8 17:11 18:-10 20:-17 21:-9 22:-12 25:-9 32:-17 33:-18 34:-10 40:-22 41:-9 49:-8 51:51 52:-16 68:83 71:-15 72:129 74:-20 80:-13 82:-10 89:-15 117:49 123:18 126:40
receiv #d	51:22
mm coil	51:12
in coil	51:8
@wire tomorrow	119:11 126:9
a #c	5:70 51:-12 69:11 70:-17 86:14
g coil	117:8
@wire yesterday	19:-9 34:19 67:15 83:12
g of	51:25 67:-21 68:22
gram of	51:20 67:-9 68:17
tare==	68:22 69:-15 121:18
tare	68:22 69:-15 121:18
tare #c	68:22 69:-15
g $	40:-10 51:-15 52:-10 67:-8 68:66 69:121 70:-13 117:-11 122:11 126:-22
weigh==ing	51:26 68:-21 69:16 126:28
weigh	1:-14 5:-15 8:-16 9:-9 19:-18 20:-8 40:-15 52:-13 67:-16 68:130 69:62 70:-20 89:-8 117:-11 126:167
@wire weigh	1:-8 68:14 69:21 126:69
weigh #c	51:16 69:25 126:13
gram $	3:42 40:-9 68:50 69:71 70:-21 121:12 122:14 126:-20
empty==	0:13 1:-12 2:11 4:-23 13:61 40:-9 51:33 69:-12 78:12
empty	0:13 1:-12 2:11 4:-23 13:61 40:-9 51:33 69:-12 78:12
spool==	51:87 68:56 69:-43 117:10 118:-9
spool	51:87 68:56 69:-43 117:10 118:-9
g spool	51:19 68:-8 69:-11
g empty	51:10 68:-9
^ coil	51:-16 68:41
reorder==	8:-22 9:77 10:43 11:-11 17:-21 19:-11 32:-12 33:-11 52:126 70:-8 89:-15 126:36
reorder	2:19 8:-23 9:86 10:41 11:-12 17:-24 19:-12 24:-8 32:-12 33:-12 52:149 67:-9 70:-10 89:-16 126:47
^ reorder	9:-33 52:102 89:-8 126:8
reorder level	8:-16 9:30 17:-20 52:72 89:-9 126:41
level wire	9:-22 52:33
reorder @wire	9:21 52:9 126:21
reorder the	9:9 52:9
below==	3:-17 42:-24 43:-25 52:83 67:-8 75:-11 78:-8 90:26 91:69 92:-13 93:166 94:-17 98:-11 103:11 126:13
below	3:-17 42:-24 43:-25 52:83 67:-8 75:-11 78:-8 90:26 91:69 92:-13 93:166 94:-17 98:-11 103:11 126:13
@wire below	52:24
below #d	43:-10 52:44 93:20 126:-12
^ say	52:19
say when	52:21
when the	9:-15 29:8 48:9 52:11 103:-9 126:65
is below	52:36 93:13 126:-26
below #n	52:11 90:17 93:12 126:28
^ tell	2:-11 3:20 4:13 5:38 9:12 11:-8 12:18 13:15 14:15 15:8 17:-14 19:11 20:-9 21:9 22:9 23:9 24:27 25:-8 26:21 27:12 29:10 30:-13 32:21 33:19 34:-27 36:19 39:-8 43:-9 48:8 52:20 56:-8 57:47 58:-8 101:-8 103:20 104:-17 106:-9 118:-9 119:-14 122:-10 123:-8
tell me	0:-13 1:34 2:19 3:28 4:9 5:28 8:36 9:27 12:14 14:27 15:27 19:12 20:-10 21:11 22:9 23:-13 24:24 26:42 27:14 32:28 33:17 34:-24 36:10 37:-9 38:-9 39:-8 43:-15 52:20 70:-8 76:-11 103:-10 104:-13 106:-9 118:-8 119:-14 121:-9 126:-24
me when	29:10 52:19
is under	2:11 13:-12 24:32 52:17 88:17 126:-22
under #d	52:22
when @wire	52:19
low below	93:-12 126:37
^ @wire	0:25 1:-34 5:86 8:57 9:28 19:16 20:8 22:-35 24:22 25:12 29:-8 33:-24 34:24 38:-12 39:-11 40:-39 41:-11 50:-21 51:-39 52:-24 56:-10 61:-8 67:26 68:76 70:38 80:-17 82:-25 86:-11 89:66 117:-19 118:61 119:70 126:19
low at	52:32 93:16
low under	52:22
the reorder	8:-14 9:21 126:47
open @day	53:28 55:-15 110:-21 113:16 126:59
@day #r	16:-10 53:47 54:-13 55:-45 102:-13 106:68 107:-8 110:22 111:-13 113:-12 126:31
@day from	48:25 53:16 54:-13 106:23 110:48 111:-13 112:-14 119:-9
@day #n	55:14 106:46 110:-9 112:-23 126:49
open every	53:12
every @day	53:72 54:-22 55:-19 110:35 112:-27
open each	53:8
each @day	53:39 54:-13 55:-16
from from	55:16 112:15
on every	2:-16 53:8 126:35
@day are	29:-29 53:53 54:-12 110:13 111:-8 112:10
are #r	29:-47 55:29 112:30
are from	53:-15 55:22 82:-34 83:-26 126:66
of each	8:26 9:-10 26:32 28:16
^ on	0:-20 1:87 2:-9 4:-15 13:-15 16:-12 17:-16 27:11 29:39 30:-13 32:9 39:15 42:-13 44:-25 46:11 53:26 55:31 66:-9 70:9 73:-15 75:20 76:48 78:-19 90:20 91:-8 92:16 93:15 94:26 96:-12 98:-10 100:30 105:-19 108:73 109:-12 111:-16 112:25 115:-9 116:-26 117:26 118:-17 119:-11 120:8 126:-52
)~",
R"~(@day open	53:26
open from	53:34 54:-8 55:-9
^ every	2:13 17:12 26:19 41:-8 45:29 53:42 54:-16 55:-12 68:9 76:-10 82:26 97:10 104:9 110:29 112:-18 116:-8 126:-17
@day we	51:22 53:35 54:-16 55:24 113:15 126:-25
^ each	2:26 3:-8 53:10 55:-10
open #r	54:31 126:-10
^ clos	29:24 30:-11 44:22 48:-9 53:65 54:147 55:-10 88:10 111:-12 113:-57 122:-10 123:16 126:51
alway==s	36:9 53:102 54:-52 63:-10 101:32 105:11 113:-12 121:8 126:50
are shut	29:-15 53:49 54:14
alway	36:9 53:102 54:-52 63:-10 101:32 105:11 113:-12 121:8 126:50
shut alway	53:19 54:-13
alway on	53:28 54:-17
clos each	53:16 54:-13
begin==s	10:10 16:-12 29:-9 44:-13 55:-9 88:47 102:13 103:-9 108:124 112:17
clos day	48:-10 54:48
note==	0:-10 6:-8 15:-8 29:-8 34:-11 38:-9 40:15 41:9 42:35 50:-11 51:-11 54:56 60:14 61:-11 65:12 67:17 89:12 93:-10 96:10 98:29 100:14 106:20 109:23 111:46 112:-10 113:-24 117:22 122:70 126:-30
day day	113:17
^ shut	29:-15 53:-17 54:136 63:21 102:12 113:-13 126:-10
shut the	63:22 102:15 113:20
shop on	29:8 34:13 54:-20 113:35
clos for	18:9 30:-8 53:23 54:31 110:-18 113:28
clos the	29:-8 53:-8 113:33 123:18 126:38
shop next	113:10
@day becaus	54:15 102:-8 110:-12 112:18 113:8
tomorrow becaus	54:24
clos on	29:10 53:38 54:-37 111:-13 113:67 126:66
shop is	29:-30 53:8 54:64 56:22 110:37 113:-13 126:-26
is shut	29:-10 54:11 113:-21 126:54
shut @day	53:-16 54:64 126:-13
is clos	53:-10 54:48 88:15 113:-18
shop from	56:18
clos from	54:32
shut from	54:18
morn becaus	102:9 111:11
clos today	113:14 126:-9
shop @day	54:12 111:40 126:-10
#t on	53:-13 54:30 55:-12 102:20 110:-41 112:77
&#t@day	27:-8 53:58 54:12 55:77 102:33 106:-23 110:-55 116:-8 126:-19
early==	32:9 53:-10 54:13 64:10 82:17 112:36 119:9 126:-9
early	32:9 53:-10 54:13 64:10 82:17 112:36 119:9 126:-9
clos early	54:13 126:9
early on	54:9 112:9 126:8
morn on	106:18
from this	10:11 59:22 121:8
early at	112:11
close==s	54:17
close	54:17
shop close	54:17
shop at	46:10
yesterday becaus	41:10
shop for	63:16 85:10 126:-10
all next	27:-10 30:-8 54:11 102:37 111:22 113:-12
week becaus	111:11
the rest	17:-8 30:-15 42:-8 46:10 54:18 63:-8 71:22 83:-10 88:26 93:19 102:34 111:30 118:27 119:27 120:60 126:-58
we will	30:-11 37:14 41:10 48:10 49:9 50:12 53:8 54:29 55:15 56:-9 65:-9 87:15 100:-18 101:-10 111:9 112:-22 113:23 116:35 120:11 126:-31
will not	0:-9 12:-10 29:-8 30:18 32:-8 37:-14 39:46 42:-11 43:23 48:-12 49:21 51:-15 63:54 64:-14 66:15 74:-12 82:17 87:14 94:32 99:-8 100:-8 102:-16 103:22 106:-15 107:17 111:49 112:-8 113:28 118:29 119:12 120:63 126:-117
not open	29:-10 53:22 54:203 55:-22 113:-113 126:-35
open next	53:-17 54:22 55:21
after==	0:46 2:-16 4:-8 5:-20 6:15 8:15 9:-21 10:-18 11:11 13:-12 14:-12 15:14 16:-18 17:-24 20:-26 21:-12 22:12 25:74 26:-16 27:-9 30:-25 31:-8 34:-31 36:-9 38:-12 39:17 44:-33 45:-24 46:11 49:18 51:52 53:-31 55:-11 56:68 63:15 65:9 66:21 71:-13 72:-22 73:-8 74:-19 76:-16 78:-13 79:-9 82:-25 85:-14 87:-9 88:9 90:-10 91:-21 93:14 94:90 95:-13 96:17 98:17 99:-11 100:-11 101:-8 102:-16 103:21 104:9 105:-8 107:19 108:-42 109:-17 110:-44 111:-41 112:61 113:73 114:-9 115:165 116:33 118:-19 120:17 122:8 126:19
open #o	54:17 113:-13
after	0:46 2:-16 4:-8 5:-20 6:15 8:15 9:-21 10:-18 11:11 13:-12 14:-12 15:14 16:-18 17:-24 20:-26 21:-12 22:12 25:74 26:-16 27:-9 30:-25 31:-8 34:-31 36:-9 38:-12 39:17 44:-33 45:-24 46:11 49:18 51:52 53:-31 55:-11 56:68 63:15 65:9 66:21 71:-13 72:-22 73:-8 74:-19 76:-16 78:-13 79:-9 82:-25 85:-14 87:-9 88:9 90:-10 91:-21 93:14 94:90 95:-13 96:17 98:17 99:-11 100:-11 101:-8 102:-16 103:21 104:9 105:-8 107:19 108:-42 109:-17 110:-44 111:-41 112:61 113:73 114:-9 115:165 116:33 118:-19 120:17 122:8 126:19
december after	54:8
after all	12:-10 26:-10 39:26 46:-22 48:21 49:44 51:54 53:-29 55:-16 63:-8 66:46 74:-12 82:-19 84:-8 85:-8 88:31 90:8 91:-9 93:8 94:-11 102:-11 103:11 107:29 110:-41 111:-38 112:68 113:87 114:12 115:-12 118:-13 126:-13
all $	3:-9 5:-9 8:11 10:32 12:-24 13:20 14:10 16:13 17:16 19:10 21:-9 23:-11 25:-39 26:-22 27:10 29:26 30:32 32:16 34:10 43:11 46:-33 48:31 49:28 54:-18 55:-18 56:-8 62:-8 65:-8 67:33 68:53 70:-11 74:-13 82:-33 84:-11 85:-16 88:11 91:16 92:-8 94:-8 102:-12 107:30 110:-37 112:88 113:86 115:-9 117:16 118:-8 126:-13
@day after	29:22 48:23 53:-14 55:-8 110:-40 111:-31 112:41 113:24 116:9 126:19
#r after	54:12
no work	29:-16 54:96 102:-12 110:11 111:-11
@day is	107:16 111:-11 113:24 119:8 126:20
a clos	48:-8 54:24
a day	10:8 25:8 46:38 48:11 54:21 109:63 111:11 112:-8 113:-11 119:19
holiday==	29:-20 30:-13 31:-8 48:-8 54:112 55:-8 84:10 110:-11 111:57 112:-18 113:29 126:-14
^ today	26:-8 29:-28 30:85 54:32 63:31 112:32 113:10 126:-35
today is	54:10 113:14
holiday	29:-21 30:-13 31:-8 48:-9 54:113 84:10 110:-12 111:84 112:-20 113:26 119:-8 126:-15
a holiday	54:37
holiday $	54:40 111:11
^ #o	43:10 46:44 49:-8 54:13 90:-11 102:-9 103:33 115:68 116:-12 126:-8
december is	54:8 111:-24 112:19 113:63
^ @day	29:-11 30:-11 48:-9 53:105 55:11 102:30 106:-18 110:31 111:-20 112:-14 113:64 118:15 119:-17 126:-38
extra==	8:28 48:-8 53:-22 55:94 56:31 106:-8 112:-8 119:13 126:-14
extra	8:28 48:-8 53:-22 55:94 56:31 106:-8 112:-8 119:13 126:-14
open extra	55:34
hour #n	29:21 55:8 105:13
~ hour	11:-16 56:27
hour #r	29:-12 112:15
extra day	55:14
@day hour	29:-11 53:33 55:-20 112:13
until yesterday	21:9 55:12
until #n	20:10 53:14 55:25 90:8 106:22 111:-11 112:30 113:-9 119:28 126:-13
&#n#o#r@day	116:13
open late	55:30
late on	30:8 112:10
until this	55:15
&#r#t	54:17 55:8
late tomorrow	55:9 112:36 126:-14
open the	0:15 13:34 29:21 53:-9 54:8 55:-14 64:12 113:8 126:24
open today	29:11 55:13
extra on	55:8
today from	55:11
tomorrow #r	55:12 112:10
also==	2:63 5:-13 16:12 29:16 40:16 53:-25 54:-10 55:55 60:9 82:29 86:9 117:22 118:-15 121:16 126:-25
also	2:63 5:-13 16:12 29:16 40:16 53:-25 54:-10 55:55 60:9 82:29 86:9 117:22 118:-15 121:16 126:-25
^ also	40:17 53:-11 55:22 82:29
also open	29:18 53:-25 54:-9 55:58
open tomorrow	54:-9 55:11 113:23
tomorrow from	54:17 102:17 111:-8 112:29 126:-9
beside==s	29:19 51:-11 53:-8 55:24 59:8 68:41 69:-18 99:19 126:-11
beside	29:19 51:-11 53:-8 55:24 59:8 68:41 69:-18 99:19 126:-11
open beside	53:-8 55:23
beside on	55:11
#o #n	4:32 16:11 37:-14 45:15 46:17 66:30 71:24 72:10 76:-10 79:12 83:-10
^ extra	48:-8 53:-10 55:50 119:14
extra open	55:23
open only	53:-13 55:27
only on	1:110 4:-10 13:-13 108:-8 110:-12 112:16 119:33
today #n	106:20
only #o	119:10
tomorrow only	112:21
@day only	55:20 110:35 112:-41
only from	5:20 53:-12 55:17 110:8 126:-13
#r we	106:8
only #n	0:-8 1:-36 2:8 4:93 16:11 28:16 43:22 45:-14 70:19 99:32 100:20 114:-8 118:19 126:-43
december we	55:11
today we	54:23
open #n	13:9 55:18 126:8
tomorrow we	113:14
#r only	2:19
hour @day	29:20 53:-31 55:51 110:-26 112:8
#r are	55:17
hour the	38:13 55:12
set==ting	31:10 56:75 84:-10 85:8 99:19 100:87 103:-14 104:-10 105:-44 109:13 126:-15
set to	56:18 126:-8
to ~	56:61 57:19 58:-11 59:-8 62:8 65:12 100:40 122:-9
recheck may	56:9
may be	2:21 25:13 33:-9 40:-8 44:17 56:8 77:-19 85:12 92:-27 103:15 126:84
done from	5:27 37:30 56:15 126:-23
h==	11:-36 56:75 106:24 116:-11 126:-10
can be	36:39 39:9 44:36 49:14 61:10 66:-9 82:10 88:-10 101:10 107:29 111:-9 120:10 123:8 126:-33
h	11:-36 56:75 106:24 116:-11 126:-10
~ h	11:-25 56:36
h $	11:-25 56:30 106:24
hour after	11:-13 56:25
after press	11:-14 16:-8 25:25 56:37 116:8
within==	1:63 3:15 10:15 11:-8 56:21 122:24 126:-20
within	1:63 3:15 10:15 11:-8 56:21 122:24 126:-20
due within	11:-8 56:22
within ~	11:-18 56:23
due at	11:-14 56:16
due after	11:-15 56:31
after ~	56:9
zone==	56:82 126:-8
our time	28:8 29:16 105:19
zone	56:84 126:-8
time zone	56:38
zone is	56:39
is ~	56:85
the zone	56:27
the time	21:11 44:-8 56:8 66:13 105:18 107:9 109:10
timezon==e	56:13
timezon	56:13
zone to	56:16
press_line_load	56:10
press_line_load to	56:10
supply_guess	56:12
chang supply_guess	56:12
supply_guess to	56:12
unit	56:73
unit to	56:16
the set	56:17 84:-11 85:11 87:8 100:18 126:-9
plat==e	12:41 14:13 15:9 16:-16 27:-8 30:-25 34:-8 45:-37 56:96 62:8 66:22 100:-9 102:-23 103:-9 106:8 126:28
)~",
R"~(plat	12:41 14:13 15:9 16:-16 27:-8 30:-25 34:-8 45:-37 56:96 62:8 66:22 100:-9 102:-23 103:-9 106:8 126:28
press plat	16:-14 45:-23 56:75
plat is	56:11
the plat	45:-13 56:10 126:33
plat of	56:16
plat say	56:22 126:-10
say ~	56:12
press say	56:15
read==s	3:9 4:20 41:-10 42:26 51:8 56:9 68:30 69:-18 70:8
receiver==	23:-8 39:-13 50:-15 57:88 58:244 59:-15 99:-10 101:-19 123:-9 126:17
shap==e	41:10 50:-13 57:30 126:9
url==	50:-15 57:29 59:-13
receiver	23:-8 39:-14 50:-16 56:-11 57:97 58:292 59:-16 63:-11 99:-11 101:-23 107:-8 123:-12 126:8
add receiver	57:67 58:-35 59:-8
shap	41:10 50:-13 57:30 126:9
event	57:13
url	50:-15 57:29 59:-13
url ~	50:-15 57:27 59:-13
~ shap	50:-10 57:14
~ url	50:-10 57:23 59:-13
cloudevent	57:9
shap cloudevent	57:9
text	57:16
shap text	57:8
receiver ~	57:35 58:8
a receiver	36:16 50:-12 58:-15 126:44
tell ~	56:-11 57:44 58:68 109:-21
send==	1:9 4:16 7:11 9:-18 11:8 27:9 29:-16 33:35 51:-8 57:24 117:32 118:17 119:9 120:-9 126:-17
reminder==s	5:-9 14:-27 33:-12 34:-9 56:-8 57:49 58:93 114:10 126:29
send	1:9 4:16 7:11 9:-18 11:8 27:9 29:-16 33:35 51:-8 56:-8 57:23 58:35 109:-10 117:32 118:17 119:8 120:-9 126:-23
^ send	57:28
reminder	5:-9 14:-27 33:-12 34:-9 56:-8 57:49 58:93 114:10 126:29
send reminder	57:27 58:13
reminder to	57:38 58:36 126:-13
drop receiver	58:16
receiver $	36:15 57:42 58:41 126:-13
drop the	16:-16 26:-12 39:54 44:-13 48:54 61:18 66:42 100:-12 104:-13 107:-13 126:76
the receiver	57:17 58:95 63:-8 101:-11 126:-16
remov receiver	58:35
tell==ing	8:-12 9:12 58:81 79:9 84:15 109:-25 114:12 126:-9
^ stop	11:-8 13:-14 24:-26 32:-8 38:-8 39:71 41:-8 44:-11 58:97 85:47 108:-12 109:101 120:30 126:-17
stop tell	58:81 109:-23
role==	14:50 26:-8 33:-19 50:-28 57:-30 59:128 61:-12 62:81 63:-18 100:-10 104:-10 126:12
uid==	14:64 39:-12 50:-8 56:-9 59:57 60:169 61:175 62:-12 63:-14 64:-8 65:-12 66:-23 99:-9 111:-9 112:-17 122:-8 126:11
new person	59:112 62:-11 126:9
role	14:98 26:-11 30:-10 33:-22 50:-28 57:-30 59:125 61:-12 62:81 63:-18 100:-10 104:-10 126:11
~ role	50:-23 57:-20 59:52
role bench	14:-8 50:-8 59:47
bench role	62:25 100:-8 126:19
role look	50:-14 57:-12 59:53
look name	50:-11 57:-10 59:23
uid	14:64 39:-12 50:-8 56:-9 59:57 60:169 61:175 62:-13 63:-14 64:-8 65:-13 66:-23 99:-10 110:-12 111:-16 112:11 122:-8
uid #c	14:73 59:55 61:32 66:-8 99:-8 126:31
#c name	86:-16 121:28 122:-13
uid #n	60:80 61:119 65:-10 66:-9 112:-15 126:-30
#n bench	100:102 112:-13
bench name	59:8
role lead	57:-10 59:26 62:11
lead name	59:10
person ~	59:48
lead role	59:8 62:13
look $	8:33 9:-22 14:14 54:12 59:62 60:-12 61:-8 62:44 63:-10 91:-10 92:11 95:-10 126:28
lead $	59:61 62:48 63:-10 64:-10 99:-8 126:10
add person	59:8
a person	59:89 62:-9 63:-26 64:35 66:15 99:-13 104:-9 126:15
person call	126:10
with role	14:14 59:27
welcom==e	0:-10 1:14 14:-9 56:-9 59:125
as==	0:-21 1:-29 2:27 3:-23 4:-35 5:14 6:-11 7:-8 8:17 9:-28 11:-20 12:-17 13:-34 14:-22 15:-20 16:-8 18:-13 20:-12 21:-8 22:-16 23:-11 24:-26 25:11 26:-28 27:-13 28:-8 29:-23 30:-9 31:-18 32:19 34:-24 38:51 40:-15 41:-19 42:9 43:17 44:19 45:-23 46:13 48:-15 49:-24 50:-8 51:22 52:43 53:14 56:13 57:23 58:-17 59:80 60:46 62:34 64:16 65:-18 66:28 70:-18 71:-18 73:-13 75:-11 76:35 78:9 83:8 84:12 85:-18 87:-13 88:-23 90:20 91:-14 92:-14 93:-15 94:25 96:33 99:45 100:47 101:22 102:10 103:27 104:-36 105:30 106:-16 107:-40 108:33 109:-25 110:-13 111:19 112:35 113:49 114:71 115:-29 117:-14 118:22 119:-23 120:-29 121:14 122:15 123:13 125:-14 126:-17
welcom	0:-10 1:14 14:-9 56:-9 59:125
^ welcom	14:-9 56:-9 59:125
welcom ~	56:-8 59:77
as	0:-21 1:-29 2:27 3:-23 4:-35 5:14 6:-11 7:-8 8:17 9:-28 11:-20 12:-17 13:-34 14:-22 15:-20 16:-8 18:-13 20:-12 21:-8 22:-16 23:-11 24:-26 25:11 26:-28 27:-13 28:-8 29:-23 30:-9 31:-18 32:19 34:-24 38:51 40:-15 41:-19 42:9 43:17 44:19 45:-23 46:13 48:-15 49:-24 50:-8 51:22 52:43 53:14 56:13 57:23 58:-17 59:80 60:46 62:34 64:16 65:-18 66:28 70:-18 71:-18 73:-13 75:-11 76:35 78:9 83:8 84:12 85:-18 87:-13 88:-23 90:20 91:-14 92:-14 93:-15 94:25 96:33 99:45 100:47 101:22 102:10 103:27 104:-36 105:30 106:-16 107:-40 108:33 109:-25 110:-13 111:19 112:35 113:49 114:71 115:-29 117:-14 118:22 119:-23 120:-29 121:14 122:15 123:13 125:-14 126:-17
~ as	59:13
as lead	62:14
as bench	59:9
map==	60:71 61:-16
map	60:67 61:24 126:-8
^ map	60:69 61:-14
map uid	60:69 61:-14
@person uid	60:25 61:-27 126:16
&#c#n@person	60:18 61:-12 105:8 112:15
uid $	60:55 61:9 112:10 126:-8
^ uid	60:24 61:35 66:-11
#c is	60:30 61:62 62:-9 74:23 126:-38
#c to	60:35 61:-15 88:8
to @person	12:28 13:-9 15:20 17:-14 29:-10 34:-12 37:30 39:8 59:21 60:46 61:-13 62:-23 63:-13 64:-10 65:95 66:-25 104:10 108:-10 110:8 126:29
is uid	14:90 60:-13 61:-37 126:-14
has uid	60:34 61:-12
in as	37:-10 60:29 83:15 112:-11 113:12
as uid	60:41 61:-9 112:-10
unmap==	60:-18 61:79 126:28
unmap	60:-25 61:56 126:59
^ unmap	60:-12 61:108 126:-12
unmap uid	60:-11 61:41 126:33
is nobody	13:-8 30:19 44:-10 60:-9 61:54 65:-11 66:69 114:-15 115:-9 126:27
nobody $	61:44 65:-11 66:58 70:20 126:-39
nobody any	66:24
take uid	60:-24 61:33 126:28
#c away	60:-12 126:24
chang person	62:37
@person bench	62:16
@person name	59:-12 62:29 65:-12 66:26
@person role	62:12
make @person	62:51 65:22 111:10
@person lead	62:20
@person a	62:46 126:-8
a bench	26:18 59:-12 66:24 100:-12 104:101 106:13 126:-15
a lead	59:30 62:49 99:-9 126:-10
look now	62:14
lead now	62:29
is look	15:13
renam==e	26:-13 33:-18 56:-10 62:67 100:92 102:-10 103:-11 104:-11 122:49 123:-13 126:-13
renam	26:-13 33:-18 56:-10 62:67 100:92 102:-10 103:-11 104:-11 122:49 123:-13 126:-13
^ renam	26:-13 33:-18 56:-10 62:62 100:82 103:-11 122:49 123:-13 126:-16
renam @person	62:64 126:-10
@person to	60:15 61:-12 62:88 63:-8 126:-10
~ now	121:33 123:-9
retir==e	14:-18 50:8 62:-20 63:120 64:8 65:-9 87:32 111:-12 112:-16 126:42
^ retir	14:-9 63:105 64:-29 87:22 126:-18
retir person	14:-13 63:37
retir for	63:10
for good	44:-19 53:25 58:31 63:52 64:23 82:30 87:35 94:87 101:50 102:-19 109:-11 110:11 111:-13 126:-51
is gone	3:-14 37:42 63:21 64:-20 71:10 72:-10 78:32 87:16 92:-12 101:17 111:16 126:25
gone for	64:19 87:16 101:23 126:-18
has left	14:23 63:22 64:-10 88:11 111:-9 126:41
@person left	1:8 17:15 63:47 64:-21 80:24 126:-35
left us	50:9 56:-9 63:8
@person doe	12:9 15:-17 29:-36 31:62 63:13 64:-10 65:107 66:-11 108:-9 110:79 112:10 126:-51
doe not	1:-8 3:-8 26:-10 29:-11 43:14 46:-14 48:13 49:17 54:14 63:35 64:-11 65:-15 66:-27 74:-36 85:16 90:82 92:26 102:12 104:-11 110:55 111:8 112:-27 114:8 115:24 120:18
not work	29:-8 63:53 64:-8 102:40 107:-13 110:39 111:70 112:-61 126:-19
here any	63:66 101:23 110:-20 118:-17 119:-13 120:-9 126:45
retir @person	63:18 64:44 126:-12
return==	14:-10 30:-8 59:-11 63:22 64:114 102:-8 103:21 126:-21
return	14:-12 30:-9 58:-11 59:-11 62:-13 63:-8 64:157 66:27 101:12 102:-9 103:21 111:-12 126:9
^ return	14:-10 59:-8 64:90 103:22
return person	14:-9 64:57
is back	25:-13 26:-31 63:-8 64:45 102:47 103:128 107:-10 114:10 126:-23
here again	63:-13 64:42
has come	5:12 32:-32 63:-13 64:51 103:11 118:76 119:-8 120:-8 122:-8
come back	25:17 26:21 63:-15 64:38 103:10 126:8
give job	13:-17 15:-10 48:13 65:60 66:10 109:-13 116:9 126:67
give @job	48:12
give the	48:-9 65:-10 71:-21 100:25 104:-16 105:14 107:12 116:22 121:18 126:47
to bench	65:15
to me	3:18 13:-20 15:13 16:17 19:9 36:26 65:61 83:8 90:24 126:-18
goe to	30:-12 38:39 53:-10 56:9 57:10 65:42 102:16 110:10 116:10 126:-22
@job goe	65:22 84:8 114:26 115:14 126:-8
is mine	15:-9 30:-12 65:99 102:-14 106:61 126:-12
@person build	50:-10 57:10 65:18 100:24 126:-9
build job	65:12
myself==	12:8 15:-8 17:-9 23:55 46:20 65:98 106:10 126:-26
myself	12:8 15:-8 17:-9 23:55 46:20 65:98 106:10 126:-26
#n myself	65:57
myself $	12:9 17:-8 23:18 46:20 65:79 126:-13
@job myself	65:33 126:-11
do @job	17:-9 65:19 114:22 115:21 126:-16
free job	13:-11 30:-10 66:116 85:-22
nobody doe	15:-9 66:70 126:-14
free again	39:19 66:56 85:23
@job off	3:-10 48:11 49:54 66:18 71:20 72:13 109:-13 126:-22
off everybody	49:-8 66:28
everybody $	14:-15 29:19 49:-11 66:55 85:13
)~",
R"~(take job	49:37 65:22 66:11 126:16
from everybody	66:27
take @job	49:22 66:14
^ count	8:46 9:17 20:-9 25:18 32:-18 51:-49 67:99 78:13 94:18 111:33 112:12 117:-14
#n each	51:-15 67:14
stick #c	51:-15 67:16 72:13
mm stick	5:10 41:16 51:-8 71:11 83:-8
in stick	50:9 51:-13 67:17
@wire note	67:8
#d stick	39:18 71:9
count==ed	32:-10 34:30 51:-31 52:-24 67:96 68:-26 69:-12 70:11 109:11 117:-16 118:11 126:71
count #d	67:24
ther is	0:-17 1:-11 3:8 4:-12 8:-29 12:-8 14:-9 17:-16 18:-9 22:-24 23:-8 24:-10 26:-21 29:-8 34:11 38:-9 44:-19 45:-10 50:15 51:9 52:18 55:14 56:-10 59:25 62:-9 67:50 68:17 69:-15 71:-10 74:-14 78:-12 86:20 88:46 90:15 91:59 92:27 93:-10 94:11 95:40 99:45 100:9 101:19 102:12 105:-8 108:-9 109:9 114:15 118:-10 121:16 122:-9 126:30
is only	3:19 28:9 43:16 60:9 67:14 70:28 77:12 88:10 91:-9 126:-25
only #d	1:-9 43:31 67:33 70:14 77:12 126:-14
ther are	22:-9 26:-9 51:-19 62:13 67:54 100:93
are only	100:11 118:14
the shelf	8:68 9:-8 12:-8 67:30 80:14
only #c	5:-15 16:40 67:19 70:14 118:16 126:-16
are #c	100:11
have only	1:-11 16:22 67:24
stocktak==e	67:14
stocktak	51:-20 52:-11 53:-13 54:58 55:15 67:90 70:-8 113:-8 126:-10
^ stocktak	51:-20 52:-9 67:78
stocktak the	67:8
@wire #c	51:-8 68:20 69:-14 117:15
weigh==	1:-11 51:-10 68:54 69:13 126:85
^ weigh	51:-10 68:105 69:-32 126:-14
weigh $	8:-8 68:37 126:57
division==	56:27 68:11
gram beside	68:12
beside #d	68:19 69:-12
mm division	69:8
@wire coil	5:30 8:-9 9:25 19:18 20:-11 33:-14 51:-15 68:58 72:11 126:48
coil weigh	126:28
weigh==s	68:21 69:29 126:52
weigh==ed	51:-23 68:75 70:-10
roll==	8:9 14:21 68:12 118:20 126:-13
roll	8:9 14:21 68:12 118:20 126:-13
@wire roll	68:14
roll weigh	68:14
g and	68:11
g with	51:29 68:-17
the spool	51:10 68:-20 117:20
spool of	51:41 68:-14 69:-14
with its	17:-8 25:24 61:10 68:10 98:-18 126:35
its spool	51:23
g on	51:-16 69:53
gram on	68:11
on its	2:-10 5:17 16:23 17:-12 25:-9 32:33 86:10 98:8 120:-16 126:13
a spool	51:36 68:-10 69:-14
gram without	51:-10 117:20
spool $	51:-24 68:36 117:15
g without	68:8
without a	53:35 66:15 75:11 109:-8
bare==	51:-11 56:27 68:21 88:38 126:-14
bare	51:-11 56:27 68:21 88:38 126:-14
bare $	88:18 126:-12
the coil	0:14 8:52 9:-14 32:-10 51:-17 68:12 69:21 72:93 126:8
the roll	8:9 14:21 118:23 126:-12
roll of	14:21 118:22 126:-12
^ stick	5:-15 6:-13 7:18 40:16 44:69 49:-8 51:-13 68:16 71:-9 74:28 109:-10 126:36
the stick	6:20 38:9 40:17 71:37 72:-30 118:17 126:-8
weigh the	51:-11 68:17 126:26
weigh @wire	68:42 69:-26
beside #n	51:-8 68:13
the scal	2:-14 4:34 68:49 69:14
read #c	52:-9 70:32
@wire show	68:8
show #c	68:10
scal say	68:29
say #c	51:34 56:26 60:9 68:-18 126:-14
g for	68:15 69:11 126:14
^ scal	68:29
scal read	51:12 68:-11
scal show	51:18 69:-13
laid==	0:-8 2:28 3:-19 16:-10 22:13 24:58 42:16 44:-25 46:-12 48:-12 49:-10 67:10 76:88 81:-10 84:14 85:14 90:63 96:-11 98:-11 104:-9 109:28 126:-11
laid	0:-8 2:28 3:-19 16:-10 22:13 24:58 42:16 44:-25 46:-12 48:-12 49:-10 67:10 76:88 81:-10 84:14 85:14 90:63 96:-11 98:-11 104:-9 109:28 126:-11
^ laid	76:35 104:-9 109:33
laid the	3:-10 42:17 90:20 126:22
scal #c	47:43 51:-10 69:10 82:-10 86:-9
put @wire	18:19 52:10 67:-9 70:18
calibrat==e	68:-17 69:79 102:11
calibrat	68:-17 69:79 102:11
^ calibrat	68:-17 69:79
gram length	69:8
#d mass	69:8
g are	69:10
gram is	69:24
calibrat @wire	68:-10 69:19
in at	0:8 37:9 45:18 68:14 73:9 90:9 111:34 126:-26
calibrat the	69:11
mm weigh	51:-8 69:21
correct==	39:-10 41:-12 52:-20 62:25 67:-8 68:11 70:125 82:-8 126:47
correct	39:-10 41:-12 52:-20 62:25 67:-8 68:11 70:125 82:-8 126:47
^ correct	62:26 68:12 70:117 126:-14
correct piec	70:21
morn to	53:15 75:8
correct @wire	70:22
mm becaus	70:41
correct the	62:26 68:12 70:10
in becaus	70:10
correct #d	70:8
#d by	75:26 89:15
correct number	70:10
from job	13:21 17:-8 40:-16 49:-17 66:63 73:23 126:19
from piec	37:9 39:-12 71:75 72:-26 83:-10 126:33
from piece	4:-13 71:24 72:-20 76:-8 83:26
cut piece	71:29 72:-9
into fret	3:-9 37:13 71:29 83:-30 126:30
cut #d	71:17
@wire up	70:13
#n up	4:25 5:-9 13:-15 17:43 25:-16 34:-8 37:-10 38:-10 46:-9 66:-10 71:37 72:9 76:-11 78:15 83:-11 90:-11 92:49 96:11 97:8 98:8 108:38 126:-29
up into	71:-8 126:30
#n were	1:-11 3:20 5:16 16:-8 18:8 37:-15 45:8 46:-8 71:-10 72:21 75:8 90:-8 96:12 97:12 98:16 118:24
were cut	72:44 126:-23
cut out	5:10 71:11
@job were	83:14
cut new	0:9 5:-11 72:21 79:38
stick job	72:13
from coil	2:-8 4:-9 72:29
coil job	72:11
coil from	72:9
&#c#n#o@job	72:8
of stick	70:9 72:24 80:9 122:11 126:-14
off stick	72:8
the new	2:-10 19:10 23:34 51:18 53:12 55:-9 56:10 59:20 60:8 68:-11 73:36 79:-11 99:21 100:15 104:-10 105:23 122:10 126:-32
of new	5:-16 8:-12 19:-10 21:30 36:12 37:-8 72:73 126:-8
wire at	92:11
from new	0:24 5:-54 71:-12 74:-13 79:55 126:74
off a	5:68 29:8 70:-15 126:-10
coil $	0:14 5:34 8:26 9:23 32:-12 33:-15 72:72 121:-10 122:22 123:18 126:-17
coil this	72:8
from a	23:28 71:-9 72:43 92:16
was cut	70:10 72:12 79:11
cut off	58:11 69:10 72:14 113:12
@job was	42:-14 43:15 65:13 71:-12 72:18 78:-9 92:12 93:10 98:19
#c length	70:-8 82:11 83:13
@job count	73:46 76:-9 83:-9 115:-9
&#c#d#n@job@wire	73:11
pull @job	96:17
@job plac	13:38 48:-19
~ count	80:8 86:-9 99:14
old==	0:-12 2:-12 3:-13 4:-16 5:-14 7:12 8:-10 10:-15 14:15 16:-8 22:12 28:13 32:40 34:-10 37:-9 40:20 42:-37 43:-20 44:68 52:-24 53:-18 55:-25 60:-14 61:23 64:30 71:-8 72:-14 73:47 76:13 78:-19 79:120 80:27 82:14 83:-10 88:-8 92:60 93:-9 96:-8 97:-17 100:14 103:-8 105:-13 108:19 113:-9 123:-9 126:53
old	0:-12 2:-12 3:-13 4:-16 5:-14 7:12 8:-10 10:-15 14:15 16:-8 22:12 28:13 32:40 34:-10 37:-9 40:20 42:-37 43:-20 44:68 52:-24 53:-18 55:-25 60:-14 61:23 64:30 71:-8 72:-14 73:47 76:13 78:-19 79:120 80:27 82:14 83:-10 88:-8 92:60 93:-9 96:-8 97:-17 100:14 103:-8 105:-13 108:19 113:-9 123:-9 126:53
#n old	0:-8 42:-9 44:-17 73:92 76:-10 126:28
old fret	2:-15 28:8 40:-16 42:-22 44:68 73:64 108:20 126:29
fret from	2:-8 4:-8 21:9 40:-13 73:14 74:41 97:10 109:11 126:39
pull #c	73:16
&#c@job@wire	38:17
pull slot	0:-16 73:38
#r out	72:22
#o out	37:8 71:-9 73:11
@job into	37:-9 73:31
fret==ted	13:35 14:25 49:10 74:33
with lot	72:9 74:12
fret @job	15:9 74:17
@job use	94:18 126:-13
take lot	74:13
get==s	3:-56 5:31 13:-9 14:-26 15:-9 22:-10 30:-9 33:-11 34:-16 37:41 38:-27 40:9 42:57 48:50 53:-16 55:15 59:-18 62:21 65:28 66:8 74:26 80:9 82:-10 94:26 98:10 100:-16 102:13 104:-9 105:11 118:-13 119:13 122:-8 123:18 126:90
@job get	3:-55 5:8 13:47 29:-10 30:27 42:58 48:26 53:-15 55:17 74:28 126:-10
get lot	74:9
is for	3:-8 38:56 41:20 65:34 66:32 74:25 82:12 106:19 109:-15 126:-35
size==	0:8 9:-9 33:22 75:51 89:25 122:-8
size	7:14 9:-10 33:57 75:51 89:28 121:-11 122:-14
slot size	75:51
size job	75:8
curv slot	18:14
curv job	2:-8 75:8
#n bottom	92:24
deep $	2:-10 18:-17 50:10 75:55 89:35
wide and	18:32 50:17
and #d	2:43 3:-16 18:14 40:39 42:-23 43:-11 47:-10 50:35 70:-10 73:63 75:13 76:18 77:9 79:-12 81:41 82:-15 83:-33 93:-14 99:-8 126:-8
mm #n	75:10
in with	61:8
a flat	18:10 75:-10
flat bottom	18:17
bottom $	75:37 92:66
shift==ed	2:-36 42:-15 48:-11 71:-8 76:189 82:-8 90:-9 126:14
short one	2:12 43:-19 76:40 126:20
one #n	76:10
one slot	76:20
i mov	76:55 96:-11 126:-9
mov fret	4:-11 76:68
^ mov	2:30 4:-11 17:-9 76:67
#r and	54:20 76:10
and put	73:-16 96:51 97:9
#o and	11:13 20:18 34:-10 37:-8 46:13 48:-8 71:15 73:8 91:26 92:-9 115:11
put #r	54:20
#o went	76:12
#o fret	0:32 3:12 16:-14 17:-12 37:32 38:13 42:20 46:-14 78:63 79:-13 90:14 93:29 94:-33 98:12
go into	2:12 18:9 63:38 64:-16 71:-21 83:22 126:-8
#r went	76:11
^ board	44:44 77:48 88:28 108:-20 126:-12
board width	42:-9 75:-8 77:73
@job width	77:8
#d width	18:-9 75:10
width at	77:37
morn job	77:15
width job	77:23
#n width	75:-24 77:50
wide at	42:-13 47:8 77:69
at #r	76:10 77:15
at nut	77:24 88:-8
nut $	2:20 4:8 77:31 126:-8
the nut	0:17 2:46 3:-10 4:63 6:-10 13:-10 17:-8 34:-8 37:17 42:-9 47:27 71:-11 73:-9 75:-11 77:45 88:20 109:-10
^ width	42:-10 43:-8 77:37
width of	75:16 77:49 89:25
board is	44:12 49:-8 77:18 88:57 104:15 114:-8 126:-8
lost==	0:-8 2:-9 3:-12 13:-16 16:-8 34:39 36:34 37:-8 44:-12 78:211 90:-10 91:-11 92:-17 94:-9 96:-12 98:-12 114:-8 120:10 126:79
)~",
R"~(lost	0:-8 2:-9 3:-12 13:-16 16:-8 34:39 36:34 37:-8 44:-12 78:211 90:-10 91:-11 92:-17 94:-9 96:-12 98:-12 114:-8 120:10 126:79
^ lost	44:-10 78:116 92:-8 126:19
lost slot	78:11
lost the	12:8 17:10 78:31
lost fret	78:21
ruin==ed	78:109 92:-9 126:-10
ruin	78:109 92:-9 126:-10
^ ruin	78:61
ruin fret	78:30
spoil==ed	0:-9 78:93 92:-8
spoil	0:-9 78:93 92:-8
^ spoil	78:26
spoilt==	0:-10 13:-15 38:-10 78:173 92:-12 98:-10 126:37
spoilt	0:-10 13:-15 38:-10 78:173 92:-12 98:-10 126:37
^ spoilt	78:27
spoilt fret	78:39 126:-13
is spoilt	78:57 126:-9
#o got	97:17
been lost	13:-8 34:51 78:-23
was lost	78:10
is lost	78:65 126:-29
broken==	11:-15 16:-8 26:70 27:-10 28:-10 30:-10 41:11 42:10 62:18 63:23 78:11 87:8 88:-8 100:-10 102:83 103:23 107:-12 109:57 116:-8 126:-25
broken	11:-15 16:-8 26:70 27:-10 28:-10 30:-10 41:11 42:10 62:18 63:23 78:11 87:8 88:-8 100:-10 102:83 103:23 107:-12 109:57 116:-8 126:-25
is broken	26:16 28:-9 42:11 49:9 62:9 78:11 102:30 109:22
broken $	26:22 30:-9 42:11 49:10 78:11 102:75 103:-17
lost $	34:51 78:86 126:-51
is spoil	78:12
spoil $	78:12
spoilt $	78:85 126:-8
drop slot	78:15
can not	0:-13 1:-8 5:8 8:20 11:18 13:-8 24:8 30:-8 31:-11 34:13 36:-8 39:-31 62:10 63:-10 66:33 78:63 82:10 88:10 89:-12 94:10 102:84 107:-15 108:13 109:-9 111:56 112:-44 113:-9 114:-8 115:10 120:15 126:-20
not find	0:-13 78:66 92:55 126:-26
find it	78:21 126:11
i lost	126:24
and i	3:8 9:11 13:24 14:13 16:-8 29:-8 32:10 34:-9 37:19 41:19 42:28 45:12 52:12 67:17 71:-12 73:-9 78:19 84:9 91:-11 96:-19 98:8 106:11 108:13 117:13 118:-9 126:-27
we drop	16:-13 123:-10 126:38
fell==	7:8 65:31 78:47 87:-21 112:16 113:-9
fell	7:8 65:31 78:47 87:-21 112:16 113:-9
#n fell	65:31 78:13 126:-24
fell off	7:8
fell down	78:18
floor==	1:10 12:21 26:20 42:-8 54:20 67:10 78:33 87:-21 92:16 102:17 113:9
fell on	87:-21 126:27
floor	1:10 12:21 26:20 42:-8 54:20 67:10 78:33 87:-21 92:16 102:17 113:9
the floor	1:10 12:21 26:20 67:10 78:34 87:-21 113:11 122:8 126:11
and is	32:8 41:12 64:16 78:55 94:-12 103:8 108:12 125:23 126:-24
flew==	78:54 91:-12 96:-9 126:46
flew	78:54 91:-12 96:-9 126:46
#n flew	78:35
flew away	78:38
flew off	78:21
disappear==ed	42:-8 78:25
somewher==e	1:17 74:10 78:20 111:8 126:15
disappear	42:-8 78:25
somewher	1:17 74:10 78:20 111:8 126:15
somewher $	74:10 78:25
away somewher	78:17
@job flew	91:-12 96:-11 126:50
is ruin	78:17
i spoilt	78:20 126:-13
i bent	22:11 41:9 78:46
bent fret	42:12
i ruin	78:14
#n it	3:-10 17:-10 37:84 41:-11 77:17 90:-9 94:65 126:-12
brok==e	16:-12 18:-8 40:-8 41:12 44:-16 49:-10 54:10 78:21 94:-11 101:9 102:32 109:79 126:25
brok	16:-12 18:-8 40:-8 41:12 44:-16 49:-10 54:10 78:21 94:-11 101:9 102:32 109:79 126:25
find fret	78:28 126:-9
remad==e	2:8 3:-15 42:-18 43:-12 45:-15 46:-8 72:-11 77:-9 78:-20 79:287 92:-13 96:-10 126:28
remad	2:8 3:-15 42:-18 43:-12 45:-15 46:-8 72:-11 77:-9 78:-20 79:287 92:-13 96:-10 126:28
^ remad	79:127 126:-9
remad slot	79:25
@job old	44:59 73:-41 79:20
old length	73:-8 79:25
old tin	0:-10 40:26 79:18 80:17
#o old	79:8
old scrap	79:11
scrap job	49:21
remad the	72:-9 79:16
mm end	42:10
dress job	109:9
#d old	79:8
tin job	79:12
#n tang	89:16 92:10 126:-9
remad fret	79:28
#n over	16:26 73:-12 76:10 79:19
#r anew	79:14
i made	16:-8 37:-15 42:-13 43:21 46:9 66:11 71:8 72:-10 79:11 82:-8 83:25 98:8
made a	0:-8 66:11 79:16
new fret	0:-18 2:14 37:-14 72:-45 73:54 79:98 126:-13
cut a	1:10 72:-14 79:24 105:11 126:-8
have made	95:11 125:9
made new	2:10
the old	0:16 2:-9 7:14 8:-8 14:12 28:15 32:10 40:14 42:-10 44:13 52:-23 53:-17 55:-25 56:8 73:-13 78:-11 79:44 80:15 105:-12 108:23 113:-8 122:9 123:-11 125:9 126:90
old one	0:13 28:8 73:28 126:-13
tin at	79:11
the scrap	41:18 82:40 126:-12
and old	92:11
is remad	79:33
remad $	2:14 79:32
remad at	79:33
been remad	79:18
handful==	1:-12 2:-24 8:-20 9:-13 22:-19 40:-42 42:-18 47:-21 51:-17 56:-9 63:-10 67:-20 73:-11 76:-11 80:214 81:246 82:-16 83:-16 89:-11 111:-14 126:88
handful	1:-12 2:-24 8:-20 9:-13 22:-19 40:-42 42:-18 47:-21 51:-17 56:-9 63:-10 67:-20 73:-11 76:-11 80:214 81:246 82:-16 83:-16 89:-11 111:-14 126:88
^ handful	80:66 81:36 126:-10
@wire plac	80:8
threw another	80:8
another handful	80:37 126:-8
handful of	1:-8 2:-11 8:-13 9:-10 22:-13 40:-20 51:-9 80:67 81:71 126:48
handful piece	80:14
chuck==	39:-14 41:84 82:72 126:-18
chuck a	40:15 80:9 82:-9
a handful	1:-9 40:-11 80:93 81:18 111:-13 126:8
put another	80:10
@wire went	71:18 80:19
i chuck	82:26 83:-13
of short	0:26 80:18 126:-16
handful short	80:20
toss==ed	41:29 42:-14 79:28 80:9 82:15 89:-8 121:8 126:-17
toss	1:-17 37:-10 39:-35 41:96 42:-14 69:-9 79:27 82:27 83:-14 89:-9 121:8 126:20
i toss	41:29 80:10 126:-11
threw a	80:8 126:-8
toss a	40:18
the handful	2:-11 9:-9 47:-21 76:-11 80:11 81:105 82:-13 126:47
handful $	67:-11 80:51 126:8
handful end	81:10
offcut into	80:9
@wire short	22:-8 40:11 80:37 82:17 126:-16
short into	40:-10 80:16
threw about	80:13
about #n	3:34 17:29 34:-8 40:-13 68:11 69:-9 80:50 90:73 126:-61
chuck #c	40:-10 80:24
@wire piece	8:55 9:-12 19:-8 71:-11 80:65 83:10 126:-29
measur handful	80:-18 81:42 126:-9
measur a	89:14
raw #n	81:9
measur that	81:9 126:9
that handful	2:-12 81:22 126:13
handful has	47:-10 81:17
has #d	67:8
@wire measure	70:23 89:8
handful is	81:23
@wire was	8:14 19:-15 20:17 21:-9 67:-10 117:12 123:28 126:10
was #d	71:-10 93:10
several==	36:18 82:34 83:46
several	36:18 82:34 83:46
scrap several	82:38
#d piece	42:-10 82:12 83:10
several length	83:8
s==	37:-8 40:-16 41:-29 69:-9 71:-18 80:-9 82:83 83:104 93:-11 126:88
s	37:-8 40:-16 41:-29 69:-9 71:-18 80:-9 82:83 83:104 93:-11 126:88
mm s	41:-8 82:13 83:62 126:-12
s $	41:-11 82:47 83:-15 126:15
the #c	38:17 82:8
#c #n	83:10
mm one	37:-13 83:35
one of	41:-18 82:19 83:25
s becaus	82:14
#d s	40:-22 41:-20 71:-17 82:68 83:33 93:-9 126:67
&#c#d	41:-11 54:26 56:-16 73:-9 81:8 82:24 83:26
bin #c	56:-10 82:22
s of	41:-12 69:-9 80:-8 82:38 83:12 126:59
in s	83:9
#d one	41:-19 82:15 83:27
one $	2:28 5:-8 14:36 17:9 22:69 28:-8 41:-15 78:14 82:32
bin #n	41:-11 56:15 126:34
away all	82:9
scrap all	41:-9 82:21
all #d	82:22
bin==ned	1:-8 22:16 39:-10 41:65 71:-12 73:8 79:25 82:69 126:-20
bin all	82:19
took out	0:15 82:8 96:11
@wire and	9:-8 50:8 82:8 126:22
took #c	45:-11 56:-19 73:-9 82:-14 83:56 126:38
and scrap	21:10 41:9
scrap them	82:17
them $	3:-15 4:45 8:-18 12:18 14:-31 16:63 24:-9 26:10 33:29 36:-11 44:-8 68:10 72:-11 73:9 75:18 76:-33 77:-8 80:10 82:42 91:11 92:-8 97:15 98:8 99:47 100:9 101:8 102:12 117:-17 120:21 121:-10 123:14 126:15
all #n	45:70 46:-18 67:-15 72:10 98:-10 118:43 126:-16
out all	41:-25 82:47
use several	83:51
mm piece	82:8
s for	83:22 126:-9
one on	17:34
s on	83:13
piece for	0:16 22:-8 42:-12 80:12 83:15 84:19
one in	22:-10 37:-12 80:17 82:9 83:16
in piece	83:23 102:10
piece $	0:24 8:38 83:17 126:-8
one out	28:8 73:19 82:-10 83:27
s out	82:-9 83:29
piece out	2:19 82:-11 83:14
we took	0:14 51:12 73:-8 83:23 117:-11 126:-8
&#c#d#n@job	42:17 93:-9
asid job	84:32 116:-10
asid everyth	84:14 126:9
everyth for	24:-13 38:-11 74:12 84:83 85:-8
what it	16:-9 21:9 45:10 46:22 48:11 70:12 104:10 126:-21
plan use	84:16
asid all	84:19
set all	84:8
it asid	84:15
set everyth	24:53 34:-9 84:-22 85:9 126:-12
everyth asid	24:54 34:-9 84:12 85:-18 126:-12
set it	56:29 84:9 99:8 100:18 105:-12
all asid	84:33
keep everyth	38:-9 84:26
everyth that	11:9 12:59 13:27 24:25 26:36 32:-9 34:19 49:-9 84:17 85:24 104:-22 124:18 125:-11 126:-28
that for	84:8
everyth the	5:-18 38:-8 84:41
plan take	5:-9 38:-8 84:30
it that	22:12 115:10
reserv all	84:43 85:9
all that	5:20 10:9 11:29 12:-20 13:-11 24:31 39:-13 46:-8 48:-10 54:-9 66:-10 84:53 85:-14 92:15 93:9 119:-11 124:13 126:39
hold all	24:-12 84:59 85:-24
that the	2:8 5:13 15:-10 41:10 49:-12 53:9 54:12 55:-9 63:-8 66:10 74:9 78:-8 84:25 88:9 92:-31 94:18 102:13 103:10 109:29 115:11 120:19 126:27
reserv what	24:38 27:-27 84:25
put everyth	84:28 85:-11
put it	3:-14 25:8 37:44 38:25 41:9 43:34 51:12 65:21 66:8 68:-13 79:-8 84:14 89:9 96:25 97:8 99:16 101:-10 104:-9 112:10 114:-9 115:12 126:-10
)~",
R"~(put all	84:28 85:-12
@job asid	84:11 109:13
#n asid	24:-19 34:22 37:-14 38:48 109:21 126:-21
that job	13:-13 39:18 49:23 65:-8 66:8 74:11 84:20 95:-20 114:-18 115:46 126:24
that @job	5:20 9:9 24:-11 28:21 39:18 42:11 48:14 84:33 93:-9 114:9 126:-30
all wire	8:16 9:-9 10:-10 19:32 20:36 22:11 25:10 32:8 34:-12 118:-8
wire that	84:12
wire and	8:16 9:-10 10:19 20:-10 21:17 24:-17 84:21 85:34
the piece	8:40 24:-12 40:-11 72:35 76:-8 81:9 82:-14 83:18 85:13
all piece	24:-9 85:21
piece and	5:-9 84:51 85:26
and wire	24:19 85:30 121:8
and piece	8:13 24:-9 85:35
let all	39:-18 85:67
all go	39:-10 84:-11 85:52 126:22
go job	85:10
of everyth	8:22 11:8 12:-8 36:32 102:23
go for	5:10 85:18
let everyth	24:-8 84:13
everyth go	85:10
releas everyth	84:-17 85:29
releas all	24:-42 84:-18 85:53 126:48
free everyth	24:-9 66:-13 84:-10 85:65
everyth set	84:-13 85:15
hold anyth	85:39 126:-24
asid anyth	85:13
not set	85:9 88:12 126:-12
of what	5:16 24:-12 33:10 34:13 42:-10 43:19 84:17 126:19
releas what	24:-18 85:28
sole==	47:-42 50:-10 81:-12 86:96 126:-9
narrow==	39:10 81:-9 86:18 121:16
rat==ing	45:-9 86:34 87:-8
defin bar	86:41 87:-20
sole	47:-42 50:-10 81:-12 86:96 126:-9
#d sole	86:11
sole radius	47:-13 50:-10 81:-11 86:49
narrow	39:10 81:-9 86:18 121:16
narrow ~	81:-9 86:10
~ width	50:-16 86:22
in width	86:8 89:9
rat	16:-9 45:-17 56:14 81:-11 86:74 87:-15
rat #c	81:-11 86:24
bar name	86:13
sole flat	47:-29 86:30
flat sole	47:-35 86:36
x==	40:12 57:-16 80:12 86:30 117:17 126:16
x	40:12 57:-16 80:12 86:30 117:17 126:16
x #d	86:16
rat==ed	45:-8 56:14 81:-9 86:40
rat for	45:-8 56:14 86:26
#d x	86:10
x #n	40:13 80:12 86:11 117:17
new bar	86:30
bar call	87:17 126:18
ladder==	8:21 86:8
ladder	8:21 86:8
^ bar	81:-9 86:22 87:26 126:17
~ is	33:-11 56:-14 122:104 126:-10
drop bar	87:28
remov bar	87:15
we no	58:10 107:13 121:-9 123:35 126:-10
longer have	87:23 101:55 123:-9 126:-11
do no	87:8 107:14
have bar	87:12
i no	101:37
support==	88:8
cradl==ed	23:10 75:-8 88:56 126:22
head==	0:17 9:-9 11:18 16:-9 19:-9 34:-11 36:11 88:133 126:59
noth==ing	3:-14 4:-11 5:34 8:-8 11:-12 15:-13 16:-8 17:-21 25:-25 27:-8 29:-33 30:41 31:15 34:-9 37:-8 38:-11 39:-8 41:8 44:-20 45:-23 46:54 48:-16 49:-9 56:13 58:13 66:-13 70:-11 72:9 76:-17 78:21 82:14 84:-9 85:38 88:92 90:-27 91:23 92:76 94:66 96:-12 97:-12 98:14 107:-20 108:-17 109:-11 112:-8 113:-10 115:27 116:-10 118:10 123:13 126:87
bridge==s	13:-8 88:105
support	88:50
press support	88:8
cradl	13:-14 16:20 23:16 49:-12 66:-9 75:-9 88:184 95:-30 126:16
cradl ~	75:-8 88:8
head	0:17 9:-9 11:18 16:-9 19:-9 34:-11 36:11 88:133 126:59
head clear	88:24 126:12
#n cradl	88:25 126:10
taken out	73:20 76:-12 96:24
#n head	88:15
noth	3:-14 4:-11 5:34 8:-8 11:-12 15:-13 16:-8 17:-21 25:-25 27:-8 29:-33 30:41 31:15 34:-9 37:-8 38:-11 39:-8 41:8 44:-20 45:-23 46:54 48:-16 49:-9 56:13 58:13 66:-13 70:-11 72:9 76:-17 78:21 82:14 84:-9 85:38 88:92 90:-27 91:23 92:76 94:66 96:-12 97:-12 98:14 107:-20 108:-17 109:-11 112:-8 113:-10 115:27 116:-10 118:10 123:13 126:87
bridge	13:-8 88:105
noth bridge	88:77
#n noth	54:10 91:8 92:15 94:-10
@job glue	92:9
glue set	88:29
#n taken	24:20 96:15 126:-9
clear $	88:19 100:12
@job noth	91:12
bridg==ing	88:29 126:-8
the neck	2:15 13:46 16:37 17:-9 23:21 86:27 88:20 95:65 99:-11 100:-9 126:-28
neck of	13:46 88:-8 95:40 126:22
is cradl	88:-11 126:29
bridg	88:29 126:-11
noth bridg	88:26 126:-8
head is	88:47
is clear	88:44
glue is	9:-9 28:-14 126:50
lie==s	0:-13 3:11 8:37 17:-9 22:10 37:-11 43:-8 46:-8 63:32 73:-11 76:42 88:12 90:32 93:62 95:-11 114:12 126:-10
#n lie	4:8 42:-10 73:-10 76:54 93:24
fresh==	2:-12 5:14 7:18 71:-16 72:83 79:51 83:-10 88:78 92:-19 96:15 125:-18 126:-30
fresh	2:-12 5:14 7:18 71:-16 72:83 79:51 83:-10 88:78 92:-19 96:15 125:-18 126:-30
no fresh	88:19
fresh glue	88:25
cradl $	23:17 88:55 95:-11 115:8 126:-12
@job lie	4:13 88:16 93:18
soft==	44:-8 65:10 88:81 126:9
soft	44:-8 65:10 88:81 126:9
cradl==e	16:23 49:-10 88:127 95:-28 115:8
is taken	5:10 24:11 27:39 30:-16 65:15 66:-8
the cradl	16:23 49:-8 88:81 95:-19 115:8
not cradl	23:11 88:16 126:-16
the head	88:15 126:23
head of	88:35 126:-11
^ head	88:18
not clear	88:14 126:-11
touch==es	88:35 92:10 102:9 126:-21
@job touch	88:9
touch $	33:38 34:16 79:-9 88:14 96:9 98:8 120:-15 126:-14
#n touch	88:26 126:-18
nut of	88:18
^ nut	4:-10 13:34 16:-10 17:-10 44:-8 49:-13 77:13 88:108 109:-16 126:-9
in plac	55:26 110:-12
plac $	1:14 19:-9 26:15 116:10 120:22 123:28
glue of	88:32 126:-15
has set	88:37
set $	48:10 56:24 87:8 88:53 99:-10 105:30 126:-26
glue on	88:75 126:-15
dry==	9:19 25:8 28:-14 126:41
dry	9:19 25:8 28:-14 126:41
is dry	9:-9 28:-14 126:49
dry $	28:-14 126:48
is now	11:-9 37:8 44:-10 65:19 76:17 97:18 105:8 108:16 117:12 119:11 122:9 126:-12
cur==ed	88:8
cur	88:8
cur $	88:8
glue in	23:13 37:-9 83:-10 88:15 92:53 97:12 126:-18
fresh $	88:55 125:-18 126:-10
still fresh	88:55 125:-18 126:-10
is soft	88:44
has not	13:9 32:40 34:-13 46:22 63:-13 64:19 66:-10 88:12 108:14 118:-38 119:-8 120:-22 125:13 126:142
^ fresh	71:-13 72:54
glue under	91:-15 97:49
under @job	88:14 91:13 92:-11 97:20
under job	88:48 91:-16 126:33
^ noth	13:-9 25:-22 46:50 48:-8 85:46 88:34 91:16 92:19 94:60 114:11 115:-23 122:16 126:-16
bridge under	88:13
bridge @job	88:14
bridge the	88:16
someth bridge	88:28
body==	88:126 91:-11 108:-11 126:-11
body	88:126 91:-11 108:-11 126:-11
the body	88:9 90:8
body of	88:19
begin at	88:32 106:9
^ body	88:44 108:-9
#n begin	108:53
body under	88:45 91:-10
no body	88:39 91:-9
no clos	113:17
clos body	88:31
body on	88:32 108:-8
#n after	0:67 39:25 46:17 74:-12 82:-20 92:13 94:-23 96:-9 98:31 114:-10 115:49
under it	88:11 91:52 126:-9
is noth	0:16 41:10 126:-16
noth under	91:12 92:-8 122:17 126:34
unsupport==ed	88:19
unsupport	88:19
is unsupport	88:10
unsupport from	88:10
is bare	88:13
bare from	88:12
not bare	88:18 126:-11
not unsupport	88:10
unsupport $	88:10
support==ed	88:42
is support	88:27
support $	88:15
^ whol	6:9 17:21
support to	88:17
to its	88:36 98:13 126:10
along==	2:30 13:43 16:-23 17:41 37:-15 41:-29 42:12 44:-10 46:33 71:-8 72:-8 76:11 82:55 86:27 90:56 99:-10 125:-9 126:-20
along	2:30 13:43 16:-23 17:41 37:-15 41:-29 42:12 44:-10 46:33 71:-8 72:-8 76:11 82:55 86:27 90:56 99:-10 125:-9 126:-20
all along	88:9 91:9
along $	13:43 91:9
hollow==	16:22 41:-11 45:24 75:-8 86:18 87:115 88:72 94:-8 95:8 101:-17 126:20
hollow	16:21 34:-11 41:-11 45:24 48:-10 66:-13 75:-8 86:18 87:114 88:136 94:-11 95:8 101:-18 126:16
is hollow	88:15
hollow from	88:17
a hollow	88:21
hollow under	88:23
void==	2:-10 5:16 8:-9 19:-10 21:24 88:9 120:19
void	2:-10 5:16 8:-9 19:-10 21:24 88:13 120:19
hollow==s	34:-9 48:-8 66:-9 88:64
no hollow	34:-9 48:-8 66:-9 88:66
hollow on	34:-9 88:18
no void	88:8
void in	88:8
longer hollow	88:9
hollow $	87:18 88:12 126:-9
not hollow	88:9
hollow any	48:-9 66:-9 88:41
@job after	13:-11 25:14 49:36 113:-8 115:44 126:-21
wood==	22:22 44:-10 47:10 88:55 91:52 94:16 114:-8
wood	22:22 44:-10 47:10 88:55 91:52 94:16 114:-8
soft wood	88:46 126:14
wood $	88:43 91:40 126:-24
of soft	126:16
hard==	2:8 16:28 25:15 88:11 96:8 105:-18 121:12 126:37
hard	2:8 16:28 25:15 88:11 96:8 105:-18 121:12 126:37
hard wood	88:8
^ wire	8:28 9:80 10:21 11:-16 18:50 19:24 20:44 21:-10 24:-12 33:26 44:-8 50:21 51:15 56:-8 61:9 67:-10 76:-8 80:-14 84:-8 89:18 92:25 107:13 118:-8 120:10 121:-24 122:19 126:-16
wire size	89:25
#d crown	50:13
@wire tang	89:8
in crown	19:11
crown of	8:32 9:-15 19:10 89:12 90:-9 91:39 92:27 108:11
the crown	8:24 16:41 19:21 44:-13 56:13 70:-20 74:34 87:11 89:54 90:-12 91:43 92:36 109:19 126:-30
high and	15:-18 17:49 50:10 98:13
height of	40:-8 89:17 126:23
^ tang	18:10 40:-9 89:39 92:27
deep and	75:14 89:16
mm thick	89:8
thick $	17:17 50:9 89:44 126:-10
barb==s	40:-17 41:8 50:30 51:-8 69:-8 70:-14 89:151 92:18 126:-23
barb	40:-17 41:8 50:41 51:-8 69:-8 70:-15 89:142 92:18 126:-23
the barb	41:10 50:22 70:-11 89:66 92:19 126:-14
barb of	89:33
^ barb	89:15
wire has	32:47 108:16 111:11 126:-33
mm over	50:15
over the	12:-15 14:21 19:-9 27:13 29:46 30:-9 44:12 46:-10 50:26 51:-10 89:17 90:8 116:15 118:-8 123:28 126:-11
)~",
R"~(its barb	89:27
#d over	50:15 89:11
felt==	44:-8 46:-12 76:-9 90:26 126:26
snug==	90:16
^ read	1:16 8:18 12:26 13:47 17:-12 34:29 36:-9 51:-10 68:10 76:-8 90:19 126:-15
felt	44:-8 46:-12 76:-9 90:26 126:26
#n about	2:8 76:-8 90:10 126:-8
snug	90:16
rock from	46:8 90:-12 126:33
gap==s	91:9 92:23 96:-8
gap	0:-13 3:34 8:21 17:-14 30:31 38:-8 42:-8 43:-9 45:-9 46:-11 48:-10 56:32 76:-11 78:-13 88:-11 90:56 91:219 92:44 94:-12 96:-17 98:-9 114:-8 126:29
held nutward	90:44 91:-15
straight==	0:21 3:-8 8:11 9:-11 13:34 23:-8 24:-13 37:-14 39:-11 40:21 41:-12 42:46 43:13 46:-10 51:9 53:40 66:19 73:-15 76:-11 79:-8 81:10 82:-16 88:-12 90:25 93:-13 95:134 96:-9 126:44
laid straight	90:8
laid laid	24:-8 76:-8 90:18
laid across	90:17
straight laid	90:9
rocker laid	90:18
straight $	13:52 42:44 51:11 95:79 118:-11 126:-9
is is	17:-13 26:-13 32:-9 90:61
@job trebl	17:8
^ of	8:-18 9:-14 13:12 16:-12 17:-9 22:61 28:9 34:-8 42:-15 46:-9 47:-10 51:-11 81:8 82:-9 83:-8 89:15 91:18 92:39 93:25 94:19 95:15 98:31 100:12 118:41 126:-12
straight across	42:-13 43:15
edge over	90:-19 126:39
thru==	45:18 72:10 90:-8 93:37 126:-9
sit==s	0:-9 2:9 13:-11 14:31 18:8 26:-14 34:-14 37:9 42:-12 62:18 65:11 76:13 83:-12 90:57 92:25 93:41 97:-10 126:-27
thru	45:18 72:10 90:-8 93:37 126:-9
thru #n	45:18 72:10
is are	90:25
are its	2:-10 81:10
sit	0:-12 2:18 4:-12 5:-11 8:-16 12:22 13:-14 14:26 17:-10 18:31 22:25 26:18 29:-8 30:-14 33:-8 34:-16 37:20 42:-13 44:-21 59:9 62:11 65:9 76:71 83:-18 90:47 91:21 92:35 93:43 94:16 108:-8 126:-43
is sit	14:-8 26:8
is its	34:25 56:10 78:-13 94:31
are is	90:22
stay==s	0:-9 15:-10 25:35 37:-11 38:53 43:-13 46:-11 49:-13 53:25 54:16 65:21 66:-44 70:-12 92:15 94:30 103:22 107:-20 110:-14 111:19 112:10 120:15 126:74
#n -	0:-12 2:-12 5:14 13:53 15:9 16:-22 18:31 24:41 25:23 27:-10 28:33 29:16 30:40 31:38 36:-13 37:-22 39:-31 41:8 42:15 43:-19 44:19 45:-14 46:-36 48:9 49:21 50:25 53:-13 56:12 64:-11 70:-10 71:20 72:-10 78:-22 79:-8 83:-9 84:14 85:14 88:29 91:-13 92:-23 93:-10 94:-13 96:-17 98:-22 99:-12 100:-8 107:-10 108:37 109:9 114:17 115:31 118:-11 119:-9 126:-21
- fret	31:23 94:18
are stay	55:10
stay $	2:13 3:38 43:-12 63:-12 93:-8 111:-10 126:25
it are	75:9 99:11
^ for	1:-9 3:14 4:-10 6:55 7:-8 9:42 10:-12 11:-11 13:-8 14:14 16:-15 17:-8 18:-11 20:-15 21:11 22:-11 23:-8 24:-8 28:-8 29:14 31:-9 32:-15 36:11 37:9 38:-19 46:8 52:16 59:-8 65:16 68:-8 69:29 71:-12 72:26 75:22 79:-13 83:16 85:-16 86:8 91:26 92:20 94:12 95:8 96:15 100:-11 101:-12 104:53 105:55 108:-8 109:-8 110:-9 112:9
#n straight	13:65 95:-53
span $	17:26
feel==s	12:22
^ straight	95:37 126:-8
feel	12:22 44:12 68:-14 92:13 126:25
centr==e	90:11
centerlin==e	90:10
center==	17:-8 90:12 121:9
centrelin==e	90:8
#n edge	3:32
edge rock	46:43 90:-27
rock over	46:20 90:-15
#n along	37:-14 41:-29 46:35 82:54 86:10 90:-15
along the	17:32 42:12 46:47 86:27 90:10 99:-10 126:-9
centr	90:11
along trebl	90:14
centerlin	90:10
center	17:-8 90:12 121:9
line on	90:9
centrelin	90:8
down the	2:29 16:-14 17:18 42:12 46:-8 58:22 78:18 82:8 90:27 98:10 108:-8 109:31 119:8 126:-41
edge along	17:-14 46:15
rock==ing	27:-11 76:-10 90:48 98:12 102:34 126:-11
over slot	76:9
edge down	90:9
tip	51:-8 61:11 68:10 80:8 90:20 126:25
over #n	7:10 17:-9 90:48 96:-8 126:22
over #r	46:13 90:26
edge on	76:-8 126:18
string==s	33:-8 121:36 122:-15 126:10
^ edge	90:40 126:-17
across #n	40:10 90:17
along bass	90:18
string	33:-8 121:36 122:-15 126:11
- #n	37:-10 71:16 72:13
wobble==s	90:76 92:9 126:-39
wobble	90:76 92:9 126:-39
it wobble	90:9
line $	42:-24 43:-9 93:55
steady over	90:9
#n down	2:-8 19:16 37:21 42:-13 45:81 46:-26 48:20 78:-8 93:46 98:56 126:-27
rock==	16:-13 17:77 45:-19 46:-13 47:11 59:16 90:44 94:-18 126:38
@job doe	39:18 48:15 126:-11
not rock	90:19
across the	26:-14 42:17 76:-11 77:23 81:19 101:23
@job flat	17:18
^ trebl	45:-8 90:20
it sit	3:9 18:10 42:-10 90:13 93:8
it read	41:-10 68:17 69:-16 70:10
line #n	3:8
it lie	3:20 15:16 42:18 88:-19
dead==	8:-48 22:96 46:9 49:9 58:38 75:13 95:33 102:18 103:-12
dead	8:-48 22:96 46:9 49:9 58:38 75:13 95:33 102:18 103:-12
wobbl	48:-11 90:52 102:20
held down	90:17 91:-8
down toward	90:12
toward nut	90:31 91:-18
nut end	37:21 71:-10 77:22 88:-13 90:21
solid==	87:-15 90:55 126:13
pivot==s	90:66
solid	87:-15 90:55 126:13
#n solid	90:22
pivot	90:92
pivot on	90:65
@job no	66:17 94:8
no rock	90:54 126:-8
solid on	90:22
#n flat	43:21
stand is	90:9
is stand	90:9
are $	19:10 76:9 82:-9 126:72
littl==e	4:15 5:15 7:9 8:10 9:-10 13:-12 21:10 40:15 41:16 52:19 53:-9 69:10 76:-10 90:18 97:10 98:8 110:-13 111:11 122:11 126:8
littl	4:15 5:15 7:9 8:10 9:-10 13:-12 21:10 40:15 41:16 52:19 53:-9 69:10 76:-10 90:18 97:10 98:8 110:-13 111:11 122:11 126:8
littl is	52:9
rather==	2:11 20:11 41:-12 46:-8 54:-26 55:40 65:13 84:17 116:9 118:13 126:15
rather	2:11 20:11 41:-12 46:-8 54:-26 55:40 65:13 84:17 116:9 118:13 126:15
rock along	90:13
yes==	17:9 24:-9 37:63 91:12 95:9 104:14 125:-10 126:12
yes	17:9 24:-9 37:63 91:12 95:9 104:14 125:-10 126:12
^ yes	37:63 125:-9
it now	15:-9 65:17 84:15 107:17 108:19 109:-14 126:-17
quiet==	29:19 34:13 90:23 103:-8
now it	53:15
quiet	29:19 34:13 90:23 103:-8
is quiet	34:14
quiet $	26:-8 29:19
is rock	76:-8 90:31
no it	61:16
now now	90:15
look==s	3:10 12:23 13:-16 15:20 16:17 17:-8 19:8 34:-9 43:-31 46:-22 56:9 65:11 78:-8 84:9 90:126 95:13 116:-19
appear==s	90:38 126:-16
seem==s	108:22 122:10 123:-10
appear	90:38 126:-16
seem	108:22 122:10 123:-10
#n look	3:21 17:12 90:111 126:-37
#n appear	90:36 126:-16
reflection==	126:17
dip==s	66:9
reflection	126:17
dip	66:9
besid==e	42:-8 93:27
besid	42:-8 93:27
bit still	90:13
still still	13:-14 46:-10 90:24
still littl	90:10
littl still	90:9
still bit	13:-8 90:14
littl bit	21:12
bit $	0:23 44:22 70:12 92:18 109:14 126:-18
@job look	46:8
nutward==	0:-8 2:34 3:-15 16:34 76:40 90:83 91:-25 126:-15
gap==	0:-13 3:34 8:21 17:-14 30:25 38:-8 42:-8 43:-9 45:-8 46:-9 48:-10 56:32 76:-9 78:-13 88:-10 90:57 91:202 92:27 94:-12 96:-9 114:-8 126:32
hold it	3:-10 17:10 38:-9 90:14 91:-11 97:17 126:9
it down	13:24 17:-17 26:11 37:9 38:-12 42:22 68:-11 70:16 89:10 90:14 126:12
down nutward	90:23
nutward is	90:9
is gap	91:9
gap under	90:42 91:36 126:45
under #n	45:-13 52:51 76:-8 88:-22 90:55 91:58 92:100 93:-8 97:25 122:14
bodyward==	16:35 90:47 91:-20
held bodyward	90:35 91:-14
bodyward gap	90:10
gap below	90:25
below slot	90:12
held it	90:8
it nutward	90:8
nutward gap	90:9
below fret	91:48 93:-11 94:-8
toward==s	90:21 91:-13
beneath==	42:-14 52:12 71:-10 78:-8 88:25 90:15 91:47 92:-9 93:48
beneath	42:-14 52:12 71:-10 78:-8 88:25 90:15 91:47 92:-9 93:48
gap beneath	90:13 91:16
beneath fret	91:26
hold toward	90:17 91:-14
end is	44:17
under fret	91:19 92:11 96:30
hold nutward	90:12
no gap	90:19 91:101 92:-15 126:-20
nut is	4:22
feeler==	4:-9 75:30 90:63 93:19
slip==s	91:9 119:15
hold down	90:17
feeler	3:-8 4:-9 75:30 90:63 93:28 126:-9
slip	31:11 43:9 72:11 79:8 91:13 118:-13 120:-11 125:10 126:25
feeler slip	90:9
feeler goe	90:25
goe under	16:29 45:-11 90:16
against==	14:-8 17:19 18:20 27:20 118:10
against	14:-8 17:19 18:20 27:20 118:10
tight==	0:45 18:27 71:11 76:-12 90:8 91:72 126:-54
nutward it	90:9
tight	0:45 18:27 71:11 76:-12 90:8 91:72 126:-54
tight under	90:8
snug at	90:13
tight on	91:40
tight at	90:9
push	2:19 16:11 25:16 45:27 48:35 73:-8 76:31 98:-13 119:10 126:-8
^ push	48:35
^ gap	56:34 91:23
#n when	91:-13 110:-11 112:-9 126:44
when it	26:19 30:-8 46:19 52:11 115:10 119:10
whil it	34:13
#n whil	82:14 90:-10 126:22
beneath the	42:-9 71:-10 88:10 91:20 93:30
whil held	90:9 91:-8
it was	1:-13 13:-8 22:-14 25:35 34:-18 37:8 40:23 41:23 45:-9 49:-10 56:24 68:10 70:-11 71:12 74:10 76:-8 78:8 80:10 88:13 92:-8 103:27 105:19 109:-8 113:18 125:14
was on	118:11 125:8
is along	90:14
was along	90:16 125:-8
it pivot	90:57
crown gap	91:30
none	3:22 30:13 43:-27 46:58 67:8 72:12 80:-14 90:-11 91:56 92:-14 93:-37 94:9 120:13 126:76
gap none	91:8
#n gap	91:-17 92:34
below the	91:22 93:30
crown the	108:12
the of	91:10
#n no	1:-22 38:-32 41:14 66:17 82:18 94:17 126:52
)~",
R"~(light==	3:11 17:23 91:82 93:-8 95:11 99:11 101:32 126:-10
light	3:11 17:23 91:82 93:-8 95:11 99:11 101:32 126:-11
#n light	91:16
light below	91:26
light under	91:28 95:11
no light	91:28
noth beneath	91:22
a gap	0:-8 3:29 8:23 16:11 30:28 91:23 92:-10 126:36
gap $	91:73 126:-15
under its	93:18
its crown	89:10
have no	100:-10 101:38 102:28 120:10 123:13
way==	0:-8 2:24 3:10 5:52 8:-15 9:-27 15:8 17:-11 32:122 43:-9 70:14 76:35 91:28 92:-12 94:10 112:9 115:8 120:-17 126:-20
way	0:-8 2:24 3:10 5:52 8:-15 9:-27 12:-8 15:8 17:-11 32:121 33:-12 43:-9 70:14 76:35 91:28 92:-13 94:10 112:9 115:8 120:-21 123:28 126:-20
the way	8:-10 9:-20 32:74 44:12 70:15 76:36 91:28 104:-10 111:8 112:9 126:-30
way down	91:13
down on	2:-12 16:15 44:-13 54:9 90:-8 91:64
on board	91:20
caus==e	36:11 92:118 106:12 121:16 126:-18
caus	36:11 92:118 106:12 121:16 126:-18
^ caus	92:40
caus $	92:33 121:16
no caus	92:53 126:-14
wrong==	0:-9 2:13 13:-8 17:13 44:-11 60:-9 61:23 67:-13 70:63 73:-8 78:-18 92:123 96:11 105:9 120:13 125:62
wrong	0:-9 2:13 13:-8 17:13 44:-11 60:-9 61:23 67:-13 70:63 73:-8 78:-18 92:123 96:11 105:9 120:13 125:62
found==	0:-17 1:13 2:-9 25:-8 39:19 42:8 49:21 51:-9 64:-9 70:22 78:22 80:11 91:12 92:110 103:11 104:15 116:-11 120:10 121:12 126:-41
found	0:-17 1:13 2:-9 25:-8 39:19 42:8 49:21 51:-9 64:-9 70:22 78:22 80:11 91:12 92:110 103:11 104:15 116:-11 120:10 121:12 126:-41
caus found	92:22
found at	46:26
wrong at	92:24
else==	2:-10 5:13 8:40 9:8 15:-11 31:38 32:-8 38:9 39:10 56:17 60:13 61:-8 66:30 74:11 107:16 109:-8 114:12 121:11 126:-33
else	2:-10 5:13 8:40 9:8 15:-11 31:38 32:-8 38:9 39:10 56:17 60:13 61:-8 66:30 74:11 107:16 109:-8 114:12 121:11 126:-33
noth else	5:14 56:20 92:8 98:11
noth keep	92:19
shallow==	0:-17 4:-9 75:9 78:-12 92:132 126:16
shallow	0:-17 4:-9 75:9 78:-12 92:132 126:16
are shallow	92:14
shallow $	0:-14 78:-9 92:105 126:23
too shallow	0:-11 92:69 126:-8
is shallow	92:57
shallow slot	92:19 126:-13
slot at	44:-11 92:23 108:20
at crown	92:8
chip==s	2:13 10:10 13:-8 38:10 44:12 58:12 92:15
is full	41:-11 92:28 118:-17 126:57
full of	36:12 92:39 126:8
chip	2:13 10:10 13:-8 23:28 38:10 44:12 58:11 92:15 126:-10
chip $	23:28 58:11
dirty==	0:-11 13:-35 30:47 34:44 37:-10 78:-13 92:99 126:28
dirty	0:-11 13:-35 30:47 34:44 37:-10 78:-13 92:99 126:28
is dirty	37:-9 92:68
dirty $	34:45 78:-11 92:94 126:-14
are dirty	92:14
clog==ged	8:-25 9:-13 34:57 92:9
clog	8:-25 9:-13 34:57 92:9
are full	8:8 22:15 92:20 126:-8
dirt==	0:-10 4:-8 37:-16 91:-12 92:90 126:9
dirt	0:-10 4:-8 37:-16 91:-12 92:90 126:9
dirt in	0:-10 4:-8 37:-16 92:62
dust==	17:-8 22:11 23:87 26:-13 78:35 92:34 101:-53 126:54
bottom==s	0:-9 18:72 75:29 92:41 126:21
bottom out	92:69
bottom==ed	75:9 92:53
tang bottom	92:46 126:29
bottom at	92:-27 126:36
bottom of	58:12 75:10 92:12
kink==ed	40:-11 41:30 51:-8 70:8 78:36 92:73 125:13 126:17
kink	40:-11 41:30 51:-8 70:8 78:36 92:73 125:13 126:17
is kink	40:-9 92:59 126:37
kink $	40:-10 41:48 51:-8 92:65
underbent==	92:35
underbent	92:35
is underbent	92:33
underbent $	92:33
are kink	92:12
bent wrong	78:-10 92:46 96:14
wrong $	78:-8 92:29
wire in	8:43 51:14 68:-11 80:10 121:13 126:19
bent $	13:-13 44:54 51:-12 70:16 85:-8 108:13
kink at	92:8
kink in	78:11 125:15 126:-14
#n sit	15:11 90:27 91:17 93:20 126:-8
too wide	18:-11 92:27 126:23
@job sit	4:-11 18:24 76:10 83:-10
sit loos	4:-11 18:24
loos in	4:-11 18:24
in its	79:-12 88:18 96:28
its slot	42:-18 43:18 75:12 78:12 79:-13 92:42 96:37
too loos	18:11
loos $	4:-16 39:44 41:-10 61:19 71:-11 92:93
@job loos	84:-17 85:21
loos slot	92:16
#n loos	39:43 41:-9 126:-8
it bottom	92:29
badly==	41:11 92:22 114:9
badly	41:11 92:22 114:9
bent badly	92:22
found $	46:-8 70:9 92:55
noth was	92:22
was found	42:10 69:9 92:26
noth found	92:23
^ stand	26:11 93:49 126:8
low slot	93:16
#o below	93:26
mm below	93:33
#n below	93:16
#d below	43:-9 93:36
mm low	93:19 126:18
neighbour==s	17:-12 42:-16 58:20 93:76 98:10 126:41
neighbour	17:-12 42:-16 58:20 93:76 98:10 125:9 126:48
neighbour $	93:19 98:30 126:18
in below	93:17
below its	93:31 126:13
its neighbour	17:-12 42:-8 93:58 98:12 126:44
#d low	42:-12 93:46
lower==	3:-13 19:21 42:-21 45:-14 52:11 70:-9 71:-8 76:12 83:-11 93:87 98:10 113:10 126:9
lower	3:-13 19:21 42:-21 45:-14 52:11 70:-9 71:-8 76:12 83:-11 93:87 98:10 113:10 126:9
#d lower	93:19
lower $	93:27 98:13
low by	17:17 90:27 126:-15
sit low	93:8
neighbor==s	93:8
@job #d	77:13
neighbor	93:8
in low	93:16
below $	93:63
^ sit	93:14
sit #d	93:27
mm lower	3:-11 42:-11 93:39
it stand	13:62 92:12 93:14
in lower	19:11 93:8
^ last	0:-11 4:-9 11:26 21:9 43:-15 51:17 55:-9 67:-28 78:-8 90:57 94:76 125:-15 126:64
last fret	4:-14 34:-8 46:48 78:-20 94:68 125:-8 126:36
ever==	4:-8 8:-13 11:-11 19:14 20:30 27:15 31:-21 34:31 41:20 44:-14 48:-25 53:-12 56:9 63:15 64:-20 78:-14 82:26 89:9 92:-12 94:118 110:8 111:22 112:-8 113:25 118:-8 120:8 123:17 126:48
is last	94:17
ther will	94:24
ever	4:-8 8:-13 11:-11 19:14 20:30 27:15 31:-21 34:31 41:20 44:-14 48:-25 53:-12 56:9 63:15 64:-20 78:-14 82:26 89:9 92:-12 94:118 110:8 111:22 112:-8 113:25 118:-8 120:8 123:17 126:48
will ever	41:26 94:28 126:-19
ever be	94:12
last ever	94:11
ever of	94:14
ever $	20:17 53:-12 94:50 113:16
fret ever	94:9
is slot	4:30 32:8
are no	22:24 94:17
no fret	13:-21 78:-20 91:-9 94:42 126:66
fret after	94:49 115:-9
after the	4:9 13:-11 15:22 17:-8 25:20 44:-9 49:-10 66:-9 84:16 108:-10 109:-11 113:-8 115:43 116:14 122:8 126:15
no more	14:-8 39:-8 48:-9 51:-18 53:55 54:-26 58:46 67:22 81:15 87:10 88:-9 94:70 100:-15 101:33 102:8 104:21 109:17 110:16 111:-8 113:-11 115:18 123:49 125:-8 126:-50
more fret	94:46
fret past	94:32
past fret	94:10
more past	94:12
past the	43:18 94:23
beyond==	9:27 20:-11 41:13 49:25 78:16 82:9 91:-12 94:81 126:11
beyond	9:27 20:-11 41:13 49:25 78:16 82:9 91:-12 94:81 126:11
fret beyond	94:44 126:-10
beyond fret	94:15
@job will	39:30 48:11 84:10 94:32 126:-28
will be	4:9 5:-10 9:11 11:13 29:-8 30:-45 44:-8 54:46 55:18 102:40 103:-17 107:-9 111:15 112:55 116:20 118:-19 119:15 120:-12 121:8 126:56
never==	1:15 2:27 3:-11 4:-13 10:-11 13:-13 17:-8 22:23 24:-12 29:-12 36:28 38:17 42:9 49:13 51:19 52:-14 64:-20 67:-10 77:-17 82:16 87:14 94:71 95:-11 97:-15 99:-8 101:8 107:-13 109:18 110:86 111:-16 112:-19 117:-24 120:10 121:14 122:-10 123:32 125:9 126:82
#n will	3:-17 42:-8 51:-16 54:12 79:-9 94:25 103:13 117:-8 118:17 120:-12 126:81
never	1:15 2:27 3:-11 4:-13 10:-11 13:-13 17:-8 22:23 24:-12 29:-12 36:28 38:17 42:9 49:13 51:19 52:-14 64:-20 67:-10 77:-17 82:16 87:14 94:71 95:-11 97:-15 99:-8 101:8 107:-13 109:18 110:86 111:-16 112:-19 117:-24 120:10 121:14 122:-10 123:32 125:9 126:82
will never	22:21 94:17 118:9 120:12 126:-16
be fret	15:9 126:10
beyond #n	94:30 126:-11
after #n	11:-9 22:-11 46:-9 56:41 63:27 92:-8 94:63 103:14 104:23 115:20 126:-40
^ neck	13:-9 95:58
straighten	13:-17 41:9 49:-16 88:-10 95:106 126:45
is straighten	95:21
straighten job	95:15
relief	13:-14 88:-10 95:133 114:-8 126:18
is relief	95:45
hump	13:-12 48:41 49:-8 82:28 88:-14 95:124 126:-26
is hump	95:30
hump $	95:61 126:-20
is straight	95:72 126:-11
#n neck	13:-11 88:-10 95:71 126:26
@job neck	1:10 13:-21 15:-21 17:16 25:15 39:9 40:-10 49:-8 74:-12 78:9 88:43 95:45 96:25 126:38
neck look	16:19 95:13 126:-10
neck is	49:31 95:18
neck straight	13:-10 95:39
hump==ed	13:-9 90:11 95:67
bow==ed	12:22 95:35
back -	95:18
bow	12:22 88:-11 95:106 114:-8 126:-29
- bow	95:18
bow $	12:24 95:43 126:-14
neck hump	95:9
hump==	48:48 82:29 88:-8 90:-9 95:57 126:-26
neck has	12:29 27:-14 88:10 95:40
bow==	95:67 126:-25
back bow	95:37 126:-13
a hump	95:43 126:-19
^ hump	48:48 90:-9 95:23
hump in	95:20
in neck	95:10
relief==	13:-14 88:-10 95:131 114:-8 126:18
relief $	13:-8 95:77
a bit	1:-8 37:13 51:-14 67:14 70:23 90:19 94:9 109:19
has relief	95:18
dish==ed	78:-13 91:-10 95:8 96:-11 111:-11 126:72
dish	78:-13 91:-10 95:8 96:-11 111:-11 126:72
dish $	95:8
look bow	12:24
is bow	95:14
^ relief	95:11
relief in	95:64
straighten==ed	13:-17 41:9 49:-16 88:-10 95:102 126:45
^ straighten	95:25
)~",
R"~(straighten the	95:31 126:8
straighten $	13:-8 49:-13 126:56
been straighten	95:21
neck was	95:12
was straighten	41:10 95:12
it straight	40:10 95:30
reseat==ed	31:-18 45:-9 90:-8 92:-14 96:254 98:-9 120:17 126:17
reseat	1:-11 4:-10 13:-10 16:-9 31:-19 34:-37 44:-24 45:-23 46:-12 49:9 62:16 76:-8 78:-12 85:9 90:-17 92:-19 94:-9 96:374 98:-19 117:15 120:13 126:68
^ reseat	44:-9 96:98 126:-13
reseat job	96:18
pull and	73:12 126:33
and reseat	96:11
reseat fret	96:23
shim==med	0:-14 4:-8 78:-8 92:-11 96:209 98:-18 116:-8 126:-15
shim	0:-15 4:-9 78:-13 90:-9 91:-15 92:-20 96:267 98:-20 116:-8 126:-17
is shim	96:47
shim $	96:48 98:-9
are shim	96:9
and shim	96:15
were pull	73:18 96:12
reseat $	92:-10 96:59
was pull	41:10 109:10 125:10
afresh==	2:13 37:-8 79:27 96:51
afresh	2:13 37:-8 79:27 96:51
#n afresh	96:11
afresh $	96:46
seat #n	76:19 96:29 126:-9
^ shim	96:59
shim and	96:13
shim fret	96:11
&#n#o#t	46:8 116:-8
^ glu	97:95
glu job	97:17
glu the	97:46
glu and	126:26
down fret	45:-8 97:24 98:43
clamp==ed	76:-13 78:-11 83:-12 92:-11 96:-10 97:155 98:-11 126:14
clamp	17:-9 28:10 33:13 39:18 76:-15 78:-19 83:-13 90:-9 91:-15 92:-28 94:-8 96:-18 97:262 98:-17 99:19 126:28
glu down	97:19
and clamp	76:-8 83:-12 96:-8 97:42 126:41
&#n#r@day	16:-9 106:36
^ clamp	97:45 98:-8
clamp and	33:17 97:22
clamp down	97:31 98:-8
are glu	97:22
down tomorrow	102:25 106:-10
clamp $	76:-8 78:-11 92:-8 97:83
is clamp	97:55 126:-8
clamp #n	97:-25 126:43
was glu	126:12
#o was	79:23
clamp yesterday	97:15
levell==ed	4:-18 13:-19 16:-9 17:-15 25:-14 34:50 44:88 45:-15 46:-16 76:-15 78:-13 83:-12 90:-16 92:-10 96:-18 97:-9 98:272 104:10 108:-16 109:-9 114:-8 126:26
^ levell	4:-14 13:-11 17:-14 28:20 34:-13 44:122 65:-9 66:-9 98:81 104:19 108:32 109:-8 126:-37
levell at	98:13 104:11
levell $	7:25 17:14 44:-11 76:-8 98:94 126:12
levell job	13:-9 44:89 98:-44 109:53 126:-11
levell down	83:-9 98:12
down #n	75:16 98:8
level==ed	17:-10 98:80
levell fret	126:35
levell slot	98:22
is levell	98:16
sand==ed	17:-8 27:13 54:10 82:18 93:-13 98:81 126:-14
was sand	98:10
sand down	93:-10 98:23
down @day	98:9
is fil	44:-9 98:21 108:21
fil down	98:25
was fil	98:13
were level	98:19
is level	17:-23 46:12 92:-8 98:43 126:38
^ fil	26:-16 44:8 56:29 98:45 100:-13 104:11 105:21 126:101
sand fret	98:13
#r down	54:20
fil the	2:10 19:11 44:-9 98:18 108:36 109:13
#o down	97:9 98:20
down at	26:14 62:14 65:-10 90:8 126:10
defin machin	99:73 101:-8
setup==	55:17 99:71 100:91 102:-8 104:-24 105:-30 112:-8
minute==s	0:-15 1:-10 2:-11 5:-17 6:-10 13:-8 16:-15 26:-14 28:81 30:-18 31:-12 34:-9 36:8 38:-11 44:-10 51:-11 56:-17 65:-11 71:-13 78:-12 82:24 83:-12 84:17 90:-14 94:-8 97:20 99:50 100:87 102:-12 103:21 104:-10 105:172 106:26 107:-9 108:28 109:50 114:-10 116:-17 120:8 125:-10 126:10
machin ~	59:-12 99:60
setup	55:17 99:71 100:91 102:-8 104:-24 105:-30 112:-8
minute	0:-15 1:-10 2:-11 5:-17 6:-10 13:-8 16:-15 26:-14 28:81 30:-18 31:-12 34:-9 36:8 38:-11 44:-10 51:-11 56:-17 65:-11 71:-13 78:-12 82:24 83:-12 84:17 90:-14 94:-8 97:20 99:50 100:87 102:-12 103:21 104:-10 105:172 106:26 107:-9 108:28 109:50 114:-10 116:-17 120:8 125:-10 126:10
setup minute	100:16
minute #c	70:12
#n name	86:-16 121:22 122:-9
new machin	59:-11 99:107 101:-12 126:11
machin call	99:40 100:-8
a machin	27:33 30:-10 36:18 99:50 100:-16 101:55 104:-17
we now	51:31 53:9 55:-8 122:-11
now have	51:30 100:20 122:-11
i now	100:16
add machin	99:25
chang machin	100:45 101:-15
machin machin	99:-11 100:35 101:-9
#n machin	99:-10
sander setup	100:32
minute #n	99:-9 100:15
#c sander	100:34
#c press	100:19
#n sander	26:-9 100:96 102:-11 103:-9 106:-9 107:-9 126:87
#c belt	100:16
are enough	100:37
enough bench	100:10
enough sander	100:13
enough press	100:14
min==	56:-11 99:15 100:28 105:83 106:10 121:14 126:-20
set up	1:-12 4:10 26:37 28:-19 40:-8 50:11 60:9 62:19 99:56 100:43 101:13 103:-16 105:-32 106:-18 126:25
press take	16:-9 28:42 33:-10 100:22
take #c	61:15 70:16 100:12 122:16 126:-9
min	56:-11 99:15 100:28 105:83 106:10 121:14 126:-20
#c min	100:16
min $	100:27 105:80 106:10 126:-18
up sander	107:15
sander take	26:40 28:-24 100:17 105:-9 126:-8
#n minute	0:-14 1:-10 2:-8 5:-11 16:-12 22:8 28:-31 30:-9 31:-8 34:-8 36:13 38:-11 42:8 51:-10 56:-14 65:-11 67:8 71:-12 78:-12 82:25 83:-12 84:17 90:-14 94:-8 97:21 99:57 100:76 102:-12 103:22 105:144 106:27 107:-8 108:33 109:54 114:-9 116:-16 120:9 125:-9 126:21
minute $	99:34 100:64 105:84 109:-11 126:19
#n min	56:-10 99:15 100:13 105:85 106:11 126:-19
set -	24:-8 36:18 84:18 100:26
- up	27:10 100:27
setup for	100:12
^ sander	23:40 26:8 27:29 29:-9 100:32 101:15 102:88 103:62 104:-8 105:-12 106:37 107:-14 126:-32
minute to	99:20 100:18
to set	26:39 28:-19 99:47 100:9 105:-18
min to	99:18
#c minute	105:16
need no	63:11 100:65 103:-13 104:-10
no set	100:34 103:-8
^ belt	102:29 103:13
no setup	99:22 100:30 104:-23
setup $	55:17 99:40 112:-8
press need	16:19 100:26 103:-8
sander ~	100:14
call press	100:25
renam press	100:15
call belt	100:43 102:-11
call bench	100:18 101:9
bench to	100:11
drop machin	101:39
no sander	101:10 102:32
sander any	101:22
no bench	101:11 102:15
bench any	66:25
no press	101:10 102:64 126:-16
press any	101:34 107:16 126:-14
no belt	101:10 102:10
remov machin	26:-10 101:62 104:-13
number==	1:-14 2:-19 3:10 4:-20 5:-25 7:-8 10:-19 11:-15 12:-28 13:33 14:20 15:24 17:-29 18:-10 20:-9 21:-11 22:-24 25:28 26:-19 27:-10 28:-11 29:-9 30:-23 31:-17 32:-12 33:-14 34:-20 36:-13 37:50 38:20 39:12 40:-10 41:16 42:-21 43:10 46:37 47:-10 49:31 51:-10 53:-9 54:-11 55:-10 56:-24 58:17 59:22 60:25 61:19 62:-8 63:-10 65:40 66:31 70:-8 71:53 72:-17 73:-11 74:56 76:-18 78:32 82:-36 84:12 85:17 88:-14 92:-14 93:14 94:-10 96:10 97:-14 100:16 101:-17 102:83 103:80 105:-27 106:-16 107:43 108:10 109:-23 111:-12 112:-16 113:-9 114:10 116:-15 117:13 118:10 119:19 120:38 121:-11 123:-8 125:-9
machin down	102:21
sander number	102:55 103:15 107:-8
#n number	74:13 103:8
sander until	102:18
number #c	59:19 60:21 61:11 102:-12 103:47 126:-8
begin tomorrow	29:24 30:-15
press number	102:32 126:-8
begin #n	88:11
bench number	102:23 103:53
number is	102:30 103:-18
bench #n	62:-15 65:-15 100:-8 102:70 103:12 126:21
servic from	102:10
down from	112:19
to this	2:13 20:13 36:12 63:31 64:-14 111:-11 116:11 126:-19
down until	126:22
down sinc	102:24 109:-10
sinc yesterday	51:14 67:-11 102:11 108:17
#c are	60:-18 61:20 103:14
are out	26:13 44:20 109:14 126:-9
sinc #n	20:38 22:8 38:12 44:19 102:11 108:18 126:-11
sinc this	99:9 103:25
#n till	38:20 44:-11 53:55 54:9 70:-10 110:41 112:-29 115:25 126:-37
#c brok	102:14
brok tomorrow	102:13
press #n	34:96 76:-9 90:-8 102:9 126:-34
#n brok	41:12 102:15
brok down	126:10
brok $	40:-8 126:13
going==	1:11 3:8 4:-11 8:-10 9:48 11:-36 12:-23 13:-8 15:-8 28:15 30:84 37:-36 38:14 39:16 42:-9 44:-22 49:23 54:10 65:-12 66:-13 72:-16 76:-8 82:8 84:26 89:-8 91:33 94:-15 102:-12 103:53 108:69 109:27 110:-13 111:-8 113:9 119:30 126:20
going	1:11 3:8 4:-11 8:-13 9:45 11:-36 12:-23 13:-8 15:-8 20:26 28:15 30:83 37:-36 38:14 39:16 42:-9 44:-22 49:23 54:10 65:-12 66:-13 72:-16 76:-9 82:8 84:24 89:-8 91:33 94:-15 102:-12 103:53 108:69 109:27 110:-13 111:-8 113:8 119:30 126:19
is going	28:15 84:27 119:33 126:-21
going to	1:13 3:9 4:-9 9:36 11:-32 12:-22 28:18 30:80 34:-11 37:-36 38:16 39:17 40:-8 42:-9 49:24 54:12 65:-8 66:-12 72:-16 82:9 84:14 89:-8 94:-15 108:8 109:-11 113:9 119:31 126:65
be out	48:42 102:-27 103:30 111:21 126:-21
sander #n	26:25 100:-27 102:92 103:66 106:-13 107:-14 126:-20
number will	102:23
order from	12:47 32:-21 33:15 51:-13 101:-9 117:22 118:-51 119:22 120:16 121:89 122:-10 123:65 126:-26
&#n#t@day	110:-8
#c will	102:-26 103:31
all day	11:-9 30:9 90:23 102:14 126:29
day becaus	102:9
&#c#o	118:9
down all	102:13
all this	87:8
number doe	19:9
all @day	53:9
press all	102:12
back yesterday	102:29 126:-12
back this	102:27 103:-21
be back	102:10 103:-14 126:59
take bench	104:9 106:24
from yesterday	112:10
#t becaus	110:22 112:-21
servic for	87:15 102:-15 103:-9 126:18
take press	104:10
servic next	102:18
)~",
R"~(not use	5:8 37:-28 38:-8 83:-28 102:57 105:17 111:-18 126:56
number $	13:-53 25:11 102:8 122:11 126:91
till #n	15:-11 29:-20 53:20 54:-10 55:76 111:-13 112:69 113:-8 126:35
machin up	26:-8 99:-8 101:-13 103:52
up number	13:54
are up	17:11 25:-9 46:25 85:17 103:12
run again	102:-10 103:57
#n work	59:-11 62:19 103:18
work again	103:57
press work	26:18 103:15
sander work	26:17 103:19
#n back	2:-8 26:40 38:42 39:66 66:11 73:21 107:-8 114:9 120:22 126:-67
back into	66:18 85:11 103:21 126:-13
into servic	103:21
back servic	103:14
can use	1:9 102:13 103:52 106:-9
number again	103:8
sander again	103:13
will stay	26:-8 94:26 103:34 126:-19
stay servic	102:-10 103:37
#n stay	38:47 46:49 65:-9 66:-44 92:22 102:-8 103:15 107:-19 126:67
stay in	3:22 26:-11 46:22 49:-10 91:-12 103:26 120:16 126:-24
bench will	15:11 103:9
sander will	102:-19 126:37
not be	24:-10 38:-10 39:58 49:19 54:-28 58:35 63:24 64:-12 85:17 87:16 89:-12 94:13 101:14 103:26 107:23 111:49 112:-17 113:32 119:18 126:-115
^ stag	28:20 101:-10 104:50 105:35
stag machin	104:38
polish stag	105:10
pull need	104:9
level need	104:14
cut need	104:37
slot need	4:-11 104:25 105:15
usual==	9:8 29:-11 30:-8 48:-8 50:12 53:-20 54:-17 55:32 101:-8 103:-12 104:66 108:-9 110:-21 111:-18 112:61 113:33 114:92 116:8 126:18
board need	28:22
need its	85:19
usual	9:8 29:-11 30:-8 48:-8 50:12 53:-20 54:-17 55:32 101:-8 103:-12 104:66 108:-9 110:-21 111:-18 112:61 113:33 114:92 116:8 126:18
its usual	103:-8 104:44
usual machin	103:-9 104:59
usually==	5:-17 28:67 33:19 36:-9 92:8 104:38 126:-14
need what	104:10
usually	5:-17 28:67 33:19 36:-9 92:8 104:38 126:-14
it usually	104:40
usually need	104:40
stag minute	28:-9 105:37
minute stag	105:11
stag press	109:12
stag dress	104:17
dress stag	105:10
press stag	104:23 105:22
dress==ing	4:-8 13:-9 26:-9 28:35 33:-14 44:47 49:-8 56:46 94:-8 104:49 105:24 108:70 109:39 126:-26
22==	105:14
22	105:14
board take	39:9 105:17
take an	105:23
for 22	105:10
22 fret	105:11
quarter==	37:8 55:10 71:13 79:25 96:-10 100:37 105:11 109:24 126:-9
take us	28:35 33:-15 105:23
us a	50:-11 51:17 52:12 57:10 99:9 110:-8 112:13
quarter	37:8 55:10 71:13 79:25 96:-10 100:37 105:17 109:24 126:-9
a quarter	55:13 71:13 79:26 96:-10 100:38 105:11 108:15
quarter of	71:13 79:19 96:-10 100:40 105:18 108:15
of an	71:13 79:19 96:-10 100:40 105:17 108:15
min for	105:10
cut take	28:17
seat take	28:22 33:-12 100:-10 104:16 105:41 126:-15
half==	9:-11 10:-9 13:-8 16:-8 22:31 24:-9 37:8 38:-22 44:11 45:10 53:29 54:-23 55:23 65:-11 71:-16 72:-13 78:36 79:8 83:27 90:-11 94:-11 97:10 99:17 100:-10 102:-13 103:34 105:38 106:13 108:48 109:57 110:31 111:-10 112:18 116:-10 117:-11 118:10 126:-21
hour and	45:11 105:17 109:8
and a	0:-9 1:8 45:11 46:11 89:8 97:8 98:9 100:-8 102:17 105:21
half	9:-11 10:-9 13:-8 16:-8 22:31 24:-9 37:8 38:-22 44:11 45:10 53:29 54:-23 55:23 65:-11 71:-16 72:-13 78:36 79:8 83:27 90:-11 94:-11 97:10 99:17 100:-10 102:-13 103:34 105:38 106:13 108:48 109:57 110:31 111:-10 112:18 116:-10 117:-11 118:10 126:-21
a half	45:12 105:21
half for	105:10
minute for	28:60 105:27
^ file	104:15
report==ed	8:-8 11:-9 12:-8 28:-12 30:-12 34:64 62:-8 101:-8 105:131 125:22
take what	34:-12 105:42
report	3:-12 5:-9 8:-11 9:-8 11:20 12:-15 13:32 15:-8 16:-36 19:-11 20:-10 21:9 23:-18 24:-9 26:-11 27:-8 28:17 29:-8 30:-22 33:-23 34:126 36:35 43:8 45:14 58:-9 59:10 62:44 63:-23 64:-10 65:-10 76:9 101:-11 104:-8 105:163 111:-21 125:55 126:-31
was report	105:78 125:-28
report $	34:31 36:9 62:-8 105:57 125:33
true end	109:8
take as	105:13
as long	105:13
long as	3:-8 42:19 105:13
been report	34:-8 105:26
^ polish	13:-14 28:14 44:96 100:-8 104:63 108:17 109:-10 126:-13
polish take	105:13
book belt	106:8
book me	106:20
now for	100:-12 105:-10 106:34
for an	1:18 18:-9 31:27 51:13 105:-11 106:27
#c hour	106:14
#n #o	0:11 3:11 13:-24 30:60 37:35 42:14 91:8 94:-13 126:-21
sander this	27:-22 106:28 107:17
me bench	106:8
#n tonight	54:-15 126:39
book @job	106:8
@job sander	2:10 107:52
morn for	106:26
@person will	29:-10 38:10 65:18 112:50 117:-17 126:-13
will take	37:84 65:65 66:-8 84:11 119:12 125:-16 126:-72
@person want	2:17 4:10 12:8 22:23 38:24 42:10 44:-8 55:15 63:-18 65:-9 99:8 105:8 107:16 109:10 110:-9 111:-17 112:-22 126:29
mine for	70:14
book the	26:-11 102:22 106:-10 107:-41 126:94
bench next	59:22
me for	9:12 38:11 126:-10
today for	106:14
me @day	34:45 126:-8
afternoon for	27:-8 106:19
#n we	6:13 42:17 48:11 116:15
#n i	0:27 1:60 16:-10 17:-10 37:9 38:-16 41:11 46:10 65:-20 71:11 73:42 74:-9 78:-8 83:9 97:8 98:10 115:-10 126:10
book==ing	12:-9 14:-9 26:20 27:124 39:-11 41:-10 49:-22 63:-11 102:-12 106:-11 107:227 109:-8 111:-14 120:-8 126:70
cancel book	126:43
book #n	27:-11 49:-9 51:9 107:67 126:86
cancel my	107:10
my book	107:14
book number	107:25
@person the	29:-10 106:27 110:8 111:17
@person #o	43:15
my press	107:25
cancel it	49:32 107:32 125:-8 126:-13
it book	27:14
cancel that	107:43 120:23 125:-17 126:-17
cancel this	107:15
this $	0:11 107:14
we not	2:9 107:16 123:19 126:-19
i not	24:22
free up	30:-12 60:-18 61:33 84:-24 85:27 107:48 126:13
up belt	30:-9 107:25
give back	84:-19 85:37 107:57
back bench	62:16 64:-8 107:16
unbook==	26:-8 55:20 106:-18 107:158 126:-10
unbook	26:-8 55:20 106:-18 107:158 126:-10
^ unbook	26:-8 55:20 106:-18 107:158 126:-10
unbook sander	107:24
unbook belt	107:10
^ start	10:-9 13:-10 44:-26 47:10 51:-11 53:15 108:137 115:17 121:19 126:-25
true job	108:14
@person at	3:-8 34:17 38:11 44:-10 111:15
morn at	30:-13 38:11 41:12 42:12 51:-11 71:8 75:8 102:-9 103:25 117:11
start job	11:-9 13:-9 15:-32 30:68 34:48 108:32 126:-36
start the	30:10 108:13
nip at	104:8
start==ing	44:-11 53:15 108:106 109:-8 112:19 126:-33
am begin	108:20
doing the	10:13 19:8 28:10 30:-13 33:15 49:33 65:31 113:-8 126:-32
are start	108:14
am start	108:61 126:-19
start pull	108:-34 126:66
with true	109:8
start to	28:22 108:63 126:-20
crown on	19:9 28:8 89:9 104:11 109:20
the dress	56:23 105:9 108:-10 109:18 126:-10
dress of	108:-10 109:12 126:25
bend on	109:38
start true	108:16 126:-8
began==	20:14 21:8 73:-12 108:83 109:-10 116:-9 126:-12
began	20:14 21:8 73:-12 108:83 109:-10 116:-9 126:-12
has start	44:-10 108:28
end the	42:12 44:18
tang for	44:14 85:-8 106:-8 108:26 109:21
is with	15:29 34:19
@job now	66:-11 71:-8 83:10 108:23 115:10
@person went	62:-8 126:15
went on	29:-19 30:-8 34:79 108:22
been with	126:35
#n now	1:-11 2:-8 3:-10 17:-10 30:46 37:37 39:9 40:14 42:-14 43:-11 44:-18 53:24 61:11 66:24 71:-14 76:83 78:-16 79:9 83:11 86:12 88:15 96:-14 100:39 106:13 108:18 109:-9 110:-17 115:9 119:-8 126:-57
been pull	13:40 126:-20
start work	59:14
am now	108:22 109:-9
now sinc	60:11
am going	37:-12 38:27 65:14 72:-15 108:-9 109:32 126:18
are going	11:-12 12:-21 30:49 108:14
nip==	0:16 6:20 104:44 105:9 108:8 126:25
nip the	4:-9 6:17 28:19 44:-8 108:35
^ go	12:13 34:12 37:19 38:-12 39:-13 58:11 95:-17 105:9 125:41 126:21
carri==ed	19:-8 22:-9 33:45 76:11 98:11 100:10 104:12 108:9
carri	19:-8 22:-9 33:45 76:11 98:11 100:10 104:12 108:9
carri on	108:10
carry==ing	108:13
carry	48:9 58:9 65:-12 108:17 126:9
carry on	108:19
resum==e	21:27 108:54
resum	13:-13 21:27 44:-19 108:133 126:-11
^ resum	13:-13 44:-19 108:133
resum @job	108:33
resum job	108:23
^ going	44:-8 91:35 108:28
going on	30:13 34:10 40:10 44:-9 108:49 126:-13
resum==ing	44:-9 108:60
carry==	48:9 58:9 65:-12 126:12
continu==ing	108:17
continu	108:17
resum pull	108:15
is being	12:-18 13:-8 24:29 44:-15 66:-8 85:10 104:12 108:86 114:-8
being pull	108:37
being bent	108:26
pull sinc	108:15
stop stag	109:18
paus==ing	4:-16 13:-12 44:-15 108:-11 109:137
paus	4:-16 13:-13 33:-9 44:-20 108:-20 109:219 123:29 126:-18
have paus	109:19
paus $	109:65 126:-10
stop work	29:-9 63:28 102:20 109:42 112:-17 126:12
are stop	109:27
work this	110:-34 111:-23 112:34 126:38
paus==ed	33:-8 109:16 123:29
am paus	109:21
stop==ping	5:-8 44:-9 109:38 126:20
am stop	109:21
stop $	108:-8 109:34
paus==e	109:65 126:-9
are tak	109:17
tak a	109:46 111:8 126:-10
a paus	109:19
break==	28:21 53:36 84:18 103:11 108:-9 109:93 110:11 126:-21
)~",
R"~(break	28:21 31:9 53:36 59:-8 84:17 103:10 108:-13 109:161 110:11 111:-11 126:-23
a break	53:16 109:34
break $	53:19 84:18 109:67 110:12 126:-17
hav==ing	3:13 37:9 38:-11 42:-11 44:19 48:9 63:24 72:11 79:10 109:10 126:-9
hav	3:13 37:9 38:-11 42:-11 44:19 48:9 63:24 72:11 79:10 109:10 126:-9
^ hav	109:9
hav a	109:11
am tak	65:27 111:11
am hav	37:12 38:-11
a rest	13:-9 65:-11 70:11 109:33 126:59
rest $	2:8 13:-9 65:-11 93:21 109:32 120:10 126:56
have stop	109:36
stop pull	109:9
paus pull	109:16
of board	104:8 109:9
tang on	28:21 89:22 108:12
stop on	40:-9 41:14 78:19 82:11 86:10
for now	24:-13 38:37 39:40 44:-14 84:-9 109:80 126:15
now at	43:10 108:12
stop dress	109:27
am out	109:23 126:-9
am off	108:-17 111:69 112:-23 126:43
off for	13:11 24:-17 42:19 51:-19 67:-8 85:21 102:15 109:18 110:33 117:40 126:-13
lunch==	13:-8 15:-10 29:18 30:-9 38:18 45:-8 53:20 61:9 65:-12 71:9 72:-19 92:11 95:-20 103:10 109:79 115:-26 118:9 120:20 126:101
out to	48:11 77:19 109:15 117:10
lunch	13:-8 15:-10 29:18 30:-9 38:18 45:-8 53:20 61:9 65:-12 71:9 72:-19 92:11 95:-20 103:10 109:79 115:-26 118:9 120:20 126:101
to lunch	0:9 38:20 109:12 126:-21
lunch $	38:27 45:-8 92:16 95:-18 109:51 115:-17 116:9 118:10 120:20 126:52
for lunch	88:9 109:36 126:27
are off	126:9
coffe==e	0:15 9:11 13:22 30:-32 36:-10 39:13 71:-10 93:10 108:-14 116:16 125:13 126:63
coffe	0:15 9:11 13:22 30:-32 36:-10 39:13 71:-10 93:10 108:-14 116:16 125:13 126:63
^ coffe	109:12
^ break	28:22 109:36
^ paus	4:-16 13:-13 44:-12 109:127
^ lunch	109:42 126:-14
lunch break	53:21 103:11 109:17 126:-8
the day	9:-14 10:-10 14:-15 29:33 32:41 33:22 34:16 48:9 54:-10 55:10 107:-10 109:21 118:-23 119:-15 126:14
call==ing	109:18
am call	109:9
it a	53:14 103:9 109:66 126:-22
home==	0:-15 1:78 13:-10 16:-13 17:9 37:-10 44:41 45:23 49:10 63:-9 64:11 92:8 95:-23 96:20 108:-9 109:45 110:-9 111:41 112:-12
home	0:-15 1:78 13:-10 16:-13 17:9 37:-10 44:41 45:23 49:10 63:-9 64:11 92:8 95:-23 96:20 108:-9 109:45 110:-9 111:41 112:-12
home $	37:-8 92:9 109:49 111:-13
going home	109:41 126:-11
own==	0:15 2:-17 5:12 8:38 9:-14 10:-10 13:-8 16:19 17:-15 26:14 29:-38 30:-14 33:-9 34:47 44:-9 60:13 61:-13 64:14 68:10 73:12 76:8 94:14 99:38 100:15 102:-9 110:69 116:9 126:-21
own	0:15 2:-17 5:12 8:38 9:-14 10:-10 13:-8 16:19 17:-16 26:14 29:-38 30:-14 33:-9 34:47 44:-9 48:-8 60:13 61:-13 64:14 66:10 68:10 73:12 76:8 94:13 99:37 100:15 102:-9 110:69 116:9 126:-21
^ own	29:-27 110:59
own hour	29:-36 110:70
&#r@day@person	29:-10 110:53 111:-21
work @day	29:23 34:-12 63:-12 110:45 111:-16 113:-12 126:49
here @day	110:27 112:-9 118:-9 119:10
@day @person	29:-15 53:-8 110:68 111:-21 112:42 126:-13
work from	112:25
work the	14:-14 110:35
work shop	29:-11 110:18
whenever==	11:-10 29:-26 58:18 104:17 110:69 126:-19
whenever	11:-10 29:-26 58:18 104:17 110:69 126:-19
work whenever	29:-25 110:67 126:-18
whenever the	29:-20 110:44 126:-10
whenever we	110:25
^ day	8:-8 9:36 29:-9 33:-8 109:-9 111:50 112:24 126:-8
sick==	41:9 62:-13 66:14 84:10 98:11 103:10 111:46 123:8 126:-22
sick	41:9 62:-13 66:14 84:10 98:11 103:10 111:46 123:8 126:-22
out from	102:13 111:27
away on	110:-8 111:21
me off	111:30
not here	32:22 110:-11 111:43 126:-23
off @day	111:34
me out	0:23 8:19 73:-15 111:46
not come	32:-12 51:-16 74:-34 108:16 110:34 111:48 112:-17 115:8 118:-15 119:-10 120:59 126:39
be here	9:-12 29:71 30:-8 32:47 54:12 111:16 117:10 118:-11 119:24 126:-41
tomorrow morn	11:28 27:19 30:43 103:-9 106:30 111:25 112:-9 126:-19
work today	26:13 29:16 112:10
come from	1:-39 2:-9 5:21 19:59 20:-8 32:-10 33:12 34:52 51:11 74:-29 92:16 117:-10 118:-15 120:15 126:29
i will	1:-9 4:8 5:-10 7:16 9:-9 17:-8 29:-15 30:-27 34:-10 37:76 39:15 41:-16 44:-14 65:99 66:-11 78:-8 85:-9 86:-13 88:9 94:-26 102:-9 107:25 108:-42 111:71 112:17 113:-18 115:-9 116:16 125:-20 126:119
morn off	111:14
@person need	19:16 62:-12 88:17 104:-27 111:8 115:10 126:41
even off	111:13
off becaus	111:10 120:10
need today	111:8
week off	126:9
take @day	110:-17 111:19
@day afternoon	27:29 30:10 53:-37 54:41 55:22 102:29 111:21 113:-10 126:-20
day on	12:14 46:10 112:26
today hour	112:11
start==s	44:-8 59:45 84:18 88:25 110:22 112:9 126:-11
start late	112:26 126:-14
yesterday on	83:12
from at	33:8
&#r#t@person	110:-11 112:22
in only	112:12
i come	112:25
come late	48:18
@person goe	53:-10 62:-12 63:-11 126:69
leave==s	10:25 53:-12 62:-9 63:60 64:-16 110:30 112:38 126:-17
leave	10:25 53:-12 62:-9 63:60 64:-16 110:30 112:38 126:-17
@person leave	63:17 64:-11 110:-17 112:69 126:-12
till yesterday	112:19
here at	13:27 112:8
leave at	10:26 110:25 111:-9 112:21 126:-9
leav==e	1:-13 3:31 9:13 13:15 17:-9 20:-8 27:-13 34:-14 37:-12 41:-11 42:-15 44:-14 49:-12 61:-24 65:35 66:26 82:-9 97:9 98:-20 101:-10 106:-11 107:-11 108:-8 109:65 111:98 112:25 114:-15 115:16 116:10 125:-8 126:131
leav	1:-14 3:78 9:13 13:13 15:-11 16:-8 17:-11 20:-8 27:-14 29:-9 30:-11 32:-8 34:-15 37:-13 41:-11 42:-16 44:-17 49:-13 61:-24 62:-8 63:29 65:32 66:25 82:-9 97:8 98:-23 101:-12 102:13 106:-13 107:-12 108:-14 109:90 110:-10 111:77 112:34 114:-15 115:14 116:9 125:-8 126:131
i leav	3:14 34:-8 109:18 112:10 126:20
go early	112:9
on till	55:18
leav on	111:46 126:-27
am in	109:-16 111:-10 112:31 126:20
work only	110:-14 112:18
am here	111:-11 112:29
here tomorrow	29:18 33:-8 111:9 112:8 119:30
be #n	56:25 67:-14 77:-8 126:54
#r @person	112:17
here from	51:-48 112:12 118:56
#o @person	112:12
today as	112:10
as usual	54:-14 55:-16 108:-8 111:-17 112:52 113:42 114:70 126:26
usual $	104:8 110:-20 111:-16 112:75 113:21 114:45
#r as	112:15
@day as	53:-18 110:-8 111:37 112:21 113:16
here #r	112:9
today after	112:9 113:18 126:-10
work tomorrow	14:-15 29:33 30:-9 112:18 126:-10
tomorrow as	54:-8 112:14 113:8
december as	119:8
am not	5:11 46:21 78:21 83:-18 109:-28 111:-67 112:15 126:74
not off	110:-11 111:-90 112:46 126:76
off next	111:8 126:11
reopen==	29:-11 30:-9 48:-8 54:-11 111:-13 112:-13 113:196 126:-14
reopen	29:-11 30:-9 48:-8 54:-11 111:-13 112:-13 113:196 126:-14
^ reopen	113:110 126:-13
reopen day	113:22
clos==ing	1:32 20:10 29:44 48:-14 53:-21 54:13 55:8 111:-8 113:80 119:-12 126:42
not clos	12:32 53:-10 54:-82 113:113 126:16
clos tomorrow	30:-10 54:26 113:20 126:54
tomorrow any	107:13
are not	13:-10 42:12 49:44 51:8 53:-10 54:-26 72:-13 113:13 114:18 126:62
clos #r	113:19 126:-10
not shut	53:-14 54:-41 55:30 82:18 113:80 126:-31
shut next	54:13
@day any	53:25 54:-13 63:-12 107:10 110:28 111:-12 112:15 113:-8 126:-13
december any	111:-9 112:13 113:11
be shut	113:28 126:-11
at all	0:22 3:-12 8:20 9:-21 10:28 11:9 13:20 14:16 16:-10 17:19 19:-9 23:-10 25:-38 26:-14 27:12 29:27 34:11 36:11 38:-15 46:-17 48:11 53:25 54:-15 67:10 85:-10 90:15 91:24 92:10 108:-8 111:23 112:-13 113:17 114:14 126:-22
shop tomorrow	54:15 113:17 126:-13
tomorrow after	29:-12 107:39 113:15 126:-21
#o after	112:26 113:-17
#o as	55:-8 94:8 113:16
@day again	53:-8 64:-8 110:10 113:17
work day	113:36
day after	113:23 116:10 126:-8
day again	113:66 126:-8
^ tomorrow	27:-14 29:-9 30:34 106:18 112:11 113:25
tomorrow is	113:38
open day	113:16
a open	113:9
reopen @day	113:25 126:-8
reopen on	112:-11 113:48
reopen next	113:33
reopen the	113:22
priority==	13:-8 36:9 38:-9 49:-9 65:-12 114:250 126:-25
priority	13:-8 36:9 38:-9 49:-9 65:-12 114:250 126:-25
^ priority	114:52
priority job	114:15
priority $	36:10 114:42
has priority	114:8
priority #n	65:-9 114:109 126:-11
priority of	114:40 126:-9
very==	16:10 84:9 88:13 94:19 114:26
very	16:10 84:9 88:13 94:19 114:26
is very	114:27
@job come	2:-14 4:10 5:13 42:8 43:10 49:-9 74:12 114:9 115:31
come first	114:22
#n come	1:-22 5:22 32:47 34:44 42:20 71:20 92:16 117:22 118:-31 120:-11 126:-53
@job first	13:-9 114:29 115:25
#n first	114:28 115:12
important==	114:46
important	114:46
very important	114:20
important $	114:46
is more	9:-16 32:52 114:19
more important	114:19
rush==	13:-25 15:-10 19:-10 39:10 74:15 88:-11 114:146 126:-12
rush	13:-25 15:-10 19:-10 39:10 74:15 88:-11 114:146 126:-12
a rush	19:-9 74:17 114:11
rush $	39:10
rush job	114:44
)~",
R"~(top==	12:51 37:-8 38:8 42:12 48:-9 98:50 114:77
top	12:51 17:-8 19:16 37:-8 38:8 42:12 45:-8 48:-10 74:12 76:-11 98:70 105:8 114:77 118:-13
on top	12:51 48:-9 114:56
top $	12:39 48:-9 114:56
put job	65:13 114:47
put @job	48:14 115:10
a priority	114:22
hurry==	13:-17 114:118 118:18 122:13 126:-19
hurry	13:-17 114:118 118:18 122:13 126:-19
a hurry	114:31
hurry $	114:36 122:18
can wait	31:-9 36:-10 44:-11 48:9 109:12 114:121 115:-13 126:35
not urgent	114:36 126:-9
no hurry	13:-12 114:88 126:-8
hurry about	114:14
hurry with	13:-9 114:36
urgent any	114:23
@job as	17:11 44:-17 108:48 114:21 126:-12
is as	46:20 126:44
other==	0:13 3:26 5:-15 28:-11 30:24 37:20 42:10 44:-9 49:-8 51:-13 59:-10 74:9 88:-8 91:-15 99:-14 100:60 101:-12 105:-9 106:-11 115:35 118:38 125:39 126:30
^ after	15:-10 25:17 58:10 66:12 72:-16 95:9 103:14 106:-14 109:-10 115:44 116:13 126:52
after job	65:11 115:61 126:-9
more ~	115:10
other	3:21 5:-17 14:32 16:-9 17:-22 28:-12 30:19 37:12 39:14 44:-9 49:-8 51:-14 59:-10 66:-9 74:8 79:-12 84:-31 85:37 88:-9 91:-15 92:-8 93:37 98:30 100:58 101:-12 105:-10 106:-11 115:33 118:68 119:-9 125:39 126:9
other @job	0:14 125:42 126:-9
other job	85:12
wait==s	44:8 62:10 65:-11 115:83
#n wait	115:64
@job wait	65:-12 115:54
come after	10:-10 13:33 34:-18 94:48 115:30
goe after	115:15
after @job	13:-13 115:48
#n befor	0:61 17:-8 46:8 71:19 115:41 122:-32
befor job	30:8 114:-8 115:54
@job befor	15:-10 38:8 39:18 65:13 66:-8 115:32 126:-22
befor @job	115:36 126:-13
is befor	115:16
come befor	115:12
goe befor	115:17
then==	0:-21 1:13 3:-18 4:-8 6:8 9:8 11:9 13:13 16:32 27:-8 28:10 34:-10 38:-9 45:-9 46:-14 49:13 53:8 55:-16 62:-9 63:-12 81:-8 83:-11 90:-14 98:10 102:23 106:23 109:-14 111:26 112:16 113:36 114:-24 115:87 116:32 117:-10 126:17
then	0:-21 1:13 3:-18 4:-8 6:8 9:8 11:9 13:13 16:32 27:-8 28:10 34:-10 38:-9 45:-9 46:-14 49:13 53:8 55:-16 62:-9 63:-12 81:-8 83:-11 90:-14 98:10 102:23 106:23 109:-14 111:26 112:16 113:36 114:-24 115:87 116:32 117:-10 126:17
then job	114:-9 115:45
first and	13:-9 115:36
and then	13:-9 71:8 115:36 120:10 126:8
then @job	115:22
then the	112:9 115:10
not begin	115:39 126:-20
not start	108:-11 115:13
begin the	115:8
not wait	29:14 115:48 126:-16
need not	24:-12 29:14 39:39 58:13 101:17 115:23 126:-34
^ look	0:26 11:-10 13:53 22:23 40:-11 46:46 91:25 92:-10 116:32 126:-17
look again	46:14 92:14 116:77
again the	116:9
^ check	0:-13 3:53 13:-8 18:32 22:9 37:-8 38:-8 42:10 46:8 91:13 92:9 93:-11 96:-8 108:23 115:-8 116:55 118:19 120:-10 126:-11
check job	18:53 75:8 116:41 126:-18
on yesterday	34:12 46:-16 116:33
check fret	42:16 93:-8
check #r	46:13
put recheck	56:17
postpon==e	48:18 116:18 126:-9
postpon	20:-8 48:17 116:18 119:60 126:-13
^ postpon	48:18 116:18 126:-9
postpon the	116:17 126:-8
put off	109:-9 116:26 119:8
delay==	59:10
delay	59:10 118:-8 119:52 120:10 126:-12
delay the	59:10
@job till	48:18 115:18
@job until	34:8 38:12 44:-8 115:14 116:24 126:-8
i shall	111:16
we shall	116:11
shall check	116:9
^ yesterday	13:-8 34:38 37:8 41:-10 51:-16 68:11 74:8 77:8 80:12 82:20 96:8 98:13 116:18 117:18 126:-17
yesterday i	37:9 40:9 77:9 82:10 116:12 126:-8
#t i	42:12
yesterday we	117:10
ago i	41:9 45:9 67:9 68:11 71:-11 73:8 76:26 85:12 126:-16
remind==	11:25 14:15 24:8 33:14 36:8 116:12
remind	11:25 14:15 24:8 33:14 36:8 116:12
^ remind	11:25 14:17 24:9 36:8 116:12
remind me	11:25 14:15 24:8 33:14 36:8 116:12
me of	12:14 116:12
@wire order	9:-17 51:-13 117:21 118:44 119:-28 126:43
order #n	1:-8 9:-9 10:-35 31:-8 32:40 33:-12 41:-14 48:-31 49:-8 51:-42 67:-21 82:-11 96:-11 107:12 111:-14 112:-9 117:18 118:102 119:113 120:113 126:156
@wire supplier	117:8
stick each	122:9
order #c	117:22 119:21 120:14 126:-10
~ due	117:17
@day due	117:8
due tomorrow	11:-13 48:9 119:32
order #d	117:16
&#d#n#r@wire	83:16 117:10
order a	51:-16 117:37
#o due	12:9
@wire this	21:13
are order	117:10
order due	10:12
is order	117:12
@wire were	117:16 126:-10
were order	51:-9 117:21
&#d#n#o@wire	18:-9 37:-15 38:27
have order	117:9
plac==ed	39:11 40:-9 51:-18 73:9 117:56 118:-12 120:17
plac an	117:29
in an	29:-8 31:10 117:9 121:9 122:19 126:42
plac in	73:9
^ arriv	118:15
#n order	9:8 118:15 120:-10
order came	118:23
order is	32:-31 33:-9 118:20 119:14 120:47 122:18 126:-14
here yesterday	118:15
~ arriv	118:20
~ came	118:11
has arriv	100:11 118:33
^ rest	32:-8 104:8 118:17 119:28 120:32 126:-18
rest has	118:10
come @day	53:-11 111:14 118:12 119:10 122:-8
rest came	118:8
came @day	118:8
stick have	9:29 32:-10 117:14 118:13 126:-9
coil==s	7:8 51:8 117:9 118:10 121:20 122:22 126:-9
coil came	118:14
other==s	14:34 17:-19 37:-8 39:22 73:10 79:-9 84:-26 85:31 93:37 98:33 99:9 118:30 126:-21
come other	118:11
other come	118:8
come #o	2:-12 16:20 66:22
came and	51:-14 117:15 118:21
rest come	118:8 119:10
come today	119:25
arriv and	118:17
the other	3:23 5:-16 14:33 17:-21 30:22 37:14 39:15 44:-8 51:-13 59:-9 73:9 79:-9 84:-28 85:25 91:-14 92:-8 93:41 98:36 100:17 118:54 125:42 126:-24
them are	2:12 26:10
here and	14:15 36:12 111:-9
and that	54:8 94:48 118:25
was all	19:-10 118:31 123:28
noth more	118:17
#n arriv	32:-19 126:45
rest is	17:-13 46:15 118:21 119:12 120:12 126:-12
follow==s	75:11
follow	2:-23 13:-11 15:-11 18:9 75:16 76:22 94:14 115:71 118:26
rest on	118:13
receiv order	118:41 120:-10 126:-10
receiv the	118:24
got the	5:-12 6:19 17:8 26:-20 27:70 29:-10 30:-28 32:-8 37:29 44:32 45:17 63:11 64:-11 68:10 71:-21 83:19 95:12 100:-12 102:-11 103:47 118:26
got order	67:-9 117:15 118:11
the delivery	19:32 74:29 118:14 119:15
delivery came	118:9
came from	72:14 74:9
delivery is	13:36 74:-20 118:31
delivery from	118:15
parcel==	51:21 59:20 118:70 126:-11
parcel	10:-9 32:20 51:21 59:20 118:70 126:-11
a parcel	118:14
parcel from	118:18
the parcel	118:8
^ parcel	51:16 59:10
us the	7:16 8:37 9:-11 17:8 33:21 126:-8
brought us	21:28 118:12
us my	118:8
my order	51:-10 117:17
my wire	111:11 118:9
order promis	119:15
december promis	31:8
@day now	48:42 53:-8 119:68 122:-16
#r now	76:15
#o now	37:8 119:30
instead==	1:-14 18:27 22:-15 31:-8 34:-11 37:39 48:78 49:11 52:21 53:-9 55:22 56:25 65:20 76:-10 100:-11 105:-15 110:-8 112:21 116:-8 118:-8 119:61 126:11
will come	43:-15 112:15 119:16
instead	1:-14 18:27 22:-15 31:-8 34:-11 37:39 48:78 49:11 52:21 53:-9 55:22 56:25 65:20 76:-10 100:-11 105:-15 110:-8 112:21 116:-8 118:-8 119:61 126:11
@day instead	112:13 116:-11 119:26 126:8
instead $	1:-11 18:27 34:-9 37:29 48:27 49:11 116:11 119:63 126:-32
december instead	48:13 119:11
#c come	119:11
tomorrow instead	119:17
today now	119:8
~ arrive	119:8
com the	26:-17 30:43
december now	29:-9 48:16 112:23 119:14
postpon==ed	119:64
is postpon	119:19
postpon till	119:16
delay==ed	118:-8 119:53
order was	119:15
was delay	119:15
delay till	119:20
was postpon	119:10
postpon to	119:47
delay to	119:14
is delay	119:28
#c was	61:17
delay until	119:19
was mov	54:-10 113:10 119:9
mov to	119:11 123:10
till #o	54:13
rest will	120:32 126:-12
deliver only	119:33
~ ship	119:17 121:-11 122:12
ship on	119:8 123:9
expect==	10:-10 11:-14 30:-10 32:50 68:10 69:-9 73:8 93:18 112:12 119:79 126:-20
expect	8:-23 9:43 10:-13 11:-15 19:-38 28:8 30:-11 32:110 68:8 69:-9 73:8 93:18 112:12 119:86 126:-25
^ expect	8:-23 9:45 19:-35 32:47 112:12 118:-8 119:79 126:-17
expect order	119:25
expect the	32:-8 119:44
@wire today	117:-11 119:11 126:29
cancel order	107:17 120:23
was cancell	113:11 120:16 126:-8
not com	32:-18 63:11 64:-9 118:11 120:76 126:-45
be com	49:8 63:35 64:-11 111:-16
com becaus	120:9
rest doe	120:21 126:-8
come becaus	120:14
never come	64:-16 110:41 112:-9 118:9 120:13
order will	119:18 120:16 126:-9
pack==	33:44 86:-63 121:78 122:36 123:-9 126:-17
minimum==	4:8 10:-16 32:-11 33:70 51:-8 52:30 56:-11 68:-8 70:-10 109:-8 118:-19 120:-10 121:66 122:126 123:-36 126:-12
defin supplier	121:44 122:-14 123:-11
pack	3:-14 33:141 47:-8 67:-13 69:-29 82:22 86:-65 118:-10 121:118 122:106 123:-25
pack #c	69:-9 86:-22 121:59 122:-16
~ pack	86:-28 121:62 122:-31
#c pack	121:9
pack length	86:-16 121:34 122:-18
)~",
R"~(#d pack	121:37 122:-25
pack mass	121:17 122:-10
gram pack	121:-13 122:19
pack #n	82:24 86:-25 122:37
#n pack	86:-16 121:-25 122:47
minimum	4:8 10:-17 32:-14 33:99 51:-8 52:30 56:-11 68:-8 70:-10 109:-8 118:-22 120:-12 121:49 122:126 123:-36 126:-13
minimum #n	121:30
mm pack	121:12
in pack	33:12 121:27 122:10
g minimum	121:-10 122:13
minimum #c	121:15
g pack	121:9
lead day	122:10
pack==s	3:-12 33:97 47:-8 51:-10 67:-10 69:-29 82:23 121:41 122:70 123:-16 126:21
add supplier	121:34
stick pack	69:-8 121:9 122:10
pack #d	121:39 122:-30
pack of	33:-12 67:-9 69:-11 121:14 122:90 123:-11 126:26
#n minimum	121:20 122:-17
coil pack	121:16 122:-13
in minimum	122:8
minimum #d	122:9
supplier call	121:31 122:-21
minimum of	33:28 121:21 122:-13
pack $	33:11 122:18
new supplier	33:-10 59:-13 121:131 122:-30 123:-16
stick minimum	121:40 122:-40
a supplier	33:-13 99:-10 121:55 122:-25 123:29 126:12
can order	33:19 120:-25 121:17 122:14 123:-15 126:10
too $	0:23 1:9 2:19 3:13 14:37 22:-8 32:8 45:10 59:24 62:-11 63:8 88:19 91:41 92:-15 97:12 126:-13
from now	17:-10 29:-9 30:-12 32:-9 33:-8 39:18 44:-12 45:-8 48:18 50:17 52:12 53:30 54:-26 56:33 58:13 59:20 62:32 65:50 84:10 86:8 89:-9 99:31 100:13 102:-9 104:32 105:14 106:-10 108:35 110:19 111:-28 112:-11 117:-8 119:-14 121:13 122:26 126:-40
amount==	8:28 9:9 17:13 121:-11 122:26
chang supplier	122:14
~ any	121:-16 122:15 123:13
any pack	33:-17 121:-13 122:43
pack ~	121:-9 122:9
amount	8:28 9:9 17:13 67:10 121:-11 122:26
any amount	121:-11 122:26
amount ~	121:-8 122:8
lead #n	122:14
time #n	33:-13 99:8 121:25
lead of	122:16
sell==s	33:51 34:-11 55:-13 99:8 122:78 123:-11 126:41
sell	8:9 14:-8 32:-12 33:67 34:-12 51:15 55:-13 64:8 97:14 100:-10 102:16 118:-8 121:21 122:60 123:-15 126:46
~ sell	121:-16 122:29
sell wire	121:-10 122:15
wire pack	122:11
wire only	121:-12 122:15
only in	110:27 112:-16 121:-14 122:18
sell in	33:17 121:28
ship wire	121:-8 122:11
deliver wire	122:8
the pack	122:36 123:-9
pack from	122:16
~ hold	122:18
~ are	122:10
^ pack	33:34 82:24 121:-26 122:9
^ minimum	122:26
minimum at	109:-8 122:38
the minimum	33:16 52:11 56:-9 122:36
minimum from	122:8
^ lead	122:27
a year	22:25 122:28 126:-23
year $	5:-10 9:18 19:-10 20:65 21:45 22:20 34:-9 63:-9 122:28
day to	9:25 122:9
day now	113:11 119:13 122:39
week to	121:10 122:8
#c week	122:14
sell pack	122:-21 126:33
sell any	33:-11 122:30
any number	33:-9 122:22
deliver any	122:8
length $	0:-8 4:59 7:13 22:38 80:11 90:-11 104:15 126:-12
~ has	122:16
no minimum	33:-10 122:37 123:-15
minimum $	33:38 122:26 123:-17 126:-8
drop supplier	33:-13 123:50
remov supplier	123:31
anymor==e	49:23 100:19 101:8 122:17 123:19 126:-16
anymor	49:23 100:19 101:8 122:17 123:19 126:-16
~ anymor	123:28 126:-8
anymor $	100:20 122:17 123:19 126:-9
longer order	121:-10 123:48
forget==	11:-8 14:8 29:-14 30:-10 34:-10 35:-32 36:-9 38:-9 41:10 45:12 48:26 54:-21 60:-11 61:34 65:-14 66:28 87:19 109:-15 111:-23 112:29 113:68 119:-12 120:13 123:26 124:85 126:-23
forget	11:-8 14:8 29:-14 30:-10 34:-10 35:-32 36:-9 38:-9 41:10 45:12 48:26 54:-21 60:-11 61:34 65:-14 66:28 87:19 109:-15 111:-23 112:29 113:68 119:-12 120:13 123:26 124:85 126:-23
^ forget	11:-8 14:-8 29:-13 30:-8 34:-9 35:-32 38:-8 48:27 61:25 87:15 111:-22 112:29 113:46 119:-12 120:15 123:27 124:85 126:-25
forget not	35:-10 124:29
forget all	124:21
delet==e	26:-11 33:-23 35:-27 39:-13 58:34 87:20 99:-15 101:86 104:-22 107:72 123:49 124:55 126:-20
delet	26:-11 33:-26 35:-27 39:-14 58:33 82:8 87:20 99:-15 101:86 104:-22 107:74 122:-8 123:59 124:55 126:-22
^ delet	26:-10 33:-22 35:-27 39:-13 58:28 87:21 101:41 104:-12 107:73 123:32 124:55 126:-12
delet what	35:-23 124:40
clear everyth	124:19
forget what	124:14 125:10 126:9
what you	36:9 70:21 114:15 124:14
forget sentence	35:-9 124:16
delet all	124:16
forget the	48:15 54:-8 87:17 113:8 123:29
clear sentence	35:-8 124:26
clear the	24:-12 61:13 66:49 85:29
undo==	14:-8 22:-8 23:-8 26:-10 30:-8 31:-14 33:-12 36:62 54:-24 74:-12 84:-12 85:41 105:-12 113:42 125:139 126:58
undo	14:-8 22:-8 23:-8 26:-10 30:-8 31:-14 33:-12 36:62 54:-24 74:-12 84:-12 85:41 105:-12 113:42 125:139 126:58
^ undo	36:-10 54:-23 74:-12 84:-12 85:41 113:44 125:111 126:-21
undo $	36:33 125:97 126:-47
take it	1:10 16:-22 18:12 36:9 37:39 43:-11 45:-16 48:9 58:8 61:15 66:24 68:-11 87:29 102:20 103:-10 105:-13 109:-8 125:41
it back	26:54 36:16 39:9 48:13 96:18 103:-43 105:-10 125:41 126:-11
take that	41:13 61:15 89:12 94:9 102:10 115:12 123:10 125:20
that back	125:24
undo that	31:-12 36:-28 125:-12 126:98
undo it	125:34
take back	54:-20 113:59 125:18 126:-8
unsay==	26:-11 102:56 103:-23 125:68 126:-10
unsay	26:-11 102:56 103:-23 125:68 126:-10
^ unsay	125:68
unsay it	125:48
revert==	125:59
revert	125:59
^ revert	125:59
unsay that	125:20
go back	66:24 85:19 125:41 126:-9
back one	125:25
one step	125:25
step $	28:8 39:-14 56:21 125:73
^ back	19:10 25:-12 44:-17 95:12 96:-10 102:-13 103:-11 108:106 125:17 126:42
revers==e	125:46
revers	63:-10 64:21 125:55
^ revers	125:13
my last	125:64 126:-22
revert last	125:12
last chang	125:13
chang $	125:13
revert my	125:9
revert the	125:9
report==	3:-9 11:30 13:38 16:-35 19:-8 21:13 23:-11 34:11 36:35 43:8 45:15 62:62 63:-17 103:10 125:33 126:-23
last report	125:9
suit $	0:-8 1:11 18:76
balanc $	20:43
sav $	21:28 62:8 78:41
care $	22:25
add $	40:13
measur $	0:-15 4:68 8:-10 17:-9 22:49 40:-8 42:41 51:-10 73:22 77:11 80:47 126:-45
receiv $	36:11 51:12 105:18
extra $	55:23
calibrat $	69:44 102:11
correct $	70:23 126:14
new $	2:10 5:-11 72:27 96:10 99:11
size $	0:9 33:10 75:42 89:24 122:-8
several $	82:28 83:41
after $	10:-12 11:56 13:39 30:-9 34:-19 115:22
,==	0:31 1:9 2:31 5:12 7:26 9:-14 10:10 11:9 12:25 13:-27 14:-12 16:14 17:11 18:13 19:25 20:23 22:31 23:-20 25:18 26:-12 28:33 30:9 31:28 33:-10 35:-24 36:29 38:36 39:-27 40:35 42:-12 43:23 45:-13 46:25 47:74 49:30 50:67 51:28 52:-9 53:-19 55:34 56:14 57:32 58:10 59:56 60:-9 61:-12 62:15 63:35 64:32 65:-26 66:-12 68:19 69:-16 70:21 71:-11 72:20 73:23 74:20 75:-15 76:19 77:-14 78:15 79:22 80:44 81:15 82:11 84:-11 86:49 87:16 89:-12 92:16 93:-13 94:-31 95:15 96:31 98:30 99:45 101:33 102:13 103:-12 104:32 105:-14 106:30 107:-26 108:18 109:16 110:12 113:15 114:-20 115:-34 116:-30 117:23 118:38 119:-40 121:55 123:17 124:-21 125:36 126:-23
,	0:31 1:9 2:31 5:12 7:26 9:-14 10:10 11:9 12:25 13:-27 14:-12 16:14 17:11 18:13 19:25 20:23 22:31 23:-20 25:18 26:-12 28:33 30:9 31:28 33:-10 35:-24 36:29 38:36 39:-27 40:35 42:-12 43:23 45:-13 46:25 47:74 49:30 50:67 51:28 52:-9 53:-19 55:34 56:14 57:32 58:10 59:56 60:-9 61:-12 62:15 63:35 64:32 65:-26 66:-12 68:19 69:-16 70:21 71:-11 72:20 73:23 74:20 75:-15 76:19 77:-14 78:15 79:22 80:44 81:15 82:11 84:-11 86:49 87:16 89:-12 92:16 93:-13 94:-31 95:15 96:31 98:30 99:45 101:33 102:13 103:-12 104:32 105:-14 106:30 107:-26 108:18 109:16 110:12 113:15 114:-20 115:-34 116:-30 117:23 118:38 119:-40 121:55 123:17 124:-21 125:36 126:-23
#n ,	0:26 1:-44 2:63 3:12 4:99 5:12 6:-10 7:-17 9:14 10:-20 12:-18 13:37 15:72 17:32 18:54 20:-11 21:-9 22:-28 24:22 25:28 27:-9 28:-40 29:-23 30:12 31:-10 32:-13 33:-10 34:31 36:-12 37:-24 38:-20 39:-43 40:-20 41:55 42:40 45:41 46:-27 47:-15 48:-20 50:-26 51:-18 52:-13 53:21 54:-20 55:-32 59:-19 60:-9 63:-19 64:-10 65:54 66:-17 67:10 68:-16 69:-14 71:26 72:19 74:55 75:-32 76:8 77:37 78:51 81:53 82:10 83:-18 85:24 86:-26 89:-15 90:19 91:22 92:25 93:-20 94:38 98:-9 99:-21 100:-30 102:27 103:-18 105:-30 106:-12 107:50 108:32 110:18 111:-19 112:28 114:-22 115:35 116:-17 117:-42 118:-15 120:59 121:-45 123:-8 125:-16 126:-31
, slot	0:60 1:-14 2:9 3:-35 4:-22 13:45 16:-9 18:17 28:-9 34:22 37:15 38:37 40:-11 42:-11 43:-14 44:-15 71:41 72:35 73:-9 75:-14 76:-19 77:17 83:66 98:-8 108:26 126:-22
, what	0:66 1:-12 2:-16 3:-19 5:64 6:-11 7:14 9:15 10:9 11:34 12:-20 13:47 16:41 17:19 19:-25 20:-17 21:35 22:53 24:32 25:15 26:-16 27:11 29:-10 31:26 32:-19 34:27 36:33 37:31 38:-9 40:-26 44:-11 45:-10 46:-23 76:22 80:-8 88:8 90:-12 96:-12 109:-12 111:-8 118:-9 123:-10 125:-13
^ need	0:37 4:-10 7:21 10:15
)~",
R"~(a fret	0:41 1:11 3:30 4:-9 13:62 22:20 25:-8 28:-9 34:-10 36:25 78:-23 94:18 106:10 126:-15
- @job	2:-17 3:9 5:14 11:9 13:61 15:11 16:-21 18:36 24:56 25:24 27:-9 28:32 29:18 30:43 31:17 37:-8 39:-23 43:-17 45:-13 46:-34 49:23 65:9 66:8 71:-11 72:-8 75:9 76:11 77:8 78:-12 83:-25 84:-10 85:25 88:30 91:-12 92:-21 94:-11 96:-16 98:-19 107:-8 108:40 109:11 114:22 115:38 119:-8 126:-55
a short	0:17 3:-10 38:-8 43:31
short #n	0:8 2:-10 3:-11 16:45 43:27 76:21 87:10
#n that	0:33 3:-10 17:8 37:-15 55:25 73:10 92:9 94:-20 107:21 114:9 126:-9
?	0:155 1:78 2:124 3:207 4:204 5:106 6:8 7:25 8:156 9:136 10:95 11:129 12:166 13:129 14:175 15:118 16:184 17:178 18:179 19:112 20:51 21:107 22:156 24:115 25:144 26:129 27:141 28:141 29:159 30:125 31:152 32:130 33:118 34:135 35:-10 36:163 37:-79 38:-89 39:-63 40:-55 41:-84 42:-85 43:-70 44:-100 45:-95 46:-53 48:-102 49:-40 50:-15 51:-28 52:-39 53:-32 54:-60 55:-39 56:-48 57:-9 58:-31 59:-33 60:-92 61:-32 62:-18 63:-40 64:-26 65:-80 66:-52 67:-80 68:-26 69:-12 70:-53 71:-38 72:-59 73:-30 74:-23 75:-54 76:-42 77:-32 78:-81 79:-43 80:-33 81:-35 82:-27 83:-28 84:-70 85:-52 86:-19 87:-75 88:-94 89:-37 90:-119 91:-36 92:-50 93:-36 94:-59 95:-71 96:-40 97:-24 98:-44 99:-30 100:-36 101:-29 102:-69 103:-89 104:-52 105:-45 106:-30 107:-74 108:-107 109:-52 110:-52 111:-74 112:-35 113:-38 114:-114 115:-55 116:-74 117:-50 118:-40 119:-43 120:-79 121:-20 122:-63 123:-35 125:-66 126:185
got in	8:52 19:13 21:-11 22:9 32:-14
would make	0:34 62:-10 126:27
make a	0:11 22:19 50:10 62:-12 86:-13 89:-10 108:19 126:34
inch==es	0:15 1:14 3:9 5:28 22:-10 42:15 56:87 69:13 72:-13 77:26 78:-9 83:-9 126:-21
@wire ,	0:58 1:79 2:-17 5:71 6:-14 7:-27 8:28 9:47 18:9 20:-17 21:-14 22:31 24:38 25:17 28:-10 30:-8 31:-9 32:39 33:-28 34:18 40:23 41:21 43:-22 45:-9 47:26 48:-9 50:28 56:-8 61:-9 67:41 68:-11 69:24 70:-9 71:-15 76:-9 79:-10 80:17 81:-20 82:-11 83:11 89:46 99:-14 111:-15 117:16 118:-32 121:-12 122:-8 126:-37
, finish	0:14 45:8
finish length	0:14
inch	1:32 5:27 7:24 16:17 22:-11 56:86 67:-9 69:12 72:-14 75:12 77:34 78:-15 80:-14 83:-10
#d inch	1:23 3:11 7:10 16:17 40:-12 42:-21 75:12 77:13
inch ,	0:13 3:18
, anyth	0:41 13:-11 17:37 43:-8 56:19 73:-10
which bit	0:62 1:-8 24:20 38:-12
@job ,	0:45 1:-63 2:65 3:16 4:8 5:-36 6:19 8:15 9:-10 11:38 12:-9 13:72 15:45 16:37 17:45 22:-9 24:11 28:-20 29:-10 30:-33 31:-31 34:-8 36:-8 37:31 38:29 39:-19 40:-19 41:-11 42:8 43:15 45:21 46:13 47:-12 49:-15 55:-8 56:-9 59:-12 62:-11 63:-14 64:-9 66:56 71:11 73:40 74:-16 75:-10 76:-14 77:9 78:-16 79:-13 80:-10 81:-8 83:61 84:14 91:-12 92:18 93:24 94:35 98:28 99:-13 101:-8 106:-25 107:-10 108:9 109:24 113:-9 114:-26 118:-8 119:32 125:-10 126:-46
slot ,	2:-11 3:14 4:23 13:-8 18:11 28:15 34:-9 44:-10 78:-11 92:26 96:15 108:30
^ and	0:95 1:-18 2:59 3:31 4:29 6:69 8:38 9:42 10:39 11:56 12:-9 13:-13 14:-47 15:23 16:55 17:65 18:-28 19:-25 20:-44 21:44 22:-24 23:-10 24:86 26:-29 27:-19 28:74 29:-25 30:-43 31:30 32:-24 33:-49 34:-61 36:-20 37:38 38:-10 39:-23 40:47 41:-25 42:-16 43:-17 45:54 46:-23 48:9 51:-27 53:-31 54:-18 55:-27 56:-24 58:-9 59:-9 61:-9 63:-16 65:-8 67:29 71:16 74:-8 75:-20 76:63 77:15 78:-8 79:-10 81:-8 82:-48 83:-30 84:-46 85:-17 86:-10 87:-42 88:23 89:14 90:-25 91:46 92:-12 93:55 94:41 95:-10 96:-33 97:-25 98:-23 99:-10 100:12 102:-11 103:-9 105:-28 106:61 107:-9 108:-8 109:-11 110:-27 111:66 112:43 114:-15 115:-19 116:73 117:53 119:-14 120:-14 121:-8 122:-14 126:-90
same==	0:108 1:13 3:26 4:26 5:-10 6:21 7:12 8:-12 9:-17 11:-8 13:34 15:-8 16:58 18:-17 19:-11 20:-22 22:81 24:-22 27:-8 28:-17 29:-9 30:-10 33:-16 34:-20 38:-19 39:-10 40:58 41:-9 42:-10 44:-32 46:-9 48:-12 49:-15 50:-19 56:-9 65:-17 66:-12 71:-10 74:26 75:76 77:-10 79:-11 82:21 83:21 84:34 85:-22 92:-11 94:-9 96:47 99:14 100:-9 106:54 107:-8 108:-19 109:-15 114:-12 115:-8 118:14 120:-8 126:-33
same	0:108 1:13 3:26 4:26 5:-10 6:21 7:12 8:-12 9:-17 11:-8 13:34 15:-8 16:58 18:-17 19:-11 20:-22 22:81 24:-22 27:-8 28:-17 29:-9 30:-10 33:-16 34:-20 38:-19 39:-10 40:58 41:-9 42:-10 44:-32 46:-9 48:-12 49:-15 50:-19 56:-9 65:-17 66:-12 71:-10 74:26 75:76 77:-10 79:-11 82:21 83:21 84:34 85:-22 92:-11 94:-9 96:47 99:14 100:-9 106:54 107:-8 108:-19 109:-15 114:-12 115:-8 118:14 120:-8 126:-33
^ same	0:102 1:20 3:34 4:64 6:-46 7:22 9:-8 13:-52 16:75 18:-12 19:-8 22:75 24:-16 34:-8 37:-11 38:-24 40:43 44:-16 50:-16 56:-8 65:-9 74:28 75:-9 84:51 85:-17 106:-11 108:-13 109:-11 115:-11 126:-16
same for	0:49 1:-8 4:72 6:16 7:-14 8:-9 9:-12 13:80 16:70 18:-10 19:-16 20:-18 22:59 24:-15 33:-12 38:-18 44:-15 65:-12 74:-9 84:50 85:-16 106:-13 108:-11 109:-11 115:-13 126:-11
even==	0:35 1:9 3:9 20:8 41:15 46:9 111:8 112:15 126:-43
, even	0:45 46:9 126:-9
even if	0:28 1:12 126:-10
nip a	0:28 126:-14
a lot	0:23 1:27 25:35 63:23 74:-28 114:17 126:12
lot off	0:28 126:-18
mind==	0:11 1:50 2:-9 8:-13 9:10 16:-17 23:14 38:8 39:35 49:27 64:16 88:26 110:-12 112:12 113:10 114:-10 126:69
down for	1:-11 2:14 15:28 22:-8 24:-16 27:86 31:-8 36:-9 37:17 38:-11 42:9 48:35 54:-10 89:12 97:11 102:-15 106:15 113:8 122:13 126:-22
, never	0:9 1:21 51:13 94:15 117:-13 121:21 122:-8
mind	0:11 1:50 2:-9 8:-13 9:10 16:-17 23:14 39:35 49:27 64:16 88:26 110:-12 112:12 113:10 114:-10 126:68
never mind	0:9 1:13 39:-17 126:53
mind the	0:12 1:9 88:28 110:-12 112:14 126:44
the wast	0:12 1:8 41:23 82:9 126:-12
wast $	0:8 1:11 5:15 41:12 82:10 126:9
, pull	0:30 13:-12 65:-9 73:-11 78:-8 108:61 109:34 123:10
are fine	0:14 103:11
includ==ed	2:42 32:16 51:-16 68:31
any piec	0:38 38:-15
, old	73:-13 76:22 79:42
old pull	40:15 73:-14 80:10 82:19 126:-10
pull one	0:45 126:-10
includ	0:48 2:38 4:14 8:14 14:52 19:8 22:-11 24:-8 32:32 51:-17 68:34 78:-10 126:-10
one includ	0:11
includ $	2:42 32:16 51:-16 68:27
, #o	3:12 12:9 43:10 48:-9 54:13 66:28 77:10 78:-12 79:15 91:9
fret ,	2:-14 3:-12 4:-15 6:10 17:-13 23:14 24:18 25:-9 28:46 30:-8 31:39 34:15 37:-10 42:18 43:-10 44:8 46:-11 47:54 73:28 76:-19 78:16 79:-11 80:15 82:-11 86:-15 90:14 94:15 98:8 108:-27 125:10 126:30
, is	0:19 1:-16 3:54 8:16 9:14 11:-10 12:-8 13:-8 15:31 17:92 18:29 23:66 24:35 26:89 32:8 41:-10 42:-24 43:-10 46:-10 60:-27 61:10 62:-8 63:-11 64:9 65:14 70:-16 71:11 78:-29 84:-11 90:-12 92:-8 102:-22 103:-52 126:8
ther #n	0:18
#n lying	0:19
.==	0:24 1:19 2:41 3:14 4:14 9:-26 10:13 11:-19 16:-22 17:-24 19:16 24:-18 25:-10 26:-8 28:-8 29:-13 30:-15 31:22 32:-12 33:-9 34:-14 36:10 37:27 38:15 40:25 42:-50 43:11 44:-9 46:9 48:-20 50:26 51:13 52:-16 53:-16 54:29 56:-9 57:54 60:9 61:-15 65:-16 67:-10 69:-8 70:11 71:31 74:9 75:-12 77:-11 78:45 79:-14 81:-10 84:24 86:27 88:-14 89:-18 90:-21 93:10 94:-9 98:24 99:8 100:-20 101:18 102:-16 103:14 106:37 107:11 108:23 112:-8 114:-23 116:-18 117:-17 119:8 120:41 121:12 122:-12 125:44 126:-59
am on	108:58 109:-27 111:9 126:-10
.	0:24 1:19 2:41 3:14 4:14 9:-26 10:13 11:-19 16:-22 17:-24 19:16 24:-18 25:-10 26:-8 28:-8 29:-13 30:-15 31:22 32:-12 33:-9 34:-14 36:10 37:27 38:15 40:25 42:-50 43:11 44:-9 46:9 48:-20 50:26 51:13 52:-16 53:-16 54:29 56:-9 57:54 60:9 61:-15 65:-16 67:-10 69:-8 70:11 71:31 74:9 75:-12 77:-11 78:45 79:-14 81:-10 84:24 86:27 88:-14 89:-18 90:-21 93:10 94:-9 98:24 99:8 100:-20 101:18 102:-16 103:14 106:37 107:11 108:23 112:-8 114:-23 116:-18 117:-17 119:8 120:41 121:12 122:-12 125:44 126:-59
#n .	0:18 2:23 3:-11 4:16 13:-9 37:15 43:8 44:-10 45:-10 48:-15 49:-10 75:-8 78:58 80:10 82:-8 83:8 92:9 93:31 96:10 109:22 114:-13 126:-27
. which	0:10 2:20 22:8
dig==	0:8
dig	0:8
out a	0:8 2:62 28:-8 81:-8 109:-10
drop==s	0:23 37:-12 52:29 126:-12
a dress	0:22 37:-12
dress #n	0:22 37:-12
straight into	0:23 37:-12 40:10
millimetre==s	0:52 3:59 4:-10 7:27 42:31 43:-11 50:9 51:-8 56:36 75:26 80:-11 81:12 86:9 89:10 98:-9 99:-13 126:-40
anyth @wire	0:47
, #n	0:77 2:-25 4:50 5:-18 7:38 8:-11 10:-15 13:-26 15:-12 16:73 17:-22 18:-9 20:-13 22:29 24:-13 25:-11 27:9 28:59 29:67 30:8 31:12 34:-30 37:-71 38:-71 39:-15 40:23 41:-11 43:-11 44:14 45:37 46:63 47:16 48:-14 49:-22 50:-15 51:29 52:47 53:-54 54:-25 55:34 56:-27 59:-16 63:-8 65:-10 66:-10 67:55 68:20 69:27 70:-21 71:-30 75:15 76:10 77:-19 78:24 79:-53 80:14 81:107 82:49 83:40 84:-8 85:-8 86:79 88:-15 89:-10 90:-29 91:-24 92:-28 93:-13 94:-66 96:12 98:-10 99:71 102:-30 106:25 107:-9 108:-37 110:13 111:41 112:-24 113:11 115:-16 116:-12 118:-12 119:-20 122:-10 125:-10 126:-28
)~",
R"~(millimetre	0:52 3:59 4:-10 7:27 42:31 43:-11 50:9 51:-8 56:36 75:26 80:-11 81:12 86:9 89:10 98:-9 99:-13 126:-40
#n millimetre	0:39 3:57 4:-10 7:27 50:12 56:14 75:29 80:-10 81:12 86:8 89:13 98:-8 99:-12 126:-20
millimetre $	0:46 42:11 56:29 81:13 89:14 126:-20
cm==	0:45 1:-14 8:-8 38:-9 40:13 46:-9 47:9 52:40 67:-13 68:-8 69:16 70:29 88:60 91:-9 94:-13 116:-9 117:-8 126:-17
cm	0:45 1:-14 8:-8 38:-9 40:13 46:-9 47:9 52:40 67:-13 68:-8 69:16 70:29 88:60 91:-9 94:-13 116:-9 117:-8 126:-17
#d cm	0:50 1:-12 38:-9 40:18 77:13
cm of	0:52 1:-11
, do	0:63 3:30 4:11 8:-15 9:21 34:14 39:-27 51:-8 65:-10 68:-10 70:-11 87:13 88:-8 102:22 107:-11 126:43
have it	0:39 1:13 31:17 34:17 66:25 107:19 116:13 121:15 126:-26
hand==s	0:22 1:-14 2:-9 8:-15 13:-8 14:71 15:26 16:13 24:29 29:20 38:21 44:-8 48:17 49:-8 65:11 66:14 109:-13 126:-14
hand	0:13 1:-9 2:20 6:16 8:99 9:-18 11:-10 12:-14 13:-13 14:67 15:26 16:16 18:-11 20:-10 21:-8 22:-16 24:19 26:-9 27:-8 29:11 30:-14 31:-11 32:-17 33:-9 34:-12 36:-12 38:18 40:-11 44:-14 48:15 49:-9 51:-10 59:11 63:17 65:37 67:44 69:-13 70:49 71:22 72:-8 83:-14 102:-8 103:11 104:-16 107:23
^ hand	0:23 2:-8 24:37 38:22 65:15 107:28 126:-14
hand full	0:24
, job	1:-18 2:-22 12:15 13:-23 15:-22 16:55 17:108 24:20 25:-12 30:-21 31:-8 34:-25 37:15 38:-13 42:-9 43:31 44:-41 45:34 47:-11 48:-22 49:-49 66:-49 71:-12 72:15 73:-9 75:-10 76:-15 78:-12 79:8 83:17 85:19 88:-21 90:81 91:52 92:79 93:14 96:27 97:17 98:49 102:-9 106:27 108:59 109:-21 114:-44 116:-10 126:-37
replac==e	0:18 72:-14 79:21 126:-13
^ if	0:12 1:-12 2:-10 5:11 7:15 8:-9 9:8 16:-38 18:47 28:20 29:12 30:13 31:13 34:11 37:-8 38:-15 40:-18 43:8 45:-16 48:27 68:-11 70:-8 71:-15 75:-27 83:-11 90:-17 93:-8 102:-10 103:-10 114:-8 120:-8 126:233
@job had	0:18 73:10 126:-14
had to	0:12 2:-12 36:10 42:-14 73:90 78:-12 79:30 82:10 92:-11 96:13 109:61 126:-40
come out	0:8 1:19 5:31 9:-10 19:-8 20:39 49:13 64:16 71:9 74:27 126:19
out ,	0:18 1:13 20:29 37:9 44:14 63:18 66:10 79:8 96:15 107:10 122:10 123:-10 126:-41
replac	0:16 31:18 47:10 72:-16 79:38 126:-21
here ,	3:10 8:13 14:9 16:-10 26:9 36:11 45:8 46:11 51:39 54:28 59:-8 63:16 67:-13 109:40 116:12 118:-14 119:-9 126:-21
, any	0:10 18:45 66:9
any home	1:13
home for	0:-11 1:87
for it	0:22 1:8 2:8 3:-12 5:10 42:-9 43:27 48:14 62:10 65:13 66:-14 78:-9 84:66 85:-35 92:9 107:19 114:25 115:8 117:10 126:-40
is piec	1:28 24:89 37:-8 39:-27 126:-40
tin ,	0:-13 1:9 2:-14 5:-9 7:28 8:-17 21:-10 22:31 38:-8 39:26 40:40 76:18 126:37
, wher	1:50 2:13 3:18 4:18 13:33 15:-8 20:8 34:32 37:-12 40:-12 41:-12 71:-8 73:-8 108:15 126:-18
would that	0:-9 2:24 3:22 16:45 62:-8 96:-10 126:-20
that end	1:9 38:8
^ found	1:10 40:9 92:12
found a	15:9 39:20 104:16 120:13 126:-22
, #d	0:-11 2:25 3:11 8:-16 16:-13 18:-12 22:-9 37:-19 38:-15 40:63 41:-11 42:35 43:28 45:-8 46:-10 47:-57 50:42 56:-13 68:-28 69:49 70:-34 71:-8 73:49 75:-10 76:30 77:25 79:74 80:-12 81:93 82:-24 83:-9 89:50 91:-8 99:-17 117:46 118:13 126:-31
, who	0:-13 2:10 13:-15 14:-19 15:45 26:12 27:13 29:-24 30:14 34:26 63:23 64:12 65:28 92:-9 97:14 116:-11 121:9 126:48
use it	1:8 37:-12 102:29 103:8
take piec	1:30 24:20 38:-15 39:-17 41:12 126:-11
already==	1:10 2:19 3:-17 11:54 13:82 15:30 22:-15 24:22 25:-8 27:25 29:-16 30:-17 31:17 32:27 33:-13 34:-11 40:-9 43:18 45:-11 53:11 55:-9 65:-10 74:9 82:-10 83:10 92:-8 96:-8 98:-12 109:9 111:12 119:57 120:-8 126:-61
#d ,	0:-33 1:-16 2:38 3:50 18:55 38:10 39:-16 40:42 41:-29 43:-27 47:-53 51:-16 68:-10 70:69 71:-8 76:88 77:-22 79:29 80:-8 81:82 82:-18 92:-12 99:-16 117:30 118:-13 126:-10
already	1:10 2:19 3:-17 11:54 13:82 15:30 22:-15 24:22 25:-8 27:25 29:-16 30:-17 31:17 32:27 33:-13 34:-11 40:-9 43:18 45:-11 53:11 55:-9 65:-10 74:9 82:-10 83:10 92:-8 96:-8 98:-12 109:9 111:12 119:57 120:-8 126:-61
end already	1:13 3:-10 40:-9 43:18
already dress	1:12 3:-9 40:-9 43:18
raw==	0:-8 1:41 3:58 38:18 40:35 42:-21 43:24 47:-11 70:-14 80:-16 81:18 126:-14
a @wire	24:18 40:12 47:-11 80:-8 86:33
question==	1:47 7:-40 25:-11 36:107 38:-9 40:-8 84:-8 85:-8 126:18
question	1:47 7:-40 14:-11 25:-12 36:153 38:-9 40:-8 84:-8 85:-8 126:18
same question	1:47 38:-8 40:-8
question for	1:47 38:-8 40:-8
for piec	0:-17 1:86 24:11 37:-12 38:-19 39:-8 41:-8 70:9 126:-11
sorry==	0:-8 1:68 3:24 8:-14 9:8 11:-9 29:-11 30:-9 39:9 42:-8 45:10 49:15 63:8 78:23 92:14 94:-20 108:-10 111:48 112:-25 118:13 119:-8 125:17 126:18
sorry	0:-8 1:68 3:24 8:-14 9:8 11:-9 29:-11 30:-9 39:9 42:-8 45:10 49:15 63:8 78:23 92:14 94:-20 108:-10 111:48 112:-25 118:13 119:-8 125:17 126:18
^ sorry	1:75 8:-13 9:-9 29:-10 30:-8 39:10 45:10 78:10 111:58 125:11 126:-16
sorry ,	1:77 8:-13 9:-9 29:-10 92:15 111:59 125:9 126:-20
, it	0:-14 1:45 3:-79 5:-11 6:17 8:-16 9:-17 11:-10 12:12 13:-16 15:-18 17:-20 18:-10 22:-10 24:-17 25:-9 26:-27 27:-8 28:-9 29:9 30:-11 32:-17 34:-9 38:42 40:42 42:-10 43:18 44:10 46:-13 48:-15 49:39 53:-15 56:-13 57:10 58:25 62:23 65:-10 66:36 67:20 68:27 69:-13 70:44 71:11 72:-18 76:20 77:-9 78:18 79:37 82:-9 86:22 87:-39 88:54 90:-31 91:-10 92:-12 93:21 94:-30 95:26 96:10 97:17 99:27 100:-14 102:24 103:55 104:-17 105:15 108:-11 114:13 120:11 122:26 123:-13 126:-9
most==	0:-8 1:22 4:20 5:17 16:16 23:-11 25:17 34:-10 82:-11 114:10 125:26 126:85
go ,	1:17 12:21 30:11 39:-30 61:10 63:16 82:11 126:41
most	0:-8 1:22 4:20 5:17 16:16 23:-11 25:17 34:-10 82:-11 114:10 125:26 126:85
most of	1:13 2:12
it come	20:8 32:22 33:-13 48:29 117:11 118:-13
come off	1:17 2:32 17:-8 33:-14 39:10 123:23
used piec	0:37 1:-10 34:17 37:19 38:-16 39:-8 126:-10
it do	42:24
nearest==	0:10 1:14 12:12
, which	0:26 1:33 4:-11 5:9 6:-9 9:-10 10:-14 12:21 13:-16 14:-11 15:19 17:17 22:8 25:44 26:14 27:14 29:12 31:9 32:-8 33:29 34:12 43:-14 44:13 46:-20 53:-18 56:9 62:11 65:-12 68:-9 90:-12 104:9 110:19 111:-19 112:-13 116:10 117:11 121:13
nearest	0:10 1:14 12:12
suit any	1:32 18:-12
any slot	0:-23 1:53 18:-12
i've==	0:-13 3:-16 5:-13 8:-11 9:-8 11:-11 13:-33 15:-13 16:-14 20:-8 22:-13 23:14 24:-8 25:-8 26:-14 27:-10 29:10 30:-8 32:-10 33:12 36:20 37:28 38:-12 39:-16 41:13 42:-8 43:23 44:16 45:10 49:-16 51:-21 58:-8 59:-13 63:-9 64:16 65:63 66:-20 67:12 73:9 79:39 82:-8 83:9 84:13 85:-10 87:8 90:-16 91:-8 92:9 95:14 97:20 98:15 99:-11 102:-9 104:19 106:9 108:18 109:50 115:-20 116:-14 117:41 118:-13 125:27 126:11
inch==	0:-9 1:18 7:24 16:17 42:-14 75:13 77:8 126:18
hand==	6:20 8:114 9:-16 12:-8 16:14 17:8 18:-8 19:-8 24:-10 29:-9 30:-18 32:-16 40:-8 51:-19 59:13 65:27 67:46 69:-13 70:50 83:-8 103:12 104:-15 107:27 108:12 109:8 126:33
i've	0:-13 3:-16 5:-13 8:-11 9:-8 11:-11 13:-33 15:-13 16:-14 20:-8 22:-13 23:14 24:-8 25:-8 26:-14 27:-10 29:10 30:-8 32:-10 33:12 36:20 37:28 38:-12 39:-16 41:13 42:-8 43:23 44:16 45:10 49:-16 51:-21 58:-8 59:-13 63:-9 64:16 65:63 66:-20 67:12 73:9 79:39 82:-8 83:9 84:13 85:-10 87:8 90:-16 91:-8 92:9 95:14 97:20 98:15 99:-11 102:-9 104:19 106:9 108:18 109:50 115:-20 116:-14 117:41 118:-13 125:27 126:11
^ i've	1:10 3:-15 13:-17 15:-9 19:8 22:-11 23:19 32:-8 33:13 34:-8 36:20 37:15 39:-11 43:22 44:26 45:9 46:-15 48:11 49:-9 51:-15 59:-11 61:8 65:74 66:-8 72:-8 73:10 79:19 83:8 84:17 85:-9 87:9 88:8 90:-11 91:-9 92:19 94:-9 97:11 98:-13 108:-24 109:35 115:-12 116:-11 117:41 118:-10 126:-34
inch of	0:-11 1:34 69:14
in my	1:10 11:19 15:9 17:10 23:12 24:15 26:-11 27:17 34:16 67:8 78:-8
my hand	1:10 8:8 17:9 65:22 67:8 79:9 126:-9
hand ,	1:9 8:13 17:10 70:14 126:23
or==	2:14 3:98 4:-9 5:25 8:28 9:30 10:31 11:-21 12:15 13:42 15:91 16:-13 17:60 18:19 22:31 23:-8 24:29 25:-10 26:101 27:16 28:13 31:9 32:28 33:44 38:-8 39:-8 40:-8 42:-20 43:-43 44:-31 46:-12 48:-22 60:-34 61:-10 62:-8 65:-68 66:-12 67:-19 76:8 77:-11 80:34 82:13 88:-27 90:-28 92:-26 94:10 96:-12 97:9 98:-14 100:-18 102:-21 103:-16 105:-21 107:-8 108:-8 109:-21 115:-8 118:-14 120:-10 126:33
a slot	0:-22 1:56 2:23 3:-34 18:54 38:-9 75:13 126:-20
or	2:14 3:98 4:-9 5:25 8:28 9:30 10:31 11:-21 12:15 13:42 15:91 16:-13 17:60 18:19 22:31 23:-8 24:29 25:-10 26:101 27:16 28:13 31:9 32:28 33:44 38:-8 39:-8 40:-8 42:-20 43:-43 44:-31 46:-12 48:-22 60:-34 61:-10 62:-8 65:-68 66:-12 67:-19 76:8 77:-11 80:34 82:13 88:-27 90:-28 92:-26 94:10 96:-12 97:9 98:-14 100:-18 102:-21 103:-16 105:-21 107:-8 108:-8 109:-21 115:-8 118:-14 120:-10 126:33
)~",
R"~(#n or	0:-11 1:12 2:9 3:-18 15:28 24:29 67:-14 80:32 109:-15 126:35
or is	0:21 1:15 3:-10 15:24 17:31 18:17 24:28 26:19 77:-8 126:-59
it scrap	0:-10 1:25 3:-9 82:8
long .	3:24 51:19 118:-9
. wher	20:8
wher $	1:70 2:11 13:14 14:27 15:39 16:16 17:-12 34:-10 41:-8 126:-11
to look	11:29 59:29 60:-12 62:32 102:-24 126:47
tomorrow==	1:-9 6:-9 8:-12 9:-10 11:24 12:-23 13:-8 14:-40 15:-8 16:-8 17:-9 22:-10 23:-26 24:-10 26:-53 27:48 29:96 30:101 32:-18 33:-22 34:-17 36:-16 37:-15 39:-8 41:-18 44:-15 46:-36 48:63 53:-12 54:66 55:41 56:-20 58:-11 59:-8 62:-10 63:-25 64:-14 65:-12 84:-12 100:-20 101:-15 102:40 103:-26 104:-18 106:81 107:30 108:-11 109:-32 110:-18 111:93 112:82 113:67 116:66 118:-13 119:67 120:-12 123:-8 125:-12 126:34
have done	11:23 30:-12
^ everyth	11:13 12:46 24:19 26:15 34:52 45:13 46:21 74:12 85:-9 104:-22 126:-16
that fall	11:15
com month	27:12
ahead==	10:30 11:60 29:30 37:21 38:-12 58:11
ahead	10:30 11:60 29:30 37:21 38:-12 58:11
ahead $	10:32 11:55 29:30
long have	4:-19 8:-9 9:16 11:72 28:-24 33:9
got for	0:9 4:-17 11:72 28:-18
clock==	11:41 30:-18 46:14 105:10 108:23
clock	11:41 30:-18 46:14 105:10 108:23
the clock	11:41 30:-18 46:15 105:10
@job -	11:22 13:-9 16:70 17:-9 49:-8
- promis	11:22 53:-8 119:21
when $	9:10 10:19 11:12 14:-8 15:-13 19:-9 26:-49 27:18 29:-17 30:62 31:28 32:37 34:55 44:-11 126:-10
day ,	10:21 12:-8 14:-16 22:10 26:-9 29:38 30:-23 31:12 53:21 54:35 56:20 57:-20 63:35 100:22 104:8 110:8 112:-9 113:-18 122:17 126:32
wise==	11:23 12:8 17:18 26:-10 30:10 36:-11 99:16 101:39 102:29 126:-16
me what	0:13 4:-10 8:53 9:-11 11:32 12:-9 13:-22 21:16 22:-9 24:23 27:-16 28:20 30:-8 33:13 34:17 36:8 126:-18
press ,	11:22 16:-22 26:68 27:17 29:-16 36:-11 44:-13 45:29 56:8 86:15 96:10 100:28 101:-15 102:-8 104:27 106:20 107:-8 108:12 126:-21
wise	11:23 12:8 17:18 26:-10 30:10 36:-11 99:16 101:39 102:29 126:-16
- wise	11:24 12:8 17:19 30:12 36:-11
wise $	11:24 12:8 17:19 30:12 36:-11
drawer==	1:-25 2:-8 3:-13 8:28 9:-13 10:-13 12:-12 14:-16 18:-10 22:35 33:76 34:-9 37:-17 38:15 40:72 42:-16 43:57 50:-16 51:-13 54:-21 58:-10 70:-18 71:-17 73:85 76:-19 79:14 80:69 81:-26 83:-26 87:-34 113:-11 121:26 123:28 126:93
@wire drawer	8:12 9:-8 22:33 126:-10
metre==s	0:-8 1:-11 8:39 9:-15 19:-15 21:28 38:-9 40:-16 51:16 52:80 67:38 68:-12 69:29 70:36 80:-12 117:-15 119:-9 121:24 122:13
metre	0:-8 1:-11 8:39 9:-15 19:-15 21:28 38:-9 40:-16 51:16 52:80 67:38 68:-12 69:29 70:36 80:-12 117:-15 119:-9 121:24 122:13
many metre	8:9 9:-10 19:-11 21:30
metre of	8:37 9:-8 19:-13 21:30 51:8 52:-13 67:47 68:-20 69:33 117:-11 126:-13
list everyth	8:33 12:12
everyth on	8:33 12:-8 45:13 46:24 126:-13
meant==	0:29 8:52 9:-8 15:18 22:-10 24:-8 30:10 32:21 37:-13 38:11 41:11 71:-12 72:9 76:-15 84:11 90:-13 125:9 126:27
no ,	0:25 1:-9 8:52 16:102 22:-12 33:-16 37:-14 38:94 39:-17 41:8 48:45 53:-16 54:-14 62:14 65:-10 66:-10 82:-9 85:18 90:-26 92:-8 100:-15 101:-9 102:41 103:-8 111:-15 113:11 114:-23 118:14 123:-9 125:16 126:10
, i	0:-37 1:-38 3:-18 4:-12 5:-11 6:-11 8:43 9:-25 10:-10 12:-13 13:10 14:27 17:-28 18:-9 19:18 22:-22 27:-11 28:-14 29:17 30:35 31:-21 32:13 34:-15 37:-22 38:27 39:44 40:-14 42:51 44:-9 45:-18 48:12 49:-11 52:-19 54:32 56:-11 57:-10 62:9 66:11 67:26 68:-17 69:8 70:27 71:18 72:-9 74:8 78:30 80:34 82:10 85:-8 86:12 87:8 88:18 90:-25 92:10 98:-9 99:-11 101:-8 102:29 103:12 107:-8 111:-37 113:-11 115:16 119:21 120:9 125:14 126:-17
meant	0:29 8:52 9:-8 15:18 22:-10 24:-8 30:10 32:21 37:-13 38:11 41:11 71:-12 72:9 76:-15 84:11 90:-13 125:9 126:27
i meant	0:29 8:53 22:-9 41:12 71:-12 72:10 126:-11
bit==s	2:13 7:11 8:13 9:-15 19:-9 21:10 22:77 24:18 37:-12 40:15 72:-10 73:-8 80:50 83:23 84:20 92:18 126:-27
many bit	8:22 9:-8
lying around	0:11 8:26
around $	2:10 8:22 74:9
short piece	8:11 21:10
many @wire	8:28 24:-8
put by	8:25 9:-8 19:-8 24:54 38:-22 84:10 85:27 126:34
by $	8:23 9:-9 24:13 30:-8 32:24 38:-17 84:27 126:33
read me	8:18 12:25 13:43 17:-13 34:55 36:-9 126:-16
what length	0:-15 4:53 8:13
length of	0:-15 1:18 4:23 8:44 22:-14 40:-11 42:51 70:42 73:8 81:11 93:-15 126:-22
@wire lie	8:10 22:27
lie in	8:35 22:-21 76:34 88:13 95:-10 96:-8 126:17
accord==ing	8:14 17:12
ther be	8:15
be on	4:24 8:15 16:-10 18:26 28:-9 46:-9 94:15 99:24 106:9 116:29 126:-34
accord	8:14 17:12
accord to	8:14 17:12
to you	8:15 36:11
you $	1:-8 3:-13 8:13 9:-10 12:25 17:10 30:-10 34:28 36:-10 38:-10 39:35 44:-8 61:8 71:-12 82:16 85:8 107:10 113:16 114:12 115:19 125:18 126:20
pleas==e	0:27 2:-11 3:-19 4:30 6:40 8:45 10:32 12:35 13:33 14:10 15:20 17:30 18:12 19:-10 21:-11 24:27 26:13 27:-9 29:21 31:-19 32:27 33:30 34:27 36:46 38:16 40:11 41:17 42:14 43:-11 44:-41 46:-28 48:14 49:21 50:10 55:-20 56:19 57:-13 58:34 59:20 61:25 62:14 64:-21 65:30 66:19 67:-15 70:-15 71:-19 72:-18 73:-18 74:12 75:-13 76:-20 78:-8 79:-14 80:-14 82:-24 85:-12 88:-16 89:11 90:-25 91:-26 92:-28 93:-19 94:-8 96:-10 98:-24 100:-12 102:12 105:-9 106:-17 107:36 108:-27 109:-17 110:-18 111:-12 112:-20 113:30 114:24 115:13 116:12 117:-10 118:-36 119:-14 120:25 121:-12 122:-19 125:26 126:-40
wire on	8:71 9:-13 16:11 18:16 32:-9 40:-14 51:47 67:-9 121:14
on hand	8:116 9:-14 30:-27 32:-14 67:18 69:-12 70:55
pleas	0:27 2:-11 3:-19 4:30 6:40 8:45 10:32 12:35 13:33 14:10 15:20 17:30 18:12 19:-10 21:-11 24:27 26:13 27:-9 29:21 31:-19 32:27 33:30 34:27 36:46 38:16 40:11 41:17 42:14 43:-11 44:-41 46:-28 48:14 49:21 50:10 55:-20 56:19 57:-13 58:34 59:20 61:25 62:14 64:-21 65:30 66:19 67:-15 70:-15 71:-19 72:-18 73:-18 74:12 75:-13 76:-20 78:-8 79:-14 80:-14 82:-24 85:-12 88:-16 89:11 90:-25 91:-26 92:-28 93:-19 94:-8 96:-10 98:-24 100:-12 102:12 105:-9 106:-17 107:36 108:-27 109:-17 110:-18 111:-12 112:-20 113:30 114:24 115:13 116:12 117:-10 118:-36 119:-14 120:25 121:-12 122:-19 125:26 126:-40
pleas $	0:48 2:-26 4:15 6:58 7:17 8:15 9:-15 10:28 11:-8 12:62 13:33 14:29 16:16 17:10 18:21 20:22 21:-8 22:10 24:23 26:19 27:27 28:-13 29:34 30:31 31:-18 32:18 33:44 34:13 36:47 37:19 38:-39 40:12 41:-23 44:-14 46:-13 48:10 49:-16 50:-9 53:-11 56:8 58:9 59:-18 61:9 62:11 63:-19 64:-13 65:13 66:39 73:-16 76:-14 82:-8 83:-11 84:-15 88:-15 90:-19 91:-19 92:-17 96:-14 98:-15 99:-25 100:-15 102:-8 105:-11 106:-9 108:-24 109:-22 110:-13 111:-22 112:-13 113:24 114:36 115:22 116:10 117:-8 118:-32 121:-10 122:-16 125:-14 126:-55
order anyth	9:44 10:-10 32:-9
everyth in	8:-8 9:17 12:-12 30:23 57:9 84:17 85:-14
put on	9:41 10:-20 15:40 16:20 17:-13 32:-12 34:-19
wire order	9:23 10:44 32:9 117:9 121:-15
get through	9:15 10:-9 12:-8 30:19
@wire we	8:-33 9:31 12:-8 24:11 32:-25 52:16 67:-14 68:12 71:-9 83:15 118:51 119:14 120:35 126:-30
we good	8:-16 9:43
, or	3:13 8:14 12:21 13:24 15:-8 17:-15 20:11 28:17 32:-10 44:-15 88:-21 126:57
or should	9:8
get more	9:8 94:19
ring==ing	9:42 10:-15 11:19
ring	9:40 11:8 14:-11 33:41 50:-12 54:9 57:16 58:9 109:18
ring the	9:42 10:-15 11:-11 14:-9 33:10 58:18
supplier ,	9:41 10:24 19:-12 121:61 122:-29 123:-15 126:32
we want	9:42 33:-21 100:13
@wire get	9:34 32:-13 117:13
get us	5:17 9:33
under their	9:34 17:-9 91:10
for wire	6:-13 8:13 9:49 10:34 19:-8 24:-19 29:-11 32:15 33:-11 121:11
many more	8:-9 9:27
situation==	8:-8 9:65 26:10 99:26
situation	8:-8 9:65 26:10 99:26
situation $	9:66
eat==	5:29 8:-10
job still	9:21 12:16
eat	5:29 8:-10 9:12 58:9
eat $	5:20 8:-9
@wire low	9:24 52:22
pass ,	16:59 46:-8 56:10
, @job	0:-26 2:-11 3:-9 4:50 6:11 13:-14 15:-18 16:8 17:-10 24:-17 34:14 37:-25 38:67 39:18 41:8 42:11 44:40 45:-15 47:-15 49:66 66:-17 74:-8 75:9 76:-9 77:13 79:-11 84:-10 88:-12 90:37 91:27 92:34 108:-8 115:-41 120:-11 126:9
how hard	16:33 25:16 126:-11
hard do	16:13 25:16
whol press	16:31
press schedul	16:39 30:26 102:-8
lb==	5:-17 16:40 45:51 56:114 61:-12 81:-9 86:39 100:-13 103:-8 126:21
kilo==s	16:9 45:-8 126:17
go to	0:9 5:8 16:9 18:20 38:-8 45:-8 65:-10 75:-11 126:14
kilo	16:9 45:-8 51:19 59:-8 64:37 99:33 121:34 122:23 126:17
the hollow	16:34 41:-10 45:23 87:45 101:-9 126:36
hollow bar	16:31 45:22 126:38
re==	2:89 13:-9 48:-10 63:-8 64:55 74:-10 76:25 96:22 126:-18
re	2:89 13:-9 48:-10 63:-8 64:55 74:-10 76:25 96:22 126:-18
)~",
R"~(to re	2:14 16:8 126:-9
re -	2:89 13:-9 48:-10 63:-8 64:55 74:-10 76:25 96:22 126:-18
- press	16:8 106:-13 116:15
ram==	3:-12 16:54 26:-13 45:10 46:19 56:13 100:9 102:16
, if	8:28 14:21 74:-11 82:11 126:13
ram	3:-12 16:54 26:-13 45:10 46:19 56:13 100:9 102:16
the ram	16:24 45:12 46:19 102:11
ram stand	16:21
off to	16:15 54:19 85:8 109:-23 111:-16 119:15 126:54
far can	16:9
@job side	13:-16 17:22 46:17 49:-8 90:56
lean==	16:9 47:10 59:11
^ want	16:8 45:-10 126:20
want to	2:12 8:18 9:-10 12:8 13:-8 20:-8 21:15 24:23 26:20 27:11 28:-8 29:30 30:-13 31:-11 32:12 36:11 38:11 42:10 45:-11 49:-13 59:12 63:-16 65:-15 70:15 76:-8 88:10 111:-14 112:-16 116:17 125:8 126:53
lean	16:9 47:10 59:11
, how	0:-10 2:71 3:-15 4:9 5:43 8:67 9:-11 10:23 13:27 16:20 17:-13 18:-8 20:-8 21:22 28:55 29:13 32:-11 33:31 36:17 45:-18 68:-14 72:-8 78:-8 81:-20 90:-8 92:-8 118:-16 126:8
and how	4:27 8:-24 9:46 13:59 25:9 28:-19 32:-13 33:54 36:-11
much $	5:-8 8:68 9:-22 16:13 17:21 19:-10 56:9 126:-12
press yet	13:-23 15:-8 16:89 45:-12 126:-38
the short	2:12 4:-9 8:19 16:73 20:-8 21:21 43:-19 45:34 62:23 72:8 76:16 86:29 87:19 126:-14
short bar	16:21 43:-12 45:76 86:27 87:24 98:-10 126:-24
^ pass	16:42 65:14
, the	0:-15 2:-32 4:15 5:-14 7:-11 8:36 10:16 11:12 12:24 13:16 14:-8 16:18 17:-22 18:-30 19:-20 20:-11 22:-9 23:-10 24:24 26:-20 27:-11 30:-28 31:-22 32:19 33:-20 34:17 38:21 39:-10 40:-11 41:-9 42:19 43:-8 44:-28 45:-15 46:8 48:50 49:25 50:-8 53:20 55:-20 59:-19 63:8 64:10 65:-11 68:-27 71:-8 72:-13 73:-21 79:25 80:-14 81:-17 82:37 83:-8 85:29 89:12 90:18 91:-12 93:-14 94:15 95:37 98:-10 100:24 101:-35 102:50 103:29 104:17 106:-39 107:10 109:21 111:22 112:12 115:-12 118:82 119:31 120:-11 121:-14 122:19 123:-20 125:11 126:-53
the edge	16:-17 17:22 43:10 46:46 76:-11 90:26 95:10 126:36
edge next	16:-10 17:53 126:-8
, next	11:15 13:-8 16:17 17:21 27:8 29:29 30:13 31:22 102:-16 107:14 108:11 111:-8 126:-20
?==	1:14 2:-8 3:-26 4:-11 6:20 9:-9 10:17 11:-14 12:-9 13:-23 14:17 15:-13 16:-13 20:36 22:18 24:-9 25:18 26:-8 27:-12 29:8 32:-9 34:-11 36:-9 38:8 53:-13 58:10 60:14 62:14 65:-21 66:-8 74:20 92:11 93:10 95:-10 100:10 104:14 105:23 106:8 113:15 118:16 126:37
^ good	3:20 38:27 48:-8 56:13 103:42 110:9 119:32 126:-23
enough to	17:27 56:17
to call	17:27 100:9
level ?	17:23
? job	17:23
how doe	9:-14 13:36 16:-13 17:20 20:34 25:-10 28:-13 30:-16 33:-8 36:115 105:-10 126:-11
look ,	8:11 17:18 46:58
, straightedg	17:20
line of	15:-18 17:39 71:-10 93:16 98:17
level tabl	17:31
are high	13:-12 17:49
so==	0:-20 1:-28 2:47 3:-45 8:-16 9:-12 10:-15 11:-15 12:16 13:19 14:31 15:-19 17:10 19:16 21:12 22:11 24:-25 26:-24 28:-19 29:-24 30:-14 31:-36 33:-24 34:-12 39:26 42:22 43:-9 46:-14 47:-10 48:-8 51:-25 52:16 53:17 54:9 56:24 58:15 61:13 62:33 63:10 64:-16 65:53 66:-24 67:-21 68:12 69:11 70:-12 71:-15 72:33 73:-8 74:40 76:9 77:-12 80:31 81:-20 82:27 84:26 85:14 86:-9 87:19 88:-9 90:-34 93:10 97:19 99:-26 100:23 101:26 102:12 104:39 106:-13 108:-11 111:-13 112:-23 114:89 116:10 118:-10 120:41 121:-14 122:14 123:16 125:-19 126:-49
culprit==	17:51
so	0:-20 1:-28 2:47 3:-45 8:-16 9:-12 10:-15 11:-15 12:16 13:19 14:31 15:-19 17:10 19:16 21:12 22:11 24:-25 26:-24 28:-19 29:-24 30:-14 31:-36 33:-24 34:-12 39:26 42:22 43:-9 46:-14 47:-10 48:-8 51:-25 52:16 53:17 54:9 56:24 58:15 61:13 62:33 63:10 64:-16 65:53 66:-24 67:-21 68:12 69:11 70:-12 71:-15 72:33 73:-8 74:40 76:9 77:-12 80:31 81:-20 82:27 84:26 85:14 86:-9 87:19 88:-9 90:-34 93:10 97:19 99:-26 100:23 101:26 102:12 104:39 106:-13 108:-11 111:-13 112:-23 114:89 116:10 118:-10 120:41 121:-14 122:14 123:16 125:-19 126:-49
^ so	0:-8 12:16 13:-22 15:-15 16:-13 17:52 26:-10 30:-15 37:29 38:9 42:8 65:-12 69:9 73:-8 76:-9 77:-8 92:8 93:15 95:8 96:-13 97:8 104:26 109:-9 110:10 112:15 114:91 115:-9 126:-19
so which	0:17 17:50 22:10 24:10 27:11 29:-12 126:-9
which #n	15:20 17:43 52:18 90:-12 126:14
culprit	17:55
the culprit	17:55
culprit $	17:55
any low	17:65
low fret	17:42 42:-15 93:20
did #n	17:89 76:-9 79:13 90:-21 98:10 126:-52
sunk==	3:-16 13:-8 15:-12 17:58 65:-13 78:-8 90:95 94:-13
sunk	3:-16 13:-8 15:-12 17:58 65:-13 78:-8 90:95 94:-13
sunk or	3:-10 15:-9 17:27 90:-21 126:36
or not	3:39 9:43 13:39 17:31 26:27 42:-14 76:9 103:-11 104:11 119:8 121:10 126:-47
not ,	17:34 26:16 49:-12 61:15 63:-16 64:18 65:14 95:27 104:10 111:32 126:-47
been levell	17:14 34:-11 83:-9 98:19 108:14
enough or	9:28 17:14 126:-13
ther still	8:34 17:14 32:-15 126:-11
high one	17:14
tell us	13:-11 17:22 36:18
us about	13:-11 17:19 52:10
verdict==	3:28 13:-15 17:72 42:-13 46:8
verdict	3:28 13:-15 17:72 42:-13 46:8
the verdict	3:31 13:-10 17:36 42:-12
verdict on	3:28 13:-15 17:72 42:-13 46:8
what this	30:36
free ,	9:-8 10:21
sander==	5:-11 8:-10 9:-11 10:-9 11:-18 12:-19 13:-12 14:-25 15:-9 16:-9 17:-14 21:-8 22:-12 23:73 24:-11 25:-10 26:76 27:109 28:46 29:-31 30:14 31:-21 32:-13 33:-13 34:-18 36:-18 39:-15 41:-11 44:10 46:-11 48:-11 49:-20 53:-13 54:-14 55:-12 56:-14 58:-20 59:-9 62:-18 63:-12 64:-13 65:-9 66:-12 78:18 84:-10 85:-14 87:-8 88:-10 90:-9 98:-9 99:-33 100:88 101:64 102:117 103:135 104:103 105:-32 106:122 107:104 108:-9 109:-14 110:-19 111:-29 112:-26 113:-14 114:-9 116:-9 118:-9 119:-12 122:-8 123:-10 125:-15 126:30
turn==	0:8 11:-13 23:14 30:39 49:29 50:-11 56:19 85:9 100:-8 102:12 121:28 126:-15
^ plan	5:29 30:29 104:11 105:17
agenda ,	30:43
happen==ing	30:34 102:-10 107:18
is happen	30:34 34:-8
on my	1:9 12:25 39:30 117:-9 118:25 126:-34
my list	10:-8 12:46 30:44
still want	13:33
want a	13:13 22:17 27:17 30:-8 52:11 100:-10 104:42 126:-29
anyth done	13:11 34:29 44:-13
@job yet	15:69 44:-8 126:-15
not done	109:35 126:-10
#n yet	13:48 95:-16 98:-9 126:41
- what	0:47 13:9 36:-25
still miss	13:35 17:-9 126:-8
bound $	13:34 15:-10
width on	13:46 89:12
fan==ned	13:25 15:-9 66:18 126:-11
squar==e	13:25 15:-9 70:11
fan	13:25 15:-9 66:18 126:-11
@job fan	0:8 13:25 15:-9
fan ,	13:25 15:-9
, and	0:18 1:12 3:-25 5:-11 8:-44 10:29 11:-15 17:-15 19:-10 20:10 24:8 26:-18 28:-23 29:14 30:62 32:27 33:25 34:33 36:-9 37:-16 39:38 42:21 43:-8 44:-20 45:9 46:24 49:-11 50:-11 51:43 54:22 55:-11 57:18 59:23 60:9 67:17 70:-17 73:-17 76:13 79:35 81:-9 89:14 90:-11 94:17 96:11 105:-8 109:-11 112:-11 113:-8 117:-16 118:9 120:-9 121:-24 122:36 126:-73
squar	13:25 15:-9 70:11
yes ,	37:63 104:15 125:-9
, put	3:-9 37:44 43:21 51:8 56:-8 59:8 63:30 64:-9 65:8 66:8 67:-12 70:9 73:22 75:9 84:19 99:8 100:12 105:9 108:-9 112:8 115:12 117:14 126:-21
it in	3:-14 11:16 21:10 37:28 43:32 51:-8 73:-11 94:15 96:17 102:9 112:9 114:10 116:14 118:8 125:-13
pop==ped	25:18 37:21 46:14
pop	25:44 37:21 46:12 71:-12 83:19 126:-10
^ pop	37:21 71:-12 83:19
pop the	37:19
#d into	37:19
:==	0:-13 2:9 3:-27 4:-21 6:-23 7:-16 8:12 9:-15 11:-34 12:-18 13:-36 14:-13 15:-22 16:-12 17:-28 18:-8 21:-8 22:29 23:-20 26:-13 27:-27 28:-24 29:-15 30:-39 31:-25 33:-15 34:-33 39:-25 42:28 43:8 44:-36 45:-16 46:18 48:28 49:22 50:13 51:38 53:29 54:37 55:-17 56:36 57:48 58:-15 59:75 60:8 61:-17 63:13 64:31 65:-36 66:27 67:14 68:29 69:12 70:19 71:-21 72:53 73:-22 76:22 77:11 78:26 79:-18 81:14 83:-26 84:11 86:17 88:-16 89:25 92:38 94:15 95:-14 96:11 97:27 98:18 99:45 100:27 101:18 102:22 103:-25 104:65 105:16 106:-17 107:-13 108:15 109:-18 111:-8 112:12 115:-31 117:10 118:-44 119:23 121:26 122:31 125:-19 126:-68
:	0:-13 2:9 3:-27 4:-21 6:-23 7:-16 8:12 9:-15 11:-34 12:-18 13:-36 14:-13 15:-22 16:-12 17:-28 18:-8 21:-8 22:29 23:-20 26:-13 27:-27 28:-24 29:-15 30:-39 31:-25 33:-15 34:-33 39:-25 42:28 43:8 44:-36 45:-16 46:18 48:28 49:22 50:13 51:38 53:29 54:37 55:-17 56:36 57:48 58:-15 59:75 60:8 61:-17 63:13 64:31 65:-36 66:27 67:14 68:29 69:12 70:19 71:-21 72:53 73:-22 76:22 77:11 78:26 79:-18 81:14 83:-26 84:11 86:17 88:-16 89:25 92:38 94:15 95:-14 96:11 97:27 98:18 99:45 100:27 101:18 102:22 103:-25 104:65 105:16 106:-17 107:-13 108:15 109:-18 111:-8 112:12 115:-31 117:10 118:-44 119:23 121:26 122:31 125:-19 126:-68
#n :	1:-17 3:-30 11:29 13:-10 17:-11 24:34 30:-28 31:-16 34:-16 37:14 38:11 42:20 43:-11 44:13 47:-11 51:-17 54:-14 59:15 63:-8 65:-19 66:20 67:13 70:25 71:-10 73:9 74:16 78:10 79:-26 81:-20 82:-10 83:14 84:19 85:18 91:-12 92:43 94:11 96:-14 97:10 98:45 99:40 102:12 103:-12 108:10 109:-13 112:-8 114:-15 115:-19 116:16 117:8 118:19
)~",
R"~(: took	37:23 38:-8
took piec	37:17 38:-9 71:8
ago==	0:-17 1:-10 2:-9 3:-11 5:-11 13:-8 16:-16 34:-14 37:-17 39:31 40:15 41:23 42:22 44:36 45:30 46:22 51:-8 65:-10 66:-8 67:11 68:14 71:15 72:9 73:17 74:8 76:24 78:19 82:32 84:17 89:-18 90:-13 92:-11 93:-12 94:-8 96:18 97:29 98:18 99:-8 100:-28 102:8 103:46 105:-45 106:-10 108:22 109:50 116:-14 118:26 123:-9 125:10 126:-36
#n an	39:12 42:8 45:-15 76:16 109:15 126:-11
yesterday==	1:-18 3:-12 4:-11 8:-11 11:-8 12:-8 13:-15 14:-9 16:-9 17:-9 18:-9 19:-19 20:-8 24:-18 32:-14 33:-8 34:80 36:-9 37:12 38:28 39:20 40:14 41:22 44:20 45:35 51:39 62:-12 65:-10 67:9 68:28 69:-8 70:-13 71:32 72:8 73:20 74:17 75:12 76:-22 78:29 79:30 82:9 83:-8 88:-8 90:-9 92:-8 93:-13 96:41 97:8 98:36 103:17 106:-9 108:-15 112:-8 116:-10 117:28 118:8 119:13 125:-19
put piec	1:18 24:-16 34:44 38:11 126:-12
^ piec	0:-21 3:-12 37:27 39:36 40:-12 43:-11 70:54 71:84 81:9 82:-18 83:-13 90:-10 99:-9 126:90
that #n	0:-13 11:8 15:49 17:25 34:-12 36:9 38:22 39:32 43:17 49:38 51:-10 65:39 67:-11 73:9 84:-8 92:10 94:11 95:11 100:35 101:13 102:-10 107:-8 112:-14 113:14 117:12 119:26 122:-8 123:18 126:-54
is ,	8:8 22:20 37:89 38:9 41:-11 50:8 68:13 88:12 101:-14 102:-15 104:31 107:-10 126:27
, in	2:-10 5:10 10:-15 13:13 15:11 26:23 27:9 28:28 33:20 37:24 40:9 41:-12 47:9 55:13 71:-13 82:-12 83:16 97:10 99:8 103:-12 116:-9 117:11 122:-24 126:48
in it	0:11 4:24 37:24 54:-10 55:10 73:10 75:8 78:9 99:9 121:8 126:24
it goe	0:-10 37:21 40:-17 41:8 66:8 126:35
goe $	5:14 37:22 41:11
get piec	0:-20 1:10 37:47 38:-26
, piec	1:-8 24:-27 38:-42 39:-12 41:13 70:9 76:-10 126:109
set piec	24:-17 37:-9 38:61 39:41 41:-10 84:-9 126:-30
use piec	0:-14 1:-43 3:51 24:20 34:70 37:-32 38:-28 39:-10 41:-19 126:62
might==	1:16 14:-9 15:-8 37:-21 49:-14 59:24 76:-10 80:-11 84:-9 86:10 91:-16 97:-10 99:-10 123:-17 126:219
later==	37:-14 42:23 46:27 49:9 68:-9 69:12 88:8 94:19 109:32 121:16
might	1:16 14:-9 15:-8 37:-21 49:-14 59:24 76:-10 80:-11 84:-9 86:10 91:-16 97:-10 99:-10 123:-17 126:219
i might	37:-21 126:30
might use	37:-21 126:23
later	37:-14 42:23 46:27 49:9 68:-9 69:12 88:8 94:19 109:32 121:16
#n later	37:-11 126:12
later $	37:-11 88:9 94:19 109:39
did anyon	17:-16 32:11 34:52 126:-11
and wher	1:-15 13:-10 14:22 15:49 16:40 17:-13 26:-10 30:12
did it	1:-9 5:17 20:12 44:48 65:-11 120:11 126:-25
tin :	0:12 22:16 40:47 80:9
: #d	2:18 18:-11 37:-12 40:20 42:85 43:-27 51:-9 67:34 70:18 73:-11 76:-10 77:31 82:-9
^ into	40:13
, @wire	0:-19 5:-9 6:34 7:48 8:-12 9:-25 18:29 19:63 21:48 22:55 24:-14 25:-10 32:-14 33:-14 40:53 41:-10 47:21 50:25 51:-43 67:21 68:14 70:-17 73:23 76:-8 79:-8 80:-8 82:-20 117:-12 118:-8 126:-17
#d and	1:8 2:47 3:-8 37:-10 40:28 42:-21 43:9 47:-10 70:11 73:61 75:-11 76:40 81:21 82:-8 83:-32 93:-20
mm ,	1:8 3:52 5:11 8:-16 40:60 42:-25 43:11 47:25 50:-21 51:-15 56:39 67:-17 70:34 73:8 75:21 76:-11 77:-12 79:14 80:-8 81:23 82:-20 83:-12 86:-11 93:-18 126:-13
, drawer	22:-13 40:-8 73:20 80:27
drawer #n	0:-18 1:-23 3:-12 22:12 24:16 37:-36 40:84 42:-16 43:58 51:-12 70:-8 73:93 76:-11 79:14 80:77 81:-22 82:-52 83:-25 126:46
add it	50:-9 51:19 57:11 68:-11
toss==	1:-13 37:-8 39:-33 40:8 41:67 82:12 83:-13 126:37
"==	40:18 42:16 81:25 126:-19
^ toss	1:-12 37:-8 39:-12 41:42 69:-8 82:29 83:-14 126:32
#p	0:84 1:-8 3:35 5:-8 9:-15 13:-8 16:-9 17:-13 22:-18 24:-24 34:-19 36:-28 37:16 38:35 39:-22 40:12 41:-30 42:88 43:19 44:-8 45:9 56:-12 70:-13 71:86 72:11 78:61 79:12 81:9 82:-20 83:32 90:12 92:12 96:15 98:30 126:-45
#n #p	0:-17 1:17 3:-17 40:19 42:57 43:18 78:-9 81:12 126:-18
"	40:18 42:16 81:25 126:-19
#p "	40:18 42:19 81:12 126:-17
&#p	0:87 3:35 5:-8 9:-15 13:-8 16:-9 17:-13 22:-18 24:-23 34:-18 36:-28 37:19 38:48 39:-20 40:13 41:-24 42:88 43:19 44:-8 45:9 56:-12 70:-10 71:44 72:12 78:61 79:12 81:10 82:-13 83:15 90:12 92:12 96:16 98:30 126:-43
&#n#p@wire	1:17 40:18
, #c	5:28 8:-8 16:-74 40:27 45:97 47:18 51:53 80:-10 86:35 117:10 118:-16
#c mm	1:-14 5:15 7:-11 8:-24 9:-9 16:-15 18:-8 20:-10 38:11 40:34 42:22 43:9 45:-14 47:29 52:49 56:-24 61:-13 67:45 68:-33 69:55 70:107 73:-9 80:-11 88:41 89:-11 93:-11 120:-9 126:33
, goe	1:17 40:16 53:27 110:-15
left over	1:20 5:-9 20:30 40:18
end ,	28:24 31:14 34:24 39:17 40:25 42:9 43:8 63:15 71:9 76:-19 81:8
@wire :	0:-8 5:18 7:9 8:9 9:13 22:-10 32:23 34:12 40:-9 50:-17 51:-19 52:19 67:50 68:42 69:-17 70:17 71:12 80:-14 89:28 117:-24 119:13 126:-15
, into	40:11 43:35 73:13 83:-9
tin pleas	40:22 73:-11
#n across	86:25 99:-10
radius #c	40:17 76:-10 81:16
i drop	40:16
drop a	40:14 123:-11 126:24
^ another	40:54 47:9 72:-14 79:18 80:-16
another #n	40:83 47:9 80:-20
#n x	40:17 86:8
a nip	99:12
nip #n	71:21 82:13 105:13 126:-14
, tang	50:25 78:9 81:-8
i've a	0:8 22:-8 30:12 106:10
spar @wire	40:14
tin with	43:30 73:11
not add	57:-9 126:34
add the	121:18 126:15
, all	2:-9 4:30 5:25 8:40 9:37 10:-14 11:-22 13:-11 14:-12 16:21 17:-8 18:-8 19:24 20:25 21:-9 24:-10 26:-14 30:41 34:-15 36:-12 45:13 46:24 50:-10 51:10 67:-11 70:-8 71:12 73:17 76:13 82:-9 84:-13 92:11 99:12 100:-8 102:-11 103:10 106:22 118:43 125:-8
just==	1:26 2:-14 5:9 6:-9 12:33 14:-17 15:-13 16:-8 17:20 21:-10 22:23 23:-8 26:71 27:-15 28:26 29:-9 30:-28 33:-10 34:-17 36:-24 40:10 41:-9 42:-15 43:-13 45:31 49:33 51:18 53:15 55:-9 56:-13 59:16 63:10 64:-8 65:-32 66:11 68:-17 69:18 70:-14 72:14 73:-18 74:-8 76:29 78:-9 80:13 85:-13 88:-9 92:-10 94:18 96:-19 97:12 98:12 99:13 103:-8 104:-9 105:-8 106:-19 107:-19 108:21 109:-19 110:-34 111:29 112:23 113:13 114:25 115:-9 117:35 118:12 119:-15 120:-12 122:10 123:-12 125:85 126:-12
just	1:26 2:-14 5:9 6:-9 12:33 14:-17 15:-13 16:-8 17:20 21:-10 22:23 23:-8 26:71 27:-15 28:26 29:-9 30:-28 33:-10 34:-17 36:-24 40:10 41:-9 42:-15 43:-13 45:31 49:33 51:18 53:15 55:-9 56:-13 59:16 63:10 64:-8 65:-32 66:11 68:-17 69:18 70:-14 72:14 73:-18 74:-8 76:29 78:-9 80:13 85:-13 88:-9 92:-10 94:18 96:-19 97:12 98:12 99:13 103:-8 104:-9 105:-8 106:-19 107:-19 108:21 109:-19 110:-34 111:29 112:23 113:13 114:25 115:-9 117:35 118:12 119:-15 120:-12 122:10 123:-12 125:85 126:-12
^ just	1:59 4:32 8:22 12:25 15:-8 16:-10 17:36 44:11 45:25 51:-17 53:-9 68:-9 69:11 94:10 98:11 112:15 117:23 125:-10 126:-34
just press	45:16
pound==s	16:22 28:-11 45:33 56:21 83:-10 86:22 87:-9 98:-9
, short	16:-24 45:35 76:10 87:17
bar ,	16:-12 45:27 86:10 99:-10 126:56
gaug==e	37:-8 44:-8 45:20 56:73 75:13 83:-8 92:8 93:26 100:-20 102:11 103:-10 104:-15 126:66
done ,	0:12 8:-9 9:17 13:9 15:29 28:18 34:-14 37:-8 44:29 45:33 71:13 98:14 115:-10 126:-10
gaug	37:-8 44:-8 45:20 56:73 75:13 83:-8 92:8 93:26 100:-20 102:11 103:-10 104:-15 126:66
the gaug	45:25 56:22 83:-8 92:11 100:-19 104:-13 126:74
gaug $	16:-10 45:42 92:13 102:11 126:-8
kn==	45:57 86:11 90:-13 96:-13
kn	45:57 86:11 90:-13 96:-13
kn $	86:10
are press	16:49 126:-28
night==	14:-13 34:-13 45:21 46:20 55:21 58:9 68:8 95:9 110:-14 112:-15 126:73
night	14:-13 34:-13 45:21 46:20 55:21 58:9 68:8 95:9 110:-14 112:-15 126:73
last night	14:-13 34:-11 45:21 63:14 68:9 126:26
night $	14:-13 34:-12 45:21 55:16 58:9 110:-16 112:-14 126:79
squeez==ed	16:-11 45:42 111:9
squeez	2:-15 16:28 26:-8 27:15 31:17 45:47 100:22 111:9 126:-16
^ squeez	16:-11 31:11 45:32
squeez #n	16:-9 45:22
down again	16:32 45:13
the long	4:-8 16:27 28:-11 34:25 45:17 76:-14 86:17 87:24 126:58
long bar	16:18 45:28 86:16 87:14 126:13
pass on	16:18 45:13
#t ,	42:10 44:-14 45:-10 53:16 54:17 55:38 68:8 78:12 98:10 102:10 106:52 108:27 109:-14 112:-30 116:-9 126:-25
have not	8:-8 9:-8 19:-8 22:18 37:-11 65:10 67:-20 73:-11 80:24 90:18 95:-14 98:-9 108:-9 109:-8 111:-13 126:147
not press	87:14 126:13
mark==	3:-17 4:46 5:-13 6:9 13:-13 16:16 17:-9 18:-8 38:8 43:18 44:16 52:40 54:22 63:34 64:-14 78:8 84:8 94:21 102:15 114:11 115:-11 126:9
not mark	115:-9 126:22
mark job	115:-9 126:22
#n as	1:-8 13:-13 37:20 38:40 42:-10 43:35 44:36 46:-10 49:-8 53:-8 55:21 66:-11 71:-10 77:-9 79:9 90:-12 94:44 96:45 107:-9 108:-10 110:12 114:34 115:-13 118:17 126:-16
and when	9:18 14:-8 15:-20 26:10 27:29 29:-12 30:8 34:71 44:-12
trebl ,	16:9
^ rock	59:9 90:18
)~",
R"~(stick==ing	17:26 77:-8 90:59 92:-10 119:-23 126:12
is stick	51:12 90:62 92:-9 117:-10 119:-23 126:13
stick up	17:26 46:-8 77:-8 90:83 92:-10 126:-40
look sunk	90:43
look high	17:-11 46:-8 90:62
, rock	90:41
rock ,	46:-10 47:9 90:36 126:10
, nut	47:44 82:-10 86:-8
held ,	24:48 85:8
, gap	90:8 91:8
the same	0:13 2:11 4:-38 6:67 7:-9 9:-8 13:89 16:-16 17:10 20:-15 28:-9 29:-9 33:-12 34:-12 40:16 44:-12 65:-8 71:-9 75:87 77:-9 82:28 83:22 84:-16 90:13 99:16 106:53 126:-14
quick==	0:13 3:-9 8:24 13:61 33:27 46:-16 68:10 90:35 116:-10 126:-13
^ had	44:-8 46:19 73:39 79:8 82:10 91:8 109:53 126:10
had a	8:23 25:16 37:23 46:-9 50:-21 67:8 70:14 89:-15 91:8 92:8 126:47
quick	0:13 3:-9 8:24 13:61 33:27 46:-16 68:10 90:35 116:-10 126:-13
a quick	46:-10 90:27
quick look	13:62 46:-13 90:29 116:-10 126:-10
, #r	2:23 4:44 16:-18 20:11 31:-8 45:14 48:11 53:-37 54:-10 55:57 72:28 76:12 96:12 97:9 110:17 111:-12
solid $	87:-15 90:29 126:16
look low	90:39 126:-19
last #n	4:29 28:-9 72:12 83:10 90:48 94:-9 99:8 105:15 125:40 126:-11
hang==	16:-8 18:-8 38:29 42:-11 54:13 56:10 62:-9 63:11 78:-8 88:12 89:8 90:-13 102:11 126:44
. .	9:-10 19:20 90:-22 126:22
hang	16:-9 18:-9 38:29 42:-12 54:13 56:9 62:-9 63:11 68:16 78:-8 88:46 89:8 90:-13 102:11 120:-8 126:45
hang on	18:-8 38:29 42:-11 56:10 78:-8 89:8 90:-13 120:-8 126:66
on ,	12:14 15:9 16:8 24:-15 38:-61 52:11 56:28 58:16 62:18 63:-14 66:10 89:8 90:-12 97:12 100:10 101:10 103:17 104:11 110:-26 112:-15 126:141
, not	22:-11 32:8 37:48 38:-10 39:-10 40:-11 44:-11 46:24 52:18 53:15 56:22 66:24 68:8 71:-9 73:22 74:11 80:36 90:-13 95:10 100:8 104:12 105:27 109:39 110:-23 111:-11 112:30 113:15 116:16 117:-23 118:10 119:-8 122:11 125:-22 126:-97
not laid	90:-17 126:26
it #n	7:26 17:8 51:-10 52:26 56:-11 67:22 100:20 126:-13
came back	12:11 37:-10 46:53 95:9 103:17 126:-17
back up	25:55 26:-9 45:-9 46:51 103:33 126:-9
none==	3:22 30:13 43:-25 46:58 67:8 72:13 80:-14 90:-11 91:48 92:-14 93:-37 94:9 120:13 126:76
had my	46:10 90:22 126:-23
my #o	46:10
#o look	46:61 90:9 116:37 126:-14
, none	46:63 80:-14
none sprang	46:39
percent==	46:29
humidity==	46:47
percent	46:29
#n percent	46:29
humidity	46:47
percent humidity	46:18
, fine	3:47 43:-13
%==	46:23
sprang ,	46:13
, humidity	46:13
humidity #n	46:13
%	46:23
#n %	46:23
look==ed	11:9 13:-13 41:-9 46:90 54:37 63:21 90:-31 91:23 92:36 94:-9 95:-12 96:-8 111:-9 116:-8 126:42
is up	24:-15 26:25 39:19 46:39 66:46 103:19 126:-11
: #n	0:-11 1:-10 8:-10 10:8 11:-17 17:-20 18:-10 22:-18 40:-14 42:-16 43:-13 44:-16 47:-17 48:17 49:-9 51:57 53:17 55:-20 56:22 68:29 71:-11 72:39 73:13 77:10 78:-15 81:35 82:21 83:-26 90:14 93:19 94:50 96:21 98:-24 100:89 102:-20 103:-9 105:34 108:-13 110:54 111:-9 112:-31 116:-10 117:13 119:47 120:-10 121:-8
ago ,	39:12 40:12 51:-16 67:10 103:21 108:22 109:18 118:10 126:-12
, noth	31:25 45:-11 74:-10 88:22 92:12 98:11 122:-8 123:19 126:51
noth sprang	25:-21 46:55
morn==ing	2:-9 11:28 12:-9 16:-11 26:-8 27:17 29:-12 30:53 34:-14 38:11 42:8 43:12 44:19 54:55 55:-11 56:18 59:19 62:-13 63:-15 65:-8 67:9 74:12 75:14 76:17 82:-10 95:12 96:9 103:34 104:-9 106:56 107:-24 110:-8 111:67 112:-14 113:-15 116:8 117:-11 118:14 119:-8 120:-9 126:-40
morn ,	27:-11 41:-8 42:-13 43:15 51:14 54:28 56:12 76:19 103:24 106:13 110:9 111:15 116:13 117:-14 126:10
all good	19:13 44:17 46:8 118:9
lift==ed	1:-13 13:-9 25:28 34:-12 44:-8 45:-10 46:89 62:36 85:29 88:17 90:-8 96:23 97:14 113:26 116:-8 126:-21
overnight==	24:-9 25:23 46:102 126:-9
lift	1:-14 13:-11 16:-9 25:75 34:-15 39:38 44:-11 45:-11 46:87 54:-14 62:36 85:28 88:15 90:-11 96:46 97:13 111:-10 113:75 115:25 116:-12 126:-46
#n lift	1:-13 46:79 97:14
overnight	24:-9 25:23 46:102 126:-9
springback==	25:38 46:66 94:-41
springback	25:38 46:66 94:-41
^ springback	25:13 46:66 94:-41
#n recheck	116:32
, rest	118:14
#n spring	25:26
foot==	50:20 62:-17 65:-16 69:16 80:-8 83:-9 126:34
foot	50:20 62:-17 65:-16 69:16 80:-8 83:-9 126:34
- foot	50:20 80:-8 83:-9
foot stick	50:20 80:-8 83:-9
#n metre	1:-9 8:19 38:-8 40:-9 51:20 52:58 67:-8 68:-10 69:31 70:41 80:-11 117:-14 119:-9 121:24 122:13 126:15
metre each	51:24 117:-9
each ,	7:-12 51:41 56:25 117:-19
, are	11:10 72:11 76:-16 85:14 98:13
lindwurm==	5:-10 7:-8 8:-17 9:-29 10:-12 11:-19 12:-14 13:-9 14:-17 19:-13 20:-12 21:-8 22:-17 23:-13 26:-19 27:-8 28:-31 29:-15 30:-20 31:-9 32:-27 33:153 34:-9 36:-22 39:-8 40:-15 48:-16 51:59 52:-8 53:-12 54:-21 56:-13 58:-12 59:-12 67:-32 70:-8 80:-10 99:-11 100:-12 101:-20 102:-9 105:-8 109:-18 111:-9 113:-10 117:103 118:92 119:108 120:122 121:-48 122:201 123:139 125:-11 126:56
lindwurm	5:-10 7:-8 8:-17 9:-29 10:-12 11:-19 12:-14 13:-9 14:-17 19:-13 20:-12 21:-8 22:-17 23:-13 26:-19 27:-8 28:-31 29:-15 30:-20 31:-9 32:-27 33:153 34:-9 36:-22 39:-8 40:-15 48:-16 51:59 52:-8 53:-12 54:-21 56:-13 58:-12 59:-12 67:-32 70:-8 80:-10 99:-11 100:-12 101:-20 102:-9 105:-8 109:-18 111:-9 113:-10 117:103 118:92 119:108 120:122 121:-48 122:201 123:139 125:-11 126:56
from lindwurm	32:-21 51:-14 118:77 119:28 120:47 122:-20 126:12
lindwurm supply	9:-16 33:23 51:33 118:-9 119:24 122:40 126:-10
error==	21:28 22:-11 25:16 51:11 70:24 81:-9 125:32
error	21:28 22:-11 25:16 51:11 70:24 81:-9 125:32
#n error	51:11
error $	21:30 22:-11 25:8 51:11 70:24 81:-9
paid==	5:-25 8:-20 19:76 21:30 34:-8 40:-14 44:13 49:22 51:32
eur==	51:41 56:101 67:-13 117:-11
in ,	5:10 8:-8 11:-9 20:9 22:-10 32:49 40:-10 44:14 50:-11 51:8 54:8 56:-8 59:16 60:12 67:-12 73:-8 76:15 78:-8 79:8 86:9 100:9 101:-8 102:12 117:-17 118:59 120:-13 125:13
paid	5:-25 8:-20 19:76 21:30 34:-8 40:-14 44:13 49:22 51:32
, paid	5:-8 8:-17 19:66 40:-14 51:32
paid #d	40:-14 51:33
eur	51:41 56:101 67:-13 117:-11
eur $	51:41 56:101 67:-13 117:-11
well==	2:34 4:-22 8:37 11:-10 13:-14 17:-9 21:11 26:9 30:-10 32:49 34:-14 37:33 40:-12 43:41 44:75 48:-9 49:17 51:38 53:-8 54:-12 57:9 59:-8 62:8 70:-12 74:29 76:-9 77:-8 78:-21 90:18 92:-17 96:42 97:16 102:-16 106:8 108:-8 111:43 113:-11 114:-20 118:9
@wire as	51:40 126:-10
well	2:34 4:-22 8:37 11:-10 13:-14 17:-9 21:11 26:9 30:-10 32:49 34:-14 37:33 40:-12 43:41 44:75 48:-9 49:17 51:38 53:-8 54:-12 57:9 59:-8 62:8 70:-12 74:29 76:-9 77:-8 78:-21 90:18 92:-17 96:42 97:16 102:-16 106:8 108:-8 111:43 113:-11 114:-20 118:9
as well	0:16 2:41 4:-15 8:38 13:-12 16:16 32:50 40:-11 43:35 44:78 51:39 53:-8 54:-9 57:9 62:8 66:-8 76:-9 77:-8 90:19 92:-8 96:45 97:17 106:9 108:-8 111:43 113:-18 114:-18 118:9 126:-13
well $	0:11 2:33 8:38 11:-10 13:-9 16:18 26:10 32:51 40:-9 44:83 51:44 53:-8 54:-8 62:11 76:-8 90:19 92:-8 97:17 102:-14 111:45 113:-17 114:-15 118:-8
here :	51:22
#n "	81:12
ferro==	1:-8 8:-12 9:-23 10:-14 11:-17 12:-12 13:-11 14:-18 19:48 20:-14 21:-11 22:-12 23:-11 24:-10 26:-26 27:-9 28:-28 29:-22 30:-21 33:137 34:-16 36:-19 39:-8 40:-19 51:38 52:-9 54:-25 56:-10 58:-13 59:-9 63:-8 67:-18 68:-9 69:-9 70:-9 80:-8 99:-12 101:-19 105:-8 111:-11 113:-9 117:103 118:39 119:-12 120:24 121:-34 122:210 123:191 126:80
daughter==s	10:-9 28:-9 29:-8 32:-13 33:40 51:29 118:39 122:28 123:33 126:-14
m==	1:-12 8:-17 40:-21 51:15 52:123 67:41 69:48 70:80 80:-13 82:-10 89:-18 99:-9 117:-11 118:-10 121:29 122:41 126:-19
apiec==e	51:38 83:10 117:-12
ferro	1:-8 8:-12 9:-23 10:-14 11:-17 12:-12 13:-11 14:-18 19:48 20:-14 21:-11 22:-12 23:-11 24:-10 26:-26 27:-9 28:-28 29:-22 30:-21 33:137 34:-16 36:-19 39:-8 40:-19 51:38 52:-9 54:-25 56:-10 58:-13 59:-9 63:-8 67:-18 68:-9 69:-9 70:-9 80:-8 99:-12 101:-19 105:-8 111:-11 113:-9 117:103 118:39 119:-12 120:24 121:-34 122:210 123:191 126:80
^ ferro	10:-10 28:-11 29:-11 32:-13 33:26 51:25 54:-21 117:-9 118:51 121:-13 122:47 123:48 126:76
ferro and	10:-12 32:-12 33:11 40:-10 51:26 118:38 122:27 123:27 126:15
daughter	10:-12 28:-9 29:-8 32:-13 33:39 51:29 118:39 122:51 123:32 126:-14
and daughter	10:-9 32:-12 33:13 51:29 118:40 122:11 123:30 126:-11
m	1:-12 8:-17 40:-21 51:15 52:123 67:41 69:48 70:80 80:-13 82:-10 89:-18 99:-9 117:-11 118:-10 121:29 122:41 126:-19
#d m	8:-15 40:-15 52:26 67:59 69:12 70:70 89:-14 117:-10 126:-14
apiec	51:38 83:10 117:-12
)~",
R"~(m apiec	51:26 117:-8
apiec $	51:30 83:10 117:-8
put into	10:8 51:16
into stock	51:45 67:-10
#n m	51:11 52:97 67:-19 69:35 70:10 80:-12 99:-9 121:30 122:43
m ,	67:-15 69:11 70:22 117:17 121:9 126:8
fewer==	63:21 71:11
#n so	13:-13 34:18 45:27 46:12 53:10 55:-8 73:10 106:13 110:-10 126:8
so i	0:-8 2:-20 4:-10 12:10 18:-12 23:18 37:25 38:10 41:9 46:13 65:18 76:12 78:-12 79:23 84:-8 93:16 95:9 109:27 112:19 113:-11 126:-32
i make	2:11 3:-14 42:29 51:-8 67:26 77:11 108:18 118:8 126:-10
fewer	63:21 71:11
shift them	76:18
move them	2:28
them up	2:11 14:12
fill==ed	2:33 37:16 40:-8 76:-8 83:39
shift plan	2:52
, empty	2:13 40:-9 68:29 69:-11
empty slot	2:12 4:-22 13:62 40:-8
slot may	2:23 40:-8
fill	0:10 2:77 4:-21 12:-9 13:26 37:16 40:-8 76:-8 83:40 112:13 126:18
be fill	2:23 40:-8
fill too	2:13
hair==	2:15 3:13 23:16 83:-11 90:-10 92:13 95:11
mak==ing	0:31 2:18 21:11 31:8 40:-17 55:18 105:8 108:25 112:-8 123:26
^ half	2:9 76:8 110:17 112:-11 117:-10 118:21
half of	2:9 22:11 117:-10 118:21
are a	22:27 56:14
hair	2:15 3:13 23:16 83:-11 90:-10 92:13 95:11
a hair	2:15 3:13 83:-11 90:-10 92:13 95:11
hair short	2:9 3:22 90:-10 126:-8
short ,	2:26 3:-20 42:-12 43:59 126:39
i re	2:16
- lay	2:68 126:-10
lay them	2:9
mak	0:31 2:18 21:11 31:8 40:-17 55:18 105:8 108:25 112:-8 123:26
without mak	2:9 31:9 126:-8
mak new	2:19
new one	2:28
, ok	2:-8 3:28 16:8 31:26
, will	0:-8 3:12 34:32 36:-12 37:-15 42:24 43:-8 102:20 109:23 115:18 125:18 126:35
will that	3:15 28:8 49:8
that do	2:25 3:26 16:15 19:10 126:-27
, good	12:14 54:11 61:12
#n side	0:-8 1:-12 3:71 16:-11 37:-13 38:29 84:28 91:-14
side only	0:-8 1:-12 3:45
leav it	17:-8 37:-9 41:-10 42:-9 61:-23 65:-8 66:31 97:10 98:-19 109:19 114:-11 126:107
position==s	2:17 4:123 83:-10 84:-8 85:-8 98:-9
position	0:16 2:14 3:8 4:129 42:-9 83:-15 84:-9 85:-8 98:-10 126:-9
slot position	4:54
position for	4:28
length doe	0:-12 4:21
tabl ,	4:27 17:12 99:29 118:18 120:-8
least==	0:-9 1:56 2:36 3:-16 4:22 5:76 6:-9 17:-11 33:28 37:-10 40:-11 42:-16 43:31 51:13 56:38 68:-9 69:-11 78:8 117:-12 118:-8 121:37 122:27 126:-34
@wire so	5:17 9:-8 25:16
least	0:-9 1:56 2:36 3:-16 4:22 5:76 6:-9 17:-11 33:28 37:-10 40:-11 42:-16 43:31 51:13 56:38 68:-9 69:-11 78:8 117:-12 118:-8 121:37 122:27 126:-34
far would	5:23
tin get	5:8 22:-8 40:11 73:14 80:14
us with	5:11
, no	39:25 41:11 46:-11 48:-11 51:13 54:-8 67:19 72:-11 80:11 87:-21 90:10 94:32 99:16 101:-13 104:18 109:16 113:16 117:-9 118:-11 122:14 126:85
no new	5:18 88:-8 126:39
we did	0:10 5:17 76:10 96:13 126:-35
it today	5:17 102:11 126:-16
list ,	5:-8 6:15 10:43 12:18 19:12 27:42 36:20 107:-26
saw==	0:-9 4:13 5:39 6:44 8:-8 9:-8 43:8 63:27 71:-11 75:14 99:38 101:21 104:17
am at	6:8 65:24 109:-9
saw	0:-10 2:-9 4:-23 5:37 6:42 8:-8 9:-8 18:-13 42:-9 44:29 63:27 71:47 75:42 78:14 92:18 99:42 100:-8 101:20 104:36 105:10 126:-15
the saw	6:45 43:9 71:-10 126:10
saw ,	6:17 101:8
, cut	0:14 2:13 20:13 43:-9 61:19 72:27 108:56 109:-16 126:-15
@wire cut	6:12
list to	6:15
hang up	62:-9 63:11
@wire label	8:-16 32:-11 126:61
label in	7:18
bin ,	41:21 43:-9 51:-11 82:43
sticker==s	7:64
need new	7:16
sticker	7:64 102:-14 126:19
sticker for	7:51
drawer of	7:29
, by	7:13 19:14 25:13 27:16 31:36 34:11 48:-9 67:9 110:11 117:9 126:-10
by length	7:14 69:10
got open	8:-15 12:52 32:-10
which one	12:65 14:-12 22:16 24:10 126:-14
one are	12:16 24:10
her==	2:-10 4:-9 5:-8 6:13 8:19 11:-10 12:12 13:20 15:-9 16:-10 17:-15 18:10 19:14 24:-8 27:-12 29:-12 30:-23 34:-11 38:19 39:15 44:-15 47:-21 48:23 49:47 56:-9 59:51 60:8 61:16 62:25 63:48 65:39 80:9 81:-8 88:-9 91:-14 92:17 93:8 98:-8 99:-12 100:-8 101:32 104:10 106:-8 107:22 108:-15 109:-8 110:-14 111:-39 112:25 113:17 114:17 115:-11 126:-19
@person got	5:-12 6:10 10:-9 12:59 13:14 27:-16 29:-9 30:38 32:31 61:10 62:11 65:-13 93:9 103:10 110:-12 126:-34
her	0:-10 2:-11 4:-10 5:-8 6:12 8:18 12:15 13:23 15:-10 16:-13 17:-16 18:10 19:13 24:-8 27:-13 29:-16 30:-26 32:-9 34:-12 38:18 39:14 44:-19 47:-21 48:36 49:42 54:-8 56:-9 59:51 61:26 62:23 63:45 65:42 80:8 81:-10 88:-10 91:-14 92:16 94:15 98:-10 99:-12 100:-8 101:32 104:10 106:-9 107:20 108:-17 109:-9 110:-14 111:-40 112:19 113:12 114:10 126:14
on her	12:27 30:-19 38:10 47:-9 48:10 49:14 50:10 66:10 94:12
her plat	12:28 30:-18 66:10
plat $	12:41 14:13 15:9 30:-24
window==	2:-8 3:-11 12:60 13:-8 26:-10 30:-8 36:-9 40:20 44:-9 55:-13 59:25 60:11 61:-9 62:41 65:53 68:9 73:19 80:15 81:22 82:-8 83:-12 95:9 99:10 104:-21 126:54
window	2:-8 3:-11 12:60 13:-8 26:-10 30:-8 36:-9 40:20 44:-9 55:-13 59:25 60:11 61:-9 62:41 65:53 68:9 73:19 80:15 81:22 82:-8 83:-12 95:9 99:10 104:-21 126:54
the window	2:-8 3:-10 12:54 26:-9 30:-8 36:-9 40:15 55:-13 59:17 60:11 61:-9 62:46 65:38 68:9 73:18 80:15 81:22 82:-8 83:-12 95:9 99:10 104:-17 126:56
window bench	12:33 59:28 62:29 65:57 80:11 100:-10 104:-19 126:15
door==	0:-10 12:52 13:17 14:-13 16:-9 26:-23 29:12 30:-9 38:8 49:-9 53:10 54:23 55:-9 59:49 61:8 62:55 63:-20 65:70 100:-11 101:-9 104:-43 109:9 113:-8 115:9 118:19 120:-9 126:47
door	0:-10 11:-8 12:52 13:17 14:-13 16:-9 26:-23 29:11 30:-12 38:8 49:-9 54:48 55:11 59:49 61:8 62:55 63:-20 65:70 100:-12 101:-14 104:-43 109:9 111:-8 113:-9 115:9 118:18 120:-9 126:42
the door	0:-9 12:51 13:19 14:-12 15:-11 16:-9 26:-22 29:13 30:-11 38:8 49:-8 53:-12 54:37 55:13 59:38 61:9 62:43 63:15 65:78 100:-10 101:-9 104:-42 109:10 113:-8 115:10 118:12
door bench	12:60 14:-12 26:-21 59:61 61:11 62:48 65:78 100:-10 104:-39 115:-14 126:-10
neck==s	12:72 27:-14 99:24
neck are	12:43
at $	13:37 14:66 15:11 17:-17 19:-8 26:-15 28:-9 30:-10 33:15 102:-24 126:32
left the	5:11 14:16 15:8 46:20 63:41 64:-28 88:11 118:15 120:-9 126:33
so far	12:11 14:8 17:18 19:32 21:14 22:-8 34:8 45:25 73:9 78:-23 126:80
far $	2:-10 5:14 12:-11 13:27 14:10 16:-8 19:9 21:13 34:19 78:14 126:86
^ peopl	14:73
build==ing	62:13
@job mine	13:-23 15:61 65:51 126:-21
@job instead	18:29 126:-8
deep on	18:20 75:-17
seat==	12:11 28:15 37:18 63:12 64:13 85:8 96:17 108:15 126:-12
curv==ed	0:-8 3:-10 18:50 40:12 75:46 126:-12
seat in	105:13
with curv	18:14
slot bottom	18:14
doe its	18:30 92:-11
its wire	18:31 74:15 84:13 92:-11
wire fit	18:21 92:-11
it too	18:17 78:25 92:-8
tang $	41:20 50:11 89:-11 92:21
we had	19:12 50:-20 54:-8 55:-8 100:-25 113:9 118:26 120:12 126:78
had $	14:-9 19:56 25:9 26:-18
record==	0:-20 3:8 4:8 13:-9 17:8 19:39 34:39 37:14 38:-19 42:23 44:-10 50:10 51:8 59:9 63:13 64:-10 69:9 70:16 71:10 74:19 97:21 104:13 108:11 126:-16
all delivery	19:36
delivery on	19:15 51:-18 117:24
record	13:-12 19:39 34:56 37:13 38:-22 39:-14 42:23 44:-10 50:10 51:8 59:8 63:28 64:-10 69:9 70:43 71:9 74:19 78:-8 97:20 100:10 104:13 108:11 126:-19
on record	0:-16 4:24 17:15 19:39 74:10 97:11
record $	19:25 70:27 89:8
when did	11:28 13:-8 19:51 32:-38 34:23
height==s	19:27
@wire delivery	19:18
wire delivery	19:56 32:-21
october==	8:-12 19:-11 20:127 21:61 51:-10 102:-13 103:-9 126:38
wire balanc	20:37
for october	20:11
in and	12:32 20:39 21:-14
much went	20:8
went out	20:41 21:-10 117:15
out this	11:15
this month	20:45 21:12 32:22 34:15 122:19 126:-11
wire add	20:12
add up	9:-13 17:8 20:70 25:-11 52:-10 67:42
up this	20:9 118:8
becam==e	0:-9 1:-16 20:26 34:45 37:39 76:-13 83:21 92:8
between==	1:10 4:-8 8:-11 11:14 21:19 27:-8 34:-13 40:-14 44:47 48:-11 53:8 55:9 60:-19 61:37 66:13 68:12 73:-35 90:27 91:42 92:-8 106:18 107:8 111:11 112:13
november==	0:-9 8:-22 11:15 17:-8 19:-13 20:97 21:45 29:15 34:44 46:-8 51:-9 111:31 112:-13 116:27 126:9
becam	0:-9 1:-16 20:26 34:45 37:39 76:-13 83:21 92:8
what becam	1:-15 20:26 34:37
becam of	1:-15 20:26 34:37
between	1:10 4:-8 8:-11 11:14 21:19 27:-8 34:-13 40:-14 44:47 48:-11 53:8 55:9 60:-19 61:37 66:13 68:12 73:-35 90:27 91:42 92:-8 106:18 107:8 111:11 112:13
@wire between	1:10 20:16 34:-9
between the	8:-11 11:13 20:18 34:-10 91:10 126:30
of november	21:40 29:21 34:41 55:-8
saving from	21:20
september==	5:-12 8:-10 20:75 21:55
^ money	21:20
#n november	11:17 20:34 21:16 51:-8 111:33 112:-13 116:28 126:-17
bother==	43:15 52:25 126:-24
bother	43:15 52:25 126:-24
)~",
R"~(save $	21:10 62:14
use to	1:-9 22:9 36:20 78:24
to anybody	22:10 66:23 78:10 126:-8
anybody $	13:-18 15:71 22:9 24:40 32:13 39:-11 61:29 62:-8 65:-9 66:48 109:-12 126:-18
@wire bit	7:12 22:9 37:-11 39:23 80:21 81:10 82:10 83:14
idle for	22:19
i bin	22:21 41:15 82:15 126:-17
not scrap	22:20 39:-8 41:-46 126:46
scrap anyth	19:-9 22:19 34:19 126:-13
@wire too	22:13 32:16
short to	3:22 9:-8 22:26 82:11 90:-10 126:-8
be any	16:16 22:16 83:-8
is kept	24:29 38:21
spoken==	1:-11 8:-14 22:-28 24:101 32:-9 36:11 37:-13 38:29 39:38 72:11
spoken	1:-11 8:-14 22:-28 24:101 32:-9 36:11 37:-13 38:29 39:38 72:11
spoken for	1:-11 8:-14 22:-28 24:101 32:-9 37:-13 38:29 39:38 72:12 126:-27
for anybody	24:23 39:-11 66:37 109:-11 126:9
what came	13:-8 20:29 25:43
spring==ing	25:43 126:-13
back ,	9:15 25:15 39:-16 48:13 64:18 66:19 100:-10 101:11 103:11 120:17 126:-8
, per	25:18
@wire stay	25:8
sander==s	8:-14 9:-11 14:-14 26:89 27:-17 28:-8 30:-12 36:-11 39:-9 54:-9 56:-8 100:96 101:40 102:77 103:51 106:-14 107:-23 126:53
sander have	26:13 102:11
a sander	26:38 27:8 30:-8 104:59 106:17 126:-18
book what	27:33
press booking	27:14
is got	6:10 12:8 26:-19 27:68 29:-8 30:-24 37:-8 91:21 126:11
book anyth	27:25
a book	27:48 107:-10 126:-10
taken next	26:18 27:11 30:-10
the step	28:72 118:12 126:-10
on a	28:37 31:-9 51:37 68:-16 69:9 97:-8 98:12 109:-8 110:24 115:8 122:13 126:-23
long for	4:-12 28:18
just #n	4:-12 28:18 31:13 98:15 100:8 110:-9 112:18
and on	8:-23 17:-11 20:21 21:-8 28:16 32:21 44:-9 53:-13 55:-22 90:-13 94:69 111:47 112:51
^ bound	28:8
bound new	31:8
board ,	2:-11 10:-14 18:11 22:19 28:34 31:45 36:-8 38:8 44:-8 47:-9 58:11 73:11 91:53 98:10 126:-11
^ till	29:42 30:-22
till when	9:28 29:31 30:-25 32:12
christma==s	9:13 10:9 22:22 29:20 54:16 55:13 111:14 126:-11
we shut	29:49 53:15 54:8 55:-8 113:-9 126:-13
christma	9:13 10:9 22:22 29:20 54:16 55:13 111:14 126:-11
on christma	29:21 54:25 111:14 113:-8 126:-8
christma day	29:22 54:15
do #n	2:-9 4:-14 31:43 53:9 55:-8
december==	0:-14 1:-9 2:-8 3:-12 4:-15 11:62 12:-15 13:13 15:-20 16:-14 17:-23 18:-8 24:-15 25:-12 27:15 28:-11 29:82 31:115 34:-26 37:-19 38:-12 39:-17 41:-9 44:-11 45:-10 46:-27 48:104 51:-28 53:-25 54:86 55:48 56:-13 63:-14 64:-9 65:-14 66:-19 67:-14 68:-8 72:-8 74:-8 76:-12 78:-10 82:-10 85:-14 90:-24 91:-10 92:-10 94:-11 96:-10 97:-9 98:-11 99:-8 100:-18 102:27 103:-9 105:-11 106:-13 107:24 108:-13 109:-10 110:-26 111:124 112:53 113:92 114:-20 115:-14 116:55 117:12 119:107 120:-17 122:-15 126:10
^ customer	54:10
customer want	29:22 126:-10
#n december	4:-9 11:31 13:-21 15:-13 16:-8 24:-12 27:17 28:-8 29:98 30:17 31:68 37:-8 39:-15 46:-11 48:18 51:-25 53:-22 54:72 56:-10 63:-10 65:-12 66:-13 67:-12 76:-11 82:-8 90:-19 100:-16 102:43 105:-8 107:9 108:-10 110:-25 111:86 112:22 113:89 114:-12 116:20 119:91 120:-10 122:-11 126:-52
december ,	11:24 13:33 17:-8 27:14 29:-14 30:32 31:8 34:-8 48:-27 54:52 55:30 100:-10 102:31 107:27 111:-8 112:-21 113:35 114:-8 116:9 126:-34
fret only	31:10 47:-10 86:10
only ,	3:15 17:30 31:36 47:-10 55:9 86:10 112:8
@day ,	13:15 15:-10 26:-8 27:-15 29:46 30:12 46:-8 53:-30 54:10 55:17 63:26 102:10 106:-18 107:32 108:-8 109:-10 110:39 111:49 112:17 113:-16 116:21 126:41
, can	2:13 3:31 4:33 17:29 43:-12 51:19 68:-11 90:-10 125:17 126:-19
and by	9:8 10:10 11:-13 13:-9 15:18 24:-18 30:16 31:57 34:10 48:-11 111:-11
@person report	34:94 62:24 63:-15 76:10 111:-16 126:-15
did piec	1:-21 34:46
i report	16:-19 23:-12 34:45 36:30 125:31
help use	36:14
- several	36:21
keep piec	37:-11 38:45 39:47 126:-55
by for	0:-9 11:-9 24:98 31:-12 37:-14 38:70 85:42 126:-15
touch piec	38:23
^ save	0:-13 37:-18 38:63 40:12 44:-9 84:31
me piec	38:11
need the	0:-9 4:26 16:17 19:15 23:-12 26:-39 27:-8 28:88 34:62 39:8 58:8 62:-13 82:10 88:8 100:-17 102:-10 104:38 106:-13 107:13 109:-10 111:-9 112:-8 126:59
more ,	4:9 39:-23 41:32 43:10 49:16 51:-16 53:-16 54:-8 60:-11 61:20 67:22 85:-9 100:20 101:-9 111:-17 112:21 113:26 114:13 126:23
, free	85:16
free piec	37:-9 39:36
releas the	39:55 74:-8 84:-8 85:39 107:12 126:-15
chang==ed	33:-33 34:52 39:53 49:33 64:16 104:18 107:9 113:10 114:-8 126:-26
chang my	39:26
my mind	39:26
mind ,	39:23 49:16 126:12
, let	24:32 39:20 53:28 84:-8 85:14 112:-10 125:-10 126:-14
let it	39:46 84:-10 103:-10 125:-9 126:40
everyon==e	14:88 26:-21 33:37 39:19 40:-8 50:8 85:11 103:28 104:-8 126:-18
give #n	39:38
back to	25:-8 31:8 38:-17 39:62 41:-9 44:-11 48:16 64:12 65:-10 66:23 84:-20 85:39 103:-27 104:11 108:20 114:52 115:-8 119:33
everyon	14:88 26:-21 33:37 39:19 40:-8 50:8 85:11 103:28 104:-8 126:-18
everyon $	39:19 85:11
stop hold	24:-10 39:75 126:-17
not let	38:29 39:-46 52:14 85:-30 126:54
bin piec	1:-8 39:-12 41:65 82:-11
, too	0:-11 3:18 40:15 41:31 43:-23 120:17 126:-11
chuck the	41:49 82:-21
, kink	41:37 51:-8 78:18
mic'd==	3:-12 42:32
mic'd	3:-12 42:32
^ mic'd	3:-12 42:32
caliper==	1:8 42:45 70:9 81:8 126:-16
long by	42:33 126:-16
caliper	4:8 29:8 42:78 70:21 77:19 81:8 93:-19 126:-24
the caliper	1:9 3:13 42:64 70:8 77:19 81:8 93:-17 126:-19
&#n#p	0:-15 1:-12 3:-15 24:-15 34:-12 37:25 38:53 39:-17 41:-19 42:41 43:17 71:39 72:13 78:-9 81:12 82:-8 83:17 126:-23
caliper $	3:-10 29:8 42:46 43:9 126:-19
, bent	43:18
, an	72:8 76:12 82:-8
cm ,	47:9
, measur	3:9 43:-8 51:-8 69:19 76:19 77:13 81:8 82:-9
in drawer	1:-10 3:-11 37:-26 40:49 43:41 73:41 76:-8 79:15 80:19 82:-12
up short	21:48 22:-8 43:15
short :	42:-11 43:15
, end	1:14 3:-9 40:15 43:27 81:8
&#n#o#p	79:16
millimetr==e	7:33 18:41 25:8 37:-8 39:-8 40:-8 41:-11 42:-26 43:67 50:14 56:64 70:28 71:-12 75:15 79:-8 82:-10 89:16 90:-12 93:48 98:-12 126:-29
millimetr	7:33 18:41 25:8 37:-8 39:-8 40:-8 41:-11 42:-26 43:67 50:14 56:64 70:28 71:-12 75:15 79:-8 82:-10 89:16 90:-12 93:48 98:-12 126:-29
#n millimetr	7:25 43:67 56:30 70:20 71:-10 82:-8 83:8 90:-10 93:9 98:-11 126:-8
millimetr short	43:13 70:16 90:-9
not too	43:-32 126:46
clean==ed	4:-32 13:-10 44:96 46:-11 78:21 97:-43 108:-12 126:42
slot clean	4:-27 13:-9 44:67 104:24 108:-11
polish==ing	26:-21 28:80 29:-8 30:-11 49:-8 66:-9 99:20 100:-12 101:-23 104:35 105:45 108:36 109:61 126:8
it can	44:15 92:10 114:22 126:-8
can go	1:-9 7:-9 22:10 33:-19 44:13 58:38 82:25 85:21 87:14 103:-8 107:56 123:52 126:-33
go home	37:-9 44:21 92:11 126:10
dress on	28:8 44:9 104:17 108:22 119:-12 120:-9 126:40
between #n	20:-16 21:22 44:49 55:18 73:-34 90:29 91:-8 106:17 111:13 112:14 126:-20
parlour==	47:8 126:15
edda==	13:-9 47:57 49:-8
parlour	47:8 126:15
edda	13:-9 47:57 49:-8
#c ,	5:37 21:11 45:-12 47:20 51:-28 60:50 61:13 68:31 82:-11 86:12
nut #n	47:44 82:-10 86:-8
, scal	47:55 51:-13 68:36 69:-30 82:-10 86:-9
, wire	47:9 68:16 73:22
january==	9:14 29:19 48:72 54:50 55:-10 66:-11 111:33 113:64 126:-29
fil ,	3:8
, due	11:-10 47:23 48:17 51:-9 117:28 118:-9
due #n	11:-12 48:23 117:11
#n january	29:23 48:43 54:54 55:-9 66:-10 111:34 113:30 126:-32
january #c	112:15
&#c#n@job@wire	47:20
green==	82:8 122:9
green	82:8 122:9
, only	2:8 3:-9 11:10 43:17 45:-11 51:11 81:-8 97:-42 98:13 99:10 126:48
only fret	2:9 45:27 81:-8
do ,	41:11 56:8 72:44 126:-28
, take	11:-11 33:-21 41:9 48:10 49:8 58:20 60:-8 61:25 66:-13 87:24 99:26 100:-11 101:26 102:17 103:-10 105:10 115:11 118:-8 123:38 125:33 126:-28
&#c#n#r@wire	47:10
job ,	2:8 12:-12 13:-16 14:20 24:11 44:-8 47:57 49:51 95:-10 105:11
now promis	119:19
out @day	48:14 102:9
now #d	48:13 75:10
#d .	1:-9 2:12 40:19 48:13 54:26 56:-12 57:18 126:37
. #c	48:13 54:26
and job	44:-9 48:29 65:27 115:8
^ leav	13:-9 44:-9 48:-9 65:45 82:-8 107:-9 109:43 115:17 116:12
as it	42:9 49:8 79:11 105:22 107:-14 109:11 114:-10 125:-21 126:89
earlier==	30:-8 31:31 112:33 126:-22
could job	31:53 126:-26
earlier	30:-8 31:31 112:33 126:-22
earlier $	31:32 126:-12
@job chang	39:10 49:31 126:-9
chang her	39:17 49:27 62:10 64:16 110:-10 113:11 126:-10
her mind	39:17 49:27 64:16 113:11 126:-9
crack==ed	41:16 49:25 56:-8 82:20 87:10 95:-12 100:-10 104:-9 126:52
queu ,	9:10 12:24 49:14 54:11 120:16
, neck	49:8
crack	41:16 49:25 56:-8 82:20 87:10 95:-12 100:-10 104:-9 126:52
)~",
R"~(crack $	41:10 49:12 82:21 95:-8
pick==ed	23:27 44:34 66:-15 84:9 88:-10 97:11 108:37
his==	4:-8 11:16 12:25 13:17 16:10 17:-14 24:26 29:11 30:-14 34:-14 37:9 38:15 44:-21 45:-8 49:37 63:28 64:8 66:10 80:9 83:-8 85:18 90:10 108:11 109:-11 110:38 111:-8 114:28 115:-21 121:9 126:-14
pick	0:26 5:-10 23:27 44:29 66:-9 84:9 88:-11 97:11 108:69
his	4:-8 11:16 12:25 13:17 16:10 17:-14 24:26 29:11 30:-14 34:-14 37:9 38:15 44:-21 45:-8 49:37 63:28 64:8 66:10 80:9 83:-8 85:18 90:10 108:11 109:-11 110:38 111:-8 114:28 115:-21 121:9 126:-14
his @job	11:19 15:10 24:8 27:8 29:17 31:-16 34:-9 38:14 44:-8 48:13 49:40 114:10 115:-16 126:29
@job up	3:27 49:9
again ,	3:-8 4:-9 5:-11 8:12 11:-8 16:-9 17:-13 25:-9 33:-9 38:-9 39:11 42:20 46:61 52:11 54:-8 63:-19 64:52 66:-10 71:-9 73:16 83:24 87:13 88:12 92:-8 96:24 101:-8 102:-8 103:21 105:16 108:24 109:15 110:8 111:10 113:11 116:-11 117:15 118:-11 119:10 123:9 126:-17
, cancel	49:29 107:27 120:23 126:-33
cancel==s	126:30
if @job	114:8 126:49
@job cancel	126:30
, tell	0:-10 1:8 8:17 14:8 26:9 91:-11 92:28
, crown	40:-15 50:56 51:47 56:-11 67:-11 82:9 89:-26 91:12 118:17
wide ,	2:-8 50:12 77:8 81:-11 86:47 126:18
high ,	46:14 70:15
, stick	6:15 8:46 44:10 50:17 80:9 117:-8
stainless==	8:51 24:-8 25:16 32:-11 34:10 50:49 56:-10 126:-10
steel==	16:-12 17:20 23:25 50:27 65:12 89:-8 126:-14
stock a	50:17 89:-8
stainless	8:51 24:-8 25:16 32:-11 34:10 50:49 56:-10 126:-10
steel	16:-12 17:20 23:25 50:27 65:12 89:-8 126:-14
steel ,	50:19 89:-8
gold==	50:15 126:17
ft==	50:28 52:35 67:-17 69:27 70:10
gold	50:15 126:17
gold ,	50:11
ft	50:28 52:35 67:-17 69:27 70:10
#n ft	50:28 52:35 67:-17 69:27 70:10
ft $	50:28 52:32
vintag==e	50:23
new kind	50:15 99:26
wire ,	0:-10 1:9 5:42 6:9 8:28 9:-10 10:-21 19:9 24:20 29:-12 33:28 40:66 50:-30 70:-9 72:9 74:-13 79:28 84:12 85:-9 89:-9 118:-9 121:71 123:15
vintag	50:23
" $	81:12
pick==	0:26 5:-9 108:32
metre $	52:26 67:-8 70:37 117:-11 121:13 122:21 126:-8
m $	51:-8 52:80 70:-12 121:20
warn==	52:15
warn	52:20
^ warn	52:15
@wire drop	52:17
drop under	52:22
metre down	52:28 117:-9
@wire reorder	52:18
noon==	29:-9 30:-10 44:8 54:24 55:25 68:12 102:17 106:11 110:23 111:-19 112:27 116:31 126:17
noon	29:-9 30:-10 44:8 54:24 55:25 68:12 102:17 106:11 110:23 111:-19 112:27 116:31 126:17
to noon	53:-9 55:30 106:15
noon from	53:11
more @day	53:58 54:-22 110:8 113:-9
, clos	32:26 53:19 55:22 113:-11
shut at	54:13 55:25 126:-17
: open	55:16
weekly==	53:54 55:-17 106:-10
weekly	53:54 55:-17 106:-10
^ weekly	53:19
weekly hour	53:35
@day stay	53:11
stay clos	53:13
every week	29:-15 30:-8 53:60 54:-17 55:-12 110:46 111:-15 112:-11 126:-10
stocktak==ing	51:-18 52:-11 53:-13 54:58 55:15 67:76 68:8 113:-8 126:-10
, stocktak	53:-9 54:22 55:9
stocktak $	53:-13 54:40 55:17 67:12 113:-8
shut $	23:8 53:23 54:39 55:-10 82:17 126:-13
as an	53:-9 55:26
pm==	54:15 96:12
this @day	30:-8 53:-50 55:50 106:-8 110:-56 111:-28 112:81 126:88
pm	54:15 96:12
#n pm	54:15 96:12
pm $	96:12
#r ,	2:8 4:24 44:-9 48:32 49:-10 72:41 79:-8 83:14 90:47 92:11 97:8 98:14 102:-11 106:20 111:18 112:-9 126:-8
, #t	30:-10 46:-15 53:36 55:8 108:9 110:23 116:21 126:-14
#t -	27:-10 29:-10 30:-15 53:42 54:-9 55:24 64:-8 106:39 110:19 112:37 126:20
- #t	27:-10 29:-10 30:-15 53:42 54:-9 55:24 64:-8 106:39 110:19 112:37 126:20
@day too	53:-12 55:18 112:33
too ,	1:9 32:19 53:-22 55:32 62:21 99:16 112:29 121:9 126:-17
#t to	29:-8 44:22 55:28 102:29 106:10 110:9 112:28 126:-16
to #t	29:-8 44:22 53:15 54:-8 55:14 102:26 106:15 110:31 126:-16
trim==	0:20 1:39 22:13 30:-11 36:54 56:30
limit==	0:12 1:24 13:-10 16:53 17:-13 30:-12 36:54 49:-8 52:17 56:106 100:27
trim	0:22 1:41 22:13 30:-11 36:54 56:30 70:15 126:-8
the trim	0:16 1:30 22:13 30:-11 36:54
limit	0:12 1:23 13:-10 16:53 17:-13 30:-12 36:54 49:-8 52:17 56:106 100:27
trim limit	0:14 1:27 30:-11 36:55 56:32
limit to	56:11 126:8
length are	56:28 82:17
inch $	3:-8 7:9 42:21 51:10 56:28 75:13
setback==	42:-8 56:82
setback	42:-8 56:82
^ setback	42:-8 56:72
setback #d	42:-8 56:72
cost==s	100:13
loss==	1:20 56:52 126:17
cost us	19:10 100:13
, set	24:20 48:25 56:45 63:23 64:-11 84:11 105:11 126:-22
set nip	126:26
loss	1:20 56:52 126:17
nip loss	126:30
loss to	56:-12 126:32
to that	5:-15 75:15 105:12 113:11 126:20
bin step	7:-39 56:76
europ==e	56:53
/==	4:11 5:-14 11:-8 16:29 50:-19 56:26 57:113 58:-24 59:-13 72:37 77:-8 126:46
vienna==	56:51
europ	56:53
/	4:11 5:-14 11:-8 16:29 50:-19 56:26 57:113 58:-24 59:-13 72:37 77:-8 126:46
europ /	56:53
vienna	56:51
/ vienna	56:49
vienna $	56:49
than==	0:-9 1:16 3:-15 8:12 9:-14 10:8 11:-8 16:-9 17:-14 24:-9 26:34 28:15 32:-11 33:40 37:-8 41:-13 42:-28 43:-11 46:-8 51:-11 52:19 54:-26 55:39 56:22 67:-21 70:69 75:8 89:13 93:36 94:15 98:-11 100:-16 105:23 107:10 112:11 116:8 118:10 126:45
^ never	1:-8 39:-17 56:9 126:62
than	0:-9 1:16 3:-15 8:12 9:-14 10:8 11:-8 16:-9 17:-14 24:-9 26:34 28:15 32:-11 33:40 37:-8 41:-13 42:-28 43:-11 46:-8 51:-11 52:19 54:-26 55:39 56:22 67:-21 70:69 75:8 89:13 93:36 94:15 98:-11 100:-16 105:23 107:10 112:11 116:8 118:10 126:45
more than	1:25 10:9 20:8 26:37 33:26 56:8 67:-9 70:26 93:-37 94:18 100:-11 105:11 126:-8
than #c	56:9 118:14
lb in	45:15 56:9 126:-9
set that	56:17
limit $	0:19 1:30 30:-10 36:58 100:21 126:-36
bell==	50:-22 56:-10 57:39 58:25 109:24 126:-10
http==	50:-11 56:-9 57:21 126:37
ring==	10:20 14:-9 33:34 50:-11 54:10 57:17
bell	50:-22 56:-10 57:39 58:25 109:24 126:-10
receiver bell	58:24
http	50:-11 56:-9 57:44 126:26
at http	57:-22 126:34
http :	50:-11 56:-9 57:44 126:26
: /	50:-11 56:-9 57:44 126:26
/ /	50:-11 56:-9 57:44 126:26
/ #d	50:-11 56:-9 57:13 126:38
. #t	50:-11 56:-8 126:41
#t /	50:-11 56:-8 126:40
/ ring	50:-10 57:16
recheck .	46:8
&#d#t	56:-8 57:11 126:21
log==	13:-10 14:-8 34:206 40:9 42:9 56:-8 57:20 72:8 78:8 80:9 96:11 108:9 126:-18
e==	45:11
log	13:-10 14:-8 34:205 40:9 42:9 44:-8 56:-9 57:20 60:25 72:8 78:8 80:9 96:11 108:8 126:-20
e	45:11
send==ing	58:41 109:-9
wall==	2:25 57:9 58:41 103:-17 109:-9 126:32
stop send	58:30 109:-9
send to	9:-17 29:-15 33:40 58:23
wall	2:25 57:9 58:41 103:-17 109:-9 126:32
the wall	58:15 103:-17 126:48
wall $	58:36 103:-17 109:-8 126:29
lamp==	3:26 42:-8 58:61 91:11 92:15 98:24 101:-9 107:9 116:14 126:-15
delet the	58:29 101:16
lamp	3:26 42:-8 58:61 91:11 92:15 98:24 99:15 101:-9 107:9 116:14 126:-15
call lamp	58:11
lamp $	58:33 98:28
jelka==	59:13
jelka	59:13
he==	5:-14 11:9 14:-11 16:-8 17:-8 28:10 30:-13 31:9 33:15 34:-8 36:-8 48:33 49:-10 53:-11 59:32 60:22 62:10 63:49 64:25 66:-9 88:8 94:16 99:-13 110:-8 111:23 112:26 114:13 126:11
start today	59:12
today ,	13:29 26:-11 29:17 30:-17 34:18 36:-9 44:-8 51:-10 59:28 64:18 68:21 78:-13 106:24 109:30 117:-13 118:-9 122:15 123:-11 126:28
he	5:-14 11:9 14:-11 16:-8 17:-8 28:10 30:-13 31:9 33:15 34:-8 36:-8 48:33 49:-10 53:-11 59:32 60:22 62:10 63:49 64:25 66:-9 88:8 94:16 99:-13 110:-8 111:23 112:26 114:13 126:11
, he	5:-13 6:8 11:18 12:-8 14:-9 29:-14 31:10 48:16 49:15 53:-10 59:18 63:51 64:35 65:16 88:8 110:9 111:23 112:9 114:19 126:-27
she==	0:-8 3:18 4:18 12:-10 15:8 16:-9 29:-11 31:-11 37:-8 38:8 44:23 48:30 53:-9 59:65 62:18 64:64 65:-10 66:12 70:-9 89:9 102:-11 107:18 108:-10 110:10 111:26 112:18 116:13 125:-11 126:-8
she	0:-8 3:18 4:18 12:-10 15:8 16:-9 29:-11 31:-11 37:-8 38:8 44:23 48:30 53:-9 59:65 62:18 64:64 65:-10 66:12 70:-9 89:9 102:-11 107:18 108:-10 110:10 111:26 112:18 116:13 125:-11 126:-8
, she	15:10 31:-9 34:-10 44:12 59:44 62:13 63:28 64:15 106:-9 111:17 112:52 116:14
she may	62:16
may only	14:11 59:30 62:11 126:-15
only look	14:15 59:30 62:22 126:-14
janez==	59:16
join==s	59:40
janez	59:16
join	59:72 62:-9 63:-8 76:19 99:19 101:24
as a	17:9 25:-12 33:-16 50:-12 53:48 54:-11 55:-11 57:11 59:30 61:-9 63:-18 64:27 90:8 99:-17 100:-12 101:40 104:-14 112:8 116:13 121:17 122:-8 123:37
colleagu==e	12:9 59:44 61:-10 99:-10
pia==	59:19 61:-9
colleagu	12:9 59:44 61:-10 99:-10
new colleagu	59:44 61:-10 99:-10
pia	59:19 61:-9
pia ,	59:19 61:-9
, uid	59:50 61:-27 112:17
and #c	5:34 16:-12
@person also	60:9
with uid	60:10 61:-11
)~",
R"~(#c off	60:-21 61:24
off @person	60:-21 61:24 66:29 107:13 111:11 126:-11
login==	59:-8 60:26 61:43 126:-9
not @person	60:-33 61:84 65:14 66:15 126:-45
login	59:-8 60:26 61:43 126:-9
@person login	61:15
any longer	39:26 48:9 58:30 60:-9 61:18 63:21 66:23 82:10 98:13 100:-8 101:35 113:16 115:8 123:17 126:-61
longer $	39:25 48:9 58:17 61:12 63:47 64:-9 100:-8 101:35 107:-9 113:16 114:-10 115:15 123:14 126:-21
mov==ing	2:47 17:-9 31:-10 49:11
@person mov	62:8
mov over	62:23 65:-14 76:9
over to	16:10 62:20 73:-8 76:10 100:8
odila==	62:27 110:-11
@person call	101:8 111:42
odila	62:27 110:-11
sav==ing	41:15 59:8 62:17 78:41 82:9 126:-10
@person may	62:9 110:-11 111:13 112:-9 126:17
@person back	63:-19 64:100 126:-11
with us	53:-10 64:50 110:8 119:8 126:23
to work	7:17 14:10 64:11 110:-26 126:37
bring==	11:-17 13:52 21:11 29:12 39:-8 48:16 54:-20 63:-9 64:29 103:-8 111:8 126:62
bring	11:-17 13:52 21:11 29:11 30:-11 31:8 39:-8 48:16 54:-20 63:-9 64:29 103:-8 111:8 126:57
^ bring	11:-10 13:54 39:-8 48:17 63:-8 64:25
bring @person	64:25
rejoin==ed	62:-11 63:-17 64:79 126:-11
crew==	14:107 36:-8 59:33 63:-8 64:56 126:-20
rejoin	62:-11 63:-17 64:79 126:-11
@person rejoin	62:-11 63:-11 64:67 126:-9
crew	14:107 36:-8 59:33 63:-8 64:56 126:-20
the crew	14:33 59:35 63:-8 64:57 126:-11
crew $	14:65 59:37 64:49 126:-19
will do	65:46 94:-24 102:-18 106:14 111:-12 126:77
snow==ed	65:10
snow	65:10
, @person	0:9 6:13 7:-18 8:21 11:15 15:-17 18:-10 22:20 24:-13 27:-16 29:-24 30:-18 31:-9 32:-12 34:-38 38:34 39:10 41:-11 44:40 45:11 49:-12 52:-12 54:12 55:24 56:32 58:21 61:-12 62:-36 64:-15 65:28 69:-8 70:22 74:11 76:-11 84:14 85:11 87:14 88:12 89:12 90:-9 91:-21 92:10 100:32 101:33 102:-15 103:19 104:9 106:-9 108:-11 111:-42 112:9 115:8 118:9 125:19 126:49
nobody on	30:20 66:20
give==s	0:-11 5:16 9:9 28:17 31:12 42:12 66:10 69:8 107:29 121:18 126:-17
whoever==	15:22 39:17 44:-10 60:10 61:9 65:10 66:91 108:-8
@person give	66:10 107:29 126:-9
give up	25:10 39:18 66:10 107:29 126:-11
whoever	15:22 39:17 44:-10 60:10 61:9 65:10 66:91 108:-8
, whoever	65:19 66:20
whoever has	61:15 65:-9 66:43
take @person	27:-9 62:8 63:33 64:18 65:-18 66:32 107:47 111:-13 126:-22
@person off	29:-69 63:26 64:-14 66:21 110:-10 112:-12 126:135
let anyon	38:29 39:-24 66:65 126:-24
up job	66:37
unassign==	13:-15 66:139 108:-14 114:-9
unassign	13:-15 66:139 108:-14 114:-9
^ unassign	13:-14 66:100
unassign job	13:-14 66:100
not do	56:-11 62:14 66:13 126:12
it after	66:11 115:12 120:22 126:-18
all ,	16:11 39:26 49:11 51:15 54:-10 66:31 67:16 68:-8 69:-16 88:16 89:12 111:-22 112:-14 114:14 126:25
, nobody	39:15 40:18 41:-12 51:23 52:9 54:15 56:9 61:12 65:-10 66:19 102:18 117:-12 118:-20 123:9 126:18
count the	9:-12 34:31 126:34
- take	67:10 122:11
take :	36:10 67:10
m of	8:-9 51:-8 52:25 67:52 68:-14 69:23 126:-11
in all	8:-11 10:13 51:-32 67:54 68:24 70:-12 117:17
#c by	61:12
by my	42:29 67:22 105:9
my count	67:23
i count	67:50 118:13 126:-15
#d metre	8:-16 52:23 67:47 126:-16
@wire altogether	67:19
has anyon	8:16 15:40 24:-8 34:27 41:-24 81:-14 126:19
or how	8:16 28:17
it say	8:15 33:-20 43:-9 51:15 68:-14 70:27 123:20
gram==s	3:43 40:-13 51:-17 52:-8 67:-11 68:73 69:80 70:-27 117:14 126:-17
coil ,	7:8 8:15 68:9 118:12
gram ,	69:28
empty spool	51:22 69:-11
spool #n	51:21 69:-12
g==	1:-10 5:-9 8:-10 19:-9 20:-16 40:-17 51:47 52:-21 67:-38 68:99 69:131 70:-24 82:-8 89:-10 117:25 118:-9 121:18 122:16 126:25
scal :	68:16
#d g	40:-13 51:-15 69:136 70:-13 126:10
kg==	51:-20 68:74 121:11
weigh #d	68:-19 69:66 126:22
kg	51:-20 68:74 121:11
#d kg	51:-20 68:74
g ,	51:18 68:50 69:-25 121:15
stick is	51:-10 68:10
not on	68:35 126:-8
scal $	68:10 69:28 126:-8
oz==	51:-29 68:58 117:-10
oz	51:-29 68:58 117:-10
#n oz	51:-29 68:58 117:-10
tenth==s	3:21 68:15 69:8 73:-11 75:11 90:-11
tenth	3:21 68:15 69:8 73:-11 75:11 90:-11
show tenth	69:24
tenth $	69:13 73:-11 126:13
#n cm	46:-9 47:9 69:18 70:37 88:60 91:-9 94:-13 116:-9
: #c	5:11 45:-8 51:-9 52:21 60:15 61:-8 68:11 86:20 87:-9
really==	3:12 33:64 39:-8 41:-22 67:-8 70:36 101:10 105:14 126:32
really	3:12 33:64 39:-8 41:-22 67:-8 70:36 101:10 105:14 126:32
really #d	41:-10 70:34 126:-8
stick were	67:-8 70:12
bent ,	38:-14 39:25
, correct	52:-15 70:32
correct it	52:-15 70:21 126:8
metr==e	40:-11 51:25 52:9 67:-9 68:-14 69:65 70:45 118:-22
metr	40:-11 51:25 52:9 67:-9 68:-14 69:65 70:45 118:-22
#d metr	69:8 70:24
metr to	70:9
to @wire	18:10
m becaus	70:10
becaus a	51:-9 70:22
turn up	32:25 51:29 70:19 78:-13 117:-21 118:53 120:-14
behind the	70:20
was off	13:12 29:9 70:9
becaus the	19:10 44:23 49:41 70:12 78:-10 92:16 96:18 102:9 120:9 126:-25
end was	41:14 70:9
remeasur==ed	70:12
hand should	70:21
should say	70:21
becaus i	70:23 111:10 126:-12
remeasur	70:12
of piec	0:-9 34:24 37:10 39:-17 41:26 70:40 126:9
came off	71:20 72:40 76:-8 126:-9
off piec	37:-11 39:22 41:13 71:48 76:-8 126:-24
#n made	37:-15 71:44 76:-9 126:-12
made #n	37:-15 68:12 71:40 72:14 79:14 83:-8 126:-14
cut ,	4:13 5:45 12:-12 13:-12 14:8 20:13 44:20 71:12 105:18
all from	71:13 74:11
#n half	37:-9 78:30 83:18
half an	41:8 44:22 71:-12 78:38 83:28 98:-8 99:22 103:10 105:24 106:9 109:-8 126:-8
#r cut	72:10
a fresh	7:12 72:28 96:19 126:-9
fresh stick	0:8 72:23
done :	72:20 73:-8 79:22
old @wire	73:17 80:9 126:-13
fret out	0:20 2:-10 37:-10 42:-9 44:22 71:10 73:12 76:19 83:-9 108:22 126:8
all in	10:13 67:8 73:9
they'r==e	2:28 16:-12 24:24 41:-8 43:-8 44:23 50:-8 73:38 75:11 79:-8 80:17 82:58 92:-8 102:19 108:-14 120:9 121:25 126:-10
sill==	2:-18 38:-15 39:23 40:20 73:21 81:33 83:-12 101:14
they'r	2:28 16:-12 24:24 41:-8 43:-8 44:23 50:-8 73:38 75:11 79:-8 80:17 82:58 92:-8 102:19 108:-14 120:9 121:25 126:-10
, they'r	2:8 51:-10 73:20 80:17 96:8 121:24 126:39
they'r on	73:19
sill	2:-18 38:-15 39:23 40:20 73:21 81:33 83:-12 101:14
window sill	40:21 73:19 81:12 126:15
sill $	73:24 80:-12 126:13
is from	74:8 104:8 126:8
lot for	19:17 38:-9 74:47 84:18
saw==ed	4:-9 18:-10 71:58 75:32 78:15 92:11 126:-17
^ saw	4:-22 44:35 71:42 75:8 92:-9 104:18 105:14
saw the	104:20
deep ,	18:24 43:-13 75:23 89:9 93:30
, bottom	75:27
curv $	18:38 92:12 126:-10
same $	0:-9 13:-29 22:10 75:92
mov #n	76:29 126:-9
mov the	76:20 96:-9
down to	8:29 9:-11 17:10 42:-11 43:42 46:-9 56:20 62:11 67:-11 68:13 76:9 93:-17 98:31 100:24 105:10 108:13
not move	90:11 126:30
anyth on	12:20 19:14 32:16 97:-13 102:9 104:-8 126:61
across at	77:49
inch wide	42:-10 77:18
#o ,	0:54 3:-13 11:-13 13:-11 15:18 37:30 42:-11 47:14 54:-9 55:9 77:15 94:38 97:25 100:-8 102:22 126:-13
@job board	2:-8 4:59 13:-9 17:11 28:-19 44:-9 49:-13 65:-9 71:-11 77:11 88:44 91:-21 92:20 94:24 108:44 109:39 114:-10 126:12
board at	42:-11 77:17 91:12
bag==	18:-9 37:-15 38:27 78:17 84:33
@job down	27:18 28:22 37:-8 44:22 45:17 48:12 65:-8 66:28 98:-12 109:29
bag	18:-9 37:-15 38:27 78:17 84:33
dust bag	78:18
, nip	78:25
nip it	78:19
spoilt ,	78:44
, fil	70:11 78:8 108:15 109:12 126:-8
fil right	78:20
right through	3:-8 49:14 78:37
remad #n	79:47
old #n	42:-9 72:-8 73:-22 76:37 78:-9 79:63
mm into	73:-8 79:23
remak==e	2:29 73:-8 79:32
remak	2:29 73:-8 79:32
remak #n	126:13
not measur	51:-9 73:24 80:40 126:-9
unmeasur==ed	0:-10 8:-8 40:-34 51:-8 73:-9 80:86 81:28 82:-8
^ about	13:-11 36:19 108:-18 126:47
#n bit	72:-8 80:33 83:9
thrown in	80:17
unmeasur	0:-10 8:-8 40:-34 51:-8 73:-9 80:86 81:28 82:-8
unmeasur $	80:20
pull @wire	80:12
handful :	80:9 81:8 83:-10
@wire handful	80:14
^ went	16:-12 43:19 45:25 46:14 81:11 108:15
went through	41:10 67:26 81:11 126:-22
handful measure	81:12
^ length	4:26 42:8 81:13 83:-13 94:-10
^ both	26:-31 71:-18 82:8 83:38 96:13 101:14 102:34 103:14 118:16
both #d	71:-8 82:17 83:28 93:-8 126:14
are scrap	82:14
are rusty	82:8
rusty ,	82:8
, scrap	20:14 41:33 53:-9 82:14 113:11
not take	24:11 39:-9 61:-31 68:-14 110:10 120:11 126:70
lot asid	84:28 85:-15
we set	24:63 56:-14 84:-13
give free	24:-10 85:23
free all	24:-10 85:26 126:11
reservation==s	10:-8 11:-8 12:-13 14:-14 24:103 26:-8 27:205 29:-12 30:-30 44:-9 63:-8 74:-13 85:53 102:-14 111:-8 126:-14
)~",
R"~(forget about	41:11 48:12 113:50 119:-11 120:15 126:-8
reservation	1:-8 10:-9 11:-9 12:-15 13:-9 14:-15 24:100 26:-18 27:216 29:-13 30:-31 34:-10 37:-14 39:62 41:-20 44:-11 62:-10 63:-11 64:-8 70:-8 74:-15 84:-8 85:52 102:-18 107:139 111:-10 126:-28
drop all	85:25
the hold	8:-13 24:28 38:-9 39:100 41:-11 85:49 126:-27
hold on	8:-21 13:-8 17:-12 24:98 38:-13 39:36 44:-10 85:54 126:27
: length	86:10
length #c	86:12
, width	86:24
width #c	86:9
, length	4:30 22:-13 42:20 80:28 86:15 90:-10
, rat	81:-9 86:12
bar crack	87:12
crack ,	87:25
it out	1:14 41:-22 44:-17 49:8 58:19 61:9 76:43 78:-14 87:28 91:-11 96:-11 101:-9 107:10 125:16 126:51
of use	87:49 102:10 126:-28
bar any	87:14
call short	87:12
cradl ,	88:56 126:-16
, head	88:24
clear ,	88:34 126:-17
bridge ,	88:10
, glue	31:12 88:24 97:10
nut off	13:-12 16:-9 44:-9 49:-14 88:128 109:-23
beyond #c	126:38
^ hollow	87:8
from #c	52:14 88:38 126:-8
: crown	50:-8 89:26 91:9
tang is	41:19 89:15
^ over	42:-10 43:42 89:8 90:15 98:-11
see==	2:-19 4:53 8:28 9:12 10:-12 11:-11 12:22 13:8 14:33 16:9 17:-15 24:25 27:36 31:-16 32:9 34:32 36:34 45:-8 46:-12 59:10 66:10 71:-12 85:-10 86:-13 90:22 91:27 107:-9 116:31 126:-25
see	2:-19 4:53 8:28 9:12 10:-12 11:-11 12:22 13:8 14:33 16:9 17:-15 24:25 27:36 31:-16 32:9 34:32 36:34 45:-8 46:-12 59:10 66:10 71:-12 85:-10 86:-13 90:22 91:27 107:-9 116:31 126:-26
can see	17:-9 90:28 91:32
see light	91:20
and under	91:43 92:-9
bottom==ing	25:13 92:35
find anyth	92:32
anyth wrong	92:32
deepen==ing	75:11 92:19 126:-11
deepen	75:11 92:19 126:-11
#n thru	45:18 72:10 90:-8 93:37 126:-9
thru low	93:37 126:-8
^ feeler	75:17
feeler say	75:17
stop==s	94:47 109:-8 110:12
@job stop	94:15
stop at	44:-11 94:46 109:13 110:12
good ,	16:16 38:27 63:11 64:19 83:-8 101:27 116:11 126:-33
, last	9:23 10:11 20:-16 21:29 32:-8
neck on	95:52
whether==	3:30 4:16 9:18 16:45 18:27 25:9 45:-21 91:-34 95:-13 126:52
not look	65:31 79:12 82:12 91:-12 95:-13 116:8
whether	3:30 4:16 9:18 16:45 18:27 25:9 45:-21 91:-34 95:-13 126:52
look whether	91:-12 95:-13 126:31
reseat #n	34:-26 45:-8 96:84 126:30
shim #n	96:47 98:-8
was seat	96:12
seat anew	96:22 126:31
glu #n	97:37 126:-14
clamp it	4:11
, at	1:16 15:8 20:10 30:12 37:25 43:38 46:-8 51:11 54:12 59:9 68:10 69:-11 73:-8 98:16 117:-8 118:-8 121:16 126:-12
past #n	34:-9 37:17 53:16 55:24 67:8 79:10 88:11 90:-9 91:-10 92:-8 94:16 98:9 102:-10 103:25 108:45 109:20 112:32 116:-10 126:-22
clamp==	4:10 28:10 33:13 39:18 91:-11 92:-16 97:91 99:19
in glue	97:14
glue with	23:8 97:8
a clamp	92:-8 97:34
clamp on	39:19 97:38
not glue	126:11
glue #n	97:15 126:20
file==	3:8 16:20 27:15 30:-8 42:-14 56:11 66:17 76:-12 78:12 90:-8 98:52 104:14 109:19 126:19
the file	16:20 78:13 98:28 109:20 126:26
file on	109:15
, levell	98:12
levell #n	98:79
spot==	1:42 17:9 34:-9 65:11 98:67 126:-22
spot	1:42 17:9 34:-9 65:11 98:67 126:-23
^ spot	98:54
spot -	98:34
not levell	98:-10 126:17
we'v==e	8:10 9:19 12:23 14:-10 19:-8 22:-16 24:-12 26:-8 28:-12 32:-12 33:-15 34:-12 37:26 38:-8 39:-10 44:-17 51:-15 59:14 63:10 64:15 67:18 68:9 69:-10 80:18 83:-11 84:-14 85:36 99:63 100:34 101:49 103:12 104:-8 108:23 117:8 120:31 121:9 122:-8 123:29 126:-20
buffer==s	99:10
buffer==	99:21 101:23
we'v	8:10 9:19 12:23 14:-10 19:-8 22:-16 24:-12 26:-8 28:-12 32:-12 33:-15 34:-12 37:26 38:-8 39:-10 44:-17 51:-15 59:14 63:10 64:15 67:18 68:9 69:-10 80:18 83:-11 84:-14 85:36 99:63 100:34 101:49 103:12 104:-8 108:23 117:8 120:31 121:9 122:-8 123:29 126:-20
^ we'v	19:-10 22:-15 33:-13 37:26 39:-9 44:-16 51:-8 59:19 63:11 64:16 80:19 83:-10 99:67 100:13 101:51 103:13 108:24 117:10 120:32 121:8 122:-8 123:32
we'v got	8:15 30:9 59:13 64:12 68:11 69:-9 99:26 103:18
buffer	99:32 101:23
now ,	2:16 5:-9 11:22 12:10 17:-9 24:13 26:-13 30:-10 33:-11 36:14 37:-9 38:-14 39:-11 40:13 44:15 49:-11 51:17 53:50 55:-35 61:11 62:43 63:-13 65:-8 66:-12 68:-8 69:-12 71:-17 73:-12 76:16 79:11 80:-17 82:-8 83:9 84:9 86:9 96:11 98:9 99:32 103:8 104:-11 105:-15 106:-12 108:36 109:9 110:33 111:-8 112:-12 114:17 115:9 117:10 122:24 123:8 126:-14
, defin	99:11
buffer $	99:22
bandsaw==	99:22 100:29 105:-24
machin :	99:25
bandsaw	99:76 100:26 101:16 105:-25
: bandsaw	99:11
bandsaw $	99:41
better==	1:-8 8:-11 15:22 33:-9 39:18 42:17 48:11 56:10 68:-11 69:16 99:21 101:12 117:-11 121:-14 122:14 123:8 126:52
better	1:-8 8:-11 15:22 33:-9 39:18 42:17 48:11 56:10 68:-11 69:16 99:21 101:12 117:-11 121:-14 122:14 123:8 126:52
better ,	122:13 123:8
them ,	28:11 40:-14 44:14 72:11 73:15 80:41 81:-11 85:12 122:11 126:-18
the spar	101:19
spar both	1:-11 99:14 101:19
both as	99:-16 101:18
machin ,	60:13 61:-9 101:19 106:8
, count	38:-10 40:17 67:30 78:17 80:-11 99:13 100:22 126:-14
drill==	26:-11 99:51 101:52 103:-10 113:-8 126:8
drill	26:-11 99:51 101:52 103:-10 113:-8 126:8
drill press	26:-11 99:48 101:26 103:-10 113:-8 126:15
, call	86:15 114:21
, new	5:-10 48:29 51:-11 59:18 72:11 79:11 99:16 122:9
machin open	99:11
open ,	12:26 20:17 29:35 55:-19 99:12
, setup	99:16 100:8 105:-11
setup #n	99:15 100:16 105:-8
we'v #n	22:-14 34:-9 80:21 100:37
bench==es	14:28 100:128 103:40
bench left	100:30
minute setup	99:9
sold==	49:32 100:40 101:76 102:-20 121:20 122:-21 123:30
sold	49:32 100:40 101:76 102:-20 121:20 122:-21 123:30
sold ,	100:28 101:23 102:-14
it off	17:39 24:10 41:18 44:8 78:-22 87:14 101:11 102:20 103:-9 118:12
rid==	0:-9 22:8 26:-15 33:-8 41:52 49:16 58:36 76:-12 82:44 87:18 100:-9 101:42 123:20 126:-20
^ get	7:8 26:-15 33:-8 41:41 49:16 58:25 82:28 87:18 100:28 101:46 123:20 126:-37
rid	0:-9 22:8 26:-15 33:-8 41:52 49:16 58:36 76:-12 82:44 87:18 100:-9 101:42 123:20 126:-20
get rid	0:-8 22:8 26:-15 33:-8 41:53 49:16 58:36 87:18 100:-9 101:42 123:20 126:-16
rid of	0:-8 22:8 26:-15 33:-8 41:53 49:16 58:36 82:8 87:18 100:-9 101:42 123:20 126:-17
the drill	101:27 113:-8 126:12
, we	29:-9 38:-8 49:9 52:12 54:-18 56:8 87:25 99:12 100:8 101:31 102:-8 113:36 116:11 118:-13 120:47 123:-22
not have	39:19 50:9 66:-13 94:11 101:43 115:25 125:18 126:-58
have that	6:13 22:26 89:8 126:-8
that machin	99:-11 101:63 126:-11
machin now	60:16
@day noon	102:13 116:15 126:24
noon $	53:-24 55:30 102:21 112:17 116:20 126:22
#n broken	63:28 102:24 109:9
leak==s	64:19 102:23 103:-11 111:11
leak	64:19 102:23 103:-11 111:11
ram leak	102:20 103:-10 126:8
leak ,	102:20
, press	16:-10 36:16 45:14 102:9 108:13
press out	26:17 102:36 126:-25
servic ,	26:-11 102:26 126:19
, out	20:11 41:14 72:11 82:26 96:9 102:18
@day #t	27:-10 55:38 102:11 106:34 110:26 112:-67 116:20 126:14
belt==	3:-9 23:45 30:-9 43:21 88:8 99:29 100:23 102:23 103:24 104:-22 107:-8 126:-28
torn==	41:16 100:-8 102:32
torn	41:16 100:-8 102:32
belt torn	100:-8 102:32
afternoon==	8:-9 11:35 12:-11 14:-12 23:-8 24:-12 26:-15 27:22 29:-14 30:39 34:-19 41:14 44:24 53:-22 54:84 55:10 62:-10 63:-8 95:-10 98:8 101:-8 102:38 106:72 111:94 112:-21 113:-13 116:22 126:-25
befor #n	56:10 112:17 115:19 126:-15
afternoon ,	53:-10 54:9 55:10 106:38 110:32 111:60 112:-29 126:-16
until #t	53:18 55:8 112:9
press down	26:46 102:53 106:-11 126:-33
^ fix	19:-10 70:41 74:16 97:19 108:10
fix the	26:-13 70:15 103:16 126:16
are back	26:-12 96:10 103:19
sander up	100:24
polish done	44:23
bend need	104:10
happen at	26:-14 104:30
bench ,	5:-12 6:32 12:19 63:8 65:32 100:29 103:9 104:33 117:-9 118:25
not the	11:11 12:8 37:24 101:15 104:18 119:22 126:-29
crown==ing	28:44 44:41 56:-8 91:-8 99:15 100:-24 104:43 105:56 108:32 109:37 115:-10 116:-9 126:-14
crown need	104:17
seat==ing	13:-16 15:-10 16:-8 18:31 20:19 28:28 33:-16 44:24 56:-9 65:-11 66:-9 99:-9 100:-17 104:82 105:49 108:39 109:37 126:54
half $	22:11 105:9
take half	99:10 105:23
doe seat	28:32 33:-11 126:-8
press @day	16:-10 27:8 102:-23 106:68 107:33 126:-25
, @day	30:24 53:23 54:18 102:-15 106:51 110:21 112:-18 113:-15 126:-11
to half	38:-8 53:23 54:-10 106:8
half past	34:-8 53:18 55:13 67:8 79:11 90:-9 98:11 102:-10 103:26 108:59 112:34 116:-8 126:-17
&#t@day@person	29:-10 30:17 53:-74 102:-11 110:90 111:-13 112:40 126:18
press from	26:-17 34:-9 101:51 102:-12 104:20 106:31
)~",
R"~(dec==	48:28 54:29 106:16 111:21 113:9 117:10
dec	48:28 54:29 106:16 111:21 113:9 117:10
#n dec	48:28 54:16 106:16 117:10
dec ,	54:16 106:17
noon ,	106:11 110:10 111:-8 112:19 126:-8
, for	0:-32 1:-11 3:8 5:-13 11:23 16:-20 20:15 32:8 37:19 38:102 48:-15 51:10 52:9 54:-10 55:9 71:12 74:22 76:10 106:23 112:14 117:-9 126:-39
put me	62:15 65:-10 72:11 106:29 108:-8 111:20
me down	62:15 72:11 106:12 108:-11 111:20 126:-9
not book	126:9
press tomorrow	11:-8 26:-19 27:54 102:31 106:10 107:46 126:-35
it ,	0:27 1:-8 3:-20 12:-10 15:-11 16:-9 17:-10 18:-9 19:-8 29:9 30:22 34:20 36:14 38:28 39:9 41:-23 42:15 43:-14 44:30 51:9 60:15 61:-8 64:8 65:14 67:13 70:-15 71:15 73:8 76:-14 79:8 83:-16 88:-14 90:-15 92:-23 93:24 94:34 96:26 97:8 99:24 100:-8 107:8 108:-8 113:12 125:-8 126:-54
that book	107:14
back my	107:13
, tru	108:10
slot now	76:13 108:10
speak==	12:-15 14:22 27:12 29:-12 44:-9 99:10 108:35 126:-10
fret as	108:20
as we	39:14 44:-8 52:11 100:13 108:35 122:11 126:-25
speak	12:-15 14:22 27:12 29:-12 41:-10 44:-9 99:10 108:35 126:9
we speak	44:-8 108:35 126:-9
speak $	44:-8 108:35 126:-9
, stop	5:-8 37:-9 109:28 126:20
^ brok	44:-14 49:-9 109:68 126:-9
brok off	18:-8 44:-16 49:-9 54:11 109:80 126:-9
to leav	3:10 109:17 112:23 126:-15
leav the	9:14 13:-9 44:-10 65:32 82:-8 109:31 115:17 116:12
slot half	109:17
half done	44:-18 109:68
phon==e	10:42 11:-14 13:-40 17:-12 18:-13 24:-8 25:18 29:15 30:-10 48:12 49:32 53:9 58:38 108:-8 109:57 110:-12 112:13 114:24 117:-9 118:-8 120:16 122:9 125:-10 126:67
phon	0:11 10:50 11:-14 13:-45 17:-12 18:-16 24:-8 25:18 29:15 30:-10 48:12 49:36 51:-20 53:9 58:38 108:-8 109:57 110:-12 112:13 114:23 118:-9 120:29 125:-10 126:66
^ phon	33:15
phon ,	31:8 114:21 120:12 122:10 126:-9
, i've	0:-18 16:-10 17:-9 30:8 34:19 37:11 38:-11 45:9 46:24 64:18 67:16 78:15 98:13 106:10 126:-8
i've stop	105:10 109:42 115:-8
minute ago	37:-9 41:14 42:15 44:11 45:14 46:18 67:10 71:-9 82:36 84:21 96:10 97:25 100:-22 103:30 105:-30 108:27 109:54 116:-10 126:-44
has @day	22:14 110:73 111:-30 126:-10
@person hour	26:26 29:38 53:-11 110:-16 111:-11 112:25
hour are	27:12 29:-14 46:18 55:-8 56:10 112:14
off tomorrow	109:-16 111:-9 112:-16 126:67
@person gone	63:20 111:17
gone from	111:18
@person ill	29:-15 111:55 126:14
here #t	110:-14 112:16
#t only	53:10
back that	54:-16 113:30
#n urgent	13:47 15:-16 17:-10 30:-8 114:13 126:55
gig==	54:8 113:10 114:10
gig	54:8 113:10 114:10
a gig	114:10
gig ,	54:8 114:10
, her	45:8 59:27 111:14 112:9 114:17 126:-11
her @job	30:10 48:22 49:12 114:19 126:13
once==	1:-8 9:27 13:-9 16:25 25:10 31:-24 33:-8 44:10 45:-8 48:9 52:18 53:-13 55:17 62:-8 63:-23 64:38 78:-8 80:10 83:10 84:-8 88:-33 89:-14 99:9 102:-9 103:37 106:-9 110:-22 111:27 112:14 115:47 122:-21 126:101
once	1:-8 9:27 13:-9 16:25 25:10 31:-24 33:-8 44:10 45:-8 48:9 52:18 53:-13 55:17 62:-8 63:-23 64:38 78:-8 80:10 83:10 84:-8 88:-33 89:-14 99:9 102:-9 103:37 106:-9 110:-22 111:27 112:14 115:47 122:-21 126:101
only once	115:40 126:-17
once job	115:26 126:-15
another look	46:17 116:17 126:-15
after lunch	15:-8 45:-8 72:-15 92:13 95:-18 115:-15 116:9 126:91
recheck it	116:15
oop==s	125:32
scrub==	49:18 120:9 125:9
oop	125:32
^ oop	125:32
oop ,	125:32
scrub	49:18 111:-12 112:20 120:9 125:9
, scrub	125:9
scrub that	120:9 125:9
that last	125:33
, undo	125:71 126:-14
was wrong	125:20
wrong ,	2:16 17:14 67:-13 70:31 92:26 105:10 125:30
seat a	104:22
sander thes	100:25 104:9 126:-8
thes day	11:-13 12:15 15:8 50:8 100:20 101:-10 104:9 110:8 122:16 126:29
, level	17:23 98:13 126:-12
push==	2:21 16:24 25:16 48:35
push the	2:12 25:15 73:-8 76:11
down #d	37:-12 42:22 93:71
scratch==	17:12 27:-14 33:-19 49:45 87:16 88:38 95:-8 107:38 123:19 125:54 126:-18
scratch	17:12 27:-14 33:-19 49:45 87:16 88:38 95:-8 107:38 123:19 125:54 126:-18
^ scratch	27:-14 33:-19 87:12 88:41 107:37 123:20 125:54 126:-11
scratch @person	27:-13 107:39
@person press	45:11 107:54
brass==	105:15
brass	105:15
neck ,	25:16 31:10 78:10 95:23 126:-26
ground==	86:14 98:63
ground	86:14 98:63 111:14
ground down	86:14 98:51
down ,	2:10 45:8 53:-8 76:10 83:-11 86:11 96:11 109:26 123:40
log==s	60:25
user==	59:27 60:92 61:79 62:-10 99:-8
@person log	60:17
log in	60:25
user	59:27 60:92 61:79 62:-10 99:-8
user #c	60:43 61:70 62:-8 126:11
^ whoever	15:-12 60:12 61:-8 65:14 126:17
whoever come	66:10
, that	3:-10 5:11 7:-9 15:-12 17:-19 22:-9 26:-8 29:-9 37:-15 38:21 39:-12 41:-12 42:10 43:-12 44:42 49:28 56:11 57:10 60:24 63:-9 65:27 67:12 80:-12 83:-8 85:-11 92:30 93:-16 94:-12 95:16 96:18 98:16 101:23 103:9 107:-17 109:-15 110:22 113:9 117:-11 118:8 120:-14 122:9 125:45 126:56
@job sold	49:19
sold the	49:12 87:13 101:18 126:12
not doing	49:45 66:18 113:-8 126:-34
doing it	15:10 31:15
strik==e	2:-9 14:-11 22:-8 26:-10 33:-22 41:10 43:-24 48:8 49:34 58:34 63:39 87:15 98:11 99:-8 101:55 118:-14 119:14 120:13 122:23 123:51
strik	2:-9 14:-11 22:-8 26:-10 33:-22 41:10 43:-24 48:8 49:34 58:34 63:39 87:15 98:11 99:-8 101:55 118:-14 119:14 120:13 122:23 123:51
^ strik	14:-10 26:-8 33:-22 49:38 58:18 63:31 101:41 122:26 123:13 125:10 126:-24
strik the	48:9 49:8 101:10
, just	8:-14 22:18 31:-9 41:-11 44:-19 46:8 49:34 74:9 76:40 82:10 99:21 110:-17 111:38 113:17 118:14
tomo'll==	112:26 113:-20
tomo'll	112:26 113:-20
@day the	29:-13 31:31 53:26 55:25 106:60 110:-15 111:-11 112:24 113:-28 119:-12 126:-9
wire off	74:9
off delivery	74:9
delivery #n	5:-9 13:-9 19:11 40:17 51:-8 72:22 74:125 94:-8 114:-8 115:-8 121:8 126:-9
@job :	0:-8 2:38 3:-8 4:-13 13:20 24:-13 34:-17 38:21 42:-11 43:-10 44:-11 48:10 71:13 72:15 75:14 76:8 78:-13 83:-12 85:-12 90:22 91:8 94:15 96:22 97:13 108:-9 109:9 114:18 126:-14
: lot	74:15
, like	27:8
like the	0:-12 31:25 37:-9 38:15 53:9 56:35 64:15 66:10 74:8 75:19 99:8 105:9 106:21 114:9 126:-48
wednesday==s	53:89 55:-18 90:-8 110:66 112:-23 126:-10
@person full	65:8 110:29
time now	105:10 110:29
wednesday	53:89 55:-18 90:-8 110:66 112:-23 126:-10
wednesday #n	53:38 110:29
no @person	110:-16 111:97 126:-17
^ bag	84:30
bag up	84:30
up all	84:-15 85:22 126:13
fret and	13:24 20:23 21:-20 28:11 31:-8 65:14 84:15 126:-20
and mark	84:10
them as	84:10 99:9 121:10
as its	56:8 84:10 94:12
its own	2:-11 5:17 16:22 17:-11 25:-8 84:10 98:8
own $	0:9 2:-11 5:14 8:41 9:-11 10:-8 12:9 26:18 84:10
lock==	13:-12 24:31 44:9 54:30 84:17
lock	13:-12 24:31 44:9 54:30 84:17
#n inch	0:11 5:29 22:-8 40:11 69:14 72:-13 77:22 80:-13 83:-9
join==ed	59:21 76:19 99:24 101:25
the join	99:24 101:25
of machine	26:-21 99:24 101:44
machine ,	30:31 99:31 101:16 102:9
, ther	44:-14 48:10 52:12 84:12 94:38 99:37 100:-13 109:16 113:10 114:-8
wise ,	99:19
press .	99:8
know==	0:10 1:-10 2:10 4:11 5:-15 7:-11 9:-22 11:13 12:18 13:14 14:12 17:-9 26:30 28:22 29:51 32:-9 33:61 36:33 41:-9 42:20 69:8 70:11 77:-15 82:21 88:15 92:15 94:13 99:8 102:10 104:-10 107:-8 110:-9 111:-21 123:-18 125:12 126:-60
worn==	41:25 45:-9 82:17 92:11 98:9
know	0:10 1:-11 2:10 4:10 5:-16 7:-11 9:-22 11:11 12:18 13:13 14:10 15:-15 17:-9 22:-8 26:29 28:21 29:49 30:-8 32:-9 33:53 34:-10 36:33 40:10 41:-9 42:19 45:9 67:-15 69:8 70:10 77:-15 82:20 88:15 94:13 102:9 104:-10 107:-8 110:-9 111:-8 112:-8 116:-13 123:-20 125:12 126:22
know what	0:8 8:8 12:9 84:11
due ,	48:-10 55:9 58:30
worn	41:25 45:-9 82:17 92:11 98:9
worn $	82:11
its last	94:20 126:-9
specially==	55:8
open up	55:20 113:17
specially	55:8
make that	52:14 100:43 102:-8 126:-13
arbor==	16:-15 23:32 26:-11 27:12 36:-14 100:42 102:-12
renam the	26:-12 100:76 102:-9 103:-10 104:-11
arbor	16:-15 23:32 26:-11 27:12 36:-14 100:42 102:-12
bar gone	87:14
gone ,	71:10 72:-10 78:8 101:25 111:16
, broken	109:12
the clos	29:-8 32:52 54:-37 113:131 126:-23
the login	60:15 61:9
login #c	61:15
away from	60:-12 61:19 101:-9 111:20 126:25
from @person	42:8 51:-10 60:-36 61:52 65:-33 66:59 117:10 118:-12 126:30
, off	5:69 17:29 70:-16 72:20 78:-11 101:23 107:16 109:-8 118:-9 120:15
today was	63:26 126:-10
was @person	29:-8 34:13 63:29 78:21 111:-19
last day	9:21 10:22 63:35 126:-20
she left	43:9 63:20 126:-8
un==	27:-9 39:25 63:-28 64:49 84:-19 85:40 102:-10 107:28 126:-10
)~",
R"~(un	27:-9 39:25 63:-28 64:49 84:-19 85:40 102:-10 107:28 126:-10
@person un	64:10
un -	27:-9 39:25 63:-28 64:49 84:-19 85:40 102:-10 107:28 126:-10
- retir	63:-28 64:50
new ,	48:9 63:9 72:16 75:-8 99:31 100:-13 103:8 119:15 126:43
, bench	59:18
role $	14:37 33:-17 62:16
crown in	105:27
minute now	36:16 100:9 105:16
recheck==ing	10:25 21:8 46:13 90:-8 105:12
let recheck	56:24 105:9
go by	105:48
report again	105:39
not bother	52:25 126:-24
bother me	52:25 126:-25
me about	8:-11 9:-10 13:56 15:-8 17:-8 19:21 26:56 33:24 52:24 104:-10 126:-49
about @wire	18:12 52:40 126:-34
till it	52:25 98:8 126:-25
#n metr	51:27 52:13 67:-14 69:32 70:24 118:-21
metr $	52:22 68:-14 69:38 126:-26
mistak==e	39:10 92:8 99:-8 101:13 113:22 123:15 125:19 126:-9
mistak	39:10 92:8 99:-8 101:13 113:22 123:15 125:19 126:-9
mistak ,	39:10 92:8 113:22 123:15 125:19 126:-17
bench from	59:-9 62:33 101:12
crown :	89:11 104:21
bur==red	70:14
once the	44:-9 52:12 70:12 83:10
bur	70:14
off ,	0:10 3:-10 7:11 24:-8 29:-11 33:11 49:31 54:-12 67:15 70:31 85:8 92:10 107:21 112:26 113:25 126:-59
put that	54:16 62:-9 63:27 70:14 75:9 100:14 125:10
public==	54:28
public	54:28
public holiday	54:28
holiday on	111:9 113:39
nobody in	54:16 66:22
^ wednesday	53:69 55:-12
and #t	53:12 55:-26 110:32
stick on	67:10
scal ,	47:18 51:-10 68:43
#n gram	68:43
out and	9:22 79:-10 96:67 108:12 126:-12
and back	79:-9 96:12
, reseat	96:39
reseat ,	96:17
to save	2:10 38:-11 39:30 62:14
save number	0:-9 37:-9 38:16 39:18
, would	0:29 1:-10 2:20 3:27 5:-8 11:11 12:25 26:20 27:9 36:-13 38:9 39:12 45:-20 54:23 61:8 62:-8 70:8 84:10 93:-8 96:-12 107:26 113:-9 114:13 126:-9
yet ,	15:11 50:9 98:-9 126:26
present==	5:9 9:10 14:10 45:-44 66:18 118:16 126:60
present	5:9 9:10 14:10 45:-44 66:18 118:16 126:60
exceed==ing	0:14 8:-28 9:-9 32:55 51:-17 67:-22 117:-15 126:67
exceed	0:14 8:-28 9:-9 32:55 51:-17 67:-22 117:-15 126:67
@wire next	51:-22 67:-23 117:-17 126:79
not cancell	49:-25 65:-8 126:41
cancell the	20:-11 49:-25 67:-21 120:33 126:55
should'v==e	126:10
but==	2:-9 3:44 16:15 33:23 40:-16 41:-35 46:11 48:-9 50:9 51:13 55:25 59:36 61:-10 62:-13 63:-14 64:11 65:-11 66:-28 67:-13 71:-15 72:12 74:11 76:-18 82:-15 87:11 89:21 90:20 94:10 95:12 98:9 101:10 102:-10 107:12 108:-10 109:-10 110:-9 113:14 117:-19 118:-9 125:10 126:85
should'v	126:10
^ should'v	126:10
but	2:-9 3:44 16:15 33:23 40:-16 41:-35 46:11 48:-9 50:9 51:13 55:25 59:36 61:-10 62:-13 63:-14 64:11 65:-11 66:-28 67:-13 71:-15 72:12 74:11 76:-18 82:-15 87:11 89:21 90:20 94:10 95:12 98:9 101:10 102:-10 107:12 108:-10 109:-10 110:-9 113:14 117:-19 118:-9 125:10 126:85
#n but	45:-11 50:11 54:-9 55:32 71:-18 126:45
but i	42:10 45:10 46:17 71:-8 89:10 90:23 98:11 117:-14 122:9 126:-12
i did	1:31 34:-14 68:11 72:-17 77:13 94:15 96:9 117:15 122:9 125:49 126:17
not $	1:13 3:46 9:43 13:71 26:27 34:-12 42:-14 45:-11 62:-8 71:-11 76:9 78:-8 90:79 103:-11 112:14 126:-56
want job	15:-8 65:-19 126:46
suppos==e	5:12 16:55 18:9 41:-10 45:-14 56:-11 62:-8 65:-10 75:-11 76:-9 93:-12 97:-13 126:87
suppos	4:26 5:11 9:-11 15:9 16:48 18:8 32:22 41:-11 45:-14 56:-11 62:-11 65:-14 75:-11 76:-9 93:-12 97:-13 126:90
^ suppos	5:12 16:55 18:9 41:-10 45:-14 56:-11 62:-11 65:-10 75:-11 76:-9 93:-12 126:81
that be	3:8 16:22 31:22 126:-26
not down	102:-57 126:63
@person put	34:22 51:13 68:-10 69:15
no need	9:-9 29:-10 38:-36 48:-10 53:-9 114:10 115:20 126:122
to add	20:8 40:-9 58:-9 121:16 126:52
add that	126:29
that #d	0:-16 37:47 39:-10 40:-26 41:21 82:-11 126:58
round==	11:-11 18:9 26:9 30:30 39:12 65:-8 76:-9 88:10 90:-8 105:8 108:13 112:-11 113:19 115:8
not get	66:26 76:-14 91:11 109:20 113:-8
get round	11:-10 30:32 76:-8 126:12
round to	11:-10 30:32 39:12 76:-8
lying the	2:26 76:-8 126:17
if job	5:20
were done	5:20 34:10 126:-10
actually==	3:51 9:-14 11:-8 26:52 33:32 39:11 85:22 126:-8
actually	3:51 9:-14 11:-8 26:52 33:32 39:11 85:22 126:-8
same wire	40:70 50:-18 79:-9
of peopl	59:23 64:14 80:-14 126:17
he back	64:20 126:-13
on new	113:13
new year	9:27 20:-11 113:12 122:17 126:-17
quit==	44:-11 58:10 62:-11 63:106 64:-13 109:66 111:-8 126:-19
quit	44:-11 46:-8 58:10 62:-11 63:106 64:-13 98:12 109:66 111:-8 126:-19
@person quit	62:-11 63:79 64:-12 126:-12
quit $	62:-11 63:79 64:-12 126:-12
bar again	87:10
it away	39:-9 41:15 61:9 101:25
#n what	0:13 1:13
for number	0:54 1:12 3:19 5:-13 22:-8 24:-8 37:-9 43:-20 44:22 48:14 74:-14 84:16 85:29 105:-12 114:22
fret too	3:-9 43:17
look through	0:20 40:-11
^ befor	4:10 8:21 10:11 13:12 14:8 15:-9 16:-8 19:-8 24:10 26:34 36:9 38:-18 45:12 71:10 72:-10 82:-11 83:9 100:8
befor i	3:12 8:21 13:14 19:-8 23:14 24:18 26:8 36:10 38:-12 45:12 126:-17
wire :	0:11 19:14 25:22 72:36 79:-8
would any	0:37 3:-8
leftover==s	0:58 17:-9 21:40 22:31 78:-9
which of	0:43 1:-9 5:-8 10:9 13:-14 15:65 16:-9 22:20 26:33 29:39 33:-9 34:-8 59:-10 126:-13
of our	0:27 1:-15 5:27 22:9 26:35 33:-10 61:11 63:9 64:25 87:26 123:29 126:-34
leftover	0:92 3:-13 4:-23 17:-10 21:46 22:30 34:-9 40:29 71:11 78:-9
our leftover	0:31
option==s	0:24 36:36 126:-11
includ==ing	0:37 4:19 8:15 14:48 19:9 22:-8 78:-9 126:-8
option	0:24 36:36 126:-11
, includ	0:38 4:20 8:16 14:19 19:10 78:-9
long piece	0:39
^ pick	0:32 38:-8
pick a	0:32 38:-8
you tell	3:13 8:25 9:-8 15:9 36:9
is long	0:20
long enough	0:21 4:-13 42:-24 43:49 56:11 82:-9 83:-31 126:56
same slot	0:87 1:-21 3:38 4:-27 13:-8 34:-12 37:15
allow==ed	0:47 2:45 24:21 126:-17
allow	0:46 2:37 22:-11 23:-8 24:20 28:20 30:-13 41:9 105:12 121:12 123:39 126:-21
allow $	0:53 2:45 5:-12 41:9 126:-11
it wast	1:10
wast least	1:11
least $	1:10 5:13 42:-10 43:19 51:18 68:-8 69:-10 78:14 121:16
anywher==e	0:-12 1:55 9:24 18:14 51:29 75:-15 78:12 117:-25 126:-17
could piec	1:26 126:-9
anywher	0:-12 1:55 9:24 18:14 51:29 75:-15 78:12 117:-25 126:-17
find a	1:51 126:-34
here with	59:12
#n raw	1:9 3:53 40:-8
best==	1:106 2:68 3:14 4:18 5:59 13:-15 17:-18 22:-9 24:-12 34:-12 37:-12 38:-10 40:-8 41:-11 43:-8 53:-12 65:13 70:-9 98:10 110:-13
best	1:106 2:68 3:14 4:18 5:59 13:-15 17:-18 22:-9 24:-12 34:-12 37:-12 38:-10 40:-8 41:-11 43:-8 53:-12 65:13 70:-9 98:10 110:-13
^ best	1:51 2:14 5:25 22:-8 37:-10 40:-8
best use	1:30 5:27 22:-8
;==	1:31 2:41 3:14 7:16 16:11 19:9 28:27 34:-13 38:13 41:12 42:-12 45:-8 46:13 47:-10 48:12 50:23 56:-11 60:9 73:-13 76:14 83:-12 85:10 89:-8 99:25 100:-13 104:13 111:-8 113:9 116:9 121:25 126:-39
, both	1:21 3:8 29:-8 32:9 40:9 53:21 71:37 83:-18 98:13 103:19
;	1:31 2:41 3:14 7:16 16:11 19:9 28:27 34:-13 38:13 41:12 42:-12 45:-8 46:13 47:-10 48:12 50:23 56:-11 60:9 73:-13 76:14 83:-12 85:10 89:-8 99:25 100:-13 104:13 111:-8 113:9 116:9 121:25 126:-39
raw ;	1:8
; what	16:13 19:10 33:8 34:-8 48:12 126:-14
job could	0:-28 1:34
could take	105:-18 126:38
lose==	33:-12 34:-9 123:22 126:35
slot would	1:25 126:-9
lose	33:-12 34:-9 123:22 126:35
the least	1:46 2:32 3:-10 4:24 5:43 17:-10 37:-8 43:21 121:10 126:-18
mean==s	44:8 60:8 104:9 110:11 126:20
end #n	94:19
: wher	1:33 126:-15
wher ,	1:14 2:10 78:9
if it	0:-8 3:73 28:9 52:14 57:-19 126:32
it mean	17:15
me wher	1:13 4:10
wher i	90:15
i could	1:-9 26:15 30:20 71:-8 79:13 91:10 92:11 106:-12 109:16 115:-10 117:16 126:30
everyth ,	6:15 8:23 12:-9 66:-10 85:29
would piec	1:46 126:-39
doe piec	1:38 126:-8
i found	1:13 15:9 39:14 70:18 126:-9
found #d	1:10 70:10
if its	1:37 126:-23
end were	1:42 126:-22
which open	1:31 12:10
week pleas	29:13 30:8
show what	30:-8 34:17
, when	9:72 11:50 13:-9 29:60 31:42 32:12 33:-15 48:-11 110:-13 126:-12
when was	9:-9 11:31 15:-8 19:43 32:-12 34:26 48:-10 126:-9
was it	11:32 13:-11 19:24 33:17 34:17 48:-11
it promis	1:-20 11:56 13:-10 24:48 31:-8 48:-15 126:-14
due up	11:17
due from	11:62 48:-13 54:-10 119:-12
fortnight==	10:25 11:15 48:10 121:25
fortnight	10:25 11:15 48:10 121:25
fortnight ,	11:9 48:11
again today	11:23 46:12 116:-14
i mean	1:58 6:-11 8:11 9:-11 11:33 16:-8 17:-9 20:12 27:-8 32:25 33:16 51:11 53:13 66:-8 71:9 72:-14 87:10 95:8 102:16 103:-13 110:14 111:-8 112:-8 115:28 117:-8 119:21 126:-28
mean $	1:62 9:-9 11:26 13:-10 17:10 28:8 32:28 44:-11 53:14 95:8 106:-8 109:-9 114:9 126:13
)~",
R"~(due this	11:28
pressing==s	11:30
pressing	11:30
are already	11:30 27:11 29:-11
even==ing	27:15 29:11 30:22 53:-18 54:16 55:47 67:10 68:11 69:-10 110:11 112:-9 113:-12 126:-29
few==	2:20 28:18 48:14 98:13 126:18
#d ;	2:11 76:-8
can they	2:14 3:-8 12:21
they be	2:24 3:-8 81:-10
few	2:20 28:18 48:14 98:13 126:18
be made	2:16 49:24 125:16 126:-22
made $	7:12 82:-8
fret around	2:13
around so	2:26
so that	2:36 3:-12 11:8 30:20 40:15 42:11 44:28 46:8 48:8 49:-8 53:8 55:-9 56:8 78:16 87:11 88:-11 92:-11 101:8 106:12 110:-10 118:-10 119:15 123:8
as possibl	5:12
, tin	0:-17 2:72 40:20 73:29 80:-12 84:16 126:-8
tin allow	2:41 5:-10 22:-9 123:39
slid==e	0:-13 2:29 91:14
slid	0:-13 2:47 76:26 91:13 126:-24
slid #n	2:10
slot nutward	2:10 76:13
nutward to	2:10
^ work	2:59 5:25 6:-9 28:-15 29:15 81:-8 108:37 109:48 126:-14
work out	2:72 4:-10 5:25 6:-9 28:-8 81:-8 109:-11
a shift	2:23 81:-8
shift for	2:20 106:-9 110:-16 112:36
i'd==	0:11 2:32 4:-13 12:12 15:24 17:-23 26:20 27:-10 28:11 30:11 41:-15 50:-8 52:11 53:8 56:9 57:-19 60:-11 61:-10 65:17 67:-12 70:10 82:-13 88:11 90:15 94:-26 96:17 98:-9 106:17 107:-9 108:12 116:8 126:127
i'd	0:11 2:32 4:-13 12:12 15:24 17:-23 26:20 27:-10 28:11 30:11 41:-15 50:-8 52:11 53:8 56:9 57:-19 60:-11 61:-10 65:17 67:-12 70:10 82:-13 88:11 90:15 94:-26 96:17 98:-9 106:17 107:-9 108:12 116:8 126:127
^ i'd	1:-10 2:12 4:-9 12:9 15:27 16:11 26:16 28:12 37:13 41:-13 52:11 53:8 56:16 57:-19 96:18 104:9 106:21 116:10 126:34
i'd like	0:13 2:13 5:9 12:14 16:12 26:16 30:15 53:9 56:12 66:11 104:9 106:20 126:-50
like to	0:13 2:12 12:13 13:47 19:15 28:9 30:13 106:11 110:-23 126:-30
. can	3:8 31:24
acceptabl==e	3:56 42:-11
gap on	3:29 30:35 91:-14 126:-20
acceptabl	3:56 42:-11
acceptabl $	3:28
short or	0:-8 3:20 22:10 43:-19
or fine	3:19 43:-19
fine :	3:20 43:-19 48:10
check a	0:-8 3:24 111:28 126:-9
me ,	0:-39 3:35 4:-9 12:9 19:9 22:22 25:10 34:34 36:-9 38:-20 39:24 44:15 46:11 56:8 68:-9 69:11 78:11 81:-9 83:9 87:-13 90:-10 92:16 100:-11 106:-19 108:12 126:67
length do	4:15 22:8
^ tabl	16:23
all slot	4:44 44:-9 75:9
i want	6:9 7:17 8:16 9:-13 10:-8 20:9 21:15 24:-12 27:10 29:-12 32:12 52:15 56:45 62:22 84:26 115:24 122:-11 126:-34
to see	4:11 12:8 13:23 19:10 27:13 30:8 32:14 59:12 88:11 126:-33
each slot	0:-16 4:38
nut on	16:8 88:11
^ distanc	4:19
distanc from	4:9
nut to	4:19
length for	1:-10 4:50 44:35 72:21 94:-10 126:-20
so the	2:22 5:12 16:-9 41:-11 44:-14 48:16 53:-15 54:17 55:17 58:12 63:14 66:8 70:10 72:13 74:30 76:9 81:-10 84:-8 88:10 103:9 111:11 113:-13 115:14 126:-29
least new	5:26
wire goe	5:14
touch==ing	5:20 9:-10 24:-8 84:12 88:10
^ without	5:28 9:-10
many fret	5:19 9:-11 13:41 16:-10 28:-13
each fret	2:32 3:-8 5:9
get cut	5:19 104:12
plan the	5:11
cleverly==	5:13
cut it	5:20 30:-12 52:26 61:10 84:9 126:-10
cleverly	5:13
cleverly $	5:13
bench cut	6:15
rule==	3:-21 6:66 28:8 40:14 42:53 53:48 54:-9 55:-11 56:19 70:23 79:-10 80:9 112:8 126:-12
mark on	6:34 43:19
the rule	3:-17 6:48 42:36 70:25
when i	3:-10 9:-10 17:10 29:9 38:-8 70:10 126:43
list with	6:10 10:9 26:24 33:19 123:-8
rule mark	6:25
, to	65:31 76:16
am about	6:12 10:20 33:-12
about to	6:12 10:20 33:-12 97:11 108:-22 126:24
, print	6:8 7:9
drawer ,	76:-8 82:15
a bin	7:54 56:-11 126:-16
tin label	7:29
label ,	7:43
pictur==e	7:10
get me	0:16 126:-16
pictur	7:10
hand $	1:-10 6:16 8:58 14:64 16:31 24:-8 30:-15 32:-8 67:25 83:-8 104:-19 108:16 126:41
@wire stock	8:43 9:-13 51:-11 52:-25 67:13 70:48
have any	8:15 12:16 24:9
wire we	8:19 9:-16 10:23 19:15 32:-18 50:11 119:14 126:-8
: stick	8:11 67:-8 70:9
stick and	5:11 8:25 118:9 126:-12
in stainless	8:35
we out	8:65 9:-21 32:-9
is lying	8:37 9:-8 22:-14 40:12
lying here	8:10 72:11
^ quick	8:24 13:62 90:9 116:-10
rack :	40:-11 51:26 67:-8
: what	0:-13 1:16 2:30 8:17 11:-8 13:30 16:17 17:-8 22:14
we own	0:21 8:39 9:-8 10:-8 68:10 99:39 100:20 102:-8 126:-11
remain==	8:-17 9:25 88:9
many day	8:-16 9:22 26:-10 33:24
remain	5:-8 8:17 9:19 13:41 19:-21 20:20 25:12 34:-13 42:18 62:-17 64:46 88:8 93:-9 109:9 111:-10 118:13 126:9
remain $	8:-15 9:26 30:15
each wire	8:16 9:37 10:-8
^ run	9:35 63:28
overview==	9:13 12:27 26:106 101:-13 126:-10
wire supply	8:-8 9:43
overview	9:13 12:27 26:106 101:-13 126:-10
overview $	9:16 26:62 101:-12
what date	9:10 31:21
run dry	9:28
to reorder	9:27 10:44 11:-9 52:11 126:-11
pace==	3:27 9:8 36:24 115:-10 118:-18 126:32
pace	3:27 9:8 36:24 115:-10 118:-18 126:32
pace ,	3:27 9:9
@wire used	9:21 20:13 80:-12 126:20
count==ing	9:20 32:-16 37:21 61:29 71:-10 126:-27
order ,	9:21 10:30 22:11 32:10 33:13 117:28 118:-8 121:-14
, doe	1:11 3:49 9:19 16:12 18:34 26:-8 31:11 32:-16 75:-21 102:9 104:-8 126:21
be work	111:-12 112:38
work about	9:8
soon doe	9:16 10:-8
doe each	2:22 9:17 10:-8 13:-9 14:38 17:-14 28:18 29:-8 30:10
what to	5:26 6:10 10:10 12:-12
within #n	10:12 122:24
this time	10:39 18:9
time and	10:15 63:25
and what	0:-13 3:51 5:-10 9:-15 10:18 11:-13 13:34 14:21 17:26 20:48 21:-17 26:21 30:-16 34:-9 126:-13
purchase==s	10:76 11:-13 19:11 30:-13 48:-12
less==	0:-8 8:25 10:35 11:-9 48:8 52:25 67:-12 70:17 81:-8 114:9 119:9 121:21
purchase	10:76 11:-13 19:11 30:-13 48:-12
^ purchase	10:70 11:-11 30:-12 48:-12
day or	10:37 11:-10 22:19 48:-11
less	0:-8 8:25 10:35 11:-9 48:8 52:25 67:-12 70:17 81:-8 114:9 119:9 121:21
less $	10:38 11:-8 48:-11 70:15
job pleas	12:20
many job	8:-13 14:48
work ,	10:-12 12:24 13:11 30:30 36:12 59:10 100:25 109:9 126:-16
belong to	14:31 15:43 37:8 38:-8 51:32 60:10 61:36 63:28 64:-11 66:51 118:-16 126:-22
lack==	3:-12 4:-12 13:58 93:25 126:9
lack	2:-10 3:-13 4:-30 13:110 15:11 41:-8 42:-36 43:71 92:-9 93:21 100:-11 111:15 126:37
@job lack	3:-9 13:8 42:-20 43:48
lack a	4:-12 13:58 126:-17
look up	13:56 34:8 46:-10
up @job	13:54
what stag	13:43
fret doe	13:50 16:-9 28:-13
still need	13:45 22:13 28:-15
play==	13:33 48:9 62:10 110:-11 112:20
play	13:33 48:9 62:10 110:-11 112:20
of play	13:33
we done	10:-10 13:40 21:9 34:-18
to number	10:-10 13:39 19:-10 34:-18 74:17
card==	13:63 121:10 126:8
card	7:8 13:63 14:10 82:-8 121:10
the card	13:34 14:10 121:10
card for	13:35 14:10
@job begun	13:32 109:-10
progress==	13:142 34:-11
progress	13:142 34:-11
^ progress	13:95
on number	1:-9 4:-15 13:33 16:18 39:-24 66:57 83:25 95:25 102:-12 108:27
many open	12:-33 14:43
staff==	12:-19 14:134 15:21 26:-14 30:10 63:50 64:24 126:-16
staff	12:-19 14:134 15:21 26:-14 30:10 63:50 64:24 126:-16
^ staff	14:98
staff $	14:51 63:51 64:25 126:-12
team==	14:40 29:-11 99:13
team	14:40 29:-11 99:13
the team	14:40 29:-10
and who	1:-16 14:-9 15:10 17:19 24:-13 26:12 29:32 34:29
thos==e	0:40 3:-13 5:9 9:27 14:19 17:13 21:11 32:12 33:-9 44:11 51:-11 58:8 66:21 76:-18 78:-8 81:17 82:32 85:-11 93:18 97:14 98:25 117:-9 119:18 123:9 126:-43
^ includ	14:24 20:8 32:19
thos	0:40 3:-13 5:9 9:27 14:19 17:13 21:11 32:12 33:-9 44:11 51:-11 58:8 66:21 76:-18 78:-8 81:17 82:32 85:-11 93:18 97:14 98:25 117:-9 119:18 123:9 126:-43
includ thos	0:15 14:12
thos that	14:12 32:17
that have	14:11 126:14
have retir	14:25
at which	1:16 5:-14 6:9 13:-9 14:30 15:28 25:11 29:-11 30:21 65:-9 126:-10
anybody on	13:-49 15:19 17:-11 126:86
fret==ting	12:34 15:20 23:-11 74:15
of us	8:-12 12:-14 13:-11 14:107 15:76 17:-13 26:-13 28:-9 29:-10 30:12 36:-11 51:-10 59:38 63:23 66:20 67:22 99:-12 100:-8 126:-16
us is	14:12 15:30
is meant	15:18 37:-9 38:18 84:11
meant to	4:8 15:18 30:11 32:23 71:-10 72:10 76:-15 90:-12 126:42
given==	12:23 15:27 17:10 27:17 34:-14 82:11 99:10 101:17
was job	13:49 15:17 34:-12 45:-8 126:-24
given	12:23 15:27 17:10 27:17 34:-14 82:11 99:10 101:17
given to	12:24 15:27 34:-14 82:11
which bar	16:51 17:-8
bar goe	16:15 87:19 126:-14
how $	16:30
far may	16:16
bar for	16:8
i see	2:-15 4:33 12:14 16:15 27:10 36:41 126:-13
see the	4:-16 8:25 9:-8 12:8 14:38 27:29 34:40 36:18 59:11 126:-35
group==	16:56
press :	16:8 26:16 46:25 101:18 103:-13
group	16:77 102:-8
next group	16:20 45:10
group on	16:14
suppos the	16:27 18:9 75:-11
once more	16:30 31:-18 63:-22 64:42 100:-18 103:43 126:40
bar and	16:16
take ,	0:-9 16:19 80:10 84:24 126:-10
)~",
R"~(, list	11:21 12:14 16:19 22:26 28:-11 48:-10 113:-9
@job how	16:18
at most	16:12
@job may	24:10 48:10 85:15 92:-10 115:10 120:9 126:8
may the	2:-9 3:8 4:25
it high	17:24
far ,	12:23 13:-10 17:24 43:11 73:10
, as	17:8 28:9 53:14 55:-11 59:-12 62:19 63:-12 64:13 68:9 69:-10 82:12 84:-8 99:8 103:19 114:13 119:-23 126:53
a tabl	16:16 17:9
tabl $	4:49 16:9 17:16 25:8 44:-8 88:10 100:26
read for	17:30
#n pleas	0:-16 1:-11 4:-8 5:15 11:19 13:41 15:-11 16:17 17:20 24:-15 30:-13 34:-13 37:18 38:8 39:27 41:-18 45:12 48:-8 66:57 82:-11 84:-33 85:17 106:-11 114:20 115:15 120:17
flat enough	17:23
it done	17:18 31:10 126:-8
with levell	17:30 108:-8
to what	17:11 70:21
what we	17:11 26:-8 32:-16 33:-20 67:-12 70:14 100:14 118:49 119:23 120:49 123:-9 126:-8
just the	12:25 16:17 17:37 26:28 99:17 100:-13 112:9 125:-8 126:-24
: doe	18:9
were #d	1:-9 18:9 126:11
@wire hold	8:-9 9:38 18:19 126:-12
@wire all	8:27 30:-9
grip==	2:-11 3:-10 18:69 92:16 98:16 100:17
how tight	18:29
tight will	18:29
grip	2:-11 3:-10 18:69 92:16 98:16 100:17
grip in	92:8
^ flat	18:10 75:-9
flat -	18:9
- bottom	18:9
bottom slot	18:10 75:-9
deep enough	3:-9 18:12 75:-9 92:38 126:-9
it suit	18:15
tang too	18:17
too deep	18:22 42:-10 43:-10 93:27
deep for	18:22
wire check	18:59
check for	106:-13 116:15
ther and	26:19 28:9 30:-8
did they	21:9 32:37 117:-19 126:-13
they cost	118:9
list every	8:-11 19:46
crown==s	19:33 28:11 41:8 44:-8 74:43 82:18 87:11 89:-8 91:40 92:-12 104:9 108:13 118:39 126:-35
with their	4:17 14:23 19:18 26:20 27:-10 33:12
their crown	19:24 91:10 126:-11
: when	11:37 19:14 30:-24 121:13
deliver ,	19:16 33:10 51:8 99:11 126:-13
by whom	9:-26 13:-14 15:50 19:14 24:-17 27:22 30:14 32:-15 33:45 34:9
how did	20:11
@wire add	9:-11 20:38 25:-9 52:-10 67:42
up in	5:13 9:-8 20:10 92:15
in september	20:12 21:8
september #c	20:25
^ sinc	8:-15 10:9 21:22 34:17 37:-10 38:21 39:8 65:37 102:27 103:-11 107:9 108:27 126:-18
november ,	8:-10 20:34 21:-14 34:24
and out	7:-12 9:-11 20:66
: in	20:11 26:20 48:14 103:-12 119:10
, left	20:13 76:-15 90:-11 126:44
over ,	20:10 26:26 53:11 54:-10
all time	19:-11 20:33 21:13 94:11
last year	9:-11 20:31 21:30 43:-14 126:57
sum==s	8:17 9:-12 10:24 20:81 121:-12 126:-10
sum	5:-10 8:13 9:-13 10:23 19:-9 20:117 121:-12 126:-14
the sum	9:-8 20:38
sum for	20:55
wire gone	20:18
, from	10:16 11:-8 27:14 32:53 33:-8 44:16 51:15 53:13 54:9 55:-10 72:9 106:-12 108:41 110:28 112:-18 118:-14 121:-8
new @wire	8:-17 9:25 19:-11 21:27 51:18 68:-11 72:54 126:-23
tin spar	21:11
spar us	21:19
and in	8:-8 20:-12 21:65 34:12 96:27
@wire only	6:10 7:8 8:8 9:-9 21:75 24:-8 51:-8
money sav	21:17
useless==	8:-36 9:-12 19:-13 22:147 32:-9 33:-8 78:19 82:24 126:-8
useless	8:-36 9:-12 19:-13 22:147 32:-9 33:-8 78:19 82:24 126:-8
^ useless	8:-32 9:-10 19:-13 22:115
be good	0:-10 3:19
^ time	22:12 28:37 56:22
to tidy	22:13
should go	22:14
have too	22:37
too many	0:-13 22:71 26:-8 126:17
many of	0:-13 9:-16 14:39 22:67 25:14 26:29 33:-8 36:-10 126:-9
doe any	1:14 22:23
lie about	22:23
useless $	22:32
untouch==ed	10:-16 22:78
^ old	2:11 10:-12 22:19 32:30 64:31 92:35 126:-26
old piece	10:-9 21:9 22:17
untouch	10:-16 22:78
piece untouch	10:-10 22:24
untouch for	10:-10 22:35
list them	10:-9 22:19
anyth of	19:-13 20:9 24:26 34:18 126:-11
@wire set	24:30
being kept	24:33
wire or	0:32 24:10 126:-30
@job already	24:9
already $	11:20 13:44 15:21 24:24 30:-8 33:-9 34:-9 45:-9 108:9 109:12 119:60 126:-34
why i	24:11 72:14
it kept	24:10 39:-10
spring -	25:42 36:10 46:41 48:-13 76:-12 116:16
- back	25:42 36:10 46:41 48:-13 76:-12 116:16
back tabl	25:10
fret came	2:8 25:8 36:17
count==s	25:20 52:25 94:11 126:-13
sure are	25:17
are thos	25:8
of spring	66:11
back for	0:-14 3:-10 24:21 34:40 36:16 38:27 39:-13 64:13 72:8 85:-8 105:-10 107:45 126:-14
, give	14:8 36:11 38:-15 39:12 62:11 85:34 114:10 116:9 126:-8
back==s	25:15
stay put	25:14 38:-16 46:24 126:39
put $	25:11 46:13
pop==	25:26 71:-12 83:19 126:-10
#n pop	46:8
pop back	25:13
up after	25:18
after it	25:9 71:-11 93:10 94:20 114:11
at it	5:12 42:11 65:24 99:12 109:-10 116:19
all machine	26:39 27:-10
run $	26:27 103:10 112:12
equipment==	14:-23 26:99 27:14 36:-8 99:8 126:-8
equipment	14:-23 26:99 27:14 36:-8 99:8 126:-8
what equipment	14:-8 26:37
equipment doe	14:-8 26:37
shop have	26:15
stand==ing	2:13 5:13 13:-21 15:9 17:23 90:14 92:-8 99:9
machine and	30:20
stand at	5:11 14:24 17:-13 100:20
which $	22:31 25:49 46:-15
@person booking	27:48 62:-9 63:-9
com #n	10:17 27:17 30:23
machin booking	27:10
time==s	4:-11 6:-9 10:-12 11:77 12:-12 19:-13 27:30 28:57 29:131 30:-17 33:62 54:-11 62:-10 63:-8 64:-8 71:-10 93:19 94:10 101:-8 102:-12 105:23 106:-13 110:-12 112:-13 123:-10 126:-27
machin time	27:52 29:-11 30:-16
time are	27:38 29:-9 30:-14
doe press	16:-8 28:42 33:-10
and time	28:18
many minute	26:-11 28:86 30:-8 105:-19
for polish	28:34 30:-9 105:29
polish #n	28:10 105:-9
what step	28:29 31:-10
step are	28:18 31:-8
ther in	8:8 26:15 28:8 31:-8
, round	28:17
report==s	28:32 33:-17 34:50 59:11 62:-10 76:10 105:35 111:-15 126:-10
from how	28:19 33:-16
many report	28:23 33:-16
report do	28:19 33:-16
we know	8:-15 9:-18 28:19 33:57 42:13 69:9
know how	2:18 13:21 16:-10 28:24 33:-18 36:9 125:16 126:-40
long the	28:14
and of	4:-12 8:60 9:-17 13:-20 16:-9 17:-11 20:-10 28:113
work next	29:31 30:-15
sander ,	2:9 26:36 27:-19 99:-9 100:-14 101:14 104:23 106:15 107:26 126:38
a free	29:-15 30:48 66:13 126:-13
free hour	29:-13 30:37 66:14 111:-8 126:-8
replac==ed	31:20 47:10 79:17 126:-8
^ somebody	1:8 2:8 4:8 8:-8 15:8 22:-9 23:52 26:-9 27:12 31:20 34:-10 87:11 100:8 126:22
somebody want	28:12 126:-11
fret replac	31:20
replac ,	31:20
i tell	13:21 31:40 34:15 36:13 126:-27
tell a	31:18 79:9 126:-15
a customer	24:14 29:22 31:8 126:-17
refret that	78:22 126:-9
that @person	12:17 30:-9 31:8 32:11 39:12 60:-24 63:23 64:-10 68:11 69:-8 108:15 126:25
doe $	12:12 14:10
fret get	104:12
glu ,	31:24
what give	31:13
for december	48:12
its way	32:33 120:-16 126:14
way $	8:-29 32:69 44:24 70:15 95:8 120:-16
includ the	4:22 8:16 14:20
clos one	32:66 113:-14
past order	32:23
delivery are	19:-8 32:45
still wait	12:15 13:19 24:-8 32:19 126:-9
order that	32:32 126:-22
that has	32:37 66:15 126:-35
not arriv	126:17
we wait	9:-12 29:-11 32:58
and till	29:-10 32:19
finish order	32:20
order too	32:19
, pleas	6:-11 7:-13 8:-34 9:12 10:42 11:8 12:59 13:28 14:19 15:19 17:-10 19:-13 22:14 24:29 26:20 27:-18 30:32 31:-12 32:-9 33:19 36:76 38:-9 41:19 42:8 44:-8 48:52 54:-27 56:20 59:-14 60:13 61:8 62:15 64:-8 65:13 66:-25 74:16 84:13 85:-9 89:17 90:-10 98:-8 100:-12 101:8 104:-12 107:16 108:-15 111:-9 113:-18 114:-10 118:-23 120:-15 121:-9 123:14 126:19
pleas ,	2:13 4:19 7:-17 8:32 10:24 11:18 19:-9 25:14 26:8 32:20 34:30 41:13 54:-23 56:16 59:18 62:9 74:9 82:-12 99:-9 100:21 102:-11 107:-10 113:-11 126:34
doe lindwurm	28:-23 33:88 122:-20 126:-18
lindwurm take	28:-15 33:17 122:18
size==s	7:14 33:35 121:-10
pack size	33:41 121:-10 122:-11
at lindwurm	33:13 109:-8 117:32 118:-22 119:14 120:32 122:26
from ,	2:-9 5:9 33:36
long did	33:10
they really	33:27
really take	33:18 105:15 126:-8
its #n	33:44 74:8 76:11 122:-16 126:-19
mean the	33:10 44:17 87:10 115:32 119:24
supplier of	8:-9 33:34 123:19 126:-10
wire pleas	8:-19 9:-15 10:32 25:14 33:31
enter==ed	3:-55 30:-9 34:39 42:58 49:39 51:9 125:24 126:-9
what @person	30:-8 34:49 53:-12 75:10 110:-15 126:18
enter	3:-57 30:-9 34:39 40:13 42:65 49:38 54:23 59:25 62:-12 78:9 86:9 99:8 100:15 113:-14 117:12 121:9 125:29 126:-14
who put	27:13 34:30
^ log	13:-9 34:136 40:10 42:9 72:8 96:11
log $	14:-8 34:113 56:-8 57:10 126:-10
has anybody	13:41 15:-28 21:-11 34:31
anybody touch	21:-11 34:27
touch the	21:-12 34:33 91:12 102:9
explain==	36:75 99:-9
command==	13:-9 36:70 39:36 66:18 113:11 125:14 126:-32
explain	36:75 99:-9
^ explain	36:41
explain the	36:44
command	8:-12 12:-8 13:-10 14:-14 26:-10 36:181 39:35 66:18 113:11 125:13 126:-38
command $	14:-11 36:103
command==s	8:-10 14:-13 36:111
question==s	14:-9 36:45
question $	7:-39 25:-11 36:81
me more	36:14
)~",
R"~(more of	32:34 36:13 72:10 90:17 91:-8 126:-10
the command	13:-9 36:50 39:36 66:18 126:-17
command came	36:11
came -	36:11
- short	36:11
am new	2:13 36:26 111:-9 126:-12
new here	36:21 59:36 111:-9
, show	4:15 22:8 24:15 29:10 33:45 36:11 118:23 126:-13
what #n	36:12
can say	36:12
fret short	0:15 28:17
@job ;	0:16 16:13 126:-10
; doe	0:15
tin have	0:15 7:12 76:-10 82:11
after ,	0:67 106:30
mm finish	0:16
: anyth	9:-8 32:29 117:-9
anyth ther	0:-8 34:17
i still	0:-12 1:20 5:11 107:-10 117:-15 126:43
still make	0:-11 1:21 5:11 126:-10
#n read	3:13 42:9 100:17
read #d	3:16 41:-11 42:23 68:16 70:16
thos $	82:17 123:10 126:-9
get away	3:16
away with	3:15 31:-10 41:36 44:-9 58:23 82:9 101:40
if they'r	2:18 16:-10 82:11 126:-14
shuffl==e	2:111 13:-22
shuffl	2:114 13:-22
^ shuffl	2:36
shuffl the	2:12
nut ,	0:21 2:25 3:-8 4:-15 47:9 77:-17 126:25
, using	2:11
using what	26:16
tin has	40:8 73:10
has $	126:20
board :	77:13
, dress	1:40 3:38 51:-15 81:-10 108:11
dress ,	1:46 3:39 40:-10 44:64 51:-17 81:-10 104:17 108:-25
, okay	0:-10 3:27
fret length	4:76
they come	4:9
serv==e	0:19 5:30 22:16 66:12 126:-16
serv	0:19 5:30 22:16 66:12 126:-16
be serv	5:10
and noth	2:-8 5:36 72:-8 74:16 88:46 92:8 126:-26
what get	5:11
- millimetr	7:9 50:8
apart==	7:12 29:-10 38:9 111:11
get new	9:28
apart	7:12 29:-10 38:9 111:11
mm apart	7:12
apart $	7:12
like this	9:9
this ,	2:13 9:9 126:-12
many week	8:-31 9:60
hold out	8:-9 9:50 126:-12
together==	5:29 8:-17 9:44 17:14 21:-8 65:-8 68:21 100:23 112:-12 115:10
and all	8:-16 9:49 20:-8 32:15 43:12 46:16 68:28 69:-10
together	5:29 8:-17 9:44 17:14 21:-8 65:-8 68:21 100:23 112:-12 115:10
together $	5:17 8:-17 9:49
on december	11:13 54:-15 55:11
which promis	11:22
day fall	10:10 11:21
latest i	9:24 11:21
miss==ed	11:29 64:9 70:31 98:10 103:15 126:-19
miss $	11:9 78:25
bench pleas	65:10
moment==	12:28 14:14 23:-14 26:22 32:30 48:21 109:29 126:-17
fret at	0:13 4:16 12:34 23:-11 26:-8 78:-10 86:10 104:9
moment	12:28 14:14 23:-14 26:22 32:30 48:21 109:29 126:-17
the moment	12:29 14:15 23:-13 26:11 32:30 109:30
moment $	12:28 23:-14 26:28 32:30 109:18
point==	3:10 4:-8 12:8 52:43 71:-17 75:12 83:53 89:76 92:-11
point	3:10 4:-8 12:8 52:43 71:-17 75:12 83:53 89:76 92:-11
just list	12:8
who sit	2:13 13:-9 14:31 26:-9 34:-10
sit at	12:-9 14:29 15:10 26:23 34:-10 59:10 62:12 65:-10
who took	15:47
took on	15:36 34:-15
anybody have	13:-8 15:34 126:-10
have job	15:10 34:-10 65:56 126:-24
every pass	4:-11 16:23
ram #d	3:-11 16:28
mm nutward	3:-11 16:28
mark ,	3:-10 4:10 6:14 16:18 59:10
, still	3:-10 16:18 46:28 122:10
still all	3:-10 16:19 18:10
if only	1:-10 16:41 71:-14 126:28
@job sunk	17:54 90:-15
sunk $	17:33 90:84 94:-11 126:-27
high==s	17:27
low==s	17:27
, high	17:13 59:-9 62:26
and low	17:29
and along	17:73
at with	13:12 17:28 25:-9
, may	59:14
sit==	15:11 18:25 76:17 91:15 94:10 126:-14
^ with	0:22 3:10 4:-8 5:24 9:25 17:-13 34:-14 37:14 51:-13 55:10 68:12 72:-14 82:-13 90:39 97:-9 105:19 112:8 114:8 115:25 122:27 126:10
bottom ,	0:-8 18:13 75:10 92:12
sit in	18:11 76:38 83:-17 92:23 126:-20
hold in	8:45 18:63 24:-13 126:-8
sum==	20:36
^ sum	20:14
sum up	20:14
me :	20:14 67:15 126:-10
: wire	20:9 92:10
receiv ,	20:14
scrap and	20:-15 21:23
week ,	11:-9 14:-17 29:23 31:24 53:-25 55:44 99:16 100:-9 102:-10 110:-22 112:34 113:21 114:21 116:9 121:8
clear==ed	82:8 100:12 126:-8
could be	0:17 1:-8 71:-37 74:-11 77:-8 92:24 126:58
be clear	88:-19 126:19
of drawer	126:11
for any	27:19 66:14
@wire one	0:-10 8:-19 22:53 25:9 40:-8 73:13 80:14 82:39 83:9 117:-11 118:19 126:-11
^ was	13:26 19:36 20:9 34:55 45:-8 111:-17 120:-16 126:8
asid ,	24:22 36:10 84:16 126:26
: how	2:21 14:-11 16:24 26:13 126:-11
up ,	14:12 16:10 25:12 29:-10 32:22 44:32 46:32 51:21 60:11 71:8 108:-12 119:13 122:-14 123:18 126:-21
uncertainty==	8:-11 25:43
and give	41:10 66:9
uncertainty	8:-11 25:43
uncertainty $	25:24
can work	1:-12 99:38
at once	99:12 100:22
once $	87:11 99:13 110:-11 111:29 112:12 126:-33
sander reservation	27:40 102:-9
when have	9:9 27:9
a board	28:43
edge==s	28:12 43:10
corner==s	13:-9 26:-9 28:46 44:58 104:33 105:66 108:-11
the corner	13:-9 28:46 44:9 65:-8 102:9 104:18 105:65 126:17
corner ,	28:11 99:10
, usually	5:-16 28:38
usually $	5:-16 28:46
open time	29:14 105:12 110:20 126:-8
@day through	29:10 54:19 110:-16 111:39 112:-11
through @day	29:9 54:19 110:-18 111:44 112:-12
and why	16:-9 30:34
why $	16:-9 30:33 109:15
overload==ed	30:15
overload	30:15
? how	8:11 30:15
so it	0:8 3:-19 18:9 20:8 25:14 30:8 37:-18 38:-15 42:19 73:-8 74:8 76:10 92:31 95:8 96:11 102:9 112:21 114:-9 126:32
, glu	31:28 126:11
glu fret	97:20
delivery date	10:-8 11:8 31:11 119:21
refret ,	31:44
someon==e	24:33 27:9 30:19 31:26 36:12 39:15 41:-12 42:-8 70:12 102:-9 104:13 106:-35 107:-11 118:16 126:27
someon	24:33 27:9 30:19 31:26 36:12 39:15 41:-12 42:-8 70:12 102:-9 104:13 106:-35 107:-11 118:16 126:27
if someon	31:14
drop off	29:8 51:22 126:-12
fret neck	31:13 126:-9
they have	120:28 122:10 126:-11
one as	16:19 32:50 113:-14
averag==e	28:30 30:-9 33:42
is ferro	32:-10 33:95 122:-13 126:-15
ferro on	33:17 122:9
averag	28:30 30:-9 33:42
on averag	33:42
averag $	33:42
me everyth	11:9 13:11 24:23 26:-8 34:42
everyth @person	34:46
enter $	34:25 125:25
my own	12:8 34:56
report sinc	34:15
we ever	11:-8 19:14 25:8 31:-24 34:24 48:-21 126:58
ever do	41:8 56:8
anyth with	29:11 34:38 41:9 126:-13
with piec	37:27 38:-8 41:-22 82:44
: who	10:11 14:31 17:20 27:8 34:11 65:-8 126:-8
used it	8:16 34:14 87:11 126:-13
the question	36:32 84:-8 85:-8 126:20
book command	36:10
manual==	7:-39 14:-12 23:-11 36:121
manual	7:-39 14:-12 23:-11 36:121
in here	14:-14 23:58 26:-9 29:-10 36:22 46:14 50:9 62:33 63:-12 116:10 126:-9
tell you	9:-15 30:-8 34:15 36:18 44:10 45:9 65:-8 109:15 114:12 120:10 126:22
you that	36:24 120:11 126:-14
that a	36:21 109:34 126:-19
august==	20:52 21:22 54:-11 122:27
tin saving	21:23
saving in	21:15
september ,	21:13
, with	0:-8 5:-10 10:24 18:34 19:16 25:47 26:21 32:-9 36:-9 42:-13 43:12 47:13 51:-17 59:-8 65:10 68:23 76:14 79:-12 83:-8 94:10 99:27 103:10 121:-16
@job i've	79:16
i've used	37:10
no .	0:12 1:25 2:-9 4:-13 13:38 15:10 37:29 38:9 39:9 48:-8 71:35 74:25 78:-12 90:-16 92:-11 100:-12 103:33 114:-9 118:10 120:17 125:29 126:-30
. #n	0:11 1:24 2:-11 4:-15 13:37 15:9 37:39 39:15 48:-9 71:33 74:22 78:-16 86:16 92:-12 93:33 98:-12 100:-12 103:33 107:8 114:-12 116:-9 118:21 120:15 126:-35
^ pleas	1:19 3:-8 5:-13 6:-14 7:-11 10:-15 12:-20 13:12 14:-12 15:20 16:-9 17:28 20:-11 24:14 26:-8 27:-12 28:13 30:-16 32:-8 36:9 38:44 39:-12 40:-8 41:12 42:14 44:-16 49:31 50:18 53:11 54:26 55:-17 56:-9 57:-9 58:26 59:15 63:16 65:-13 66:-9 67:-8 72:-13 85:-22 86:8 89:-8 93:-9 99:19 100:-10 101:-19 102:36 109:12 111:13 116:9 119:-14 120:22 123:-13 126:24
pleas use	0:-8 37:18 83:11
go ahead	37:20 38:-12 58:12
ahead and	37:22 38:-12 58:12
and take	37:13 38:-10
fill slot	0:12 37:14 83:-8
fill from	2:10
yesterday afternoon	41:16 98:10
afternoon at	98:10 106:-13 116:15
at half	37:8 44:9 53:8 67:9 79:12 90:-8 98:14 102:-9 103:24 108:17 112:10 126:-8
===	37:33 52:29 60:18 61:-15 70:-11 78:-9 94:8 105:13 114:45 126:-22
=	37:33 52:29 60:18 61:-15 70:-11 78:-9 94:8 105:13 114:45 126:-22
#n =	37:33 78:-9 94:8 114:45 126:-20
#d instead	37:17
instead ,	37:16 52:22 112:11 116:-11 126:23
, same	3:-8 37:16 38:10 96:53 106:12 118:19
using piec	37:27
#n ther	1:-10 37:56 39:-9
ther ,	26:34 37:25 38:27 45:9 126:-22
other #n	37:23 51:-12 115:23 118:42 126:-15
could have	0:-15 1:19 31:9 45:-10 71:-8 106:-11 126:39
have used	83:-11 126:12
, but	0:9 1:12 3:-10 16:18 41:-13 44:18 46:-9 48:-8 49:-12 51:8 56:-13 59:21 62:-11 63:-11 64:12 67:-13 72:17 76:-10 78:9 87:11 88:13 89:13 90:20 98:16 101:12 104:13 107:15 117:-18 118:-11 120:15 122:9 126:-13
if piec	37:-14 126:26
were a	83:-11 126:25
longer i'd	83:-11 126:20
i'd put	126:8
be kept	24:-8 31:34 37:-9 38:18 39:23 84:33 126:-19
you put	3:-8 38:12 48:13 54:17 63:15 71:11 89:11 126:-11
a hold	38:34
save the	38:9
@job top	38:9 42:13
top fret	38:9 42:13 94:8
i've put	37:-14 41:11 83:9
)~",
R"~(to hold	23:12 30:28 36:20 38:-32 39:-14 126:35
think==	0:-10 3:14 39:-13 51:-8 70:36 91:41 94:-9 105:14 118:9 126:44
i be	5:9 8:-8 9:8 30:13
think	0:-13 3:13 29:-8 39:-13 45:-8 51:-8 56:25 65:9 70:36 91:41 94:-9 105:14 111:-8 118:9 126:98
you think	51:-8 70:36 105:14
think $	3:17 8:-10 118:12 126:27
free the	39:8 107:24
@wire again	0:-9 40:-18 52:14 117:14 126:41
kept any	39:11
on piec	1:-8 3:-9 37:-8 38:23 39:40 41:16 126:-29
pool==	39:21 66:59 126:-14
the held	12:-9 39:14 126:12
#d can	39:14 82:18
pool	39:21 66:59 126:-14
the pool	39:22 66:30 126:-9
pool $	66:63 126:-12
^ someon	39:20 42:-8 106:-27 118:16 126:49
someon else	31:16 39:20 126:-14
else may	39:20 107:19 126:-14
may have	34:9 39:27 107:19
#d now	2:16 39:20 43:14 73:-9
reservation==	26:-10 27:11 37:-13 39:66 41:-19 70:-8 107:146 126:-13
the reservation	24:81 27:-28 37:-12 39:78 41:-18 70:-8 74:-13 85:29 107:19 126:-8
reservation off	39:31
would you	0:-12 1:-14 2:19 3:14 4:-8 8:-13 9:17 12:25 16:-16 27:12 36:-14 38:8 39:40 40:-8 54:21 58:8 59:14 61:8 65:12 83:19 99:-11 101:11 107:30 108:14 113:15 114:11 117:-9 119:12 126:-72
go again	39:32 85:15 103:-11
we'd==	0:8 2:18 5:10 31:10 37:15 49:-16 71:-21 113:23 114:-8 116:-11 118:12 126:87
we'd	0:8 2:18 5:10 31:10 37:15 49:-16 71:-21 113:23 114:-8 116:-11 118:12 126:87
^ we'd	126:14
cancel $	27:-18 49:13 58:12 107:37
new short	40:13
: @wire	40:31 47:8 51:15 67:10 68:8 80:12 89:10 117:18 120:10
into drawer	37:-10 40:9 73:30 80:17 126:-11
get #n	22:-8 33:13 73:19 80:14 82:-10 99:17
piece :	2:-10 40:8 81:10
#d /	57:10
add @wire	40:16
across ,	42:-20 43:32
, bend	40:13 76:-10 81:16
overall==	5:18
was put	85:17
put in	0:14 37:-13 55:8 67:-10 76:27 99:10 117:30 126:-12
overall	5:18
^ in	8:-13 11:-9 18:8 20:12 29:9 33:11 36:-11 46:19 67:19 77:17 80:9 90:-15 93:-11 105:-12 126:51
tin now	40:-9 73:13 126:-10
now :	50:10 67:10 98:13
, raw	1:12 3:10 40:16 42:-9 80:-8
log #n	40:10
off clean	40:10 109:12
so call	18:8 40:10 122:11
call them	40:10 122:11
leftover==	0:34 4:-19 40:30 71:11
i've got	2:13 13:-8 15:-8 16:20 19:10 40:8 44:-11 59:-8 61:9 65:75 94:15
a leftover	0:14
leftover of	1:9
straight it	41:-28 126:30
i was	0:12 1:18 13:24 29:8 32:9 38:-9 39:8 40:-10 44:13 46:15 125:15 126:37
was going	1:14 34:-8 37:-23 38:-9 40:-8 126:74
tin but	40:-22 126:29
but it	40:-8 78:-14 87:11 89:11 99:10 113:11 126:34
it brok	40:-8 126:13
bit for	70:11
for drawer	1:-11 40:35 81:-13
#d millimetre	0:13 18:10 42:35 43:-10
millimetre ,	3:-9 7:16 18:10 40:8 126:-15
out piec	41:9
has gone	37:11 41:10 73:-8 76:19 85:8 97:-8 102:8 107:10 123:31 126:-8
gone in	37:34 73:-8 78:-24 82:10 83:8 92:-9 102:10 125:19
scrap ,	20:25 21:-20 82:52 101:9 126:-15
becaus of	41:10 54:9 66:13 91:-22 92:26 110:16 118:-10 119:15
reason==	30:20 39:8 41:8 49:21 67:-9 70:15 78:19 91:-13 92:31 120:19 126:-9
corrod==ed	41:37
scrap :	82:10
: piec	37:16 38:-10 70:11 126:12
reason	30:20 39:8 41:8 42:10 49:21 67:-9 70:15 78:19 91:-13 92:31 120:19 126:-9
, reason	41:13 49:21 67:-8 70:9 78:10 120:19
reason :	41:13 49:21 67:-8 70:9 78:16
corrod	41:37
corrod $	41:24
mayb==e	17:-11 50:20 53:-8 65:-9 80:11 82:-9 87:15 107:-8 116:-11 126:106
mayb	17:-11 50:20 53:-8 65:-9 80:11 82:-9 87:15 107:-8 116:-11 126:106
^ mayb	17:-11 65:-9 87:15 126:88
point $	52:14
, came	42:13 45:11 72:15
mm on	0:-10 3:14 40:16 42:19 43:-9 51:11 88:10 93:-11
^ #p	0:31 1:-9 3:53 9:-13 16:-8 34:-14 36:-27 37:31 41:-13 42:34 45:10 56:-10 71:8 78:72 79:14 92:15 96:19 98:32 126:-18
measur :	2:-8 42:24
&#d#p	3:10 42:36 71:9
put down	42:17 47:-10 71:11 86:10 89:12 109:22
#d as	3:-10 42:23
as the	38:9 44:-22 54:17 77:10 94:46 108:11 126:45
the length	0:-9 4:55 40:-11 42:24 70:30 81:9 93:-12
check==ed	3:-10 42:25 46:53 48:-14 75:8 76:17 87:11 89:8 91:20 92:29 93:-10 102:18 116:19 118:-8 126:-11
caliper==s	4:9 29:8 42:33 43:8 70:12 77:17 93:-11 126:-8
and got	42:19 51:-15 93:-8 117:27
to measur	4:11 42:8 80:13 126:21
measur fret	42:-21 93:18 126:15
measure ,	42:-14 78:-8 126:55
fret :	43:11 91:11 108:12
: short	43:11 87:10
#d millimetr	3:11 18:42 42:-24 56:35 70:8 75:15 89:17 93:39 126:-21
millimetr $	42:-12 43:12 56:25 93:13 126:-8
lack==s	0:9 15:13 41:-8 42:-32 43:72 100:-11 111:16 126:29
lack #d	3:-11 42:-31 43:74 79:-10
end still	1:12
still raw	1:18
raw ,	3:9 40:8 43:-10 47:-10 81:10
i left	109:10
left it	43:9 46:16 76:-15 90:-11 126:42
, so	2:-52 3:-25 4:17 5:-23 9:12 13:32 14:8 17:-36 19:-10 20:-10 22:36 27:11 28:-11 30:-14 31:-21 32:17 33:-17 34:-9 36:13 38:-18 39:18 41:-24 44:23 45:-16 47:-10 49:19 51:-20 52:15 53:16 56:26 58:17 59:-8 61:25 62:35 64:-17 65:19 68:32 70:9 71:-11 72:27 74:18 76:17 78:15 79:-9 84:14 85:13 87:14 88:25 90:-23 91:8 95:-9 98:-17 99:-18 100:34 102:23 103:13 104:22 106:-15 108:-15 109:15 111:-10 112:-30 113:9 115:8 116:12 118:-9 120:28 121:-14 122:22 123:24 125:-15 126:-101
if that	3:-8 43:16 112:10
short put	43:9
ago fret	96:11
, number	17:-8 38:10 43:9 46:17 47:-9 59:19 78:10 90:21 93:-12
: fret	4:20 43:11 73:-9 76:15 79:18
to a	1:14 7:36 41:-9 43:14 54:14 56:-15 66:24 86:14 87:8 105:12 126:-26
a radius	43:14
#n did	37:21 46:9
is fine	48:18 56:-18 103:15 106:14 126:49
afraid==	43:-11 91:11 126:23
afraid	43:-11 91:11 126:23
am afraid	43:-11 91:11 126:23
are clean	44:33 108:14
clean and	1:15 44:8 126:-15
and done	32:15
finish seat	44:18 126:8
, start	41:-11 44:43 126:32
polish==ed	13:-12 44:112 99:-9 101:36 108:-11 109:-9
i've just	30:12 34:-8 38:8 44:23 97:14 125:31 126:-15
polish the	13:-12 44:74 108:-8
complet==e	4:-17 13:-13 15:-8 44:112 66:-8 84:56 85:13 108:-9 118:46 120:-11 126:-17
complet	2:-20 4:-21 13:22 15:-9 44:159 65:-8 66:-8 84:56 85:13 108:-27 118:46 120:-11 126:-22
complet ,	44:12 118:15
fret end	23:32 44:39 94:-16 106:10
fil on	44:42 94:-15 104:16
^ mark	37:-9 38:13 54:8 63:34 64:-14 78:10 94:25
as done	44:28 115:-8 126:11
@job ?	6:10 74:-12 126:18
yesterday at	42:9 44:33 45:43 51:-8 68:12 77:-10 78:12 96:10 118:24 126:-16
complet==ed	2:-19 13:35 44:47 108:-18
ago by	44:22 105:-10
clos ,	32:10 44:16 54:10 113:10
, everyth	5:11 6:14 17:12 20:16 34:28 44:14 46:27 116:-16 118:17 120:-8
not finish	44:-30 109:75
^ once	44:-8 88:-11 115:8 126:43
corner of	44:-9 96:14
will go	44:-9 109:27 126:9
^ thos	44:15 51:-9 81:8 85:-8 119:19
all bent	44:14 85:-8 92:19
been press	16:-10 45:14 126:20
as of	24:-10 38:40 44:-19 50:10 59:32 60:-18 61:20 66:35 68:15 69:-14 84:16 99:32 103:13 108:28 118:-10 121:9 122:20 126:-17
of half	44:-8 108:22
gave==	15:12 34:-9 37:15 38:-8 45:18 46:8 65:-19 71:66 72:12 73:28 76:-12 79:-8 83:-10 85:12 98:9 101:19 103:8 126:-9
squeez==e	2:-14 16:39 27:15 31:17 100:22 126:-13
gave	15:12 34:-9 37:15 38:-8 45:18 46:8 65:-19 71:66 72:12 73:28 76:-12 79:-8 83:-10 85:12 98:9 101:19 103:8 126:-9
^ gave	37:21 71:-9 96:10 98:11
gave #n	73:23 126:-10
#n a	13:-11 42:-12 46:15 48:13 65:-11 67:15 78:66 79:23 90:-14 93:14 97:-8 98:8 109:-12 126:25
ran==	4:-8 40:10 45:15 49:14 52:11 68:10 69:-9 75:15 88:10 91:-9 92:-17 97:46 126:-17
ran	4:-8 40:10 45:15 49:14 52:11 68:10 69:-9 75:15 88:10 91:-9 92:-17 97:46 126:-17
^ ran	45:15 91:-8 92:-16 97:46
ran the	45:16 75:15
@job through	45:16
lot on	45:16
press went	101:11
pass done	16:-32 45:50
lb ,	16:-12 45:-12 56:15 100:-8 126:51
i've had	67:8 79:-9 96:8 114:10
had fret	16:-10 45:16 78:12 79:-9 96:11
under #c	60:11
will press	45:-8 107:9
not been	22:16 32:35 126:18
ask==ing	3:13 29:8 50:11 126:9
noth press	126:20
using the	1:-9 36:22 83:-18 107:39
noth has	5:12 126:-12
has mov	46:20 62:16 65:-10 99:8 126:-15
mov $	46:48 54:-19 113:8 126:-10
sprung==	8:-9 13:-9 17:-10 25:120 44:-11 46:42 108:-12
i had	9:12 13:24 24:11 27:-18 37:19 65:-9 66:27 70:22 79:14 90:-8 93:-10 96:16 106:-10 107:19 109:-15 115:-8 125:25
sprung	8:-9 13:-9 17:-10 25:120 44:-11 46:42 108:-12
have sprung	46:15 126:17
sprung $	46:36
recheck ,	11:10 28:10 46:49
straightedg rock	46:21 90:11
only number	1:-13 46:61 102:17 103:-14
lift $	1:-13 46:71 85:29 113:26
% humidity	46:11
humidity $	46:10
went over	16:-9 46:20 62:-8 126:14
had sprung	25:19
on recheck	46:17
get rock	46:9 90:10
its recheck	46:37 116:-9
)~",
R"~(recheck #n	46:39 116:-10
: the	4:15 37:-9 46:33 56:10 91:8 103:14 118:-9 119:-22 120:-11 126:69
mirjam==	88:-8 126:26
mirjam	88:-8 126:26
luka==	59:12 126:9
parlour @job	47:8 126:15
, owner	47:16 82:-10
luka	59:12 126:9
#c scal	126:15
&#c#d#n#o@job@wire	47:8
mate==	7:14 9:-11 17:17 19:17 20:-8 22:13 24:16 30:8 31:9 32:13 36:15 39:8 48:-11 49:13 70:15 102:11 111:22
mate	7:14 9:-11 17:17 19:17 20:-8 22:13 24:16 30:8 31:9 32:13 36:15 39:8 48:-11 49:13 70:15 102:11 111:22
, mate	9:-11 17:18 19:17 22:13 24:17 30:10 31:11 32:14 36:16 48:-11 49:13 70:16 102:11 106:8 111:22 126:-38
mate ,	8:-14 22:15 28:8 30:19 39:14 49:14 102:12 126:-9
: @job	3:-12 13:-10 42:13 43:10 46:10 49:10 71:12 83:16 90:-15 98:26 114:13
blaz==	47:11 82:-10
blaz	47:11 82:-10
instrument==	11:14 15:22 31:8 48:14 65:-18
new -	36:29 72:10
- job	36:29 42:17
, fret	3:-25 4:-20 16:15 17:-21 20:24 21:-20 37:-15 38:36 40:-11 42:36 43:42 76:11 77:8 79:-21 83:-9 90:-10 91:37 92:20 93:38 94:12 96:17 98:-8 126:-20
, far	47:10
instrument	11:8 12:103 14:-10 15:22 26:-12 30:-9 31:8 33:-10 48:13 65:-18
simon==	59:22
ebony==	23:56 47:11 49:18 51:-10
simon	59:22
ebony	23:56 47:11 49:18 51:-10
ebony $	23:53 49:18
cutter==s	5:12 47:21 82:-10
, a	3:-9 10:9 31:-10 43:9 46:9 51:-11 53:-17 55:18 70:35 90:14 109:9 121:16 122:10
cutter	5:12 47:21 82:-10 126:26
job from	66:9 88:-8 126:31
deadlin on	12:12 48:15
he in	48:9
in no	48:19 63:14 64:-8
instead of	22:-13 48:51 53:-8 55:28 56:23 65:17 76:-10 100:-10 105:-14 112:11 116:-8 126:20
new date	48:40
cancell ,	49:65 65:-8 113:26 120:22 126:-18
ran out	40:10 49:15 52:8
of money	49:15
: neck	49:10
com in	8:-23 11:-9 32:62 49:8 63:15 90:23 111:-10 119:24
@job took	49:24
took it	49:24
it elsewher	49:10
her==s	11:16 48:14 50:10 61:10 94:11 115:11 126:33
@job might	76:-10 126:25
might cancel	49:-13 126:31
cancel her	126:13
her $	11:17 31:10 44:9 60:24 64:11 65:22 91:-12 92:27 111:10 115:11 126:17
fine ,	3:12 6:14 48:9 55:8
: stainless	50:12 56:-9
stainless steel	50:25 89:-8
nickel==	8:-10 33:-9 50:36 126:44
silver==	8:-10 33:-9 50:36 96:25 126:41
fret wire	50:14 121:10
low ,	3:-10 9:-11 17:11 52:-15 70:10 90:-14 93:34 105:19 126:67
nickel	8:-10 33:-9 50:36 126:44
, nickel	50:16
silver	8:-10 33:-9 50:36 96:25 126:41
nickel silver	8:-10 33:-9 50:36 126:44
silver ,	50:32
bronz==e	50:36
density==	50:19
bronz	50:36
bronz ,	50:32
density	50:19
, density	50:19
density #d	50:19
'==	0:-9 8:-11 9:12 30:30 51:-18 68:18 73:-16 80:9 96:14 99:9 101:33 102:-8 107:10 108:10 115:17 123:8 126:-19
'	0:-9 8:-11 9:12 30:30 51:-18 68:18 73:-16 80:9 96:14 99:9 101:33 102:-8 107:10 108:10 115:17 123:8 126:-19
is new	59:36 99:18
, barb	50:20
barb #d	50:9 89:29
over all	89:10
, come	47:-10 50:22 80:-8 81:10
defin -	36:20 86:9
- wire	72:10
, material	50:11
ribbon==	50:10
ribbon	50:10
creat==e	33:-9 50:13 59:27 99:8 121:48 123:-13
feet==	20:-9 51:-12 52:21 67:38 69:9 117:13
creat	33:-9 50:13 59:27 99:8 121:48 123:-13
pleas creat	59:10 121:9
creat a	59:28
crown ,	50:22 91:36 118:24
feet	20:-9 51:-12 52:21 67:38 69:9 117:13
#n feet	20:-9 51:-12 52:21 67:38 69:9 117:13
feet $	20:-8 67:42
lindwurm $	32:-11 33:48 51:-29 67:-13 118:32 120:89 122:-27 123:34
took delivery	51:17 117:-10 126:27
stick ,	8:23 10:10 40:15 51:42 67:-8 68:24 69:-14 70:-9 72:-10 79:9 80:-10 117:22 119:-13 120:-9 121:13 122:22
from ferro	5:11 10:-11 19:33 32:-12 33:-11 51:59 117:35 120:8 121:-9 126:-17
daughter for	51:18 117:-14
spool ,	51:31 68:-28
, tare	68:17 69:-13
m coil	51:8
stock ,	2:-10 5:16 8:10 20:13 59:12
+==	51:25 67:-8 73:9 82:22
+	51:25 67:-8 73:9 82:22
+ #n	51:25 67:-8 73:9 82:22
yesterday :	75:8
stick @wire	51:38 67:-13 117:19 118:-17
cm $	51:8 52:43 69:11 88:23 126:-11
apiec ,	51:8
, book	27:-12 106:19 126:16
fair==	2:12 30:8 51:44 54:13 62:9 81:-10 113:12 117:-26
fair	2:12 30:8 51:44 54:13 62:9 81:-10 113:12 117:-26
the fair	51:44 117:-26
fair ,	51:44 117:-26
anywher $	0:-9 1:20 9:24 18:10 51:29 75:-11 78:12 117:-25
take into	51:13 73:12
stock #n	51:13
were never	51:12 67:-8 70:10
never order	51:29 117:-16
that came	19:16 118:-12
came ,	51:21 68:-25 118:87 126:-13
g gross	51:28 68:-26
gross ,	51:24 68:-12
the empty	51:27 68:-24
spool is	51:23 68:-14
#n g	51:18 52:-10 67:-27 68:43 69:62 70:-8
read to	17:9 51:12 68:-12
unpack==ed	51:42 117:-21 118:9 126:-9
unpack	33:-8 51:42 117:-21 118:8 123:-11 126:45
^ unpack	51:11 118:12
unpack #n	51:42 117:-20 126:-9
just now	1:-10 17:-9 24:14 26:54 30:-28 40:9 45:11 48:11 49:38 51:8 76:-8 100:-9 102:17 108:8 117:17 118:11 119:-8 125:15 126:-8
stick i	51:11
mean ,	8:15 51:11
#d altogether	51:11
, supplier	10:20 19:19 51:21 121:-21
supplier lindwurm	51:12 122:12 123:8
lindwurm ,	9:8 33:42 51:31 109:-8 117:33 118:-24 119:10 120:10 121:-8 123:26 126:-14
, pric	51:31
pric #d	51:31
postman==	0:-8 10:-8 32:30 38:10 51:40 67:-18
postman	0:-8 10:-8 32:30 38:10 51:40 67:-18
the postman	0:-8 10:-8 32:34 38:10 51:40 67:-18 118:-11
postman brought	51:29
ago we	51:12 74:10 117:-11 123:-8 126:16
took in	15:-15 34:31 51:23 117:-12 126:9
ferro $	19:35 32:-8 33:31 51:16 117:46 122:-12 123:-33 126:-9
hand==ed	2:14 16:-11 51:9 63:21 71:23 126:-14
, each	51:-13 67:25 100:11 118:13
long ,	40:15 47:-11 51:-9 68:-10 69:16 81:-9 86:38 118:14
, were	73:9
were hand	51:9
hand in	51:9 63:21 67:13 70:-8
by ferro	51:9
been deliver	32:34 51:9 99:11 126:-8
ought==	1:14 9:28 10:21 11:20 32:-22 65:13 70:-15 126:85
ought	1:14 9:28 10:21 11:20 32:-22 65:13 70:-15 126:85
we ought	9:-18 10:32 11:23 32:-11 126:25
ought to	9:30 10:21 32:-21 70:-15 126:97
not receiv	51:-8 126:29
receiv any	7:-13 8:-16 32:-12 126:73
level for	52:-9 126:32
@wire once	89:-15 126:22
once it	25:12 88:-19 126:14
it drop	52:12
count as	22:-10 52:8 55:18 56:23 60:10 61:21 94:-13 106:-10
as low	126:18
low from	52:10
^ below	52:8 126:19
feet of	52:27 69:9
reorder $	2:19 9:30 52:13
again if	52:15 126:-17
it fall	52:19 126:-10
fall short	52:15 126:-10
#c cm	52:46 126:-11
wher it	1:-9 3:47 33:-20 38:-8 42:-12 43:-10 52:-19 101:-9 123:20 126:86
@day and	29:16 30:13 106:-9 110:51 111:-9 112:-29 126:-10
and @day	29:13 30:11 106:53 110:47 111:-11 112:-29
@day :	53:52 54:-8 55:-8 110:-51 112:58
are #t	110:9
#t and	44:8 53:8 55:-19 75:8 108:-10 110:54 112:-25
the @day	53:16 55:-10 102:17
hour to	53:13 55:-9 99:19 100:10
clos @day	53:22
start now	53:15 108:9
#n without	53:15 66:19 73:8 126:-12
on wednesday	53:15 110:23 112:-16
wednesday $	53:15 110:23 112:-16
week :	10:10 54:20
: @day	48:35 53:39 55:-13
@day half	53:17 55:-8
shut tomorrow	54:26 113:39
the plac	2:8 14:29 19:-10 29:10 54:16 55:15 106:-11 116:10 123:28 126:-12
electrician	102:26
the electrician	102:26
nobody here	54:30 56:13 118:-9 123:10
clos it	54:22
open this	29:9 53:-19 55:31 113:-14 126:22
from #t	44:40 53:-34 54:14 55:29 102:29 106:37 108:-13 110:11 126:-12
tomorrow ,	29:14 30:15 46:-17 54:-23 55:30 63:-8 84:-8 102:14 106:20 111:16 112:40 113:-14 116:10 126:51
, until	48:17 55:10 102:10
we stay	55:24 74:9 113:-10
stay open	53:-8 55:44 113:-9 126:16
open till	15:-11 29:-15 53:-21 55:71 112:-11 126:44
day :	22:19 48:-12 55:11 56:22 119:18
only #t	55:14 112:-13
plac of	55:26 110:-12
the usual	53:-13 55:49 104:8 112:-18 113:-8 116:11
usual hour	53:-9 55:27
normal==	53:-9 54:-17 55:18 113:49 114:69 126:-10
#t instead	112:11
of its	16:18 25:12 49:-9 55:16 61:8 88:11 98:16 114:10 126:38
normal	53:-9 54:-17 55:18 113:49 114:69 126:-10
its normal	55:16
normal hour	53:-8 55:16 113:9
additional==	31:11 53:-44 55:57
o'clock==	31:-9 44:12 53:12 55:10 112:39 116:40 126:-17
additional	31:11 53:-44 55:57
^ additional	53:-44 55:57
additional open	53:-9 55:12
o'clock	31:-9 44:12 53:12 55:10 112:39 116:40 126:-17
#n o'clock	31:-9 44:12 53:12 55:10 112:39 116:40 126:-16
o'clock $	112:24 116:27 126:-11
door==s	53:-14 54:25 55:21 123:8
are keep	53:-8 55:8
door open	63:-34 126:51
open until	53:-13 55:43 113:-9 126:10
until half	53:-10 55:16 110:17 112:-11
to open	5:11 29:-16 53:-16 55:-12 126:62
nice==	6:13 40:9 82:10 87:11 122:9 126:24
it would	27:12 65:13 90:11 95:10 97:12 126:25
nice	6:13 40:9 82:10 87:11 122:9 126:24
)~",
R"~(be nice	126:21
nice to	126:26
#n lb	56:19
lb now	56:11
gaug division	56:16
to europ	56:18
currency==	14:-12 23:-9 24:33 26:19 27:-9 56:100 126:-14
currency	14:-12 23:-9 24:33 26:19 27:-9 56:100 126:-14
currency is	56:40
is eur	56:40
press gaug	45:-9 56:34
gaug is	45:-8 56:23
is rat	45:-8 56:14 86:22
dress loss	56:50 126:-13
loss should	56:35 126:-12
be #d	16:9 52:19 56:41 70:-29 126:41
useful==	41:-11 43:-8 56:40 70:-11 126:35
put least	43:-8 56:33
useful	41:-11 43:-8 56:40 70:-11 126:35
least useful	43:-8 56:41
not chang	59:9
perhap==s	31:11 57:-20 126:88
highest==	0:-11 18:13 94:67
perhap	31:11 57:-20 126:88
highest	0:-11 18:13 94:67
highest $	94:30 126:14
bar==s	4:15 16:-9 25:8 59:10 87:79 101:-9 126:-17
start here	59:23
here today	14:-17 29:31 59:24
role ,	62:30 126:9
peopl ,	14:-14 33:19 43:-8 59:24 93:13 122:10
he may	14:-8 59:14 62:8
person of	59:32 61:11 62:-8 63:-25 64:36
shop ,	14:9 26:21 51:-11 53:26 55:-9 56:10 59:32 101:10 110:-17 117:24
, work	2:10 4:-9 26:31 29:52 30:-8 110:-33 126:-9
register==	3:-13 14:14 33:-8 42:18 59:24 60:8 62:8 99:30 121:12
thing==s	11:11 24:41 30:-13 36:27 59:14 62:20 63:25 82:-11 84:27 85:30 105:-8 115:8 126:8
register	3:-13 14:14 33:-8 42:18 59:24 60:8 62:8 99:30 121:12
pleas register	3:-13 42:18
she only	110:9 111:-11 112:-11 126:16
only want	50:-10 57:10
thing ,	27:16 34:12 63:10 84:20 85:13 126:-11
klara==	59:48
klara	59:48
here too	59:27 62:-10 63:10
the user	60:17 61:-9
with number	37:-12 41:16 46:-8 60:9 65:19 71:37 74:10 83:-10 102:9
#c as	51:12 60:21 61:-14 117:-10
show up	112:16 118:33
id==	60:48 61:10 71:10 72:-10
u==	60:24
id	60:48 61:10 71:10 72:-10
^ id	60:16
id -	60:24
u	60:24
- u	60:24
@person ,	12:-9 16:-8 20:9 24:-15 27:-14 29:62 30:11 34:11 38:25 43:-10 44:-14 51:-11 53:8 55:-10 60:26 61:-33 63:-28 64:32 65:55 66:-13 67:10 81:-10 87:-13 93:11 97:14 102:-8 110:15 111:21 112:-22 117:9 126:58
, note	41:11 54:9 67:9 98:23 106:23 111:28 112:-9 117:10 126:-9
note that	34:-8 37:9 41:11 54:35 60:14 61:-10 88:11 98:12 102:9 109:31 113:-21 119:13
treat==	96:8 114:70 122:-20 126:22
treat	96:8 114:70 122:-20 126:22
^ treat	114:28
as @person	53:24 60:28 61:-20 62:13 110:-15
map==ping	61:40
the map	61:28
#c :	76:-10 81:10
: nobody	66:12
nobody now	61:17 66:17
detach==	60:-11 61:36
detach	60:-11 61:36
^ detach	60:-11 61:36
@person pleas	61:19 62:21
the uid	61:19 112:10
k==	62:16
k	62:16
@person k	62:16
k $	62:16
marri==ed	48:15 62:17 110:-10 111:10
inka==	62:22
marri	48:15 62:17 110:-10 111:10
got marri	62:18 110:-10
inka	62:22
inka now	62:22
chang @person	62:15
lead==s	62:10
lead the	62:10
shop too	62:31
too now	62:10
give her	31:10 62:15 65:12 126:-16
her the	62:11
@person :	53:-15 62:32 63:-23 64:28 110:44 112:-25 118:-12 126:45
: role	62:15
, window	15:-15 59:9 65:34
^ perhap	126:23
should get	126:10
him==	4:12 15:9 31:9 38:9 59:15 62:17 63:49 72:9 100:-8 106:8 126:-9
we'v let	63:17
let @person	29:-20 62:44 63:45 65:17 66:-9 110:18 126:-39
@person go	63:54 64:-22
, remov	58:22 63:16 107:16 113:21 126:-28
him	4:12 15:9 31:9 38:9 59:15 62:17 63:49 72:9 100:-8 106:8 126:-9
him from	63:20
from our	49:11 63:11 101:23 123:9
our peopl	64:26
remain==ing	20:24 30:14 42:20 62:-13 63:20 93:-8 118:14 126:16
remain ,	42:20 62:-9 63:27 93:-8
that in	54:16 62:-9 63:27 100:14 125:10
longer #n	63:32 64:-22 123:12
us :	59:11 63:16 64:-13
: @person	63:70 64:22 100:-15 111:11 112:9
leav==ing	3:48 63:34 102:15 103:11 109:25 111:-21 112:9
stay==ing	63:-16 64:-10 92:10 111:12 126:33
not leav	63:-11 111:-10 126:25
leav ,	63:-12 103:15 111:-11 126:25
she stay	63:-12 111:-10 126:27
think==ing	65:13 126:38
is think	126:24
think about	39:-13 65:13 126:61
next year	126:17
^ un	39:25 63:-20 64:36 84:-18 85:41
retirement==	62:-10 63:11 64:109 111:-10 126:-30
@person came	26:21 40:10 64:23 126:-15
retirement	62:-10 63:11 64:109 111:-10 126:-30
of retirement	63:-8 64:70 126:-22
hir==ed	59:15 62:-10 64:23
reinstat==e	63:-17 64:33
hir	59:15 62:-10 64:23
hir @person	64:23
reinstat	61:11 63:-17 64:33
, reinstat	64:18
@person with	63:-8 64:15 65:31
us once	63:-11 64:31 126:-10
in again	64:42 79:-10 96:60 111:-10 126:-10
rejoin $	62:-9 63:-14 64:57 126:-8
hand @job	65:18
@job over	29:18 65:19 79:42
put @person	53:-13 62:21 63:9 64:13 65:48 106:12 110:11 111:-9 112:23 126:-9
belong==s	1:9 14:21 15:18 38:-8 41:8 60:11 61:34 63:28 64:-11 65:18 66:47 126:-19
@job belong	65:27 66:8
with @person	15:54 31:22 34:-9 60:21 61:-18 63:10 65:-15 66:-45 67:11 126:55
over job	46:25
from here	8:14 53:15 56:30 61:10 62:13 65:36 110:9 112:-13 126:-16
assign==	15:-8 65:62 74:26 108:-9 126:-9
assign	1:30 10:-9 12:11 13:-19 15:42 48:-18 65:68 66:53 74:25 108:-10 114:-10 126:-42
^ assign	65:37 74:26 126:-8
assign #n	65:19
not give	38:31 65:-17
know==s	15:-8 33:-8 45:10 67:-9 92:-8 111:13 116:-11 126:82
who know	15:-8 33:-8 116:-11 126:60
know ,	15:-12 30:20 44:12 103:10 126:-8
@person might	126:22
grab==s	24:-17 39:12 44:-10 66:80 84:-12 85:20
grab	3:-10 4:-9 27:27 39:12 43:21 44:-10 66:80 84:-12 85:20 106:22 107:-8 126:-17
for grab	24:-17 39:19 44:-10 66:81 84:-10 85:20
grab $	0:11 66:47
, anyon	66:30
anyon can	39:23
can have	1:-8 4:-8 30:21 39:21 44:19 66:14
time may	66:-10 126:13
may take	48:11 65:-11 66:40 86:9
tied==	13:-10 24:46 62:23 66:24
tied	13:-10 24:46 62:23 66:24
tied to	66:25
releas job	65:-23 66:60 126:-20
assign==ed	1:30 10:-9 12:11 13:-13 15:51 48:-18 66:57 126:-32
no #n	39:-8 48:-25 54:14 60:8 61:22 65:-8 66:99 87:11 114:-9 126:-16
giv==ing	65:-8 66:42 107:24 108:-9 109:29 111:-10
giv	65:-8 66:42 107:24 108:-9 109:29 111:-10
am giv	66:35 107:37 108:-9 109:29 126:-24
giv up	66:36
, somebody	37:-9 66:25 70:30 75:10 77:-19 92:9 107:18 109:21 126:13
somebody else	66:32 107:19 121:11 126:-8
total==	8:20 10:10 51:-11 52:-15 67:87 70:-11
metre in	52:-23 126:27
total	8:20 10:18 51:-11 52:-15 67:87 70:-11
in total	8:27 51:-8 67:47
total ,	21:8 67:9
by count	67:22
exactly==	0:11 4:10 5:14 51:-23 67:41 69:34 126:-8
rack hold	67:33
exactly	0:11 4:10 5:14 51:-23 67:41 69:34 126:-8
hold exactly	67:33
exactly #n	0:11 51:-11 67:41
i just	0:-9 12:8 36:-11 39:12 67:8 69:10 70:-8 73:-13 80:9 108:26 125:57 126:-16
just went	67:8
through them	67:10
not count	51:18 67:-21 68:-11 126:28
somebody should	8:-12 22:-8 126:50
should take	8:-11 22:-8 126:33
altogether ,	68:14 69:-12 107:11
scale==s	51:16 67:-18 68:14
scale	51:16 67:-18 68:14
was an	126:24
could not	0:17 48:8 64:24 79:13 92:40 98:12 109:19 115:-10 117:16 126:-53
not weigh	126:8
m is	69:13
cut to	6:11
metr of	70:9 126:22
#d gram	40:-11 51:-16 68:-9 69:91 70:-11
heavy==	0:9 59:13 60:11 109:-8 118:12 126:11
heavy	0:9 59:13 60:11 109:-8 118:12 126:11
weight==	22:9 51:-22 68:51 69:18 70:-14
weight	22:9 51:-22 68:51 69:18 70:-14
weight of	51:-19 68:41
g per	68:-12 69:29
is what	17:-16 53:-12 92:15 93:10 95:8 96:8 104:14 110:-13 119:10 126:25
weigh ,	68:8
scal goe	69:9
guess==	64:18 105:14 126:18
guess	3:-10 42:17 64:18 81:15 105:15 126:18
@wire would	0:15 1:-12 39:24 83:-23 126:21
but do	56:-10 126:10
not note	126:15
that yet	3:9
is really	39:-8 41:-21 70:22 126:27
miss the	64:9 70:31
miscount==ed	52:-20 70:42
say #d	1:9 42:9 68:22 70:13 93:9
stick was	70:26
miscount	52:-20 70:42
miscount $	52:-19 70:40
be #c	52:8 56:11 70:29
written==	1:-9 7:42 8:-8 22:-10 41:20 70:29 74:10 126:-10
mm longer	70:13
longer than	39:-8 70:44
written	1:-9 7:42 8:-8 22:-10 41:20 70:29 74:10 126:-10
than written	70:21
written down	27:8 70:14 74:10
knock==	29:27 30:-9 58:11 70:40 96:23 109:10 111:-19 112:13
knock	29:25 30:-10 44:-9 58:11 70:40 88:13 96:31 98:31 100:23 109:34 110:-11 111:-26 112:16 126:-11
^ knock	44:-8 70:25 109:29
knock #d	70:25
m off	51:-9 70:26
, mine	3:-12 42:12 43:12 54:-20 70:13 113:-10 126:48
all i	56:14 70:14 77:-8 126:24
i know	0:9 12:12 70:14 77:-8 84:10 92:17 126:14
know $	4:13 8:-12 9:-15 14:9 26:16 27:11 28:9 29:16 30:-8 33:41 36:14 41:-8 67:-12 70:12 77:-8 82:8 92:-11 116:-12 126:87
length is	56:17
right ,	25:10 63:17 70:-15 74:10 89:10 96:9 108:19 126:30
less @wire	70:12 126:10
than it	43:-8 70:13 89:10 126:10
)~",
R"~(say ,	27:11 33:10 43:-9 54:-20 64:10 70:12 126:97
will check	116:19
check $	92:-18 102:18 126:44
gave me	71:52 72:13 76:-11 126:-8
me fret	71:40 72:13 126:-8
#p and	83:18
and #p	83:18
#n make	0:24 3:54
them from	53:23 112:-10
from it	38:15 48:9 71:32 76:-9 126:-12
saw up	5:29 71:38
: slot	2:19 3:-16 42:-24 43:20 72:23 75:28 77:-20 78:-8 92:54 94:8 126:-14
@job an	71:11 98:23
and cut	71:14
cut #r	5:-15 71:-13 72:18 126:30
but the	1:10 2:-8 16:10 44:15 45:-11 49:15 51:12 71:-10 76:-8 78:11 88:14 94:12 95:12 118:8 125:15 126:-26
in use	71:-9 126:30
of #p	72:13 75:11
#p -	0:44 36:-25 37:-10 71:16 72:13
the top	19:16 74:13 76:-11 98:56 105:8 118:-12
i pull	0:-11 37:-8 73:13 92:11 96:14 126:14
out again	2:-8 73:37 76:-11 78:-14 91:-10 96:-13 125:19 126:40
again and	2:-8 73:30 76:-9 77:9
and they'r	44:25 73:8 75:9 82:12 108:-12
they'r in	40:8 73:21 80:19
fret pull	40:-10 73:24
pull from	40:-10 73:25
pull number	73:10
back out	8:-16 21:19 73:36
has it	15:14 40:8 53:11 55:-8 61:14 65:-8 73:11 78:-9 102:9 106:14 110:-13
not pull	73:-23 126:65
pull any	73:-23 126:51
any fret	13:-11 25:28 34:-10 73:-23 94:17 126:62
be pull	79:-8 96:-31 126:57
from delivery	40:13 74:40
stick with	74:32
with delivery	74:22
delivery number	74:43
i saw	4:13 71:16 75:15 78:16 92:15 126:-18
, flat	18:15 75:17
are curv	18:44 126:-10
curv at	75:14
the bottom	18:48 58:12 75:16 92:25 126:-13
, depth	75:20
slot :	75:14 77:11 108:11
sawn==	4:-29 38:-8 71:11 75:32 77:-12 94:19 126:54
sawn	4:-29 38:-8 71:11 75:32 77:-12 94:19 126:54
bottom that	75:11
follow the	2:-22 18:10 75:16 76:23
i measur	2:18 38:8 42:-20 71:-11 76:-11 77:14 79:9 81:-10 89:22 93:16 100:17 126:-11
as #d	42:-10 69:20 77:10
a curv	75:20 98:10
not got	39:12 126:-9
each of	2:12 12:-12 14:30 29:-8 30:17 67:8 98:13 126:-9
@job mov	76:10
the shift	76:52 83:-12
now sit	76:10 126:-8
relaid==	76:10
relaid	76:10
^ relaid	76:10
into #n	5:-10 6:-8 37:17 71:-8 72:-15 76:51 90:-8 126:21
slid==	2:18 76:27 126:-20
down by	42:-11 70:13 93:20 126:27
shift #n	42:-14 76:14 90:-12 126:43
suppos we	56:-10 76:-9 126:37
we mov	76:-9 126:27
width ,	77:12
caliper on	42:15 77:24 81:8
fingerboard==	28:11 42:-24 75:-12 77:82 88:23
fingerboard	28:11 42:-24 75:-12 77:82 88:23
@job fingerboard	42:-19 77:51 88:8
fingerboard is	77:14
this :	38:-9 77:13 122:9
: job	2:-8 3:18 16:-16 38:-10 45:15 48:28 66:33 78:19 92:-9 108:12 115:8 126:-9
fingerboard ,	77:11
edge to	77:28
to edge	77:28
measur how	77:-22 100:17 126:26
how wide	4:-29 8:36 9:-13 18:-14 19:-8 77:-22 126:79
crush==ed	78:27
got spoilt	78:11
crush	78:27
i crush	78:26
crush it	78:26
snap==ped	41:9 62:8 65:-13 66:11 78:112 108:-11
snap	41:9 62:8 65:-13 66:11 78:112 108:-11
snap whil	41:10 78:47 108:-10
fell into	78:21
hammer==	0:11 4:-8 18:9 28:10 36:-10 78:31 126:35
it with	5:13 73:14 78:30 88:20 92:13 98:-12 126:10
writ==e	0:-13 9:-10 10:30 19:15 39:-9 41:37 42:17 45:8 48:20 54:17 56:15 62:18 78:53 93:-8 94:11 126:-24
mangl==ed	38:-9 78:38
writ	0:-13 9:-10 10:30 19:15 39:-9 41:37 42:17 45:8 48:20 54:17 56:15 62:18 78:53 93:-8 94:11 126:-24
^ writ	41:20 42:10 45:15 78:36 94:13
writ off	41:20 78:38
mangl	38:-9 78:38
anew ,	79:20 96:13 102:-19 103:20
been made	79:31 95:11
made again	2:21 79:26
replacement==	79:36
replacement	79:36
a replacement	79:33
replacement for	79:25
is made	2:10 79:12 88:8
made ,	79:14 106:-12 126:18
over again	16:25 79:44 90:-12 116:9
i kept	38:-16 39:25 40:12
i think	8:9 82:8 118:10
to remak	2:29
, about	3:22 80:22 90:-10 126:-19
sill ,	80:33 126:-27
, mayb	80:11 116:-11 126:10
mayb #n	65:-9 80:11 126:8
handful ,	2:-10 80:18 81:34 82:-9
or so	2:10 27:11 67:-14 80:26 82:16 88:-20 126:51
so ,	2:10 27:13 68:11 82:17
, unmeasur	40:-12 80:39
an unmeasur	80:15
unmeasur handful	40:-10 80:8 81:9
of pull	80:12
bunch==	80:20
bunch	80:20
a bunch	80:12
bunch of	80:20
nobody measur	40:-8 80:22
measur ,	4:17 42:-12 77:8 80:26
, add	50:-9 57:11 80:8 99:12
add them	80:9 99:24 121:9
roughly==	40:-11 80:41
roughly	40:-11 80:41
^ roughly	40:-8 126:17
roughly #n	40:-11 80:42 126:-24
unknown==	22:-13 60:9 80:29
unknown	22:-13 60:9 80:29
length unknown	22:-13 80:29
unknown $	22:-13 80:29
not any	53:-12 113:16 126:12
any handful	126:28
i'd have	2:9 60:-11 75:10 83:-11 126:49
have put	40:10 83:-8 126:8
full $	84:13 118:-17 126:33
i've gone	43:12
the unmeasur	40:-16 81:21
unmeasur @wire	40:-12 80:20
handful across	76:-10 81:19
mm :	0:-8 3:15 67:-11 70:14
here is	64:10 80:9
, straight	40:10 53:41
straight :	40:10 81:10 82:-9
now measur	47:-10 81:11
was a	40:8 73:8 87:11 101:11 113:21 120:8 126:-11
@wire still	18:11
somebody ought	126:21
to bother	3:9
box==	0:20 7:27 41:-8 51:13 60:-22 80:14 82:12 99:9 117:-11 118:33 126:12
box	0:18 5:-9 7:85 8:-8 22:-16 41:-8 51:12 60:-22 80:13 82:12 99:8 117:-11 118:32 121:9 126:11
scrap box	41:-8 82:16
box $	41:-8 51:13 82:14 117:-10 118:18 126:-8
crown are	19:10 82:11
worn through	82:10
rust	44:16 82:43 126:-14
rust $	82:36 126:-11
scrap==ping	82:10 126:19
could do	30:21 31:-8 126:35
a few	28:19 48:14 98:13 126:26
s in	83:-15 126:18
pair==	29:23 42:-11 51:-10 82:30 83:28
took a	5:8 42:-10 70:12 72:40 83:9 96:8
pair	29:23 42:-11 51:-10 82:30 83:28
a pair	42:-11 51:-10 82:12 83:26
pair of	29:23 42:-11 51:-10 82:30 83:28
made of	88:8
use both	83:10
two==s	83:26
^ fill	13:20 83:34
two	83:26
not using	83:-18 126:18
we'd have	0:9 2:19 31:10 49:-15 126:20
by all	84:25 85:-8
whatever==	5:-14 7:8 11:17 12:8 24:-19 27:-12 32:-8 33:-8 36:14 38:-9 48:-16 49:-12 51:-16 56:21 57:11 58:-8 67:21 74:8 84:53 85:57 102:-15 104:36 105:10 107:24 113:-10 120:17 126:15
keep back	24:26
whatever	5:-14 7:8 11:17 12:8 24:-19 27:-12 32:-8 33:-8 36:14 38:-9 48:-16 49:-12 51:-16 56:21 57:11 58:-8 67:21 74:8 84:53 85:57 102:-15 104:36 105:10 107:24 113:-10 120:17 126:15
whatever the	5:-13 51:-15 67:22 84:18 102:-14 104:10 126:18
: set	56:12 84:18
want ,	4:12 37:10 126:17
, piece	2:24 84:25
and new	5:-8 24:-14 84:54
stuff==	5:10 6:10 9:-14 10:-8 22:19 32:23 84:44 85:18 118:15 126:-21
stuff	5:10 6:10 9:-14 10:-8 22:19 32:23 84:44 85:18 118:15 126:-21
the stuff	84:22 118:11
whol lot	39:-8 74:-23 84:25 85:68
nobody take	84:12
, keep	2:-9 3:35 33:-15 38:21 41:12 63:14 73:8 84:12 126:37
keep it	3:9 11:20 17:-11 38:19 39:26 41:-30 47:-9 92:27
for that	2:10 9:9 15:12 24:-12 32:8 37:55 39:17 85:18 125:-17 126:-24
all hold	24:9 44:-9 85:52
hold off	24:-17 39:22 85:21
- reserv	39:25 84:-18 85:41
reserv the	5:-8 38:16 39:24 85:13 104:18 106:31
back everyth	85:15
noth need	85:48
need keep	85:20
cancel we	126:12
oak==	86:18 99:-10 126:16
we'v a	86:10 99:-9
new press	86:21 99:-9
oak	86:18 99:-10 126:16
oak ,	86:19 99:-9
millimetre along	42:13 86:10 99:-9
neck and	86:26 99:-9
bar is	15:-11 29:-9 86:13 87:16 126:47
nam==ed	40:-12 47:-11 50:38 53:10 55:-8 57:12 58:29 62:33 86:17 87:8 99:19 100:18 104:-10 126:-20
blad==e	47:-10 75:22 86:11
bear==s	47:-10 86:10
down a	2:8 47:-10 78:16 86:10
@wire bar	47:-11 86:34
nam	40:-12 47:-11 50:38 53:10 55:-8 57:12 58:29 62:33 66:16 86:17 87:8 99:19 100:18 104:-10 126:-29
bar nam	47:-10 86:11 87:10
blad	47:-10 75:22 86:11
blad ,	47:-10 86:11
bear	47:-10 86:10 115:-10 126:10
thing #n	57:-20 126:20
, hollow	86:14
long and	2:10 69:10 70:-8 83:9 86:22
recut==	42:-14 79:28 86:20
the sole	86:14 126:-8
sole of	86:11
bar was	86:21
recut	42:-14 79:28 86:20
was recut	86:20
- bar	36:19 99:24
might ,	59:14 86:10
cupboard==	99:13
grand==	23:48 26:-11 45:12 89:-8 102:-13 126:9
cupboard	99:13
grand	23:48 26:-11 45:12 89:-8 102:-13 126:9
call grand	126:18
caul==	41:-9 87:48 99:14
^ register	59:23 60:8 99:30 101:-11 121:12
register a	3:-11 42:18 99:22
caul	41:-9 87:48 99:18
the name	7:9 14:33 33:-12 57:14 59:10 62:35 66:49 121:9 122:24 126:-17
name of	14:45 15:32 50:11 57:11 62:9 66:-8 126:-12
length ,	4:39 80:12 86:-12 126:18
^ rat	45:-9 86:22 87:-8
bar :	45:-9 86:27 87:8
bar short	87:23 126:16
long from	87:12
of that	19:9 22:8 40:10 66:13 72:10 73:10 126:-9
that hollow	87:13
retir the	87:33 126:-8
drop -	87:11 101:8
bar hollow	87:23
bar away	87:11
away ,	0:11 17:10 38:30 49:25 62:16 66:-9 82:9 101:18 123:19 126:-48
)~",
R"~(, strik	2:-8 87:9 101:14 123:40
strik it	87:10 101:14
scratch the	49:14 101:8
nam hollow	87:10
split==	49:21 87:16 126:-11
split	49:21 87:16 126:-11
be using	39:22 87:16 107:37 113:-9 126:-44
using it	21:10 87:16
the back	62:16 64:-8 88:24 99:9 126:-16
neck lie	88:15 95:-10
headstock==	88:12
#n keep	75:14
headstock	88:12
the headstock	88:10
touch noth	88:23 126:-18
noth $	52:8 69:-12 78:20 82:18 88:21 94:-10 126:9
took job	15:26 34:-13 88:23 126:-17
hang==s	88:33 120:-8
hang free	88:22
so a	88:14
bar may	88:22
over it	88:8
barb on	89:17
to point	89:17
point #n	3:11 4:-8 75:12 89:76 92:-8 93:8 126:-16
our @wire	1:-17 5:27 8:-22 9:32 19:18 20:14 33:-13 50:11 118:10 119:14 126:-8
thickness of	89:22
twic==e	0:-12 3:-11 15:8 34:31 37:-8 41:-9 42:9 46:-10 49:39 70:11 71:-11 76:16 91:9 92:21 93:18 100:9 118:-11 119:-8 120:18 126:-9
barb ,	89:11
check it	46:21 91:10
twic	0:-12 3:-11 15:8 34:31 37:-8 41:-9 42:9 46:-10 49:39 70:11 71:-11 76:16 91:9 92:21 93:18 100:9 118:-11 119:-8 120:18 126:-9
it twic	91:10 93:10 100:10
twic $	41:-8 49:39 67:-12 70:12 76:18 91:9 92:14 100:9 126:8
, held	24:19 90:9 91:-8
edge lie	90:29
&#p@job	75:11 90:18
firm==	9:-13 22:-8 33:37 90:13 121:23
i laid	3:-11 42:17 67:11 90:33
straightedg on	90:8 126:15
firm	9:-15 10:-10 22:-8 33:61 90:13 121:21 126:-8
^ around	90:30
around fret	90:30
steady ,	90:36
^ straightedg	90:11
, trebl	90:11
line ,	122:8
teeter==s	90:21
teeter	90:21
body end	90:8
, feeler	90:24
but not	59:9 82:-11 101:15
look a	3:22 46:8 90:9 126:-13
eye==	17:-19 23:71 65:-12 79:11 90:79 93:-11
eye	17:-20 23:71 42:11 65:-12 79:11 90:78 93:-12 126:-9
by eye	90:29 93:-11
eye ,	90:45 93:-11
gap at	3:12 90:-16 91:34 92:21 126:-14
tippy==	90:11
tippy	90:11
side ,	37:-9 38:19 46:9 58:8 90:8
, pivot	90:28
quickly==	19:9 30:13
quickly	19:9 30:13
#n @job	3:12 4:-8 13:25 15:39 17:-8 28:14 34:29 37:-11 65:33 71:9 92:-9 95:8 126:-25
light show	91:10
can slid	91:14
slid the	91:9
the feeler	4:-8 75:13 90:18 91:8 93:16
^ under	15:8 52:9 91:11
fully==	3:8 102:-24 126:30
fully	3:8 102:-24 126:30
the wood	91:48 94:18 126:-9
wood ,	126:30
gap ,	91:35 126:11
daylight==	88:10 91:18
^ you	2:33 37:20 41:11 65:11 103:9 107:8 122:21 126:-18
you can	19:9 33:-9 36:13 37:8 41:10 88:13 91:22 103:30 122:11 126:-11
daylight	88:10 91:18
see daylight	91:8
packet==	58:52 63:25 80:11 92:10 98:14 102:52 103:-33 126:-28
old glue	44:10 92:60 97:-12 126:-23
packet	58:52 63:25 80:11 92:10 98:14 102:52 103:-33 121:8 126:-28
packet in	92:10
stand up	92:34
slot not	92:26
not deep	3:-9 92:39 126:-8
check #n	92:14
and could	0:18 92:14 126:-11
find any	92:14
hit==ting	92:24
up is	92:13
its tang	41:11 78:19 94:-10
hit	78:10 92:34
tang hit	92:22
hit bottom	92:12
sawdust==	4:-13 18:-10 34:16 91:-20 92:82
sawdust	4:-13 18:-10 34:16 91:-20 92:82
sawdust in	4:-11 18:-10 34:17 92:32
feeler==s	93:9
measur with	93:8
feeler $	93:8
hundredth==s	69:8 93:52 126:16
hundredth	69:8 93:52 126:16
#n hundredth	93:52 126:16
hundredth under	93:25
the line	11:11 42:-26 43:-9 71:-10 91:-8 93:82 94:14 98:16
lower than	3:-11 42:-15 70:-8 93:59 98:-8
than #n	0:-8 8:28 26:37 33:24 42:-8 67:-10 93:-18 94:18 100:-12 105:11 121:10 126:35
, below	93:16
lie #d	93:26
neighbour ,	93:10 98:-17 126:40
how low	3:-10 16:-11 17:-41 42:-8 93:14 126:65
too low	52:-11 70:13 105:19
: number	93:10 120:14
than the	1:30 42:-15 93:26 126:-35
end at	44:-8 53:24 88:24 94:29 112:-12
ever come	94:11
be another	94:10
another fret	72:-14 79:18 94:10
beyond the	94:25
final==	76:-8 78:-23 94:93
final	76:-8 78:-23 94:93
its final	78:-13 94:34
final fret	78:-17 94:45
forever==	76:-8 94:72
goe up	94:28
forever	76:-8 94:72
forever $	94:72
has #n	1:-8 3:55 29:21 30:12 32:8 55:-8 100:-8 111:13 126:21
its very	88:15
very last	94:20
i straighten	95:27 126:-8
truss==	95:10
rod==	4:-9 5:23 69:10 70:-8 95:28
truss	95:10
rod	4:-11 5:22 8:11 9:-8 69:10 70:-8 82:-8 95:28 117:14
truss rod	95:10
neck straighten	95:23
forward==	11:-10 31:21 48:15 95:13 126:-15
forward	11:-10 31:21 48:15 95:13 126:-15
bow forward	95:10
a touch	2:16 17:-15 30:12 41:10 79:-9 96:8 98:31 126:-13
, some	31:26
hump ,	95:14
perfectly==	38:10
perfectly	38:10
is perfectly	38:10
flat and	41:11
and seat	96:26 126:26
seat it	20:13 96:32 126:-11
it anew	79:29 96:22
reseat half	96:12
in their	4:-17 18:24 96:12
their slot	2:-8 4:-17 18:24 76:9 96:12
seat again	96:23
#n reseat	96:43
reseat :	117:16
#t this	44:-10 96:15 108:20 112:9
shim==	91:-10 92:-8 96:53
gave fret	45:15 71:13 96:10 98:11
a shim	91:-10 96:42
shim ,	96:13
reseat==	34:-28 45:-8 96:63 117:16 126:43
did a	96:13 98:13 126:-12
reseat of	96:38
reseat on	96:31
reseat==ing	44:-13 49:14 62:16 85:10 96:56 126:9
done reseat	96:33
is glu	76:-9 97:37
the clamp	97:8
put glue	83:-10 97:16
clamp them	83:-10 97:10
: #r	48:-23 53:36 72:8 76:27 96:12 97:8 116:11 119:8
the loos	92:18
one ,	73:24 126:-11
, got	2:10 42:-17 77:27
i've glu	97:15
thin==	16:19 92:-8 96:12 97:11 126:-9
thin	16:19 22:24 92:-8 96:12 97:11 126:-18
^ thin	97:11
thin glue	97:11
glue pick	97:11
, clamp	97:60
#n glu	97:32
we glu	97:10
end fret	97:9
itself==	5:10 98:13 107:-10 122:12 123:-11 126:9
itself	5:10 98:13 107:-10 122:12 123:-11 126:9
by itself	5:10 98:13
itself $	98:13 107:-10 126:9
top off	98:44
off #n	98:36 126:9
i levell	98:49 126:-8
ston==ed	46:-8 98:61 126:-13
ston	17:-17 34:-8 44:26 46:-13 78:-8 90:-8 98:143 126:-17
ston down	98:16
down level	44:31 98:-13
individual==	45:-10 98:39
#n levell	98:23 99:15
individual	45:-10 98:39
levell individual	98:17
abrad==ed	17:-12 90:-9 98:60
abrad	17:-12 90:-9 98:60
^ abrad	90:-9 98:33
abrad #n	90:-9 98:33
level with	17:-23 44:31 98:-9 126:39
, has	63:21 64:20 83:-9 94:17 97:15 119:23 126:-30
a spot	98:13 126:-10
machin drill	99:43 101:-8
bandsaw==s	99:54 101:17 126:-11
#n bandsaw	99:55 126:-11
jig==	44:-9 99:38 101:37 104:18 115:11 126:-10
new thing	99:33 100:-9
jig	44:-9 99:53 101:37 104:18 115:11 126:-12
jig ,	99:45 104:9 126:-10
wheel==	90:8 99:52 101:-14 126:26
up a	1:-13 25:17 50:12 99:12 100:-11 101:16 104:12 126:-8
wheel	90:8 99:52 101:-14 126:26
polish wheel	99:24 101:-12
of setup	99:9
singl==e	5:10 46:10 58:8 98:16 99:9 100:37 104:-8
slot saw	4:-10 104:20
own a	99:26 100:20 126:-9
singl	5:10 46:10 58:8 98:16 99:9 100:37 104:-8
a singl	5:10 46:12 58:9 100:37 104:-8 123:8
singl #n	58:10 99:15
neck as	99:24 126:9
a light	99:11
light tabl	99:11 101:33
as many	59:-11 99:25 100:32
many as	99:25 100:11
as are	99:12
are want	99:12
arbor press	16:-14 23:35 36:-14 100:9 102:-8
chang -	100:13 121:-10 122:10
- machin	100:12 101:9
no limit	100:34
limit ,	16:71 17:-8 49:-8 100:13
a #o	0:-9 26:32 34:-10 42:-10 59:8 93:26 94:18 96:30 98:-11 100:29 125:13
#o press	34:-9 99:-9 100:56 126:15
press has	26:-8 45:-13 56:9 99:-10 100:22 103:12 104:-13 126:65
arriv ,	40:-8 89:-14 100:11 118:41
so we'v	2:9 34:-9 56:9 100:22 126:-8
minut==e	4:-10 28:-9 51:15 71:9 91:-11 95:12 100:30 105:45 106:24 108:15 118:-24 119:-13 120:-9 126:11
make it	1:-14 7:24 12:-9 30:24 41:-12 42:12 50:-9 51:-12 52:21 53:13 55:19 66:13 67:18 70:37 77:8 114:20 125:28 126:-61
bench with	59:12 100:10
minut	4:-10 28:-9 51:15 71:9 91:-11 95:12 100:30 105:45 106:24 108:15 118:-24 119:-13 120:-9 126:11
#n minut	100:32 105:45 126:-22
the number	12:-9 14:10 37:8 39:-11 61:17 82:11 100:35 107:31 120:9 126:-8
number of	12:-23 14:29 19:32 28:8 61:9 99:25 100:66 102:-11 126:-10
sander to	100:23
workplac==e	99:27 100:21
machin nam	100:21
workplac	99:27 100:21
we sold	100:17 101:18
the bandsaw	100:34 101:17 105:-17
bandsaw ,	99:13 101:17
take them	26:-8 101:27 102:-13 123:23
them off	101:18 123:17
sander away	101:17
no drill	101:35
press here	26:35 100:-12 101:26
it from	101:21 106:14 110:-10 122:10 126:24
jig $	44:-8 101:38
nobody can	54:8 102:35 106:-9
the belt	3:-9 23:46 43:21 101:12 126:-15
kaput==	26:-9 100:-8 101:-12 102:86 103:-14
kaput	26:-9 100:-8 101:-12 102:86 103:-14
press kaput	26:-8 101:-12 102:58 103:-8
kaput $	26:-9 100:-8 102:61 103:-8
press goe	102:10 126:8
goe for	102:27
usabl==e	3:19 42:-15 100:-16 102:22 103:50 126:-10
usabl	3:19 42:-15 100:-16 102:22 103:50 126:-10
)~",
R"~(, its	34:26 36:11 37:-9 41:-14 48:17 57:10 61:8 62:-8 76:9 78:16 79:18 87:11 102:29 126:-14
press can	102:29 126:-13
used from	102:13
both sander	26:18 100:-12 101:12 102:50 103:9
order on	102:19 126:-8
#o sander	26:26 31:-8 100:-33 102:59 103:54 107:-8
sander run	26:27 103:16
fine again	103:27
mend==ed	26:-20 102:-11 103:110 104:-9 126:-10
mend	26:-20 102:-11 103:110 104:-9 126:-10
is mend	102:-12 103:25
bench are	26:-8 100:-15 103:44
are usabl	100:-15 103:30
levell need	26:-17 28:77 126:-33
seat need	104:16
for fil	104:11
fil #n	104:11 105:15 126:-8
stag want	104:16
polish==	28:-8 44:21 104:33 105:16 108:18 126:-13
plac on	1:11 13:38 40:-10 48:-20
saw==ing	4:-27 44:35 104:19 105:15
saw $	4:-10 63:27 99:21 104:19
occupy==es	104:26
occupy	104:26
occupy the	104:26
for crown	28:27 105:21
crown to	16:10 56:-8 105:31
stag -	104:10
polish ,	28:20
hour ,	29:53 51:12 53:-15 55:14 63:-10 105:12 111:-14 112:-16 126:57
nip doe	105:12
that long	39:10
, make	52:22 56:15 67:-12 70:16 114:9 125:8 126:-22
press should	105:26 126:-9
be plan	101:18 105:16
plan at	5:10 105:16
a neck	28:12 99:10 105:16
today #t	46:-8 106:9 116:20
@person down	63:14 106:15 111:-8 112:25
@day between	53:9 55:-9 106:9
&#t@day@job@person	106:8
keep a	75:14 106:12 122:20 126:-9
me from	44:18
book it	27:-10 102:-11 106:30 107:16 118:10 126:-10
block==	16:15 17:-10 38:38 86:17 88:14 97:-8 98:13 102:-9 106:13 126:-16
inspect==ed	54:-13 102:15 106:10 113:9
block	16:15 17:-10 38:38 86:17 88:14 97:-8 98:12 100:-8 102:-9 104:18 106:13 126:-17
^ block	38:38 102:-8 106:17
block the	102:-8 106:18
note plat	102:-9 106:14
inspect	54:-13 102:15 106:10 113:9
inspect $	102:15 106:10
releas==ed	24:-32 34:-13 39:59 41:-11 85:-12 107:20 126:29
sander time	107:53
time can	66:22 107:20
be releas	39:13 107:20 126:-9
to seat	28:15 63:8 85:8 108:15
are just	108:8
^ begin	108:44
bend for	38:-8 44:16 108:40 109:17 126:-9
has pick	44:11 66:-14 108:39
interrupt==ed	13:-11 44:-22 108:-23 109:146
interrupt	13:-11 44:-27 108:-30 109:201 114:-9 126:-16
^ interrupt	44:-14 109:74
interrupt the	109:29
the fil	36:12 109:12
fil of	36:13 108:31 109:10
broken off	109:59
off at	111:-14 112:28
unfinish==ed	3:8 5:-8 12:47 49:-8 109:104 126:-17
^ enough	5:-8 109:26 126:-8
stop ther	109:12
unfinish	3:8 5:-8 12:47 49:-8 109:104 126:-17
unfinish $	5:-8 12:17 109:79 126:-15
@person never	36:11 52:-11 110:56 111:-9 112:-13 126:-9
hour :	53:-10 56:11 110:16
@day -	53:35 55:-28 102:9 106:-8 110:19 112:-25 126:28
- @day	48:10 53:27 55:-28 102:9 106:-8 110:19 112:-25 126:28
, day	10:-11 29:-10 30:29 46:17 63:-9 110:-16 112:-9 117:10 126:54
, hour	29:15
hour #t	110:-20 112:24
work hour	29:21 110:8
off this	111:19
on holiday	84:11 111:22 112:-10
holiday from	111:23 112:-9
^ tak	109:23 111:35
@day off	107:-10 110:27 126:34
give @person	29:-10 110:9 111:25
afternoon of	11:19 34:-10 111:22
december off	111:26
@person away	111:26 116:11
recital==	111:14
@person can	41:-28 62:13 109:15 110:-11 112:-22 126:72
recital	111:14
^ off	63:14 109:21 111:11
, me	42:10 98:10 102:-8 106:11 108:19 111:27
work #t	110:-13 112:22
of her	11:18 60:8 61:-8 112:13
her usual	112:14
today @person	112:25
in till	110:-9 112:31 126:8
am only	84:15 112:12
not a	9:12 48:10 61:12 62:-8 95:11 113:21 119:-8 123:18 126:-35
open after	53:-9 113:18
closur==e	54:-11 107:-18 111:-8 113:149 119:-11
closur	54:-11 107:-18 111:-8 113:149 119:-11
- day	46:12 113:14
a mistak	113:22 125:10 126:-13
remov it	58:22 99:-9 101:17 107:16 113:21 126:-23
ever ,	111:15
clos next	113:17 126:-10
fall through	107:27 111:-8 113:29 120:15
treat the	114:18
usual again	114:37 126:-9
no rush	39:10 48:9 88:-9 114:42
rush with	114:38
need her	114:9
badly ,	92:15 114:9
^ rush	13:-19 114:92
, back	114:10 125:8 126:20
hold back	44:-9 115:16
until @job	44:-9 115:37
, other	115:23
let job	39:-12 66:28 115:37 126:-21
behind job	115:60
lift==	39:31 54:-13 73:8 96:22 113:49 115:28 126:-21
^ lift	39:32 54:-13 113:50 115:29 126:-18
lift the	39:31 54:-13 96:22 113:49 115:28 126:-18
the wait	12:15 46:12 115:23
will look	88:12
off until	48:14
&#t@day@job	30:-10 53:-15 55:16 116:24
^ schedul	30:-13 116:18
schedul the	30:-13 116:18
day befor	34:16 48:14 116:11 126:-10
befor we	116:11
, they	10:-10 33:-14 37:-8 44:11 46:-9 51:12 71:24 73:13 101:17 108:-10 115:10 117:53 119:15 121:57 122:-18 123:23 126:-32
they say	32:25 33:-13 51:-10 117:28 121:8 126:12
say it	32:19 33:-13 44:8 49:17 78:35 117:11 120:-8 125:27 126:-60
, promis	117:22 119:13
lindwurm an	117:10
with ferro	51:-10 117:15 122:27
ferro :	117:9 122:33
arriv in	117:10
a fortnight	10:14 121:25
fortnight $	10:10 121:14
^ lindwurm	32:18 33:-21 53:-8 118:59 119:49 120:13 121:-21 122:33 123:38 126:75
lindwurm deliver	118:18 122:11 126:-17
were in	118:24
parcel ,	59:10
order at	12:-24 32:27 51:-8 118:8 119:21 120:13 126:-10
the lindwurm	51:38 117:-11 119:8 120:13 122:9 126:-9
lindwurm parcel	118:46
crown measur	51:21 89:-9 118:24
yesterday ,	34:16 38:8 41:8 44:-10 46:10 51:30 62:-9 71:10 79:12 84:14 103:20 109:10
lindwurm order	118:8 120:16
order :	10:12 32:-15 51:-9 117:30 118:-14 126:55
order number	39:-13 117:20 118:20 119:19 120:34
tomorrow already	33:-8 119:61
late ,	48:17 50:10 101:21 114:15
rang==	7:25 13:18 15:10 34:-8 38:10 47:-9 64:-8 67:-21 109:23 111:22 120:29 122:13 126:12
rang	7:25 13:18 15:10 34:-8 38:10 47:-9 64:-8 67:-21 109:23 111:22 120:29 122:13 126:12
lindwurm rang	120:-17 126:44
rang ,	13:8 64:-8 111:22 119:23
@day next	29:-13 30:-9 55:19 102:-8 106:13 111:9 112:-8 113:9 116:9 119:14 126:-11
arrival==	119:9
arrival	119:9
the arrival	119:9
arrival of	119:9
off what	120:20
becaus they	82:11 120:28
lindwurm can	120:20
not deliver	120:13
withdraw==	33:-12 34:-8 49:60 118:-12 120:68 125:50 126:-21
withdraw	33:-12 34:-8 49:60 118:-12 120:68 125:50 126:-21
^ withdraw	33:-12 118:-11 120:69 125:35 126:-15
withdraw the	120:18
told==	0:-10 3:-13 8:8 15:18 27:9 32:-11 33:24 38:8 46:16 48:31 56:-11 58:39 67:41 76:8 94:11 100:22 103:8 106:-9 111:-9 117:11 119:33 125:27
told	0:-10 3:-13 8:8 15:18 27:9 32:-11 33:24 38:8 46:16 48:31 56:-11 58:39 67:41 76:8 94:11 100:22 103:8 106:-9 111:-9 117:11 119:33 125:27
ferro we	120:11 123:18
, order	118:13 120:13
order cancell	120:20
ferro will	117:8 120:13
harbour==	121:11 123:28
metal==s	33:-10 121:37 123:35 126:26
harbour	121:11 123:28
metal	16:18 17:-9 23:14 33:-15 76:-10 82:13 90:20 121:73 123:22 126:22
harbour metal	121:11 123:28
metal as	121:11
copper==	117:9 123:14
copper	117:9 123:14
, sold	121:8
at least	33:26 42:-10 43:19 51:16 68:-9 69:-11 117:-11 121:30 122:21
least #n	121:16 122:21
m in	122:10
heron==	123:25
tool==s	12:-13 26:56 98:-8 109:68
heron	123:25
tool	12:-13 26:56 98:-8 109:68
tool on	98:-8 109:51
supplier list	10:-14 33:12 123:30
, pack	33:31 121:50 122:-34 123:-10
allow==	2:-8 28:23 30:-9 41:10 105:13 121:13 123:39
- supplier	122:9
, lead	33:-11 59:28 121:12 122:14
needl==e	87:11 102:-18 121:36 123:-13 126:27
needl	87:11 102:-18 121:36 123:-13 126:27
deliver in	121:13
week and	12:8 33:8
and want	13:24 26:20 65:-9 114:8 115:8 121:10 122:13
want an	122:13
#n kg	121:11
fretwir==e	8:28 18:34 121:10 123:30 126:-18
supplier to	121:17
add :	99:12 121:17
fretwir	8:28 18:34 121:10 123:30 126:-18
when fretwir	121:11 123:30
screen==	51:-16 57:10 58:23 67:22 121:28 122:-14
screen	51:-16 57:10 58:23 67:22 121:28 122:-14
a week	10:9 27:-11 61:14 102:-13 103:-9 106:-8 111:36 119:18 126:16
week from	119:18
from order	118:8
order to	5:12 9:-9 10:9
door $	0:-8 38:10 54:11 109:14 115:24
metal ,	121:21 123:-17 126:27
they need	10:-9 101:18 121:18
dovetail==	121:15
dovetail	121:15
a minimum	122:18
supplier ferro	33:-25 51:9 121:-29 122:34 123:36
ferro ,	5:12 19:-11 28:-8 33:13 117:18 118:21 121:-30 122:59 123:26 126:-38
note ask	121:-9 122:10
ask for	3:14 50:8 62:9 65:10 110:-15 111:-19 121:-9 122:27 126:33
green $	82:8 121:-9 122:11
renam lindwurm	33:-10 122:31
supply to	33:-12 121:16 122:13
to lindwurm	10:20 33:-10 117:10 122:8
kilo==	51:19 59:-8 64:37 99:33 121:34 122:23
ferro only	122:10
only sell	122:10
coil by	121:8
)~",
R"~(the kilo	121:8
quicker==	31:26 33:25 100:8 105:14 107:12 122:9 126:-10
lindwurm got	122:10
quicker	31:26 33:25 100:8 105:14 107:12 122:9 126:-10
quicker ,	122:17
drop ferro	19:-9 123:36 126:18
ferro as	122:12 123:16
business==	29:23 30:14 66:-22 103:8 105:20 123:23 126:31
ferro has	51:-10 117:10 123:17
gone out	63:21 64:-18 123:22
business	29:23 30:14 66:-22 103:8 105:20 123:23 126:31
of business	123:22
business ,	30:14 123:9
dealing==s	123:35
dealing	123:35
metal $	33:-9 121:28 123:47
plumb==	29:11 78:12 123:28 126:-26
among==	1:19 18:-9 57:9 78:14 87:17 99:28 101:-8 121:27 122:-14 123:24 126:-30
plumb	29:11 78:12 123:28 126:-26
among	1:19 18:-9 57:9 78:14 87:17 99:28 101:-8 121:27 122:-14 123:24 126:-30
among the	57:9 78:14 87:17 99:28 101:-8 121:27 122:-14 123:24 126:-30
supplier when	123:30
are through	33:-8 126:54
through with	33:-9 44:44 48:10 108:-18 126:48
that supplier	123:44
supplier out	121:-8 123:29
no wait	125:15
wait ,	109:16 114:10 115:-9 125:15 126:8
scratch that	88:41 125:55
said==	15:-10 24:-13 34:19 36:59 37:14 38:18 42:9 48:13 52:-11 54:-15 66:-8 71:-8 76:34 85:11 104:-10 105:21 107:-12 110:-23 111:-12 113:32 119:-22 125:46 126:22
what i	27:-18 34:-24 36:-22 42:-17 88:15 93:16 96:8 105:20 107:15 125:90
said	15:-10 24:-13 34:19 36:59 37:14 38:18 42:9 48:13 52:-11 54:-15 66:-8 71:-8 76:34 85:11 104:-10 105:21 107:-12 110:-23 111:-12 113:32 119:-22 125:46 126:22
just said	125:23
said ,	76:36 104:-9
not mean	125:16
to report	3:-8 43:8 103:11
report that	3:-8 43:8 103:11
that ,	28:16 49:14 66:28 88:41 125:25 126:-20
cancel what	27:-15 107:24 125:46
should not	26:15 52:14 58:22 61:11 125:16 126:-26
have gone	76:-15 82:19 83:8 125:19
hook==	48:23 58:86 59:-8 68:13 101:-9 126:13
receiver wall	57:13 126:-11
wall at	57:13 126:-10
hook	48:23 58:86 59:-8 68:13 101:-9 126:13
/ hook	57:-18 126:26
hook $	57:-14 58:20 126:16
tablet==	58:73 61:8 101:-8
to http	57:17
tablet	58:73 61:8 101:-8
tablet $	58:51
plain==	17:9 57:8 90:20
text==	57:10
new receiver	57:13 126:-10
lamp ,	87:8 99:18
, http	50:-10 57:18
plain	17:9 57:8 90:20
plain text	57:8
text $	57:9
receiver for	58:-8 126:19
wire .	0:11 57:14 72:8
. low	50:-10 57:14
/ x	57:-16 126:18
whatever fall	57:12
, under	52:10
notice==s	58:36
the screen	51:-15 67:22
notice	58:36
receiver ,	50:-11 57:20 58:33
, name	14:22 57:12
address==	33:16 57:12 58:14
event==	57:9
longer ,	39:9 48:11 58:13 65:11 66:12 82:12 87:8 107:9 112:17 114:14 116:-8 126:-8
address	33:16 57:12 58:14
/ log	57:10
the event	57:9
event shap	57:9
shap $	57:9
kitchen==	51:-14 58:63 69:14
you add	20:9 51:19 68:-11
kitchen	51:-14 58:63 69:14
the kitchen	51:-14 58:27 69:14
receiver kitchen	58:16
kitchen ,	58:9
listen	39:22 41:11 54:20 65:-8
wall receiver	126:9
receiver==s	57:9 58:47 126:-8
the lamp	3:26 19:8 42:-8 58:22 91:11 92:16 98:24 126:-11
the tablet	58:17 60:11 126:9
offic==e	57:10 58:21 68:11 126:28
offic	57:10 58:21 68:11 126:28
call offic	58:22
offic $	57:10 126:8
receiver shelf	58:11
shelf now	58:11
meant $	0:31 41:13
and with	2:66 16:113 21:-28 87:-40
^ its	48:28 75:9 79:10 88:23 92:37 119:-8 126:-14
, on	0:23 3:-14 4:-20 6:10 9:-9 17:-8 28:22 29:-10 30:-8 32:14 38:10 40:9 46:-8 47:-9 51:9 68:-24 69:14 90:22 92:16 93:15 111:59 126:-8
@person right	62:11 106:33
it last	9:29
give it	15:15 16:22 17:-11 38:-16 39:31 65:19 114:9 126:-11
they'v==e	41:-8 46:21 82:32 103:8 109:-9 119:39 120:23 122:29
they'v	41:-8 46:21 82:32 103:8 109:-9 119:39 120:23 122:29
^ they'v	109:-8 119:48 122:13
then book	106:18
me #n	65:13 71:-8 72:9 106:10
well ,	34:-9 37:36 43:40 44:-8 49:9 57:10 74:31 77:-8 78:-14 92:-10 96:50 100:9 106:10 118:17 126:-13
plug==	25:14 26:-8 58:9 68:20 70:10 82:-13 83:-8 98:100 99:33 100:-8 101:-12 102:17 103:24
plug	25:14 26:-8 58:9 68:20 70:10 82:-13 83:-8 98:100 99:33 100:-8 101:-12 102:17 103:24
plug #n	68:10 82:-12 83:-8 98:101 99:34 126:-14
its head	88:24
too pleas	0:81 6:71 8:-9 22:-26 24:-9 32:8 126:-8
it has	3:55 41:8 46:24 51:10 87:-12 88:12 95:26 123:19 126:-15
stood==	17:-11 45:-9 46:10 96:11 98:20 126:34
and if	0:24 2:40 94:9 126:-36
stood	17:-11 45:-9 46:10 96:11 98:20 126:34
load stood	16:8
stood #n	16:8
what then	0:-14 3:-15 16:40 126:43
then $	0:-16 3:-16 9:8 11:11 13:29 16:39 21:8 28:10 30:-14 34:-9 45:-9 46:-9 48:8 49:-16 53:10 55:-12 63:-12 74:10 90:-9 102:28 103:9 109:-11 111:30 113:31 116:22 126:21
mayb we	126:50
should drop	126:11
bar #n	126:8
we never	10:-9 82:9 87:11 97:-13 107:-11 123:11 126:58
anyth from	0:-12 24:14 39:-9 71:-16 126:45
we might	84:-8 123:-17 126:85
mind $	16:-13 39:18 49:16 126:34
^ ok	0:30 23:-15 24:-15 26:-11 38:27 39:21 40:-10 45:8 81:10 117:24 126:79
new @job	28:-24 126:53
won==	14:-13 34:-11 53:16 63:8 100:17 110:-10 126:42
match==	0:42 4:-13 14:-13 18:18 20:18 22:-12 34:-14 72:8 74:37 92:16 126:35
won	14:-13 34:-11 53:16 63:8 100:17 110:-10 126:42
won the	14:-13 34:-11 63:9 100:17 126:42
match	0:64 4:-19 14:-13 18:18 20:18 22:-12 34:-14 72:8 74:37 92:16 126:34
the coffe	30:-19 125:14 126:55
glass==es	5:-9 23:41 34:-8 46:-10 90:29 92:16 110:11 126:13
glass	5:-9 23:40 34:-8 44:12 46:-10 56:-8 90:29 92:16 100:-9 104:-9 108:-8 110:11 126:50
my glass	34:-8 46:-9 90:18 92:16 126:19
glass $	34:-8 126:44
joke==	26:-8 36:-13 79:9 126:70
joke	26:-8 36:-13 79:9 126:70
a joke	36:-13 79:9 126:54
joke $	26:-8 36:-13 126:76
@person be	29:56 111:-16 126:-36
be off	25:49 29:48 111:-33
she'll==	3:14 29:-9 65:9 111:-19 112:23 126:16
she'll	3:14 29:-9 65:9 111:-19 112:23 126:16
, she'll	111:-18 112:18 126:20
let us	113:12 126:20
agre==ed	41:11 52:9 106:13 111:-13
agre	29:8 41:11 52:9 106:12 111:-13
press brok	16:-11 126:23
, could	7:12 36:11 38:-8 48:15 56:14 71:-37 84:8 126:38
the date	9:23 48:58 126:8
sander were	102:-8 126:27
were down	102:-8 126:26
who start	15:-31 34:49 63:32 126:-18
nearly==	2:12 5:12 10:11 37:8 40:-15 41:-45 44:-37 49:-15 52:8 62:-8 78:-14 82:-10 99:-15 103:15 115:-9 120:-10 126:217
nearly	2:12 5:12 10:11 37:8 40:-15 41:-45 44:-37 49:-15 52:8 62:-8 78:-14 82:-10 99:-15 103:15 115:-9 120:-10 126:217
is nearly	10:12 44:-23 126:44
when i've	4:13 65:-12 126:28
i've finish	4:13 65:-12 126:28
not make	0:17 12:-9 30:25 115:-10
make job	114:-13 115:-10 126:34
trust==	4:10 33:18 42:10 56:12 58:11
trust	4:10 33:18 42:10 56:12 58:11 126:-8
not trust	4:10
if #n	90:-17 126:51
whether ther	91:-32 126:43
be set	56:9 126:15
i'd rather	2:12 41:-12 65:14 72:12 126:20
#n than	17:-11 126:26
reseat it	126:9
be reseat	31:-18 49:14 126:35
fret were	17:-18 25:-13 34:69 126:-15
bar wide	126:15
true that	3:-10 8:54 52:-13 89:-15 92:-27 126:46
that @wire	3:-10 8:52 19:20 32:21 37:8 40:12 52:-14 72:11 89:-15
faster==	126:13
we bought	51:-18 117:24
we'd be	113:13 126:21
faster	126:13
not drop	87:-11 101:-11 126:41
or more	22:21 105:-19 122:13 126:36
hard to	16:20 105:-18 126:45
to say	24:-8 36:10 38:18 39:10 41:13 49:16 63:10 78:11 103:20 105:-18 118:12 126:9
perhap i	126:12
will want	49:-11 95:-35 126:70
not cancel	49:-11 120:-25 126:56
again some	126:28
some time	9:-9 98:-29 116:-9 126:97
sell==	8:13 33:16 51:20 64:9 97:14 100:-10 102:17 121:21 122:-18
doe ferro	26:-8 32:55 33:9
ferro sell	33:16 122:9
charg==e	15:15 19:26 34:-13
did ferro	19:26 34:-10
charg	15:15 19:26 34:-13
last time	19:26 27:9 34:-10 62:-9 63:10
doe undo	36:35 105:-10
i add	36:19 123:15
who get	14:-25 33:-9 34:-9 58:11 126:60
the reminder	5:-8 14:-24 33:-10 34:-8 58:40 126:56
reminder $	5:-8 14:-25 33:-10 34:-9 58:57 126:55
radio==	11:-20 28:15 58:29 64:70 72:9 90:-19 126:33
radio	11:-20 28:15 58:29 64:70 72:9 90:-19 126:33
the radio	11:-10 58:17 72:9 90:-19 126:43
let me	4:15 7:9 8:10 10:13 13:-16 14:32 15:-9 27:26 29:36 34:25 39:-16 65:36 71:-12 111:-9
customer ask	13:-8 126:34
ask about	13:-9 15:23 34:-11 36:24 117:11 126:27
about his	13:-8 126:33
@job phon	13:-53 126:99
you pass	3:12 36:-9 126:42
better than	8:-10 33:-9 121:-10 126:55
i head	34:-9 88:15 126:12
fix==	70:41 126:16
talk==	54:-11 56:22 107:-11 113:-29 126:67
talk	54:-11 56:22 107:-11 113:-29 126:67
the littl	4:15 7:14 41:17 76:-8 98:11
bit in	7:13
tin can	22:11
)~",
R"~(need someth	0:10
for line	0:10
is about	0:8 8:12
the right	0:10
@wire stuff	5:11 6:15
of thos	0:18 5:10 58:10 98:13 126:-9
thos littl	21:12
littl bar	4:15
groov==e	0:11 3:10 4:26 34:15 42:11 73:-20 76:19 126:-13
groov	0:11 3:10 4:26 34:15 42:11 73:-20 76:19 126:-13
#o groov	0:14 3:20 34:15 126:-11
groov of	0:14 3:20 34:15 126:-11
one we	0:15 118:21 126:-8
of some	0:15
some other	0:15 107:9 126:-9
right up	0:25 4:-18 88:19
up by	0:25 4:-17 70:13 126:26
, long	1:20 8:16 126:-11
long one	1:24 8:16
one too	0:18 1:10
tin bit	0:36 2:10 40:-17
lunch ,	0:9 38:-9 46:10 60:8 61:10 88:9 109:12
you just	0:9 125:11
just tell	0:11 17:9 38:-8
me which	1:18 9:15 12:19 13:-19 15:24 22:32 24:9 25:15 38:-8 126:-12
ready when	0:9
trail==	0:13 4:-9 6:-9 34:67 47:10 59:10 112:15 126:-15
was just	0:18 68:-10 72:14
trail	0:13 4:-9 6:-9 34:67 47:10 59:10 112:15 126:-15
know it	0:11 45:10 126:-9
a wast	22:25 126:13
wast ,	0:11 41:11 126:-9
not mind	0:13 1:39 126:-50
anyway==	6:16 7:17 10:20 42:10 44:-8 48:10 63:21 65:25 107:10 109:-8 126:-10
^ as	1:-9 17:17 22:9 24:8 29:8 36:9 38:13 39:12 44:-11 53:22 84:8 96:10 100:19 101:18 108:10 112:-11 119:9 126:-31
as i've	29:11 36:10
anyway	6:16 7:17 10:20 42:10 44:-8 48:10 63:21 65:25 107:10 109:-8 126:-10
anyway ,	7:17 10:20 42:10
a finish	0:19
finish fret	0:19
wee==	3:-8 8:10 13:9 15:8 17:-10 24:13 27:18 38:-10 42:19 68:8 79:-11 105:11 126:-11
wee	3:-8 8:10 13:9 15:8 17:-10 24:13 27:18 38:-10 42:19 68:8 79:-11 105:11 126:-11
wee bit	0:8 3:10 8:12 43:-9
ever a	27:18 126:-9
would suit	0:10
g'day==	0:12
they'll==	0:14 94:24 117:13 119:19 126:-25
g'day	0:12
in ther	0:8 126:26
they'll	0:14 94:24 117:13 119:19 126:-25
they'll do	0:13
y'all==	1:-9 3:8 5:12 9:-16 11:17 16:20 18:8 22:-8 26:-8 28:22 29:17 30:-13 36:8 38:9 112:15 120:9
y'all	1:-9 3:8 5:12 9:-16 11:17 16:20 18:8 22:-8 26:-8 28:22 29:17 30:-13 36:8 38:9 112:15 120:9
what y'all	5:13 18:10
y'all got	8:9 27:9
that tin	21:9 22:13
in number	3:16 43:-9 92:11
a wee	3:10 8:12 43:-10 89:9 105:11 126:-9
you ,	0:-10 13:10 38:23 41:9 45:8 51:11 100:10 114:12 117:-8 125:21
job number	13:17 38:12
fret number	0:21 17:17 78:-9 91:10
with what	0:27 9:19 30:14 32:-10
what from	0:23 5:32 19:-11 34:-8
the box	0:25 7:37 21:-8 22:-10 118:21
box of	0:25 7:25 22:-9 120:10 126:-8
can #n	0:26 29:8
remainder==	0:10 111:15 117:-9 118:20
match==es	0:22
^ to	4:-9 5:14 15:10 17:-15 41:15 58:15 65:-12 82:-10 90:47 98:-29 114:10 121:18 126:50
remainder	0:10 111:15 117:-9 118:20
match ,	0:22 22:-8 74:9
search==	0:62 40:-25
search	0:62 40:-25
also the	16:10
welcom $	0:-10 1:14
item==	1:30 24:14 34:40 126:-8
mr==	13:13 31:8
pleas advic	15:22
advic which	15:22
item	1:29 11:34 24:13 34:36 82:11 126:-9
mr	13:13 31:8
mr @job	13:13 31:8
record==s	0:22 63:14
remnant==	0:20 1:16
allocation==	0:22
position==	0:22 3:9
for our	0:22 7:8
our record	0:22
record :	0:22 3:18 42:-10
: which	0:20 5:17 17:10 22:47 25:15
remnant	0:20 1:16
allocation	0:22
position #n	0:20 3:9 4:39 42:-8 83:-9 98:-9
job no	0:22 15:11
kindly==	2:11 5:12 11:30 17:13 29:10 34:21 37:12 38:-14 41:13 50:-9 51:-13 61:11 63:18 66:18 84:-13 89:9 107:25 111:-10 117:11 125:24 126:-26
availabl==e	0:15 36:35 85:21 102:9 103:15 126:-15
kindly	2:11 5:12 11:30 17:13 29:10 34:21 37:12 38:-14 41:13 50:-9 51:-13 61:11 63:18 66:18 84:-13 89:9 107:25 111:-10 117:11 125:24 126:-26
^ kindly	0:12 2:21 11:31 17:13 29:10 34:21 37:12 38:-14 41:13 50:-9 51:-13 61:11 62:8 66:18 84:-13 89:9 107:19 117:11 125:25 126:-24
availabl	0:15 36:35 85:21 102:9 103:15 126:-15
leftover for	0:11 40:12
exist==ing	8:12 9:-8
ask whether	16:49 45:-20 126:-12
whether we	18:10 126:-9
we would	54:-8 113:15 126:-9
exist	8:11 9:-9 27:16 64:20 82:17 87:10 99:11 101:8 122:12 123:-10
come slot	71:25
identify==	0:18 1:-8 22:9
produc==ed	0:18 1:-8
identify	0:18 1:-8 22:9
pleas identify	0:18 1:-8 22:9
stock in	0:17 1:-8 8:-38 22:49 51:19 67:-12
tin from	0:17 1:-8 21:13
produc	0:18 1:-8 7:10
be produc	0:18 1:-8
suppos==ed	4:26 9:-11 15:11 32:22
guitar==s	11:9 12:19 30:-10
i suppos	30:8 97:-13 126:15
suppos to	4:26 9:-11 15:11 32:22
any of	0:13 2:16 23:21 31:-11 66:38 126:-10
guitar	11:9 12:19 30:-10
piec with	37:-11 41:14 71:15
on it	3:-15 13:29 15:8 17:12 30:-11 34:-8 38:16 41:-9 42:16 44:-10 48:22 65:-19 67:15 68:15 72:14 78:14 90:-10 97:9 102:8 104:-8 106:-11 108:47 109:-14 120:-9 126:25
would wast	1:10
wast the	1:10
least of	1:22
rough==	3:9 9:13 42:-8
too shall	43:17
shall ,	43:17 57:9
and both	71:-10 93:21
rough	3:9 9:13 42:-8
still rough	3:10 42:-8
could it	1:19 31:11 126:-9
still be	120:-16 126:19
whereabout==s	1:63 4:10 40:-14 51:-15 126:-11
whereabout	1:63 4:10 40:-14 51:-15 126:-11
whereabout on	1:16 126:-10
goe wher	1:45 2:33 41:-8
, whereabout	1:56 40:-14 51:-15 126:-10
whereabout $	1:47 40:-14 51:-15
sweep==ing	40:16
found this	75:8
sweep	40:16
was never	22:10 98:10 101:10 125:11 126:-20
never in	110:33
so wher	1:21
you'd==	2:9 4:-9 14:21 28:-10 31:10 100:12 110:-11 112:-9 114:12 126:20
^ whil	34:13 108:8 126:-8
you'd	2:9 4:-9 14:21 28:-10 31:10 100:12 110:-11 112:-9 114:12 126:20
list would	72:-36 126:40
^ now	9:10 33:16 41:11 51:-11 67:25
now that	3:-10 9:10 33:16 42:14 48:12 100:15
on that	2:13 11:10 65:11 97:10
#n fit	1:21
thought==	1:14 26:-10 31:-8 39:10 44:10 56:11 64:8 104:26 107:11 117:-11 126:16
throw it	1:15 41:16 87:8 126:-16
but then	1:15 62:-8
then i	1:15 71:8 112:10 126:-17
thought	1:14 26:-10 31:-8 39:29 44:10 56:10 104:26 107:12 117:-11 126:16
i thought	1:15 107:12 126:-15
thought i'd	1:15 44:10 126:-21
ask #o	1:15 15:23 126:-26
#o :	1:14 37:29 43:18 92:22 126:-16
^ even	27:10 41:16 126:-11
bit off	81:10
which i	0:-11 18:13 110:11 111:-12 117:14 126:21
ye==	4:13 11:13 26:21 34:11 126:-13
ye	4:13 11:13 26:21 34:11 126:-13
would ye	11:13 26:21 34:11 126:-10
be best	65:14 126:-13
mil==	42:27 70:18 89:9
mil	42:27 70:18 89:9
#d mil	89:9
job it	45:12
it good	1:16
reckon==	8:-13 9:15 18:49 24:-8 28:13 42:26 61:9 65:13 105:56 115:10 126:-37
someplac==e	1:14 126:-10
reckon	8:-13 9:14 18:52 24:-8 28:13 42:26 61:9 65:11 89:9 105:56 115:10 126:-37
i reckon	1:14 42:28 126:-10
reckon piec	1:14 126:-10
#n ought	1:14 70:-20 126:43
someplac	1:14 126:-10
the piec	1:8 24:8 34:-12 37:24 38:18 39:9 76:-10
in which	0:-14 1:-11 4:27 7:14 10:-14 13:14 15:-8 28:29 34:11
slot has	92:10
remainder of	111:15
it belong	61:12
loss $	1:22
here #d	3:-8 43:9
finish ,	0:20 32:10 96:20
employ==ed	14:10 37:18 38:-13
employ	14:10 37:18 38:-13
indicat==e	1:30
indicat	1:30
to which	1:27 12:-9 15:31 24:15
item #n	1:30 24:14 34:40 126:-8
tin should	1:30
assign $	1:30 10:-9 15:30 65:25 126:-11
view==	59:10
view	59:10
might be	91:-16 126:19
plac ,	14:17 16:20 51:-13 54:11 117:19
and which	2:11 4:-8 13:8 14:33 25:-9 26:9
^ some	2:17 22:-13 80:26
some of	2:16
them all	2:19 85:13
hardly==	2:22 16:-8 38:-16 114:-15 115:-26 126:81
i push	2:8 16:15 45:23 73:-8 76:34 98:-13
hardly	2:22 16:-8 38:-16 114:-15 115:-26 126:81
hardly any	2:23
need cut	2:12 5:18 13:-10
cut again	2:21 126:-8
swap==	2:23 81:-9
fewest==	2:121 81:-9 126:-12
and they	2:9 42:14 46:22 81:-9 89:10 117:8 118:18 122:9 126:-34
they are	33:-16 51:11 71:18 73:10 80:10 82:-15 89:11 112:9 114:18 118:-13 126:58
swap	2:23 81:-9
them about	2:9 81:-9
about so	2:9 81:-9
fewest	2:121 81:-9 126:-12
the fewest	2:26 81:-9
fewest get	2:23 81:-9
get thrown	0:14 2:9 81:-9
@job along	2:10
and use	2:10
groove==s	13:22 18:14 71:10 83:9
lie on	4:21 114:15 126:21
@job so	17:13 34:-13 65:29 74:15 126:-18
groove	13:22 18:14 71:10 83:9
the groove	18:15 71:10
with noth	2:14 3:-8
noth in	13:22 72:15
in them	13:22
them yet	40:20 80:-17
can get	54:11 121:9
plan ,	2:20 5:13 76:17
^ re	2:8 63:-8 64:56 74:-10 96:26
lay $	2:24 17:11
cut anyth	2:12 37:26 39:-9 71:-16 126:18
anyth new	2:12 37:30 126:-22
which i'd	2:12 5:9 30:20 126:-19
rather not	2:12 41:-12 72:12
late in	2:12 99:38
how could	2:9 22:27
be laid	2:36 3:-8 17:10 81:-10
over and	63:16 111:-10
half the	24:-8 34:17 85:10
so what	0:9 4:26 10:17 12:13 13:-11 16:43 17:-16 25:-8 27:11 30:-18 32:31 34:23 111:-10
the best	2:25 3:8 4:25 17:-8 126:-8
)~",
R"~(best way	2:21
way to	2:23 5:40 8:-8 17:-8 32:22 104:16 126:-12
to move	126:8
them along	76:9
calliper==	37:9 42:39 93:-11
if fret	3:40 126:-21
calliper	37:8 42:78 93:-15 126:-8
the calliper	37:9 42:62 93:-13
calliper ,	42:11
redistribut==e	2:14 4:-10
fill==ing	2:10 4:-9 12:-8 112:14 126:31
a minut	2:10 4:-9 10:8 71:9 91:-10
minut ,	2:10 4:-9 10:8 91:-10 126:15
out how	2:10 4:-9 33:34 126:-13
how to	2:16 4:-10 5:46 8:-24 9:-18 36:25
redistribut	2:39 4:-13
redistribut the	2:13 4:-10
, tak	2:10 4:-9 70:15 81:-9
tin as	2:11 4:-9
slot that	2:12 4:-10 28:9
that never	2:12 4:-10
never had	2:11 4:-10 36:10
had #n	2:10 4:-10 73:12 100:-25 114:10 126:36
how would	2:46 3:-12 5:28 16:47 36:9 126:-58
so ther	5:9 50:9 91:13 100:21 114:8
how'd==	5:59 16:25 72:-13 83:-8
em==	0:-8 73:-15 80:10 96:15 123:37
^ them	75:8
how'd	5:59 16:25 72:-13 83:-8
, how'd	5:31 72:-13 83:-8
how'd we	5:17
we slid	2:23 126:-18
em	0:-8 73:-15 80:10 96:15 123:37
' em	0:-8 73:-15 80:10 96:15 123:10
so we	54:19 68:-11 69:20 100:22 113:19 126:-10
the most	1:15 4:27 5:27 25:10 56:8 114:11 126:-16
most $	5:-8 23:-9 126:99
help==s	2:10 112:9
to shuffl	2:10
fret along	2:10
along on	76:14
plac so	2:9 73:-8 76:10 126:-8
only a	28:21 80:-9 98:8
newly==	79:12 96:9
newly	79:12 96:9
that only	22:8
wish==	1:-9 2:10 27:-8 44:-11 50:-20 80:9 99:11 107:-8 111:23 126:92
@job i	2:9 5:-8 72:25 76:24 95:10 114:13 115:-8 126:25
wish	1:-9 2:10 27:-8 44:-11 50:-20 80:9 99:11 107:-8 111:23 126:92
i wish	1:-9 2:10 27:-8 44:-11 107:-8 111:23 126:77
wish to	2:10 111:24 126:-21
to lay	2:8 4:11 17:11
in other	2:11
; which	1:10 2:23 76:-8
which goe	2:23
measur ;	47:-10 81:10
; how	28:12
#n shift	2:35
them the	76:32 104:-9
best $	2:37 17:-8 53:-12 110:-13 126:29
let==s	2:10 126:17
rearrangement==	2:48
minimise==s	2:15
remake==s	2:95 126:-8
rearrangement	2:48
#n which	0:13 2:15 37:-8
minimise	2:15
remake	2:95 126:-8
provid==e	2:23 10:-13 17:14 25:8 33:19 34:24 36:28 84:-8
redistribution==	2:23
consider==ing	2:23 120:10
unfill==ed	2:23 72:11 126:-9
provid	2:23 10:-13 17:14 25:8 33:19 34:24 36:28 84:-8
kindly provid	2:23 17:15
provid the	2:23 10:-13 25:8 33:19 34:24 36:28
redistribution	2:23
, also	2:22 14:8 16:14 32:10
consider	2:23 120:10
unfill	2:23 72:11 126:-9
to keep	39:28 126:-8
down :	93:11
made for	42:-14 43:22
or do	3:8 9:-12 32:28
to bin	3:8 41:9
bin it	3:8 41:9
bad==	23:17 25:20 42:-19 54:11 79:27 91:-23 92:33 93:10 122:9 126:-12
bad	23:17 25:20 42:-19 54:11 79:27 91:-23 92:33 93:10 122:9 126:-12
spac==e	22:27 82:11 91:10 126:-10
see a	91:9
a littl	0:-8 40:18
spac	4:54 22:27 82:10 91:10 126:-11
but just	59:22
edge ,	86:10 126:9
pull it	96:14 126:-13
so will	126:28
calliper==s	42:39 126:-8
anyhow==	88:15
the gap	91:-13 92:51 126:31
anyhow	88:15
anyhow $	88:15
, y'all	3:9 11:24 118:8
y'all think	3:10
she'll be	3:14 111:-12 112:20
right at	3:20 51:-8 52:-18 67:-15 70:60 126:-9
sufficient==	3:10
sufficient	3:10
sufficient ,	3:10
or must	3:16 32:24
must it	3:13
go elsewher	3:13
; is	3:13 28:17
, hav	3:13 44:19
, stay	3:13 25:15 74:8
stay ther	3:17
permit==ted	3:9 59:10
a length	22:-8 42:31 56:17
unfinish ,	3:9 12:31 109:13
: is	3:9 18:18 30:21 126:-18
permit	3:9 59:10
toleranc==e	3:17 56:16
toleranc	3:17 56:16
toleranc $	3:17
confirm==	44:19
confirm	44:16 94:22
whether the	3:17 18:8
quantity==	3:20 5:11 9:45 10:-17 32:-13 42:-10 122:26 123:-9 126:-15
quantity	3:20 5:11 9:45 10:-28 32:-14 33:18 42:-10 122:26 123:-14 126:-15
measur at	3:11 77:10
@job .	3:9 15:8 42:-12 74:-9 85:30 98:18 114:10
. is	0:12 18:14 42:-10 75:-9 126:-16
that good	18:14 42:-10 75:-9
with dress	1:9 3:17 42:-11
do all	4:15 30:9
not know	16:12 28:-13 59:9 88:18 94:15 102:16 125:15 126:-34
far from	4:28
they want	51:-8 117:20
a list	4:27 14:61 36:-8
that goe	4:27 38:28
mark out	4:32
so could	41:14
as i'd	90:12 126:-10
length want	4:14
big==	4:27 5:11 16:-15 27:16 33:11 45:17 51:15 68:-12 100:15
@job rang	38:10 47:-9 48:9
rang and	13:11 38:11 47:-9 120:-15 126:15
to know	2:14 4:-8 8:30 12:11 13:19 16:-11 26:20 28:22 29:21 30:8 36:13 42:10 126:-59
big	4:27 5:11 16:-15 27:16 33:11 45:17 51:15 68:-12 100:15
how big	4:27 33:11
it get	59:-8 98:12 104:-8 126:43
so how	8:11 13:31 16:19 36:15 105:-10
long must	4:23
on his	12:26 66:12
tea==	0:-8 4:13 15:8 28:12 40:18 46:8 108:16
tea	0:-8 4:13 15:8 28:12 40:18 46:8 108:16
the tabl	44:19 88:11
slot lie	4:11
gimm==e	4:8 5:11
rundown==	13:27
ya==	4:8
gimm	4:8 5:11
^ gimm	4:8 5:11
gimm the	4:8 5:11
rundown	13:27
the rundown	13:27
rundown of	4:8
ya	4:8
wher they	46:17 82:-8 126:24
they sit	4:9
sit and	4:9
long has	51:-8 82:13
fret to	56:14
depend==s	4:8 115:25
which length	0:-23 1:-13 4:53 8:21
depend	4:8 115:25
specification==	4:16
pleas send	4:16 11:9 27:10
send me	4:16 27:10
specification	4:16
file $	16:21 78:14 98:30 126:8
dimension==s	0:-16 4:72 50:-10 89:10
dimension	0:-16 4:72 50:-10 89:10
record for	0:-19 4:22 17:12 34:15 50:10 59:10 74:10 89:-9
to saw	5:41
saw from	5:8 101:8
cut up	5:26 6:-16 71:-19 126:25
up and	17:11 26:13 44:23 46:-8 67:-21 85:-14 103:39 120:33
not allow	5:10 24:22
allow to	5:10 24:22
open any	5:20
any new	5:20 24:12 126:-9
@job just	5:10 13:12 49:8
should come	5:14 30:33 42:-30 126:46
what for	5:31 6:-8 8:21 12:9 20:-8
stuff $	5:14 85:13 118:11
bit ,	22:37 39:23 84:12
#c and	5:43 61:23
from them	10:19 33:-15 83:9 118:-8 122:11
them for	4:-14 10:20 71:-9 83:19 126:36
alon ,	5:28
, least	5:29 122:9
into a	87:20 96:-10 126:12
spring that	5:12 48:16 126:-12
when you	91:-13 126:32
you look	34:9
together ,	5:16 65:-8 115:10
that take	28:13
for everybody	5:11 102:8
thriftiest==	5:25
be the	1:13 65:15 94:-14
thriftiest	5:25
the thriftiest	5:25
thriftiest way	5:25
all so	5:10
next to	5:8 15:8 42:-11 59:22 69:-12 93:17 99:8 126:23
to noth	5:9 69:-12 82:18 126:16
outta==	5:13 21:9
outta	5:13 21:9
get job	5:10 65:24
and no	5:10 51:12 60:13 61:-8 74:11 102:17 117:-10
the go	12:22
go with	16:10 18:8
piec is	24:11
divid==ed	4:10 5:74 8:-24 9:-26 71:22 83:-10
smallest==	1:20 7:-16 33:37 56:25 119:-9 120:-17 122:13
divid	4:10 5:74 8:-24 9:-26 71:22 83:-10
divid the	5:61 8:-24 9:-18
smallest	1:20 7:-16 33:37 56:25 119:-9 120:-17 122:13
the smallest	1:20 33:37 119:-9 120:-17 122:13
sent $	5:13 33:-8 123:-11 126:53
separat==e	4:-9 5:25
separat	4:-9 5:25
@job of	2:25 5:21 11:-8 13:-9 28:-8 48:13 55:10 65:17 76:-8 83:19 94:13 126:-23
sourc==e	6:25 33:40 121:14 122:-12 123:19
the material	84:48
@job instrument	11:14 15:22 48:14 65:-18
sourc	6:25 33:40 121:14 122:-12 123:19
with minimum	10:-11 33:22
overall cut	5:18
present $	5:10 14:10
new stock	2:-10 5:17 72:31 126:-9
, kindly	2:-10 5:17 63:9
tin could	2:-10 5:15 22:11 126:16
over on	2:-10 5:17 44:37
consum==e	5:13
divid up	5:13
in order	5:13 103:15 120:-13 126:24
consum	5:13 37:12
as littl	5:20 122:11
paper==	6:25 88:16 90:-11 91:27 98:20 100:25 104:-13 126:-20
ruler==	16:-12 17:18 77:9 90:18 126:-14
paper	6:25 7:13 44:-9 63:-9 64:-13 77:14 78:10 88:16 90:-13 91:27 92:-8 98:19 100:25 104:-13 108:10 126:26
the paper	78:11
paper with	6:20
with wher	6:10
ruler	16:-12 17:18 77:9 90:18 126:-14
the ruler	77:9
sheet==	5:-27 6:110 7:77 12:36 13:-17 14:-10 15:-10 26:-8 27:92 30:-8 44:-9 65:-13 107:-28 108:-9
tell==s	121:-8 122:10
sheet	5:-27 6:110 7:77 12:36 13:-17 14:-10 15:-10 26:-8 27:92 30:-8 44:-9 65:-13 107:-28 108:-9
the sheet	5:-14 6:17 7:16 27:32
sheet that	5:-12 6:18
cut sheet	5:-8 6:74 13:-16 126:-8
sheet $	6:23 7:28 14:-9 27:37 126:-14
the print	7:12 49:14
paper $	63:-8 64:-13 78:11 126:46
so let	22:8 56:13 65:26 126:-13
me have	6:8 7:9 10:17 34:-10 65:56 126:-25
@person alway	63:-8 101:38 126:17
her ,	50:10 61:10 66:10 71:8 81:-9 114:11
give us	6:11 7:17 52:12 126:-10
like a	13:29 30:-9 82:11 95:8 110:-16 112:-13 126:26
a good	52:12 84:12 93:18 111:-10 125:-10 126:26
should $	122:8 126:-12
print==ing	54:14 113:-11
i would	13:17 15:15 19:16 28:10 50:12 56:21 65:-8 86:17 87:-11 102:12 106:12 112:14 126:-64
would like	0:-14 13:16 16:-11 18:10 19:16 28:11 31:23 53:-19 56:21 106:21 110:-37 126:20
of cut	5:8 6:33
cut with	5:10 6:10
mark $	5:-11 6:15
requir==e	14:16 28:9 32:8
)~",
R"~(requir	14:16 28:9 32:8
i requir	14:16 32:8
, sourc	6:11
sourc by	6:13
by sourc	6:13
printabl==e	6:14
printabl	6:14
a printabl	6:14
box==es	7:58 22:-10 121:9
tag==s	7:76 20:-9
compartment==s	7:25
tag	7:76 13:14 20:-9 37:-10 38:40
name tag	7:25
tag for	7:45 20:-8
compartment	7:25
the compartment	7:15
paper==s	7:14 64:-16 77:9 78:11 108:11 126:46
the shall	7:14 57:9
that say	5:-11 6:11 7:14 52:9
box ,	7:14 21:9 60:-22 99:13 126:31
box for	7:22
yellow==	7:15
yellow	7:15
harm==	16:14 36:14 42:10 44:-10 45:9 87:-21 111:8 126:40
harm	16:14 36:14 42:10 44:-10 45:9 87:-21 111:8 126:40
harm ,	111:8
label with	7:13
millimetre to	7:10
@wire bin	7:16 20:15
#n mil	42:28
lie ,	63:32 76:9 126:-13
general==	38:11 53:25 54:-8 66:29 126:-11
general	38:11 53:25 54:-8 66:29 126:-11
set of	2:10 105:13
produc==e	7:11
? i	13:-10 20:24 95:-9 126:40
label sheet	7:42
per bin	7:11
left and	32:9 64:9
left ,	8:9 40:11 51:-15 63:-11 64:12 67:35 120:10 126:-9
many $	8:12 26:20
ring==s	8:9 11:-10 58:10 109:19
look befor	8:9 56:10
the phon	9:-9 10:22 18:-8 29:17 48:13 49:37 53:10 58:-9 109:30 110:-12 112:13 114:20 122:10 126:-9
phon ring	8:8 33:15 58:-9 109:19
sinc i	27:10 65:26 108:-9
not see	8:21 66:17 126:14
rack from	8:14
both $	30:20 51:13 82:26 91:20 92:-13 117:-8
hand are	8:8 65:16
of glue	36:12 64:8 97:15
so tell	9:9 25:16 30:13 104:11 126:-18
@wire ther	8:36 19:9
been at	44:28 108:-11
it look	3:-10 17:10
look thin	16:20 126:-9
thin to	16:20 126:-9
we fix	8:44 9:-19 26:-8 33:-8 103:9
we in	8:13
plac at	8:8 14:30 106:10
what'v==e	0:34 8:22 24:40 29:-8 30:38 32:-8 78:-8 84:-14 85:-9 126:-10
what'v	0:34 8:22 24:40 29:-8 30:38 32:-8 78:-8 84:-14 85:-9 126:-10
^ what'v	0:15 8:20 24:40 30:38 32:-8 84:-14 85:-9 126:-9
what'v we	0:18 8:23 24:40 78:-8 84:-14 85:-9
way of	5:12 8:38 32:-11
mate $	7:15 8:18 17:18 19:17 24:16 29:9 30:-11 31:18 32:14 36:16 48:-10 70:16 106:9 111:22 126:-30
^ y'all	8:9 27:9 38:10 112:16 120:9
got any	8:34
possess==	8:10 9:-8 100:13
possess	8:10 9:-8 100:13
we possess	8:10 9:-8 100:13
stor==e	8:23
lie at	8:23 76:14
stor	8:23
, of	8:23 43:-8 93:13
every kind	8:22 9:8 126:-9
kind $	8:22 9:8 14:20 126:-13
rod==s	8:11 9:-8 82:-8 117:14
rod and	8:12 9:-8 95:10
are exist	8:12 9:-8
current==	8:20 12:-10 13:12 14:10 20:23 126:-12
inventory==	8:139 19:-10 51:-12 54:12 67:61 126:-13
figure==s	4:17 8:16 25:16
pleas give	8:20 65:12 84:-16 85:20 107:11 126:-15
current	8:20 12:-10 13:12 14:10 20:23 126:-12
the current	8:20 13:12 20:23 126:-11
inventory	8:139 19:-10 51:-12 54:12 67:61 126:-13
figure	4:17 8:16 25:16
figure for	4:17 8:16 25:16
what quantity	9:46 10:-16 32:-11 126:-10
quantity of	9:46 10:-16 32:-11 126:-10
insuranc==e	8:17
content==s	8:17
insuranc	8:17
content	8:17
@wire going	9:10 40:10
last us	9:14
soon ,	9:9 11:19
for how	8:-13 9:21 10:18 19:32 20:-9 28:-13 102:18
enough of	109:14 126:-9
all gone	7:12 8:56 9:-14 30:-9
gone and	9:10 30:-9 43:12
to get	9:33 30:23 99:18 100:17 114:10 126:-15
last==s	9:24 28:11 99:9 105:16
supply ,	9:27 51:16
caught==	23:26
caught	23:26
last want	126:12
i ring	10:21 33:13
ferro anyway	10:20
such==	12:19 36:10 126:10
such	12:19 36:10 126:10
run on	55:18 112:-8
so when	9:16 29:21 126:-15
you say	8:20 9:12 27:11 126:-14
you reckon	9:19
reckon $	9:19 42:28
get==ting	8:-8 13:32 49:11 52:10 100:35 108:21 111:8 117:13 126:-36
@wire see	9:22
see us	9:22
us through	9:22
through ,	107:15 112:17 113:-10 115:13
be get	33:8
the wee	3:-14 13:18 15:9 24:17 38:-9 42:21 68:9 95:8
us ,	9:10 12:10 19:8 30:8 32:-9 53:16 59:12 63:15 76:10 110:-10 121:23 126:-13
suffice==s	9:17
suffice	9:17
refretting==s	9:8
refretting	9:8
still wire	9:8 126:15
sort ,	9:8 11:11
must #n	9:8 33:26 122:-13
coverag==e	9:15
express==ed	9:15
coverag	9:15
express	9:15
in refret	9:25
reorder==ed	2:19 9:10 52:23 126:10
by which	9:43 25:11 30:-8 34:12 110:11
in what	9:10 12:8 33:22
be reorder	9:10
and from	10:24
which shop	33:17
order==ing	9:25 10:91 11:-9 32:-15
day and	14:12 29:-10 63:18 110:-16 112:-9 126:51
you writ	10:15 37:10
writ me	10:15
' worth	8:-11 9:13 10:10 51:-18 68:18
already ,	11:15
order and	9:9 10:9 121:10
as i	0:-12 3:-8 13:11 22:10 38:11 84:8 103:10 112:9 118:11 126:-14
am away	108:12 111:9
for most	82:-11 126:11
gonna==	84:11 112:16 120:9 126:-9
all we	85:8
gonna	84:11 112:16 120:9 126:-9
like $	7:26 14:28 74:8 84:24 99:13 126:-19
it together	100:23 112:-12
the thing	52:9 58:21 85:12 88:17 125:29 126:-29
like ,	75:10 98:12 126:-14
issu==e	10:8
purchas==e	10:59 32:9
total==s	10:8
price==s	10:41 14:-9 19:30
issu	10:8
purchas	10:59 32:9
the purchas	10:27
purchas list	10:46
with supplier	10:8 19:13
at last	10:8 18:-8 37:19 44:11 81:9 94:-8 95:19 108:14 118:26 126:-12
price	10:41 14:-9 19:30
last price	10:24
price $	10:41
csv==	10:24
account==s	10:10 20:10
list as	10:24 44:8
csv	10:24
as csv	10:17
account	10:8 20:94 39:22 41:25 60:12 63:21 76:-8 122:-8 123:19 126:-45
the account	10:10 20:8 123:19
account $	10:10 39:30 126:-31
they were	42:12 45:-11 46:15 82:11 98:12
which guitar	11:9 12:19 30:-10
guitar and	11:9 12:19 30:-10
mean what	11:11
due then	11:8 48:9
man==	11:14 29:17 30:-14 31:12 54:8 78:13 122:12 123:-10
man	11:14 29:17 30:-14 31:12 54:8 78:13 122:12 123:-10
the man	11:14 29:17 30:-14 31:12
recheck tomorrow	11:58 30:-9 116:11
know if	88:18 126:-14
home ,	17:14 44:11 49:15
dentist==	44:9 65:15 111:48
be at	26:-11 29:-8 30:23 62:-10 104:26 112:33 126:-20
dentist	44:9 65:15 111:48
the dentist	44:9 65:15 111:34
dentist on	111:16
customer==s	10:-20 11:9 12:47 54:9 109:14
to customer	11:10
sister==	11:10 50:22 59:8 111:10
patient==	11:11 65:13
sister	11:10 50:22 59:8 111:10
line and	11:11
and she	11:11 43:9 44:22 59:27 64:21 70:-8 89:9 108:-9 110:-10
patient	11:11 65:13
is get	32:9 49:12 52:10 111:8
morrow==	11:11 29:27
anyth at	9:-10 10:27 11:9 21:9
all due	11:14 114:10
morrow	11:11 29:27
the morrow	11:11 29:27
ye know	4:14 11:13 26:21
fall==ing	11:22
behind that	11:24
been done	11:20 13:56 34:13
by now	11:20 17:22 126:37
y'all $	11:24 118:8
, say	5:12 92:8 114:13 116:15
become==s	30:23 56:34 59:39
become	30:23 56:34 59:39
stand on	11:23 30:-21 54:14 113:-11
summary==	11:9 13:76
summary	11:9 13:76
summary of	11:9 13:76
date promis	11:8
promis to	1:-20 12:-9 24:66 114:10 126:-16
item==s	11:34 82:17
kindly report	11:34 21:10
instrument $	11:15
and such	12:19 36:10
wait to	10:14 11:-15 12:67 30:-11 126:-9
job that	12:23
look after	8:-19 15:38 22:31 46:11 65:14
kettl==e	7:8 30:13 71:20 118:-8 120:-10 126:69
tru to	36:16 105:-10
kettl	7:8 30:13 71:20 118:-8 120:-10 126:69
the kettl	7:8 30:13 71:20 118:-8 120:-10 126:69
kettl coil	7:9
notic==e	34:9 38:12 43:-8 62:8 93:13 112:20
holiday==s	55:9 111:27
notic	34:9 38:12 43:-8 62:8 93:13 112:20
the holiday	54:-15 55:9 113:27
holiday ,	54:9 55:10
book at	27:18 126:-9
poor==	53:-11 110:26 122:8 123:8 126:-12
to her	60:12 65:25
her name	59:27 63:14 110:-10
name ,	14:18 86:9 99:-13 100:50 104:-14
poor	53:-11 110:26 122:8 123:8 126:-12
open at	53:25 54:12 55:-9 126:-9
bench by	12:11
window $	12:31 36:-8
that are	8:16 12:13 26:53 32:11 51:8 82:8 83:9
not yet	126:11
are they	12:11 14:-14 26:13 32:-10 33:38
they ,	12:15
the colleagu	12:9
colleagu @person	12:9
pleas provid	10:-13 25:8 33:19 34:25 36:28
from customer	10:-15 12:49
customer ,	12:10 47:10
, earliest	12:24 31:28 59:-9
ms==	15:16 30:31 34:10
assign to	12:12 13:-10 15:17 126:-10
ms	15:16 30:31 34:10
ms @person	30:31 34:11
have noth	13:22 29:-11 30:21
them on	13:22 96:9
status $	13:80 26:61 63:8 102:-14 126:-8
certain==	13:14
and will	9:-9 13:14 63:32 78:11 126:8
certain	13:14
ask ,	13:13 30:8 41:12 126:-14
doe his	13:14 32:9
his #n	0:-12 13:28 18:12 31:10 126:-9
hear==	16:19 26:16 27:10 41:8 51:11 99:18 115:-8 126:25
hear	16:19 26:16 27:10 41:8 51:11 99:18 115:-8 126:25
to hear	115:-8 126:10
hear how	16:19 126:-9
fill==	0:11 2:34 13:29 126:-8
, fill	13:12
fill me	12:-8 13:30 112:14 126:30
me in	13:30 23:41 36:-34 106:8 112:13 126:35
done and	15:9 34:11 44:14
still lack	0:9 13:23
@job com	13:18
com along	13:34
wee @job	13:10 15:9 24:14 27:18 38:-8 95:8
how it	13:16 16:-9 125:14
)~",
R"~(report on	34:19
progress on	13:67
summaris==e	2:-19 13:33 17:54
outstand==ing	2:-19 8:-44 9:-12 13:63 17:11 32:95 126:-20
summaris	2:-19 13:33 17:54
: work	2:-18 13:35 109:12
outstand	2:-19 8:-44 9:-12 13:63 17:11 32:95 126:-20
that work	31:17
call and	14:34 17:-14 49:11 103:8
boss==	46:9 53:28 113:-21
boss	46:9 53:28 113:-21
the boss	46:9 53:28 113:-21
else is	9:11 74:9
name==s	14:112
name $	12:43 14:21 26:-11 27:17 30:-27 63:13 110:-10 122:12 123:-11
is who	14:47 15:-21 29:-8
who ,	10:11
, retir	50:9 63:13 64:11
retir too	64:11
fix==ing	14:12 108:11
i've only	14:12 125:16
here #n	14:12 110:9 112:-8
i keep	14:24
so who	14:16 15:27
work in	8:-13 14:52 29:-13 54:17
this shop	14:30 29:-14 63:30 64:-15 101:48
card==s	7:8 14:11 82:-8
the christma	10:10
the retir	14:23 64:17
retir one	14:43
workshop==	14:40 23:17 26:12 33:-8 36:-16 54:20 62:-9 64:16 99:37 100:25 104:-15
me who	14:46 15:28 27:27 33:13 34:-9
workshop	14:40 23:17 26:12 33:-8 36:-16 54:20 62:-9 64:16 99:37 100:25 104:-15
the workshop	14:19 26:14 54:21 63:8
workshop $	14:40 23:18 36:-16 63:-10 64:22 100:30 104:-13
who'v==e	8:-14 14:36 32:17
who'v	8:-14 14:36 32:17
^ who'v	8:-13 14:31 32:18
who'v we	8:-13 14:31 32:18
all work	14:12
each got	14:10 67:-10 117:15
occupi==ed	26:41 126:-10
which person	13:-17 15:24 34:11
occupi	26:41 126:-10
this workshop	14:26 23:18 36:-14 99:38
workshop ,	26:14 63:8
with which	16:10
hous==e	8:49 10:-8 12:12 66:15 110:-16 112:-13 121:18 126:31
hous	8:49 10:-8 12:12 66:15 110:-16 112:-13 121:18 126:31
the hous	8:51 10:-8 121:18
also thos	0:8 14:8 32:10
thos who	14:8
pension	38:10 64:12
they $	14:-11 24:21 32:35 33:36 117:-19 126:-24
personnel==	14:62 126:-12
role==s	14:47
personnel	14:62 126:-12
the personnel	14:62 126:-12
and bench	14:33
show==ing	12:-9 14:11 69:8
of open	12:-8 14:10 105:13
employee==s	14:16 63:9
employee	14:16 63:9
includ retir	14:19
fat==	50:9 125:9
fat	50:9 125:9
unless==	15:15 37:-12 41:-10 65:-8 126:29
unless	15:15 37:-12 41:-10 65:-8 126:29
somebody has	15:15 65:-8 102:8
it already	15:15 65:-8 108:10
already :	15:15 53:12 55:-8 65:-8
phone==s	15:10
when @job	15:10
phone	15:10
he will	15:10 63:14 126:-8
will ,	15:10 45:13 117:14 118:10
, whom	9:-8 10:21 15:10
put him	15:10 59:10 106:9 126:-8
through to	15:10
for his	15:10 24:8 27:12 106:8
look==ing	8:26 9:-24 10:36 11:-16 15:12 22:28 37:12 62:16 116:14 125:10 126:-12
got @job	15:22
do y'all	9:-11 28:23
whos hand	15:32 30:11
lie $	4:14 15:16 126:-8
himself==	24:-11 84:10 85:11
himself	24:-11 84:10 85:11
on which	7:19 26:32 29:13 30:-27
responsibl==e	12:63 15:40 24:-25 30:-10 36:-12 65:45
responsibl	12:63 15:40 24:-25 30:-10 36:-12 65:45
is responsibl	15:42 24:-14
responsibl for	12:63 15:40 24:-25 30:-10 36:-12 65:25
member==	15:22 61:8 63:24 64:-11
handle==s	13:-22 15:47
member	14:29 15:22 63:23 64:-13
member of	15:22 61:8 63:13 64:-9
of staff	14:-11 15:22 26:-9 30:19 61:8
handle	13:-22 15:47
handle @job	13:-22 15:47
metal==	16:19 17:-9 23:17 76:-10 82:13 90:20 121:35 123:-13
sleeve==s	16:11 23:24
rock==ed	16:11 37:-10 46:26 70:11 90:-20 98:16
cradl and	16:21 88:34 126:-17
and my	16:9 45:9 51:18 68:-9 69:-10 89:8 95:10 111:11
sleeve	16:11 23:24
my sleeve	16:11 23:8
although==	3:23 30:15 91:-12
although	3:23 30:15 91:-12
^ although	30:15
long #n	87:20 126:-12
is already	0:12 27:18
already on	2:24
ram ,	46:21
, becaus	19:10 92:9 126:-8
group==s	16:21
insid==e	10:43 11:-8 16:17
befor @person	5:10 26:26 84:10
press off	101:8 102:16
me see	4:16 8:12 14:39 27:18 34:38 65:-9 71:-11 126:-13
see all	16:11
even the	41:16 46:9 111:11 126:-16
that lie	16:12
insid	10:43 11:-8 16:17
lie insid	16:12
befor $	44:21 52:11 115:8 116:10
wrot==e	48:12 70:20
nobody ever	82:9 89:10 126:-16
wrot	48:12 70:20
what its	42:-10 43:19
it #d	3:-11 18:8 42:13 50:-9 52:-10 56:14 67:8 70:29 77:9
want on	16:13 48:12
^ how'd	5:11 16:26
the very	16:10 94:19
it once	16:29 87:11 126:-9
more press	16:29
pleas stat	29:10
position and	4:26
the full	16:21 17:29 20:9 34:23 126:-9
n==	16:9 45:9 56:26 86:22
n	16:9 45:9 56:26 86:22
#c n	16:10 45:9 86:22
instruction==s	12:-9 16:12 36:102 45:-9
instruction	12:-9 16:12 36:102 45:-9
the instruction	36:27
instruction for	16:12 36:27 45:-9
appli==ed	97:11
appli	97:11
the steel	16:-12 17:20 65:12 126:-13
say @job	5:12 74:9
is wrong	67:-11 70:18 105:11
wrong with	92:13
the side	24:16
too high	17:16 70:15 98:13
^ high	17:18 98:12
^ reading	17:14
reading tabl	17:30
i've been	12:8 36:16 44:25 46:23 65:10 75:13 105:-10 108:-13
for half	106:11
call @person	60:8 62:48 63:-13
@person over	29:10
and look	10:36 11:-13 46:-9 92:16
the light	3:11 17:26
going ,	17:9 20:23
odd==	1:19 3:-10 17:10 18:-10 90:10 126:8
it up	3:-12 5:14 30:-12 38:8 39:22 44:12 92:25 99:9 100:22 105:-24
odd	1:18 3:-10 17:10 18:-10 46:-8 80:12 90:10 126:28
look odd	3:-10 17:10 126:8
so is	13:-15 15:-11 18:11 24:15 26:16 114:68
i fix	17:9 119:13
fix to	17:9
say the	4:-9 48:22 49:9 74:13 75:30 119:20 122:12 126:-23
name the	15:61 17:8 66:-17
, stand	17:19 93:11
stand it	17:17 98:14 126:-9
it wrong	17:19
this to	17:19 69:9
as next	17:10 30:19
next ,	17:20 30:33
laid on	17:10
finding==s	17:57
finding	17:57
with thos	17:16 96:8
outstand $	8:-43 9:-9 17:16 32:70
sign==ed	27:25 51:13 95:20 117:-11 118:46 120:-10
sign	17:14 27:24 29:15 32:-9 51:13 53:10 54:12 55:-9 59:11 95:20 102:11 117:-11 118:58 120:-10 126:-15
sign off	17:15
off as	118:18 120:-8
as level	17:10 46:20 98:11
@job or	2:26 3:-8 18:23 126:-9
or will	18:12 126:-8
properly==	18:10
properly	18:10
#n deep	18:25
i hammer	18:10 78:18
so doe	18:13
follow==ed	18:11
curv==e	18:43 92:41 98:10 126:-22
the curv	18:20
curv of	18:20 92:18
time ,	9:-8 11:42 19:10 21:14 28:37 29:12 36:11 42:-10 44:-10 62:-11 66:13 79:23 102:-8 106:11 111:-10 126:8
deep in	18:11
middl ,	50:8 75:12 90:9
#n suit	1:10 18:12
just had	8:23 39:11 122:10 126:-14
had the	15:-10 24:15 42:10 45:14 51:10 55:-8 65:14 66:22 102:-14 106:-19 109:-12 120:12 126:56
millimetr wide	18:44 75:-11
brass'll==	18:50
^ reckon	18:49 61:9 65:13 105:23 115:11 126:-21
brass'll	18:50
sit right	91:17
@job wee	13:-8 27:19
them slot	18:9 109:10
appropriat==e	3:-9 18:17
depth of	3:-24 18:37 75:9 89:24 126:-10
appropriat	3:-9 18:17
verify==	18:10
compatibl==e	18:10
verify	18:10
compatibl	18:10
that wire	36:15 120:10
for its	18:14 46:8
suitability==	18:40 75:-8
suitability	18:40 75:-8
suitability of	18:40 75:-8
get wire	33:-19 121:9 123:20
come and	108:16 126:-14
lot ,	19:39 25:10 33:16 39:9 51:22 81:9 118:14 126:-18
delivery ,	19:29 20:12 32:20 33:-15 74:18
wonder==ing	3:14 19:10 74:-10 126:8
batch==	19:41 51:11 74:58 106:9 110:-9 112:12 116:14 126:-14
wonder	3:14 19:10 25:8 32:22 63:25 74:-10 126:11
wonder ,	19:10 25:8 63:25 74:-10 126:12
batch	8:-46 9:-8 19:134 51:9 74:58 106:9 110:-9 112:12 116:14 126:-22
ther were	19:10 83:10 126:8
how high	8:-8 19:40 118:-12
hand on	19:9 48:24 65:10
each time	19:36 118:-12 122:9
time it	19:9 100:11
was deliver	19:9 51:16 68:-15
i never	33:8 36:10 77:-17 95:-9 126:38
slip ,	125:8
@wire we'v	67:8 68:11 69:-8
get that	19:22 36:10
from and	1:-17 19:15 34:40
much ,	19:16 25:9
been ,	51:17 67:-12
high were	19:18 118:-12
were the	19:15 118:-12 126:12
crown at	104:19
every lot	19:11
see them	2:-14 4:34 19:10 32:15 126:-8
good==s	19:13 51:10
pleas list	14:-8 19:12 24:34
good receiv	19:13
supplier and	19:25
and pric	19:25
pric $	19:49
delivery history	19:36
paid $	19:10 49:10 84:-8
audit==	4:-9 6:-9 34:67
audit	4:-9 6:-9 34:67
the audit	4:-9 6:-9 34:67
: from	76:12
was @wire	19:29 32:-10
purchas ,	10:13
and at	5:-13 6:10 10:17 16:51 19:11 45:-12 77:21
what pric	10:13 19:11
up what	20:17
last month	8:31 9:-30 19:-15 20:48 21:39
use and	5:-8 20:33
this whol	5:-8 20:28
whol year	5:-8 20:33
answer==	13:25 36:16 57:-19 123:8
@person ask	4:22 9:12 11:18 12:-12 13:24 14:21 16:47 41:9 44:10 45:-13 65:-11 110:-16 111:-21 126:-23
ask me	9:12 11:-8 18:9 41:9 44:14 45:8 48:-8 65:-8 126:15
answer	13:25 36:16 57:-19 123:8
whil i	41:10 44:15 90:-19 126:35
glue ,	9:12 97:16 126:-10
of october	20:9 21:10
than we	56:12
think ,	70:15 105:14
)~",
R"~(this year	20:18 21:33
year balanc	20:11
@wire gone	8:-14 20:42
gone this	20:10 111:9
month ,	20:12 21:14 22:8 27:12
out==s	7:-12 20:45
bin and	7:-12 20:45
of last	96:14
year ,	8:-10 54:13 126:28
retain==ed	38:12
the month	10:10 20:28
october ,	21:10
wher has	8:-13 20:31
retain	38:12
coming==s	20:28
going==s	20:28
that went	34:11 107:12
last ,	18:-8 44:13 108:15 125:9
coming	20:28
coming and	20:28
and going	20:27 103:18
produc the	7:10
reconciliation==	20:27 126:-10
reconciliation	20:27 126:-10
current year	20:26 126:-11
december #c	20:11
account==	20:84 39:22 41:25 60:12 63:21 76:-8 122:-8 123:19 126:-44
wire account	20:48 76:-8
person #n	20:10 59:-25 60:55 61:-37 62:81 63:66 100:-10 126:-13
#n october	20:38 21:15
all thos	21:12 66:22 126:-11
not we	5:12
sav on	21:18
the leftover	0:13 21:26
leftover $	0:9 21:18
sav ,	21:40 41:13 82:9
and saving	20:-15 21:22
saving ,	21:8
brother==	99:8
law==	99:10
brother	99:8 121:22
my brother	99:10
brother -	99:10
- in	99:10
in -	99:10
law	99:10
- law	99:10
wast of	22:27
of time	27:11
sinc we	20:31 104:18
we began	20:14 21:8
nearly over	10:12
much we	21:9
tin sinc	21:10
the year	8:-10 126:30
save in	21:12
altogether in	26:-12 101:20
attributabl==e	92:9
the saving	21:51
attributabl	92:9
attributabl to	92:9
in money	21:12
annul==	0:11 1:-10 32:-8 54:12 118:-13 120:61 125:40 126:-8
annul	0:11 1:-10 32:-8 54:12 118:-13 120:61 125:40 126:-8
the annul	54:13
report ,	34:-8 105:20
ther stuff	22:10
stuff in	22:10
nobody will	41:15 94:17 126:-16
is been	0:-9 8:-26 9:-14 13:27 19:-9 22:12 24:26 26:-11 34:87 49:20 84:-20 85:38 100:15 101:13 105:8 126:-9
been lying	1:9 22:21
lying in	8:15 22:-8 76:9
and nobody	41:12 55:-8 70:16 118:9
touch it	102:12 126:-8
junk==	8:-42 22:70 82:18
junk	8:-42 22:70 82:18
junk ,	22:18 82:18
out what	5:10 22:11 125:9
it will	65:9 90:10
van==	0:-8 10:25 22:10 51:31 65:-8 115:10 118:-10 122:10 126:-15
van	0:-8 10:25 22:10 51:31 65:-8 115:10 118:-10 122:10 126:-15
the van	0:-8 10:26 22:10 51:24 118:-14
come ,	0:-8 8:-15 22:9 32:22 67:-15 118:42
of ,	0:-8 22:9 123:18
or too	0:-8 3:13 22:10 43:-13
not touch	72:12 102:12 126:-17
lie ther	3:-8 22:15 42:19
what lie	8:19
time in	116:9
same length	4:-14 22:15 83:26
dead stock	8:-40 22:68
in our	61:10
becaus they'r	24:25 82:10 120:10
for somebody	24:61
somebody $	24:42
for anyon	24:14 39:11
anyon $	13:-20 15:55 24:12 29:-11 31:-9 54:-12 126:31
is put	13:-9 24:30 85:11
put away	13:-8 24:20 40:13
, whos	15:63 24:22
grab==	24:18 106:28 126:-12
i grab	24:18 106:9 126:-10
grab the	27:20 106:22 126:-11
the wrong	60:-9 61:25 92:44 125:13 126:11
being held	24:19
finger==s	1:10 24:16 95:10 101:38 125:9 126:-15
finger	1:9 22:14 23:53 24:15 27:-8 86:24 95:9 101:37 125:8 126:-20
my finger	1:9 23:54 24:16 95:10 126:-9
as @job	24:10 37:-10 38:35
off till	24:11 113:12
till spring	24:10 113:12
spring ,	24:10 82:14 111:17 114:14 126:-16
if ther	74:-11 126:26
been set	24:12
for someon	24:19
is spoken	8:-12 22:-20 24:47 37:-10 38:29
laid by	24:60 85:18 126:-9
whom is	15:33 24:20 27:10
which @wire	9:20 22:31 24:18
held back	115:16
somebody ,	24:18 41:11
it me	24:16 27:11
me pleas	24:15 59:27 108:11 125:39
forc==e	24:36
all reservation	24:35 85:29
forc	24:36
material==s	24:38 84:11
earmark==ed	8:-25 22:-8 24:108
earmark	5:-20 8:-25 13:-11 22:-8 24:108 37:-20 38:56 44:-13 84:63
reserv ,	24:38 85:-10 126:-8
up often	25:9
you have	10:-15 25:16 28:34 34:17 36:-8 48:22 91:-10 104:18 122:19
to push	25:16
jump==s	25:23
jump	25:23
jump back	25:23
remember==	34:29 60:17 126:-11
remember	34:29 60:17 126:-11
not remember	34:16 126:-9
wrot it	42:12 70:16
i set	24:27 36:14 38:10 60:10 84:-16 101:16 126:-20
next lot	16:22
behind us	44:19
though==	9:-14 26:55 65:-9 109:16 112:15 126:-13
imagin==ing	26:22 102:-9 126:-12
rain	22:9 44:12 78:12 82:8 116:-11 118:12
it rain	116:-11 126:11
think it	8:10
though	9:-14 26:55 65:-9 109:16 112:15 126:-13
though i	112:15 126:-13
imagin	5:-13 26:21 32:10 59:-9 100:-11 102:-10 105:-13 126:109
imagin it	26:22 102:-9 126:-12
on us	30:10 102:24
them @wire	40:-9 73:11
#n sprung	25:16 46:10
sprung back	25:21 46:10 126:18
frequently==	25:11
frequently	25:11
how frequently	25:11
frequently do	25:11
arrang	116:15
onward==	25:12
remain==s	8:34 13:42 19:-17 25:9 30:-10 34:-12 63:-14 64:50 109:10
onward	25:12
remain the	25:11 63:-14 64:50
wire down	25:12
happen==	34:-10 36:42 49:33 66:-9 126:10
happen ,	34:19 49:12 102:-10 107:18 126:-12
record==ed	34:17 39:-9 70:28 100:11
record as	100:11
press load	16:11
statistic==s	25:19
seat ,	12:11 28:13 64:15 105:10 126:-13
to our	63:-10 64:22 121:16
statistic	25:19
statistic $	25:19
this plac	14:16 26:15
sand==ing	26:14 100:19 102:15 103:26 104:19 107:11 126:-16
the sand	26:14 100:20 102:10 104:19
thing work	26:16 36:14
today or	26:32 126:-8
press just	45:13
grind==ing	23:9 26:14 37:30 126:-21
grind	12:14 23:30 26:9 37:30 41:9 99:31 100:-8 101:11 104:13 126:-37
that should	26:16 98:17 125:18 126:-13
if nobody	37:12 38:-11 126:14
nobody at	26:9
right now	8:34 12:27 22:-15 26:19 30:-14 108:-8 109:9
visitor==s	26:19 29:9
i show	26:10
visitor	26:19 29:9 51:-9 70:12
round ,	26:10 29:9
machine we	26:10 101:15 126:-11
have and	26:10 89:11 126:-8
press going	103:39
them sander	26:8 103:8
sander we	26:13 99:14 107:9 126:-8
on them	26:29 40:20 53:11 54:-10 80:-17 109:10
the now	68:9
function==	1:-9 26:14 33:-8 36:22
they and	26:14
and do	26:14
they all	26:15 46:23 126:-22
function	1:-9 26:14 33:-10 36:57
function $	1:-9 26:14 33:-10 36:57
somebody at	23:-10 26:29 31:10 126:-12
machinery==	26:39
an overview	12:18 14:-8 26:46 32:9
overview of	12:38 14:-16 26:44 32:8
machinery	26:39
and its	24:-8 26:24 51:16 68:-15 76:9 84:11 89:23
operational==	26:27 103:15 126:-11
operational	26:27 103:15 126:-11
put their	14:-8 27:34
their name	14:-8 27:34
name down	27:10
any machin	27:38
booking ,	27:11 107:9
mine ,	12:15 27:8 50:19 65:-9 66:29 80:-8 101:13 109:-11
for noth	52:12 78:38 94:-10 115:12 126:11
noth ,	69:10 70:-8 107:-18 126:33
press this	27:15 45:11 56:10
lovely==	27:10 37:22 62:11 69:10 75:11 110:-10 118:11
lovely	27:10 37:22 62:11 69:10 75:11 110:-10 118:11
lovely to	27:10 126:10
to forget	27:10
forget ,	27:10 45:13 121:9
i told	3:-11 27:12 34:10 38:11 125:10 126:11
told @job	27:13 48:43
be sand	27:13
sand by	27:13 103:16 126:-14
if somebody	28:12
snatch	106:10
the later	49:10
mix==	27:10
as ther	27:10
ther was	0:-10 27:10 40:8 72:13 73:8 92:21 126:-8
was that	27:10 34:12
mix	27:10
up last	20:18 27:10
@day com	17:-8 27:18 90:24
com ,	27:18 120:25 126:-20
you know	7:-8 27:18 33:18 37:10 41:-9 44:13 65:11 82:23 103:9
machine for	27:10
book ,	10:-14 12:70 20:-9 21:9 26:23 27:11 33:11 50:8 70:34 107:-10 118:-14 120:-20 126:-26
exist==	27:16 64:20 82:18 87:8 101:9 122:12 123:-10 126:11
exist $	27:17
see $	86:-13 126:16
what time	29:72 30:-24
machin reservation	27:12
reservation for	24:-11 27:68 74:-13 85:21
my name	12:42 26:-11 27:24 30:-26 106:17
press and	59:-8 99:16 100:-9 106:-13 126:52
for what	27:12
calendar==	27:15
calendar	27:15
equipment $	26:17 27:15
to hammer	28:10
few slot	28:21 126:-9
slot done	13:-10 28:12 44:26 126:-10
completely==	10:-14 28:31 78:39
completely	10:-14 28:31 78:39
stage ,	28:47
crown time	28:39
^ refret	8:-14 9:38 31:27
i've never	36:10
refret go	28:13
can tell	109:15
tell @job	48:10
were to	1:10
long would	4:14 5:-17 28:22
be tak	5:-16 28:24
involv==e	28:21 31:-8
involv	28:21 31:-8
involv ,	28:21 31:-8
, step	28:12
step by	28:15
by step	28:15
futur==e	9:-11 28:21 52:-17 67:-8 70:40 100:19 105:15
futur	9:-11 28:21 52:-17 67:-8 70:40 100:19 105:15
for bend	9:-11 28:33 62:-11 99:20 104:-26 105:9 106:-8 126:57
partial==	31:10 118:10
partial	31:10 118:10
a partial	28:8 118:10
new fingerboard	28:11
each stag	13:-8 28:42
duration==	28:44 105:30
round==ing	8:-13 25:14 28:23 104:25 105:24
duration	28:53 105:30
duration of	28:44 105:30
of round	28:26 105:18
round the	28:22 88:10 104:20 105:24 108:13 126:-9
corner $	28:27 126:31
partial refret	31:9
bas==ed	28:14 53:9 54:-19 55:-8 126:55
what number	28:11 93:11
report is	28:15
)~",
R"~(bas	28:14 53:9 54:-19 55:-8 126:55
expect==ed	8:-20 9:49 19:-34 28:8 32:60
duration==s	28:9
with expect	28:9
beside me	29:19
hour this	29:34 53:-9 112:14
cake==	64:31 109:17 110:-10 126:14
to drop	29:8
cake	64:31 109:17 110:-10 126:14
cake ,	109:17
if @person	29:11 30:-11 31:64 34:-13 111:-9 126:13
not in	1:10 29:10 56:22 110:-11 111:48 112:20 114:18 119:11 122:-8 126:-59
in i	29:14 90:24 126:-8
wait with	6:18 29:14 126:-10
she work	29:13 59:22 63:-13 64:12 111:-17 112:28 126:-10
mean @person	29:14 60:9 126:-8
agre==e	29:11
i agre	29:11 52:9 106:13
agre to	29:10
the plumb	29:11
fetch==	13:8 29:10 44:22 48:8 109:-14 126:32
children==	29:11
i've to	14:-8 29:10 33:19
fetch	29:10 44:21 49:19 102:11 109:-15 112:9 126:29
to fetch	29:10 44:15 109:-14 126:33
fetch the	29:10 109:-14 112:10 126:31
children	29:11
am work	29:8 112:20
time doe	28:23 29:45 30:-8 126:-11
@person knock	29:14 100:23 110:-8 111:-13
on and	29:13 88:8
and knock	29:15 96:33
knock off	29:12 44:-8 58:10 109:40 111:-21 112:28 126:-9
ther anybody	14:-17 29:37
which hour	27:11 29:30 55:-8
duty==	29:12
me know	29:37 111:-8
duty	29:12
ask when	29:8 31:9
when we	9:-20 29:-9 30:-13 31:8 33:40 126:12
payroll==	29:10
payroll	29:10
be doing	15:9 30:31
do tomorrow	29:-11 30:30
what today	27:12 30:52 34:-21
@job going	11:-14 30:29
busy ,	30:16 110:10
, machine	30:36
^ ready	12:-14 30:60
ready date	12:-14 30:60
date ,	30:35 48:28
just put	30:13 125:11
kettl on	30:13 126:20
@job keep	0:15 30:9
keep ask	30:9
enough ,	3:-13 17:-10 24:-8 30:9 39:20 42:-12 43:51 79:-9 92:32 126:-17
it then	30:21 126:-18
then :	30:21 126:-18
more to	30:10 109:13
noth to	29:-31 30:58 92:16
is none	30:14 91:44 126:-10
none of	30:15 43:-24 46:23 72:13 80:-14 93:-37 126:73
of my	12:10 30:14
seem to	108:22
get going	30:15 108:21 126:-15
is each	30:26
what and	5:-11 6:11 29:-8 30:15
it ready	11:-9 30:24 100:9
which time	27:21 29:-12 30:20
each job	30:13
capacity==	26:-9 30:19
utilisation==	26:-9 30:19
capacity	26:-9 30:19
utilisation	26:-9 30:19
collect	65:-8 115:10
i .	45:11
. e	45:11
e .	45:11
what work	12:44 24:-12
if a	1:11 7:16 126:-20
in now	76:-9 97:11
now with	78:10
a @job	13:15 55:11 96:-10 126:34
@job that	1:13 17:10 25:15 47:10 126:-18
that want	10:11 17:10 22:-15 80:21
want all	84:11
board by	17:23
he'll==	65:-12 126:19
tell the	11:-11 29:17 31:13 51:11 58:12 104:11 120:25 126:-8
he'll	65:-12 126:19
get it	19:-8 33:17 48:11 100:9
soonest for	31:21
, possibl	31:12
earliest $	31:32 59:-9
woman==	12:24
woman	12:24
the count	8:-8 25:24 51:16 67:12 69:-10 109:11
a came	15:10
under her	63:14
her for	31:8
suppos==ing	126:9
suppos @person	62:-11 126:24
, sinc	34:20 56:27 74:9 82:9 104:15 108:9
he has	53:-10 64:14 110:11 111:8
the knock	58:11
love==	5:9 28:15 48:-14 97:12 112:9 126:8
love	5:9 28:15 48:-14 97:12 112:9 126:8
would love	48:-14 126:25
love to	28:15
him the	4:12
fella==	31:11 59:10 126:-8
fella	31:11 59:10 126:-8
have his	31:11 48:15 126:-15
think we	70:21
squeez in	31:17
befor this	45:-11 56:-18 126:42
hope==	31:20 48:-9 76:10 94:17 95:-37 119:-8 126:67
hope	31:20 48:-9 76:10 94:17 95:-37 119:-8 126:67
it possibl	31:14
his job	31:8 114:10
fingerboard of	88:16
be promis	31:9
@person as	63:20 64:26
#n who	15:39 64:20 65:11 126:-19
be possibl	31:10
quot==e	31:27
quot	31:27
an additional	31:11
commit==	28:-8 31:10
commit	28:-8 31:10
commit to	28:-8 31:10
. what	0:15 1:12 2:13 10:22 17:-9 22:-8 33:-13
earliest date	31:17
to delivery	74:19
if not	31:10
give $	31:13
i quot	31:16
quot for	31:16
wire com	32:36
ceas==e	61:9
ceas	61:9
the one	12:24 14:9 42:-19 93:34
one that	12:24 16:10
turn==ing	32:23 87:20 90:9 99:10 102:17 126:-15
@wire under	32:19 96:13
list our	10:-8 33:42
expect delivery	19:-29 32:63
been order	117:25
buy a	33:13
pack at	33:24 122:-11
or can	12:21 33:13
really $	28:-8 33:22 126:20
who sell	33:48 34:-10 121:13
sell us	33:48 34:-9
us @wire	33:25
to ring	14:-8 33:21
them in	2:-18 40:21 73:36 80:-9 121:14 126:-12
they take	105:25 121:16 126:-17
believ==e	33:8 67:15 76:10 89:8 104:11 119:9 121:9 126:-22
as they	33:-10 54:9 119:-23 126:97
believ	33:8 67:15 76:10 89:8 104:11 119:9 121:9 126:-22
believ it	33:8 76:10 104:11 119:9 121:9 126:-11
am doing	33:16 65:26
the address	33:16 58:16
crowd==	33:26
are that	33:26
that ferro	33:21 120:19
crowd	33:26
quicker than	33:26 105:14 107:12
than they	33:26 70:8
mob==	33:12
mob	33:12
@wire off	33:11
what pack	33:15
house==s	33:13 126:51
punctual==	33:14
house	33:13 126:51
which we	33:14
punctual	33:14
term and	121:10
of lindwurm	118:14
to it	13:14 38:21 42:-12 66:37 70:-11 93:17 126:-24
do yesterday	34:43
forgotten==	14:11 34:20 61:11 67:-11 70:14 88:15
forgotten	14:11 34:20 61:11 67:-11 70:14 88:15
i've forgotten	34:21
forgotten $	14:12 34:21 67:-11 70:14
done someth	34:16
history ,	19:25 34:23
happen $	8:-8 34:31 49:26 66:-8 125:18
was out	34:9 102:-14 103:-8 126:25
sick ,	34:9 41:9
you may	2:36 34:9
notic ,	34:9 112:20
i becam	34:10 92:8
anyon ,	34:10 39:10 41:12
who report	34:13
report what	34:13
told you	34:9 125:31
@person say	2:16 3:11 44:8 49:22 53:25 62:-10 63:14 66:14 74:21 94:10 110:-19 118:18 120:-8 125:11 126:-30
say she	66:19 94:12 126:-14
did she	34:9
quiet ,	34:14 90:18
, read	4:12 34:14 68:19
to piec	34:13 38:18
it ther	34:17 65:11 104:10
all went	29:-14 34:35
get done	28:8 53:-15 55:18
poor should	122:8 123:10 126:-11
which thing	34:12
activity==	34:25
activity	34:25
trail for	4:-9 6:-9 34:67 59:10
entir==e	34:162 126:-24
entir	34:162 126:-24
document==	34:40
transaction==	34:40
concern==ing	34:40
document	34:40
transaction	34:40
concern	34:40
say to	5:-15 49:14 94:11 107:10 126:11
you and	66:14
used a	70:11 126:13
themselve==s	122:11
to writ	19:16
themselve	122:11
you explain	36:11
help ,	36:19 112:10
, help	6:-13 36:21
sort==s	36:11
@person told	33:27 111:-14 117:14 126:14
told me	15:22 33:25 56:-10 103:9 112:11 117:13 119:28 126:19
you could	60:-10 61:12 94:15 126:-14
sort of	36:28
of thing	36:28 115:11
foot of	69:16
myself ,	65:10 126:-8
ask you	36:11
undo work	36:32 105:-10
befor ,	36:10 48:15 63:-8 64:13 114:8 126:-14
, explain	36:23
me how	5:43 8:-19 9:12 33:-11 36:22
how #n	36:10 125:16 126:-18
me at	36:14 109:11
how the	12:-15 14:21 36:18
@quoted	1:-10 13:-9 36:86 50:16 81:-9 86:14 87:15 122:20 126:-16
the @quoted	1:-9 36:41
goe ,	36:18 87:20 126:-11
&@quoted	1:-10 13:-9 36:86 50:16 81:-9 86:14 87:15 122:20 126:-16
what sort	36:26
thing can	36:26
@quoted ,	13:-9 36:19
it used	13:-9 36:19 89:10
used $	1:9 13:-9 26:48 36:18 37:25 38:-17 83:34 102:-13 126:-12
explanation==	36:16
promis question	36:17
need an	36:16 105:8
explanation	36:16
explanation ,	36:16
function==s	36:35
@quoted $	36:27 122:20 126:-12
guidanc==e	1:-9 36:22
i find	0:-10 1:-14 15:11 36:22 40:-17 126:41
guidanc	1:-9 36:22
, open	2:12 12:15 39:23 55:-15 113:33 126:-11
lack==ing	4:-17 13:55
lack $	4:-17 13:55 46:8 126:8
pack ,	33:43 122:-28
, minimum	33:40 121:18 122:-21
into job	37:30 71:-11 84:17
count from	37:21 71:-10
. job	38:16 45:-8 71:-8 72:8 90:13 92:8 98:21
. that	37:12 92:9
sit==ting	2:13 5:-10 8:-15 12:31 14:-8 22:18 26:33 30:-11 37:11 44:-17 76:41 90:-8 92:14
sit ther	0:-9 8:-15 22:26 37:12 65:22 94:9
is just	22:12 37:11 94:16 107:-11 114:11 122:10 123:-10 126:18
just right	37:11
is wher	37:12
it went	41:10 44:24 58:11
know that	37:10
@wire nobody	37:10
, well	34:-9 37:9 41:11 70:-8 100:10
i've made	0:-8 37:16 64:18 71:-8 79:52 126:-11
up piec	1:8 37:10
record that	37:17 38:-13 63:14 64:-9 71:9 97:11 108:15
that piec	0:-8 1:12 24:-8 34:-10 37:18 41:9
consum==ed	37:12
pleas note	34:-8 37:11 54:35 88:12 96:9 98:9 109:31 111:21 113:-21
the bit	37:8 38:8 84:20
call #n	38:13 74:13 84:-8
so nobody	38:13 84:8 102:20
nobody else	38:12 65:12 66:-14 108:21
grab it	3:-9 38:13 43:21
pleas put	37:-10 38:26
meant for	37:-9 38:17 84:11 125:11
. @job	49:22 71:12 84:29
and somebody	68:-8 69:11
somebody is	23:54 126:-21
to neck	24:25
so keep	38:22 41:-28 47:-9 84:11 126:30
has her	53:24 112:-13
it more	84:-11 85:11
so reserv	84:8
reserv it	27:16
^ mind	0:-8 38:11 126:66
pleas to	38:12 39:-8 41:8 66:8 99:10 101:-13 103:10 123:17 125:39 126:-9
)~",
R"~(to reserv	38:12
kept by	21:11 24:13 38:12
by me	38:9 40:11 78:15 97:8 108:10
should like	13:30 38:11 57:11 105:12 126:-34
be reserv	38:11 84:13
further==	2:13 38:12 62:9
further	2:13 38:12 62:9
until further	38:12 62:9
further notic	38:12 62:9
notic $	38:12 62:9 126:9
was kept	85:8
, anybody	13:-16 15:79 65:-9 66:8
anybody may	39:8 66:20
be sav	2:16 31:-9
let piec	39:15
. nobody	39:10 66:10
turn==s	29:-8 77:18 95:-37 103:11 107:10 111:-16 112:50 126:38
market==	39:9 54:11 98:-9 126:10
^ turn	49:29 56:19 85:9 111:-12 112:29
so piec	24:-8 37:9 38:-8 39:46
the free	39:11
market	39:9 54:11 98:-9 126:10
was hold	32:11 39:9
reason ,	39:9 42:11
so give	4:10 21:9 24:-8 39:9 48:15 85:15 107:10 116:13
worry==es	39:14
worry	39:14
about piec	38:-11 39:14
grab again	39:20
pleas take	39:21 41:-8 42:13 49:26 66:-9 71:-11 73:12 83:10 89:12 113:13 123:8 126:-17
reservation $	12:-8 24:79 27:46 39:20 41:-8 63:-8
kindly releas	85:8
reservation on	27:13 39:39 107:-8
upon==	39:12 46:11 115:15
hereby==	39:11 65:10 85:29 113:14 120:17 125:23 126:-10
effectiv==e	39:12
upon	39:12 46:11 115:15
hereby	39:11 65:10 85:29 113:14 120:17 125:23 126:-10
is hereby	39:11 65:10 113:14 120:17 125:23 126:-8
hereby lift	39:12 85:29
lift ,	25:24 39:12 97:15
effectiv	39:12
found #n	67:10 70:10
@wire i	8:23 9:-16 32:27 37:-14 71:26 83:-9 89:15 119:11 126:-10
drop it	41:9 87:15 101:54 126:-10
now in	73:8 76:14 83:-11
@wire .	0:11 1:-11 9:-9 18:8 22:-8 40:20 41:-12 82:14 120:13 126:-9
. #d	1:-9 40:20 43:13 50:10 57:16 75:12
i dress	17:-9 37:21 44:18 98:12 109:-8 126:24
i notic	126:15
was no	96:8
so here	1:-9 42:15
on me	40:10 43:-14 126:21
me with	40:10 108:10
y'all can	120:9
yesterday #n	40:10 51:24 82:10 83:-8 118:-15
enter==	40:13 51:-12 54:23 59:25 62:-12 78:10 86:9 100:16 113:-14 117:12 121:9
pleas enter	40:13 78:11 86:9
kindly add	99:8
add to	99:12
tin an	73:21
item of	82:17
accident==	82:12
bent piec	37:21 39:-13
accident	82:12
by accident	82:12
accident and	82:12
not go	37:-9 39:-9 41:9 91:8 92:27 94:15 96:11 112:20 115:13 126:-38
go straight	41:9 95:-17 126:24
rubbish==	8:-36 21:-9 22:61 37:-9 39:-10 41:51 76:-11 78:11 79:26 82:19 125:9
rubbish	8:-36 21:-9 22:61 37:-9 39:-10 41:51 76:-11 78:11 79:26 82:19 125:9
the rubbish	8:-36 21:-8 22:52 41:17 76:-11 79:14 82:12
rubbish $	39:-10 41:51 76:-11 79:14 82:11 125:10
beyond sav	41:15 82:9
so out	41:13 123:10
out it	41:13
i @day	41:12 126:-11
@day on	41:12 82:10 126:-11
not ask	41:12 126:-11
ever fret	41:12 126:-11
, chuck	41:25 82:18 126:-13
chuck it	41:39 126:-13
ai==	41:9 66:9 109:10 110:13 120:8 123:10 126:-15
that old	41:9 44:10
ai	41:9 66:9 109:10 110:13 120:8 123:10 126:-15
ai not	41:9 66:9 109:10 110:13 120:8 123:10 126:-15
not worth	39:-9 41:37 82:11 126:-25
a sick	41:9 98:12 103:10
toss it	39:-22 41:33
therefor==e	41:12 84:10 114:8
therefor	41:12 84:10 114:8
remov from	41:10 73:12
tin the	41:10 73:12
corrosion==	41:25
be written	7:42 22:-10 41:25 126:-8
on account	41:25
account of	20:18 41:25 126:-8
corrosion	41:25
dispos==e	41:16 82:8
discard==ed	41:16 82:17
dispos	41:16 82:8
dispos of	41:16 82:8
#n ;	38:15 41:15 76:20 126:-13
; it	40:8 41:15 50:22
discard	39:-11 41:44 82:17 87:10 126:-15
show==ed	42:12 51:-9 68:-10 69:16 118:33
i held	42:12 71:12 76:-9
held the	92:18 98:28
show #d	42:14
groov #n	42:13 73:-17 76:20
measur it	40:11 42:9 76:-13 77:-16 79:13 93:9 126:20
millimetre long	3:9 42:12
calliper $	42:45
finally==	7:12 42:8 81:10 117:18 118:26 126:-11
finally	7:12 42:8 81:10 117:18 118:26 126:-11
i finally	42:8 81:10
finally got	42:8
the good	42:8 70:13 90:10 126:-12
calliper back	42:8
back from	12:11 42:8 64:15 95:9 103:11 126:-12
&#d#n@person	3:10 43:-13 70:22 93:14 126:-28
dot==	42:28
dot	42:28
^ across	26:-14 33:-19 42:39 93:-10 101:23 123:20
end i	42:9 45:11
the record	3:-10 4:-15 34:50 42:35 69:10 70:16 126:-10
record ,	42:15 97:11
found to	42:10 69:10
much off	43:26
not reach	3:-16 42:-8 43:36 94:12
reach the	43:10 92:8
short .	2:25 17:-9 43:12
so fret	79:9 97:25 126:-18
live	3:22 73:11 90:-10 126:9
grab==bed	3:-9 27:22 43:21
it and	3:-9 26:-15 27:16 43:21 96:14 104:26
and now	3:-10 43:29 95:16
now fret	3:-9 43:21 126:-8
and made	37:8 43:12 71:8 72:-8 76:-9 79:-11 83:8
dress and	1:13 40:-12 43:9
^ well	37:27 49:23 66:10 78:-13 92:-9
@job done	13:31 15:-14 31:10 44:-8 49:9
becom==e	1:23 53:10 71:-12 83:23 114:15
becom	1:23 53:10 71:-12 83:23 114:15
has becom	114:15
prov==e	126:12
should fret	4:45 17:-8
prov	126:11
i refret	3:-8 43:8
refret to	3:-8 43:8
them out	44:10 76:9 101:14 102:-13 123:8
enough on	66:12
coffee==s	44:9
took me	44:27 71:-8 72:8
all morn	44:9 106:25
morn and	44:9 67:10
coffee	44:9
was at	44:20
that stag	44:22 104:15
is over	63:14 111:-10
hallelujah==	44:12
am all	44:12 61:10
crown @job	44:16
hallelujah	44:12
, hallelujah	44:12
hallelujah $	44:12
terminat==ed	44:31 94:23
terminat	44:31 94:23
has brought	44:21
respect==	44:15 114:9
is complet	44:70 126:-10
complet in	44:18
in every	44:18 110:9 112:-9
respect	44:15 114:9
and may	44:18 62:10 126:-9
commenc==ed	33:8 44:13 108:37 109:-9
this is	44:19 45:9 60:8 88:17 96:9 126:-19
confirm that	44:16 94:22
complet on	44:36
commenc	33:8 44:13 108:37 109:-9
squash==ed	16:-8 40:-10 45:17 82:10
squash	16:-8 40:-10 45:17 82:10 106:8
the big	5:12 16:-8 27:16 45:17
big press	16:-8 45:17 100:15
push==ed	16:-13 45:28 73:-8 76:34 98:-8 119:11
bar .	86:15
pig==	66:11
pig	66:11
a pig	66:11
but fret	72:11 126:-9
i forget	14:17 45:13 65:-9
@job press	16:-12 45:33
i've press	45:12
, grand	45:12
was too	45:12
just finish	44:9
newton==	16:-8 45:10
newton	16:-9 45:10 56:25
yesterday the	79:13 118:10
#n took	56:-18 83:10 126:40
stay==ed	46:122 72:9 74:-10 126:-29
fret again	116:26
like you	106:9 126:-8
me and	111:9
all stay	46:61 126:-24
stay wher	3:9 25:11 46:19
look .	46:18 84:9
. all	4:21 46:25
all flat	46:26
eye==s	42:12 125:11
and would	103:10 110:-15 126:23
would not	25:23 41:16 67:15 87:-11 90:11 96:12 97:13 102:13 103:10 111:-13 112:14 126:-33
not you	71:-10 103:10 107:-25 126:33
a gone	78:81 90:-12 126:-14
had mov	46:12 126:-9
gander==	64:16 116:13 126:-16
devil==	110:10
had another	46:21
gander	64:16 116:13 126:-16
devil	110:10
the look	11:-12 30:21 46:19 80:8
come up	25:36 46:14
was carri	98:11
carri out	76:11 98:11 104:14
ago and	78:14
were found	75:8
reinspection==	46:11 116:15
observ==ed	46:11
^ upon	46:11
reinspection	46:11 116:15
reinspection of	46:11 116:15
observ	46:11
back ;	46:15
percent $	46:11
#c long	51:14 67:13 68:-12 69:24 70:-9
bridg ,	88:11
nut and	47:18
#n wide	47:8 75:12 86:29 126:-8
new #n	23:35 59:22 72:-14 76:-13 79:43 100:8 104:-8 126:-8
in :	47:9 51:72 64:17 67:-46 82:-10 117:-9
pretty==	38:11
pretty	38:11
, bind	47:17 82:-10
so put	37:11 38:-11 56:18 59:9 68:13 99:12 104:11 114:9 122:18 123:-11
start a	47:11 51:-10 108:16
bear==	115:-10 126:10
it :	4:11 42:-16 43:25 48:14 53:9 54:20 55:-8 78:15 90:8 103:16 126:-19
access==	0:-14 3:17 63:22
access	0:-14 3:17 63:22
access a	0:-14 3:15
width is	75:23 77:-17
she can	94:12 110:10
can fetch	13:14 48:8
lady==	31:13 48:17 122:11
lady	31:13 48:17 122:11
the lady	48:17 122:11
dec $	48:29 111:21 117:11
wed==ding	48:10 54:13 111:13 112:9 113:-9
wed	48:10 54:13 111:13 112:9 113:-9
a wed	48:10 54:14
play ,	13:21 48:10
, less	48:10 71:8 114:10 119:11
him ,	48:10 62:8
out by	22:23 48:41 126:-17
say he	48:9 49:-12 126:9
not care	0:14 48:24
so strik	48:9
push @job	48:35
her at	48:11
we must	48:12
waiv==e	48:10
henceforth==	48:10 52:12
waiv	48:10
#n shall	48:8 66:15
henceforth	48:10 52:12
phon==ed	51:-14 117:16 120:13
want his	49:23
done any	49:12
so take	49:12 60:9 61:-8 94:9
drop job	13:-10 49:88 66:-11 114:-9 126:-11
struck==	101:19 126:23
so job	13:37 44:12 48:-23 49:-12 65:10 66:9 96:-11 114:26 126:9
struck	101:19 126:23
be struck	49:10 101:19
struck from	49:10
is crack	49:22 95:-10
through and	49:14 109:15
and @job	49:13 55:9 65:-8 115:9
it home	49:14 96:23
so scratch	49:32
scratch job	49:32
bin that	41:27 49:14 82:-10
annull==ed	39:-9 107:31 120:9
annull	39:-9 107:31 120:9
is annull	120:10
client==	49:24
)~",
R"~(dri==ed	49:23 61:8 102:23 114:10 126:-10
not to	49:27 102:12 125:15 126:-32
client	49:24
dri	49:23 61:8 102:23 114:10 126:-10
has dri	49:24 102:23 126:-9
dri $	49:24 60:11
request==	49:17
request	11:-11 12:44 30:-9 49:24 126:-10
request $	11:-11 12:44 30:-9 49:17 126:-9
let call	100:10
middl==ing	50:8
^ everyon	14:27 50:8
for someth	50:8
and @wire	40:-8 50:8 52:20
so set	50:8 84:8
wire nam	40:-8 50:41
a soft	65:11
soft spot	65:11
spot for	1:13 65:11
stuff ,	8:9 9:-13 22:11 32:29 85:10
let have	56:10
pup==	50:10
pup	50:10
for us	12:15 50:9 53:16 110:-11 121:24
@wire it	50:9
wee #d	89:9
, stainless	50:25 89:-10
golden==	50:11
larg==e	30:17 59:17 77:17
golden	50:11
golden ,	50:11
larg	30:17 59:17 77:17
designat==ed	99:19
designat	99:19
typ==ed	50:20 61:24 80:-8 120:21 126:-15
typ	50:20 61:24 80:-8 120:21 126:-15
wire typ	50:20 80:-8
a tang	89:23 100:-11 102:19
scal with	51:15 68:-22 69:19
spool and	51:16 68:16 69:-10
in .	118:10
just came	12:11 51:19 118:-9
land==ed	32:-8 51:39 67:-15 76:11 118:49 119:-8
micrometer==	41:-11 51:17 89:31
land	32:-8 51:39 67:-15 76:11 118:49 119:-8
@wire land	51:35 67:-15
and @person	36:12 51:17 61:22 63:-9 102:10 110:-35 111:13 126:37
micrometer	41:-11 51:17 89:31
the micrometer	41:-10 51:17 70:10 89:12
micrometer on	51:18
&#d#n@person@wire	39:11 40:12 51:21 69:14 117:8
got us	117:14
land ,	118:25
they'r the	82:8
#c mil	70:18
gram==	69:10 121:18
deliver to	51:16
wire weigh	51:10 68:-8
belong==ing	51:24 118:-14
, belong	37:9 51:24 118:-14
to no	22:15 51:32 61:23 65:-8 66:45 118:-16 126:-9
no order	51:78 117:-22 118:-25 126:-8
at a	26:24 80:9 86:10 98:12 104:9 126:-20
when ther	52:11
is less	52:14
less than	8:29 52:30 67:-9 70:-13 121:21 126:-13
wait as	52:11 126:-10
as soon	52:13
soon as	52:13
reorder point	52:10
last spring	67:-24 126:30
not going	49:26 65:-15 66:-8 94:-14 108:-8 109:9 126:15
going through	9:9
count it	38:-9 67:9 78:18 126:9
it as	38:-10 44:42 54:14 57:11 76:17 78:18 99:-9 101:12 102:14 108:11 125:25
zither==s	52:19
zither	52:19
below #c	52:30
as far	103:10 118:11
far as	103:10 118:11
am cancell	103:10 118:11
shout==	52:12
lad==	52:12 63:22 126:-9
shout	52:12
metre ,	51:-13 52:44 117:18 121:12 122:-8
lad	52:12 63:22 104:15 126:-13
lad $	52:12 104:15 126:-8
call @wire	52:15 68:11
must order	52:18
order again	52:18 103:10
again be	52:18 105:18
threshold==	52:43
pleas set	48:12 84:21
threshold	52:43
threshold for	52:41
minimum stock	52:24 70:-8
a @day	53:14 55:-8 110:33 112:-8 126:-18
so make	110:9 116:10
am fix	53:23 112:-10
let keep	53:22 112:-10
on all	53:37 90:23 112:-11 126:-22
from half	110:10
half #n	38:-15 44:12 53:12 54:-20 55:12 106:15 110:10 126:-8
folk==s	12:-31 14:63 54:-8 113:9
folk	12:-31 14:63 54:-8 113:9
, folk	54:-8 113:9
us open	55:14
open==ed	20:17
and clos	20:9 32:10 53:15
clos at	29:11 53:-14 54:26 55:38 113:-8 126:11
regular==	33:15 53:34 55:-24 110:42 112:-26
regular	33:15 53:34 55:-24 110:42 112:-26
^ regular	53:28 55:-17
shall be	52:8 53:8 54:8 55:-9 59:9 62:16 66:15 104:14 111:13 115:13 126:-21
be #t	53:9 55:-11 112:8
all here	118:-14 119:-14 120:-10 126:47
becaus we	82:9
xma==s	54:14
jan==	54:14
xma	54:14
jan	54:14
^ they'r	119:8 126:-8
so @day	53:17 110:-8 113:10 119:10
and not	12:32 48:14 52:8 53:-8 54:8 56:22 70:16 100:19 104:12 109:11 111:10 115:8 119:11 122:-9 126:-53
a sinc	13:31 14:19 30:-8 54:11
sinc to	54:11 58:-8 126:15
clos up	54:26
#o december	55:19 111:13 118:9
december the	11:8 55:11
the stocktak	54:11 68:11
premise==s	53:9 54:13 55:-8
owing==	54:13 82:8 120:17
premise	53:9 54:13 55:-8
the premise	53:9 54:13 55:-8
owing	54:13 82:8 120:17
owing to	54:13 82:8 120:17
inclusiv==e	54:8
shop shall	54:8
inclusiv	54:8
open too	53:-10 55:18
just this	53:-9 111:29 126:-16
this once	53:-12 55:19 111:29 112:-15 126:-16
they said	70:9 119:-23 126:30
said we	54:-9 113:15
stay till	126:8
whol shop	53:-9 54:12 56:32
of work	55:10 100:13
we also	2:41 29:18 53:-9 55:14 121:8 126:-20
com at	44:16 55:8
so on	55:8 94:12
will open	54:-10 55:11
, half	22:12 53:-14 54:-10 55:22 99:13 112:16
day that	22:11 33:-11 54:-10 55:10 122:-29 126:53
, this	53:-12 55:16 98:9
door stay	54:38
exceptionally==	112:25
exceptionally	112:25
additionally==	54:-9 55:31
additionally	54:-9 55:31
shop will	54:-10 113:10
plat on	56:14
pound ,	56:8
it may	86:9 94:9
, writ	42:10 48:27 54:18 56:15 62:18 126:-17
writ that	56:16
that down	41:11 56:14 75:9
program==	27:-11 30:62 56:21 62:19 99:21 106:-26 126:-25
program	27:-11 30:62 56:21 62:19 99:21 106:-26 126:-25
the program	56:21 62:19 99:21 126:-25
in inch	56:39 126:-19
inch and	5:29 56:22 72:-13 83:-8 126:-19
plat ,	56:15 66:10
. set	56:11
@person new	104:11
new gaug	102:11
think==s	21:9 56:30 126:16
newton==s	56:25
in newton	56:25
and set	100:28 105:-19
step to	56:8
tin idle	22:-24 56:50
idle day	22:-24 56:50
shop to	53:9
be told	58:36
its address	57:10
address is	57:10
is http	57:11
link==	7:12 61:24 98:-9
new==s	13:27 51:-10 54:22 63:9 103:17 117:10 119:32
a thing	34:16 123:-8 126:12
thing that	52:9
someth is	11:-10 58:18 104:18
link	7:12 61:24 98:-9
link ,	7:12
it the	100:11
name is	59:26
is lamp	116:13
http==s	57:22 126:-11
exampl==e	57:22 68:-10
hook ,	68:13 126:9
exampl	57:22 68:-10
. exampl	57:22 126:-11
exampl /	57:17 126:-11
notify==	58:39 126:-11
@person keep	110:10
so add	59:13
for her	19:16 38:9 44:10 47:-9 63:-8 101:38 126:25
name it	50:9
notify	58:39 126:-11
about wire	9:-8 10:21
want wire	50:-10 57:10
&#d#n#t	42:22 57:-19 75:9 126:20
kitchen $	58:24
pitch==	5:-8 58:60 100:27 104:-8 112:17 113:-9 126:-8
relay==	2:24 81:-10
pitch	5:-8 58:60 100:27 104:-8 112:17 113:-9 126:-8
pitch ,	112:17 113:-9
, over	71:-10 93:10
relay	2:24 81:-10
beacon==	58:9
post==	8:-32 19:16 32:60 63:14 64:-10 68:11 82:-11 83:10 85:11 109:-20 118:12 126:49
beacon	58:9
post	8:-32 19:16 32:60 63:14 64:-10 68:11 82:-11 83:10 85:11 109:-20 118:12 126:49
post $	8:-31 32:53 85:11 109:-14 126:33
attach==	51:8 58:31 62:8 126:-10
webhook==	57:8 58:120 101:-14 126:-11
attach	51:8 58:31 62:8 126:-10
webhook	57:8 58:120 101:-14 126:-11
nutward ,	76:11 90:23 91:-9
told anyth	58:29
anyth any	58:43 115:14
broken ,	28:-8 62:9 102:18
so pleas	63:8 65:10 84:9 101:17 107:13 126:-14
pleas remov	58:27 99:-8 101:18
that receiver	58:19
^ receiver	39:-9 58:56
bell .	58:13
post ,	19:16 118:-12
packet can	58:26
message==s	58:30
has read	58:10
read a	1:17 58:10
message	58:30
so get	58:10
hous $	8:50 12:13
and pull	3:27 58:12 102:17
the plug	58:10 101:-11 103:25 126:12
receiver pitch	58:12
need more	8:-10 9:14 58:10 105:8
to delet	58:8 101:-12 123:17
delet $	58:8 101:-12 123:17
the webhook	58:77 101:-12 126:-8
be sent	57:10 58:17 126:-13
discontinu==e	109:32
discontinu	109:32
receiver nam	57:9
pleas strik	58:12 63:8
of receiver	58:13
, his	64:8 110:10 114:9
and he	60:16 63:15
he work	112:8
katja==	59:27
able==	59:9
katja	59:27
able	59:9
be able	59:9
able to	59:9
thing in	58:11 59:8
chang anyth	59:8 126:13
anyth ,	11:18 59:8 82:9
let her	59:8 65:27 126:-8
her in	59:12
she going	62:8 110:-10
to sit	76:10 83:-10
nephew==	60:11
nephew	60:11
the want	9:14
, heavy	60:11 118:12
heavy help	59:14 60:11
help us	59:14 60:11
person ,	14:10 63:14 64:-8 66:15
join==ing	59:10
join us	59:34
him down	59:10 106:9 126:-8
down as	38:-14 51:-8 54:21 59:16 63:16 66:30 67:29 69:11 72:11 89:9 100:18 102:-12 108:-9 111:20 126:-12
as #n	51:-10 59:10 63:-9 64:27 67:21 96:10 100:9 114:44 126:-16
lead ,	14:12 59:13 62:20
colleagu ,	59:26 99:-9
she is	29:-18 48:11 111:29
is nam	99:21
about ,	2:32 8:14 17:-8 108:16 126:-12
, role	59:29
, plac	40:9
pleas make	50:21 59:20 63:10 89:-12
enrol==	59:12
enrol	59:12
the role	59:13
bench and	12:-14 14:21
user number	59:20 60:12
ignac==	59:10
ignac	59:10
computer==	51:11 60:31 70:11 84:10
call==s	60:8 90:8 100:15 122:12 123:-11 126:-10
computer	51:11 60:31 70:11 84:10
the computer	51:11 70:11 84:10
@person #c	61:9
remember that	60:12
is her	48:12 60:9
laptop==	61:14
laptop	61:14
new laptop	61:11
proud of	60:16 71:9 98:11 126:-11
tie==	19:-9 23:16 60:27 61:-14 74:17 100:-8
up @person	40:10 60:10
)~",
R"~(over lunch	29:21 60:10 126:-8
it came	60:10 118:19
out as	60:10
tie	19:-9 23:16 60:27 61:-14 74:17 100:-8
#c belong	60:37 61:-17
like @person	126:15
^ be	120:18
be advic	102:15
advic that	102:15
computer is	61:9
@person any	60:-9 61:19 65:15 126:-10
, forget	54:-15 61:9 66:30 109:-11 113:23
forget it	61:9
login with	60:16
#c should	61:12
from whoever	61:18
thumb==s	61:10
i typ	61:10 120:21 126:-14
number for	19:15 61:10
befor lunch	46:10 61:10 71:9
thumb	61:10 70:16 126:-14
thumb ,	61:10
so user	61:10
it loos	61:10
unhitch==	60:-10 61:12
unhitch	60:-10 61:12
fre==ed	61:10
of user	61:22
#c must	60:-9 126:18
fre	61:10
from its	39:13 61:11 66:22 126:-10
its person	61:20 66:13
revok==e	61:12 125:17
assignment==	61:13
revok	61:12 125:17
kindly revok	61:12 125:17
revok the	61:13
assignment	61:13
of uid	60:-24 61:39
a member	61:9 63:13 64:-9
to chang	9:-8 100:9 126:34
stool==	40:-10 82:10
stool	40:-10 82:10
, door	54:12 59:10
@person been	30:-12 34:24 63:-8 126:33
watch	73:8
half a	22:12
than i	72:11 107:12 126:-9
report work	59:13 62:45 63:-12 126:-8
marri on	48:15 62:11 110:-10
cake was	64:18 110:-10
lovely ,	62:11 75:11 110:-10
going by	62:11 110:-10
so chang	62:12 110:-10
^ sure	62:10 85:9
him $	38:10 62:15 63:-9 64:8 126:22
@person shift	126:12
inset==	62:19
inset	62:19
promot==ed	62:25
promot	62:25
amend==	53:10 55:-8 62:9 70:21 122:20 126:-12
tomislav==	62:32
amend	53:10 55:-8 62:9 70:29 122:20 126:-12
amend the	53:10 55:-8 62:9
tomislav	62:32
the register	62:9
register $	14:14 62:9
good and	63:11 64:-9
com back	63:25 64:-17
@person retir	63:55 64:-27 126:-8
pension==ed	38:10 64:12
and everyth	8:40 9:9 26:28 85:-14
so retir	62:-9 63:21
retir him	63:10
so she	110:30 112:-20
put her	59:12
her down	59:8
as retir	63:38 64:-16
definitively==	63:8 94:23
definitively	63:8 94:23
him to	63:32 64:-16
and come	50:9 63:22 64:-18
pleas record	63:14 64:-9 71:10 94:9 97:10 104:14 108:14
longer a	63:13 64:-9
hav end	63:9
to retir	62:-10 63:19 64:-19 112:-14 126:65
@person who	27:11 64:10 65:14
who had	64:12
us again	63:-10 64:32
retir ,	63:-12 64:16
work with	64:16 65:20 126:-8
again now	103:16
ear==s	62:-9 63:10
ear	62:-9 63:10 66:11
she back	64:22 126:-12
the staff	14:35 59:8 62:-10 63:52 64:25 126:-9
@person could	98:14
not stay	25:53 46:9 97:13 126:-46
stay away	110:-8 111:19
she was	110:-11 112:-9 126:18
she has	60:8 61:-8 64:10 111:19 112:9
thank==s	37:33 48:15 75:15 100:15 104:11 126:-21
thank	37:30 48:15 68:-9 69:11 75:15 100:15 104:11 109:-8 122:13 126:-8
, thank	37:31 48:15 75:15 109:-8 122:13
return==ed	63:-30 64:43 66:29 101:13 126:30
return to	63:-23 64:59 66:29 101:13 126:-18
again a	25:12 63:-8 64:13
previously==	63:-11 64:15
previously	63:-11 64:15
revers==ed	63:-10 64:21 125:9
they told	65:9 119:28
should do	65:9 98:17 126:-10
as mine	66:30 109:-11
doing to	65:11
tak job	65:27
boyo==	65:13
boyo	65:13
reckon the	65:14 89:10
rest with	71:22 83:-10
particular==	12:-21 24:28 66:52 126:-12
particular	12:-21 24:28 66:52 126:-12
in particular	66:52 126:-10
can take	44:8
@person or	15:61 60:-23 65:-39 126:37
or to	15:18 65:-24 126:26
to anyon	15:8 41:13
whoever got	15:32
got time	9:10
off her	63:-17 66:10 111:-30 126:59
let whoever	65:-18 66:28
pick it	44:13 66:9
ear==	66:11
@person now	66:15
^ ai	66:9
to nobody	66:10 114:9
rod of	67:9 69:10 70:-8
rack and	67:12 71:11 76:-9
and ther	0:-8 40:8 41:9 67:12 68:8 80:-9 92:37
stick left	32:9 67:9
and each	100:13
metr long	51:37 67:-12 118:-18
all told	8:13 67:43 70:-15 100:23 112:-12
told $	8:27 67:27 70:-14
count ,	67:39 68:-12 109:11
@person bent	95:10 126:-11
were #n	83:10
i said	36:40 54:-12 105:22 112:15 113:32 126:-49
fewer ,	63:21 71:11
&#n@person@wire	33:-8 51:-11 52:-17 67:38 68:9 73:8 80:53 111:-12 126:17
count them	40:22 80:-18
reckon ther	67:8
went and	67:8 119:11
and measur	67:8
amount==s	67:11
yesterday in	67:11
even ,	29:15 30:26 67:11 126:-8
amount to	17:13 67:11
result==	51:-8 67:15
result	17:13 51:-8 67:15
physical==	67:20
yield==ed	67:20 71:9
physical	67:20
inventory of	67:32
yield	67:20 71:9
total $	8:28 10:13 67:19
it show	68:-9 69:26 126:8
stick together	68:11
kitchen scal	51:-14 69:14
borrow==ed	29:8 101:9
borrow	29:8 101:9
next door	53:11 55:-8
door ,	118:21 120:-9 126:28
here goe	42:10
the bare	51:-11 68:19
bare spool	51:-11 68:19
every stick	68:21 69:-11 118:13
m that	68:12 69:-8
@person ran	68:11 69:-8 75:13
off with	13:28 44:13 68:11 69:-8
with ,	68:11 69:-8 73:8 86:14 115:19
&#c#n@person@wire	68:8
weigh in	68:18
wonder==	25:9 32:22 63:25
^ hang	89:8 102:13 126:-12
that coil	51:-13 68:16
she read	4:22
, spool	51:22 68:-8
all stick	68:20
lie now	76:10
now the	40:-10 51:-10 67:25 81:10 95:11 126:-8
it weigh	126:17
kg $	68:19
establish==ed	92:26 93:19 126:-13
coil was	51:22 70:12
establish	92:26 93:19 99:19 126:-13
was establish	93:19
weigh #n	70:-8 126:30
powder==	69:10
a lovely	69:10
powder	69:10
balanc ,	36:10 69:15
so for	69:10
record #n	51:11 69:10 117:-10
thank==	68:-8 69:11 109:-8 122:13 126:13
just so	63:16 68:-8 69:11 74:10 82:11 111:12
coil later	68:-9 69:12
later ,	42:11 68:-9 69:12
somebody will	11:15 68:-8 69:11
@wire make	68:-8 69:11 83:8
near==	9:-10 52:-10 69:8 90:8 126:77
#n foot	62:-15 65:-15 69:16 126:36
near	9:-10 52:-10 69:8 90:8 126:77
a scal	51:11 68:-15 69:10
scal that	51:11 68:-15 69:10
known==	99:8 100:26
known	99:8 100:26
for calibrat	102:11
: a	0:20 40:11 98:12
to weigh	69:9 126:12
is written	74:10
wrong length	70:10
ther should	8:23 67:-12 70:20 126:-15
off and	70:20 110:-15 111:-19 120:9 126:23
#d not	70:16
not what	70:18 100:13 105:18 125:-21
stov==e	41:9 70:19 91:-12 96:-11 99:8 126:44
place==s	14:-18 26:47 70:9 76:9 99:27
@wire behind	70:9
stov	41:9 70:19 91:-12 96:-11 99:8 126:44
the stov	41:9 70:19 91:-12 96:-11 99:8 126:45
place	14:-18 26:47 70:9 76:9 99:27
by #c	67:-8 70:27 121:18
of dirt	126:11
the futur	70:17
futur for	52:-16 70:30
it want	57:9 70:18
hair longer	83:-11 126:11
fall in	10:10 11:8
believe==s	70:11 88:-20 126:26
hand of	68:11 69:-10 70:18
is by	70:11
m more	70:21
believe	70:11 88:-20 126:26
clerical==	70:9
hold of	70:9
m on	67:8 70:8
clerical	70:9
follow==ing	2:-20 76:23
^ out	2:-8 5:10 71:22 73:9 82:28 83:-10 87:8 102:8 118:-8 120:-10 126:48
groove #n	71:10 83:9
both #n	37:-11 71:15 82:11 83:10 126:-13
too good	40:16 82:-9
good to	41:13 56:8 68:10 69:-10 100:-8 103:27 126:-9
breath==e	71:12 76:-9
tight ,	71:12 76:-9
breath	11:42 71:12 76:-9 95:-9
but piec	41:10 71:12 76:-9
#n gave	71:47 76:-9 83:-10
am after	24:18
did ,	34:-9 71:8 100:11
that slot	0:-11 4:24 71:16 78:34 92:-9
both cut	71:10
for groove	83:9
recent==	24:11 92:-9 96:18 125:28
recent	24:11 92:-9 96:18 125:28
for them	54:11
i unfill	72:11 126:-9
to ,	1:9 8:29 32:-9 72:11 103:10 126:-16
your==	2:26 13:-8 24:-8 52:-11 70:17 116:-8 126:79
your	2:26 13:-8 24:-22 38:23 52:-11 70:17 116:-8 125:-11 126:92
is your	2:26 24:-15 38:28 126:-8
so they	10:-9 76:9 123:15
wire i	74:10
#o stick	72:14
are now	75:10 76:13
kindly note	50:-10 89:10
of delivery	5:-9 72:27 74:15
was used	20:34 21:-15 72:16
measur them	80:23
fret i	42:-12 43:22 45:27 46:-12 73:31 79:-9 94:-32 126:32
so into	80:9
monster==s	73:10
monster	73:10
yank==ed	73:27
yank	73:27
fret back	73:14
have taken	37:17 38:-11 64:14 73:23 76:-10
remov==ed	33:-10 73:12 123:14
former==	14:35 42:-10 63:10 73:9 79:11
former	14:35 42:-10 63:10 73:9 79:11
delivery with	74:10
top==s	19:16 74:13 91:9 98:20 105:8 118:-12
the batch	8:-9 19:21 74:15
match $	0:12 74:32
: delivery	74:37
differ==	19:13
differ	19:13
load ,	115:23
so stick	67:-10 118:18 120:-8 126:12
will you	0:-9 3:-12 34:33 36:-12 37:-10 82:20 115:19 125:20 126:31
take its	116:9
sourc of	121:13 122:-11 123:19
determin==ed	74:11 89:9
exclusively==	74:11
determin	74:11 89:9
was determin	74:11 89:9
exclusively	74:11
saw them	75:19
saw cut	75:8
: sawn	75:23 77:-9
sawn #d	18:9 75:15 77:-9
saw is	4:10
i like	0:-8 37:-8 38:19
&#d@job@person	75:10
i ran	88:14
curv like	18:-11 75:22
mil deep	89:9
a width	75:11 77:11
and have	116:13
was in	51:-8 70:16 73:-10 76:24 78:-8 96:-10 126:31
had no	13:26 73:-8 76:10 118:8 126:-18
)~",
R"~(shift #r	76:14
. the	76:8
told us	76:10 126:-8
for once	9:29 44:25 48:12 83:10 110:-12 112:24 126:-36
once ,	76:10 122:-20 126:25
displac==ed	76:10
displac	76:10
#n they	73:-24 76:10 126:24
they lie	76:19 83:-10
@job went	15:23 45:17 49:11 76:19 78:-11
locat==ed	2:-20 76:23
respectively==	2:-20 76:23
locat	2:-20 76:23
respectively	2:-20 76:23
#n respectively	2:-20 76:23
respectively $	2:-20 76:23
that on	74:11 89:8
#r were	76:13
saw that	92:18 126:-13
plan==ed	99:27 101:14 103:-8
swear==	88:17 126:-16
swear	25:9 64:-18 88:17 90:13 105:13 126:-14
not believ	67:15 126:-11
board #d	77:14
breadth==	77:8
breadth	77:8
a breadth	77:8
breadth of	77:8
the fingerboard	77:22 88:15
mm larg	77:17
was measur	77:11
note ,	78:10
measur yesterday	42:9 51:-10 69:19
hammer==ed	76:-9 78:30 96:22
crook==ed	78:32 126:15
hammer it	78:32
crook	78:32 126:15
it crook	78:32
snap $	78:66
vacuum==	78:23 99:10
breakfast==	3:-8 38:10 78:12
vacuum	78:23 99:10
the vacuum	78:23
vacuum clean	78:23
breakfast	3:-8 38:10 78:12
for breakfast	78:12
@person stop	63:21 78:21 109:-8 110:11 126:9
right on	3:-15 18:31 91:11 126:-8
now a	105:9
as spoilt	38:-9 78:19
sign==	17:11 29:16 53:10 54:12 55:-9 59:16 102:11 118:12 126:-16
i've lost	17:11
a sign	102:13 126:-11
overheat==ed	78:14
is plumb	78:12
overheat	78:14
probably==	78:17
probably	78:17
, probably	78:17
floor ,	67:10 78:16 87:-21 126:26
damag==ed	78:22
we refret	78:22
damag	78:22
mislaid==	29:15 30:-13 78:33
regard==ed	103:15
mislaid	29:15 30:-13 78:33
and must	87:11
regard	103:15
be regard	103:15
regard as	103:15
as lost	78:25
all over	19:-9 116:10 123:28
over from	40:13
to scrap	8:9
predecessor==	79:26
#o time	41:8 42:-10 79:17 96:53 126:-11
time lack	79:8
lack ,	3:-11 79:8 93:15
a newly	79:11
newly made	79:11
predecessor	79:26
its predecessor	79:26
, went	79:13
fret made	79:11
again out	79:8
y'all ,	103:8 112:16
of fresh	79:8
fresh wire	71:-13 72:50 79:52 92:-15 126:-8
was made	79:13 125:23
by a	43:11 79:11 126:8
; the	2:-8 76:18 79:8 113:12
fret was	36:8 72:-14 79:17 93:19
put them	73:16 99:11 121:8 122:12 123:-11
tin without	80:12
odd==s	80:9 126:20
odd ,	80:11 90:10
unmeasur ,	40:-12 80:28
empti==ed	40:-10 67:10 80:19
apron==	62:-11 63:18 78:-8 80:32 126:20
packet==s	121:8
empti	40:-10 67:10 80:19
i empti	67:10
empti my	40:-9 80:9
apron	62:-11 63:18 78:-8 80:32 126:20
my apron	40:8 78:-8 80:9 126:24
packet and	80:11 126:-8
piece ,	40:-12 47:-11 51:24 67:-8 81:10 82:11 102:10
not #n	22:-10 46:28 51:-8 52:9 56:23 67:17 100:20 118:14 126:-29
i'd say	90:10
fistful==	80:34
fistful	80:34
a fistful	80:12
fistful of	80:34
mess==	0:-9 38:21 40:9 70:-10 80:10 126:17
dump==ed	0:-9 40:17
mess	0:-9 19:10 38:21 40:9 70:-10 80:9 113:10 126:16
a mess	0:-9 38:21 70:-10 80:10 126:17
mess of	0:-8 80:10
of old	0:-9 80:25 92:24 126:-18
dump	0:-9 40:17
circa==	59:28
piece from	2:10
circa	59:28
the eye	79:12 90:19 126:-9
without measur	40:-8 80:20
enter a	54:24 99:10 113:-13 121:9
some #n	80:18
#n unmeasur	80:13 81:8
, kept	73:10
kept in	73:9 79:8
heap==	17:15 85:9 115:8
heap	17:15 85:9 115:8
heap of	17:15
nobody had	51:33 117:-8 118:-13
rain==	22:9 44:12 78:12 82:8 116:-11 118:12
outsid==e	31:11 41:16 126:-9
^ rain	22:9
outsid	31:11 41:16 126:-9
all with	114:19
with raw	43:10
fear==ed	101:38
fear	101:38
i've measur	126:24
right down	62:11
up that	51:15
straight ,	42:16 93:-9 95:26
and we	122:11 126:23
&#d#n@day@wire	47:9 82:17 117:9
yesterday was	125:-10 126:20
been measur	2:-10 42:10 47:-10 81:21
; its	47:-10 60:11 81:10
its piece	2:-10 47:-10 81:21 84:11
replac the	72:-14 79:21
number==s	19:34 25:8 60:8 71:-28 72:17 74:-19 76:-12 82:38 83:28
dustbin==	76:-10 82:11
dustbin	76:-10 82:11
out with	41:12 82:20 87:9 101:19 123:10
at thos	82:12
, bin	41:20 73:9 79:8 82:21 126:-20
nor==	22:14 66:16
they'r no	82:12 126:-11
to man	78:14
nor	22:14 66:16
hon==	82:8
rust==ed	44:16 82:43 126:-14
^ pitch	58:24
hon	82:8
they'r rust	82:21 126:-13
are bent	13:-12 44:41 82:16
surplus==	8:-26 22:66 82:8
surplus	8:-26 22:66 82:8
surplus $	8:-25 22:53 82:8
from each	71:-18 83:25
into @job	83:27
twin==s	53:-10 110:11
twin	53:-10 110:11
becom fret	71:-12 83:23
i've the	73:8
the pair	82:18
#n becam	37:18 76:-8 83:11
becam the	76:-8 83:12 92:8
with all	87:8 114:10
bit and	84:10
pleas keep	42:10 69:8 74:11 77:9 84:9
any $	11:10 24:22 80:25 126:-24
^ whatever	11:17 12:11 24:-10 48:-10 85:36 113:-9
whatever is	7:9 12:11 27:-9 49:-10 85:23 107:27 120:17
lot by	84:18
all .	84:29 92:9 113:12
to my	40:17 84:11 90:23 100:9 126:-25
plan has	5:-18 84:29 99:8
has for	5:-18 84:29
magpi==e	41:16 126:-11
is like	50:11
magpi	41:16 126:-11
so everyth	84:9
to need	84:13
girl==	84:12
going into	84:12
girl	84:12
every last	83:10 84:11
sick of	66:14 84:10 98:11 126:-10
@job gonna	84:11
would $	8:29 54:-8 84:11 113:15 126:-23
@job pleas	4:34 13:20 18:34 34:15 38:-8 49:-17 83:-9 85:16 98:-9 106:13 115:22
the complet	44:-19 84:56 85:15
complet material	44:-12 84:24 85:20
material of	44:-11 84:39
foreseen==	84:13
foreseen	84:13
in full	84:13 118:15
requirement==	104:14
asid the	85:-8 126:20
requirement	104:14
for other	42:11 85:12 100:17
pleas free	107:8
asid half	85:9 109:21
loos that	84:-18 85:31
we been	8:-15 19:44 24:-14 85:10
been hold	85:20
put asid	84:-32 85:42
other $	3:18 4:11 37:-8 39:22 73:10 79:-8 84:-15 85:20 91:-13 93:26 98:20 100:11 118:8 126:-18
iron==	23:54 86:17 126:-13
finger==	22:14 23:50 86:24
finger ,	1:10 86:8 125:9
@person drop	44:-9 126:17
hollow to	86:10
call big	100:15
bar out	87:-18 126:32
. for	115:10
hurt==s	23:28 44:24
hurt	23:132 36:-34 44:24 126:-27
use from	87:11 126:-8
that short	87:12
we ai	123:10
about that	0:-8 38:8 39:9
be remov	33:-10 123:14
for alway	123:8
our press	87:24 99:-9 100:13 103:16 126:14
its cradl	88:39 95:-8
that keep	92:14
: cradl	88:15
took @job	88:12 98:11
neck out	88:30 126:-10
touch to	30:12
be sure	18:10
has its	87:-11 94:9 103:-16 126:43
its back	86:10 103:-17 126:35
a paper	88:18 100:26 104:-13 126:-10
body from	88:9
a plan	99:20
bar can	87:15
its plac	16:21
hollow at	88:24
board and	4:22
it end	94:12
, after	55:8 62:13 63:26 88:15 108:-18 113:-8 126:29
ascertain==ed	88:10
ascertain	88:10
micrometer ,	89:10
#n thing	84:17 89:8
thing and	63:32 89:8 126:-13
my micrometer	89:17
everybody ,	78:12
&#d@person@wire	1:9 40:-8 70:-8 89:31
a thickness	99:8
note the	50:-10 89:10 96:10 111:15
dimension of	4:47 50:-10 89:10
tip==s	68:10 90:20 126:26
forth==	90:20
forth	90:20
lie quiet	90:22
, steady	90:34 126:-10
squint==ed	90:10
squint	90:10
down @job	90:9 95:9
neck in	16:11 90:10
and number	12:-14 14:21 90:10
sunk to	90:10
just a	90:20 100:10 114:27
#n phon	90:8 103:8 126:-11
phon call	90:8 103:8 126:-12
call ,	8:10 90:8
but on	54:8 90:8
edge from	90:11 126:-8
edge is	87:11
away over	27:18
from wher	5:12 90:15
am stand	5:13 90:15
point is	90:9
top of	19:16 91:9 98:20 118:-12
, you	27:11 88:13 91:15
anyth under	91:11
under them	91:10
air==	88:26 91:-8
air	88:26 91:-8
air under	88:13 91:-8
it but	49:17 125:16 126:-21
sit tight	91:15
gap in	8:23 126:-8
between crown	91:29
crown and	87:11 91:28
the groov	92:8
is why	30:-11 54:-9 72:13 92:28 116:12
why it	92:10
stay up	46:-8 92:35
dust and	92:11
and so	64:9 72:14 79:12 92:8 96:11 97:9 126:11
go down	16:11 75:22 92:17 96:12 126:-13
slot loos	4:-17 92:74 126:-11
becaus #n	16:14
up from	51:13 54:19 117:-12
muck==	92:23
muck	92:23
of muck	92:23
is keep	39:24 126:-9
too littl	52:9
loos ,	4:-10 59:27 92:45 126:-14
incorrectly==	92:9
incorrectly	92:9
rais==ed	92:26 126:-12
rais	52:34 90:-9 92:26 114:70 126:-22
deeper==	42:-11 93:17
deeper	42:-11 93:17
deeper than	42:-11 93:17
#d under	42:-21 93:34
besid it	42:-8 93:27
hundredth below	93:21 126:24
is how	76:9 93:12
bit low	94:10
the neighbour	58:20 125:10
it measur	42:10
measur to	93:11
to stand	115:25
mm beneath	42:-9 71:-10 93:29
beneath its	93:18
depression==	93:19
relativ==e	93:19
adjacent==	93:19
depression	93:19
relativ	93:19
adjacent	93:19
end with	23:21 71:10 72:-10 94:16
ever going	82:10 126:-9
, ever	94:30
but she	63:-11 64:12 107:16 126:-13
she over	44:13
)~",
R"~(so #n	39:10 72:30 82:17 94:10 96:9 117:12 126:-32
stay the	94:41 126:-13
look for	0:8 1:11 13:-32 30:52
and never	42:11 80:8 109:24 126:-8
#o the	42:8
last on	90:-11 94:44
and they'll	122:9
ever gonna	120:9
will get	33:-11 119:23
never a	94:16
follow==	13:-11 15:-10 75:11 94:14 115:72 118:26
the final	94:23
to follow	13:-10 15:-10 94:10 115:72 118:24
follow $	94:10
confirm==ed	94:23
in any	122:10
any way	3:11 43:-8
cat==	78:17 95:9 126:10
bent like	82:21
cat	78:17 95:9 126:10
a cat	95:9
got relief	95:47
clamp==s	97:17 126:13
heat==	99:17
heat	23:14 29:-12 31:-12 62:9 78:10 95:12 98:12 99:16 119:10 126:28
dead straight	95:33
made straight	95:22
straight again	95:22
strip==	60:-22 61:32 88:14 126:-8
strip	60:-22 61:32 88:14 126:-8
loos and	92:8
and went	17:15
went back	101:14
knock it	96:22 98:10 100:23 112:-12
home again	96:24
pull '	96:8 123:10
i shim	0:-13 96:46
withdrawn==	49:49 87:12 125:23 126:-11
withdrawn	49:49 87:12 125:23 126:-11
the reseat	126:9
stuck==	38:10 40:17 51:13 97:37 98:-13
stuck	38:10 40:17 51:13 97:37 98:-13
stuck down	97:26 98:-10
glue and	92:11 97:8 126:16
and sit	37:11 59:11
under a	97:10
but #n	0:-8 1:-12 3:38 96:9 98:12 126:-18
were glu	97:13
adhesiv==e	97:11
adhesiv	97:11
rub==bed	4:10 27:13 98:32
ston==e	17:-15 44:26 98:83
rub	4:10 27:13 98:34
rub the	27:13
the ston	44:27 98:31
ston ,	98:26
were too	72:22 82:11 98:12 126:-17
i sand	98:13
sand the	98:41
thos #n	5:9 9:29 51:-10 81:17 97:14 98:18 119:18 126:-11
#n lower	76:19 98:13
ston on	98:37
abrasiv==e	98:51 126:-15
press was	98:10 102:-14 126:20
never going	39:19 98:10 126:-19
to shift	76:-15 90:-13 98:9 126:51
took fret	98:14
abrasiv	98:51 126:-15
with abrasiv	98:25 126:-11
abrasiv $	98:11
sandpaper==	10:-9 97:-9 98:25 121:19
sandpaper	10:-9 97:-9 98:25 121:19
a block	97:-8 98:13
level ,	52:8 98:34 126:-9
else on	98:12 100:9
by hand	51:-10 67:20 103:15 126:11
levell with	98:17
abrasiv ,	98:22
this was	1:11 98:9
was yesterday	98:9
individual levell	45:-9 98:22
thing for	2:14 99:21
bend wire	99:21 108:17
wire must	10:14 30:-8 99:21
better $	42:18 56:11 99:20
corner==	96:14 99:20 102:9 126:26
corner sinc	99:13
a plac	1:21 99:22 106:10 126:-34
engrav==ing	99:11 126:-9
action==	0:-13 16:-8 17:37 99:12 102:14 125:40 126:-8
engrav	99:11 126:-9
at an	100:12 118:15
action	0:-13 16:-8 17:37 99:12 102:14 125:40 126:-8
an action	100:12
action ,	99:13
ask what	10:-8 19:9 32:23
for ,	32:15 38:13 72:12 126:-11
nice ,	1:9
grind==	12:14 23:21 41:10 99:31 100:-8 101:11 104:14 126:-16
grind $	12:15 37:30 126:-17
a belt	88:8 99:33
preparation==	99:14 100:8
creat the	99:11 121:9
#n place	76:9 99:8 100:9
place and	99:11
preparation	99:14 100:8
category==	99:8
entitl==ed	99:8
unit==s	99:8
category	99:8
entitl	99:8
rocker ,	29:15 30:-13 99:24
befor you	100:9
can do	36:15 39:32 66:22 100:9 112:10
someth else	31:10 100:9
you need	100:9 104:20
setup :	100:10
doorstep==	34:-9 100:11 126:12
cousin==	34:-10 59:12 100:13 126:19
press==es	16:18 34:-9 100:56 102:-11
somebody left	1:10 15:9 34:-9 37:-8 92:8 100:11
left a	1:18 34:-9 100:11
on our	14:34 34:-9 100:11 126:12
doorstep	34:-9 100:11 126:12
our doorstep	34:-9 100:11 126:12
cousin	34:-10 59:12 100:13 126:19
firewood==	100:9
bench went	100:10
went for	100:10
firewood	100:9
take no	122:13
no time	36:12 80:10 100:24 111:-9
pleas amend	53:10 55:-8
only ever	63:21 123:19
shall not	123:19
carry $	58:9
scrapyard==	101:19
whistl==ing	101:8 126:15
scrapyard	101:19
the scrapyard	101:19
whistl	101:8 126:15
way ,	15:10 44:-13 91:16 94:11 101:8
delet it	101:30 104:-9
machin list	14:-8 26:24 101:25
eras==e	101:8 123:9 125:47
the kind	101:27
not exist	87:8 101:9 122:16 123:-9
exist anymor	101:8 122:17 123:-9
by us	101:9 120:9
eras	101:8 123:9 125:47
, eras	101:8 125:13
eras it	101:8 125:13
machin we	101:24
pleas delet	101:15
kindly remov	66:20 126:-9
permanently==	101:19
permanently	101:19
oil==	51:21 101:-11 102:21 122:-10 126:21
oil	51:21 101:-11 102:21 122:-10 126:21
sand machine	100:20 102:10
not turn	23:14 32:9 102:11
turn ,	102:11
bust==	26:-14 102:56 103:-14 123:10
bust	26:-14 102:56 103:-14 123:10
year==s	8:-10 89:-15 123:-8 126:117
belt on	103:24
tang that	92:11
that took	96:9
of action	102:16
that day	29:12 55:21 102:17 110:25 126:-29
knacker==ed	102:12
knacker	102:12
#n not	102:9
press stay	103:13
unavailabl==e	102:39
throughout==	5:14 102:15
maintenanc==e	102:16
press will	30:-8 102:20 126:16
unavailabl	102:39
throughout	5:14 102:15
maintenanc	102:16
for maintenanc	102:16
maintenanc $	102:16
#t tomorrow	55:10 106:19 112:17
repair==ed	26:11 100:-10 102:-24 103:61
repair	26:11 31:12 100:-10 102:-26 103:79 126:-10
sand machin	103:11 104:19
mechanic==	103:13
i gave	15:13 16:15 46:12 65:-18 85:12 103:10
gave it	16:16 101:18 103:8 126:-10
mechanic	103:13
the mechanic	103:13
me to	33:27 41:9 44:14 45:8 65:-10 103:10 111:-14 117:14
in work	26:18
work order	26:18
good new	51:-10 54:11 103:17 117:10 119:32
and run	26:-12 103:21
repair==	31:12 103:18
the repair	102:-23 103:32
restor==ed	63:-15 64:40 103:11
restor	63:-15 64:40 103:11
to servic	102:-9 103:33
sander no	100:-9 103:39
#n may	92:-8 103:15 107:12 114:8
for round	104:19
corner you	104:20
: bench	59:-9 104:45
gently==	126:17
the arbor	16:-14 23:35 36:-14 102:-8 103:9
arbor ,	27:15
gently	126:17
gently ,	126:17
fil at	104:10
fil is	105:15
let that	107:11
stag need	104:10
lad==s	104:15
you'll==	86:-13 93:9 126:18
the pull	0:33 108:10 109:15 126:-19
you'll	86:-13 93:9 126:18
be need	8:-8 22:23 85:8
when ,	11:-10 12:-8 30:32
board==s	22:21 104:37
necessary==	104:8 115:18
the tru	44:10 108:35 109:13 112:9 126:-16
tru of	44:12 104:8 108:13 109:14 126:-10
necessary	104:8 115:18
stag to	100:-8 105:18
to whatever	104:15
whatever machin	104:15
machin it	104:21
take about	113:-13 126:15
mak the	105:8
a set	100:-8 105:21
for levell	105:17
my guess	105:16
guess ,	3:-10 42:17
tru a	28:40
dress a	105:17
a full	105:16
full set	105:16
calculat==e	30:8
bend #n	28:11
calculat	30:8
be taken	66:14 105:19
taken from	105:19
the report	101:-8 105:54
. @person	60:10 98:19 106:25
snatch==es	106:10
befor somebody	38:10 106:10
reserv myself	106:11
myself the	106:11
referenc==e	69:11
#t in	55:10 110:-12
referenc	69:11
pleas book	51:8 102:27 107:-11 118:10 126:-10
free it	65:-8 66:-33 107:9 126:47
she doe	107:17 112:14 126:-24
@day .	55:15 107:20
. cancel	107:20 120:13
gone off	44:14 85:8 107:10
her sander	107:17
sander slot	107:17
be cancell	49:11 107:9 126:8
ever take	82:17 126:-8
name off	65:-12 66:26
was book	85:-9 107:14
pleas cancel	27:-18 32:-11 49:14 107:18 120:12
kindly cancel	107:27
, more	100:27 109:10 112:17 113:-9
the pitch	100:27 112:17 113:-9
goggle==s	23:17
has his	44:-8 108:19
goggle	23:17
start cut	84:18
of now	44:-8 50:10 59:34 66:36 99:-8 108:10 119:-8 122:10
fact==	108:11
fact	108:11
@person commenc	33:8 108:15
seat on	74:10 109:12
hurt $	23:53 44:24 126:-21
break==ing	109:68 111:-9
break off	109:79 111:-9
off levell	109:45 126:-14
levell ,	17:-9 108:46 109:17
down==ed	109:24
halfway==	58:22 109:38
so i've	17:9 26:-10 96:12 97:10 98:15 104:27 108:22
i've down	109:24
down tool	98:-8 109:71
halfway	58:22 109:38
@job halfway	109:23
halfway through	109:38
interrupt==ing	109:17
knock==ing	109:18
being ,	109:10
sinc a	109:12
suspend==ed	108:-21 109:66 126:-9
prior==	108:-14 109:17 114:60
completion==	65:-9 108:-13 109:17 115:19 126:23
suspend	108:-21 109:66 126:-9
prior	108:-14 109:17 114:60
completion	65:-9 108:-13 109:17 115:19 126:23
completion $	65:-9 108:-12 109:18 126:25
incomplet==e	109:32
the polish	44:-10 99:11 101:9 105:11 108:16 109:40 126:-12
incomplet	109:32
the early	112:11
early start	110:10
, poor	110:12 122:8 123:8 126:-10
make his	110:10 114:10
week @day	110:9
noon every	53:9 110:10
work time	29:55 62:-8 112:-10 126:-9
@day alway	53:20
contractual==	53:-10 110:10
contractual	53:-10 110:10
are @day	53:-11 110:15
between #t	53:9 55:-8
she told	111:10
parent==s	111:11
with my	90:10 98:10 111:10 125:9 126:-10
parent	111:11
@person sister	111:10
get marri	111:8
so @person	37:23 53:10 55:-9 62:32 65:17 110:10 121:-9 122:10 126:-13
)~",
R"~(is fill	111:9 126:31
dentist ,	65:16 111:9
all on	2:14 16:-11 54:32
home to	64:11
sicki==e	111:28
sicki	111:28
absenc==e	111:15
ground==s	111:15
illness==	111:15
absenc	111:15
illness	111:15
normally==	28:12 112:14 126:-10
not like	64:16 112:14 126:-19
normally	28:12 112:14 126:-10
normally $	28:12 112:14 126:-10
later on	46:10
bring the	11:-10 48:17
the doing	78:11
: only	43:14 110:-20 112:23
but he	126:13
he one	65:14 110:-12 112:18
one me	65:14
so he	13:14 64:11 111:12 126:-10
&#n#t@day@person	53:24 55:-10 106:16 112:-17
till noon	112:9
noon on	54:31 110:12
she the	59:28 110:-9 112:12
to batch	19:9 106:9 110:-9 112:12 116:14
batch $	51:11 110:-9 112:12 116:15
work @person	29:53 110:-33 112:10
can come	33:-9 39:10 111:-13 112:38 123:17
come tomorrow	112:9 119:14
contrary==	112:20
contrary	112:20
at work	112:39
work like	110:-16 112:-13 126:42
other day	107:9
that clos	54:-11 113:21
christma ever	111:15
, shop	113:9
run as	54:-8 113:9
as normal	54:-10 113:23
open as	113:24
announc==ed	113:13
rescind==ed	113:14
the closur	54:-8 107:-16 113:92
announc	113:13
rescind	113:14
@day so	54:10 102:10
everyth else	8:41 9:9 46:9
hurry at	114:19
book and	19:9
world==	114:8 123:10
world	114:8 123:10
the world	114:8 123:10
urgent ,	114:29 126:19
, drop	49:35 101:28 114:8 123:26 126:-12
drop what	114:27
what you'd	100:13 114:12
importanc==e	114:92 126:-15
importanc	114:92 126:-15
ordinary==	114:25
ordinary	114:25
priority ,	114:14
@job we	74:9
#o come	66:12 115:10
and only	54:18 55:-8 115:10
may start	115:10 126:16
collect==	65:-8 115:10
practic==e	110:22 112:-21 115:8
practic	110:22 112:-21 115:8
a heap	17:15 85:9 115:8
till @job	115:25
await==	115:29 126:-10
await	115:29 126:-10
defer==red	115:19
defer	115:19
commencement==	115:15
conditional==	26:8 33:20 115:15
commencement	115:15
conditional	26:8 33:20 115:15
@job being	3:11 13:-20 15:43 44:-12 115:37
being finish	44:-11 115:40
not befor	52:11 115:9 116:10
, look	116:42
a clear	22:17 116:13
longer and	98:13 116:13 126:-9
recheck next	116:20
our #o	116:13
then ,	37:10 48:-10 49:43 66:11 115:-8 116:13 126:-12
control==	37:-9 46:8 116:16
control	37:-9 46:8 116:16
#t is	53:-12 110:-13 126:30
again after	93:9
arrang==e	116:15
telephon==ed	117:15
telephon	117:15
with lindwurm	33:-17 117:38 118:-10 119:-9 120:30 123:44 126:-17
lindwurm and	10:20 33:-16 51:-14 117:30 120:21 122:21 126:-13
they will	117:14 118:14 120:-8 126:-11
will send	117:23
send us	117:35
@wire rod	117:14
, lindwurm	33:36 51:18 117:26 120:-15
to ferro	122:20 123:-9
, lovely	118:11
she say	80:8
rate==	8:-21 9:27 25:38 44:-11 126:18
rate	7:12 8:-21 9:27 25:46 44:-11 82:-8 126:17
this rate	8:-11 9:28
by christma	22:24 126:-9
and order	10:-9 22:12 117:-17 118:17 120:-9 126:26
order off	119:11 120:11
off lindwurm	117:9
, they'll	117:11
they'll be	94:15 126:-19
dozen==	22:-13 80:19 117:18 118:14
dozen	22:-13 80:19 117:18 118:14
another dozen	117:20
the firm	33:19
also #n	82:29 117:24 118:-12
, delivery	20:13 51:-20 74:22 117:24 121:8
purchas order	32:10
for order	117:15 119:17
driver==	7:12 82:-8 106:-12 118:28 126:15
driver	7:12 82:-8 106:-12 118:28 126:15
the driver	118:8
crown measure	70:-8 89:8
lindwurm sent	118:24
and say	51:-10 75:13 90:13 117:10 126:-14
that we'd	113:13 118:13
, every	19:12 29:-12 46:14 53:15 85:14 106:25 110:30 111:-8 118:12
lindwurm are	118:10
the remain	118:10
invoic==ed	118:15
order no	118:12 120:21
invoic	118:15
expect next	118:8 119:-10
i wonder	25:9 32:23
they sell	51:21
so order	120:9
new for	37:30 54:22 119:17 126:-22
early ,	64:11 82:17 119:9 126:-15
say==ing	8:-15 19:44 24:-12 39:12 78:21 119:9 126:-31
be with	119:16 126:-8
heat==s	78:10 95:11 119:11
lindwurm went	119:11
heat $	78:10 119:11
us now	63:17
revis==ed	119:8
lindwurm has	33:-8 118:8 120:9 122:24 126:-11
that order	71:-8 83:9 118:-9 119:36 120:15 126:-10
deliver on	119:25 126:-9
dear==	37:-10 38:-9 78:17 92:9 120:27
dear	37:-10 38:-9 78:17 92:9 120:27
too dear	120:27
dear $	120:32
bundl==e	33:11 68:11
@person found	103:12 104:16 120:13 126:-12
bundl	33:11 68:11
bundl of	68:11
it under	24:9 70:11
the stand	54:14 113:-11
&@person@wire	5:16 19:28 22:15 32:-10 63:-12 117:-8 118:16 126:21
patienc==e	65:14 105:-9 126:76
lost my	126:24
patienc	65:14 105:-9 126:76
so our	62:13
lindwurm is	118:9 123:15 126:-12
do without	38:-21 39:28 111:13 126:25
they can	119:10
gonna get	120:9
get here	118:-15 119:37
risen==	46:18 116:-12 120:11
risen	46:18 116:-12 120:11
risen $	46:16 116:-12 120:11
cancell yesterday	120:19
delay==s	120:18
to reseat	96:-8 120:18
wher we	25:11 46:16
can buy	121:18
kestrel==	118:-8 121:18 123:10
kestrel	118:-8 121:18 123:10
they only	121:9 123:19
box with	121:9
supplier .	10:21 33:-12
draw==s	121:10
barb==	50:10 89:-9
draw wire	121:10
in his	16:16 63:14 83:-8 94:16 121:10 126:-8
, believ	76:10 104:11 121:10
it or	76:10 104:11 119:9 121:10 126:-11
a nice	87:11
sell by	121:12 122:18
metr ,	70:9
supplier for	33:20 121:24
here in	51:-28 117:27 118:-10 119:20 121:14
no less	122:13
furnisher==	121:8 123:18
we'r==e	121:8
draht==	121:8
furnisher	121:8 123:18
we'r	121:8
draht	121:8
add==ed	99:13 100:-8 121:14 123:14
moreau==	121:19
supplier must	121:18
be add	121:19
moreau	121:19
wire by	20:14 50:10 121:17
minimum order	10:-15 32:-9 33:50 118:-11 122:13
account for	20:28
are sold	101:17 102:-13
lindwurm need	119:-8 122:16
take at	5:10 42:-10 43:19 122:19
lindwurm :	33:25 54:-11 122:28
: pack	33:26
the daughter	33:26 122:30 123:11
daughter have	123:8
have thrown	82:9 122:10 123:-10
it seem	122:10 123:-10
so ferro	123:14
daughter is	122:13 123:-10
sweet==	0:-27 12:21 37:38 54:10 66:-10 118:-13 122:11 126:44
sweet	0:-27 12:21 37:38 54:10 66:-10 118:-13 122:11 126:44
order as	122:11
littl as	122:11
we like	122:11
minimum any	122:18 123:-9
chang==ing	99:12
a pack	33:10 122:16
lindwurm sell	122:24 123:-9
smallest order	33:37 119:-9 120:-17 122:13
now #n	76:33 83:-8 122:13
trade==s	122:17 123:-8
supply now	122:17 123:-8
trade	122:17 123:-8
now trade	122:17 123:-8
name lindwurm	33:-11 122:24
; pleas	104:14
seller==s	10:-9 33:15 123:11
ferro now	10:-9 123:10
they do	10:-9 122:10 123:11
seller	10:-9 33:15 123:11
shop call	123:8
door for	64:12 123:8
alway ,	121:9
ferro out	122:-9 123:41 126:-8
out .	27:13
strik them	2:-8 123:44
deal==ing	79:-9 96:10 121:8 122:-9 123:15
deal	79:-11 93:18 96:19 114:26 121:8 122:-9 123:15
not deal	123:15
deal with	123:15
supply is	33:-10 123:20
of supplier	123:16
oh==	3:-9 37:-10 38:-10 43:12 78:16 92:9 125:10 126:14
oh	3:-9 37:-10 38:-10 43:12 78:16 92:9 125:10 126:14
^ oh	3:-9 37:-10 38:-10 43:12 78:16 92:9 125:10 126:14
oh no	125:10 126:-8
do that	66:18 84:10 116:14 125:9 126:-18
it like	104:12 125:9 126:-8
like it	125:10
was befor	125:10 126:-8
you take	0:11 1:-12 36:-9 39:12 41:10 58:8 87:16 113:16
nope==	46:31 125:8
nope	46:31 125:8
^ nope	46:31 125:8
sleev==e	23:25
hit==	78:13
sleev	23:25
my sleev	23:25
hit the	92:22
keep ,	21:18 22:-11 39:-9 41:28 101:15 126:-25
so whatever	85:13 114:10
just report	125:23
serve==s	0:11 115:12
well that	49:10
serve	0:11 115:12
, i'd	60:-10 67:-11 70:13 72:12 88:15 126:17
thing i	125:55 126:-15
entry ,	122:16 125:20 126:-9
it should	125:9
my most	125:28
most recent	125:28
recent entry	125:28
preced==ing	125:23
preced	125:23
report was	125:23
in error	21:29 22:-11 125:23
withdrawn $	49:17 125:23
me #d	0:11
an old	73:11 99:8
candidate==s	0:77
candidate	0:77
candidate for	0:52
serv for	0:21
suggest==	1:17
suggest	1:17
piec should	0:15
includ==e	0:8 32:20
overhang==	0:8 56:44 92:11
the nearest	0:22
overhang	0:8 56:44 92:11
the overhang	0:8 56:17
should piec	1:14
#n ?	0:8 3:-10 38:11 91:-15 126:20
mind how	1:12
trim off	1:12
at both	3:9 42:-9
my bench	1:9 40:8 107:12 117:-9 118:25 126:-9
#p inch	0:-9 1:14 7:9 42:23
over .	1:14
raw :	1:25 40:-12
wher in	1:9
suppos i	5:12 16:12 45:-12 65:-9 126:10
be for	109:12
least wast	1:9
@wire ?	0:-14 1:14
reshuffl==e	2:63 28:-8 109:-10
reshuffl	2:63 28:-8 109:-10
fewest new	2:23
lay job	2:14
redistribut==ed	2:25
slot should	2:13 76:-9
should they	2:24 76:-9 81:-10
they move	2:13 76:-9
)~",
R"~(tin are	2:25
them nutward	2:15
sand them	82:18 126:-8
slot as	2:34 33:30 126:-17
whol set	2:26 17:-9
touch short	2:16 17:-8
^ fewest	2:80
fewest remake	2:74
, sort	2:12 25:10
cheapest==	2:19 5:17 6:-8 72:-8 74:9
only :	2:19
cheapest	2:19 5:17 6:-8 72:-8 74:9
the cheapest	2:20
nearly all	2:13 126:21
them can	2:23
ok or	3:19
hold a	36:20
mm .	18:14 75:-9
#p is	3:11 34:-9 37:43 41:-8 78:9
you access	0:-14 3:17
still has	126:10
. doe	1:10 31:11
serv $	5:10 66:12
edge only	3:13
usabl $	3:18 42:-15
it have	11:38 30:-23 31:-9
me whether	3:16 9:18 18:10 126:-12
whether #n	126:17
is okay	3:15
or go	0:-8 3:15 109:-15 126:25
that pass	3:11
can that	31:25
its fret	4:9 25:13 114:10
distance==s	4:50 6:-10
distance	4:50 6:-10
slot by	4:28
by slot	4:28 42:-17 77:26
layout==	4:77 13:-8 28:-10 126:-8
layout	4:77 13:-8 28:-10 126:-8
layout of	4:77 13:-8 28:-10 126:-8
fretboard==	4:68 13:-9 17:-10 42:-8 77:24
i mark	4:30
fretboard	4:68 13:-9 17:-10 42:-8 77:24
@job fretboard	4:22 42:-8 77:24
measurement==s	4:24 18:-10 19:29
measurement	4:24 18:-10 19:29
every slot	0:-8 4:28
slot in	0:-9 4:24 5:8 18:-13 75:20
spac==ing	4:54
pull up	4:41 6:24 10:-14 12:39 13:22 44:-15 108:-11
spac for	4:54
scal division	2:-14 4:34 68:10 69:-10
their minimum	4:9 126:8
many new	5:23 9:-17
queu eat	5:33 9:-18
optimis==e	5:32 6:-16
optimis	5:32 6:-16
without open	0:16 5:9
you cut	5:34 72:-13 83:-8
plan job	5:10 16:34
length :	5:11 69:9
economical==	5:45
economical	5:45
scrap==s	5:27 8:9 80:23 126:-10
or stick	2:-9 5:34
piece go	5:8
plan pleas	5:18
is need	1:-13 5:30
schem==e	2:19 5:24 13:-8
schem	2:19 5:24 13:-8
cut schem	5:25
with rule	6:12
rule for	4:-9 6:33 23:13
a sheet	6:20 7:8
sheet to	6:20
cut by	6:24
printabl list	6:10
sourc $	6:10
i nip	6:21 43:14 82:13
bring up	13:54
cut and	0:-27 37:38
sheet of	6:35 7:8 13:-12
label pleas	7:17
written on	7:42 22:-9
label at	7:16
@wire compartment	7:9
compartment ,	7:9
rate==s	7:13 25:8 82:-8
fret bin	7:19
you draw	7:12 10:24 121:-12
draw up	7:9 10:42 121:-12
bin tag	7:39
spring the	7:19
^ name	7:11 14:16 15:94 66:-24 108:-8
label that	7:8 32:22
that go	7:10
label look	7:27 126:-15
look like	7:25 8:17 14:29 46:18 126:-23
everyth we	8:9 25:8 32:8 67:8
^ inventory	8:90 19:-9 51:-8 67:41
inventory pleas	8:97 19:-8
and offcut	8:8 20:24 21:-20
still some	8:25 32:-9
in hand	108:17 126:10
wire forecast	8:-12 9:65
ther @wire	32:8
reach==es	8:-8 9:25 92:8
wire reach	8:-8 9:25
it time	9:51 126:-8
how last	30:12
we going	9:15
rate ,	7:12 9:15 82:-8
work that	9:19
csv $	10:13
our next	10:23 29:-9 32:10
list it	11:18 48:-9 113:-9
buy ,	10:16
phon the	10:29 33:-12
@person order	10:33 55:10 126:-12
buy==ing	8:-14 10:52 12:-8 14:-14 19:-11 21:23 33:-11 99:26 121:16 126:30
the buy	10:62 14:-11
buy list	10:62 14:-11
with price	10:18
order have	10:19
are promis	11:20 12:-15 24:11 30:-9
deliver by	11:14 51:30 67:-11 126:-9
is someth	11:34
time run	11:21
his plat	12:26 66:12
me @person	34:36 66:14 111:-15 126:-8
request==ed	11:-11 12:49 30:-9 126:-9
instrument==s	12:104 14:-10 26:-12 33:-10
which instrument	12:58 26:-9
queu pleas	12:35 49:21
see what	12:15 36:19
ther to	11:-9 12:27 17:-9 22:11 36:26
do at	12:29 36:-8
moment ,	48:21 109:11 126:-9
instrument are	12:68
still unfinish	12:17
customer $	10:-14 12:39
bench :	14:-8 26:9 100:28
#n com	13:11
far has	13:32
#n finish	13:44 15:-9 126:-13
detail==s	4:-11 13:95 33:48 123:-15 126:-9
detail	4:-11 13:95 33:48 123:-15 126:-9
describ==e	13:47 36:39 49:-15
describ	13:47 36:39 49:-15
^ describ	13:47 36:39 49:-15
been start	13:23 126:-12
peopl in	10:8
us are	8:-11 14:48 26:-10 36:-8
which peopl	14:31
ther anyon	14:8 33:24 126:-9
their role	14:31 33:-17
colleague==s	14:18
colleague	14:18
worker==s	14:62 36:-8
worker	14:62 36:-8
peopl doe	14:22
have ,	14:27 33:-18
has everybody	12:-22 14:29
everybody got	12:-22 14:29
: at	15:18 122:14
us look	15:26
somebody assign	13:-11 15:38 126:-10
being done	13:-17 15:41
been given	12:24 15:8 99:10 126:-12
hand is	15:12
all press	45:8
bar do	16:53 126:-38
many pound	16:32 28:-11
group of	16:25 45:8
stand for	8:25 9:-8 60:16
bar on	45:38 126:-21
crown is	16:22 89:10 92:11 126:-15
push fret	16:12 76:24
&#d@day@job	16:9
whol tabl	17:31
of reading	4:-12 17:40
reading for	4:-11 17:26
span==s	13:-21 17:39
untreat==ed	1:16 13:-20 17:28
span are	13:-20 17:36
untreat	1:16 13:-20 17:28
straightedg reading	17:11
result==s	17:13
^ down	17:20 98:-9 109:42
^ given	17:10 126:10
given the	17:10 126:10
reading ,	17:13
levelness==	13:-12 17:114 49:-8 108:-11
levelness	13:-12 17:114 49:-8 108:-11
reading and	17:14
far do	9:10 18:13
bend doe	18:10 26:-8 104:-8 126:28
wire need	18:11
check whether	3:11 18:8
how well	16:-8 18:10 21:13
any troubl	18:25
i've sawn	18:14 38:-8 71:11 75:-9
take @wire	18:24
on each	19:9
shipment==	8:-8 19:19
shipment	8:-21 9:-10 19:113 22:-9
shipment of	8:-10 19:50
batch==es	8:-41 19:92 126:-8
what batch	8:-27 19:33
batch of	8:-43 19:98 126:-8
^ past	19:59 32:14 88:13 91:-9
lot number	19:40 126:-8
delivery so	19:33
@wire deliver	19:28 32:-10 51:9
consignment==s	19:28
consignment	19:37
consignment of	19:37
we receiv	7:-13 8:-18 9:-10 19:37 32:-12 126:60
by lot	19:31
in november	8:-13 19:-9 20:40 21:-16 126:28
@wire balanc	20:15
wire came	20:9 36:15
what went	20:33 34:30
month account	20:15
, used	37:14 83:20
used ,	37:8 83:16
consumption==	20:14
consumption	20:14
#c pleas	20:14
statement==	20:10
statement	20:10
sheet for	6:15 7:17 12:43 27:-8 126:-13
turn into	0:9 20:24 21:-20
the longer	20:35 21:-16
reconcil==e	8:-8 9:-11 20:42
reconcil	8:-8 9:-11 20:42
^ reconcil	8:-8 9:-11 20:42
save on	21:17
march==	126:16
the offcut	72:12 126:-11
using up	21:68 22:-8
pay $	21:48 22:-8 80:-14 126:15
#n september	21:22
paid for	5:-17 21:27 84:10
without the	5:-17 21:32 51:-10 117:20
- time	14:15 21:14
saving of	21:29
@wire sav	21:16
sav by	2:16 21:13 31:-9
economis==e	21:11
economis	21:11
october and	20:-16 21:22
thank to	37:30 75:15 100:15 104:11 126:-20
the money	21:11 29:-10 110:11
by mak	21:12
mak fret	21:12
sav the	21:8 73:19
and money	21:9
benefit==	21:30 22:-11
benefit	21:30 22:-11
ever use	34:25 126:-18
are useless	22:9
piece have	22:27
been touch	22:18
tin want	22:23
clear -	22:17
- out	22:17 102:10
junk in	8:-39 22:54
unus==ed	22:17 71:-23 72:24
unus	22:17 71:-23 72:24
more :	4:10 22:17
spac $	22:27
list whatever	22:14 36:17
idle in	22:13 56:24 126:-10
@wire lying	0:8 8:14
which leftover	22:34
leftover are	22:34
be bin	22:18 82:10 126:-13
anyth kept	24:19
are spoken	24:13
has any	24:12 25:29 34:-9
been kept	24:26 38:11
kept back	24:22 84:11
piece on	24:31 80:25 126:-30
on hold	24:77
is earmark	8:-25 22:-8 24:64
reserv wire	24:31
been laid	24:17 85:18
rose==	13:-12 16:-14 25:55
rose	13:-12 16:-14 25:55
lift==ing	25:24
rate of	8:-10 25:39
sinc it	25:29 34:-9 41:11
fret pop	25:31
pop up	25:31 46:14
after a	24:18 25:8 46:21 95:10 120:21 126:-17
, spring	25:9 111:17
reliabl==e	7:17 8:-8 25:11 33:82 126:-29
reliabl	7:17 8:-8 25:11 33:82 126:-29
how reliabl	25:11 33:45 126:-14
reliabl is	25:11 33:11
of sprung	8:-9 25:31
stay seat	25:17 126:-13
sprung fret	25:69 44:-9 126:-9
compar==e	19:14 25:23 33:19 126:-8
lift==s	25:23
compar	19:14 25:23 33:19 126:-8
^ compar	25:23 33:19
compar the	19:14 25:23 126:-8
^ were	25:14 72:-52 96:-8 126:70
anyth broken	26:54
broken down	26:54
are both	26:53 102:-8 103:-16
many place	14:-11 26:31
somebody using	26:9
using a	26:9
, machin	26:25 101:-8 104:14
machin by	26:26
our machine	26:15 101:46
^ reservation	24:-10 27:73 85:-9
are taken	27:11
taken on	26:-17 27:56 30:-8
machin reserv	27:18
book list	27:49 107:-26
who want	1:61 27:20 34:-35 39:-11 64:19
doe levell	26:-19 33:-8 104:-17 126:78
levell take	28:-66 33:-19 105:8 126:107
step doe	28:11
we usually	28:10
slot ?	18:11
when only	28:17
, stag	28:11 108:11 109:-10
stag by	28:11
by stag	28:11
stag $	28:16
per stag	28:17
stag ,	28:10 44:8 104:28
break==s	31:11
down into	28:24 109:-9
@person time	29:17
here next	29:62 30:-12
free tomorrow	30:28
do this	29:-11 30:37 111:-11 126:25
ther befor	30:18
must begin	11:-9 12:-8 30:26
)~",
R"~(' work	10:-11 30:31
day by	10:-15 29:10 30:30
bring==s	31:11
soonest we	31:12 126:-8
possibl this	31:8
manag==e	31:20 45:27 126:-16
manag	31:20 45:27 126:-16
we manag	31:20 126:-9
a shall	31:12
in another	31:12
refret this	31:13
@wire suppos	9:-11 32:22
still open	12:15
has somebody	26:22 32:11 102:-9 126:-14
somebody already	15:23 32:11 126:-14
order includ	32:9
we exceed	8:-28 9:-9 32:57
exceed any	8:-28 9:-9 32:57
supply sell	33:12
sell $	33:12
delivery time	19:-12 33:26 122:27
know about	8:-8 33:39 99:10
about lindwurm	33:47
they keep	33:20
what they	42:12 119:10 126:-8
, our	119:15
least must	33:29 122:-13
take from	33:29 122:-13
vendor==s	14:-16 19:-9 33:110
vendor	14:-16 19:-9 33:110
and their	12:-16 14:11 33:35
how quick	33:28
quick are	33:18
fastest==	33:33
fastest	33:33
who could	32:-9 33:36
minimum==s	33:29 121:-17
and minimum	33:47 121:-17 122:-17
of everybody	14:10 33:17 121:-10
lindwurm say	33:17 119:37 120:10 126:-10
delivery day	33:18 119:9
report today	34:36
record of	4:-14 34:50 126:-9
done so	13:14 34:35
entir $	34:105 126:-19
to book	36:16 126:8
book a	27:-11 36:16 111:37 126:-11
kind==s	36:10
of question	36:20
you understand	8:-8 36:55
everyth you	36:34
word==s	34:12 36:32
word	33:8 34:12 36:45 75:11 88:15 126:-9
which word	34:12 36:31
i give	16:22 17:-12 36:12 66:21 111:-8 126:11
give a	36:13
job to	13:-11 15:-9 36:13 115:49
someon $	24:18 36:13
stocktak ,	67:36
this thing	36:26 111:-9
dress number	37:27
we'v taken	12:32 37:15
taken the	37:32 38:-14 106:8
^ grab	106:19
and make	114:10
fit==ted	83:10 103:11
fit piec	37:12
use up	1:9 83:8 126:-10
earmark==	5:-16 37:-20 38:57 44:-13 84:64
^ earmark	5:-16 37:-20 38:57 44:-13 84:64
on to	18:-8 38:47 65:14 108:9 126:-14
tag==	13:14 37:-10 38:40
^ tag	37:-10 38:40
>==	0:-11 38:15 56:19 62:14 65:-11 71:38 104:10
>	0:-11 38:15 56:19 62:14 65:-11 71:38 104:10
- >	0:-11 38:15 56:19 62:14 65:-11 71:38 104:10
have piec	37:11 38:24 39:23 126:-34
@wire pleas	7:11 39:8
unreserv==e	13:-13 39:89 41:-11 74:-13 85:47
unreserv	13:-13 39:89 41:-11 74:-13 85:47
^ unreserv	13:-13 39:74 74:-13 85:47
goe back	39:25 85:12 104:11 114:25
command lot	39:28
@person chang	39:18 64:16 113:10 126:-24
a pull	40:26 73:-13
^ leftover	40:17
is rubbish	22:10 39:-9 41:34 78:12 125:10
twist==ed	41:42
toss the	41:19 42:-14 79:28 82:35 89:-8 126:-22
twist	41:42
pleas get	41:9
^ away	41:17 82:12
bucket==	41:16 82:32
bucket	41:16 82:32
scrap bucket	41:16
&#d#t@wire	41:12
we bin	41:27 82:-10 126:22
#p :	42:34
read #n	3:-8 4:20 10:15 42:23 90:17 91:-10
^ note	42:36 54:-12 108:8 117:14 122:43
note down	42:32 117:10
nip too	43:15
botch==ed	42:-15 43:23
botch	42:-15 43:23
mm now	42:-15 43:23
raw at	42:-9 43:18
- fil	42:-10 43:42 98:21
, down	42:-10 43:42 98:-11 102:33 109:-11
#n lack	13:26 42:-11 43:22 79:-8 126:-16
mm ;	2:11 42:-9 43:16 56:-9 81:-10 126:26
&#c#d#n#o@job	42:-9 43:17
all out	44:10
complet $	4:-14 44:72 118:31 120:-10
ready ,	44:25
through on	34:-8 44:28
@person finish	29:18 34:11 126:10
@job half	44:26
stick off	44:72 49:-8 109:-10
whol @job	45:34
done under	16:-18 45:19 104:23
home with	16:-10 44:24 45:24
went down	45:17 78:12
we gave	45:15 101:18
again :	43:10 92:16 96:8
@job held	16:-8 24:-12 46:74 48:20 115:9 126:-12
overnight $	24:-9 25:13 46:73
day -	46:19
- after	46:19
after look	46:19
on :	46:9 50:9 108:15
wait and	46:13
look over	90:-11 116:15
lean ,	47:11
a trail	47:10 112:18
trail @job	47:10
that need	28:8 47:10
ticket==	15:14 47:11 51:-10
dunja==	47:11 51:-10
respirator==	47:11 51:-10
ticket	15:14 47:11 51:-10
a ticket	47:11 51:-10
ticket for	47:11 51:-10
dunja	47:11 51:-10
respirator	47:11 51:-10
of ebony	47:11 49:18 51:-10
ebony ,	47:11 51:-10
full refret	31:11
bouzouki==	47:14 126:15
queu :	47:9
bouzouki	47:14 126:15
: bouzouki	47:15
note :	106:12 111:23 112:-8 117:11 126:-8
concert==	30:-10 44:10 69:9 116:10
concert	30:-10 44:10 69:9 116:10
, ready	12:-9 30:25
wait till	48:11 109:9 115:16
&#o@day@job	48:25 116:9
care when	48:15
when she	29:-11 48:13 110:-12 111:11 112:-9 126:20
strik job	49:11
list :	49:10 101:19
sold it	49:22
@job call	49:21
@job back	0:-11 3:-10 34:41 38:-9 48:35 66:17 115:12 126:-16
back as	49:11
scrub the	49:18
abandon==	28:-10 49:69
deposit==ed	49:26
abandon	28:-10 49:69
deposit	49:26
: nickel	50:12
, bronz	50:22
pyramid==	50:12 89:-10
pyramid	50:12 89:-10
stainless ,	34:11 50:14 56:-9
wire @quoted	50:15
on we	50:10 121:25
grand ,	23:48 26:-11 102:-13
as fret	37:-10 83:15
, usual	50:12 104:15
usual stick	50:13
^ creat	50:13 59:17 121:35 123:-13
: call	50:13
stick just	117:8
shelf ,	80:22 121:10
courier==	29:22 51:12 126:-9
courier	29:22 51:12 126:-9
the courier	29:22 51:12 126:-9
order behind	51:31 117:-14
behind it	13:26 28:-9 51:19 94:19
#d kilo	51:20 121:15 122:8 126:19
kilo of	51:21
as short	52:16
mm down	52:15
the low	52:19 90:24
low mark	52:24
than #d	52:29 70:-10
rais==e	52:34 90:-9 114:70 126:-11
^ rais	52:34 90:-9 114:70 126:-11
rais the	52:34
#t each	53:18 55:-15 110:11
the regular	53:10
regular @day	53:15 55:-8
wednesday #t	53:12 110:14
#t without	53:20
@day clos	53:42 54:-10 110:-10
in general	38:11 53:25 54:-8
general $	38:11 53:25 54:-8
time :	53:9 98:-29 126:46
open==s	53:9 54:10 55:16
trad==e	54:13 113:12 121:13
up @day	53:-12 54:15 55:10
trad	54:13 113:12 121:13
trad fair	54:13 113:12
fair $	54:15
stay look	54:38
from noon	54:30 112:18
floor being	54:22
#n instead	22:-13 56:24 65:17 116:14 126:-18
door on	63:22
open #t	53:22 55:-13
regular time	110:10
late @day	55:15
till #t	55:27 106:8 110:-14
exception==	55:20
exception	55:20
an exception	55:20
unit==	56:65
shop unit	56:22
inch from	56:9
^ trim	56:28
limit #n	56:84
show in	56:12
newton ,	56:12
pleas :	56:8
overhang #d	56:39
piec count	22:-10 56:24 126:-10
as idle	22:-10 56:24 126:-10
tin after	22:-10 56:24 126:-10
due h	11:-11 56:28 116:-9
send the	7:12
/ bell	57:10
bell $	58:10
/ due	57:9
net==	51:12
net	51:12
/ shop	57:11 126:-11
dirty ,	92:-18 126:43
buzzer==	58:67 126:-15
buzzer	58:67 126:-15
connect==	60:13 61:-8
connect	60:13 61:-8
^ connect	60:13 61:-8
^ post	118:8
phon $	49:37 58:20 109:25 110:-12 112:13 120:9 125:-8 126:-16
the hook	58:24 68:13
unhook==	58:31
unhook	58:31
^ unhook	58:31
the offic	58:-8 126:19
disconnect==	58:17 61:15 117:11
disconnect	58:17 61:15 117:11
^ disconnect	58:17
disconnect receiver	58:17
webhook kitchen	58:19
more message	58:21
message to	58:21
person luka	59:12
anja==	59:11
we'v hir	59:11 64:12
anja	59:11
apprentic==e	59:15 63:25 82:18 126:23
board as	77:10
apprentic	59:15 63:25 82:18 126:23
an apprentic	59:15 126:31
who may	59:20
^ thing	24:-8 39:20
us as	59:41
, might	59:15
nejc==	59:9
nejc	59:9
staff list	14:50 59:8
^ sign	59:17
sign up	27:25 59:17
, user	59:10
: he	59:11
zoran==	59:39
zoran	59:39
a user	59:18
look and	37:23 46:9 59:17 62:13
and uid	59:17 60:-30 61:27
^ user	61:22 126:26
user id	60:24 61:14
id #c	60:24 61:14
#c stand	60:38 61:-16
^ link	60:16 61:-13
link user	60:16 61:-13
a uid	60:8 61:-9
^ attach	58:14
computer user	60:16 61:-9
#c no	60:-39 61:45
longer belong	60:-23 61:29 66:17
detach user	61:12
forget who	15:13 61:19 65:-9
who uid	61:19
was $	22:-13 56:24 61:19 125:13 126:11
map of	61:19
machin user	61:21
the link	60:-18 61:38
link between	60:-18 61:38
@person and	30:9 37:23 41:10 52:9 60:-17 61:26 66:10 67:10 71:-11 91:-10 92:11 93:10 106:12 126:-19
unlink==	59:-8 61:18
unlink	59:-8 61:18
unlink uid	59:-8 61:18
odi==	62:10
odi	62:10
odi from	62:10
move==s	48:13 62:8 65:-24 126:34
@person move	62:8 65:-24 126:35
right==s	62:52 126:-11
look only	62:23 126:-8
@person plac	62:16
^ promot	62:24
promot @person	62:24
is leav	63:50 64:-9 102:19 126:-24
leav us	63:46 64:-9 126:18
retire==s	34:-11 63:91 126:11
retire	34:-11 63:91 126:11
retire $	34:-11 63:91 126:11
strik @person	14:-8 63:39 66:8
of who	14:-10 58:16 63:19
apprenticeship==	63:16 111:-10
apprenticeship	63:16 111:-10
mark @person	63:34 64:-14
has return	63:-20 64:21 126:36
onto==	10:24 67:10
onto	10:24 67:10
onto the	10:24 67:10
on again	64:37
^ restor	63:-15 64:40
restor @person	63:-15 64:40
)~",
R"~(hire==	64:24
hire	64:24
@person no	63:-14 64:47 110:-12
longer retir	63:-87 64:101
handl==e	65:15
handl	65:15
@person look	65:15 92:12
particular doe	66:11
anyon may	66:22
it over	65:21 87:-13 99:12 126:20
@person not	66:16 111:34 126:-33
, leav	37:-9 42:-8 61:-23 66:27 97:10 114:-9 126:86
it open	55:24 66:34
open to	66:42 126:-17
name on	3:-8 27:9 38:40 66:50 106:11
just been	67:10 94:13
no @wire	120:11
left at	67:12
talli==ed	67:15
talli	67:15
add==s	20:-8 52:-10 67:43
weigh all	68:11
stick come	126:8
i weigh	68:33
together weigh	68:16
, plug	8:-10 25:15 68:21
lying on	40:11 68:9
bench that	68:15
coil #c	51:-19 68:34
coil on	126:12
g in	51:-16 68:28 122:14
tip the	68:10
scal at	68:10
keep that	38:26 42:10 69:12 74:11 77:10 126:-15
that show	51:11 68:-15 69:10
a weight	68:11
sampl==e	51:-10 69:19
sampl	51:-10 69:19
sampl ,	51:-10 69:19
exactly ,	51:-10 69:19
@wire give	25:11 68:-10 69:19
take was	105:19
fix piec	70:26
was bent	70:13 78:-10 92:34 96:15
said $	37:16 70:9 105:22 119:-23 126:21
^ amend	70:11
not #d	70:26 81:-9
should read	23:15 52:-9 70:41
visitor==	51:-9 70:12
it #c	16:16 67:-11 70:14
set @wire	52:-18 70:42
stock right	52:-18 68:12 70:36
@job both	55:9 71:11
@wire a	71:14 89:19 119:18
new from	51:-10 117:10
slip==ped	16:8 43:9 72:11 79:9 119:-12 120:-9 126:37
wire went	71:-11 72:33
made @job	71:17 72:19 79:-18 83:-9
@job gave	73:31 126:-10
gave up	62:9 73:9 126:19
up #n	43:34 73:9 83:8 113:17 126:-9
fret off	2:-9 42:-8 73:35
pull ,	44:18 65:-8 73:22 79:-8 80:11 126:-13
and goe	73:14
use delivery	74:14
wire out	0:10
crown match	74:29
#o lot	74:29
#o delivery	74:32
sort==ed	25:10 82:13 107:10
saw to	4:-14 44:36
thousandth==s	75:12
thousandth	75:12
^ depth	75:9
kerf	3:-8 18:8 42:-17 75:81 93:-10
the kerf	18:9 75:18
and are	75:8 100:17
slot measur	75:21 93:-8
kerf==	3:-8 18:8 42:-17 75:78 93:-9
^ kerf	42:-16 75:63 93:-9
radius ,	42:15
slot this	75:9
they'r #d	2:16 75:11 81:9
its #o	0:10 4:34 17:18 37:-8 42:8 76:8 77:10 98:12
#n nutward	76:27
been put	15:41 34:-19 37:-12 76:28 84:-15 85:19 119:32 126:-12
; #n	73:-10 76:10
was short	42:-13 43:15
short and	43:9
is bin	76:9
, then	49:-11 76:10 83:-11 98:12 112:19 115:56 117:-11 126:39
mov them	2:13 31:-9 76:36 83:-18
them into	40:8 76:11 83:-10
tin got	22:13 76:9
got fret	71:12 76:9 83:-12
shift ,	76:9
#n mov	76:10
#n board	77:17 88:-9 126:37
: width	77:12
fretboard ,	4:12 77:17
at its	77:12
crook $	78:14 126:15
find the	0:-9 15:11 78:12
gone miss	78:25
wreck==ed	78:39
wreck	78:39
- off	0:-11 24:42 78:18
sander and	100:17
is useless	78:19 82:18
now becaus	78:19
becaus @person	67:15 78:19 85:-8
#n scrap	22:-14 79:8 80:21 82:21
again from	79:27
#n bin	79:17 82:14
redid==	79:49 92:-8
redid	79:49 92:-8
^ redid	79:49 92:-8
in fresh	79:46 92:-9
to replac	72:-14 79:21
bad #n	42:-14 79:28
dozen @wire	22:-13 80:19
has measur	22:13 80:18
unfil==ed	80:16
unfil	80:16
lot from	74:-9 96:27
ago :	97:8
finally measur	81:10
^ unmeasur	22:10
, they'v	46:22 82:33 103:9 119:-8 120:18
wrong allow	41:10
toss #n	82:59 83:-8 126:-25
ditch==ed	37:-14 41:-29 82:54
ditch	1:-13 37:-22 39:-19 41:33 71:-9 82:69 126:-10
^ ditch	1:-13 37:-22 39:-19 41:33 71:-9 82:69 126:-10
ditch piec	1:-13 37:-22 39:-18 41:34 71:-9 82:53
: piece	82:26 83:9
coupl==e	37:-10 40:-17 70:11 82:20 83:15
coupl	37:-10 40:-17 70:11 82:20 83:15
a coupl	37:-10 40:-17 70:11 82:20 83:15
coupl of	37:-10 40:-14 70:11 82:21 83:15
with piece	83:25
have becom	71:-10 83:16
set for	44:-8 48:18 84:30 100:23 126:-18
secur==e	84:46 85:-9
secur	84:46 85:-9
@job reserv	24:35 85:18
reserv stuff	85:17
wire set	24:21 84:-34 85:21
undo the	74:-12 85:30 113:14 125:8
to everyon	85:13
drop every	24:-11 38:-8 85:37
every hold	24:-11 38:-8 85:37
being sav	12:-17 24:21 85:11
grab ,	24:-13 85:30
thumb==	70:16 126:-12
deep :	42:-10 93:14
, sole	86:9
bar @quoted	81:-9 86:14 87:15
&#c#n@quoted@wire	81:-9 86:10
a press	101:27 126:-14
#n kn	45:52 86:11 90:-13 96:-13
caul $	41:-9 87:48
of bar	87:24
our short	22:16
short press	87:12
hang in	68:11 88:11
the air	88:12
support right	88:16
wrong about	41:-10 70:11
say @wire	89:11
@wire turn	118:27
#r steady	90:27
move ,	76:-10 120:10 126:9
nutward a	90:10
tri==ed	91:11
tri	91:11
i tri	91:11
tri the	91:8
^ light	91:18
and board	91:18
slip==	31:11 125:10
a slip	125:10
board all	44:-10 91:25
look under	91:25
and found	46:-13 67:10 80:11 91:18 92:12 93:9
none $	67:9 91:18 92:-9 126:20
is dirt	91:-11 92:38
what keep	4:-9 13:-12 17:44 25:-16 92:34 126:-8
seen==	44:8 91:-8 92:26
no reason	91:-13 92:38 126:-8
reason to	91:-13 92:38 126:-8
seen	44:8 91:-8 92:26
be seen	91:-8 92:26
no grip	92:19
slot too	0:-10 92:26
&#d#n#p	93:11
get #d	42:12 89:17
board end	44:-9 94:27
never get	94:42 126:-13
another $	16:24 38:21 41:-11 70:-10 90:-10 98:30 118:15 126:17
noth come	94:40 115:-15
final #n	94:48
fret will	37:-8 92:8 94:14
#n stop	44:-10 94:32 109:11
^ beyond	88:8 94:8
the string	126:10
forward ,	11:-10 48:17
tweak==ed	95:10
tweak	95:10
the rod	95:18
rod ,	95:10
as straight	126:10
straight as	95:12
neck i	95:10
in anew	96:36
anew after	96:36
been reseat	96:15
shim under	91:-11 96:31
, clean	108:11
slot and	126:27
been glu	97:33 126:-12
superglu==e	23:47 78:-8 97:33
superglu	23:47 78:-8 97:33
^ superglu	78:-8 97:34
^ stuck	38:10 97:11
just glu	97:14 126:-10
: glu	97:21
epoxy==	97:15
epoxy	97:15
knock==ed	88:14 96:9 98:32 100:23 112:-12
knock the	88:15 98:22
a ston	17:-9 98:14
ston $	17:-10 44:30 98:8
@job stood	17:-10 98:23
stood proud	17:-10 96:12 98:12
proud ,	17:-11 46:9 98:13
^ ground	98:40
we'v bought	99:59
a bend	99:16 126:17
bend saw	99:19 101:21
the better	69:16 122:13 126:-10
bender==s	99:21
own #n	99:12
bender	99:21
fret bender	99:21
a glue	9:12 99:15 126:-10
glue tabl	101:15
install==ed	99:38
install	99:38
a late	31:-9 99:35 126:14
slower==	42:20 93:-8
slower	42:20 93:-8
minute '	99:10
' setup	99:10
rise	25:27
as want	99:14
press came	103:20 126:-10
sander :	26:-9 100:58
changeover==	100:68 105:-23
changeover	100:68 105:-23
been scrap	42:-10 79:11 101:9
more sander	101:16
, delet	99:-8 101:33
given up	101:18
off our	26:-14 58:8 101:18 123:10
tomorrow :	102:11
not run	102:20
torn $	41:11 100:-8 102:31
unusabl==e	102:24
unusabl	102:24
sinc an	38:11 102:20 103:-12
ago the	102:20 103:-12
sander has	23:48 26:-12 100:-12 102:65 103:-25 126:-11
dead $	75:13 102:19 103:-12
mend $	26:-18 102:-21 103:98 126:-8
is usabl	102:-8 103:20
usabl again	102:-8 103:20
again sinc	90:11 102:-14 103:21
sinc #t	44:-8 103:10 108:35
plan with	103:15 105:18 111:12
going $	9:8 102:-9 103:45
new belt	100:-8 102:-8 103:43
belt and	103:8
going half	103:13
you want	17:10 104:10
polish is	104:11
, plan	104:23 111:28 126:-14
take up	22:8 104:13
allow #n	105:14
time should	28:23 30:-8
slot stag	104:10
minute ,	105:13 106:13
, go	2:32 105:22
me on	53:-10 55:18 106:17
pencil==	6:9 106:11
pencil	6:9 106:11
^ pencil	106:11
delet==ed	82:9 123:10
be delet	123:10
can releas	107:22 126:-13
#o book	100:22 102:-8 107:11
has begun	108:12
, here	51:-28 108:38 117:28
a start	108:60 126:-14
polish on	44:-8 108:20 109:9 126:-10
tru @job	109:34
sinc half	108:22
#n @person	13:-10 15:65 37:10 44:-8 108:11 126:-32
levell the	17:11 44:8 109:19
am break	109:35 111:-9
paus the	4:-15 44:-10 109:59
@person only	62:10 102:-12 126:11
only work	110:26 112:-15
until noon	53:19 110:16 112:-8
is never	110:33
set @person	106:-8 110:29 112:-12
@person regular	110:26 112:-19
regular hour	53:15 55:-8 110:16 112:-16
and leave	110:37 112:-31
week @person	111:28
count me	20:-8 111:33 112:13 126:34
come at	112:16 118:19
leav at	112:37 126:-13
today i	41:-10 112:9 126:18
only here	112:10
here till	112:19
than half	112:13 126:-8
: #t	53:-15 55:15 110:-43 112:54
a normal	113:17 114:27
closur of	113:44
is through	44:22 108:-10 114:-8 115:39
stand in	15:9 115:13
in line	68:11 115:13
behind @job	13:-11 49:-12 115:49
#n behind	115:35
look @day	116:18
^ see	126:15
see to	30:11 65:19 126:-15
@job recheck	30:-10 116:47
recheck @day	116:15
next look	116:20
tomorrow #t	106:20 116:8 126:-8
sent off	51:-19 67:-8 117:40
daughter ,	33:20 51:-16 117:20
)~",
R"~(ask ferro	51:-17 117:24
ferro for	51:8 117:22
order plac	51:-13 117:22
com from	32:26 117:11
order it	87:13 126:-12
it an	114:21
&#n#r@wire	51:-29 72:15 117:50
to send	1:10 126:-10
order by	10:12
by phon	120:22 126:-12
lindwurm delivery	32:23 33:-18 118:24
bill==	103:12 118:22
parcel is	118:13
bill	103:12 118:22
the bill	118:23
bill $	118:23
@wire got	19:10 51:-49 118:55
got here	51:-49 118:67
unpack order	118:12
, remainder	117:-9 118:20
lindwurm that	118:11 122:20
check in	108:29 118:23 120:-9
, complet	118:31 120:-10
they'll deliver	119:21
new delivery	119:23
here befor	119:15
they'v put	119:11 120:15
mail==	118:-8 119:12
mail	118:-8 119:12
: order	119:11
that it	52:10 100:16 118:-8 119:11
: out	101:19 102:23 103:-11
withdraw what	120:30 125:20
i rang	67:-21 120:47 122:16 126:-20
^ annul	32:-8 118:-13 120:62
it pleas	41:18 84:11
scrap order	41:-10 118:-12 120:55 126:-13
they'r too	120:10
order book	10:-20 12:69 32:53 33:-8 118:-21 120:-27
wire drawer	50:-11 121:28 123:31
turn and	50:-11 121:28
and soon	50:-11 121:37
another supplier	123:-16 126:27
, sell	121:13
supplier :	121:31 122:-13
pinwheel==	121:12
pinwheel	121:12
never less	121:21 122:-8
start buy	10:-9 121:19
buy at	10:-9 121:19 123:8
put ferro	33:-10 121:26
brother==s	121:23
we may	31:-9 121:15 126:32
wobbl==e	48:-11 90:51 102:20
has drop	122:20
drop its	122:20
its minimum	122:20
minimum ,	121:-8 122:30
renam ferro	122:20 123:-9
daughter to	122:20 123:-9
ferro wire	122:29 123:-19
is lindwurm	33:42 122:13 126:-16
chang lindwurm	122:10
daughter deliver	32:-10 33:-19 118:50 122:12
deliver within	122:24
note on	54:-11 122:27
: clos	53:-19 54:49 122:26
in august	21:8 54:-11 122:27
kilo and	122:8
#n kilo	121:15 122:13 126:15
daughter $	122:14
delet supplier	33:-19 123:30
ferro from	33:-18 123:24
strik ferro	33:-21 122:27 123:18
daughter as	33:-11 122:-13 123:32
never again	126:16
ferro can	33:-22 123:54
that pleas	15:13 104:12
fine as	126:14
print job	4:25 6:8 126:-8
: cut	74:-9
@wire look	8:44 9:-24
know the	8:22 16:12
spreadsheet==	10:8
list i	10:8
spreadsheet	10:8
pleas writ	10:15 41:18
miss on	13:25 17:-9
^ summary	13:76
again in	16:10 46:-8 116:45
, whol	6:15 17:8 118:12
depth for	18:20
never measur	22:13
reserv any	27:10
someth book	27:8
word==	33:8 36:12 75:11 88:18
right or	3:11
be bought	9:17 10:34 30:-15
bought $	9:18 10:20
look #n	10:36 11:-13
day ahead	10:38 11:-18 29:32
@wire over	20:9
versus==	18:13 20:16 33:36
versus	18:13 20:16 33:36
sinc october	21:9 126:12
sander just	102:17
^ minute	28:45 105:-22
we reckon	28:17
, everybody	14:-15 29:19 41:-11 54:11 70:-10 126:35
raw #d	3:-9 37:16 38:21 40:9 70:-10 126:-10
gone into	3:-9 37:20 41:11
for #p	0:79 22:-11 24:-12 38:28
of yesterday	24:-8 38:32 68:11 69:-13 119:11
all dress	40:13 72:8
note it	54:8 98:23
am using	83:10
caliper say	1:10 3:-12 4:10 42:25
levell is	44:12 104:8
wrap==ped	4:-8 44:54 108:-17
wrap	4:-8 44:54 108:-17
@person wrap	4:-8 44:29
wrap up	4:-8 44:54 108:-17
nope ,	46:31
flat board	47:9
rosewood==	23:21 94:17
rosewood	23:21 94:17
may get	31:-9 126:28
late with	11:18 31:-9 118:16 126:15
low when	52:8
@wire threshold	52:21
#t today	55:25 126:-11
katarina==	59:11
katarina	59:11
matija==	59:12
matija	59:12
matija ,	59:11
uid is	60:13 61:-8
#c =	60:18 61:-15
= @person	60:18 61:-15
@person sit	12:16 30:-10 62:25 65:-10
spell==ed	62:26
tommo==	62:26
spell	62:26
tommo	62:26
pleas have	89:8
back :	54:11 63:-12 64:17
stick '	51:-18 68:18
worth ,	51:-18 68:18
cm less	70:17
@wire than	70:17
than you	70:17 105:14
, #p	38:26 39:-13 41:-10 71:35
#p $	0:75 1:-9 22:-11 24:-10 38:23 39:-13 41:-10 71:29 83:18
i've cut	23:23 37:-9 71:9
not cut	37:30 71:-10 72:-33 126:24
has noth	56:20 94:17
#n could	31:-8 74:-11 77:-8 126:57
not lost	78:-37 126:55
lost ,	12:-8 36:36 78:-32 126:62
swept==	78:22 80:21 126:-8
swept	78:22 80:21 126:-8
i swept	80:21
bin both	82:28
both of	71:-21 83:21
nubby==	87:16
nubby	87:16
between #c	61:25
^ caliper	3:-11 42:15
caliper the	89:8
now and	42:10 95:11 100:16 102:16 105:10 118:14 122:-9
tang goe	89:8
goe #d	89:8
wire crown	50:-10 89:14
#n wobble	90:25 126:-12
gap==ped	91:8
found noth	46:-11 92:32
misbent==	17:-11 92:76 98:-8
wrong curv	92:24
curv ,	40:13 92:11
misbent	17:-11 92:76 98:-8
misbent $	92:10
glue into	97:14
other work	28:-9 100:43 105:-8
nipper==	101:16
nipper	6:16 23:26 56:13 72:8 101:15
the nipper	6:16 23:26 71:-8 72:8 101:15
tabl in	101:33
shop has	101:11 126:23
bench as	62:10 101:11
motor==	102:22
burnt==	23:37 70:23 102:20 126:-21
motor	102:22
sander motor	102:21
burnt	23:37 70:23 102:20 126:-21
motor burnt	102:21
burnt out	102:21
not plan	102:9 111:21 126:-15
plan anyth	102:9 111:9 126:-14
been repair	26:14 102:-8 103:10
need is	104:22
dress use	104:29
machin again	103:-8 104:41
unbook the	55:18 106:-17 107:25
at noon	44:9 68:12 109:10 112:14 116:17 126:-10
break from	109:25
leav off	13:28 109:41 126:-34
stop the	105:10 108:-9 109:29 120:32
dentist $	44:11 111:12 112:9
usual ,	54:-9 126:31
uncancel==	113:18
uncancel	113:18
of january	48:18 113:35 126:-8
january ,	113:16 126:8
do work	112:20 113:30
as for	101:13
normal priority	114:30
lindwurm for	117:12
at ferro	51:-19 117:36 122:20
phon lindwurm	51:-14 117:16 120:13
say @day	31:16 53:21 110:-18 119:15
expensiv==e	120:12
want order	10:11 120:11
expensiv	120:12
blackthorn==	121:10
blackthorn	121:10
lindwurm pack	122:25
ferro is	29:-9 33:32 54:-20 122:-13 123:18 126:42
clos down	2:-8 123:40
our==s	56:-12 61:11 64:16 101:9 123:17
fenwick==	33:-8 123:17
fenwick	33:-8 123:17
my mistak	39:11 92:8 125:9
hold that	24:-16 38:16 85:16
, use	20:13 37:69 126:-30
use that	37:41 126:-8
and another	40:66
stop ,	37:-9 58:-8 63:13 64:-8 109:17 126:41
ring $	11:20 58:-8 109:19
pleas do	17:-8 57:-9 71:-9 84:11 85:-14 120:10 126:69
@person would	53:-12 62:-12 67:15 110:-22 116:10 126:73
would happen	36:43
sinc @job	107:11
of his	13:27 38:17 110:-12 112:12
we count	67:-24 126:27
unretir==ed	0:-11 1:12 49:21
unretir	0:-11 1:12 49:21
; kindly	0:-11 1:12 63:10
destination==	1:17
destination	1:17
swear==s	25:9 64:-18 90:13 105:13
@person swear	25:9 64:-18 90:13
&#d#n@job@person	3:-11 37:-9 38:27 42:41 65:-8 71:-10 79:11 93:9
do ye	4:14
slot with	75:13
their length	4:8
and length	4:22
am spring	7:9
still on	8:16 12:22
one and	8:15 32:13 110:-15 126:25
littl one	8:16 53:-8 110:-12 126:25
extra for	8:28 119:20 126:-10
you would	8:29 126:-15
to run	9:27
the present	9:10 66:20 126:-9
late already	11:39
that somebody	11:14 126:27
be across	11:15 38:10 126:-10
ask==s	4:22 14:21 16:68 19:9 31:13 42:11 45:-19 83:-8 126:-18
far along	4:8 13:22
along is	13:13
has each	14:10
has that	15:49 24:-9 34:-8
need ,	16:9 84:21
after another	16:8 90:-9 98:31
pound==	16:16
do any	16:16
need them	82:9
&#n@quoted	50:15
show us	8:40 9:-9 17:8
correction==	0:-13 16:-8 17:38 67:-8 70:39
recommend==ed	0:-13 16:-8 17:38
correction	0:-13 16:-8 17:38 67:-8 70:39
action is	0:-13 16:-8 17:38
recommend	0:-13 16:-8 17:38
, grip	2:-10 3:-10 18:46
grip $	2:-11 3:-10 18:46
the post	8:-32 19:16 32:53 63:15 64:-10 68:11 82:-11 83:10 85:11 109:-20 118:-12 126:52
i clos	113:11
is early	32:11
to in	56:12
save with	21:8
neither==	22:14 66:16
ornament==	22:14
neither	22:14 66:16
ornament	22:14
deadwood==	8:-14 22:19
deadwood	8:-14 22:19
margin==s	25:16
margin	25:29
with how	26:11
as you	44:-16 76:43
down somewher	74:10
demand==	28:15
demand	28:15
thirtieth==	29:22 55:-8
thirtieth	29:22 55:-8
school==	31:10 53:-10 99:17 110:19 112:16 126:-13
school	31:10 53:-10 99:17 110:19 112:16 126:-13
the school	31:10 99:10 110:-11 112:20 126:-12
school ,	31:10 99:10 110:23 112:-15 126:-12
manag another	31:10
anyon down	15:30 24:-13 27:22 31:10 102:-8 106:-13
clos as	53:34 54:-9 118:10
postman is	0:-8 32:11 38:10
today and	32:11
hold ,	24:-8 32:10 38:35 39:-13 85:13 100:26
drawer is	38:21 70:-10 126:-12
empty ,	0:15
open and	32:25 95:10
quantity==es	10:-11 33:22
approv==ed	33:10
approv	33:10
vendor for	19:-9 33:74
, yesterday	34:17
, did	21:9 32:39 34:15 117:-19 126:-16
made it	37:8 79:28
it into	37:9 87:20 126:-14
be ,	4:10 38:10 70:-8 89:10
)~",
R"~(ah==	125:33
ah	125:33
^ ah	125:33
turn it	87:20 126:-14
my eye	23:44 42:12 90:23 126:-28
sprung ,	46:11
has rock	37:-9 46:10
so this	37:-9 46:10
old @job	2:17
he want	5:-11 6:11 12:9 29:-10 88:12 110:11
herewith==	49:27 126:-8
payment==	49:27 126:-8
herewith	49:27 126:-8
cancell for	49:45 126:-10
for want	49:45
want of	49:45 126:-10
payment	49:27 126:-8
here yet	50:9
is stainless	25:16 50:9
cc==	50:8
cc	50:8
had order	51:20 117:-12 118:11 120:8
order them	9:10 51:22 118:-13
say we	53:28 113:-21
more at	53:28 92:11 113:-21
the weekly	53:22 55:-9
nobody come	54:9
shop stay	53:26
stay shut	53:27 54:12 55:-9
that number	25:40 60:8
#c .	60:10
be let	61:12
he went	126:15
peopl here	63:9
lottery==	63:10
@person won	63:9 100:17
lottery	63:10
, lack	41:-8 111:16 126:35
lack thing	111:17
retir her	62:-9 63:21
@person hang	62:-9 63:11
his apron	80:10
apron for	62:-9 63:11
retir no	63:-11 64:22
biscuit	106:8
@person said	24:-11 38:28 85:13 107:-8 110:-23 112:-8 126:47
patienc for	65:15
hand the	65:17
nam==ing	66:20 126:-9
successor==	66:20 126:-9
successor	66:20 126:-9
adjust==	43:-8 68:8 70:43
holding==s	68:11
adjust	43:-8 68:8 70:43
adjust the	68:9 70:15
holding	68:11
off it	0:11 1:-9 109:14
haul==ed	73:8
haul	73:8
twic becaus	67:15 126:-12
trust my	4:10
glass ,	110:11
will fret	3:11 74:11
no other	74:11 96:8 101:-9 126:28
other ,	46:-8 74:11 98:17 99:9
, now	6:14 67:-9 73:8 74:11 94:15 126:19
^ rather	84:17
rather than	54:-25 55:40 72:-8 118:14
slid them	2:24 126:-18
spoil by	78:34
live==	3:22 73:11 90:-10 126:9
live with	3:22 73:8 90:-10 126:15
manufactur==ed	42:-10 79:11
manufactur	42:-10 79:11
and measure	42:-13 79:23
idea==	1:10 9:12 87:11 101:12 125:-11 126:23
idea	1:10 9:12 87:11 101:12 125:-11 126:23
no idea	1:11 118:8
idea of	101:13 125:-11 126:15
have now	40:-10 47:-10 81:21
put at	46:10
to everybody	85:13
it'll==	85:9 109:9 119:9 126:-10
it'll	85:9 109:9 119:9 126:-10
, it'll	85:9 109:9 119:9 126:-9
nub==	70:21 86:16
nub	70:21 86:16
nub .	86:16
i turn	95:10
should have	11:-8 48:-8 67:-11 126:51
the gander	64:16 126:-8
n $	16:-9 45:9 56:27
own ,	16:23 17:-11 98:8
, span	90:21
span #n	90:21
: rock	90:16
bodyward ,	90:14 91:-10
the thickness	91:11
thickness paper	91:11
a rock	91:9
it slip	91:9
in under	45:11 60:15 91:8
exist==s	99:13
^ between	66:14
exist in	126:23
poke==s	126:38
poke	126:38
noth at	92:16
not my	15:14
stov ,	99:8
so no	91:9
its neck	95:19
crumb	126:9
been seat	76:19
a silver	96:13
silver of	96:26
: glue	97:19
heat==ing	23:14 29:-12 31:-11 62:9 98:12 126:33
been ston	98:26 126:-12
a time	86:10 98:12 126:-12
clos that	54:21 113:-16
that make	100:14
establish==	99:19
glu==ing	23:41 99:19
unlimit==ed	99:19
unlimit	99:19
grindston==e	100:11
sander but	100:10 104:-11 126:14
grindston	100:11
shop any	123:22
be forgotten	61:11
it took	16:-9 44:12 45:10 71:-8 72:8 103:8 120:11 126:-15
belt ,	102:17
business $	103:8 123:13 126:-11
of tang	4:-19 18:36 104:14
bench only	104:24
she need	126:17
so book	106:13
her on	48:24
remain to	13:42 30:-9 34:-8 109:10
not his	110:25 126:-15
his $	110:25 126:-15
pottery==	110:9
pottery	110:9
@day she	110:18 112:-8
get @job	114:10
^ come	126:10
is when	119:10
that #o	37:-10 79:18
reschedul==ed	46:-16 116:25
reschedul	46:-16 116:25
stop that	109:15
drop lindwurm	126:10
twic and	38:10
anywher on	1:18
piec ,	99:10
. do	3:10 18:10
to sorry	3:22 9:17
sorry $	3:21 70:8 78:14 80:8 111:-20 112:-21 126:44
over for	22:23 126:-8
job together	5:18
cutlist==	6:177 13:-16 65:-8 114:-8 126:-9
cutlist	6:177 13:-16 65:-8 114:-8 126:-9
^ cutlist	6:177 13:-16 65:-8 114:-8 126:-9
could somebody	6:8 41:11
out until	9:12 102:11
@job his	11:28 13:-8 126:10
what role	14:53
do peopl	14:18 17:-12 126:16
would #c	16:29 83:-8
i sign	17:10 51:13 95:10 117:-9 118:31 120:-10
wire hold	9:12 126:-9
be all	3:-15 18:31 118:-17 119:-13 120:-9 126:40
^ account	20:24
november to	20:13
^ total	20:8
total up	20:8
june==	8:-17 20:18 21:35
sinc june	8:-17 21:32
taken by	24:20 66:14 126:-9
press right	26:22 30:-8
repair ,	26:15
bench place	26:18
many ,	14:-11 26:13 126:25
at them	14:-12 26:14
median==	28:16
median	28:16
for tru	28:28
anyth com	8:-11 32:32
ferro lead	33:20 126:-15
are their	4:13 33:21
was anyth	13:-23 20:10 34:35
not reserv	39:22
ditch==	1:-11 37:-8 39:-17 41:62 82:15 126:-10
began at	44:27 108:-12
kn on	45:53 90:-13 96:-13
his parlour	126:15
petra==	126:9
petra	126:9
blaz ,	47:10 82:-10
date on	48:67 126:-19
shop holiday	29:-9 54:33 111:-8 113:13
plat to	126:10
ring as	54:10
eva==	59:12
eva	59:12
^ tie	60:17 61:-14
from retirement	64:16
retirement $	63:27 64:47 126:-12
took stock	51:-12 67:32 83:-9
a rack	78:16
rack in	78:27
floor $	1:10 12:21 78:16 92:18 126:-8
#o has	79:8 91:16 92:12
^ dump	40:18 80:-10
look of	30:21 80:8 90:10
useless ,	82:18
, hump	82:18 96:9
whol plan	84:13
@person turn	87:20 126:-14
cradl again	88:22
tang and	4:-19 12:-16 14:25 18:35 78:20 92:-10 94:-9 102:17
is sunk	17:-13 65:-12 90:25 126:35
up becaus	126:8
becaus its	41:11
one besid	42:-8 93:22
millimetr from	56:31 93:16
^ low	42:-10 52:35 93:17
highest fret	94:37 126:-13
is and	94:10
and stay	25:11 94:22
a back	95:35 126:-13
flush==	98:19
flush	98:19
register the	99:13 101:-11
sander as	106:12 126:12
hand back	66:19 107:28 126:-12
seat of	44:13 109:29 126:-14
finish though	109:17 126:-8
though $	9:-14 26:55 65:-9 109:16
to stop	109:28
, phon	109:26
i quit	109:43
shut==ting	113:55
#n just	85:-8 108:15 114:27 118:9
top priority	114:17
importanc $	114:36
lindwurm promis	119:25
a firm	121:23
kilo at	121:26
daughter sell	122:14
ferro need	126:23
week thes	122:13
ferro minimum	122:38 123:-10
supplier away	123:8
of ferro	33:43
as supplier	123:8
supplier pleas	33:-24 123:39
order ther	120:9 123:19
#n step	39:-13 125:46
, what'v	0:19 78:-8
phon==ing	0:15 10:8
^ becaus	0:15 16:14 44:25 72:9 74:-10 92:-9 96:17 118:-9 119:15 126:-13
his is	0:15 114:15
closest==	0:43 8:-12 40:-23
closest	0:43 8:-12 40:-23
grab for	0:8 27:8
length to	0:13 22:-8
inch in	0:13 22:-9 56:10
ok ,	0:30 126:-18
we let	0:30 39:12 126:-21
hiya==	0:14 3:-8
hiya	0:14 3:-8
, quick	0:14 3:-8 68:10
quick #n	0:14 3:-8 8:21
a scrap	0:9 3:-8 96:-10 126:27
scrap that	0:14 3:-8 87:11
a tin	0:11 126:22
tin piec	0:11
fret without	0:16
nipper==s	6:16 23:27 56:14 72:8
nipper $	23:27
list look	14:29
like for	8:22
print it	6:11
sourc for	33:45
run and	26:24
and i've	41:11 94:16 109:15
paper ,	98:17 126:-10
stick by	6:15 67:17
by stick	6:15
pace $	115:-10 126:10
? then	6:10
hello==	42:11 122:10
hello	42:11 122:10
^ hello	42:11 122:10
the nice	1:8 6:13 40:9 82:10
nice $	6:13 82:10
now its	6:14
its cut	6:14 113:12
whol cut	6:16
particular job	12:-18 24:28
in her	6:18 64:-9 103:12
her hand	6:18 45:8
sit on	12:33 30:-10 92:20
job -	12:18 30:-10
^ door	65:23
good morn	56:13 103:25 110:10
ask how	12:-9 14:21
are ,	51:11 118:-10
run me	12:8
in @person	126:23
? just	74:-10 126:26
taken in	12:32
many instrument	12:30
the threw	12:8 17:11
queu with	12:14
with me	12:14 106:12
do ther	3:22
slot pleas	1:16 4:23
everywher==e	46:11
everywher	46:11
everywher $	46:11
dust==s	18:13
dust about	18:13
&@job@person@wire	8:16 18:10 119:17
hold @wire	1:-15 18:15
@job ask	18:10 94:9 126:20
could go	18:10 22:18
do her	18:13
her slot	18:13
depthwis==e	18:8
#n right	4:21 18:8
depthwis	18:8
the fit	103:11
fit of	4:-20 18:43
flat .	46:8
troubl with	103:10
the margin	25:21
fret that	0:-10 1:19 25:14 39:19 73:-10 76:10 78:12 80:11 126:-37
up ?	92:15
what had	25:19 46:-13
rise==	25:23
rise again	25:23
again overnight	25:23
overnight ,	25:10 46:8
they had	25:10
could that	25:35 126:13
the whether	25:9 107:10
so dry	25:9
upset==ting	31:17
door with	31:10 126:-8
upset	31:17
without upset	31:17
promis #n	31:11
@day ?	29:19 53:-13 113:16 126:-8
a lady	31:14
lady want	31:14
want just	31:14
my cousin	59:13 126:19
december and	111:17
by then	116:9 126:-8
promis -	48:10 53:-8
kept $	31:25 39:11 126:-10
say yes	126:23
man on	29:17
he ask	31:20
or doe	31:18
to promis	126:14
otherwis==e	38:10 62:9 126:-9
otherwis	38:10 62:9 126:-9
otherwis $	38:10 62:9 126:-9
reserv piec	37:-13 38:31 126:-12
)~",
R"~(long @wire	71:19 76:-9
so do	111:12 114:10
anyon have	38:30 126:-23
? it	3:-8 38:11 58:11 60:9 126:-8
told @person	3:-8 38:11
hi==	38:10 47:-9 63:17 67:-10 98:10 117:15
she'==s	38:11 47:-9 65:-9 126:11
hi	38:10 47:-9 63:17 67:-10 98:10 117:15
^ hi	38:10 47:-9 63:17 67:-10 98:10 117:15
hi ,	38:10 47:-9 67:-10 98:10 117:15
she'	38:11 47:-9 65:-9 126:11
and she'	38:11 47:-9
she' like	38:11 47:-9
like that	38:10 47:-9 104:12 123:-8 125:11 126:19
her job	38:11 47:-9 126:8
which mean	44:17 104:10 110:11
be held	24:-9 39:20 84:18 85:-14
stay with	37:-11 38:66 65:-9 66:-43 70:-10 72:9 74:15 126:49
and i'd	38:21 70:-10 126:-8
i'd never	38:21 70:-10
rack is	34:17 38:10
, hold	38:8 84:12 100:26
measur twic	38:10 71:-11 93:10
and piec	38:10 41:-10 70:27
for him	38:10 62:14
sorry to	3:9 41:9 49:17 63:10 108:-9
bother you	3:9
forgot==	38:21 103:20 117:-15 118:10
forgot	38:21 103:20 117:-15 118:10
, forgot	38:11 126:-11
forgot to	38:21 103:20 118:12 126:-24
your==s	24:-14 38:28 58:8 125:-10 126:12
ok @person	24:-14 38:28 126:-8
: held	24:37 38:28 90:14 91:-9 126:-10
seat @job	44:17 126:21
bend done	13:-9 44:36
, my	44:24 109:-8 112:14 126:36
has just	44:9 112:10
she in	110:23 112:-16
a treat	96:10 114:26
is true	44:25 88:-9
true now	44:25 88:-9
that can	44:21 88:-9 107:20 114:9 126:-19
polish @job	44:38 109:19
clos job	44:38
phew==	44:22 109:-8
phew	44:22 109:-8
^ phew	44:22 109:-8
, done	44:26 65:-8 71:8 72:11 97:10 98:14 126:-8
sander was	44:25 103:26 107:-8 126:-19
just to	44:16 59:22
to let	44:16
, seat	13:41 15:-8 44:28 96:32
them this	117:9
, mark	44:13 54:14 102:15 114:15
mark it	44:13 54:14 102:15 114:14
, took	44:17 72:9
#t till	44:18 106:8 110:-10
hey==	3:10 39:13 40:-10 44:18 73:11 111:40 126:-18
hey	3:10 39:13 40:-10 44:18 73:11 111:40 126:-18
^ hey	3:10 39:13 40:-10 44:18 73:11 111:40 126:-18
hey ,	40:-9 44:19 73:11
to tell	44:14 45:9 51:11
tru on	44:15 109:10
fetch it	13:8 44:24
@quoted :	50:12
me into	53:11 55:-8
colour	0:-8 37:-8 38:19
introduc==e	50:21 99:13
introduc	50:21 99:13
^ introduc	50:21 99:13
introduc wire	50:21
wire late	50:12
entry :	72:10
&#d@person	2:-10 56:11 81:10
sheet say	27:11
will call	50:11 56:-9
that unknown	60:9
the inspect	54:-10 113:10
inspect was	54:-10 113:10
was here	118:8
now say	119:8
load unit	56:31
clutter==s	43:-8 56:19
clutter	43:-8 56:19
@person bought	7:-9 51:11 56:23 99:8 100:10
new nipper	56:14
nipper ,	71:-8 72:9
plenty==	56:17
@person think	21:9 56:17 126:16
think #n	56:17
plenty	56:17
tin enough	56:36
: recheck	46:-10 56:21
morning==s	53:-9 56:11 62:-8 110:34 112:-15 126:14
morning	53:-9 56:11 62:-8 110:34 112:-15 126:14
clearanc==e	56:31
clearanc	56:31
bind clearanc	56:31
you set	53:11 56:14
i trust	42:10 56:13
under that	52:10 56:14 122:12 123:-11
dial==	56:10
dial	56:10
rework==	56:73
rework	56:73
four==s	56:20 71:-11 83:15 126:21
four	56:20 71:-11 83:15 126:21
four for	56:20
sinc @person	56:20 58:9 100:23 126:-13
@person rule	42:12 56:20
else $	3:8 5:14 31:15 56:20 60:13 61:-8
may report	62:14
draught==	15:9 54:23
draught	15:9 54:23
^ she	29:-8 60:8 61:-8 64:20 111:18 126:-14
she got	63:14 64:-10 106:13 111:-8 112:14
goe by	62:-11 63:-11 126:67
her by	48:-10 126:14
@person set	62:20
only ask	49:-10 126:12
hello ,	42:11 122:10
nessa==	62:34 63:-12
nessa	62:34 63:-12
confus==ing	62:13
confus	62:13
lift as	62:36
? no	53:-12 62:15 65:-10 91:10 113:16 118:16
thing up	62:13
up here	3:10
odett==e	62:50
name to	62:9 100:17
odett	62:50
odett $	62:50
herself==	62:10 65:19 74:8 110:9 112:-9 126:-15
she ask	62:10
herself	62:10 65:19 74:8 110:9 112:-9 126:-15
herself $	62:10 65:19 126:-14
long bench	100:10
bench until	62:18
work as	62:10
, beside	51:-8 68:9
goe :	42:10
spool includ	51:-16 68:32
includ ,	0:9
tenth of	68:17
yesterday even	68:11 69:-10
&#c#t@wire	68:20 69:-12
but no	126:9
@person hold	68:10
the today	68:10 82:10
quick :	68:10
ounce==s	51:-14 68:32
ounce	51:-14 68:32
bug==	68:11
bug	68:11
#n delivery	74:14
, lot	62:-9 63:10 72:10 74:-11
crown like	74:11
reckon==s	89:10
@person reckon	89:10
we seat	42:17 74:10
on lot	74:45 108:-9 126:8
assign lot	74:26
^ match	1:15
let say	48:24 74:9
the only	45:27 74:9
@wire around	74:9 82:11
^ stay	74:16 126:14
^ right	39:10 51:17 67:-12 71:11 74:10 108:21 126:18
#n then	13:33 17:-10 74:10 126:-14
swept the	80:11
they go	80:9 82:9
@wire scrap	22:21
so $	38:23 62:18 65:-8 70:-13 80:20 114:15 118:12 126:19
not put	40:-10 80:22 126:52
a rule	28:10 40:19 53:49 54:-9 55:-11 80:9 112:8 126:-31
rule to	80:27 126:-25
to any	1:-10 24:19 80:25 126:-25
cost packet	80:11
today :	82:10
unsort==ed	80:11
#n odd	126:20
odd and	126:20
and end	88:23 126:19
unsort	80:11
, box	80:11
@person empti	80:10
her apron	62:-11 63:17
pleas add	99:29
handful in	126:11
sweeping==s	80:16
^ more	80:16 90:18 91:-8 117:10
sweeping	80:16
@wire x	80:13 117:17
yesterday @person	80:8 126:-8
@person nip	80:8
: handful	80:11
tip==	61:11 80:8
different==	19:8 100:35 126:28
different	19:8 100:35 126:28
no length	80:8
jam	102:54 103:-24
, handful	67:-10 80:13
i've no	80:10
: @quoted	122:20
bar now	86:10
break ,	103:12
bar long	87:12
bar from	87:16
i'd call	52:10
has #c	45:-9 56:22
@person check	92:18
defin it	86:9
zitherbar==	86:23
x60==	86:23
add bar	86:24
zitherbar	86:23
x60	86:23
april==	50:8
n ,	86:18
the flat	42:18
across it	40:13
shallow ,	126:8
wire bent	92:16
^ loos	23:16 92:15
filler==	0:-8 92:12
filler	0:-8 92:12
tang sit	92:20
be found	0:-8 78:26 92:24
found under	40:10 92:16
tell her	13:20 36:9 91:-11 92:28
@person was	34:-13 37:-24 79:11 125:10 126:48
was right	79:11
wide for	18:-10 92:10 126:24
found for	92:23
a shallow	92:16 126:-13
, sorry	78:15 92:16 112:-22 118:15 126:32
wrong radius	92:26
oh dear	37:-10 38:-9 78:17 92:9
dear ,	37:-10 38:-9 78:17 92:9
feel==	44:13 68:-13 92:13 126:25
hair too	92:13
a bad	25:17 91:-22 92:34 126:-12
bend ,	91:-22 92:33 108:18
i've levell	98:8
becaus it	78:11
spot levell	98:20
file ,	66:19 76:-8 98:14 126:-12
thos are	76:-8 98:11
are levell	76:-8 98:13
levell it	98:20
it .	78:10 98:15
i ston	98:22
, have	24:22 37:-11
with paper	98:19 126:-10
not proud	0:8 98:12 126:-12
^ singl	98:16
singl fret	46:10 98:16
fret levell	98:16
me again	36:12 42:11 98:10
i've knock	88:15 98:10
was only	80:-9 98:8 103:25 126:29
no wire	126:27
@job number	42:12 93:-8 98:15
lent==	87:9 97:10
lent	87:9 97:10
@person lent	97:10
lent me	97:10
me her	97:10
^ rub	98:28
polish need	26:-10 28:24
eat==s	9:10 58:9
a way	104:16
need that	120:9
nip need	104:10
so tie	19:-9 74:17
obviously==	104:14
obviously	104:14
chang it	99:13 104:14
need whatever	104:13
whatever it	22:-13 56:24 104:13
need again	104:13
with her	104:10 111:12
her own	60:8 61:-8 104:10
sander ?	104:16
to length	4:-14 44:36 104:16
^ round	104:8
as she	48:11
is tak	85:20 110:9 111:9
@day end	53:24 112:-12
#r :	16:9 102:9 112:16
&#n#r@day@person	110:12
let give	29:-10 48:14 110:11
shop own	26:19 29:-10 110:11
can only	62:13 110:9
do #t	110:10 112:10
from her	61:16
week i	111:9
as ever	53:-14 110:12 113:16
with no	13:15 110:12
no break	110:12
@job then	49:43
&#n#t@job@person	116:11
a better	39:21 116:9 126:-15
i'd do	65:8 116:14
be check	48:-13 102:19 116:22 126:-9
stick now	71:-8 72:8 118:15
daughter==	122:23
rang ferro	117:9 122:16
said #n	42:9
per order	121:10
m from	52:9 122:19
drachen==	122:18
drachen	122:18
they'v been	82:11 122:18
want us	55:16 126:9
us to	126:14
: ask	117:11 122:15
updat==e	122:16
updat	122:16
^ updat	122:16
is pack	122:9
lindwurm want	121:-8 122:23 126:-10
@person tell	121:-8 122:10
a note	122:20
i'd use	37:-10 126:16
wish job	44:-11 126:24
i nearly	40:-15 41:-8 62:-8 78:-13 82:-9 103:16 126:54
to level	17:10 126:14
@job but	126:39
be so	14:21 39:14 120:18 126:-9
@person took	126:16
finish tru	44:-8 126:28
tru job	44:-14 108:13 109:13 126:24
to defin	126:20
not say	78:31 91:-10
if lindwurm	126:27
drop their	126:8
minimum we'd	126:8
more often	126:8
often $	59:23
mind about	1:-8 64:16 113:11 126:24
laugh==ed	126:16
laugh	126:16
wish i	1:-8 126:27
were back	126:13
let not	82:-18 83:-24 126:50
but that	126:15
not happen	49:12 102:-10 107:18 126:-12
)~",
R"~(imagin==e	5:-13 32:10 59:-9 100:-11 105:-13 126:120
^ imagin	100:-10 105:-13 126:67
imagin we	126:8
almost==	20:-11 37:-19 51:-9 117:-24 126:115
almost	20:-11 37:-19 51:-9 117:-24 126:115
i almost	37:-19 117:-13 126:58
almost order	51:-8 117:-24 126:49
lindwurm this	51:12 117:-10 118:-8 126:10
i forgot	38:11 103:20 117:-13 126:9
hear it	115:-8 126:16
it #o	66:11 115:-8 126:11
not true	52:-11 92:-27 126:54
i were	1:9 126:11
what a	0:-34 1:-14 28:21 36:-10 37:37 76:11 95:-20 126:99
my back	44:14 54:11 109:29 126:38
back is	110:10 126:31
work morning	126:19
morning only	126:19
, we'd	49:-15 126:40
the cat	78:17 126:10
cat $	126:11
lindwurm as	33:16 117:8 126:23
wish we	50:-20 126:40
@person held	3:26 42:-8 92:16 98:24 126:-10
lamp for	92:19 107:10
lacquer==	55:-13 92:8 126:37
filthy==	92:8
lacquer	55:-13 92:8 126:37
filthy	92:8
that four	92:10
four ,	92:10
why they	92:19
she right	89:10
#o thing	84:9
@person kept	39:12 126:-8
^ thank	104:11
the tip	61:11
tip ,	61:11
levell as	105:22 125:-21
you said	76:36 104:-9
say otherwis	62:9
date the	97:15 126:-14
the note	0:-8 40:18 54:18 79:12 100:16 126:-10
i've count	67:10 126:11
new jig	100:11 104:11
we true	104:18
@job own	30:-10 65:9 116:10
concert is	30:-10 116:10
up now	62:10 122:10
found the	103:12
we all	54:9 126:24
so once	4:10
: it	51:16
@job drop	41:10
the rain	44:13 78:12 82:8 118:12
the room	44:13 111:11
@person gave	62:9 126:20
up her	60:-16 61:18 63:8
plac for	55:18 62:9 106:-10
pleas tell	1:10 15:10 120:19
wire would	1:10
#n anywher	1:20
#n find	1:33 29:8 126:-33
into which	2:12
@wire best	5:8
lying ther	1:10 82:-26 126:30
a nub	70:21
#n even	0:-10 1:11 3:12
lot come	1:11 119:11 122:-8
@job alon	1:12
wasteful==	1:13
wasteful	1:13
so if	2:14 16:-10
if this	88:18 126:-13
want piec	1:57 34:-34 41:9 126:-12
#p in	0:-9 3:-12 42:14 43:17 75:11
them again	7:9 123:15
that hold	31:11
- inch	126:24
her about	13:21
about her	13:21 113:11
still outstand	13:28 32:23 126:-19
what remain	8:35 13:42 19:-12 30:-9 34:-11
it so	13:34 34:-24 41:14 108:22 114:13
^ detail	13:63 33:48 123:-15 126:-8
detail of	13:63 33:48 123:-15 126:-8
to compar	19:15 126:-8
pls==	0:21 73:-9 105:11
pls	0:21 73:-9 105:11
pls $	0:21 73:-9 105:11
height $	19:17
shipment==s	8:-13 9:-9 19:93 22:-8
did that	34:-8 41:8
that come	1:-16 34:39
we were	19:14 54:-9 118:17 126:14
were deliver	19:14 51:16 126:-10
stat $	26:62
press ok	16:-8 26:55 103:13 126:-28
place at	100:12
kit==	8:-24 14:-12 26:66
kit	8:-24 14:-12 26:66
^ anybody	26:65 104:-19
machine pleas	26:31
or just	26:33 100:-11 126:-14
with who	14:-16 26:41
pleas show	28:23 32:13
from anybody	32:14
, thos	71:8 76:-8
old order	32:25 126:-9
to expect	10:-9 11:-14 30:-9 32:61
careful==	9:-12 32:17 88:8
careful	9:-12 32:17 88:8
book pleas	27:-9 32:53 107:8 120:-14
it order	32:34
need piec	39:-15 41:24
it free	15:30 24:-16 38:-15 39:27
, releas	39:32 85:11 126:-19
releas it	39:34 126:-17
nobody is	39:23 61:9 65:-8 126:27
better #n	39:21
for whoever	39:15 66:21
whoever want	39:22
you be	39:14
so kind	14:21 39:14 120:18 126:-11
as to	39:15 110:11 114:10
listen==	39:22 41:11 54:20 65:-8
has enough	24:-8 39:20 66:12
^ actually	39:12 85:23
ta==	39:42
ta	39:42
decid==ed	37:-11 39:12 54:20 104:23 111:-8 123:19 126:14
decid	37:-11 39:12 54:20 85:20 104:23 111:-8 123:19 126:13
over coffe	9:12 13:26 39:14 71:-10 93:10 126:-32
went under	41:10
late but	45:10 51:11 118:-10
hollow #n	45:10 87:12
were press	45:12
book as	14:11
every fret	2:11 45:29 46:14 76:-9 97:10
: press	26:-8 45:14 102:-9 104:48
writ down	37:13 42:11 45:14 94:15
#r press	45:9
nicely==	31:11 37:16 72:11
nicely	31:11 37:16 72:11
nicely $	31:11
&#c#n#r@person	16:-10 45:21
nos==	45:18
nos	45:18
press up	26:-13 100:-8 102:-15 103:65
&==	37:-14 83:28
#n &	37:-14 83:28
& #n	37:-14 83:28
they came	51:12 117:-8
coil @wire	51:10
, deliver	51:19 67:-14 121:13
by lindwurm	51:30 67:-11 126:-8
metr each	51:11 67:13
, cost	40:-8 51:12 118:18
cost #d	40:-8 51:12 118:26
lunch yesterday	71:10
told ,	46:19 100:23 112:-12 126:-8
befor yesterday	34:16
tablet is	57:8
, want	20:11
today on	57:10 65:19 66:-9
told of	58:14
check ,	42:8
^ reminder	58:23
flush $	98:14
thing :	57:13 115:11 126:-10
both ,	99:10 115:12
she will	63:14 64:-8 66:19 126:-12
sad==	63:33 126:-16
sad	63:33 126:-16
gone to	15:15 65:-8
him pleas	63:8
apron ,	40:-9 80:9
broad==	48:8 49:10 63:39
she mov	49:11 63:17
broad	48:8 49:10 63:39
mov broad	49:11 63:39
broad $	49:11 63:39
am sorry	41:10 49:17 63:10
goodby==e	62:-8 63:18 64:8
goodby	62:-8 63:18 64:8
resign==ed	63:8
resign	63:8
as hav	63:15 72:11
has stop	63:26 64:-10
he come	63:11 112:8
scal and	68:-11 69:19 126:15
for weigh	69:11
that #c	69:8
hundredth $	69:8
give #d	42:12 69:8
coil :	68:-11 69:26
saw for	18:-9 75:19
slot follow	18:-9 75:10
you note	119:16
(==	60:16 61:-13 82:18 99:12 126:-9
)==	60:16 61:-13 82:18 99:12 126:-9
(	60:16 61:-13 82:18 99:12 126:-9
)	60:16 61:-13 82:18 99:12 126:-9
) $	60:16 61:-13
#n tenth	3:22 75:11 90:-11 126:-8
#n sawn	4:-28 18:-15 126:56
the thick	8:10
saw slot	75:9 105:15
slot have	75:14
unmeasur lot	81:10
last :	81:8
piec :	47:-10 81:11 86:8
so you	82:11 103:10
, thes	2:-10 7:12 51:8 81:10 82:-8 126:12
thes are	2:-10 81:10
guess==ing	3:-10 42:17 81:15
more guess	81:15
guess with	81:15
end #d	42:15 93:-9
from thos	123:10
bent it	95:10
bar has	87:19
been withdrawn	49:17 87:9
say no	109:9
i've lent	87:9
lent the	87:9
good so	87:9
so drop	87:9 101:25
is worn	41:11 92:11
longer exist	82:18 126:-8
feeler under	90:8 91:-8
low #d	93:14
either==	3:-11 60:-9 88:46 93:15 126:16
^ bad	3:-11 54:11 93:15
than thos	3:-11 93:19
either	3:-11 60:-9 88:46 93:15 126:16
gaug on	45:-9 56:14 100:-10 104:-9 126:35
@person measur	89:14
belt grind	99:32 101:11 126:-15
; set	99:15 100:-8
up take	99:9 100:23 105:-24
set saw	99:13
wheel in	99:19
today so	99:10
it among	99:19 101:-8
jig==s	99:15
fume==	99:13
fume	23:52 36:10 99:12 103:10
the late	99:11 101:13
spindl==e	23:48 26:-17 99:8 101:35 126:-8
spindl	23:48 26:-17 99:8 101:35 126:-8
the spindl	23:48 26:-17 101:35 126:-8
, enter	49:40 51:9
neck jig	99:22
stand by	99:14
plan know	99:10 111:13
^ beside	59:8 99:19
beside the	99:20
clamp ,	99:20
so plan	105:15
report for	105:14
is quicker	100:9 105:14 126:-8
reckon #n	105:16
minute of	100:-9 105:42
long seat	28:-8 105:25
was set	24:-8 85:21 105:19 126:-9
minute per	105:11
be away	111:16
absent==	111:20
absent	111:20
^ holiday	54:29 110:-9 111:36
holiday for	54:29 110:-9 111:36
@person rang	64:-8 111:22 117:10
stay home	64:-8 110:-8 111:49 112:-8 126:-11
family==	53:16 110:-10
off from	5:-8 58:25 111:15
family	53:16 110:-10
leave us	63:25 64:-8 111:9
she off	63:-12 111:44 126:-15
regrettably==	111:33 112:-11 126:-13
regrettably	111:33 112:-11 126:-13
day leav	111:16
this com	10:11 111:10
stick order	51:-20 117:42 122:-9
more line	117:25 118:-24 126:24
was order	117:13 120:-16 126:18
, ferro	51:-14 100:11 117:19
: i	37:28 42:12 46:10 117:10
lindwurm took	33:-11 117:9 119:-8 122:-29 126:53
took our	117:9 126:30
want #d	117:18
book that	67:-10 106:9 117:15 120:25
day ago	51:9
us some	50:9 56:-9
dozen $	117:16 118:10
more wire	50:10
bought from	10:14 30:-8
delet that	101:22
^ lose	33:-12 123:22
supply us	121:9 123:11
supplier now	122:-17 123:23
who we	33:-40 123:42
drop that	101:25
way==s	33:-8 123:29
way with	33:-8 96:8 123:29
take ferro	33:-14 123:42
ferro away	33:-14 123:42
decid that	104:23 123:19
not supply	123:23
we'd never	126:8
wish i'd	27:-8 107:-8 126:24
nuisanc==e	93:-11 126:11
#n stood	126:19
stood #d	126:19
nuisanc	93:-11 126:11
rumour==	80:-9 126:24
, whatever	51:-15 67:21 74:9 102:-14 104:10 105:15 126:28
rumour	80:-9 126:24
^ year	123:-8 126:29
year ago	89:-15 123:-8 126:54
some day	31:-8 126:48
need somebody	65:13
no i	71:10 72:-10 126:17
be that	126:10
not decid	37:-11 126:18
decid $	37:-11 74:-10 85:20 126:29
receiver at	57:-27 126:27
love a	126:10
of thes	126:42
will tell	9:-12 126:38
@person nearly	37:10
drop==ping	126:18
drop them	82:8 101:11 126:12
i hope	76:10 95:-37 119:-8 126:67
hope the	95:-37 119:-8 126:67
)~",
R"~(used to	14:12 45:-11 55:-13 70:-8 76:10 80:-12 83:-10 89:9 90:-10 100:8 122:-32 126:136
not crack	126:9
it wher	37:-9 126:30
had i	73:-24 126:49
kept piec	38:-16 39:25
someon should	106:-27 126:53
should measur	126:19
not remain	126:11
not stand	53:9 54:17 64:20 98:13 108:15 126:-17
neighbour==	125:10
to free	65:-8 66:-33 126:61
be loos	92:-11 126:25
had not	9:12 39:12 125:26 126:-32
hmm==	126:15
were off	126:35
hmm	126:15
a whil	49:12 65:14 96:9
gaug ,	75:13
a coffe	0:16 36:-9 126:8
coffe $	108:-18 126:33
chang his	39:10
his mind	39:10
van was	51:24 118:-16
but here	51:11 118:-10
all straight	51:10 118:-10
the dirty	13:-32 30:52 111:13
but @person	41:-28 56:9 111:13 126:28
matter==s	114:54
you ask	126:10
stubby==	87:9
stubby	87:9
i've run	120:9
remak on	2:30 79:9 126:-22
if everyth	2:11
the word	88:18 126:-13
they'r all	2:21 16:-10
goe #n	53:28 110:-15
that out	41:14
^ rearrang	2:14 40:-8
we lose	34:-9 126:36
cleverer==	2:26 3:-8
never the	2:28 3:-8
cleverer	2:26 3:-8
fair came	2:13 81:-10
schem for	2:19 5:13 13:-8
hand==ing	2:19
the hand	2:19 71:10
hand -	2:14 22:-12 24:42
- down	2:18 36:43
stay and	65:31 126:-23
blank==s	2:10
blank	2:10
new to	2:13 126:-11
whatever $	8:9
@wire or	8:9 32:9
, coil	121:9
remain of	8:35 19:-12
anyth left	8:45 9:-13 13:25 17:-13 20:-20
after last	8:45 9:-12 20:-20
was ,	8:23 126:-8
say ther	8:23 126:-10
who in	14:20
only start	14:17 110:-10 112:12
name and	14:22
on their	12:-13 14:13 15:19 126:13
their plat	12:-13 14:14 15:10
who still	32:28
who left	14:15
all hand	8:-21 14:67
, gone	78:9 98:13
who the	15:23
member==s	14:35
crew ,	14:34 64:8
former member	14:35 63:10
workload==	12:-16 14:25
workload	12:-16 14:25
unaccount==ed	20:10
unaccount	20:10
month ?	20:23 126:-9
sum $	8:22 10:24 20:10 121:-12
whol rack	67:10
rack ,	40:8 43:10 51:-15 67:22
, october	20:15
never wrot	42:12
@person reservation	27:70
book sheet	27:73 107:-26
sheet ,	7:14
at any	44:-11 126:22
@person sign	27:25 118:15
somebody rub	4:10 27:13
or @person	27:11 60:-23 126:31
pack and	33:29 122:-17
keep their	33:10
wire peopl	10:8 14:-9 33:19
as slot	33:30 126:-12
or #n	33:41 118:-10 126:-16
outfit==s	33:46
ship==	5:12 33:40
outfit	33:46
us wire	14:-14 32:22 33:40
merchant==	33:46
merchant	8:-13 9:-18 19:-9 33:101
what ,	10:17 33:10
never know	36:10
a box	120:10
tidi==ed	40:8
tidi	40:8
and forgot	118:13
the left	58:11 62:-16 65:-15 120:10 126:32
nobody put	40:20 80:-15
rule on	3:-10 40:20 42:17 80:-17
unmeasur bit	40:14 80:-9
, curv	40:12 92:17
kept the	40:12
was stuck	40:17 51:13
apron $	40:17 78:-8 126:24
#n never	94:11
lovely $	37:11
look :	46:15
: noth	46:17 94:9
noth mov	46:17 54:-9 126:11
day later	46:32 126:-23
stay ,	97:-11 126:24
miserabl==e	46:10
humidity in	46:14
miserabl	46:10
taken ,	24:11 46:9
not sure	46:22 76:-10 126:-8
been recheck	46:17
gave the	46:12 71:11 83:-9
a night	46:21 95:10
level as	46:20 98:11
, check	46:21 91:10
it myself	46:21
they'v all	46:22
, coffe	30:-12 116:16
was told	46:20
warn us	52:10
&#c@person@wire	52:9 70:16
to count	55:18 106:-10
alarm==	52:22
alarm	52:22
the alarm	52:22
we nearly	52:8
nearly ran	52:8
line for	52:22 94:15 117:18
it only	50:-10 57:10
fret about	2:32 17:-8
m instead	52:22 126:12
been taken	98:17
taken down	98:17
doorbell==	58:9
doorbell	58:9
the doorbell	58:9
flash==es	58:10
lamp receiver	58:20
flash	58:10
all night	58:10
dead ,	58:27
spar the	115:10
whenever someth	11:-10 58:18 104:18
^ quit	58:10 109:13
can forget	41:11
forget that	66:30 109:-11
: drop	39:16 101:17
drop $	101:8
switch==ed	58:9
switch	58:9
of your	58:8 125:-10 126:20
your $	58:8 125:-10 126:20
the bell	57:9 109:24 126:-8
^ guess	64:18
guess who	64:18
want in	64:19
@person had	25:17 45:14 63:-13 64:20 126:-25
had left	63:-13 64:22
the sell	64:9 97:15 126:-14
sell of	51:21 55:-13 64:9 99:10 122:-11 126:42
his own	64:15 94:16
her retirement	64:9
who would	64:29 126:-17
kilo ,	64:20 126:-13
^ kilo	64:17
, she'	65:-9 126:11
she' only	65:-9 126:11
retir on	14:33
you let	64:11 107:11
too early	64:11
he say	64:11 126:22
cake $	64:18
garden==ing	64:20 126:-12
garden	64:20 126:-12
#d really	3:12
good caliper	70:13
in your	116:-8 126:28
was stop	41:14
metr too	52:-11 70:28
somebody miss	70:31
short than	28:17 43:-9 70:16
^ adjust	70:27
say too	3:12
#d but	70:8
but #d	70:8
a burnt	70:23 126:-8
never really	70:10 101:10
got piec	37:23 41:-10 70:10
done sit	44:-16 76:44
just as	44:-16 76:43 114:11
→==	65:22 71:19 76:15 126:-9
→	65:22 71:19 76:15 126:-9
#n →	65:22 71:19 76:15 126:-9
→ #n	76:15
now ;	73:-10 76:10
#n own	66:12 73:-10 76:19
own is	73:-10 76:11
hopeless==	22:25
hopeless	22:25
#r into	41:-8 82:21
tin fret	73:10
join the	76:19
watch==ed	73:8
@person watch	73:8
watch me	73:8
hump #n	82:10
bloody==	76:10
bloody	76:10
long day	76:10
as plan	37:9 38:-9 76:18
#n twic	76:18
: shift	36:16
leav #n	3:48
spot $	1:30 126:-8
banana==s	82:10
they'r bent	82:10
banana	82:21
@wire had	82:8 126:9
know of	7:-8 82:13
stool ,	40:-10 82:10
they'r out	40:-10 82:10 102:14
^ swept	78:22 82:12
swept #n	78:17 82:12
rain $	78:12 82:8
#d or	82:18
#n +	73:9 82:24
, crack	82:23
as they'r	82:16 126:-10
used them	83:-8 126:10
, wrong	41:11 125:13
#n s	80:-8 126:33
they'r still	82:-16 126:21
#n they'r	82:11 126:-11
, their	19:-9 82:11 123:26 126:8
were gone	82:11
the apprentic	63:25 82:18 126:-8
bucket $	41:11 82:27
set ,	88:22 126:-10
look twic	41:-8 92:8 126:12
under all	88:20 126:-14
ran a	88:14 97:8
tap==ped	96:9
on ther	86:9 88:10
tap	96:9
tap it	96:9
@job hang	120:-8 126:9
end after	88:13
thumbnail==	88:21
thumbnail	88:21
a thumbnail	88:21
hang over	88:14
was loos	88:15
hang==ing	68:11
is daylight	88:10
crumb==	126:9
softwood==	88:8
softwood	88:8
it begin	88:23
see it	13:-8 17:-9 24:32 90:28 126:22
rest==s	88:18 126:-13
group ,	16:16
either $	88:46
good at	44:-9 94:24
ask the	16:16 83:-8
: on	69:10
for ever	94:13
soundhol==e	94:17
soundhol	94:17
extension==	94:29
extension	94:29
no extension	94:17
glu to	126:12
that way	94:12 115:10
down that	42:10 71:10 83:10 93:-10 94:15
i time	100:12
belt from	100:37 102:-9
been sold	100:18 101:13
to squeez	16:20 126:-9
singl sander	100:38 104:-8
futur $	100:19
apprentice==s	100:26
vot==ed	100:26
apprentice	100:26
the apprentice	100:26
vot	100:26
press pleas	100:23 102:-9 106:12
got them	100:12
them at	100:11
a different	100:35 126:-20
different job	100:35 126:-20
lengthen==ed	100:16
lengthen	100:16
minute it	100:16 120:11 126:-10
whol morn	95:14 126:-8
of tomorrow	27:-12 106:25
is me	44:-11 106:12 109:14
squash==ing	106:8
, tomorrow	106:8 126:26
#t pleas	106:-11 116:15
: she	49:11 106:13
weekend==	54:9
weekend	29:-8 53:51
belt $	23:10 106:13
me ?	65:-10 126:21
end to	3:-11 42:25 84:10 106:10
press'll==	106:14 110:-10
press'll	106:14 110:-10
be mine	106:14 110:-10
mine on	106:14 110:-10
same time	28:-8 106:73
it turn	78:-13 107:12 112:22 126:13
out i	111:-16 112:50
one us	14:-13 32:28 112:13
the care	31:11 112:20 126:-13
@person stay	110:-13 111:20 112:10 126:-9
uid==s	112:28
poorly==	112:17
poorly	112:17
work after	113:12
tomorrow i	112:24
i knock	109:11 111:-8 112:14
all ther	118:12
order has	32:-57 118:24 120:-32 126:91
off all	102:19 126:18
sign for	51:13 117:-11 118:46 120:-10
as come	51:12 117:-10 118:16 120:-8
more will	118:10
lindwurm came	51:-8 118:13
ferro order	118:11 120:21 122:-8
whol coil	67:8 118:12
sign $	118:12
not send	57:-9 118:16 119:10
brought order	118:31 119:-8 120:-8
sorry for	118:16
for being	118:16 126:26
wrong job	125:13
handwrit==ing	94:16
revers what	125:20
just told	112:9
handwrit	94:16
own handwrit	94:16
handwrit $	94:16
undon==e	125:8 126:34
undon	125:8 126:34
be undon	125:11 126:19
said that	52:-11 114:-8 125:25
turn the	56:19 95:10
the pace	118:-17 126:28
i hit	78:13
said last	125:10
whoop==s	125:23
whoop	125:23
^ whoop	125:23
step back	125:8
backtrack==	125:42
backtrack	125:42
was for	78:12 125:42 126:-9
last command	125:19 126:-12
what i've	17:14 34:-8 125:20
. back	39:-9 125:49
nonsens==e	125:14
ago was	125:13
nonsens	125:14
was nonsens	125:14
nonsens ,	125:14
ctrl==	125:92
z==	125:92
)~",
R"~(ctrl	125:92
z	125:92
undo my	125:20
i'd book	27:-8 107:-8 126:19
nobody would	41:-10 126:18
would mass	41:-10 126:12
mass it	41:-10 126:8
but leav	41:-10 126:19
old shop	52:-23 53:-14 55:-11 113:-8 126:98
back if	64:-16 126:23
if you'd	14:21
were out	79:12
every short	126:23
only piec	1:-9 71:-14 126:30
report job	76:10 126:11
lower the	52:12
@wire if	18:10
whatever @person	105:15 126:22
that board	2:14 3:-8
thought==s	39:18
thought $	39:10 56:12 126:14
ago @person	126:12
let nobody	126:11
befor i've	126:11
sent the	95:14
said so	24:-11 38:26 85:13
at me	126:20
all week	54:20 126:19
@day if	126:13
show $	122:-20 126:42
the fretboard	4:46
fretboard of	4:34
if he	31:8 64:-16 94:9 126:16
never said	52:-11 126:17
but $	40:-15 74:12 126:10
@job here	13:27 109:14 126:-14
that still	3:17 16:9
it pass	3:27
it lack	3:8
are dress	42:14
tenth ,	3:22 90:-10
can fret	3:26 91:-12
can leav	3:14 9:15
honestly==	3:20 43:-9
honestly	3:20 43:-9
see whether	91:-10 126:15
whether fret	3:15
leav fret	3:25
millimetr too	43:12
caliper ,	3:10 42:-9 70:11
the stainless	34:11 89:12
stainless @wire	89:12
day at	9:21
latest we	9:11 30:26
out pleas	41:11 107:22
yet to	9:28 73:-16 126:19
keep forgotten	14:12
forgotten ,	61:11
week or	34:9
it wait	115:14
you mind	8:-11 9:13 16:-13 126:14
mind tell	8:-11 9:13
it going	9:20 30:10
of how	9:12
week the	9:13 55:18 112:-8
has got	15:9 103:26
their bench	14:30 15:9
after her	115:12
got somebody	15:17 59:12
neck over	26:26
to whoever	66:22 126:-10
instrument ,	15:22 48:19 65:-18
in new	5:19 6:-8 72:-8
wire sinc	72:15
measur every	89:16 126:-10
november until	21:9 34:-8
did using	21:20
had it	1:-16 34:40
^ december	21:10 54:10
offcut ,	21:9 36:12 71:-23 126:31
sav between	21:10
july==	20:9
it this	108:17
save==s	21:15
to show	21:9
minute is	28:23
just some	28:17
long on	72:10
need from	28:23
to end	3:-11 28:23 42:26
no sorry	34:9
was away	13:18
been up	30:-12 34:24 126:9
to sinc	30:-12 34:24
somebody must	20:13
own entir	34:45
sinc $	14:19
remember a	34:16
for scrap	41:17
through drawer	41:13
bent beyond	82:10
pleas scrap	41:8
scrap it	41:29 113:11
writ it	41:18 42:10
kind and	41:11 114:9 120:18 126:-9
is torn	41:14
a shap	41:10 126:11
noth left	41:10
, throw	41:11 87:8
straighten it	41:10
it yesterday	41:10 44:11
twist ,	41:16
crown delet	82:9
listen ,	41:11 54:20
barb are	41:10 89:22
discard==	39:-9 41:29 87:10 126:-15
, away	58:24 101:9
cut my	23:23
finger on	22:14 23:23
some slot	28:11 31:25 126:-11
steel @job	65:14 126:-13
&#n#o@job@wire	37:17 38:-14
week so	65:11
owner ,	101:13
, board	77:12
and half	34:17
hour now	53:11
are doing	53:11
noon and	53:11 126:15
you chang	53:9 77:13 126:-8
our regular	33:15
weekend==s	29:-8 53:56 54:-12
shut ,	29:-9 53:39 54:-8
both day	29:-8 53:21
quarter past	37:9 55:10 108:-14 109:19
somebody new	59:11
might start	126:9
zoja==	59:9
zoja	59:9
teja==	59:19
teja	59:19
as somebody	59:16
somebody who	59:16
jakob==	59:19
jakob	59:19
, he'll	65:-11 126:19
to help	84:10
you enter	59:17 121:9
new in	59:30 99:-9
here now	51:13 59:8
that he	48:12
he can	13:14 29:18 94:9
look thing	62:10
veronika==	59:22
veronika	59:22
right away	62:16
he doe	49:10
again so	16:23 17:-11 65:16
her have	65:27
got noth	65:11
noth on	17:-11 44:-11 90:-15 115:25 126:32
doing that	15:9 65:11
want @person	62:22
get her	48:24
befor it	15:-9 45:-11 65:18 90:-9 126:21
who refret	65:25
refret the	65:25
will see	65:19 126:-11
and took	71:11 76:-9 120:13
hand and	51:-9 67:16 71:10
nut the	77:14
wide the	77:-16 126:18
@job turn	95:-37 126:44
out narrow	39:11
narrow than	39:11
we thought	56:12
exactly $	5:15
thank $	48:16
wide ther	77:9
board that	77:11 104:12
#n point	71:-15 83:29 92:-8 93:9 126:27
point four	71:-11 83:15 126:22
three==s	83:12
three	83:12
point three	83:12
@wire becam	83:10
becam fret	37:18 83:10
millimetr piece	71:-9 83:9
as used	37:27 38:-12
four on	83:-12 126:29
millimetr thick	50:9 89:11
@wire barb	89:26 126:-8
are point	4:-8 75:13 89:33 126:-8
i've straighten	95:21
sign down	95:16
is dead	49:10 58:24 95:14
edge of	3:13
is check	87:11
bend==s	95:11
backward==s	36:10 95:16
string are	126:10
backward	36:10 95:16
straighten at	95:20 126:-8
an edge	90:12 126:-10
relief ,	95:10
just look	43:-27 62:16 126:31
i clamp	4:11
this minut	51:16 95:12 108:16 126:-16
minut $	51:16 95:12 108:16 118:-24 119:-13 120:-9 126:31
the buffer	101:18
sander goe	126:18
fret better	101:13
by mistak	101:14 123:15
our $	101:10
grind ,	101:15 126:-11
&@day@job@person	106:13
had book	27:-17 71:21 107:19 126:-14
- book	27:-9 102:-10 107:29
sander that	102:11
@day pleas	53:-22 54:13 55:18 107:10 113:12
#o thought	39:18
to cancel	49:-12 107:9 126:15
@day fall	107:13
, reopen	113:22
open that	0:-8 29:15 78:26 126:-9
@person decid	104:23
open again	113:14
again then	113:14
hastily==	113:11
hastily	113:11
@day would	113:17 126:17
new day	31:-8 48:17 72:-9 119:31
they promis	33:8 117:15 119:10
expect on	119:17
strik order	118:-11 119:16
lindwurm the	33:-8 122:17
december pleas	48:-17 113:9 119:15
but let	126:17
could just	1:-8 126:32
bass==es	126:25
however==	96:12
however	96:12
dreamt==	126:30
dreamt	126:30
press away	27:-11 101:-8 102:33 126:27
do away	41:15 126:16
giv back	107:-13 126:24
been promis	114:10
just my	46:8
guess $	105:9 126:18
we used	55:-13 100:10 126:22
would come	126:18
might get	126:16
christma $	22:24
@job gone	15:15 65:-8
or has	8:16 15:15 65:-8
got it	15:15 65:-8 94:15
that as	77:10 94:9
her book	107:8
slot only	31:26 126:-11
want new	13:27
me its	4:10 19:11
nice :	40:10
best length	1:-9 3:10 4:26
^ position	4:42 83:-9 98:-9
/ slot	4:10
my pencil	6:9
pencil mark	6:9
#r /	72:19 126:-10
#n /	16:10 72:19 126:-10
com fortnight	10:11
order all	10:9
over :	10:12 56:10 110:14
have their	10:12 92:18
ther wire	9:-14 10:24 32:14
i alway	36:10
horizon==	10:24 30:-8
^ buy	10:24 30:-8
horizon	10:24 30:-8
glove on	16:10 23:21
^ load	16:18 56:27
, pass	87:-13 126:29
every group	16:16
insid another	16:16
and ask	19:9 62:13
purpos==e	22:31
purpos	22:31
no purpos	22:31
purpos $	22:24
^ dead	22:11
touch them	72:12 126:-11
serv ,	5:10
old $	79:8
up room	22:21
room $	22:21 78:21 94:8 126:-22
hand for	29:23 59:12
be ask	3:14 36:37 126:-10
doe spring	25:-14 36:15
machin -	36:43
question and	36:21
and command	36:21
- asid	24:-8 36:20 84:18
the help	36:14
cut -	36:15
help for	36:11
look -	36:21
- again	36:21
press -	102:10
tin -	2:-9 5:19 36:15
- care	36:15
am lost	36:36
log :	42:10 96:15
take down	42:13 58:22
later :	42:13 49:10
&#n#p@job	42:14
, befor	5:10
promis :	48:9
he need	63:11
its day	46:11 48:18
day pleas	30:26
due :	11:-16 48:38
few more	48:18 126:16
chimney==	54:13
chimney	54:13
the chimney	54:13
chimney sweet	54:10
as clos	54:37
note stocktak	55:8
the sign	29:17
sign on	29:17 102:13 126:-11
^ enter	54:24 99:10 113:-13
#c @person	14:93 60:-51 61:-28 126:-8
a login	60:11 61:-9
take note	60:9 61:-8 78:10
that uid	61:24
uid :	60:14
u print	60:9
print #c	60:11
number ,	60:9
, therefor	84:10 114:8
: uid	60:10
let user	61:16
door :	29:17
bench computer	61:10
^ his	114:15
be known	100:27
known as	100:27
hurt==	23:104 36:-34 126:-21
free to	24:10 66:14
make @job	66:30 85:-12
crown should	72:9 74:-9
i stay	23:20 36:-11 72:9 74:-9 112:9
: new	57:13 72:18 102:11 121:10 126:-14
^ none	72:14 93:-37 126:36
wire was	96:18
lost :	78:21
, lost	78:22
i let	39:-11 126:16
slip and	43:10
it kink	78:22
vanish==ed	54:11 78:36 126:-20
vanish	54:11 78:36 126:-20
has vanish	78:36 126:-17
: fil	108:12
we lost	78:22
lost yesterday	78:20
anybody now	24:-8 78:10 85:21
nowher==e	0:-8 78:26
nowher	0:-8 78:26
so open	0:-8 53:12 55:-8 78:26
, log	78:11
log it	78:11
. so	84:10
so :	22:21
: all	84:12 118:16
piece asid	84:12
material for	84:54 85:-11
alway take	105:10
asid now	84:10
set its	24:-8 84:25
all reserv	54:9 84:23 85:-9
tin piece	84:31
all by	84:18
@job complet	44:14
said with	36:12
: everyth	10:10
edge about	90:19 126:-12
steady as	90:10
pivot==	90:15
henc==e	90:9 120:10 126:-14
near the	90:9
wheel ,	90:9
henc	90:9 120:10 126:-14
, henc	90:9 120:10 126:-14
: about	90:9
anew :	96:15
)~",
R"~(put back	96:15 119:23 126:-11
: reseat	96:25
clean it	97:-42 126:59
is reseat	92:-9 96:27
i've pull	73:15
pull them	96:12
: no	13:-8 48:23 63:-29 64:38 66:34 102:11 114:23
gaug goe	102:30 126:-10
sander off	102:19
used this	102:20 126:-10
so leav	98:-17 126:39
know for	28:-8 69:9 102:18
press as	102:24 126:-10
as not	102:28 107:-11 126:-10
sinc then	102:14 103:10 109:-10
: sander	102:16
painter==s	102:10 113:12
painter	102:10 113:13
the painter	102:11
electrician==	102:27
electrician is	102:27
start :	66:10
begun to	108:13
: start	108:34
gone on	44:-8 78:70 90:-12 108:17 126:-14
^ clock	108:16
nip tang	108:15 109:18
begin to	44:-10 108:29
resum==ed	108:18
seat at	42:18 108:17
clock on	108:12
till half	44:12
, going	108:9
start for	108:16
^ began	44:-22 108:68 109:-9
prior #n	114:60
february==	20:16 114:8
; that	114:8
special==	55:8 114:8
special	55:8 114:8
, treat	94:8 114:15
treat it	114:16
deal==	93:18 96:10 114:26
#n matter	114:54
matter a	114:48
treat deal	96:10 114:26
: cancell	49:43
tied of	62:23
and cancell	67:-21 120:42
off :	111:14 120:14
it any	39:-12 87:13 98:14 115:10 120:23 126:-14
annul the	32:-8 120:36
wrongly==	120:23
wrongly	120:23
would rather	116:10
had been	126:10
not it	126:10
clos all	54:9
: not	78:-8 113:8 126:24
nearly lost	78:-13 126:15
ever get	126:15
well be	126:21
ask @person	126:15
somebody had	75:11
goe out	102:-8 126:15
press were	126:12
was urgent	114:-8 126:20
us down	113:12 126:10
get cancell	126:10
that help	62:-8 112:10 126:24
unmap==ped	61:-23 126:30
unmap $	61:-23 126:30
will sheet	126:16
sheet on	65:-11 126:52
reason==s	42:11
in came	5:15 42:11 97:11 126:-10
came anyon	42:11 97:11 126:-10
anyon ask	42:11 48:-8 126:28
it through	48:11
we leav	13:29 48:10 126:-9
the heat	78:10 95:11
only come	3:13 54:8 62:10
to stay	54:8
weekend ,	54:9
has decid	54:20 56:10 74:10 126:-9
of name	14:21
look it	43:-27 126:38
its uid	60:16
bother ,	3:-9 43:12
electric==s	66:12
electric	66:12
@job free	115:11
unfair==	66:10
unfair	66:10
nobody ,	114:9
us can	66:10
own==s	65:9 66:11
were all	72:8
for my	54:11 72:8
lying ,	72:8
nip :	26:-8 104:48
bench over	29:8
nobody look	56:10 84:10
befor anyth	126:23
customer has	84:10
has paid	44:14 126:10
try==	90:11 123:-17 126:32
try	90:11 123:-17 126:32
glass on	90:34 126:-23
has look	102:8
meanwhil==e	108:16 126:-10
meanwhil	108:16 126:-10
clean at	108:15
run for	9:-13 32:30 108:11
dri on	102:24 114:11
less her	71:8 114:11
whatever else	74:9 114:11
honest==	114:11
honest	114:11
be honest	114:11
has ask	65:11 114:11
should ,	123:10
in futur	100:10
how'd you	5:40 72:-13 83:-8
? let	65:-10 126:22
let see	24:32
best cut	5:25
get all	5:8
we plan	5:9 28:25 30:-8
no stick	67:9
not keep	11:20 39:30 126:-43
my head	11:19 36:12 126:-16
lunch tomorrow	29:21 126:-8
call @job	17:16
along its	17:26
what we'v	9:10
level or	17:15
straightedg ,	17:12 25:-9
, yes	17:10 95:10
yes or	17:10
or no	17:10
no $	17:10 48:-12 110:-15 111:-19 126:74
for in	22:-19 24:38
from drawer	0:-12 24:17 82:-34 83:-26 126:64
when'll==	30:55
when'll	30:55
person the	30:12
slack ther	30:16
mark #n	37:15 44:-12 94:23
anyway $	6:19 63:21 107:10
minute back	98:18 109:23
i'd soonest	17:-11 37:16 126:16
mind==s	37:12 38:-11
, measure	43:11
is come	43:9
short again	43:16
&#d#o@job@person	43:16
#d straight	42:12 43:12
panic==	114:12 126:-9
panic	114:12 126:-9
i've nip	43:10
short now	43:12
pull off	73:21
so they'r	73:10 102:14
palmful==	73:10
pull a	3:26 13:-13 108:-8 126:55
palmful	73:10
#o new	73:20 79:-8
fret had	46:11 73:10 79:-8 126:-9
one pull	73:9
remad ,	79:21
i've remad	72:-9 79:15
was rubbish	79:12
rubbish ,	22:11 78:12 79:12
#o been	79:17
made anew	79:11
fresh fret	5:15
remad it	79:13 126:-8
#o a	79:8
remad @job	79:15
made afresh	79:29
afresh ,	79:18
i remad	79:12 126:14
, unfinish	109:23
interrupt==	109:38 126:-8
to interrupt	109:38 126:-8
interrupt $	108:-17 109:59
off here	109:27
stop seat	126:25
quit polish	109:37
is stop	86:10
press broken	26:12 109:13
not through	109:16
through yet	109:16
come through	3:13 91:8
got no	91:10
lamp :	19:8 91:11
gapless==	44:-10 91:41
gapless	44:-10 91:41
gap ther	91:20
: gap	91:21
a drop	97:16 126:8
drop of	97:16 126:8
clamp are	97:8
i glu	97:42
got glue	23:16 97:17
strik @job	49:20
been call	49:11 120:9
at night	55:21
^ instead	55:8
open us	53:-10 55:12
login ,	59:-8 61:10
uid ,	60:-13 126:17
^ strip	60:-22 61:32
uid away	61:14
stocktak :	67:14
all we'v	67:8 85:12
each #c	51:-16 67:26 118:13
laid a	22:14 67:11
@job stuff	9:-13 32:30
we'v been	85:10 99:10 126:-10
whatever was	24:-8 85:22
#o bench	103:20
ram stop	103:15
stop leav	103:15
once @job	84:-8 88:-11 115:21 126:31
wait until	114:-8 115:18
@job behind	13:-9 49:-11 115:36
out we	72:-21 115:9 126:18
round $	115:10
kestrel wire	118:-8 121:9 123:10
brambl==e	121:17
found somebody	121:12
brambl	121:17
month and	22:12
row==	72:11
row	72:11
sold by	121:16
juniper==	121:11
juniper	121:11
kilo $	121:9 126:17
supplier needl	121:35 123:-13
tinker==	50:11 121:9
supply==ing	121:9
tinker	50:11 121:9
spring we	67:-24 96:-9 126:68
&#o@job@wire	96:-9 126:27
luckily==	43:-24 126:32
luckily	43:-24 126:32
every #o	2:-16 43:-14 126:57
it were	126:9
be lovely	126:13
only take	22:8 113:-13 121:16 126:15
@wire yet	32:-75 126:82
@wire some	9:-9 126:20
be remad	45:-12 78:-8 126:38
glue fret	126:20
i near	9:-10 52:-10 126:50
near $	9:-10 52:-10 126:50
not stop	109:-36 126:44
of seat	37:18 96:8 105:10 109:-16 126:19
have had	106:-11 126:25
heavy $	0:9 109:-8 122:13 126:14
put my	6:9
which mark	5:-11 6:12
#n sourc	33:27
memory==	13:31 14:19 30:-8
memory	13:31 14:19 30:-8
job we	12:14
what he	12:9 62:10
feel like	12:22 44:12
disappoint==	12:12
top ,	12:12
disappoint	12:12
bottom anywher	18:15 75:-15
sawblad==e	18:8
sawblad	18:8
&#n@job@person@wire	72:10
check @wire	18:19 52:-13 67:38
the depth	75:13
he right	25:10
margin==	25:13
, wood	47:10
anybody else	31:16
december .	31:11
jazz==	31:11
jazz	31:11
outsid ,	31:11
more and	43:-24 126:32
ask nicely	31:11
fancy==	2:13 31:26 126:-19
fancy	2:13 31:26 126:-19
earmark the	38:10 44:-11 84:35
colour==	0:-8 37:-8 38:19
@job name	38:29
hand off	38:28 106:9
block #n	38:38 104:12
: board	44:34 77:9
glue was	44:10
was like	44:10 79:-9 96:10
concert $	44:10
barely==	44:10
, lock	44:10 54:19
barely	44:10
#n complet	4:-14 44:36 118:15
glass==	44:13 100:-9 104:-8 126:37
glass now	44:13 100:-9 104:-8 126:37
went home	17:14 44:24
long way	126:15
off tru	44:18 109:9
salesman==	50:9 56:-9
sample==s	50:9 56:-9
whisper==	50:9 56:-9
salesman	50:9 56:-9
sample	50:9 56:-9
whisper	50:9 56:-9
, height	89:12
cobalt==	50:10
cobalt	50:10
shop know	14:16 50:11
barb and	50:11
some wire	33:15
division now	45:-9 56:32
joy==	56:14
nipper are	56:13
joy	56:14
length at	0:-9 4:15
shop :	56:27
press limit	16:-13 126:13
coarser==	56:12
coarser	56:12
the unit	56:12
are over	54:-10 56:10 110:14
oda==	62:9
oda	62:9
what she	107:13
he did	49:-10 62:14 126:17
whil @person	79:9
the attach	51:8 62:8
the lack	15:13
lack #n	15:13
@person reseat	34:-23 62:16 126:22
not even	111:11 126:-8
the clear	62:9
show every	16:11
scal good	68:11 69:-10
@person read	42:20
post offic	68:11 126:21
it pull	68:13
kg ,	68:13
stock check	8:-9 52:-12 67:35 68:14
cheapest $	74:9
the show	19:10 113:10
stick to	119:-23 126:31
have its	126:14
cup==	15:9 80:10
cup	15:9 80:10
glanc==e	80:11
glanc	80:11
a rumour	80:-9 126:22
rumour $	80:-9 126:22
did somebody	34:-30 39:-22 126:75
somebody put	26:22 102:-9
tone==	96:9
tone	96:9
a tone	96:9
that bar	87:12
hit==s	92:10
say @person	63:20 92:8 114:13
seen under	91:-9 92:12
clean ,	22:43 25:-13 92:10
just that	112:-10 113:20
quit==e	98:14
oilston==e	98:23
oilston	98:23
link $	98:-9 126:10
peopl do	17:-11 34:17 126:17
hammer==ing	23:40 104:22
spot on	17:10
surpris==e	102:-10 104:34
surpris	102:-10 104:34
block==s	104:12
tax==	110:9 112:-9
morning are	110:24 112:-12
are for	110:9 112:-9 126:9
tax	110:9 112:-9
the tax	110:9 112:-9
choir==	53:24 110:8 112:-27
choir	53:24 110:8 112:-27
his back	110:10
afternoon==s	110:15
she no	64:12
@job rest	116:9
see job	116:9 126:16
)~",
R"~(opinion==	116:-8 126:31
opinion	111:11 116:-8 126:31
rep==	33:15
rep	33:15
cake :	63:23 126:-15
granddaughter==s	122:9
granddaughter	122:9
wyrm==	122:11
wyrm	122:11
insist==ing	122:13
insist	122:13
thank heavy	109:-8 122:13 126:14
card $	13:29 126:13
with every	16:10
my caliper	4:10 29:8
slot from	122:11
whether she	4:22 126:17
paperwork==	10:14 30:-8
paperwork	10:14 30:-8
tonight ,	10:14 30:-8
whom and	10:14 19:12 30:-8 34:12
am wait	10:20 14:10 108:8
reorder ,	52:19
supplier by	10:24 121:-11
than a	10:10 22:9
out :	123:25
drawer will	82:18 126:-8
let tidy	22:9
for more	9:8 33:18 94:9
unwant==ed	22:10
unwant	22:10
thin==ned	22:24 126:-8
suspiciously==	29:19 103:-8
suspiciously	29:19 103:-8
is suspiciously	29:19 103:-8
suspiciously quiet	29:19 103:-8
bring his	29:18 126:13
at her	112:9
her bench	112:9
be said	36:24 111:-9
said to	36:12 111:-9
word $	34:13 36:12 75:11
what new	36:16
her what	21:9 36:11
fume==s	23:52 36:10 103:10
glue fume	36:12
answer $	13:26 57:-19
digital==	42:18
digital	42:18
hurry ,	118:19
week is	48:9
#n move	48:13
on hour	48:14 114:16 115:-9 126:-8
#n alon	126:20
hospital==	48:8
its owner	48:8 126:12
hospital	48:8
the market	54:11
the draught	15:9 54:23
look on	54:25
vanish $	54:11
mark the	54:9 87:11
you all	8:-10 112:10 126:30
key==	13:-12 24:33 54:11 63:14
key	13:-12 24:33 54:11 63:14
grumbl==ing	60:9
grumbl	60:9
@person account	60:12 63:22
the lad	63:22
but at	54:-9 55:32 126:-15
sentimental==	1:8
sentimental	1:8
could come	1:20
; would	3:12
tag ,	7:31 13:15
the sticker	7:12 102:-14 126:24
to glue	23:8
too could	7:17
tin ;	1:10 7:17
or may	13:25 17:-13 92:-10 126:9
rack with	13:15 67:11
my memory	13:31 14:19 30:-8
every @wire	82:9
consignment==	19:9
mess==ed	19:10 113:10
ferro sent	19:8 33:-8 123:-11 126:54
was ever	34:13
notebook==	19:16
notebook	19:16
batch ,	19:9
servic or	26:50 102:-13 103:-11 126:-14
every machin	26:41
machin and	26:41
i imagin	26:22 32:11 102:-9 126:-12
hot==	26:8 95:9
i sell	8:14 26:8
hot	26:8 95:9
nervous==	11:10 32:9 126:20
nervous	11:10 32:9 126:20
get nervous	32:9 126:20
parcel==s	10:-8 32:23
expect ,	10:-8 32:23 73:9
not just	32:11 53:28 65:-18 66:27 110:-15 126:-18
scrap==e	32:24
anybody again	39:34
had said	42:9
releas piec	34:-31 41:-10 126:65
has put	14:-8 27:23 113:12
despit==e	93:9
despit	93:9
been down	75:13
tractor==	51:13
tractor	51:13
m each	51:13
uncut==	51:8 121:21 126:-9
uncut	51:8 121:21 126:-9
@person uncut	51:8 121:10
attach $	51:8
my scal	51:18 68:-9
g at	51:19 68:-12
from copper	117:9
copper will	117:9 123:10
dwarf==	51:22 122:-10
dwarf	51:22 122:-10
of oil	51:21 101:-9 122:-10 126:32
oil $	51:21 101:-9 122:-10 126:32
be happen	126:24
late :	67:-8 119:19
was #n	46:-11 51:9 126:22
a bell	50:-10 57:10
ring ,	33:15 50:-11 57:10
my paper	64:-16 126:48
stov $	41:9 70:10
&#d#t@person	50:-10 57:11
solder==ing	57:-9 126:10
solder	57:-9 126:10
chip ,	73:8
say so	70:-11 118:13 126:29
radio $	72:10
@person retire	34:-10 63:23 126:16
kaspar==	63:24
kaspar	63:24
museum==	63:15 64:-9
museum	63:15 64:-9
book with	49:10 63:14
apprentic ,	63:25
his time	63:25 85:20
and gone	44:12 63:25
he only	63:21
look anyway	63:21
account ,	20:10 63:22
@person leav	63:-13 112:14 126:31
better scal	69:16
window shut	23:8
down in	75:13
a word	15:8 75:11
grandfather==	90:13 126:-12
by his	90:13 126:-12
grandfather	90:13 126:-12
his grandfather	90:13 126:-12
w==	75:8
d==	75:8
w	75:8
d	75:8
@day down	108:17
somebody measur	77:-19 126:31
went ,	45:-10 126:17
call stubby	87:9
friend==	87:13 126:-12
has sold	49:20 87:13 126:-12
bar to	87:13 126:-12
friend	87:13 126:-12
warp==ed	87:8
warp	87:8
this lamp	87:8
doorstop==	87:9
doorstop	87:9
still in	87:-10 126:21
merit==s	87:-11 126:11
merit	87:-11 126:11
brasscap==	87:11 126:-8
brasscap	87:11 126:-8
paperweight==	87:20 126:-14
paperweight	87:20 126:-14
be expect	73:9 93:18
gauge==s	93:9
gauge	93:9
twic ,	71:-10 93:21
both time	71:-10 93:21
time fret	71:-10 93:21
#n crown	74:8
a buy	99:27 126:33
buy wheel	99:27 126:33
the action	99:14
weld==ed	99:11
weld	99:11
to speak	27:12 29:-11 99:11
lamp==s	99:18
it sell	55:-13 99:10 126:27
; make	99:10 126:-9
crimper==	99:9
crimper	99:9
#n like	99:14
@person carri	100:11 126:15
tell it	84:15
wheel $	126:43
cutter==	126:26
cutter $	5:12 126:26
press after	113:-8 126:18
: scrap	82:8 99:34
so reckon	105:9
reckon with	105:18
plan #n	105:13
= #n	105:13
#n time	105:10
crown really	28:12 105:15
a ever	111:12
opinion==s	111:11
wed $	54:13 111:14
out tomorrow	102:15 111:49 112:-9 126:-16
were $	46:17 111:-11 126:14
@person were	126:21
catch==ing	111:11 126:-8
catch	111:11 126:-8
&#d#n#r@person@wire	117:10
catalogu==e	117:16
catalogu	117:16
not reseat	117:16
bellfield==	123:10
bellfield	123:10
eat @wire	9:10
^ bellfield	123:10
stonebridg==e	123:8
stonebridg	123:8
larkspur==	123:15
larkspur	123:15
^ eras	123:9 125:34
their @wire	19:-9 123:28
has too	66:11
much on	66:11
just @person	53:28 65:-18 66:27 110:-15 126:-12
took him	44:12 72:10 126:-10
piece were	72:23 84:8 126:-19
@person fil	78:16
vanish ,	78:21 126:-17
trodden==	78:14
trodden	78:14
swallow==ed	78:10
swallow	78:10
have everyth	56:10
better if	84:8
eye #n	90:47 126:-28
not had	90:23 126:-21
@person shim	96:26
scrap==ed	96:9
- seat	74:-9 96:27 118:12
tell $	92:-10 126:11
crossword==	96:14
last week	96:14 106:-8
crossword	96:14
had gone	96:11
leg==	102:20 125:9
leg	102:20 125:9
wobbl leg	102:20
leg $	102:10 125:10
fetch==ing	102:11 112:10
sand==	102:11
sticker==	102:-14 126:24
not out	37:16 102:-14 126:15
sleeve up	23:8
are what	51:-10 67:12
back say	109:9
mountain==s	114:8
mountain	114:8
at priority	114:22
to normal	114:12
@person phon	120:14
null==	120:19
null	120:19
#n cancell	126:13
musical==	2:13 13:-8
musical	2:13 13:-8
@person used	8:16 37:10 38:-9
: metre	8:27
fog==	11:10
fog	11:10
headcount==	14:29
headcount	14:29
who and	14:27 15:29 27:8
midwinter==	14:10
midwinter	14:10
everybody in	14:10
? somebody	20:13 91:-15 126:18
taxman==	20:11
taxman	20:11
dur==ing	20:19
dur	20:19
at lunch	118:12 126:-9
speak in	27:12 29:-11
himself $	24:-11 27:8 85:13
of mine	101:14
ever on	33:11 94:9
dawdle==s	33:8
dawdle	33:8
ring for	33:18
merchant==s	8:-10 9:-13 33:54
firm==s	33:25
took $	33:25 120:10 126:-10
left me	17:15 121:10
mess ,	40:13 113:10
^ sweep	40:18
sweep up	40:18
up i	40:8 65:10
came across	40:18
save this	40:12
recheck #r	46:23 126:-12
@person recheck	46:25 126:-20
budg==ed	46:25
budg	46:25
panick==ing	52:12
panick	52:12
faint==	126:12
faint	126:12
halfway ,	58:22
lightn==ing	58:12
lightn	58:12
prematur==e	64:18
prematur	64:18
not suit	63:-11 64:15 126:14
trim==med	70:16
rock under	70:11
that off	44:11 70:15
- laid	48:-10 76:28
bye==	82:21
bye	82:21
: back	103:13
so mind	88:29
noth will	94:9
rosett==e	94:9
rosett	94:9
would fret	3:27 42:-13 94:-24 126:34
sander over	100:9
need on	100:30 104:-22
affair==	100:23 126:-17
affair	100:23 126:-17
biscuit==s	106:8
minute on	44:-8 106:8 126:24
december #t	55:8
much as	90:12 112:9 126:-11
december :	27:-12 55:12 107:15 112:20
knock==s	111:-8 112:15
scrub==bed	111:-12 112:20
to mind	110:-12 112:14
&#n@day@person@wire	118:15
posti==e	118:15
posti	118:15
was meant	125:11
argh==	125:9
argh	125:9
only this	54:16 55:-9 125:16
undon ,	126:34
, had	11:-8 48:-8 126:43
piec or	5:20
give for	126:24
cut into	5:-8 6:-9 72:-21 126:54
wallet==	5:12
wallet	5:12
breath==ing	11:42 95:-9
squirrell==ed	24:40
squirrell	24:40
it being	24:15
grumble==s	24:11
grumble	24:11
up too	43:-16 126:32
#d :	43:8
fear==ing	126:9
: cancel	27:-12 49:12 107:14
not listen	65:-8 126:13
^ tonight	55:10
tonight the	55:10
once :	53:-12 55:16
so free	60:-15 61:18
its user	61:22
keyboard==	61:15
keyboard	61:15
dissociat==e	61:12
dissociat	61:12
stranger==	61:18
stranger	61:18
divorc==ed	60:-17 61:21
divorc	60:-17 61:21
reinstat==ed	61:11
pass it	3:13 87:-13 126:28
sorry about	9:17 94:-19 126:16
dry on	9:17
their==s	9:16
soon are	8:-11 9:13
phon for	9:10
give out	9:11 28:17
scribbl==e	15:14
scribbl	15:14
got job	13:-10 15:26 44:-12 65:68 66:-9
@job whil	79:12
it sav	21:10
tin last	21:9
)~",
R"~(in december	29:-11 31:-9 54:-12 126:46
thrifty==	21:9
thrifty	21:9
doe polish	26:-9 28:27
minute do	28:31 30:-8
sandwich==	34:17
sandwich	34:17
^ twic	0:-11 3:-10 34:41 38:-9
belong in	41:10
straight to	41:9 95:-17 126:23
#n some	98:-28 126:46
wenzel==	126:15
wenzel	126:15
blanka==	47:10
boxwood==	47:10
blanka	47:10
boxwood	47:10
old late	101:8
the bas	53:9 54:-19 55:-8 126:55
alway $	53:16 54:-19 126:23
choir ,	53:24 110:-15
gabor==	59:36
gabor	59:36
accountant==	59:12
edvard==	59:12
accountant	59:12
edvard	59:12
newcomer==	59:79
uro==s	59:79
newcomer	59:79
uro	59:79
oskar==	59:39
oskar	59:39
ana==	59:10
ana	59:10
classical==s	65:11
classical	65:11
not i	65:32 111:-9 126:12
i ,	65:32 126:-13
be @person	60:-14 61:-8 65:9 126:29
look pleas	65:31 91:-15
chop==ped	71:11 83:-8
chop	71:11 83:-8
oddly==	77:9
oddly	77:9
#n used	45:-11 83:16 90:-9 126:19
@person cut	71:8
gospel==	89:11
gospel	89:11
abolish==	101:38
moulder==	101:38
abolish	101:38
moulder	101:38
finger $	101:38
clip==ping	23:26
clip	23:26
again as	103:10
birthday==	113:11
birthday	113:11
january again	113:17
the lower	45:-10 113:12 126:19
slip to	119:15
rang :	119:-20 126:30
postcard	119:13
with you	37:11
but nobody	51:-8 67:-10 126:20
has count	67:-10 126:13
torchlight==	67:10
rack now	67:10
torchlight	67:10
pull again	73:17
and lie	73:13
chip==	23:29 73:8 126:-8
banana==	82:11
a banana	82:11
availabl again	85:21 103:16 126:-13
decid==ing	85:20
off my	119:-12 120:-9 126:41
i've look	92:10
seen it	44:8
my hair	23:16
her lunch	44:-8 103:12 126:20
back now	99:8 103:44
until job	115:13
afterward==s	115:12
afterward	115:12
mould==s	115:23
mould	115:23
brezj==e	121:9
brezj	121:9
firm call	121:13
aurelia==	121:15
aurelia	121:15
dolenc==	121:13
dolenc	121:13
greenhill==	121:16
greenhill	121:16
elmwood==	126:13
might try	123:-17 126:32
elmwood	126:13
franz==	121:10
franz	121:10
vistula==	121:9
vistula	121:9
down under	16:11 45:11 122:12 123:-11
agree==s	37:11
agree	37:11
@job i'd	65:8
nearly threw	37:10 82:-9
&#d#n@job@person@wire	71:8 126:-14
can hardly	38:-16 114:-15 115:-26 126:82
- no	37:-9 126:21
#n strik	43:-24 126:32
tru up	65:-9 126:26
^ wenzel	126:15
may bring	126:18
fetch==ed	49:21
by name	50:8 86:10
nobody order	32:36 51:19 117:-30 126:-14
@person all	126:27
landlord==	54:14 113:-11
landlord	54:14 113:-11
shop be	29:-11 31:-9 54:-12 126:46
builder==s	56:-9 126:26
builder	56:-9 126:26
#n builder	56:-9 126:26
builder told	56:-9 126:26
me they	56:-9 126:26
they set	56:-9 126:26
; our	56:-9 126:26
tablet on	126:11
told thing	126:11
bell ,	50:-21 57:29
katka==	59:8
katka	59:8
this box	60:-17 126:31
^ cake	126:35
cake at	126:35
somebody patient	65:13
patient ,	65:13
full ,	41:-11 126:34
no harm	44:-9 87:-21 126:48
harm done	44:-9 87:-21 126:48
muscl==e	13:-13 108:-8 126:58
muscl	13:-13 108:-8 126:58
sure $	76:-10 126:14
my new	42:8
new calliper	42:8
flew under	91:-12 96:-11 126:50
stov and	91:-12 96:-11 126:50
dust ,	23:21 78:18
the sill	2:-10 81:11
i'd set	126:14
walnut==	87:-15 126:22
walnut	87:-15 126:22
lift @job	88:19 126:-10
@person eye	17:-12 65:-12 90:9 126:35
@person saw	75:10 92:8
bend rocker	126:19
hint==	101:-9 126:38
hint	101:-9 126:38
gaug needl	102:-17 126:30
fashion==	102:-24 126:35
fashion	102:-24 126:35
servic then	102:10 126:-10
sander here	26:-9 28:24
batch at	106:10
you date	71:-10 107:-25 126:35
@person clean	108:16
hear the	126:15
has littl	53:-8 110:-12 126:25
phon ferro	117:-17 126:27
#n slip	119:-9 120:-9 126:43
day late	119:20
saltmarsh==	123:-16 126:27
saltmarsh	123:-16 126:27
saltmarsh metal	123:-16 126:27
unpack==ing	33:-8 123:-11 126:54
@person head	126:42
done tru	126:22
her note	126:11
hazel==	121:9
hazel	121:9
hazel metal	121:9
copperbeck==	121:10
copperbeck	121:10
brackwater==	121:9
brackwater	121:9
warehous==e	126:19
warehous	126:19
came of	65:-11 126:39
the came	65:-11 126:39
choic==e	126:17
choic	126:17
you to	106:9 126:-8
may go	107:12
fil need	104:-12 126:36
@wire @person	126:21
minut ago	71:9 126:-12
add run	126:32
sound==	126:10
sound	126:10
speak==s	41:-10 126:19
^ unless	37:-12 41:-10 126:34
object==s	37:-12 126:15
object==	37:13 126:-12
any safety	23:28
protection==	23:79 30:-8
protection	23:79 30:-8
what protection	23:52
wear at	23:45 100:-8 104:-8
is dangerous	23:23
need goggle	23:17
grind fret	23:32
end without	23:12
without glass	23:13
safety when	23:25
safely==	16:-14 23:35 36:-14
safely	16:-14 23:35 36:-14
when nip	23:27 29:-8 30:-8
need glass	5:-8 23:34
it dangerous	23:13
dangerous to	23:13
eye protection	23:27
protection for	23:67
when hammer	23:26
for hammer	23:14
lung==s	23:18
lung	23:18
toxic==	23:50 26:-9
toxic	23:50 26:-9
toxic $	23:50 26:-9
ca==	23:10
ca	23:10
safety stock	8:-45 9:75
jam==med	102:54 103:-24
)~",
  };
  static const std::string whole = [] {
    std::string out;
    for (const char* piece : pieces)
      out += piece;
    return out;
  }();
  return whole;
}

} // namespace nutward::talk
