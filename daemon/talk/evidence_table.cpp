// Made by build/learn-sayings from tests/sayings; see DEVELOPERS.md. Not to be edited.
// clang-format off
#include "talk/evidence.hpp"

namespace nutward::talk {

std::string_view learnt_table() {
  static constexpr const char* pieces[] = {
R"~(fit place shift all-right slots cuts cut-list labels stock supply order-list due jobs job persons whose press level suits lots balance saved tin-care held spring-back machines bookings stages hours agenda promise orders suppliers history not-understood help use hold let-go add scrap measured came-short finished pressed rechecked new-job set-due cancel-job define-wire receive reorder-level open-hours close-day open-extra set add-receiver drop-receiver new-person map-uid unmap-uid change-person retire-person return-person give-job free-job count weigh calibrate correct cut-from cut-new pulled from-lot slot-size shifted board-width lost remade handful measured-handful scrap-several use-several set-aside let-all-go define-bar drop-bar press-support wire-size reading crown-gap cause stands-low last-fret neck reseated glued levelled define-machine change-machine drop-machine machine-down machine-up stage-machine stage-minutes book cancel-booking start stop own-hours day-off day-on reopen-day priority after look-again ordered arrived order-promised cancel-order define-supplier change-supplier drop-supplier forget-not-understood undo -
$words	a about abraded abrasive accept acceptable according account across action add additional address advise advised after afternoon again against agenda ago ahead ai air all allowed alloy alone along already also although altogether always am amend among amount an and anew annual annul annulled another answer any anybody anymore anyone anything anyway anywhere apart apiece applied apply appropriate arbor archive are around arrival arrive arrived as aside ask asked asking assign assigned at attach attributable audit august available average avoid away back bad bag balance bandsaws banjaxed bank bar barbs bare bars based batch batches be beacon became because become becomes been before begin begins begun behind being believe bell belong belonging belongs below belt bend bender bending beneath bent best better between beyond big bin binding binned bins bit bits bless block board boards body bodyward book booked booking bookings books booth boss both bother bottleneck bottom bottomed bottoms bought bound bow box boxes brand breadth break breaking bridges bridging bring broke broken bronze brought buffer building bunch business busy but buy buying buzzer by cake calibrate caliper calipers call called callipers calls came can cancel cancelled cancels care carried carry caul cause change changed charge check checked chime chop christmas chuck chucked cittern clamp clamped clamps clean cleaned cleaning clear clock close closed closing closure cloudevents cm coffee coil coils colleague colleagues come comes coming command commands commenced commit compartments complete completed completely completion compound computer concerning confirm considered copper corners correct corroded cost costs could count counted counter counting counts cousin cover covers cracked cradle cradled create crew crooked crown crowning crowns csv current currently curve curved customer customers cut cuts cutting date dates daughters day days dead deadline deadlines dealer dec december deep deeper define definitively delayed delete deliver delivered deliveries delivery density dentist depth designated desk detach determined devil diary did differ dimensions dirt dirty discarded dispose distance divide divided division do does dog doing done door doors down dozen draw drawer drawers dressed dressing drill drop dropped drops dry due dulcimer duration dust e e'er each earlier earliest early earmark earmarked eat ebony edda edge edges else elsewhere em employed empty end ended ends enough enrol enter entered entirely entries entry equipment error established eur europe euros eve even evening event ever every everybody everyone everything exactly example exceptionally exist existing expect expected expecting explain extra eye fair fall falling falls fanned far favour feeler feet fell fella ferro fetch few fewer fewest figure file filed filing fill filled filling final finally find fine finger fingerboard finished firewood firm fistful fit fits fix fixed fixing flat floor folks follow following fool foot for forever forget forgotten former fortnight forward found free frequently fresh fret fretboard frets fretted fretting fretwire fri friday fridays from ft full function furnisher further g gander gap gauge gave general get gets getting gig give given gives giving glue glued go goes going gold gone gong gonna good goods got grab grabs gram grams grand greta grip groove grooves gross ground group groups guitars had hair half hammer hammered hand handful handles hands hang hangs happened happens harbour hard hardly has have having he head hear height heights held help henceforth her here hereby hers high higher highs him himself hired his history hitting hold holding holds holiday holidays hollow hollowed hollows home hook hooks hour hours house how how'd http https humidity hump humped hundredths hung hurry hurts i i'd i've id identify idle if ill in inch inches included including ins inspection instead instructions instrument instruments interrupted into inventory irena is it item items its january jig job jobs joins jointer joke jumbo junk just k keep keeping keeps kept kettle kg kill kilo kind kindly kinked kitchen klara kn knock knocking know known knows label labels lack lacks lady laid lamp landed lane laptop large last lasts late later latest lathe lay lb lead leaks least leave leaves leaving left leftover leftovers lena length lengths less let level levelled levelling lick lie lies lift lifted light like limit lindwurm line link list listens little load loads log login logs long longer look looked looking looks loose loss lost lot lots love lovely low lower lows luka lunch lying m machine machinery machines made maintenance make makes making man manner manual many map maple mapping mark marks married mass match mate matej material materials matter may maybe me mean means meant measure measured measurements measures measuring mechanic member mended messages metal metals metre metres mic'd micrometer middle might miha mil mill millimetre millimetres min mind mine mini minimum minute minutes mirjam miscounted mislaid misread missed missing mistake mm moment mon monday mondays money month more morning morrow most move moved mr ms much must my myself name named namely names near nearest nearly necessary neck necks need needed needing needs neighbours never new newly news newtons next nice nickel night nip nipped nipping no nobody none noon normal not note nothing notice noticed notices notify november now number numbers nut nutward o'clock oak observed occupies october odila of off offcut offcuts office often oil ok okay old on once ones only oops open opened opening opens operational or order ordered ordering orders org other others ought oughta our out outs outstanding outta oven over overall overdue overnight overview owing own owner pack packs paid pair paper parcel parlour part partial particular pass passes past pavle pay people per percent percentage perhaps permitted person personnel persons phone pick picked picture piece pieces pig pity place placed places plain plan planed planned plate play please plumber plus pocket point polish polished polishing pool poor pop popped porch position positions possess possible post postman pounds predecessor preparation pressed pressing price prices print printable printer printing priority produce produced program progress promise promised proud provide public pull pulled pulling purchase purchases push pushed put quantity quarter quarters question questions queue quick quicker quickly quiet quit quote rack radius ram ran rang range rate rated rather rating raw re reach read reading readings reads ready really rearrangement reason receive received receiver receivers recheck rechecked rechecking rechecks reckon record recorded recut redistribute refret refrets refretted regarded register regret regular reinspection reinstate rejoined relaid release reliable relief relocated remade remain remainder remaining remains remake remakes remaking remember reminders remove removed rename reorder repair replace replaced replacement report reported reports require requires reseat reseated reseating reservation reservations reserve reserved respectively responsible rest result retained retire retired retirement retiring return returned reuse reversed revert revoke rid right ring rings risen rock rocker rocking rocks rod rods rok role roles roll room rough roughly round rounded rounding router rubbish ruined rule ruler run running runs rush rusted s said same sanded sanding sat saturday saturdays save saved savings saw sawed sawn say says scale schedule scheduled scrap scrapped scraps scratch screen scrub seat seated seating see seems sell sells send sending sent september serve service set setting settings setup several shall shallow shape she she'll sheet shelf shift shifted shim shimmed shipment ships shop shopping short should show showed showing shows shuffle shut sick side sign sill silver since single sister sit sits sitting situation size sizes slack slid slide slim slips slot slots slow small smallest snapped so soft sold sole solid some somebody someone something somewhere soon soonest sorry sort sorts soul source space span spare spoilt spoken spool spot sprang spray spring springback springing sprung square squeeze squeezed staff stage stages stainless stand standard standing stands start started starting starts state statistics status stay stayed stays steady steel step stepped steps stick stickers sticking sticks still stock stocktaking stone stood stop stopped stopping stops straight straightedge straightened street strike strings struck stuck stuff such sufficient suit suitable suits sum summarise sums sunday sundays sunk supplier suppliers supply supported suppose supposed sure surplus suspended swap system table tablet tags take taken takes taking talk tang tare teeters tell tenths terms text than thanks that that'll the their them then there there'll these they they'd they'll they're they've thick thickness thin thing things think this those thousandths threshold threw through throw thrown thu thursday thursdays tidy tied tight till time times tin tips to today together told tomorrow too took tools top tops torn toss tossed total touch touched touches touching toward trade treat treble trim true trued truing trust trying tue tuesday tuesdays turn turned turning turns twice type typed typical uid un unassign uncertainty under understand undo unfinished unmap unmeasured unpacked unreserve until untouched unused up upon urban urgent url us usable use used useful useless user uses using usual usually valid van very vienna view vintage vise visitors wait waiting waits wall want wanted wants warm warn was waste wasted way we we'd we've webhook wed wedding wednesday wednesdays wee week weekdays weekly weeks weigh weighed weighing weighs weight welcome well went were what what've whatever wheel when whenever where whereabouts whether which while who whoever whole whom whose why wide width will window winter wire wires wise wish with withdraw withdrawn within without woman wood work worked working works workshop worn worth would wren write written wrong wrote x y'all yanked yard ye year yesterday yet you you're zone 
)~",
R"~($common	a about across add after afternoon again ago ai all allow along already also altogether alway am amount an and another any anybody anymor anyon anyth are around arriv as asid ask assign at away back bar be becaus been befor behind being belong bend bent between bin bit board book both box broken brought but buy by call came can cancel chang check christma chuck clean clos cm coil com come corner could count crown customer cut date day december deep deliver delivery did do doe doing done door down drawer dress drop due each edge else end enough enter even ever every everybody everyth exist expect fair fall far ferro fil find fine finish fit fix flat for forget fortnight found free fret friday from full gave get give glue go goe going gone gonna good got grab groov groove had half hand happen hard has have he held her here hereby high him his hold holiday hollow home hour how i i'd i've if in inch includ instead instrument into is it item its january job just keep kept kind kindly knock know laid last late later lay lead least leav left leftover length let level levell lie lift like limit lindwurm line list littl load long longer look loos lot low lunch m machin machine made mak make man many mark mate material may me mean meant measur measure metre middl mil millimetr millimetre mind mine minimum minute mm monday month more morn most mov move much must my myself nam name neck need never new next nip no nobody none noon not note noth november now number nut o'clock of off offcut old on once one only open or order other our out over own pass past peopl per person phon piec piece plac plan pleas point polish position press promis provid pull push put quarter queu rack radius ran raw read ready receiv recheck reckon record refret register remain remov replac report reserv rest retir rid right rod round run said same sand sat saturday sav save saw say scal scrap seat see send sent set shall she shift shop short should show side sinc sit slot so some somebody someth sort spring staff stag stand start stay step stick still stock stop straight strik stuff supplier supply suppos tabl take taken tang tell than that the their them then ther thes they they'r thing think this thos threw through thursday till time tin to today together told tomorrow too took top total touch tru tuesday turn under until up us use used using usual wait want was wast way we we'v wednesday wee week well went were what whatever when wher which whil who whol whom why wide width will window wire with without work workshop would writ wrong y'all ye year yesterday yet you 
fit==	0:35 1:17 5:12 18:14 35:11
slot==	0:158 1:111 2:-49 3:117 4:91 5:-24 6:-15 7:-8 10:-10 11:-14 12:-9 13:-49 15:-19 16:-51 17:-10 22:-11 23:-21 24:-14 25:-9 26:-10 27:-15 29:-19 30:-16 32:-8 33:69 36:155 37:88 38:-16 39:-17 40:-18 41:60 42:83 43:-39 44:-20 45:-36 46:22 47:-19 48:-10 55:-9 64:-10 65:-13 68:-8 69:-10 70:-72 71:-18 72:19 73:-14 74:54 75:34 76:83 77:80 78:62 81:-10 82:-74 83:-11 84:-31 87:-16 89:-40 90:-18 91:84 92:-15 93:42 94:-10 95:26 96:-18 97:-64 99:-8 101:-13 102:-8 103:13 104:-10 105:-14 106:48 107:-25 108:-20 110:-11 113:-15 114:-15 115:-14 117:-9
length==	0:16 1:37 2:-18 3:8 4:101 7:13 16:-12 22:48 33:-9 36:-25 38:-8 39:10 40:-13 41:55 46:-11 48:-10 49:-34 50:-33 51:-14 66:13 68:48 69:-15 70:-8 72:13 74:-20 75:-45 76:-31 78:34 80:-12 81:102 82:40 85:36 91:-8 92:-28 93:-15 97:-11 98:-15 107:-12 108:-14 116:-12 120:29 121:-12 125:10
job==	0:68 2:47 3:23 4:-9 5:88 6:-15 7:-20 8:-18 9:-23 10:-21 12:-38 13:100 14:-27 15:61 16:52 17:89 18:45 19:-13 20:-22 21:-22 22:-25 23:93 24:37 25:-19 27:-33 28:-32 29:24 30:67 31:-17 32:-21 33:52 34:-8 35:15 36:-20 37:14 38:-71 39:-47 40:-44 41:-13 42:10 43:51 44:35 45:41 46:76 47:-37 48:79 49:-17 50:-28 51:-16 52:-24 53:-24 54:-33 55:-36 56:-8 57:-17 58:-21 59:-20 60:-17 61:-19 62:-25 63:-27 64:30 65:95 66:-22 67:-13 68:-23 69:-35 70:-40 72:19 73:18 74:48 75:-20 77:12 79:-26 80:-37 81:-67 82:-65 83:57 84:19 85:-31 86:-20 88:-16 89:79 90:22 91:30 92:30 93:34 94:53 95:67 96:30 97:34 98:-35 99:-43 100:-13 101:-37 102:-31 103:16 104:-15 105:-15 107:18 108:68 109:-19 110:-23 111:-42 112:-25 113:-10 114:47 115:33 116:-21 117:-33 118:-25 119:-18 120:-28 121:-26 122:-11 124:-18 125:173
pull==ed	0:76 2:-25 3:-9 4:-16 13:-11 15:-10 17:-9 24:-9 27:-8 33:27 36:-9 39:23 43:60 45:-8 48:9 70:-12 72:153 75:-17 78:-13 79:25 91:-14 95:40 107:9 108:-11 113:-10 125:48
long==	0:50 1:32 2:-27 3:54 4:85 5:-23 6:-9 8:-13 9:27 11:58 13:-36 16:-19 17:-18 18:-11 21:-8 23:-9 24:-11 25:-11 27:102 29:-18 30:-11 32:76 35:-28 36:-8 38:-8 40:-12 41:23 42:-20 44:13 45:-11 50:29 68:16 69:14 70:10 72:16 76:-8 77:-15 78:-10 81:-15 85:42 86:63 89:-14 91:-8 92:-20 93:-18 101:8 104:24 117:-8 124:-9 125:22
fit	0:105 4:-14 5:12 18:27 33:-14 35:11 91:-9
^ fit	0:35
slot	0:66 1:67 2:38 3:37 4:198 5:-41 6:-35 7:-13 8:-13 9:-13 10:-13 11:-28 12:-17 13:18 14:-12 15:-37 16:-10 17:-31 18:104 19:-8 20:-12 21:-10 22:-18 23:-33 24:-26 25:-15 27:10 28:-15 29:-40 30:13 31:-10 32:-16 33:40 35:-22 36:77 37:72 38:-31 39:-23 40:-27 41:12 42:42 43:43 46:14 47:-37 48:-35 50:-16 51:-8 52:-8 53:-11 54:-12 55:-14 57:-9 58:-8 64:-41 65:-29 66:-10 68:-13 69:-16 70:67 71:76 73:-29 74:153 75:60 76:64 77:74 78:57 79:-10 80:-20 81:-38 82:12 83:-20 84:-38 85:-13 87:-31 88:-10 89:-49 91:97 92:-23 93:27 94:-18 95:44 96:8 97:19 99:-18 100:-9 101:-19 102:-13 103:30 104:23 105:-24 106:37 107:31 108:21 109:-10 110:-14 111:-12 112:-9 113:-34 114:-59 115:-12 116:-11 117:-15 118:-8 121:-10 124:-11 125:-23
fit slot	0:27
the	0:-29 2:21 3:-49 4:12 5:-15 6:82 7:41 8:-17 9:17 10:15 11:19 12:8 13:-44 14:21 15:-20 17:48 18:8 19:15 20:14 21:24 22:-32 24:8 25:9 26:8 27:26 28:8 29:9 31:34 32:10 33:44 34:-17 35:17 36:25 37:-15 38:34 39:17 40:22 42:23 44:47 45:46 47:28 48:45 49:-47 50:13 52:-20 53:16 54:23 55:20 56:-13 57:44 60:29 61:11 67:45 68:-20 69:25 70:16 71:31 72:40 73:9 74:12 76:20 79:38 80:37 81:24 83:43 84:21 85:30 86:53 87:21 88:22 89:22 90:50 91:26 92:8 93:38 94:-10 96:-8 97:44 98:23 100:58 102:15 103:69 104:22 105:27 106:18 108:18 109:-31 110:-8 111:-10 112:45 113:10 115:11 116:-19 117:34 118:41 119:33 121:16 122:21 124:-20 125:-8
slot the	2:17 3:-21 4:15 33:13 37:15 42:-13 43:-9 44:13 70:20 71:25 72:-8 76:-16 77:9 78:10 91:-19 93:28 97:10
#o	0:67 1:-22 2:-42 3:53 5:-36 6:-22 7:-11 8:-17 9:9 10:-10 12:52 13:-57 14:-12 15:-29 16:-21 17:-34 18:-29 19:-14 20:22 21:20 22:-13 23:-22 24:-29 25:-14 26:17 27:-33 28:25 29:44 30:29 31:-12 32:-10 33:10 34:11 35:-10 36:42 37:13 38:-19 39:-8 40:-17 41:20 42:29 43:-39 44:-17 45:56 47:9 48:-29 50:-13 52:-11 53:65 54:40 55:-17 57:-10 58:-11 60:-9 61:-15 62:-15 63:-11 64:-22 65:10 66:-8 67:-8 68:-11 69:-12 70:28 71:13 72:-40 73:18 74:-25 75:42 76:28 77:41 78:60 81:-15 83:-21 84:-16 85:-8 86:-8 87:-33 88:-9 89:31 90:22 91:12 92:26 93:17 94:-14 95:70 96:23 97:42 100:-18 102:43 103:-13 104:-12 106:12 107:-33 108:-30 109:-10 110:50 111:56 112:33 113:-26 114:36 115:32 117:-9 118:41 119:-17 120:-8 121:-13 124:-14 125:-36
the #o	0:47 1:-22 2:-21 3:47 5:-29 6:-17 7:-8 8:-12 9:-10 11:35 12:-38 13:-19 14:-9 15:-12 16:-30 18:-19 19:-10 20:16 21:22 22:-8 23:-11 24:-19 26:11 27:-24 28:38 29:-15 30:41 33:16 34:9 37:30 38:-12 40:-10 42:12 43:-25 45:14 46:10 47:57 48:-19 54:40 55:-8 57:-8 61:-10 62:-10 64:-11 70:35 71:14 72:-35 73:25 74:-13 75:19 76:25 77:24 78:22 81:-11 83:-11 84:-9 87:-23 89:55 91:23 93:37 94:-9 95:35 96:-9 97:26 99:-12 100:-10 101:23 103:-9 106:18 107:-25 108:-21 110:64 111:61 112:15 113:-14 114:-25 115:18 117:-10 118:29 119:-14 121:-9 125:-25
length	1:34 2:16 4:234 5:15 8:38 13:-10 16:-16 17:-8 22:23 32:-8 33:-13 36:-26 38:-9 40:-15 41:36 44:-14 45:-8 46:-12 48:-10 49:-34 50:-36 51:-14 55:23 66:12 68:47 69:-16 70:-11 71:-20 72:15 74:-21 75:-39 76:-31 77:-9 78:33 79:16 80:79 81:18 82:22 85:33 87:-9 89:-13 91:-10 92:-29 93:-23 97:-14 98:-17 107:-14 108:-16 116:-13 120:38 121:-14 125:9
#o length	0:15 41:-8
#d	0:42 1:91 2:64 3:86 4:-65 5:-45 6:-31 8:-63 9:-56 10:-11 11:-25 12:-15 13:-38 14:-17 15:-29 17:-45 18:21 19:-56 20:-48 21:-28 22:-59 23:19 24:-28 25:-14 26:-25 27:-22 28:-22 29:-32 30:-22 31:-35 32:-32 35:-15 36:82 37:75 38:91 39:134 40:69 41:109 42:122 43:-38 44:-26 45:-67 47:-13 48:-26 49:66 50:52 51:25 52:-10 53:11 54:-11 55:22 57:-14 58:-14 59:-10 60:-19 61:-10 62:-14 63:-11 64:-26 65:-24 66:49 67:16 68:97 69:132 70:72 71:-49 72:49 73:-18 74:144 75:-17 76:104 77:-56 78:76 79:-52 80:161 81:84 82:84 83:-20 84:-40 85:59 86:-14 88:68 89:-44 90:-27 91:-47 92:99 93:-38 94:-17 95:-37 96:-27 97:-44 98:-26 99:-17 100:-17 101:-18 102:-15 103:-13 104:-15 105:-20 106:-18 107:-35 108:-38 109:-8 110:-20 111:-13 112:-19 113:-25 114:-20 115:-19 116:19 117:15 118:-21 119:-19 120:35 121:-54 122:-11 124:-15 125:-19
)~",
R"~(length #d	0:31 1:28 2:10 4:-19 36:-15 39:13 42:30 46:-9 49:-38 50:-25 51:-12 68:55 69:-17 74:-14 75:-20 76:-21 78:48 80:55 82:30 85:18 92:-16 93:-12 97:-9 98:-8 107:-8 108:-12 120:23 121:-20
#d slot	0:17 41:-8 74:12
#o slot	0:33 2:13 3:29 4:-14 37:16 41:-13 76:27 93:9
#n	0:21 1:9 3:113 4:25 5:-59 6:-22 7:-17 8:-116 9:-102 10:-22 11:-23 12:-80 13:-73 14:-31 15:-43 16:18 18:-41 19:-85 20:-29 21:-24 22:-33 23:-39 24:-55 25:-61 26:-61 27:-35 28:-54 29:-48 30:36 31:-65 32:-53 34:-31 35:-29 36:149 37:85 38:40 39:84 41:112 42:73 43:-8 44:83 45:92 46:27 47:57 48:-61 49:-30 50:81 52:57 53:-8 54:60 55:-13 56:-39 57:-13 58:-61 59:21 60:-13 61:-62 62:-10 63:-46 64:-11 65:-29 66:21 68:47 69:38 70:136 71:123 72:70 73:76 75:188 76:60 77:40 78:92 79:36 80:76 81:136 82:191 83:-13 84:-14 85:33 86:-36 87:-28 89:137 90:68 91:29 92:116 93:107 94:-27 95:65 96:84 97:108 98:33 99:32 100:-59 101:41 102:13 103:-55 104:81 105:85 107:-50 108:-34 109:11 110:-28 111:67 112:-34 113:43 114:59 115:57 116:41 117:50 119:-15 120:26 121:37 122:-36 123:-28 124:-29 125:45
slot #n	0:142 1:-89 3:69 4:-49 5:-15 6:-10 11:-8 13:-31 15:-9 16:23 17:-14 18:-31 23:-9 27:-15 30:-10 33:46 36:61 37:30 38:-15 39:-10 40:-12 41:53 42:44 43:-30 45:37 46:23 47:-10 48:-14 50:-10 64:-14 65:-12 69:-8 70:37 71:30 72:14 73:-16 74:-51 75:42 76:94 77:36 78:46 80:-16 81:-27 82:15 87:-11 89:-13 90:16 92:-18 93:20 95:20 96:15 97:16 105:-11 107:-22 108:-15 113:-12 114:-26 115:-10 125:19
job	0:-11 1:-10 2:73 4:42 5:76 6:91 7:-27 8:-44 9:43 10:-32 11:94 12:201 13:96 14:18 15:90 16:27 17:39 18:72 19:-27 20:-33 21:-32 22:-40 23:53 24:74 25:-42 26:-20 27:84 28:-54 29:61 30:35 31:-29 32:-34 33:41 34:-11 35:-8 36:-44 37:24 38:-98 39:-51 40:-59 41:28 42:37 43:52 44:43 45:15 46:70 47:67 48:94 49:-20 50:-36 51:-24 52:-33 53:-32 54:-43 55:-47 56:-11 57:-23 58:-30 59:-30 60:-27 61:-41 62:-42 63:-41 64:77 65:83 66:-28 67:-16 68:-29 69:-45 70:-30 72:47 73:46 74:32 75:-42 76:32 77:57 78:25 79:-33 80:-40 81:-84 82:-62 83:73 84:67 85:-38 86:-25 87:82 88:-20 89:-17 90:75 91:90 92:50 93:37 94:90 95:59 96:48 97:31 98:-42 99:-61 100:-19 101:-54 102:-42 104:-29 106:-27 107:84 108:76 109:-28 110:-33 111:-62 112:-32 113:65 114:58 115:41 116:-27 117:-42 118:-34 119:-28 120:-34 121:-36 122:-15 123:-10 124:-24 125:-24
#n job	0:45 2:-32 3:-11 4:23 11:13 15:-16 16:-12 17:-8 18:-16 23:26 24:13 27:31 33:33 36:24 37:-22 41:40 42:21 43:-21 45:-23 48:-39 64:-10 65:-27 73:11 74:-20 75:59 76:-14 77:39 78:11 82:-11 91:-41 92:25 93:8 95:-14 96:31 97:18 107:-16 108:9 114:-72 115:-16
job job	0:10 2:-14 3:-15 4:-15 11:41 13:18 15:-28 16:-13 18:-11 23:39 24:30 27:35 33:30 36:-25 41:49 42:17 43:-14 45:-62 47:-22 48:-55 64:-12 65:-33 71:-9 73:8 76:34 77:44 78:19 82:-11 84:-20 90:26 91:41 92:59 94:19 96:30 107:-23 113:-15 114:-85 115:-23 125:-10
job #n	1:-30 2:90 3:-22 4:44 5:71 6:98 7:-22 8:-17 9:-29 10:-23 11:18 12:-64 13:63 14:-24 15:107 16:64 17:71 18:105 19:-13 20:-25 21:-25 22:-37 23:-14 24:44 25:-15 26:-9 27:47 28:-36 29:33 30:-45 31:-17 32:-19 33:18 34:-9 35:-39 37:20 38:-88 39:-43 40:-52 41:47 43:105 44:39 45:44 46:-35 47:125 48:111 49:-17 50:-32 51:-20 52:-31 53:-28 54:-40 55:-41 56:-9 57:-18 58:-14 59:-25 60:-25 61:-19 62:-29 63:-30 64:103 65:101 66:-25 67:-14 68:-24 69:-40 72:49 73:33 74:85 75:-22 76:33 77:25 78:12 79:-30 80:-38 81:-78 82:-26 83:74 84:79 85:-31 86:-21 87:103 88:-16 90:31 91:16 92:-11 93:19 94:57 95:-21 96:15 97:-29 98:-35 99:-56 100:-13 101:-47 102:-38 103:-18 104:-66 106:-15 107:124 108:70 109:-24 110:-27 111:-59 112:-27 113:98 114:226 115:76 116:-23 117:-39 118:-31 119:-23 120:-31 121:-33 122:-11 123:-8 124:-16 125:44
#n slot	0:32 2:31 3:37 4:-32 13:-11 16:10 18:17 27:16 30:45 33:13 36:-18 37:51 41:12 42:-27 43:8 45:-30 71:28 72:-36 74:29 76:14 78:-27 84:-13 89:-22 91:-29 93:48 97:-25 114:-13
slot slot	0:-17 1:-8 3:-24 4:-20 16:13 33:12 37:15 41:30 42:22 71:18 74:-14 76:11 77:10 78:22 91:-17 92:8 95:-8
#n length	3:10 4:-15 5:21 22:43 36:-9 41:20 69:-17 72:8 75:-15 76:-13 78:9 82:36 85:-23 92:-10 125:21
length #n	0:18 1:8 2:20 3:30 4:-14 41:-18 42:-16 66:15 69:-8 71:-9 75:-11 78:-10 80:16 82:32 120:9
mm	0:28 1:34 3:73 4:-52 6:-15 7:52 9:-18 11:-9 13:-13 15:-8 16:48 17:-27 18:10 19:-17 20:-24 21:-13 22:-40 23:-21 27:-10 29:-8 30:-12 31:-15 32:-9 33:-18 36:-38 37:-21 39:82 40:-29 41:62 42:76 43:-21 44:-34 45:-29 46:86 47:-15 48:-11 49:55 51:35 55:89 60:-11 65:-11 66:21 67:-30 68:59 69:60 70:-42 71:-34 72:12 73:-12 74:54 75:-52 76:49 77:-40 78:10 79:-44 80:36 81:54 82:87 83:-8 84:-8 85:83 86:-10 87:63 88:70 89:-30 90:-16 91:-40 92:77 93:-32 94:-8 95:-17 96:-12 97:-29 98:-17 99:-13 101:-8 104:-11 107:-16 108:-16 113:-12 114:-10 115:-10 118:-11 119:-9 120:-39 121:38 125:-46
#n mm	0:16 1:50 2:18 3:70 4:-34 7:49 8:-8 16:42 17:-19 20:-11 22:-29 33:-9 36:-30 37:-11 38:33 39:75 40:-24 41:65 42:16 43:-16 44:-11 45:-15 46:39 47:-8 50:-27 51:-14 55:75 68:17 70:-18 71:-25 72:-9 74:52 75:-40 76:22 77:-24 79:-32 81:30 82:53 85:45 87:21 88:57 89:-19 90:-9 91:-32 92:43 93:-22 95:-10 96:-8 97:-16 98:-9 99:-8 107:-9 116:-18 117:-12 120:-11 121:11 125:-24
mm length	0:15 1:31 41:-25 49:-16 68:16 75:-9 78:-8 80:27 82:27 85:14 125:-8
mm job	4:-9 42:11 72:14 78:16
in	0:33 1:-10 2:-31 3:30 4:-22 5:-23 6:-16 7:25 8:24 9:-20 10:15 11:-19 12:15 13:-8 14:20 15:-26 16:-35 17:-64 18:76 19:-23 20:51 21:50 22:33 23:-12 24:-12 28:55 29:-30 30:-9 31:-11 32:-27 33:-13 34:-8 36:40 37:-30 38:-32 39:52 40:-28 41:30 43:-14 45:-29 46:52 47:32 48:-29 49:34 50:16 54:28 55:47 57:-15 59:20 60:-12 64:-27 65:-14 66:32 67:-15 69:-8 70:-51 71:-43 72:29 73:-20 74:14 75:69 76:-13 77:-25 78:32 79:54 81:24 82:38 83:12 84:-11 85:15 86:-8 87:18 88:-10 89:-42 90:-19 91:49 93:-40 94:36 95:39 96:22 97:-24 98:36 99:-37 101:-18 103:-19 106:-17 107:-39 108:-11 109:38 110:37 111:49 112:-33 114:-17 115:28 116:10 117:38 118:-12 119:-33 120:51 121:-14 122:-8 124:10 125:-46
#d in	0:13 2:13 4:-9 5:-11 7:10 8:-10 18:19 22:-8 23:-9 36:-29 37:-9 38:-9 39:17 40:-31 41:10 42:9 46:38 49:-10 51:21 66:10 68:18 69:9 74:17 75:-15 78:16 80:22 81:39 82:12 84:-13 85:27 87:12 91:-9 92:36 116:22 117:-8 120:55 121:-52 125:23
in slot	0:-30 1:-20 3:65 41:48 42:-37 70:-21 71:-13 75:45 76:-14 77:13 78:-29 82:-8 91:51 95:-16 125:77
#r	0:23 1:-23 2:9 3:8 5:-30 6:-16 8:-11 9:-12 10:-10 12:-11 13:-48 15:-16 16:12 17:-13 18:-26 19:-9 20:20 22:-10 23:-18 24:-23 27:-32 29:9 31:-11 33:8 34:10 35:-9 38:-8 40:-11 42:22 43:-37 45:32 47:29 48:-22 50:-25 52:35 53:12 54:83 55:-13 61:-16 62:-17 63:-12 64:-22 65:-24 66:-9 70:45 71:63 72:-26 73:-13 74:-33 75:138 76:-18 77:9 82:46 83:-14 84:-12 87:-24 89:86 90:17 91:24 93:19 94:-10 95:32 96:30 97:26 99:-14 102:-10 104:-8 105:92 107:-32 108:-26 109:17 110:33 111:64 112:21 113:-18 114:-30 115:21 116:24 117:-15 118:50 119:-15 121:-10 125:-20
slot #r	0:38 1:-12 3:17 4:-21 5:-8 13:-12 18:-8 33:18 36:22 37:17 41:22 42:11 45:-9 70:38 71:11 74:-22 75:8 76:-18 78:22 89:-12 91:-24 95:23 97:19 114:-8
#r slot	0:25 16:9 41:-10
#r job	0:11 2:12 16:-15 41:29 44:-9 45:12 71:-8 74:-10 78:-10 95:8 97:9 105:45
@job	0:-27 2:79 3:64 4:53 5:31 6:54 7:-46 8:-59 9:-67 10:-41 11:14 12:-54 13:94 14:-42 15:94 16:49 17:51 18:103 19:-44 20:-51 21:-48 22:-47 24:20 25:-43 27:40 28:-73 30:-19 31:-52 32:-44 33:22 34:-16 35:-53 36:18 37:35 38:-33 39:-50 40:-54 41:38 42:43 43:57 44:62 45:83 46:47 47:135 48:126 49:-27 50:-31 51:-23 52:-29 53:-35 54:-33 55:-53 56:-16 57:-33 58:-31 59:-23 60:-36 61:-47 62:-39 63:-37 64:120 65:79 66:-26 67:-24 68:-22 69:-39 71:57 72:40 73:89 74:34 76:33 77:22 78:44 79:-29 80:-35 81:-61 82:24 83:58 84:57 85:-35 86:-30 87:84 88:-27 89:54 90:61 91:50 92:54 93:51 94:76 95:50 96:56 97:62 98:-36 99:-45 100:-39 101:-50 102:-43 103:-43 104:-43 106:-12 107:80 108:61 109:-24 110:-54 111:-42 112:-64 113:104 114:250 115:68 116:-22 117:-39 118:-44 119:-41 120:-29 121:-34 122:-24 123:-13 124:-29 125:43
job @job	3:19 4:22 11:12 13:-61 15:-13 18:11 27:16 33:24 36:-25 41:-9 42:9 45:27 48:-25 64:12 70:-13 72:-21 74:-43 75:-15 76:-19 78:22 82:-17 89:-11 90:17 91:27 92:17 93:21 94:16 95:25 108:18 114:-26
@job length	2:13 3:20 4:-9 41:8 72:22 74:-8 78:-9 93:-8
)~",
R"~(#d mm	0:19 2:-12 3:11 4:-16 5:-10 7:11 8:26 9:-8 16:19 18:17 20:-8 22:-10 23:-12 31:-10 37:-9 38:-23 39:-8 42:33 44:-12 45:-11 46:23 49:43 50:27 55:32 69:-10 70:-18 72:29 75:-8 76:34 77:-15 78:22 80:24 81:29 82:37 85:22 88:22 89:-8 92:44 93:-10 97:-10 108:-9 117:13 120:-23 121:31 125:-24
fret	0:84 1:-43 2:96 3:18 4:42 5:25 6:-22 7:-14 9:-51 10:-13 11:-41 13:32 14:-22 15:-33 16:32 17:82 18:-27 19:-23 21:20 22:-23 23:-36 24:84 25:-32 26:-21 28:-18 29:-56 30:39 31:-15 32:-32 33:52 35:-30 36:37 38:-27 39:-18 40:-8 41:81 42:45 43:48 44:23 45:80 46:69 47:-45 48:-35 50:-21 51:-11 52:-14 53:-14 54:-15 55:-18 57:-10 58:-11 60:-10 61:-8 62:-8 63:-8 64:-31 65:-36 66:-14 68:-28 69:-18 70:19 71:9 72:74 73:49 74:-46 75:114 76:-28 77:114 78:50 79:22 80:-17 81:-37 83:-14 84:-34 86:-10 87:-43 88:-14 90:42 91:27 92:36 93:126 94:-22 95:63 96:65 97:60 99:-25 100:-10 101:-17 102:-16 103:22 104:37 105:-34 106:-18 107:19 109:-8 110:-14 111:-17 112:-14 113:-40 114:-52 115:-15 116:-15 117:-17 118:-12 119:-9 120:-16 121:-12 122:-8 124:-12
slot fret	0:26 1:-9 2:10 3:16 4:-16 33:10 37:12 44:9 71:18 74:-15 77:14 78:-11 91:-11 93:10 95:-8 114:-8
fret #n	0:13 1:-26 2:-28 5:-17 13:-38 15:-13 16:60 17:63 18:-12 23:-9 24:-38 27:-20 29:-11 30:-10 33:15 36:87 37:24 38:-12 39:-21 40:-11 41:46 43:-38 45:18 46:21 47:-14 48:-9 64:-12 65:-15 68:-15 70:47 71:44 72:-10 73:-26 74:-23 75:53 77:50 81:-17 87:-17 89:36 90:55 91:68 92:39 93:-9 94:-10 95:81 96:37 97:44 99:-9 104:-12 105:-14 107:-26 108:-16 113:-15 114:-21 120:-8
@job slot	0:40 1:-17 3:10 4:19 13:-42 36:9 41:-8 42:21 44:10 48:-12 64:-8 70:-24 72:-16 74:64 75:-21 76:-19 78:11 82:10 89:-10 91:-18 93:18 95:10 97:38 107:18 108:24 114:-14
pull	0:84 2:-36 4:17 5:-9 10:-17 11:-9 12:34 13:-25 15:-13 16:-13 17:-21 24:-13 25:-9 27:20 29:-10 32:-12 33:17 35:-10 36:-12 39:22 41:-11 43:107 44:-14 45:-18 47:-10 57:10 64:-8 65:-12 70:-14 72:168 73:-9 74:-9 75:-23 77:28 78:-19 79:24 82:-8 87:-9 89:-10 90:-10 91:-19 92:-10 93:-17 95:57 96:-11 97:-19 103:52 104:26 107:90 108:33 113:-15 114:-13 115:-10 125:20
~	0:10 1:-11 2:34 4:-30 7:-10 8:-21 9:-27 10:-22 11:-52 12:23 13:-12 14:-25 15:-13 16:42 17:-8 18:-16 19:-16 20:-15 21:-17 22:-17 23:-14 25:-37 26:-18 27:-55 29:-21 30:-11 31:-24 32:95 33:-8 36:-12 38:-14 40:37 41:-49 43:-8 44:-16 45:-9 47:-8 48:12 49:111 50:38 51:-10 52:-10 53:20 55:127 56:169 57:27 58:88 59:-12 60:-15 61:44 62:-30 63:-17 64:11 65:-9 66:-12 68:-11 69:26 71:-28 74:-16 75:-24 76:-11 77:46 78:-16 80:-11 82:-47 85:10 86:53 87:11 88:-14 89:-10 91:-15 92:-17 93:-28 97:-10 98:71 99:42 100:-38 101:32 102:-20 103:-28 104:-15 105:-21 106:-15 107:-8 108:-38 109:-16 110:26 111:-28 112:-24 113:-9 115:-8 116:57 117:70 118:56 119:18 120:34 121:186 122:48 124:-14 125:-57
pull ~	0:11
~ slot	0:18 42:-9 44:11 77:15 78:-8
and	0:12 1:-33 2:14 3:-32 5:-15 6:-22 7:-24 8:11 9:9 10:34 11:16 12:-13 13:16 14:31 15:-27 16:24 17:23 20:51 21:48 22:-30 23:60 24:-29 25:-9 26:-18 27:39 28:-21 29:13 30:-9 32:48 33:-9 36:-15 37:-23 38:-46 40:-15 41:-28 42:33 45:32 47:-19 48:-12 50:-12 51:-15 52:13 54:-20 58:15 60:-10 61:10 62:33 64:-28 65:-30 66:28 69:-20 70:42 72:21 73:-29 74:-16 75:35 76:-12 77:32 78:29 79:-19 80:13 81:21 83:38 85:20 86:-33 87:-18 88:30 90:59 91:17 92:11 93:14 95:92 96:66 97:19 98:-24 99:-23 100:-22 101:-14 102:28 103:-22 104:-12 106:-22 107:-21 108:-20 109:51 110:-31 111:-40 112:-26 113:-29 114:-10 116:46 118:-13 119:-8 120:23 121:10 124:13 125:-72
#n and	0:-23 1:-23 4:23 10:-12 11:-9 13:32 18:-10 23:-10 24:-10 27:-14 29:-16 33:27 36:-89 38:-12 39:-8 40:-16 41:-9 42:24 43:14 44:14 45:17 47:-8 48:-11 54:13 65:-13 70:25 71:32 72:-23 73:-14 74:-16 75:-20 77:28 78:23 80:20 81:62 82:94 85:-8 89:13 91:66 93:33 95:32 96:27 97:53 101:10 102:-8 107:-9 109:17 111:-8 112:-11 113:-9 114:-15 115:15 125:-11
and #n	0:-30 1:-17 4:17 11:58 13:-15 16:-12 17:-17 20:-19 23:-17 24:-13 27:-17 29:-10 30:-8 33:-11 36:-9 38:-16 39:-12 40:-35 42:21 43:22 44:11 45:29 46:21 47:-9 50:-25 52:-9 53:-9 54:10 65:-8 66:39 69:-9 70:48 71:28 72:-14 73:-14 74:-9 75:34 77:32 79:-10 80:19 81:48 82:38 85:48 87:-15 90:-13 91:41 92:60 93:-18 96:22 97:42 98:-11 99:-10 101:9 102:-9 104:-10 105:-15 107:-8 109:-9 113:-10 114:-12 115:15 116:42 117:-11 120:-13 125:-10
#o job	2:-9 11:12 72:-10 75:26 92:-9 93:17 114:24
long	0:50 1:32 2:-27 3:54 4:85 5:-23 6:-9 8:-13 9:27 11:58 13:-36 16:-19 17:-18 18:-11 21:-8 23:-9 24:-11 25:-11 27:102 29:-18 30:-11 32:76 35:-28 36:-8 38:-8 40:-12 41:23 42:-20 44:13 45:-11 50:29 68:16 69:14 70:10 72:16 76:-8 77:-15 78:-10 81:-15 85:42 86:63 89:-14 91:-8 92:-20 93:-18 101:8 104:24 117:-8 124:-9 125:22
long ~	0:11
&#d	0:40 1:86 3:166 4:-52 5:-15 6:-30 8:-60 9:-54 10:-11 11:-24 12:-14 13:-36 14:-16 15:-28 16:11 17:-43 18:-9 19:-54 20:-46 21:-27 22:-57 23:21 24:-27 25:-14 26:-25 27:-20 28:-21 29:-26 30:-21 31:-34 32:-31 35:-14 36:93 37:57 38:94 39:99 40:81 41:190 42:95 43:-37 44:-23 45:-39 46:-36 47:-12 48:-22 49:30 50:47 51:40 52:-9 53:12 54:-10 55:25 56:8 57:-14 58:-13 59:-9 60:-18 61:-9 62:-13 63:-10 64:-25 65:-23 66:52 67:13 68:88 69:67 70:80 71:-43 72:-10 73:-17 74:84 76:117 77:-51 78:56 79:-47 80:63 81:101 82:124 83:-20 84:-21 86:-11 88:75 89:-40 90:-26 91:-42 92:156 93:-26 94:-16 95:-33 96:-25 97:-37 98:-18 99:-16 100:-16 101:-17 102:-15 103:-13 104:-14 105:-16 106:-18 107:-27 108:-26 110:-19 111:-12 112:-18 113:-23 114:-18 115:-18 117:17 118:-20 119:-18 120:-29 121:12 122:-10 124:-12
&#n	0:52 1:119 2:8 3:-21 4:22 6:25 7:-14 8:-105 9:-92 10:14 12:-67 13:78 14:-22 15:47 16:21 17:43 18:51 19:-74 20:-28 21:-26 23:19 25:-54 26:-26 27:29 28:-16 29:23 31:-52 32:-43 33:40 34:-27 35:-13 36:-43 37:14 38:125 39:-13 40:128 41:-13 42:29 43:56 44:-26 45:23 46:-60 47:17 48:79 49:-16 50:61 51:32 52:-21 54:26 55:37 56:-29 58:-51 59:22 60:20 61:-48 63:-31 64:83 65:92 66:72 67:21 68:44 69:68 70:-21 71:-14 72:22 73:42 74:69 75:-72 76:30 77:53 78:17 79:31 80:-51 81:11 82:-85 83:14 85:8 86:-22 87:39 89:9 90:24 91:18 92:28 93:39 95:49 96:8 97:59 98:70 99:107 100:-47 101:21 102:38 103:-46 104:81 106:34 107:92 108:8 109:-28 110:-53 111:41 112:-9 113:31 115:38 116:49 117:28 119:8 120:16 121:53 122:-29 123:-23 124:-15
&#o	0:53 1:-21 2:-39 3:61 5:-36 6:-21 7:-11 8:-16 9:10 10:-10 11:-21 12:53 13:-56 14:-12 15:-29 16:-19 17:-36 18:-26 19:-13 21:22 22:-12 23:-22 24:-28 25:-13 26:8 27:-30 28:12 29:38 30:38 31:-12 32:-9 33:13 34:12 35:-9 36:58 38:-18 39:-8 40:-17 41:42 42:47 43:-39 44:-18 45:33 47:47 48:-28 50:-11 52:-11 53:18 54:48 55:-15 57:-9 58:-9 60:-8 61:-11 62:-12 63:-10 64:-19 65:14 66:-8 68:-10 69:-11 70:16 71:20 72:-28 73:18 74:-23 75:22 76:31 77:45 78:79 81:-14 83:-19 84:-16 86:-8 87:-32 88:-8 89:18 90:24 91:17 92:32 93:11 94:-14 95:33 96:26 97:38 100:-11 101:17 102:44 103:-12 104:-11 106:13 107:-32 108:-30 109:-9 110:16 111:49 112:51 113:-25 114:38 115:33 117:-9 118:50 119:-16 121:-12 124:-14 125:-35
&#r	0:-8 1:-23 2:13 3:8 5:-29 6:-15 8:-11 9:-12 10:-9 11:-11 12:-10 13:-45 15:-16 16:8 17:-13 18:-26 19:-9 20:20 22:-9 23:-17 24:-23 27:-31 29:10 30:15 31:-11 34:10 35:-9 36:14 38:-8 40:-11 41:11 42:11 43:-36 45:20 47:39 48:-22 50:-23 52:36 53:18 54:81 55:-12 61:-14 62:-15 63:-12 64:-17 65:-21 66:-9 70:45 71:67 72:-14 73:-13 74:-27 75:42 76:-12 77:11 78:26 82:46 83:-14 84:-12 87:-23 89:87 90:18 91:32 93:26 94:-9 95:34 96:35 97:33 99:-13 101:8 102:-10 104:-8 105:85 107:-31 108:-25 109:22 110:12 111:46 112:26 113:-17 114:-27 115:21 116:23 117:-14 118:50 119:-15 121:-10 125:-18
&@job	1:-13 2:96 3:17 4:114 6:58 7:-45 8:-56 9:-66 10:-39 11:-14 12:-51 13:142 14:-41 15:127 16:65 17:42 18:96 19:-43 20:-50 21:-47 22:-46 23:-12 24:19 25:-42 26:-29 27:21 28:-71 31:-51 32:-43 33:-8 34:-15 35:-51 36:29 37:50 38:-30 39:-49 40:-53 41:66 42:11 43:93 44:67 45:48 46:49 47:85 48:100 49:-26 50:-31 51:-23 52:-28 53:-33 54:-31 55:-52 56:-16 57:-32 58:-30 59:-22 60:-35 61:-45 62:-38 63:-36 64:116 65:101 66:-24 67:-23 68:-22 69:-38 70:37 71:40 72:30 73:58 74:77 75:26 76:66 77:51 78:45 79:-29 80:-34 81:-60 82:50 83:72 84:69 85:-34 86:-28 87:103 88:-27 89:26 90:45 91:50 92:63 93:62 94:67 95:46 96:64 97:42 98:-35 99:-43 100:-37 101:-49 102:-41 103:-41 104:-42 107:102 108:55 109:-23 110:-49 111:-40 112:-61 113:125 114:30 115:78 116:-21 117:-37 118:-41 119:-37 120:-28 121:-32 122:-23 123:-13 124:-28 125:-20
)~",
R"~(&#d#n#o#r@job	41:10 42:9 75:11
#n $	0:37 1:35 2:18 4:64 5:8 7:-19 8:-13 9:-21 10:-27 11:-22 12:-27 13:120 14:-20 15:66 16:64 17:30 18:54 19:-13 20:28 21:27 22:24 23:73 24:43 25:-11 26:11 27:60 28:-34 29:-70 30:-48 31:-14 32:-22 33:22 34:-8 35:-30 36:85 37:58 38:90 39:37 41:-25 42:-31 43:37 45:-36 46:-16 47:-32 48:74 49:-9 50:-58 51:-25 53:-33 54:40 55:15 58:-9 59:51 60:29 61:-18 62:-29 63:-22 67:-8 68:-22 69:-38 70:48 73:78 74:-45 75:16 76:9 77:-62 78:-12 79:23 81:-48 82:28 83:26 84:38 85:-12 88:-14 90:-11 91:-26 92:-27 93:16 94:18 96:-13 97:63 99:20 100:-14 101:-36 102:-14 103:-11 104:-50 105:36 106:37 107:12 108:-22 109:58 110:-34 111:-11 112:-24 113:38 114:62 115:-63 116:-32 118:-42 119:36 121:-19 122:-13 124:18 125:-20
*	0:25 1:96 2:19 3:-83 4:32 5:26 6:33 7:49 8:90 9:106 11:106 12:53 13:162 14:40 15:31 16:31 17:98 18:-43 19:61 20:94 21:89 22:92 23:114 24:64 26:99 27:32 28:70 29:132 30:54 31:60 32:73 33:153 34:20 35:67 36:17 37:-43 38:99 39:-34 40:128 41:-50 42:-44 43:79 45:16 46:-58 47:27 48:63 49:-9 50:-29 51:12 52:30 53:102 55:97 57:57 58:31 59:-9 60:86 61:62 62:123 63:66 64:35 65:62 66:-20 67:-14 68:-20 69:-8 70:-56 71:-67 72:-64 73:-36 74:23 75:-92 76:-47 77:52 78:-9 79:-23 80:-36 82:-82 83:8 85:-22 87:60 89:65 90:-20 91:51 92:-37 93:-42 94:59 95:18 98:29 99:82 101:63 102:60 103:11 104:54 105:-12 106:109 107:69 108:107 109:-28 110:81 111:-18 112:112 113:115 114:-49 115:-13 116:-67 117:92 118:78 119:47 121:57 122:12 124:53 125:211
wire==	0:9 2:-25 3:-29 4:-37 5:57 6:32 7:9 8:37 9:81 10:61 11:-39 12:-31 13:-36 14:-34 15:-14 16:-24 17:-26 18:99 19:49 20:73 21:46 22:-21 23:45 24:20 25:-35 26:-24 27:-26 28:-34 29:-47 30:-24 31:34 32:32 33:27 35:-47 36:-17 37:-13 38:-16 39:38 40:-11 41:-20 42:-15 43:27 44:-9 45:-16 46:38 47:-13 48:-17 49:166 50:30 51:31 53:-12 55:-21 56:-8 57:-18 58:-30 60:-9 64:-11 65:-12 68:13 70:-14 71:33 73:40 74:-20 75:-17 76:-8 77:-13 78:53 79:24 81:-9 82:-52 83:34 85:-23 86:-11 87:-17 88:49 89:-13 90:-15 91:47 92:-19 93:-13 94:-8 95:-13 96:-9 97:-26 98:-24 99:-11 100:-15 101:-11 102:-10 103:-12 104:-11 105:-8 106:-9 108:-27 110:-11 112:-11 113:-13 114:-11 115:-9 116:14 118:19 119:-9 120:53 121:59 122:42 124:-13 125:-36
#d length	1:10 3:8 41:-10 80:12 81:-11
wire	2:-25 3:-30 4:-37 5:54 6:31 7:8 8:101 9:139 10:73 11:-46 12:-36 13:-37 14:-50 15:-15 16:-28 17:-40 18:98 19:57 20:74 21:37 22:-25 23:38 24:54 25:-44 26:-28 27:-32 28:-36 29:-50 30:-25 31:38 32:20 33:22 35:-49 36:-17 37:-13 38:-16 39:38 40:-11 41:-20 42:-15 43:23 44:-10 45:-17 46:38 47:-13 48:-18 49:164 50:30 51:25 53:-12 55:-22 56:-8 57:-19 58:-31 60:-9 64:-11 65:-12 68:13 70:-14 71:33 73:40 74:-20 75:-17 76:-8 77:-14 78:53 79:23 81:-9 82:-52 83:31 85:-23 86:-11 87:-17 88:49 89:-13 90:-16 91:46 92:-19 93:-14 94:-8 95:-13 96:-9 97:-26 98:-24 99:-11 100:-17 101:-11 102:-11 103:-13 104:-12 105:-8 106:-9 108:-28 110:-12 112:-11 113:-13 114:-11 115:-9 116:13 118:19 119:-10 120:51 121:58 122:41 124:-14 125:-39
#n wire	46:10 68:-16 72:10 91:10 125:24
@wire	0:38 1:54 2:-51 3:-85 4:-44 5:73 6:78 7:67 8:152 9:126 10:-51 11:-61 12:-55 13:-52 14:-31 15:-43 16:-42 17:-47 18:114 19:143 20:106 21:98 22:88 23:66 24:98 25:-30 26:-45 27:-62 28:-45 29:-70 30:-38 31:122 32:93 33:26 34:-10 35:-36 36:23 37:59 38:27 39:108 40:19 41:-56 42:-44 43:-27 44:-34 45:-31 46:19 47:-25 48:-24 49:-51 50:111 51:149 52:-16 53:-25 54:-21 55:-49 56:-13 57:-20 58:-23 59:-16 60:-32 61:-14 62:-21 63:-18 64:-17 65:-22 66:137 67:123 68:88 69:105 73:-15 74:-62 75:-35 76:-15 77:-24 78:-63 79:117 80:16 81:57 82:10 83:-30 84:-28 85:-31 86:-18 87:-30 88:108 89:-24 90:-21 91:-29 92:-53 93:-18 94:-19 95:-25 96:-19 97:-37 98:-37 99:-31 100:-22 101:-28 102:-20 103:-18 104:-25 105:-23 106:-29 107:-24 108:-34 109:-12 110:-25 111:-20 112:-26 113:-22 114:-17 115:-17 116:125 117:23 118:72 119:52 120:-36 121:-35 122:-22 123:-9 124:-22 125:34
wire @wire	0:9 3:-8 8:-16 9:-52 21:22 39:-19 49:-12 50:-21 51:25 66:38 67:12 68:44 69:16 72:20 78:-24 79:9 80:9 81:14 82:-38 88:-8 116:10
#n long	3:25 85:25
~ job	2:29 3:-10 4:-14 16:18 41:-27 42:14 64:15 71:-8 75:-9 87:13 92:-8 93:-10
@job wire	23:14 72:12 91:14
@wire wire	0:13 5:27 6:12 7:16 9:-103 18:-21 19:-16 20:-28 24:19 31:-27 32:68 33:77 39:-11 46:36 49:-35 50:9 51:21 66:-15 67:13 69:17 78:-8 79:23 81:-10 82:-22 88:55 118:16
wire the	8:-13 9:-32 18:-29 20:-20 21:32 23:14 24:11 39:9 46:34 49:-24 51:21 68:-18 69:17 78:-8 79:31 80:9 81:-8 82:-9 97:-9 116:16
the @wire	0:-8 1:-10 2:-16 3:-19 4:-10 5:33 7:32 8:47 9:62 10:-13 11:-19 12:-22 13:-16 14:-11 15:-10 16:-11 17:-15 19:36 21:-22 22:96 24:20 25:-10 26:-10 27:-19 28:-15 29:-21 30:-9 32:86 33:58 35:-12 36:-14 37:-8 38:-15 39:23 40:-29 41:-10 46:18 48:-10 49:-35 50:36 51:34 53:-8 55:-10 60:-10 66:41 67:51 68:15 69:22 70:-14 71:-8 74:-18 78:-12 79:46 80:31 81:-16 82:25 85:-13 87:-10 88:18 92:-13 97:-13 106:-9 108:-9 110:-9 112:-9 116:58 117:53 118:44 119:74 122:-10
@wire length	50:-17 66:24 68:20 69:-9 80:16 82:-9
#n pull	39:9 79:10
@wire job	5:13 18:-10 23:14 24:8 37:8 72:13 78:-14
job the	0:-23 3:32 4:-14 11:25 15:-11 17:12 18:-19 23:12 24:10 27:18 30:11 33:15 36:8 37:-10 41:-55 42:14 43:-14 44:10 45:12 47:-23 48:-25 64:-21 70:-13 71:10 72:26 76:-13 78:-22 83:9 84:8 91:18 92:-10 94:18 95:14 97:57 108:9 114:-45 115:-8
the @job	1:52 3:76 5:24 6:9 7:-24 8:-25 9:-28 10:-13 11:64 12:-23 13:26 14:-18 15:22 16:50 17:31 19:-17 20:-21 21:-24 22:-15 24:20 25:-20 26:-13 27:27 28:-36 30:-8 31:-17 32:-17 33:-44 35:-19 36:17 37:9 38:-37 39:-14 40:-20 41:-14 42:31 43:59 44:20 45:49 46:-15 47:30 48:23 50:-11 51:-9 52:-8 53:-21 54:-14 55:-22 57:-16 58:-11 59:-9 60:-16 61:-19 62:-19 63:-16 64:66 65:24 66:-8 67:-11 69:-13 70:-11 71:24 72:46 73:18 75:-18 77:10 79:-12 80:-9 81:-23 82:39 84:50 85:-13 86:-12 87:13 88:-13 89:11 90:11 91:35 92:21 93:41 94:9 95:66 96:57 97:51 98:-12 99:-17 100:-19 101:-22 102:-20 103:-26 104:-18 105:8 106:23 107:69 108:48 109:-10 110:-23 111:-17 112:-29 113:40 114:52 115:44 117:-18 118:-19 119:-21 120:-11 121:-12 122:-11 125:-50
@job job	0:-24 2:12 3:57 11:22 13:24 23:9 24:13 27:13 33:10 36:-21 41:-20 42:16 45:20 47:-12 48:-11 64:-13 65:-8 71:19 74:-40 75:-25 76:-20 82:-15 84:11 91:-20 92:32 93:9 94:20 95:8 97:30 107:-13 108:21 114:-43 115:-8 125:-9
&@wire	0:23 1:45 2:-50 3:-76 4:-43 5:66 6:80 7:64 8:174 9:172 10:-51 11:-61 12:-55 13:-52 14:-31 15:-43 16:-42 17:-47 18:156 19:140 20:132 21:45 22:84 23:66 24:82 25:-30 26:-45 27:-62 28:-45 29:-70 30:-38 31:122 32:95 33:23 34:-10 35:-36 36:34 37:49 38:30 39:103 40:18 41:-52 42:-43 43:-27 44:-33 45:-25 47:-25 48:-24 49:-22 50:143 51:137 52:-16 53:-25 54:-21 55:-49 56:-13 57:-20 58:-23 59:-16 60:-32 61:-14 62:-21 63:-18 64:-17 65:-22 66:114 67:101 68:71 69:56 72:15 73:-15 74:-62 75:-29 76:-14 77:-24 78:-47 79:77 81:52 82:61 83:-30 84:-28 85:-28 86:-18 87:-30 88:124 89:-24 90:-21 91:-27 92:-53 93:-18 94:-19 95:-25 96:-19 97:-24 98:-37 99:-31 100:-22 101:-28 102:-20 103:-18 104:-25 105:-23 106:-29 107:-24 108:-28 109:-12 110:-25 111:-20 112:-26 113:-22 114:-17 115:-17 116:107 117:9 118:80 119:51 120:-36 121:-35 122:-22 123:-9 124:-22 125:34
@job $	0:61 1:70 2:-20 3:16 4:48 5:28 6:39 7:-19 8:-23 9:-25 10:-13 11:22 12:-18 13:92 14:-20 15:117 16:55 17:42 18:54 19:-15 20:-17 21:-16 22:-15 23:83 24:34 25:-12 26:9 27:136 28:-21 29:-34 31:-19 32:-12 33:75 35:-18 36:46 37:89 38:-31 40:-16 41:-31 42:-45 43:85 45:-53 46:45 47:-20 48:-13 53:-11 54:-10 55:-11 57:-10 58:-9 60:-9 61:-9 62:-15 63:-11 64:32 67:-8 69:-9 70:33 71:-56 72:-8 74:-13 75:-37 76:-24 77:-58 81:-20 82:14 83:32 84:18 86:-8 88:-8 89:9 91:-20 92:-24 94:-10 95:24 97:-14 98:-9 99:-11 100:-10 101:-9 102:-8 103:-14 104:-12 105:19 107:45 108:-44 110:-13 111:-11 112:-12 114:54 115:-29 117:-9 118:-11 119:-11 121:-9 122:-8 125:-18
which==	0:87 1:61 2:40 3:-26 5:98 6:27 7:42 8:-13 10:45 11:44 12:59 13:36 14:70 15:71 16:37 17:70 19:62 20:-26 21:-17 22:55 23:37 24:82 25:62 26:40 27:37 28:10 29:36 30:-14 31:24 32:62 33:47 34:27 35:23 36:-29 37:-25 38:-16 39:-22 40:-17 41:-12 42:-12 43:-23 44:-20 45:-22 47:-27 48:-14 50:-9 52:-8 53:-12 55:-18 57:-11 58:-20 61:-8 62:-9 63:-9 64:-20 65:-16 66:-15 69:-17 70:-18 71:-16 72:-10 73:-13 74:-11 75:-27 77:-16 78:-14 79:-11 81:-15 83:-12 85:-11 86:-8 87:-14 88:-8 89:-30 90:-11 91:-22 92:-8 93:-11 94:-9 95:-13 97:-19 98:-11 99:-17 100:-18 101:-22 102:-18 103:-23 104:-10 105:-14 107:-22 108:-23 110:-14 111:-12 112:-10 113:-17 114:-15 115:-12 116:-10 117:-11 118:-9 119:-8 120:8 121:-9 122:-13 123:-11 124:-9 125:-48
)~",
R"~(offcut==	0:73 1:41
suit==s	0:46 18:87 33:-8 35:11
of==	0:22 1:-25 3:34 4:24 8:10 9:25 10:-34 13:-34 14:32 16:30 17:-9 18:-20 19:34 20:28 21:19 22:31 23:-9 24:22 25:23 26:-14 27:53 29:-29 30:10 31:-49 34:-13 35:8 37:-10 38:-46 39:38 41:14 42:14 43:-8 44:36 45:12 47:33 48:-32 50:49 52:-15 53:-16 54:21 55:-23 56:-15 57:12 59:-18 60:8 61:-17 62:9 63:41 64:-59 65:-34 66:57 68:65 69:-14 70:32 71:56 72:31 73:13 74:-15 75:11 76:-20 78:-14 79:47 80:25 81:43 82:65 84:11 86:23 87:37 88:8 90:45 91:37 92:15 93:-33 96:13 97:9 98:41 99:19 101:11 102:-16 103:-34 105:-51 106:-15 107:10 108:15 110:25 111:-20 113:-11 114:-33 115:30 116:45 117:24 118:-15 119:-27 121:29 122:46 123:-10 125:14
which	0:87 1:61 2:40 3:-26 5:98 6:27 7:42 8:-13 10:45 11:44 12:59 13:36 14:70 15:71 16:37 17:70 19:62 20:-26 21:-17 22:55 23:37 24:82 25:62 26:40 27:37 28:10 29:36 30:-14 31:24 32:62 33:47 34:27 35:23 36:-29 37:-25 38:-16 39:-22 40:-17 41:-12 42:-12 43:-23 44:-20 45:-22 47:-27 48:-14 50:-9 52:-8 53:-12 55:-18 57:-11 58:-20 61:-8 62:-9 63:-9 64:-20 65:-16 66:-15 69:-17 70:-18 71:-16 72:-10 73:-13 74:-11 75:-27 77:-16 78:-14 79:-11 81:-15 83:-12 85:-11 86:-8 87:-14 88:-8 89:-30 90:-11 91:-22 92:-8 93:-11 94:-9 95:-13 97:-19 98:-11 99:-17 100:-18 101:-22 102:-18 103:-23 104:-10 105:-14 107:-22 108:-23 110:-14 111:-12 112:-10 113:-17 114:-15 115:-12 116:-10 117:-11 118:-9 119:-8 120:8 121:-9 122:-13 123:-11 124:-9 125:-48
^ which	0:55 3:-9 5:40 6:27 7:20 10:45 11:52 12:70 13:54 14:11 16:55 17:23 19:25 20:-10 21:-11 22:34 23:43 24:9 26:36 27:11 28:10 29:54 31:40 32:65 33:46 34:28 35:41 36:-19 37:-18 38:-9 40:-8 41:-10 43:-15 44:-14 45:-12 47:-19 51:-13 55:-9 58:-15 64:-12 65:-9 66:-8 74:-8 75:-8 77:-10 81:-8 83:-8 84:-11 87:-9 89:-8 91:-15 95:-9 97:-14 98:-8 99:-11 100:-10 101:-18 102:-13 103:-19 106:-12 107:-14 108:-11 110:-10 113:-11 114:-12 122:-8 123:-10 125:-58
offcut	0:72 1:31 5:26 20:20 21:-18
which offcut	0:25 1:-10 5:15
suit	0:34 1:8 8:-8 18:151 33:-9 35:11 74:-10
suit slot	0:11
of	3:31 4:23 6:-9 9:19 10:-36 11:9 13:-36 14:31 16:29 17:-10 18:-23 19:26 20:38 21:22 22:27 24:19 25:21 27:52 30:10 31:-51 33:49 34:-8 36:12 38:22 39:25 40:18 41:12 42:12 43:-9 44:34 47:16 48:-33 50:36 51:-9 52:-18 53:18 54:32 55:-24 56:-15 57:12 59:-19 61:-20 63:39 64:-62 65:-36 66:36 68:55 69:-14 70:72 71:50 72:26 73:12 74:-16 75:10 76:-22 78:-16 79:46 80:27 81:31 82:45 84:10 86:23 87:36 90:44 91:36 92:14 93:-34 96:12 97:8 98:40 99:17 102:-17 103:-34 105:-31 106:-11 107:9 108:13 110:16 111:-18 113:-12 114:-34 115:28 116:46 117:29 119:-28 121:27 122:45 123:-11
#n of	0:42 1:-11 3:81 4:-26 5:-28 6:-13 10:-9 11:-10 13:-43 15:-15 18:-39 20:-11 21:-8 22:-15 23:-15 24:-14 27:-31 30:-15 32:-13 33:33 36:16 37:-10 38:12 39:-20 40:-32 41:55 42:33 43:-35 44:42 45:-48 47:-18 48:-9 51:-13 54:-9 58:10 63:32 64:-8 65:-13 66:33 68:-17 69:-10 70:55 71:40 73:-26 74:-17 75:24 76:-34 77:60 78:78 81:-11 83:-8 84:-9 86:16 87:-23 89:65 90:8 91:61 93:-8 94:-15 95:34 96:51 97:49 98:20 102:14 104:-11 105:-8 107:-22 108:-21 111:-8 113:-16 114:-23 115:-13 116:58 117:55 118:-16 120:-9 121:-18 122:18 125:26
of @job	0:-13 1:-16 3:17 4:24 6:27 15:-11 17:25 18:13 29:12 30:-8 33:19 36:8 42:48 44:41 45:23 64:-8 70:23 71:-22 73:10 76:-12 78:20 81:-18 82:28 83:-10 84:17 87:30 89:31 90:21 92:-12 93:-11 97:-12 107:31 113:-12 114:-9 125:-34
&#n@job	0:93 2:-16 3:-42 4:51 6:-20 7:-11 11:-15 13:-80 15:-17 17:-10 18:-47 23:-18 26:-9 27:-26 29:24 30:18 33:-11 36:28 37:86 38:11 40:-23 42:-17 44:13 45:-18 46:-9 47:-39 48:26 52:-9 53:-9 54:-9 55:-9 64:-20 65:8 69:-10 70:9 72:63 73:103 74:29 75:34 77:66 78:42 79:-9 80:-11 81:-25 83:-15 84:-47 85:-8 87:-50 89:27 90:46 91:101 92:23 93:93 94:18 95:46 96:49 97:33 98:-9 99:-16 101:-10 102:-9 104:-16 105:-13 107:-18 111:-12 113:-45 114:50 115:13 117:-10 118:-8 120:-9 121:-8 125:-15
piec==e	0:106 1:100 2:-19 3:-8 4:-34 11:-8 13:-27 15:-14 16:-16 17:-21 18:-13 22:45 23:70 26:-8 27:-8 29:-14 30:-16 33:77 35:13 36:108 37:100 38:106 40:116 41:-18 42:-14 43:-17 44:-11 45:-54 46:-27 47:-9 48:-9 64:-9 65:-21 69:103 70:101 71:-43 72:-14 73:-13 75:-25 76:-14 77:-21 78:-17 81:41 82:-38 83:-14 84:-12 88:-14 89:-18 90:-9 91:-23 92:-13 93:-14 95:-19 96:-11 97:-20 99:-11 102:-9 104:-10 105:-10 106:-10 107:-12 108:-13 113:-12 114:-12 125:48
fit==s	0:72 1:-10 4:-12 18:13 33:-12
piec	0:106 1:100 2:-19 3:-8 4:-34 11:-8 13:-27 15:-14 16:-16 17:-21 18:-13 22:45 23:70 26:-8 27:-8 29:-14 30:-16 33:77 35:13 36:108 37:100 38:106 40:116 41:-18 42:-14 43:-17 44:-11 45:-54 46:-27 47:-9 48:-9 64:-9 65:-21 69:103 70:101 71:-43 72:-14 73:-13 75:-25 76:-14 77:-21 78:-17 81:41 82:-38 83:-14 84:-12 88:-14 89:-18 90:-9 91:-23 92:-13 93:-14 95:-19 96:-11 97:-20 99:-11 102:-9 104:-10 105:-10 106:-10 107:-12 108:-13 113:-12 114:-12 125:48
which piec	0:87 1:-26 5:28 33:-8
piec fit	0:17
do==	0:13 1:-18 2:33 3:98 4:10 5:39 6:62 7:10 8:9 9:60 10:8 11:19 12:33 13:10 14:-29 15:57 16:22 17:73 18:13 19:-25 21:-21 23:-28 24:17 25:26 26:11 27:25 28:34 29:35 32:53 33:36 34:-9 35:65 36:-30 37:-31 39:-18 40:-15 41:-17 42:-10 43:-22 44:-16 45:-18 47:-13 48:-16 49:-10 50:-29 51:12 53:17 54:-13 57:12 58:-12 62:-8 64:58 65:24 66:-21 67:-13 69:-26 70:-11 71:-12 73:-8 74:-12 75:-14 76:-8 77:-21 78:-11 80:-19 81:-16 82:-16 83:-13 86:12 87:-10 89:-12 90:-9 91:-22 92:-8 93:-8 95:-12 97:-12 98:-9 100:12 102:-12 103:13 104:-9 105:-28 106:20 107:-24 108:-20 110:11 111:-23 113:23 114:49 115:-17 116:-10 117:-13 118:-10 120:-22 122:22 124:-10 125:25
i==	0:34 2:9 4:13 5:9 6:40 7:9 9:37 10:32 11:14 12:28 13:-37 14:8 16:35 17:14 18:27 19:-24 20:-9 21:-15 22:17 24:-40 25:-36 26:51 27:-24 28:45 29:19 30:29 31:-16 32:34 33:17 34:-13 35:48 37:-35 38:-42 39:-23 40:17 42:13 45:-13 47:-14 48:-31 49:-8 50:-20 52:-11 53:-29 54:-21 57:-22 58:-21 59:-16 62:-14 64:53 65:11 66:26 67:11 68:-10 69:17 70:-10 71:8 72:27 74:13 75:12 76:-8 77:26 78:13 79:22 80:-19 82:-11 84:-23 85:-8 86:-11 89:-19 90:-13 91:-44 93:-30 94:13 95:12 96:-10 97:19 101:-28 102:-14 103:-27 104:-15 105:34 106:20 107:30 108:25 109:-11 110:82 111:95 112:-13 113:-13 114:-25 116:11 117:-23 118:-25 119:10 120:-16 121:-14 124:44 125:46
use==	0:13 1:72 3:20 4:-9 5:105 8:-34 9:12 11:-11 12:-8 13:-12 16:11 17:-15 18:25 19:-16 21:-18 22:34 25:29 27:-8 30:-14 32:-9 33:16 36:74 37:-30 38:-29 41:-16 70:-22 71:-8 72:-9 73:30 77:21 81:-12 82:74 86:27 97:-9 101:50 102:44 105:-10 106:-9 110:-15
in==	1:-9 2:-44 3:50 4:-13 5:-12 6:-14 7:15 8:35 9:-14 10:16 11:-17 12:17 14:21 15:-24 16:-40 17:-62 18:56 19:-19 20:58 21:53 22:41 24:-10 26:8 28:60 29:-28 30:-8 32:-24 33:-9 34:-8 35:8 36:77 37:-22 38:-23 39:23 41:13 42:-29 43:-12 45:-28 46:13 47:34 48:-21 49:44 50:10 51:-27 54:28 55:53 57:-14 59:21 60:-9 64:-26 65:-13 66:21 67:-10 68:-17 69:-18 70:-44 71:-42 72:25 73:-18 75:84 76:-9 77:-22 78:14 79:58 80:-17 81:-15 82:26 83:13 88:-16 89:-39 90:-17 91:57 92:-30 93:-36 94:38 95:40 96:23 97:-20 98:42 99:-35 101:-17 103:-18 106:-16 107:-34 109:39 110:38 111:49 112:-32 114:-15 115:29 116:11 117:45 118:-11 119:-32 120:-8 121:38 124:11 125:-37
do	0:13 1:-18 2:33 3:98 4:10 5:39 6:62 7:10 8:9 9:60 10:8 11:19 12:33 13:10 14:-29 15:57 16:22 17:73 18:13 19:-25 21:-21 23:-28 24:17 25:26 26:11 27:25 28:34 29:35 32:53 33:36 34:-9 35:65 36:-30 37:-31 39:-18 40:-15 41:-17 42:-10 43:-22 44:-16 45:-18 47:-13 48:-16 49:-10 50:-29 51:12 53:17 54:-13 57:12 58:-12 62:-8 64:58 65:24 66:-21 67:-13 69:-26 70:-11 71:-12 73:-8 74:-12 75:-14 76:-8 77:-21 78:-11 80:-19 81:-16 82:-16 83:-13 86:12 87:-10 89:-12 90:-9 91:-22 92:-8 93:-8 95:-12 97:-12 98:-9 100:12 102:-12 103:13 104:-9 105:-28 106:20 107:-24 108:-20 110:11 111:-23 113:23 114:49 115:-17 116:-10 117:-13 118:-10 120:-22 122:22 124:-10 125:25
piec do	0:15
i	0:34 2:9 4:13 5:9 6:40 7:9 9:37 10:32 11:14 12:28 13:-37 14:8 16:35 17:14 18:27 19:-24 20:-9 21:-15 22:17 24:-40 25:-36 26:51 27:-24 28:45 29:19 30:29 31:-16 32:34 33:17 34:-13 35:48 37:-35 38:-42 39:-23 40:17 42:13 45:-13 47:-14 48:-31 49:-8 50:-20 52:-11 53:-29 54:-21 57:-22 58:-21 59:-16 62:-14 64:53 65:11 66:26 67:11 68:-10 69:17 70:-10 71:8 72:27 74:13 75:12 76:-8 77:26 78:13 79:22 80:-19 82:-11 84:-23 85:-8 86:-11 89:-19 90:-13 91:-44 93:-30 94:13 95:12 96:-10 97:19 101:-28 102:-14 103:-27 104:-15 105:34 106:20 107:30 108:25 109:-11 110:82 111:95 112:-13 113:-13 114:-25 116:11 117:-23 118:-25 119:10 120:-16 121:-14 124:44 125:46
)~",
R"~(do i	0:9 2:54 4:-19 5:41 6:21 8:-8 9:16 10:22 11:31 12:11 13:-14 14:-8 15:13 16:49 17:37 18:28 23:-10 24:-27 25:-12 26:48 28:60 29:-27 31:-15 32:30 33:-42 35:64 80:-11 110:-14 111:-14 115:-14 125:-54
use	0:12 1:71 3:20 4:-9 5:98 6:-10 8:-34 9:12 11:-12 12:-8 13:-12 14:-8 16:10 17:-15 18:24 19:-16 21:-19 22:34 25:37 27:-9 29:-9 30:-14 32:-9 33:15 36:74 37:-31 38:-29 41:-16 70:-22 71:-8 72:-9 73:39 77:20 81:-12 82:74 83:17 86:33 97:-9 99:-8 101:49 102:43 103:10 105:-10 106:-9 110:-15
i use	0:32 1:-16 3:52 5:35 17:-8 18:13 22:-8 23:29 30:-8 33:-10 36:-29 73:8 125:-24
use in	0:20
#r $	1:-10 2:-17 4:-10 11:-8 13:-8 16:-9 17:10 23:-8 26:-8 30:23 34:12 36:20 37:13 45:-21 47:58 50:-16 52:53 53:-16 54:69 62:-9 64:-8 65:-11 70:31 71:-8 75:40 89:-9 93:20 105:-15 106:15 109:30 111:47 112:38 115:19 116:24 117:-9 118:54 125:-25
what==	0:99 1:58 2:30 3:-33 4:43 5:107 6:33 7:42 8:72 9:30 10:98 11:89 12:60 13:63 14:-26 15:-15 16:80 17:58 18:37 19:60 20:49 21:49 22:72 23:44 24:86 25:37 26:39 27:65 29:96 30:45 31:25 32:33 33:109 34:68 35:58 36:-29 37:-26 38:-25 39:-26 40:-27 41:-21 42:-17 43:-42 44:-36 45:-23 47:-29 48:-24 49:-10 50:-15 51:-22 52:-24 53:-23 54:-17 55:-32 57:-19 58:-20 59:-11 60:-11 61:-19 62:-16 63:-15 64:-33 65:-28 66:-25 67:-14 69:23 70:-12 71:-16 72:-20 73:-14 74:-12 75:11 76:-11 77:-25 78:-15 79:-13 81:-12 82:-18 83:12 84:10 85:-8 86:-19 87:-23 89:-30 90:-13 92:-14 93:-16 94:-18 95:-18 96:-11 97:-13 98:-20 99:-21 100:-30 101:-28 102:-21 103:-18 104:48 105:-24 106:-26 107:-30 108:-31 109:-27 110:-34 111:-24 112:-22 113:-8 114:-23 115:-19 116:-17 117:-21 118:-22 119:9 120:-18 121:-24 122:-29 123:27 124:17 125:-33
stick==	2:-10 4:-12 5:37 6:14 8:-11 13:-11 17:-8 31:-14 32:14 37:-8 38:16 39:52 40:11 43:58 44:-8 49:27 50:-31 66:37 68:19 71:140 72:-8 73:36 75:-11 78:-12 79:20 80:-14 81:-10 82:-9 84:-9 89:-9 108:-10 114:-11 116:10 117:16 118:-8 125:-10
end==	1:36 2:10 4:-9 5:-8 8:-10 9:50 11:-8 19:-8 30:34 36:9 38:16 39:62 40:12 43:16 50:-8 66:-11 67:-9 69:15 70:40 71:-21 72:-9 81:-10 87:16 89:27 90:-11 96:15 107:-9 114:16 125:-16
what	0:99 1:58 2:30 3:-33 4:43 5:107 6:33 7:42 8:72 9:30 10:98 11:89 12:60 13:63 14:-26 15:-15 16:80 17:58 18:37 19:60 20:49 21:49 22:72 23:44 24:86 25:37 26:39 27:65 29:96 30:45 31:25 32:33 33:109 34:68 35:58 36:-29 37:-26 38:-25 39:-26 40:-27 41:-21 42:-17 43:-42 44:-36 45:-23 47:-29 48:-24 49:-10 50:-15 51:-22 52:-24 53:-23 54:-17 55:-32 57:-19 58:-20 59:-11 60:-11 61:-19 62:-16 63:-15 64:-33 65:-28 66:-25 67:-14 69:23 70:-12 71:-16 72:-20 73:-14 74:-12 75:11 76:-11 77:-25 78:-15 79:-13 81:-12 82:-18 83:12 84:10 85:-8 86:-19 87:-23 89:-30 90:-13 92:-14 93:-16 94:-18 95:-18 96:-11 97:-13 98:-20 99:-21 100:-30 101:-28 102:-21 103:-18 104:48 105:-24 106:-26 107:-30 108:-31 109:-27 110:-34 111:-24 112:-22 113:-8 114:-23 115:-19 116:-17 117:-21 118:-22 119:9 120:-18 121:-24 122:-29 123:27 124:17 125:-33
^ what	0:12 1:56 2:9 3:-8 4:54 5:43 6:27 7:53 8:73 9:25 10:52 11:59 12:66 13:35 16:40 17:54 18:52 19:47 20:12 21:47 22:21 23:107 24:79 25:70 26:28 27:85 28:37 29:47 30:33 31:63 32:19 33:76 34:100 35:87 36:-21 37:-19 38:-12 39:-8 40:-13 41:-11 42:-10 43:-27 44:-27 45:-16 47:-21 48:-11 50:-9 51:-17 52:-17 53:-17 54:-14 55:-24 57:-13 58:-14 59:-8 60:-9 61:-12 62:-11 63:-10 64:-27 65:-18 66:-17 68:-8 70:-9 71:-13 72:-15 73:-11 74:-9 75:-14 77:-13 78:-10 79:-9 81:-9 82:-15 83:-33 84:-35 86:-14 87:-14 88:-10 89:-17 90:-10 91:-21 92:-9 93:-11 94:-9 95:-11 96:-8 97:-10 98:-15 99:-15 100:-24 101:-21 102:-15 103:-40 104:-25 105:-18 106:-15 107:-23 108:-22 109:-19 110:-18 111:-16 112:-16 113:-22 114:-15 115:-16 116:-9 117:-15 118:-17 119:-25 120:-9 121:-17 122:-13 123:-18 124:-29
stick	0:-18 1:-24 2:-17 4:-19 5:74 6:61 8:79 9:-44 10:-10 11:-11 13:-20 15:-12 16:-21 17:22 18:-20 19:-19 20:-25 21:-9 22:-13 23:-14 24:-14 27:-13 31:16 32:14 33:-14 36:-12 37:-13 39:14 41:-9 42:-9 43:49 44:-13 45:-24 46:-13 47:-11 49:58 50:106 51:-24 55:-8 66:82 67:67 68:-30 69:18 71:182 72:-22 73:28 75:-22 77:-13 78:-16 80:-17 81:-22 82:-35 84:-11 85:-14 87:-10 88:-24 89:59 90:-9 91:-24 93:-10 95:-8 96:-10 97:-10 99:-8 105:-9 107:-10 108:-13 114:-22 116:73 117:68 118:-33 119:-22 120:41 121:41 125:25
what stick	6:20
end	0:-14 1:100 3:83 4:-28 5:-12 8:-14 9:43 11:-14 13:-13 16:-16 17:-14 18:-8 19:-11 27:51 29:-19 30:53 31:-8 32:-9 33:-14 36:18 38:9 39:98 41:-18 42:74 43:78 44:-13 45:-12 50:-14 62:17 66:-17 67:-11 70:37 71:-26 72:-27 74:-9 75:-13 77:-17 79:17 80:23 81:-27 82:-19 85:-10 87:14 88:-11 89:22 90:-14 91:-12 92:-14 93:9 95:-9 96:10 97:-10 107:9 114:12 125:-33
stick end	38:18 39:34 40:13 66:-11 70:43 71:-19 79:28 80:-8 81:-8
short==	0:21 1:-17 2:23 3:-17 5:44 6:-9 8:26 9:49 11:-17 12:-10 13:-21 14:-10 16:28 17:-24 18:-8 19:-13 21:38 22:54 23:-13 24:-21 25:-12 27:-22 29:-14 30:-14 31:-15 32:-10 33:-13 35:10 36:-14 39:31 40:29 41:-52 42:223 44:40 45:-23 51:39 55:-12 70:-9 71:-17 72:-27 73:-8 75:68 76:-8 77:-22 78:-16 79:13 81:14 82:-11 85:23 86:62 89:-31 91:-14 92:-22 93:-10 95:-9 97:-14 100:-8 125:50
fret==	0:76 1:-8 2:-60 3:36 4:72 5:-10 6:-17 7:-8 11:-14 13:13 15:-20 16:19 17:69 18:-23 20:-10 22:-27 23:-14 24:-10 26:-8 27:-60 29:-19 30:-12 36:83 37:24 38:-14 41:140 42:75 43:-17 44:-47 45:28 47:-25 48:-17 50:-9 55:-9 64:-14 65:-18 68:-8 69:-10 70:-78 74:-18 75:52 76:-23 77:154 78:100 79:-21 80:-10 81:-14 83:-12 84:-10 85:9 87:-27 88:-8 89:-11 90:27 91:34 92:51 93:119 94:-12 95:36 96:37 97:53 98:8 99:-10 101:-8 102:-8 104:-15 105:-15 106:-10 107:-37 108:-22 111:-9 113:-22 114:-21 115:-32 117:-9 125:-11
short	0:21 1:-17 2:23 3:-17 5:43 6:-10 8:24 9:49 11:-17 12:-10 13:-22 14:-11 16:28 17:-24 18:-8 19:-13 21:37 22:48 23:-13 24:-21 25:-13 27:-22 29:-14 30:-14 31:-15 32:-10 33:-14 35:8 36:-14 39:24 40:29 41:-52 42:222 44:40 45:-23 51:38 55:-12 70:-9 71:-17 72:-27 73:-8 75:68 76:-8 77:-22 78:-16 79:74 81:13 82:-11 85:23 86:62 89:-31 91:-14 92:-22 93:-10 95:-10 97:-14 98:-10 100:-9 125:44
which short	5:15 22:36
short fret	0:36 2:-18 4:-8 5:56 8:40 9:-18 13:-8 16:-10 21:49 22:18 24:-16 27:-13 33:-9 35:-8 39:16 71:-8 79:21 125:-10
fret do	2:32 3:17 17:-13 36:-11
#n in	0:8 1:33 2:-16 3:50 4:-8 13:-8 16:10 17:-14 18:-14 22:-19 23:27 36:51 37:-13 39:-8 41:-12 43:13 44:-9 47:43 65:15 72:12 75:-19 77:11 78:58 81:-8 82:12 85:9 89:-9 91:-26 94:-8 95:-17 96:11 105:13 106:8
in job	1:29 4:19 5:22 13:-15 15:-11 18:34 23:-8 33:25 36:-14 42:21 72:-17 74:23 75:-22 84:-10 91:-8 94:36
what short	5:53 8:16
what piec	0:49 1:-11 5:-8
piec suit	0:23
suit the	0:9 18:14
&#r@job	0:10 4:-13 5:-8 11:-13 13:-11 18:-13 27:-11 33:10 45:-12 47:56 48:-12 71:44 90:12 91:59 93:17 95:11 97:8 107:-9 108:-8 115:23
fit the	0:9 18:29
for==	0:72 1:50 2:35 3:48 4:39 5:55 6:76 7:52 8:-30 9:10 10:21 11:39 12:13 13:-27 14:-24 15:-50 16:26 17:-24 18:37 19:8 20:65 21:17 22:12 23:86 24:-41 26:52 27:36 28:17 29:47 30:58 31:18 32:-30 33:-20 34:-10 35:19 36:14 37:114 39:-16 40:-21 41:23 43:18 44:-31 45:-43 46:10 47:22 48:-74 49:-11 51:12 53:-8 54:-17 56:-10 57:-14 58:-18 59:15 61:-26 62:-9 63:-13 64:-21 65:-14 66:-47 70:21 72:-34 73:37 74:-37 75:-53 76:-36 77:-13 80:-33 81:17 82:18 83:93 84:109 85:19 86:8 87:-45 88:-17 89:-58 90:-40 91:8 92:-31 93:-13 94:-17 95:-43 96:-18 97:-42 99:-30 101:9 102:-37 103:11 104:46 105:111 106:17 108:53 109:-63 112:12 113:-9 114:-11 115:8 116:48 117:-25 118:19 119:-10 121:-20 122:-10 124:-19 125:-58
for	0:72 1:50 2:35 3:48 4:39 5:55 6:76 7:52 8:-30 9:10 10:21 11:39 12:13 13:-27 14:-24 15:-50 16:26 17:-24 18:37 19:8 20:65 21:17 22:12 23:86 24:-41 26:52 27:36 28:17 29:47 30:58 31:18 32:-30 33:-20 34:-10 35:19 36:14 37:114 39:-16 40:-21 41:23 43:18 44:-31 45:-43 46:10 47:22 48:-74 49:-11 51:12 53:-8 54:-17 56:-10 57:-14 58:-18 59:15 61:-26 62:-9 63:-13 64:-21 65:-14 66:-47 70:21 72:-34 73:37 74:-37 75:-53 76:-36 77:-13 80:-33 81:17 82:18 83:93 84:109 85:19 86:8 87:-45 88:-17 89:-58 90:-40 91:8 92:-31 93:-13 94:-17 95:-43 96:-18 97:-42 99:-30 101:9 102:-37 103:11 104:46 105:111 106:17 108:53 109:-63 112:12 113:-9 114:-11 115:8 116:48 117:-25 118:19 119:-10 121:-20 122:-10 124:-19 125:-58
)~",
R"~(for job	1:-12 2:59 3:-15 4:62 5:32 6:42 9:-10 11:14 13:-47 16:-30 17:44 18:34 23:20 24:-11 29:-12 33:47 36:11 37:54 38:-18 41:-11 42:-9 45:-12 47:-8 48:-17 64:-14 65:-44 70:8 71:-9 72:-9 73:47 74:8 77:-15 82:-10 83:70 84:55 89:-12 91:-11 92:-8 93:-20 95:-12 104:-13 105:31 106:40 107:8 108:-17 113:-20 114:-8 115:-13 125:42
&#n#r	0:-11 2:24 4:44 5:-13 13:-16 16:11 17:-15 27:-12 36:25 41:-8 42:12 43:-12 45:39 47:10 54:19 65:-8 70:-15 71:17 75:44 82:27 89:16 91:-15 93:9 96:34 101:13 105:-10 107:-8 114:-13 115:-13 117:-8 118:25 125:27
piec for	0:98 1:-11 37:-15
for the	0:-19 1:-30 2:10 3:10 5:-25 7:52 8:-11 9:33 10:30 12:-16 13:-8 15:-26 16:59 19:16 20:16 21:-8 22:-44 23:25 24:-9 25:-15 26:46 27:-29 28:39 29:41 30:16 31:-15 32:-9 33:8 35:45 36:-45 37:63 38:-27 39:28 41:27 42:-10 43:35 44:-20 48:-30 50:-12 51:8 52:17 53:-14 55:22 57:-9 58:-8 61:-8 62:-8 63:-8 65:-18 67:12 68:15 69:-10 70:40 71:15 72:19 74:-15 75:-21 76:-9 77:-15 79:33 80:-10 84:35 85:14 87:-16 88:-13 89:-12 90:-18 91:31 93:-30 95:-13 97:-14 98:-11 99:-9 100:-13 101:-19 102:-8 105:17 107:13 108:-14 110:27 111:-8 112:-12 113:51 116:-9 117:-9 125:-31
what fit	0:27
anyth==ing	0:98 1:-19 4:-14 5:-11 8:-12 9:32 11:98 12:-8 13:17 14:-8 15:-11 16:-10 17:53 18:-13 19:-8 22:58 23:43 24:53 25:11 26:55 28:-8 29:-14 30:-10 31:-14 32:-11 33:12 35:-12 37:-16 38:-9 39:-13 40:15 43:-14 45:-8 47:-9 50:-8 57:12 58:12 65:-10 66:-9 75:-12 83:-24 84:75 89:-8 91:16 92:-8 96:-13 100:-13 106:-8 107:-13 108:-25 113:-9 114:18 119:-9 122:-19 125:23
on==	1:44 2:-9 3:21 5:-23 6:-10 7:28 8:23 10:-47 11:12 12:16 13:-26 14:-35 16:18 17:21 19:-8 20:-21 22:-53 24:68 25:-14 27:36 28:24 29:49 30:-30 31:51 33:11 34:-12 35:-16 36:-11 37:-23 38:-14 39:13 40:-18 41:28 42:31 43:12 44:29 45:35 46:-25 47:10 48:-53 49:-8 50:-23 51:-13 52:37 53:41 54:49 55:26 56:-10 58:24 60:-26 61:-8 62:-45 63:12 64:-8 65:-11 67:18 68:11 70:-17 71:-27 72:-33 73:-22 74:21 76:-37 78:-12 79:-9 80:-11 81:-34 82:26 83:-28 84:-10 85:-19 86:-17 87:23 88:16 89:40 90:36 91:26 92:-11 94:-9 95:12 96:17 97:18 98:-9 99:15 100:-36 101:14 102:-44 103:25 104:-11 105:40 106:16 107:60 108:45 109:18 110:41 111:71 112:47 114:-18 115:45 116:59 118:29 119:-30 120:17 122:-29 123:-9 124:-25 125:-13
anyth	0:98 1:-19 4:-14 5:-11 8:-12 9:32 11:98 12:-8 13:17 14:-8 15:-11 16:-10 17:53 18:-13 19:-8 22:58 23:43 24:53 25:11 26:55 28:-8 29:-14 30:-10 31:-14 32:-11 33:12 35:-12 37:-16 38:-9 39:-13 40:15 43:-14 45:-8 47:-9 50:-8 57:12 58:12 65:-10 66:-9 75:-12 83:-24 84:75 89:-8 91:16 92:-8 96:-13 100:-13 106:-8 107:-13 108:-25 113:-9 114:18 119:-9 122:-19 125:23
^ anyth	0:71 11:47 13:41 17:14 23:20 125:-10
anyth for	0:14 23:-17 37:-11 84:89 108:-9
for slot	0:56 1:-22 3:73 4:-40 33:-13 36:32 37:61 42:66 44:11 71:-13 72:-12 75:-15 77:11 78:21 82:11 91:-24 125:-19
on	1:44 2:-9 3:21 5:-23 6:-10 7:28 8:23 10:-47 11:12 12:16 13:-26 14:-35 16:18 17:21 19:-8 20:-21 22:-53 24:68 25:-14 27:36 28:24 29:49 30:-30 31:51 33:11 34:-12 35:-16 36:-11 37:-23 38:-14 39:13 40:-18 41:28 42:31 43:12 44:29 45:35 46:-25 47:10 48:-53 49:-8 50:-23 51:-13 52:37 53:41 54:49 55:26 56:-10 58:24 60:-26 61:-8 62:-45 63:12 64:-8 65:-11 67:18 68:11 70:-17 71:-27 72:-33 73:-22 74:21 76:-37 78:-12 79:-9 80:-11 81:-34 82:26 83:-28 84:-10 85:-19 86:-17 87:23 88:16 89:40 90:36 91:26 92:-11 94:-9 95:12 96:17 97:18 98:-9 99:15 100:-36 101:14 102:-44 103:25 104:-11 105:40 106:16 107:60 108:45 109:18 110:41 111:71 112:47 114:-18 115:45 116:59 118:29 119:-30 120:17 122:-29 123:-9 124:-25 125:-13
#n on	0:85 1:-18 3:40 4:40 11:-12 13:-27 15:-11 17:-12 18:-13 23:-8 24:-16 27:-28 29:-19 33:8 36:62 37:-36 41:9 42:50 43:-33 45:-55 47:-9 52:-11 53:23 64:-18 65:-11 73:14 74:-9 75:-29 76:-9 77:10 78:12 87:-13 89:22 90:52 91:64 92:-18 93:45 94:-20 95:53 96:20 97:42 107:-37 108:-24 109:-24 110:-16 111:49 113:43 114:-35 115:25 125:11
on the	1:75 2:-38 3:21 4:-9 5:-29 6:23 7:51 8:54 10:-11 11:49 12:19 13:-17 16:-12 17:15 19:-16 20:-22 22:-24 23:-20 24:16 25:-49 26:25 27:-22 28:-16 29:-23 30:-18 31:-11 32:-14 33:-10 35:-17 36:8 37:-11 38:8 39:32 40:-16 41:45 42:33 43:35 44:17 45:29 46:-8 48:-26 50:-10 53:-25 54:13 55:-18 57:-11 58:11 59:14 61:-10 63:16 64:-18 65:-11 66:17 67:36 68:15 69:-9 70:13 74:-17 76:-20 79:8 81:-9 82:11 83:-12 84:-12 87:11 89:61 90:58 92:-9 93:-21 95:47 96:-16 97:9 98:16 99:27 100:-19 101:11 102:-15 103:31 104:-14 106:-15 107:10 111:17 112:-17 113:-19 114:-39 115:-16 116:15 120:15 121:-11 125:-52
is==	0:-21 3:52 4:-16 5:-55 6:-16 7:-40 8:45 9:14 10:-13 11:16 12:20 13:45 14:23 15:79 16:-33 17:30 19:-41 20:-24 22:13 23:66 24:-17 25:65 26:26 27:28 28:62 29:36 30:26 31:44 32:19 33:-71 34:-19 35:-16 36:-45 37:-11 38:-11 39:-28 40:27 41:8 43:34 44:-8 45:11 47:-9 48:37 49:-23 50:-41 51:29 52:-9 53:24 54:-17 55:56 57:-14 58:-22 59:46 60:12 61:10 62:9 63:-12 64:12 65:23 68:23 69:27 70:-37 71:-10 72:-38 73:23 74:-9 76:32 77:27 79:-23 81:-27 82:-30 83:-12 84:11 85:27 86:-17 87:60 88:22 89:43 91:47 92:23 93:35 94:32 95:-34 96:11 97:-26 100:-14 101:25 102:58 103:10 106:-8 108:-10 111:-8 112:45 113:20 114:15 115:-16 116:-13 117:19 118:31 119:33 121:49 122:-9 123:-13 124:-42 125:48
ther==e	0:83 3:-24 5:-12 6:8 7:35 8:37 10:29 11:-17 12:10 13:-37 14:43 15:-31 16:-13 17:8 19:37 20:-15 21:10 22:31 23:-31 26:13 27:-22 28:8 29:-22 31:-8 35:66 36:16 37:-9 38:-13 39:-8 40:-15 43:-16 44:-10 45:-12 48:-11 53:-10 55:-14 65:-9 66:48 67:18 68:-9 72:-19 77:-17 81:-10 82:8 84:-14 87:13 88:-10 90:41 91:13 92:-11 93:28 94:33 95:-8 96:-9 97:-12 98:31 99:76 100:15 102:-13 104:-9 105:-8 106:-10 107:-9 108:20 110:-8 114:-10 116:-13 117:-11 118:-8 120:10 121:-9
an==	0:19 3:-10 9:-11 11:-11 12:16 13:-8 14:-17 16:-17 20:-9 25:10 26:-9 29:-14 30:11 31:18 32:-10 33:-9 35:38 38:15 39:21 41:11 44:8 51:-10 52:-9 54:11 58:11 66:-8 67:11 70:24 72:17 76:13 77:20 82:14 91:-10 95:12 96:8 98:10 99:23 100:-8 101:18 102:11 103:-12 104:46 105:36 116:29 119:-12 120:18 121:8 122:-9 125:-23
that==	0:49 1:-19 2:12 3:28 4:-8 7:9 9:-24 10:-8 11:10 12:-15 13:-29 15:-31 16:-8 17:-16 18:36 21:-11 24:53 25:25 26:-12 28:-35 29:-41 31:24 33:-26 34:35 35:-26 36:73 37:-30 38:-12 39:-18 40:21 41:-20 42:-27 43:27 45:-18 47:-22 49:-9 52:-20 55:10 56:12 58:-14 59:41 60:-18 62:26 63:-24 65:-17 66:-16 69:-9 70:-12 76:-8 77:13 78:-25 79:8 80:12 81:-25 83:47 84:45 85:-13 86:8 87:27 88:-23 89:-30 90:-16 91:-18 92:-10 93:34 94:-16 95:-17 98:-12 99:11 103:9 105:-14 106:15 107:-15 108:13 109:-8 110:-17 111:-12 112:27 114:9 115:-11 116:-19 117:34 118:33 120:-12 123:49 124:103
is	0:-21 3:52 4:-16 5:-55 6:-16 7:-40 8:45 9:14 10:-13 11:16 12:20 13:45 14:23 15:79 16:-33 17:30 19:-41 20:-24 22:13 23:66 24:-17 25:65 26:26 27:28 28:62 29:36 30:26 31:44 32:19 33:-71 34:-19 35:-16 36:-45 37:-11 38:-11 39:-28 40:27 41:8 43:34 44:-8 45:11 47:-9 48:37 49:-23 50:-41 51:29 52:-9 53:24 54:-17 55:56 57:-14 58:-22 59:46 60:12 61:10 62:9 63:-12 64:12 65:23 68:23 69:27 70:-37 71:-10 72:-38 73:23 74:-9 76:32 77:27 79:-23 81:-27 82:-30 83:-12 84:11 85:27 86:-17 87:60 88:22 89:43 91:47 92:23 93:35 94:32 95:-34 96:11 97:-26 100:-14 101:25 102:58 103:10 106:-8 108:-10 111:-8 112:45 113:20 114:15 115:-16 116:-13 117:19 118:31 119:33 121:49 122:-9 123:-13 124:-42 125:48
^ is	0:35 1:35 2:-8 3:57 5:-11 6:8 8:13 9:49 10:25 11:46 12:-21 13:139 14:-32 15:86 16:58 17:136 18:56 19:-13 20:-14 21:22 22:33 23:101 24:-10 25:120 26:95 27:-14 28:120 30:99 31:49 32:31 33:-11 35:26 36:-22 37:-19 38:-30 40:-27 41:-34 42:-20 43:-47 44:-21 45:-13 47:-10 48:-17 51:-30 53:-29 55:-25 59:-9 61:-10 62:-12 64:-23 65:-26 66:-12 68:-9 69:-18 73:-8 74:-11 76:-11 77:-23 78:-14 83:-22 84:-22 85:-10 86:-18 87:-24 88:-22 89:-28 91:-33 92:13 93:-20 94:-19 97:-9 99:-14 100:-9 101:-25 102:-34 103:-19 105:-14 106:-22 107:-12 108:-18 109:-12 110:-19 111:-21 112:-20 113:-26 114:-14 117:-11 118:-15 119:-8 121:-9 125:8
ther	0:83 3:-24 5:-12 6:8 7:35 8:37 10:29 11:-17 12:10 13:-37 14:43 15:-31 16:-13 17:8 19:37 20:-15 21:10 22:31 23:-31 26:13 27:-22 28:8 29:-22 31:-8 35:66 36:16 37:-9 38:-13 39:-8 40:-15 43:-16 44:-10 45:-12 48:-11 53:-10 55:-14 65:-9 66:48 67:18 68:-9 72:-19 77:-17 81:-10 82:8 84:-14 87:13 88:-10 90:41 91:13 92:-11 93:28 94:33 95:-8 96:-9 97:-12 98:31 99:76 100:15 102:-13 104:-9 105:-8 106:-10 107:-9 108:20 110:-8 114:-10 116:-13 117:-11 118:-8 120:10 121:-9
)~",
R"~(is ther	0:111 1:16 3:-25 4:20 6:18 8:47 9:29 10:26 12:22 13:-33 14:50 15:-22 18:18 19:-13 21:14 22:59 23:-33 25:-44 26:19 27:-16 28:10 29:13 30:13 31:10 32:-12 33:-8 35:32 36:-11 66:-8 87:-8 91:-10 108:-8 113:-8 125:-22
an	0:19 3:-10 9:-11 11:-11 12:16 13:-8 14:-17 16:-17 20:-9 25:10 26:-9 29:-14 30:11 31:18 32:-10 33:-9 35:38 38:15 39:21 41:11 44:8 51:-10 52:-9 54:11 58:11 66:-8 67:11 70:24 72:17 76:13 77:20 82:14 91:-10 95:12 96:8 98:10 99:23 100:-8 101:18 102:11 103:-12 104:46 105:36 116:29 119:-12 120:18 121:8 122:-9 125:-23
ther an	0:15
an offcut	0:32
that	0:49 1:-19 2:12 3:28 4:-8 7:9 9:-24 10:-8 11:10 12:-15 13:-29 15:-31 16:-8 17:-16 18:36 21:-11 24:53 25:25 26:-12 28:-35 29:-41 31:24 33:-26 34:35 35:-26 36:73 37:-30 38:-12 39:-18 40:21 41:-20 42:-27 43:27 45:-18 47:-22 49:-9 52:-20 55:10 56:12 58:-14 59:41 60:-18 62:26 63:-24 65:-17 66:-16 69:-9 70:-12 76:-8 77:13 78:-25 79:8 80:12 81:-25 83:47 84:45 85:-13 86:8 87:27 88:-23 89:-30 90:-16 91:-18 92:-10 93:34 94:-16 95:-17 98:-12 99:11 103:9 105:-14 106:15 107:-15 108:13 109:-8 110:-17 111:-12 112:27 114:9 115:-11 116:-19 117:34 118:33 120:-12 123:49 124:103
someth==ing	0:89 3:-12 4:-15 10:30 11:45 13:-11 18:13 23:-8 33:21 37:-8 72:-9 87:40 99:11 125:-24
someth	0:89 3:-12 4:-15 10:30 11:45 13:-11 18:13 23:-8 33:21 37:-8 72:-9 87:40 99:11 125:-24
^ someth	0:32 87:41
in @job	13:-9 18:41 24:9 36:8
^ an	44:20 50:14
offcut for	0:27
in the	0:28 1:34 2:-24 3:14 4:-50 5:-11 6:-10 7:-21 8:101 11:46 13:-26 14:55 17:-16 19:-18 20:-18 21:-76 22:64 25:-15 26:14 27:-13 28:-42 29:-9 30:-13 31:-18 32:-15 33:8 35:-16 36:13 39:45 40:36 41:-10 42:-14 44:-8 47:-29 48:-9 49:19 50:-11 53:19 55:-17 61:35 62:-12 63:-9 69:20 71:-14 72:58 74:11 75:21 77:-21 78:33 79:19 81:35 82:-10 83:17 84:-9 87:32 89:-12 90:-9 91:56 92:-9 93:-15 95:-23 96:14 98:42 99:-8 101:15 102:-11 103:-13 104:-8 105:10 107:-12 109:-11 110:10 112:-12 117:-11 118:-10 122:9 125:-12
a==	0:29 1:58 2:55 3:16 4:-37 6:14 7:10 8:-49 9:-30 10:-20 11:-18 12:-25 14:8 15:-25 16:-19 17:-48 18:-25 19:-25 21:-39 23:-29 26:13 27:40 28:-40 29:-32 30:44 31:-36 32:-28 33:-39 35:55 36:-65 37:-36 38:-27 39:34 40:-9 41:-39 42:27 43:-35 44:-12 45:-14 46:27 47:-25 48:-29 49:70 50:32 51:15 52:31 53:50 54:-22 55:22 56:24 58:60 60:-17 61:33 62:-11 64:-25 65:18 66:-33 67:-43 68:39 69:18 70:-12 71:20 72:-39 73:-16 74:50 75:-27 76:-18 77:-9 78:27 79:36 80:-12 81:-25 83:-10 84:-20 85:48 86:-27 89:28 90:13 91:-43 92:19 93:-25 94:30 95:44 96:10 97:12 98:103 99:14 100:11 101:-27 103:73 104:63 105:-11 106:-29 108:38 109:-16 111:-24 112:27 113:40 115:-12 117:-23 118:13 120:73 121:-9 124:-8 125:27
a	0:29 1:58 2:55 3:16 4:-37 6:14 7:10 8:-49 9:-30 10:-20 11:-18 12:-25 14:8 15:-25 16:-19 17:-48 18:-25 19:-25 21:-39 23:-29 26:13 27:40 28:-40 29:-32 30:44 31:-36 32:-28 33:-39 35:55 36:-65 37:-36 38:-27 39:34 40:-9 41:-39 42:27 43:-35 44:-12 45:-14 46:27 47:-25 48:-29 49:70 50:32 51:15 52:31 53:50 54:-22 55:22 56:24 58:60 60:-17 61:33 62:-11 64:-25 65:18 66:-33 67:-43 68:39 69:18 70:-12 71:20 72:-39 73:-16 74:50 75:-27 76:-18 77:-9 78:27 79:36 80:-12 81:-25 83:-10 84:-20 85:48 86:-27 89:28 90:13 91:-43 92:19 93:-25 94:30 95:44 96:10 97:12 98:103 99:14 100:11 101:-27 103:73 104:63 105:-11 106:-29 108:38 109:-16 111:-24 112:27 113:40 115:-12 117:-23 118:13 120:73 121:-9 124:-8 125:27
ther a	0:31 1:28 3:-16 4:26 8:17 14:-12 26:20 35:41 36:-9
a piec	0:55 35:18 37:-10 55:15 68:12
someth for	0:78 4:-13 37:-8 72:-9
find==	0:22 4:-14 35:19 37:-12 52:10 72:8 77:64 91:50 125:-21
me==	0:39 1:-32 3:25 4:48 6:32 7:15 8:47 10:52 12:18 13:59 14:25 16:45 17:16 18:-15 19:27 20:10 21:33 23:27 27:-17 28:31 29:43 30:-24 32:12 33:51 34:10 35:51 36:-20 38:-28 39:17 40:-13 41:-9 42:-8 43:-9 44:-15 45:-13 47:-19 48:-16 50:-9 51:42 52:-16 53:-28 55:-10 58:-11 61:-9 62:-14 63:-11 64:22 65:-14 67:-14 69:-15 70:31 71:-8 72:-22 73:-10 74:-9 75:-8 77:-10 78:-8 79:-9 82:-11 83:-19 84:-33 86:-10 87:-22 89:19 90:-12 91:-17 92:-8 93:-10 95:-11 97:-12 98:-12 99:-12 100:-23 101:-14 103:-24 104:-12 105:65 106:-18 107:-8 108:-10 109:-17 110:80 112:-14 114:-13 117:-17 118:-19 119:-15 120:-8 121:-9 122:-12 123:-11 124:24 125:24
find	0:22 4:-14 35:19 37:-12 52:10 72:8 77:64 91:50 125:-21
^ find	0:31 1:17 4:-11 37:-10
me	0:39 1:-32 3:25 4:48 6:32 7:15 8:47 10:52 12:18 13:59 14:25 16:45 17:16 18:-15 19:27 20:10 21:33 23:27 27:-17 28:31 29:43 30:-24 32:12 33:51 34:10 35:51 36:-20 38:-28 39:17 40:-13 41:-9 42:-8 43:-9 44:-15 45:-13 47:-19 48:-16 50:-9 51:42 52:-16 53:-28 55:-10 58:-11 61:-9 62:-14 63:-11 64:22 65:-14 67:-14 69:-15 70:31 71:-8 72:-22 73:-10 74:-9 75:-8 77:-10 78:-8 79:-9 82:-11 83:-19 84:-33 86:-10 87:-22 89:19 90:-12 91:-17 92:-8 93:-10 95:-11 97:-12 98:-12 99:-12 100:-23 101:-14 103:-24 104:-12 105:65 106:-18 107:-8 108:-10 109:-17 110:80 112:-14 114:-13 117:-17 118:-19 119:-15 120:-8 121:-9 122:-12 123:-11 124:24 125:24
find me	0:26 4:-10
me an	8:8 10:12 12:21 25:13
me a	0:12 13:16 35:-14 125:61
of job	1:-33 2:15 3:51 4:48 5:-38 6:18 11:14 13:14 15:-31 16:26 17:27 18:17 22:-9 23:-25 27:21 29:11 30:-20 33:-10 36:-9 38:-14 39:-20 40:-12 41:13 44:43 45:82 47:-22 48:-26 50:-10 54:-9 64:-14 65:-30 66:-8 68:-9 70:30 71:48 72:46 73:-24 74:-21 76:15 77:11 78:48 79:-9 81:-31 82:-16 84:20 87:40 89:32 91:37 94:21 96:8 97:35 98:-8 99:-14 101:-11 104:-12 105:-13 106:-9 107:34 108:26 111:-8 113:-21 115:19 117:-12 120:-9 121:-8 125:56
of the	0:26 1:-16 2:24 3:19 5:-27 7:20 8:-29 9:-33 10:-13 11:-8 14:25 15:-21 18:-14 19:-13 20:28 21:15 22:13 23:10 25:65 26:8 27:48 30:-27 31:-22 35:-22 36:21 37:-13 39:25 40:-49 41:42 42:-9 43:-8 44:-30 45:-45 47:-35 49:-13 50:43 51:-18 52:-9 53:23 54:17 55:16 58:19 60:-12 62:8 64:-14 65:-12 66:19 67:-27 68:37 70:8 72:-11 73:28 74:12 75:22 76:-19 77:13 79:-17 80:24 81:56 82:41 83:17 84:-23 85:27 86:-27 87:12 88:14 90:14 91:19 94:12 95:14 96:26 98:-26 100:16 101:-12 102:8 103:-11 105:-10 106:18 107:-38 108:30 110:-16 111:-14 112:11 113:-21 115:16 116:42 118:-14 119:-11 121:-12 122:-14
make==s	0:53 1:-12 65:17 68:36 70:8 110:18
what offcut	0:18 5:12
make	0:86 1:-8 2:18 3:-12 4:-9 7:17 8:-10 10:14 11:-8 12:-8 14:-8 17:-10 27:-8 28:-10 30:-10 33:-16 36:31 40:-10 41:-11 42:-20 47:-11 50:-13 55:39 58:33 61:59 62:-10 63:-9 65:10 67:-10 68:39 69:35 70:8 76:-8 78:58 81:-12 92:-11 99:37 103:-8 104:28 110:13 115:16 120:8 121:-12
offcut make	0:20
make #d	0:36
in $	0:22 1:-10 2:8 3:-25 7:25 8:-13 9:-22 11:-17 12:29 19:26 22:-15 23:-12 25:-13 26:-8 28:42 29:-9 31:37 32:-13 36:61 42:25 50:14 51:32 53:23 55:-10 58:12 61:-8 62:13 66:-11 68:-9 72:-10 75:-12 76:-8 78:17 79:13 80:26 82:-12 85:9 87:21 91:-8 92:-12 95:21 109:17 110:-14 111:-13 124:-8 125:-17
mm of	0:39 1:-15 8:-10 22:-8 39:45 51:-11 66:41 67:-14 68:55 79:-10 81:-12 82:15 88:-13
of @wire	0:14 1:70 2:-8 3:-17 4:-13 6:-23 8:52 9:24 10:-12 11:-8 12:-10 16:-9 17:-10 18:-26 19:69 20:12 21:-12 22:-25 23:57 24:-11 27:-11 30:-9 31:22 32:-40 37:45 38:64 39:42 40:59 41:-11 42:-14 44:-8 45:-11 49:-10 50:60 51:24 55:-13 60:-8 66:37 67:20 68:44 70:11 71:-15 72:-12 74:-9 76:-9 78:-12 80:14 82:-11 85:-10 87:-8 88:17 92:-9 98:-13 99:-10 116:74 117:-18 118:-15 119:-9 120:-10 121:-11 125:80
&#n@wire	0:59 1:9 5:-27 7:21 8:-47 9:-34 13:-8 17:-10 18:84 19:-27 20:29 21:-21 22:-13 23:-35 24:-17 31:18 32:-17 33:-27 36:-14 37:-16 38:27 39:43 40:-27 42:-8 43:-11 45:-8 46:-9 49:14 50:83 51:97 55:-10 66:118 67:60 68:9 69:52 70:-12 71:-13 72:21 79:148 80:-16 81:-8 82:-24 88:62 89:-11 90:-8 91:-8 92:-8 97:-8 98:-17 99:-13 104:-9 105:-8 116:53 118:-16 119:-26 120:-13 121:-10 125:-17
@wire $	0:49 1:44 3:-14 5:-39 6:101 7:50 8:72 9:26 11:-8 12:-18 13:-10 14:-11 15:-10 17:-9 19:60 22:71 23:-12 26:-8 27:-8 28:-10 31:26 32:88 36:20 37:-16 38:59 39:-35 40:29 46:8 50:23 51:-34 66:56 67:-47 69:-28 70:17 71:22 72:9 74:-15 78:-13 79:-18 81:20 82:-31 88:-51 116:52 117:-31 118:-26 125:15
#d $	0:28 1:25 2:-26 3:-36 9:-10 13:-9 14:-8 15:-10 17:-9 19:-9 23:10 32:-9 36:21 37:-9 39:60 41:118 42:66 44:-8 45:-8 46:-14 49:-10 50:31 51:23 55:19 64:-10 66:-18 67:20 68:-18 69:28 70:29 71:-9 72:-10 74:46 75:23 76:11 77:-11 78:15 79:-10 80:51 81:-34 82:-16 88:34 89:-8 95:-8 97:-12 110:-8 116:11 117:15
)~",
R"~(fit #d	0:22
#d of	0:-17 1:38 7:-8 8:-20 9:-10 18:-13 19:-17 22:-10 23:37 33:31 36:20 37:63 38:65 40:69 45:-8 46:-10 51:-18 67:-9 68:-9 69:18 70:34 78:-8 82:-24 88:-31
&#d@wire	0:158 1:70 2:-11 3:-22 5:-8 8:-43 9:-39 18:-27 19:-42 20:-26 21:-15 22:-39 23:14 24:-10 31:-23 32:-15 33:23 36:-19 37:-15 38:50 39:39 40:80 41:-11 42:-9 49:-14 50:12 51:75 55:-8 66:92 67:19 68:-42 69:-12 72:-13 74:-13 76:-14 79:-24 80:29 81:53 82:-16 88:119 92:-22 117:21 118:-8 125:-25
make #n	0:12 68:44
mm $	1:-20 3:-51 4:-9 5:22 7:39 16:-15 36:-10 38:-11 40:-11 41:40 42:65 44:-11 50:17 51:67 55:71 68:-18 69:33 70:-10 71:-12 74:-22 76:23 77:-19 78:42 80:28 81:-15 87:59 88:20 91:-17 92:11 93:-14 116:14 117:13 121:9 125:-11
in of	0:9 39:30 66:9 68:18 81:-10
for #d	0:71 1:-11 39:-13 50:26
ther for	0:34 21:11
for #n	0:66 1:15 3:-8 4:-11 11:-9 16:8 17:-10 22:94 23:-16 26:-9 27:13 29:18 35:13 37:-17 43:-10 50:-12 53:16 66:-19 70:-27 72:-12 82:22 91:10 98:10 99:-12 104:25 105:41 112:15 116:85 118:-8 125:-11
can==	0:38 1:32 2:66 3:53 5:37 7:9 8:-32 9:-21 11:-32 12:-22 13:-31 14:-13 15:-13 16:20 17:24 18:26 19:-18 20:-10 21:-17 22:15 23:9 24:-13 25:14 26:-29 27:-23 28:-13 29:8 30:93 31:-24 32:50 33:-37 35:94 36:-21 37:10 38:31 40:-29 41:-20 42:-11 43:20 44:-22 45:-11 48:-18 50:-11 54:-9 57:30 61:-10 64:-16 65:35 66:-17 67:-9 69:-13 70:-9 73:-10 74:-9 75:-13 76:-8 77:35 78:-11 79:-8 81:35 82:-11 83:-14 87:-9 88:-8 89:-14 90:39 91:13 92:-14 93:-9 95:-11 96:-9 97:-15 98:16 99:-9 101:57 102:53 103:-14 104:-9 105:-22 106:45 107:-19 110:9 112:-10 113:59 114:-32 115:-9 116:-9 117:-14 118:-11 119:30 120:48 122:21 124:-33 125:-13
take==	0:23 1:26 2:-11 6:50 8:-32 9:-23 10:-9 11:-23 12:-14 13:-23 14:-12 15:-15 19:-11 20:-10 21:-14 22:-15 23:21 24:-23 25:-19 26:-9 27:70 28:-14 29:-29 30:28 31:-10 32:47 33:-18 35:-17 36:64 37:-21 38:25 39:-13 40:-28 41:-14 43:-10 46:20 47:28 48:26 53:-23 55:-12 57:46 59:-30 60:62 61:-9 62:27 64:15 65:77 71:-16 74:-8 78:-11 82:12 85:-8 86:33 87:-11 89:-8 91:-9 93:-9 98:-9 99:-8 100:40 103:-13 104:-24 106:16 107:-18 108:-23 110:13 111:-21 112:42 113:-10 114:-12 116:-9 117:-15 122:36 124:80
can	0:38 1:32 2:66 3:53 5:37 7:9 8:-32 9:-21 11:-32 12:-22 13:-31 14:-13 15:-13 16:20 17:24 18:26 19:-18 20:-10 21:-17 22:15 23:9 24:-13 25:14 26:-29 27:-23 28:-13 29:8 30:93 31:-24 32:50 33:-37 35:94 36:-21 37:10 38:31 40:-29 41:-20 42:-11 43:20 44:-22 45:-11 48:-18 50:-11 54:-9 57:30 61:-10 64:-16 65:35 66:-17 67:-9 69:-13 70:-9 73:-10 74:-9 75:-13 76:-8 77:35 78:-11 79:-8 81:35 82:-11 83:-14 87:-9 88:-8 89:-14 90:39 91:13 92:-14 93:-9 95:-11 96:-9 97:-15 98:16 99:-9 101:57 102:53 103:-14 104:-9 105:-22 106:45 107:-19 110:9 112:-10 113:59 114:-32 115:-9 116:-9 117:-14 118:-11 119:30 120:48 122:21 124:-33 125:-13
fret can	0:25 2:13
can i	0:72 1:15 4:32 11:-9 16:36 17:32 18:14 23:23 29:9 30:11 32:24 33:-9 35:16 39:-10 43:-9 44:-14 124:-40 125:57
take	0:12 1:43 2:-15 4:-13 6:42 7:-9 8:-34 9:-25 10:-13 11:-26 12:-20 13:-29 14:-14 15:-17 19:-13 20:-13 21:-17 22:-18 23:16 24:-25 25:-24 26:-13 27:62 28:-17 29:-36 30:24 31:-12 32:34 33:-31 35:-8 36:60 37:-26 38:27 39:-14 40:-31 41:-15 43:-19 44:-14 45:-10 46:18 47:25 48:20 53:-27 55:-22 57:43 58:-11 59:-32 60:55 61:-12 62:20 64:62 65:57 68:-8 71:-18 73:38 74:-10 77:-9 78:-12 80:-8 82:11 83:67 84:-14 85:-9 86:31 87:-15 89:-11 91:-11 93:-10 95:-9 97:-12 98:-14 99:34 100:33 102:-10 103:35 104:112 106:11 107:-26 108:-26 110:35 111:-24 112:40 113:-14 114:-14 116:-10 117:-17 118:-13 121:69 122:26 124:74
i take	0:51 1:-8 32:11 105:10 110:8
take in	0:9 35:25 46:16
use for	1:48 5:18 22:-8 23:-10 73:9 83:17
take on	30:38
on slot	70:8
one==	3:37 30:10 38:31 124:13
should==	0:-12 1:9 2:23 3:14 4:40 5:35 6:11 7:32 8:-27 9:46 10:60 12:-11 13:-18 16:-23 17:36 18:49 19:-14 20:-14 21:-13 22:74 23:-13 24:-10 26:-8 28:-10 29:24 32:-13 33:-36 35:-19 36:-10 38:-17 40:-33 45:-12 47:8 50:-9 51:-10 55:20 66:-16 69:71 70:-11 75:-20 77:-9 81:-11 86:-10 89:-12 98:18 101:-12 104:25 106:27 107:-10 115:-9 117:-15 119:-10 125:89
one	0:40 2:26 3:31 4:-16 5:-12 6:-10 9:-16 12:34 14:25 16:10 17:37 19:-8 22:71 29:-12 31:50 32:-12 33:-8 35:-8 36:-13 38:24 40:-39 41:-31 42:-10 43:-11 45:-18 50:11 62:8 66:-12 70:-19 71:10 72:-10 74:-8 75:69 80:8 81:54 82:59 89:-24 97:-8 109:-10 111:8 112:-9 124:10
which one	12:38 22:17 125:-8
should	0:-12 1:9 2:23 3:14 4:40 5:35 6:11 7:32 8:-27 9:46 10:60 12:-11 13:-18 16:-23 17:36 18:49 19:-14 20:-14 21:-13 22:74 23:-13 24:-10 26:-8 28:-10 29:24 32:-13 33:-36 35:-19 36:-10 38:-17 40:-33 45:-12 47:8 50:-9 51:-10 55:20 66:-16 69:71 70:-11 75:-20 77:-9 81:-11 86:-10 89:-12 98:18 101:-12 104:25 106:27 107:-10 115:-9 117:-15 119:-10 125:89
should i	0:8 1:-14 4:22 5:38 7:8 9:52 11:-9 13:-11 15:10 16:-17 17:38 18:26 22:55 23:-8 29:48 31:-21 33:-15 35:-10 40:-25 118:-10 125:-20
take for	0:44 1:-16 5:-14 27:12 83:37
#r of	0:-9 2:-14 5:-10 13:-13 16:31 17:-11 27:-16 41:16 43:-18 44:12 45:25 47:-10 70:-9 71:40 75:-12 76:-15 77:16 78:15 87:-10 89:40 90:21 92:9 95:12 107:-9 114:-12 115:13 125:30
could==	0:36 1:107 2:19 3:40 5:19 7:17 8:-15 9:-11 11:-16 12:8 13:13 15:41 16:-14 17:-21 18:21 21:-13 22:54 23:-12 24:-8 25:8 26:11 27:-12 28:-10 29:-12 30:128 31:-9 32:13 33:-27 36:-40 37:18 38:-13 39:-16 40:-8 41:-10 59:-12 60:12 64:-15 65:-8 67:-8 71:-8 77:-8 82:14 91:49 95:-14 101:-11 104:-15 105:-10 107:-10 125:58
we==	0:31 1:-23 2:22 3:-11 4:-51 5:16 6:30 7:24 8:77 9:59 10:37 11:30 12:11 14:-15 15:-21 16:17 17:-9 19:34 20:-28 21:43 22:24 23:39 24:-34 25:22 26:-47 27:-35 28:48 29:26 30:44 31:42 32:34 33:-54 34:-11 35:-22 36:-24 37:-27 38:-11 39:-32 40:18 41:-18 42:-17 43:-22 44:-8 45:-25 48:18 49:10 51:24 52:33 53:30 54:38 55:-22 57:16 58:-11 59:-8 60:-13 61:-15 63:17 64:-16 65:-23 66:17 67:-33 68:-9 70:-26 71:18 72:-20 73:-13 74:-16 75:-17 76:-13 77:17 79:-10 80:-8 81:-36 82:18 83:-37 84:-9 86:19 87:-15 88:-21 89:-34 90:-16 91:-26 92:-12 93:-17 94:-10 96:-10 97:-27 98:8 99:23 100:40 101:-16 105:26 106:27 107:61 108:29 110:-20 111:-23 112:68 113:-26 114:-18 115:20 116:14 117:-17 119:13 120:55 122:46 124:-16 125:38
could	0:36 1:107 2:19 3:40 5:19 7:17 8:-15 9:-11 11:-16 12:8 13:13 15:41 16:-14 17:-21 18:21 21:-13 22:54 23:-12 24:-8 25:8 26:11 27:-12 28:-10 29:-12 30:128 31:-9 32:13 33:-27 36:-40 37:18 38:-13 39:-16 40:-8 41:-10 59:-12 60:12 64:-15 65:-8 67:-8 71:-8 77:-8 82:14 91:49 95:-14 101:-11 104:-15 105:-10 107:-10 125:58
what could	0:32 1:11 22:9 125:-8
we	0:31 1:-23 2:22 3:-11 4:-51 5:16 6:30 7:24 8:77 9:59 10:37 11:30 12:11 14:-15 15:-21 16:17 17:-9 19:34 20:-28 21:43 22:24 23:39 24:-34 25:22 26:-47 27:-35 28:48 29:26 30:44 31:42 32:34 33:-54 34:-11 35:-22 36:-24 37:-27 38:-11 39:-32 40:18 41:-18 42:-17 43:-22 44:-8 45:-25 48:18 49:10 51:24 52:33 53:30 54:38 55:-22 57:16 58:-11 59:-8 60:-13 61:-15 63:17 64:-16 65:-23 66:17 67:-33 68:-9 70:-26 71:18 72:-20 73:-13 74:-16 75:-17 76:-13 77:17 79:-10 80:-8 81:-36 82:18 83:-37 84:-9 86:19 87:-15 88:-21 89:-34 90:-16 91:-26 92:-12 93:-17 94:-10 96:-10 97:-27 98:8 99:23 100:40 101:-16 105:26 106:27 107:61 108:29 110:-20 111:-23 112:68 113:-26 114:-18 115:20 116:14 117:-17 119:13 120:55 122:46 124:-16 125:38
could we	5:14 8:-10 18:18 21:-10 22:42 30:21
we take	0:8
#o $	2:-9 3:-10 9:22 11:-11 12:50 13:-21 15:-14 16:20 23:-8 28:29 29:36 36:18 46:10 47:23 53:-8 65:-9 75:12 76:17 77:-10 89:34 95:-8 106:10 110:-11 111:-8 112:44 114:21 117:-8 118:12 125:-10
should we	5:-10 6:23 8:-13 9:31 10:8 11:10 17:11 29:-8
we use	5:33 8:-11 9:12 18:18 19:-11 20:16 21:-9 25:15
can we	0:-18 1:9 2:21 3:18 4:-17 5:35 7:13 8:-24 9:15 11:-8 12:-10 16:9 17:9 22:11 30:65 35:21
would==	0:71 1:74 2:-12 3:13 4:-22 5:59 8:-12 9:19 10:28 11:-13 12:-8 13:14 14:-9 16:23 18:30 19:24 20:-13 21:13 22:-12 23:-13 25:17 26:19 29:-12 30:54 31:-15 32:-10 33:-24 36:-19 38:14 39:-8 44:-15 47:-10 49:8 53:-13 54:-11 55:15 64:-10 71:-11 85:9 91:-9 112:13 125:8
work==	1:-19 2:45 4:-11 5:39 6:-14 8:-17 10:-8 11:-23 12:16 13:-8 14:-21 15:-13 16:-20 17:-15 23:-9 24:-14 25:13 26:-14 27:74 28:89 29:54 31:-10 32:-11 33:-19 35:29 38:-27 40:-10 43:-17 45:-9 46:9 47:-12 52:-8 53:57 54:-10 61:32 62:22 63:-9 64:13 65:40 78:-12 84:-8 89:-8 97:-8 98:24 103:-11 105:-10 106:-8 107:66 108:58 109:-22 110:25 111:44 112:8 113:-10 115:-8 125:-36
)~",
R"~(would	0:71 1:74 2:-12 3:13 4:-22 5:59 8:-12 9:19 10:28 11:-13 12:-8 13:14 14:-9 16:23 18:30 19:24 20:-13 21:13 22:-12 23:-13 25:17 26:19 29:-12 30:54 31:-15 32:-10 33:-24 36:-19 38:14 39:-8 44:-15 47:-10 49:8 53:-13 54:-11 55:15 64:-10 71:-11 85:9 91:-9 112:13 125:8
offcut would	0:20 5:12
work	0:-12 1:-24 2:43 4:-13 5:33 6:-16 8:-30 9:9 10:-17 11:-35 12:15 13:-16 14:24 16:-32 17:-22 18:-8 19:-8 20:-8 21:-11 22:-15 23:-20 24:-17 25:75 26:-28 27:67 28:108 29:54 31:-18 32:-25 33:-21 35:48 36:-8 38:-32 40:-13 43:-21 44:-16 45:-16 46:8 47:-16 53:38 54:13 55:-17 57:-11 58:43 61:71 62:14 63:38 65:36 77:-8 78:-14 83:-8 84:-10 87:-10 89:-12 90:-8 91:-10 95:-9 97:-10 98:20 99:-9 100:-13 101:-15 102:54 103:-22 105:-19 106:-14 107:51 108:90 109:86 110:-13 111:120 112:11 113:-12 114:-8 115:-12 117:-9 118:-11 119:-8 120:-8 121:-9 124:-12 125:-56
would work	5:25
the==	0:13 1:-42 2:25 4:39 5:67 6:-49 7:42 8:39 9:8 10:24 12:39 13:62 14:30 16:26 17:38 18:45 19:24 20:36 21:10 23:-41 24:-9 25:19 26:23 28:13 29:-13 32:-17 34:-25 35:25 38:46 39:-29 40:8 41:39 42:-29 43:42 44:26 46:-30 47:-8 48:34 49:-13 50:-59 51:-10 52:-13 53:10 54:11 55:33 56:-9 57:50 58:9 60:40 61:21 62:17 64:14 65:-10 66:-32 67:51 68:-32 69:23 70:-10 72:17 74:48 76:39 77:23 78:17 79:-22 80:14 81:40 82:13 83:16 84:26 85:36 86:58 87:8 88:25 89:-8 91:-41 93:35 94:-17 95:-18 97:-44 98:28 99:15 100:66 101:12 102:31 103:75 104:28 105:-25 106:19 107:18 109:-26 111:-24 112:17 114:11 115:-10 116:-76 117:26 119:33 121:27 122:25 124:-17 125:70
tin==	0:89 1:25 2:85 3:-20 4:-32 5:95 6:-11 7:62 8:70 9:-23 10:-18 11:-20 12:-18 13:-24 14:-17 16:-25 17:-16 18:-24 19:-18 20:-21 21:116 22:154 24:-10 25:-26 26:-14 27:-19 28:-11 29:-27 30:-18 31:-12 32:-12 33:17 35:-20 36:-10 37:-10 38:10 39:131 40:17 41:-15 42:8 43:-12 45:-12 47:-8 50:-20 51:-10 55:10 57:-13 66:-14 68:-9 69:-11 70:-26 72:91 73:-11 75:34 77:-12 78:17 79:95 80:-12 81:17 82:14 83:10 84:-15 87:-9 88:-14 89:-26 91:-16 93:-11 95:-10 98:-8 99:-8 100:-11 101:-9 102:-8 103:-12 104:-10 105:-8 106:-8 107:-9 108:-10 117:-11
offcut in	0:13 20:22 21:-18
tin	0:87 1:25 2:83 3:-24 4:-32 5:95 6:-11 7:62 8:70 9:-23 10:-18 11:-20 12:-18 13:-24 14:-17 16:-25 17:-16 18:-24 19:-18 20:-21 21:116 22:154 24:-10 25:-26 26:-14 27:-19 28:-11 29:-27 30:-18 31:-12 32:-12 33:17 35:-20 36:-10 37:-10 38:10 39:131 40:17 41:-15 42:8 43:-12 45:-12 47:-8 50:-20 51:-10 55:10 57:-13 66:-14 68:-9 69:-11 70:-26 72:90 73:-11 75:34 76:-8 77:-12 78:33 79:95 80:-12 81:17 82:12 83:10 84:-15 87:-9 88:-14 89:-26 91:-16 93:-13 95:-10 98:-8 99:-8 100:-11 101:-9 102:-8 103:-12 104:-10 105:-8 106:-8 107:-9 108:-10 117:-11
the tin	0:52 1:39 2:10 3:-19 4:-22 5:63 7:46 8:60 9:-19 10:-16 11:-16 12:-14 13:-10 14:-13 16:-18 17:-12 18:-13 19:-12 20:-17 21:108 22:90 23:13 25:-22 26:-11 27:-14 28:-9 29:-18 30:-16 31:-9 33:26 35:-15 37:-8 38:15 39:94 40:29 41:-10 42:8 45:-9 50:-15 57:-11 69:-8 70:-21 72:63 73:-10 75:36 77:-10 78:20 79:56 80:-10 81:23 83:14 84:-12 88:-10 89:-21 91:-9 93:-10 100:-8 103:-11 104:-9 117:-9 125:8
would fit	5:16
piec would	0:20
would do	0:23 5:39
do slot	0:20 4:17 82:-10
fit in	5:16
offcut==s	1:-9 5:27 8:12 20:21 21:-17
#r on	4:-13 18:-12 44:11 82:49 91:51 95:15 96:13
on @job	0:29 2:53 3:8 4:31 5:11 11:-18 13:39 15:-44 17:33 18:17 23:-10 24:20 26:-9 33:42 36:31 37:-17 42:-14 43:-29 44:10 45:23 48:-8 64:-10 74:19 75:24 77:-11 78:14 92:15 93:41 97:11 107:-27 108:9 113:-18 114:12 115:-14 125:-35
do for	3:28 4:-20 5:25 10:-17 13:68 16:10 17:-12 23:-9 29:-19 35:8
#o in	0:-8 95:27
&#n#o	0:-31 2:-12 3:35 4:24 6:-8 11:-23 12:28 13:-24 15:-13 16:-10 17:-12 27:-9 28:-9 29:39 30:-9 33:10 36:50 42:12 43:-10 45:22 47:86 48:-8 54:39 65:28 70:12 71:10 72:-8 73:8 89:-30 90:-13 91:15 92:11 93:-9 99:8 102:10 107:-10 112:-14 114:14 125:-13
the fret	0:-37 2:86 4:68 9:-8 15:-11 16:8 17:-13 18:9 24:-10 27:-25 33:45 36:-17 41:38 42:23 43:37 45:-21 71:17 72:-14 73:-8 75:36 77:45 81:-10 83:8 84:-13 89:-8 90:24 91:-28 93:-23 103:12 107:35 108:33 125:-38
fret fret	42:12 44:11 45:12 75:17 77:-9 78:9 91:12 93:-11 97:14
on job	0:47 1:49 2:26 3:-24 4:16 6:-16 11:-23 13:-75 15:55 16:13 17:48 18:21 23:21 24:63 27:17 28:-9 29:-31 30:-15 37:-14 38:-9 41:28 43:79 44:25 45:20 47:-21 48:-26 64:12 65:-10 70:-11 72:-13 73:-12 74:35 75:8 76:-12 77:26 83:-11 84:29 87:30 89:-37 91:44 92:-10 93:-10 94:23 97:-25 105:-20 106:-10 107:-31 108:83 111:-17 113:-31 125:-16
anyth in	0:26 22:19
tin for	0:41 1:-16 5:21 22:11 38:35 39:-24 72:-10 81:35
for fret	0:24 3:-14 12:30 16:22 36:69 37:-15 41:17 43:-8 77:-14 91:13 93:-14 107:13
fret #r	2:13 13:-10 24:-12 27:-13 37:-11 42:19 43:-10 44:36 45:14 70:24 71:28 77:17 95:18 97:17 115:15 125:-14
have==	0:29 1:19 2:-24 5:-34 8:42 10:24 11:39 12:55 14:57 15:-10 16:-41 17:-36 18:-24 19:36 20:-14 21:39 22:32 23:33 25:28 26:80 27:-23 28:-36 29:23 30:19 31:56 33:25 34:18 35:-48 36:-14 37:-15 38:50 40:-21 41:-16 43:-8 44:-19 45:22 50:-12 51:8 52:-12 53:-18 54:-14 57:-15 58:-11 60:-11 62:-10 63:19 64:-17 65:-8 66:36 67:-10 70:-12 71:16 72:-14 73:-9 74:10 77:-16 79:-28 80:-11 81:20 83:-12 84:-19 87:-15 88:-10 89:-18 90:19 91:-8 93:-13 94:-11 97:-13 98:11 99:40 100:86 102:-16 103:-12 104:-16 105:26 106:-22 107:-20 111:-12 112:-13 113:-15 115:13 118:-10 119:10 121:8 122:-11 125:43
have	0:29 1:19 2:-24 5:-34 8:42 10:24 11:39 12:55 14:57 15:-10 16:-41 17:-36 18:-24 19:36 20:-14 21:39 22:32 23:33 25:28 26:80 27:-23 28:-36 29:23 30:19 31:56 33:25 34:18 35:-48 36:-14 37:-15 38:50 40:-21 41:-16 43:-8 44:-19 45:22 50:-12 51:8 52:-12 53:-18 54:-14 57:-15 58:-11 60:-11 62:-10 63:19 64:-17 65:-8 66:36 67:-10 70:-12 71:16 72:-14 73:-9 74:10 77:-16 79:-28 80:-11 81:20 83:-12 84:-19 87:-15 88:-10 89:-18 90:19 91:-8 93:-13 94:-11 97:-13 98:11 99:40 100:86 102:-16 103:-12 104:-16 105:26 106:-22 107:-20 111:-12 112:-13 113:-15 115:13 118:-10 119:10 121:8 122:-11 125:43
^ have	8:-9 10:9 11:8 19:-10 22:33 23:20 26:9 31:52 63:10 94:-16 108:22 115:9 125:10
have we	0:25 1:-8 4:-18 5:-8 6:-9 8:41 9:25 10:-15 11:23 12:32 13:16 14:-17 16:-8 19:28 21:17 22:15 23:32 25:20 26:-9 27:-32 30:-9 31:61 33:-17 100:-8 125:-11
we anyth	11:-9 23:29
tin that	0:14 22:17 79:19
that would	0:30
ther anyth	11:12 13:-9 17:25 22:23
the slot	2:-8 4:42 13:-23 16:-13 17:-10 18:64 27:22 33:8 36:-35 43:37 70:-16 71:11 72:11 74:14 75:50 76:13 77:-11 78:-16 87:-8 91:65 93:-8 103:37 104:23 107:23 108:-8
plac==e	1:29 3:-11 9:9 14:30 25:15 28:11 29:-10 44:11 48:-13 53:24 54:12 72:21 75:9 87:8 89:-8 98:28 103:11 108:8 111:-8 125:-13
end==s	0:-15 1:65 2:-10 3:89 4:-19 13:-9 16:-11 17:-10 27:55 29:-13 30:19 36:-8 39:37 42:44 43:62 44:-8 69:-10 72:-19 75:-9 77:-13 78:8 79:20 80:25 81:-17 82:-15 88:-8 91:-9 93:11 104:9 107:18
plac	0:-11 1:33 3:-11 9:9 14:30 25:15 28:11 29:-10 38:11 39:-21 44:10 48:-13 50:-16 53:24 54:12 72:32 75:19 87:8 98:27 103:11 108:8 111:-8 116:46 125:-15
^ plac	1:23 116:10
@wire piec	37:9 38:14 45:-9 46:-13 70:13
piec #n	0:-133 1:120 2:-12 3:19 4:-24 5:-12 13:-21 15:-12 16:-11 17:-16 18:-9 22:52 23:65 29:-11 30:-11 33:88 36:125 37:104 38:67 40:109 41:-10 42:-13 43:-14 44:-10 45:-9 55:-10 64:-8 65:-19 69:100 70:65 71:-37 72:-12 73:-10 75:-24 76:-9 77:-17 78:-14 81:45 82:-34 83:-12 84:-10 89:-17 91:-19 92:-11 93:-12 95:-16 96:-10 97:-19 99:-10 102:-9 104:-8 105:-8 106:-9 107:-10 113:-11 114:-10 125:64
#n piec	33:9 37:25 38:11 45:-27 70:19
number	1:51 2:-16 3:17 4:-37 5:-30 7:-10 8:-9 10:-18 11:-15 12:-16 13:22 15:-18 17:-18 18:-12 19:25 20:-10 21:-14 22:-24 23:26 24:-8 25:-11 26:-8 27:-10 28:-8 29:-25 30:-19 31:-10 33:-13 35:-8 36:73 37:28 38:59 40:60 41:-21 42:10 44:-10 45:41 48:-9 50:-9 53:-9 54:-9 55:-19 57:14 58:9 59:22 60:37 61:-8 64:32 65:18 70:39 71:-22 72:-15 73:29 75:-28 76:-12 79:-8 81:12 82:11 83:10 84:11 87:-12 89:-14 91:-12 92:8 93:-12 94:-13 95:9 96:-13 100:-11 101:67 102:54 103:-10 104:-20 105:-14 106:27 107:19 108:-16 110:-8 111:-21 113:9 115:-15 116:12 118:9 119:45 120:-8 121:-8 125:22
piec number	23:10 36:17 37:-13 38:13 45:-8 69:9
number #n	1:53 2:-15 3:18 4:-34 5:-28 10:-17 11:-9 13:61 15:-9 16:9 17:-13 18:-10 21:-13 22:-22 23:34 27:-10 29:-18 30:-17 31:-8 33:-9 36:75 37:29 38:64 40:63 41:-21 42:10 45:42 48:-8 50:-8 54:-8 55:-8 57:17 60:-9 64:38 65:22 70:40 71:-21 72:-14 73:31 75:-28 76:-11 81:14 82:12 83:13 84:13 87:-8 89:-13 91:-11 92:9 93:-12 94:-12 95:10 96:-12 98:-14 99:-35 101:28 102:23 103:-9 104:-17 105:-13 106:31 107:20 108:-13 111:-19 113:10 115:-14 116:13 118:11 119:47 121:-8 125:-59
)~",
R"~(piec #d	1:-12 37:32 45:-16 46:-16 69:13 70:16
one_raw	3:23 80:9 81:-10
end one_raw	3:23 80:9 81:-10
piec the	1:12 36:22 45:-11
the #d	0:-53 1:25 4:-9 6:-8 7:-15 8:-9 9:-8 16:-12 18:-31 20:-9 23:35 36:151 37:92 38:66 39:-28 40:110 41:-37 42:-14 45:-16 50:-12 51:-9 55:-8 66:-19 67:-10 70:109 72:-10 74:-20 76:-19 78:-11 80:-14 81:47 82:30 83:-8 88:-23 92:-13 125:75
#d long	1:19 3:15 40:-9 69:21 81:-9
~ length	49:-16 82:-14 85:39 121:-9
mm wire	5:-8
#d wire	50:-8 66:17
mm piec	0:-10 1:14 39:13
piece	0:9 1:53 2:11 3:-12 4:-20 5:35 6:40 8:101 9:-24 10:-11 11:-10 13:-20 14:-9 15:-20 16:-13 17:-12 18:-12 19:-31 20:-15 22:97 23:81 25:-10 26:-9 27:-16 29:-16 31:-9 32:-10 33:-20 36:19 37:13 38:43 39:10 40:65 42:-8 43:-9 45:-16 50:-16 65:-9 66:-9 70:8 71:-15 72:-9 75:-44 79:64 81:74 82:92 83:41 84:34 89:-10 91:-13 93:-9 95:-14 96:-9 97:-17 108:-8 125:-31
piec piece	36:-26 37:10 38:11 45:-8 70:23
piece #n	0:-13 1:71 4:-11 15:-15 23:15 33:-8 36:24 37:18 38:52 40:69 45:-14 70:17 71:-13 75:-43 81:74 82:63 89:-8 91:-8 95:-11 97:-15 125:-17
#d piec	1:9 38:15 45:-11
in wire	50:-8 66:9
&#d#n@wire	0:-24 3:-26 18:32 36:23 37:-13 38:-20 39:70 40:-11 41:-13 42:-11 50:54 66:-14 67:-12 68:49 70:53 72:-21 74:-22 79:-11 80:8 81:58 82:13 85:-12 92:-8 116:37 117:-13 125:-19
plac #n	1:9 44:13
&#d#n	0:-69 1:-24 2:23 3:59 4:-10 16:32 17:-18 23:-9 33:-12 36:-12 37:-33 38:-34 39:-28 40:-53 41:15 42:62 43:-10 44:-13 45:-14 49:17 50:-9 55:-8 68:-8 69:130 70:15 71:-10 72:17 74:91 75:22 76:49 77:-15 78:32 82:20 88:-10 89:-19 90:-11 91:-15 92:87 95:-12 96:-10 97:-15 117:17 120:-9 125:51
#d job	3:-24 36:15 37:9 41:-10 42:16 45:-11 74:14 76:9 78:26
are==	0:8 2:-10 3:-12 5:-53 6:-27 7:43 8:23 9:25 11:26 12:58 13:37 15:-24 16:-13 17:25 18:-10 19:-12 20:-21 21:-26 22:9 23:28 24:-20 25:32 26:39 27:20 28:67 29:20 30:-31 31:66 32:29 33:-47 34:-10 35:13 36:-19 37:-14 38:-17 39:-11 40:-16 41:-11 42:-19 43:32 45:-18 47:-23 48:29 50:-35 51:-18 52:31 54:45 55:32 57:-16 58:-21 60:-9 61:-8 62:-8 63:-9 64:-12 65:-11 66:39 69:-12 71:13 72:-11 74:54 75:-20 76:-11 77:-19 78:-13 79:-9 81:40 83:-13 84:16 85:-10 86:-11 87:-14 88:11 89:12 90:24 91:27 92:-22 94:-9 95:12 97:-10 98:14 99:30 100:-12 101:30 102:57 104:-17 105:-21 106:-14 108:31 109:32 110:-13 111:-17 114:-17 115:-18 116:9 119:-11 120:-17 121:12 122:-9 124:-16 125:-17
any==	0:27 1:73 3:-19 4:-10 6:-8 8:21 10:-11 11:50 13:-21 14:-10 15:-13 16:-14 17:38 18:25 19:-21 20:-14 22:67 23:47 24:12 25:-21 26:38 27:-8 28:-19 29:-11 30:12 31:55 33:-18 35:-9 36:-16 37:-21 38:68 39:-10 43:-13 44:-12 47:16 50:-10 53:-30 55:-10 57:9 59:-22 60:43 61:-8 62:30 63:-12 64:-14 65:60 66:-14 69:-8 71:-10 72:-18 79:-18 81:8 84:22 86:12 87:21 89:-8 92:-10 93:-11 99:-15 100:65 101:-16 102:-9 103:-8 107:-13 108:-13 109:13 110:-28 112:30 115:-10 116:-8 117:-9 118:-9 119:-13 120:-19 121:63 125:-43
are	0:8 2:-10 3:-12 5:-53 6:-27 7:43 8:23 9:25 11:26 12:58 13:37 15:-24 16:-13 17:25 18:-10 19:-12 20:-21 21:-26 22:9 23:28 24:-20 25:32 26:39 27:20 28:67 29:20 30:-31 31:66 32:29 33:-47 34:-10 35:13 36:-19 37:-14 38:-17 39:-11 40:-16 41:-11 42:-19 43:32 45:-18 47:-23 48:29 50:-35 51:-18 52:31 54:45 55:32 57:-16 58:-21 60:-9 61:-8 62:-8 63:-9 64:-12 65:-11 66:39 69:-12 71:13 72:-11 74:54 75:-20 76:-11 77:-19 78:-13 79:-9 81:40 83:-13 84:16 85:-10 86:-11 87:-14 88:11 89:12 90:24 91:27 92:-22 94:-9 95:12 97:-10 98:14 99:30 100:-12 101:30 102:57 104:-17 105:-21 106:-14 108:31 109:32 110:-13 111:-17 114:-17 115:-18 116:9 119:-11 120:-17 121:12 122:-9 124:-16 125:-17
^ are	1:35 8:13 11:25 13:34 17:20 25:24 28:82 29:11 31:33 32:21 43:-21 52:-8 53:-34 54:-8 102:-8 108:30 112:-18 125:-8
are the	0:-16 1:12 4:74 12:-13 13:-19 14:29 17:-17 25:-29 27:9 28:15 29:28 32:38 33:-9 35:29 70:11 88:9
any	0:27 1:73 3:-19 4:-10 6:-8 8:21 10:-11 11:50 13:-21 14:-10 15:-13 16:-14 17:38 18:25 19:-21 20:-14 22:67 23:47 24:12 25:-21 26:38 27:-8 28:-19 29:-11 30:12 31:55 33:-18 35:-9 36:-16 37:-21 38:68 39:-10 43:-13 44:-12 47:16 50:-10 53:-30 55:-10 57:9 59:-22 60:43 61:-8 62:30 63:-12 64:-14 65:60 66:-14 69:-8 71:-10 72:-18 79:-18 81:8 84:22 86:12 87:21 89:-8 92:-10 93:-11 99:-15 100:65 101:-16 102:-9 103:-8 107:-13 108:-13 109:13 110:-28 112:30 115:-10 116:-8 117:-9 118:-9 119:-13 120:-19 121:63 125:-43
#d any	1:13 38:10
any use	1:27
use on	5:42
&#d@job	1:22 18:-16 41:-13 74:104 76:11 87:16
is #d	0:-14 1:35 3:74 8:45 17:-9 18:-14 23:10 36:-16 37:-9 38:-16 39:-19 40:-20 41:31 42:-11 55:-10 66:-11 67:-8 68:25 69:20 74:44 76:80 77:-11 80:30 85:14 87:-19 88:38 89:-8 91:-8 92:25 121:16 125:-25
of any	1:12 8:-11 9:32
for @job	0:-16 1:-15 2:19 3:-10 4:31 5:40 9:-8 13:46 15:-8 18:22 20:-9 23:42 29:-32 30:-16 33:-8 36:11 37:22 38:21 43:32 45:-10 48:-9 64:-16 65:-14 70:18 71:16 73:39 83:26 84:46 87:-9 91:17 105:12 113:-17 114:-11 115:8 125:-19
good==	0:-32 1:51 3:10 5:-10 8:-21 9:46 13:-10 17:-8 18:51 22:36 23:-28 25:-9 31:-21 37:-10 40:42 41:12 43:-10 45:19 61:-8 62:25 63:13 77:14 79:-9 81:33 86:21 87:-8 89:13 93:55 100:35 101:-11 102:26 108:-11 115:-11 118:8 125:-11
are number	1:11
#n any	1:9 38:25 65:27 84:10 100:12 125:-18
good	0:-33 1:50 3:10 5:-10 8:-22 9:45 13:-10 17:-8 18:51 19:12 20:-8 22:36 23:-32 25:-9 29:-8 31:-21 37:-10 40:42 41:12 43:-10 45:19 61:-8 62:25 63:13 77:14 79:-9 81:33 86:21 87:-8 89:13 93:55 100:35 101:-11 102:26 108:-11 115:-11 118:8 125:-11
any good	1:13 18:48 22:15
good for	1:65 3:-11 17:-8 18:10 22:11 23:-22 77:18
are #d	18:20 43:-10 68:18 74:33 81:-8 88:10
@wire of	39:20 66:-14 68:14 81:26
^ could	1:56 2:13 3:46 4:-8 5:-9 7:22 12:15 13:20 15:47 16:-8 17:-8 18:25 22:-9 23:-8 26:18 29:-12 30:37 33:-15 35:-9 36:-34 37:20 38:-9 47:-8 64:-12 91:15 95:-10 125:8
could i	0:11 3:52 11:-8 12:15 18:13 22:21 26:18 29:-8 30:28 32:17 33:-11 36:-26 125:-34
use number	36:37
#n for	0:-32 3:-40 4:-19 16:-15 29:-9 33:-8 36:78 37:95 38:19 42:53 43:-14 44:8 45:-8 65:21 70:48 73:37 75:-26 77:-8 81:12 83:-13 84:-22 91:-16 93:41 95:-13 97:-12 105:20 106:-8 107:-10 111:-10 113:21 114:-10 115:10 125:11
^ can	0:-18 1:77 2:16 3:25 4:-10 5:31 6:10 7:23 10:16 11:-12 12:-11 16:29 17:38 18:30 22:-22 23:21 25:10 29:33 30:53 35:-40 36:-8 37:21 38:-13 43:-12 44:-15 47:-14 72:-8 77:18 91:15 101:-8 106:-8 124:-40 125:49
can use	1:11 101:13 102:54
use piece	82:10
may==	0:-10 1:32 2:8 4:14 5:-9 12:-13 13:-9 14:23 16:8 17:9 18:-9 19:12 27:-11 30:32 35:17 37:-9 38:32 43:13 47:-13 48:-9 55:12 58:34 61:14 65:8 83:-11 87:15 102:21 107:-9 110:-15 120:16 125:37
may	0:-10 1:32 2:8 4:14 5:-10 12:-13 13:-10 14:23 17:9 18:-9 19:11 20:14 21:28 27:-12 30:32 35:16 37:-9 38:32 43:13 47:-13 48:-9 55:11 58:33 61:14 67:-8 69:-9 83:-11 87:15 102:21 106:-8 107:-9 110:-15 120:16 125:36
^ may	1:26 3:12 11:10 12:-11 17:17 19:15 26:10 30:13 35:22 47:-11
may use	1:10
use #d	1:44 3:-17 36:44 37:-10
@wire for	0:-17 1:-14 5:29 6:28 8:-11 9:28 18:-14 20:39 22:-10 23:-32 36:15 37:57 39:24 70:-18 79:16 82:23 125:-12
use the	5:16 16:24 18:25 36:13 101:20 103:14 125:-10
&#d@job@wire	18:20 23:-9 37:55 74:-10
may we	1:9 29:12
use #n	1:9
#d on	3:-8 36:15 41:44 74:-8 117:18
wher==e	0:-27 1:187 2:9 3:24 4:64 5:-13 6:68 8:-23 9:-21 11:-10 13:53 16:42 17:37 18:-14 19:17 20:90 21:-12 22:-8 23:-17 25:-13 26:-8 27:-11 29:20 30:-9 31:-10 32:37 33:25 35:11 36:-8 37:-10 38:-20 39:-26 40:-25 42:-8 43:-11 44:-8 51:-22 61:8 69:-10 70:-11 73:-8 74:-12 89:12 91:-10 98:23 99:-8 107:-18 108:-17 115:-8 124:-9 125:19
doe==s	0:-27 1:58 3:43 6:34 7:-9 8:-18 9:41 10:-25 11:-14 13:11 14:41 15:85 17:12 18:54 20:8 21:23 22:24 23:13 25:35 26:11 27:40 28:64 29:24 32:76 33:-66 35:79 36:-14 37:-8 38:-15 39:-10 41:-12 42:-20 43:-21 44:-9 45:-14 48:-11 54:-10 55:-11 61:-19 62:14 63:-19 64:35 65:32 69:-9 71:-8 73:-34 74:-24 75:-12 76:-8 77:-13 78:-9 79:-8 81:-8 83:-10 84:8 87:-11 89:14 91:-13 92:-11 93:-13 95:-11 96:-8 97:-11 99:-12 101:16 102:-9 103:-8 104:15 105:-11 107:-24 108:-15 109:28 110:-18 111:-8 112:-9 115:-9 119:-10 121:-18 124:-9 125:30
belong==	1:16 12:10 14:10 65:9
wher	0:-27 1:187 2:9 3:24 4:64 5:-13 6:68 8:-23 9:-21 11:-10 13:53 16:42 17:37 18:-14 19:17 20:90 21:-12 22:-8 23:-17 25:-13 26:-8 27:-11 29:20 30:-9 31:-10 32:37 33:25 35:11 36:-8 37:-10 38:-20 39:-26 40:-25 42:-8 43:-11 44:-8 51:-22 61:8 69:-10 70:-11 73:-8 74:-12 89:12 91:-10 98:23 99:-8 107:-18 108:-17 115:-8 124:-9 125:19
)~",
R"~(^ wher	0:-12 1:27 3:-9 4:49 5:-9 6:61 8:-19 9:-15 13:25 15:8 16:27 17:47 18:-8 19:24 20:74 21:-10 23:-9 29:17 31:-9 32:42 33:21 35:13 36:-8 38:-10 43:-9 74:-11 107:-16 108:-14
wher in	1:12
doe	0:-27 1:58 3:43 6:34 7:-9 8:-18 9:41 10:-25 11:-14 13:11 14:41 15:85 17:12 18:54 20:8 21:23 22:24 23:13 25:35 26:11 27:40 28:64 29:24 32:76 33:-66 35:79 36:-14 37:-8 38:-15 39:-10 41:-12 42:-20 43:-21 44:-9 45:-14 48:-11 54:-10 55:-11 61:-19 62:14 63:-19 64:35 65:32 69:-9 71:-8 73:-34 74:-24 75:-12 76:-8 77:-13 78:-9 79:-8 81:-8 83:-10 84:8 87:-11 89:14 91:-13 92:-11 93:-13 95:-11 96:-8 97:-11 99:-12 101:16 102:-9 103:-8 104:15 105:-11 107:-24 108:-15 109:28 110:-18 111:-8 112:-9 115:-9 119:-10 121:-18 124:-9 125:30
#n doe	38:9 73:-29 84:17 89:61 101:8 114:18
doe #n	2:10 3:12 5:11 35:36 89:-38 125:69
belong	1:24 12:8 14:23 59:15 60:11 65:30
#n belong	1:14 65:19
go==	1:48 2:-13 3:14 4:-15 6:9 8:-12 10:8 13:-27 15:-9 16:14 17:-16 18:9 19:-24 20:51 21:-12 23:-17 24:-10 25:-8 26:-8 27:23 30:-12 31:-9 32:-13 35:-10 37:-19 38:115 40:-16 44:-25 48:-10 57:45 62:22 63:-13 64:-9 65:10 71:-12 72:11 75:-8 77:-9 78:-12 81:22 82:24 83:-10 84:92 95:-10 96:-8 98:21 99:-11 104:35 107:43 113:-10 115:-10 121:-8 122:36 124:-8
would #n	1:27 3:9 18:-14
go	1:48 2:-13 3:14 4:-15 6:9 8:-12 10:8 13:-27 15:-9 16:14 17:-16 18:9 19:-24 20:51 21:-12 23:-17 24:-10 25:-8 26:-8 27:23 30:-12 31:-9 32:-13 35:-10 37:-19 38:115 40:-16 44:-25 48:-10 57:45 62:22 63:-13 64:-9 65:10 71:-12 72:11 75:-8 77:-9 78:-12 81:22 82:24 83:-10 84:92 95:-10 96:-8 98:21 99:-11 104:35 107:43 113:-10 115:-10 121:-8 122:36 124:-8
#n go	1:29 65:29 70:10 81:10 84:8 98:27 125:-24
go $	0:-13 1:33 3:11 22:17 32:-9 33:9 38:40 39:-13 57:36 65:-8 70:9 84:40 102:17 107:45 122:38
wher on	1:13
@job doe	47:21 114:8
fit $	0:45 1:8 35:11
@job would	0:-18 18:18 24:15 30:11
@job could	2:19
would the	0:-10 4:-11 10:11 16:14 18:16 21:-8 27:18
#d go	38:11 39:14
wher would	1:40 17:13 19:25
would a	3:9 16:8
a #n	1:65 22:-21 50:10 79:-12 99:14 104:28
a #d	0:-18 1:25 3:52 39:43 76:-8 125:19
this==	0:-18 1:18 5:-14 8:-20 10:22 11:48 12:-18 13:-13 14:11 16:-9 17:11 19:-24 20:59 21:19 22:-11 23:-15 26:37 27:-12 29:41 30:18 31:-14 32:-23 40:10 41:11 43:10 46:-10 50:13 52:-49 53:41 54:46 55:-8 59:8 62:-10 74:12 75:-9 77:-8 91:-10 95:14 99:-10 100:16 105:12 107:-11 108:-14 109:-37 110:73 111:36 116:10 117:11 119:-8 125:13
wher doe	1:20 2:14 4:17 20:-8 32:18
this	0:-19 1:17 2:-8 5:-15 8:-20 10:21 11:39 12:-19 13:-25 14:10 15:-10 16:-12 19:-24 20:58 21:18 22:-12 23:-17 24:-13 26:36 27:-13 29:41 30:17 31:-15 32:-24 38:-8 40:8 42:-10 43:34 44:10 46:-11 48:-9 50:10 52:-50 53:42 54:62 55:-9 61:-9 62:-14 63:-11 64:-9 74:11 75:-11 76:9 77:9 78:-8 89:-9 91:-16 95:24 97:27 99:-13 100:11 101:30 102:-16 103:-8 105:9 107:17 109:-39 110:55 111:75 113:-8 115:45 116:12 117:13 118:-8 119:-9
doe this	35:20
in fret	3:10 91:8
fret of	1:-14 2:55 3:43 4:-25 5:31 6:10 8:28 9:-23 16:-31 17:-18 18:15 20:-9 22:-13 24:10 30:-10 36:15 39:31 43:53 45:41 46:10 50:-9 70:-17 71:-18 72:37 75:43 78:-20 79:-9 82:-19 90:12 91:-14 93:-16 95:-10 96:8 97:-9 107:15 108:24 125:-24
@wire go	1:11 18:21 19:-16 20:37 51:10 125:-10
doe the	0:8 1:-13 5:-17 6:15 8:-12 9:21 12:-10 13:-15 15:16 16:11 17:22 18:30 20:22 21:-12 22:13 23:36 25:73 26:-12 27:-17 28:16 29:-8 31:20 33:-10 43:-8 64:30 65:11 74:-15 107:-10 125:-9
piec of	38:15 39:12 68:11
wher could	1:23 39:-10
could a	30:8
wher should	1:9 3:12 6:13 29:9 125:-10
mm offcut	1:9
offcut of	1:17 39:9
doe a	125:62
in @wire	0:33 6:12 8:-25 20:-15 21:72 22:19 81:17
mm @wire	1:25 7:-9 36:25 38:32 41:-8 49:9 76:13 81:10 82:17
#d @wire	0:32 7:-10 18:-18 22:-12 23:-11 36:34 37:55 40:36 50:-17 51:-9 66:-9 69:-13 70:29 72:-12 81:66 82:48 88:-13 125:-8
mm the	81:17
@wire offcut	1:27
would number	1:13
to==	0:-17 2:17 3:-41 4:35 5:30 8:-45 9:16 10:99 11:24 13:34 14:-9 15:40 16:13 17:12 18:19 21:-16 24:-29 25:-49 26:-47 27:14 28:17 29:19 30:17 31:-15 32:-25 33:-27 34:-9 35:17 36:-57 37:20 39:-10 41:-11 43:-38 44:33 46:19 47:25 48:-15 49:-12 50:-10 51:27 52:-11 53:28 55:58 56:22 57:44 58:41 59:19 60:-19 61:79 62:-34 63:35 64:58 65:43 66:9 67:-13 68:13 69:25 70:-18 72:12 73:-22 74:-14 75:85 77:-41 78:-10 79:-25 80:-32 81:21 82:-29 83:25 84:-23 85:-29 87:14 89:23 90:-8 91:-9 92:-23 94:-17 95:-19 96:-10 97:-27 98:20 99:20 100:-18 101:-9 102:15 104:-12 105:8 106:-38 107:23 109:11 110:35 111:24 112:-40 113:-26 114:24 116:-17 117:-60 118:41 119:-17 120:13 121:24 122:-10 124:21 125:32
put==	0:-12 1:19 2:-9 3:-20 4:-22 5:-11 7:-9 9:15 11:-30 12:-9 13:-26 14:-16 16:9 17:-8 19:-10 20:-9 22:-13 23:48 25:-15 26:9 27:-11 29:-16 30:-16 31:-14 32:-12 33:13 35:-9 36:53 37:62 38:-11 39:28 40:-9 42:10 43:-19 44:-16 46:-11 47:-14 48:-12 49:21 50:46 54:-9 55:57 58:30 62:32 63:-11 64:50 65:-9 66:-22 67:-9 69:32 70:-19 72:29 75:19 77:-13 78:-22 81:-8 83:42 84:20 87:-14 89:-15 90:-15 91:-19 92:-11 95:44 96:14 97:-16 98:15 99:-13 100:-9 101:-13 102:21 105:24 106:-8 107:-24 108:29 110:-14 111:10 113:34 114:-13 117:-16 118:14 120:25 121:-12
to	0:-18 1:-8 2:17 3:-41 4:31 5:30 8:-45 9:16 10:98 11:23 13:34 14:-9 15:39 16:12 17:11 18:18 21:-16 24:-29 25:-50 26:-48 27:14 28:-13 29:18 30:16 31:-15 32:-26 33:-28 34:-9 35:16 36:-59 37:17 39:-10 41:-11 43:-39 44:31 46:19 47:23 48:-15 49:-12 50:-11 51:27 52:80 53:17 54:24 55:57 56:22 57:43 58:41 59:18 60:-19 61:79 62:-35 63:34 64:57 65:42 66:9 67:-13 68:13 69:24 70:-25 72:12 73:-23 74:-14 75:75 77:-41 78:-11 79:-25 80:-32 81:20 82:-30 83:25 84:-24 85:-29 87:14 89:11 90:-8 91:-10 92:-24 94:-17 95:-20 96:-10 97:-28 98:20 99:16 100:-18 101:-16 102:14 104:-13 105:43 106:-39 107:22 109:62 110:22 111:18 112:-43 113:-27 114:23 116:-18 117:-60 118:39 119:-18 120:12 121:23 122:-11 124:21 125:26
wher to	1:43 6:11 20:8
put	0:-12 1:19 2:-9 3:-20 4:-22 5:-11 7:-9 9:15 11:-30 12:-9 13:-26 14:-16 16:9 17:-8 19:-10 20:-9 22:-13 23:48 25:-15 26:9 27:-11 29:-16 30:-16 31:-14 32:-12 33:13 35:-9 36:53 37:62 38:-11 39:28 40:-9 42:10 43:-19 44:-16 46:-11 47:-14 48:-12 49:21 50:46 54:-9 55:57 58:30 62:32 63:-11 64:50 65:-9 66:-22 67:-10 69:32 70:-19 72:29 75:19 77:-13 78:-22 81:-8 83:42 84:20 87:-14 89:-15 90:-15 91:-19 92:-11 95:44 96:14 97:-16 98:15 99:-13 100:-9 101:-13 102:21 105:24 106:-8 107:-24 108:29 110:-14 111:10 113:34 114:-13 117:-16 118:14 120:25 121:-12
to put	1:15 6:12
put a	1:8 8:-10 37:14 39:-10 49:27 90:-8 95:23 125:22
put the	1:11 6:8 17:15 29:9 36:-15 37:15 46:-9 50:16 72:29 76:11 96:10 102:14 108:28 117:-8
offcut $	1:22
put #n	36:15 50:13 75:-9 82:32 104:15
mm fret	0:21 3:32 22:-17
the #n	0:76 1:-12 4:22 5:16 6:-20 7:-11 12:29 13:8 15:53 16:-33 17:-11 24:22 27:-33 29:25 30:46 31:45 33:20 36:-22 37:-14 38:42 39:-9 40:-19 41:-26 42:19 43:8 44:-18 45:-33 47:8 48:20 50:-43 53:-8 54:-11 55:-9 66:-21 67:21 69:-9 70:-16 71:-10 72:26 73:-23 75:35 78:8 79:-9 81:49 82:50 83:9 84:-16 87:21 89:-15 90:-13 91:-8 92:-8 93:-8 94:13 95:-14 98:-8 106:-8 107:27 108:-8 112:26 113:12 115:-9 116:-8 117:-10 125:-20
what slot	0:-26 1:38 13:20
slot for	0:-26 1:66 4:21 29:-8 107:13
for a	1:25 22:12 27:15 30:53 31:-9 39:-11 105:8 118:9
take==s	0:-11 1:17 5:-9 6:-8 27:-8 32:-13 33:-14 35:9 43:-9 55:-10 60:-8 64:48 65:-20 73:31 83:69 99:41 103:48 104:136 107:-8 109:-8 110:22 121:67 122:-10 125:-13
which slot	0:-52 1:89 2:8 13:85 26:12 70:-10
slot take	0:-8 1:19 27:27 104:15
take this	1:8
this #n	1:-9 39:25
for this	19:-10 20:17 28:12
fret $	2:29 4:-13 8:-13 9:-10 13:52 16:-19 17:41 24:10 27:89 33:-12 36:27 39:-10 41:-13 43:-12 45:-9 46:-8 77:18 79:14 93:55 95:-8 97:-9 104:40 108:-10 125:-13
piec $	0:8 35:18
for number	0:35 1:29 3:26 5:-16 30:-8 42:-24 43:18 47:15 73:-8 83:22 84:28 104:-8
take piece	1:13
take #d	50:-10 69:19
take #n	1:10 81:12 99:28 121:29 125:41
wher do	4:27 6:18 17:28 29:10 32:26
do we	0:28 2:12 3:-8 4:10 5:-12 6:22 7:19 8:70 9:14 10:40 11:20 12:28 13:-12 14:-10 16:16 18:9 20:-11 21:-15 22:8 25:56 27:8 28:12 29:-9 30:-22 31:-19 32:56 33:-18 35:-14 66:-8 100:-9 115:-9 120:-9 122:-13 125:-28
wher can	32:25 35:19
we put	1:16 8:19 23:33
put #d	3:-8 36:17 55:14
)~",
R"~(i put	0:10 3:10 4:-8 9:33 10:-11 15:12 16:27 18:18 29:-9 33:-9 36:19 50:12 67:-11 75:-10 76:10 125:-10
put piece	36:18
use a	9:12
@wire fret	0:20 1:19 5:-11 8:-13 24:44 39:-16 46:19 68:-10 72:18 79:25
need==ed	1:28 5:29 9:-9 16:18 22:20 23:-25 25:15 38:36 75:-10 83:8 106:8 125:-10
what is	1:32 2:59 3:-9 4:-13 6:-9 7:-9 8:31 9:33 11:57 12:74 14:-15 15:-39 17:28 18:-23 19:18 20:30 21:14 22:29 23:-17 24:-31 25:21 26:25 27:49 28:-37 29:19 30:13 31:18 32:47 33:16 35:20 37:-9 43:-16 48:-10 51:-10 55:-13 84:39 87:-10 94:-8 98:-9 100:-11 103:-21 104:8 108:-8 112:-8 113:-10 118:-9 119:-16 121:-11 125:56
is piece	1:26
need	0:26 1:73 4:9 6:63 7:51 8:-39 9:29 11:25 12:-22 13:9 14:-10 15:-17 17:-27 19:-14 21:-19 22:28 23:-43 24:-15 25:49 26:-24 27:15 29:-28 30:-15 33:29 36:-17 37:-21 38:80 39:-10 40:-19 41:-17 42:12 43:-18 44:-8 45:-9 47:21 48:-14 49:-8 50:-11 52:-17 53:-15 55:-16 57:22 58:-10 61:-9 64:-11 65:-24 67:-15 69:-8 74:-8 75:-16 76:-10 77:-12 83:27 84:26 87:-14 89:-12 91:-9 92:-9 93:-8 99:31 100:-27 101:-23 102:-15 103:160 105:40 106:87 107:-21 108:-17 110:-12 111:-9 112:-8 114:19 118:-10 120:21 121:19 122:10 124:-11 125:43
#n need	2:8 6:28 13:-8 27:20 83:15 103:11 114:30 125:-13
need for	4:13 5:12 6:36 7:8 9:-8 23:-24 25:18 83:8
for $	0:-24 1:66 5:25 8:-18 9:-22 11:27 12:47 20:-10 21:21 22:-16 23:47 25:77 28:-8 29:-51 31:54 35:-9 37:-13 47:-12 50:23
is number	1:11 15:11 23:39 106:10
#n good	1:33 23:-16
plan==ned	1:11 11:-11 23:-13 25:-15 26:-8 29:73 83:38 84:-14 100:14 103:-8 104:17
plan	0:-10 1:8 2:83 5:114 6:-29 10:-8 12:-11 13:-16 14:-8 16:58 17:-13 18:-8 23:-21 25:-29 26:-19 27:-8 28:-14 29:173 33:-15 35:-9 37:-9 43:-11 44:-15 55:-9 58:-8 83:127 84:-23 98:39 99:-9 100:21 101:-10 102:9 103:19 104:22 105:-11 106:-10 108:-9 109:-11 110:-23 125:-12
plan for	1:11 2:55 5:48 6:-17 11:15 16:13 23:-12 25:-9 26:-10 28:-8 29:81 83:14 84:-17 100:13 105:-8 110:-18
#n plan	1:8 29:9
#d need	1:20
want==ed	1:35 4:11 11:11 29:-10 36:10 47:10 98:24 106:16 125:-13
want	1:70 2:-25 4:25 7:13 9:31 10:13 11:15 13:12 15:-16 16:9 17:-16 18:-12 22:8 23:-15 25:-8 29:-23 30:14 32:-23 33:-28 37:12 38:56 40:-12 43:-9 45:-8 47:41 48:12 51:13 56:15 58:-9 64:-14 65:-15 69:8 78:-10 79:16 83:49 84:-12 85:-13 87:-8 89:-8 91:19 98:26 99:15 100:-14 101:-12 103:38 105:14 106:19 110:-19 113:-10 114:12 121:12 122:12 125:20
#d want	1:13
want for	4:10 19:8 20:-8
elsewher==e	1:36 3:9 48:11
elsewher	1:36 3:9 48:11
need elsewher	1:23
elsewher $	1:36 3:9 48:11
want elsewher	1:15
#n want	1:21 4:11 11:12 29:-8 47:18 83:31 91:23
@wire need	9:13 67:-12 125:47
need $	5:-18 6:54 7:14 13:27 15:-10 16:-9 17:-11 18:8 22:9 25:-12 27:9 31:11 32:12 38:18 42:17 83:31 84:-11 103:41 125:-11
anywher==e	0:-8 1:39 9:17 50:19 77:18 116:-10 125:-11
anywher	0:-8 1:39 9:17 50:19 77:18 116:-10 125:-11
want anywher	1:15
anywher $	1:15 9:17 50:19 77:18 116:-10
cost==	1:42 8:-8 9:-20 10:8 19:64 21:-20 27:-17 125:55
what doe	1:11 11:-8 12:18 13:12 17:13 20:10 23:37 25:-10 26:-15 32:-9 33:-12 35:38
cost	1:41 5:-8 8:-8 9:-20 10:17 19:64 21:-20 27:-18 55:11 125:55
cost $	1:14 8:-8 9:-20 19:55 21:-10 27:-16 125:60
it==	0:-8 1:56 2:-42 3:13 4:-25 6:-33 7:-16 9:10 12:-24 13:-17 14:-31 16:-25 17:15 18:28 20:-27 22:-22 23:-16 24:27 25:-18 26:-28 27:-21 28:-25 29:-16 31:-31 32:-11 35:-24 36:46 37:56 38:32 40:34 41:-8 42:64 43:12 44:19 45:-33 47:22 48:29 50:17 51:9 53:-14 54:-16 55:-28 57:21 58:-26 60:17 61:-21 62:-26 63:-9 65:35 66:-10 67:-28 68:-13 69:49 71:-18 72:-10 74:-15 75:-13 77:73 78:10 79:-23 80:-14 81:-25 82:-24 83:55 84:-20 85:23 86:39 87:12 88:-24 89:88 90:-19 91:32 92:30 93:28 94:70 95:33 96:14 100:37 103:-11 106:45 107:-23 108:14 109:-12 110:-31 111:-20 115:19 116:-15 117:-28 118:-10 119:32 122:-17 124:46 125:-26
it	0:-8 1:56 2:-42 3:13 4:-25 6:-33 7:-16 9:10 12:-24 13:-17 14:-31 16:-25 17:15 18:28 20:-27 22:-22 23:-16 24:27 25:-18 26:-28 27:-21 28:-25 29:-16 31:-31 32:-11 35:-24 36:46 37:56 38:32 40:34 41:-8 42:64 43:12 44:19 45:-33 47:22 48:29 50:17 51:9 53:-14 54:-16 55:-28 57:21 58:-26 60:17 61:-21 62:-26 63:-9 65:35 66:-10 67:-28 68:-13 69:49 71:-18 72:-10 74:-15 75:-13 77:73 78:10 79:-23 80:-14 81:-25 82:-24 83:55 84:-20 85:23 86:39 87:12 88:-24 89:88 90:-19 91:32 92:30 93:28 94:70 95:33 96:14 100:37 103:-11 106:45 107:-23 108:14 109:-12 110:-31 111:-20 115:19 116:-15 117:-28 118:-10 119:32 122:-17 124:46 125:-26
doe it	0:-11 1:19 3:21 8:15 9:-13 11:30 13:27 15:9 16:15 29:-20 32:21
it to	1:9 15:11 18:51 40:13 64:25 104:18 125:-10
to take	1:19 4:-9 6:14 17:11 23:24 27:9 35:12 110:31 111:-11 121:14 125:-10
will==	0:-29 2:-28 3:48 4:-8 5:33 6:31 8:-25 9:48 11:-18 13:-11 14:-14 16:-34 17:-19 18:52 19:-18 20:-9 21:-12 22:12 23:-10 24:-12 25:-10 26:-12 27:-17 28:30 29:51 32:-18 33:-20 35:-11 36:41 37:-10 38:15 41:-17 43:-32 44:-14 45:-15 47:-22 49:8 50:-20 53:17 54:10 55:-11 58:11 62:13 64:54 65:-13 66:-9 67:-8 68:10 69:-9 74:-8 75:-12 76:-10 77:-14 83:-10 86:9 87:-12 90:-11 91:-19 93:47 94:-20 95:-9 96:-8 97:-9 99:-26 101:27 102:23 106:-13 107:-18 108:23 109:-12 110:28 111:16 112:9 113:-9 115:41 116:13 117:20 118:49 119:65 122:20 124:-9 125:48
will	0:-29 2:-28 3:48 4:-8 5:33 6:31 8:-25 9:48 11:-18 13:-11 14:-14 16:-34 17:-19 18:52 19:-18 20:-9 21:-12 22:12 23:-10 24:-12 25:-10 26:-12 27:-17 28:30 29:51 32:-18 33:-20 35:-11 36:41 37:-10 38:15 41:-17 43:-32 44:-14 45:-15 47:-22 49:8 50:-20 53:17 54:10 55:-11 58:11 62:13 64:54 65:-13 66:-9 67:-8 68:10 69:-9 74:-8 75:-12 76:-10 77:-14 83:-10 86:9 87:-12 90:-11 91:-19 93:47 94:-20 95:-9 96:-8 97:-9 99:-26 101:27 102:23 106:-13 107:-18 108:23 109:-12 110:28 111:16 112:9 113:-9 115:41 116:13 117:20 118:49 119:65 122:20 124:-9 125:48
what will	1:20 10:9 29:9
will it	1:16 9:28 10:9 27:-10 30:-10
it cost	1:17 10:9
@wire cost	9:-18 19:58 21:-15
what would	0:18 10:9 11:-12 18:-11 21:29 30:28
take number	1:14
if==	0:58 1:32 2:16 3:11 4:-8 5:48 6:-9 8:-8 11:-8 12:-8 13:-11 16:93 17:-23 18:9 22:-14 24:-9 29:-9 30:61 33:-16 35:-8 36:-22 37:-11 41:-12 42:30 44:-16 45:-11 51:16 65:-8 72:-8 74:-9 77:-9 89:-21 101:-12 102:-8 110:-8 113:17 125:133
took==	2:-10 3:-10 15:45 16:-10 17:-10 36:31 37:-22 39:-10 40:-10 43:10 45:-8 48:14 50:23 70:-10 71:21 75:-15 81:-19 82:129 87:36 94:18 96:-10 97:56 116:-10 125:-16
if	0:58 1:32 2:16 3:11 4:-8 5:48 6:-9 8:-8 11:-8 12:-8 13:-11 16:93 17:-23 18:9 22:-14 24:-9 29:-9 30:61 33:-16 35:-8 36:-22 37:-11 41:-12 42:30 44:-16 45:-11 51:16 65:-8 72:-8 74:-9 77:-9 89:-21 101:-12 102:-8 110:-8 113:17 125:133
if i	0:9 5:24 16:35 17:-9 30:20 44:-10 105:9 125:-8
took	2:-10 3:-10 15:45 16:-10 17:-10 36:31 37:-22 39:-10 40:-10 43:10 45:-8 48:14 50:23 70:-10 71:21 75:-15 81:-19 82:129 87:36 94:18 96:-10 97:56 116:-10 125:-16
i took	2:-8 72:14 81:-15 82:37 87:25 97:15
took #n	75:-10 81:-16 82:86 97:9
cost to	1:9
to use	16:12 86:9
would it	0:17 1:11 125:-10
i have	1:59 2:-16 4:-12 5:23 6:-9 8:-12 9:10 10:19 12:10 17:-8 19:10 26:50 29:25 31:-9 33:-14 35:-12 38:-9 42:11 44:-8 66:-8 70:15 72:17 75:-13 94:11 97:-11 98:14 99:21 100:15 105:20 119:10
have the	8:-8 10:31 14:-15 19:12 26:50 29:-11 31:13 38:19 47:24 86:11 125:-13
have #d	1:29 66:27
may i	11:12 12:-11 16:11 19:15 26:9 27:-8 30:35 35:20 47:-11
have #n	1:21 66:27 99:25 100:10 125:30
we have	0:25 3:-10 4:14 5:-26 6:18 7:10 8:57 9:-19 10:24 11:18 12:25 14:-10 17:-8 18:-11 21:14 22:13 23:-15 25:14 27:-12 28:-8 29:21 30:-28 31:-18 32:15 33:-17 38:-15 39:-8 40:-8 50:-17 51:19 63:16 66:59 69:13 70:-13 71:25 81:-8 82:10 85:9 99:53 101:8 104:-8 105:18 122:8 125:-34
who==	0:-10 1:19 2:-10 4:-12 5:-17 6:-11 8:-23 9:-31 11:-22 13:-37 14:146 15:162 16:-15 17:-21 18:-11 20:-10 21:-9 22:-12 23:68 24:-11 25:63 26:69 27:-11 28:105 29:46 32:98 33:142 35:-17 36:-11 38:-16 39:-9 40:-12 43:-20 44:-15 47:-11 48:-12 50:-8 52:-8 53:-10 55:-10 57:-8 58:14 62:12 63:15 64:-16 77:-8 87:-9 91:-8 95:-9 99:-14 101:-12 102:-10 103:-15 105:-13 106:-10 107:-19 108:-12 110:-9 111:-11 113:-13 114:-9 117:-8 118:-8 119:-8 125:35
need==s	0:-8 1:32 4:-12 8:-12 10:8 11:25 16:-10 21:-8 22:12 27:-10 33:-16 37:8 38:19 42:15 44:-10 47:31 50:-9 65:-8 67:-13 83:26 84:16 99:34 100:-11 101:-10 102:-8 103:162 106:-13 113:8 121:26 125:30
)~",
R"~(who	0:-10 1:19 2:-10 4:-12 5:-17 6:-11 8:-23 9:-31 11:-22 13:-37 14:146 15:162 16:-15 17:-21 18:-11 20:-10 21:-9 22:-12 23:68 24:-11 25:63 26:69 27:-11 28:105 29:46 32:98 33:142 35:-17 36:-11 38:-16 39:-9 40:-12 43:-20 44:-15 47:-11 48:-12 50:-8 52:-8 53:-10 55:-10 57:-8 58:14 62:12 63:15 64:-16 77:-8 87:-9 91:-8 95:-9 99:-14 101:-12 102:-10 103:-15 105:-13 106:-10 107:-19 108:-12 110:-9 111:-11 113:-13 114:-9 117:-8 118:-8 119:-8 125:35
^ who	1:26 2:-9 4:-10 5:-8 6:-9 8:-20 9:-27 11:-17 13:-31 14:88 15:92 16:-13 17:-16 18:-8 21:-8 22:-10 23:64 24:-10 25:53 26:55 27:-8 28:81 29:53 31:8 32:110 33:122 35:-11 36:-8 38:-14 39:-8 40:-10 43:-18 44:-14 48:-10 64:-8 65:-10 99:-13 101:-10 103:-11 105:-10 107:-17 108:-10 113:-11 114:-8 125:53
who need	1:32
need #d	0:17 1:18 38:8
want==s	1:25 2:-10 5:-8 26:16 30:20 33:-10 35:8 36:-15 37:16 38:56 47:34 56:14 65:-10 69:15 81:9 83:42 85:-10 103:29 110:-13 121:14
who want	1:18 26:20
want #d	1:23 38:18
which job	0:-9 1:23 9:23 11:12 12:22 14:-8 23:9 29:66
job want	1:21
job need	1:8 11:25
want number	1:16 38:10
anyon==e	8:16 13:-33 14:9 15:62 17:-9 25:23 29:-8 33:46 36:-11 60:19 64:-9 65:90 107:-12 125:-21
need==	0:36 1:13 3:8 4:22 5:-24 6:66 7:56 8:-24 9:44 10:-11 12:-14 13:16 15:-15 17:-18 19:-8 20:17 21:-11 23:-13 24:-10 25:31 26:-11 27:26 29:-31 30:-8 33:46 36:-13 37:-28 38:26 40:-9 41:-11 43:-10 47:-9 48:-8 49:-8 52:-16 53:-12 55:-9 57:27 64:-8 65:-14 76:-8 84:14 87:-8 100:-16 101:-12 103:-10 104:13 105:37 106:87 107:-14 108:-13 110:-10 113:-8 114:24 119:10 120:24 122:13 124:-8 125:25
^ doe	1:39 3:27 9:16 15:22 16:-10 17:26 18:32 20:14 21:47 22:40 25:24 28:35 29:-12 32:41 35:-14 38:-10 89:-44 91:-8 111:-8 121:-13 125:44
anyon	8:16 13:-33 14:9 15:62 17:-9 25:23 29:-8 33:46 36:-11 60:19 64:-9 65:90 107:-12 125:-21
doe anyon	1:23
anyon need	1:16
need the	4:25 6:-11 16:13 33:61 38:13 41:-9 47:11 57:8 83:-12 103:55 105:8 106:27 107:-9 125:-17
anybody==	1:43 13:-14 14:-13 15:89 17:-16 20:-9 21:-11 23:35 26:11 28:71 29:-8 33:23 37:-10 40:-8 60:19 65:14 84:-9 125:-16
want==	1:11 2:-14 4:16 5:11 7:14 9:35 10:15 13:20 15:-11 16:14 17:-9 22:12 26:-9 27:-12 29:-8 32:-18 33:-17 35:-9 51:17 64:-12 79:17 83:8 84:-8 91:22 99:19 100:-9 103:10 105:17 114:16 122:19 125:26
anybody	1:43 13:-14 14:-13 15:89 17:-16 20:-9 21:-11 23:35 26:11 28:71 29:-8 33:23 37:-10 40:-8 60:19 65:14 84:-9 125:-16
doe anybody	1:19 15:32
anybody want	1:8
anybody need	1:11
doe any	1:9 22:21
any job	12:10 22:11
need #n	1:8 99:15 120:27 121:21
need number	38:15
^ we	0:-10 1:-11 2:-16 4:-8 5:-15 6:-16 7:12 8:-25 9:-11 10:-23 11:-27 12:-11 13:-19 16:-20 17:-11 18:-9 19:-11 21:-8 22:-19 23:-17 24:-8 25:-27 26:-17 28:-34 29:-22 30:-21 31:-35 32:-21 33:-8 35:-9 36:-8 38:18 39:-10 40:46 42:-9 43:12 44:13 45:-12 47:23 48:24 49:10 50:-14 52:36 53:78 54:32 55:-9 57:15 61:-9 63:25 65:-11 66:48 67:-21 68:-10 69:-9 70:-13 71:29 72:-8 77:27 81:-19 82:12 85:17 86:29 88:-14 89:-14 91:-9 93:-9 95:8 97:-13 98:18 99:33 100:40 102:25 103:18 104:14 105:38 106:13 107:28 108:63 109:-15 110:-8 111:-13 113:-8 114:-14 116:20 118:-9 119:-56 120:61 121:-19 122:85 125:61
it go	1:21 3:11 33:14 38:27 39:-12 84:9 125:20
@wire wher	51:-16 125:38
got==	2:-9 3:-15 4:-31 5:-11 6:-9 8:36 10:-8 11:33 12:56 14:40 15:13 16:-14 17:-8 18:-9 19:-16 20:-10 21:-20 22:22 24:-10 25:21 26:48 27:-36 28:-18 29:-18 30:-13 31:15 32:-10 33:-9 36:11 37:-9 38:-11 40:-8 42:-8 44:69 45:-12 50:80 55:-10 58:-9 61:12 66:-21 67:-11 68:-17 69:10 70:35 72:-17 75:-19 76:21 77:18 79:-9 81:-14 85:10 91:-13 92:-8 94:47 98:22 99:27 101:-10 102:33 104:-14 106:-8 111:-8 116:-19 117:67 118:8 119:-11 120:-8
here==	0:-13 1:14 2:-13 5:-10 8:10 9:-20 10:-11 11:-12 12:-9 13:-9 14:66 15:-16 18:-9 20:-8 21:-8 22:-11 23:-11 25:-19 26:-15 28:41 29:-39 30:-8 31:20 32:-17 33:13 35:48 39:16 49:-8 50:34 51:-8 52:12 53:31 58:50 60:16 61:-15 62:46 63:40 64:40 65:-16 66:-16 69:-8 98:-8 99:-11 100:19 101:-15 105:-9 106:-8 107:33 109:-13 110:20 111:24 112:-11 115:9 117:91 118:14 119:-17 120:8 125:-37
^ i	0:-36 2:-35 3:-23 5:-41 6:-15 7:13 8:-12 11:-26 12:-9 13:-24 14:-13 16:-48 17:-65 18:-32 20:21 21:-8 22:-25 26:-39 27:-16 28:-14 29:-23 30:-35 31:-13 32:-37 33:15 36:39 38:-13 39:-15 40:43 42:9 43:21 44:12 47:15 48:-15 53:-18 54:-12 57:-10 58:-8 64:59 65:41 66:12 67:24 69:-16 71:-8 73:14 77:22 78:27 79:9 81:21 82:-18 84:-8 87:9 89:13 91:-26 92:-14 93:-12 95:20 97:14 98:13 99:12 100:18 103:-13 104:-11 105:44 106:51 107:62 108:65 110:125 111:98 112:-11 113:-14 115:21 116:11 117:-9 118:-10 119:20 124:-13 125:36
got	2:-9 3:-15 4:-31 5:-11 6:-9 8:36 10:-8 11:33 12:56 14:40 15:13 16:-14 17:-8 18:-9 19:-16 20:-10 21:-20 22:22 24:-10 25:21 26:48 27:-36 28:-18 29:-18 30:-13 31:15 32:-10 33:-9 36:11 37:-9 38:-11 40:-8 42:-8 44:69 45:-12 50:80 55:-10 58:-9 61:12 66:-21 67:-11 68:-17 69:10 70:35 72:-17 75:-19 76:21 77:18 79:-9 81:-14 85:10 91:-13 92:-8 94:47 98:22 99:27 101:-10 102:33 104:-14 106:-8 111:-8 116:-19 117:67 118:8 119:-11 120:-8
i got	0:-8 26:8 70:30
got #n	0:-10 41:-15 50:25 69:17 70:11 76:25 98:30 99:27 116:-8 125:-12
here	0:-13 1:14 2:-13 5:-10 8:10 9:-20 10:-11 11:-12 12:-9 13:-9 14:66 15:-16 18:-9 20:-8 21:-8 22:-11 23:-11 25:-19 26:-15 28:41 29:-39 30:-8 31:20 32:-17 33:13 35:48 39:16 49:-8 50:34 51:-8 52:12 53:31 58:50 60:16 61:-15 62:46 63:40 64:40 65:-16 66:-16 69:-8 98:-8 99:-11 100:19 101:-15 105:-9 106:-8 107:33 109:-13 110:20 111:24 112:-11 115:9 117:91 118:14 119:-17 120:8 125:-37
have got	49:10 72:-11 99:44 125:24
got a	26:15 39:9 47:9 49:10 50:23 59:12 67:-19 75:-8 87:9 95:11 98:-8 117:-9 118:15
@wire here	1:13 39:14 125:24
we got	0:12 4:-16 8:24 9:21 11:45 12:16 13:-11 14:24 19:-12 21:-14 22:29 27:-26 31:27 50:38 67:-18 116:-8 117:19
have a	6:21 12:-11 14:12 26:-12 28:-13 29:40 68:8 74:17 85:10 90:11 98:22 100:19 110:8
should it	3:22
^ got	1:10 39:-8 44:9 50:61 66:-9 70:19 75:-9 102:19 116:-8 117:37 118:12
got #d	41:16 50:27
shift==	2:216 4:-9 13:-10 47:22 80:-11 82:-11 97:8 125:-10
slot==s	0:-57 1:-33 2:95 3:-43 4:139 5:-16 6:-18 11:-12 13:83 15:-15 16:14 17:-22 18:114 23:-10 24:-9 27:30 28:-8 29:-20 30:30 33:-31 35:-14 36:-70 37:-25 38:-8 41:-45 42:-55 43:76 44:20 45:-41 46:-8 47:-15 48:-20 50:-8 64:-25 65:-11 70:128 71:89 73:-12 74:117 75:14 76:-30 77:-18 78:-42 80:-16 81:-28 82:91 83:-8 87:-11 89:-29 91:36 92:-22 93:-27 95:9 97:20 99:-8 103:17 104:20 105:-8 106:-9 107:61 108:36 113:-14 114:-34 125:-19
shift	2:198 4:-10 13:-11 41:-22 44:-12 45:-11 47:17 70:-8 75:175 80:-11 82:-14 89:-14 91:-9 92:-9 95:-12 125:-15
^ shift	2:138 13:-9 41:-18 45:-8 47:22 75:100 89:-8 95:-9
shift job	2:52 47:23 75:18
tin ~	2:16
open==	1:15 2:30 4:-27 5:-16 6:28 8:-30 9:23 10:-22 11:-27 12:112 13:73 14:19 16:-9 17:-14 19:-9 20:-8 22:-8 23:-13 24:-8 25:-21 26:-11 27:-15 28:102 29:-40 30:-19 31:34 32:-15 33:-9 35:-14 41:-12 43:-9 45:-8 47:-11 52:80 53:62 54:139 58:-9 62:-8 63:-10 64:-9 65:21 71:-9 84:-8 89:-9 101:-14 102:-8 105:-17 108:-8 109:31 110:-17 111:-25 112:91 115:-8 116:-8 117:-10 118:-14 119:8 125:15
length==s	0:-12 2:34 4:133 5:16 8:41 22:-25 39:-16 41:-20 44:-10 55:29 71:-17 79:19 80:91 81:-83 82:-18 89:-8 93:-8 120:8
open	1:15 2:18 4:-28 5:12 6:28 8:-32 9:22 10:-22 11:-31 12:111 13:72 14:19 16:-10 17:-15 18:-8 19:-10 21:-8 22:-9 23:-13 24:-9 25:-22 26:-13 27:-16 28:143 29:-47 30:-20 31:33 32:-15 33:-11 35:-14 41:-12 43:-9 45:-9 47:-13 52:94 53:81 54:191 55:-8 58:-9 62:-9 63:-10 64:-10 65:11 71:-13 75:-8 83:-8 84:-9 89:-12 101:-16 102:-8 105:-23 106:-8 108:-8 109:27 110:-19 111:-31 112:88 115:-16 116:-9 117:-11 118:-17 119:8 125:13
open ~	2:29 4:-12 41:-10
mm slot	2:10 41:19
#n tin	2:12
@job open	2:18 4:-8
&#d#n#o@job	3:-8 78:42
shift @job	2:25
fret==s	0:-12 1:-24 2:158 3:-26 4:-8 5:37 9:-44 11:-24 12:-21 13:29 14:-17 15:-30 16:10 17:18 19:-18 21:29 23:-19 24:102 25:-18 26:-11 27:69 28:-11 29:-32 30:53 31:-10 32:-26 33:38 35:-32 36:-36 37:-28 38:-9 39:-17 40:-8 41:-52 42:-30 43:74 44:61 45:24 46:72 47:-16 48:-16 50:-11 54:-8 64:-14 65:-14 68:-19 70:98 72:95 74:-13 75:21 76:-14 77:-38 78:-46 79:44 81:-22 84:-23 85:-8 87:-13 89:-28 91:-24 93:13 94:-9 95:21 96:21 98:-11 99:-14 101:-8 103:28 104:55 105:-15 107:65 108:22 113:-15 114:-22 115:24 116:-8 125:22
)~",
R"~(anew==	2:64 5:-14 36:-8 71:-36 77:-12 78:88 95:73 101:-8 102:13 115:25 125:-13
and==	0:13 1:-30 3:-47 5:-15 6:-21 7:-24 8:11 9:9 10:35 11:17 12:-13 13:21 14:31 15:-26 17:15 20:51 21:49 22:-30 23:61 24:-27 25:-8 26:-18 27:48 28:-20 29:13 30:-9 32:48 33:-14 36:-14 37:-48 38:-44 40:-14 41:-79 42:-9 44:18 45:31 47:-16 48:-8 50:-11 51:-14 52:17 54:-19 58:15 60:-10 61:10 62:34 64:-25 65:-25 66:28 69:-19 70:57 71:9 72:13 73:-26 75:63 77:-25 78:-19 79:-19 80:13 81:28 82:69 83:39 85:21 86:-33 87:-17 88:30 89:-8 90:60 91:22 92:22 95:75 96:54 97:35 98:-24 99:-22 100:-22 101:-13 102:30 103:-22 104:-10 106:-22 107:-18 108:-19 109:52 110:-31 111:-39 112:-26 113:-26 116:47 117:8 118:-13 119:-8 120:24 121:10 124:13 125:-68
shift the	2:25
anew	2:64 5:-14 36:-8 71:-36 77:-12 78:88 95:73 101:-8 102:13 115:25 125:-13
#n anew	2:16 5:-11 71:-34 78:44 115:27 125:-11
and the	0:109 1:10 2:34 16:-16 17:17 20:9 21:-9 29:16 33:-11 36:-17 39:8 47:-13 62:9 75:8 77:-8 81:-8 83:17 85:8 87:23 89:-13 90:17 98:13 99:-8 105:33 117:10 118:-12
the open	2:15 8:-8 9:39 12:26 28:19 52:17 54:-17 119:16
open slot	2:18
slot $	1:16 2:-13 3:-12 4:108 13:-31 16:-12 18:40 30:46 35:-9 36:31 43:-11 74:-21 76:19 91:57
rearrang==e	2:103 13:-12 16:-10
with==	0:-16 2:24 4:-14 5:-15 7:11 8:-35 9:-13 10:27 11:19 12:-26 13:9 14:24 15:30 16:31 17:20 18:53 19:15 21:13 22:-21 23:-29 24:28 26:-21 27:34 29:-10 30:21 31:-12 32:-29 33:15 35:14 36:-13 37:-18 38:-35 40:14 43:20 44:30 45:-12 47:-11 48:-22 50:9 51:-10 52:9 53:-16 54:-9 55:-22 56:20 57:-26 58:16 59:35 60:-20 61:-23 62:-21 63:34 64:9 65:-16 66:-15 69:-14 71:-11 73:44 74:-10 75:-49 76:-19 79:-14 81:30 82:28 84:-15 85:8 86:-11 87:-16 90:-26 91:-20 93:8 95:-24 96:48 97:36 98:-14 99:-12 103:35 106:11 107:64 108:27 111:-24 112:-9 113:51 114:11 115:-13 116:44 117:-21 118:-12 119:29 122:45 124:-8 125:-53
rearrang	2:103 13:-12 16:-10
^ rearrang	2:41
rearrang the	2:27
@job anew	2:35 78:14
with	0:-16 2:24 4:-14 5:-15 7:11 8:-35 9:-13 10:27 11:19 12:-26 13:9 14:24 15:30 16:31 17:20 18:53 19:15 21:13 22:-21 23:-29 24:28 26:-21 27:34 29:-10 30:21 31:-12 32:-29 33:15 35:14 36:-13 37:-18 38:-35 40:14 43:20 44:30 45:-12 47:-11 48:-22 50:9 51:-10 52:9 53:-16 54:-9 55:-22 56:20 57:-26 58:16 59:35 60:-20 61:-23 62:-21 63:34 64:9 65:-16 66:-15 69:-14 71:-11 73:44 74:-10 75:-49 76:-19 79:-14 81:30 82:28 84:-15 85:8 86:-11 87:-16 90:-26 91:-20 93:8 95:-24 96:48 97:36 98:-14 99:-12 103:35 106:11 107:64 108:27 111:-24 112:-9 113:51 114:11 115:-13 116:44 117:-21 118:-12 119:29 122:45 124:-8 125:-53
with the	0:-19 2:9 3:-8 4:13 5:-9 8:-21 9:16 11:-10 12:-11 13:14 16:35 17:-20 20:-12 21:26 27:10 29:-16 33:23 35:8 36:18 38:-16 40:21 41:20 43:-24 44:49 48:-8 49:9 55:-9 59:8 64:-10 67:12 72:9 73:-8 75:-18 77:25 86:-8 87:-11 93:-8 97:48 100:24 102:10 106:27 107:18 108:-13 125:-18
tin $	0:-62 1:27 2:10 3:-8 4:-10 5:-21 7:31 8:132 9:-9 12:-8 16:-11 21:-19 22:42 25:-10 27:-8 29:-8 33:32 35:-8 36:-26 38:-9 39:112 40:-11 50:-10 70:-14 72:74 75:54 78:28 79:69 81:-21 82:28 89:-22 91:-8 125:-25
tin and	2:11 83:21
the job	0:-11 2:-8 3:-11 4:9 11:-17 12:40 14:-8 15:-12 17:-9 24:15 29:27 30:-11 36:-10 37:11 38:-8 41:-13 43:26 44:-9 45:-10 65:13 72:11 74:-9 76:16 78:18 83:-19 84:27 87:-11 90:-11 93:-8 95:20 107:-10 113:49 114:37 115:20 125:-23
anew $	2:44 78:9 95:27
@job and	23:-8 29:38 41:18 43:-10 45:8 82:-20 83:8 89:11 95:24 96:15 114:15
@job with	2:13 4:38 15:11 16:17 36:11 96:8
at==	0:-18 1:-23 2:-27 3:47 4:-19 8:21 9:-25 10:22 12:39 13:8 14:54 16:-22 17:-28 18:-20 19:-20 20:-17 21:-11 22:-21 23:-31 24:-12 25:54 27:-35 28:-13 29:33 30:-19 31:-32 32:41 33:-16 35:-18 37:-38 38:-10 39:-29 40:-12 41:-41 42:38 44:-12 46:36 47:-8 48:-8 49:-11 50:-15 51:24 52:9 53:30 55:11 56:76 57:-17 58:40 59:-9 60:-10 61:29 62:-14 63:-14 64:-18 65:-21 66:23 67:21 68:12 69:12 70:-29 71:-20 72:-24 73:-14 74:-15 75:-11 76:116 77:8 78:40 79:-8 82:-44 84:24 85:-10 86:-8 89:34 91:66 93:40 94:-14 95:-19 97:-9 98:-21 99:-23 100:-29 101:-36 102:-9 103:43 105:29 106:-22 107:30 108:21 109:-9 111:47 112:-13 113:-10 114:-27 115:61 116:31 117:-8 118:-13 119:16 120:33 121:30 122:-17 124:-8
with slot	2:14 17:16 18:50 74:-18
at	0:-21 1:-30 2:-38 3:43 4:-27 5:-10 8:19 9:-27 10:20 12:38 14:53 16:-30 17:-34 18:-21 19:-21 20:-19 21:-12 22:-21 23:-36 24:-16 25:52 27:-37 28:-20 29:36 30:-21 31:-34 32:39 33:-24 35:-19 36:-14 37:-45 38:-10 39:-30 40:-15 41:-47 42:33 43:49 44:38 45:53 46:35 47:-17 48:-12 49:-11 50:-9 51:21 52:-18 53:58 54:-10 56:75 57:-18 58:38 59:-11 60:-13 61:27 62:-16 63:-17 64:-23 65:-25 66:26 67:19 68:9 69:10 70:-44 72:-32 73:-21 74:-14 75:-15 76:109 78:32 79:-9 82:-54 84:33 85:-11 86:-10 89:16 91:51 93:26 94:-16 95:18 96:34 97:29 98:-26 99:-33 100:-32 102:33 103:41 105:37 106:-27 107:48 108:57 109:-17 111:70 112:-18 113:-21 114:-34 115:63 116:19 117:41 118:-19 119:12 120:31 121:26 122:-18 124:-9 125:-12
#n at	0:-15 1:-8 3:12 4:13 13:18 16:-12 18:9 37:-10 38:9 41:-36 43:15 45:19 46:18 66:40 70:-10 75:36 76:9 77:25 82:-16 84:15 89:31 91:-12 92:-13 107:16 115:-12 125:15
at #n	4:-17 11:-26 16:-21 17:-15 26:16 28:-8 29:11 30:-9 33:-14 36:-24 37:-10 40:-8 41:-20 42:17 43:76 44:22 47:-18 48:-9 51:-11 52:-24 53:39 55:35 67:-8 68:17 69:44 70:-16 71:11 73:-13 74:-14 75:-26 76:31 77:-14 78:20 82:-17 84:35 89:31 91:48 93:37 95:21 96:34 98:-9 99:-18 101:18 102:27 105:14 106:-10 107:-24 108:25 109:20 110:-11 111:49 112:-16 113:-17 114:-13 115:33 116:-14 117:40 125:-44
mm and	2:8 39:8
measur==ing	3:9 22:14 79:22
using==	1:-8 2:19 14:-8 21:66 22:-10 25:28 35:15 36:23 82:-12 86:25
measur	0:-42 1:-11 2:37 3:-26 4:20 8:-9 16:-10 17:-8 18:-10 21:-8 22:9 33:-8 36:-23 37:-8 40:-8 41:163 42:-19 45:-10 49:-10 50:-16 68:13 70:-12 72:-12 74:23 75:17 76:30 77:-9 79:68 80:84 81:-17 82:-26 89:-20 91:-12 92:42 97:-13 98:-8 117:32 125:52
#n measur	2:22 41:19 72:-9 75:-14 80:-10 92:17
measur #n	2:11 41:23 70:-10 75:50 79:19 80:-12 82:-12 89:-13 92:25
using	1:-8 2:19 14:-8 21:66 22:-10 25:28 35:15 36:23 82:-12 86:25
using the	2:11 35:20 82:-12 86:10 125:14
being==	2:13 10:23 13:-15 14:-9 15:31 19:-11 21:23 23:25 29:-8 43:-39 47:-13 53:18 63:10 65:-10 81:9 82:-13 84:9 107:74 108:16 113:-10 114:40 117:9 120:26
being	2:13 10:23 13:-15 14:-9 15:31 19:-11 21:23 23:25 29:-8 43:-39 47:-13 53:18 63:10 65:-10 81:9 82:-13 84:9 107:74 108:16 113:-10 114:40 117:9 120:26
#n being	2:15 23:13
mm with	74:8
#r at	78:10 105:18
at #d	2:10 3:57 18:8 36:-10 41:-20 42:48 50:-11 51:32 67:13 69:-9 70:-11 75:50 76:-39 78:65 82:-13 92:-23 125:-11
&#d#n#r	41:12 44:17 78:15
in and	8:-9 20:43 21:-9 96:14
&#d#r@job	3:9 41:9 70:8 71:-9 82:18
measur #d	2:17 41:59 72:-9 75:-8 76:-16 80:20 88:-11 117:35
being #d	2:14
&#d#n@job	0:-36 1:-18 3:98 4:-16 16:-11 17:-8 36:-14 39:-10 41:96 42:51 43:-13 46:-10 70:30 74:8 76:66 77:-16 80:-11 82:-10 89:-8 91:-8 92:46 125:-14
#n with	0:20 15:24 16:35 17:-13 18:33 44:-20 45:13 73:11 74:-14 82:25 94:8 101:10 125:-11
how==	0:-25 2:68 3:-18 4:74 5:108 6:24 8:92 9:66 11:23 12:-10 13:92 14:27 15:-31 16:117 18:39 19:26 20:27 21:45 22:-14 24:82 25:50 26:-21 27:101 29:72 30:13 31:-20 32:66 33:-18 35:130 37:-8 38:-9 39:-8 40:-9 41:-23 42:-15 43:-19 44:-31 45:-14 46:-11 47:-11 48:-16 50:-11 51:-14 53:-8 55:-13 57:-10 58:-10 64:-16 65:-17 66:-19 67:-12 69:-11 71:-9 72:-9 75:-24 76:-12 77:-18 78:-9 80:-15 83:-12 84:-9 86:-10 87:-13 88:-9 89:-20 90:-9 91:-15 92:24 93:-19 94:-26 95:-11 97:-11 98:-16 99:-17 100:-16 101:-11 102:-13 103:-19 104:-32 105:-8 106:-9 107:-29 108:-19 112:-9 113:-17 114:-16 116:-10 117:-9 118:-11 119:-13 121:-13 122:-9 124:-18 125:-21
how	0:-25 2:68 3:-18 4:74 5:108 6:24 8:92 9:66 11:23 12:-10 13:92 14:27 15:-31 16:117 18:39 19:26 20:27 21:45 22:-14 24:82 25:50 26:-21 27:101 29:72 30:13 31:-20 32:66 33:-18 35:130 37:-8 38:-9 39:-8 40:-9 41:-23 42:-15 43:-19 44:-31 45:-14 46:-11 47:-11 48:-16 50:-11 51:-14 53:-8 55:-13 57:-10 58:-10 64:-16 65:-17 66:-19 67:-12 69:-11 71:-9 72:-9 75:-24 76:-12 77:-18 78:-9 80:-15 83:-12 84:-9 86:-10 87:-13 88:-9 89:-20 90:-9 91:-15 92:24 93:-19 94:-26 95:-11 97:-11 98:-16 99:-17 100:-16 101:-11 102:-13 103:-19 104:-32 105:-8 106:-9 107:-29 108:-19 112:-9 113:-17 114:-16 116:-10 117:-9 118:-11 119:-13 121:-13 122:-9 124:-18 125:-21
)~",
R"~(^ how	0:-16 1:-11 2:24 3:-11 4:51 5:48 6:32 8:33 9:48 11:34 13:19 14:31 15:-24 16:52 17:25 18:54 19:15 20:27 21:55 23:9 24:86 25:33 26:-15 27:87 29:72 30:20 32:22 33:-13 35:38 41:-19 42:-12 43:-14 44:-9 48:-10 51:-11 55:-10 64:-11 65:-11 66:-11 67:-8 75:-8 77:-9 83:-8 87:-9 89:-12 91:-11 92:18 93:-15 94:-23 97:-8 99:-13 100:-13 101:-8 102:-10 103:-17 104:-27 107:-25 108:-15 113:-13 114:-11 118:-9 119:-11 124:-9 125:-20
how can	2:39 16:26
we rearrang	2:23
rearrang job	2:45 16:-9
lay==	2:81 4:-8 5:-10 14:13 16:-8 17:29 83:20
lay	2:81 4:-8 5:-10 14:13 16:-8 17:29 83:20
i lay	14:13 17:27
lay the	17:30
how do	2:51 4:-14 5:31 6:-20 9:-10 16:47 17:-8 24:-20 27:-11 29:-8 35:82 80:-11
we shift	2:18
how should	2:22 5:58 6:-19 7:9 18:31 75:-11 125:-8
i shift	2:25 80:-10
what fret	2:37 5:-9 16:34 17:-13 27:-10 33:-9
@job can	30:-10 43:20 47:13 84:20 113:56 114:-16
shift $	2:28 75:41
move==	2:127 4:-8 11:-12 16:-15 17:-21 24:-11 33:-9 47:48 62:19 70:-9 75:-9 89:13 115:8 125:14
which fret	0:-21 1:12 2:9 5:17 12:-8 13:47 15:-11 17:46 24:21 27:-8 33:54 97:-10
move	2:127 4:-8 11:-12 16:-15 17:-21 24:-11 33:-9 47:48 61:10 62:19 64:-16 70:-9 75:-9 89:13 115:8 125:14
we move	2:10
move $	2:12
can move	2:16
i move	2:74 16:-12 17:-12
move on	2:19 47:16
move of	2:14
all==	1:-37 2:-12 3:61 4:29 5:42 6:-37 7:-12 8:50 11:8 12:12 13:29 14:38 15:-26 16:74 17:24 18:-23 19:51 20:40 22:-28 23:17 24:-45 25:9 27:-13 30:-19 33:22 34:-14 36:-24 37:-30 38:-26 39:-27 40:-35 41:-26 42:-22 43:86 44:56 45:105 47:-16 48:10 50:9 51:-19 54:-26 55:-25 57:-19 58:-17 59:-13 61:-18 62:-16 63:-12 64:-22 66:69 67:18 68:-14 69:11 71:23 73:24 74:-19 76:-12 77:-19 78:-19 79:-13 81:68 82:18 83:139 84:143 85:-12 86:-13 88:-16 89:-23 90:29 91:-31 92:-11 93:-15 94:-14 95:-18 96:-13 97:-25 98:-13 99:-10 100:-13 101:43 102:-15 104:-12 105:19 106:-23 107:-36 108:-36 109:-31 110:-21 111:41 112:47 113:-13 114:-34 115:-29 117:22 118:-15 119:-18 120:-14 121:-13 122:-17 123:21 124:-21 125:-19
right==	0:21 1:-10 2:-9 3:97 4:-21 8:24 13:-8 16:22 18:57 20:21 22:-21 23:-18 25:18 40:-8 41:-12 42:-19 43:-15 48:11 51:-22 66:-8 69:47 74:-10 77:36 78:-9 87:8 89:-8 90:10 91:-9 105:22 125:42
side==	2:-10 3:59 4:-15 13:-17 16:88 17:68 23:18 35:-10 37:23 41:-9 42:-8 45:29 48:-13 75:-8 78:-14 83:18 89:85 114:-10
all	1:-37 2:-12 3:61 4:29 5:42 6:-37 7:-12 8:50 11:8 12:12 13:29 14:38 15:-26 16:74 17:24 18:-23 19:51 20:40 22:-28 23:17 24:-45 25:9 27:-13 30:-19 33:22 34:-14 36:-24 37:-30 38:-26 39:-27 40:-35 41:-26 42:-22 43:86 44:56 45:105 47:-16 48:10 50:9 51:-19 54:-26 55:-25 57:-19 58:-17 59:-13 61:-18 62:-16 63:-12 64:-22 66:69 67:18 68:-14 69:11 71:23 73:24 74:-19 76:-12 77:-19 78:-19 79:-13 81:68 82:18 83:139 84:143 85:-12 86:-13 88:-16 89:-23 90:29 91:-31 92:-11 93:-15 94:-14 95:-18 96:-13 97:-25 98:-13 99:-10 100:-13 101:43 102:-15 104:-12 105:19 106:-23 107:-36 108:-36 109:-31 110:-21 111:41 112:47 113:-13 114:-34 115:-29 117:22 118:-15 119:-18 120:-14 121:-13 122:-17 123:21 124:-21 125:-19
^ all	1:-9 3:65 5:-22 8:-9 11:18 12:23 13:-13 14:-11 17:10 19:30 21:12 23:52 25:22 26:-11 29:-11 32:11 33:-8 35:-8 41:-10 42:-8 43:49 44:64 45:21 47:-12 53:-9 65:-8 66:-10 67:18 70:-10 71:11 73:16 78:-9 82:27 83:-15 84:54 89:-11 97:-14 112:-8 117:11 125:-29
right	0:21 1:-10 2:-9 3:97 4:-21 5:-8 8:24 13:-8 16:21 18:57 20:21 22:-21 23:-18 25:18 38:-8 40:-8 41:-12 42:-19 43:-16 48:11 51:-22 61:19 66:-8 69:47 74:-10 77:36 78:-9 87:8 89:-8 90:10 91:-9 105:22 111:-8 125:40
all right	3:104 4:-9 16:26 25:8 41:-11 42:-16 74:-8 78:-8
right job	3:26
#r length	42:11
#n one	3:15
side	2:-10 3:59 4:-15 13:-17 16:88 17:68 23:18 35:-10 37:23 41:-9 42:-8 45:29 48:-13 75:-8 78:-14 83:18 89:85 114:-10
one side	3:37 78:-11
side ~	3:37 78:-11
@job end	3:18 93:21
raw	1:25 3:45 39:26 41:-16 42:15
end raw	3:37 39:15 41:-15 80:10
raw job	3:20 42:-10
#n end	1:15 2:11 3:50 4:-11 27:8 41:-21 42:12 80:10 93:-11
raw length	3:9
dress	0:-15 1:77 2:-10 3:26 4:-16 17:-17 25:-18 27:15 33:-9 36:20 39:44 41:-23 42:53 43:82 45:-9 50:-16 55:53 69:-10 72:-18 77:-8 78:8 79:-11 88:-10 89:-8 91:-9 93:-10 103:44 104:25 107:57 108:22 125:-16
end dress	3:25 41:-13 42:32 43:23 80:8
dress job	3:19 42:12
&#n#r@job	3:10 4:-10 13:-10 17:-17 37:-12 70:60 75:9 89:31 90:9 95:19 97:10
dress $	1:31 3:-14 39:29 42:41 80:8 107:43
#d one	3:11 40:-14 81:18 82:8
&#d#n#r@job	3:8 75:-8 92:16
~ $	8:-13 9:-16 10:-11 11:-15 14:-19 19:-11 20:-11 21:-12 22:-11 23:-10 25:-30 26:-14 27:-16 28:-16 29:-29 31:-13 32:47 33:-9 35:10 39:11 40:27 48:10 49:96 53:38 55:116 56:61 57:53 58:25 61:50 62:-16 63:-13 69:30 77:30 78:-10 81:12 86:50 91:-10 98:60 99:54 100:-30 101:39 102:-16 103:-11 106:-11 108:-26 109:-10 110:21 111:-13 112:-19 118:-9 119:34 120:50 121:-42 122:58 124:-11 125:-35
alright==	3:29 41:-8
is a	0:-23 1:-8 2:22 13:-17 17:-13 25:24 26:-10 27:21 29:-12 30:-24 39:15 41:-15 42:9 53:76 55:-10 57:16 58:14 61:14 77:22 78:20 83:9 89:19 90:32 91:-11 93:-12 99:15 101:-8 102:-12 104:19 108:-12 110:-21 112:20 113:16 121:23
alright	3:29 41:-8
alright for	3:20
right for	3:14 18:49 23:-10 36:11 43:-10 124:8
enough==	0:-10 3:47 4:-8 6:48 8:-33 9:98 13:-14 17:41 18:18 23:-17 25:-12 31:-11 41:-17 68:12 74:-13 86:-15 91:27 99:35 108:16 125:32
enough	0:-10 3:47 4:-8 6:48 8:-33 9:98 13:-14 17:41 18:18 23:-17 25:-12 31:-11 41:-17 68:12 74:-13 86:-15 91:27 99:35 108:16 125:32
long enough	0:14 3:34 41:-16
enough for	3:12 6:9 18:16 74:-12
#o of	0:-8 2:-14 3:8 4:10 5:-15 8:-10 11:14 12:-18 17:-9 19:-8 20:16 21:37 26:25 27:-8 28:16 29:19 30:38 33:20 41:12 43:-14 44:-12 45:-12 47:49 53:16 54:25 70:27 71:12 76:-13 77:-10 78:21 87:-10 89:-11 90:16 91:19 93:-8 97:9 100:-8 105:11 107:-11 110:8 111:28 112:19 114:-11 115:12 118:36
&#d#n#o	0:-9 3:18 41:41 92:10
ok==	3:42 25:9 30:28 125:99
is the	1:-11 2:67 3:15 4:41 5:-9 6:24 7:-9 8:-15 9:88 10:-10 12:-32 13:98 14:18 15:21 18:53 19:46 20:22 21:45 23:8 25:41 26:-44 27:-12 28:37 29:68 30:65 31:12 32:48 33:-24 35:39 36:-11 37:-10 38:-12 40:-12 41:-15 42:-15 45:-29 47:-9 48:-18 51:-20 53:-27 60:-8 64:-15 65:-10 67:-10 74:-11 75:-11 76:12 83:-9 84:-9 85:-8 86:-18 87:-18 88:-8 91:-13 93:55 94:-52 97:-11 101:-11 102:-23 103:-13 106:-16 107:-12 108:-10 112:-15 114:-8 115:-13 118:-8 119:-15 121:-11 125:-25
ok	3:42 25:9 30:28 125:99
ok for	3:19
in all	8:-8 39:-11 50:-13 66:44 116:21
my==	0:-11 1:9 3:22 8:-12 9:-11 11:-13 12:34 13:61 14:-14 16:10 20:-12 22:-8 25:-23 26:20 27:-8 28:40 29:31 31:-8 32:-10 33:18 35:-18 38:24 41:-10 45:16 50:-10 54:-10 55:-9 58:10 64:18 66:21 70:10 81:9 83:13 85:-15 88:16 94:-25 101:-8 106:40 107:-9 110:11 111:22 115:-9 124:63 125:18
^ will	0:-13 2:-11 3:43 4:-15 9:22 18:37 28:38 29:19 30:13 110:-12 125:-22
my	0:-11 1:9 3:22 8:-12 9:-11 11:-13 12:34 13:61 14:-14 16:10 20:-12 22:-8 25:-23 26:20 27:-8 28:40 29:31 31:-8 32:-10 33:18 35:-18 38:24 41:-10 45:16 50:-10 54:-10 55:-9 58:10 64:18 66:21 70:10 81:9 83:13 85:-15 88:16 94:-25 101:-8 106:40 107:-9 110:11 111:22 115:-9 124:63 125:18
mm do	3:17
will a	3:16 125:-10
do in	3:36 5:9 36:-9 125:-10
will the	2:-17 4:-17 5:78 6:-13 8:-13 9:35 16:-8 18:52 19:-9 29:27 31:9 125:-10
can #n	0:23 35:8
mine==	3:63 11:-12 12:81 13:-27 14:-11 15:38 17:-9 25:-11 26:30 28:11 43:-10 48:-9 61:-18 62:-8 64:125 69:18 101:-15 105:64 113:-14 125:-12
mine	3:63 11:-12 12:81 13:-27 14:-11 15:38 17:-9 25:-11 26:30 28:11 43:-10 48:-9 61:-18 62:-8 64:125 69:18 101:-15 105:64 113:-14 125:-12
^ mine	3:68 12:24 26:8
mine is	3:68
is #n	0:-9 1:-12 3:-15 4:-8 13:-14 15:-12 17:42 30:33 37:-9 38:-10 40:-11 41:118 43:-13 45:-14 46:10 52:16 63:12 66:9 67:11 68:33 69:14 75:-14 76:14 77:-25 78:-19 85:33 87:-8 88:21 89:-44 90:-8 91:-12 92:34 97:-10 98:36 99:41 104:11 121:17 125:-31
mm is	3:18 68:12
is it	0:-24 1:20 3:21 4:-12 8:46 9:20 11:18 15:-19 16:36 17:30 18:9 23:25 25:18 29:9 30:9 35:17 51:-10 69:-8 77:-23 88:-12 91:-12 93:29 108:19 125:-32
measure==s	36:-10 41:47 50:11 74:-9 76:39 77:-18 78:25 80:16 88:27 92:-22 125:58
^ it	0:-9 1:-8 3:11 11:-8 17:-11 25:-11 29:-9 36:-9 44:21 45:8 50:13 54:-10 70:10 73:13 77:-16 89:75 91:92 92:32 93:21 94:55 112:-8 113:11 114:25 115:12 124:-8 125:8
)~",
R"~(measure	36:-10 41:47 50:11 74:-9 76:39 77:-18 78:25 80:16 88:27 92:-22 125:58
it measure	3:10 41:-11 78:36
measure #d	41:43 42:-11 50:11 74:-9 76:39 78:28 88:19 92:-18 125:-9
it all	83:19 84:10
it is	1:12 2:-11 3:-41 4:-9 5:27 8:-21 9:-21 11:-12 13:-19 15:-12 16:-8 17:-31 18:-16 20:-10 23:-33 25:-18 28:-10 31:-10 32:-9 33:8 36:26 37:22 39:23 40:-15 41:60 43:-23 44:16 47:-11 48:21 50:-20 51:21 52:18 55:-12 57:17 59:10 66:18 67:11 69:10 76:8 77:19 78:-12 80:-12 83:-10 85:26 87:17 89:-17 91:53 92:32 93:16 94:22 96:27 98:11 100:-8 101:23 102:9 106:-8 108:-17 114:29 115:9 117:-12 118:9 124:-30 125:37
is that	3:26 8:-17 9:-13 10:11 13:14 18:12 23:8 24:65 29:-8 31:21 53:15 112:-10
that alright	3:9
#d is	38:8 40:33
measure #n	41:25 80:17 88:8
mm that	3:12
^ #d	0:32 3:44 8:-19 18:9 39:13 40:32 41:-9 42:-22 51:-11 53:29 66:16 67:-14 68:23 81:-9 88:-8
in for	12:30 105:8 110:8
@job all	3:15 13:16 16:-8 42:-10 45:15
right $	3:30 16:25 20:23 25:8 69:14 90:8 125:30
mm for	3:47 41:27 42:-32
^ #n	0:-40 1:12 2:8 3:19 4:35 5:28 11:-11 13:52 15:-8 17:-27 18:-15 20:-8 22:-23 23:-9 24:-10 27:-15 29:-16 30:8 33:23 37:-20 39:8 40:10 41:25 42:54 43:-24 44:-28 45:12 46:-8 47:16 48:-12 49:-12 50:118 51:-16 54:-14 55:-11 64:-8 65:-10 66:-18 67:-28 68:43 70:-53 71:-22 72:23 75:-24 76:-11 77:9 78:-23 79:12 80:-20 81:30 82:44 87:-13 89:159 90:43 91:-18 93:47 95:65 97:-13 98:-11 102:-12 104:-15 106:-8 107:-14 108:-11 111:-21 112:13 113:-15 115:8 116:-11 117:32 118:-13 120:-11 121:-11 125:-34
#n all	3:9 13:38 16:-9 33:24 43:-11
#d for	0:-22 3:17 36:22 41:30 125:37
ok $	3:9 25:9 30:28 125:102
^ slot	0:20 1:-11 2:-12 3:-41 4:132 13:-24 17:-8 18:-15 33:-27 36:38 37:-18 42:52 43:59 70:-31 71:51 74:91 75:-17 76:-20 78:18 91:62 93:-8 95:-10 104:14 107:-20 108:-9 125:-16
&	0:-60 1:-61 2:-56 4:-59 6:-125 7:31 8:59 9:67 10:59 11:82 12:93 13:-88 14:202 15:-84 16:-25 17:21 18:-32 19:32 20:17 21:54 22:70 23:8 25:198 26:14 27:56 28:47 29:89 30:34 31:100 32:90 33:-41 34:41 35:138 36:45 37:71 38:-52 39:-36 40:-66 41:10 42:-28 43:-43 44:-31 45:-48 46:10 47:-41 48:-67 49:27 50:-31 51:-24 52:-20 53:24 54:-34 55:60 56:49 57:131 58:122 59:-13 60:-58 61:-65 62:-51 63:-39 64:-46 65:-44 66:-14 67:-22 68:12 70:9 71:-16 73:-12 74:-18 75:18 76:-20 77:-40 78:-24 79:17 80:-23 81:-23 82:20 83:-57 84:-75 85:-39 86:90 87:-21 88:-18 89:11 90:12 91:102 92:-15 93:-32 94:36 95:-34 96:-8 97:-25 98:35 99:14 100:144 101:45 102:35 103:143 104:40 105:15 107:-60 108:111 109:16 111:10 112:-31 113:-64 114:-11 115:-25 116:-29 117:31 118:-50 119:29 120:41 122:111 123:56 124:149 125:31
slot job	4:49 13:-13
show==	4:56 5:11 6:19 7:16 8:61 10:28 12:49 13:62 14:9 16:52 17:21 18:-8 19:9 20:13 21:13 22:-15 23:31 25:40 26:16 29:20 31:8 32:19 33:15 34:24 35:32 43:-10 48:-9 55:19 57:-12 58:-8 62:-10 83:-12 84:-16 89:-18 90:22 91:-11 100:-14 103:-11 107:-9 108:-11 109:-8 110:-14 113:-8 117:-8 122:-17 123:-19 124:-12 125:-23
show	4:54 5:11 6:19 7:15 8:60 10:28 12:41 13:62 14:23 16:51 17:20 18:-8 19:8 20:8 21:13 22:-16 23:30 25:39 26:16 29:19 30:-8 31:8 32:19 33:14 34:24 35:31 37:-8 41:11 43:-11 48:-9 50:-8 55:18 57:-12 58:-9 62:-10 67:31 83:-12 84:-16 89:-22 90:32 91:-13 100:-14 103:-11 107:-9 108:-11 109:-9 110:-14 113:-8 122:-17 123:-19 124:-12 125:-25
^ show	4:58 5:14 6:20 7:18 8:64 10:34 12:52 13:63 14:13 16:57 17:20 19:12 21:14 22:-14 23:10 25:33 26:18 29:25 31:9 32:20 33:19 34:25 35:17 43:-10 48:-9 55:-14 57:-11 62:-10 83:-8 84:-11 91:-10 100:-13 103:-10 107:-8 108:-10 109:-8 110:-13 122:-17 123:-19 124:-10 125:-22
show me	0:8 4:50 7:19 8:15 10:16 13:14 14:-12 16:44 21:34 23:21 25:-13 29:20 31:-12 33:17 35:29 110:-9 125:-8
me slot	4:54 13:-28 70:10
slot of	0:-18 2:-14 3:16 4:44 13:27 16:-8 18:51 26:11 27:-10 33:-15 37:16 41:-8 43:15 70:-10 71:-11 74:51 104:12 106:12 107:18 108:17 125:-11
me the	0:-16 2:15 4:68 5:-11 6:25 7:9 8:51 9:-11 10:32 11:-12 12:-12 13:24 14:17 17:34 20:19 21:29 23:-12 24:26 25:-11 26:23 28:-17 29:39 31:29 32:-8 33:-31 35:9 37:-8 43:-9 64:-12 84:-13 110:-9 118:-8 119:-8 125:23
list==	4:33 5:-24 6:147 7:-17 8:23 9:10 10:166 11:-18 12:69 13:-17 14:51 16:36 17:-10 18:-17 19:45 20:-21 21:-14 22:8 23:77 24:-9 26:39 27:15 28:-9 30:-13 31:-11 32:49 33:-21 34:21 35:57 38:-9 43:-19 47:-8 48:19 53:-10 55:-18 62:20 70:-12 77:-16 83:-19 84:-15 87:-11 89:-14 91:-10 98:14 99:-18 100:29 101:-11 102:-10 103:-25 104:-10 105:-11 106:-31 107:-11 108:-22 110:-8 111:-8 112:-9 114:-9 116:-10 117:-17 118:-9 119:-13 120:8 121:-11 123:-17 124:-13 125:-27
list	4:33 5:-24 6:147 7:-17 8:23 9:10 10:166 11:-18 12:69 13:-17 14:51 16:36 17:-10 18:-17 19:45 20:-21 21:-14 22:8 23:77 24:-9 26:39 27:15 28:-9 30:-13 31:-11 32:49 33:-21 34:21 35:57 38:-9 43:-19 47:-8 48:19 53:-10 55:-18 62:20 70:-12 77:-16 83:-19 84:-15 87:-11 89:-14 91:-10 98:14 99:-18 100:29 101:-11 102:-10 103:-25 104:-10 105:-11 106:-31 107:-11 108:-22 110:-8 111:-8 112:-9 114:-9 116:-10 117:-17 118:-9 119:-13 120:8 121:-11 123:-17 124:-13 125:-27
^ list	4:21 8:53 9:-16 10:-38 16:24 19:46 23:69 25:52 26:8 27:39 29:-11 31:15 32:72 34:23 35:22 55:-8 57:-8 83:-11 84:-9 100:-13 103:-9 122:-16 123:-15 125:-10
show slot	4:27
slot on	0:45 1:18 4:20 13:31 33:-12 43:21 91:-13 106:16 107:-9 108:8
tabl==e	4:90 13:-10 14:31 16:23 17:56 24:13 29:-13 43:-9 58:11 83:-11 84:-11 98:27 104:-8
tabl	4:90 13:-10 14:31 16:23 17:56 24:13 29:-13 43:-9 58:11 83:-11 84:-11 98:27 104:-8
slot tabl	0:-9 4:77
tabl of	4:42 16:26 17:10 29:-8
^ the	0:-58 1:-30 2:-34 3:-41 6:44 7:-21 8:-17 9:-36 12:-22 13:62 14:-29 15:-28 16:-36 17:-54 18:-49 19:-40 20:26 21:-22 22:-37 23:-48 25:-61 26:-39 27:-30 28:-35 29:35 30:-13 31:-15 32:26 33:23 35:-17 36:-49 38:-13 39:-20 40:30 41:40 42:19 43:21 45:76 46:-14 47:18 49:-12 50:8 51:14 52:15 53:35 54:14 55:68 57:-16 58:-24 59:18 60:13 61:-22 62:-17 64:59 66:30 67:41 68:-25 70:71 71:-21 72:-11 73:18 74:22 75:-28 76:41 77:35 78:-16 79:-23 80:20 81:-32 82:-37 83:-36 84:-17 85:24 86:-14 87:61 88:46 90:-33 92:-11 93:22 94:22 97:-20 98:14 99:55 100:-8 101:46 102:93 103:-31 104:-13 105:-32 106:43 107:-25 108:-20 109:10 110:-35 112:43 113:60 115:10 116:-20 117:80 118:79 119:44 120:-15 121:54 122:24 124:23 125:34
tabl for	4:24 17:26
how long	2:-19 4:103 5:-23 8:-19 9:40 11:65 13:-29 16:-21 17:-9 24:-9 27:116 29:-14 32:81 35:-26 93:-9
long is	4:71 9:10 13:-16 27:-8 68:13 86:10
be==	0:14 1:18 2:52 4:44 5:13 6:-15 7:22 8:-11 10:25 11:32 12:11 13:-59 14:-25 15:-14 17:-15 18:22 19:-23 20:-20 21:-16 22:18 23:-37 24:-8 25:-9 26:-13 28:36 29:38 30:27 32:22 33:-36 36:-17 37:18 38:-10 39:-12 41:-24 42:-14 44:-32 45:-27 46:-9 47:31 48:19 50:-12 51:30 52:-9 54:-11 55:44 58:11 60:11 65:15 66:-23 67:-8 68:-9 69:11 70:-10 71:-10 72:-20 75:-33 76:8 77:-9 78:-14 79:-8 81:19 82:-9 83:21 84:-21 85:-13 86:17 87:-17 89:-24 90:-21 91:20 92:-14 93:10 94:-10 95:-24 96:-9 97:-12 98:30 99:9 100:11 101:44 103:-8 104:36 105:-19 106:50 107:-15 108:-19 109:-26 111:30 112:10 113:-8 114:20 115:25 117:-25 118:27 120:8 121:-15 122:28 125:38
is slot	4:15
be	0:14 1:18 2:52 4:44 5:13 6:-15 7:22 8:-11 10:25 11:32 12:11 13:-59 14:-25 15:-14 17:-15 18:22 19:-23 20:-20 21:-16 22:18 23:-37 24:-8 25:-9 26:-13 28:36 29:38 30:27 32:22 33:-36 36:-17 37:18 38:-10 39:-12 41:-24 42:-14 44:-32 45:-27 46:-9 47:31 48:19 50:-12 51:30 52:-9 54:-11 55:44 58:11 60:11 65:15 66:-23 67:-8 68:-9 69:11 70:-10 71:-10 72:-20 75:-33 76:8 77:-9 78:-14 79:-8 81:19 82:-9 83:21 84:-21 85:-13 86:17 87:-17 89:-24 90:-21 91:20 92:-14 93:10 94:-10 95:-24 96:-9 97:-12 98:30 99:9 100:11 101:44 103:-8 104:36 105:-19 106:50 107:-15 108:-19 109:-26 111:30 112:10 113:-8 114:20 115:25 117:-25 118:27 120:8 121:-15 122:28 125:38
#n be	4:26 17:10 29:23 30:33 44:-9 73:12 95:-9 125:21
be $	4:83 16:-9 17:-10 27:-14
is fret	3:22 4:47 16:-10 17:99 27:-11 41:-21 73:19 77:-19 89:-11 125:-15
long are	4:14 27:-13
#o for	47:8
@job be	2:24 5:16 13:-9 18:24 29:69 43:-10 47:-11 61:-8 64:10 115:12
&#o@job	0:82 1:-9 2:-17 3:-15 5:-16 11:-13 13:-18 16:17 17:-19 24:-13 27:-9 29:-8 30:9 36:-12 41:-9 43:-14 44:-10 45:13 48:-9 71:16 73:21 77:61 78:31 83:-8 87:-11 89:15 90:36 93:14 95:33 96:37 97:30 107:-11 108:-10 110:-8 113:-11 114:15
)~",
R"~(fret slot	0:-12 16:10 41:-8 45:13 75:10 78:22 95:21 96:24
fret the	36:-8 42:31 45:10 89:12 91:12
#o on	0:16 5:-8 12:30 16:-8 36:-8 41:27 45:-16 47:-11 70:11 77:37 78:22 89:-8 91:9 92:25 93:18 95:29
cut==s	5:104 6:91 13:-23 14:11 43:-12 74:13
cut	0:-9 2:-9 3:-17 4:-34 5:311 6:252 7:-13 8:-22 9:-22 10:-22 11:-25 12:-37 13:10 15:-25 16:-33 17:-34 19:-15 21:-9 22:-13 23:-23 24:-10 25:-14 26:-11 27:13 29:-41 30:-17 32:-24 36:-30 37:-15 38:-11 40:-11 41:-12 42:26 43:141 44:-15 45:-20 47:-13 48:-17 49:-10 50:-13 57:8 58:-8 59:-24 60:23 61:16 64:-15 65:-14 66:-13 68:27 69:14 70:97 71:169 72:-15 73:-18 74:18 75:-23 77:-17 78:65 82:-16 83:-14 84:-27 87:-13 89:-13 90:-9 91:-19 92:-15 93:-13 95:-12 96:-9 97:-14 99:-11 100:-8 103:27 104:34 105:-12 107:51 108:17 113:-15 114:-14 115:-10
^ cut	0:-10 5:9 6:11 35:16 36:-17 43:54 57:13 59:-16 60:15 61:20 70:119 71:8 78:33 82:-9 83:-8 103:21 104:13 125:31
cut $	4:-8 5:112 6:-25 13:9 43:27 45:-8 48:-8 71:48 107:50 108:16 125:-13
only==	0:-19 1:103 2:43 3:44 4:62 5:75 6:-9 8:-29 9:-15 12:-8 13:-24 14:24 15:-13 16:19 18:-15 19:-12 20:-10 21:35 22:37 23:-12 24:-10 27:16 28:-15 29:-18 31:-13 32:-10 36:-13 38:-16 40:-13 41:-14 42:36 43:-23 44:47 45:46 47:-8 50:-14 52:-27 53:-8 54:61 55:-16 58:43 60:-11 61:21 62:-11 63:-10 64:-13 65:-10 66:44 69:23 70:-8 71:-8 72:-11 73:8 75:-19 77:-17 78:-10 79:-8 81:-10 87:-15 89:-23 90:-8 92:-8 93:-10 95:-8 98:26 101:-10 104:-9 105:-18 107:-25 108:-13 109:-14 110:-21 111:81 113:-10 114:28 116:-9 118:20 119:-8 120:-20 121:22 125:-34
only	0:-19 1:103 2:43 3:44 4:62 5:75 6:-9 8:-29 9:-15 12:-8 13:-24 14:24 15:-13 16:19 18:-15 19:-12 20:-10 21:35 22:37 23:-12 24:-10 27:16 28:-15 29:-18 31:-13 32:-10 36:-13 38:-16 40:-13 41:-14 42:36 43:-23 44:47 45:46 47:-8 50:-14 52:-27 53:-8 54:61 55:-16 58:43 60:-11 61:21 62:-11 63:-10 64:-13 65:-10 66:44 69:23 70:-8 71:-8 72:-11 73:8 75:-19 77:-17 78:-10 79:-8 81:-10 87:-15 89:-23 90:-8 92:-8 93:-10 95:-8 98:26 101:-10 104:-9 105:-18 107:-25 108:-13 109:-14 110:-21 111:81 113:-10 114:28 116:-9 118:20 119:-8 120:-20 121:22 125:-34
tin only	5:73 21:-20
only ~	5:11 54:10 111:-10
&#n@job@wire	0:-23 1:36 18:43 23:12 70:-25 71:37 72:18
stick==s	0:-15 1:-20 5:38 6:46 8:91 9:-40 10:-8 16:-13 17:-8 18:-15 19:-14 20:-20 22:-9 23:-8 27:-8 31:31 33:-8 38:-10 39:-34 40:-8 46:-12 49:34 50:74 51:-16 66:75 67:69 68:-43 69:14 71:16 79:-22 81:-10 82:-25 85:-10 88:-19 116:43 117:59 118:-25 119:-16 120:47 121:46 125:47
cut @wire	5:13 18:19
@wire stick	8:53 9:-8 19:-9 40:14 50:45 66:-26 67:56 68:-15 116:45 117:-24
stick #n	49:20 50:-15 66:41 68:-12 70:-33 71:90 75:-10 116:-15
cut the	2:-12 5:35 6:13 16:-8 33:15 42:28 43:-9 59:-14 60:17 70:13 71:35 78:-8
@wire tin	5:8
cut==	0:-14 3:-13 4:-36 5:99 6:136 8:-13 9:-15 10:-14 11:-17 12:-29 13:59 15:-13 16:-23 17:-20 18:-12 19:-9 20:11 22:-9 23:-14 27:-12 29:-15 30:-8 32:-8 33:11 35:10 36:-28 37:-10 41:-10 42:32 43:111 44:-10 45:-16 47:-9 48:-8 50:-10 57:13 59:-23 60:25 61:19 66:-11 68:28 69:19 70:102 71:175 72:-10 73:-14 75:-22 77:-15 78:70 82:-15 84:-20 87:-9 89:-10 91:-15 92:-9 95:-10 96:-8 97:-11 103:10 108:-12 113:-8 114:-8 125:-16
plan==	0:-10 2:84 5:116 6:-28 12:-9 13:-14 14:-8 16:61 17:-9 18:-8 23:-8 25:-14 26:-11 28:-10 29:99 33:-13 35:-9 37:-8 43:-10 44:-14 58:-8 83:89 84:-9 98:41 100:8 102:10 103:27 105:-10 108:-8 109:-11 110:-22 125:-9
from==	1:-15 2:-45 3:-20 4:24 5:73 6:21 7:-18 8:-26 9:-41 10:16 12:16 14:-29 15:-19 16:-43 17:-50 18:-24 19:47 20:28 22:-33 23:-19 24:10 25:-39 26:-23 27:-21 28:34 29:17 30:-29 31:-45 32:38 35:-23 36:26 37:-22 38:-8 40:-13 41:-18 42:-31 43:-32 44:-45 45:19 47:-10 48:14 50:63 51:41 52:32 53:25 54:-21 55:30 56:-18 57:43 58:16 59:-32 60:58 61:18 62:33 63:-25 64:-12 65:50 66:-20 67:-8 68:-11 69:-17 70:108 71:38 72:61 73:55 74:-24 75:25 76:-13 78:32 79:-16 81:-18 83:-18 84:-11 85:-23 86:30 87:52 88:-11 89:26 90:-15 92:-42 93:-26 94:-12 95:-20 96:-18 97:-20 98:-15 100:18 101:42 102:-21 103:8 105:22 106:-25 107:-30 108:-23 109:21 110:30 111:26 112:-37 113:-20 114:-28 115:-20 116:20 117:25 118:-22 120:85 121:30 122:64 124:-9 125:11
show the	4:-13 8:23 10:10 12:31 17:17 21:-13 22:-9 25:47 26:19 28:9 32:20 34:11 122:-11 123:-8
the cut	2:-9 4:-8 5:59 6:95 10:-8 13:-21 14:10 27:15 35:8 43:17 70:-9 83:15 103:12 107:-11 125:-9
cut plan	5:115 6:-24 29:-15 83:18
from	1:-16 2:-45 3:-21 4:22 5:73 6:21 7:-18 8:-26 9:-41 10:16 12:16 14:-29 15:-20 16:-43 17:-50 18:-24 19:47 20:27 22:-33 23:-19 24:10 25:-39 26:-23 27:-21 28:29 29:17 30:-29 31:-45 32:38 35:-23 36:25 37:-23 38:-9 40:-14 41:-18 42:-31 43:-32 44:-46 45:18 47:-11 48:14 50:62 51:40 52:41 53:24 54:19 55:30 56:-19 57:42 58:16 59:-32 60:58 61:17 62:33 63:-25 64:-12 65:49 66:-20 67:-8 68:-11 69:-18 70:102 71:36 72:61 73:55 74:-24 75:19 76:-13 78:32 79:-16 81:-18 83:-18 84:-11 85:-23 86:29 87:52 88:-11 89:18 90:-15 92:-42 93:-26 94:-13 95:-20 96:-18 97:-20 98:-16 100:18 101:35 102:-21 103:8 105:41 106:-26 107:-31 108:-23 109:40 110:28 111:15 112:-37 113:-20 114:-28 115:-20 116:20 117:24 118:-23 120:84 121:30 122:64 124:-9 125:9
@wire from	0:-10 6:-8 9:-9 19:21 20:9 32:44 33:-8 36:23 39:21 50:33 51:10 66:-10 72:16 116:-14
from #n	11:24 16:-8 20:15 21:9 28:-10 30:-8 47:-10 51:20 53:32 54:48 65:-15 70:39 71:-24 72:-12 75:-8 82:-17 87:19 99:-11 105:43 109:33 110:35 111:34 116:-8 125:-18
plan $	2:14 11:-13 29:44 83:12 98:44
plan of	5:20 16:20
cut==ting	5:110 6:27 13:-23 17:-9 18:12 27:29 29:-23 30:-8 32:-14 35:-9 43:27 83:-8 104:21 107:58 108:27 125:28
for @wire	0:-26 1:-17 3:-10 6:71 7:10 8:18 9:-15 18:9 19:20 20:50 21:-9 22:-13 23:-23 32:16 37:-9 39:-8 50:-8 51:28 68:17 69:10 74:-12 116:-11 119:15 125:34
from stick	5:9 70:-29 71:61 72:-8 75:-9 114:-8
stick of	1:-12 5:28 6:-8 8:-10 9:-23 19:-9 31:39 39:-14 50:72 51:-10 66:33 67:12 69:-18 79:-11 88:-11 116:35 125:45
of #d	7:16 18:14 33:22 41:16 42:-16 49:8 66:-13 68:9 70:23 71:-15 72:8 76:18 78:-12 81:22 82:30 88:-11 92:8 117:9 120:12 121:-8 125:-20
plan from	29:20
^ a	0:-17 3:-12 5:-8 6:25 14:61 16:8 20:9 22:-11 27:-14 30:11 35:-11 41:-23 42:20 50:24 55:31 67:-31 68:52 69:-9 70:-10 72:-8 76:10 78:17 79:36 82:19 89:10 92:10 97:-8 99:16 100:-8 103:13 104:22 125:-11
a cut	6:13 55:12
from #d	41:-10 70:31 87:41
@job from	6:13 36:29 41:-10 44:-14 48:8 65:28 70:53 78:-8 87:8 89:10
#n from	0:-22 1:36 2:-10 4:-15 5:-28 6:24 17:-8 42:-15 44:-17 45:41 48:18 50:8 52:9 65:55 70:71 71:66 72:-9 75:19 77:10 78:-19 89:13 92:-15 93:-9 96:-11 125:-14
what do	0:-12 5:12 6:12 8:42 9:47 10:16 11:47 12:-17 16:-21 17:95 18:21 22:-14 23:21 25:27 27:31 29:-31 30:-20 31:-10 32:-26 33:-23 35:-35 125:-12
we cut	5:18 6:26 71:11 78:12
must==	2:13 5:-24 6:49 9:21 10:17 11:42 13:-14 16:-11 18:18 23:-14 29:14 33:-13 44:-9 47:32 51:18 57:15 60:10 84:10 98:18 100:-12 114:27 120:17 122:11 125:-8
must	2:13 5:-24 6:49 9:21 10:17 11:42 13:-14 16:-11 18:18 23:-14 29:14 33:-13 44:-9 47:32 51:18 57:15 60:10 84:10 98:18 100:-12 114:27 120:17 122:11 125:-8
what must	6:28 10:22 17:9 18:23 29:-10 33:-10
must we	6:18 18:17
what should	0:-20 4:61 6:15 7:30 8:-9 9:-15 10:35 16:-8 17:26 18:15 22:18 29:44 31:-12 33:-24 125:-12
i cut	0:23 2:9 5:51 6:38 16:-12 17:-9 29:-8 35:-16 42:12 68:20 71:9
must i	5:-15 6:35 9:12 17:10 32:11
of #n	1:-12 2:-17 4:-11 5:22 11:21 20:-10 22:38 30:14 33:-12 36:-19 38:10 40:-10 44:-11 47:42 55:24 67:10 71:-17 74:17 75:16 79:31 81:-9 87:-8 89:-9 90:23 91:-10 97:-8 98:-8 99:8 110:30 113:64 116:-12 120:65 121:21 125:-12
fret for	0:14 2:-29 4:-16 5:23 6:-10 13:-8 36:-12 39:8 41:27 43:39 70:-22 71:-11 72:-19 77:17 78:36 82:41 84:-8 91:-10 107:45
cut job	6:22
what if	0:38 1:32 5:24 11:-8 16:94 22:-12 27:-9 29:-9 33:-20 44:-13 101:-10 125:20
i only	5:13 44:8
only use	5:18
use only	5:14
only the	5:10 22:61
if we	2:13 5:36 30:8
we only	44:8
piece==s	0:22 1:-19 2:12 3:-8 4:-11 5:37 6:42 8:102 9:-24 10:-11 11:-8 13:-16 16:-11 17:-10 18:-11 19:-31 20:-14 22:103 23:64 25:-9 27:-15 29:-10 31:-9 32:-9 33:-13 36:-8 38:-10 39:10 40:-24 50:-15 66:-9 70:-34 72:-8 75:-41 79:65 81:117 82:104 83:44 84:38 95:-12 96:-8 97:-15 125:-16
what piece	5:17 22:29
)~",
R"~(piece should	5:10
piece can	5:19
fret could	1:13 5:11
which piece	0:-15 5:41 6:20 22:58
from the	0:27 1:40 3:-8 4:57 5:31 10:-11 11:-11 12:-12 13:-11 14:-12 16:-19 17:-8 18:-9 19:-9 20:11 21:-19 22:-13 25:-15 27:-8 28:15 32:-26 33:-20 36:31 38:15 39:-11 41:12 43:-9 45:-8 47:-8 48:39 50:19 53:-11 55:-13 57:49 62:37 63:-10 70:21 72:33 75:12 77:11 78:-19 82:-10 83:-10 86:31 89:24 92:-9 93:-8 100:49 103:-11 104:17 106:-10 110:28 117:-9 118:-17 119:-8 121:-10 122:46 125:-29
only $	1:83 2:12 5:47 8:-8 21:45 54:10 61:20 107:-8 109:-8 111:8 125:-9
alon==e	2:-9 5:89 13:-10 50:14 97:11
alon	2:-9 5:89 13:-10 50:14 97:11
tin alon	5:50 13:-8
alon $	5:47 97:11
everyth==ing	4:-9 5:35 6:-18 8:56 9:15 10:-10 11:25 12:-13 13:-9 14:-11 16:-9 23:-8 25:-10 26:-11 29:32 33:83 37:-13 43:16 45:8 47:-9 48:-8 52:-14 65:-8 73:15 83:106 84:84 108:-8 123:10 124:-9 125:-10
everyth	4:-9 5:35 6:-18 8:56 9:15 10:-10 11:25 12:-13 13:-9 14:-11 16:-9 23:-8 25:-10 26:-11 29:32 33:83 37:-13 43:16 45:8 47:-9 48:-8 52:-14 65:-8 73:15 83:106 84:84 108:-8 123:10 124:-9 125:-10
for everyth	5:23 6:-11 9:21
everyth $	5:42 6:-12 17:20 33:27 35:-10
^ me	9:10 29:17
job==s	5:23 6:-18 8:-19 9:78 11:40 12:256 13:-15 14:51 19:-11 25:-20 26:-10 27:-11 28:-10 29:30 31:-8 32:-10 33:-17 35:-15 61:-18 62:-11 63:-10 64:-18 83:-11 84:10 125:-9
for all	1:-9 5:67 8:18 20:-13 23:-12 26:22 35:-8 69:21 93:11
all job	5:26 12:-18
job $	1:-13 5:20 11:-8 12:104 13:70 14:-15 15:11 16:-9 17:-13 23:47 29:-33 33:-20 35:23 43:-12 46:37 48:67 58:-9 64:10 65:32 91:-8 95:48 103:17 106:-8 107:-8 108:-16 125:-45
of everyth	11:8 35:25
print==	4:14 5:22 6:34 7:39 48:19 107:-15 108:15
print	4:14 5:21 6:36 7:39 48:19 107:-15 108:15
^ print	4:15 5:25 6:17 7:30
print the	5:8 6:15 7:12
cut list	6:128 10:-10 35:30 70:-9
list for	6:61 9:38 10:62 19:-8 23:-19 35:-12
print me	4:16 5:17
me cut	5:15
list of	4:20 6:38 8:-11 10:20 12:48 14:42 25:-29 28:-9 31:-20 32:-9 35:37 57:11 58:10 62:26 86:13 98:13 100:20 120:13 122:13 125:-8
of all	5:12 8:65 9:-24 12:28 19:-13 21:-10 27:-8 28:36 29:-9 32:22 33:-8 69:13 83:-11 84:31
all of	2:8 3:-9 4:-8 6:-8 8:-13 9:29 13:-9 14:-12 16:42 19:-10 20:-8 23:-13 33:-8 43:29 44:26 45:-8 52:23 53:14 65:-8 71:11 73:17 81:21 83:24 84:47 111:-10 117:18 125:16
of it	1:10 5:13 8:-9 9:51 16:-8 17:-8 19:-8 36:9 44:18 59:12 62:-10 63:12 83:28 84:8 117:15 119:8
it $	0:35 1:13 4:21 6:-9 8:-27 9:32 11:-16 13:14 14:-10 15:16 16:-20 17:24 18:-11 23:-18 24:-8 25:-9 26:-10 29:-16 30:12 32:-13 33:8 35:-9 36:-8 38:22 39:-10 40:23 41:-9 42:9 43:36 44:8 45:-18 47:-9 48:14 49:-8 51:-10 52:-12 53:13 55:10 60:18 62:-12 63:8 65:44 66:-15 69:-17 70:17 77:43 78:-14 83:49 84:-16 89:-23 90:20 91:-15 92:8 96:13 97:-11 99:-8 100:18 101:-22 102:12 106:51 107:-11 108:-17 113:-11 114:-8 115:-9 116:-11 119:10 124:32
queu==e	1:8 5:37 8:-28 9:39 12:157 14:-11 20:-8 25:-12 32:-8 35:-11 48:77 65:-11 114:53 125:-16
queu	1:8 5:37 8:-28 9:39 12:157 14:-11 20:-8 25:-12 32:-8 35:-11 48:77 65:-11 114:53 125:-16
the queu	1:8 5:17 8:-24 9:43 12:69 25:-9 48:87
queu $	5:9 8:-12 9:35 12:99 25:-10 48:44
cut everyth	5:16 35:-9
whol==e	2:19 4:-17 5:14 8:-12 11:-8 12:-9 13:-19 14:29 16:21 17:33 19:-13 20:36 21:-13 23:-8 25:-11 26:-11 27:13 28:14 29:-8 30:31 32:13 37:-9 44:28 53:13 54:9 55:20 73:-17 83:13 84:50 117:15 125:-15
whol	2:19 4:-17 5:14 8:-12 11:-8 12:-9 13:-19 14:29 16:21 17:33 19:-13 20:36 21:-13 23:-8 25:-11 26:-11 27:13 28:14 29:-8 30:31 32:13 37:-9 44:28 53:13 54:9 55:20 73:-17 83:13 84:50 117:15 125:-15
the whol	2:22 4:-13 5:17 13:-16 16:24 17:9 20:20 44:30 53:17 54:10 55:21 83:16 87:11 117:17
whol queu	5:21
cut all	5:-12 6:-11 43:63
i need	0:10 4:42 7:8 10:-13 11:10 16:12 20:23 27:10 28:13 29:-10 31:10 33:57 35:19 41:-9 83:-12 105:11
need to	2:8 4:-15 5:23 6:-9 9:57 11:18 27:16 28:-10 29:-12 35:-9 37:-22 38:-8 52:-9 53:-8 122:13 125:106
to cut	5:35 12:-20 13:54 70:-8 71:-8 107:12 125:11
cut for	5:48 13:56 43:26 104:-9 108:17
all the	2:-14 4:15 5:14 9:37 10:-9 11:-9 12:31 13:30 16:29 17:13 18:-9 19:-17 23:10 25:-8 27:16 28:29 29:-9 31:10 32:10 33:-14 35:-9 40:-23 43:9 45:-25 48:-10 55:-8 70:-13 81:41 82:37 83:45 84:20 89:-9 123:9 125:-12
next==	0:-12 1:-18 2:-19 4:-15 5:8 6:-20 7:-8 8:-12 9:-19 10:46 11:31 12:-27 13:-39 14:-12 15:-16 16:107 17:82 18:-11 19:-12 20:-12 21:-8 22:-20 23:-29 24:-13 25:41 26:31 27:47 28:63 29:72 30:40 31:29 32:-12 33:-29 35:-22 36:57 38:-8 40:-8 41:-9 43:-21 44:75 45:-17 47:-10 48:-9 50:-31 52:-17 53:30 54:9 55:-10 61:-11 62:-27 63:-16 64:-13 65:-10 66:-23 72:-16 75:-12 77:-9 81:-8 82:-8 83:-9 84:-10 85:-8 87:-12 89:-13 91:-9 92:9 94:-11 95:-10 99:-10 100:-8 101:47 102:-14 103:-8 104:-9 105:12 106:33 107:10 108:-17 109:-31 110:48 111:21 112:28 113:62 114:-12 115:40 117:9 118:21 119:-10 120:-8 121:-8 125:34
next	0:-13 1:-19 2:-19 4:-16 6:-21 7:-8 8:-13 9:-19 10:45 11:38 12:-28 13:-40 14:-13 15:-18 16:104 17:84 18:-11 19:-12 20:10 22:-21 23:-30 24:-14 25:41 26:37 27:46 28:62 29:80 30:40 31:27 32:-13 33:-14 35:-23 36:56 37:-8 38:-9 40:-8 41:-9 43:-21 44:74 45:-20 47:11 48:-10 50:-32 52:-57 53:72 54:44 55:-11 59:-8 61:-15 62:-28 63:-16 64:-16 65:-11 66:-23 72:-16 75:-13 77:-9 81:-8 82:-8 83:-9 84:-11 85:-8 87:-12 89:-13 91:-9 92:8 93:-8 94:-12 95:-10 97:-8 99:-12 100:-11 101:56 102:-16 103:-8 104:-10 105:15 106:28 107:9 108:-18 109:-54 110:33 111:37 112:26 113:61 114:-14 115:32 117:16 118:36 119:-11 120:-8 121:-9 125:16
cut next	5:22
next $	5:18 10:-13 11:-17 16:26 17:13 25:48 26:-38 29:55 72:-12 113:76 125:19
we need	6:9 7:31 8:-11 9:38 10:12 11:-13 25:25 27:10 32:-9 105:20 125:-11
fret would	0:-9 5:42
work for	5:14 12:12 63:9 109:-10 110:24
piece would	0:-8 5:26
work in	5:10 8:-10 14:58 25:-11 53:17
list job	6:13
list the	0:16 4:8 6:-11 8:11 10:-14 12:12 14:-10 22:-14 23:64 25:59 27:39 32:10 34:11 35:-10 77:-8 122:-10 123:-8
list $	6:22 10:37 12:35 14:21 48:18 100:24 122:12
draw==	6:18 7:13 10:33 36:-10 72:30
draw	6:18 7:13 10:33 36:-10 72:30
^ draw	6:18 10:33
draw the	6:8
cut from	5:-13 6:17 70:31 71:44 78:17
from @wire	5:-14 6:15
cut fret	0:-8 42:14 43:8 71:9
from $	1:-24 5:-29 6:33 9:-8 19:38 32:94 33:18 70:34 120:-16 125:-14
stick should	6:9
i open	6:16
open for	5:-9 6:40 28:18
which stick	5:42 6:27 15:-9
stick do	5:8 6:16
we open	6:23 28:84 29:-8 31:-11 54:-15 112:29
stick must	6:17
many==	2:-8 4:-11 6:37 8:32 9:36 12:12 13:10 14:58 16:17 20:-9 21:10 22:42 23:-8 24:-15 25:90 29:-17 31:-12 35:-34 58:-10 66:-10 98:21 99:14 100:-10 104:-22 125:-17
many	2:-8 4:-11 6:37 8:32 9:36 12:12 13:10 14:58 16:17 20:-9 21:10 22:42 23:-8 24:-15 25:90 29:-17 31:-12 35:-34 58:-10 66:-10 98:21 99:14 100:-10 104:-22 125:-17
how many	2:-8 4:-8 6:39 8:34 9:38 12:11 13:11 14:61 16:17 20:-9 21:11 22:-16 23:-8 24:-15 25:95 29:-17 31:-10 35:-33 66:-9 104:-22
many stick	5:-8 6:14 8:33 9:-11 32:9
do job	5:8 6:16 15:65 17:-17 30:-11 43:-8 64:14 65:-8 113:22 114:21 125:-10
#n take	4:18 5:12 6:32 27:-11 35:15 73:23 82:-10 83:12
take $	4:19 5:18 6:64 13:-8 27:49 29:-8 35:-9 82:-10 83:17
piece do	6:24
do @job	6:11 64:25 113:20 114:8
@job take	0:-11 1:31 4:12 5:30 6:17 16:20 18:13 27:-15 36:-8 73:11
stick doe	5:20 6:21 8:19 15:-8
@job need	5:-10 6:27 37:12 47:13 83:15 113:10
many piece	6:28 8:21 9:-11
piece doe	6:18
doe job	1:-9 5:41 6:20 13:24 15:61 16:-8 17:-9 33:-9 64:22 65:25 125:-23
much==	0:-8 1:13 2:-13 4:-17 6:44 8:52 10:19 11:-9 13:-42 14:-8 16:8 17:-12 18:-19 19:43 20:27 21:81 23:31 25:-13 27:17 29:44 31:20 32:-24 35:-28 42:28 55:10 125:35
much	0:-8 1:13 2:-13 4:-17 6:44 8:52 10:19 11:-9 13:-42 14:-8 16:8 17:-12 18:-19 19:43 20:27 21:81 23:31 25:-13 27:17 29:44 31:20 32:-24 35:-28 42:28 55:10 125:35
how much	2:-12 4:-16 5:-10 6:45 8:52 10:21 13:-41 14:-8 17:-11 18:-18 19:43 20:27 21:82 23:31 25:-13 27:17 29:45 31:20 32:-23 35:-26 125:39
much wire	6:26 8:24 9:-13 20:19 23:10
wire doe	5:15 6:24
new==	0:-26 1:-11 2:28 3:-10 4:-21 5:71 6:18 7:20 8:-40 9:-39 10:-25 11:-13 12:-18 13:-23 14:-11 15:-11 16:-20 17:-14 18:-24 19:-9 20:-14 21:42 22:-14 23:-9 24:-10 25:-10 26:-9 27:15 29:-25 30:68 31:-12 32:-16 33:-16 35:12 36:-12 41:-20 42:-26 43:-12 44:-9 45:-11 46:102 47:35 48:-9 49:65 54:-9 57:-8 58:114 60:-27 64:-8 65:-8 66:-9 68:-8 70:-15 71:130 72:19 73:-11 75:-24 77:-13 78:110 80:-9 83:19 85:28 86:-8 87:-16 88:-8 89:-10 90:-9 91:-13 92:-8 96:-8 97:-13 98:90 99:-20 100:-14 101:-10 102:11 103:-10 104:-10 105:-10 107:-9 108:-12 112:9 113:-8 116:-8 117:-10 118:20 119:-9 120:46 122:-15 124:-8 125:48
)~",
R"~(new	0:-26 1:-12 2:28 3:-12 4:-21 5:70 6:18 7:19 8:-40 9:-40 10:-25 11:-14 12:-18 13:-23 14:-12 15:-11 16:-20 17:-14 18:-24 19:-9 20:-14 21:42 22:-14 23:-9 24:-10 25:-12 26:-9 27:15 29:-26 30:68 31:-18 32:-16 33:-16 35:12 36:-12 41:-20 42:-26 43:-12 44:-9 45:-11 46:102 47:35 48:-9 49:65 54:-9 57:-8 58:113 60:-27 61:-8 64:-8 65:-8 66:-9 68:-8 70:-15 71:130 72:19 73:-11 75:-24 77:-13 78:110 80:-9 83:19 85:28 86:-9 87:-16 88:-8 89:-10 90:-9 91:-13 92:-8 96:-8 97:-13 98:88 99:-21 100:-14 101:-11 102:25 103:-10 104:-10 105:-10 107:-9 108:-12 112:8 113:-8 116:-9 117:-10 118:29 119:-10 120:46 122:-15 124:-8 125:48
much new	5:41 6:38 27:-11
new wire	2:-11 4:-10 5:68 6:19 8:-15 9:-13 18:-8 21:21 27:-11 42:-9 49:55 58:-12 70:-10 71:53 78:49 83:27 98:-9
wire will	5:20 6:25 118:10
will job	5:-9 6:17 29:27
doe @job	6:9 11:-14 26:33 29:-9 65:17
will @job	5:-9 6:12 29:26
will i	4:16 5:-9 6:11
will we	6:14 29:16 30:13
new do	6:9
new @wire	8:-11 19:-9 21:32
@wire do	8:-20 9:65 32:-9
^ do	0:13 3:-10 4:-12 6:23 8:17 9:38 10:-11 11:-18 13:-11 15:-12 16:-9 17:-26 20:32 22:31 23:-10 24:16 25:-12 26:-15 28:42 29:36 32:9 33:-9 35:-10 37:-13 38:18 40:-9 51:23 64:20 65:-9 81:-9 100:-15 105:-14 106:-33 110:-13 111:-14 112:22 113:34 114:60 115:11 122:-18 125:131
have enough	6:32
enough the	6:28 9:13 18:-12
ther enough	6:22 8:-11 9:49 18:-13
&@job@wire	1:-12 6:8 9:-11 18:129 23:-13
enough wire	6:12
wire for	5:-17 18:35 23:17 43:60 73:20 83:28 84:-27 91:8
enough @wire	8:-13 9:60 23:-9
mark==s	5:-11 6:111 17:-8
mark	3:-20 4:39 5:-15 6:111 13:-9 16:21 17:-15 29:-11 42:18 43:13 51:21 62:28 63:-15 83:10 84:-9
the mark	3:-20 6:57 16:28 42:18
mark for	6:35
give==	1:-18 5:-14 9:-9 11:-23 12:9 13:33 14:21 17:27 19:13 20:13 21:-9 23:-20 24:20 25:14 26:-8 27:-10 28:-16 29:13 30:19 33:13 35:12 37:-9 38:62 43:-11 45:-8 62:-9 63:-11 64:75 65:-13 67:-17 68:15 83:-33 84:54 104:17 105:-8 106:41 107:-10 108:-9 113:13 115:20
give	1:-19 5:-18 9:-9 11:-26 12:9 13:32 14:21 16:12 17:27 19:13 20:12 21:-9 23:-20 24:19 25:14 26:-11 27:-10 28:-16 29:11 30:33 33:11 35:12 37:-10 38:62 43:-11 45:-8 47:-9 62:-10 63:-13 64:73 67:-18 68:15 83:-33 84:54 100:-8 104:17 105:-10 106:65 107:-13 108:-9 109:-8 113:13 115:20 120:17
^ give	0:-12 2:16 5:-9 7:-11 8:-10 9:-12 11:-11 12:13 13:18 14:24 16:10 17:31 19:19 20:19 23:-10 24:11 28:-14 29:21 30:-9 33:19 35:-9 38:29 43:-9 61:-9 63:-8 64:113 83:-16 84:8 104:18 106:31 107:-8 110:11 113:15 125:-20
give me	0:16 1:-15 2:17 8:11 9:-13 10:8 11:-8 12:15 13:57 14:26 16:12 17:33 19:16 20:15 24:25 25:9 28:-12 29:30 33:20 64:-18 84:-12 110:-17 125:-9
cut of	5:-9 6:33 13:-8
draw me	6:11
label==s	7:254 8:-9 35:37 39:-10 55:-8 88:-12
label	7:312 8:-13 19:-10 22:-8 35:35 39:-11 55:-8 88:-13
^ label	7:125
label $	7:64
step==	27:30 30:-17 55:56
step	2:-8 7:25 27:107 30:-31 40:-8 55:61 67:14
label the	7:22
print label	7:21
label for	7:57
every==	0:-19 1:-8 4:44 7:29 8:13 16:19 18:-8 19:58 21:-9 22:-9 23:-16 27:-9 28:-11 29:-9 31:-18 33:32 37:-9 39:-13 40:-15 43:16 50:-8 52:78 53:-15 54:-26 67:12 81:51 84:29 92:9 109:53 110:-9 111:-20 117:20
label of	7:11
every	0:-19 1:-8 4:44 7:29 8:13 16:19 18:-8 19:58 21:-9 22:-9 23:-16 27:-9 28:-11 29:-9 31:-18 33:32 37:-9 39:-13 40:-15 43:16 50:-8 52:78 53:-15 54:-26 67:12 81:51 84:29 92:9 109:53 110:-9 111:-20 117:20
every #n	7:24 68:18
step==s	7:28 27:77 30:-14 67:14
@wire in	1:-10 8:39 18:55 20:8 22:-29 31:-15 39:36 50:20 66:12 69:13 72:-14 81:-8 82:13 125:17
in step	7:12
step of	7:25 27:10 67:12
bin==	0:-16 1:-14 2:-8 3:11 7:43 22:16 36:-15 37:-9 38:-24 39:-9 40:134 42:-8 48:18 55:48 69:-8 81:116 82:-29
bin	0:-22 1:-20 2:-9 3:11 6:-9 7:195 8:-23 9:-21 18:-10 19:-13 20:15 22:26 23:-8 32:-9 33:-13 35:-14 36:-17 37:-10 38:-29 39:-13 40:175 42:-10 48:17 55:65 66:-8 68:-8 69:-12 70:-8 78:24 81:128 82:-33 88:-9 125:-11
the bin	3:9 7:47 8:-13 9:-9 20:20 38:-9 40:66 55:34 81:15
bin label	7:29
every #d	7:9 40:-12 81:58
by==	0:-8 1:-12 2:-8 3:-36 4:-26 5:-26 6:30 7:23 8:-10 10:-31 11:65 13:-18 14:-9 15:25 16:-23 17:-28 18:-20 19:32 21:16 22:-15 23:25 24:50 25:14 28:-21 30:126 31:-19 32:24 35:-8 36:-28 37:57 38:-20 39:-19 41:-23 42:38 44:-22 45:-17 46:-16 47:50 48:-13 50:-22 51:-16 55:-13 65:-10 66:15 67:17 68:-9 69:51 70:-13 71:-10 72:-9 73:-16 74:35 75:18 76:29 77:-12 79:29 80:-21 81:-11 82:-8 83:38 84:8 85:67 89:12 90:-9 91:-11 92:27 93:-10 95:-12 98:-15 99:-9 101:-12 102:-8 103:-10 104:28 105:-8 108:-18 110:-10 113:-14 114:-15 115:-12 117:-10 118:-12 119:-8 120:13 121:12 122:-11 125:26
by	0:-8 1:-12 2:-8 3:-36 4:-26 5:-26 6:30 7:23 8:-10 10:-31 11:65 13:-18 14:-9 15:25 16:-23 17:-28 18:-20 19:32 21:16 22:-15 23:25 24:50 25:14 28:-21 30:126 31:-19 32:24 35:-8 36:-28 37:57 38:-20 39:-19 41:-23 42:38 44:-22 45:-17 46:-16 47:50 48:-13 50:-22 51:-16 55:-13 65:-10 66:15 67:17 68:-9 69:51 70:-13 71:-10 72:-9 73:-16 74:35 75:18 76:29 77:-12 79:29 80:-21 81:-11 82:-8 83:38 84:8 85:67 89:12 90:-9 91:-11 92:27 93:-10 95:-12 98:-15 99:-9 101:-12 102:-8 103:-10 104:28 105:-8 108:-18 110:-10 113:-14 114:-15 115:-12 117:-10 118:-12 119:-8 120:13 121:12 122:-11 125:26
@wire by	37:10 69:12 79:26
by #d	3:-18 7:21 41:-19 42:29 46:-9 69:11 80:-9 85:17 92:50
^ bin	38:-11 40:71 55:14 81:67 82:-17
the label	7:9 35:45
need label	7:13
bin==s	7:156 8:-17 9:-13 19:-9 20:23 35:-13 40:-8 55:18
bin $	0:-14 3:9 7:52 22:23 36:-8 38:-11 40:61 78:26 81:34
drawer==s	7:27 32:66
drawer	1:-27 3:-8 7:35 8:20 9:-10 18:-9 19:-8 22:34 32:62 39:54 42:37 50:-12 72:32 73:-9 79:49 80:-15 81:-8 125:19
the drawer	0:9 7:24 8:23 22:-12 36:16 79:-21 125:25
drawer $	8:28 22:10 32:63
by #n	3:-8 4:-10 11:-8 30:49 44:-11 45:-8 47:-10 69:28 74:42 75:26 85:42 88:9 89:-16 125:29
goe==s	2:8 4:35 7:19 12:-10 13:-13 15:-8 16:32 17:-11 22:-11 26:-11 29:-8 33:-8 35:14 36:63 38:11 39:19 40:35 42:-10 64:43 65:-9 68:9 75:-16 81:-8 86:10 87:-9 91:-12 93:31 101:27 111:20 114:24 121:15
goe	2:8 4:35 7:19 12:-10 13:-13 15:-8 16:32 17:-11 22:-11 26:-11 29:-8 33:-8 35:14 36:63 38:11 39:19 40:35 42:-10 64:43 65:-9 68:9 75:-16 81:-8 86:10 87:-9 91:-12 93:31 101:27 111:20 114:24 121:15
what goe	7:24
goe on	7:24 9:9 16:19 64:20
label==	7:59
bin of	7:12 55:19
bin for	7:10
what bin	7:37 35:-8
bin are	7:53 35:-9
are ther	0:-12 7:46 8:-10 9:-12 14:10 17:21 19:35 22:-18 23:9 25:35 29:-12 30:-8 31:-9 32:19 35:41
ther $	0:29 7:34 8:51 9:-20 11:-12 14:78 15:-10 17:-12 19:40 22:-19 23:-10 25:9 26:-11 27:-11 28:-9 29:-16 31:-11 32:14 33:-8 35:45 93:10 103:17 125:-14
ther of	8:26 19:-8
which bin	7:40
bin do	7:24
stock==	0:13 1:-10 2:-12 5:14 8:94 9:13 19:-20 20:-11 22:29 31:-8 32:-10 39:-20 49:21 50:42 66:27 69:22 71:21 79:-9 88:-8 116:-12 117:-8 125:31
stock	0:13 1:-10 2:-12 5:14 8:94 9:13 19:-20 20:-11 22:29 31:-8 32:-10 39:-20 49:21 50:42 66:27 69:22 71:21 79:-9 88:-8 116:-12 117:-8 125:31
^ stock	8:110 9:27 19:-13 22:-9 125:-9
stock $	8:72 9:-8 50:30 66:-10 119:8
piece have	22:26
have of	69:18
got $	0:8 8:75 9:15 11:-20 12:-8 13:27 14:18 21:-8 25:48 26:-14 31:-17
have $	8:44 10:-12 11:-22 12:-8 14:25 19:15 21:-9 25:59 27:21
many short	8:42 9:-16
got of	33:13
we $	0:20 8:15 9:-12 21:-11 25:17 32:17
@wire are	8:59 9:-16 19:24 31:-8 50:-21 88:14 116:26
are in	0:-8 7:14 8:18 12:21 22:-12 50:8 72:10 75:-10 82:20
@wire have	8:27 19:11
wire do	8:41 9:-28 10:45 32:-10
what wire	5:-8 8:56 9:-26 10:37 11:-9 21:-9 23:14 31:40
wire have	8:-14 9:34 10:-14 19:40 25:-9 68:8
what have	0:23 1:-8 8:56 9:-12 10:-17 11:-48 13:25 19:-9 21:10 22:-17 23:19 25:-16 26:12 29:-20 30:-8 31:52 33:62 34:24 35:-10 125:-11
is in	1:-9 3:-16 8:95 12:26 14:12 16:-18 21:-13 22:-53 25:-22 28:43 33:-8 39:12 41:-12 42:10 44:26 53:-8 55:23 75:66 77:-14 78:17 89:-10 91:-15 96:9 102:9 109:-8 110:-17 111:47 117:18
much the	8:11 9:11
@wire is	1:-12 3:-14 8:48 9:-37 19:-8 20:-10 21:-8 24:-9 29:-8 31:27 36:-14 37:15 38:-8 39:-23 40:17 50:-9 51:75 66:12 67:27 69:38 80:12 81:14 88:11 92:-9 116:11 118:35 119:22 125:-24
much @wire	8:12 9:32 19:-9 20:35 21:-19 29:-8 31:31
left==	0:-9 1:11 4:-8 5:-8 8:53 9:25 11:-13 13:32 14:30 15:-11 16:-9 17:22 19:-20 20:22 21:-14 22:-17 23:-17 24:-8 27:51 29:9 31:-11 32:-9 33:-16 42:17 50:-33 62:82 63:-15 66:86 67:22 68:-15 88:-8 99:48 125:-16
)~",
R"~(left	0:-9 1:11 4:-8 5:-8 8:53 9:25 11:-13 13:32 14:30 15:-11 16:-9 17:22 19:-20 20:22 21:-14 22:-17 23:-17 24:-8 27:51 29:9 31:-11 32:-9 33:-16 42:17 50:-33 62:82 63:-15 66:86 67:22 68:-15 88:-8 99:48 125:-16
is left	1:-9 5:-9 8:40 9:-16 11:-11 13:34 17:25 19:-14 20:10 21:-8 22:-8 23:-12 27:39 51:-8 66:38 67:23 68:-10
left $	1:-12 8:-16 9:35 14:17 31:-8 42:17 50:-11 62:16 66:62 67:12 99:39 125:-8
piece of	2:10 8:22 19:-11 22:21 39:13 79:17 83:9
stock of	8:66 9:-14 19:-11 22:-16 50:-12 51:22 69:-12 125:43
left of	8:46 13:-24 27:44
the the	8:11 9:-10 19:-11 31:15 117:20 118:14 119:12
wire $	2:-8 5:71 6:-13 8:17 9:65 10:13 12:-9 14:-9 18:10 19:-14 20:11 21:-25 22:-8 23:-30 27:10 32:-27 33:51 35:-15 43:-8 49:11 71:36 73:-9 78:64 83:19 84:-9 90:-8 121:34 122:9 125:14
spar==e	8:12 21:14 25:56 39:14
is to	0:25 8:19 10:15 11:8 13:27 17:-19 23:-11 25:-8 29:-16 37:29 40:19 43:13 65:21 83:25 84:-16 99:13 100:15 107:-9 114:25 125:-21
spar	8:12 21:14 25:56 39:14
to spar	8:18 39:13
spar $	8:20 25:56
free==	1:-30 11:-13 12:-8 13:-23 15:-10 16:-8 17:-12 22:-10 23:27 25:25 26:-23 28:-27 29:126 33:-8 38:72 40:-22 43:-11 48:-11 59:-9 60:25 64:-9 65:173 77:11 83:-31 84:137 87:11 91:-9 94:-8 99:-11 101:-11 102:-15 103:-8 105:-8 106:70 107:-8 108:-8 110:26 111:-20 113:-15 114:-9
free	1:-30 11:-13 12:-8 13:-23 15:-10 16:-8 17:-12 22:-10 23:27 25:25 26:-23 28:-27 29:126 33:-8 38:72 40:-22 43:-11 48:-11 59:-9 60:25 64:-9 65:173 77:11 83:-31 84:137 87:11 91:-9 94:-8 99:-11 101:-11 102:-15 103:-8 105:-8 106:70 107:-8 108:-8 110:26 111:-20 113:-15 114:-9
is free	25:10 29:10 38:15 65:76 77:16 113:-10 125:-10
free $	1:-13 13:-14 23:85 25:47 29:-16 38:-13 65:49 77:16 110:35 125:-16
show tin	8:36 22:-9
what @wire	23:25
what the	75:10 83:21 88:12 89:-8 103:18
supply==	8:-12 9:172 14:12 19:-8 25:-8 35:-8 50:10 120:21 121:13 122:27
supply	8:-14 9:158 14:11 19:-21 20:-8 22:-10 25:-8 32:54 33:-8 35:-8 50:10 120:21 121:13 122:27
^ supply	9:95
supply $	9:75 32:15 50:18
supply the	9:-13 14:18 19:-13 32:58
buy==	8:-17 9:25 10:124 11:-26 19:8 20:-9 22:-8 28:-8 29:-18 32:31 33:-9 120:20 122:16 125:-11
soon==	2:-9 4:-12 9:32 10:-16 30:49 33:-8 49:-15 51:14 83:14 120:27
^ should	9:43 22:61 40:-25 55:-8 118:-10 125:22
buy	8:-17 9:25 10:124 11:-26 19:8 20:-9 22:-8 28:-8 29:-18 32:31 33:-9 120:20 122:16 125:-11
to buy	9:31 10:61 11:-21 29:-9
buy wire	9:11 10:-16 32:12 120:13 122:13
soon	2:-9 4:-12 9:32 10:-16 30:49 33:-8 49:-15 51:14 83:14 120:27
soon $	49:-14 120:28
i buy	10:36 32:16
order==	0:-13 1:11 4:-11 5:-8 6:-8 7:-10 8:-39 9:80 10:118 11:-32 12:-20 14:-13 15:9 16:-11 17:-13 18:-17 19:-19 20:-13 21:-13 22:-15 23:-14 24:-11 25:-16 26:-15 27:11 28:-15 29:-35 30:-11 31:36 32:44 33:-21 35:13 36:-11 38:-15 39:-19 40:-19 44:-9 47:-16 50:-9 51:61 52:-8 53:-12 54:-10 55:-16 57:-11 60:-13 66:-22 67:-10 69:-12 81:-11 86:-8 87:-9 88:-14 91:-8 98:-8 99:-13 100:-15 101:14 104:-8 106:-17 108:-8 110:-9 112:-8 116:52 117:182 118:153 119:182 120:83 121:18 122:40
order	0:-18 2:-9 3:-8 4:-15 5:-8 6:-19 7:-14 8:-65 9:77 10:245 11:-61 14:-25 16:-15 17:-19 18:-24 19:-43 20:-24 21:-22 22:-38 23:-25 24:-16 25:-24 26:-21 28:-25 29:-57 30:-15 31:297 32:46 33:-31 36:-13 38:-20 39:-26 40:-22 43:-11 44:-11 45:-9 47:-18 49:-10 50:-26 51:52 52:-10 53:-16 54:-13 55:-21 57:-17 58:-11 60:-15 66:-39 67:-20 68:-14 69:-16 71:-9 72:-9 73:-8 79:-11 81:-14 83:-8 85:-9 86:-11 87:-10 88:-21 89:-8 91:-10 98:-11 99:-16 100:-21 101:12 103:-11 104:-10 105:-9 106:-19 108:-11 110:-13 111:-8 112:-12 115:-8 116:230 117:167 118:165 119:226 120:72 121:13 122:25 124:-12 125:-19
we order	8:-11 10:-18 19:-8 31:37 32:28 117:-9 118:-8 119:65 120:28 122:-19
order wire	9:10 10:-16 32:23 116:14
shall==	9:19 28:-8 29:38 43:-11 53:8 54:-14 57:14 60:12 61:24 65:13 99:15 104:19 107:-20 111:19 113:10 114:17 115:22
shall	9:19 28:-8 29:38 43:-11 53:8 54:-14 57:14 60:12 61:24 65:13 99:15 104:19 107:-20 111:19 113:10 114:17 115:22
^ shall	9:13 10:-11 29:43 107:-14
shall we	9:8
have to	3:14 4:30 5:19 6:-19 8:-16 9:44 10:39 11:78 12:-13 13:-8 16:-9 22:-11 24:13 26:-10 27:12 28:20 29:-24 31:-13 33:-9 35:-13 38:28 51:18 65:-9 81:11 107:-8 114:17 121:11 125:-24
to order	9:48 10:87 11:-9 31:-27 32:-13 125:-13
now==	0:-23 1:-21 2:-19 3:-29 4:-21 5:-22 6:-12 7:-9 10:14 11:-31 12:-21 13:-18 14:-25 15:-19 16:-12 17:43 18:-12 19:20 20:-11 21:-12 22:-32 23:-16 24:-12 25:41 26:-20 27:-15 28:-8 29:38 30:-14 31:-29 32:-20 33:-24 35:-23 37:23 38:32 40:-17 41:-29 42:24 45:-17 47:34 48:-10 51:-8 52:48 53:-23 54:-20 55:52 57:19 58:22 60:18 61:91 62:-23 63:-9 64:10 65:50 66:-9 67:13 68:-9 69:-12 70:-21 73:-8 75:82 77:9 81:-9 83:-20 85:12 86:-8 87:10 88:-8 89:-14 90:-8 91:-23 92:-14 93:-10 95:-13 96:12 98:8 99:66 100:-10 101:-16 102:-14 103:64 104:13 107:73 108:25 109:39 110:-42 113:-17 115:-8 116:-15 117:-14 118:87 119:-22 120:54 121:83 122:-22 125:-54
now	0:-23 1:-21 2:-19 3:-29 4:-21 5:-22 6:-12 7:-9 10:14 11:-31 12:-21 13:-18 14:-25 15:-19 16:-12 17:43 18:-12 19:20 20:-11 21:-12 22:-32 23:-16 24:-12 25:41 26:-20 27:-15 28:-8 29:38 30:-14 31:-29 32:-20 33:-24 35:-23 37:23 38:32 40:-17 41:-29 42:24 45:-17 47:34 48:-10 51:-8 52:48 53:-23 54:-20 55:52 57:19 58:22 60:18 61:91 62:-23 63:-9 64:10 65:50 66:-9 67:13 68:-9 69:-12 70:-21 73:-8 75:82 77:9 81:-9 83:-20 85:12 86:-8 87:10 88:-8 89:-14 90:-8 91:-23 92:-14 93:-10 95:-13 96:12 98:8 99:66 100:-10 101:-16 102:-14 103:64 104:13 107:73 108:25 109:39 110:-42 113:-17 115:-8 116:-15 117:-14 118:87 119:-22 120:54 121:83 122:-22 125:-54
wire now	9:15 10:-13
now $	0:-8 1:-13 3:-22 5:-18 8:11 9:15 10:25 11:-31 12:-15 13:-11 14:-21 15:-15 17:45 19:23 21:-11 22:-29 23:-19 25:51 26:-15 27:-9 29:69 30:-13 31:-24 32:-17 33:-18 35:-25 36:-9 37:29 38:39 39:10 41:-14 42:13 47:11 53:-13 55:-9 57:10 58:-10 60:14 61:61 62:-15 65:64 75:31 83:-18 85:11 91:-15 94:-11 98:-14 99:57 102:-9 103:46 104:28 108:24 109:-13 110:-17 111:13 113:-12 117:-18 118:75 119:-13 120:30 121:32 122:-13 125:-44
order anyth	9:35 122:-15 125:17
shall i	9:12 29:42 107:-14
buy any	9:9
any wire	8:-11 9:41
we buy	9:-9 10:30 19:13 32:20
any the	31:17
@wire now	9:35 39:8 118:-13
some==	0:12 1:-10 2:10 22:-16 23:32 29:9 39:-19 66:-8 69:20 79:39 90:10 94:8 115:-22 125:36
some	0:12 1:-10 2:10 22:-16 23:32 29:9 39:-19 66:-8 69:20 79:39 90:10 94:8 115:-22 125:36
more==	0:-15 1:-20 2:-8 4:-10 5:-10 8:-36 9:49 10:-11 11:-16 12:-8 13:-16 14:-8 16:20 17:-13 19:-8 22:28 23:-14 24:-12 25:-12 26:-12 28:-20 29:-9 30:28 31:-18 32:-17 33:-8 36:-8 38:35 43:-12 44:-14 45:-10 47:16 50:59 52:33 53:-38 57:55 59:-20 60:27 62:14 63:22 64:-10 65:12 66:-8 69:9 70:-9 81:-8 84:29 86:23 87:22 89:-11 90:-10 91:-14 93:82 95:-13 99:-20 100:43 101:-21 102:44 106:12 108:-10 109:26 110:-32 111:15 114:12 121:16 122:62 124:-13 125:-10
more	0:-15 1:-20 2:-8 4:-10 5:-10 8:-36 9:49 10:-11 11:-16 12:-8 13:-16 14:-8 16:20 17:-13 19:-8 22:28 23:-14 24:-12 25:-12 26:-12 28:-20 29:-9 30:28 31:-18 32:-17 33:-8 36:-8 38:35 43:-12 44:-14 45:-10 47:16 50:59 52:33 53:-38 57:55 59:-20 60:27 62:14 63:22 64:-10 65:12 66:-8 69:9 70:-9 81:-8 84:29 86:23 87:22 89:-11 90:-10 91:-14 93:82 95:-13 99:-20 100:43 101:-21 102:44 106:12 108:-10 109:26 110:-32 111:15 114:12 121:16 122:62 124:-13 125:-10
more the	107:11 111:17 112:-11
more @wire	9:17
order any	31:18
enough $	0:-9 9:10 18:22 68:12 86:-14 91:19 125:40
@wire left	1:9 8:40 9:11 39:9 50:-12 66:30
left for	62:13
open job	8:-9 9:46 12:-12 14:42
shop==	1:-10 7:-8 10:-9 11:-17 12:-18 14:47 16:-8 17:-8 19:30 20:-18 22:-13 23:27 25:45 26:-17 27:-10 28:23 29:-12 31:-16 33:9 35:-16 48:27 52:12 53:63 54:63 55:50 57:-11 58:14 61:-15 62:47 63:22 67:-8 70:45 71:-8 75:-8 82:-23 96:-10 98:-13 101:-11 103:-11 106:-9 108:-9 109:58 110:-10 111:-15 112:52 117:-8 118:-9 124:-13 125:-21
shop	1:-10 6:-14 7:-9 9:40 10:42 11:-18 12:-20 14:44 16:-9 17:-8 19:27 20:-21 22:-14 23:14 25:44 26:-19 27:-11 28:22 29:-14 31:-18 33:8 35:-27 40:-8 48:27 52:12 53:62 54:62 55:50 58:14 61:-15 62:47 63:22 67:-8 70:45 71:-8 75:-8 82:-23 96:-10 98:-16 101:-11 103:-12 106:-9 108:-10 109:58 110:-10 111:-15 112:51 117:-8 118:-9 124:-13 125:-21
)~",
R"~(the shop	10:41 11:-16 12:-17 14:24 19:26 20:-10 22:-11 23:26 25:52 26:-16 27:-10 28:49 29:-10 30:8 31:-15 32:-15 33:10 35:-24 53:66 54:56 55:33 58:16 61:-12 62:31 63:43 67:-8 84:8 98:-12 100:-17 101:-8 103:-11 106:-8 109:29 110:-8 111:-10 112:34 118:-8 124:-12 125:-20
short on	9:14 42:32
run==ning	8:-9 9:94 12:12 17:-10 25:36 54:9 100:-9 102:15
is we	9:10
run	8:-17 9:183 10:17 11:26 12:9 14:-8 17:-12 18:-13 22:-13 23:-8 25:33 26:-14 28:-8 31:-10 54:10 68:17 98:-8 100:-10 102:40 104:11 109:25 111:-18 112:8 119:16 125:-8
we run	9:12 29:10
run short	9:20
short of	8:-12 9:34 51:17
of wire	5:-8 8:-37 9:21 19:58 20:31 21:-9 24:11 25:-9 43:34 49:38 121:-18 122:27
shop run	112:10
of anyth	84:-10 125:14
anyth $	0:13 9:59 10:-25 11:36 22:30 26:16 28:-8 40:11 114:15 125:-16
low==	0:-11 2:-9 3:-12 8:-13 9:108 11:-11 13:-20 15:-8 17:112 24:-10 25:-8 41:-33 42:-15 43:-8 45:-8 51:125 66:-13 69:-16 75:-8 77:-9 88:-12 89:41 92:192 93:-9 97:-10 125:-17
low	0:-12 2:-9 3:-12 8:-13 9:108 11:-12 13:-22 15:-8 17:145 23:-8 24:-10 25:-8 27:-8 33:-8 41:-33 42:-15 43:-9 45:-9 51:125 66:-13 69:-16 75:-8 77:-9 88:-12 89:39 92:191 93:-9 95:-9 97:-12 125:-17
run low	9:74 17:-10
low of	17:18
low on	9:23 17:11 92:14
on anyth	9:19
are we	1:-8 8:22 9:18 10:22 11:14 13:57 16:-9 18:-9 19:-16 22:-18 23:20 25:-11 27:15 28:121 29:38 31:67 32:-29 52:-9 53:-34 54:-11 107:-17 108:-9 112:-18
on wire	20:-11 21:13
we short	8:-14 9:37
on @wire	9:8 20:8 21:10 88:33
wire is	8:17 23:50 49:-8 88:26 91:32 120:15
is short	42:16
short $	0:-13 3:28 8:-8 9:24 35:10 40:21 42:24 79:11 86:13 92:-8 125:13
is run	9:41 25:28
what are	0:-13 4:25 5:-13 8:-14 10:19 11:19 12:-22 14:31 17:-21 23:60 25:-12 26:12 27:50 28:80 29:-17 31:-19 32:13 33:-15 35:17 109:-9
are run	54:9
wire are	9:35 17:-10 23:-9 31:35 88:15
are short	9:10
low $	9:65 13:-9 17:47 41:-15 51:11 89:-9 92:95
out==	1:-12 2:44 4:15 5:41 6:-17 7:-12 8:27 9:26 11:18 12:-31 13:-24 15:-14 16:-25 17:-22 18:-18 19:-29 20:58 21:-20 22:61 23:-16 24:-12 25:10 26:-20 29:-25 30:-13 31:9 32:-25 33:-28 36:15 37:-13 38:-9 39:-13 40:58 41:-22 42:38 44:-19 45:-15 46:-9 47:32 48:54 50:-12 53:-10 54:-9 55:-10 60:-9 62:9 63:14 64:-9 66:-17 68:-10 69:-14 70:59 71:27 72:69 73:41 75:-30 77:-25 78:-34 79:-17 81:66 82:18 84:-16 85:-8 86:20 87:29 89:-17 90:-14 91:18 92:-18 93:-11 95:29 96:-14 97:-12 99:-13 101:81 103:-10 105:-13 106:-9 107:-10 108:8 110:26 111:-11 112:-12 113:-13 114:-12 115:-13 117:-12 118:-20 119:14 120:-10 122:42 124:-9 125:-14
is @wire	1:75 8:-19 9:-16 18:26 23:-13 31:62
@wire run	9:40 68:18
out	1:-12 2:44 4:15 5:40 6:-18 7:-19 8:18 9:22 11:18 12:-31 13:-24 15:-14 16:-25 17:-22 18:-19 19:-30 20:91 21:-21 22:60 23:-16 24:-12 25:10 26:-20 29:-25 30:-13 31:9 32:-26 33:-29 36:15 37:-13 38:-9 39:-14 40:58 41:-22 42:38 44:-19 45:-15 46:-9 47:32 48:54 50:-12 51:-8 53:-10 54:-9 55:-10 60:-9 62:9 63:14 64:-9 66:-17 68:-10 69:-15 70:59 71:27 72:69 73:41 75:-30 77:-25 78:-34 79:-17 81:66 82:18 84:-16 85:-8 86:20 87:29 89:-17 90:-15 91:18 92:-18 93:-11 95:29 96:-14 97:-12 99:-13 101:80 103:-10 105:-13 106:-9 107:-10 108:8 110:26 111:-11 112:-12 113:-13 114:-12 115:-13 117:-12 118:-20 119:14 120:-10 122:42 124:-9 125:-14
run out	9:78 11:19 22:-8 29:-8 119:17
out $	0:-13 2:8 3:10 8:-8 9:14 11:11 12:-14 19:-10 22:44 25:14 29:-10 31:28 40:47 43:24 48:18 52:9 72:-9 78:13 81:-22 82:29 91:23 119:17 122:13 125:-9
@wire low	9:32 51:18
the wire	4:-10 5:-14 6:-12 9:88 10:-18 11:-18 13:-8 14:-8 16:-13 17:-12 18:89 19:-11 20:43 21:-15 23:-17 24:22 25:-10 27:10 28:-8 29:-8 33:-11 35:-10 43:13 49:8 50:8 73:41 74:-9 88:-9 107:24 118:16 120:14 122:36 125:-15
wire run	9:38
wire==s	8:64 9:58 10:12 14:-16 17:-14 19:8 21:-9 24:35 25:-9 32:-12
refret==s	8:-63 9:120
refret	8:-64 9:110 11:-15 12:38 19:-8 27:72 28:-11 29:-32 30:138 32:-9 35:-12 46:10 48:16
many refret	8:-44 9:74
refret left	8:-8 9:13
left on	13:-8 27:21 29:9
refret are	8:-13 9:23
are left	9:8 66:14
are are	89:11
left in	8:12
still==	0:-30 1:15 3:-9 4:-20 5:-28 6:-14 8:17 9:18 11:-14 12:32 13:86 15:-12 16:13 17:22 18:-9 19:-13 21:-10 23:30 24:-9 25:-9 27:27 29:-15 31:59 32:-9 33:-13 35:-8 43:-8 45:78 85:-8 87:42 89:54 97:-14 124:-15 125:8
still	0:-30 1:15 3:-9 4:-20 5:-28 6:-14 8:17 9:18 11:-14 12:32 13:86 15:-12 16:13 17:22 18:-9 19:-13 21:-10 23:30 24:-9 25:-9 27:27 29:-15 31:59 32:-9 33:-13 35:-8 43:-8 45:78 85:-8 87:42 89:54 97:-14 124:-15 125:8
we still	8:10 31:12
still have	13:24 125:27
have in	12:46 32:-8
refret can	9:12
we do	2:-13 4:-13 5:8 16:-12 17:29 21:8 25:-8 30:48 32:-13 38:12 53:32 57:25 86:25 100:40 103:10 106:15 112:-11 122:34 125:-47
refret is	9:11
good $	8:-20 9:49 18:43 31:-12 40:39 43:-8 45:20 62:21 86:24 93:52 100:20 108:-10 115:-10
last==	0:-14 3:-9 5:-11 8:-26 9:83 11:15 12:-8 13:-11 14:-19 16:-9 17:-17 19:54 20:61 21:30 22:-12 23:-8 24:-11 25:-8 27:-23 29:-18 30:-13 31:-30 32:-22 33:48 35:-13 41:-14 42:-10 43:-9 44:10 45:35 47:-17 50:12 62:33 64:-8 66:-8 73:-8 75:-9 77:-14 83:8 89:18 91:-11 93:183 97:-9 110:8 112:-17 114:-8 124:129
last	0:-14 3:-9 5:-11 8:-28 9:101 11:14 12:-8 13:-11 14:-19 16:-9 17:-17 19:50 20:60 21:30 22:-13 23:-8 24:-11 25:-9 27:-13 29:-19 30:-14 31:-34 32:-23 33:46 35:-15 41:-14 42:-10 43:-9 44:10 45:33 47:-18 50:11 57:-9 61:-8 62:33 64:-9 66:-8 73:-8 75:-10 77:-14 83:8 89:17 91:-11 93:182 95:-8 97:-10 98:10 99:-8 104:11 110:8 112:-17 113:-8 114:-8 116:-8 124:129
@wire last	9:50 21:11 31:-11
last $	9:73 27:-13 31:-11 32:-8 33:17 93:64 125:-8
run==s	9:37 68:18 102:27 104:12 112:10
first==	9:14 13:-11 29:17 64:-8 113:85 114:33
what run	9:13
first	9:14 13:-11 29:17 64:-8 113:85 114:33
first $	9:14 29:17 113:98 114:-12
which wire	9:44 10:52 17:-11 31:28 32:-9 125:-19
out first	9:13
when==	3:-10 8:-22 9:124 10:-17 11:134 12:-16 13:-32 14:-9 15:-27 16:-12 17:-12 18:-18 19:62 20:-14 21:-12 22:-9 23:-26 24:-12 25:45 26:65 27:15 28:151 29:155 30:78 31:100 32:-15 33:48 39:-16 43:-28 44:-14 45:-10 48:-17 50:-24 51:40 53:-9 54:-9 59:9 62:-8 64:-21 65:-18 66:-15 69:-8 77:-12 87:-11 88:-10 90:-8 96:-8 100:-8 101:-12 102:-11 106:-10 107:-16 108:-17 110:-13 111:-15 113:-9 114:-13 115:-24 117:-10 119:-8 125:-22
run==	9:52 10:20 11:20 18:-12 101:9 109:27 111:-17 119:17
when	3:-10 8:-22 9:124 10:-17 11:134 12:-16 13:-32 14:-9 15:-27 16:-12 17:-12 18:-18 19:62 20:-14 21:-12 22:-9 23:-26 24:-12 25:45 26:65 27:15 28:151 29:155 30:78 31:100 32:-15 33:48 39:-16 43:-28 44:-14 45:-10 48:-17 50:-24 51:40 53:-9 54:-9 59:9 62:-8 64:-21 65:-18 66:-15 69:-8 77:-12 87:-11 88:-10 90:-8 96:-8 100:-8 101:-12 102:-11 106:-10 107:-16 108:-17 110:-13 111:-15 113:-9 114:-13 115:-24 117:-10 119:-8 125:-22
^ when	6:-8 8:-8 11:50 12:-12 13:-21 15:-8 18:-10 19:70 21:-8 23:-16 25:75 26:74 28:70 29:79 30:49 31:98 32:-8 33:16 43:-18 45:-16 47:-10 50:-21 59:11 64:-18 65:-8 66:-9 77:-8 107:-12 114:-19 115:-18 117:-8 125:-8
when do	11:27 26:67 28:48 29:-41 31:40 50:-20 66:-8 115:-11 125:-9
do the	4:11 5:-14 6:10 8:-18 9:29 10:10 12:-8 13:-8 15:-9 16:-17 17:17 20:34 31:43 32:-8 50:-20 64:54 65:28 66:-8 103:22 125:-21
used==	1:-8 3:-19 4:-11 8:-14 9:28 15:-8 16:-8 20:27 21:-13 22:28 23:-8 25:17 29:-12 33:34 35:23 36:82 37:-27 71:20 81:-11 82:62 83:-10 84:11 93:-9 101:20 125:53
up==	1:-18 2:13 3:-11 4:28 5:17 6:-12 8:-26 9:-10 10:8 11:44 12:12 13:20 15:-14 16:-21 18:-20 20:46 21:23 22:24 23:-16 24:83 25:-31 26:-13 27:-20 28:-16 30:-13 32:-17 33:-27 35:-21 36:19 37:-23 38:26 39:-10 40:-23 41:-24 42:29 43:-34 44:10 45:56 47:-15 51:-16 53:41 54:13 55:-17 57:-8 58:10 63:-14 64:-17 65:67 66:44 70:55 71:-11 73:-9 75:-11 77:-34 78:-16 81:-9 82:-11 84:16 89:33 90:-13 91:56 92:-11 93:13 95:-13 97:-11 98:22 99:62 100:-11 101:-23 102:87 104:-45 105:-13 106:70 107:34 108:-16 110:-16 111:-18 112:-8 113:-14 114:-14 115:-22 116:-21 117:-9 118:-10 119:21 120:-8 122:-9 125:-27
when doe	11:30 25:29 26:26 28:20 29:-27 30:-8 31:39
doe @wire	9:44 18:24 24:23 27:-8 31:-12
@wire be	5:13 24:9
used	1:-8 3:-19 4:-11 8:-14 9:28 15:-8 16:-8 20:27 21:-13 22:28 23:-8 25:17 29:-12 33:34 35:23 36:82 37:-27 71:20 81:-11 82:62 83:-10 84:11 93:-9 101:20 125:53
be used	25:14 83:-9 84:12 101:21 125:-9
)~",
R"~(up	1:-18 2:13 3:-11 4:28 5:17 6:-12 8:-26 9:-10 10:8 11:44 12:12 13:20 15:-14 16:-21 18:-20 20:46 21:23 22:24 23:-16 24:83 25:-31 26:-13 27:-20 28:-16 30:-13 32:-17 33:-27 35:-21 36:19 37:-23 38:26 39:-10 40:-23 41:-24 42:29 43:-34 44:10 45:56 47:-15 51:-16 53:41 54:13 55:-17 57:-8 58:10 63:-14 64:-17 65:67 66:44 70:55 71:-11 73:-9 75:-11 77:-34 78:-16 81:-9 82:-11 84:16 89:33 90:-13 91:56 92:-11 93:13 95:-13 97:-11 98:22 99:62 100:-11 101:-23 102:87 104:-45 105:-13 106:70 107:34 108:-16 110:-16 111:-18 112:-8 113:-14 114:-14 115:-22 116:-21 117:-9 118:-10 119:21 120:-8 122:-9 125:-27
used up	9:31 36:11
up $	1:9 2:12 4:-9 5:-8 9:26 11:13 16:-10 17:12 23:-11 25:-8 29:57 31:-13 41:-9 43:-8 44:-15 45:43 58:8 77:-17 89:68 91:45 93:-18 99:31 100:-8 101:-8 102:29 103:-8 117:-13 119:27 125:26
end $	1:9 27:14 36:15 39:13 70:16 81:-8 87:13 89:8
do @wire	24:27
when will	11:-9 29:78 31:15 125:-11
out of	2:-34 3:-9 4:-16 5:58 6:-8 7:-12 8:32 9:-32 11:-8 16:-15 19:-11 20:24 22:24 27:-8 31:-8 33:-12 36:36 39:-15 40:-12 41:-9 42:-17 44:-12 45:-8 47:-14 48:44 62:12 63:16 70:72 71:33 72:50 73:59 78:-34 79:-11 81:31 82:9 83:13 84:-9 86:25 87:36 90:-8 91:-14 95:-25 97:-13 101:61 102:12 107:-8 108:-9 110:-16 116:-8 118:-11 122:16
long will	9:38
will @wire	18:14
do $	2:-8 3:33 13:18 32:-14 35:66 64:19
reach==	3:-14 9:15 42:36 87:18
long do	4:28 9:-14 27:30 32:21
reach	3:-14 9:46 42:36 87:18
@wire reach	9:15
reach $	9:43
long doe	4:-12 27:44 32:41 35:-11
our==	0:47 1:-19 5:31 7:10 8:22 10:9 11:-12 12:-10 14:-17 16:-14 17:-10 19:12 20:15 21:-10 23:-23 29:-8 32:50 33:-10 35:-14 38:20 50:-8 52:14 54:-8 55:63 63:36 86:35 88:10 100:19 115:14 117:-13 118:25 119:20 121:-11 122:15 125:-18
our	0:47 1:-19 5:31 7:10 8:22 10:9 11:-12 12:-10 14:-17 16:-14 17:-10 19:12 20:15 21:-10 23:-23 29:-8 32:50 33:-10 35:-14 38:20 50:-8 52:14 54:-8 55:63 63:36 86:35 88:10 100:19 115:14 117:-13 118:25 119:20 121:-11 122:15 125:-18
doe our	31:16
our wire	8:58 9:-9
when should	9:24 11:13 31:-16
buy the	19:-10 32:16
when must	9:21 11:39 29:9
i order	9:33 32:30 50:-19 116:26 118:-11 119:-8
when shall	9:12
day==	5:-8 9:20 10:-27 11:12 12:-10 13:-15 14:-17 16:-14 17:-9 22:-18 23:-10 24:8 25:-10 27:-11 28:13 29:40 30:70 31:20 32:-11 33:-10 35:-13 42:-8 45:19 47:64 48:-8 51:-9 53:52 54:28 61:-15 62:26 63:-8 64:-14 65:-8 79:19 81:8 86:-10 87:-8 89:-12 93:-11 99:-28 100:-21 101:37 102:-11 103:-8 108:55 110:52 111:30 112:81 115:-10 117:-8 119:-10 121:-8 125:39
^ by	9:31 10:-13 11:16 15:21 21:8 29:11 31:-12 32:38 67:27 125:-10
by what	9:11 10:-8 104:16
day	0:-28 1:-16 2:-9 4:-10 5:-14 6:-11 7:-12 8:-29 9:44 10:68 11:86 13:-11 14:-8 15:-11 16:-25 17:-19 18:-12 19:-12 20:-11 21:-10 22:81 23:-21 25:-15 26:40 27:-18 28:66 29:48 30:55 31:12 32:44 33:-20 35:-20 36:-15 37:-10 38:-12 39:-13 40:-10 42:-10 43:-12 44:-11 45:11 47:68 48:-12 50:-10 51:-12 52:12 53:56 54:18 55:11 57:-9 58:-9 60:-8 61:-17 62:23 63:-11 64:-17 65:-13 75:-9 78:-8 83:-11 84:-12 86:-12 87:-11 89:-17 91:-9 93:-13 95:-9 98:-17 99:-39 100:-24 101:27 102:-15 104:-15 105:-12 106:-11 107:-14 108:47 110:45 111:19 112:83 114:-9 115:36 117:-26 119:-16 120:32 121:62 124:-10 125:9
what day	9:11 10:-9 29:10 30:48
by when	9:20 11:26 29:13
order $	5:-8 8:-33 9:30 10:70 12:-19 19:-9 22:-8 27:18 29:-19 31:99 32:19 33:-12 35:18 50:55 116:11 117:31 118:-16 125:-14
buy $	8:-8 9:-9 10:73 11:-8
get==	1:-22 2:14 3:18 4:-8 8:-26 9:33 11:-16 13:-8 19:32 20:-15 21:-17 25:-18 28:-15 29:63 31:-10 32:72 33:12 39:-8 40:19 43:-10 47:-8 57:56 64:12 81:26 86:12 89:-22 93:9 99:8 100:18 105:8 107:-14 115:20 119:9
get	0:-17 1:-12 2:11 3:16 4:-9 5:29 8:-30 9:29 11:-15 13:10 14:-22 15:-12 17:-10 18:-9 19:29 20:-16 21:-18 23:-8 24:-9 25:-22 26:-10 27:-9 28:-20 29:48 31:-11 32:73 36:34 37:-18 40:16 43:-21 48:-10 52:-9 57:51 65:13 66:-8 73:10 77:-9 81:24 83:8 86:9 89:-25 93:25 100:13 101:17 105:10 106:-9 107:11 110:8 115:18 119:8 125:74
to get	9:9 10:8 12:10 29:11 64:21 99:12
get $	5:16 8:-11 33:12
@wire should	8:11 9:12 51:-12 69:44
how is	4:-8 9:24 13:121 16:31 20:9 25:33 27:-13 29:-28 94:-19
the supply	9:30
how are	8:39 9:-15
supply of	9:43
stand==s	11:21 13:10 16:27 17:13 25:18 29:-22 41:-11 59:32 60:-11 92:77 119:10
stand	0:-8 1:-8 3:-9 4:-10 11:19 13:36 14:22 15:-9 16:21 17:85 24:-9 25:34 27:-9 29:-29 41:-19 47:-8 59:31 60:-11 77:-10 89:13 91:14 92:85 93:-8 114:12 119:10 125:-8
wait==	6:-8 9:37 12:-9 17:-8 30:10 43:-10 45:17 65:-12 107:-8 108:12 113:77 114:122 124:20 125:-27
what job	1:12 9:15 11:11 12:24 29:-11
wait	5:-9 6:-11 8:-10 9:37 10:-11 11:13 12:88 13:-15 15:-8 16:-9 17:-13 18:-8 19:-9 22:-8 23:-27 27:-8 28:-11 29:-28 31:59 35:-8 43:-14 45:16 48:-10 51:10 65:-15 84:-8 87:-11 107:-10 108:9 113:68 114:195 118:16 124:19 125:-32
job wait	9:29
wait for	9:29 11:-18 12:-14 19:-8 23:-14 30:9 31:49 47:-9 113:-9 114:95 118:19
job would	9:9
would wait	9:9
job are	11:16 14:-10 29:52
short for	22:18 40:12
need of	122:15
much do	24:25
take of	9:13
do open	9:8
job take	9:9
use of	1:-9 5:29 8:-9 9:9 23:-10
each==	0:-25 4:23 5:12 9:27 10:-13 12:-8 13:-14 14:42 16:10 17:-19 19:17 20:-8 27:39 29:27 32:-9 33:-9 45:-9 49:-19 50:57 52:44 54:-22 55:17 66:23 68:-16 70:-26 72:-8 75:30 85:-10 97:16 99:14 109:-10 116:21 117:12 121:13 124:9
week==	5:-13 8:-14 10:10 11:42 12:-13 14:-16 16:-11 17:-12 20:-11 22:-8 23:-8 25:-36 26:62 27:-13 28:59 29:50 30:64 31:-12 32:-8 35:-13 47:12 50:-27 52:19 53:39 54:16 61:-8 62:-11 63:-12 66:-20 99:-8 100:-12 101:63 102:-11 103:-8 106:-9 108:-9 109:29 110:67 111:-15 112:-19 118:55 125:36
each	0:-25 4:23 5:12 9:27 10:-13 12:-8 13:-14 14:42 16:10 17:-19 19:17 20:-8 27:39 29:27 32:-9 33:-9 45:-9 49:-19 50:57 52:44 54:-22 55:17 66:23 68:-16 70:-26 72:-8 75:30 85:-10 97:16 99:14 109:-10 116:21 117:12 121:13 124:9
week	0:-8 1:-8 5:-16 8:-41 9:41 10:31 11:99 12:-14 13:-8 14:-19 16:-16 17:-15 19:-9 20:-14 21:-11 22:18 23:-15 25:-43 26:54 27:-18 28:67 29:97 30:57 31:-13 33:-11 35:-15 47:36 50:-30 52:17 53:37 54:12 55:-10 61:-10 62:-13 66:-22 98:-8 99:-12 100:-14 101:58 102:-12 103:-9 104:-8 105:-11 106:-11 108:-11 109:28 110:66 111:-17 112:-20 117:-13 118:50 119:-9 120:36 121:66 125:30
each week	52:23 54:-11
week $	8:-13 10:20 11:43 12:-12 14:-11 16:-9 22:13 23:-8 25:-30 26:53 27:-8 28:72 29:31 30:12 32:-8 47:41 50:-29 52:30 53:17 54:-14 66:-20 99:-9 101:48 102:-10 109:19 110:-16 111:-10 117:-8 118:39 120:17 121:55 125:39
month==	8:-16 9:-9 19:-14 20:101 21:72 22:12 26:8 33:11 69:-23 88:-10
month	8:-17 9:-10 19:-14 20:100 21:70 22:29 23:-12 33:9 69:-23 84:10 88:-10
a month	9:13 22:16
month $	8:-10 20:17 21:25 22:32 33:13
through==	0:18 1:-14 2:-9 4:22 8:-14 9:43 11:-10 12:-12 13:-18 16:-10 17:-14 18:-8 23:-10 26:-8 27:33 28:12 29:-16 30:-8 33:29 39:-14 40:18 41:-11 43:34 44:49 50:-9 52:33 53:13 64:-8 66:8 70:-9 71:22 75:29 77:22 78:-8 81:20 89:-11 93:-10 97:-14 106:13 107:-10 108:12 109:-27 110:45 112:19 114:16 119:14 122:14 125:-20
per==	7:10 12:-9 14:14 24:18 68:12
we go	107:51
through	0:18 1:-14 2:-9 4:22 8:-14 9:43 11:-10 12:-12 13:-18 16:-10 17:-14 18:-8 23:-10 26:-8 27:33 28:12 29:-16 30:-8 33:29 39:-14 40:18 41:-11 43:34 44:49 50:-9 52:33 53:13 64:-8 66:8 70:-9 71:22 75:29 77:22 78:-8 81:20 89:-11 93:-10 97:-14 106:13 107:-10 108:12 109:-27 110:45 112:19 114:16 119:14 122:14 125:-20
go through	27:44 33:29
per	7:10 12:-9 14:14 24:18 68:12
need a	0:23 1:12 11:13 20:26 36:-8 103:19 125:9
a week	118:15
forecast==	8:-19 9:93
forecast	8:-19 9:93
stock forecast	8:-15 9:42
forecast of	8:-12 9:26
forecast for	9:18
forecast $	9:19
outlook==	9:14
outlook	9:14
the forecast	9:16
day==s	0:-23 1:-10 8:-23 9:23 10:95 11:74 12:10 14:9 16:-11 17:-10 22:98 23:-10 26:35 28:54 30:-15 31:-8 32:55 33:-10 36:-12 38:-8 39:-9 50:-8 52:19 54:-10 55:18 79:-14 81:-8 98:-11 99:-11 101:-10 103:14 104:-9 105:-12 107:-10 111:-11 113:-10 115:46 117:-18 120:38 121:70 125:-30
^ order	9:-9 10:11 39:-13 50:-36 51:26 66:-10 67:-8 116:137 117:20 118:83 119:27 120:-10 125:-10
order list	10:88 18:-10
day #n	22:11 121:12
#n day	0:-23 1:-9 10:100 11:39 14:11 16:-10 17:-9 22:92 23:-10 26:42 28:41 29:23 30:-21 32:34 33:-9 36:-13 38:-8 39:-8 45:-8 47:24 50:-8 53:12 64:-10 79:9 81:-9 86:-8 93:-8 98:-11 99:-30 101:-14 104:-9 105:-10 107:-10 112:-9 113:-9 115:45 117:-18 120:49 121:38 125:54
)~",
R"~(#c	0:-21 1:-28 2:-23 3:-33 4:-15 5:78 6:-12 7:-18 8:-50 9:-30 11:-16 12:-12 13:-16 14:-8 15:-10 16:55 17:-15 18:-17 19:-30 20:22 21:10 22:-24 23:-18 24:-17 25:-12 26:-31 27:-8 28:-15 29:-22 31:-26 32:-17 33:-24 35:-9 36:-19 37:-11 38:-17 39:11 40:-19 41:-13 43:-20 44:112 45:-17 46:29 48:-23 49:-8 50:88 51:40 53:16 54:-8 55:44 56:-11 57:-10 58:42 59:124 60:162 61:-19 62:-22 63:-17 64:-18 65:-17 66:48 67:95 68:65 69:50 71:-14 72:29 73:43 74:-10 75:-27 76:-17 77:-10 78:-42 79:25 81:35 82:39 83:-11 84:-13 85:101 86:-24 87:44 88:-26 89:-13 90:-12 91:-14 92:-16 93:-10 94:-8 95:-14 96:-12 97:-12 98:-18 99:51 100:-20 101:29 102:-9 103:-10 105:-23 107:-26 108:-30 109:-14 110:-22 112:-14 114:-14 115:-10 116:32 117:34 120:16 121:47 122:-10 124:-8 125:-23
&#c	0:-20 1:-26 2:-16 3:-19 4:-13 5:24 6:-11 7:-18 8:-48 9:-29 11:-16 12:-12 13:-15 14:-8 15:-9 16:57 17:-14 18:-15 19:-28 20:27 22:-24 23:-18 24:-17 25:-12 26:-21 27:-10 28:-15 29:-21 31:-26 32:-17 33:-23 35:-9 36:-19 37:-10 38:-17 39:12 40:-18 43:-19 44:134 45:-17 46:29 48:-13 50:43 51:50 53:16 54:-8 55:45 57:-10 58:46 59:123 60:173 61:-18 62:-22 63:-17 64:-17 65:-17 66:49 67:76 68:81 69:54 71:-10 73:44 74:-9 75:-24 76:-16 77:-10 78:-30 79:19 82:57 83:-11 84:-13 85:66 86:-22 87:40 88:-22 89:-13 90:-11 91:-12 92:-12 93:-8 94:-8 95:-14 96:-12 97:-11 98:-17 99:50 100:-18 101:21 103:-9 105:-17 106:-13 107:-23 108:-17 109:-14 110:-22 112:-14 114:-11 115:-10 116:29 117:23 121:45 122:-9 124:-8 125:-23
&#c#n	5:18 16:22 39:-8 44:50 55:-8 59:28 60:-19 69:14 73:23 75:-14 80:10 82:14 85:35 101:13 113:8 117:22 125:19
#c $	5:52 16:11 20:32 21:22 26:-10 33:-8 41:16 47:13 50:-19 51:-8 55:9 58:61 59:-10 60:54 66:24 68:-9 69:-14 73:38 85:13 87:23 107:-12 113:12 117:18 125:-11
order==s	6:-8 9:-14 10:27 11:-9 12:23 14:-10 19:-9 22:-9 31:231 32:-8 35:-12 116:-10 117:-12 119:-9
of order	10:34 12:36 31:-20 101:29 117:9 118:36
make==	0:33 2:19 3:-11 4:-8 7:18 8:-9 10:15 17:-10 30:-8 33:-12 36:33 38:-8 40:-8 41:-10 42:-19 47:-8 50:-9 55:40 58:33 61:60 62:-9 63:-8 69:38 78:59 81:-11 92:-9 99:38 103:-8 104:29 115:17 120:9 121:-12
^ make	3:-8 7:8 10:16 36:24 55:43 58:22 61:62 62:-8 78:33 99:28 104:25 120:9 121:-11
make me	10:17
the list	5:-9 6:23 8:-8 10:9 12:23 14:-19 25:-26 31:-16 32:-8 33:-10 35:47 48:26 57:8 58:13 62:27 63:8 69:9 75:10 86:15 89:-9 98:27 99:-9 100:56 120:14 122:20
shop==ping	6:-11 9:40 10:51 23:-13 35:-10 57:9
shop list	6:-11 9:41 10:51 23:-13 35:-10
day $	9:-8 10:12 11:18 12:11 16:-13 17:-10 22:46 23:-8 24:10 26:35 28:65 29:21 30:11 31:-12 32:46 35:-11 47:11 53:26 55:-11 62:-8 64:-8 79:13 86:-9 98:-10 101:25 105:-8 107:-9 108:73 112:11 115:42 117:-15 118:28 120:56
the next	10:40 11:30 13:-10 17:-10 22:-9 26:22 27:12 28:39 29:17 31:37 36:61 44:38 47:-18 75:-8 105:-8 107:25
next #n	10:45 11:33 16:-18 22:-9 26:25 28:63 29:29 30:-10 36:62 47:-16 75:-8 105:-8
#c day	10:8 120:-8 121:22
the order	5:15 9:-16 10:28 13:16 15:15 18:-13 31:38 48:9 51:26 116:14 117:54 118:34 119:21
buy now	10:11
order now	10:49
today==	9:-11 11:17 12:-22 14:-24 15:-8 16:-9 23:-11 28:22 29:92 30:-8 31:-12 32:-14 33:54 35:-20 44:-13 50:10 58:12 62:12 64:-15 98:23 100:-8 103:-10 105:27 108:23 110:67 111:18 118:14 125:42
today	9:-18 11:37 12:-31 14:-30 15:-14 16:-11 17:-9 19:-13 22:-10 23:-16 24:-8 27:-10 28:25 29:88 30:13 31:-23 32:-18 33:62 34:11 35:-24 44:-14 47:29 52:-15 53:25 54:61 55:-13 57:-9 58:9 61:-10 62:10 64:-18 98:22 100:-13 101:8 102:-11 103:-13 105:39 106:24 107:-10 108:9 109:-12 110:73 111:53 112:15 117:-8 118:89 119:-9 121:-9 124:-9
today $	9:-11 11:42 12:-21 14:-24 15:-13 23:-12 25:-16 28:53 29:17 31:-16 32:-13 33:54 34:12 35:-9 47:33 50:11 53:16 62:-26 63:8 64:-13 98:25 101:17 105:24 106:28 108:21 110:68 111:-11 118:49
this week	10:15 11:42 14:-8 25:-9 26:18 28:22 29:15 30:25 53:16 110:27 125:-10
order==ed	8:-17 9:18 10:25 11:-13 19:-15 22:-10 29:-15 31:34 32:12 50:-15 51:-8 66:-16 67:-9 116:189 118:17 119:54 120:-8 122:-8 125:-17
to be	0:8 1:-16 4:36 5:9 8:-11 9:44 10:18 11:37 12:22 13:-37 18:-13 19:-9 22:30 23:-22 25:-10 27:8 28:-8 29:11 30:-16 32:-8 37:38 40:12 41:-11 43:-16 44:-9 47:33 48:25 51:20 55:-9 64:-8 65:11 66:-12 72:-14 75:-8 76:16 81:24 83:40 84:-23 86:9 90:-12 91:23 93:-9 99:13 100:13 110:-10 114:18 122:18 125:-18
be order	9:29 10:85 11:-12 29:-15 31:-31 32:36
has==	0:-33 1:-12 2:-13 3:-10 4:-29 6:-11 7:-8 8:-22 9:-27 10:8 11:-19 14:25 15:43 16:-38 17:-19 18:-18 21:14 22:42 23:59 24:8 25:10 26:70 27:-10 28:-30 30:10 31:64 32:-30 33:21 35:-15 36:-25 39:-15 43:17 47:51 49:-10 53:-8 55:-13 58:-12 59:17 60:-11 61:-18 62:10 64:-43 65:52 69:-17 71:-9 72:-12 73:-10 74:14 75:31 77:16 78:18 80:14 81:-13 82:-11 84:-14 87:32 88:25 89:-19 91:-14 92:-11 93:-12 94:51 97:-13 99:26 100:-21 105:39 106:-10 107:38 108:12 109:19 110:-14 111:-13 112:-8 113:28 114:-10 115:-19 117:31 120:-8 121:16
has	0:-33 1:-12 2:-13 3:-10 4:-29 6:-11 7:-8 8:-22 9:-27 10:8 11:-19 14:25 15:43 16:-38 17:-19 18:-18 21:14 22:42 23:59 24:8 25:10 26:70 27:-10 28:-30 30:10 31:64 32:-30 33:21 35:-15 36:-25 39:-15 43:17 47:51 49:-10 53:-8 55:-13 58:-12 59:17 60:-11 61:-18 62:10 64:-43 65:52 69:-17 71:-9 72:-12 73:-10 74:14 75:31 77:16 78:18 80:14 81:-13 82:-11 84:-14 87:32 88:25 89:-19 91:-14 92:-11 93:-12 94:51 97:-13 99:26 100:-21 105:39 106:-10 107:38 108:12 109:19 110:-14 111:-13 112:-8 113:28 114:-10 115:-19 117:31 120:-8 121:16
what has	5:24 10:14 21:13 22:31 27:-9 29:-22 30:29 33:32
has to	4:-9 5:23 10:14 13:-11 27:25 29:-22 30:23 38:16 47:51 109:-16 111:21 113:8 114:28
order today	10:11
order with	31:8 50:-11 116:30 119:9
with in	10:9
buy in	10:16
in #c	49:10
order in	5:8 10:19 31:10 117:11
in #n	0:-9 1:-9 2:-8 7:13 10:51 11:-30 17:-9 18:32 36:-9 45:-10 47:85 49:22 63:9 66:-11 75:50 77:15 79:-12 81:-14 82:15 89:-13 91:-8 95:-21 99:-11 104:35 115:41 117:-11 118:20 120:8 125:-14
wire shall	9:-8 10:19
wire should	9:-11 10:23
due==	9:-9 10:39 11:226 12:49 13:-21 15:-8 17:-8 22:-10 23:-9 25:-10 26:-12 28:-17 29:-33 30:-10 31:14 33:-10 45:-12 47:158 50:-25 52:-15 53:-12 54:-9 55:81 56:15 65:-10 87:-8 110:-9 112:-9 113:-9 115:-19 116:51 118:10 125:-20
due	9:-9 10:39 11:226 12:49 13:-21 15:-8 17:-8 22:-10 23:-9 25:-10 26:-12 28:-17 29:-33 30:-10 31:14 33:-10 45:-12 47:158 50:-25 52:-15 53:-12 54:-9 55:81 56:15 65:-10 87:-8 110:-9 112:-9 113:-9 115:-19 116:51 118:10 125:-20
^ due	11:109 47:-24
last #r	53:-12 110:20
day #r	11:8 110:8 112:9
last the	9:-13 19:28 27:10
day the	9:-8 11:11 31:40 110:10
&#n#o#r@job	41:-9 45:8 89:8 93:9
part==	11:12 26:16 87:13 100:-10 109:11 110:13
#n last	11:8 33:19
part	11:12 26:15 87:13 100:-10 109:11 110:13
morn	2:-11 11:35 12:-14 13:-15 17:-9 18:-8 24:-8 25:-19 26:48 28:-21 29:32 33:-14 39:-9 40:12 41:8 42:-9 43:35 44:10 46:-9 47:-8 48:-9 50:12 53:28 54:8 62:-9 64:-8 74:11 75:-10 77:15 87:-8 91:-8 95:23 96:10 97:18 99:-9 100:-10 101:53 102:-17 103:-8 105:78 106:-11 107:25 108:8 109:-12 110:42 111:22 112:-15 115:56 117:16 125:-28
morn job	77:20 97:8
tomorrow	1:-8 4:-8 5:-8 6:-8 8:-15 9:-16 11:37 12:-20 13:-14 14:-40 15:-16 16:-16 17:-9 18:-14 22:-10 23:-15 25:-34 26:59 27:-9 28:89 29:58 31:-21 32:-13 33:16 35:-15 36:-10 37:-8 40:-8 45:-20 47:61 50:-8 51:-8 52:-11 53:82 54:51 55:-17 57:-8 61:-11 62:-15 63:-10 64:-9 65:-11 75:-15 76:-8 81:-8 83:-10 87:-8 89:-13 91:-11 93:-10 98:-8 99:-21 100:-18 101:42 103:-12 105:81 106:22 107:-11 108:-17 109:-18 110:52 111:63 112:66 113:-10 114:-8 115:74 118:102 119:-15 121:-9 122:-8 124:-17 125:-10
day #o	11:8 26:8
december	0:-18 1:-8 2:-16 4:-12 11:59 12:-21 13:-17 15:-11 16:-14 17:-12 23:-11 26:23 28:75 29:32 30:108 38:-13 40:-11 43:-8 44:-10 45:-24 47:75 50:-12 52:-21 53:105 54:43 55:-13 61:-10 62:-12 63:-10 64:-14 65:-18 69:-9 70:-9 71:-10 75:-14 81:-8 89:-26 90:-11 95:-11 97:-8 99:-11 100:-8 101:17 102:-8 104:-8 105:17 106:-8 107:-12 108:-9 109:-16 110:94 111:40 112:89 114:-10 115:28 116:12 118:68 119:-12 121:-8
of december	0:-11 2:-10 11:24 12:-17 26:27 28:18 29:22 30:42 45:-9 47:78 53:18 54:26 90:-8 105:11 110:11 111:30 112:21 115:14 118:39 125:-14
even	0:37 1:16 11:14 26:21 28:-8 29:9 53:11 54:23 66:11 110:38 112:-8 125:-18
)~",
R"~(part even	11:9 110:9
even job	11:8
@day	0:-17 1:-25 2:-14 3:-11 4:-18 5:-20 6:-12 7:-10 8:-23 9:-19 10:-20 11:74 12:-18 13:-27 14:-24 15:-29 16:-36 17:-29 18:-13 19:-14 23:-25 24:-20 25:-25 26:59 27:-19 28:47 29:82 30:56 31:-24 32:-15 33:46 34:25 35:-16 36:-12 37:-13 38:-16 41:-8 42:-9 43:-19 45:-17 47:76 48:-18 49:-8 51:-9 52:215 53:62 54:34 55:-22 57:-11 58:-13 59:-13 60:-10 61:-24 62:-36 63:-31 64:-19 65:-22 66:-12 67:-9 69:-10 70:-15 71:10 72:-10 73:-11 75:-22 76:-9 77:-15 78:-12 82:-13 83:-13 84:-15 85:-8 86:-8 87:-18 88:-8 89:-30 90:-10 91:-23 92:-10 93:-16 94:-25 95:10 96:14 98:-12 99:-24 100:-19 101:62 102:-8 103:-15 104:-14 105:49 106:55 107:-14 108:-10 109:185 110:107 111:57 112:71 113:-22 114:-17 115:90 117:14 118:104 119:-20 120:-12 121:-15 122:-9 124:-11 125:9
next @day	16:-11 17:-8 20:21 26:43 29:-36 47:39 52:-51 53:50 54:53 105:32 106:48 109:-46 110:-12 111:48 112:37 115:17 116:13 117:25 118:27 125:-69
@day job	11:8
@job last	11:9
last #o	53:9
&@day	0:-16 1:-25 2:-13 3:-10 4:-17 5:-16 6:-12 7:-10 8:-22 9:-19 10:-18 11:33 12:-17 13:-27 14:-23 15:-27 16:-36 17:-26 18:-12 19:-13 20:12 23:-24 24:-20 25:-24 26:61 27:-17 28:49 29:44 30:63 31:-24 32:-14 33:60 34:19 35:-15 36:-12 37:-12 38:-16 42:-8 43:-19 45:-16 47:84 48:-18 51:-8 52:133 53:70 54:88 55:-20 57:-10 58:-12 59:-12 60:-9 61:-18 62:-34 63:-29 64:-17 65:-22 66:-12 67:-8 69:-9 70:-14 71:11 72:-9 73:-10 75:-21 76:-8 77:-15 78:-11 82:-13 83:-12 84:-15 85:-8 86:-8 87:-18 88:-8 89:-28 90:-9 91:-23 92:-9 93:-15 94:-25 95:14 96:8 98:-12 99:-23 100:-15 101:47 103:-14 104:-13 105:60 106:60 107:-13 108:-10 109:112 110:82 111:90 112:84 113:-21 114:-16 115:101 117:15 118:111 119:-20 120:-11 121:-14 122:-8 124:-11 125:19
due the	11:11
week next	53:11
afternoon	11:33 14:-8 23:-10 26:48 28:-16 29:33 33:-16 40:16 43:19 45:-8 52:-14 53:60 54:10 75:-11 101:22 105:48 109:-14 110:81 111:-10 112:-9 115:18 125:-11
#n week	10:21 11:61 22:22 28:9 29:34 47:23 63:8 120:32 121:57
@job by	30:28 33:11 47:13
by the	0:20 4:-13 8:-8 12:8 21:13 30:46 41:19 66:-12 67:24 76:17 79:37 80:-11 87:11 104:25 121:18 125:-11
due job	47:19
last @day	33:29 50:15
#n by	30:11 36:-17 37:20 41:-13 42:-10 44:-9 69:11 76:19 79:14 85:24 97:16
by #r	30:11 47:18
day @day	28:-27 52:21 53:-11 110:13
recheck	4:-8 11:218 12:-16 13:-13 14:-8 16:-14 17:-40 22:-9 26:-14 28:-12 29:-43 30:-8 31:-15 33:-13 35:-8 43:-25 44:-9 45:249 47:-12 55:106 64:-8 75:-24 89:-82 93:-8 95:-9 97:-12 99:-8 103:10 104:42 105:-8 108:-16 113:-8 115:218 125:-17
fall==s	11:37 51:17 56:12 69:10 106:20 112:32 119:15
fall	11:85 47:-12 51:17 56:12 69:9 106:20 112:31 119:15
fall due	11:65 56:12
due on	11:24 47:25 50:-8 116:21 118:8
on #r	16:18 26:9 50:-17 53:38 89:-11 105:12 106:9 110:33 111:-17 116:28 118:12 125:-13
is due	11:24 12:44 29:-17 47:40 55:9
due $	11:48 12:-16 31:18 47:37
tonight==	11:19 23:-21 26:21 105:42 108:-9 110:57 125:-22
is anyth	11:26 23:23 25:27 26:38 83:-11 125:-9
anyth is	11:11
to do	10:-22 12:24 13:72 23:-8 26:-8 27:28 28:-21 29:51 30:9 35:-23 61:-8 64:17 65:-8 103:10 125:-10
tonight	11:19 23:-21 26:21 105:42 108:-9 110:57 125:-22
tonight $	11:19 23:-21 26:23 105:37 108:-9 110:49 125:-22
for next	11:56 29:-24 30:-9 47:12
@day $	1:-8 5:-8 8:-9 10:-8 11:38 12:-11 13:-9 14:-18 15:-16 16:-14 17:-9 20:12 23:-11 24:-11 25:-13 26:45 27:-9 28:149 29:58 30:50 31:-10 33:53 34:23 45:-22 47:44 50:-9 52:-25 53:43 54:-36 61:-11 62:-12 63:-10 65:-9 94:-20 105:-32 106:29 107:-10 108:-9 109:-35 110:63 112:-20 113:-8 115:27 117:29 118:56 119:-10 125:64
what fall	11:26
that is	3:-10 8:-14 9:18 11:23 13:-11 15:-10 16:-13 23:40 25:-13 29:-8 30:-8 31:-12 36:21 39:12 43:39 47:-8 53:13 59:21 60:-9 65:-11 67:-9 71:8 75:-9 77:-10 83:16 84:34 87:-12 91:15 92:8 93:20 101:-9 103:15 106:8 108:14 112:-15 119:8 121:15 124:-8 125:-10
due in	10:37 11:20 47:13
in #r	75:41 82:21 91:-9
on by	11:13
by next	29:-8 30:18 47:13
com==ing	8:-42 9:-12 11:36 12:-18 13:37 22:-13 23:-11 25:-16 26:25 29:-18 31:124 48:9 50:-11 62:25 63:-8 110:-8 112:-8 117:22 118:51 119:63 125:-27
com	8:-42 9:-12 11:36 12:-18 13:37 22:-13 23:-11 25:-16 26:25 29:-18 31:124 48:9 50:-11 62:25 63:-8 110:-8 112:-8 117:22 118:51 119:63 125:-27
are com	11:35 31:-9
com $	8:-15 31:70 117:22 119:44 125:-17
com up	11:33
is com	11:14 13:12 29:-17 31:23 50:-10 116:8 117:15 118:57
com for	11:13
for tomorrow	26:12 29:34 105:-10
tomorrow $	8:-9 9:-11 11:9 12:-12 14:-25 15:-12 25:-19 26:16 28:90 29:47 31:-15 32:-8 33:23 47:64 53:28 106:35 108:-25 110:28 112:32 117:-12 118:44
for @day	28:-9 29:55 30:25 75:-10 105:-13 109:-34 110:-19 111:38 115:16 118:16
com on	118:15
on today	11:11 28:-11 29:-9 47:10 53:17 54:14 105:13 106:19 112:31 125:-10
up on	2:15 11:38 24:34 29:-20 45:12 91:14
on this	11:14 26:-11 29:40 45:-16 115:29
this afternoon	11:10 23:-9 26:20 29:45 53:18 101:11 110:31 115:16
afternoon $	11:9 14:-8 23:-9 26:50 28:-14 29:44 33:-11 40:17 43:25 53:44 75:-11 101:14 110:32 115:21 125:-8
until==	4:-9 9:12 11:22 13:-8 16:-11 20:33 26:-16 27:-10 28:12 32:15 33:-17 37:13 43:-11 47:28 48:-10 52:23 53:-11 54:67 65:-13 71:10 81:11 101:54 102:-14 106:-10 108:-14 109:22 112:-12 113:-9 114:75 115:10 117:-11 118:31
show what	29:-9 33:18
until	4:-9 9:12 11:22 13:-8 16:-11 20:33 26:-16 27:-10 28:12 32:15 33:-17 37:13 43:-11 47:28 48:-10 52:23 53:-11 54:67 65:-13 71:10 81:11 101:54 102:-14 106:-10 108:-14 109:22 112:-12 113:-9 114:75 115:10 117:-11 118:31
on until	111:9
until the	5:9 32:8 101:8 110:17 114:20
me what	8:20 10:-9 11:28 13:-19 21:20 23:15 29:-12 32:38 33:23 88:11 125:-8
due for	10:11 11:8
by @day	11:28 26:9 29:-14 30:58
ready==	2:-8 11:24 12:-16 13:22 15:-9 17:-8 29:74 30:63 47:25 99:9 106:11 108:8 125:36
job have	12:26
ready	2:-8 11:24 12:-16 13:22 15:-9 17:-8 29:74 30:63 47:25 99:9 106:11 108:8 125:36
be ready	11:44 12:-10 29:-10 30:57 47:27 125:-24
ready $	11:37 12:-14 29:32 99:11 125:71
done==	0:-25 1:-14 2:-20 4:-25 5:30 8:-19 10:-17 13:51 14:-9 15:20 16:-44 17:-9 18:-13 19:-8 22:-8 23:-19 24:-12 26:-15 27:43 28:-12 29:-16 30:20 31:-11 32:-12 33:77 35:-10 36:-9 37:-8 40:9 43:146 44:96 48:-8 61:-10 65:-18 71:16 74:-10 77:-9 83:-8 87:-12 89:-11 91:-12 95:19 97:-10 99:-9 100:33 101:-12 103:73 104:-8 107:-27 108:59 113:-22 114:53 115:-15 125:25
befor==e	0:58 1:-12 5:-23 9:12 11:16 14:9 15:-16 16:-16 17:-10 18:19 35:13 39:11 41:-8 43:11 44:9 48:-8 60:10 62:-10 63:12 64:-11 71:-10 78:20 91:-9 99:11 107:-12 108:-8 114:95 115:34 118:17 125:-41
must be	2:17 10:9 11:14 29:-13 47:20 60:12 77:8 98:18 120:19 122:13
done	0:-25 1:-14 2:-20 4:-25 5:30 8:-19 10:-17 13:50 14:-9 15:20 16:-44 17:-9 18:-13 19:-8 22:-8 23:-19 24:-12 26:-15 27:42 28:-12 29:-16 30:20 31:-11 32:-12 33:77 35:-10 36:-9 37:-8 40:9 43:154 44:96 48:-8 61:-10 65:-19 71:16 74:-10 77:-9 83:-8 87:-12 89:-11 91:-12 95:19 97:-10 99:-9 100:33 101:-12 103:73 104:-8 107:-27 108:59 113:-22 114:52 115:-15 125:25
be done	5:29 12:19 13:-27 27:42 29:26 55:16 61:-8 64:10 125:-8
done on	13:49 17:-8 25:23 27:22 29:-16 43:-11 103:14
befor	0:58 1:-12 5:-23 9:12 11:16 14:9 15:-16 16:-16 17:-10 18:19 35:13 39:11 41:-8 43:11 44:9 48:-8 60:10 62:-10 63:12 64:-11 71:-10 78:20 91:-9 99:11 107:-12 108:-8 114:95 115:34 118:17 125:-41
on befor	11:19
befor the	9:17 11:11 114:29
done $	2:-8 4:-10 11:-15 12:18 15:36 17:-11 27:9 29:27 30:25 43:22 48:-9 65:-8 74:-8 108:37 113:-12 114:42 125:44
job has	14:36 29:-8
by tomorrow	11:15 29:-13 47:42 125:41
done by	11:21 30:14 61:-8 64:11
by today	66:8
promis==ed	1:-11 8:9 10:-22 11:152 13:-12 15:-8 23:34 28:-12 29:-29 30:-14 47:101 61:10 116:14 117:-20 118:78 119:-9 125:-15
job is	2:25 11:-28 12:42 13:-16 15:29 17:-12
promis	0:-9 1:-14 2:8 4:-8 5:-8 6:-8 8:8 10:-24 11:144 12:-9 15:-9 16:-12 17:-11 18:-8 23:27 26:-12 28:-16 29:-34 30:115 33:-8 37:-8 47:180 61:12 64:-9 83:-8 84:-8 105:-8 108:-8 113:-8 116:13 117:-21 118:75 119:-10 125:-22
is promis	47:35
promis for	11:64 23:-8 29:-24 30:9 47:40 118:17
is out	11:10 28:15 87:8 101:12
out on	4:38 29:-8 39:13 97:11 110:30
december $	0:-8 2:-10 11:39 12:-16 28:91 30:26 45:-13 47:96 53:-19 54:-34 89:-16 90:-8 110:59 111:-12 115:13 116:9 118:67 119:-9 125:19
)~",
R"~(due out	11:10 12:-8
going==	4:-10 8:-10 9:14 11:-31 12:-29 29:67 43:-16 44:-13 53:-13 54:10 58:8 61:9 64:-12 65:29 83:24 87:-9 93:9 102:35 107:55 108:20 112:10 125:23
going	4:-10 8:-10 9:14 11:-31 12:-29 20:11 29:67 43:-16 44:-13 53:-13 54:10 58:8 61:9 64:-12 65:29 83:24 87:-9 93:9 102:35 107:55 108:20 112:10 125:23
is going	83:26
are out	81:12 101:13
come==	1:-23 2:-16 4:13 5:43 8:-13 9:-39 10:28 12:-15 13:-11 15:-9 18:-14 19:43 20:13 21:-9 22:-11 24:22 25:29 26:-13 27:-18 28:40 29:-28 31:82 32:16 33:17 35:-9 36:-10 42:-30 45:8 56:9 62:-14 63:34 66:-10 70:10 72:17 73:-29 75:-21 77:-8 82:-11 88:28 89:-8 91:-10 98:12 104:-8 109:20 110:23 111:18 113:9 115:-8 116:10 117:38 118:13 119:45
come	0:-9 1:-19 2:-23 5:32 8:-18 9:-44 10:15 11:-17 12:-16 13:8 15:-13 16:14 17:-19 18:-21 19:37 20:13 21:-12 23:-18 24:14 25:26 26:-16 28:32 31:90 32:23 35:-13 36:-12 38:-9 41:10 42:-32 43:-13 47:-11 48:-11 49:32 51:-9 53:-9 56:12 59:19 61:-9 63:13 64:-9 65:-8 68:8 69:-10 70:22 71:-17 72:14 75:-25 77:-10 79:-9 81:-8 82:-14 88:21 89:-12 91:-9 93:53 98:11 104:-9 105:-9 107:-12 109:31 111:55 113:19 114:23 115:-13 116:17 117:48 118:59 119:43 121:-8
job come	12:-8
fall==	11:19 47:-9
on tomorrow	28:-12 29:25 47:8 53:10 54:12 111:22 112:18 118:24 125:-18
are due	12:-18 55:28
on #o	28:-8 53:11 54:18 118:8
date==s	11:52 29:50 47:-10 109:-9 111:9
date	0:-8 9:30 10:-8 11:78 12:8 13:-17 16:-8 17:-9 27:-15 29:62 30:28 45:-8 47:103 48:-8 65:-12 77:10 109:-9 111:9 117:-10 118:34 125:35
due date	11:53 12:10 13:-13 47:24
due day	47:20
day on	45:12 89:-8 111:27
the week	2:8 28:8 29:41
the due	11:33 13:-12 47:11
promise==s	11:10 29:12 53:18
promise	11:10 29:12 53:18
on tonight	11:9 105:12 110:20
day for	11:-10 28:8 30:8 47:29
for #r	16:12 27:-8 28:9 30:15 47:13 110:11 112:27
look==	0:24 1:-10 2:-10 4:-8 8:18 9:-11 10:-8 11:55 13:61 14:14 16:-20 17:31 29:-20 33:-9 35:-10 39:-11 43:-8 45:56 58:67 60:-12 61:22 65:-8 81:13 89:25 90:-17 91:-13 95:-8 97:-8 102:-8 107:-12 114:-8 115:131 125:19
again==	0:-13 1:-15 2:12 4:-15 5:-23 6:-8 8:10 9:-13 10:-9 11:41 12:-10 13:-28 14:-9 15:-10 16:37 17:-28 18:-8 23:-13 24:45 25:-16 26:-8 27:-10 28:-14 29:-22 30:-13 32:-13 33:-29 35:-26 36:-21 37:-11 38:79 40:-16 42:-15 43:-14 44:26 45:51 47:-14 48:10 50:-8 51:37 53:-15 54:-11 55:-9 61:-15 63:118 64:-12 65:9 70:-9 71:-12 72:26 75:-31 78:81 82:-13 83:-13 84:15 86:20 87:-10 89:-32 90:-10 91:-17 93:-10 95:44 96:-14 97:-19 99:-14 100:-10 101:-30 102:147 103:-11 104:59 105:-9 106:-12 107:36 108:-11 109:-11 110:-13 111:-13 112:58 113:21 115:95 117:-10 119:-8 125:-11
look	0:11 1:-16 2:-17 4:-23 8:26 9:-15 10:-9 11:61 13:86 14:12 15:23 16:-27 17:23 18:-10 22:-9 24:-10 29:-25 30:-8 33:-15 35:-12 39:-13 43:-19 44:-11 45:103 47:-14 48:-14 53:16 58:84 60:-13 61:58 62:-9 63:-10 64:13 65:-16 76:-9 77:-16 78:-9 81:12 82:-9 87:-9 89:122 90:12 91:-23 92:-8 95:-19 96:-13 97:-15 102:-11 107:-12 108:-12 111:-13 113:-12 114:-18 115:144 125:24
i look	17:16 45:10
look at	8:9 9:-8 11:75 13:-9 17:11 29:-16 45:48 58:14 81:15 91:-11 107:-10 115:61 125:8
again	0:-13 1:-15 2:12 4:-15 5:-23 6:-8 8:10 9:-13 10:-9 11:41 12:-10 13:-28 14:-9 15:-10 16:37 17:-28 18:-8 23:-13 24:45 25:-16 26:-8 27:-10 28:-14 29:-22 30:-13 32:-13 33:-29 35:-26 36:-21 37:-11 38:79 40:-16 42:-15 43:-14 44:26 45:51 47:-14 48:10 50:-8 51:37 53:-15 54:-11 55:-9 61:-15 63:118 64:-12 65:9 70:-9 71:-12 72:26 75:-31 78:81 82:-13 83:-13 84:15 86:20 87:-10 89:-32 90:-10 91:-17 93:-10 95:44 96:-14 97:-19 99:-14 100:-10 101:-30 102:147 103:-11 104:59 105:-9 106:-12 107:36 108:-11 109:-11 110:-13 111:-13 112:58 113:21 115:95 117:-10 119:-8 125:-11
at again	11:32
this even	53:12 110:12
even $	26:13 29:10 53:14 54:15 110:12
recheck==	11:68 13:-8 16:-8 17:-11 29:-15 33:-8 43:-20 45:83 47:-9 55:90 75:-12 89:-50 103:14 104:24 107:-11 108:-11 115:221 125:-14
i recheck	11:34 17:-13 45:8 115:28
in today	14:-16 28:47
we recheck	115:14
check==	0:-17 3:46 9:-8 11:16 17:55 18:26 29:-15 35:-13 37:-12 41:-9 114:11 115:72 117:31 125:11
check	0:-18 3:42 9:-8 11:15 16:-8 17:53 18:24 29:-15 35:-14 36:-8 37:-12 41:17 42:-9 45:13 76:-10 91:15 108:-8 110:27 115:71 117:31 119:-8
i check	17:57 29:-12 35:-12 74:11 76:-8
check again	11:16
again on	13:-12 16:11 17:-15 24:65 33:-11 89:-11 115:44
befor @day	11:13
again $	1:-9 2:19 5:-9 11:20 16:12 17:-8 23:-11 24:-11 25:-10 28:-10 29:-12 30:-11 33:-11 35:-13 36:-14 37:-9 38:89 40:-12 43:-8 44:12 45:-9 53:-13 54:-8 61:-8 62:14 63:60 64:-8 65:17 71:-8 72:15 77:9 78:28 82:-8 83:-11 84:17 86:11 89:-10 91:-11 94:9 95:29 99:-8 101:-15 102:76 104:35 107:21 109:-8 110:-10 111:-8 112:61 113:28 115:15 125:-11
recheck $	11:32 45:10
in until	11:8
until @day	11:8 54:10 101:14 111:11 115:12 125:31
we look	11:36
what need	10:10 11:21 25:18 29:10 103:-8
look==ed	11:8 45:64 53:21 89:-20 90:35 94:-11 125:14
a recheck	11:8 55:8 103:15 104:32
recheck for	11:23 45:-8 115:13
next week	11:12 12:-9 16:-10 17:-10 25:-20 26:30 27:-8 28:28 29:-14 30:46 50:-22 53:19 66:-19 101:78 102:-9 110:64 116:-12 118:15 125:55
recheck==ed	17:-27 45:157 75:-12 89:-20 115:8
want a	13:15 22:19 26:19 51:12 103:13
recheck are	11:26 12:-11 55:28
recheck==s	11:154 12:-12 26:-9 29:-27 31:-8 55:17 115:-10
which recheck	11:16
recheck is	55:11 115:16
due tomorrow	11:11
^ any	0:13 3:-11 8:8 9:-10 11:48 17:53 18:-12 22:12 23:58 26:21 30:19 31:19 36:-8 37:-10 47:-15
the recheck	11:32 43:-13 45:77 55:25 75:-11 89:-23 115:44
wait==ing	8:-8 11:19 12:97 23:-21 28:-18 29:-25 31:62 51:11 118:18
is wait	9:17 12:43 23:-9 29:-8
wait on	28:-13 31:27 114:56 125:-14
on next	16:20 17:-9 29:8 52:-19 53:-11 54:18 112:20
which the	109:15
overdu==e	11:173 23:-8 25:-13 29:-10 31:9
overdu	11:173 23:-8 25:-13 29:-10 31:9
overdu $	11:90 25:-11 31:11
past==	19:15 31:32 33:-9 42:18 54:12 78:-8 89:-8 91:-10 93:38 107:28 109:-8 111:29
are is	89:27
past	19:15 31:32 33:-9 42:18 54:12 78:-8 89:-8 91:-10 93:38 107:28 109:-8 111:29
^ overdu	11:60
behind==	11:32 29:9 48:-9 50:14 65:-10 66:-10 69:12 77:10 93:11 114:71 125:-11
behind	11:32 29:9 48:-9 50:14 65:-10 66:-10 69:12 77:10 93:11 114:71 125:-11
behind with	11:13
with anyth	11:46
am==	5:-8 6:11 9:24 12:50 13:-9 17:-18 22:-9 23:10 25:-9 28:-8 29:28 30:-9 33:-14 35:-9 36:-11 42:-22 43:35 51:11 52:14 53:-8 59:-8 60:9 64:32 65:24 73:23 82:-14 89:12 97:-8 105:-9 107:63 108:64 110:23 111:39 113:14 122:-11 124:-9 125:40
am	5:-8 6:11 9:24 12:50 13:-9 17:-18 22:-9 23:10 25:-9 28:-8 29:28 30:-9 33:-14 35:-9 36:-11 42:-22 43:35 51:11 52:14 53:-8 59:-8 60:9 64:32 65:24 73:23 82:-14 89:12 97:-8 105:-9 107:63 108:64 110:23 111:39 113:14 122:-11 124:-9 125:40
^ am	11:13 29:8 108:28
am i	12:52 23:16 27:10 29:39 35:-12 125:-9
i behind	11:10
overdu with	11:10
with someth	11:8
someth $	11:8 26:8
press==	0:-11 2:-11 4:-15 5:-10 6:-9 8:-10 9:-17 10:-9 11:62 12:-14 14:-19 15:-12 16:121 17:-20 18:-8 20:-8 21:-10 22:-12 23:-16 24:-22 25:59 26:81 27:-15 28:-42 29:50 30:-19 31:-17 32:-11 33:-31 35:-12 37:-11 38:-12 43:-27 44:-58 45:-15 47:-12 48:-10 52:-20 53:-15 54:-11 55:62 57:-14 58:-10 60:-8 61:-13 62:-13 63:-10 64:-10 65:-8 67:-10 71:-8 75:-21 77:-9 78:-9 83:-11 84:-8 85:15 86:52 89:-9 91:-9 98:17 99:101 100:54 101:153 102:98 103:26 104:-27 105:122 106:101 107:-15 108:-15 109:-18 110:-18 111:-15 112:-16 113:-9 114:-9 115:-12 117:-10 118:-16 119:-9 122:-11 124:-11 125:35
press	0:-20 1:-16 2:-31 3:-13 4:-36 5:-21 6:-18 7:-12 8:-23 9:-33 10:-16 11:98 12:-27 14:-42 15:-57 16:228 17:-43 18:-14 19:-17 20:-15 21:-17 22:-23 23:-33 24:26 25:187 26:87 28:-60 30:-29 31:-28 32:-36 33:8 36:-15 37:-17 38:-24 40:-12 41:-11 42:-8 43:-74 44:269 47:-27 48:-24 52:-24 53:-24 54:-19 55:62 57:-24 58:-16 60:-13 61:-16 62:-17 63:-14 64:-23 65:-27 67:-12 69:-8 70:-13 71:-19 72:-12 73:-16 74:-8 75:-32 76:-9 77:-22 78:-15 81:-9 83:-20 84:-20 85:15 86:56 87:-15 89:-22 90:-18 91:-26 92:-11 93:-18 94:-16 95:-27 96:-13 97:-9 99:188 100:90 101:184 102:132 103:105 104:-14 105:157 106:145 107:12 108:-36 109:-21 110:-28 111:-25 112:-23 113:-24 114:-25 117:-16 118:-21 119:-14 120:-12 121:-14 122:-25 124:-21 125:30
to press	11:22 13:36 16:-10 29:-12
)~",
R"~(press today	44:-10 125:49
i press	11:23 16:39 44:11
press in	11:15 25:50 102:-11
we to	10:32 32:-18
press on	16:-17 25:-12 26:50 28:-9 29:-10 44:11 99:8 101:10 103:16 105:16 106:31 125:-16
press for	11:20 26:-11 99:-8 101:-8 104:-9 105:49 115:22 125:27
press $	4:-10 8:-8 9:-13 13:10 14:-14 15:-9 16:-27 17:-10 19:-8 24:58 25:35 26:72 27:-8 28:-12 29:22 32:-9 33:-21 35:31 44:51 77:-8 86:32 98:-8 99:51 100:49 101:13 102:-15 103:42 105:-10 122:-10 125:27
press==ing	2:-11 4:-10 11:37 13:-17 16:100 24:18 25:-20 27:17 29:-18 32:-16 33:-11 35:23 43:-31 44:47 45:34 55:22 86:21 99:-13 103:14 104:40 105:-13 106:-8 107:40 115:16 125:-19
need press	11:19 25:11 100:-8 103:47 106:32 125:-13
press==ed	2:-8 4:-9 11:51 13:12 15:-39 16:28 17:-14 24:35 25:-10 29:-35 33:58 43:-10 44:314 45:-10 48:-10 65:-9 71:-9 77:-9 86:-9 91:-11 93:-9 95:-15 101:-9 102:-13 105:-9 107:-8 108:-8 113:-9 114:-8 125:63
be to	63:9
be press	11:50 16:32 29:-19 44:-14
for today	26:10 54:16 101:14 108:30 125:-8
until #o	20:10
should be	1:22 5:-16 7:29 8:-8 9:-21 10:19 22:8 29:-10 31:35 38:-8 45:-8 47:11 55:38 69:16 89:-10 98:21 104:28 106:30 115:19 117:-13 118:20 119:-12 125:-22
this morn	2:-10 11:-8 13:-13 25:-9 26:-9 28:-8 29:13 39:-8 40:13 41:8 42:-8 43:22 44:13 45:14 46:-9 50:13 54:16 74:12 75:-9 77:16 95:24 96:10 97:19 101:34 102:-10 105:19 107:27 108:10 111:36 115:34 117:19 125:-11
morn $	11:36 12:-13 24:-8 25:-13 26:60 28:-13 29:48 33:-11 41:12 43:21 44:14 54:14 95:27 97:8 101:43 102:-9 107:33 109:-10 111:23 115:38 117:18 125:-17
latest==	11:87 16:-14 29:73 105:-8 107:-9 113:17 125:-12
latest	11:87 16:-14 29:73 105:-8 107:-9 113:17 125:-12
^ latest	11:40
latest press	11:41
press by	11:41 29:-8
by date	11:25
date $	11:8 31:8 125:10
date==	0:-8 9:33 11:26 12:10 13:-16 27:-14 29:12 30:30 47:113 48:-8 65:-11 77:11 117:-9 118:35 125:31
the press	9:-9 12:-9 13:-8 14:-12 16:-31 17:-8 24:-11 25:91 26:106 27:-8 28:-35 29:66 30:-13 31:-13 33:-14 35:-15 38:-8 43:-10 44:46 47:-10 52:-11 53:-11 54:-10 57:-10 61:-9 67:-9 75:-21 83:-8 85:17 87:-8 89:-9 98:-11 99:75 100:20 101:56 102:83 103:35 104:-8 105:92 106:13 107:-10 108:-8 109:-13 110:-10 111:-12 112:-12 115:17 125:-18
date of	11:47 13:-12 118:11
date for	11:19 29:17 47:12 118:25
^ press	2:-9 11:-13 13:-18 16:66 29:13 35:-8 43:-22 44:87 52:-9 55:60 71:-9 99:-13 100:-8 101:120 102:36 104:21 105:36 118:-9 125:18
the latest	11:47 16:-9 29:71
latest day	11:8
day to	9:26 10:10 11:8 31:-10
day of	8:-15 9:29 11:8 47:11 112:9
time==	0:-18 2:-8 3:-9 4:-9 5:-13 8:-19 9:15 11:-20 12:-12 13:-21 14:-20 15:-10 16:-9 17:-13 19:29 20:26 23:-15 25:-21 26:25 27:130 28:23 29:68 30:9 31:-8 32:22 33:-28 35:-15 43:-20 47:18 48:-13 55:18 64:-11 65:65 78:20 83:-10 87:-13 95:26 101:-11 104:18 105:-10 106:56 107:-12 108:9 109:48 111:-14 114:-8 115:-26 120:9 121:33 125:11
time	0:-18 2:-9 3:-10 4:-10 5:-14 6:-10 8:-21 9:11 11:19 12:-19 13:-22 14:-22 15:-13 16:-17 17:-15 19:23 20:25 23:-16 25:-26 26:38 27:139 28:67 29:44 31:-10 32:59 33:-31 35:-17 42:-9 43:-21 47:18 48:-13 55:17 61:-9 64:-12 65:64 78:19 83:-10 87:-13 95:26 101:-15 102:-8 103:-8 104:17 105:-15 106:53 107:-13 108:8 109:46 111:-15 112:-8 114:-8 115:-27 121:33 125:9
press time	11:57 29:-9
time $	14:-8 19:29 20:31 26:-10 27:63 29:47 32:-8 33:-15 65:17 93:10 95:29 115:-23 121:14 125:30
anyth due	11:10
with @job	11:-15 13:22 15:-8 29:26 113:57
anyth fall	11:12
when is	9:21 11:52 13:-13 15:-8 25:68 26:-33 28:23 29:28 31:64 45:-10 47:-8 125:-9
@job due	47:26
^ recheck	11:23 17:-12 45:113 55:33 75:-11 89:-44 115:76
#n due	11:-12 12:30 47:25
recheck of	43:-13 45:84 75:-11 89:-31 115:61
check the	43:10 115:8
@job again	45:23 72:20 95:-15 107:24 115:31
at @job	45:12 115:28
at the	0:-8 4:8 5:15 8:10 9:-14 12:78 14:-18 15:-10 16:-10 17:-8 24:15 25:13 26:-11 27:-8 28:-8 33:-10 35:-11 36:8 41:-14 42:10 44:-8 45:25 46:29 48:13 50:23 54:9 58:49 61:27 64:11 72:-9 76:66 77:15 78:-27 87:-13 91:-10 92:13 97:-8 100:-11 102:-8 103:32 109:-8 110:30 111:-12 112:-9 120:9 125:-21
at job	11:19 16:9 89:8 115:18 125:20
#n again	11:22 16:27 78:23 125:22
must the	11:30
press at	11:15 44:9 105:22
latest $	11:27
#n have	4:-8 27:19 45:20 72:-12 75:20 81:11 90:13 115:-10 125:26
@job have	4:12 11:9 26:32 27:-8 29:-24 74:17 90:10
press job	13:-12 15:-31 16:60 29:-10 33:61 43:-15 44:20 107:42
press the	43:-12 44:75 106:8
@job at	3:-12 13:8 17:24 41:27 42:-9 44:-12 76:16 78:11 96:9 107:33 108:28
press @job	13:-9 16:40 43:-8 44:12
we press	16:51 103:18 125:-12
is job	4:-10 5:-8 11:17 13:140 15:59 16:84 17:-15 23:-23 27:16 29:67 30:-11 33:-10 43:-30 44:-9 48:-8 65:-11 113:-25 114:-9 125:-59
want $	2:-8 4:25 9:38 11:10 13:10 29:-10 58:-8 83:32 98:23 99:22
#n promis	11:24 29:-8
promis $	11:32 30:37 118:13
day is	11:30 28:17
@job promis	11:20
which day	11:25 28:35 29:-9 30:10
deadlin==e	11:50 47:97 48:-9 87:-9 113:-10
deadlin	11:50 47:97 48:-9 87:-9 113:-10
the deadlin	11:8 47:20
deadlin of	11:24
^ deadlin	11:16
deadline==s	10:12 11:104 122:39
deadline	10:12 11:104 122:39
the deadline	11:18 29:8
deadline on	11:28
^ deadline	11:61
deadline for	11:12
until today	47:10
person==	13:-20 14:-24 15:79 17:-14 20:8 25:-8 27:-8 28:28 29:37 38:-8 49:-9 53:-9 55:-11 56:-8 58:134 59:36 60:-9 61:67 62:86 63:73 64:-18 65:13 72:-13 92:-13 93:-11 98:-21 102:-8 107:14 108:-9 125:-18
^ job	1:-19 2:-23 3:-14 4:-17 5:25 6:-24 11:-11 12:57 13:101 15:-19 16:-41 17:-18 18:-12 23:-33 27:-21 29:-57 33:-65 37:-24 38:-13 40:-11 41:8 42:-17 43:113 44:33 45:8 46:-13 47:87 48:15 55:-8 61:-17 62:-8 64:63 65:29 69:-9 71:-13 72:-19 73:18 74:94 75:-12 76:8 78:-27 80:-16 81:-16 82:20 83:-14 89:13 90:48 91:67 92:21 93:84 94:32 95:18 97:24 98:-9 99:-11 102:-8 104:-13 105:-18 106:-11 107:43 108:-50 113:97 114:69 117:-8 118:-8 121:-8 125:-37
person	11:-12 13:-21 14:109 15:78 16:-8 17:-15 23:-9 25:-13 27:-10 28:26 29:30 32:-9 33:9 38:-9 43:-8 49:-10 53:-10 55:-13 56:-9 57:-8 58:128 59:36 60:-10 61:66 62:82 63:72 64:-19 65:12 72:-13 92:-13 93:-12 98:-22 99:-8 102:-9 103:-8 107:13 108:-11 120:-8 125:-22
@person	0:-18 1:-26 2:-20 3:-16 4:-21 5:-28 6:-17 7:-13 8:-21 9:-22 10:19 11:-44 12:109 13:-47 14:-32 16:-24 17:-38 18:-21 19:-17 20:-17 21:-16 22:-19 23:-42 24:-28 25:-20 26:52 27:-28 28:114 29:93 30:32 31:-15 32:-17 33:87 34:-8 35:-14 36:-15 37:-11 38:-10 40:-19 42:-9 43:49 44:-20 45:-19 46:-14 47:-33 48:-28 49:-13 51:-10 52:-79 53:-35 54:-34 55:-22 58:-48 59:127 61:195 62:160 63:183 64:149 65:35 68:-9 69:-12 70:-13 71:-12 72:-20 73:-11 74:-10 75:-23 76:-9 78:-11 79:-9 81:-12 82:-9 83:-10 84:-19 85:-11 86:-11 87:-24 89:-23 90:-12 91:-17 92:-21 93:-23 94:-14 95:-15 96:-10 97:-19 98:-22 99:-17 100:-9 101:-31 102:-24 104:-25 105:64 106:54 107:63 108:-32 109:161 110:115 111:136 112:-31 113:-23 114:-21 115:-21 116:-11 117:-21 118:-28 120:-12 121:-19 122:-11 124:-14 125:59
person @person	12:16 28:37 29:48 58:-12 60:-10 62:-20 63:-10 64:-9 72:-12 92:-11 93:-9 107:22 109:9
@person mine	28:12 29:15 61:-9 64:-11
mine ~	28:25 29:19 61:-17 64:-13
&@person	0:-18 1:-26 2:-20 3:-15 4:-21 5:-28 6:-17 7:-13 8:-21 9:-22 10:19 11:-43 12:110 13:-42 14:-32 15:9 16:-24 17:-38 18:-21 19:-17 20:-17 21:-16 22:-19 23:-42 24:-28 25:-20 26:52 27:-28 28:68 29:50 30:33 31:-14 32:-17 33:85 34:-8 35:-14 36:-14 37:-11 38:-10 40:-19 42:-9 43:52 44:-20 45:-19 46:-14 47:-27 48:-28 49:-12 51:-10 52:-79 53:-33 54:-34 55:-21 58:-38 59:132 60:12 61:184 62:193 63:192 64:133 65:39 68:-9 69:-12 70:-13 71:-11 72:-9 73:-11 75:-22 76:-9 78:-11 79:-9 81:-12 82:-9 83:-10 84:-19 85:-11 86:-11 87:-23 89:-23 90:-12 91:-17 92:-11 93:-15 94:-14 95:-15 96:-10 97:-19 98:-17 99:-17 100:-9 101:-31 102:-24 104:-25 105:64 106:55 107:51 108:-32 109:158 110:106 111:139 112:-30 113:-22 114:-21 115:-21 116:-11 117:-21 118:-28 120:-12 121:-19 122:-11 124:-14 125:64
bench==	1:9 5:-13 6:35 7:-10 8:-15 9:-9 11:-12 12:67 13:-38 14:17 15:115 16:-11 17:-17 18:-8 19:-9 20:-8 23:-14 24:-8 26:-12 27:-12 29:-21 31:-8 32:-13 33:-13 35:-14 39:-13 43:-13 48:-9 53:-9 55:-9 57:-8 58:92 60:-9 61:106 62:-13 63:-10 64:121 65:17 67:8 72:-10 87:-12 92:-11 93:-10 98:-14 99:26 100:46 101:27 102:-11 103:128 104:-10 105:12 107:-12 108:-11 110:-11 111:-8 113:-9 114:-14 125:-18
)~",
R"~(bench	0:-11 4:-10 5:-17 6:31 7:-14 8:-30 9:-26 10:-12 11:-33 12:52 13:-43 14:19 15:107 16:-14 17:-22 18:-9 19:-12 20:-11 21:-11 22:-13 23:-30 24:-14 25:107 26:49 27:-20 28:-26 29:-9 30:-12 31:-16 32:-21 33:-19 35:-26 36:-9 37:-8 38:-14 39:-15 40:-10 43:-20 45:-9 47:-10 48:-11 52:-10 53:-22 54:-8 55:-18 57:-15 58:82 59:-9 60:-17 61:117 62:-22 63:-17 64:108 66:-8 69:-9 71:-8 72:-11 84:-9 86:-8 87:-15 89:-11 91:-12 92:-12 93:-12 98:-31 99:199 100:85 101:115 102:78 103:117 104:-34 105:104 106:59 107:-18 108:-22 109:-13 110:-32 111:-26 112:-12 113:-13 114:-15 115:-12 117:-8 118:-11 119:-10 120:-8 121:-13 122:-15 124:-11 125:-48
bench ~	12:25 64:28
~ person	12:13 28:12 29:8 61:-10
@person bench	12:13
job do	12:26
are open	12:28 28:-9 52:12 54:10 109:25 112:16
open $	2:-9 8:-16 9:-10 12:62 13:17 28:12 109:59 112:10
^ queu	12:84 114:25
are my	28:32
my job	12:53
are mine	11:-8 12:54 26:37 28:-9 29:-22
mine $	12:52 13:-26 15:40 17:-8 26:-13 43:-9 48:-8 64:140 65:-8 101:-8 105:40 113:-13 125:-9
job of	4:17 12:36 30:8
of @person	12:15 26:10 28:13 33:9 52:-17 61:11 62:-18 109:39 111:-8
@person $	12:47 13:-9 15:-8 26:-12 29:59 59:101 61:-25 62:61 64:53 65:40 104:-8 105:21 107:-8 109:-16 110:-16 111:-11
show job	12:10 13:66
@person job	12:29 64:21 72:-9 92:-8 107:13
^ @person	1:-9 2:-12 4:-9 5:-8 10:-9 11:-10 12:-14 13:-12 14:-10 15:-19 16:-8 17:-10 18:-11 24:-8 28:-41 29:-45 30:-18 31:-8 33:10 38:-9 43:45 44:-8 47:-13 48:-13 52:-34 53:-13 54:-17 58:-18 59:60 60:-37 61:84 62:80 63:112 64:30 66:8 75:-11 87:-9 89:-8 98:-8 99:-12 101:-13 102:-14 104:-9 105:30 106:16 107:38 108:-9 109:122 110:154 111:111 112:-15 113:-10 115:-10 118:-11 121:-9
job doe	12:-8 14:31 29:15
doe @person	12:37 28:94 61:-8 62:-9 109:-11 111:-13
@person have	12:38 28:-16 29:29 30:16
has @person	12:28 26:40 29:26
@person got	12:55 26:-12 29:-11 59:11 61:15
the ~	58:15 64:9
~ bench	12:16 58:13 61:11 64:23
bench $	9:-9 11:-16 13:-12 14:26 15:9 17:-8 26:39 27:-8 28:-10 29:-10 32:-10 33:-9 35:-10 58:57 61:61 64:92 65:-11 99:35 100:62 101:-8 102:-8 103:99 104:-9 106:36 107:-8 125:-23
of ~	27:-8 32:68 121:45
job at	12:20
at ~	11:-11 56:78 58:-8 121:26
on ~	35:12
are on	4:12 8:10 116:8
are at	24:17
about==	1:-9 5:-14 8:15 9:-23 10:16 11:-10 13:61 15:10 16:-12 17:81 18:-9 21:-9 22:28 23:-14 24:-9 25:56 27:-9 29:-18 30:-9 31:-10 32:30 33:20 37:-8 39:-9 43:-9 45:-14 48:-10 50:-12 51:27 53:-9 62:-14 65:-9 67:11 68:-14 75:-14 77:-12 79:38 84:9 86:9 89:61 103:-14 112:-16 125:57
about	1:-9 5:-14 8:15 9:-23 10:16 11:-10 13:61 15:10 16:-12 17:81 18:-9 21:-9 22:28 23:-14 24:-9 25:56 27:-9 29:-18 30:-9 31:-10 32:30 33:20 37:-8 39:-9 43:-9 45:-14 48:-10 50:-12 51:27 53:-9 62:-14 65:-9 67:11 68:-14 75:-14 77:-12 79:38 84:9 86:9 89:61 103:-14 112:-16 125:57
what about	0:-13 3:11 8:72 13:19 17:9 19:-16 22:-10 33:-23
about job	13:44 15:15 33:-13 84:12 125:-18
how about	13:18 25:31
about @job	13:8
about the	8:44 9:-22 13:24 19:9 22:-14 25:63 32:-10 33:51 35:11 38:-13 87:12 103:-14
far==	2:-17 3:-9 4:17 8:-9 9:37 11:-9 13:51 14:13 16:31 17:-13 19:16 27:49 29:-11 33:17 35:-9 46:34 68:-15 77:26 92:14 107:-15
far	2:-17 3:-9 4:17 8:-9 9:37 11:-9 13:51 14:13 16:31 17:-13 19:16 27:49 29:-11 33:17 35:-9 46:34 68:-15 77:26 92:14 107:-15
how far	2:-16 4:18 5:20 9:42 13:34 16:24 17:-20 21:-11 27:53 29:-8 92:15 107:-14
far are	27:22
we with	13:65 16:-8 27:17 107:-14
with job	29:15 107:51 108:14 113:26
wher are	1:-9 4:32 13:52 107:-11
status==	13:180 25:9 62:18
status	13:180 25:9 62:18
the status	13:22
status of	13:85
stat==e	2:-12 5:18 13:79 25:53
stat	2:-12 5:18 13:79 25:53
the stat	13:54
stat of	13:54 25:53
^ status	13:64
slot is	0:-11 13:25 36:-8 77:29 91:50
is open	2:-9 12:11 13:30 28:-13 52:17 109:29
open on	12:8 13:13 28:39 53:43 112:20 125:14
slot are	4:-12 13:12 27:17 43:18 74:30
open of	13:8
@job is	0:-13 2:-16 4:-15 11:-19 13:-30 15:-8 16:-14 17:-25 18:-13 23:-12 29:-18 36:-10 37:-11 41:63 43:24 44:33 45:17 48:24 64:34 65:72 71:9 73:32 76:13 83:28 84:-30 87:45 89:-28 91:-10 92:-8 93:34 97:16 106:9 108:-17 113:64 114:60 125:-47
is still	5:-10 17:-17 27:42 31:16 45:63 87:48 124:-14 125:-16
still open	12:-11 13:8 31:15
fret is	5:-10 13:44 17:-8 78:22 93:11 104:14
miss==ing	13:60 17:-19 44:9 77:23 125:-8
@job are	4:-8 18:16 43:20 70:-10 71:25 74:19 83:-12 84:15 91:16 95:10
are still	2:17 5:-19 11:-12 12:43 13:12 17:32 19:-8 31:39
miss	13:60 17:-19 44:9 77:23 125:-8
still miss	13:18
still to	5:-20 6:-8 13:22 27:33 31:18
to make	2:20 42:-11 78:28
make on	115:23
#n are	4:-12 44:19 45:-11 70:20 74:13 81:46 82:-11 83:15 84:24 89:-15 90:33 95:16 96:12 108:-8 125:13
left to	5:-9 11:-10 13:65 17:29 23:-9
dress==ed	0:-11 1:82 13:15 17:-14 36:22 39:40 41:-12 42:40 43:73 50:-15 72:-10 79:-10 80:-8 88:-9 97:10 107:-21
yet==	8:14 11:-9 13:74 16:71 17:25 19:-14 23:-10 31:70 33:-16 40:-8 43:-10 44:-17 89:-10 110:-9 125:63
is @job	11:13 13:8 15:62 16:-13 17:24 23:-19 64:-12 125:81
all press	13:30 16:-15
yet	8:14 11:-9 13:74 16:71 17:25 19:-14 23:-10 31:70 33:-16 40:-8 43:-10 44:-17 89:-10 110:-9 125:63
press yet	13:-19 16:77 44:-14 125:-11
yet $	8:15 13:60 15:-12 16:74 17:24 19:-13 23:-9 31:71 33:-10 43:-9 44:-16 89:-9 110:-8 125:38
#n cut	5:54 70:-20 71:28
@job cut	6:33
@job done	30:10 47:10 48:9
all cut	5:-9 13:10 43:17 71:41
person==s	14:133 33:13
retir==ed	14:126 15:-11 26:-10 58:-9 61:-16 62:61 63:54 102:11 110:-8 118:10 125:-8
^ person	14:83 58:-17 61:30 62:87 63:9
retir	12:-11 14:110 15:-12 16:-8 25:-8 26:-13 28:-11 29:-13 33:-10 58:-13 59:-12 61:-30 62:173 63:76 64:-10 86:26 102:10 109:-13 110:-18 111:-10 117:-9 118:9 125:22
person $	12:-13 14:100 33:12 58:-16 60:12 61:33 62:38 63:33 125:-8
who is	11:-8 13:-10 14:70 15:76 25:54 26:22 28:94 29:33 32:-19 33:-22 125:-29
work==s	14:36 15:19 25:-15 28:-17 29:-13 32:-8 33:-27 35:30 52:-9 53:-10 54:14 55:-8 58:35 61:49 63:28 64:-13 102:52 109:95 110:-12 111:37
who work	14:38 28:34 29:-9 62:29 63:-8
work here	14:37 28:-23 58:39 61:-10 62:53 63:51 109:-25 111:-11
here $	9:-11 14:54 15:-10 25:-12 28:-8 31:28 32:-11 33:-8 35:38 50:12 60:19 62:23 64:19 65:-8 108:13 117:78 118:-30 125:-12
who all	14:61 28:-8
all is	14:44 28:-8 45:15
shop $	8:17 14:35 25:36 28:-23 29:24 31:-8 38:11 48:30 53:-9 54:9 55:24 58:11 61:-13 62:29 63:30
is here	50:12 53:13 109:47 110:-22 111:10 117:68 119:-11
peopl==e	10:-9 11:-10 12:-11 14:173 25:-16 28:29 33:-10 34:10 35:-9 58:13 63:47 110:-9 118:9
peopl	10:-9 11:-10 12:-11 14:173 25:-16 28:29 33:-10 34:10 35:-9 58:13 63:47 110:-9 118:9
the peopl	14:35 28:33 29:-10 62:12 118:10
peopl $	14:94 63:38
show peopl	14:23
who has	14:24 15:14 23:77 25:15 26:41 28:-11 33:-61 62:-10 63:13 65:16
has retir	14:28 62:36 63:-21 118:11
retir $	14:68 61:-11 62:65
whos==e	12:28 13:-15 15:191 23:20 50:11
whos	12:28 13:-15 15:191 23:20 50:11
^ whos	12:29 13:-13 15:169
whos $	15:84 23:25
whos job	15:43
whos is	15:33
is on	8:34 11:-27 12:10 14:15 17:-10 23:-14 24:-10 25:31 26:-28 27:9 28:-16 29:98 31:54 32:-8 33:-11 39:9 45:-29 92:8 108:22 109:-9 110:24 113:9 115:48 116:9 125:-12
who doe	14:-10 15:33 26:-8 28:-8 29:70 30:9 32:-12 33:-24 64:-8
build==s	15:12 64:31
build	15:18 33:-8 64:31
build the	15:13
has the	5:-8 8:-15 13:21 14:-24 15:52 16:-9 19:28 21:37 22:-14 25:15 29:-8 31:18 40:16 47:-8 65:12 105:22 109:-8 113:54 125:-13
has job	15:49 17:15 26:15 29:8
with $	0:23 15:28 58:15 81:12 125:-8
what bench	13:-16 15:81 64:-8
bench doe	13:-10 15:73 64:-9
which bench	12:-10 13:-13 14:73 15:57
bench has	15:17 99:22
bar==	2:-9 4:-16 9:-14 11:-9 14:-9 16:140 17:-15 21:-9 25:-11 27:-10 29:-11 32:-8 35:-8 42:-16 44:71 46:-17 49:-12 55:-15 57:-13 58:-8 64:-10 71:-9 85:191 86:222 87:19 97:-12 98:14 99:-11 100:-32 101:-9 120:-8 122:-14 124:-8 125:56
load==	0:-13 2:-9 4:-12 5:-15 8:-10 9:-9 16:152 17:-17 19:-13 24:132 29:17 44:28 71:-8
press slot	16:12 106:45
bar	9:-14 11:-11 12:-8 14:-11 16:129 17:-16 21:-10 22:-9 25:-12 27:-18 29:-11 32:-10 35:-9 42:-17 44:68 46:-18 48:-10 49:-12 55:-16 57:-15 58:10 64:-10 71:-10 85:192 86:276 87:18 90:-8 97:-12 98:13 99:-13 100:-37 101:-10 120:-8 122:-17 124:-8 125:52
)~",
R"~(#n bar	16:13
bar ~	16:48 44:-12 85:30 86:64 100:-9
~ bar	16:11
load	0:-20 2:-12 4:-19 5:-15 8:-12 9:-10 13:-9 16:150 17:-18 18:-9 19:-14 20:-9 24:140 25:-38 27:-9 29:78 33:28 44:18 55:31 71:-9 73:10 75:12 85:9 91:-9 97:-9
load #c	16:11 44:11 85:10
pound	16:26 27:-9 44:44 55:21 75:-11 85:43 86:-8
#c pound	16:14 44:44 55:11 75:-10 85:43 86:-8
&#c#n#o#r@job	44:8
press all	25:10
#n load	44:14
lb	5:-18 16:40 44:55 55:93 85:45 121:-8 125:16
#c lb	5:-18 16:40 44:55 55:70 85:46 125:18
off==	0:-15 2:-21 3:-17 4:-19 5:37 6:-8 8:-10 9:-20 10:-11 11:-20 12:-11 13:-29 14:-21 15:-22 16:14 17:49 18:-14 19:-11 20:-13 22:-9 23:-20 24:-10 25:-31 26:-28 27:-18 28:40 29:-44 30:-13 31:-9 32:-13 33:-29 35:-13 36:-20 37:-13 38:20 40:37 41:-22 42:15 43:22 44:-14 45:-20 48:86 51:-11 52:-11 53:30 54:-10 55:-16 57:27 58:-9 59:-24 60:11 61:-11 62:22 63:-17 64:-23 65:19 66:-20 69:50 70:19 71:60 72:17 75:-16 76:-11 77:35 78:-11 79:-12 81:-14 82:-13 83:-17 84:22 85:-8 86:25 87:64 89:-22 90:-10 91:-19 92:-13 93:-15 94:-10 95:-14 96:-11 97:13 98:-8 99:-9 100:69 101:24 102:-11 103:-14 105:-11 106:75 107:-29 108:107 109:-14 110:126 111:8 113:-24 114:-22 115:17 116:25 117:-19 118:-14 119:52 120:-13 122:16 124:-11 125:11
off	0:-15 2:-21 3:-17 4:-19 5:37 6:-8 8:-10 9:-20 10:-11 11:-20 12:-11 13:-29 14:-21 15:-22 16:14 17:49 18:-14 19:-11 20:-13 22:-9 23:-20 24:-10 25:-31 26:-28 27:-18 28:40 29:-44 30:-13 31:-9 32:-13 33:-29 35:-13 36:-20 37:-13 38:20 40:37 41:-22 42:15 43:22 44:-14 45:-20 48:86 51:-11 52:-11 53:30 54:-10 55:-16 57:27 58:-9 59:-24 60:11 61:-11 62:22 63:-17 64:-23 65:19 66:-20 69:50 70:19 71:60 72:17 75:-16 76:-11 77:35 78:-11 79:-12 81:-14 82:-13 83:-17 84:22 85:-8 86:25 87:64 89:-22 90:-10 91:-19 92:-13 93:-15 94:-10 95:-14 96:-11 97:13 98:-8 99:-9 100:69 101:24 102:-11 103:-14 105:-11 106:75 107:-29 108:107 109:-14 110:126 111:8 113:-24 114:-22 115:17 116:25 117:-19 118:-14 119:52 120:-13 122:16 124:-11 125:11
crown==	1:-10 8:16 9:-18 16:31 19:53 27:35 31:-10 32:23 39:-30 43:-8 46:-34 49:108 50:33 51:-12 66:-15 68:-9 69:-18 74:-9 76:-15 80:-16 85:-21 88:126 89:-9 90:118 92:-9 99:-12 103:10 104:47 117:10 125:-12
the bar	16:13 85:10 86:78
~ with	56:24 57:-10 58:14 116:8
with a	3:-8 7:11 16:10 17:-11 30:11 44:-8 50:9 60:13 74:20 76:-9 88:-8 96:18 97:12 99:8 103:20 120:11 121:-12
crown	0:-9 1:-15 4:-9 8:13 9:-21 13:-16 14:-8 16:26 17:-17 18:-8 19:89 25:-8 27:51 29:-8 31:-12 32:21 33:-10 35:-11 36:-8 39:-32 41:-9 43:40 44:-14 45:-9 46:-35 47:-8 49:105 50:31 51:-13 55:-16 58:-8 64:-12 66:-18 68:-10 69:-20 73:23 74:-10 75:-8 76:-16 77:29 80:-17 83:-8 85:-22 87:-8 88:123 89:-13 90:114 92:-10 95:-9 97:-10 98:9 99:-25 103:58 104:76 107:18 116:-9 117:24 125:-16
a crown	50:9 88:8
crown #d	16:14 46:-9 49:63 50:21 85:-8 88:-20 117:-8
with #c	16:30 39:13
lb $	5:-17 16:25 44:35 55:62 85:24 125:-8
wide==	1:-8 3:-12 4:-11 8:34 9:-20 16:13 18:37 19:-12 41:-13 43:-15 49:63 66:-10 74:71 76:61 85:45 86:-16 88:19 91:24 92:-14 125:61
with crown	16:8
wide	1:-8 3:-12 4:-11 8:34 9:-20 16:13 18:37 19:-12 41:-13 43:-15 49:63 66:-10 74:71 76:61 85:45 86:-16 88:19 91:24 92:-14 125:61
in wide	49:18 88:-10
wide $	16:17 41:-9 49:-14 74:65 76:19 85:8 88:69 91:23
&#c#d#n	41:18 85:9
pound $	16:18 75:-10 85:28 86:-8
at #c	16:24 44:13 46:-14 51:13 66:9 67:24 68:-8 69:-10 87:30 107:-11 116:22 125:24
#c with	59:22
&#c#d@job	47:17
a bar	87:26 125:32
under==	2:-10 9:16 11:16 13:-10 17:-19 23:-8 31:21 32:-11 36:-10 39:-10 41:-23 42:-8 43:-8 44:53 45:-17 51:73 64:19 65:-8 66:-8 69:-8 75:-12 77:-10 82:-9 87:99 89:31 90:130 91:8 92:46 93:-9 95:17 96:32 97:-14 101:-9 107:-8 113:-8 121:25
under	2:-10 9:16 11:16 13:-10 17:-19 23:-8 31:21 32:-11 36:-10 39:-10 41:-23 42:-8 43:-8 44:53 45:-17 51:73 64:19 65:-8 66:-8 69:-8 75:-12 77:-10 82:-9 87:99 89:31 90:130 91:8 92:46 93:-9 95:17 96:32 97:-14 101:-9 107:-8 113:-8 121:25
@job under	44:14
&#c#n@job	5:12 16:-14 44:28 87:52 107:-11
press fret	16:48 33:8 44:15
again with	16:17 44:-12
~ at	16:9 32:-8 55:-13 56:79 58:8
again under	44:22
under the	1:8 11:21 41:-20 44:35 87:47 90:11 92:59 119:9 121:11
#d wide	18:20 41:-9 43:-10 49:27 74:24 76:36
pass==	3:19 4:-10 13:-9 16:95 17:-15 29:-10 35:-8 44:93 55:8 92:8 125:34
^ next	16:32 17:38 26:-16 28:-22 29:32 44:30 54:17 109:-10 110:35 111:12 112:11 115:23 125:-19
pass	3:19 4:-15 6:-12 13:-15 16:227 17:-17 23:-9 27:-19 29:-11 35:-9 43:-13 44:89 45:32 55:8 83:-17 84:-16 115:-11 125:30
next pass	16:79 17:-14 29:-9 44:83 125:-8
pass of	16:8 44:40 125:-8
&#c@job	16:9 44:12 73:25 87:9
&#c#n#r	16:21
is next	11:31 16:9 27:30 29:-14 113:34
pass on	16:19
which is	16:8 68:8 84:12 96:16
pass $	16:97 44:-21
fret next	16:16
fret are	0:62 2:-13 12:-11 16:18 17:29 22:34 27:-19 43:18 72:-10 73:18 93:10
are next	16:23 17:-9
next on	17:33 27:23 29:18
fret come	16:9 24:14
come next	17:-12 27:30 29:23 110:14 116:11 118:9
next for	16:28 17:-14 26:-10 27:28 28:-8 29:52
press next	16:15 101:-14 105:40 106:10 109:-8 125:-11
stop==	13:-13 16:20 23:-14 38:41 57:100 84:42 107:-18 108:76 125:-15
stop	1:-8 6:-8 13:-17 14:-8 16:36 23:-17 25:-8 33:-12 35:-9 37:-9 38:40 40:-8 43:-19 55:-8 57:95 63:12 64:-9 77:23 84:38 93:65 107:-35 108:224 125:-20
i stop	16:37 108:12
stop press	16:22
did==	1:-55 2:-14 4:-11 5:-8 6:-10 8:-17 9:-31 10:-14 12:-11 13:-18 15:-9 16:28 17:40 18:-13 19:142 20:49 21:76 22:-12 23:34 24:42 25:-12 26:74 27:-14 28:-10 29:-31 30:-12 31:35 32:-15 33:112 34:54 35:-24 36:-20 37:-14 38:-19 40:-22 42:-12 43:36 44:21 45:14 64:-11 77:-10 78:9 83:-20 84:-11 89:-28 90:-16 91:-9 95:13 105:-12 106:-16 107:-11 108:-11 115:-9 117:-18 119:-8 123:41 124:32 125:30
did	1:-55 2:-14 4:-11 5:-8 6:-10 8:-17 9:-31 10:-14 12:-11 13:-18 15:-9 16:28 17:40 18:-13 19:142 20:49 21:76 22:-12 23:34 24:42 25:-12 26:74 27:-14 28:-10 29:-31 30:-12 31:35 32:-15 33:112 34:54 35:-24 36:-20 37:-14 38:-19 40:-22 42:-12 43:36 44:21 45:14 64:-11 77:-10 78:9 83:-20 84:-11 89:-28 90:-16 91:-9 95:13 105:-12 106:-16 107:-11 108:-11 115:-9 117:-18 119:-8 123:41 124:32 125:30
wher did	1:-40 16:25 19:19 20:56 32:-19 33:47 125:31
did i	16:25 19:-11 20:-8 26:12 29:-10 31:10 33:23 35:-10 124:-8 125:42
stop==ped	16:16 63:13 77:25 107:-12 108:90
did we	9:-19 11:15 13:-8 16:49 19:42 21:51 23:26 31:20 32:-8 33:14 40:-9 83:-14 125:-21
we stop	108:16
press of	16:9 43:-11 44:45
stop $	16:9 108:27
was==	0:-29 2:-12 3:-30 4:-18 5:-21 8:-24 9:-21 10:-8 12:-11 13:41 14:-8 15:14 16:-24 17:-39 18:-14 19:65 21:31 22:-14 23:-11 24:18 25:20 27:-17 28:-21 29:-34 30:-11 31:-19 32:-10 33:51 34:31 35:-22 37:-19 38:19 39:-24 40:13 41:-18 42:-12 44:-19 47:-14 50:20 53:-17 55:-10 61:11 62:21 64:-10 65:-13 66:-11 68:-12 69:32 71:23 72:-12 73:14 75:17 77:14 78:53 82:-9 83:-15 84:12 86:-8 89:8 90:-10 91:36 92:29 93:-14 95:18 97:64 99:-8 101:-11 104:49 107:-26 109:-9 110:-30 111:-14 112:24 115:-11 116:-13 117:36 118:24 123:26 124:38 125:46
was	0:-29 2:-12 3:-30 4:-18 5:-21 8:-24 9:-21 10:-8 12:-11 13:41 14:-8 15:14 16:-24 17:-39 18:-14 19:65 21:31 22:-14 23:-11 24:18 25:20 27:-17 28:-21 29:-34 30:-11 31:-19 32:-10 33:51 34:31 35:-22 37:-19 38:19 39:-24 40:13 41:-18 42:-12 44:-19 47:-14 50:20 53:-17 55:-10 61:11 62:21 64:-10 65:-13 66:-11 68:-12 69:32 71:23 72:-12 73:14 75:17 77:14 78:53 82:-9 83:-15 84:12 86:-8 89:8 90:-10 91:36 92:29 93:-14 95:18 97:64 99:-8 101:-11 104:49 107:-26 109:-9 110:-30 111:-14 112:24 115:-11 116:-13 117:36 118:24 123:26 124:38 125:46
far did	16:17
we get	0:-8 2:13 3:21 8:-17 9:14 12:-9 16:11 19:50 20:-10 22:8 30:-9 32:14
get on	13:19
i get	0:19 22:-11 32:54 45:13 89:-12 105:16
again at	16:19 44:-12 78:14 102:13 115:16
press #n	44:35 101:28 102:16 125:-9
bar $	16:56 44:34 58:17 85:27 86:18 125:-13
bar on	44:33
we took	0:12 50:14 82:20
bar for	16:10
bar of	86:12
up to	4:24 9:-12 11:15 12:-13 16:-20 17:8 19:34 44:40 45:-8 51:-8 66:32 71:9 87:12 89:-11 93:35
to #c	41:23 44:92 51:32 67:22 75:-15 87:8
press to	99:25
#c of	36:-8 70:-8 79:16 81:8 82:38 117:10
up with	52:23 111:-10
up at	100:-8 102:14
lb for	44:15
lb on	16:30
i come	111:23
come at	111:22
were==	0:-12 1:28 2:-10 5:14 16:-9 17:-27 19:18 29:-8 33:63 34:41 36:-16 39:-13 43:-11 50:17 69:9 71:19 75:-8 81:15 82:28 89:-8 90:-9 96:16 97:24 101:-11 125:40
)~",
R"~(were	0:-12 1:28 2:-10 5:14 16:-9 17:-27 19:18 29:-8 33:63 34:41 36:-16 39:-13 43:-11 50:17 69:9 71:19 75:-8 81:15 82:28 89:-8 90:-9 96:16 97:24 101:-11 125:40
load is	16:-9 25:-30 29:62
is #c	50:9 67:8 99:16 121:22
if the	0:11 3:25 5:-10 9:9 16:21 18:10 29:13 30:10 74:-8 101:-10 125:27
the load	16:58 17:-9 85:10
pass==es	6:-11 16:131 27:-13 45:35 83:-15 84:-13 115:-9
the pass	16:46 83:-11
pass for	4:-9 16:91 83:-15 84:-15
me all	8:-14 14:-8 16:68 19:9 43:14 87:-9
all pass	16:34
list me	34:14 35:9
list all	10:-14 14:-13 16:22 19:14 23:58 35:31 83:-8 84:-8
show all	16:23 19:17 31:9
press plan	16:75
much load	16:12
load for	16:49
which load	0:-10 24:39 33:33
load on	16:12
on fret	4:-8 16:29 17:-14 24:-8 36:-9 42:14 44:14 77:-19 78:-8 89:32 91:8 95:-8 96:24
what load	4:-9 5:-9 16:49 24:49
too==	0:21 2:24 3:19 4:-25 6:57 8:-10 9:-9 11:26 12:-8 13:-16 15:-9 18:24 22:102 23:-15 25:-10 29:-13 31:22 32:-11 33:-13 35:-8 36:-13 37:-14 40:23 41:-35 42:59 43:-12 45:-16 52:-12 54:38 55:-10 58:34 61:12 71:-10 72:-8 75:-27 78:-13 81:17 87:24 89:-11 90:40 91:47 92:19 94:8 95:-12 98:14 106:-9 108:-11 111:-10 119:36
middl==e	17:91 45:13 74:24 85:12 89:25 94:11 108:13 125:-11
load stand	16:13
stand #d	41:-11 92:23
too	0:21 2:24 3:19 4:-25 6:57 8:-10 9:-9 11:26 12:-8 13:-16 15:-9 18:24 22:102 23:-15 25:-10 29:-13 31:22 32:-11 33:-13 35:-8 36:-13 37:-14 40:23 41:-35 42:59 43:-12 45:-16 52:-12 54:38 55:-10 58:34 61:12 71:-10 72:-8 75:-27 78:-13 81:17 87:24 89:-11 90:40 91:47 92:19 94:8 95:-12 98:14 106:-9 108:-11 111:-10 119:36
too far	3:-8 16:9 77:28
far the	9:30
nutward	2:31 3:-20 16:36 75:29 89:69 90:-26
nutward of	3:-18 16:31
middl	17:109 45:38 72:-8 74:24 75:-11 85:12 89:42 94:10 108:12 125:-12
the middl	17:63 45:22 74:24 89:33 94:11 108:13 125:-10
middl $	17:66 74:9 85:13 89:12 94:9
stand #n	16:37
mm too	16:17 92:10
nutward $	2:14 89:10
toward==	2:11 16:18 89:13
toward	2:11 16:22 89:21 90:-10
toward the	2:11 16:20
mm off	16:41 17:-10
off toward	16:10
trebl	4:-11 13:-9 16:57 17:94 24:-11 27:-8 35:-14 45:27 75:-13 89:70
middl of	17:13 89:16 108:15 125:-9
bass	16:27 17:21 45:15 75:-14 89:30
bass of	16:10
middl for	74:18
off to	16:10 53:15 100:10 112:-9
bass $	17:10
far to	16:11
bodyward	16:23 89:43 90:-12
bodyward $	89:8
@job stand	13:12 17:17 92:10
trebl $	16:14 35:-9 45:15
far toward	16:10
the bass	16:19 17:9
#n is	0:-23 1:-30 2:-13 3:-26 4:-16 5:-18 6:-10 11:-40 13:-77 15:-43 16:-11 17:-73 18:-15 23:-44 27:-13 29:-25 30:-11 33:-12 36:-9 37:28 38:60 40:60 41:-23 42:17 43:50 44:-21 45:49 47:40 48:38 55:-15 60:37 64:65 65:49 69:65 70:-12 74:40 75:31 76:52 77:18 81:-9 83:-16 84:-12 87:28 89:-14 90:8 91:-14 92:39 93:21 94:28 95:-8 97:-10 99:-12 101:9 102:18 104:-11 105:-8 106:12 107:17 108:65 112:-11 113:38 115:-15 118:9 119:20 121:-11 125:21
#d to	69:19
side on	16:17 17:-8 89:10
side of	16:-15 17:47 89:21
over==	0:-9 1:14 2:-10 3:-11 5:14 8:-16 16:32 19:-16 20:48 21:29 25:9 28:21 29:-11 41:-17 42:27 43:9 44:-10 45:23 49:9 61:14 62:14 63:-8 64:14 66:-8 72:-13 75:9 77:-8 78:45 82:-12 85:-9 87:22 88:34 89:53 95:-16 97:-15 107:-12 110:-9 115:15 125:-18
to the	0:10 1:-16 2:-22 4:-17 5:-24 6:8 7:-8 8:-8 9:-10 12:-20 14:20 16:11 17:-14 19:-9 20:8 21:12 22:-11 23:15 28:16 29:-16 30:-10 35:-9 37:23 38:37 39:16 40:20 43:17 44:-11 53:25 54:-11 55:-19 57:37 58:33 61:40 63:39 64:-21 65:51 70:-10 72:-14 75:9 78:11 83:-20 84:8 90:24 98:36 105:-9 107:-13 108:-9 110:10 111:26 112:-11 120:16 125:-18
over	0:-9 1:14 2:-10 3:-11 5:14 8:-16 16:32 19:-16 20:48 21:29 25:9 28:21 29:-11 41:-17 42:27 43:9 44:-10 45:23 49:9 61:14 62:14 63:-8 64:14 66:-8 72:-13 75:9 77:-8 78:45 82:-12 85:-9 87:22 88:34 89:53 95:-16 97:-15 107:-12 110:-9 115:15 125:-18
&#d#o@job	1:-8 3:24 36:12 41:42 74:-8 76:24 77:-9 78:15 92:22
in to	46:11 85:-9 87:8
on #n	0:-11 3:25 4:-10 11:-14 16:-23 17:-18 24:38 28:9 29:-19 30:24 33:14 42:19 44:-10 45:-13 47:14 52:-11 53:22 75:-16 80:-10 89:24 92:9 95:-9 97:41 104:28 105:31 107:-11 109:-11 110:-21 111:62 112:25 115:29 125:35
#d the	50:8
the trebl	4:-10 16:38 17:58 45:20 89:28
trebl side	16:24 17:66 89:21
off the	16:-8 17:-14 25:-10 38:37 42:9 48:53 62:43 63:-8 69:16 71:69 77:31 81:-8 86:22 100:42 108:-14 110:-10 117:-12 119:9 125:-12
favour==	16:49 17:-9 35:-10 84:32
favour	16:49 17:-9 35:-10 84:32
i favour	16:38 17:-8 35:-9
favour the	16:33 17:-8
bass side	16:14 45:8 89:11
favor==	16:28
favor	16:28
we favor	16:23
favor the	16:14
side $	16:14 17:61 35:-8 45:35 83:23 89:22
we favour	16:12
favour bass	16:9
favor trebl	16:14
at fret	3:9 41:-12 45:25 46:8 75:-15 76:15 77:-8 78:-14 90:-17 91:57 92:18 93:15 96:-12 115:15
of fret	4:37 24:31 44:8 75:-23 89:-9 90:10 91:9 95:29 97:-8 115:9
at slot	0:-15 4:-8 36:12 37:-12 41:38 42:-8 46:25 76:32 90:9 125:13
of slot	0:-19 29:-8 33:35 36:8 72:30 75:14 77:11 78:-8 90:13
level==	1:-8 4:-10 8:-17 9:25 13:-54 15:-14 16:-13 17:205 23:-8 27:-10 33:-9 43:-16 45:92 51:81 87:-8 88:-8 89:-11 90:-9 95:-11 97:127 113:-9 125:16
line==	13:-13 17:66 41:-21 42:-13 45:18 47:-8 60:11 72:-12 75:-37 89:72 92:60 93:-14 114:13
level	1:-12 4:-13 8:-17 9:25 13:-60 15:-16 16:-14 17:223 18:-8 23:-8 25:-8 27:-11 29:-8 33:-13 45:88 48:-8 51:81 64:-8 65:-8 77:-10 87:-10 88:-8 89:-13 90:-10 91:-14 93:-9 95:-14 97:213 103:22 107:-10 113:-12 114:-9 125:11
^ level	17:14 97:47 103:22
line	2:-9 4:9 13:-13 17:66 41:-21 42:-13 45:18 47:-8 60:11 72:-12 75:-37 89:72 92:60 93:-14 114:13
@job line	17:11 89:19
line bass	17:11 45:8 75:-14 89:8
line trebl	17:16 75:-11
trebl line	17:11 89:18
line middl	17:11 45:14 75:-10
middl job	45:12 75:-9
bass job	17:8 89:8
#o line	4:12
middl line	17:30
&#n#o@job	0:52 3:28 4:-20 5:-8 16:-11 36:-10 37:12 41:-8 45:9 47:-14 70:16 75:21 76:13 77:-22 78:-9 89:-8 90:18 91:8 92:9 93:9 97:13 114:19 115:-8
#n line	17:14 45:15 75:-24 89:13
call	1:-22 9:-8 11:-10 12:-9 13:-20 14:25 15:-9 16:-8 17:55 25:-14 26:-10 29:-16 30:-14 32:-23 35:-11 37:9 43:-12 48:100 49:57 51:10 55:-25 57:11 58:12 61:80 62:-22 63:-16 64:-11 65:-10 73:14 85:34 87:-11 88:-9 98:57 99:101 100:-15 101:-16 102:-8 103:-28 105:-9 106:15 108:36 109:-10 110:20 111:-10 113:-11 119:25 120:42 125:17
call job	17:16
trebl job	17:8
it level	17:21 97:23
level now	17:31 97:8
level yet	17:37
yet on	87:8
#n level	17:54
@job level	13:-8 17:40 97:13
now on	17:14 29:-15 39:-10 49:8 52:23 53:-8 54:-10 55:65 57:13 58:35 61:29 99:24 101:-13 103:24 109:21 110:-22 120:23 122:-8
how level	13:-30 17:81
level is	13:-30 17:80
@job on	45:-13 47:20 105:23 113:20 115:22
on middl	17:9
middl side	45:11
call==	1:-10 13:-15 17:61 39:8 43:-8 48:81 49:13 51:11 55:-10 56:11 61:17 85:23 98:11 99:67 101:-10 103:-16 105:-8 106:19 108:34 119:8 120:-9 125:-13
i call	17:53 56:10 119:17
call it	1:-8 13:-8 17:43 49:17 69:9 85:24 108:58
level $	9:30 13:-16 17:32 45:76 51:22 95:-8 97:80 125:-13
call the	17:12 98:14 99:18 100:10 103:-14
level on	17:18 97:12
call==ed	1:-12 14:27 25:-8 29:-10 30:-8 32:-19 37:10 39:-12 48:19 49:44 55:-15 57:15 58:16 61:65 62:-19 63:-15 73:16 85:11 98:46 99:34 100:-11 103:-12 110:24 111:-8 119:17 120:51 125:34
be call	17:9 61:25 99:17
call level	17:9
can the	5:31 9:-16 16:8 25:14 30:11 31:-10 32:38
can @job	18:19
can it	1:15 3:25 41:-8
it be	0:17 1:12 18:9 125:-9
can job	17:12
reading==s	4:-17 13:-14 16:-17 17:197 33:-9
say==	0:-10 5:-10 7:14 8:13 17:19 29:-8 32:20 33:-12 34:16 35:52 51:14 69:17 104:-13 116:24 118:26 125:32
what did	8:-9 9:-8 10:-10 11:-11 19:44 20:15 21:26 22:-8 24:-10 26:25 29:-16 31:25 33:41 34:64 35:-15
did the	16:-28 19:88 20:29 21:33 31:14 32:-10 33:-37 44:29 45:11 117:-13
reading	4:-17 13:-14 16:-17 17:197 33:-9
the reading	16:-11 17:64
reading of	17:29
say	0:-12 1:-21 5:-12 7:10 8:10 16:-9 17:16 22:-10 29:-10 32:33 33:-12 34:16 35:50 40:-9 44:-9 45:8 47:9 49:9 51:11 55:30 59:12 66:-9 67:9 69:39 74:12 85:-9 88:8 92:13 104:-13 116:24 118:36 119:-8 125:51
@job say	47:11
say the	17:9 74:14
tell==	3:11 4:-11 5:23 8:12 9:17 10:-13 12:-8 13:13 15:17 16:-8 17:15 19:18 20:-9 21:12 22:14 23:15 24:-12 25:25 27:-9 30:28 31:18 32:22 33:-14 35:37 51:14 55:-8 56:50 100:-8 103:-10 108:-9 125:19
)~",
R"~(tell	3:11 4:-11 5:21 8:11 9:16 10:-13 11:-8 12:-9 13:11 15:16 16:-9 17:14 19:18 20:-10 21:11 22:13 23:14 24:-12 25:24 27:-10 29:-10 30:27 31:17 32:19 33:-15 35:34 48:-8 51:14 55:-12 56:46 57:64 58:-8 100:-8 103:-11 108:-21 113:15 117:-8 124:-9 125:18
on trebl	89:15
say about	32:15 35:10
about #n	17:38 22:-11 33:-9 50:-11 67:14 68:-12 79:29 89:50 125:-13
#n show	117:10
show #n	67:16 68:-15
#n say	17:8
mean==	11:32 15:13 29:-10 35:-9 50:12 53:9 104:10 124:10
mean	11:32 15:13 29:-10 35:-9 50:11 53:9 104:10 124:10
show for	20:12
is off	14:-12 17:25 28:11 87:-10 101:35 106:53 109:-12 110:32 112:12 125:-17
off $	1:33 3:-8 14:-14 17:62 28:18 29:-8 41:-8 47:17 53:39 57:13 62:-9 65:-12 77:8 87:-8 101:30 106:68 109:23 110:86 112:-14 122:9 125:-44
uneven==	17:25
uneven	17:25
is uneven	17:25
high==	1:-11 3:-15 8:34 13:-20 15:-16 16:-9 17:119 19:23 23:-12 24:-9 45:24 49:37 51:-8 66:-9 69:-10 75:-8 77:-8 88:31 89:100 90:-8 97:30 125:16
high	0:-8 1:-11 3:-15 8:34 13:-22 15:-17 16:-10 17:151 19:23 23:-13 24:-9 45:23 49:37 51:-8 66:-9 69:-10 75:-8 77:-8 88:31 89:98 90:-9 95:-8 97:29 125:16
is high	15:-8 17:24 45:18 89:-22 125:31
high on	13:-15 15:-14 17:49 89:47
high $	3:-11 8:49 17:61 23:-8 69:-8 88:42 125:26
off on	13:-9 28:30 29:-23 33:-8 40:25 43:-10 69:-8 87:65 106:-9 108:34 109:-22 110:-10 111:11 125:63
high of	17:8
off of	17:14
is low	51:35
are high	13:-12 17:47
are low	17:9
fret stand	17:17
stand low	92:52
stand==	13:34 14:33 17:54 92:8 114:14
i do	0:-9 1:13 11:-9 17:57 18:-11 26:-9 29:43 33:37 35:-10 61:8 84:9 106:51 110:34 122:23 125:-92
do about	17:87 33:-11 35:-8
what can	0:60 1:10 5:-14 8:-8 16:-8 17:14 22:21 29:-13 30:-17 32:-11 35:91 125:-8
do with	1:11 17:49 21:9 30:-8 35:-9 125:31
with fret	17:20 93:9
about fret	17:26
about it	17:23
with it	1:12 17:17 40:15 42:11 77:-11
that fret	3:12 17:8 77:28 97:8
about that	86:11
why==	13:24 15:-15 16:-8 17:29 23:9 24:-36 25:26 29:81 40:29 42:-14 45:-8 48:14 72:-9 77:12 89:-9 91:16 92:-10 93:-13 113:-13 125:35
why	13:24 15:-15 16:-8 17:29 23:9 24:-36 25:26 29:81 40:29 42:-14 45:-8 48:14 72:-9 77:12 89:-9 91:16 92:-10 93:-13 113:-13 125:35
^ why	13:26 15:-14 17:41 24:-36 25:27 29:56 89:-8 92:-10 113:-12 125:39
why is	13:26 15:-14 17:18 29:43 113:-12 125:-14
#n high	17:11 89:51
#n low	17:11 89:40 92:-10
why fret	17:18
#r low	17:8
#r high	17:9
#n off	17:22 65:28
span==	16:-12 17:93 29:-11
come==s	2:-8 5:-10 10:-13 11:-10 13:19 16:8 17:-15 23:-11 27:25 28:-8 29:31 31:8 32:8 33:-16 41:11 43:-10 49:34 50:-11 59:22 62:16 63:-21 67:8 70:13 71:-11 73:22 93:47 109:11 110:-22 111:37 113:10 114:26 117:10 118:45 125:-8
span	13:-25 16:-13 17:129 29:-11
read==ing	2:24 13:-11 17:71 29:-9 75:-8 89:20
read	0:-10 2:22 3:19 8:14 11:-9 13:-23 16:-10 17:142 27:-9 29:-16 33:9 41:14 50:13 51:-13 55:37 57:8 68:-13 69:40 75:-9 77:-8 89:21
which read	17:22
which span	13:-22 16:-9 17:83
take next	110:8
next read	17:53
read of	125:11
next span	17:39
span $	17:32
read for	17:39
read $	2:24 13:-13 17:40 29:-8 89:9
read==	8:15 13:-12 17:72 33:11 51:-12 57:9 69:41
i read	17:12
read next	17:13
we read	17:13
straightedg==e	13:-10 16:-8 17:83 45:15 89:41 115:-9
straightedg	13:-10 16:-8 17:83 45:15 89:41 115:-9
the straightedg	13:-9 17:67 89:35
straightedg next	17:8
rocker==	89:46
rocker	89:46
the rocker	89:12
^ reading	17:28
reading for	4:-12 17:42
reading $	17:28
all reading	17:37
count==	0:14 3:-8 8:32 9:-8 17:17 19:-10 24:23 41:-40 42:-14 48:-31 50:18 66:50 67:-14 68:-17 69:-8 72:90 77:9 78:-32 79:17 81:52 82:49 85:-39 88:-11 92:-23 98:20 99:8 105:-8 107:-12 108:-22 110:29 116:44 117:10 120:-18
which reading	17:18
count	0:11 1:-11 3:-9 8:40 9:8 17:16 18:-8 19:-13 22:-10 24:22 31:-13 32:-9 36:14 39:-14 41:-40 42:-15 47:-8 48:-32 50:-15 51:14 55:14 66:149 67:-19 68:-19 69:-13 72:85 77:8 78:-33 79:13 81:49 82:48 85:-40 88:-14 92:-23 98:19 105:-8 107:-12 108:-23 110:29 116:32 120:-19 125:8
count of	8:37 24:25 50:-10
reading still	17:13
still count	17:13
count $	0:16 50:-10 66:63 72:-10
to read	13:-9 17:48
read on	17:25
level==ing	17:26
stand $	13:64 16:-15 17:12 89:14 92:9
#n stand	14:33 17:27 91:19
levell==ing	13:-14 17:71 27:36 33:-27 43:31 64:-8 103:26 104:8 107:22 108:31 125:11
levell	2:-13 4:-11 13:-27 15:-11 16:-13 17:56 24:-20 27:33 33:31 41:-10 43:24 44:-12 45:-10 48:-11 64:-11 82:-10 89:-13 91:-9 95:-10 97:249 99:-8 103:25 104:8 107:15 108:27 114:-8
levell of	17:8 107:11
wher the	3:10 102:10
the levell	17:53 103:14 107:9
levell on	17:-18 24:-17 33:64 97:-9
the level	17:14
level of	8:-13 9:31 51:16
depth==	0:-9 3:-12 18:31 41:-20 49:19 74:58
width==	3:-17 5:-19 13:49 15:-8 18:23 39:-9 41:-58 42:-38 45:-9 46:28 68:-19 74:43 76:181 78:-23 82:-19 84:-19 85:91 87:-18 88:61 92:-13 121:-21
bottom==	4:-11 74:62 76:-10 91:21
^ suit	18:70
suit job	18:36
depth	0:-9 3:-12 18:31 41:-20 49:19 74:58
slot depth	18:16 41:-18 74:29
depth #d	41:-18 49:8 74:30
width	3:-17 5:-19 13:49 15:-8 18:23 39:-9 41:-58 42:-38 45:-9 46:28 68:-19 74:43 76:181 78:-23 82:-19 84:-19 85:91 87:-18 88:61 92:-13 121:-21
slot width	18:27 41:-42 74:54 76:-8 78:-9 84:-19 125:10
width #d	5:-19 18:26 41:-38 42:-21 46:19 68:-18 74:37 76:46 78:-9 82:-15 84:-19 85:47 88:28 121:-15
bottom	0:-12 3:-8 4:-15 18:41 74:80 76:-11 91:141
curv	0:-9 4:-13 18:66 74:49
bottom curv	74:23
&#d#n@job@wire	0:-14 1:-9 36:36 37:43 38:13 39:-12 70:-14 81:-16 82:72
suit==	0:-12 1:15 18:65
@wire suit	0:-13 1:22 18:31
^ would	0:-15 1:27 3:29 4:-14 16:13 18:13
would @wire	9:15 18:20
slot #d	18:33
wire suit	18:15
will wire	120:13
@wire right	18:31 23:-10
bend==	0:-8 3:-11 5:-9 6:-9 11:-8 13:-15 16:-9 17:-11 18:127 36:-10 39:9 41:47 43:17 75:-9 80:16 82:-11 98:37 107:10
bend	0:-13 2:-9 3:-13 4:-10 5:-13 6:-13 9:-16 11:-14 13:-25 16:-13 17:-17 18:134 23:-16 27:64 29:-17 30:-10 33:-11 35:-8 36:-11 37:-11 39:8 41:42 43:63 64:-8 75:-10 80:16 82:-11 83:-10 84:-10 91:-8 98:52 100:32 103:17 104:56 107:82 108:47 114:-12 125:-24
we bend	18:43
bend it	18:51
to for	15:12 18:60
@wire to	1:-9 20:9 37:10 39:25 46:-10 51:25 69:41 88:-10 125:22
bend the	9:-12 18:23 27:18 43:-9 107:38 108:8
wire to	9:-18 10:31 18:12 31:-8 71:-9 78:22
i bend	18:30
radius==	0:-8 3:-12 18:85 23:-9 36:-10 39:18 41:36 42:9 46:59 49:-13 75:-10 80:-30 82:-22 85:33 125:39
radius	0:-8 3:-12 18:85 23:-9 36:-10 39:18 41:36 42:9 46:59 49:-13 75:-10 80:-30 82:-22 85:33 125:39
which radius	18:14
what radius	18:17
radius should	18:16
radius do	18:9
bend==ing	9:-14 23:-9 27:68 29:-13 30:-8 37:-9 43:28 84:-8 98:15 100:35 103:22 104:53 107:66 108:52 125:-18
what bend	18:58
bend radius	3:-11 18:59 23:-8 36:-9 39:9 41:47 75:-9 80:16 82:-10
radius for	18:46
radius of	18:9 42:10 85:10
which bend	18:15
lot==s	2:10 8:-22 9:-9 19:175 32:-8
lot	0:11 2:10 4:-9 6:-16 7:9 8:-41 9:-16 11:-10 12:-8 13:-16 14:-9 16:-12 17:-10 18:-8 19:234 20:-17 22:-9 24:16 25:-8 29:-11 32:-13 33:-9 37:-22 39:9 43:-16 44:25 47:-9 48:-13 64:-8 65:-10 67:10 69:-10 73:226 76:-14 83:39 84:89 87:-8 88:-10 89:-10 93:-10 107:-8 108:-11 113:-16 114:-20 125:15
^ lot	19:58 73:53
lot the	19:8
pay==	19:42 21:47 22:-10 24:-8
pay	19:42 21:47 22:-10 24:-8 120:11
we pay	19:42
pay for	19:42
the last	4:15 19:24 21:-9 31:-15 33:29 45:48 89:-23 92:12 93:87 124:80 125:-13
last @wire	19:30
for last	20:10
much did	19:20 20:-12
did @wire	20:14
much doe	9:-17 19:36 27:-17 125:61
pric==e	8:-25 9:-13 19:104 39:-9 50:18 116:-8 119:37
pric	8:-25 9:-13 19:104 39:-9 50:18 116:-8 119:37
the pric	8:-25 9:-13 19:84 117:-15 119:39
pric of	8:-24 9:-11 19:68 117:12
what lot	19:16
lot of	2:24 8:-26 19:74 66:-8 67:13
which lot	19:48
lot do	19:22
the lot	5:13 7:14 8:-8 19:28 23:17 38:-9 44:35 67:13 73:-18 81:9 83:35 84:45
delivery==es	8:-18 9:-16 12:-12 14:-16 19:213 22:-8 25:-23 31:84 32:-12 35:-8
delivery	5:-8 8:-23 9:-21 10:-14 12:-14 13:-10 14:-27 17:-8 19:233 20:-9 22:-14 23:-10 25:-29 28:-21 29:-28 30:8 31:132 32:23 33:-11 35:-16 36:-8 37:-8 39:10 43:-11 50:29 66:-35 71:8 73:169 113:-11 116:17 117:67 118:20 121:-13 122:-9 125:-13
what delivery	8:-8 19:34
delivery of	8:-13 19:55 50:14 117:9
which delivery	11:9 12:-8 19:20 31:43
)~",
R"~(delivery $	19:54 29:-13 31:70 73:24
were ther	19:9 24:14
@wire did	8:-8 19:-9 21:26
balanc==e	8:-13 9:-13 19:-11 20:228 67:21 118:-10
year==	9:-9 19:-20 20:65 21:75 33:-8 53:9 62:-15 65:17 112:14 119:31 121:24 125:28
balanc	8:-13 9:-13 19:-11 20:228 67:21 118:-10
^ balanc	20:109
balanc from	20:31
from @day	11:21 28:39 29:33 52:-37 101:11 109:-23 110:21 115:-8
@day until	20:10 54:12 101:8 115:-8
@wire month	21:19 69:-9
all_tim	20:20 21:8
february	21:14
year	9:-9 19:-20 20:65 21:75 33:-8 53:9 62:-15 65:17 112:13 119:31 121:24 125:28
year #n	20:-10 21:11
from tomorrow	29:10 110:11
last_year	21:15
july	21:22
this_month	21:8
january	47:15 53:19 65:-9 109:-9 110:24 112:33
@wire year	21:14
#c wire	81:11
june	21:13
august	20:75 21:20 121:35
from today	20:12 28:14 33:36 53:-9 61:18 64:-11 99:11 110:-8 118:15 120:8
october	19:-8 20:116 21:47
september	5:-13 8:-10 20:67 21:51
november	8:-20 11:19 19:-8 20:99 21:37 33:37 45:-12 115:16
from next	20:8 29:9
this_year	21:14
&#n@day@wire	50:11 116:19
month may	21:9
last_month	20:14 21:14
&#c@wire	5:45 8:-31 9:-19 19:-18 22:-10 31:-13 39:23 50:69 51:67 55:-9 60:-12 66:15 67:66 68:-47 69:58 79:34 88:-8 116:32 117:-18 118:-11 119:-8 125:-11
last_month $	20:15
balanc of	20:60
@wire over	21:9
january $	20:8 47:15 53:19 65:-9 110:24 111:-14 112:33
all_tim $	20:19
the balanc	20:54 67:20
august $	20:37 21:14 121:35
balanc for	20:39
book==s	12:17 20:136 26:-16 66:-9 69:33 106:-14 125:-9
book	0:-10 1:-8 4:-10 5:-12 8:-11 9:-9 11:-24 13:-24 16:-21 17:-15 18:-9 19:-9 20:129 22:-8 23:-30 25:29 26:276 27:-11 28:-14 29:-54 30:-14 31:-8 33:-30 35:28 37:-13 38:-11 40:-9 43:-8 47:-11 48:-15 50:10 58:-8 62:-8 66:-18 69:28 83:-8 84:-11 98:-12 99:-10 100:-14 101:-14 102:-8 103:-10 105:101 106:202 108:-11 110:-9 124:-8 125:69
the book	12:16 20:67 26:10 35:13 66:-8 69:33 106:15 125:-11
book of	20:55 26:-14 106:44
march	20:25
march $	20:25
^ book	20:66 25:-14 26:23 50:11 66:-9 105:106 106:23 125:-13
october #n	20:34
october $	20:57 21:26
book for	13:-17 20:20 23:-21 26:120 105:-9 106:52
for may	20:20 21:9
may #c	20:20 21:8
september #n	20:11
go over	20:16 87:8
over $	2:9 16:20 20:10 21:19 43:13 65:11
go in	0:26 19:-9 20:25 40:-11 71:-8 72:16 79:13 81:19 82:19
did all	20:13
wire go	20:26
in august	121:36
@day to	11:21 29:38 52:48 53:-10 54:-31 109:38 111:-24
to tomorrow	115:10 118:12
&@day@wire	31:-8 118:85 125:-8
today to	20:13 28:22 53:-8
to next	20:16
december to	11:24 28:24 30:-8 47:-10 53:24 65:-9 101:14 110:26 111:-17
to @day	11:20 29:32 45:-8 47:11 52:20 53:-12 54:-26 101:8 109:38 111:-23 115:13 118:27
&#o@day	20:9 30:34 47:-15 111:24 112:-16
december until	28:9
until #r	28:11
&#o#r	28:11 54:11 110:8
#o until	110:16
tomorrow to	75:-10 115:10
to #r	2:-11 11:-9 28:21 45:20 47:31 75:32 118:9
&#r@wire	20:24 118:13
sav==ed	8:-30 9:-10 19:-15 20:-19 21:211 22:-10 33:-13 38:11 65:-8 72:22 84:17 125:-8
sinc==e	11:-9 21:99 24:20 28:-8 29:-11 33:91 34:80 43:-19 44:-12 45:25 52:-8 81:8 101:42 104:-8 107:72 108:12 118:-8 125:-18
sav	4:-11 8:-30 9:-11 19:-15 20:-19 21:210 22:-11 33:-14 38:10 40:11 61:16 65:-9 72:22 84:17 103:18 125:-10
^ sav	4:-11 20:-8 21:87 72:23 103:18
sinc	11:-9 21:99 24:20 28:-8 29:-11 33:91 34:80 43:-19 44:-12 45:25 52:-8 81:8 101:42 104:-8 107:72 108:12 118:-8 125:-18
sinc @day	33:78 34:28 107:9
@wire sinc	20:24 21:12 33:25
#n until	45:10 52:21 71:12 81:12 89:9
until tomorrow	101:28
tin sav	21:18
sav of	21:24
july $	21:9
us==	0:-12 5:-10 9:17 11:-12 12:-13 13:-23 14:67 15:38 17:8 18:-8 20:-15 21:71 22:-17 23:-13 25:-24 28:-12 29:27 31:22 32:18 33:-27 48:26 50:19 52:8 58:30 61:-10 62:76 63:39 67:-9 75:9 89:-12 98:-16 100:8 102:-8 104:21 109:-13 110:-21 111:-8 116:23 117:31 118:10 119:-9
us	0:-12 5:-10 9:17 11:-12 12:-13 13:-23 14:67 15:38 17:8 18:-8 20:-15 21:71 22:-17 23:-13 25:-24 28:-12 29:27 31:22 32:18 33:-27 48:26 50:19 52:8 58:30 61:-10 62:76 63:39 67:-9 75:9 89:-12 98:-16 100:8 102:-8 104:21 109:-13 110:-21 111:-8 116:23 117:31 118:10 119:-9
us $	5:-9 8:-11 9:14 10:10 21:21 27:21 31:32 32:-18 48:28 58:13 61:-8 62:52 125:-11
save==	0:-10 2:32 8:-18 9:10 19:-10 20:-13 21:86 31:-12 33:-9 36:-12 37:35 38:16 61:12 83:38 84:-8
save	0:-10 2:32 8:-18 9:10 19:-10 20:-13 21:86 31:-12 33:-9 36:-12 37:35 38:16 61:12 83:38 84:-8
tin save	21:43
save $	21:10 61:12
february $	21:8
this_year $	21:9
sav for	38:12 65:-8 84:17
sav sinc	21:14
save us	21:31
sinc #r	21:11 34:14
sinc tomorrow	107:9
save of	8:-10 21:15
sinc today	34:14
money==	20:-14 21:65 48:14
money	20:-14 21:65 48:14
wire did	21:24
much have	8:-10 21:40
wire has	10:10 31:34 88:12 125:-17
november $	11:22 20:42 21:32 33:17
we save	2:15 8:-10 20:-8 21:30
sinc september	21:14
september $	21:12
was sav	21:20
sav in	20:-8 21:18
scrap==ped	5:-8 20:25 21:25 40:29
scrap	0:-12 3:-11 5:19 8:-23 9:-9 20:28 21:106 22:64 23:-12 25:-12 27:-12 29:-22 30:-10 33:-11 35:-14 36:-13 37:-10 38:-21 39:-12 40:145 53:-20 55:-9 69:-12 75:-10 78:37 79:16 81:143 82:-30 86:46 95:8 98:-21 100:26 112:44 117:-15 119:24
is scrap	21:15 40:31
much is	8:10 13:-11 16:8 23:15 27:16
thrown==	21:15 22:-8 40:15 79:31 81:10 121:8
away==	0:-11 2:12 3:28 4:-8 8:-10 11:-15 13:-19 14:-9 16:-12 21:15 22:23 23:29 25:-9 26:-10 27:-8 28:13 29:-18 30:-13 31:17 33:-11 35:-14 36:-11 40:89 47:18 48:19 55:-9 57:27 59:-10 60:32 61:-8 62:-15 81:18 86:23 100:73 101:-10 102:-8 103:-12 106:27 108:-9 109:-13 110:77 111:-13 122:9 125:-12
what was	11:-14 13:-9 19:-18 21:28 29:-10 33:96 34:24 75:19 104:51 123:16 124:-22 125:-8
thrown	21:15 22:-8 40:15 79:31 81:10 121:8
away	0:-11 2:12 3:28 4:-8 8:-10 11:-15 13:-19 14:-9 16:-12 21:15 22:23 23:29 25:-9 26:-10 27:-8 28:13 29:-18 30:-13 31:17 33:-11 35:-14 36:-11 40:89 47:18 48:19 55:-9 57:27 59:-10 60:32 61:-8 62:-15 81:18 86:23 100:73 101:-10 102:-8 103:-12 106:27 108:-9 109:-13 110:77 111:-13 122:9 125:-12
thrown away	21:16 81:13
away $	21:14 22:26 28:21 29:-12 38:-11 40:69 57:30 60:13 62:-8 86:21 100:22 106:30 110:31 125:-17
we sav	8:-13 21:25
sav $	21:11 61:16
worth==	10:15 21:79 22:-20 40:19 82:-10 89:20 125:-10
troubl==e	18:20 21:14
worth	10:15 21:79 22:-20 40:19 82:-10 89:20 125:-10
tin worth	21:63 22:-11
worth the	21:22
troubl	18:20 21:14
the troubl	21:14
troubl $	21:14
keep==ing	21:33 22:-11 23:48 35:-8 52:-8 54:9 84:71 108:-9
keep	0:-16 1:-16 5:-20 6:-9 8:-12 9:-11 11:-13 13:-9 14:9 17:-8 21:31 22:-17 23:80 24:15 25:-11 26:-12 28:-15 29:10 30:17 32:45 33:-17 35:-19 36:-28 37:85 38:-12 40:13 42:-9 45:-9 47:-12 48:-9 51:-18 52:43 53:-15 54:14 65:-10 68:10 76:8 81:-8 83:66 84:56 89:-9 91:46 93:-10 105:20 106:-34 108:-13 111:-13 121:-13 124:9 125:95
worth keep	21:23 22:-10
keep $	3:15 23:57 35:-8
worth it	21:9
saving==s	20:-22 21:199 22:-10
saving	20:-22 21:199 22:-10
^ saving	21:79
saving in	21:22
saving for	20:-8 21:31
for last_year	21:13
saving $	21:52
throw==	8:-16 22:67 38:-8 40:64 81:49 125:8
throw	8:-16 22:67 38:-8 40:64 81:49 125:8
we throw	8:-12 22:40
throw away	8:-8 22:28 81:19 125:14
wast==e	0:19 1:20 21:11 22:36 40:15 81:12 125:-13
wast	0:19 1:22 5:12 21:22 22:35 40:14 81:12 125:-15
we wast	21:12
wast $	0:14 5:8 40:16 81:12 125:-9
scrap==	0:-8 8:-16 21:82 22:76 23:-10 27:-10 29:-17 33:-9 35:-11 36:-13 37:-8 38:-19 39:-10 40:116 53:-19 55:-8 69:-11 75:-10 78:22 81:145 82:-27 86:47 95:9 98:-20 100:21 112:45 117:-14 119:25 125:-33
have i	8:-9 9:-9 11:-14 21:14 26:28 29:-13 31:27 33:88 35:-9 95:17 97:8 125:-8
i scrap	22:67 40:-25 125:-19
scrap $	0:-10 1:25 5:-8 20:18 21:12 40:40 78:25 81:26
we scrap	21:11
may #n	17:16
wast==ed	5:10 21:11
much scrap	8:-10 21:72 29:-10
we make	5:9 115:23
scrap is	21:21
ther in	25:14 27:10 30:-8
ther over	21:9
make over	2:10
for august	20:9
scrap for	21:21
may $	21:9
worth to	21:10
to us	9:-11 19:9 21:8 31:33 50:14 63:10 118:12
worth $	10:15 21:15 82:-10 89:21
^ has	8:14 9:-11 13:22 15:12 17:10 19:-10 20:-10 22:-14 23:10 24:25 26:59 31:49 33:57 44:-8 77:-26 107:-8 125:-14
any money	21:12
^ did	1:-10 13:-9 17:53 18:-8 23:60 24:50 26:40 31:51 33:38 36:-11 37:-10 38:-14 40:-14 44:25 78:11 83:-18 84:-8 89:-17 90:-14 97:9 106:-13 117:-13 124:10
us any	21:12
)~",
R"~(care==	22:57 47:33
^ tin	0:44 1:-9 5:18 7:11 8:-14 13:-9 21:-8 22:81 39:35
care	22:57 47:33
tin care	22:57
@wire day	22:11
care $	22:9
lie==	4:30 11:10 15:12 22:32 75:18
lie	0:-11 3:19 4:27 8:32 11:9 15:12 18:-9 20:-8 21:-8 22:46 27:-9 41:-9 42:-10 67:8 71:-8 72:-14 75:26 78:8 79:12 82:-17 87:21 89:24 92:43 94:-10 95:-10
@wire lie	8:11 22:17
lie about	8:-8 22:37
about $	0:22 8:-15 22:34
lying==	0:33 2:-8 8:21 9:-10 22:30 67:10 75:10 89:-9
lying	0:33 2:-8 8:21 9:-10 22:30 67:10 75:10 89:-9
are lying	22:10 75:10
lying about	0:22 22:20
idle==	22:77 55:30
idle	22:77 55:30
idle $	22:9
lain==	22:14
lain	22:14
have lain	22:14
piece lie	22:15
unus==ed	22:23 70:-19 71:29
unus	22:23 70:-19 71:29
no==	0:18 1:-32 2:-21 3:-12 4:-26 6:-11 8:24 9:-21 10:-12 11:-34 12:-14 13:-26 14:-17 16:52 17:-24 18:-13 19:-10 20:-8 21:-15 22:47 23:-34 24:-8 25:-33 26:-26 27:-13 28:-33 29:-32 30:-16 31:-16 32:-27 33:-22 35:-18 36:11 37:35 38:49 40:45 41:-14 42:-8 43:-23 44:-14 45:-20 47:78 48:-12 49:-9 50:21 52:17 53:35 54:-17 55:-18 57:28 58:-14 60:12 61:-9 63:32 64:-13 65:29 69:-13 70:22 71:-11 72:-8 74:-8 77:-23 78:-13 81:-9 82:-9 83:-18 86:30 87:69 89:43 90:44 91:30 92:-9 93:64 94:-9 95:-14 96:-10 97:-14 99:32 100:65 101:84 103:-22 104:-11 105:-25 106:28 107:-22 108:-19 109:11 110:15 112:-20 113:37 114:22 115:-10 116:-14 117:-15 118:-15 119:-16 121:9 122:66 124:47 125:42
no	0:18 1:-32 2:-21 3:-12 4:-26 6:-11 8:24 9:-21 10:-12 11:-34 12:-14 13:-26 14:-17 16:52 17:-24 18:-13 19:-10 20:-8 21:-15 22:47 23:-34 24:-8 25:-33 26:-26 27:-13 28:-33 29:-32 30:-16 31:-16 32:-27 33:-22 35:-18 36:11 37:35 38:49 40:45 41:-14 42:-8 43:-23 44:-14 45:-20 47:78 48:-12 49:-9 50:21 52:17 53:35 54:-17 55:-18 57:28 58:-14 60:12 61:-9 63:32 64:-13 65:29 69:-13 70:22 71:-11 72:-8 74:-8 77:-23 78:-13 81:-9 82:-9 83:-18 86:30 87:69 89:43 90:44 91:30 92:-9 93:64 94:-9 95:-14 96:-10 97:-14 99:32 100:65 101:84 103:-22 104:-11 105:-25 106:28 107:-22 108:-19 109:11 110:15 112:-20 113:37 114:22 115:-10 116:-14 117:-15 118:-15 119:-16 121:9 122:66 124:47 125:42
is no	8:-10 22:28 25:-8 32:-9 38:21 40:56 47:22 62:21 63:-8 65:-9 73:10 86:8 87:22 90:9 91:-9 99:-12 100:22 113:13 114:19 121:-8 122:18
no use	1:-12 8:-11 22:47 39:11 40:20
use $	0:43 5:-15 8:-11 22:48 35:-16 36:37 40:19 70:-8 86:22 125:16
what in	8:-16 21:-9 22:56
tin is	0:15 8:-9 22:16
is of	22:15
of no	22:15
what of	11:25 22:21 29:-19
@wire can	5:15 8:-12 22:13 40:-9 81:28
throw out	8:-8 22:45 40:8 81:35
@wire could	0:19
piece could	22:11
sort==	2:12 22:34 35:20 39:-11 49:20
sort	2:12 8:-8 22:33 35:34 39:-11 49:20 74:10
^ sort	22:36
sort out	2:13 22:8
out the	5:15 8:15 14:13 22:9 27:21 40:10 107:9
tin of	22:27
tidy==	22:41
tidy	22:41
^ tidy	22:22
tidy the	22:34
clean==	8:-9 21:-13 22:48 39:22 43:9
clean	4:-40 5:-12 8:-10 13:-17 21:-14 22:69 27:20 36:-9 39:22 43:105 74:-11 77:16 95:8 107:24 108:-14
^ clean	22:21
clean out	22:13 27:22 107:11
clear==	5:-12 22:49 34:-28 60:11 65:22 87:64 115:14 123:58 125:-14
clear	5:-12 22:49 34:-28 60:11 65:22 87:64 115:14 123:58 125:-14
^ clear	34:-28 60:12 65:23 123:59 125:-8
clear out	5:-11 22:35
sort the	22:19
nobody==	1:-22 5:-8 8:-9 11:-9 13:-17 15:-16 17:-9 19:-11 21:-10 22:71 23:-11 29:-9 33:-33 34:66 35:-9 37:26 38:51 39:-11 43:-11 47:-9 48:-11 52:-8 53:59 54:-9 59:-12 60:68 64:-11 65:162 66:-9 69:11 78:-9 79:19 83:12 86:16 87:-11 98:-10 101:21 105:-9 107:-8 113:-16 114:-9 123:19 125:11
@wire has	31:-11 88:22 117:12 125:30
nobody	1:-22 5:-8 8:-9 11:-9 13:-17 15:-16 17:-9 19:-11 21:-10 22:71 23:-11 29:-9 33:-33 34:66 35:-9 37:26 38:51 39:-11 43:-11 47:-9 48:-11 52:-8 53:59 54:-9 59:-12 60:68 64:-11 65:162 66:-9 69:11 78:-9 79:19 83:12 86:16 87:-11 98:-10 101:21 105:-9 107:-8 113:-16 114:-9 123:19 125:11
has nobody	22:32
nobody used	22:22 125:37
used for	25:9 83:-9 84:12
used in	8:-8 20:24 21:-10
touch==	2:25 13:-9 37:11 87:8 101:15
touch	2:24 5:15 8:-13 13:-11 17:-9 20:-9 21:-12 22:62 23:-8 33:40 37:20 87:32 90:16 101:15 125:-13
nobody touch	22:18 37:20
touch in	22:39
piece did	8:19
did nobody	19:-8 33:-13 34:55
touch==ed	20:-9 21:-12 22:56 33:42
been==	0:-14 2:-8 3:-9 4:-15 5:-11 8:-33 9:-18 13:25 14:8 15:19 16:-9 21:8 22:16 23:67 25:-10 26:-14 27:-10 29:-9 31:17 32:-8 33:73 35:9 41:-12 42:-12 44:26 45:-9 47:-9 48:-8 61:16 64:14 65:-9 67:-9 70:16 71:-11 72:-13 75:52 77:-24 78:26 82:-12 83:-9 84:18 85:12 93:-8 94:10 95:26 99:-9 101:38 102:-17 107:10 108:21 124:-9 125:15
been	0:-14 2:-8 3:-9 4:-15 5:-11 8:-33 9:-18 13:25 14:8 15:19 16:-9 21:8 22:16 23:67 25:-10 26:-14 27:-10 29:-9 31:17 32:-8 33:73 35:9 41:-12 42:-12 44:26 45:-9 47:-9 48:-8 61:16 64:14 65:-9 67:-9 70:16 71:-11 72:-13 75:52 77:-24 78:26 82:-12 83:-9 84:18 85:12 93:-8 94:10 95:26 99:-9 101:38 102:-17 107:10 108:21 124:-9 125:15
has been	17:-9 33:-12 41:-9 44:25 50:14 61:10 70:19 72:-11 75:32 78:27 94:10 95:24 96:8 101:28 102:-14 104:12 107:23 108:32 125:-11
been in	91:10
tin too	2:14
long $	3:19 4:14 27:29 40:-9 41:24 42:-10 69:21 72:22 92:-8
sort through	22:9
through the	0:24 1:-8 8:-9 9:41 12:-9 39:-13 44:51 80:10
up the	4:43 5:12 7:10 8:-11 9:-8 10:20 12:38 13:36 20:-9 21:-16 22:47 43:-17 50:-11 65:21 66:23 72:-8 83:30 84:-10 99:13 100:9 104:-10 106:16 107:16 125:-10
clean up	8:-8 13:-8 21:-12 22:45 43:10
board==	0:-8 1:-9 2:-19 4:53 5:-9 10:-17 11:-10 13:-26 14:-12 15:-12 16:-14 17:-20 27:70 29:-10 30:66 33:-10 35:-17 41:-14 42:-11 43:64 44:-13 45:-21 46:8 47:-9 48:-10 57:14 65:-13 70:-8 72:15 74:10 76:117 77:-13 82:-9 87:80 89:-24 90:88 92:-13 93:41 95:-9 96:-8 103:16 107:25 108:34 113:-13 114:-8 115:-8 125:-24
is too	3:-13 22:9 42:27 77:-8 91:40
too short	0:-19 3:43 22:57 40:33 41:-17 42:24 125:31
for any	22:17 65:16
board	0:-8 1:-9 2:-19 4:53 5:-9 10:-17 11:-10 13:-26 14:-12 15:-12 16:-14 17:-20 25:-11 27:69 29:-13 30:66 33:-11 35:-18 41:-14 42:-11 43:64 44:-13 45:-21 46:8 47:-9 48:-10 57:14 65:-13 70:-8 72:15 74:10 76:117 77:-14 82:-9 87:80 89:-24 90:88 92:-13 93:41 95:-9 96:-8 98:-8 103:44 107:25 108:32 113:-13 114:-8 115:-8 125:-24
board $	4:70 27:23 30:15 43:-12 87:-17 90:50 107:13 108:28
for anyth	22:13 40:12 114:33
are too	2:11 22:26
piece are	8:8 9:-11 23:29
week==s	8:-27 9:46 10:21 11:58 22:26 25:-8 26:-9 28:8 29:46 47:24 63:8 120:32 121:65
month==s	22:17 84:11
age==s	22:19
age	22:19
used age	22:19
age $	22:19
in month	22:9
nobody has	22:22 38:15 57:9 65:13 79:13
to throw	1:12 22:19
anyth to	22:16
ther any	8:-9 9:-8 18:18 25:-9 26:23 31:26
piece in	8:16
that i	32:13 35:8 39:8 67:10
i can	0:-11 8:10 18:18 23:12 65:20 77:24 81:14 90:24 101:22 110:18 111:11 125:-35
tin i	0:9
i should	10:32 37:13 64:12 119:8 125:9
should throw	125:16
anyth i	11:15
i could	25:14 29:18 108:17 125:-8
we could	125:31
we can	26:-11 30:12 32:-8 38:22 68:12 77:11 101:11 102:22 106:26 120:58 121:9 122:-18 125:15
ther piece	23:15
that we	5:15 11:19 23:-11 53:-16 84:24 112:22
we should	51:11 115:-22 125:48
held==	0:-8 8:-16 11:-8 13:-20 17:-10 18:-10 22:-11 23:190 29:-13 38:49 40:-10 41:11 45:70 47:22 48:-14 70:9 84:64 89:71 90:-27 113:-10 114:-11
held	0:-8 8:-16 11:-8 13:-20 17:-10 18:-10 22:-11 23:190 29:-13 38:49 40:-10 41:11 45:70 47:22 48:-14 70:9 84:64 89:71 90:-27 113:-10 114:-11
^ held	23:99 89:29 90:-8
held $	22:-8 23:87 38:23 125:-11
held the	23:14 41:13
is held	8:-12 23:26 84:55 125:17
held for	23:11 84:51 125:17
set==	0:-13 1:-19 2:17 4:-10 5:-8 7:-12 8:-15 9:-10 11:-33 13:-24 15:-8 17:-15 18:-8 19:-8 20:-9 23:83 27:-11 29:-11 33:-10 37:21 40:-10 43:-12 44:-8 45:-11 47:47 50:-9 54:-9 55:93 65:-8 66:-11 69:40 73:-11 75:-13 83:108 84:36 87:37 91:-9 95:23 98:29 99:47 104:61 107:-8 108:-8 109:8 115:10 124:-9
asid==e	5:-8 8:-12 9:-8 13:-10 23:96 33:9 35:10 37:-8 43:-10 83:124 84:51 108:20
what all	10:11 23:8 29:-8 33:49
set	0:-15 1:-20 2:17 4:-10 5:-9 7:-12 8:-16 9:-11 11:-36 13:-24 15:-8 17:-16 18:-8 19:-9 20:-9 22:-16 23:82 27:-11 29:-13 30:-8 33:-10 37:21 38:-8 39:-8 40:-11 43:-12 44:-9 45:-12 47:47 50:-10 54:-10 55:166 60:-8 65:-8 66:-11 69:38 73:-12 75:-13 83:106 84:36 87:36 91:-10 95:23 98:28 99:91 101:-8 102:-11 103:-8 104:43 106:-8 107:-8 108:-8 109:8 115:10 124:-9
)~",
R"~(is set	23:35 83:-10
asid	5:-8 8:-12 9:-8 13:-10 23:96 33:9 35:10 37:-8 43:-10 83:124 84:51 108:20
set asid	8:-11 23:92 83:31 84:79
asid for	23:41 33:12 35:12 83:-28 84:54
reserv==ed	0:-11 8:-27 9:-8 11:-12 12:-11 13:-19 19:-12 22:-12 23:141 25:-21 26:157 29:-21 31:-10 33:-16 37:9 83:10 84:42 105:11
reserv	0:-24 1:-9 4:-8 5:-12 8:-29 9:-13 11:-15 12:-12 13:-27 15:-8 16:-14 18:-16 19:-15 23:155 25:-21 26:159 27:-10 29:-11 31:-12 33:-26 36:-20 37:109 38:-9 43:-12 73:-8 83:74 84:52 105:41 125:-11
is reserv	8:-19 13:-14 23:61 25:-10 26:20 29:-11 84:35 105:13
reserv $	8:-12 23:58 25:-18 26:94 29:-9 31:-9
reserv for	0:-10 13:-14 23:24 26:10 37:26 84:33
kept==	1:-10 13:-12 21:11 23:100 37:19 38:28 72:-11 78:9 83:19 84:10 125:-9
kept	1:-10 13:-12 21:11 23:100 37:19 38:28 72:-11 78:9 83:19 84:10 125:-9
is kept	13:-8 23:27
kept for	1:-9 13:-11 23:72 37:12 38:10 83:8 84:17
and for	13:-8 17:-8 19:24 20:-8 23:131 29:14 83:-18 84:-11
who $	14:-12 15:61 28:27 33:-21
for which	11:23 29:18
asid $	23:46 83:69 84:-13
you==	0:-17 1:-32 2:-19 3:17 5:-15 7:18 11:-13 12:-16 13:31 14:-10 16:-13 17:-10 18:-9 19:-9 21:-9 22:-14 23:40 25:-12 27:10 29:-21 30:-22 31:-11 34:25 35:66 37:45 38:12 43:-8 59:-11 60:13 78:-8 90:19 99:21 100:-10 101:-9 102:32 103:17 108:-12 113:15 114:25 121:13 123:37 124:16 125:14
you	0:-17 1:-32 2:-19 3:17 5:-15 7:18 11:-13 12:-16 13:31 14:-10 16:-13 17:-10 18:-9 19:-9 21:-9 22:-14 23:40 25:-12 27:10 29:-21 30:-22 31:-11 34:25 35:66 37:45 38:12 43:-8 59:-11 60:13 78:-8 90:19 99:21 100:-10 101:-9 102:32 103:17 108:-12 113:15 114:25 121:13 123:37 124:16 125:14
do you	8:-10 9:12 10:-16 23:13 24:15 27:26 33:16
hold==	0:-22 1:-10 3:-9 5:-14 13:-14 16:-9 18:53 22:-13 23:32 27:-9 29:-15 33:-11 35:39 36:-39 37:126 38:64 40:-10 43:-12 48:-10 77:-8 83:76 84:41 89:23 90:-8 113:-8 114:25 121:8 125:10
hold	0:-27 1:-25 4:-12 5:-19 6:-10 8:25 11:-17 12:-10 13:-24 14:-15 15:-18 16:-20 17:-18 18:47 21:-9 22:-17 23:199 25:-15 26:-9 27:-14 28:-8 29:41 31:-8 32:-10 33:-25 35:29 36:-43 37:110 38:87 40:-24 43:-26 45:-8 48:-15 64:-8 66:36 70:-11 77:-10 83:62 84:122 87:-8 89:51 90:-22 91:17 100:-9 106:-8 107:-8 108:-11 113:-11 114:22 125:31
you hold	23:18
hold for	23:51 37:-8 83:-9 84:51
we hold	8:14 22:-9 23:44
hold==ing	1:-12 8:27 23:28 37:-13 38:31 40:-13 84:21 89:29 90:-13 91:9 125:33
we keep	23:25 29:21 30:22 52:36
are you	23:37
you keep	23:31 37:9
reserv of	8:-11 23:23
asid of	23:12
held of	23:14
are reserv	26:13
has #d	23:15 80:21
reserv #d	37:10
has piece	15:-12 23:39 33:-11
has #n	23:15 29:14
hold==s	3:9 14:-9 15:-11 16:-8 17:-16 23:138 29:52 33:-9 38:-8 43:-12 66:39 83:-11 84:59 91:9 125:-11
hold #d	23:10
@wire held	23:16
#n held	23:35 89:10
@wire reserv	23:39 31:-8
#n free	23:15 38:12 65:23
taken==	2:-8 23:15 26:54 36:20 41:9 63:17 72:18 75:-8 95:14 104:20 119:18
taken	2:-8 23:15 26:54 36:20 41:9 63:17 72:18 75:-8 95:14 104:20 119:18
taken $	23:16 29:8
anyth held	23:10
anyth set	23:26 83:-11
much of	23:20
of is	23:15
spring==	7:11 8:-9 9:-9 17:-8 23:10 24:153 45:23 65:17 75:-14 88:-8 96:-10 125:52
back==	1:-10 2:-22 4:-11 5:-12 7:-8 8:-11 9:-12 11:-16 12:-10 13:-26 14:-10 15:-11 16:-22 17:-22 18:-10 19:-8 20:-10 22:-10 23:21 24:123 26:-16 27:-10 28:-15 29:-31 30:-9 31:-13 32:-10 33:-19 35:13 36:-15 37:13 38:60 40:-11 41:12 43:-25 44:-14 45:98 47:10 53:-23 55:-11 57:-10 60:-8 61:-17 62:-22 63:146 64:-14 65:9 69:-9 72:17 75:-26 77:-11 81:-8 82:-17 83:-12 84:50 87:9 90:-8 91:-15 93:-8 94:23 95:28 96:-19 97:-13 99:-18 100:-10 101:22 102:103 103:-9 104:-10 105:-11 106:33 107:77 108:-15 110:-20 111:-12 112:42 114:29 115:-10 117:-8 118:21 124:86 125:16
stay==	0:-17 3:51 24:64 41:-9 45:17 52:13 54:37 91:9 101:-10 102:33 125:-13
interval==	24:25
spring	7:11 8:-9 9:-10 17:-8 23:10 24:166 45:23 65:17 75:-14 88:-8 96:-10 125:52
^ spring	5:10 24:70 45:31 75:-13 96:-10
back	1:-10 2:-22 4:-11 5:-12 7:-8 8:-11 9:-12 11:-16 12:-10 13:-27 14:-10 15:-11 16:-22 17:-23 18:-10 19:-8 20:-10 22:-10 23:21 24:140 26:-16 27:-11 28:-15 29:-31 30:-9 31:-13 32:-10 33:-19 35:13 36:-15 37:13 38:60 40:-11 41:12 43:-26 44:-14 45:96 47:10 53:-23 55:-11 57:-10 60:-8 61:-17 62:-22 63:146 64:-14 65:9 69:-9 72:17 75:-26 77:-11 81:-8 82:-17 83:-12 84:50 87:9 90:-8 91:-15 93:-9 94:23 95:27 96:-19 97:-13 99:-18 100:-10 101:22 102:103 103:-9 104:-10 105:-11 106:33 107:74 108:-15 110:-20 111:-12 112:42 113:-8 114:28 115:-10 117:-8 118:21 124:86 125:16
spring back	24:89 45:-8 125:57
stay	0:-17 3:50 5:-10 9:-8 16:-8 24:99 25:-14 41:-9 45:49 52:8 53:14 54:35 62:-15 77:-11 85:9 91:20 92:-8 102:50 110:-10 112:-9 114:-9 125:18
@job stay	93:12
by load	24:60
@wire stay	24:14
interval	24:25
#n stay	91:10
back the	112:20 124:24
sprang==	13:-17 16:-9 17:-10 24:130 27:-8 33:-17 45:129 75:-8 89:-10 95:-9 102:-9 125:12
sprang	13:-17 16:-9 17:-10 24:130 27:-8 33:-17 45:129 75:-8 89:-10 95:-9 102:-9 125:12
what sprang	13:-10 24:72 33:-9
sprang on	24:92
sprang of	24:33
sprang back	45:47 102:-9 125:16
back in	25:-11 38:23 63:13 72:-9 75:-9 87:10 95:46 102:20
back of	24:11 87:11
back on	24:32 45:44 63:38 75:-14 96:-10
fret sprang	24:22
did anyth	24:53
anyth spring	24:31
spring in	24:14
anyth sprang	24:16
often==	24:35 58:10
often	24:35 58:10
how often	24:33
@wire spring	24:21
with an	24:9
an interval	24:9
interval $	24:25
wire spring	24:10
the interval	24:16
spring with	24:12
often doe	24:25
fret spring	24:-19 125:63
back $	13:-8 17:-9 23:25 24:39 25:27 29:-16 31:-9 45:8 63:59 84:17 101:-25 102:73 124:73 125:-17
spring $	24:17
doe fret	17:34
do anyth	24:12 33:35 40:-8
do someth	99:12
doe anyth	22:17
sure==	8:-17 17:-9 24:69 87:10 89:16
sure	8:-17 17:-9 24:69 87:10 89:16
how sure	8:-17 24:70
sure is	8:-16 24:67
that $	0:47 18:9 24:30 25:-10 29:-9 30:-10 32:-10 33:16 35:-19 43:-13 53:13 55:14 59:11 93:10 104:16 112:-11 124:39 125:76
that of	8:-14 24:28 75:11
the spring	24:17
@wire with	8:-13 19:16 21:21 39:11 68:11
back by	24:17
mm==	0:28 1:18 2:-28 3:41 4:-18 5:8 6:-8 7:57 8:17 9:-13 13:-8 16:56 17:-22 18:11 19:-10 20:-17 21:-9 22:-31 23:-15 27:-8 30:-10 31:-12 33:-11 36:12 37:-12 38:28 39:11 41:-10 42:44 43:-16 44:-18 45:-14 46:38 47:-8 49:74 50:-15 51:24 55:105 60:-8 65:-8 67:-27 68:16 69:56 70:-28 71:-9 72:13 74:23 75:-14 76:46 77:-18 78:-34 79:-29 81:-10 85:48 87:16 88:50 89:-10 90:-9 91:-11 92:44 93:-9 95:-9 97:-8 98:-9 99:-8 108:-8 117:15 120:-12 125:-31
for each	0:-17 4:28
load per	24:9
per mm	24:11
down==	0:-24 1:-13 3:-26 4:-18 5:-16 8:-8 9:-14 11:-12 13:-19 14:-8 15:-8 17:-22 18:-8 19:-9 23:-16 24:59 25:67 26:13 28:-8 29:-22 30:-9 33:-17 36:11 37:-16 38:-8 40:-10 41:30 42:19 43:-18 44:73 47:-11 50:-9 51:38 52:-11 55:16 61:19 63:-9 69:15 70:-16 71:-12 75:13 76:-8 78:-12 80:-8 82:-13 85:10 87:-13 89:52 90:22 92:50 93:-14 95:-16 96:60 97:113 98:12 99:-12 101:49 102:-22 104:-9 105:-10 106:-13 107:-17 108:41 110:-10 111:12 113:-9 114:-8 115:-15 116:-11 117:-8 120:-10 125:64
^ from	0:15 5:50 19:30 20:-10 21:-23 22:-8 24:15 28:-13 29:12 32:-13 38:22 39:-10 49:9 50:20 52:10 53:12 54:-11 55:19 58:38 64:25 70:-19 73:34 82:25 101:21 103:-8 109:27 112:-8 115:-8 118:-12 120:17 122:8 125:-11
from which	0:14 1:-8 5:35 10:25 19:33 20:-8 22:-8 24:15 32:-18 51:19
fret stay	24:17
down	0:-24 1:-13 3:-26 4:-18 5:-17 8:-8 9:-14 11:-12 13:-19 14:-8 15:-8 17:-22 18:-8 19:-9 23:-16 24:59 25:67 26:13 28:-8 29:-22 30:-9 33:-17 36:11 37:-16 38:-8 40:-10 41:30 42:19 43:-18 44:73 47:-11 48:-10 50:-9 51:38 52:-11 53:-8 55:16 61:19 63:-9 69:15 70:-16 71:-12 75:13 76:-8 78:-12 80:-8 82:-13 85:10 87:-13 89:52 90:22 92:50 93:-14 95:-16 96:60 97:113 98:12 99:-12 101:49 102:-22 104:-9 105:-10 106:-13 107:-17 108:59 110:-11 111:12 113:-10 114:-9 115:-16 116:-11 117:-8 120:-10 125:59
stay down	0:-10 24:41 45:22
down $	0:-11 9:-11 11:-9 16:-8 23:-8 24:76 25:90 26:-10 44:53 45:29 51:36 77:-10 89:-9 91:10 96:18 97:16 102:-10 116:-8 125:9
load doe	24:12
down with	16:-13 44:16 69:8 96:29 97:39
they==	0:-8 1:-8 2:8 4:26 10:-13 17:-10 20:-13 25:22 31:-15 32:58 35:-9 41:13 50:-11 54:9 64:12 69:12 72:11 75:8 81:14 82:-10 90:-8 100:11 113:19 116:37 117:-8 118:10 119:23 120:47 121:-8 122:10 124:-11
)~",
R"~(^ at	4:10 5:-11 6:21 9:24 13:-14 15:28 24:30 29:12 32:-8 53:13 76:14 115:9 116:18 119:14
at which	4:12 10:8 12:-9 13:-10 14:18 15:17 24:14 29:16
they	0:-8 1:-8 2:8 4:26 10:-13 17:-10 20:-13 25:22 31:-15 32:58 35:-9 41:13 50:-11 54:9 64:12 69:12 72:11 75:8 81:14 82:-10 90:-8 100:11 113:19 116:37 117:-8 118:10 119:23 120:47 121:-8 122:10 124:-11
do they	4:19 25:14 32:8
from what	5:47 8:-9 19:-13 24:20
@wire down	24:22 69:16
keep==s	24:18 29:9 91:47 124:10
load keep	24:19
keep the	19:8 30:23 51:-16 52:-12 54:19 125:41
hold the	37:-15 114:19 125:36
keep fret	91:17
fret down	16:25
machine==s	8:-22 9:-9 11:-17 12:-18 14:-25 17:-8 23:-10 25:203 26:41 27:-8 28:-8 29:59 32:-17 35:-10 55:-11 57:-8 98:73 100:89 103:-9 125:-14
machin==e	5:-10 8:-9 9:-10 10:-13 11:-21 12:-14 13:-11 14:-20 15:-14 16:-11 17:-10 22:-9 23:-18 25:57 26:90 27:13 28:-19 29:42 30:-10 31:-9 32:-12 33:-13 43:-8 49:-14 55:-14 56:-13 57:-17 58:-30 59:18 61:-13 64:-12 86:-9 98:156 99:35 100:138 101:23 102:80 103:49 104:-15 105:15 108:-8 120:-14 122:-12 124:-9 125:-20
machine	8:-22 9:-9 11:-17 12:-18 14:-25 17:-8 23:-10 25:203 26:41 27:-8 28:-8 29:59 32:-17 35:-10 55:-11 57:-8 98:73 100:89 103:-9 125:-14
^ machine	25:63 100:-14
machin	5:-10 8:-9 9:-10 10:-13 11:-21 12:-14 13:-11 14:-20 15:-14 16:-11 17:-10 22:-9 23:-18 25:57 26:90 27:13 28:-19 29:42 30:-10 31:-9 32:-12 33:-13 43:-8 49:-14 55:-14 56:-13 57:-17 58:-30 59:18 61:-13 64:-12 86:-9 98:156 99:35 100:138 101:23 102:80 103:49 104:-15 105:15 108:-8 120:-14 122:-12 124:-9 125:-20
machine machin	25:8
machin bench	98:-12 99:-11 100:55 101:16 103:-15
bench machin	98:-8 100:-11 101:11
sander	0:-9 1:-10 2:-8 4:-8 5:-12 6:-8 7:-8 8:-32 9:-28 10:-12 11:-40 12:-26 13:-19 14:-46 15:-13 16:-11 17:-17 19:-8 20:-11 21:-13 22:-21 23:-27 24:-11 25:233 26:124 27:-27 28:-50 29:46 30:-17 31:-21 32:-21 33:-29 35:-33 36:-9 37:-9 38:-27 40:-13 43:-16 44:-10 45:-15 47:-17 48:-23 52:-20 53:-28 54:-16 55:-26 57:-21 58:-13 60:-12 62:-9 63:-9 64:-13 65:-23 75:-8 77:20 81:-10 83:-12 84:-14 86:-11 87:-14 89:-13 90:-8 91:-14 93:-8 95:-8 97:-9 98:-35 99:229 100:129 101:210 102:210 103:99 104:-35 105:194 106:150 107:-12 108:-24 109:-13 110:-29 111:-21 112:-19 113:-12 114:-8 115:-13 117:-12 118:-14 119:-12 120:-8 121:-11 122:-19 124:-16 125:16
machin sander	98:-17 99:13 100:36 102:8
sander $	11:-8 12:-12 14:-15 25:68 26:18 27:-13 29:51 35:-14 52:-9 77:22 99:59 100:23 101:-23 102:-16 103:101 104:-8 105:20 106:12 125:24
belt	11:-9 25:34 26:16 29:20 42:17 99:39 100:16 101:67 102:52 103:-10 104:-8 105:51 106:20 125:-18
machin belt	100:9 102:-10 105:9
belt sander	11:-9 25:35 26:17 29:21 99:44 100:16 101:31 102:35 103:-9 105:54 106:22 125:-15
sander machin	26:11 100:-10 102:-8
machin press	98:-15 100:11 102:38
press machin	100:-26 102:31
what machine	8:-12 25:72 29:-11
machine are	25:35 26:9
machine have	25:36
which machine	12:-9 25:23 26:47 29:-8
machine do	8:-8 25:39 29:-8
show machine	25:15
machine $	25:41 29:24 35:-8 55:-8 98:52 100:85 125:-9
the machine	14:-13 25:16 26:9 29:45 32:-11 98:36 100:46
is sander	25:30 26:12
sander in	26:35 100:20 102:-8
in use	70:-8 125:23
is belt	25:28
sander free	25:27 29:30
servic==e	0:24 3:9 11:-8 16:-8 25:68 26:-14 29:-13 86:9 99:-9 101:38 102:123 125:-10
is bench	25:29 26:14
bench in	25:13
servic	0:24 3:9 11:-8 16:-8 25:68 26:-14 29:-13 52:-12 86:9 99:-9 101:47 102:123 105:-9 125:-10
in servic	25:55 101:-11 102:19
servic $	3:10 25:46 101:-15 102:118
^ sander	26:69 99:47 100:20 101:82 102:40 105:39 106:-20 125:-14
^ bench	6:10 99:43 101:74 102:44 105:16 125:-12
^ anyon	25:12 38:29
anyon at	25:12
at at	25:8 83:13 97:16 105:19 115:-10
at press	25:23 107:46
is at	13:12 25:14 26:8 125:16
press now	25:14 44:10 75:-10 98:11 103:20
who at	14:-8 25:23
at sander	25:14
at on	25:15 33:18
on sander	25:13 29:12 101:11
sander now	25:9 99:17 103:30
on press	25:15
is anyon	25:13
is press	11:11 13:-10 16:-9 25:62 29:-8 35:-8 125:60
is using	25:20
use==s	25:8 73:8 83:19 103:13
who use	25:9
use belt	25:14 101:10
bench now	61:21 103:17 105:9
use press	25:15 101:12
has belt	26:16 29:-8
work==ing	8:-11 14:9 16:-9 25:78 28:50 29:-19 35:-11 52:16 53:-8 54:9 61:-10 62:-9 63:19 101:-8 108:41 109:13 110:-26 111:39 125:-11
is work	14:-8 28:19 112:16
work at	12:-8 25:16 53:9 61:59 64:-10 103:-8 107:11
at belt	25:-16 103:18
work on	13:-24 14:-13 15:19 16:-11 17:-10 27:21 28:27 29:22 33:8 38:-23 43:-10 45:-8 53:37 54:27 65:47 107:67 108:57 109:26 110:-16 111:46 112:-21 125:-13
sander ok	25:13
okay==	3:26 25:14
okay	3:26 25:14
bench okay	25:14
okay $	3:8 25:14
sander out	25:9 101:8
^ until	9:16 11:8 25:13 28:14
until when	9:22 11:8 25:13 28:12 30:9
press down	25:38 125:-10
sander back	102:31
press out	25:10 101:31
of servic	25:15 86:11 101:30 102:15
bench is	13:-13 14:30 15:26 99:60 103:-8 105:18
is down	67:14 92:12 101:73 102:-8 125:12
sander is	25:-14 26:-15 29:-14 100:13 101:8 105:62 125:16
which press	11:21 25:11
press is	11:-8 25:-39 26:-8 99:17 100:13 101:35 102:117 103:-8 105:-13 106:-8 125:31
which work	12:8 23:10 35:18
use sander	25:10
stage==s	4:-8 6:-8 13:-15 17:-11 23:-8 25:16 27:240 29:-8 30:-8 33:-9
stage	4:-8 6:-8 13:-15 17:-11 23:-8 25:16 27:240 29:-8 30:-8 33:-9
which stage	25:18 27:18
stage need	25:13
need sander	25:8 100:-10 105:13 106:18
need belt	25:18 103:-8 105:10 106:9
stag==e	11:-10 13:21 15:-10 16:-17 17:-21 27:92 29:-19 41:-11 43:46 64:-10 72:-10 97:-13 99:-12 100:-13 103:96 104:94 107:34 108:11
stag	11:-10 13:21 15:-10 16:-17 17:-21 27:92 29:-19 41:-11 43:46 64:-10 72:-10 97:-13 99:-12 100:-13 103:96 104:94 107:34 108:11
which stag	25:9 27:22
stag need	103:11
sander used	25:9
press need	25:12 99:25
sander need	99:12
sander for	25:19 48:-8 105:64 106:29
is done	0:-11 11:-9 13:38 15:-10 25:14 27:-8 29:-19 30:8 43:25 44:37 45:13 101:-8 103:78 108:-12 114:42 125:-18
done at	44:10 103:34
on belt	29:11
at bench	25:8 61:14
on bench	25:10 29:11
need bench	25:22 103:8 104:-9 105:18 106:15 125:-10
bench for	25:23 101:13 104:-11 105:44
^ stat	25:53
the sander	11:-11 14:-13 17:-8 25:45 28:-21 29:15 33:-13 35:-10 38:-9 48:-11 77:31 99:34 100:17 101:29 102:25 103:101 104:-15 105:60 106:57 110:-10 111:-9 125:44
of sander	99:20
of bench	25:8 99:18
are down	45:8
many bench	25:21
sander are	29:-9 99:-8 100:12 101:44 102:44
bench are	25:11 102:33
many sander	8:-10 25:42
sander do	25:14
booking==s	11:-10 26:284 28:-8 29:-11 61:-11 62:-13 63:-12 101:-13 110:-8
booking	11:-10 26:284 28:-8 29:-11 61:-11 62:-13 63:-12 101:-13 110:-8
^ booking	26:73
tomorrow day	118:13
machin $	25:23 26:-12 35:14 59:8 98:8 99:21 100:9 103:76
@day day	28:-11 110:17
list booking	26:9
booking for	26:53
booking $	26:92
booking in	26:17
in next	111:11
@day morn	11:11 26:13 28:-8 53:20 109:-9 110:44 111:-12 115:27 125:-8
the booking	26:55 106:10
my booking	26:18
booking on	26:10
^ my	3:17 12:29 28:20 29:19 33:43 41:-10 54:-9 58:14 111:25 124:32 125:-10
in tomorrow	110:28 111:18 125:-21
in this	14:31 21:8 25:24 29:-12 100:21
booking of	26:34
#r in	101:8
the afternoon	11:23 33:-8 43:21 75:-10 101:16 105:13 110:46
sander on	101:8 105:38 106:28 110:-9 111:-8 125:19
the even	26:8 54:13 66:11 110:12
book==ed	11:-13 13:-14 23:-20 25:27 26:211 28:-8 29:-38 33:-9 106:29 113:11 125:-8
has bench	14:-11 26:17 105:33 111:-10
book on	20:11 26:27
sander book	26:16 106:8
book in	117:10
who book	26:10
book $	26:58 33:-18 105:20 106:27 117:-9 119:8 125:12
has book	26:12
book sander	105:12
bench on	29:9 105:18 106:28 111:-12
when has	26:11 29:20
book belt	105:9
sander reserv	26:10
bench reserv	26:12
is book	13:-12 23:-16 26:100
@person on	43:-8 63:25 64:57 107:-11 109:29 110:17 111:-24
&#o@person	26:8 47:-9 110:45
for @person	12:-11 26:-11 28:-9 29:77 60:9 64:20 105:29 111:-9
@person for	110:16
@person @day	28:-14 109:33 110:26 111:-12
@day in	101:18 110:12
&@day@person	26:-16 29:25 62:-19 63:-15 105:-8 106:50 109:81 110:45 111:-10 125:26
are book	25:-8 26:16
on @day	1:-8 12:-8 14:-14 15:-10 24:-10 25:-10 26:41 28:76 29:11 33:-15 43:-9 45:-17 52:14 53:20 54:11 62:-10 63:-11 91:-10 94:-18 101:29 105:8 106:35 109:56 110:10 111:32 112:-35 115:14 118:9 125:122
)~",
R"~(i reserv	26:11 105:8
book==	25:-13 32:12 33:-15 35:35 50:14 66:-8 98:-8 105:121 106:-17 119:12 125:24
i book	26:37
book next	25:46 26:-19 29:-17 106:10
@day afternoon	26:25 52:-13 53:9 54:12 110:8
@person reserv	26:35 33:-9
reserv in	83:17
@person book	26:26 33:-15 106:24 125:21
did @person	23:-12 26:73 33:23 106:-12 125:-13
&#r@person	109:-8 111:31
taken for	26:14
the morn	26:9 53:13 101:10
sander taken	26:37
press book	25:52 26:-42 29:-16 106:35
have press	11:-16 26:33 99:-10 100:36 105:30 125:-8
have bench	26:21 100:16
have sander	105:11
have belt	26:8
sander the	26:8
anyth book	26:19
@day even	54:10
anyth reserv	23:-16 26:38
kind==	8:31 24:11 27:27 49:33 98:22 99:-10 100:34 110:9
bound==	13:37 27:49 30:11
^ stage	27:89
kind	8:30 24:11 27:25 35:10 49:33 98:22 99:-10 100:34 110:9
new_board	27:16
kind new_board	27:15
bound	13:37 27:49 30:11
fil	2:11 17:-10 25:-14 27:35 29:-11 30:22 39:11 41:-16 42:36 43:30 45:-12 77:24 89:-13 97:43 103:52 108:15
end fil	1:10 39:12 43:37
fil end	27:22 30:18
round	27:50 28:11 35:-9 43:14 49:18 103:9 104:28
end round	27:13
@job kind	27:9
#n kind	27:9
@job fret	0:-15 2:22 3:-21 13:-8 16:-12 36:20 39:-12 41:49 42:-13 43:-20 70:19 71:13 72:-8 73:23 75:31 77:11 82:-8 91:19 92:12 95:-8 96:13 97:-11 107:28
fret #c	27:8
#c fret	30:8
kind refret	27:9
#n fret	1:-12 2:-37 4:34 5:-11 13:-22 16:-17 17:66 24:-14 27:95 29:-8 30:80 33:-11 37:-8 39:-8 41:21 42:-11 43:-14 46:48 72:43 75:-8 77:-11 78:-28 82:-11 85:15 93:-10 95:28 98:12 104:41 107:-9 125:-20
round end	27:14
#c job	3:-10 48:-12 72:40 108:-9
fil fret	97:24
the stage	27:75
stage of	27:44
are stage	27:8
stage $	27:30
refret==	27:67 28:-11 29:-23 30:140 35:-10 46:10
stage for	27:30
whol refret	27:14 30:9
refret $	8:-11 9:22 11:-11 12:41 27:26 29:-13 30:35
of a	27:29 30:-9 41:-9 42:14 69:11 80:14 92:27 121:15
a whol	27:12 30:11 32:16 119:11
for an	30:11 104:-12 105:35
whol job	30:28
fil==ed	17:-10 27:18 29:-9 30:27 39:12 41:-15 42:38 43:32 45:-11 77:24 89:-13 97:43 103:17
fil refret	30:9
a job	35:31 46:11 103:15
what stage	27:34
stage doe	27:41
a refret	27:41 30:12 46:10
round==ed	27:12 43:14
stage has	27:8
has a	41:20 65:-10 68:8 88:22 94:41 99:13 102:19 110:21 125:-10
refret with	27:13
with round	30:12
do on	13:-13 17:-11 27:23 29:10 33:18
done for	13:-12 27:17 40:17 43:22 108:31
the work	9:20 13:-15 23:-8 27:40 64:27
with fil	27:18 30:13
end take	104:12
@job still	13:19
#n still	13:47 17:-9 23:47 125:-11
far is	13:-22 27:36
we on	11:-9 12:16
far am	27:12
i on	27:12
much work	8:-10 13:-14 27:74
work is	27:44
next stag	17:-9 27:26 107:27
stag of	27:47 107:27
stag for	27:32
what come	10:-11 13:29 16:14 17:-15 23:-10 27:15 29:48 33:-10
stag come	27:14
stag is	13:40 29:-8 43:22
check==ing	43:9 110:28
doing==	4:-12 11:-11 15:33 28:-13 29:64 30:18 32:10 47:-15 48:43 64:42 65:20 77:13 104:12 107:8 112:-11 113:18 125:-24
doing	4:-12 11:-11 15:33 28:-13 29:64 30:18 32:10 47:-15 48:43 64:42 65:20 77:13 104:12 107:8 112:-11 113:18 125:-24
doing slot	108:12
fret take	103:21 104:14
tru==ing	13:-12 43:24 87:-8 103:27 104:45 107:66 108:56
tru	4:-9 13:-20 15:-8 17:-9 23:24 28:-9 29:-8 32:14 33:-9 43:82 48:-8 53:10 65:16 87:-21 94:10 103:27 104:45 107:79 108:53 112:12 113:-13 114:-9
tru the	43:16 107:36 108:8 125:10
clean==ing	22:10 27:23 107:38 108:-10
doe clean	27:17
clean the	95:10 107:27
the board	2:-9 43:25 45:-11 76:24 77:-10 87:18 89:-19 90:72 91:-13 93:37 103:9 125:-10
pull==ing	2:-8 27:18 32:-8 33:-8 43:22 72:-23 77:39 95:24 103:59 104:25 107:85 108:49 125:-14
doe pull	27:9
pull board	103:10
true==ing	43:15 103:12 107:22
true	3:-10 8:53 43:76 87:-10 88:-11 103:11 104:15 107:33 108:-12
pull fret	0:54 2:-19 4:-11 27:8 39:38 72:57 103:15 107:22 125:-9
nip	0:19 3:-9 4:-11 5:-12 6:17 25:10 27:16 39:10 42:24 43:74 70:15 71:-11 77:26 84:-8 103:27 104:26 107:19 108:-11 125:-24
doe press	27:22 32:-12
press take	27:22 32:-13 99:27
polish	2:-8 13:-15 17:-8 25:-21 27:55 33:-8 43:120 48:-10 64:-9 99:-10 103:64 104:35 107:16 108:27 114:-9 125:-8
seat	2:-11 4:-14 13:-22 15:-8 16:-8 17:-15 18:34 24:21 25:-8 27:33 32:-19 43:111 45:-12 61:-12 64:-8 65:-11 72:-8 77:-19 78:-8 95:126 97:-11 99:-13 103:83 104:44 107:58 114:-14
doe seat	27:19 32:-11
seat take	27:18 32:-12 103:19 104:11
for #c	16:-8 44:-10 55:17 60:27 85:22
doe cut	27:17 32:-12
cut take	27:17 32:-12 104:21
recheck take	104:15
corner	25:-10 27:44 43:21 100:-8 103:50 104:36 108:-9 125:15
pull==	0:11 3:10 4:40 10:-15 12:42 17:-8 27:11 43:12 57:13 72:38 125:-15
it take	27:12 32:24
take to	6:14 9:-9 32:42
to pull	3:10 27:9 72:54 125:-13
board of	43:34 46:10 76:32 87:47 90:-21 91:-11 93:30 107:20 125:-8
true==	3:-10 8:54 27:8 43:59 88:-11 107:10 108:-8
to true	27:9 107:20
true end	107:10
end of	8:-8 9:44 30:37 39:24 70:25 71:-18 76:8 79:16 107:13 108:9 114:17 125:-9
fret @job	15:19 73:26 107:-9 108:9
nip==	0:15 5:-9 6:21 25:12 55:11
to nip	0:16
true the	107:9
fret on	0:-8 2:50 4:41 13:-11 15:-10 16:-12 17:35 24:87 27:-27 30:-9 33:28 41:17 43:-11 44:-14 45:-14 89:-9 93:9 107:-22 108:9 125:-13
dress==	103:28
to dress	107:33
of $	5:23 27:9
for nip	103:15
nip fret	70:16
to bend	107:12
pull the	2:-10 27:14 33:33 43:29 48:18 57:14 72:-29 103:25 107:42 108:16 125:-10
hour==s	11:-31 12:-13 14:-8 23:-8 25:-8 28:205 29:-42 33:-10 35:-9 43:12 44:8 45:-8 52:76 53:-17 54:79 55:35 61:-9 62:-13 63:-13 89:-8 99:-9 101:-12 104:41 107:-9 108:-8 109:107 110:-21 111:36 115:-10 118:-9 125:-11
hour	0:-12 1:-10 2:-9 3:-10 4:-9 5:-10 8:-8 10:-8 11:-35 12:-16 13:-10 14:-11 16:-22 17:-12 23:-12 25:-18 26:-20 27:-12 28:182 30:-12 31:-10 32:-8 33:-18 35:-19 38:17 40:-11 41:9 42:-10 43:26 44:29 45:-12 47:-11 51:-12 52:68 53:-17 54:81 55:25 57:-8 61:-10 62:-14 63:-15 64:-10 68:18 70:14 72:14 73:-11 75:-8 77:17 81:-8 83:-9 84:26 89:-20 91:-11 92:-10 95:16 96:10 99:9 100:-8 101:18 103:-14 104:134 105:37 106:-12 109:104 110:-30 111:40 113:-8 115:9 118:-13 124:-8 125:-43
^ hour	28:76 52:-9 54:37 109:9
@person person	28:20 29:23 61:9 62:-24 64:-17
~ day	28:8
~ last	53:-8 110:11
@person week	109:14
@person last	62:39
next last	53:9
when are	28:37 29:8 31:-10
shop open	28:73 29:-13 53:-13 54:19 112:9
on from	28:24 29:31 109:-16 110:13
from #r	29:8 45:10 52:33 75:11 105:9 109:-15 110:-13 111:38
#r to	45:11 75:30 110:9
clos==ed	11:-12 14:-8 28:34 29:-13 30:-8 31:60 43:38 47:-9 52:134 53:76 54:-10 55:-9 87:24 101:-9 110:-9 112:56 115:-10 118:-9 121:32 122:9 124:-11 125:-51
clos	5:-8 9:-9 11:-22 14:-11 25:-10 26:-11 28:45 29:-25 30:-13 31:64 32:-8 33:-9 38:-8 43:35 47:-18 52:110 53:192 54:-25 55:-12 60:10 65:-8 87:22 101:-16 106:-10 108:-11 109:-10 110:-20 111:-12 112:139 115:-15 118:-20 121:29 124:-13 125:27
we clos	28:54 112:-16
clos for	28:8 53:28 112:25
for from	28:9 29:8 109:-10 110:13
#o to	47:-14 53:15 110:27
to today	118:14
shop clos	28:32
clos from	28:9 53:15
&#r@day	52:52 54:13 105:24 109:-9 112:-12 118:-9
till==	9:18 11:-11 19:-10 22:8 23:11 28:43 29:-13 30:-11 31:19 47:11 48:-9 51:25 53:10 54:30 97:14 101:43 105:-8 109:-22 110:-12 111:77 114:25 115:17 117:-9 118:17 125:-36
till	9:18 11:-11 19:-10 22:8 23:11 28:43 29:-13 30:-11 31:19 47:11 48:-9 51:25 53:10 54:30 97:14 101:43 105:-8 109:-22 110:-12 111:77 114:25 115:17 117:-9 118:17 125:-36
clos $	28:16 43:21 52:28 53:11 60:13
open==ing	2:-11 5:28 28:42 54:38
open hour	28:-18 52:86 54:-26
hour $	11:-17 12:-11 14:-9 25:-13 26:-8 28:94 29:-14 35:-10 52:27 53:-8 54:45 63:-8 98:8 99:29 101:-10 103:-8 104:66 105:55 108:-8 109:88 111:-21
hour for	28:38 29:-10 52:21 104:50 105:-16 109:-28 111:38
are our	32:9
^ our	52:15 55:74 88:12 118:9
hour in	109:15
in from	109:-11 111:26
till @day	47:13 101:37 115:14
the hour	28:33 52:11 54:11
our hour	52:17
hour on	28:-11 29:38 52:24 111:22 125:-11
clos==e	11:-8 28:18 29:-10 52:-14 53:136 60:12 110:-8 125:-20
clos on	28:12 52:-13 53:23 112:18 125:82
clos in	52:24 53:-11 121:36
shut==	11:-8 28:15 29:-14 52:31 53:166 108:-8 110:-10 111:-14 112:48 115:-12 125:-13
shut	11:-8 28:15 29:-14 52:31 53:166 108:-8 110:-10 111:-14 112:48 115:-12 125:-13
we shut	28:45 115:-9
open next	52:-16 53:34 54:18 125:-9
)~",
R"~(late==	5:-9 8:-10 9:-13 11:100 12:-32 14:-8 22:-12 25:-11 27:-9 29:32 30:10 32:31 35:-8 52:-10 54:30 98:44 111:11 113:18 118:47 125:-14
late	5:-9 8:-10 9:-13 11:100 12:-32 14:-8 22:-12 25:-11 27:-9 29:32 30:10 32:31 35:-8 52:-10 54:30 98:44 111:11 113:18 118:47 125:-14
how late	28:14 29:-8 32:40
late are	28:15
for now	29:-9 37:35 108:83
tomorrow till	111:9
@person work	12:-9 28:35 29:-29 62:-30 63:25 109:68 110:-11 111:54
to #o	110:8
@person come	28:34 59:16 109:-17 111:44
come $	4:19 9:-21 19:-28 27:-16 29:-8 31:100 32:27 117:58 119:26 125:-23
come in	19:38 28:50 31:-13 49:34 59:23 98:13 109:44 110:-35 125:-14
work $	1:-11 9:-11 11:-9 14:-14 16:-9 23:8 25:70 26:-9 27:-14 28:28 29:29 30:10 32:-9 33:-9 35:54 53:-14 61:34 62:-11 63:-8 98:26 99:-10 101:-8 102:-9 104:10 108:37 110:-17 111:15 112:24 125:-12
is @person	12:10 26:-15 28:58 29:24 59:72 60:-37 61:-11 62:-14 64:27 109:-14 110:-17 111:-19 125:70
@person in	28:26 109:-13 110:-9 111:32
in on	0:-11 13:52 16:-18 17:-10 28:43 43:-14 44:26 54:24 109:53 110:-36 125:-14
@person ther	28:17
@person here	28:27 29:-10 109:-9 111:23
here on	29:-11 33:32 52:21 53:18 64:26 110:30 111:-12 125:-21
&#r@day@person	28:-11 109:47 110:-27 111:29
@person away	28:8 110:11
today until	54:19
ther on	28:23
till the	22:9
i work	28:63 29:-21 111:23
till #r	118:8
till #o	53:18
my hour	28:59 29:-12 54:-9 111:26
hour of	28:29 109:31
is away	29:-8 110:63
out @day	47:15
out for	108:26 110:8
off for	0:-11 13:9 23:-15 50:-15 84:31 108:22 110:16 116:28
#o till	28:8
somebody==	2:-8 8:-10 9:-12 11:-19 13:-16 15:33 19:-11 22:-13 23:49 25:14 27:8 28:22 29:16 30:18 31:14 33:18 54:10 58:9 64:-9 65:23 68:12 103:-8 107:-12 125:86
somebody	2:-8 8:-10 9:-12 11:-19 13:-16 15:33 19:-11 22:-13 23:49 25:14 27:8 28:22 29:16 30:18 31:14 33:18 54:10 58:9 64:-9 65:23 68:12 103:-8 107:-12 125:86
is somebody	13:-13 15:25 28:24
is anybody	13:-10 15:59 17:-11 23:11 26:13 28:44
anybody in	28:18 60:9
anybody here	28:12
everybody==	9:-8 12:-38 14:98 25:-17 28:33 29:-13 32:15 33:23 48:-11 65:69 88:12 120:-12
everybody	9:-8 12:-38 14:98 25:-17 28:33 29:-13 32:15 33:23 48:-11 65:69 88:12 120:-12
^ everybody	28:9
everybody hour	28:20
are everybody	28:11
hour from	28:29 101:-9 105:9
agenda==	11:-8 29:147 35:13
agenda	11:-8 29:147 35:13
^ agenda	29:118
#n person	59:9 60:-9 64:8 107:13
@job person	64:13 107:8
@job mine	13:-21 15:47 64:54
&#n@job@person	23:-10 33:10 43:18 77:26 107:20
bench job	103:21
schedul==e	16:34 29:103 105:-13
schedul	16:33 29:125 30:-9 105:-13
the schedul	29:12
schedul $	29:9
the agenda	29:8
agenda $	35:14
-==	0:39 2:49 3:-12 4:-10 5:10 6:-21 7:8 8:-26 9:38 10:-14 11:43 12:-8 13:27 16:31 18:26 19:-8 20:-8 21:14 24:35 25:-13 26:-8 27:17 28:-19 29:17 30:12 31:-15 32:-13 35:8 36:-29 38:-27 41:-17 42:16 43:33 44:-20 47:-8 48:12 49:15 50:-10 52:33 53:-11 55:-10 61:-11 62:-36 63:75 69:-11 72:-13 75:-9 78:-18 79:-8 80:8 81:-12 82:16 87:15 89:-22 90:-13 94:30 95:-17 96:-14 99:29 100:10 101:-14 102:-10 103:-8 104:-8 105:13 106:-13 108:-14 109:36 110:-11 111:10 115:-14 116:-11 117:-20 118:15 119:-8 121:15 124:-8 125:-44
plan on	25:-9 29:32
-	0:39 2:49 3:-12 4:-10 5:10 6:-21 7:8 8:-26 9:38 10:-14 11:43 12:-8 13:27 16:31 18:26 19:-8 20:-8 21:14 24:35 25:-13 26:-8 27:17 28:-19 29:17 30:12 31:-15 32:-13 35:8 36:-29 38:-27 41:-17 42:16 43:33 44:-20 47:-8 48:12 49:15 50:-10 52:33 53:-11 55:-10 61:-11 62:-36 63:75 69:-11 72:-13 75:-9 78:-18 79:-8 80:8 81:-12 82:16 87:15 89:-22 90:-13 94:30 95:-17 96:-14 99:29 100:10 101:-14 102:-10 103:-8 104:-8 105:13 106:-13 108:-14 109:36 110:-11 111:10 115:-14 116:-11 117:-20 118:15 119:-8 121:15 124:-8 125:-44
#o -	29:8
schedul of	16:20
@person from	28:-9 62:30 63:-8 110:14
the plan	2:12 11:14 16:-8 25:-8 29:17 33:-10 83:86 98:44 100:13
agenda for	29:68
for press	16:11
my schedul	29:24
tomorrow in	110:13
my agenda	29:16
is our	5:13 9:11 27:11
schedul for	16:14 29:108 30:-9 105:-12
is schedul	29:19
week of	8:-25 9:38
week by	29:13
^ this	1:11 43:18
me next	29:10
by machin	25:34
machin on	26:19 105:8
on @person	29:8 64:26 109:32 110:-21
machin for	35:10
week on	110:16
^ week	29:24
week plan	29:38
week for	101:12
of machin	98:12 99:-9 100:9
do next	17:-30 29:60
begin==	11:-19 13:-9 29:55 107:54 108:-13 114:26 125:-11
begin	11:-20 13:-12 28:-14 29:69 43:-10 50:22 54:-20 87:19 101:18 102:-10 105:8 107:100 108:-16 111:24 114:25 117:-14 125:-12
begin with	11:-16 29:33 107:11
start==	11:-11 13:-11 19:-10 20:16 21:-8 29:90 43:-13 46:17 107:65 111:24 114:11 120:26 125:-9
start	4:-11 6:-8 11:-15 15:-55 16:-8 17:-14 18:-8 19:-11 20:16 21:-8 29:84 33:45 43:14 44:-8 46:16 48:-8 52:18 58:17 61:-11 64:-13 65:-12 87:20 89:-13 107:206 108:-22 109:26 111:25 113:-10 115:-9 120:25 125:-14
we start	19:-10 20:18 29:14 107:11
start with	19:-10 20:18 29:15 107:23
we work	12:12 28:-8 53:-12 112:26
on with	107:89 108:-13
next up	11:39 17:-8
up for	5:16 6:-14 13:-8 16:10 20:14 23:17 38:21 65:55 70:14 83:-12 84:14 99:12
what next	29:16
what now	17:-8 25:-13 29:93
need doing	29:10
doing next	29:19
doing $	113:20
want to	3:10 4:8 69:15 110:-12
@person start	109:21
should @person	10:44 31:-10
@person do	15:54 17:-8 33:21 64:-13 125:-18
for me	0:-14 3:24 5:-10 20:16 23:-12 29:19 35:9 57:14 81:14 105:22 125:29
me $	12:9 13:-23 14:-15 26:-8 28:21 35:19 57:14 64:40 89:35 105:-13 110:38 125:36
why it	91:13
it now	106:17 125:-11
i am	1:-9 6:12 9:29 10:11 11:-9 17:-25 33:-9 36:-11 42:-22 43:27 51:12 52:15 59:-8 60:9 64:33 65:26 73:23 82:-14 89:12 105:-8 107:71 108:14 110:29 111:42 113:15 122:-9 125:54
am free	29:13
noth==ing	5:15 11:-11 13:11 15:-8 17:-14 28:-18 29:39 44:-13 45:23 47:-9 57:14 77:12 84:23 87:65 89:-10 90:21 91:66 93:74 107:-9 115:-9 117:12 121:15 125:22
noth	5:15 11:-11 13:11 15:-8 17:-14 28:-18 29:39 44:-13 45:23 47:-9 57:14 77:12 84:23 87:65 89:-10 90:21 91:66 93:74 107:-9 115:-9 117:12 121:15 125:22
have noth	13:25 28:-12 29:19
noth to	28:-17 29:52
free what	23:-42 84:57
me work	29:15
work to	29:9
me someth	0:16 4:-9
someth to	0:22 33:11 125:-8
i go	16:14 33:-8 44:-12 83:14
go on	6:10 16:11 27:-10 29:9 33:-10 45:17 55:9 83:14 107:10 108:27
on $	13:19 17:-8 21:8 24:-8 25:-11 27:11 28:-19 29:33 32:23 41:-20 52:37 55:47 61:15 63:21 77:-11 96:16 99:10 101:-10 103:28 107:-12 108:-12 110:-11 111:36 120:10 125:58
i start	27:10 29:52 107:-15 111:12
start $	29:12 43:-15 107:49 114:9
what am	11:-10 12:54 17:8 23:-10 29:12 35:-8
we at	29:11
at $	13:45 14:66 17:-15 25:-9 32:9
to $	1:32 2:15 5:-14 10:32 15:28 17:19 18:18 20:8 31:-11 33:-10 70:-11 75:-13 125:-8
have on	0:-18 4:19 8:8 11:15 12:22 26:-14 29:22 33:-13 55:15
have for	29:15 32:26
got to	12:8 44:53 72:-11 125:30
got on	12:19
rest==	2:8 17:-10 31:-10 38:10 45:30 70:21 92:15 106:-9 110:8 117:79 118:55 119:83 125:-26
got what	12:9
rest	2:8 17:-10 31:-10 38:10 45:30 70:21 92:15 106:-9 110:8 117:79 118:55 119:83 125:-26
rest of	38:12 53:9 101:9 110:16 118:42 119:12
on in	33:23
will @person	28:35 110:-14 125:-16
for what	23:8
the rest	2:8 17:-10 38:11 45:23 70:22 92:15 106:-8 110:15 117:11 118:25 119:52 125:-13
in @day	28:18 110:13
@person doing	29:15
doing on	29:15
on for	9:-15 12:-8 27:18 28:-15 29:20 31:26
is plan	25:-15 26:-8 29:60 83:24 84:-13
schedul==ed	29:21
plan at	5:13 29:-9 104:17
on at	11:-9 12:16 115:10
for bench	6:22
done from	5:31 55:17
sander #r	106:10
press #o	105:9
@job go	11:20 33:12 72:18
go under	11:21
be in	29:11 54:24 98:19 110:54 111:-17 122:13 125:-26
in press	86:10
day will	29:8
to job	33:26
to @job	13:-14 15:25 53:15 112:-9
@job begin	87:16
begin $	29:17 107:49
@job start	87:28 107:-14
busy==	25:-27 28:-9 29:92 111:9
busy	25:-27 28:-9 29:92 111:9
come on	111:8 117:17 118:17
sander from	99:22
@person free	29:39 111:-13
free on	29:44 111:-13
of this	33:16 53:12 101:9 110:33
@day -	52:8 54:-23 109:38 111:-12
december at	115:23
at tomorrow	84:9 105:10 111:-8
tomorrow at	26:24 43:12 44:9 45:-14 89:-8 96:8 101:27 102:15 105:-13 108:18 115:63 117:22
&#n#o@person	99:11 111:31
&#n#r@person	105:13
free at	29:22
at this	9:16 76:9 77:20 96:12 97:10 111:20 116:9
press free	29:10
at @day	96:13
)~",
R"~(@day at	11:13 29:24 44:25 45:28 52:-23 70:-8 71:20 75:-12 82:-8 95:24 96:22 97:9 102:17 107:12 108:18 109:-13 110:-11 111:12 112:17 115:11 125:-11
&#n@day	1:-10 11:-20 22:14 26:-17 28:-15 29:-10 40:12 47:16 52:51 53:16 54:72 70:-9 75:-15 89:-10 94:-17 95:25 101:30 102:11 105:18 106:9 108:17 109:-38 110:-12 111:12 112:-8 115:29 117:36 118:43
yesterday	0:-11 1:-18 2:-16 4:-8 9:-8 11:-9 13:-14 16:-9 17:-13 19:-9 24:-9 25:-13 26:-8 28:-8 31:-9 32:-8 33:64 36:14 38:-9 39:10 40:30 41:-9 42:-9 43:40 44:45 45:-14 48:-11 50:16 51:-8 64:-10 66:19 68:29 69:-9 70:8 71:23 72:10 73:13 75:-18 76:-8 77:20 78:15 82:-13 89:-14 90:-9 91:-15 93:-9 95:42 97:53 100:-11 101:34 102:-11 107:26 108:-16 111:30 113:-8 115:54 116:11 117:27
at yesterday	36:10 50:-8 68:15 82:-9 97:12 100:-8 102:14 115:9
yesterday $	1:-11 11:-9 13:-11 17:-10 25:-8 33:19 36:25 38:-8 39:9 43:19 44:29 48:-9 50:17 54:8 68:23 77:22 89:-11 91:-9 95:34 97:43 101:26 102:-21 107:27 108:-12 111:9 115:53 116:-9 117:13 125:16
free the	38:21 84:9
#o at	3:14 97:12 111:8
ther time	30:19
time on	106:11
some time	115:-22 125:38
time at	32:13
room==	29:11 98:13
room	29:11 98:13
&#n#r@day	16:-13 71:8 97:16 105:43
can @person	29:13
@person get	43:-10 107:27
get bench	29:8
#t	1:-8 2:-13 5:-8 11:-17 13:-13 16:-11 26:-23 28:-40 33:-9 40:10 43:13 44:26 47:-9 52:101 54:93 55:-13 56:16 61:-13 63:-10 64:-8 71:11 74:10 75:-16 76:-11 83:8 89:-11 91:-9 95:20 97:18 99:-11 101:55 102:14 105:84 106:-10 107:10 108:26 109:43 110:-24 111:81 112:-13 115:42 117:14 118:-12 125:-27
at #t	2:-8 13:-10 29:22 40:15 43:16 44:34 45:12 52:15 53:17 54:-12 71:13 74:12 75:-8 76:-10 83:10 91:-8 95:23 97:20 101:12 102:8 107:16 108:42 110:-8 117:18
&#t	2:-8 11:-14 13:-12 16:-9 26:-14 28:-21 29:10 40:12 43:16 44:29 47:-8 52:25 54:80 55:-10 56:17 61:-8 71:12 74:11 75:-12 76:-10 83:9 89:-10 91:-8 95:21 97:11 99:-9 101:41 102:16 105:50 107:10 108:35 110:-16 111:40 112:-9 115:60 117:16 118:-8 125:-24
#t $	11:-8 13:-9 26:-9 28:-14 29:15 40:12 43:21 44:33 52:-20 54:62 71:13 75:-10 101:14 102:20 105:25 107:25 108:18 109:12 110:-13 111:21 115:63 117:18 125:-21
sander at	25:8
#n hour	28:-17 36:-11 43:31 44:22 45:-11 54:14 55:9 68:22 70:-10 73:-8 82:-8 84:32 89:-8 99:-11 101:21 104:109 105:13 115:17
ago	0:-8 1:-10 3:-12 16:-21 17:-9 33:-10 36:-10 37:-10 38:17 40:9 43:30 44:44 45:26 51:-11 64:-8 67:9 68:16 70:10 72:14 73:-10 75:18 77:18 81:27 84:31 89:-16 91:-8 92:-10 93:-8 95:18 96:27 97:15 99:-16 101:36 102:36 104:-39 105:-11 108:50 115:10 125:-25
hour ago	16:-15 29:8 37:-8 38:24 42:-9 43:20 44:17 51:-10 67:9 68:20 70:20 72:16 73:-8 77:21 82:8 84:31 89:-11 95:25 96:17 97:8 99:-8 101:37 102:18 104:-19 105:-9 115:20 125:-18
ago $	1:-8 16:-15 17:-8 29:8 36:-14 38:13 40:10 41:-10 43:19 44:18 45:28 50:-16 67:9 70:20 72:15 73:-9 77:21 81:28 82:10 89:-12 95:20 96:15 97:22 99:-12 102:51 104:-27 108:55 115:21 125:-21
press from	100:14 103:32 105:46
has time	29:13 47:27 65:60 113:-9
time for	11:25 26:-20 27:60 28:37 29:-16 30:10 55:-8 104:18
full==	0:20 4:-8 8:41 16:17 21:-13 33:28 79:-17 83:16 91:20 104:12 109:33 117:11 125:21
full	0:20 4:-8 8:41 16:17 21:-13 33:28 79:-17 83:16 91:20 104:12 109:33 117:11 125:21
how full	8:43 21:-13
full is	8:43 21:-13
shop this	54:8
how busy	25:-24 28:-8 29:71
we in	25:10
the com	26:16
load==ed	25:-30 29:63 75:15
how load	16:-14 25:-30 29:63
are @person	28:11
busy am	29:17
i $	29:16 31:11
what machin	26:15
machin is	25:-9 29:37
which machin	11:-10 15:-10 23:-9 25:33 26:39 27:25 28:-10 29:42
machin hold	29:50
hold us	29:16
us up	29:16
bottleneck==	25:-18 29:79
bottleneck	25:-18 29:79
the bottleneck	25:-17 29:62
bottleneck $	25:-18 29:79
our bottleneck	29:13
wher is	6:36 13:-17 15:13 17:9 20:8 25:-11 29:13
is hold	91:10
what hold	91:12
hold everyth	23:-8 29:48 83:40
everyth up	29:49
the machin	25:-12 26:10 59:20 98:8 99:27 100:41 103:-14 106:9
machin load	29:11
load of	29:15
machine load	29:11
work do	29:9 35:18
ther at	33:19
slack==	29:70
slack	29:70
the slack	29:33
leeway==	29:26
leeway	29:26
leeway $	29:10
the leeway	29:14
much slack	29:31
slack is	29:22
much time	27:-12 29:40
time to	9:27 22:18
time has	29:31
has @job	13:27 65:15
#n got	0:-10 26:16 36:26 41:-8 43:18 75:-9 77:24 82:9 95:10
@job got	13:25 16:-8 44:17 94:52
time doe	27:11 28:41
time do	29:11
have left	14:8 29:8
time is	106:35
deadline $	29:13
deadline of	29:10
start==ed	13:17 15:-49 33:51 43:40 103:9 107:56 108:-10
when may	29:16
be cut	4:14 5:33
begun==	13:27 29:17 43:-16 107:81
begun	13:27 29:17 43:-16 107:81
be begun	29:18
begun at	13:35
may the	3:9 4:21
start on	107:53 125:11
to begin	11:-16 29:30
start the	27:10 107:22
tightest==	29:14
tightest	29:14
is tightest	29:11
tightest $	29:14
urgent==	13:35 15:-19 17:-10 48:-12 65:-13 87:-8 113:169 114:-10
urgent	13:35 15:-19 17:-10 48:-12 65:-13 87:-8 113:169 114:-10
is urgent	13:-9 113:71
urgent $	13:37 15:-18 17:-8 48:-8 65:-9 113:112
begin==ning	29:16 50:23 105:9 117:-13
latest begin	29:17
begin of	29:17
latest start	29:30
start of	29:10
finish==ed	0:56 11:11 13:21 15:-24 16:-19 17:-14 18:-11 23:-8 30:18 31:31 43:185 44:88 47:-9 48:-10 64:-16 65:-8 72:-8 101:-11 102:11 104:-12 107:-23 108:33 113:-9 114:45 125:18
when would	28:9 29:9
finish	0:55 9:-8 11:11 13:21 15:-24 16:-19 17:-14 18:-11 23:-8 30:26 31:31 43:185 44:88 47:-9 48:-10 64:-16 65:-8 72:-8 101:-11 102:11 104:-12 107:-23 108:33 113:-9 114:45 125:17
be finish	11:22 29:13
#n ready	29:11
ready by	30:13
@job ready	13:36
late $	11:72 12:-29 22:-9 29:40 30:12 31:12
@job in	0:-10 15:10 46:8 47:27 72:16
in time	29:40
be late	11:-13 12:-25 29:61 118:10
be on	4:14 8:20 16:-9 18:32 27:-10 91:-9 98:23 115:13
run behind	11:19
behind $	29:10
run late	54:9
we late	11:29
danger==	53:10
danger	53:10
keep==	0:-12 1:-15 5:-17 9:-8 14:10 23:32 25:-8 28:-9 29:8 30:19 32:48 33:-13 35:-10 36:-27 37:90 38:-11 40:13 42:-8 51:-18 52:51 53:-14 68:11 76:8 83:72 84:-13 88:8 105:22 106:-33 111:-13 119:8 121:-12 125:104
promis==e	2:11 11:-8 13:9 16:-8 30:129 35:10 47:80
keep all	21:11 29:22
all promise	29:12
promise $	29:19
all our	8:49 9:-14 19:-12 20:37 32:-8
job finish	30:16
finish $	13:34 15:-20 29:25 30:21 43:26 44:26 101:-9 102:13 108:34 114:27 125:-12
are all	13:28 17:12 27:28 43:26 45:-9 53:15 71:9 84:-8 112:-10
doe what	14:-9 29:73 32:-11 33:-19
what on	33:12
what $	0:-8 5:29 8:-31 9:-10 10:13 11:34 19:51 20:18 21:-13 24:-9 26:19 29:17 32:-12 33:-15
on what	8:-8 20:25 21:-10 29:23
is doing	15:37 28:-10 29:18 43:-9 107:13
doing what	28:-9 29:23
what for	5:33 8:30 12:10 20:-8
^ promis	11:27 47:78
refret by	30:8
kind $	8:31
glu==ed	13:-10 29:-9 30:43 44:-8 45:-10 77:-8 89:-13 91:-9 95:-13 96:255 97:-17 107:-9 120:16 125:39
#o kind	98:12 99:-9
glu	13:-10 29:-9 30:43 44:-8 45:-10 77:-8 89:-13 91:-9 95:-13 96:255 97:-17 107:-9 120:16 125:39
another==	0:-8 28:-10 29:-16 30:73 39:54 48:28 71:-9 78:21 79:14 88:8 93:35 115:9 120:9 125:-10
when can	29:8 30:9
we promis	11:13 30:33
another	0:-8 28:-10 29:-16 30:73 39:54 48:28 71:-9 78:21 79:14 88:8 93:35 115:9 120:9 125:-10
promis another	30:10
shop promis	30:12
day could	30:23
could you	0:17 1:-9 2:-10 4:8 7:12 13:33 37:27 125:35
one more	30:11
glue==	20:8 47:-9 57:10 75:-11 82:-23 87:99 89:-11 90:-16 91:61 95:-16 96:114 97:-14 98:11 104:-8 125:56
day can	30:16
promis a	2:15
job with	9:16 12:-8 30:21
glue	20:8 47:-9 57:10 75:-11 82:-23 87:99 89:-11 90:-16 91:61 95:-16 96:114 97:-14 98:11 104:-8 125:56
with glue	96:45 97:-9
glue $	96:30 97:-8
when could	29:-15 30:77
a new	0:-8 2:-8 5:-8 29:-11 30:25 35:15 41:-8 49:13 58:20 59:11 78:20 85:37 102:19 120:11 125:64
new job	5:-12 13:-12 30:16 35:22 46:100 87:-9 125:11
day would	30:12
would we	5:-10 19:24 21:29 29:14
finish==	30:8
i finish	108:8
finish a	30:8
could the	1:8 2:28 7:8
shop have	14:12 25:27
more job	30:19
do a	30:14
in a	22:16 30:-9 35:23 46:11 50:-12 113:40 116:17 117:9 120:14
refret of	8:-14 9:16
how soon	2:-9 4:-12 9:17 10:-11 30:49
would i	5:9 16:-8 17:13 35:13
new whol	30:20
with #n	0:-10 1:10 3:34 7:9 13:14 27:22 50:13 67:-15 68:20 82:28 93:9 104:17 125:-8
@person take	30:44 64:50 65:-10 109:-8 110:23 125:-9
)~",
R"~(take a	104:12
job done	30:10
could @person	15:55 29:-8 30:38 64:-12 125:-19
&#n@person	4:-8 13:-10 15:45 17:-19 26:-22 27:-8 28:45 29:-19 30:29 33:-33 37:-8 38:11 43:49 48:-10 55:9 59:60 60:-9 61:-35 62:-27 63:10 64:127 65:24 75:-10 89:-10 97:-8 104:-10 106:14 107:66 108:-10 110:53 111:27 113:-8 114:-11 125:12
would @person	28:12 29:-8
another job	29:-9 30:28
fret with	1:16
refret be	30:25
more refret	8:-8 9:17 30:8
a bound	27:25 30:15
bound board	27:26 30:9
new board	10:-16 27:57 30:65 35:-11 46:9 58:-13
would another	30:10
can you	1:-9 7:11 10:16 32:12 35:22 37:26 124:11
tomorrow for	47:9
i promis	8:10 11:-15 13:11 30:77 47:12
@day for	47:11
another refret	28:-8 30:36
refret for	30:9
of #c	41:-8 42:9 50:-15 51:16 60:10 66:41 70:15 71:-9 116:-12 120:-19 121:29
glu in	96:16
fret in	0:-26 13:39 17:-12 33:18 41:74 42:-16 72:-15 75:-10 77:26 78:-9 79:18 91:-12 93:-8 95:-10 125:25
promis the	47:22
end for	1:-11 39:11 107:10
the end	11:-8 30:36 39:8 41:20 42:19 43:26 78:-14 80:14 82:-12 96:15 104:9 108:8 114:17
ready for	106:15
done this	44:12 115:8
you do	35:32
get a	0:21 12:10 22:-10 53:10
glu $	96:68
board with	103:21
glue in	82:-10 87:16 91:40 96:12
&#c@person	59:159 60:42 61:-12 62:-16 63:-11
have another	30:18 115:11
@person finish	43:19
job be	29:14
is today	30:12
possibl==e	5:13 30:61
possibl	5:13 30:61
possibl $	5:13 30:42
feasibl==e	30:14
feasibl	30:14
today feasibl	30:12
realistic==	30:47
realistic	30:47
job for	103:15 104:29
room for	98:13
crown==s	19:38 30:8 40:8 73:31 117:15
#n crown	30:9
crown $	19:26 30:8 40:8 77:18 88:12 90:19
end on	39:19 43:10
happen==s	16:8 25:-13 33:-9 83:14 103:24 115:16
happen	0:-9 4:-10 5:-9 8:-12 11:-11 13:-15 17:-15 23:-8 25:-13 29:31 33:138 83:14 103:24 115:16 124:9
what happen	0:-8 4:-9 5:-9 8:-10 13:-8 17:-11 33:105 83:14
december for	30:18 47:12
refret befor	30:9
must have	91:10
to give	30:18
mov==ed	2:28 4:-17 17:-8 41:-9 45:38 52:-9 61:10 70:-20 75:138 78:-10 82:-18 89:-18 97:-14 115:-8 118:40 125:26
mov	2:28 4:-17 17:-8 41:-9 45:38 52:-9 61:17 64:-8 70:-20 75:138 78:-10 82:-18 89:-18 97:-14 115:-8 118:40 125:26
be mov	2:17 16:9
will have	99:-20 115:13 125:60
to move	30:9
to have	11:11 30:39 45:9 55:15
would give	0:23 1:-13 15:12 30:10
to wait	30:16 114:39 125:-13
would have	30:15
give by	30:13
befor next	118:16
it need	42:18
soonest==	29:-8 30:42
soonest	29:-8 30:42
the soonest	29:-8 30:31
day we	99:-20 125:48
earliest==	12:9 27:-9 30:134 58:-12
earliest	12:9 27:-9 30:134 58:-12
the earliest	30:66
is first	113:8
earliest day	30:54
earliest date	30:8
free day	110:12
^ earliest	30:26
earliest new	30:19
order @wire	9:38 32:12 51:28 116:-8 117:11 118:16 119:-9
on order	8:-26 29:-8 31:91 116:25 117:26
open order	1:28 10:-11 31:48 119:15
is any	22:9 23:15
@wire on	1:-16 8:-18 9:-14 18:43 31:47 39:-11 51:13 66:42 67:22 68:-14 69:26 88:-8 116:13 118:8 125:-8
some @wire	8:8
any @wire	1:-10 8:57 9:-28 18:-14 19:-12 23:56 26:-9 31:71 32:-9 125:9
arriv==e	9:-15 19:34 28:-9 31:84 32:12 50:-20 66:-8 117:-25 118:18 120:11
arriv	9:-17 19:23 28:-10 31:92 32:9 50:36 66:-26 67:-17 88:-10 99:14 117:138 119:-12 120:8 125:-10
@wire arriv	9:-10 19:30 31:32 50:28 66:-12 67:-14 116:-10 117:15
arriv $	9:-16 19:30 28:-9 31:86 32:10 50:11 66:-13 117:55 119:-8
@wire come	1:-8 8:-9 9:-13 19:48 20:20 31:42 32:14 33:-29 66:8 68:10 70:15 71:-9 88:27 118:8 125:-10
@wire due	11:-12 31:17 118:12
list order	31:10
order for	13:19 31:17 116:14 119:22
order of	15:16 31:35 48:11 118:-10 120:11 121:14
order come	10:25 31:10 118:11
order arriv	31:34 88:-9
which order	12:-14 27:30 31:27
order are	12:-13 31:30
all order	31:10
to come	3:11 5:-8 9:-13 27:-12 28:23 31:37 32:21 72:20 75:-20 95:11 113:13 125:-9
arriv==ed	19:-11 31:8 50:62 66:-18 67:-15 88:-10 99:14 116:-13 117:165 118:-15
arriv yet	31:14
have our	115:15
our order	117:-9 118:19 119:25
come yet	31:26
delivery==	10:-11 14:-11 19:20 28:-18 29:-21 31:48 32:34 35:-8 36:-8 37:-8 39:11 43:-10 50:30 66:-32 71:8 73:171 113:-10 116:18 117:71 118:21 121:-12 125:-9
when come	31:12
come the	31:12
next delivery	28:-16 29:-16 31:50
delivery arriv	28:-8 31:20
order overdu	31:15
are an	31:21
an order	31:21 35:36 116:31 117:-16 119:-10 120:13 121:14
order late	31:15
are order	50:-12 116:21
are clos	28:-10 31:8 52:10 53:70 112:-33
supplier==s	8:-10 9:-10 10:33 12:-9 14:-11 25:-13 32:160 35:-14 120:56 121:-22 122:58 125:-25
supplier==	0:-8 5:-11 8:-25 9:22 10:18 11:-11 12:-10 14:-9 19:31 20:-9 22:-9 23:-11 25:-8 29:-12 31:-8 32:47 35:-8 39:-11 49:-12 50:9 55:-13 57:-14 58:-13 85:-8 98:-16 100:-11 117:-14 120:169 121:82 122:149 125:-8
supplier	0:-10 5:-16 6:-9 8:-36 9:13 10:50 11:-18 12:-19 14:-20 17:-10 19:27 20:-11 21:-8 22:-13 23:-14 25:-21 26:-8 27:-10 28:-9 29:-18 31:-14 32:207 33:-10 35:-23 39:-11 49:-13 50:8 55:-16 57:-18 58:-16 85:-11 86:-10 98:-20 100:-17 117:-16 120:225 121:60 122:207 125:-33
^ supplier	8:-18 32:62 50:-8 120:-33 121:119 122:-29
supplier supplier	32:17 120:-10 121:9 122:-12
supplier ~	55:-9 57:-9 58:-9 98:-9 121:109 122:30
~ supplier	32:38 120:-33 121:21 122:-26
who are	12:11 28:-19 29:-8 31:27 32:16
our supplier	32:21 120:9 122:16
supplier $	10:19 14:-8 32:47 120:20 122:79 125:-22
the supplier	9:30 10:18 32:10 118:10 120:45 122:102 125:-26
deliver==s	32:19 33:-10 118:33 120:-12 121:21
deliver	9:-18 11:18 19:46 27:-11 29:-10 30:-12 31:13 32:34 33:-19 50:14 67:-8 116:-12 117:54 118:60 119:9 121:39
who deliver	32:24 33:-9
deliver the	32:14 119:8
supply==es	9:-14 19:-13 32:59
who supply	32:8
sell==s	32:45 33:-13 121:58
sell	32:67 33:-14 121:56
who sell	32:51 33:-13
ship==s	32:18 33:-8 117:-10 118:38 120:-8 121:11
ship	32:25 33:-8 117:-10 118:38 120:-8 121:11
who ship	32:18
ship the	32:8 118:8
who do	10:11 15:19 32:56 33:-11 125:-11
get @wire	32:45
buy @wire	32:13
who did	19:29 32:9 33:-13
get the	6:8 14:-17 19:27 32:13 33:-10 73:11 105:21 125:69
whom==	9:-23 10:9 13:-20 15:92 19:24 23:52 25:-10 30:-8 31:-16 32:47 33:19
whom	9:-23 10:9 13:-20 15:92 19:24 23:52 25:-10 30:-8 31:-16 32:47 33:19
from whom	10:15 19:15 32:11
whom do	32:18
@wire take	9:-8 27:-10 32:27
deliver==ed	9:-15 19:49 31:14 33:-8 50:16 116:-11 117:58 119:-8
deliver $	9:-10 19:37 27:-10 31:-18 32:18 125:29
to arriv	32:13 120:11
take until	32:17
until @wire	32:10
arrive==s	117:-11 118:26
arrive	117:-11 118:26
@wire arrive	118:8
doe ~	27:-26 32:36
~ take	27:-22 32:27 121:31
deliver==	11:20 27:-9 30:-11 32:12 118:25 119:17 120:10 121:23
~ need	27:-19 32:30 121:24
to deliver	11:21 27:-9 30:-10 32:14 121:11
do ~	27:-15 32:23
wire from	0:8 10:-14 20:14 32:40 73:11 120:-8 121:13 122:12
order from	10:-15 12:52 31:-17 100:-9 116:-11 117:-8 119:33 120:63 121:-13 122:66 125:-15
list our	10:-10 32:75
lead==	14:23 27:-12 28:-13 29:-14 32:50 55:-9 58:51 61:52 62:-8 120:-13 121:72
lead	14:22 27:-13 28:-14 29:-15 32:50 55:-10 58:59 61:92 62:-15 63:-11 120:-13 121:70 125:-8
the lead	14:26 28:-10 29:-11 32:47 61:10 121:14
lead time	27:-11 29:-11 32:57 120:12 121:23
time from	28:17 29:-8 32:18
from ~	10:-10 49:-17 50:26 56:-15 85:-12 105:-12 116:65 117:40 119:-14 120:44 121:28 122:55 125:-12
time of	32:56 99:10 121:12
what supplier	32:39
supplier are	32:29
which supplier	5:-8 10:33 19:22 25:-10 32:62
supplier have	32:18
supplier do	32:48
term==s	32:109 63:9 120:8
term	32:109 63:9 120:8
the term	32:62
term of	32:52
history==	0:-23 19:14 33:205 36:-10 91:-8
happen==ed	0:-8 4:-9 5:-9 8:-10 13:-15 33:157 124:9
history	0:-23 19:14 33:205 36:-10 91:-8
^ history	33:110
@job piec	36:33 37:-10 70:-11
story==	20:-14 33:106
story	20:-14 33:106
the story	20:-13 33:77
story of	20:-14 33:106
#n sinc	45:11
history of	33:65
#n the	0:-10 4:-12 13:-24 16:-12 17:41 30:-12 43:-9 47:25 48:-8 50:12 74:89 77:-8 79:10 91:22 93:87 95:16 113:-10 114:-8 116:11 117:-9 125:-14
#n tomorrow	29:16 33:10 111:21 115:31 125:-9
^ story	33:29
#n next	16:-12 26:-10 33:8 44:16 106:16 111:15 113:18 115:9
the history	33:26
@job the	2:-15 5:18 17:20 45:-14 47:-8 74:19 89:40 91:13 95:8
of piece	81:16
of number	16:15 70:24 82:-9
@wire #r	118:8
sinc the	20:-16 21:36 33:16 34:10 45:11
)~",
R"~(&#o@wire	21:-14 33:43 118:26
@person sinc	33:8
of next	30:31 53:10 106:14 112:8
of today	8:10 98:27
history sinc	33:9
through $	13:-8 27:42 33:23 40:22 52:39 77:29 81:13 89:-8 112:34 114:20
@job been	15:16
been through	44:32 66:10
gone==	8:36 9:-18 19:-15 20:39 29:-8 32:-12 36:-11 41:-11 42:9 57:11 62:56 63:-24 77:68 81:9 86:16 100:36 106:11 110:24 111:-18 122:36
gone	8:36 9:-18 19:-15 20:39 29:-8 32:-12 36:-11 41:-11 42:9 57:11 62:56 63:-24 77:68 81:9 86:16 100:36 106:11 110:24 111:-18 122:36
happen on	16:9 29:41 33:-9
happen to	4:-8 13:-8 33:45 83:14
#n @day	45:-16 71:10 95:14 108:11 115:22
@job sinc	45:18
&@day@job	11:-29 29:-13 30:53 33:10 47:97 115:29
happen with	33:14
@job #o	0:37 4:-9 13:-10 36:18 37:-11 41:32 42:14 45:14 47:-11 75:12 76:-10 77:36 78:17 90:33 95:20 96:37 97:14 114:-8
@job tomorrow	33:10 115:16
was done	33:36
#n today	105:32
done with	11:17 17:17 25:-10 43:47 103:33 108:-19 114:26 125:-9
done to	10:-9 13:31 33:17
to fret	89:15 96:16
load has	33:32
load==s	33:27 44:-9 55:33 73:11 85:10
#n get	36:20 45:-10 115:23
has slot	74:30
get in	10:9
got in	0:21 8:50
with piece	75:-10 82:13
with number	36:-8 40:14 59:11 64:25 70:33 73:9 97:-9 101:10
to number	10:-9 13:32
to #n	0:-17 1:-21 2:33 3:-12 4:107 5:-8 6:-9 11:16 13:-13 15:-12 16:83 17:15 20:-8 23:-8 27:-12 28:-20 29:-8 33:-12 36:-21 38:-23 40:-14 41:-21 42:-9 43:-10 44:18 47:-29 52:71 53:27 54:71 55:24 59:-9 61:-9 64:-21 65:-24 66:36 67:-8 69:10 70:13 71:46 73:-11 75:60 77:-8 78:-20 80:-18 81:-16 85:-16 89:36 91:-17 92:-32 93:19 95:-13 97:-11 98:-11 99:-16 102:-11 104:26 105:63 107:-12 109:35 110:33 111:31 113:-9 114:-12 115:-20 117:-14 120:-11 121:-9 125:-12
to #d	1:-9 41:49 42:27 46:19 66:8 68:14 69:51 80:-11 85:-13 87:19 88:-19 92:-9
with #d	44:17 68:10
had==	1:-9 4:-11 8:-13 14:-10 16:-11 19:64 23:8 25:-18 35:13 36:-9 42:-12 43:-10 44:9 45:53 63:12 69:22 72:78 75:-12 77:12 78:18 95:8 108:32 112:10 115:-18 119:18 125:-12
had	1:-9 4:-11 8:-13 14:-10 16:-11 19:64 23:8 25:-18 35:13 36:-9 42:-12 43:-10 44:9 45:53 63:12 69:22 72:78 75:-12 77:12 78:18 95:8 108:32 112:10 115:-18 119:18 125:-12
who had	33:11 63:14
had #d	33:11
who took	15:47
took #d	33:13
who used	1:-9 33:52
used #d	33:8
who cut	33:29
seat==ed	24:24 43:57 45:-10 77:-16 95:133 97:-8 125:-10
who seat	33:10
seat slot	33:8
measur==ed	0:-25 1:-9 2:9 3:-32 16:-9 36:-20 41:157 42:-17 46:-8 49:-9 50:-9 68:15 70:-12 72:-14 75:30 76:38 78:8 79:34 80:103 81:-16 82:-26 87:8 89:-17 91:-8 92:48 97:-10 98:-8 117:18
measur the	41:-8 66:10 74:8 80:24 82:-11 88:12 92:18 125:10
seat the	27:10 43:13
who press	15:-29 33:79 44:-10 125:-8
made==	0:-21 2:12 3:-11 4:-11 13:9 16:-10 17:-11 33:15 36:37 41:-23 42:27 47:-11 48:28 65:12 70:13 71:29 72:-25 75:-11 78:126 81:-12 82:39 85:18 91:-10 94:11 95:-14 115:-9 124:34 125:-14
made	0:-21 2:12 3:-11 4:-11 13:9 16:-10 17:-11 33:15 36:37 41:-23 42:27 47:-11 48:28 65:12 70:13 71:29 72:-25 75:-11 78:126 81:-12 82:39 85:18 91:-10 94:11 95:-14 115:-9 124:34 125:-14
who made	33:10
made the	0:-8 36:28 45:15 70:-21 78:-9 81:-8 82:35
made fret	36:40 42:8 70:-53 71:35 78:-14 82:25
@job next	16:17 17:-11 113:25
#n #o	0:-8 3:12 13:-18 15:-8 29:52 36:32 93:-8 114:12
@job today	33:10
work==ed	9:8 28:-14 29:30 33:28
do #r	16:13
@person did	33:-13 43:46
did $	19:-9 33:15 124:21
&#n@day@person	28:-8 29:-15 52:-18 105:12 109:86 110:-10 111:48 125:-8
&@job@person	13:-10 15:-10 29:-11 33:34 61:-22 62:-13 63:-13 64:120 65:52 107:21 125:-9
do tomorrow	29:35
i done	29:-8 33:58
do last	33:14
thing==	0:8 19:-11 25:10 29:-8 33:25 35:31 55:9 57:14 58:16 72:-11 88:8 89:20 98:28 100:-12 124:33
was the	5:-8 19:25 25:30 32:-16 33:40 124:-8 125:-10
thing	11:12 14:-8 19:-13 25:9 29:-16 30:-12 33:30 35:63 55:8 57:14 58:34 72:-11 84:30 88:8 89:20 95:-8 98:27 100:-12 124:33 125:-12
last thing	19:-10 33:27 124:35
thing $	33:13
entry==	33:10 60:11 124:45
entry	33:10 60:11 124:45
last entry	33:11 124:12
entry $	33:10 60:11 124:41
my history	33:26
history $	0:-18 33:75
all happen	33:25
happen sinc	33:22
did what	75:10 89:-8
what today	29:42 33:-15
not==	0:-25 1:-39 2:-12 3:12 4:-10 5:-14 6:-14 7:-10 8:-19 9:-26 10:-23 11:-25 13:-22 14:-19 15:-21 16:-25 17:-23 18:-11 19:-20 20:-11 21:-13 22:18 23:-10 24:13 25:-17 26:-31 27:-17 28:-39 29:-35 30:-21 32:-32 33:-49 34:110 35:-19 37:-27 38:64 39:-23 41:-18 43:-47 44:-20 47:18 48:39 49:-12 51:30 52:-27 53:32 54:-17 55:-10 57:28 59:-32 60:56 61:-17 62:44 63:-39 64:-64 65:19 66:-21 68:-12 69:20 70:-12 72:-18 73:-37 74:-9 75:-10 77:25 78:-11 79:13 80:-14 82:-22 83:-13 84:8 85:-9 86:29 87:33 88:-9 89:33 91:57 92:-13 94:11 95:-18 96:-16 97:-19 98:-11 99:-15 100:18 101:70 102:17 103:-12 104:12 105:-28 106:34 107:-32 108:33 109:19 110:73 112:76 113:14 114:47 115:8 116:-23 119:104 120:-12 122:63 123:101 125:184
understood==	33:-18 34:106 42:15 123:87 125:-29
not	0:-25 1:-39 2:-12 3:12 4:-10 5:-14 6:-14 7:-10 8:-19 9:-26 10:-23 11:-25 13:-22 14:-19 15:-21 16:-25 17:-23 18:-11 19:-20 20:-11 21:-13 22:18 23:-10 24:13 25:-17 26:-31 27:-17 28:-39 29:-35 30:-21 32:-32 33:-49 34:110 35:-19 37:-27 38:64 39:-23 41:-18 43:-47 44:-20 47:18 48:39 49:-12 51:30 52:-27 53:32 54:-17 55:-10 57:28 59:-32 60:56 61:-17 62:44 63:-39 64:-64 65:19 66:-21 68:-12 69:20 70:-12 72:-18 73:-37 74:-9 75:-10 77:25 78:-11 79:13 80:-14 82:-22 83:-13 84:8 85:-9 86:29 87:33 88:-9 89:33 91:57 92:-13 94:11 95:-18 96:-16 97:-19 98:-11 99:-15 100:18 101:70 102:17 103:-12 104:12 105:-28 106:34 107:-32 108:33 109:19 110:73 112:76 113:14 114:47 115:8 116:-23 119:104 120:-12 122:63 123:101 125:184
^ not	13:14 34:40 53:61 110:16 112:-22 113:12 123:-11 125:-33
understood	33:-18 34:106 42:15 123:87 125:-29
not understood	33:-13 34:85 123:69 125:-28
understood sinc	33:-15 34:46
sentence==s	34:48 123:56 125:-16
understand==	0:-9 18:19 19:-10 33:-26 34:87 35:33 123:38 125:-15
sentence	34:48 123:56 125:-16
which sentence	34:27 123:-8
was not	34:9 123:33 125:-9
understand	0:-9 18:19 19:-10 33:-26 34:87 35:33 123:38 125:-15
not understand	33:-11 34:33 123:38 125:-15
understand $	19:-10 33:-13 34:64 35:33 123:38 125:-14
understand sinc	33:-13 34:23
were not	34:44
sentence were	34:14
understood $	34:60 123:90 125:-25
sentence that	34:11 123:39
that were	34:21 44:10 50:19
the sentence	34:8 123:29
me sentence	34:16
sentence not	34:10 123:24
show sentence	34:17 123:-10
ask==ed	33:-10 34:18 50:-25 88:12 116:35 125:41
did peopl	34:11
ask	13:8 15:19 17:-8 24:-8 33:-19 34:17 35:63 40:15 48:-10 50:-25 88:9 116:35 121:12 125:32
peopl ask	34:11
ask that	33:-8 34:18 35:9
that nobody	22:15 34:14 123:21
nobody understood	123:22
that you	34:12 123:20
you did	34:-14 123:46 125:-8
did not	2:-8 24:8 33:-13 34:-8 42:-11 45:17 67:10 89:-12 90:-13 123:45 124:14 125:74
was say	34:17
say that	34:17
nobody understand	19:-8 33:-13 34:55
have you	10:11 34:28
you not	34:28
help==	2:15 6:-27 16:-9 29:-8 35:220
topic==	35:16
help	2:21 6:-27 16:-9 29:-8 35:220
^ help	6:-13 29:-8 35:173
topic	35:16
topic ~	35:16
~ topic	35:11
help $	6:-14 35:63
i say	35:29
say $	1:-11 5:-9 8:18 35:45 69:25 104:-12 116:9 125:39
ask==	13:14 15:20 30:-9 33:-9 35:63 40:15 121:13 125:-9
i ask	15:21 35:29
ask $	35:31
we ask	35:27
help on	35:29
help with	6:-12 35:58
with ~	35:13 56:24 57:-10 116:11
help ~	35:10
setting==s	12:-11 14:-15 25:-8 35:155
setting	12:-11 14:-15 25:-8 35:155
the setting	35:84
setting $	35:104
^ use	1:-18 3:-18 36:148 37:-17 41:-11 70:-9 73:17 81:-8 82:78 125:-9
use piec	0:-11 1:-20 3:50 23:31 33:33 36:-55 38:-11 125:29
@wire at	8:24 31:-8 36:13 50:18 51:29 67:14 68:11 69:-10 76:23 116:17
^ take	1:-11 11:-15 24:-9 27:-8 36:13 38:23 40:-13 46:16 47:15 48:15 53:-19 57:39 59:-27 60:55 62:31 64:-11 65:83 69:14 71:-12 73:15 81:10 82:25 86:11 100:9 101:11 106:22 110:-16 112:38 124:59 125:-24
take the	36:77 38:27 40:-8 47:25 48:-9 57:39 64:36 70:8 71:-10 73:20 82:22 99:-8 100:16 103:13 110:-8 121:12 122:-9 125:-32
^ used	0:-10 36:73 37:-14 82:50 93:-8 125:-9
used #n	82:15
^ took	0:-8 17:-8 36:22 37:-16 43:13 48:-8 71:25 82:54 87:13 94:23 95:12 97:44
took piece	36:19 37:-9
into==	0:-8 1:-10 3:-17 4:-10 20:19 21:-21 22:-9 36:68 37:-21 39:49 40:9 41:-13 45:-10 50:36 66:-15 70:41 71:-9 72:45 73:-11 75:38 79:52 80:-9 81:-18 82:50 83:8 89:-18 95:-10 97:-20 102:21 125:-13
)~",
R"~(^ put	0:-8 1:-8 3:-23 8:-9 9:-8 10:10 11:-21 14:-10 16:-8 23:-13 25:-8 29:-9 33:-13 36:24 37:46 39:21 41:14 43:-14 44:-9 45:-13 49:25 55:52 58:25 64:46 66:-11 69:10 70:-13 72:23 75:-13 79:12 82:13 83:75 84:-32 89:-10 90:-12 91:-8 95:10 97:-11 99:-10 102:25 103:-8 105:30 107:-18 108:38 110:-9 111:14 113:39 115:12 120:34 121:-10 125:-16
put number	36:9 37:13 113:30
into	0:-8 1:-10 3:-17 4:-10 20:19 21:-21 22:-9 36:68 37:-21 39:49 40:9 41:-13 45:-10 50:36 66:-15 70:41 71:-9 72:45 73:-11 75:38 79:52 80:-9 81:-18 82:50 83:8 89:-18 95:-10 97:-20 102:21 125:-13
#n into	36:59 37:-12 39:11 70:11 71:-9 72:10 75:16 82:8 96:-10 97:-8
into slot	0:10 3:-10 36:61 37:-11 70:16 71:-8 75:-12 82:38 96:-9
#d into	36:21 70:9
^ piece	22:10 23:26 36:16 38:35 40:10 75:-11 81:19 82:25 125:-11
#n goe	22:-8 36:32 40:31 64:36 89:-9 93:33 113:9
goe in	0:-9 1:-13 4:51 22:-9 36:35 39:21 40:24 68:10 75:-15
went==	0:-18 3:-11 4:-8 8:-9 16:-10 20:32 21:-11 29:-9 33:46 36:37 40:31 41:-9 42:15 44:25 45:8 66:10 75:22 80:8 81:-16 82:33 89:-11 99:11 117:-14 119:27
went	0:-18 3:-11 4:-8 8:-9 16:-10 20:32 21:-11 29:-9 33:46 36:37 40:31 41:-9 42:15 44:25 45:8 66:10 75:22 80:8 81:-16 82:33 89:-11 99:11 117:-14 119:27
went into	70:10 75:9 82:20 89:-8
@wire went	70:17
goe into	40:15
#d goe	39:9
#n went	36:29 40:21 75:18 89:-9
went in	36:31 40:35 82:15
^ number	17:-11 36:43 37:-9 40:20 75:-9 81:8 92:13 93:-9 95:23 97:20 101:-10 102:24
^ hold	0:-13 13:-8 15:-13 17:-10 23:26 36:-33 37:167 43:-10 83:90 84:-28 89:48 90:-17 114:35 125:-13
hold $	8:-10 14:-8 18:11 23:112 35:-10 37:77 84:-13 125:-8
#d at	36:-8 41:16 46:10 76:29
yesterday piec	36:-9
hold #n	37:32 38:20 121:13 125:-14
^ keep	0:-8 1:-10 3:-15 5:-13 23:-8 36:-25 37:82 38:-22 51:-17 54:9 76:11 83:47 84:-9 88:9 105:20 106:-31 125:116
keep #d	3:-12 37:18
reserv==e	0:-13 5:-8 13:-8 16:-11 18:-12 22:17 23:14 29:10 33:-10 36:-16 37:100 43:-10 83:64 84:11 105:30
^ reserv	0:-11 23:15 36:-13 37:77 83:59 84:-18 105:18
reserv #n	37:20
hold number	37:15
keep number	37:23
reserv piece	23:26 37:10
hold piece	37:11
reserv the	37:21 84:25 105:25
keep #n	40:20 91:11
&#d#r	37:10
let==	1:-18 4:-12 10:21 11:-14 13:-14 14:24 15:-10 16:-8 17:-9 20:-9 23:-10 28:17 29:-15 32:25 33:15 35:-11 36:-12 38:85 40:-10 43:-10 45:9 48:-8 49:12 52:17 53:-18 55:31 58:8 61:33 62:12 64:20 65:80 80:-8 83:-16 84:75 102:-11 104:10 107:-14 108:-8 109:-8 110:-24 111:-22 112:-19 114:23 115:-8 124:-8 125:89
let	1:-18 2:12 4:-14 5:-8 10:21 11:-14 13:-14 14:24 15:-10 16:-15 17:-9 20:-9 23:-10 27:-9 28:17 29:-15 32:25 33:15 35:-11 36:-12 38:85 40:-10 43:-10 45:9 48:-8 49:12 52:17 53:-18 55:31 58:8 61:33 62:12 64:20 65:80 80:-8 83:-16 84:75 102:-11 104:10 107:-14 108:-8 109:-8 110:-24 111:-22 112:-19 114:23 115:-8 124:-8 125:89
^ let	1:-12 4:-11 10:23 11:-10 12:9 13:-13 14:27 15:-8 16:-8 28:9 33:23 36:-10 38:73 40:-8 43:-8 53:-12 55:26 61:30 62:-9 64:23 65:69 83:-15 84:91 104:12 107:-11 111:-8 112:-16 114:24 125:16
let go	38:84 45:17 84:8 125:17
go #d	38:13
ago at	84:27 115:-11
go of	38:33 84:11 125:24
let #d	38:13
let #n	2:16 38:8
let the	51:11 64:18
^ free	23:-58 29:-30 38:48 60:14 65:92 83:-22 84:93 106:70 125:-9
free #d	38:28
unhold==	38:112
unhold	38:112
^ unhold	38:112
unhold #d	38:35
releas==e	23:-20 26:-11 38:96 48:-8 64:-25 65:49 73:-10 83:-32 84:109 106:32 125:-12
releas	23:-20 26:-11 38:96 48:-8 64:-25 65:49 73:-10 83:-32 84:109 106:32 125:-12
^ releas	23:-19 38:83 64:-24 65:54 83:-31 84:71 125:-9
do not	1:-11 4:9 9:-8 10:-10 16:-9 22:17 26:-9 32:-17 37:-14 38:22 51:25 53:27 57:23 64:-32 65:-13 69:-19 81:-9 86:13 100:22 101:9 103:-10 105:-15 110:33 112:9 113:-22 114:28 115:13 121:10 122:46 125:110
not hold	37:-11 38:31 84:24 125:-12
any more	9:-8 11:-9 22:21 23:-9 28:-10 31:-9 32:-8 38:50 42:9 47:26 53:-18 57:13 59:-17 60:33 62:37 63:-8 65:15 84:32 86:16 87:30 100:34 106:20 109:17 110:-24 111:11 112:19 113:9 122:18 125:-67
more $	1:-12 11:-9 22:13 23:-9 26:-8 28:-11 29:-9 31:-11 32:-11 38:51 47:26 59:-16 60:27 62:19 63:25 65:17 84:23 86:17 87:32 93:-8 95:-9 99:-13 100:40 101:-9 102:49 106:17 109:24 110:-13 111:-15 114:19 121:21 122:11 125:-21
@wire any	18:11
^ no	0:16 1:-12 2:-8 4:-15 6:-8 8:45 9:-9 11:-12 13:-14 15:-8 16:66 17:-10 22:-13 23:-18 25:-13 26:-12 28:-26 29:-17 30:-11 33:-12 36:-10 37:46 38:25 40:-13 43:-11 45:-10 47:26 50:-13 52:21 53:42 54:-14 57:35 62:40 63:-25 65:-11 70:-9 75:-12 77:-9 83:-12 84:18 87:18 89:30 90:15 91:37 93:33 97:-8 99:-14 101:85 102:-10 105:-17 106:-16 107:-9 108:-11 110:28 111:-17 112:-10 113:53 114:-21 118:-10 122:22 124:22 125:59
no one	38:32
one want	38:21
want the	7:12 26:-8 103:28 106:8 114:14 125:13
^ nobody	1:-9 13:-8 15:-10 36:-9 37:18 38:38 53:42 55:9 57:9 65:65 101:14 105:-8 125:32
nobody want	36:9 38:38 81:11
want #n	0:12 30:20 38:19
is not	8:-9 23:-19 25:-11 31:-18 38:42 47:17 48:-12 53:-33 59:-28 60:61 62:-14 63:-11 65:14 69:16 77:-9 79:-10 80:-10 87:44 89:-11 93:-8 94:36 101:-32 102:29 106:20 109:-14 110:17 111:14 112:53 113:16 114:-12 119:56 124:-10 125:9
not need	9:-8 38:55 57:26 84:27 104:18 106:72 119:13 122:8 125:-49
need any	38:19
not held	23:-15 38:34 125:-8
longer==	0:-8 1:-13 11:-8 20:36 21:-17 23:-13 25:-9 32:-12 36:-18 37:-12 38:50 40:-15 53:-14 54:10 59:-8 60:32 63:38 64:-11 65:27 69:49 81:12 84:28 86:25 87:12 89:-9 99:-17 100:64 101:-12 106:29 112:11 113:-15 114:35 115:13 120:-12 121:-9 122:43 125:-26
longer	0:-8 1:-13 11:-8 20:36 21:-17 23:-13 25:-9 32:-12 36:-18 37:-12 38:50 40:-15 53:-14 54:10 59:-8 60:32 63:38 64:-11 65:27 69:49 81:12 84:28 86:25 87:12 89:-9 99:-17 100:64 101:-12 106:29 112:11 113:-15 114:35 115:13 120:-12 121:-9 122:43 125:-26
no longer	23:-9 32:-11 38:22 60:18 63:40 65:-10 84:30 86:25 87:16 99:-9 100:26 106:37 113:-11 114:26 120:-11 121:-8 122:44 125:-24
want any	47:11
longer need	38:22 57:10 100:-19 106:43
add==	1:-16 9:-14 14:-13 19:-9 20:48 21:-10 32:-9 38:-12 39:119 49:40 50:-16 55:-10 56:72 57:-42 58:52 66:-13 68:-9 79:11 80:-9 81:-8 88:-10 98:72 99:-10 120:88 121:-60 122:-12 125:41
tang==	0:-9 1:-9 3:-13 4:-11 16:-8 18:49 38:-8 40:42 42:12 49:36 51:-8 69:-13 77:10 88:102 91:105 92:-10 125:-9
add	1:-16 9:-15 14:-13 19:-9 20:43 21:-10 32:-9 38:-13 39:118 49:40 50:-17 51:-12 55:-11 56:72 57:-43 58:52 66:19 68:-10 79:10 80:-9 81:-9 88:-10 98:71 99:-10 120:108 121:-60 122:-14 125:40
^ add	1:-8 14:-12 20:-9 39:127 49:41 50:-15 55:-9 56:72 57:-40 58:53 66:-12 68:-8 69:8 80:-9 88:-9 98:65 120:66 121:-47 122:-11 125:-14
#d count	41:-14 82:35 85:-18
count #n	41:-24 48:-19 50:8 72:51 78:-16 79:11 81:17 82:43 85:-24 92:-16 98:15 107:-8 116:35 117:9 120:-14
pulled_fret	39:9
in length	3:-9 41:11 80:9 82:17
@wire count	50:22 51:18 66:-35 79:16 81:12 116:16
tang	0:-9 1:-9 3:-13 4:-19 13:-8 16:-9 18:48 27:9 29:-8 38:-8 40:42 42:12 49:36 51:-8 69:-13 74:-8 77:10 88:102 91:105 92:-10 107:23 125:-9
tang #d	49:16 88:23
count #c	3:-15 41:-15 48:-12 50:17 66:-14 72:49 78:-16 79:9 81:40 85:-15 108:-15 116:11
raw end	1:9 3:10 39:8 80:-8
&#c#d#n@wire	50:21 68:13 82:8 116:-16
add wire	49:15
in count	81:21 82:-13
radius #d	3:-9 41:21 46:51 80:-37
mm count	41:-10 81:22 82:13 85:-12
#c length	41:-8 81:25 85:-9
add #n	39:34 98:39
add #d	39:38
tin in	0:21 21:32 22:-27
in ~	39:19 55:27
lot==	0:13 1:9 4:-8 6:-11 7:11 8:-19 13:-16 16:-10 17:-9 19:58 20:-12 24:19 29:-8 37:-22 39:11 43:-16 44:25 47:-9 48:-13 64:-8 65:-10 67:12 69:-9 73:227 76:-13 83:39 84:90 87:-8 89:-9 93:-10 107:-8 108:-10 113:-16 114:-20 125:18
from lot	19:-14 73:47 125:43
lot #n	39:10 73:119 76:-9 114:-12 125:42
of lot	73:19
@wire lot	19:21
lot #c	71:8 73:61
&#c#d@wire	50:-28 51:-9 67:18 68:96 69:-12 82:18
from number	39:8 75:-10 82:22
drop==	13:-16 16:-10 17:-11 23:-17 25:-20 26:-20 29:-10 32:-19 35:-8 37:-10 38:26 43:-14 47:29 48:90 51:9 57:63 60:9 83:-10 84:68 86:47 99:-9 100:95 101:-8 102:-10 103:-12 106:15 113:8 114:-8 120:-12 121:-9 122:76 125:8
drop	0:11 1:-13 3:-8 13:-17 16:-10 17:-11 22:-8 23:-17 25:-20 26:-21 29:-10 32:-23 33:-8 35:-8 36:-15 37:-10 38:25 39:32 40:-9 41:-8 43:-14 47:29 48:90 50:19 51:31 55:-8 57:63 60:8 65:-8 83:-10 84:68 86:47 98:-8 99:-10 100:95 101:-8 102:-10 103:-12 106:15 108:-8 113:8 114:-8 116:-8 120:-12 122:75
)~",
R"~(^ drop	13:-15 16:-10 17:-10 23:-16 25:-17 26:-19 32:-18 37:-10 38:26 43:-13 47:29 48:92 51:8 57:65 60:9 79:10 83:-9 84:68 86:55 99:-8 100:77 103:-8 106:20 113:-12 114:-8 120:-11 121:-9 122:77 125:-24
in tin	79:13
^ throw	22:-9 40:68 81:55
@wire into	39:46 50:12 66:-11 82:20
into the	0:-13 18:8 33:8 36:-13 39:26 40:16 42:10 70:13 72:22 79:22 82:28 83:9 89:-11 97:-12
add a	1:-10 49:14 56:23 57:-11 58:9 79:10 85:10 98:12 120:20 125:20
add #c	39:14
#n piece	39:11 79:10 81:18 83:9
in each	49:-8 66:9
each $	8:11 16:22 25:9 27:-8 39:18 66:12 70:-24 75:26 80:-10 82:22 117:13
mm each	49:-8 50:12 66:11 117:14
#c short	39:11
@wire each	66:14
each #n	14:33 17:-12 116:8
each #d	39:-9 49:-9 50:26 66:11 68:-11 116:14
@wire #n	40:30 66:9 81:-8 117:22
@wire #d	39:10 80:11 88:13
#n short	3:-11 42:15 45:-11 75:35 89:-8
raw $	3:9 39:17 42:13
dress end	1:11 3:9 72:-10 78:10
both==	1:22 8:8 25:11 29:14 39:34 40:-10 41:-8 70:44 81:13 82:17 83:10 100:12 101:14 102:27
both	1:22 8:8 25:11 29:14 39:34 40:-10 41:-8 70:44 81:13 82:17 83:10 100:12 101:14 102:27
both end	1:36 39:16
drop==ped	39:31 50:21 121:17
into $	39:18
chuck==ed	79:54 81:28 82:-17 125:-10
chuck	1:-17 38:-17 39:8 40:89 79:56 81:39 82:-19 125:-12
^ chuck	38:-11 39:8 40:64 79:44 81:-15
into tin	79:28
threw==	22:-10 38:-11 39:12 40:106 57:10 78:12 79:20
threw	22:-10 38:-11 39:12 40:106 57:10 78:12 79:20
^ threw	39:14 40:34 79:18
threw #d	39:15 40:37
across==	3:-9 16:8 19:16 25:-13 39:13 41:18 42:10 61:8 74:11 76:45 78:-8 80:15 82:-11 85:17 89:15 92:-11 100:25
their==	2:-12 9:33 14:26 17:-14 18:22 19:23 25:21 26:10 29:-9 32:45 45:-12 81:11 82:-9 95:8 115:23 118:8
@wire measur	39:13
across	3:-15 16:8 19:16 25:-13 36:-8 39:13 41:40 42:11 61:8 74:11 75:-8 76:45 78:-11 80:21 82:-11 85:17 89:15 92:-11 100:25
measur across	39:8 42:10 76:25
their	2:-12 9:33 14:26 17:-14 18:22 19:23 25:21 26:10 29:-9 32:45 45:-12 81:11 82:-9 95:8 115:23 118:8
mm in	0:20 41:16 66:22 76:8 81:16
bent==	5:-9 18:33 38:-8 39:11 41:19 42:14 43:24 66:9 69:22 78:-8 81:11 86:9 90:-8 91:91 94:13 125:-10
bent	5:-9 18:33 38:-8 39:11 41:19 42:14 43:24 66:9 69:22 78:-8 81:11 86:9 90:-8 91:91 94:13 125:-10
bent to	5:-8 18:29 41:23 42:15
its==	0:-17 1:35 2:-16 3:-13 4:-12 5:10 6:8 8:-9 11:-8 13:-20 14:-8 17:-13 18:28 22:-11 23:-12 24:24 27:-9 28:-8 29:-9 31:19 32:33 33:-10 35:-8 36:-10 43:-13 45:24 48:-8 50:13 60:10 67:-8 73:8 74:-8 75:8 76:9 77:-13 83:11 84:11 85:8 87:74 88:11 89:13 90:13 91:24 92:35 93:39 95:22 101:33 103:10 108:-9 115:-12 122:9 125:-31
its	0:-17 1:35 2:-16 3:-13 4:-12 5:10 6:8 8:-9 11:-8 13:-20 14:-8 17:-13 18:28 22:-11 23:-12 24:24 27:-9 28:-8 29:-9 31:19 32:33 33:-10 35:-8 36:-10 43:-13 45:24 48:-8 50:13 60:10 67:-8 73:8 74:-8 75:8 76:9 77:-13 83:11 84:11 85:8 87:74 88:11 89:13 90:13 91:24 92:35 93:39 95:22 101:33 103:10 108:-9 115:-12 122:9 125:-31
across its	41:17
its end	1:37 87:14
tin #d	22:-8 39:41
put #c	16:9
&#c#n@wire	5:-8 20:-8 44:-11 46:8 66:51 68:46 69:13 70:15 71:-10 79:-8 116:25 117:-15
short==s	79:61
^ scrap	1:-10 20:-12 22:-8 38:-11 40:151 53:-18 81:82 82:-22 86:48 98:-19 100:22 112:47 117:-13 119:25 125:-9
why ~	40:30 42:-14 48:16 72:-9 77:23
~ why	40:14
scrap piec	1:-8 22:67 81:-8 125:-8
scrap piece	40:19 82:-8
scrap #d	40:9
becaus==e	23:24 29:-9 40:21 48:60 50:-14 53:79 55:-11 65:-9 66:-9 69:80 75:-9 77:45 81:36 99:-8 101:60 110:51 112:-16 117:-16 119:77 125:-38
scrap #n	40:35 81:17
becaus	23:24 29:-9 40:21 48:60 50:-14 53:79 55:-11 65:-9 66:-9 69:80 75:-9 77:45 81:36 99:-8 101:60 110:51 112:-16 117:-16 119:77 125:-38
#n becaus	40:25 48:25 77:19
becaus ~	40:19 48:11 53:55 55:-11 69:34 77:30 81:16 101:62 110:44 112:-14 117:-8 119:43 125:-13
scrap the	21:-10 40:25 53:-17 86:50 98:-17 100:24 112:49
#d becaus	40:10
@wire becaus	50:-11 69:17 81:17
bin piece	40:11 81:20 82:-14
bin #n	40:24
bin the	40:-13 81:42
throw #d	40:26
#d away	40:24
@wire out	82:25
throw number	40:30
#n away	40:37
#n out	4:-8 5:28 36:38 40:23 48:31 71:15 72:23 73:10 78:-15 82:12 87:21 95:-18 97:-9 101:13 125:16
i threw	40:45
threw piece	40:12
we threw	40:29
threw #n	40:19
threw number	40:15
threw out	40:14
#d out	40:16 80:8
threw the	78:15
no good	22:29 40:48
^ measur	0:-13 3:-20 36:-8 39:9 41:115 70:-10 75:24 78:-8 79:-12 80:86 82:-24 89:-12 92:10 125:-8
measur job	41:22
straight	0:9 3:-16 13:31 17:-11 36:-12 38:-8 39:10 41:57 52:39 75:-9 82:-11 87:-8 89:21 94:114 95:-8 125:19
measur straight	3:-8 39:11 41:33
#n bend	41:23 108:12
radius #n	41:22 46:14 80:-9 85:12
across job	41:16
straight slot	41:18
@job measur	0:-13 2:11 4:33 41:15 92:9
^ fret	0:-24 2:13 3:-34 4:-12 16:-14 17:-42 24:-22 33:-16 41:89 42:64 44:16 45:37 70:-12 71:11 72:-13 73:20 75:33 77:67 78:-14 82:-21 89:50 90:25 91:-29 93:12 95:-11 96:-12 97:-18 115:17 125:40
@job measure	41:20 76:28
#n measure	41:41 76:14 77:-14 78:-8 92:-13 125:60
mm at	0:-12 3:14 46:26 78:-21
in at	41:11 67:9 72:10 75:-9 76:15 87:-12 110:27
mm across	41:17 74:14
#d across	41:22 76:18
came==	0:-10 1:-8 2:20 3:-9 13:-9 16:-8 17:-10 20:18 21:-8 24:38 30:10 33:-10 35:22 36:-11 39:-9 41:35 42:68 45:39 50:117 63:44 66:-11 67:-27 70:16 71:26 73:-8 75:-12 79:9 88:-9 89:-11 91:-8 92:-8 110:-12 111:-8 117:151 118:-12 119:-9 125:-13
came	0:-10 1:-8 2:20 3:-9 13:-9 16:-8 17:-10 20:18 21:-8 24:38 30:10 33:-10 35:22 36:-11 39:-9 41:35 42:68 45:39 50:117 63:44 66:-11 67:-27 70:16 71:26 73:-8 75:-12 79:9 88:-9 89:-11 91:-8 92:-8 110:-12 111:-8 117:151 118:-12 119:-9 125:-13
^ came	3:-9 42:31
came short	3:-9 42:36
short slot	42:24
@job short	2:-12 41:-15 42:9 75:36 89:-9
short by	3:-22 41:-9 42:65
#n if	2:14 3:-12 5:8 16:14 17:-8 30:-9 42:13
if short	3:-18 42:26
short ~	3:-18 42:26
short job	42:8
@job came	42:12
came out	2:10 35:13 41:-9 42:46 63:35 110:-11
out short	2:13 35:13 42:8 125:16
#o came	41:43
#n came	2:14 36:-9 41:-9 42:32 45:51 63:10 70:17 71:29 75:-10 89:-9 117:17
out too	125:25
measur==e	0:-14 2:23 4:26 41:9 72:9 74:24 75:-11 78:-14 79:13 80:-19 117:15 125:54
short it	42:10
#o is	42:17 53:11 91:9 93:8
#r is	17:-11 75:17 78:16 89:17 93:10
short is	86:20
out #d	41:16 42:18
mm short	42:19
out #n	81:14 95:15
&#d#o	42:19
end==ed	36:17 41:-8 42:32 62:19 125:-9
#o end	42:19
end up	1:9 2:14 36:15 41:-8 42:32 125:-10
up #d	42:26
turn==ed	20:22 21:-18 41:9 42:50 50:13 75:-8 82:12 88:11 91:-9 116:-14
turn	11:-13 13:-8 20:21 21:-18 23:-8 29:34 31:22 36:-9 42:48 48:26 50:13 75:-9 76:12 82:12 84:23 88:11 89:8 91:-11 101:9 102:11 116:-14
#n turn	11:-9 29:39 41:14 42:21 75:-8 76:16 82:13 102:11
turn out	42:49 76:13 88:11 91:-9
out at	41:-10 42:46 88:11 91:18
@job turn	41:-13 42:28
#d with	41:16 42:9
^ short	42:28
^ too	3:25 41:-9
have cut	0:-8 6:-8 42:15 43:12 71:25 78:9
@job too	42:39
cut slot	70:27 71:19 78:-9
short at	0:14 3:10
#n too	0:-12 3:-9 6:65 42:15 90:49 91:13
^ finish	13:-9 16:-9 43:72 44:51 107:-12 114:-8
finish job	114:-8 125:33
#n stag	43:16
stag slot	108:8
#n start	43:11 107:-9
@job stag	107:10
stag polish	104:17
seat job	13:-14 18:32 43:52 107:23 114:-8 125:18
slot stag	104:12
crown stag	103:12
pull $	43:15 72:36 77:41 95:28 107:12
file	16:16 39:12 41:-9 43:17 97:30
bend $	43:17
finish pull	43:14
#n this	45:-8 101:16 107:31 115:14 117:17
file on	97:9
@job this	43:9 45:13 87:8
level with	17:-12 97:19
@job #n	1:8 2:-15 3:8 4:-19 13:14 15:-14 16:-10 17:-10 18:8 24:-8 36:-30 41:17 44:-10 48:-13 64:16 65:-12 71:22 72:-10 77:41 78:40 80:-8 81:-8 82:45 90:28 91:34 92:40 95:24 97:-21 108:13 113:-23 125:-11
@job @day	44:13 47:18 71:8
&#n@day@job	43:-8 44:11 47:16 53:14 96:8 107:12 112:-9 115:14
finish bend	43:24
bend for	107:49 108:17
the pull	103:8 107:13
pull is	43:16
is finish	13:-13 43:23 44:33 101:-10 102:12 114:26
finish of	43:9
^ nip	42:10 70:16 104:27 125:-8
are finish	31:11 108:11
^ crown	19:42 27:37 39:-10 49:-8 88:63 90:25 103:49 104:16
crown are	19:10
are done	27:18 43:9 108:-10 125:18
done of	43:13
the nip	103:15
the seat	27:10 108:15
seat is	103:12
finish for	11:24 29:-18 43:9 108:21
@job yesterday	43:28 95:17 125:39
the corner	27:45 43:10 103:8 104:34 125:16
corner is	103:23
#n #n	17:-8 36:-15 38:-8 40:-17 41:37 45:-10 50:10 70:-10 74:-9 75:11 80:68 81:37 82:-8 88:21 91:26 92:8 96:18 108:19 125:-8
)~",
R"~(^ @job	0:8 1:-18 2:12 3:-13 5:-18 6:25 16:34 17:-16 23:-13 24:-12 26:-11 27:-22 29:-20 30:-19 33:-21 35:-8 36:16 37:-31 40:-8 41:58 42:-8 43:12 45:21 46:-12 47:59 48:9 65:49 69:-8 70:8 71:45 72:13 74:40 75:10 76:46 77:25 78:-11 80:-18 82:-13 83:-10 84:19 87:18 89:9 90:-14 92:12 94:33 95:-20 97:25 107:-36 108:-15 113:61 114:42 115:-15 118:-8 125:49
the bend	43:29 100:37 103:9 108:11
bend is	43:11 104:30 108:10
the crown	8:21 9:-16 16:20 19:14 73:30 88:38 90:33 103:11 104:9 107:-9 108:25
is cut	5:-10 43:47 71:15 83:-10
polish $	104:36
file $	16:18 41:-9 43:9 97:21
is bend	107:24
corner $	27:24 43:9
is level	17:-8 43:9 45:18 97:12
is seat	43:8 95:16
seat $	24:19 95:13 104:18 107:45 125:-8
^ done	13:-10 43:42 44:37 72:18 95:30 108:27
with dress	1:12 3:9 72:-10 78:10
dress of	107:-11 108:18
corner on	43:18
crown of	8:36 9:-12 19:-11 88:22 90:29
&#n#t	28:-8 52:8 71:12 75:-10 95:15 101:12 108:10 111:16 115:55 125:-17
all fret	45:8
&#t@job	44:13 107:25 108:29
all for	0:28 3:-10 6:-9 37:-8 43:23 83:16 84:-8
@job has	13:-16 15:-9 27:28 36:-20 41:9 44:29 47:33 48:-34 65:26 72:-11 75:34 77:23 78:36 87:29 125:66
been cut	43:9
are cut	43:9 70:21 71:19
have been	4:-8 13:-12 23:46 75:22 81:10 91:10 101:12
cut #n	1:8 5:-14 6:10 70:9 71:-13 78:40
is all	20:10 45:41 66:10 69:17 71:12 73:20 90:10 113:-10
finish #n	43:18
^ seat	25:-8 43:31 95:50 99:-10 103:64 104:28
seat all	43:9
#n yesterday	33:-8 36:20 37:-8 40:15 71:8 97:11 107:28 115:8
seat fret	43:11 95:57
true on	43:61 107:-10
am finish	43:26 108:-8
finish with	43:38 107:-8
with tru	107:18
tru fret	43:12 107:-8
tang==s	4:-8 27:14 107:25
have done	11:20
with pull	43:11 107:-9 108:53 125:-8
the tang	4:-17 16:-8 18:55 27:11 40:15 49:10 88:38 91:30 92:-8
tang of	49:11 88:24
we are	0:13 5:8 7:10 8:21 9:-8 11:-24 12:-8 28:-38 29:-12 31:-11 48:45 52:9 53:46 54:40 88:-8 102:10 107:33 108:25 109:19 112:26 118:17 122:10 125:12
am done	43:14
finish doing	43:11
doing the	15:12 32:13 48:37 104:12 107:19 112:-10 125:-12
i are	108:15
we am	108:27
pull #n	72:49 95:-14 104:14
pull this	43:12
with true	43:8
^ tru	13:-9 43:59 94:12 104:11 107:27
^ bend	27:58 29:-10 103:14 104:52 108:22
^ pull	2:-8 4:41 10:-15 12:39 27:10 36:-8 43:40 70:-11 72:150 75:-8 78:-9 91:-8 103:49 104:26 107:19 108:-11 125:-8
done #n	44:8 108:23
^ true	43:9 103:12 104:15
true is	43:9
pull done	43:11
done @day	45:12 115:-8
@person is	28:-35 29:-30 30:12 43:-18 59:21 61:41 62:49 64:-13 83:10 106:-8 107:39 109:19 110:72 111:54 125:11
@person has	26:-14 29:-16 33:20 37:10 43:37 59:8 60:-8 62:38 64:-19 65:-17 68:8 103:9 105:54 106:8 107:51 109:30 110:-25
tru==ed	13:-8 23:26 32:15 43:58 53:11 65:19 87:-13 94:12 107:13 112:12
has tru	43:25 107:-18
tru board	103:21
has pull	43:11 107:-9
pull finish	43:12
^ check	0:-14 3:43 4:-10 18:12 37:-11 41:19 42:-8 45:16 91:16 94:8 114:-9 115:29 117:32
is pull	43:42 95:9
pull tomorrow	108:14
dress #n	0:15 36:-8
next ~	44:9
pound job	16:-8 44:11
pound at	44:10
#r for	37:-11 47:10 70:36 71:-9
&#c#n#o	44:10
#n to	0:-27 1:-15 2:15 3:-13 4:70 5:-11 10:-8 11:-18 13:-15 15:-14 16:96 17:15 27:-11 28:-19 29:-18 30:11 33:-16 36:-22 38:-22 40:-14 41:-29 42:-8 43:-10 44:22 45:15 46:-11 47:9 50:-10 52:88 53:-8 54:74 55:-19 61:-19 63:-8 64:22 65:-17 70:17 71:38 72:-8 73:-11 75:70 77:-10 80:-15 81:-16 83:18 86:8 89:43 91:-13 92:-16 93:-16 95:-12 98:-10 99:-30 101:-22 102:8 104:-13 105:92 107:-14 109:49 111:36 113:-9 114:-11 117:-19 118:55 120:-17 125:22
them==	0:-10 1:-9 2:57 4:21 5:-10 6:-8 8:-19 9:-10 10:11 12:-8 13:18 16:33 17:-10 18:-14 20:-8 22:13 23:-12 25:11 27:-13 29:-12 30:-8 32:-11 33:-9 35:-13 41:-13 43:-9 45:-17 50:-8 52:21 58:-8 63:9 66:9 70:-8 72:43 74:19 75:19 78:-10 79:15 80:-13 81:32 82:-23 83:9 84:25 88:10 89:-14 92:12 98:43 100:40 101:-10 103:15 108:10 111:-12 116:-10 117:31 120:-15 121:19 122:32 125:-18
them	0:-10 1:-9 2:57 4:21 5:-10 6:-8 8:-19 9:-10 10:11 12:-8 13:18 16:33 17:-10 18:-14 20:-8 22:13 23:-12 25:11 27:-13 29:-12 30:-8 32:-11 33:-9 35:-13 41:-13 43:-9 45:-17 50:-8 52:21 58:-8 63:9 66:9 70:-8 72:43 74:19 75:19 78:-10 79:15 80:-13 81:32 82:-23 83:9 84:25 88:10 89:-14 92:12 98:43 100:40 101:-10 103:15 108:10 111:-12 116:-10 117:31 120:-15 121:19 122:32 125:-18
press it	44:21 102:-10 125:19
it under	119:11
it again	38:15 44:13 86:15 102:-10 125:18
again yesterday	44:11 115:9
again tomorrow	102:11
press that	106:11
it at	32:14
^ that	0:-9 1:-8 36:55 39:-12 40:14 43:36 44:11 102:9 108:17 112:9 113:19 125:-8
were press	44:10
it are	98:15
are press	44:18
press again	44:8
^ they	54:11 64:12 112:8 113:20 124:-10
pass at	3:20 92:9
pass is	16:-17 44:39
only got	44:60
^ only	1:74 2:13 4:87 5:-9 13:-9 16:-14 17:-10 22:64 33:22 38:-8 43:-8 44:44 45:58 54:-12 66:15 75:-8 89:-9 99:20 107:-12 111:-13 117:9 118:-10 125:-8
only came	44:12
came up	24:47
#c on	44:40 59:18 101:11 110:-11 118:9
came to	2:16 41:53 42:-15 68:11 70:-9
pound on	16:-10 44:14
of them	2:23 8:-13 14:-9 16:53 25:13 44:8 52:23 83:-12 84:16 98:37 99:9 111:-10 117:35
it with	72:18 77:33
lot with	19:17 44:9
#c #n	44:9 81:9 82:13
got press	44:20
press this	11:-9 26:46 29:-11 101:-10
@job was	36:9 71:15 77:-10 91:24 97:13
was press	24:43
press tomorrow	26:28 101:28 105:10
finish press	16:-8 43:-23 44:54
recheck job	11:29 17:-18 45:53 89:-18 115:43
from fret	45:11 72:-10 75:19 89:14 92:-9
#o from	45:9 75:-12 89:11 111:15
#r from	54:15 75:28
from slot	44:-9 45:32 72:-9 75:25 89:-11
@job to	11:-10 13:-13 29:13 45:19 64:58 72:-9 75:29 115:21
to slot	0:-15 2:-9 33:14 41:-8 45:26 75:74
#o sprang	45:14
sprang fret	45:9
@job high	17:-10 45:8 97:13
high #n	89:38 97:9
#n sprang	24:-14 45:75 125:18
recheck the	45:33 89:-15 115:23
bass to	45:11
humidity==	45:55
recheck @job	45:11 115:37
humidity	45:55
humidity #n	45:21
@job sprang	45:23
are level	97:8
still level	17:-29 45:73
fine==	0:13 3:58 42:-35 45:41 55:10 77:-8 80:-8 89:49 102:13 115:-11 125:20
fine	0:13 3:58 42:-35 45:41 55:10 77:-8 80:-8 89:49 102:13 115:-11 125:20
fine $	2:9 3:32 42:-10 45:34 80:-8 89:49 125:23
level this	45:11
level #n	97:12
still good	2:8
is good	17:-8 45:9 77:17 102:19
back @day	102:11
sprang $	45:28
back this	101:20
back #n	102:19
back tomorrow	101:12
back again	45:14 63:10
#r sprang	45:15
up again	24:22 45:20 48:21 63:-8 65:-16 102:18 107:31
&#n#r@day@job	71:8
is fine	42:-9 125:17
and fret	70:12 82:24 95:14
still high	17:16
proud==	13:-10 17:58 59:12 89:18 94:10 97:20
edge==	2:-8 16:-17 17:9 41:-8 42:-10 45:37 76:47 89:78
proud	13:-10 17:58 59:12 89:18 94:10 97:20
proud on	13:-8 17:26
edge	2:-9 16:-17 17:9 41:-10 45:37 76:47 89:78
trebl edge	89:12
&#n#t@job	97:13 115:-9
edge #n	89:12
#r are	54:9
edge $	76:24
and slot	120:10
stand proud	13:-9 17:70
show==s	3:9 67:34 90:11
@job show	89:-13 90:28
proud $	17:43 89:19
say==s	1:-15 32:14 44:-8 45:9 47:11 49:10 50:8 55:33 59:12 67:10 69:22 74:13 88:11 92:14 118:10 125:19
say #n	11:11 69:19 88:8 118:13
rock==s	17:-31 45:74 75:-12 89:128 90:-12 97:-8 115:-15 125:24
rock	4:-12 13:-9 17:38 33:-8 44:-10 45:73 75:-22 82:-13 89:206 90:-17 91:-8 93:-25 94:-8 97:-11 115:-19 125:57
rock on	16:-11 17:65 45:53 75:-8 89:22 115:-10 125:-23
@job it	26:11
it rock	45:15 89:33
and it	36:11 50:9 67:12 68:11 76:17 77:10 82:-10 84:11 89:30 91:-8 95:-17
#n it	36:34
#n through	4:31 41:-10 71:24 75:36 81:11 93:-8 97:-8
#n rock	16:-10 17:52 45:12 75:-11 93:-21 125:74
through #n	4:30 20:12 41:-10 71:24 75:36 81:11 93:-8 97:-8
@job #r	16:8 89:9 90:27 91:11
#n -	3:-12 5:21 6:-18 7:13 13:37 15:15 16:-17 17:8 18:30 24:17 27:27 29:30 30:23 33:23 36:-17 37:10 38:-19 39:8 40:15 42:-23 43:29 44:-13 45:-27 48:27 49:19 64:18 66:-9 70:-12 71:-11 72:-9 73:9 75:10 77:-21 78:-13 83:9 84:-19 87:23 90:-16 91:-13 94:12 95:-12 97:-9 105:8 107:23 108:-8 114:24 115:-9 125:-22
rock $	17:-10 89:103 93:-21 125:52
rock at	45:12 89:12
- fret	93:15
steady==	13:-9 17:-20 43:-25 45:94 84:-8 89:131
steady	13:-9 17:-20 43:-25 45:92 84:-8 89:136
all steady	43:-23 45:104 84:-8 89:-9
steady $	89:97
is steady	17:-15 89:49
steady @day	45:19
steady #n	45:10
steady on	45:30 89:11
steady of	45:18
still down	45:10
down #n	75:15
)~",
R"~(scal==e	0:-9 2:-12 4:36 5:-22 13:50 15:-9 39:-9 46:81 66:-13 67:85 68:8 69:-8 88:-11 125:10
nut==	0:14 4:55 5:-10 6:-8 13:42 15:-10 17:-15 30:-8 33:-8 36:14 41:-18 43:-9 46:61 48:-10 68:-8 72:-9 74:-10 76:62 78:-16 87:104 89:29 90:-16 107:-10 108:-19 125:-8
^ new	2:-8 5:-13 13:-12 30:17 32:-8 35:-8 39:15 42:-8 46:97 47:10 49:49 58:81 60:-21 71:37 98:56 118:23 120:41 121:-9 122:-11 125:-17
scal	0:-9 2:-12 4:36 5:-22 13:50 15:-9 39:-9 46:81 66:-13 67:85 68:8 69:-8 88:-11 125:10
@wire scal	5:-9 46:19 68:-9
scal #d	5:-13 46:26 68:-12
#c scal	46:20
@wire far	46:13
nut	0:14 4:55 5:-10 6:-8 13:42 15:-10 17:-15 30:-8 33:-8 36:14 41:-18 43:-9 46:61 48:-10 68:-8 72:-9 74:-10 76:62 78:-16 87:104 89:29 90:-16 107:-10 108:-19 125:-8
nut width	13:57 41:-9 46:14 76:14 87:-10
in far	46:13
far width	5:-13 46:27 68:-12
scal #n	67:10
mm scal	46:21
scal $	67:9 68:15
flat==	13:-12 17:22 18:24 29:17 45:30 46:48 63:9 74:11 76:-9 80:-65 85:38 94:8 125:12
zero==	58:16
compound==	46:11
~ for	50:17
mm to	39:13 46:24 80:-9 85:-10 87:17
flat	13:-12 17:22 18:23 29:17 45:30 46:48 63:9 74:20 76:-10 80:-65 85:38 94:8 125:12
mm flat	46:13 80:-9
flat flat	46:29 80:-31 85:9
flat radius	46:39 80:-25 85:-13
mm radius	46:20
#d flat	85:8
zero	58:16
compound	46:11
compound radius	46:11
in flat	46:22 80:-15
flat compound	46:10
flat $	45:32 85:10 125:13
in radius	46:14 80:-9
division==s	2:-11 4:39
division	2:-11 4:39 55:22 68:14
^ set	0:-8 1:-15 11:-26 23:-43 36:-8 37:27 47:57 54:-8 55:45 66:-9 69:44 73:-9 83:135 84:-38 95:26 98:26 99:32 109:9 125:-10
set due	11:-10 47:33
due #o	11:-46 12:88
due today	47:10
#n no	40:10 93:19
no day	47:22
due next	47:8
promis job	30:13 47:30
@job for	0:-21 1:17 4:-10 11:-9 16:17 30:35 36:-8 43:-16 72:20 77:15 108:50
^ move	2:10 47:33 115:9
move the	2:27 47:30
set the	7:-12 51:24 55:23 68:9 73:-8 75:-11 83:35 84:-22 95:28 99:20 104:36 115:15
chang==e	11:-9 14:-8 19:32 29:-10 31:-8 33:-15 52:27 54:-12 55:74 61:69 98:-16 99:36 117:-10 118:26 120:-17 121:30 122:-8
chang	11:-9 14:-10 19:26 22:-10 29:-11 31:-9 32:-34 33:39 38:46 48:21 52:26 54:-16 55:73 61:68 62:-8 63:-8 98:-17 99:35 100:-8 105:-8 117:-11 118:24 120:-26 121:41 122:-9
^ chang	38:27 52:27 54:-12 55:47 58:-11 61:51 98:-16 99:39 117:-10 118:16 120:-17 121:31 122:-8 125:-8
@job must	47:12 91:10
#n must	29:16 47:8 51:19 84:13 114:17
#n has	13:-8 17:-11 27:-9 33:-16 40:19 43:-9 44:-9 47:45 48:24 65:-16 70:17 74:24 77:15 89:-9 90:10 91:-9 94:17 95:24 107:14 108:28 113:55 117:12 125:-13
time until	47:30 65:-8
has until	47:9
promis tomorrow	47:9
promis #r	47:11
customer==	13:-8 23:13 27:-8 30:9 47:25 48:28 125:35
customer	10:-18 11:12 12:53 13:-8 23:12 27:-8 30:9 47:24 48:27 125:35
^ customer	47:13
customer of	47:17
need it	37:11 38:26 47:24 119:15 125:-10
it by	37:37 47:33
owner==	46:11 47:25 48:19
owner	46:11 47:25 48:19
^ owner	47:14
owner of	47:26
want it	36:-13 37:19 47:36 106:16 125:-12
@job want	36:-13 37:19 47:17 83:13
it for	0:-12 1:9 3:8 83:8 105:10 108:37 125:-8
it on	47:19 50:13 67:-13
the owner	47:11 48:19
the customer	47:12 48:28 125:36
promis @job	11:-13 30:18 47:33
have promis	47:8
has no	47:9 65:35 87:26 91:10 99:21 113:-17 121:14
deadlin $	47:12
no promis	47:11
promis day	11:46 47:33
no deadlin	47:28
deadlin any	47:17
day any	47:8
no date	47:16
not due	47:22
longer due	47:16
due any	47:12
take away	38:24 47:13
away the	38:22 40:-20 48:28 81:18 125:15
day from	47:17
remov==e	11:-11 25:-14 26:-10 32:-17 40:8 47:13 48:37 55:-9 57:56 60:37 62:37 63:-11 86:37 94:-11 99:-8 100:81 103:-11 106:16 112:12 120:-9 122:56 125:-9
remov	11:-12 13:-8 25:-14 26:-10 32:-24 40:8 47:13 48:37 55:-10 57:55 60:37 62:37 63:-11 72:11 86:38 94:-11 99:-8 100:80 103:-11 106:16 112:12 120:-9 121:-10 122:77 125:-10
^ remov	11:-11 25:-13 26:-8 32:-16 47:15 48:27 57:9 60:38 86:37 94:-9 100:60 103:-10 120:-8 122:59
remov the	48:29 60:39 86:9 94:-9 100:18 122:30
the promis	11:-10 35:16 47:60
day off	53:36 108:-14 110:32 112:-9
from job	13:27 17:-13 47:13 48:-8 72:49 125:28
date is	47:23
@job any	38:12 65:35 77:8 84:22
for no	38:12 47:8
cancel==	9:-11 10:-8 11:-8 13:-21 15:-8 16:-10 17:-8 26:15 29:-10 31:-16 32:-8 33:-13 35:28 38:-12 43:-8 47:-11 48:147 101:-10 105:-13 106:150 107:-8 112:37 113:-10 114:-8 117:-23 118:-13 119:105 124:47 125:47
cancel	1:-12 9:-11 10:-8 11:-8 13:-24 15:-9 16:-13 17:-9 26:15 27:-8 29:-10 31:-16 32:-8 33:-14 35:28 38:-14 43:-9 47:-11 48:144 65:-11 84:-10 101:-11 105:-13 106:150 107:-8 112:36 113:-11 114:-9 117:-23 118:-13 119:105 124:47 125:107
^ cancel	13:-14 26:-21 31:-12 35:-9 48:140 105:-8 106:114 112:26 117:-18 119:133 124:40 125:-33
cancel job	48:84 106:-12
#n why	77:13
cancel the	26:32 48:41 106:31 112:40 117:-9 119:49 125:-16
@job becaus	48:11 108:15
cancel @job	48:34
is call	48:13 61:46 62:-8 99:30 110:-13 120:8 121:13
call off	17:-13 48:98 106:22 108:-17 119:32
cancell==ed	13:-10 31:-8 32:-8 43:-9 47:-10 48:90 53:-9 65:-11 87:-12 106:13 112:11 113:-19 114:-20 117:-12 118:-17 119:119 125:60
cancell	13:-10 31:-8 32:-8 43:-9 47:-10 48:90 53:-9 65:-11 87:-12 106:13 112:11 113:-19 114:-20 117:-12 118:-17 119:119 125:60
is cancell	43:-8 48:121 87:-8 113:-12 119:27 125:-9
cancell $	48:106 87:-8 106:14 113:-12 119:40 125:-10
^ call	17:-14 48:84 55:-9 61:19 98:10 99:69 101:-9 103:-16 106:20 108:37 125:-8
off @job	42:18 48:20
off job	48:18 72:22 87:15 108:39
defin==e	9:-8 32:-15 46:-11 49:72 85:66 86:-18 98:78 120:82 121:-19 122:-22
thickness==	49:13 88:48
name==	7:28 15:60 20:-10 25:-13 26:41 29:-11 49:9 56:19 58:31 61:38 65:20 82:-33 85:44 86:20 98:20 120:40 121:-30 125:-11
material==	5:10 49:41 83:33 84:15
height==	17:24 46:-8 88:47
defin	9:-8 32:-15 46:-11 49:72 85:66 86:-18 98:78 120:82 121:-19 122:-22
^ defin	32:-15 46:-11 49:61 85:67 86:-18 98:75 120:82 121:-19 122:-22
defin wire	49:64
thickness	49:13 88:48
tang thickness	88:48
name	7:27 14:56 15:60 20:-11 25:-14 26:40 29:-12 32:-9 49:8 56:18 58:28 61:38 65:19 82:-33 85:44 86:19 98:19 120:39 121:-30 125:-11
in name	82:-9 85:18 120:9
name ~	49:10 56:10 61:14 82:-33 85:14 86:19 98:28 120:41 121:-39
~ name	49:38 58:9 85:-43 86:14 98:26 120:19 121:-11
material	5:9 13:-14 23:41 49:41 83:50 84:9
~ material	49:25
material ~	49:40
~ crown	49:21
height	17:23 19:13 46:-8 88:45
crown height	19:13 46:-8 88:45
crown width	46:-16 49:15 85:-8 88:53
width #n	85:28
height #d	88:13
mm crown	39:-10 49:19
mm name	49:-16 82:-17 85:42 121:-8
barb	39:-8 49:10 88:107
wire ~	49:86 98:-8 120:-11
tang depth	49:8
#d name	85:19 121:-12
name $	14:34 25:-9 26:23 61:14
defin a	85:10 120:15
wire call	49:48 98:-9 120:-9 125:12
call ~	49:40 58:22 61:44 62:-8 98:20 110:-13
a wire	49:58 98:-11 120:14
deep==	2:-10 4:-11 18:91 41:-8 49:13 74:66 88:49 91:21 93:-8
thick==	49:14 88:36
#d high	49:22 88:20
high crown	49:28 88:-28
mm wide	16:11 18:14 49:19 74:16 76:14 88:23
wide crown	49:53 88:-53
crown #n	16:9 27:21 49:13 104:-8
deep	2:-10 4:-11 18:91 41:-8 49:13 74:66 88:49 91:21 93:-8
mm high	3:-10 8:50 49:13
mm deep	18:18 43:-10 74:30 88:16
thick	49:14 88:36
#d thick	49:14 88:18
in thick	88:8
#d deep	49:15 74:35 88:21
~ #d	85:12
add kind	49:20
kind of	24:11 35:11 49:33 98:9 99:-9 100:9
receiv==e	35:16 39:-8 50:27 66:-8 116:-8 125:14
form==	8:14 22:-9 66:-9 68:-10 116:16
mass==	0:-8 50:-11 67:19 68:13 79:10 82:-9 116:14 120:9
receiv	5:-9 9:-15 10:-9 19:46 20:14 31:-15 33:16 35:15 39:-11 50:107 66:-22 67:-13 104:20 116:-20 117:71 119:-14 125:21
^ receiv	31:-11 39:-11 50:104 66:-14 67:-12 116:-15 117:60 119:-12
form	8:14 22:-9 66:-9 68:-10 116:16
form stick	116:8
coil	1:-8 5:23 8:24 9:8 12:9 20:-18 22:-8 24:-10 31:-13 32:-23 39:-17 48:-8 50:97 51:-19 66:-21 67:77 68:-12 70:-12 71:105 79:-16 81:-8 88:-10 101:12 116:59 120:26 125:40
form coil	116:8
#n count	36:17 41:-8 48:-22 72:47 78:-13 82:12 92:-9
#c count	50:8 72:8
mass	0:-8 50:-11 67:19 68:13 79:10 82:-9 116:14 120:9
@wire mass	67:14 68:9
mass #c	50:-11 67:17 68:14 82:-9 116:14 120:9
g	8:-8 20:-16 39:-14 50:30 51:-30 66:-34 67:127 68:153 69:-20 82:-15 88:-8 120:30 121:-11
#c g	20:-10 50:31 51:-20 66:-14 67:80 68:27 82:-14 116:9 120:31 121:-11
)~",
R"~(tare==	50:13 67:14 68:-12 120:23
division==	55:22 68:14
tare	50:13 67:14 68:-12 120:23
tare #c	50:16 67:14 68:-12
gram	20:-8 39:-26 50:12 51:-14 66:-27 67:101 68:123 69:-10 116:9 120:9 121:19
#c gram	50:20 51:-11 66:-21 67:74 68:36 116:13 120:9 121:19
gram wire	68:10
division #c	68:14
#n each	116:8
g wire	67:10
receiv==ed	5:-9 9:-14 10:-9 19:47 20:14 31:-14 33:17 50:80 66:-15 67:-12 104:20 116:-12 117:72 119:-14
receiv #c	50:22
#c coil	50:22 120:9
coil of	8:-10 39:-10 50:107 51:-14 66:-12 67:8 68:-16 79:-12 116:54 117:-11 120:13 125:43
receiv #n	50:14 66:-10 125:14
#n coil	50:22 116:18 117:12
#n stick	1:-15 8:-18 16:-8 17:22 31:36 32:12 38:-8 39:-19 43:-8 46:-11 50:66 51:-12 66:73 67:-19 68:-12 69:39 79:-11 81:-8 82:-24 88:-11 116:51 117:34 118:-21 119:-13 120:60 121:29 125:38
each from	50:9
#c stick	8:-10 66:58 67:-11 117:17 120:-10 121:18
got #c	99:13
~ from	56:-12 116:38 120:13 121:-14
high from	17:-8 89:16
dollar	50:17
#n dollar	50:17
$	50:24
$ #n	50:24
#n #d	36:-12 39:-13 40:-17 50:-9 70:-34 81:87 82:77 92:17 125:19
yesterday #n	50:23 117:-13
dollar from	50:8
unpack==ed	50:25 66:-9
unpack	50:25 66:-9
^ unpack	50:11
#c from	59:-19 60:49 111:14
#c for	59:13
yesterday for	2:-8 71:22 72:19
#c #d	82:36
#c @wire	1:9 50:11 70:16 71:-8 116:10
stick for	5:-8 6:22 50:20 71:27
#d #n	38:16
#t from	52:-10 109:10
#n @wire	1:27 8:-8 22:-9 38:-10 39:8 50:116 51:-11 66:18 67:-9 69:-11 79:47 81:-14 116:52 117:-15 119:-11 125:-9
each @day	52:21 54:-10
bought==	50:64 66:-11 67:-8 98:36 116:8 125:9
bought	50:64 66:-11 67:-8 98:36 116:8 125:9
^ bought	50:79 67:-8 116:-19
bought #n	50:23 66:-9 116:14
stick from	117:10
#c the	39:-8 79:18
stick at	32:12
#t for	105:11
#d #d	80:10
stick $	5:11 8:32 31:-16 32:12 49:33 50:-26 66:15 69:10 71:47 78:-17 79:-10 116:44 118:-9 121:30
have come	19:10 45:16 50:28
^ #c	36:-8 50:8 66:-14 67:12 68:49 79:16 82:18 117:29
@wire came	20:14 50:51 67:-23 68:-12 117:20
came $	50:26 117:77
here #d	1:10
came in	20:23 117:11
stick arriv	50:9
stick came	117:29
^ delivery	19:20 32:26 50:45 66:-26 116:-11 117:23
brought==	21:29 30:16 43:22 50:43 66:-16 117:29 125:-12
^ ~	50:23 116:-11 117:55 118:64 120:-12 121:44
brought	21:29 30:16 43:22 50:43 66:-16 117:29 125:-12
~ brought	117:18
brought us	21:30
us #n	104:18 116:20 117:13
brought #n	50:38 66:-16
~ deliver	50:14 117:31 118:31 120:-12 121:16
sent==	5:10 31:27 50:14 57:17 116:21 117:13
sent	5:10 31:27 50:14 57:17 116:21 117:13
~ sent	117:8
deliver #n	117:34
morn for	105:13
deliver us	117:22
sent #n	50:29
^ ther	0:-26 1:-10 4:-8 8:-24 13:-9 22:-12 25:-13 53:-8 58:17 66:43 69:13 72:-13 82:10 85:8 87:18 89:20 90:65 91:34 94:36 99:83 100:22 101:8 113:19 120:19 125:39
ther arriv	50:13 66:-9
arriv #n	117:12 118:-9
rack==	1:-14 8:45 9:-11 39:40 66:42 79:22 83:20
#n more	29:-9 30:55 50:66 85:11 111:-8 117:-8
more stick	50:17
rack	1:-14 8:45 9:-11 39:40 66:42 79:22 83:20
the rack	1:-14 8:34 39:40 66:43 79:22
rack $	1:-10 39:27 50:8 79:12
shelf==	8:64 50:14 57:17 66:35 125:-8
took #c	82:28
shelf	8:64 50:14 57:17 66:35 125:-8
shelf $	8:65 66:28
the stock	66:11
without==	5:9 8:-15 21:27 30:11 50:8 52:41 65:19 79:16 119:9
without	5:9 8:-15 21:27 30:11 50:8 52:41 65:19 79:16 119:9
without an	50:12
arriv without	50:10
not order	50:28 116:-12 117:-8 119:-26 122:45 125:15
@wire that	1:10 31:-14 39:-11 50:24 117:20 119:8
that was	1:9 38:15 39:-11 83:-11 84:19 117:46 119:-12 123:15 124:15
a stick	39:20 50:-14 68:33
a coil	50:50 67:-13 68:-11 116:27
receiv coil	50:9
bought a	50:18 98:36 125:12
mm from	1:8 55:37
coil==	5:25 8:16 9:9 19:10 20:-16 24:-9 31:-8 32:-21 39:-14 48:-8 50:47 51:-14 66:-8 67:80 68:-16 70:-11 71:92 79:-12 88:-10 101:12 116:35 125:42
mm coil	50:13
receiv #d	50:13
bought #d	50:13
a #c	5:65 50:-9
g coil	116:8
@wire yesterday	66:10
gram of	67:16 68:-8
g of	66:-14 67:35
g $	50:11 51:-9 66:-10 67:45 68:65 121:9
weigh==ing	50:34 67:-48 68:11 125:47
weigh	8:-10 20:-8 39:-14 51:-9 66:-11 67:105 68:59 69:-8 88:-8 116:-11 125:57
@wire weigh	39:-9 68:47
weigh #c	50:17 68:31
empty==	1:-9 2:16 4:-12 13:56 36:-8 50:10 67:19 68:-16 77:16
empty	1:-9 2:16 4:-12 13:56 36:-8 50:10 67:19 68:-16 77:16
spool==	50:47 61:10 67:38 68:-33
spool	50:47 61:10 67:38 68:-33
spool #c	50:15 67:-8
gram tare	50:11
gram $	39:-8 66:-8 67:45 68:67 120:15 121:11
^ coil	67:21
arriv weigh	50:11 67:-10
reorder==	1:-8 8:-21 9:107 17:-22 19:-14 31:-9 51:133 66:-11 69:-8 88:-11 125:26
reorder	1:-8 2:18 8:-21 9:107 17:-24 19:-14 31:-9 51:133 66:-11 69:-8 88:-11 125:26
^ reorder	9:-34 17:-8 51:111
reorder level	8:-16 9:30 17:-21 51:83 125:32
level wire	9:-28 51:35
reorder the	9:10 51:8
below==	3:-16 41:-11 51:79 74:-8 75:-10 89:25 90:49 92:122 93:-12 120:10 125:-33
reorder @wire	9:37 51:15
below	3:-16 41:-11 51:79 74:-8 75:-10 89:25 90:49 92:122 93:-12 120:10 125:-33
@wire below	51:9
below #n	51:15 89:18 90:-8 92:14
@wire under	9:-8 31:34
under #d	51:33
below #d	51:30
^ tell	0:-10 3:14 4:-8 5:35 8:13 9:22 10:-11 13:25 14:-10 15:20 17:-16 19:12 20:-8 21:13 22:19 23:17 24:-10 25:21 29:-11 31:23 32:24 33:-10 35:10 51:14 56:50 103:-10 119:-9 125:14
tell me	3:11 4:-10 5:26 8:14 9:20 10:-13 13:21 15:18 19:19 20:-9 21:13 22:18 23:16 24:-10 25:27 31:22 32:30 33:-12 51:14 103:-10 108:-8 119:-9 125:27
me when	28:9 51:25
when the	16:10 28:12 47:11 51:12
is under	51:24 91:19
^ say	51:17
say when	51:17
when @wire	51:29
is below	51:34 125:-24
under #n	51:46 89:17 90:45 96:32 121:16 125:19
^ @wire	0:-13 1:-25 5:57 6:11 8:60 9:27 15:-9 18:30 19:29 20:12 21:12 22:-19 24:33 29:-8 31:-21 32:-20 33:31 38:-11 39:-23 40:-11 46:-10 49:-16 50:-23 51:10 55:-8 66:46 67:53 69:33 80:-19 81:-16 85:-10 88:79 92:-12 116:-17 117:13 118:42 119:12 125:-21
low under	51:8
low below	51:11
low at	51:34 92:11
the reorder	8:-13 9:27 125:35
^ open	12:-12 13:47 30:-13 31:20 52:55 53:-17 54:72 109:-12 111:-11 112:80 120:9
hour day	28:-16 52:17
open @day	52:40 53:8 109:-9 112:27 125:-8
@day from	52:38 54:-20 109:13
@day #r	16:-14 52:11 105:71 106:-8 109:40 110:-17
@day #n	52:22 54:10 105:25 109:30 111:-22
open every	52:16 54:-11
every @day	52:57 54:-25 109:30 111:-13
from from	109:17
alway==s	52:80 53:-24 54:-11 86:12 115:-8 122:13
alway	52:80 53:-24 54:-11 86:12 115:-8 122:13
open alway	52:11 54:-9
alway on	52:30 53:-12 54:-9
on every	109:12
@day are	28:-17 52:64 54:-16 109:12
are #r	28:-27 54:24 109:12
are from	52:9 54:18
of each	8:11 25:9 27:20 52:9
for every	0:-12 4:25 7:20
are #n	0:13 4:-10 50:-9 66:32 74:33 80:13 81:-11 88:8 98:14 99:21 121:16
^ on	0:-17 1:81 2:-8 3:-8 4:-14 13:-11 15:-8 16:-11 17:-16 18:11 24:-10 26:9 31:12 36:-12 41:-10 43:-17 45:25 52:8 54:12 67:8 69:14 74:21 75:34 91:-8 92:17 93:18 95:-10 97:-9 101:12 107:93 108:-17 109:19 110:-14 113:-9 114:-8 115:-13 116:20 117:-15 125:-10
@day we	50:15 54:16
open from	29:-8 52:19 54:15
^ every	40:-9 52:13 54:-12 81:27 109:24 111:-12
^ each	124:10
@day open	52:30 54:-18
clos every	52:21
are shut	52:15 53:19 112:19
^ clos	28:-8 47:-8 52:8 53:166 110:-10 112:-19
clos alway	52:16 53:-10
clos day	53:15 112:17
begin==s	28:-13 54:-20 87:22 101:18 102:-10 107:48 111:25
december last	53:13 110:-10
@day week	47:19 52:-23 54:40 110:-9 112:-9 116:9 118:27
begin at	87:12 105:9 111:8
^ shut	28:-12 53:111 112:-9
shut the	53:27
shop for	62:13 63:11 84:11
shut on	28:34 52:28 111:-10 112:29
clos the	53:14 112:29
shop on	33:22 53:-17 112:33
#r becaus	53:13 101:8
tomorrow becaus	53:11
@day becaus	53:14
shop is	28:-21 52:16 53:16 55:22 109:28 112:26 124:-10
is shut	53:32 112:-11
is clos	53:13 124:-9
today becaus	53:11 110:13
through @day	28:14 53:10 109:-25 110:48
clos next	53:13 112:25 125:-17
@day through	28:16 53:8 109:-23 110:36
shop @day	53:9
afternoon becaus	101:8
morn becaus	101:10
even becaus	110:9
clos #o	53:-9 112:15
clos this	53:21
early==	53:8 110:-9 111:50 118:9
early	53:8 110:-9 111:50 118:9
early on	111:16
&#n#o@day	54:16 91:-8 115:18
clos @day	52:34 53:-13 112:21 125:-13
december from	105:19
from at	32:12 53:16
#t on	101:25 109:-12 111:19
tomorrow from	54:8 109:-9 111:24 116:8
yesterday becaus	40:9
close==s	53:16
close	53:16
)~",
R"~(shop close	53:16
from yesterday	111:11
shop at	45:12
clos at	52:10 53:16 112:-9
week becaus	101:10 110:8
clos all	53:10
we will	41:-8 49:11 53:16 54:14 86:14 99:-21 105:8 112:22 115:37 119:9 125:25
will not	31:-10 38:25 42:24 48:18 50:-13 53:10 62:15 86:13 93:19 101:8 108:15 110:64 111:-10 117:19 118:13 119:55 125:-92
not open	53:139 54:-10 112:-43 125:-36
open #r	53:9 54:14
after==	0:45 2:-9 4:-10 5:-12 6:19 10:-12 11:-32 15:22 16:-21 17:-16 23:-9 24:51 25:-9 27:-9 28:-22 29:-13 30:-8 33:-18 35:-8 36:-11 42:-11 43:-20 44:-26 45:23 47:-14 48:30 50:47 52:-10 53:9 54:-15 55:62 63:-9 64:9 73:-8 77:-12 81:-8 83:-9 84:-11 87:18 89:-16 90:-14 91:-13 93:71 95:18 97:-11 105:12 107:-24 108:-12 109:-22 110:-14 111:62 112:78 113:-16 114:159 115:25 117:-12 120:-11 121:8 125:28
after	0:45 2:-9 4:-10 5:-12 6:19 10:-12 11:-32 15:22 16:-21 17:-16 23:-9 24:51 25:-9 27:-9 28:-22 29:-13 30:-8 33:-18 35:-8 36:-11 42:-11 43:-20 44:-26 45:23 47:-14 48:30 50:47 52:-10 53:9 54:-15 55:62 63:-9 64:9 73:-8 77:-12 81:-8 83:-9 84:-11 87:18 89:-16 90:-14 91:-13 93:71 95:18 97:-11 105:12 107:-24 108:-12 109:-22 110:-14 111:62 112:78 113:-16 114:159 115:25 117:-12 120:-11 121:8 125:28
after all	28:-19 42:-8 45:-8 48:46 50:49 52:-9 54:-12 65:9 87:25 109:-21 110:-12 111:75 112:83 114:-9 117:-9
@day after	53:8 109:-20 110:-10 111:53 112:27 115:11 125:-24
all $	10:24 11:-15 12:-21 13:18 14:13 16:13 17:16 19:22 23:-9 24:-38 25:-8 26:10 28:9 29:46 31:-15 33:8 39:-11 43:-14 45:-24 47:12 48:29 50:30 52:-9 54:-13 64:-8 65:21 66:37 69:-8 84:-16 89:-12 90:20 101:-13 109:-23 110:-14 111:68 112:68 114:-8 116:19 117:14 125:52
no work	28:-9 53:100 101:-13
work today	25:15 53:8
work tomorrow	14:-20 28:53 29:-9 110:12 111:12
^ tomorrow	26:-10 53:24 54:15 101:-8 105:42
tomorrow is	53:15 112:8
a clos	87:10 112:10
holiday==	33:-9 53:55 83:14 110:32 111:-21 112:16
^ #o	41:-8 45:38 53:19 78:8 89:-11 92:21 102:55 114:35 115:-10
december is	30:-11 53:31 112:40
holiday	28:-8 33:-9 53:51 83:14 110:51 111:-22 112:16
a holiday	53:33
holiday $	53:26 110:17
a day	24:13 45:12 53:41 89:-9 108:54 112:-11 113:11 125:-9
^ @day	52:82 109:-12 110:-12 111:11 112:42 118:-13
@day is	53:16 101:8 112:20
^ today	25:-12 28:-22 29:77 33:-8 54:14 62:38 111:33
extra==	52:-21 54:98
extra	52:-21 54:98
open extra	52:-10 54:29
#t until	52:21
until #n	20:15 45:10 52:19 54:18 71:12 81:12 89:8 118:14
hour #r	54:8
#r only	2:18
until this	54:18
@day hour	52:22 54:-8
@day only	54:19
~ hour	11:-14 55:30
tomorrow only	111:25
extra day	54:18
open longer	54:12
longer on	54:12
open late	54:23
late @day	54:15
late on	29:9
&#t@day	52:48 54:61 101:22 105:-14 109:-28 111:-13 115:-11
open today	28:21 54:11
december #r	54:15
also==	0:8 2:20 14:12 31:9 52:-22 54:43 59:19 60:-16 116:21 117:-12
also	0:8 2:20 14:12 31:9 52:-22 54:43 59:19 60:-16 116:21 117:-12
also open	52:-22 54:44
^ also	1:8 52:-19 54:32
beside==s	14:-9 28:24 54:12 67:27 68:-13
beside	14:-9 28:24 54:12 67:27 68:-13
open beside	54:12
#o #n	36:15 45:15 65:29 71:11 78:16
^ extra	54:52
extra open	54:33
open only	52:-14 54:26
only on	1:109 3:8 4:-11 44:-8 52:-9 54:11 107:-10 118:21
december #n	30:15 112:11
only from	5:12 54:12 109:-12 111:41
only #r	111:8
open the	13:50 28:33 53:8 54:12
only #n	1:-31 2:14 3:24 4:91 16:-11 27:18 39:12 41:-8 42:9 69:17 75:-10 77:-8 85:10 89:-8 98:25 99:19 111:-10 117:9
december open	54:10
tomorrow we	54:16
december we	53:12
open #n	52:19
today open	54:19
open tomorrow	112:31
#n only	1:79 2:17 17:-8 52:-11 54:14 98:9 107:-8 114:27
today are	28:-12 54:23
december are	54:12
set==ting	22:-9 55:72 99:45 104:-18
gap	3:30 4:-10 42:-9 47:-9 87:-9 89:55 90:210 91:31 93:-13 95:-10 97:-8 125:10
to ~	55:67 56:25 57:-9 58:-9 61:12 64:12 99:17
zone	55:80
press_end_clear	55:9
may be	2:13 43:20 83:-9 84:12 102:22 110:-13 125:51
after press	11:-15 24:25 45:15 55:28
recheck can	55:14
can be	5:8 35:19 43:21 55:12 106:46 119:10
hour after	55:12
h==	11:-28 55:64 115:-11
h	11:-28 55:64 115:-11
~ h	11:-11 55:21
within==	3:9 10:30 55:9 121:15
within	3:9 10:30 55:9 121:15
due within	11:-9 55:10
within ~	11:-9 55:10
h after	11:-8 55:11
due after	11:-8 55:27
after ~	55:11
zone==	55:74
the zone	55:8
zone is	55:36
is ~	55:76
timezon==e	55:15
timezon	55:15
timezon is	55:15
^ zone	55:12
our zone	55:17
^ time	22:18 27:22 55:26
time zone	55:37
currency	55:56
zone to	55:8
flat_end	55:9
the set	22:-8 55:50 99:19 104:-12
gap is	3:10
plat==e	12:47 16:-15 25:-9 29:-18 44:-29 55:98 99:-8 101:-15 105:19 125:12
read==s	3:16 41:15 50:14 55:40 68:-12
plat	12:47 16:-15 25:-9 29:-18 44:-29 55:98 99:-8 101:-15 105:19 125:12
the plat	55:23
plat of	55:27
press read	55:13
read ~	55:18
press plat	16:-12 44:-27 55:60 101:-9 125:15
^ plat	55:16
plat is	55:9
press say	55:18
receiver==	38:-16 56:89 57:236 58:-9 98:-12 100:-12 122:-10 125:-15
url==	56:26 85:-23
shap==e	56:17 85:-9
receiver	38:-16 56:92 57:264 58:-9 98:-12 100:-16 122:-14 125:-16
add receiver	56:57 57:-28
url	56:26 85:-23
url ~	56:25 85:-23
shap	56:17 85:-9
text	56:10
~ want	56:14 85:-9
~ url	56:17 85:-17
event	56:12
receiver ~	56:37 57:25
event $	56:9
a receiver	35:8 56:35
tell ~	32:-10 55:-9 56:38 57:69 108:-12
send==	4:21 26:19 55:-9 56:36 116:23
reminder==s	14:-17 32:-12 33:-9 55:-10 56:31 57:57 125:49
send	4:21 26:19 55:-10 56:36 57:30 116:23
^ send	55:-8 56:31
reminder	14:-17 32:-12 33:-9 55:-10 56:31 57:57 125:49
send reminder	55:-9 56:30 57:15
reminder to	55:-9 56:31 57:15
drop receiver	57:20
drop the	38:29 47:20 60:10 86:13 122:17 125:26
the receiver	57:69 100:-9
remov receiver	57:38
tell==ing	57:70 108:-12 113:20
^ stop	13:-11 23:-14 38:41 57:97 84:43 108:76 125:-11
stop tell	57:71 108:-11
role==	58:75 60:-17 61:39 64:-14 125:17
uid==	38:-9 58:55 59:157 60:182 62:-9 64:-14 65:-21 111:-13 125:-13
new person	58:88
role	14:60 58:71 60:-17 61:39 64:-15 103:-9 125:16
~ role	58:14
role look	58:27 60:-10
uid	38:-9 58:55 59:157 60:182 62:-9 64:-14 65:-21 111:-13 125:-13
uid #n	59:97 60:90 64:-12 65:-17 111:-11 125:-8
role bench	58:17 61:19 64:-8
bench role	58:24 125:18
person ~	58:42
uid #c	58:56 59:20 60:67
#c bench	99:12
look $	4:-11 13:52 14:16 53:20 58:55 61:25
lead $	58:52 61:32
add person	58:30
person call	58:29
with role	14:19 58:14 60:-10
a person	14:-11 58:59 62:-16 63:29 65:19
welcom==e	0:-8 1:17 58:111
as==	0:-19 1:-25 2:9 3:-8 4:-8 6:-9 9:-16 11:-10 13:-17 15:-10 17:16 20:-9 25:-11 27:-14 28:-10 30:-8 31:37 32:-10 33:-19 36:-18 37:38 38:-16 39:-9 40:-11 42:17 43:46 44:-16 47:-12 48:-12 49:-12 50:21 51:48 52:-17 53:-21 55:16 56:8 58:62 59:52 60:-22 61:-8 63:29 65:-15 66:-14 67:13 68:-9 69:-13 72:-9 73:10 76:-8 78:-9 79:-11 81:-9 82:12 84:-15 87:-12 89:-12 91:-9 92:-13 93:10 95:30 97:-9 98:58 99:39 100:15 101:-9 102:12 103:-15 104:27 105:-8 106:-11 107:25 108:-19 109:-9 110:-16 111:45 112:33 113:41 114:-13 116:-9 117:-8 118:-8 121:19 122:12 125:8
welcom	0:-8 1:17 58:111
^ welcom	58:111
welcom ~	58:74
as	0:-19 1:-25 2:9 3:-8 4:-8 6:-9 9:-16 11:-10 13:-17 15:-10 17:16 20:-9 25:-11 27:-14 28:-10 30:-8 31:37 32:-10 33:-19 36:-18 37:38 38:-16 39:-9 40:-11 42:17 43:46 44:-16 47:-12 48:-12 49:-12 50:21 51:48 52:-17 53:-21 55:16 56:8 58:62 59:52 60:-22 61:-8 63:29 65:-15 66:-14 67:13 68:-9 69:-13 72:-9 73:10 76:-8 78:-9 79:-11 81:-9 82:12 84:-15 87:-12 89:-12 91:-9 92:-13 93:10 95:30 97:-9 98:58 99:39 100:15 101:-9 102:12 103:-15 104:27 105:-8 106:-11 107:25 108:-19 109:-9 110:-16 111:45 112:33 113:41 114:-13 116:-9 117:-8 118:-8 121:19 122:12 125:8
~ as	58:18
as look	58:9
lead at	121:8
map==	59:63 60:-16
map	59:63 60:-16
^ map	59:63 60:-16
map uid	59:63 60:-16
uid uid	59:8
@person uid	59:9 60:-9
#n uid	59:16 60:-16
&#c#n@person	111:14
^ uid	59:27 60:59 65:-16
#c is	59:24 60:30 73:17 101:24 102:-10
to @person	12:13 15:9 59:45 60:-15 61:-9 63:-14 64:73 125:20
has uid	59:28 60:-20
is uid	59:30
in as	59:27 82:20 111:-8
as uid	59:40 60:-10
unmap==	59:-11 60:88
unmap	59:-11 60:88
^ unmap	59:-11 60:88
unmap uid	59:-9 60:60
uid $	59:28 60:21
is nobody	59:-9 60:51 65:64 113:-10
nobody $	59:-8 60:43 65:70 69:20 113:-10
take uid	59:-24 60:61
#c away	60:24
)~",
R"~(forget==	11:-14 16:-11 34:-30 44:10 47:30 53:-9 59:-11 60:36 84:10 86:19 112:16 122:25 123:81 125:-18
forget	11:-14 16:-11 34:-30 44:10 47:30 53:-9 59:-11 60:36 84:10 86:19 112:16 122:25 123:81 125:-18
^ forget	11:-13 34:-30 47:30 59:-9 60:30 84:10 86:9 122:25 123:81 125:-13
forget uid	60:23
chang person	61:46
person person	63:12
@person role	61:14
make @person	61:64 62:-8 110:15
@person a	29:12 61:35
a bench	58:-11 61:9 65:23 103:87 105:16 125:-17
@person lead	61:25
@person look	61:9 64:26
look now	61:15
a lead	58:44 61:31
lead now	61:26
is lead	61:15
renam==e	25:-11 32:-16 61:57 63:-12 99:78 101:-9 121:50 122:-17
renam	25:-11 32:-16 61:57 63:-12 99:78 101:-9 121:50 122:-17
^ renam	25:-11 32:-16 61:57 63:-12 99:78 101:-9 121:50 122:-17
renam @person	61:58 63:-12
@person to	61:65 62:-10 63:23 64:11
~ now	120:47
retir==e	14:-16 61:-8 62:105 63:30 86:27 125:-8
^ retir	14:-14 62:100 86:18
retir person	14:-13 62:47
has left	14:25 62:24
for good	0:-17 62:29 81:36 86:22 93:58 100:40 108:-9
@person left	62:44 63:-14
left us	62:16
us for	61:8
is gone	45:-8 62:36 63:-19 77:47 86:18 100:17
gone $	8:40 9:-23 19:-12 20:30 32:-10 57:15 62:26 77:32 122:17
@person doe	15:-8 28:-16 61:-8 62:27 63:-9 64:71 65:-9 107:-10 109:51
doe not	28:-15 42:8 47:17 53:10 62:35 64:-11 65:-15 73:-29 84:15 89:70 100:8 101:22 104:25 106:11 109:33 111:-21 113:13 114:22 125:-22
not work	28:-12 53:-9 62:36 101:24 109:31 110:46 111:-20 125:-19
here any	62:44 100:25 109:-17
retir @person	61:-8 62:26 63:58
return==	61:-15 62:-13 63:83 102:16
return	61:-18 62:-26 63:120 65:24 102:16 125:-9
^ return	61:-15 62:-13 63:83 102:16
return person	62:-8 63:54
is back	25:-19 62:-8 63:38 101:25 102:67 125:-8
here again	62:-16 63:44
has come	5:10 62:-8 63:39 98:13 117:43
come back	25:35 29:-10 62:-8 63:39
give job	13:-10 64:38 113:17 115:10 125:27
@job bench	64:9
#n bench	99:82
give the	64:16 104:21 115:14 120:19
give @job	64:22
to bench	64:13
to me	1:-11 8:9 12:10 13:-20 19:10 35:14 39:11 64:40 89:35
@job goe	64:10 114:21
goe to	64:32
is mine	26:-13 64:75 101:-12 105:66
@person build	64:32
build job	64:22
myself==	12:10 64:92 105:8 125:-10
myself	12:10 64:92 105:8 125:-10
@job myself	64:29
myself $	12:10 64:93 125:-9
#n myself	64:64
free job	29:-12 65:96
nobody doe	15:-8 65:70 125:-11
free again	38:31 40:-9 65:18 84:11
from everybody	65:38
everybody $	48:-11 65:70
take job	48:18 64:29 65:32 125:-8
off everybody	48:-8 65:32
take @job	48:24 65:31
@job off	48:40 65:14 71:13
^ count	8:45 9:21 31:-12 39:-9 50:-52 66:133 110:30 116:-20
morn wire	66:8
note==	33:-9 36:8 37:-10 41:39 53:13 59:12 61:8 87:9 95:12 105:17 108:29 110:15 121:47
stick #c	50:-12 66:36 68:-10 116:-13
note	33:-9 36:8 37:-10 41:39 53:13 59:12 61:8 87:9 95:12 105:17 108:29 110:15 121:47
mm stick	49:10
count==ed	8:10 30:9 50:-29 66:96 116:-10 125:16
count #d	66:35
ther is	0:-25 4:-9 8:-15 13:-10 22:-8 39:-10 47:10 50:-9 51:15 58:17 66:11 67:25 87:25 89:14 90:45 91:16 93:-14 94:40 98:41 99:20 100:22 101:9 108:15 113:16 120:16 125:37
is only	3:36 42:10 66:11 69:14 77:-11 87:-8 88:12 111:9
only #d	1:-12 3:-8 8:-8 42:40 66:42 88:8
the shelf	8:64 50:11 66:35
ther are	8:-11 50:-10 66:62 99:68
are #c	66:9 67:9 121:10
have only	66:27
only #c	5:-16 16:48 69:17
stocktak==e	50:-9 66:37
stocktak	46:-8 50:-22 53:42 66:98 69:-8 116:-8
^ stocktak	46:-8 50:-21 66:91
stocktak of	66:23
stocktak the	66:9
@wire #c	50:-10 66:15 116:8
weigh==	50:-12 67:58 68:12 125:14
^ weigh	50:-14 67:72 68:-24
beside #n	67:12
weigh==s	50:-9 67:31 68:34
@wire coil	5:34 9:25 19:18 32:-19 50:-22 67:78 68:-9
coil weigh	50:15
gram beside	67:11
@wire spool	67:11
spool is	50:31 67:-17 68:-11
beside #d	67:14 68:-8
spool weigh	67:8
roll==	50:10 67:10
roll	50:10 67:10
@wire roll	67:9
stick are	117:9
g with	50:18 67:-17
with its	24:29 50:16 67:-10
its spool	50:16 67:-10
spool of	50:16 68:-14
gram on	67:13
on its	2:-11 5:19 31:25
on a	27:37 30:-9 50:19 68:12 97:9 114:14
a spool	50:15 68:-13
g on	50:-10 67:-15 68:53
the spool	50:12
weigh==ed	50:-16 67:63
bare==	2:10 55:30 67:8 87:24 93:12
bare	2:10 55:30 67:8 87:24 93:12
bare $	2:10
coil is	50:-8 116:9
spool $	50:-19 67:44
without the	5:-16 21:30
without a	52:41 65:19
roll of	50:11
^ stick	43:62 67:18 71:16 73:30 108:-8
the coil	5:-8 8:24 9:-12 48:-8 50:-16 68:22 69:12 71:82 125:43
weigh @wire	67:48 68:-17
weigh the	50:-10 67:13 125:14
g beside	67:11
show #c	67:9
come to	9:-8 10:37 18:-11 19:8 31:-12 41:14 66:9 67:11 68:11 88:30
the scal	2:-11 4:39 50:10 66:-11 67:30 68:21 125:12
^ scal	67:32
scal show	67:15 68:-14
scal say	67:30
say #c	44:-8 50:12 55:28 59:12 67:-18
scal read	50:16 68:-11
read #c	51:-12 69:44
laid==	2:17 11:-9 16:-10 23:60 82:-10 83:19 84:-9 89:51 95:-10 108:22 125:11
laid	2:17 11:-9 16:-10 23:60 82:-10 83:19 84:-9 89:51 95:-10 108:22 125:11
^ laid	108:24
scal #c	46:14
laid the	82:-10 89:22 95:-9 125:16
put @wire	18:20 69:29
calibrat==e	67:-16 68:98
calibrat	67:-16 68:98
^ calibrat	67:-16 68:98
@wire division	68:14
ago wire	68:17
yesterday wire	68:9
g is	68:17
gram make	68:13
gram is	68:17
calibrat @wire	68:28
calibrat the	68:12
mm weigh	68:15
correct==	40:-8 69:136 88:-8 125:26
correct	40:-8 69:136 88:-8 125:26
^ correct	69:110
#d by	74:27 88:13
mm by	46:-10 85:25 88:9
correct the	69:26
mm becaus	69:27
in becaus	69:15
correct @wire	69:9
correct #d	69:16
from piec	36:28 70:46 71:-15
@job out	47:10 48:31 70:14 71:8 73:23 78:-9 95:11
from piece	70:14
#n up	4:23 65:-9 70:30 82:-8 91:53 107:33 125:-8
into #n	36:32 41:-9 70:-21 75:49 82:-18 96:10
cut #d	74:9
@wire up	69:13
up into	70:11
make slot	70:38 78:26
^ made	36:30 70:9 71:36 72:-12 82:10
made slot	36:-9 70:52 71:-17 78:16 82:-11
&#d#n#o@wire	36:-14 37:26
cut new	0:9 5:-16 71:33 75:-9 78:17
from coil	71:14
coil job	71:10
stick job	71:23 75:-8
@job stick	71:10
#o lot	73:15
the new	19:10 72:30 98:31
new stick	5:25 8:-8 9:-14 71:50 78:-15
of new	2:10 8:-11 19:-9 21:32 42:-8 71:58 78:-15
from new	5:-18 78:69
the stick	6:22 39:13 70:25 71:-16 117:16
of stick	5:8 71:20
off a	5:64 50:-8 71:11
coil $	5:27 8:17 9:19 19:17 32:-21 48:-8 67:16 68:12 71:79 125:-11
from a	39:12 71:31 78:-8
off stick	71:10
cut off	57:17 68:20 71:12
#n were	5:12 24:8 33:-8 36:-15 45:-10 71:9 96:17 97:29 117:9 125:21
#n was	0:-11 33:-14 36:15 37:-8 43:-15 44:9 45:13 77:36 91:-10 92:15 95:40 97:17 107:-12 108:16 119:13 125:-11
was all	117:38
was cut	78:21
@job count	3:-9 48:-9 72:44 78:-9 108:-9
#n plac	3:-8 72:17
plac ~	3:-10 72:23 108:-9
&#c#d#n@job@wire	72:13 82:8
pull @job	95:13
old==	0:-12 1:-8 2:-29 3:-22 10:-9 22:30 31:24 39:25 40:18 43:59 55:10 72:40 76:-13 78:122 82:-20 89:-8 91:36 93:-14 95:-9 96:-10 120:11 125:20
old	0:-12 1:-8 2:-29 3:-22 10:-9 22:30 31:24 39:25 40:18 43:59 55:10 72:40 76:-13 78:122 82:-20 89:-8 91:36 93:-14 95:-9 96:-10 120:11 125:20
old fret	2:-11 43:65 72:31 125:32
fret from	21:11 72:23 73:15 75:19 89:-9 125:28
#n old	3:-10 39:12 43:-8 72:64 78:31 79:-12
@job into	36:-10 72:37
from @job	72:39
pull slot	0:-13 72:65
fret==ted	73:33
with lot	73:23
fret job	41:-9 43:-12 73:19 93:43 107:18
take lot	73:26
is for	29:-8 37:28 40:13 64:22 65:-8 73:29 81:21
size==	0:8 4:-18 9:-8 74:78 88:27
size	4:-18 7:15 9:-9 32:37 74:77 88:27 120:-12
slot size	4:-18 74:78
#n bottom	91:10
#t slot	97:9
morn slot	96:13
size @job	4:-16 74:35
wide and	18:33 43:-10 49:10 74:11 88:11
and #d	2:26 18:18 39:17 41:-10 49:33 69:-8 70:-18 72:55 75:19 81:-11 82:-14 88:16 92:-11
deep $	18:-13 74:72 88:31 92:-8
in with	44:10 75:-10
a curv	74:20
curv bottom	74:17
bottom $	18:19 74:37 91:77
flat bottom	18:17 74:11
shift==ed	2:-17 41:-16 45:-8 61:8 75:169 89:-12 95:-9
one==s	0:40 2:27 4:-12 5:-12 6:-9 9:-15 12:34 14:26 16:10 17:38 22:72 29:-10 31:51 32:-12 33:-8 36:-13 40:-35 41:-25 43:-11 45:-17 50:13 62:8 66:-9 70:-18 71:10 72:-8 75:76 78:-8 80:8 81:55 82:59 89:-24 109:-10 111:9 112:-9 125:8
short one	41:-16 45:-13 72:-12 75:85 89:-19 125:31
one slot	75:17
one #r	45:-9 75:34 89:-8
one fret	72:-9 75:17
i mov	75:52
mov fret	4:-10 75:43
^ mov	75:59
shift fret	75:13
and put	72:-11 95:47
#o and	4:11 11:13 20:14 47:-12 70:12 90:35
)~",
R"~(^ board	13:-9 43:56 76:70 87:16 107:-11
board width	76:71
width job	42:-8 76:51
@job width	76:13
#n width	42:-11 76:32
mm width	85:17
wide at	76:50 92:-8
at #r	45:16 92:12
at nut	76:11 87:-8
nut $	76:30
the nut	0:17 4:62 13:-8 36:15 41:-9 46:20 72:-9 74:-8 76:38 78:-11 87:26
^ width	76:19 88:11
width of	3:-12 41:-11 76:41 88:31 125:8
the width	46:10 76:9 78:-10 85:10
board is	87:44 103:19
lost==	17:-8 33:41 41:-9 77:151 91:-10 95:-8 125:-9
lost	17:-8 33:41 41:-9 77:151 91:-10 95:-8 125:-9
^ lost	77:105
lost job	77:16
spoilt==	3:-9 77:97 86:15
spoilt	3:-9 77:97 86:15
^ spoilt	77:24
spoilt fret	77:8
lost slot	77:10
ruin==ed	77:113 81:45 91:10
ruin	77:113 81:45 91:10
^ ruin	77:57
spoilt slot	77:17
spoil==ed	77:65
spoil	77:65
is spoil	77:27
spoil $	77:32
lost $	33:44 77:56 125:-8
is lost	77:33
been lost	33:46 77:-19
got spoilt	77:14
spoilt $	77:13
damag==ed	77:39
damag	77:39
was damag	77:39
is ruin	77:18
ruin $	77:24 81:31
i drop	39:23
and we	121:14
can not	0:-8 8:9 23:11 65:18 77:62 81:14 91:29 101:68 106:-10 110:23 119:11 125:-50
not find	0:-8 77:66 91:53 125:-19
find it	77:19
lost fret	77:44
#n we	47:11 57:10 106:10 115:23
and i	14:13 16:-13 33:-9 44:11 66:11 72:-9 77:10 78:9 83:14 88:9 97:16
#n i	0:31 2:-9 36:-14 45:26 64:-8 70:9 72:44 82:16 89:-21 105:12 114:-8 125:25
@job we	114:12
#n can	1:-13 5:9 35:17 57:32 72:8 98:28 101:-10 102:12 106:25 113:9
fell==	77:40 111:17 112:-11
fell	77:40 111:17 112:-11
#n fell	77:26
fell down	77:16
down and	77:9
and is	25:9 40:16 77:17 102:17 124:30
floor==	53:19 77:19 101:10
floor	53:19 77:19 101:10
the floor	77:19 101:12
flew==	77:32
somewher==e	77:41 110:10
flew	77:32
flew off	77:23
somewher	77:41 110:10
off somewher	77:12
somewher $	77:41
vanish==ed	77:41
vanish	77:41
has vanish	77:34
vanish $	77:22
vanish somewher	77:19
#o has	77:17
i bent	40:8 77:11
bent fret	77:11
i ruin	77:19
ruin fret	77:22 91:17
brok==e	39:-16 49:12 101:56 108:55 125:24
brok	39:-16 49:12 101:56 108:55 125:24
^ brok	108:57 125:-8
find fret	77:25
remad==e	3:-13 41:-10 76:-8 77:-9 78:190 91:-11
remad	3:-13 41:-10 76:-8 77:-9 78:190 91:-11
^ remad	3:-8 78:141
remad length	78:12
old length	3:-8 78:27
@job old	43:65 72:-37 78:24
old tin	39:11 72:11 78:11
tin slot	78:11
old scrap	78:15
length $	4:74 7:14 22:39 82:-8 121:10 125:-10
remad fret	78:50
remad slot	78:36
make fret	36:33 42:-8 70:-21 78:20
@job over	42:-10 64:8 78:33
over at	78:25
#n over	16:24 72:-11 75:10 78:20 89:-8
i made	33:8 41:-9 42:26 43:8 45:14 65:19 70:-28 77:9 82:33 97:10
made new	78:12
new fret	0:-13 2:17 71:-26 72:29 78:75
cut a	1:8 71:-13 78:22 104:11
made a	65:19
and old	91:14
old one	0:12 27:9 72:15 78:10
the old	2:-10 27:8 31:13 39:10 55:11 72:9 78:33 121:8 125:28
one is	78:9
the scrap	40:14 81:25
goe the	86:12
into scrap	20:22 21:-18
is remad	78:34
remad at	78:26
was remad	78:13
remad $	78:43
handful==	3:-12 8:-21 22:-17 39:-34 41:-25 50:-22 66:-10 79:180 80:219 81:-9 82:-23 88:-11 92:-10 125:53
handful	3:-12 8:-21 22:-17 39:-34 41:-25 50:-22 66:-10 79:180 80:219 81:-9 82:-23 88:-11 92:-10 125:53
^ handful	39:-9 50:-10 79:66 80:52
~ count	98:14 120:-10
chuck another	79:10
another handful	79:31
handful of	8:-16 22:-8 39:-21 50:-11 66:-8 79:72 80:62 88:-8 125:57
handful piece	79:14
a handful	8:-8 39:-15 50:-9 79:68 80:18 125:16
chuck a	39:10 79:20
@wire the	18:10 51:19
of short	0:26 79:21
short in	79:28
i chuck	79:13 81:29 82:-17
handful short	79:22
the handful	41:-8 79:20 80:77 82:-13 125:24
handful $	79:46 80:19
chuck==	1:-16 38:-16 39:8 40:90 81:11
bit==s	2:14 7:11 8:9 9:-17 20:-8 21:9 22:83 23:23 79:39 80:-12 82:21 83:17 125:-13
bit	0:69 1:13 2:13 7:9 8:24 9:-16 13:-11 19:-16 20:-12 22:69 23:19 36:-18 39:-24 40:20 42:-10 66:-8 78:-9 79:35 80:-13 82:19 83:16 89:38
@wire short	79:39
toss==ed	40:43 78:36 79:8
toss	1:-9 39:11 40:42 78:36 81:35 82:-14 125:-10
^ toss	39:14 81:36 82:-14
i toss	40:43
toss a	39:18
short into	79:13
chuck #n	79:25 81:28 82:-17
@wire bit	7:13 79:19 80:-10 81:15 82:16
measur handful	41:-9 80:31
one_raw length	80:9 81:-9
handful #d	41:-9 80:17
measur that	80:20
that handful	80:20
handful is	80:23
handful has	80:12
was #d	92:10
mm out	82:12
several==	35:8 81:36 82:51
several	35:8 81:36 82:51
scrap several	81:43
scrap #c	81:13
mm one	40:-10 81:25 82:50
one $	2:26 9:-8 14:26 17:13 22:59 40:-19 62:9 81:44 124:11 125:26
s==	3:-8 36:-11 39:-8 40:-23 41:-11 70:-17 81:84 82:109 125:59
the #c	1:9 81:8
s	3:-8 36:-11 39:-8 40:-23 41:-11 70:-17 81:84 82:109 125:59
#d s	40:-12 41:-9 70:-15 81:59 82:54 125:60
&#c#d	49:14 53:30 82:19
s $	40:-12 81:55 82:-12
mm s	40:-9 81:31 82:32
s of	70:-8 81:42 82:35
in s	82:23
s becaus	81:9
bin==ned	22:17 40:49 78:18 81:16
one becaus	40:-15 81:20
in one	40:-10 81:19
out all	40:-16 81:41
scrap all	81:23
bin all	81:13
@wire bin	7:16 81:14
them $	2:-10 4:32 8:-11 10:14 14:-10 16:54 22:21 23:-9 25:-10 35:-9 43:10 45:-8 50:-9 66:10 72:10 74:8 75:-11 80:-11 81:29 82:-10 83:-11 84:16 88:11 96:10 98:35 100:21 117:19
@wire and	1:8 36:12 68:12 81:9
and bin	81:10
took out	0:13 81:12 95:14
of tin	82:25
tin bin	7:9
all #n	44:62 97:-10
#d piece	82:16
one of	82:24
use several	82:57
s in	82:9 125:16
in piece	82:16
piece for	79:22 82:11 83:24
used #c	82:42
one on	17:34 82:23
took the	72:9 81:-9 82:13 94:21 97:16
piece $	0:22 7:10 8:40 82:15
one out	27:9 82:10
s out	82:12
&#n#o@wire	1:12
go into	18:11 82:10
s go	81:-11 82:23
asid job	83:10
asid everyth	83:21
everyth for	73:17 83:41 84:10
asid all	83:10
asid what	83:10
is need	1:-9 5:33 23:-18 83:8
set it	55:13 83:8 104:16 125:-8
all asid	83:14
set everyth	23:14
everyth asid	23:10 83:19 84:-10
set all	83:14
it asid	83:14
keep everyth	33:-8 83:22
reserv everyth	83:11
everyth that	23:19 83:15 84:28 123:11
that for	68:13
hold all	23:-8 83:42 84:-18
everyth the	33:-8 83:29
plan take	5:-12 83:38
all that	11:25 23:10 83:45 84:12 123:10
that the	5:10 48:-8 53:17 93:24 101:11 102:13 108:33 114:26 124:-10
plan use	83:19
hold what	83:12
reserv what	83:8
put everyth	83:30 84:-11
put it	1:-8 23:9 36:37 37:30 39:8 42:24 50:12 64:12 67:-13 78:-9 95:32 108:-9 125:19
@job asid	83:17
put all	83:10
#n asid	23:-11 33:15 108:24
reserv all	83:50 84:-9
all wire	8:21 19:13 20:20 31:11
that job	48:32 73:13 83:22
wire that	50:10 83:8
that @job	0:-10 3:8 4:-8 13:10 23:-8 27:28 36:9 64:19 83:32 113:18
all piece	23:-8 84:32
the piece	70:-10 81:10 82:18
piece and	23:12 83:25 84:25
and wire	23:20 84:23
wire and	20:-13 21:23 84:17 120:9
wire of	9:9 107:28
let all	84:50
all go	84:52
let everyth	84:23
everyth go	84:9
go for	84:18
free everyth	23:-8 84:15
releas everyth	23:-8 83:-25 84:41
everyth set	23:-8 83:-23 84:32
releas all	84:21
free all	84:25 125:23
longer hold	84:21
hold anyth	84:45 125:-16
longer set	84:11
asid anyth	84:11
sole==	46:-51 49:-17 82:-15 85:113
rat==ing	85:45 86:-8 121:-9
defin bar	85:47 86:-17
sole	46:-51 49:-17 82:-15 85:113
mm sole	85:15
sole radius	46:-31 49:-13 82:-12 85:60
rat	16:-9 44:-13 55:18 85:67 86:-10 121:-9
~ rat	85:12
rat #c	85:22 121:-9
~ width	49:-9 82:-9 85:34 121:-15
#d sole	85:15
~ sole	85:9
#d width	85:9
in sole	46:-12 85:19
sole $	85:9
ladder==	85:12
ladder	85:12
ladder ~	85:9
rat==ed	44:-9 55:18 85:22
narrow==	85:13 120:18
new bar	85:28
flat sole	46:-26 85:30
sole flat	46:-20 85:25
narrow	85:13 120:18
x==	39:17 74:11 85:29
bar call	85:17 86:9 125:30
x	39:17 74:11 85:29
mm x	85:12
x #n	39:18
x #d	74:11 85:13
rat for	44:-9 55:18 85:15
defin the	49:11
#d x	74:12
narrow bar	85:10
^ bar	85:31 86:18
~ is	32:-9 55:-10 85:18 121:101
drop bar	86:37
bar name	85:9
remov bar	86:13
do no	86:10 100:14 106:26
longer have	86:19 100:51 122:-9 125:-9
have bar	86:9
i no	106:9
we no	57:9 100:8 120:-10 122:30
support==	87:9
cradl==ed	87:44
bridge==s	13:-10 87:84
head==	0:11 25:-8 87:100 125:14
support	87:45
press support	87:9
cradl	16:13 87:138 94:-31
cradl ~	87:8
bridge	13:-10 87:84
noth bridge	87:43
#n noth	90:26 91:17
#n cradl	87:12
@job noth	90:8 91:10
head	0:11 25:-8 87:100 125:14
head clear	87:18
glue set	87:23
body==	16:8 87:110 89:8 90:-13 107:-11
body	16:8 87:110 89:8 90:-13 107:-11
body from	87:14
)~",
R"~(in glue	96:11
taken out	72:19 75:-8 95:15
lie==s	3:13 8:27 22:14 41:-9 42:-9 67:9 72:-14 75:8 78:8 79:14 82:-10 87:22 89:25 92:47 94:-10 95:-10
bridg==ing	87:12
soft==	87:45
wood==	8:-10 22:28 87:49 90:50 95:-8
#n lie	41:-8 75:9 92:30 95:-9
bridg	87:12
head is	87:36
is clear	87:41
noth bridg	87:12
soft	87:45
wood	8:-10 22:28 87:49 90:50 95:-8
soft wood	87:42
cradl $	87:75 94:-15
neck==	13:67 17:-14 24:-9 25:-8 29:-15 43:-9 45:-8 48:28 76:9 85:18 87:28 91:-12 94:241 104:18 107:-12 113:-10 114:-10 115:-8 125:11
fresh==	71:37 72:-10 78:54 87:79 89:-8 91:-12 124:-14 125:-8
neck	8:-11 9:-10 12:82 13:66 14:-10 15:-11 17:-15 24:-9 25:-15 26:-12 27:-8 29:-17 33:-9 35:-9 43:-10 45:-8 48:28 55:-8 76:9 85:15 87:28 91:-12 94:239 98:20 104:18 107:-13 108:-8 113:-10 114:-10 115:-8 125:8
the neck	13:40 16:13 17:-9 85:18 94:49 125:10
neck of	13:39 16:13 17:-8 94:51 125:10
@job lie	3:8 4:17
fresh	71:37 72:-10 78:54 87:79 89:-8 91:-12 124:-14 125:-8
fresh glue	87:16
clear $	87:13
is $	41:25 51:-17 59:10 94:8 125:78
is noth	87:12
cradl==e	16:14 87:93 94:-27
the cradl	16:14 87:79 94:-24
longer cradl	87:8
^ head	87:28
head of	87:36
the head	87:20
touch==es	37:9 87:23 90:16
@job touch	87:14
touch $	33:18 87:23
#n touch	87:9
nut of	87:22
^ nut	13:51 15:-9 17:-12 41:-9 76:14 87:88 108:-17
in plac	54:15 108:19
plac $	1:18 25:14 87:9
the glue	20:8 57:10 87:44 125:-16
glue of	87:29 125:-12
set $	55:38 87:36 104:17 125:-11
glue on	87:36
^ glue	87:22 125:41
is now	0:-8 11:-14 36:18 47:16 64:27 96:15 118:14 121:18
wet==	87:9
wet	87:9
is wet	87:9
wet $	87:9
still fresh	87:53 124:-14
fresh $	87:55 124:-14
is soft	87:36
not set	87:14 125:-10
has not	31:53 47:-10 65:-8 113:-8 114:-16 125:85
dri==ed	48:31 125:-9
dri	48:31 125:-9
dri $	48:31 125:-9
^ fresh	87:14
glue under	90:-13 96:35
under job	87:38
^ noth	13:-8 44:-11 84:26 87:37 91:43 93:68 114:-18 121:16 125:41
bridge @job	87:26
bridge under	87:8
bridge the	87:27
bridge job	87:10
someth bridge	87:41
^ body	87:41 107:-11
body of	87:22
the body	16:10 87:8
#n begin	54:-9 107:49
begin from	87:8
body under	87:36
under @job	45:-8 87:12 90:35
no clos	87:15
clos body	87:27
body on	87:30 107:-10
#n after	0:66 6:10 45:16 93:-8 107:-14 114:36 125:30
no body	87:29
under it	87:10 90:26
noth under	87:22 90:8 121:17
unsupport==ed	87:31
unsupport	87:31
is unsupport	87:10
unsupport from	87:10
longer unsupport	87:13
unsupport $	87:22
not bare	87:8
not unsupport	87:9
support==ed	87:36
along==	2:27 13:23 16:-20 17:34 30:-10 32:-8 36:-10 40:-15 45:36 75:9 81:40 85:18 89:42 90:14 120:17 122:22 125:-23
is support	87:22
along	2:27 13:23 16:-20 17:34 30:-10 32:-8 36:-10 40:-15 45:36 75:9 81:40 85:18 89:42 90:14 120:17 122:22 125:-23
all along	2:11 87:8 90:16
along $	2:12 13:27 30:-8 90:16
support to	87:15
to its	87:28
support $	87:8
hollow==	40:-9 44:25 85:17 86:112 87:53 100:-17 125:-11
hollow	40:-9 44:25 47:-13 65:-11 85:17 86:112 87:98 100:-17 113:-8 125:-12
is hollow	87:18
hollow from	87:16
void==	2:-11 5:18 19:-9 21:24
void	2:-11 5:18 19:-9 21:24 87:11
void under	87:8
a hollow	87:8
hollow under	87:13
no hollow	47:-11 65:-8 87:54
hollow==s	47:-11 87:45
@job after	13:-8 48:32 112:-10 114:50 125:-15
hollow any	47:-11 65:-9 87:39
not hollow	87:13
hollow $	86:10
wood $	87:37 90:31
hard==	16:27 24:15 87:15 104:-12 120:10 125:40
hard	16:27 24:15 87:15 104:-12 120:10 125:40
is hard	87:13
hard wood	87:8
^ wire	8:8 9:70 10:26 19:38 20:32 21:-9 23:-8 31:-20 32:-11 49:11 50:22 66:-15 88:25 91:31 121:10
wire size	88:28
@wire crown	46:-14 49:-12 88:41
@wire tang	88:29
in crown	88:8
#d tang	42:10
high and	17:33 97:15
height of	88:28
deep and	49:14 88:11
thick $	49:14 88:34
^ tang	88:27 91:27
mm thick	88:10
barb==s	39:-8 49:13 88:105
barb of	18:9 88:21
the barb	18:9 88:73
has crown	88:16
@wire measure	88:20
mm over	49:10 88:19
over the	28:22 88:16 89:14
barb $	88:17
wire measure	16:11 88:9
over its	87:8
its barb	88:11
felt==	75:-8 89:25
^ read	8:19 89:21
felt	75:-8 89:25
felt rock	89:11
#n felt	89:9
about #r	89:12
held nutward	89:25 90:-9
#n about	89:11
pivot	45:-8 89:57
nutward to	2:19
straight==	0:14 3:-8 13:33 17:-11 36:-9 38:-8 39:10 41:24 52:39 82:-11 87:-8 89:22 94:110 95:-8 125:19
^ of	4:-12 9:-19 13:20 16:-13 22:60 45:-10 88:9 90:39 91:50 92:12 94:20 95:11 99:16 117:22
laid laid	89:8
is is	89:53
it it	89:10
it its	1:8
is are	89:29
is its	41:-8 77:-18 91:9 93:45
rocker laid	89:15
sit==s	14:27 15:-16 18:8 36:-8 58:10 75:17 78:-11 82:-11 89:62 91:26 92:46
sit	0:-9 2:13 5:-11 14:26 15:-11 18:40 45:-8 58:20 61:-8 74:-12 75:23 77:-9 78:-12 89:52 90:9 91:20 92:62 95:-12 125:-9
are sit	90:9
is sit	92:16
stay==s	5:-8 24:36 25:-8 53:21 85:10 91:12 93:8 101:10 102:17
#n till	52:19 109:-11 111:9
it lie	3:12 15:13
are $	2:-8 19:10 75:10
straight $	13:37 41:24 94:92
laid across	89:15
across $	74:14 85:19
thru==	92:25
@job trebl	17:19
thru	92:25
^ for	0:14 4:-17 5:-9 6:55 7:-13 9:28 11:-9 14:16 16:-13 17:-9 18:-9 20:-9 21:8 22:-13 27:-8 31:-8 35:9 37:-22 41:8 43:-9 45:12 47:-9 51:17 64:24 68:19 71:22 84:-12 91:39 92:8 94:11 95:8 96:12 103:46 104:29 105:-10 106:8 108:-8 115:-9 118:9
#n straight	13:52 94:-42
#n edge	3:13 42:-8
centrelin==e	89:13
center==	89:12
centr==e	89:12
centerlin==e	89:11
^ edge	89:9
wobbl	120:10
#n down	0:-19 17:-12 24:-10 36:25 41:-9 42:-9 44:84 45:-14 75:21 77:-10 92:56 96:-8 97:52
down the	17:9 77:12 89:38 108:26 125:-9
centrelin	89:13
center	89:12
centr	89:12
centerlin	89:11
along the	16:-14 17:42 32:-8 45:42 85:18 89:26 120:17 122:22 125:-20
string==s	15:8 120:19
across the	16:9 25:-13 41:11 42:-10 76:25 80:15 82:-10 100:26
line on	89:8
string	15:8 120:19
across #n	89:16
edge on	125:9
edge along	17:-11 45:17
teeter	89:24
#n along	36:-10 40:-15 45:31 81:41 89:-12
rock over	45:18 89:-8
over #r	45:12 89:16
rock==ing	45:11 89:10
rocker rock	89:15
line $	41:-15 89:17 92:47
between==	11:22 19:11 21:11 43:41 47:-10 52:-12 54:17 59:-15 60:16 72:-31 73:10 82:-14 89:30 90:36 95:-8 101:14 111:10
between	11:22 19:11 21:11 43:41 47:-10 52:-12 54:17 59:-15 60:16 72:-31 73:10 82:-14 89:30 90:36 95:-8 101:14 111:10
string along	120:19
solid==	89:52
solid	89:52
steady over	89:10
over #n	45:10 82:-10 89:50
not rock	89:16 125:-9
@job flat	13:-8 17:19
it sit	18:8 89:11
sit $	18:10 74:-10
^ middl	17:27
wobble==s	89:52 125:-18
around==	2:30 8:8 9:-8 33:33 81:10 89:39
wobble	89:52 125:-18
around	2:30 8:8 9:-8 33:33 81:10 89:39
around fret	89:16
straightedg rock	45:18 115:-8
tip==s	67:14 82:-10 89:21
nutward==	2:31 3:-20 16:33 75:31 89:64 90:-26
tip	67:14 82:-10 89:21
it tip	82:-10 89:21
held down	89:8
down nutward	89:17
#o down	96:29 97:13
#n flat	15:8
solid on	89:17
down toward	89:11
toward nut	89:20 90:-9
nut end	36:16 76:9 89:25 90:-8
rather==	2:8 4:9 125:25
littl==e	2:9 4:18 5:12 7:11 21:8 40:15 51:9 68:8 89:13 121:14
rather	2:8 4:9 125:25
is stand	14:-8 25:10
littl	2:9 4:18 5:12 7:11 21:8 40:15 51:9 68:8 89:13 121:14
bit==	0:74 1:18 8:15 13:-9 19:-9 22:-14 36:-17 38:9 39:-28 40:25 42:-8 81:-11 89:39 92:10 125:11
still is	125:17
it still	1:9
yes==	36:63 89:14
yes	36:63 89:14
^ yes	36:63 89:14
yes it	89:10
now is	89:9
solid $	89:34
is rock	89:10
now it	52:20
seem==s	121:9
look==s	0:-9 8:9 13:-21 15:28 19:10 43:-8 45:-15 64:23 89:118 94:11 115:-11
seem	121:9
#n look	13:-10 17:9 45:-12 89:100
reflection==	125:40
reflection	125:40
besid==e	92:15
besid	92:15
pivot==s	89:33
pivot on	89:30
^ #r	4:-16 18:-11 45:-12 89:75 90:9 91:45 96:14 97:9 125:-8
still still	13:-8 89:18
still bit	89:9
bit still	89:9
littl bit	1:8 21:11
bit $	8:12
bit proud	89:24
@job look	45:19
still $	8:14 9:-10
against==	13:-9 17:20 92:13 117:10
gap==	3:30 4:-10 42:-9 47:-9 87:-9 89:55 90:210 91:31 93:-13 95:-10 97:-8 125:10
hold it	17:10 89:23
it down	25:15 64:12 89:18 90:-9 125:-9
against	13:-9 17:20 92:13 117:10
gap under	89:38 90:30 125:22
under fret	89:13 90:-9 95:22
toward==s	89:8
beneath==	87:11 89:12 90:42 92:20
hold down	89:23
end is	89:9
is gap	89:8 90:25
beneath	87:11 89:12 90:42 92:20
gap beneath	89:8 90:12
beneath fret	90:13
bodyward==	16:20 89:43 90:-12
held it	89:13
down bodyward	89:16
)~",
R"~(it nutward	89:14
beneath the	87:10 90:31 92:10
gap below	89:31 90:-9
push	11:-8 16:10 17:-9 24:9 44:42 47:24 75:26 85:10 90:-12 97:-9 118:9
^ push	11:-8 47:24 89:10 90:-10
nut is	4:11
no gap	89:30 90:92
below the	89:14 90:14 92:25
nutward no	89:16 90:-12
push==ed	16:-19 44:43 75:27 90:-10 118:9
feeler==	74:13 89:28 90:14 92:26
feeler	74:13 89:28 90:14 92:34
nutward feeler	89:12
slip==s	19:8
slip	19:8 71:11
feeler goe	89:12
goe under	16:20
tight==	0:17 18:37 70:10 90:70 95:-8 125:-13
tight	0:17 18:37 70:10 90:70 95:-8 125:-13
tight on	90:44
^ gap	3:8 89:15 90:14
it held	89:8
held bodyward	89:26
when it	27:12 89:8 114:9 125:11
below fret	89:-10 90:42
whil==e	7:10 11:10 12:10 20:8 33:10 43:8 75:10 77:48 107:-8
whil	7:10 11:10 12:10 20:8 33:10 43:8 75:10 77:48 107:-8
#n whil	43:14
whil it	33:12
it was	1:-16 24:39 33:-15 39:11 40:17 53:-9 70:10 73:13 89:14 97:12 112:13 124:8 125:-8
was on	89:12 117:13
is along	89:12
rock==ed	16:15
pivot==ed	89:18
it pivot	89:29
crown gap	90:19
gap job	90:13
none	29:9 45:12 90:38 93:15 119:8
gap some	90:11
some job	1:-9 23:35 125:-10
gap $	90:88 125:-8
below crown	90:8
under of	90:12
crown the	43:17 107:11
the of	90:12
@job no	93:9
light==	17:10 89:16 90:67 98:15
light	17:10 89:16 90:67 98:15
#n light	90:24
light under	90:28
light below	90:20
^ light	90:15
noth beneath	90:22
has gap	90:16
a gap	90:16 125:25
have gap	90:12
under its	90:19
its crown	90:19
have no	100:35 101:11 122:11
way==	2:17 5:37 9:-16 31:81 87:9 90:19 100:10
way	2:17 5:37 9:-16 31:81 87:9 90:19 100:10
the way	31:25 87:11 90:20 100:11
way down	90:21
down on	16:23 89:-8 90:55 125:9
on board	90:27
caus==e	13:-8 91:101
caus	13:-8 91:101
^ caus	91:31
caus $	91:38
@job caus	91:8
no caus	91:36
wrong==	13:-12 17:25 60:10 69:46 77:-12 81:11 87:12 91:74 124:17 125:-8
wrong	13:-12 17:25 60:10 69:46 77:-12 81:11 87:12 91:74 124:17 125:-8
noth wrong	91:9
wrong at	91:31
crown #r	91:9
found==	0:-12 1:31 41:14 43:-8 48:30 69:11 90:31 91:64 119:10 125:-9
found	0:-12 1:31 41:14 43:-8 48:30 69:11 90:31 91:64 119:10 125:-9
found of	91:11
noth found	91:31
noth keep	91:31
#o up	91:8
shallow==	0:-8 91:102
shallow	0:-8 91:102
are shallow	91:11
shallow $	0:-8 91:95
too shallow	0:-8 91:39
is shallow	91:21
slot at	91:15
clog==ged	8:-33 9:-8 33:61 91:17
clog	8:-33 9:-8 33:61 91:17
clog $	91:17
dirty==	28:14 57:9 91:69
dirty	28:14 57:9 91:69
is dirty	91:64
dirty $	57:9 91:69
dirt==	0:-8 4:-9 36:-12 91:81
dirt	0:-8 4:-9 36:-12 91:81
full of	91:18
#n dirt	91:17
dirt at	91:8
@job glue	91:10
dust==	77:19 91:18
dust	77:19 91:18
bottom==ed	91:32
bottom out	91:53
bottom==s	0:-10 18:38 74:16 91:76
@job tang	91:9
tang bottom	91:66
@job bottom	91:16
kink==ed	40:52 77:29 91:54
kink	40:52 77:29 91:54
kink $	40:43 91:41
is kink	40:22 91:37
underbent==	91:44
underbent	91:44
is underbent	91:36
underbent $	91:44
under -	91:18
- bent	91:18
bent $	18:9 43:25 69:16 86:10 91:15
wire in	8:27 9:-14 120:-11 121:16
wire kink	91:8
too wide	91:24
in its	95:29
its slot	77:13 91:32 95:29
loos==e	0:-18 2:-11 4:-29 18:32 23:-8 60:11 75:-8 84:23 91:117 95:9
loos	0:-18 2:-11 4:-29 18:32 23:-8 60:11 75:-8 84:23 91:117 95:9
is loos	91:14
loos in	2:-10 4:-8 18:22
#n sit	89:32 92:15
too loos	18:11 91:12
loos $	0:-15 4:-14 18:11 60:11 91:80
are loos	4:-11 91:28
loos slot	91:8
slot in	0:-8 4:25 5:9
loos at	91:23
it bottom	91:23
badly==	113:11
is bent	86:10 94:9
badly	113:11
noth was	91:21
was found	41:14 91:28
found $	91:54
caus was	91:8
^ stand	25:19 92:51
low job	92:8
@job below	92:13
#n below	92:12
mm low	92:40
lower==	19:10 41:-15 82:-12 92:108 97:16
lower	19:10 41:-15 82:-12 92:108 97:16
in lower	92:33
lower $	92:61 97:16
in low	92:16
mm lower	41:-12 92:48
neighbour==s	41:-9 92:58
neighbour	41:-9 92:58
neighbour $	92:41
#d below	92:31
below its	92:17
its neighbour	41:-8 92:49
low by	17:-11 89:42 92:18
@job sit	2:-10 4:-8 18:22 92:10
sit low	92:10
#d low	92:14
neighbor==s	92:15
neighbor	92:15
neighbor at	92:15
it stand	13:53 16:-15 92:11
sit #d	92:31
^ last	41:-9 50:15 89:43 93:68 125:-11
last fret	41:-13 45:53 89:-11 92:9 93:77
ever==	1:-10 17:-9 22:16 33:32 55:10 91:-8 93:122 119:13 125:-9
#n #r	95:8
ever	1:-10 17:-9 22:16 33:32 55:10 91:-8 93:122 119:13 125:-9
last ever	93:8
ever of	93:11
is last	93:14
fret ever	93:10
ever $	93:38
ther will	93:31 112:11
will ever	1:-8 22:16 40:15
ever be	93:8
is #r	93:9
beyond==	40:11 47:-8 48:25 77:20 87:24 90:-9 93:83 125:-10
@job will	38:27 48:25
will be	4:13 14:-9 28:12 29:-34 53:17 54:12 58:15 75:-11 91:-9 101:38 110:-8 111:35 112:9 115:15 116:8 118:13 125:32
no more	38:-8 52:37 53:-19 57:36 86:8 93:77 100:20 101:-8 109:13 114:19 122:52 125:-21
beyond	40:11 47:-8 48:25 77:20 87:24 90:-9 93:83 125:-10
more beyond	93:34
beyond fret	93:21
are no	22:29 93:8
more fret	93:49
fret after	93:30
fret beyond	93:26
beyond #r	93:14
no fret	93:15
beyond slot	93:28
ever beyond	93:14
^ neck	13:-9 94:62
neck $	13:68 29:-13 94:57 104:16 125:-8
neck @job	94:13
is straight	13:-8 94:59 125:8
#n neck	13:-11 94:54 125:10
neck look	94:9
@job neck	13:-17 76:11 87:33 89:16 94:49
neck is	13:-13 48:41 94:8 125:14
neck straight	94:19
backbow	94:11
backbow $	94:11
bow==ed	24:-8 27:22 63:9 94:45
@job back	114:19
bow	24:-8 27:22 63:9 87:-8 94:72
bow $	94:22
back -	94:25
- bow	94:25
hump==ed	94:19
hump	65:-12 94:75
hump $	65:-11 94:54
is hump	94:17
hump==	65:-11 94:56
neck has	12:28 26:-9 94:17
a hump	65:-11 94:45
^ hump	94:9
hump in	94:13
in neck	94:12
relief==	13:-10 94:126 113:-8 125:-8
too much	5:10 16:10 42:29
relief	13:-10 94:126 113:-8 125:-8
relief $	94:73
a bit	35:8 36:-14 89:23 125:19
bit of	0:22 1:20 19:-14 22:35 39:-12 40:28 79:18 81:-14 125:-9
is bow	94:8
^ relief	94:9
relief in	94:54
straighten==ed	94:85
straighten	94:85
^ straighten	94:15
straighten neck	94:9
straighten the	94:31
straighten $	94:45
been straighten	94:16
neck was	94:11
was straighten	94:11
it straight	94:42
reseat==ed	1:-8 13:-8 30:-24 44:-14 46:-8 71:-10 89:-12 95:250 97:-12 118:-9 119:20 125:48
reseat	1:-9 4:-8 13:-11 30:-25 33:-9 43:8 44:-16 45:-9 46:-8 71:-11 77:-8 89:-14 91:-9 95:307 97:-20 118:-9 119:20 124:32 125:68
^ reseat	71:-8 95:99
reseat job	95:15
reseat the	15:9
reseat fret	95:10
pull and	39:-11 72:9 95:28
and reseat	95:22
shim==med	0:-13 4:-11 45:-8 91:-8 95:149
shim	0:-14 4:-12 36:-8 45:-8 77:-9 90:-12 91:-8 95:188 96:-9 97:-9
shim $	95:23
@job were	75:-10 82:13
were pull	39:-11 72:11
and shim	95:12
are reseat	95:22
reseat $	95:38
reseat at	95:27
&#n#o#t@job	95:10
#r anew	2:11 95:8
afresh==	95:46
afresh	95:46
#n afresh	95:25
afresh $	95:39
again @day	95:14
^ shim	95:57
shim #n	95:22
shim and	95:24
^ glu	96:123
glu @job	96:22
glu down	96:31
down fret	96:18 97:42
clamp==ed	17:-9 75:-9 77:-14 82:-11 89:-10 91:-8 95:-8 96:171 97:-12
clamp	17:-15 38:23 41:-9 75:-10 77:-18 82:-12 89:-12 91:-13 94:10 95:-13 96:230 97:-15
clamp fret	96:34
glu fret	96:22
glu and	96:36
and clamp	82:-10 96:73
clamp down	96:8
^ clamp	96:48 97:-8
clamp and	94:11 96:16
and down	96:8
down #r	101:8
are glu	96:8
were glu	96:19
is glu	96:13
clamp $	17:-8 77:-13 96:63
are clamp	96:10
clamp #n	96:20
is clamp	77:-11 96:28
levell==ed	2:-11 13:-13 16:-8 17:-15 24:-18 33:59 41:-9 43:-8 44:-10 45:-9 89:-11 97:255
^ levell	17:-9 27:25 33:-22 43:42 97:117 103:11
levell at	97:18 103:8
levell slot	97:21
levell the	97:13 107:18
levell down	97:14
levell fret	97:30
level==ed	91:-8 97:89
#r @day	97:17
levell $	13:-9 17:17 97:47
is levell	97:37
was level	97:24
level yesterday	97:24
were level	97:24
sand==ed	26:11 53:19 97:67
sand	25:13 26:8 30:-9 53:19 97:66 101:15 102:10 103:11 105:8 106:13
^ sand	97:33
sand fret	97:33
^ fil	25:-13 97:40 103:24
took fret	97:17
@job down	16:-10 44:11 77:11 96:12 97:10 108:30
setup==	98:37 99:80 104:-14 105:-12
minute==s	1:-15 2:-8 5:-10 16:-10 27:32 30:-12 33:-8 35:11 36:-16 38:-12 40:10 41:-8 45:22 50:-8 55:-10 70:-12 75:18 81:22 89:-9 95:-8 96:10 98:30 99:65 101:-8 102:10 103:-10 104:140 105:24 107:15 108:42 115:-14 120:-8 125:13
defin machin	98:51
setup	98:37 99:80 104:-14 105:-12
minute	1:-15 2:-8 5:-10 16:-10 27:32 30:-12 33:-8 35:11 36:-16 38:-12 40:10 41:-8 45:22 50:-8 55:-10 70:-12 75:18 81:22 89:-9 95:-8 96:10 98:30 99:65 101:-8 102:10 103:-10 104:140 105:24 107:15 108:42 115:-14 120:-8 125:13
)~",
R"~(setup minute	99:28 105:-9
minute #n	98:-10 99:23 104:12
#n name	98:9
~ setup	98:10
machin ~	56:-8 58:-10 98:80
new machin	58:-12 98:111
machin call	98:41
a machin	26:31 29:-8 35:25 98:34 99:-11 100:36
we now	52:12
add machin	98:35
chang machin	99:27
machin machin	98:-13 99:19
sander setup	99:17
#n machin	98:-9 101:11
#c machin	101:8
have #c	99:15 117:10
#c belt	99:14
#n press	16:73 44:28 99:55 125:-49
#c press	99:18
#n belt	99:11
#n sander	99:47 101:8 125:37
are enough	99:36
enough belt	99:10
enough sander	99:14
enough bench	99:12
min==	99:25 104:44 120:23
set up	1:-9 98:42 99:53 104:-24
up sander	106:19
sander take	99:11
min	99:25 104:44 120:23
#n min	104:46
min $	99:18 104:21
up bench	106:31
bench take	99:17
#n minute	1:-14 5:-9 27:-10 30:-10 35:12 36:-15 38:-12 40:11 41:-8 45:23 50:-8 55:-10 70:-12 75:18 81:22 89:-8 96:10 98:34 99:40 101:-8 102:11 104:109 105:34 107:16 108:44 115:-14 125:15
minute $	98:23 99:42 104:63 105:20
up press	106:10
up belt	106:13
take #c	99:18 121:9
#c min	99:19
set -	99:34 104:-11
- up	26:11 99:34 104:-11
min to	99:8
to set	98:15 99:17 104:-10
^ belt	25:-10 101:30 102:52
minute to	66:10 98:12 99:13
need no	99:50 103:-9
no set	99:31
bench need	99:16
no setup	98:14 99:13
setup $	98:26 99:18
call belt	99:13
sander to	99:44
press ~	99:39
renam press	99:25
call sander	99:28
sander ~	99:19
drop machin	100:54
no sander	100:14 101:23
sander any	100:17 106:18
no press	100:8 101:37
press any	100:32 125:-9
no bench	101:25
bench any	65:24 125:-15
no belt	100:10 101:24
remov machin	100:54
number==	0:13 1:-10 2:-15 3:26 4:-32 5:-29 10:-17 11:-14 12:-16 13:32 14:9 15:-9 17:-16 18:-10 21:-14 22:-22 24:-8 25:-11 27:-8 29:-23 30:-16 31:-9 33:-20 36:17 38:20 39:-11 40:23 41:-20 42:12 44:-9 45:55 48:-8 54:-8 55:-17 57:15 58:10 59:23 60:39 61:-8 64:34 65:33 70:59 71:-11 72:-10 73:36 75:-17 76:-10 81:-25 83:13 84:16 87:-11 89:-11 92:10 93:-10 94:-12 96:-11 100:-11 101:76 102:57 103:-10 104:-18 105:-12 106:31 107:21 108:-15 111:-20 113:12 115:-14 116:13 118:10 119:48 125:36
^ machin	25:-10 98:-10 100:-13 101:20 102:52
machin down	101:22
sander number	101:43 102:31
number #c	58:14 59:35 60:23 101:18
bench number	101:31
sander until	101:25
begin tomorrow	111:8
press number	101:31
#n number	97:21 101:9
yesterday machin	100:-8 102:12
sander #n	99:-17 101:75 102:49 105:-9
down from	101:9 111:19
till this	111:17
from this	10:16
number is	102:13
sinc #n	20:37 37:8 101:16 107:25
press brok	125:11
brok $	39:-14 101:40 125:21
number brok	101:22
brok down	125:10
going to	4:-8 9:8 11:-26 12:-26 29:70 39:-14 53:-9 58:10 65:-9 83:15 97:9 107:15 108:-8 112:12 125:41
be out	47:39 101:8 116:9
broken==	25:60 40:14 48:24 57:8 86:10 94:-8 99:-13 101:61 102:-16 107:-8 108:15 125:-9
#n will	3:-14 50:-12 91:-8 101:18 102:9 115:11 117:27 118:8 125:15
broken	25:60 40:14 48:24 57:8 86:10 94:-8 99:-13 101:61 102:-16 107:-8 108:15 125:-9
press will	101:15 102:9
be down	101:8
#t to	28:-8 54:20 101:20 105:16 109:15 111:11
all day	101:49 112:-9
day becaus	101:16
order on	101:17 118:-8
@day all	101:15
down for	26:34 36:32 55:11 105:11 112:10
all tomorrow	105:11
sander doe	100:10
work all	101:11
tomorrow morn	11:34 25:-9 26:29 101:12 105:37
bench #n	101:24 102:35 125:-9
sander next	26:17
all #r	101:8
sander all	105:11
be back	101:16
back at	16:-8 24:-38 43:-8 45:-9 101:9 107:72 125:58
back yesterday	101:27 102:-17
bench #c	101:28 110:-8
take bench	101:8 105:11
take sander	103:9
servic for	0:24 86:12
not use	5:10 101:50 110:-12
use bench	101:12 102:16 110:-10
till #n	52:13 54:26 109:-17 111:49
number $	13:-37 15:-8 125:87
machin up	98:-9 100:-12 102:54
is up	38:21 45:15 65:55 102:38
are back	95:9 102:20
work again	102:64
press work	25:26 102:17
again #n	102:8
#n work	58:-12 61:32 102:41
run again	102:33
number back	102:12
back into	102:22
into servic	102:22
sander #c	102:8
#n back	37:33 38:31 72:16
bench again	102:12
will stay	101:-8 102:34
stay in	25:-8 102:20
stay servic	101:-11 102:33
^ stag	103:50 104:34
stag machin	103:56
cut need	103:24
^ corner	103:41
level need	103:23
^ polish	25:-18 27:17 43:67 103:66
polish is	25:-15 103:34
seat need	103:22
usual==	9:11 52:-11 54:19 103:13 109:-16 111:54 112:26 113:73 125:-21
the need	16:19 75:-10
need its	84:19 103:14
usual	9:11 52:-11 54:19 103:13 109:-16 111:54 112:26 113:73 125:-21
its usual	103:14
usual machin	103:14
usually==	5:-14 27:58 103:9 104:13
need what	103:10
what it	1:-8 69:26 103:10
usually	5:-14 27:58 103:9 104:13
it usually	103:10
usually need	27:10 103:10
bend need	103:8
stag minute	104:24
minute stag	104:21
cut stag	103:11
stag recheck	107:9
bend stag	103:12
22==	104:28
^ doing	104:13
22	104:28
22 take	104:16
hour==	0:-8 16:-16 25:-10 26:-12 28:-17 29:39 35:-10 36:8 38:17 41:13 44:9 55:-9 67:14 70:26 72:18 77:23 82:15 95:14 96:10 98:11 99:20 101:17 102:11 103:-9 104:97 105:37 110:-8 125:-29
take us	27:24 32:-14 104:28
us an	104:8
an hour	16:-15 25:-9 35:-10 36:8 38:18 41:13 44:10 67:14 70:26 72:18 77:24 82:15 95:15 96:10 98:13 99:24 101:19 102:12 103:-9 104:46 105:38 125:-16
for 22	104:8
22 fret	104:12
quarter==	16:-8 39:11 70:15 95:8 98:15 99:36 104:-8 108:17
us a	50:17
quarter	16:-8 39:11 70:14 76:16 98:14 99:36 104:10 108:16
a quarter	39:11 70:15 95:8 98:15 99:36 104:-8 108:17
quarter of	16:-8 70:14 98:14 99:36 104:10 108:16
of an	16:-8 67:14 70:14 92:16 98:14 99:36 104:10 108:16
check slot	107:9
minute for	27:47
min for	104:24
half==	4:-9 13:-9 20:-10 23:-8 33:-10 35:-12 36:14 37:-12 39:-9 42:18 52:9 53:-13 54:18 55:41 67:21 68:8 69:22 70:-9 74:26 75:-13 77:27 82:27 84:8 88:20 95:-8 97:-8 102:15 103:-9 104:39 105:20 106:9 107:24 108:43 111:22 117:10 121:13 122:-8 125:-18
half	4:-9 13:-9 20:-10 23:-8 33:-10 35:-12 36:14 37:-12 39:-9 42:18 52:9 53:-13 54:18 55:41 67:21 68:8 69:22 70:-9 74:26 75:-13 77:27 82:27 84:8 88:20 95:-8 97:-8 102:15 103:-9 104:39 105:20 106:9 107:24 108:43 111:22 117:10 121:13 122:-8 125:-18
take half	104:18
half an	43:14 44:-13 75:-11 77:30 82:28 96:10 102:18 104:26 105:10
take an	104:11
true take	103:12 104:9
report==ed	11:-10 33:45 35:15 104:99
take as	104:21
as long	104:21
long as	104:21
report	5:-11 8:-9 11:20 12:-10 13:13 15:-8 16:-23 20:-13 21:14 25:-11 26:-9 27:17 28:-13 29:-24 32:-11 33:114 35:41 61:36 62:-13 63:-9 64:-8 104:142 110:-18 124:42 125:-19
is report	104:20
report $	33:24 35:16 104:82
been report	104:14
take what	104:50
was report	104:58
&#n#o#r@day	45:-10 115:23
book me	105:29
me belt	105:21
book press	105:19
for half	61:8 105:12
now for	105:16
&#o#r@person	111:16
book the	26:8 125:30
like==	0:-19 2:9 4:-10 9:9 10:8 13:29 18:9 19:10 23:8 29:13 37:13 53:-8 55:18 59:9 73:13 83:9 94:8 105:17 111:11 112:11 121:13 125:-24
we would	53:-9 105:8 112:18
like	0:-19 2:9 4:-10 9:9 10:8 13:29 18:9 19:10 23:8 29:13 37:13 53:-8 55:18 59:9 73:13 83:9 94:8 105:17 111:11 112:11 121:13 125:-24
would like	0:-9 13:22 16:-11 18:17 19:10 55:20 105:8
tomorrow afternoon	53:19 105:31
afternoon for	105:31
@person need	105:10
mine for	69:21
&#r#t	54:13 105:11
put me	105:35
me down	105:12
&#n#o@day@job	115:17
me on	105:28
i want	0:10 7:13 16:9 51:18 83:11 98:9 105:15 114:14
want belt	105:10
#r we	105:10
we want	9:36 10:17 32:-16 99:22
book==ing	16:-10 17:-8 25:18 26:80 29:-8 48:-12 100:-8 105:-10 106:205 125:63
cancel book	106:32
book #c	26:-9 106:11
book #n	26:-16 50:12 66:-8 106:44 125:60
#o book	106:22
cancel my	106:21 124:8
my book	106:15
book number	106:14
by @person	33:12 43:17 61:-8 64:9
my press	106:28
my bench	1:8
cancel it	48:12 106:46
cancel that	106:15
that book	106:27
i not	23:26 106:15 125:-15
free up	29:-15 60:14 83:-20 84:25 106:72
give back	83:-23 84:38 106:53
unbook==	57:41 106:149 125:-10
unbook	57:41 106:149 125:-10
^ unbook	57:41 106:149 125:-10
unbook press	106:29
sander today	106:14
unbook belt	106:13
^ start	13:-8 43:-13 46:9 52:20 89:-8 107:112 108:-8 120:26
start job	15:-45 29:42 33:56
@person at	33:18 64:16 110:21 111:-9
polish job	43:19
start==ing	43:-10 52:20 89:-8 107:95
am start	107:24
have start	107:18
start pull	107:14
hammer	17:-9 27:9 35:-9 77:63 95:29 125:43
are start	107:9
)~",
R"~(start to	103:10 107:54
the file	16:17 41:-9 97:30
bend of	43:35
start==s	58:15 87:27 107:-11 109:21
tang on	27:14
has start	103:10
has begun	43:-8 107:25
@person goe	111:23
went on	28:-9 29:-8 33:57
@job now	47:12 82:9 84:9 107:21
am now	107:13
#n now	1:-15 2:-9 3:-8 17:-9 29:38 38:26 39:13 41:-12 42:-10 43:-11 64:21 65:-14 70:-12 75:79 77:-14 78:8 85:13 89:-11 99:39 107:32 108:-9 125:-8
are now	74:9
dress==ing	13:-8 25:-12 27:17 55:54 103:16 104:27 107:80 108:18 125:-10
dress the	17:-11 97:13 104:12 107:33
am going	65:37 107:-17 108:16 125:10
are going	11:-22 12:-25 29:56 107:17 108:15
on true	107:14
we going	9:10
going on	29:14 39:13 93:11 107:29 108:-10
carry==	47:11 107:10
carry	47:11 107:10
resum==ing	107:53
resum	13:-9 43:-11 107:104
^ resum	13:-9 43:-11 107:104
resum @job	107:37
continu==e	107:14
continu	107:38
^ continu	107:38
continu job	107:29
resum==e	107:51
resum job	107:20
continu==ing	107:23
resum pull	107:23
is being	43:-15 65:-9 84:10 107:83 113:-8
being pull	43:-8 107:34
pull sinc	107:22
nip==ped	3:-8 39:10 42:24 70:15 77:27 107:14
being tru	107:35
tru $	43:9 87:-12 107:42
sinc yesterday	33:13
stop job	108:13
stop the	108:17
stop==ping	108:66
am stop	107:-12 108:34
stop work	63:13 108:60
paus==ing	43:-8 108:57
paus	39:-12 43:-16 67:10 79:12 82:-12 97:78 107:-20 108:168 125:-9
am paus	108:18
paus $	108:73
interrupt==ed	43:-10 107:-11 108:114
interrupt	43:-10 107:-11 108:114
work this	108:11 109:-32 111:47
are stop	108:19
tak==ing	2:9 5:-13 27:18 64:20 69:22 108:29 110:48
break==	52:40 108:54
tak	2:9 5:-13 27:18 64:20 69:22 108:29 110:48
am tak	64:21 108:10
tak a	108:40
break	52:40 108:127 110:-24 125:-8
a break	52:20 108:29
break $	52:20 108:54
hav==ing	3:12 43:18 47:10 62:19 108:11
hav	3:12 43:18 47:10 62:19 108:11
hav a	108:11
rest $	2:9 92:16 108:12 119:13
paus==e	67:10 82:-12 97:81 107:-11 108:92
a paus	108:10
are tak	108:16
stop pull	108:14
paus with	107:-10 108:44
^ paus	43:-9 82:-12 97:79 108:92
stop with	107:-12 108:36
i paus	39:-11 79:12
now #n	121:20
work with	63:10 64:27
have stop	108:21
stop on	77:16 108:16
stop at	43:-8 93:58
paus==ed	39:-11 79:12 108:19
lunch==	44:-17 52:20 107:-13 108:92 115:10 125:36
are off	108:21
lunch	44:-17 52:20 107:-13 108:92 115:10 125:36
to lunch	108:15
lunch $	44:-17 107:-13 108:93 115:10 125:40
am off	108:-10 110:63 125:-16
for lunch	108:43
^ out	0:-17 70:13 81:35 86:12 108:25
out to	41:-9 47:16 76:18 108:16
we out	8:54 9:-24
am out	108:9 110:16
^ lunch	108:46
^ break	108:71
the day	9:-9 14:-11 28:35 31:39 54:8 108:28
we done	10:-9 13:33 85:9 108:8
home==	0:-8 1:26 16:-20 43:19 44:30 48:11 54:10 63:8 95:24 108:56
home	0:-8 1:26 16:-20 43:19 44:30 48:11 54:10 63:8 95:24 108:56
going home	54:11 108:40 125:-8
home $	43:20 108:56 110:-8 125:9
call==ing	108:8
it a	30:8 102:10 108:60
off home	108:23
own==	2:-20 5:15 8:41 9:-13 28:-26 33:18 72:18 83:16 92:10 98:27 109:58
own	2:-20 5:15 8:41 9:-13 28:-26 33:18 72:18 83:16 92:10 98:27 109:58
^ own	28:-24 109:59
own hour	28:-23 109:57
@person hour	28:27 52:-13 105:-10 111:32
work @day	52:18 109:53 110:-15 112:-11
here @day	109:23 111:-11 116:10 117:-9 118:13
@day @person	28:-8 109:45 110:-12 111:21
work from	109:12
work shop	28:-15 109:32
shop hour	28:-23 109:43
work the	14:-11 28:20 109:10
whenever==	28:-15 51:10 109:44
whenever	28:-15 51:10 109:44
work whenever	28:-15 109:44
whenever the	109:16
whenever we	28:-10 109:28
^ day	45:11 53:-8 108:-10 110:33 111:27
off day	110:9
me ~	53:-8 110:11
part $	87:13
even last	53:-8 110:13
off this	110:17
ill==	28:-26 61:-9 62:-14 63:-12 110:61 125:72
ill	28:-26 61:-9 62:-14 63:-12 110:61 125:72
away for	13:-14 23:39 31:21
away from	60:22 81:13 110:27 122:13
out from	110:8
me off	110:10
am away	107:13
@person will	29:-9 109:-8 110:27 111:18
not come	42:-9 50:-13 73:-29 109:28 110:37 117:20 119:50 125:16
not be	48:10 53:-14 60:8 62:17 86:18 93:15 100:11 101:19 109:-16 110:63 112:14 118:15 119:8 125:-53
be here	9:-10 14:-9 28:47 31:39 109:-12 110:16 116:8 117:-13 118:35 119:-11 125:-20
tonight becaus	110:8
i will	4:11 11:9 16:-15 29:-18 36:56 43:-13 64:68 75:-10 94:-17 107:-10 108:-11 110:36 111:12 112:-13 114:-10 125:98
here #r	109:-12 111:32
morn off	110:13
week off	110:31
take @day	110:17
@day off	106:-8 109:24 110:44
off becaus	110:13
even off	110:9
get==s	0:-21 1:9 5:27 14:-16 29:-8 32:-11 33:-15 36:44 37:-15 39:13 47:19 65:17 73:12 83:10 93:16 125:85
#r off	110:15
come only	111:8 118:25
yesterday on	111:15
come from	1:-30 5:23 19:30 32:8 33:34 73:-26 125:38
in only	111:16
am in	111:22
goe early	111:8
leave==s	109:23
leave	109:23
@person leave	111:13
goe home	111:8
home early	111:8
leav==e	3:10 13:-12 33:-11 43:-16 48:-11 64:11 65:17 89:-8 108:59 109:-16 110:25 111:44 114:24 115:12 125:62
leav	3:10 13:-12 29:-8 33:-12 43:-16 48:-11 61:-10 62:33 63:-23 64:10 65:17 89:-8 108:59 109:-18 110:14 111:41 114:24 115:12 125:90
i leav	33:-10 108:12 111:35 125:35
leav early	111:22
go home	43:21 125:19
leav the	13:-8 43:-12 108:32 114:26 115:14
work only	109:-14 111:24
am here	111:11
today @person	62:12 111:20
tomorrow after	53:8 112:30
#o after	111:26
work next	28:30 29:-19
@day as	52:-9 54:-16 112:23 125:41
as usual	52:-8 111:49 112:26 113:70 125:-20
usual $	54:-8 109:-16 111:64 112:24 113:31 125:-20
december as	54:9
#r as	111:13
today as	111:25 125:-18
am not	82:-12 108:-12 110:-50 111:19 125:75
not off	108:-9 110:-64 111:43 125:45
reopen==	112:148
reopen	112:148
^ reopen	112:148
reopen day	112:34
day day	112:17
not clos	52:-11 53:-56 112:83 125:14
are not	28:-8 48:48 52:-10 53:-47 112:34 113:19 125:25
work day	112:21
day after	112:26
a open	112:17
open day	112:17
day again	53:-9 112:39
reopen the	112:39
reopen on	112:24
priority==	36:-11 37:-8 113:204 125:-12
priority	36:-11 37:-8 113:204 125:-12
^ priority	113:45
#n priority	113:23
priority #n	36:-11 37:-8 113:113
@job priority	113:19
has priority	113:15
priority #c	113:11
priority of	113:29
the priority	113:14
very==	87:12 113:31
very	87:12 113:31
is very	113:32
very urgent	113:15
goe first	113:11
#n come	1:-24 5:23 33:56 41:13 113:11 114:12 116:22 117:-13 125:-12
come first	113:19
@job come	5:16 73:18 114:22
@job first	113:29 114:21
#n first	113:18 114:17
priority $	113:39
important==	113:92
important	113:92
is important	113:11
important $	113:33
very important	113:17
rush==	13:-16 47:12 54:12 113:139 114:-8 125:-8
rush	13:-16 47:12 54:12 113:139 114:-8 125:-8
a rush	113:18
rush $	54:12 113:9
rush job	13:-12 113:92
top==	4:9 12:30 36:-10 37:15 41:8 49:10 71:9 75:-16 88:12 97:32 113:60
top	2:-11 4:8 12:30 36:-10 37:15 41:8 45:-10 49:10 71:8 73:18 75:-16 88:12 97:48 104:10 113:60
on top	12:30 113:61
top $	12:30 113:61
put job	113:17
a priority	113:17
hurry==	13:-12 47:14 113:95
hurry	13:-12 47:14 113:95
a hurry	113:40
hurry $	47:19 113:17
can wait	30:-8 47:12 108:17 113:90 114:-20
wait $	9:19 11:47 12:21 23:-10 31:-11 113:87 114:8
not urgent	113:45
no hurry	47:16 113:55
hurry with	113:48
urgent any	113:25
is as	113:8
@job as	74:10 113:46
#n as	1:-8 13:-10 17:-11 36:-12 37:46 42:39 43:59 93:16 95:45 125:-10
^ after	114:66
after job	64:25 114:52
other==	0:10 1:10 6:10 36:18 50:-12 83:-9 84:8 92:14 112:12 114:31 117:29 125:-20
more ~	93:-10 114:12
other	0:9 1:9 6:10 14:33 17:-13 36:18 50:-12 83:-22 84:26 92:41 112:11 114:31 117:36 125:-22
other job	83:-9 84:12
after @job	13:-11 114:65
must wait	114:19
wait==s	113:-8 114:74
#n wait	114:58
come after	10:-9 13:28 93:49 114:11
after the	0:-9 6:10 13:-8 15:29 45:16 114:23 115:29
goe after	114:22
#n befor	0:48 1:-11 39:11 114:20
@job befor	114:35 125:-10
befor job	29:18 114:37
befor @job	114:21
goe befor	114:8
come befor	113:10 114:13
is befor	114:23
then==	0:-17 1:11 3:-12 17:-8 27:10 29:11 41:-11 70:-9 75:30 82:-10 113:-14 114:71 115:14 125:26
then	0:-17 1:11 3:-12 17:-8 27:10 29:11 41:-11 70:-9 75:30 82:-10 113:-14 114:71 115:14 125:26
first then	113:-9 114:26
then job	113:-8 114:52
first and	114:19
and then	114:19
then @job	114:14
not begin	114:29 125:-9
begin the	114:15
not start	125:9
not wait	114:55 125:-9
need not	3:10 100:14 114:32 125:-18
)~",
R"~(^ look	0:28 1:-8 13:68 39:-10 45:27 89:-12 90:35 107:-8 115:49
look again	115:71
on yesterday	115:16
check @job	41:15
check job	74:10 76:-8 94:8 115:49 125:-11
check fret	41:10
to yesterday	115:9
delay==	58:14
delay	58:14 117:-8 118:48 119:17
delay the	58:14
@job until	37:14 114:17 115:22
put off	115:28
postpon==e	115:12
postpon	115:12 118:21
^ postpon	115:12
postpon recheck	115:8
@job till	114:28
i shall	115:26
shall check	115:17
^ yesterday	33:59 50:-17 74:10 79:11 95:15 97:12 115:9 116:18
yesterday i	50:-16 74:10 79:12 115:9 116:11
remind==	11:26 115:11
remind	11:26 115:11
^ remind	11:26 115:11
remind me	11:26 115:11
me of	115:11
@wire order	9:-14 31:41 88:-9 117:51 118:-20 119:12
order #n	10:-19 31:-9 40:-9 48:-8 50:-23 116:28 117:74 118:100 119:76 125:33
stick each	121:15
order #c	116:31 117:17 118:20 119:10
~ due	50:-12 116:26
@wire this	21:11
order a	50:-17 116:27
order #d	116:25
have order	116:12
order at	32:17 117:13 119:19
put in	0:11 36:-18 39:9 72:9 75:28 116:8
in an	30:9 116:9
put an	39:19
plac==ed	38:13 39:-20 50:-16 72:11 75:11 89:9 116:46
plac in	39:-11 72:12 75:11
^ arriv	117:17
arriv order	117:10
#n order	9:9 10:9
order is	31:-21 118:17 119:27 121:20
here in	120:17
order came	117:32
came at	117:11
has arriv	99:15 117:18
came yesterday	117:10
#n arriv	117:35
arriv in	116:10
~ came	117:21
here tomorrow	14:-9 28:24 110:11 118:27
~ arriv	117:16
~ has	121:16
arriv tomorrow	117:10
^ rest	31:-8 117:30 118:40 119:32 125:-10
rest came	117:11
rest is	17:-10 45:17 117:24 118:14 119:18 125:-9
stick have	117:22
have arriv	117:9
coil==s	8:9 12:10 50:13 68:12 117:13 120:30
coil came	117:15
came rest	117:9
rest come	117:12 118:9
other==s	14:33 17:-12 83:-13 84:18 92:27
come #o	16:25
came noth	117:9
noth more	117:17
more is	117:17
arriv noth	117:9
arriv and	117:25
and that	53:15 93:35 112:-9 117:27
come and	19:8 20:-8
rest on	117:12
receiv order	117:39
receiv the	117:24
got order	31:-8 117:23
got the	26:42 28:-9 29:-8 31:-12 36:27 41:12 82:8 102:37 117:35
the delivery	19:15 73:19 117:10 118:11
delivery came	117:19
came from	117:10
delivery is	117:33
delivery from	117:15
parcel==	50:15 117:82
parcel	50:15 117:82
a parcel	117:13
parcel from	117:18
^ parcel	50:16
us the	32:20 117:20
order promis	118:15
promis order	117:-8 118:23
com only	118:10
@wire will	5:25 8:-8 9:-15 118:24 119:10 125:-10
will come	42:-20 118:31 125:25
today now	118:29
december now	11:-10 47:20 111:21 118:14
instead==	18:24 36:19 47:49 54:27 109:-13 111:11 117:-10 118:55
instead	18:24 36:19 47:49 54:27 109:-13 111:11 117:-10 118:55
today instead	118:17
instead $	18:24 117:-9 118:56
@day now	47:30 118:27
tomorrow instead	54:11
#o now	118:16
@day instead	109:-12 111:13 118:19
com tomorrow	118:8
tomorrow now	118:22
~ will	118:19
com the	118:8
postpon==ed	118:21
is postpon	118:12
is mov	118:8
is late	11:58 29:-23 113:20
order was	118:9
was postpon	118:9
postpon until	118:10
delay==ed	118:56
was delay	118:20
delay until	118:27
#c was	60:8
delay till	118:8
is delay	118:36
@wire was	8:-8 20:24 21:-10 39:8 88:9 118:14
delay to	118:21
rest will	119:34
december instead	118:11
arrive today	118:11
#r now	75:21
~ ship	118:23 120:-12 121:14
deliver on	118:52
expect==	31:-8 67:14 68:-10 111:17 118:79 125:-8
expect	8:-31 9:32 19:-30 22:-8 27:10 31:98 50:-21 66:-15 68:-11 111:17 116:-15 118:76 125:35
^ expect	8:-8 9:38 19:-27 31:50 50:-18 66:-15 67:-8 111:17 116:-14 117:-8 118:76 125:35
expect order	118:21
expect the	118:44
@wire today	118:22
expect @wire	118:15
@wire next	50:-22 66:-19 116:-11 125:67
cancel order	117:-11 119:45 125:41
was cancell	53:-9 112:12 119:10
cancell becaus	119:9
be com	48:12 62:18
com becaus	119:17
not com	31:-16 62:8 119:63 125:-19
never==	1:20 28:-10 35:11 39:-11 48:17 50:24 93:51 96:-13 109:49 110:-20 111:-12 116:-17 119:13 120:10 122:23 125:90
never	1:20 28:-10 35:11 39:-11 48:17 50:24 93:51 96:-13 109:49 110:-20 111:-12 116:-17 119:13 120:10 122:23 125:90
will never	93:19 119:14
never come	93:10 109:25 110:-12 111:-8 119:14
come becaus	119:11
order will	119:11
pack==	32:47 85:-57 98:-30 120:54 121:21
defin supplier	32:-12 120:81 121:-8 122:-18
pack	32:110 66:-9 82:-54 85:-63 98:-31 120:123 121:97 122:-18
pack length	85:-25 98:-13 120:36
#d pack	121:10
~ pack	85:-25 98:-13 120:41
pack #c	85:-13 120:22
pack #n	82:-17 85:-18 98:-8 120:49
#n pack	85:-13 121:19
pack mass	120:9
mm pack	82:-12 85:-8 120:-15 121:41
g pack	120:32 121:-24
#c pack	121:11
minimum==	4:11 32:59 51:23 69:-10 117:-9 119:-11 120:-20 121:113 122:-13
minimum	4:11 32:78 51:23 69:-10 117:-10 119:-12 120:-31 121:112 122:-14
minimum length	4:11
#n minimum	120:23 121:-17
minimum #n	120:-17 121:22
minimum #c	120:8
in pack	32:8 120:43 121:-26
pack==s	32:63 66:-8 82:-54 120:68 121:76 122:-17
a supplier	120:76 121:-24
pack of	32:-9 82:-17 120:35 121:46
stick pack	82:-22 120:44 121:-16
pack #d	82:-12 120:41 121:-25
#d minimum	120:13 121:-13
day pack	120:-18 121:18
minimum of	32:19 121:20
coil pack	120:28 121:-24
supplier call	120:32 121:-14
stick minimum	120:-19 121:19
pack $	32:18 120:-18 121:19
add supplier	120:41 121:-38
minimum #d	120:-13 121:13
coil minimum	120:-9 121:9
week pack	120:-8 121:8
in minimum	120:-10 121:10
mm minimum	120:-9 121:9
new supplier	120:52 122:-8
can order	30:10 120:33 121:12 122:-16
from now	25:-9 29:-15 39:-10 49:8 52:23 53:-8 54:-10 55:65 57:13 58:35 61:29 99:24 101:-13 103:31 109:21 110:-22 120:22 121:17 122:-20
amount==	8:26 9:14 17:14 121:27
chang supplier	121:14
~ any	120:-14 121:12 122:11
amount	8:25 9:14 17:14 66:10 121:27
any amount	121:27
any pack	120:-10 121:10
pack ~	120:-10 121:10
lead of	120:-15 121:23
time #n	98:12 120:11
~ sell	120:-19 121:34
sell wire	120:-12 121:17
sell in	32:9 120:15 121:-8
deliver in	120:9
ship wire	120:-9 121:10
wire only	120:-12 121:15
only in	111:16 120:-14 121:17
deliver wire	121:10
only pack	121:9
^ pack	32:28 120:-20 121:25
pack from	120:-8 121:21
~ are	120:-8 121:26
the pack	120:-11 121:39 122:-12
pack at	32:16 121:12
~ hold	121:13
^ minimum	121:15
the minimum	32:30 51:23 69:-10 119:-9 121:26
minimum from	121:12
minimum at	121:9
^ lead	121:22
a year	22:12 121:26
year $	19:-19 20:48 21:54 22:9 62:-13 119:31 121:24 125:30
day now	53:-9 112:12 121:30
#c week	121:8
sell any	121:8
any length	121:10
deliver any	121:13
no minimum	121:29 122:-12
minimum $	32:36 121:10
drop supplier	32:-9 122:55
remov supplier	32:-8 122:37
anymor==e	48:31 121:15 122:23 125:-19
longer order	120:-10 122:41
anymor	48:31 121:15 122:23 125:-19
~ anymor	122:35 125:-8
anymor $	121:15 122:23 125:-9
we not	122:20 125:-8
forget not	123:25
forget what	34:-10 123:18
what you	34:-12 123:23
clear what	34:-17 123:28
delet==e	25:-10 32:-23 34:-32 55:-8 57:36 86:19 100:66 101:-8 103:-17 106:8 121:-9 122:55 123:55 125:-10
delet	25:-10 32:-23 34:-32 55:-8 57:36 86:19 100:66 101:-8 103:-17 106:8 121:-9 122:55 123:55 125:-10
^ delet	32:-21 34:-32 57:32 86:20 100:32 103:-14 122:41 123:55
clear all	123:13
clear sentence	34:-8 123:17
forget the	11:-12 47:30 86:9 122:27 123:11
delet sentence	34:-15 123:21
forget sentence	123:16
delet the	34:-10 57:33 122:8 123:21
undo==	25:-10 29:-10 30:-9 32:-11 35:48 53:-19 84:27 112:32 124:146 125:72
undo	25:-10 29:-10 30:-9 32:-11 35:48 53:-19 84:27 112:32 124:146 125:72
^ undo	35:-8 53:-18 84:28 112:32 124:141 125:-16
undo $	124:107 125:-14
take it	57:13 65:8 86:27 117:-9 119:10 124:37
it back	35:14 38:10 47:22 95:19 124:39
take that	104:8 112:9 122:14 124:24
that back	112:9 124:26
undo it	124:39
undo that	35:-24 124:8 125:89
take back	53:-18 112:43 124:33
last one	124:13
suit $	0:-8 18:70
lot $	5:12 7:14 19:44 23:22 24:18 38:-8 66:10 73:14 81:10 83:-12 84:119 125:-10
balanc $	20:49
measur $	0:-14 4:33 22:25 41:47 76:16 79:27 80:-10 92:-12 125:10
receiv $	35:16 50:19 104:20
extra $	52:-8 54:25
receiver $	56:39 57:47
weigh $	50:-8 67:15 125:43
new $	5:-9 71:21 95:16
size $	0:9 74:34 88:24
width $	76:19 85:10
several $	35:8 81:31 82:41
after $	10:-9 13:32 114:22
,==	0:36 1:12 2:38 3:29 4:8 5:21 7:16 10:11 12:23 13:-11 16:27 17:23 18:11 19:23 20:12 21:-11 22:9 23:10 24:11 27:45 29:22 30:26 33:12 34:-19 35:43 37:28 38:-27 39:34 40:-8 41:-18 42:17 45:14 46:69 49:71 50:19 51:-28 52:-22 54:42 55:11 56:21 58:67 59:-8 60:-21 61:-8 63:21 64:-30 65:-12 69:10 72:11 73:-28 74:-35 75:-15 77:22 78:17 79:40 80:30 82:-20 83:-31 84:-8 85:46 86:11 87:-10 88:-11 89:-33 92:-19 93:-43 97:13 98:40 99:-13 100:31 101:26 102:-16 103:-8 104:-8 105:13 106:-29 108:15 113:-29 114:-36 115:-31 116:16 117:15 118:-35 120:53 121:-9 123:-17 124:35 125:-45
)~",
R"~(,	0:36 1:12 2:38 3:29 4:8 5:21 7:16 10:11 12:23 13:-11 16:27 17:23 18:11 19:23 20:12 21:-11 22:9 23:10 24:11 27:45 29:22 30:26 33:12 34:-19 35:43 37:28 38:-27 39:34 40:-8 41:-18 42:17 45:14 46:69 49:71 50:19 51:-28 52:-22 54:42 55:11 56:21 58:67 59:-8 60:-21 61:-8 63:21 64:-30 65:-12 69:10 72:11 73:-28 74:-35 75:-15 77:22 78:17 79:40 80:30 82:-20 83:-31 84:-8 85:46 86:11 87:-10 88:-11 89:-33 92:-19 93:-43 97:13 98:40 99:-13 100:31 101:26 102:-16 103:-8 104:-8 105:13 106:-29 108:15 113:-29 114:-36 115:-31 116:16 117:15 118:-35 120:53 121:-9 123:-17 124:35 125:-45
#n ,	0:36 1:-27 2:29 3:10 4:54 7:-8 10:-16 11:-8 12:-8 13:35 16:-16 17:12 18:29 22:-31 24:28 27:-35 29:22 32:-8 35:-14 36:-34 37:-29 38:-15 40:21 41:38 42:-24 44:18 45:-8 46:-12 47:10 48:-38 49:-25 50:14 52:32 53:-16 54:-29 55:-12 58:-8 64:16 66:12 67:-9 68:-12 70:46 71:26 72:31 73:21 74:-21 75:18 76:37 77:11 78:-14 79:-13 80:45 81:30 82:15 84:10 85:-15 89:33 91:41 96:46 97:14 99:-11 101:9 102:-9 104:-25 105:-22 106:8 108:-36 109:-17 110:-8 111:30 113:-27 114:19 115:-19 116:-25 117:20 118:20 119:27 120:-47 124:-12 125:-22
, slot	0:44 1:-13 2:-21 3:-24 4:-45 13:46 18:-11 33:33 36:28 41:-8 42:-14 71:21 75:-15 76:26 77:-12 81:-9 82:50 90:8 91:35 95:-10 97:-16 107:42
, what	0:36 2:-24 3:-15 5:49 9:12 11:36 12:-11 13:43 16:33 17:-10 18:-15 19:-19 21:12 22:60 24:-15 30:16 32:-12 43:-10 75:19 91:-8 125:22
^ need	0:37 7:13 36:-8
a fret	0:15 2:-13 3:40 4:-11 13:56 35:13 36:-9 49:9 125:-13
- @job	2:-8 3:-11 5:22 6:-18 13:41 15:16 16:-15 17:9 18:36 23:8 24:17 27:27 29:31 30:25 33:27 36:-12 37:-10 38:-12 42:-22 43:10 44:-12 45:-27 48:28 64:19 71:-9 72:-9 73:13 75:18 77:-19 78:-12 82:-31 83:10 84:-17 87:24 89:9 90:-15 91:-11 94:12 95:-11 105:9 107:25 108:-8 114:30 115:-8 125:-19
a short	0:12 42:10
short #n	42:11
#n that	0:24 3:-12 15:-8 17:19 36:-9 39:9
?	0:89 2:81 3:203 4:143 5:63 7:20 8:97 9:118 10:54 11:109 12:160 13:120 14:108 15:195 16:144 17:108 18:136 19:128 20:29 21:110 22:154 23:108 24:105 25:104 26:145 27:122 28:152 29:109 30:142 31:132 32:126 33:120 34:-14 35:127 36:-69 37:-22 38:-47 39:-55 40:-65 41:-51 42:-80 43:-82 44:-80 45:-48 46:-24 47:-70 48:-44 49:-18 50:-30 51:-40 52:-19 53:-42 54:-36 55:-36 56:-10 57:-25 58:-33 59:-19 60:-14 61:-27 62:-36 63:-30 64:-65 65:-57 66:-58 67:-26 68:-19 69:-38 70:-33 71:-32 72:-36 73:-28 74:-47 75:-38 76:-34 77:-77 78:-35 79:-26 80:-38 81:-28 82:-23 83:-54 84:-43 85:-26 86:-63 87:-49 88:-39 89:-119 90:-35 91:-54 92:-44 93:-35 94:-68 95:-42 96:-26 97:-50 98:-24 99:-36 100:-31 101:-53 102:-45 103:-33 104:-41 105:-38 106:-56 107:-73 108:-53 109:-34 110:-65 111:-31 112:-38 113:-65 114:-52 115:-38 116:-32 117:-33 118:-41 119:-41 120:-25 121:-31 122:-26 123:-9 124:-60 125:89
would make	0:21
make a	0:13 35:8
inch==es	1:8 41:24 50:-12 55:60 68:12 85:23
@wire ,	0:48 1:51 2:-11 5:70 8:33 9:23 19:16 20:-40 21:-9 22:16 27:-9 32:-20 33:27 39:40 40:17 42:-14 49:15 50:-22 51:16 66:32 67:10 68:10 69:-29 72:-9 80:-14 81:8 85:-13 88:25 98:-8 116:29 117:-11 118:-11 120:-10 125:-22
, finish	0:18 31:11
finish length	0:17 4:11
inch	1:30 7:16 41:23 50:-13 55:60 68:11 76:19 77:-9 85:23 92:12 125:-10
#d inch	1:11
inch ,	0:17
, anyth	0:34 13:-8 17:38
which bit	0:26 1:-11 22:8 23:24
@job ,	0:44 1:-33 2:70 3:17 4:23 5:-24 6:-11 11:9 13:77 15:33 16:38 17:25 18:11 23:-14 24:-9 26:-8 27:-33 29:-33 30:-12 35:-8 36:19 38:8 39:-9 41:12 42:40 43:-9 44:16 45:-12 47:11 48:21 64:11 65:24 70:-33 71:13 72:11 74:-12 80:-13 82:60 84:-16 87:-27 89:-15 90:-13 91:20 92:28 93:25 94:-10 96:-11 97:22 105:-9 107:20 110:-9 114:-12 125:-28
slot ,	3:12 95:9 107:46 120:10
^ and	0:102 1:-10 2:-9 4:-19 8:39 9:26 10:-9 11:35 13:-27 14:-19 16:29 17:60 18:-9 19:-10 20:-37 21:70 23:95 27:107 28:-8 29:-19 30:35 31:-8 32:-18 33:-39 35:-8 36:57 38:-10 40:-10 42:-10 43:-16 44:-13 45:-17 47:23 50:-23 52:-9 54:-8 55:-9 59:14 66:38 70:29 75:70 81:-27 82:-30 83:-27 84:-14 85:-8 86:-27 89:-23 90:30 91:-10 92:55 95:-28 96:-18 97:-23 99:-11 102:-8 105:23 108:-9 114:-12 116:42 117:-9 121:-8 125:-11
same==	0:95 1:22 2:-11 4:46 5:-12 6:30 11:-8 13:31 15:-8 16:50 18:-14 20:-19 22:13 23:-23 27:-9 33:-12 36:12 37:-26 38:-12 39:68 42:-9 43:-40 45:-8 47:-11 48:-12 49:-19 59:9 64:-14 65:-11 73:27 74:74 83:35 84:-32 89:13 91:-8 93:-8 95:46 105:-9 107:-17 108:-13 109:15 113:44 114:-16 125:-14
same	0:95 1:22 2:-11 4:46 5:-12 6:30 11:-8 13:31 15:-8 16:50 18:-14 20:-19 22:13 23:-23 27:-9 33:-12 36:12 37:-26 38:-12 39:68 42:-9 43:-40 45:-8 47:-11 48:-12 49:-19 59:9 64:-14 65:-11 73:27 74:74 83:35 84:-32 89:13 91:-8 93:-8 95:46 105:-9 107:-17 108:-13 109:15 113:44 114:-16 125:-14
^ same	0:108 1:28 4:60 6:-35 13:-58 16:64 17:-11 18:-9 23:-20 33:-8 36:-12 37:-22 38:-9 39:70 43:-18 49:-18 64:-8 73:29 74:-13 83:47 84:-26 105:-8 107:-12 108:-11 113:70 114:-11
same for	0:51 1:-9 4:69 5:-8 6:34 13:62 16:57 17:-11 18:-10 20:-18 23:-15 37:-16 43:-23 47:-8 64:-9 73:-13 83:46 84:-25 107:-12 108:-10 113:56 114:-10
even==	0:38 1:16 125:-10
, even	0:38 1:12
even if	0:15 1:17 125:-8
nip a	0:22 125:-9
a lot	0:27 1:14 2:9 24:20 125:-12
lot off	0:22 125:-10
mind==	0:16 1:12 38:47 48:21 105:8 125:41
, never	0:11 1:12 50:8 116:-13 120:14
mind	0:16 1:12 38:47 48:21 105:8 125:41
never mind	0:11 1:11 125:58
the wast	0:14 40:16 81:12
, pull	0:33 72:-11 95:9 122:8
are fine	0:15 102:14
too $	0:27 1:8 2:29 4:-9 22:-8 44:11 58:40 75:-11 87:29 90:48 91:-8 94:9 96:8
includ==ed	2:33 31:10
any piec	0:41 3:-10 37:-8
, old	78:17
old pull	2:-9 39:22 72:-10
pull one	0:24 72:-10
includ	0:45 2:32 8:12 14:49 19:15 22:-11 31:16 33:-8 53:10 77:-8
includ $	2:33 31:10 53:11
, #o	0:12 3:11 53:15 65:28 77:-8 78:14
#o fret	0:52 3:15 17:-24 36:45 37:8 41:-8 42:14 45:-8 75:13 77:32 92:9 93:-16 96:10 97:15
fret ,	0:11 2:-15 17:-9 27:34 30:33 36:-10 37:14 46:43 70:13 72:21 78:-21 79:17 92:14
, is	0:22 3:18 8:18 17:10 18:45 43:-10 62:-9 63:13 77:-8
.==	2:22 3:29 4:-18 9:-11 10:17 11:-17 13:-33 16:-16 17:-23 22:-8 23:-19 24:-9 26:-16 27:-15 30:-19 32:-21 33:-18 36:22 37:22 39:16 41:-23 43:12 45:20 47:-13 48:9 50:14 53:22 56:45 58:9 64:-14 66:-11 69:8 70:15 73:-9 75:24 76:-8 77:39 79:12 80:-9 81:8 83:31 84:17 87:-13 88:-15 89:-39 93:-9 95:-16 98:19 99:-16 100:33 101:-22 102:10 104:-8 105:38 106:28 107:28 108:20 113:-9 114:-11 115:-13 116:-8 117:10 118:17 119:24 120:42 121:-22 122:8 124:12 125:-31
am on	0:9 107:41 108:-12
.	2:22 3:29 4:-18 9:-11 10:17 11:-17 13:-33 16:-16 17:-23 22:-8 23:-19 24:-9 26:-16 27:-15 30:-19 32:-21 33:-18 36:22 37:22 39:16 41:-23 43:12 45:20 47:-13 48:9 50:14 53:22 56:45 58:9 64:-14 66:-11 69:8 70:15 73:-9 75:24 76:-8 77:39 79:12 80:-9 81:8 83:31 84:17 87:-13 88:-15 89:-39 93:-9 95:-16 98:19 99:-16 100:33 101:-22 102:10 104:-8 105:38 106:28 107:28 108:20 113:-9 114:-11 115:-13 116:-8 117:10 118:17 119:24 120:42 121:-22 122:8 124:12 125:-31
#n .	3:-15 36:15 37:13 39:-9 40:9 42:10 43:-12 47:-12 48:-14 65:10 70:-13 75:32 77:55 79:21 80:10 82:9 89:-9 91:14 92:23 93:8 107:-9 108:39 113:-9 114:-13 125:-12
. which	0:20 1:8
dig==	0:12
dig	0:12 53:10
me out	0:29 8:19 47:-8 72:-9 110:30
out a	0:11 2:57 108:-12
drop==s	0:17 36:-8 51:23
a dress	0:15 36:-8
millimetre==s	0:38 3:30 7:25 18:21 39:11 40:-9 41:12 42:-9 49:10 55:48 66:-8 80:-13 88:15 92:8
, #n	0:62 1:-9 4:31 5:-14 7:44 13:-25 16:58 17:-29 20:-12 22:22 23:-11 24:-10 26:12 27:38 28:52 29:16 30:9 33:-23 36:-54 37:-42 38:-20 39:30 40:-19 41:-26 42:-26 44:26 45:58 46:17 48:-13 49:-11 51:29 52:-25 53:-19 55:-13 64:-8 65:-14 66:34 67:14 68:28 69:-8 70:-12 73:-13 76:-18 77:22 78:-26 80:90 81:50 82:34 85:50 88:-9 90:-22 91:12 92:-12 93:-50 95:13 96:-14 97:37 98:26 101:-24 105:28 107:-22 108:-10 109:-29 111:31 113:-13 114:-14 116:8 117:-23 118:-13 121:23 124:-9 125:-28
millimetre	0:38 3:30 7:25 18:21 39:11 40:-9 41:12 42:-9 49:10 55:48 66:-8 80:-13 88:15 92:8
#n millimetre	0:33 3:37 7:24 18:10 40:-8 55:28 88:20
millimetre $	0:58 1:-9 55:29 88:20
cm==	0:39 8:-12 9:-9 39:18 41:11 51:41 66:-8 67:-8 68:29 76:10 85:8 92:-9
cm	0:39 8:-12 9:-9 39:18 41:11 51:41 66:-8 67:-8 68:29 76:10 85:8 92:-9
#d cm	0:40 8:-12 39:23 41:12 76:11 92:-9
)~",
R"~(cm of	0:41 8:-12 39:16 68:12
, do	0:44 1:-16 3:26 8:-19 9:13 33:16 38:-21 40:8 69:-17 80:-8 101:14 125:58
have it	0:62 1:-9 8:-12 30:14 33:19 38:10 65:15 115:14 120:17
hand==s	0:21 15:20 64:21
hand	0:18 8:94 9:-11 13:-19 15:62 17:-8 23:-11 29:-12 31:-9 33:-11 51:12 58:15 64:44 66:15 69:31 97:10 107:-8 108:9
^ hand	0:21 64:8
hand full	0:21
, job	0:-17 1:-9 2:-15 3:16 4:-19 6:36 11:-8 15:-18 16:20 17:94 23:27 24:-8 27:13 29:-10 30:-9 33:-11 36:25 37:-19 41:-9 42:25 43:-26 44:34 45:22 48:-30 64:-8 65:-21 72:-11 74:-9 76:-9 77:-14 78:-9 87:-11 89:77 90:43 91:37 92:17 93:16 94:-8 95:18 96:21 107:-18 113:-18 114:-30 115:-10
replac==e	0:14 5:-10 71:-9 78:22
^ if	0:9 1:-12 2:-8 5:14 16:-20 25:11 27:10 29:9 30:19 36:-19 37:-9 89:-18 125:134
@job had	0:14
had to	0:9 5:-8 35:15 42:-11 43:-9 45:-8 72:75 75:-21 78:25 108:34
come out	3:10 5:30 20:41 42:-29 70:16 72:18 73:24 75:-20 82:-9 95:9 125:35
out ,	0:14 1:10 5:-9 14:10 20:22 65:18 95:10 121:9
replac	0:14 5:-11 30:12 71:-9 78:22
here ,	0:-8 1:15 35:17 39:11 45:10 115:14
, any	9:9 18:39 121:16
home for	0:-8 1:28
for it	1:12 19:8 20:-8 23:-11 37:-9 42:15 64:20 83:49 84:-18 106:14
is piec	1:16 13:-8 23:46 125:-9
tin ,	0:-16 1:19 5:-11 7:24 22:12 33:13 72:-8 79:40 81:9
, wher	1:67 3:18 4:20 17:16 20:13 36:-8 125:-9
would that	1:11 16:26
^ found	1:12
found a	1:12 119:11
, #d	0:-35 2:34 3:-39 8:-8 17:-11 18:-17 36:-11 38:-8 39:82 40:-13 41:62 46:-15 49:-16 66:-10 68:26 70:-11 72:36 75:-20 76:28 78:47 79:-8 80:83 81:-23 82:-9 88:44 92:-19 116:32 117:11 125:-10
, who	15:71 23:9 26:14 29:13 33:21 58:8 62:-9 63:13 125:-9
use it	101:9 102:11
take piec	1:31 23:12 37:-14
already==	1:19 2:18 3:-14 11:35 13:63 15:8 22:-8 23:11 29:-8 31:11 39:-9 42:24 44:-20 47:12 64:-8 107:10 118:28 125:-20
#d ,	0:-9 1:-12 2:52 3:77 29:-8 39:43 40:-9 41:-40 42:-26 46:-27 49:-9 69:31 70:-11 75:17 76:-8 78:51 80:108 81:-16 82:-17 85:-11 89:-8 92:-13 125:-15
already	1:19 2:18 3:-14 11:35 13:63 15:8 22:-8 23:11 29:-8 31:11 39:-9 42:24 44:-20 47:12 64:-8 107:10 118:28 125:-20
end already	1:23 3:-13 39:-8 42:25
already dress	1:13 3:-12 39:-8 42:25
raw==	1:26 3:20 39:19 42:18
a @wire	39:11 44:-9 50:11 67:-17 85:22
question==	0:-8 1:50 7:-39 35:76 36:-8 37:-8
question	0:-8 1:50 7:-39 23:-13 35:126 36:-8 37:-8 38:-8
for piec	0:-13 1:65 36:-9 37:-14 38:-12 69:12
sorry==	1:65 8:-12 29:-9 110:71
sorry	1:65 8:-12 29:-9 110:71
^ sorry	1:65 8:-12 29:-9 110:71
sorry ,	1:65 8:-12 29:-9 110:71
, it	0:-8 1:38 3:-45 9:-14 17:-20 18:-14 23:-11 30:-10 31:-10 36:-20 37:36 39:15 41:32 42:25 43:16 47:-8 48:17 50:-15 53:-11 57:20 66:17 69:42 77:14 78:30 80:-8 85:29 86:8 87:28 89:-29 91:-11 94:36 96:21 98:10 100:-8 101:21 102:13 108:-9 112:8 113:24 119:8 121:16 124:-13 125:-9
most==	1:22 2:16 5:24 9:-8 24:34 25:-8 55:10 124:33
go ,	1:10 39:11 62:26 63:-9
most	1:22 2:16 5:24 9:-8 24:34 25:-8 55:10 124:33
most of	1:9 2:8
it come	20:10 116:11 118:10
come off	1:22
i used	3:-15 35:8 125:27
used piec	0:15 33:10 36:13 37:-13 70:8 125:21
nearest==	1:10
, which	1:18 4:-10 11:-9 15:19 16:-9 17:18 18:12 24:35 26:20 32:31 33:10 89:-20 96:15 120:18 125:19
nearest	1:10
any slot	0:-21 1:43 18:-14
i've==	1:10 2:-15 8:-11 13:-12 14:11 17:-19 33:13 35:20 36:24 39:19 41:-8 43:20 44:17 48:-8 50:-25 64:10 72:-16 83:22 89:-11 96:23 97:17 107:34 108:23 114:-11 116:44 125:46
inch==	1:22 7:18 76:16 92:13
hand==	8:91 9:-11 29:-10 31:-9 51:12 58:16 66:16 69:31 97:10 108:14
i've	1:10 2:-15 8:-11 13:-12 14:11 17:-19 33:13 35:20 36:24 39:19 41:-8 43:20 44:17 48:-8 50:-25 64:10 72:-16 83:22 89:-11 96:23 97:17 107:34 108:23 114:-11 116:44 125:46
^ i've	0:-9 1:14 2:-13 8:-10 14:13 18:8 29:9 35:13 39:20 42:9 43:28 44:19 50:-17 64:19 72:-16 83:22 89:-8 96:24 107:-10 108:-10 116:36 125:22
an inch	76:17 92:13
inch and	39:11 55:20 76:17
and a	1:12 39:10 44:20 88:8 104:21
a half	44:20 104:22
half of	117:13
in my	23:10 25:-8 26:25
my hand	64:21 108:11
hand ,	66:10
or==	0:-16 1:10 3:75 8:13 10:39 11:-16 17:52 18:17 22:28 23:48 25:44 29:-10 30:-12 32:11 42:-35 43:-9 47:-14 50:-10 79:20 91:-8 101:-10 102:-8 104:-13 121:11 125:25
a slot	0:-14 1:45 3:-9 18:11
or	0:-16 1:10 3:75 8:13 10:39 11:-16 17:52 18:17 22:28 23:48 25:44 29:-10 30:-12 32:11 42:-35 43:-9 47:-14 50:-10 79:20 91:-8 101:-10 102:-8 104:-13 121:11 125:25
#n or	0:-8 1:19 2:10 23:33 50:-9 79:12 125:-10
or is	0:-10 1:17 17:21 18:15 23:33 25:26 125:-17
long .	1:15 3:15 50:26
wher $	1:43 2:12 13:30 16:19 17:-9 40:-9
to look	11:29 58:14 61:32 125:-10
tomorrow==	8:-9 9:-12 11:33 12:-15 14:-35 15:-11 16:-10 18:-12 23:-10 25:-28 26:61 28:97 29:58 30:-11 31:-12 32:-10 33:-13 35:-10 45:-11 47:22 53:44 54:29 55:-11 62:-10 75:-13 83:-8 99:-12 100:-11 101:18 102:-16 103:-9 105:59 106:12 108:-30 109:-12 110:38 111:39 112:17 115:55 117:-10 118:36 124:-15 125:27
^ everyth	11:31 33:41 52:-11 73:18
com month	26:10
recheck on	11:42 115:-8
ahead==	11:74 29:-8 36:24 37:-11 55:9 57:14
ahead	11:74 29:-8 36:24 37:-11 55:9 57:14
ahead $	10:8 11:63
any recheck	11:72
long have	4:-15 8:-9 9:17 11:75 27:-26
clock==	11:41 29:-14 62:11
clock	11:41 29:-14 62:11
the clock	11:41 29:-14 62:11
@job -	11:24 13:-9 16:66 17:-9 18:9 48:-10 114:-8
- promis	11:24 117:-8 118:23
when $	9:31 11:17 19:-10 25:-39 28:-26 29:63 30:22 31:21 33:29
day ,	0:-13 10:34 11:-8 13:9 14:-12 22:16 28:32 29:-16 53:18 55:14 62:38 103:17 113:11 121:-8
wise==	11:27 17:16
press ,	11:19 25:35 45:13 85:12 101:-13 102:15 103:17
wise	11:27 17:16
- wise	11:27 17:16
wise $	11:27 17:16
drawer==	1:-27 3:-8 7:8 8:24 9:-8 18:-9 22:38 39:55 42:37 50:-11 72:33 73:-9 79:51 80:-15 81:-8 125:21
@wire drawer	22:38
metre==s	8:13 9:-19 19:-13 21:29 39:-8 51:83 66:33 67:-20 68:14 69:44 79:-10 118:-8 120:12 121:18 125:-12
metre	8:13 9:-19 19:-13 21:29 39:-8 51:83 66:33 67:-20 68:14 69:44 79:-10 118:-8 120:12 121:18 125:-12
many metre	8:21 9:-15 19:-10 21:30
metre of	8:18 9:-16 19:-12 21:30 66:41 67:-18 68:18
meant==	0:31 8:51 9:-9 15:19 31:21 37:10 70:-13 125:12
no ,	0:26 4:-8 8:51 16:83 37:84 47:41 53:-12 54:-8 89:-17 100:-15 101:31 105:-9 110:-9 124:19 125:-21
, i	0:-26 1:-16 2:-12 3:-10 5:-8 8:48 9:-11 13:18 15:11 16:-13 17:-11 18:-11 22:-12 29:17 30:-14 31:9 39:-8 40:15 41:28 42:-8 45:-8 53:8 56:9 60:10 66:15 67:-15 69:15 70:12 74:15 77:16 78:14 79:11 85:10 87:9 92:13 98:-8 105:-10 108:12 110:-16 113:18 124:12
meant	0:31 8:51 9:-9 15:19 31:21 37:10 70:-13 125:12
i meant	0:31 8:52 70:-13 125:13
many bit	8:21 9:-13
lying around	8:9
around $	2:10 8:9
many @wire	8:20
@wire piece	0:8 8:50 19:-8 22:-8 23:12 79:38
put by	8:19 23:16 83:23 84:31
read me	8:20 33:12
what length	0:-16 4:68 8:16 22:-12 33:-8 82:-10
length of	1:17 3:-14 8:43 22:-20 39:-13 41:65 42:-12 69:19 72:11 80:11 82:-17
lie in	8:16 22:-11 72:-10 75:9 78:10 87:23 94:-10 95:-8
accord==ing	8:19 17:11 113:12 121:11
ther be	8:20
accord	8:19 17:11 113:12 121:11
accord to	8:19 17:11
to you	8:20
you $	8:20 35:12 38:20 73:10 114:27 124:9
pleas==e	3:-14 5:-10 6:53 7:8 8:75 9:-25 10:12 11:11 12:46 14:12 15:13 16:-14 17:31 18:-10 22:25 23:17 24:-12 25:12 26:18 27:-10 28:-22 30:-8 31:29 32:37 35:52 36:15 37:18 38:20 39:8 40:9 42:-13 43:-30 44:-12 45:-17 47:-12 48:22 50:-11 52:-9 54:-8 55:14 57:51 59:13 60:24 63:-8 64:-16 65:12 66:-8 70:-8 71:-10 73:12 76:-10 77:-13 78:-14 79:-16 80:-10 82:-13 83:-13 88:-10 89:-9 90:-11 91:-15 92:-8 94:-8 98:-10 99:-10 103:-9 105:-19 106:12 107:-10 111:-10 113:-10 114:-9 115:11 117:-9 118:-12 120:-9 124:22 125:-45
wire on	8:27 10:9 50:28 120:17
on hand	8:91 9:-9 29:-23 31:-8 51:12 66:16 69:31
pleas	3:-14 5:-10 6:53 7:8 8:75 9:-25 10:12 11:11 12:46 14:12 15:13 16:-14 17:31 18:-10 22:25 23:17 24:-12 25:12 26:18 27:-10 28:-22 30:-8 31:29 32:37 35:52 36:15 37:18 38:20 39:8 40:9 42:-13 43:-30 44:-12 45:-17 47:-12 48:22 50:-11 52:-9 54:-8 55:14 57:51 59:13 60:24 63:-8 64:-16 65:12 66:-8 70:-8 71:-10 73:12 76:-10 77:-13 78:-14 79:-16 80:-10 82:-13 83:-13 88:-10 89:-9 90:-11 91:-15 92:-8 94:-8 98:-10 99:-10 103:-9 105:-19 106:12 107:-10 111:-10 113:-10 114:-9 115:11 117:-9 118:-12 120:-9 124:22 125:-45
pleas $	2:-11 4:-11 5:13 6:66 7:26 8:75 9:-17 10:27 11:-13 12:54 14:16 17:11 18:-10 19:-11 20:23 22:23 25:12 26:13 27:-9 28:-13 29:24 30:-12 31:15 32:56 35:44 36:17 37:-16 38:14 39:9 55:-12 57:17 58:-17 60:19 62:-13 63:-11 65:17 72:-8 73:13 79:-11 83:-17 84:-15 91:-8 98:-17 100:10 101:-8 103:-8 105:-8 107:-15 108:-16 109:-8 110:-11 117:-11 119:16 122:-15 124:-10 125:-18
)~",
R"~(we left	5:9 8:-14 9:14
put on	9:33 10:-11 16:19 17:-11
wire order	9:29
@wire we	8:-11 9:18 12:-8 23:23 31:-11 51:20 82:13 119:26
, or	3:21 8:15 22:13 25:-8 125:19
or should	3:10 9:13
get more	9:13 93:18
ring==ing	9:39
ring	8:8 9:38 113:12
supplier ,	9:36 10:24 32:15 120:39 121:-8 122:-11
get us	9:15 21:-8
^ shop	9:48 23:-10 52:13 54:-10 70:48 82:-21 96:-8 112:10
for wire	6:-9 8:28 9:33 10:31 23:-14 28:-13 29:-8 31:25 35:-10
many more	8:-18 9:32
situation==	9:65
situation	9:65
situation $	9:65
eat==	5:23 8:-15 9:8 51:8
eat	5:23 8:-15 9:8 51:8
eat $	5:24 8:-15 9:8
pass ,	16:37 55:10
, @job	4:36 13:-18 15:-8 33:32 36:-15 37:16 38:25 41:16 43:49 44:-10 47:11 75:-11 76:8 89:-8 90:29 107:-9 108:35 113:-11
how hard	16:27 24:15
hard do	16:27 24:15
whol press	16:31
press schedul	16:35 29:36 105:-10
lb==	5:-18 16:24 44:39 55:93 85:40 125:16
kilo==s	16:12 44:-11
go to	5:10 16:12 44:-12 81:12
kilo	16:12 44:-11
the hollow	40:-8 44:31 86:69 100:-11
hollow bar	16:10 44:29 86:24 100:-10
re==	2:69 63:37
re	2:69 63:37
to re	2:19
re -	2:69 63:37
load $	5:-8 16:24 24:55
ram==	3:-19 16:62 25:-8 101:22
, if	42:8
ram	3:-19 16:62 25:-8 101:22
the ram	16:34
ram stand	16:26
trebl==e	4:-9 16:26 17:71 24:-8 45:16 89:39
@job side	16:-8 17:11 89:61
lean==	16:11
lean	16:11
, how	2:24 4:-9 5:35 8:51 9:-11 13:42 16:36 17:-8 19:-13 24:-10 25:18 27:33 29:-10 32:23 35:25 44:-20
and how	2:-8 4:20 8:10 16:16 19:9 20:9 27:-24 32:41
much $	8:44 16:11
the short	2:12 4:-12 16:57 42:-12 44:42 85:22 125:38
short bar	4:-12 16:51 42:-11 44:53 85:19
^ pass	16:26 44:10
, the	0:-9 2:-13 3:-10 5:-9 11:23 12:33 16:19 17:-28 18:-17 19:-11 20:-13 23:22 26:-9 27:9 28:-8 29:-19 30:-19 32:-8 39:-8 40:-14 43:-11 44:-14 45:38 46:10 47:48 48:21 50:33 53:17 55:-9 65:16 67:-29 68:-15 69:17 70:-9 72:-23 73:-10 75:8 77:23 78:24 84:23 87:-14 88:22 90:-8 91:-12 93:10 94:17 99:-19 100:-17 101:59 102:15 105:-12 106:-9 110:-10 112:-14 115:-10 117:35 118:8 119:18 121:11 122:-14 125:42
reading on	17:21
the edge	16:-15 17:18 42:11 45:41 89:32 92:9
edge next	17:34
, next	16:22 17:21 28:26 30:25 110:-8
?==	0:-9 1:21 7:8 22:21 29:10 43:9 125:-9
^ good	102:14 118:10
good enough	0:-8 3:20
enough to	13:-8 17:22
to call	13:-8 17:22
how doe	2:8 5:9 9:-8 13:40 16:-9 17:13 27:-15 29:-14 35:95
look ,	17:15 45:40
line of	17:20 92:13
^ whol	8:-9 14:34 17:27 25:-8
so==	0:-12 1:-23 2:52 3:-31 6:-12 9:-18 10:-11 11:-8 13:18 14:19 15:-14 17:43 19:14 27:-16 29:-9 30:-12 31:-8 32:-8 33:9 36:10 39:15 41:19 42:-10 43:-10 44:-16 45:-15 48:25 50:-20 54:-10 57:20 58:11 59:10 64:14 65:8 67:-9 68:16 72:-21 73:39 75:8 78:-15 82:8 83:20 85:-14 87:12 89:-27 90:-9 98:-23 99:34 103:8 104:-10 105:-11 106:12 109:-9 110:-10 112:24 115:13 116:8 117:-20 118:13 119:19 120:-10 122:9 125:-44
culprit==	17:56
so	0:-12 1:-23 2:52 3:-31 6:-12 9:-18 10:-11 11:-8 13:18 14:19 15:-14 17:43 19:14 27:-16 29:-9 30:-12 31:-8 32:-8 33:9 36:10 39:15 41:19 42:-10 43:-10 44:-16 45:-15 48:25 50:-20 54:-10 57:20 58:11 59:10 64:14 65:8 67:-9 68:16 72:-21 73:39 75:8 78:-15 82:8 83:20 85:-14 87:12 89:-27 90:-9 98:-23 99:34 103:8 104:-10 105:-11 106:12 109:-9 110:-10 112:24 115:13 116:8 117:-20 118:13 119:19 120:-10 122:9 125:-44
^ so	17:56 36:16
so which	0:10 12:10 17:51
which #n	6:11 17:47 51:19 89:-18 125:30
culprit	17:56
any low	17:56
low fret	17:31
rock==	16:-10 17:73 45:-9 82:-12 89:53 93:-22 125:34
did #n	17:69 89:-25 125:-22
sunk==	13:-9 17:55 89:47 93:-10 125:-9
sunk	13:-9 17:55 89:47 93:-10 125:-9
or not	3:18 17:20 125:-11
not ,	17:20 25:14 65:-11 94:29 112:10 124:-9 125:-27
#n been	15:20 17:14 33:44 77:-25
been levell	17:17 107:18
ther still	8:9 9:8 17:17
tell us	13:-8 17:18 35:16
span next	17:30
verdict==	13:-10 17:46 24:-9
verdict	13:-10 17:46 24:-9
what this	26:-9 28:-10 29:47
sander==	9:-9 11:-15 12:-10 13:-9 14:-16 17:-11 22:-8 23:-9 25:47 26:112 27:-9 28:-23 29:20 30:-9 33:-19 35:-16 38:-13 43:-9 45:-11 47:-8 48:-20 53:-12 54:-11 55:-10 57:-12 65:-12 77:24 84:-8 87:-9 91:-8 98:-17 99:40 100:76 101:90 102:101 103:92 104:-20 105:76 106:90 108:-13 109:-10 110:-18 111:-12 112:-9 113:-8 118:-8 125:22
@job get	5:18 13:19 28:-11 29:32 73:15
turn==	11:-9 23:-8 29:38 48:27 84:24 101:11
^ plan	2:8 5:28 29:30 103:20 104:11
agenda ,	29:64
happen==ing	29:41 33:-10
is happen	29:41
on my	1:8 12:-8 29:24
still want	13:28
not done	13:14 108:12 125:-11
#n yet	13:14 15:17 125:43
- what	0:45 13:14 35:-13 125:-8
bound $	13:37 27:11
fan==ned	13:31
squar==e	13:31
fan	13:31
, and	0:-20 3:-12 4:11 5:-12 8:-25 10:47 11:-15 12:-10 14:10 17:-18 20:14 21:-14 23:9 25:-14 27:-27 28:10 29:41 31:21 32:11 33:39 35:-9 36:-8 40:12 42:-10 44:8 45:24 46:-11 50:15 53:9 61:9 66:15 67:9 72:-8 75:19 78:28 85:-10 87:22 89:-17 91:-8 95:-13 96:-10 99:15 102:8 117:-11 121:12 122:-9 125:-8
squar	13:31
, put	36:53 42:16 50:13 62:36 63:-13 69:14 72:17 78:-8 98:21
it in	1:-8 36:28 37:14 39:28 42:26 72:-15 95:13 115:23 125:19
pop==ped	24:14 36:25
pop	24:45 36:25 39:10
^ pop	36:25
used the	0:-16 3:-12 36:20 125:37
&#d#o@job@wire	36:55 76:13
:==	1:-19 2:12 7:-9 8:15 9:-22 10:-10 12:-11 13:-10 14:-9 15:11 17:-38 19:8 20:31 23:-18 24:16 26:-11 27:-14 28:-10 29:-21 30:-16 31:-10 32:-16 33:-11 35:-8 37:-27 38:-23 39:16 41:12 42:16 43:-30 44:-13 45:39 46:14 47:-22 48:16 49:12 50:37 51:-9 52:56 53:-15 54:-16 56:35 57:-8 62:39 63:-24 64:-29 65:-20 66:27 67:28 69:22 70:-20 71:23 73:29 74:14 76:29 77:25 78:-25 79:-8 81:10 82:-13 85:12 86:-12 87:-13 88:29 93:8 96:21 98:17 99:41 100:-10 102:-13 103:32 104:8 105:-25 106:-10 107:23 108:-14 109:-16 110:-9 111:30 112:-8 113:-18 114:-19 115:16 117:-33 118:23 120:25 121:32 125:-49
:	1:-19 2:12 7:-9 8:15 9:-22 10:-10 12:-11 13:-10 14:-9 15:11 17:-38 19:8 20:31 23:-18 24:16 26:-11 27:-14 28:-10 29:-21 30:-16 31:-10 32:-16 33:-11 35:-8 37:-27 38:-23 39:16 41:12 42:16 43:-30 44:-13 45:39 46:14 47:-22 48:16 49:12 50:37 51:-9 52:56 53:-15 54:-16 56:35 57:-8 62:39 63:-24 64:-29 65:-20 66:27 67:28 69:22 70:-20 71:23 73:29 74:14 76:29 77:25 78:-25 79:-8 81:10 82:-13 85:12 86:-12 87:-13 88:29 93:8 96:21 98:17 99:41 100:-10 102:-13 103:32 104:8 105:-25 106:-10 107:23 108:-14 109:-16 110:-9 111:30 112:-8 113:-18 114:-19 115:16 117:-33 118:23 120:25 121:32 125:-49
#n :	0:-19 1:-11 2:9 3:-18 4:17 11:23 13:12 15:15 16:21 17:-12 29:-25 30:-9 33:-12 36:18 37:-12 38:-10 40:11 43:-20 45:19 48:-8 64:-8 65:-9 69:37 70:-14 71:-8 72:17 73:28 74:-10 75:-15 76:27 77:45 80:-22 81:-11 82:24 90:11 95:-21 96:22 97:17 107:32 113:-9 114:-12 115:-17 118:12 125:-13
ago==	1:-9 3:-11 16:-19 33:-9 38:13 40:10 43:13 44:31 45:31 67:14 70:18 72:16 75:21 77:21 81:28 82:11 89:-10 92:-8 95:11 96:24 97:13 99:-13 101:24 102:36 104:-34 105:-8 108:41 115:-12 125:-22
#n an	36:10 41:15 75:19 97:12
yesterday==	1:-12 2:-13 13:-9 17:-10 19:-8 31:-8 33:71 37:-10 38:-8 39:12 40:38 43:19 44:13 45:-11 48:-9 50:30 66:14 68:15 70:10 71:20 72:15 73:8 74:8 75:-15 77:22 78:17 95:50 97:14 107:-9 115:-9 116:11 117:12 125:17
put piec	1:8 23:-11 33:33
^ piec	0:-9 1:15 23:-9 33:-15 36:33 37:8 38:18 40:54 69:41 70:64 75:-12 81:-9 82:-16
that #n	23:10 36:28 40:-10 52:-8 86:10 97:8 99:30 118:32
is ,	36:34 87:13
, in	10:-16 13:23 15:9 20:8 27:27 36:31 54:9 98:14 116:8
in it	4:28 36:32 40:-8 98:14
it goe	36:31
goe $	36:33 121:16
get piec	0:-18 1:11 36:46 37:-14
set piec	37:29
might==	1:16 15:-9 33:-11 36:-31 48:-12 58:23 85:8 119:-25 125:142
later==	36:-32 68:13 108:30 111:9 125:31
might	1:16 15:-9 33:-11 36:-31 48:-12 58:23 85:8 119:-25 125:142
later	36:-32 68:13 108:30 111:9 125:31
#n later	36:-32 125:36
later $	36:-32 108:30 125:34
did anyon	26:9 33:40
and wher	1:-13 16:21 17:-9 20:12 25:-11 29:8 33:17
did it	1:-9 5:8 20:9 43:46
tin :	0:15 2:-9 39:30
: #d	1:-14 3:25 18:-9 36:-12 38:-9 39:27 40:-14 41:56 42:-29 66:51 67:14 68:-10 69:16 74:13 76:36 92:18
^ into	79:13
, @wire	1:-16 6:29 7:19 8:-14 9:-12 18:10 21:54 22:24 23:-8 39:58 46:14 49:21 50:-26 66:23 68:-8 69:-13 79:-10 116:-11
#d and	2:32 3:8 39:14 41:-11 42:13 70:-8 71:-9 72:53 75:12 80:-10 82:-13
mm ,	0:-9 3:33 5:11 16:-10 18:-9 39:52 42:23 50:-10 69:27 74:27 76:-13 79:-11 85:10 88:-12 92:-13
)~",
R"~(, drawer	22:-11 39:14 72:16 79:22
drawer #n	1:-25 22:-12 36:-21 39:59 42:37 50:-11 72:37 73:-8 78:8 79:72 80:-15
toss==	39:16 81:36 82:-14
"==	18:12 39:17 41:16 74:12 79:-8 80:33 88:11 92:9
#p	0:33 7:13 16:-18 22:-10 35:-15 36:-12 39:12 40:-14 41:96 42:11 44:16 70:56 71:17 77:39 78:15 79:-8 80:12 81:-15 82:-12 92:11 95:22 125:-15
#n #p	0:-8 1:14 39:18 41:49 77:-8 80:17 125:-8
"	18:12 39:17 41:16 74:12 79:-8 80:33 88:11 92:9
#p "	39:18 41:24 80:17
&#p	0:33 7:13 16:-18 22:-10 35:-15 36:-11 39:13 40:-12 41:96 42:11 44:16 70:38 71:18 77:39 78:16 79:-8 80:12 81:-9 82:-12 92:11 95:22 125:-15
&#n#p@wire	1:14 39:18
, #c	5:31 16:-44 44:66 46:25 50:43 55:26 66:15 67:22 68:-19 85:22 116:-8 117:-10
#c mm	1:-16 3:-8 5:18 8:-13 16:-12 39:15 41:-8 42:11 44:-11 46:25 49:11 51:53 55:-18 66:24 67:-22 68:45 69:76 72:-8 78:-11 85:16 87:37 88:-9 116:13
, goe	1:15 39:18 40:-8
left over	1:24 19:-11 20:35 21:-8
end ,	27:19 30:9 38:20 39:13 41:21 42:9 62:19 78:-13 80:14 82:-11 87:11
@wire :	1:-8 7:11 8:14 21:15 33:16 66:24 67:22 68:9 69:9 80:-8 88:37 116:-12
, into	39:15 42:12
tin pleas	39:15 79:-8
a bent	39:9
#n across	85:16
, radius	39:8
radius #c	39:14 80:16 82:-10
drop a	39:23
^ another	39:56 71:-9 78:22 79:-17
another #n	39:56 79:-17 93:10
a nip	39:10
nip #n	42:10
, tang	49:27 77:16 88:-9
i've a	1:13 39:10
tin with	42:12
add the	120:19
, all	4:48 5:17 8:-8 9:45 11:-11 13:-15 14:-8 17:-8 19:21 20:9 23:-8 29:43 31:9 44:11 45:18 49:-11 67:9 70:21 71:-13 72:16 83:-12 84:10 101:9 105:27
just==	3:-11 4:-14 12:14 14:-10 16:-11 17:31 25:46 27:8 29:-19 33:-8 35:-16 36:9 39:-8 41:-8 42:19 43:28 44:25 50:25 66:15 67:-8 68:19 79:8 96:8 97:22 107:16 108:-9 111:9 116:-9 124:80 125:-19
just	3:-11 4:-14 12:14 14:-10 16:-11 17:31 25:46 27:8 29:-19 33:-8 35:-16 36:9 39:-8 41:-8 42:19 43:28 44:25 50:25 66:15 67:-8 68:19 79:8 96:8 97:22 107:16 108:-9 111:9 116:-9 124:80 125:-19
^ just	17:31 44:30 68:13
just press	44:21
pound==s	27:-9 44:37 55:21 75:-11 85:28 86:-8
, short	16:-8 44:11
bar ,	16:11 44:29 85:16 86:22
gaug==e	44:22 55:59 125:44
done ,	8:-8 9:18 16:-8 27:8 43:24 44:48 47:10
gaug	44:22 55:59 125:44
the gaug	44:29 55:14 125:47
kn==	44:17
press with	16:-13 44:31 86:21 100:-9
kn	44:17
night==	14:-13 33:-12 44:18 125:50
night	14:-13 33:-12 44:18 125:50
last night	14:-13 33:-12 44:18 125:50
night $	14:-13 33:-12 44:19 125:50
squeez==ed	16:-9 44:26 110:12
squeez	16:15 30:23 44:39 110:12
^ squeez	16:-8 30:16 44:25
down again	16:16 44:25
the long	8:8 9:-11 16:12 70:14 85:10 86:32 94:8 125:37
long bar	44:17 85:10 86:20 125:39
#n done	13:-12 15:31 40:17 43:19 71:21 114:28 125:-18
#t ,	52:8 54:15 109:12 111:-15
lbs==	44:10
lbs	44:10
have not	22:15 94:-16 107:-9 110:-9 125:110
not press	86:18 100:-9
mark==	3:-20 4:46 16:26 29:-8 42:18 43:16 51:22 62:28 63:-15 83:15
and when	9:19 15:-10 26:9 33:52
trebl ,	89:8
stick==ing	17:38 45:-15 77:-10 89:71 91:-18 125:-10
stick up	17:38 45:-15 77:-10 89:71 91:-18 125:-10
look sunk	89:55
look high	17:-11 89:46
, rock	45:-8 89:30
rock ,	17:-9 89:12 90:-9 125:32
, nut	46:27
end held	89:8
held ,	23:44 84:18
, gap	3:9
the same	0:-8 4:-12 6:65 13:92 16:-12 17:13 20:-17 22:14 43:-18 59:10 74:89 83:-12 89:17 109:15 113:-26
no rock	82:-12 89:61
at all	0:25 3:-15 8:8 9:-20 10:31 13:19 14:20 17:17 21:8 24:-37 25:-10 26:12 28:28 29:-8 31:-12 33:13 35:12 36:-8 37:-9 43:-11 45:-16 47:14 50:-9 66:12 84:-11 89:14 90:25 101:-10 110:11 111:-9 112:14 113:17 125:34
around #n	89:24
quick==	8:11 45:-13 89:32
^ had	42:-8 43:-9 45:9 72:55 78:9 89:10 108:34
had a	89:14
quick	8:11 45:-13 89:32
a quick	89:19
quick look	8:12 45:-13 89:32
, #r	2:26 4:41 20:24 52:-22 54:35 71:25 109:12
last #n	4:21 45:-10 89:34 93:21 98:12 104:15 124:46 125:-11
hang==	6:8 37:30 41:-19 77:-10 89:-10 125:70
. .	89:-16 125:18
hang	6:8 37:30 41:-19 77:-10 87:38 89:-10 125:69
hang on	37:30 41:-19 77:-10 89:-10 125:70
on ,	15:16 57:17 61:14 87:10 89:-9 96:11 125:9
, not	36:23 39:-10 50:14 79:27 89:-9 90:9 91:-8 103:12 111:13 115:13 116:-10
not laid	89:-9 125:17
it #n	15:-8 17:19 99:14
came back	45:45 63:11
back up	24:34 45:48
none==	29:9 45:12 90:36 93:15 119:8
had my	45:18
my #o	45:18
#o look	45:70 89:10 91:-8 115:28
, none	45:21
percent==	5:13 29:-9 45:33
percent	5:13 29:-9 45:33
#n percent	45:33
percent humidity	45:13
, fine	3:34 80:-8
%==	45:30
sprang ,	45:26
%	45:30
#n %	45:30
: #n	0:-23 3:-11 8:-10 16:-9 17:-15 39:-13 45:11 50:52 52:23 54:-13 67:23 70:-13 71:19 72:14 75:17 79:-8 80:28 81:29 82:-24 88:9 89:20 93:29 95:16 97:-11 99:57 104:15 115:11 117:-8 118:10 125:-8
ago ,	41:15
, noth	45:24 87:10 93:12 97:9
morn==ing	11:40 12:-10 25:-9 26:25 28:-12 29:37 33:-9 40:14 41:13 43:11 46:-9 50:16 53:30 71:8 74:13 76:-10 95:14 101:13 105:60 106:-8 109:-10 110:38 111:-14 112:-11 115:16 117:14 125:-17
morn ,	45:10 46:-9 50:18 53:21 87:8 110:20 115:21
all good	19:17 45:12
edge rock	45:35 89:-19
lift==ed	1:-17 24:27 33:-8 38:8 40:-8 44:-10 45:92 84:31 112:40
overnight==	13:-8 45:105
lift	1:-18 16:-9 17:-10 24:80 33:-12 40:-8 43:-9 44:-12 45:85 84:29 95:32 112:67 114:34 115:-9
#n lift	1:-16 45:92
overnight	13:-8 45:105
springback==	24:29 45:64 93:-36
springback	24:29 45:64 93:-36
#n recheck	17:-8 45:12 115:34
recheck :	115:16
, rest	117:22
foot==	49:21 68:20
foot	49:21 68:20
- foot	49:21
foot stick	49:21
#n metre	50:8 51:77 66:-8 67:-18 68:17 69:50 79:-9 120:12 121:18
metre each	50:23
each ,	7:-11 50:13 55:19 124:10
, are	50:9 97:9
lindwurm==	3:-8 5:-8 8:-17 9:-31 10:-19 11:-14 12:-11 14:-11 19:-9 21:-9 22:-15 25:-15 27:-29 28:-13 29:-13 30:-13 31:-27 32:120 35:-14 39:-14 47:-9 50:49 53:-11 66:-9 100:-12 106:-10 108:-8 110:-12 116:60 117:88 118:74 119:120 120:-37 121:142 122:91 125:-24
lindwurm	3:-8 5:-8 8:-17 9:-31 10:-19 11:-14 12:-11 14:-11 19:-9 21:-9 22:-15 25:-15 27:-29 28:-13 29:-13 30:-13 31:-27 32:120 35:-14 39:-14 47:-9 50:49 53:-11 66:-9 100:-12 106:-10 108:-8 110:-12 116:60 117:88 118:74 119:120 120:-37 121:142 122:91 125:-24
from lindwurm	32:-12 50:21 117:8 118:8 119:24 122:16 125:10
lindwurm supply	9:-10 50:18 121:26 122:31
euro==s	21:33 22:-16 50:14
euro	21:33 22:-16 50:14
#n euro	50:14
euro $	21:33 22:-16 50:14
paid==	5:-24 8:-18 19:82 21:28 33:-8 39:-10 48:20 50:33
eur==	39:-8 50:38 55:54
in ,	5:8 20:12 27:9 39:-11 50:21 59:10 79:13 85:8 95:11 98:12 117:26
paid	5:-24 8:-18 19:82 21:28 33:-8 39:-10 48:20 50:33
, paid	8:-15 19:67 39:-10 50:33
paid #d	39:-9 50:34
eur	39:-8 50:38 55:54
eur $	39:-8 50:38 55:54
well==	2:12 4:-8 13:-13 16:12 18:10 21:9 30:-8 31:51 36:9 42:37 43:55 48:8 50:30 53:-8 62:9 78:-9 95:44 99:8 112:-11 113:-9 125:19
@wire as	50:37
well	2:12 4:-8 13:-13 16:12 18:10 21:9 30:-8 31:51 36:9 42:37 43:55 48:8 50:30 53:-8 62:9 78:-9 95:44 99:8 112:-11 113:-9 125:19
as well	2:13 13:-9 16:16 31:51 42:39 43:56 50:31 62:9 95:45 112:-10 113:-9 125:19
well $	16:18 31:51 43:60 50:37 54:-9 62:10 112:-10 125:21
#n "	50:8 80:17
ferro==	8:-10 9:-14 10:-10 11:-11 19:26 20:-12 21:-8 23:-8 25:-14 27:-27 28:-9 29:-19 31:-15 32:130 33:-15 35:-10 39:-8 50:29 57:-12 66:-21 100:-20 116:52 117:-9 118:-8 119:10 121:134 122:131 125:12
daughter==s	32:8 50:25 103:-8 116:8 121:51 122:31
m==	0:-10 1:-12 8:-14 39:-14 51:72 66:37 67:10 68:27 69:78 79:-9 88:-16 116:-9 120:33 125:-15
apiec==e	50:47 66:-10 116:-10
ferro	8:-10 9:-14 10:-10 11:-11 19:26 20:-12 21:-8 23:-8 25:-14 27:-27 28:-9 29:-19 31:-15 32:130 33:-15 35:-10 39:-8 50:29 57:-12 66:-21 100:-20 116:52 117:-9 118:-8 119:10 121:134 122:131 125:12
^ ferro	27:-13 32:22 50:24 100:-9 116:-8 121:61 122:30
ferro and	32:8 50:26 116:9 121:19 122:33
daughter	32:8 50:25 103:-8 116:8 121:51 122:31
and daughter	32:8 50:26 116:9 121:19 122:33
m	0:-10 1:-12 8:-14 39:-14 51:72 66:37 67:10 68:27 69:78 79:-9 88:-16 116:-9 120:33 125:-15
#d m	1:-8 8:-13 39:-11 50:8 51:31 66:57 67:8 68:-11 69:50 88:-14 116:-11 125:-9
apiec	50:47 66:-10 116:-10
m apiec	50:28 116:-8
apiec $	50:30
into stock	50:47 66:-10
#n m	51:41 66:-20 68:38 69:28 79:-8 120:33
m ,	69:10
fewer==	2:14 30:-8 66:12
#n so	2:13 17:10 33:12
so i	2:12 5:9 36:16 64:18 66:9 97:8 107:16 108:10 111:16 112:-11 125:17
)~",
R"~(i make	16:8 66:16
fewer	2:14 30:-8 66:12
shift them	2:35 80:-10
move them	2:27
them up	2:16 14:13
fill==ed	2:13 36:21 75:-11 82:37
shift plan	2:22
, empty	2:10 50:-21 67:33
empty slot	1:-9 2:16 4:-11 13:56
slot may	2:13
fill	0:11 2:13 13:10 36:21 75:-11 82:37 125:-8
be fill	2:13
fill too	2:13
hair==	69:10 73:11
mak==ing	0:48 2:18 21:8 22:-9 30:12 39:-14 60:41 104:9 107:32
^ half	36:13 50:15 117:13
are a	22:36
hair	69:10 73:11
a hair	69:10 73:11
short ,	2:32 3:-10 39:11 42:14 125:15
- lay	2:72
mak	0:48 2:18 21:8 22:-9 30:12 39:-14 60:41 104:9 107:32
without mak	30:13
mak new	2:19
new one	2:31
, ok	3:16 30:30
, will	3:13 73:10 101:13 108:27 114:27 125:-9
^ dress	25:-15 55:13 103:45 104:11
, good	85:9
gap show	3:10
show on	3:10
#n side	3:24 16:-9 37:24 83:23 89:-9
side only	3:15
leav it	3:9 65:25 108:17 125:-10
position==s	2:19 4:59 41:-9
position	0:17 2:17 4:55 16:10 41:-11
slot position	4:48
position for	4:39
length doe	0:-13 4:32
doe slot	0:-13 4:32
tabl ,	4:27 17:20 98:15
least==	0:-10 1:41 2:23 5:64 6:-8 13:-10 17:-9 32:10 42:17 55:21 120:25 121:9
@wire so	24:16
least	0:-10 1:41 2:23 5:64 6:-8 13:-10 17:-9 32:10 42:17 55:21 120:25 121:9
tin get	5:10 39:14
with @wire	5:10
, no	5:10 50:15 89:21 93:9 98:14 121:14
no new	5:9 87:-8 125:25
we did	5:8 75:10 89:-8 95:21 125:-8
it today	5:9 101:11
list ,	6:17 10:12 25:-9 26:53 35:19 58:10 69:10 98:8 106:-22
saw==	4:9 5:30 6:17 70:-8 74:28 98:46 103:15 125:17
am at	107:12
saw	2:-9 5:29 6:13 37:-8 70:48 74:56 82:-9 98:46 103:15 125:17
the saw	5:-12 6:18 70:-8 74:11 125:23
saw ,	4:8 6:21 98:9
, cut	0:13 5:10 20:17 49:-8 60:11 70:8 71:8 107:53
@wire cut	6:10 68:11
to hang	6:9
label in	7:22
mm step	7:16
step $	27:12 30:-8 55:18
bin ,	22:-8 40:22
sticker==s	7:41
need new	7:25
sticker	7:41
sticker for	7:41
drawer of	7:24
, by	7:14 19:14 24:10 30:27 47:-8 66:10
got open	8:-14 12:54 31:-12
her==	12:19 13:-9 30:14 37:11 38:19 47:24 48:47 57:9 58:33 59:13 62:27 103:8 106:12 107:-8 109:-26 110:9 113:18 125:-18
her	12:19 13:-10 30:14 37:11 38:18 47:22 48:37 57:9 58:33 62:27 103:8 106:10 107:-9 109:-26 110:8 113:16 125:16
on her	12:20 47:16 48:19
plat $	12:48 29:-17 125:14
window==	12:54 29:-9 58:9 61:50 64:54 72:14 79:11 80:21 82:-12 103:-12
window	12:54 29:-9 58:9 61:50 64:54 72:14 79:11 80:21 82:-12 103:-12
the window	12:49 29:-9 61:41 64:22 72:14 80:22 82:-12 103:-8
window bench	12:15 58:9 61:51 64:54 103:-12
door==	12:31 15:-8 53:31 58:48 61:43 64:51 103:-19 120:8
door	12:31 14:-8 15:-8 52:-10 53:29 54:24 58:48 61:42 64:51 103:-19 120:8 122:13
the door	12:32 15:-8 52:-10 53:9 54:24 58:33 61:39 64:53 103:-18
door bench	12:31 15:-8 58:49 61:43 64:51 103:-19
neck==s	12:87 26:-9 98:27
neck are	12:59
are wait	11:14 12:23 118:19
left the	5:9 14:14 62:38
so far	13:19 14:14 17:9 19:22 21:12 33:21
far $	5:20 13:45 14:14 16:-11 19:22 21:12 27:-8 33:19 77:28
^ peopl	14:85
doing job	15:11
@job instead	18:25
#d "	18:12 74:12 88:12 92:11
" deep	74:8
deep on	18:20
seat==	27:10 107:28 125:18
curv==ed	0:-9 4:-13 18:63 74:48
with curv	0:-8 18:28
curv slot	0:-8 18:28
slot bottom	0:-8 18:28
doe its	18:28
its wire	16:9 18:32 73:13
wire fit	18:29
it too	18:15 77:28
tang $	40:24
we had	8:-8 9:9 19:19 62:11 112:11
had $	14:-8 19:53 25:-18
record==	0:-24 4:11 13:-9 19:26 33:40 36:17 41:8 43:-13 58:9 62:22 63:-9 68:8 69:13 73:8 75:9 93:13 96:15 107:17
all delivery	19:49
delivery on	19:25 50:-15 116:27
record	13:-9 16:-8 19:26 33:56 36:14 38:-13 40:-12 41:8 43:-13 58:9 62:22 63:-9 68:8 69:46 73:8 75:9 93:13 96:14 99:14 107:16 125:-11
on record	0:-17 4:21 17:19 19:26
record $	19:26 69:25
when did	19:55 23:-10 31:-33 33:12
height==s	19:16
wire delivery	9:-9 19:72 31:-11
october==	20:86 21:40
wire balanc	20:45
for october	20:19
went out	20:23
out this	11:22 20:16
this month	20:39 21:8 33:15
wire add	20:19
add up	9:-8 20:52 51:-8 66:32
up this	20:13 117:10
becam==e	0:-8 20:14 33:9 36:27 39:-9 82:11
november==	8:-19 11:19 19:-8 20:100 21:31 33:37 45:-12 115:16
becam	0:-8 20:14 33:9 36:27 39:-9 82:11
between the	11:14 20:14 47:-9
of november	21:36 33:24
november #c	21:10
&#c#o@wire	20:14
saving from	20:-8 21:20
tin this	21:9
september==	5:-12 8:-9 20:59 21:41
^ money	21:16
#n november	11:22 20:26 33:18 45:-11 115:16
bother==	21:8 51:26 81:12 120:18 125:-24
bother	21:8 51:26 81:12 120:18 125:-24
bother -	21:8
dead==	8:-47 22:86 57:17 94:10 101:30 102:-12
dead	8:-47 22:86 57:17 94:10 101:30 102:-12
piece nobody	22:24
has touch	22:24
use to	1:-11 35:18 39:11
anybody $	23:29 65:17 84:-9
idle for	22:20
i bin	22:22 81:19 125:-8
not scrap	22:22
@wire too	22:9
short to	22:27 81:12
be any	1:9 22:19
spoken==	8:-10 22:-9 23:71 31:-13 36:-13 37:20
spoken	8:-10 22:-9 23:71 31:-13 36:-13 37:20
spoken for	8:-10 22:-9 23:71 31:-13 36:-13 37:20
hold piec	1:-11 23:34 36:-16 38:27 40:-14 125:58
for anybody	23:29 65:17 84:-9
spring==ing	24:13
back ,	23:12 24:27 35:9 47:22 94:9
at what	5:-11 6:22 13:-8 15:20 24:17 26:9
sander==s	8:-16 9:-9 14:-9 25:71 26:-8 28:-12 29:-16 35:-8 99:103 100:44 101:38 102:42 105:-8 106:-8 125:30
sander have	25:13 101:12
a sander	25:39 103:15
book what	26:24
press booking	26:22
is got	12:9 26:42 28:-9 29:-8
a book	26:43
the step	27:55
long for	27:12
just #n	27:11 111:11
and on	8:-9 14:15 20:25 21:-10 23:13 27:25
board ,	2:-8 4:8 10:-16 27:33 30:40 35:-8 57:17 58:-11 72:11 89:-9 90:42 107:10
^ till	28:50 29:-20
till when	9:20 19:-9 28:37 29:-27 31:21
christma==s	14:10 28:37 53:16 54:10 116:9
christma	14:10 28:37 53:16 54:10 116:9
on christma	28:38 53:18 112:-8
christma day	28:38 53:18 112:-8
do #n	2:-9 4:-12 30:48 52:12
december==	0:-16 2:-16 4:-11 11:52 12:-19 13:-16 15:-11 16:-13 17:-11 23:-9 28:81 30:107 33:-16 38:-13 40:-10 44:-9 45:-23 47:91 50:-8 52:-19 53:70 54:31 55:-12 62:-9 63:-9 64:-11 65:-18 71:-8 75:-13 89:-25 90:-10 95:-10 99:-9 101:20 104:-8 106:-12 107:-11 109:-13 110:103 111:38 112:82 114:-8 115:30 117:-12 118:51 119:-11
#n december	11:23 13:-14 15:-10 28:64 29:14 30:52 38:-10 40:-9 45:-12 52:-18 53:82 55:-9 64:-10 65:-16 75:-9 89:-21 101:21 107:-9 109:-11 110:66 111:15 112:63 115:15 116:8 117:-18 118:38 125:8
december ,	26:14 28:-9 29:26 30:10 47:-25 53:40 54:25 101:8 105:13 111:-8 112:24 118:-8
only ,	5:8 17:27 98:8
@day ,	11:15 26:-11 29:-13 33:27 52:39 53:13 61:11 91:-8 105:8 106:28 109:-19 110:9 111:24 115:10 125:20
, can	3:13 4:39 124:11
and by	11:-12 15:15 29:13 30:54 33:15 47:-14
report==	11:33 13:16 16:-21 20:-10 21:18 28:-8 33:11 35:27 61:47 62:-9 102:11 124:38 125:-9
@person report	29:-9 33:70 61:32 62:-10 63:-8 110:-15
did piec	1:-23 33:57 125:-9
i report	16:-20 33:31 35:31
keep piec	36:-11 37:49 125:-13
by for	11:-13 23:51 30:-9 36:-18 37:61 83:13 84:24
touch piec	37:20
^ save	36:-12 37:37 83:38
more ,	37:10 38:-8 42:10 53:-15 57:26 84:8 86:9 100:-17 104:-12 110:-16 111:21 112:19 125:35
, free	84:9
free piec	1:-9 125:20
releas the	26:-10 38:40 73:-9 84:38 106:16
chang==ed	32:-27 33:54 38:48 48:22 101:9 125:-12
mind ,	38:28 48:22
, let	26:11 31:8 38:25 49:10 52:23 63:10 65:11 84:9 111:-10
let it	38:29 84:12 125:21
everyon==e	14:13 38:35 84:18
back to	37:-9 38:47 63:18 65:31 83:-17 84:30 107:28 118:28
everyon	14:13 38:35 84:18
everyon $	38:35 84:18
stop hold	38:43
not let	38:-20 51:11 84:-24 125:54
bin piec	40:42
, too	3:23 40:34 42:-30
, kink	40:30 77:33
mic'd==	3:-8 41:31 88:15
mic'd	3:-8 41:31 88:15
^ mic'd	3:-8 41:31 88:15
caliper==	3:11 41:30 42:-10 69:9 76:11
caliper	3:8 41:75 42:-13 69:8 76:10
the caliper	3:8 41:75 42:-13 69:8 76:10
&#n#p	41:49 70:23 71:19 77:-8 80:17
caliper $	41:57
, bent	41:17 42:16
, an	70:13
cm ,	41:12 92:-9
, measur	68:20 75:24 76:12 78:-11 87:10
tenth==s	42:16 68:20
tenth	42:16 68:20
in drawer	1:-12 36:-8 39:17 42:29 72:-9 78:10 79:21
up short	21:54 22:-9
short :	42:14
, end	42:29
&#n#o#p	78:18
millimetr==e	7:17 24:10 42:50 55:44 69:23 74:30 88:22 92:30 125:-10
millimetr	7:17 24:10 42:50 55:44 69:23 74:30 88:22 92:30 125:-10
a millimetr	42:50 55:45 74:30 88:23 92:31
clean==ed	4:-35 13:-16 22:11 36:-9 43:103 74:-8 77:16 95:9 107:-14
polish==ing	27:61 43:17 103:28 104:17 108:32
it can	43:27 91:12 101:11 113:19
)~",
R"~(can go	22:8 32:-8 38:10 40:-11 43:27 57:38 81:30 84:18 122:39
dress on	27:10 43:14 103:27 107:18
between #n	20:-11 21:13 43:43 54:18 72:-30 82:-13 89:31 101:14 111:10
not tru	65:22 125:9
parlour==	46:11
edda==	13:-10 46:55
parlour	46:11
edda	13:-10 46:55
#c ,	5:21 50:-16 59:19 60:8 67:23 85:18
nut #n	46:26
pavl==e	58:11
pavl	58:11
, scal	46:14 67:15 68:-14
, wire	46:10 72:13 78:-10 116:9
january==	47:15 53:19 65:-9 109:-9 110:24 112:33
, due	116:12
due #n	116:11
#n january	53:19 65:-9 109:-9 110:24 112:34
january #c	111:14
&#c#n@job@wire	46:26 78:-10
#c to	59:17 87:9
greta==	121:10
greta	121:10
, only	1:-8 3:-10 39:13 42:10 97:9
do ,	55:12 61:8
, take	47:19 48:10 50:8 57:13 65:-10 86:26 100:31 117:-9 119:10 122:31
job ,	12:20 13:-17 23:9 46:54 48:22 94:-9 104:11
now promis	11:-14 47:11 118:18
to go	10:14 14:10 27:36 47:14 102:19
go out	10:15 14:10 47:15
now #d	47:17
#d .	1:-9 2:16 39:20 47:17 53:30 56:19 80:-13
. #c	47:17 53:30
^ leav	64:19 114:25 115:15 125:40
as it	125:41
earlier==	29:-10 30:38 109:-8 111:39 125:-23
could job	30:55 125:-28
earlier	29:-10 30:38 109:-8 111:39 125:-23
chang her	38:20 48:22 61:14
her mind	38:20 48:22
crack==ed	40:15 48:24 86:13
queu ,	48:23
, neck	48:11 94:10
crack	40:15 48:24 86:13
crack $	40:15 48:11
pick==ed	48:19 65:-15 96:11 107:33
his==	0:-9 12:27 15:10 18:15 23:12 29:-21 43:-9 47:8 48:29 107:10 113:-9 114:-8 125:37
pick	0:18 48:16 63:-8 65:-14 96:11 107:64
his	0:-9 12:27 15:10 18:15 23:12 29:-21 43:-9 47:8 48:29 107:10 113:-9 114:-8 125:37
his @job	13:-10 15:11 23:13 26:10 30:-9 47:11 48:21 125:41
again ,	8:19 16:-9 35:-10 45:51 48:18 63:37 75:-10 78:22 86:16 95:11 102:16 104:9 107:26 115:-10
, cancel	48:22 124:8
cancel==s	1:-8 125:60
if @job	1:-9 113:18 125:53
@job cancel	1:-8 125:60
, tell	14:13 125:15
jumbo==	24:12
jumbo	24:12
wire jumbo	24:12
, crown	19:9 46:-9 49:23 50:30 88:-21 117:28
wide ,	85:37
high ,	45:16 49:10
, stick	8:27 49:30 50:8
stainless==	8:33 39:-9 49:36
steel==	16:-11 17:20 39:-9 49:25
stock a	39:-9 49:21
stainless	8:33 39:-9 49:36
steel	16:-11 17:20 39:-9 49:25
steel ,	39:-9 49:25
gold==	49:19
ft==	49:18 69:18
gold	49:19
gold ,	49:19
ft	49:18 69:18
#n ft	49:18 69:18
ft $	49:18
vintag==e	49:36
new kind	49:15
wire ,	0:-14 5:39 7:10 9:-25 20:-10 23:25 28:-13 29:-8 31:31 33:8 39:67 42:-10 46:18 72:-10 78:17 80:-10 120:36
vintag	49:36
" $	80:17
pick==	0:20 107:32
metre $	51:46 66:-12 69:46 121:20
m $	50:-8 51:58 66:-8 69:-14 120:21
warn==	51:10
warn	51:10
^ warn	51:10
warn me	51:10
@wire drop	51:17
drop under	51:23
metre down	51:17
@wire reorder	51:16
noon==	16:-11 53:13 101:25 105:15 109:27 111:-12 112:-10 115:27
noon	16:-11 53:13 101:25 105:15 109:27 111:-12 112:-10 115:27
to noon	16:-10 52:10 105:17
more @day	52:38 53:-17
, clos	52:23 53:10
shut at	53:20 115:-9
: open	52:8
weekly==	52:40 54:-9 109:-12
weekly	52:40 54:-9 109:-12
^ weekly	52:9
weekly hour	52:23
hour @day	52:-17 54:41 109:-13
every week	52:22 109:24 110:-8
stocktak==ing	46:-8 50:-12 53:42 66:61
, stocktak	53:28
stocktak $	53:43 66:8
shut $	53:37 112:12
clos==ing	47:-8 52:-10 53:-20 54:-12 112:84 125:97
as an	54:13 58:14
pm==	52:-13 54:18
this @day	52:-47 54:50 109:-33 111:48 112:10 125:40
pm	52:-13 54:18
#n pm	52:-13 54:18
shift on	75:32 95:-8
#r ,	2:19 4:38 71:32 75:15 97:14 105:20
, #t	45:-12 54:26 109:23 111:-12 115:25
#t -	28:-8 52:32 54:25 105:19 111:31
- #t	28:-8 52:32 54:25 105:19 111:31
, christma	54:12
christma rush	54:12
@day too	52:-10 54:42
too ,	31:26 52:-10 54:42 61:8 98:18
to #t	28:-9 52:19 54:10 101:11 105:16 109:23
trim==	0:12 1:9 25:-8 29:-10 35:55 55:58 125:18
limit==	0:14 13:-9 16:62 17:-13 25:-9 29:-10 35:55 48:-10 51:18 55:57 77:-8 99:19 114:-8 125:19
trim	0:12 1:9 25:-8 29:-10 35:55 55:58 125:18
the trim	0:17 25:-8 29:-9 35:56 55:13 125:21
limit	0:14 13:-9 16:62 17:-13 25:-9 29:-10 35:55 48:-10 51:18 55:57 77:-8 99:19 114:-8 125:19
trim limit	0:15 25:-8 29:-10 35:55 55:58 125:20
limit to	55:21
length are	55:30 81:18
inch $	7:16 41:24 55:30
setback==	55:26
setback	55:26
cost==s	10:9 55:12
loss==	55:69
cost us	19:11 21:-10 55:12
, set	23:26 55:28 104:18 125:-8
loss	55:69
to that	53:-9 55:8 104:19 112:12 125:-8
, chang	55:22
chang the	32:-26 33:56 52:28 54:-12 55:30 117:-10 118:16 120:-8 121:10 125:12
make the	0:38 55:51 78:16 113:11
bin step	7:-22 55:57
europ==e	55:50
/==	3:-8 39:11 55:41 56:113 57:-8 58:-8
vienna==	55:38
europ	55:50
/	3:-8 39:11 55:41 56:113 57:-8 58:-8
europ /	55:50
vienna	55:38
/ vienna	55:38
vienna $	55:38
than==	1:-12 8:-14 9:-11 31:-8 32:25 38:-11 40:-10 41:-17 50:-10 51:25 55:15 66:-9 69:58 70:-9 82:-10 92:58 93:16 104:16 111:16 120:15 125:65
^ never	32:-9 55:9 122:10 125:60
than	1:-12 8:-14 9:-11 31:-8 32:25 38:-11 40:-10 41:-17 50:-10 51:25 55:15 66:-9 69:58 70:-9 82:-10 92:58 93:16 104:16 111:16 120:15 125:65
more than	61:8 69:15 93:18 104:18 125:-11
lb in	44:9 55:10
set that	55:20
limit $	0:17 25:-8 29:-9 35:59
bell==	57:23
http==	56:20
bell	57:23
receiver bell	57:23
http	56:38
http :	56:38
: /	56:38
/ /	56:38
/ #d	39:12 56:18
. #t	56:19
#t /	56:19
&#d#t	56:18
log==	33:172 39:12
e==	29:11 30:-10
log	33:172 39:12 59:16
e	29:11 30:-10
send==ing	57:34
wall==	57:36
stop send	57:34
wall	57:36
the wall	57:17
wall $	57:25
lamp==	57:59 100:-15 115:14
lamp	57:59 100:-15 115:14
call lamp	57:17 100:-10
lamp $	57:32
jelka==	58:14
jelka	58:14
rok==	58:12
he==	14:-8 15:11 29:-9 32:11 47:31 58:45 59:23 62:24 64:17 107:11 109:-19 110:-8 111:19 121:-10
rok	58:12
start today	58:15
today ,	29:-8 33:17 44:-10 58:15 105:8 125:45
he	14:-8 15:11 29:-9 32:11 47:31 58:45 59:23 62:24 64:17 107:11 109:-19 110:-8 111:19 121:-10
, he	47:20 58:35 59:11 63:13 64:19 107:12
she==	3:20 47:28 58:37 63:26 106:14 109:-18 111:28
she	3:20 47:28 58:37 63:26 106:14 109:-18 111:28
, she	58:29 109:-8 111:24 125:26
may only	14:17 58:39 61:12
only look	14:17 58:39 61:12
janez==	58:29
join==s	58:47
janez	58:29
join	58:60 98:-8
as a	17:11 44:-9 45:9 58:41 62:-8 63:15 85:9 98:-19 100:38 115:14 120:17 121:-15 122:32
colleagu==e	12:11 58:32 60:-19
pia==	58:25 60:-18
colleagu	12:11 58:32 60:-19
new colleagu	58:32 60:-19
pia	58:25 60:-18
, uid	58:35 60:-20
and #c	5:34 16:-8 44:-13 59:17 85:8
@person also	59:19 60:-16
off @person	59:-18 60:20 65:10 106:25
login==	59:8 60:45
not @person	59:-19 60:40 65:15
login	59:8 60:45
@person login	60:12
any longer	38:31 53:-10 60:14 65:40 81:14 99:-8 100:39 112:16 114:9 125:-36
longer $	38:32 53:-10 60:14 65:15 99:-8 100:39 112:17 114:9 125:-16
@person mov	61:17
over to	61:17 75:10
odila==	61:43
@person call	100:11 110:43
odila	61:43
sav==ing	4:-11 40:12 61:16 103:18
@person may	61:16 110:-13 125:32
@person back	62:-10 63:59
with us	62:-14 63:44
bring==	6:8 21:11 63:24 111:8
bring	6:8 21:11 29:-8 30:8 63:24 111:8
^ bring	6:8 63:24
bring @person	63:24
rejoin==ed	61:-13 62:-22 63:86
crew==	14:33 58:36 63:24
rejoin	61:-13 62:-22 63:86
@person rejoin	61:-11 62:-13 63:62
rejoin the	62:-12 63:41
crew	14:33 58:36 63:24
the crew	14:33 58:36 63:24
crew $	58:37 63:24
will do	64:30 114:-9 119:10 125:25
snow==ed	64:24
snow	64:24
, @person	12:19 15:-9 28:-8 33:-32 38:19 43:44 64:16 99:11 107:-8 111:33 125:21
give==s	30:14 65:16 106:24 120:19
whoever==	59:9 60:9 65:58 91:10
@person give	65:16 106:24
give up	38:23 65:16 106:23
whoever	59:9 60:9 65:58 91:10
, whoever	65:26
whoever has	60:15 65:50
take @person	62:37 63:12 65:10 106:36 110:-11
@person off	28:-27 62:42 63:-9 65:11 106:-8 109:-16 125:63
let anyon	38:-22 65:71
do it	29:13 30:16 65:32 125:-22
up job	65:45 84:-8 107:-10
unassign==	13:-13 65:108
unassign	13:-13 65:108
^ unassign	13:-13 65:108
unassign job	13:-13 65:108
not do	65:21 125:-11
all ,	48:11 49:10 50:-8 53:-9 65:11 66:14 87:14 112:18 125:-14
, nobody	38:16 53:20 60:10 65:12 125:-10
count the	8:12 66:20 125:17
- take	66:16 121:14
m of	51:29 66:23 68:10 69:13
by my	50:-8 66:24
my count	50:-8 66:24
altogether==	8:27 25:-17 50:11 66:21 67:15 68:-17 100:24 106:14
i count	66:37
#d metre	66:42
altogether	8:27 25:-17 50:11 66:21 67:15 68:-17 100:24 106:14
@wire altogether	66:23
altogether $	8:29 50:11 66:13
)~",
R"~(it say	1:-10 8:18 9:-8 49:10 50:13 67:-13 69:23 125:21
gram==s	39:-21 50:-12 67:78 68:74
coil ,	8:9 12:10 50:-18 67:25 125:14
gram ,	39:-12 68:33
empty spool	50:10 67:13 68:-12
g==	20:-14 39:-9 50:38 51:-16 66:-21 67:65 68:108 69:-17
scal :	67:18
#d g	50:-13 67:13 68:86 69:-9
kg==	67:27 120:11
weigh #d	67:14 68:36
kg	67:27 120:11
#d kg	67:27
all @wire	67:11
g ,	50:14 67:13
oz==	50:-28 67:56
oz	50:-28 67:56
#n oz	50:-28 67:56
show tenth	68:20
tenth $	68:20
#n cm	68:32 85:8
: #c	5:21 44:-9 85:17 86:-8
really==	27:-14 32:39 40:-13 69:43 85:13
really	27:-14 32:39 40:-13 69:43 85:13
really #d	40:-13 69:44
bent ,	69:10
, correct	69:28
correct it	125:30
metr==e	39:-11 51:24 68:45 69:25 125:-25
add half	69:14
half a	42:20 50:13 55:44 67:25 69:23 74:30 88:21
metr	39:-11 51:24 68:45 69:25 125:-25
a metr	51:24 69:26 125:-25
metr to	69:14
becaus a	50:-10 69:22
turn up	31:23 50:13 116:-13
behind the	69:14 77:11
correct piec	69:13
was off	0:-10 13:10 28:12 69:9
becaus the	19:10 48:51 119:9 125:-12
remeasur==ed	69:19
hand should	69:22
should say	69:22
becaus i	69:19 110:15
remeasur	69:19
of piec	0:-12 1:24 33:-10 36:17 40:37 70:-22 125:20
came off	70:27 71:30
off piec	40:25 70:26
#n made	36:-12 70:37 78:11 82:-12
made #n	36:-12 70:37 72:-9 78:11 82:-12
cut ,	4:13 5:35 12:-17 14:13 20:16 29:-10 49:-8 70:21 71:-13 104:25
all from	70:21 71:-12 73:21
#n half	75:-11 77:34 82:19 95:-13
a fresh	71:38
fresh stick	71:38
old @wire	22:11 72:21
fret out	0:21 22:-11 72:14
they'r==e	2:12 23:24 30:-8 53:9 72:26 74:11 76:-8 81:16 95:10 101:13 125:-8
sill==	72:15 79:11 80:22 82:-12
they'r	2:12 23:24 30:-8 53:9 72:26 74:11 76:-8 81:16 95:10 101:13 125:-8
, they'r	72:22 81:17 95:11
sill	72:15 79:11 80:22 82:-12
window sill	72:15 79:11 80:11
sill $	72:15 79:10
is from	4:9 73:9
lot for	37:-8 73:49 83:11
saw==ed	70:56 74:28 82:-9
^ saw	70:42
saw the	4:11
deep ,	18:46 43:-10 88:9
, bottom	18:-9 74:20
curv $	18:-9 74:20
same $	13:-20 22:9 74:91
mov #n	75:41
mov the	75:18
down to	41:-13 42:44 55:16 61:21 67:14 75:18
not move	89:16 125:17
anyth on	96:-11 125:59
across at	76:24
quarter==s	76:17 104:18
@job an	70:10 76:17
#n quarter	76:17 104:18
#o ,	17:10 76:19 101:13 114:14
@job board	4:61 13:-11 27:-15 41:-9 43:-12 72:10 74:10 76:12 87:35 90:-12 91:25 107:23 108:47 113:-8
board at	90:10
bag==	36:-12 37:26 77:20 83:16
the dust	77:20
bag	36:-12 37:26 77:20 83:16
dust bag	77:20
is spoilt	77:47
spoilt ,	77:57 86:15
, fil	77:31
right through	48:13 77:31
old #n	72:-13 78:49
remak==e	125:22
remak	125:22
not measur	39:-10 79:25 125:13
unmeasur==ed	0:-13 39:-27 50:-10 79:70 80:16
^ about	35:19 79:10
#n bit	79:17
thrown in	79:31
unmeasur	0:-13 39:-27 50:-10 79:70 80:16
unmeasur $	50:-9 79:20
pull @wire	79:27
handful :	3:-9 79:9 80:19 82:-9
@wire handful	3:-10 80:12
^ went	42:18 45:13 78:-9 80:9
went through	80:9
handful measure	80:17
^ length	4:23 41:11 80:12 82:-9
^ both	40:-9 81:24 82:24 100:14 101:8 102:18
both #d	40:-9 81:25 82:38
, scrap	5:-8 20:25
s for	125:11
not take	23:12
we set	23:19 83:-16
give free	23:-8 84:16
reservation==s	10:-13 11:-12 12:-8 14:-10 23:109 26:94 29:-16 35:-9 84:71 101:-22 105:-12
forget about	84:12 86:11
reservation	10:-14 11:-13 12:-9 14:-11 23:107 25:-16 26:115 29:-17 35:-10 36:-11 38:48 40:-14 84:70 100:-8 101:-25 105:-13 106:92 125:-11
the hold	23:24 38:50 43:-8 84:40
hold on	15:-10 17:-12 23:56 37:12 38:17 43:-9 84:41 125:-9
: length	4:25
length #c	85:9
, width	85:21
, length	4:42 79:21 85:14
bar crack	86:11
crack ,	86:11
it out	1:12 3:10 125:-12
of use	86:18
bar any	86:18 100:-9
call short	86:14
cradl ,	87:11
, head	87:11
clear ,	87:11
, glue	87:11
start at	29:-12 43:47 87:27 107:-30 109:20 111:17
nut off	17:-9 87:105 108:-17
beyond #c	87:29
board from	87:9
from #c	51:17 87:22
: crown	69:-8 88:42 90:17
^ over	41:-13 42:44 88:8 89:11
see==	2:-14 4:37 5:-9 9:13 12:29 13:-9 14:41 17:-8 26:17 29:-9 30:-9 33:38 35:17 75:-11 90:32 115:20 125:-18
see	2:-14 4:37 5:-9 9:13 12:29 13:-9 14:41 17:-8 26:17 29:-9 30:-9 33:38 35:17 75:-11 90:32 115:20 125:-18
can see	90:34
see light	90:18
and under	90:48
bottom==ing	91:12
deepen==ing	91:25
deepen	91:25
^ feeler	74:13 92:14
feeler say	74:13 92:14
stop==s	93:69 108:-9
good ,	63:16 100:19
, last	9:16 20:-12 21:31
is relief	94:40
^ back	16:-8 24:-11 43:-11 94:22 107:102
neck on	94:41
whether==	3:18 4:-8 9:21 18:23 23:-9 90:-13 94:-16 125:41
not look	81:15 90:-13 94:-16 115:16 125:28
whether	3:18 4:-8 9:21 18:23 23:-9 90:-13 94:-16 125:41
look whether	90:-13 94:-16 125:44
reseat #n	95:63
seat anew	95:27
glu #n	96:31
, at	29:8 36:16 42:45 96:9 120:16
past #n	36:8 54:12 91:-9 93:33 107:29 109:-8 111:29
clamp==	38:23 96:52
a clamp	96:33
clamp on	38:23 96:19
glue #n	125:36
file==	16:17 39:12 41:-9 97:30
levell #n	97:64 125:13
spot==	57:10 97:33
spot	57:10 97:33
^ spot	97:21
spot -	97:21
- levell	97:21
we'v==e	9:19 23:-9 36:31 37:-9 62:24 63:-10 67:14 68:-12 79:17 85:9 98:61 99:35 100:48 103:-13 119:31 125:-13
buffer==	57:42 98:23 100:10
we'v	9:19 23:-9 36:31 37:-9 62:24 63:-10 67:14 68:-12 79:17 85:9 98:61 99:35 100:48 103:-13 119:31 125:-13
^ we'v	36:31 37:-9 62:25 63:-10 79:18 85:10 98:63 99:8 100:48 103:-13 119:33
we'v got	67:15 68:-10 98:30
buffer	57:42 98:25 100:9
now ,	2:-9 11:19 29:-10 35:14 41:-8 43:14 44:9 60:8 61:9 75:11 78:10 84:8 97:8 98:25 99:-13 108:13 109:33 117:12 122:12
buffer $	98:23
bandsaw==	98:20
machin :	98:30
bandsaw	98:59 100:15
bender==	98:31 99:-9
bender	98:49 99:-9
bender ,	98:30 99:-9
them ,	71:9 72:10 79:8 81:10 121:14
spray==	1:-10 98:15 100:25
booth==	1:-9 98:12 100:25 110:12
spray	1:-10 98:15 100:25
the spray	98:-15 100:26
booth	1:-9 98:12 100:25 110:12
spray booth	1:-9 98:12 100:25
booth as	98:-15 100:26
machin ,	100:29
, count	39:-9 50:15 66:10
drill==	98:47 99:-10 100:35
drill	98:47 99:-10 100:35
drill press	98:36 99:-9 100:24
, call	69:10 85:12 98:10
drill ,	98:11 100:11
, new	27:8 46:8 47:34 78:16 98:9
oven==	98:16
oven	98:16
machin oven	98:16
oven ,	98:16
, setup	99:15
we'v #n	79:18 99:42
bench==es	14:33 25:-8 99:138 100:11 102:29
bench left	99:27
sold==	48:18 100:76 120:12
sold	48:18 100:76 120:12
sold ,	100:30
it off	23:14 57:15 86:16 87:8 100:8 117:-9 119:11
rid==	25:-16 40:20 57:41 81:28 86:14 100:30
^ get	25:-16 57:32 81:36 86:14 100:30
rid	25:-16 40:20 57:41 81:28 86:14 100:30
get rid	25:-16 40:20 57:41 81:28 86:14 100:30
rid of	25:-16 40:20 57:41 81:28 86:14 100:30
, we	48:10 53:-20 66:12 86:13 98:10 100:38 112:37 115:15 119:17 125:-9
not have	2:10 38:25 48:16 100:45 114:18 125:-34
that machin	100:26
machin now	59:12 98:8 99:-9 100:11
@day noon	101:26 115:28
noon $	101:26 115:28
broken $	25:13 48:25 86:10 94:-8 99:-11 101:62 102:-12
leak==s	25:-8 101:33
leak	25:-8 101:33
, press	25:-10 35:19 101:19
servic==ed	101:9
, out	20:13 95:16 101:21
@day #t	52:-22 54:37 101:13 105:24 109:11 111:-19 115:16
belt==	42:18 99:19 101:22 102:17 103:-15
torn==	49:-15 101:25 120:28
torn	49:-15 101:25 120:28
belt torn	101:25
afternoon==	11:16 14:-8 23:-10 26:33 28:-10 29:40 33:-14 40:16 43:19 52:-14 53:53 54:10 75:-11 105:39 109:-12 110:75 115:19 125:-9
afternoon ,	52:-9 53:9 54:14 105:10 110:8
down until	101:16 125:34
until #t	52:20
fix==ed	8:40 9:-19 52:23 96:9 101:-11 102:73 111:-10
fix	8:39 9:-19 14:12 17:8 25:-8 36:-9 40:-12 52:23 69:42 96:9 99:-10 101:-13 102:69 107:10 111:-11 125:22
^ fix	36:-8 40:-12 69:42 96:9 102:18 107:12
fix the	102:14 125:26
sander up	102:8
fil==ing	2:16 25:-13 27:10 103:35 108:19
happen at	25:-13 103:24 115:16
the bench	1:12 6:14 14:-21 25:27 39:-11 58:-10 64:-8 67:10 77:10 99:26 100:18 102:30 103:58 125:10
bench ,	6:28 12:17 61:23 99:28 100:10 103:17
not the	12:9 36:23 103:12 125:-9
crown==ing	27:19 43:34 55:-8 98:13 99:-12 103:49 104:26 107:15 108:17
seat==ing	13:-13 17:-9 18:32 27:24 32:-15 43:40 61:-12 99:-11 103:64 104:47 107:36
hour and	44:20 104:18 108:16
half $	104:15
press @day	16:-13 101:-10 105:54 106:24 125:-9
, @day	29:31 105:14 118:22
to half	105:11 109:8
half past	36:9 54:12 107:30 109:-8 111:29
&#t@day@person	29:24 52:-45 54:-8 105:12 109:36 110:-9 111:25
dec==	16:-10 47:34 53:14 105:18 112:12 116:11
)~",
R"~(dec	16:-10 47:34 53:14 105:18 112:12 116:11
#n dec	16:-10 47:34 105:18 116:11
noon ,	16:-10 105:18 109:23 111:-14
, for	0:-12 3:8 4:8 6:18 10:11 11:23 16:-25 19:-10 20:16 23:-10 37:85 41:-9 43:-8 47:-9 50:11 55:23 70:21 75:10 82:-8 84:-9 89:-9 105:26
it ,	0:20 3:-8 17:-13 27:8 30:8 33:14 40:13 42:-11 46:-9 50:15 59:12 65:8 78:16 87:9 92:13 97:9 106:22 125:-11
, tru	53:12
speak==	43:-9 107:32
as we	43:-9 51:12 99:23 100:-8 107:31 121:13 122:-8
speak	43:-9 107:32
, stop	108:42
to leav	43:-8 108:34 109:-15 111:22
half done	43:-13 108:58
phon==e	8:8 10:26 13:-38 15:-8 32:-13 57:10 108:32 116:8 125:76
phon	8:8 10:26 13:-38 15:-8 32:-13 57:10 108:32 116:8 125:76
phon ,	108:15
, i've	17:-10 33:19 36:9 66:10 97:24 108:16
minute ago	36:-13 40:15 43:10 45:29 70:-10 75:22 81:30 96:12 97:8 99:-8 102:18 104:-17 108:51 115:-10
has @day	22:15 109:51 110:-28
off tomorrow	108:-20 125:54
@person gone	62:11 110:24 111:-13
@person ill	28:-26 61:-9 62:-14 63:-11 110:58 125:72
#t only	52:15 111:12
#n urgent	13:48 15:-13 29:-10 113:27 125:10
gig==	113:11
gig	113:11
gig ,	53:15 112:-9 113:11
, her	58:10 110:9 113:11
her @job	29:9 47:11 48:30 113:21
once==	13:-8 16:33 25:12 30:-24 43:-11 44:-8 51:13 62:-18 63:33 69:14 75:10 89:-9 95:-9 99:-8 102:53 114:30 125:59
once	13:-8 16:33 25:12 30:-24 43:-11 44:-8 51:13 62:-18 63:33 69:14 75:10 89:-9 95:-9 99:-8 102:53 114:30 125:59
@job wait	114:15
after lunch	44:-17 107:-13 115:11 125:51
oop==s	124:30
scrub==	32:-8 48:16 119:13 122:11 124:22
oop	124:30
^ oop	124:30
oop ,	124:30
scrub	32:-8 48:16 119:13 122:11 124:22
, scrub	122:11 124:22
scrub that	119:14 124:22
that last	124:57
, undo	124:51
was wrong	87:13 124:9
wrong ,	13:-9 17:20 69:35 124:9
thes==e	11:-10 12:15 28:11 29:-12 52:9 65:19 103:17
thes	11:-10 12:15 28:11 29:-12 52:9 65:19 103:17
sander thes	103:18
thes day	11:-10 12:15 103:17
, level	17:34
push==	2:8 11:-8 16:28 17:-9 24:9 47:24 85:11
push the	2:11 11:-8 24:14 47:8 75:10
down #d	3:-15 41:57 42:-9 92:59
scratch==	48:12 87:40 106:35 124:58
scratch	48:12 87:40 106:35 124:58
^ scratch	87:40 106:23 124:58
scratch @person	106:25
@person press	26:-8 106:61
ground==	85:14 97:42
ground	85:14 97:42 110:17
ground down	42:-9 85:14 97:42
down ,	42:-9 85:14 108:29 125:13
log==s	59:17
user==	58:24 59:82 60:52
log in	59:17
user	58:24 59:82 60:52
user #c	59:33 60:58
^ whoever	59:10 65:31 91:10
, that	2:9 3:11 13:-8 16:-15 25:-8 43:17 55:11 59:22 60:-8 61:9 71:9 91:22 93:-8 103:17 121:16 124:12
@job sold	48:25
sold the	48:15 100:19
not doing	48:47 65:23 112:-10 125:-14
doing it	15:13 48:11
strik==e	14:-10 25:-15 28:-8 47:11 48:24 57:15 62:29 63:-8 86:20 100:43 119:8 121:-16 122:26
strik	14:-10 25:-15 28:-8 47:11 48:24 57:15 62:29 63:-8 86:20 100:43 119:8 121:-16 122:26
^ strik	14:-9 25:-11 28:-8 48:25 62:29 63:-8 86:18 100:33 121:-11 122:25
strik the	47:11 48:16
, just	12:9 17:12 111:10
tomo'll==	111:25 112:-14
tomo'll	111:25 112:-14
@day the	28:-8 30:25 53:-8 54:43 109:14 111:23 112:-17
wire off	73:11
delivery #n	39:13 71:12 73:102 113:-9
@job :	2:8 16:-8 41:8 45:-16 71:24 73:10 74:26 89:12 93:13 115:25
, like	23:10 73:13
like the	55:20 73:13 105:16
weekday==s	52:92 75:-12 89:-9 109:32
weekday	52:92 75:-12 89:-9 109:32
weekday #n	52:39 75:-8 109:33
no @person	110:48
@day any	53:-9 106:8 109:28 112:17
up all	84:30
fret and	20:21 21:-18 78:11 83:17
and mark	6:8 83:13
as its	83:17
its own	2:-12 5:18 83:17
own $	2:-12 5:16 8:31 83:17
lock==	83:23
lock	83:23
#n inch	39:9 50:-12 68:12 85:23
inch of	0:-11 1:25 68:13
jointer==	98:23 100:23
jointer	98:23 100:23
the jointer	98:23 100:23
of machine	25:-24 98:23 100:39
machine ,	25:-12 29:28 35:10 98:23 101:9
, ther	47:15 83:9 87:-9 98:36 108:18 112:11
vise==	25:-11 98:36 100:37 101:36
vise	25:-11 98:40 100:35 101:36
vise ,	98:38
press .	98:14
know==	2:-8 4:13 8:-8 11:21 13:19 16:-13 25:14 28:30 32:37 33:-12 35:8 36:11 69:20 83:14 102:9 105:-9 110:-20
know	2:-8 4:12 8:-8 11:21 13:18 16:-13 25:14 28:30 32:37 33:-20 36:10 69:20 83:14 102:9 105:-9 110:-20 125:37
know what	33:-8 35:13 83:14
due ,	11:19 56:17
torn $	101:14
after #n	55:32 93:61 114:18
open in	54:9
specially==	52:-10 54:15
open up	52:-13 53:26 54:20 65:-9
specially	52:-10 54:15
make that	51:11 99:31
arbor==	25:-11 99:53 101:-11
renam the	25:-10 99:54
arbor	25:-11 99:53 101:-11
gone ,	20:8 77:15 100:24
the clos	31:52 53:-21 112:107 125:-15
the login	60:33
from @person	41:14 59:-23 60:51 64:-24 65:56 125:-8
, off	5:64 17:37 48:-9 50:-9 69:-8 71:25 77:-12 100:23 106:27
today was	62:27
was @person	28:-26 33:10 62:26 110:-25 125:65
last day	9:11 62:39
un==	62:-25 63:50 83:-9 84:26
un	62:-25 63:50 83:-9 84:26
un -	62:-25 63:50 83:-9 84:26
- retir	62:-25 63:51
drago==	58:11
drago	58:11
new ,	2:17 58:11
, bench	58:24
role $	14:43 58:8 61:13
minute now	35:15 99:-11 104:34
recheck==ing	45:13 89:-12 104:16
go by	104:42
report again	104:42
me about	8:-11 13:60 17:-10 19:28 25:36 51:25 103:-8 125:-44
about @wire	9:9 51:32 125:-26
till it	51:26 125:-24
mistak==e	35:-9 112:16 117:-9 119:12 124:24
mistak	35:-9 112:16 117:-9 119:12 124:24
mistak ,	35:-9 112:16 117:-9 119:12 124:24
my last	124:13
bench from	61:25 64:-8
crown :	88:12 103:43
bur==red	69:17
once the	69:16 125:18
bur	69:17
off ,	17:9 48:10 69:16 84:11 112:26 119:18 125:-12
put that	62:19 69:17 103:8
public==	53:36
public	53:36
public holiday	53:36
holiday on	53:8 112:24
nobody in	53:20
^ weekday	52:73 75:-9
and #t	52:16 54:-13 109:15
stick on	66:9 67:10
scal ,	46:28
#n gram	67:39
out and	95:43
, reseat	95:11
reseat ,	95:9
to save	2:18 38:18 61:12
save number	38:19
, would	0:9 9:10 11:12 13:9 16:25 25:19 26:9 38:20 83:11 125:-11
be too	0:23 75:-10 115:10 125:-9
yet ,	15:17 125:33
pretend==	44:-35 125:68
pretend	44:-35 125:68
expect==ing	8:-22 31:40 50:-17 66:-14 116:-9 125:51
but==	16:8 37:12 39:-16 43:15 55:8 58:15 79:-19 87:-11 106:16 109:-9 111:9 112:11 117:12 124:-10 125:58
but	16:8 37:12 39:-16 43:15 55:8 58:15 79:-19 87:-11 106:16 109:-9 111:9 112:11 117:12 124:-10 125:58
#n but	37:12 70:-8 125:29
but i	16:11
i did	33:-10 67:10 124:31 125:13
not $	1:12 3:21 89:52 125:-30
not want	3:10 48:10 64:-9 106:16 122:26 125:-17
want job	15:-9 33:-8 64:-10 125:59
suppos==e	16:47 89:-14 125:44
suppos	1:8 4:30 9:-11 16:42 17:-14 29:13 31:19 75:-8 89:-15 125:41
^ suppos	16:47 89:-14 125:44
not down	25:-8 90:8 101:-34 125:54
@person put	23:-10 33:16 46:-9 50:20
has fret	33:47 77:-25
no need	28:-8 37:-22 38:-8 52:-9 53:-8 125:106
to add	20:10 39:-17 120:19 121:-13 125:52
add that	125:29
that #d	0:-9 36:37 39:-14 40:29 81:-8 125:29
round==	28:12 49:18 104:10 125:8
not get	53:10 57:16 100:-10 108:17
if job	5:12 125:18
were done	5:12 33:12
actually==	3:62
actually	3:62
of peopl	58:17 63:16
on new	112:16
new year	53:12 112:15
quit==	43:-12 61:-12 62:83 63:-15 108:19 110:-8
quit	43:-12 61:-12 62:83 63:-15 108:19 110:-8
@person quit	61:-12 62:83 63:-15 110:-8
quit $	61:-12 62:83 63:-15 110:-8
bar again	86:16
it away	35:-9 60:9 100:16 124:11
^ befor	0:14 3:9 4:-9 5:-14 10:9 13:11 14:12 16:-10 18:-11 27:10 31:8 33:12 44:10 71:-9 99:12
befor i	0:11 1:-11 3:8 5:-14 10:9 13:11 14:12 16:-13 18:-11 27:10 33:12 39:11 44:10 71:-9
wire :	0:12 6:9 19:13 24:24 49:8 71:-8
would any	0:20 71:-8
leftover==s	0:44 8:-13 21:46 22:29 77:-9
which of	0:42 13:-10 14:18 15:48 17:-14 25:17 28:35 58:-10
of our	0:27 1:-9 5:32 16:-9 23:-11 25:23 32:-10 62:-14 63:26 86:41 120:10 122:19
leftover	0:85 4:-15 8:-13 21:55 22:28 39:20 70:13 77:-10
option==s	0:23
includ==ing	0:37 8:12 14:44 19:15 22:-10 53:10 77:-8
option	0:23
, includ	0:37 8:13 14:12 19:16 22:-9
long piece	0:38
^ pick	0:20
pick a	0:20
you tell	0:8
same slot	0:70 1:-14 4:-19 36:23 74:-10
allow==ed	0:56 2:28 23:24 29:-9 104:17 125:-12
allow	0:56 2:28 23:24 29:-9 104:17 125:-12
allow $	0:61 2:29 5:-11
mm bit	0:-18 1:27 39:-13 40:31
least $	5:16 120:10
could piec	1:46 125:-8
find a	1:17
#n raw	1:9 39:9 80:-10
best==	0:14 1:52 2:28 5:28 22:-10 23:-11 39:-14
best	0:14 1:52 2:28 5:28 22:-10 23:-11 39:-14
^ best	0:16 1:42 5:30 22:-10 23:-11 39:-14
best use	0:-8 1:34 5:30 23:-11
;==	0:18 1:14 2:32 16:12 39:-9 40:18 42:11 45:9 70:-11 75:-12 121:11
)~",
R"~(, both	39:14 70:22 81:-9 82:-11 83:11 102:14
;	0:18 1:14 2:32 16:12 39:-9 40:18 42:11 45:9 70:-11 75:-12 121:11
; what	1:11 16:14
could take	104:-12 125:44
lose==	1:10
slot would	0:-11 1:28
lose	1:10
the least	0:-9 1:37 2:24 5:30 13:-9 17:-8 42:18 120:10
: wher	1:27
wher ,	1:14
if it	51:17
me wher	1:9
wher i	17:-8 89:16
everyth ,	62:11
would piec	1:9
doe piec	1:11
i found	0:-9 1:20 69:13
if its	1:37
which open	1:32 12:10
, when	9:44 11:15 28:12 29:13 30:46 47:-8 103:8
when was	9:-10 11:25 19:45 31:-10 33:34 47:-8
was it	11:26 19:14 47:-8
it promis	1:-10 11:50 23:31 47:-10 125:-10
due up	11:20 12:-12
due from	11:53 47:-10 52:-9
fortnight==	10:19 47:16 116:10 120:16
fortnight	10:19 47:16 116:10 120:16
fortnight ,	47:16
again today	11:15
i mean	11:33 15:13 27:9 29:-10 35:-8 50:12 53:10 104:10
mean $	11:33 27:9 104:10
recheck due	11:-19 55:60 115:-13
due this	11:18
pressing==s	11:43
pressing	11:43
even==ing	54:24 66:11
few==	2:18 27:10 125:25
#d ;	2:16 70:-8
they be	2:12
mov along	2:15 30:-8
along so	2:11
few	2:18 27:10 125:25
few must	2:12
be made	2:18 48:31 125:-8
made $	2:12
fret around	2:11
around so	2:22
so that	2:17 39:13 43:12 77:14 92:10 112:8 117:-9 118:15
as few	2:8
few as	2:8
as possibl	5:13
, tin	0:-14 2:63 5:12 72:23
tin allow	2:29 5:-10
slid==e	2:27 90:17
slid	2:26 49:10 90:17 92:10
slot nutward	2:19
^ work	2:55 5:20 6:-10 27:-14 28:12 29:-11 43:-10 65:-8 107:42 108:64 111:-8
work out	2:66 5:20 6:-10 108:-14
a shift	2:12
i'd==	1:8 2:25 13:9 25:11 29:14 36:-15 45:-10 79:-18 95:19 102:-8 105:10 124:9 125:87
i'd	1:8 2:25 13:9 25:11 29:14 36:-15 45:-10 79:-18 95:19 102:-8 105:10 124:9 125:87
^ i'd	2:19 16:12 79:-19 95:20 105:16 125:53
i'd like	2:18 5:8 13:9 16:12 29:17 105:11 125:-13
like to	2:16 13:32 19:10 29:15 125:-13
#d all	3:13
. can	3:16
it stay	3:25 24:16 41:-8 91:12
stay $	2:10 3:25 41:-8 62:-13 110:-8 125:34
acceptabl==e	3:35
gap on	3:14
acceptabl	3:35
that acceptabl	3:14
acceptabl $	3:28
short or	3:26 22:9 42:-24
or fine	3:26 42:-24
check a	0:-10 3:26 110:29
me ,	0:-13 1:-12 3:25 8:8 19:10 26:10 39:10 55:9 68:13 81:14
^ tabl	16:17
all slot	4:61 13:-11 43:-8
to see	4:9 19:11 75:-10 115:10
each slot	0:-17 4:31
distanc==e	4:25
distanc	4:25
distanc from	4:25
nut to	4:12
length for	4:38 93:-8
so the	53:9 55:10 57:9 65:8 73:39 75:10 89:-9 106:12 114:16 119:8
least new	5:15
touch==ing	5:16 8:-8
^ without	5:26 8:-8
many fret	5:15 8:-8 13:32
each fret	2:14 5:18
get cut	5:25
plan the	104:12
cleverly==	5:9
cut it	5:9 60:11
cleverly	5:9
rule==	6:48
mark on	6:39 42:19
rule	6:48
the rule	6:48
when i	1:8 6:12 17:9 28:9 39:-10 45:9
list with	6:16 10:37 14:10
rule mark	6:9
, to	1:10 75:22
print $	6:8
am about	4:10 6:11 10:23 32:-11
about to	4:10 6:11 10:23 32:-11
, print	6:16
drawer ,	22:11
a bin	0:-8 7:33
tin label	7:24
label ,	7:28 9:8
pictur==e	12:10
pictur	12:10
hand $	8:59 29:-21
@wire stock	8:38 51:-27 66:32 69:38
have any	8:17 12:10
wire we	8:30 11:-14 118:19
stick and	8:27 117:10 118:-9 120:11 121:-10
and piece	8:22 83:-10 84:18
in stainless	8:33 49:9
we any	8:49 31:-14
is lying	8:19
^ quick	8:12 45:-9 89:12
: what	0:-8 2:34 8:25 22:10 30:8
we own	8:42 9:-13 98:28
remain==	8:-16 9:28 87:13
many day	8:-17 9:28 32:10
remain	8:-17 9:27 24:19 29:20 53:13 87:12 117:10 118:-9
remain $	8:-15 9:29 29:21
each wire	9:37 10:-11
^ run	9:35
overview==	9:14 12:12 14:9 25:22
wire supply	9:38
overview	9:14 12:12 14:9 25:22
dry==	9:17 45:10
what date	9:18 30:14
dry	9:17 45:10
of every	4:22 8:28 9:11 16:18 81:31
every wire	19:22
to reorder	9:35 51:12
plac ,	9:11 25:10 39:-9 50:-9 53:10 108:19 116:22
@wire used	9:28
count==ing	9:24 31:-10 36:17
order ,	9:18 10:37 32:13
, doe	0:-11 3:25 9:23 16:19 18:31 30:15 31:-10 42:-15 74:-14 101:11
we be	9:9 32:12
be work	9:9 111:20
doe each	2:13 9:21 10:-11 13:-8 14:40 17:-14 27:20 29:11
of what	5:18 84:-14 125:18
what to	5:21 12:-16 35:12
whom $	10:16 13:-13 15:42 19:16 23:34 33:21
order within	10:8
within #n	10:25 121:15
this time	10:16 18:10
and what	9:-8 10:35 11:-10 13:33 17:40 19:-9 20:34 21:-17 29:-13
purchase==s	10:80 11:-13 19:16 29:-10 47:-13
less==	10:43 11:-11 51:31 120:16 125:21
purchase	10:80 11:-13 19:16 29:-10 47:-13
^ purchase	10:80 11:-13 29:-10 47:-13
day or	10:41 11:-13 22:16 47:-12
less	10:43 11:-11 51:31 120:16 125:21
many job	12:9 14:33 25:-10
work ,	12:28 29:29 58:10
belong to	12:9 14:23 59:16 60:11 64:-9 65:31
lack==	0:-12 4:-11 13:42
lack	0:-19 3:-22 4:-12 13:42 41:-17 42:62
@job lack	3:-16 4:-10 13:24 41:-10 42:36
lack a	0:-12 4:-11 13:42
look up	13:75
up @job	13:30 107:11
what stag	13:48
fret doe	13:32
still need	13:41 22:19
play==	13:22 47:9
play	13:22 47:9
card==	13:51
card	13:51 14:10
progress==	13:103 17:-10
progress	13:103 17:-10
^ progress	13:84 17:-9
on number	1:-14 4:-10 13:55 16:17 38:-25 65:56 82:28 101:-12 107:42 111:-11
many open	12:-16 14:33
staff==	12:-14 14:132 15:20 25:-14 29:8 58:10 60:8 62:33 63:27 110:-9
staff	12:-14 14:132 15:20 25:-14 29:8 58:10 60:8 62:33 63:27 110:-9
^ staff	14:98
staff $	14:62 62:34 63:28 110:-9
team==	14:11
team	14:11
and who	15:-9 28:24
thos==e	0:33 14:31 17:13 21:11 31:11 43:24 57:9 77:-8 80:8 81:8 82:-8 97:14
thos	0:33 14:31 17:13 21:11 31:11 43:24 57:9 77:-8 80:8 81:8 82:-8 97:14
includ thos	0:16 14:20
thos that	14:20 31:12
have retir	14:42
doing @job	30:21 47:-14 65:24
fret==ting	12:30 15:19 73:26
of us	0:-8 9:-8 13:-10 14:81 15:48 25:-16 27:-9 29:15 35:-10 62:41
is meant	15:19 37:14
meant to	15:19 31:23 70:-13 125:21
be fret	15:19 73:13
given==	15:49 33:-10 81:13 100:14 125:-14
was job	13:56 15:27 16:-9 33:-13 44:-11 125:-20
given	15:49 33:-10 81:13 100:14 125:-14
given to	15:49 33:-10 81:13 125:-13
which bar	16:23
how $	16:30
i see	2:-13 4:37 12:16 26:14 30:-8 35:21
see the	4:-10 8:9 14:45 16:9 26:14 33:40 35:21 125:-13
group==	16:43 27:-9 87:9 121:11
press :	16:11 45:18
group	16:65 27:-9 44:-9 87:9 121:11
next group	16:23 27:-9
matter==	16:25 107:12 113:19
suppos the	16:29 125:10
matter	16:25 107:12 113:19
matter $	16:26
once more	16:34 30:-24 62:-18 63:33 95:-8 99:-8 102:53 125:56
and load	16:19
take ,	0:-8 16:23 79:11 83:11
, list	12:26 16:23 22:22 27:-13
@job may	23:13 83:-9 84:10 114:9
far ,	17:12 42:10
, as	17:11 58:-14 63:16 98:22 99:22
a tabl	16:14 17:12 83:-8
tabl $	17:12 24:12
look along	16:-8 17:10
#n pleas	0:-11 11:28 16:-9 17:28 36:17 37:12 38:18 40:-8 83:-15 84:16
flat enough	13:-8 17:23
it done	13:-8 17:19
to what	17:10 18:9 32:10
what we	8:-12 9:-9 10:16 17:10 32:21 69:18 119:44
just the	17:31
@wire hold	9:9 18:12
grip==	18:9 91:12
how tight	18:37
tight will	18:37
grip	18:9 91:12
grip in	91:12
deep enough	18:9 43:8 91:26
too deep	18:24 91:-9 92:16
deep for	18:24 91:-9
should the	5:15 18:28 55:-8 125:25
be bent	5:-8 18:38
did they	19:13 20:-8
list every	8:-13 19:62
with their	4:10 14:33 19:15 25:28 26:-8
their crown	19:27
: when	11:31 19:14 29:-16
by whom	9:-18 13:-9 15:37 19:12 23:-8 26:8 29:15 31:-10 32:39
@wire add	20:15 51:-8 66:33
up in	5:13 20:13 94:9
in september	20:18
september #c	20:35 21:-10
^ sinc	8:8 20:10 33:13 37:8 101:29 102:-12 107:42
november ,	8:-10 20:37 21:-13 33:27 45:-10 115:17
and out	8:-14 20:53
, left	20:20
over ,	1:8 20:11
all time	20:23 93:11
last year	21:37
sum==s	20:72
sum	5:-10 9:-10 19:-10 20:115
the sum	20:38
sum for	20:48
, from	10:26 20:8 32:-16 49:11 109:38 111:-28 116:9
tin spar	21:10
spar us	21:19
and in	9:12 20:-13 21:56 95:15
@wire only	21:65
money sav	20:-8 21:30
useless==	8:-21 9:-11 19:-11 22:133 77:16
useless	8:-21 9:-11 19:-11 22:133 77:16
^ useless	8:-17 9:-9 19:-11 22:109
be good	1:9
too many	22:59 125:-9
many of	9:-11 14:41 22:50 35:-10 125:-9
useless $	22:24
untouch==ed	10:-8 22:42
^ old	2:-9 10:-8 22:35 31:12 39:8 43:9 82:-10 91:30
untouch	10:-8 22:42
untouch for	10:-8 22:35
@wire set	23:24
@wire being	23:18
being kept	23:30
@job already	13:13
already $	13:56 16:-10 44:-11 102:8 107:11 118:29 125:-15
spring -	24:33 35:9 45:32 75:-13 96:-9
- back	24:33 35:9 45:32 75:-13 96:-9
fret came	2:11 24:11 35:13
count==s	51:19 55:15
of spring	35:10 65:19
back for	35:15 37:10 83:12
, give	7:10 84:19
)~",
R"~(back==s	24:16
load do	24:19
do fret	125:63
stay put	24:15 45:21 114:-8
put $	24:15 45:21 114:-8
pop==	24:31 39:10
#n pop	24:8
pop back	24:25
up after	24:24
after it	24:15 93:12
at it	25:13 107:13
all machine	25:37 26:-8
run $	25:17 102:11
equipment==	14:-20 25:80 26:21 35:-8 98:12
equipment	14:-20 25:80 26:21 35:-8 98:12
stand==ing	13:-8 14:-9 17:18 25:16 89:16 91:13
machine and	14:-10 25:17 29:18
stand at	14:25 17:-12 25:16
which $	14:-9 24:44 25:10
@person booking	26:58 61:-10 62:-11 63:-10
com #n	10:8
time==s	11:40 16:-8 26:13 27:10 28:44 29:-24 32:37 93:11
machin time	26:55 28:-8 29:-20
time are	26:52 28:-9 29:-21
many minute	27:48 104:-21
for polish	27:27 104:17
what step	27:22 30:-9
step are	27:10 30:-8
, round	27:13 30:-8
report==s	27:25 29:-10 33:58 58:9 104:46 110:-15
many report	27:21
we know	32:38
know how	4:13 13:23 16:-11
and of	8:58 9:-13 13:-12 27:97
busy are	25:-24 28:-8 29:52
sander ,	25:23 29:15 98:-11 99:17 100:10 101:9 103:8
a free	28:-13 29:57 125:-12
replac==ed	30:12
^ somebody	9:-8 22:-9 30:23 125:89
somebody want	27:10 30:10 35:10
i tell	30:31 35:18
tell a	30:9
a customer	23:13
that @person	31:21 43:-9 62:20 63:-8 67:15 68:-10 107:19
glu ,	30:32
what give	30:14
give if	30:24
way $	8:-22 31:51 87:11
includ the	8:13 22:-9 31:8
clos one	31:53
@wire com	8:-12 31:49
past order	31:21
delivery are	19:-8 31:47
still wait	11:-9 12:19 31:9
order that	31:17
that has	31:26 65:16
we wait	9:-12 23:-9 28:-13 29:-8 31:67
and till	28:-13 31:27
finish order	31:24
order too	31:26
, pleas	0:15 4:-9 7:-12 8:-11 10:32 11:-9 17:-8 20:-19 21:12 25:23 26:-19 28:-9 29:40 30:-10 31:21 32:20 33:10 35:70 55:9 60:20 61:8 65:-8 73:15 98:-15 100:21 101:-8 103:-8 106:29 122:24 125:-9
pleas ,	2:8 11:30 31:13
doe lindwurm	27:-21 32:79 121:-11
lindwurm take	27:-20 32:22 121:9
size==s	7:16 32:30 120:-11
pack size	32:30 120:-11
at lindwurm	32:48 117:-8 119:35 121:9 122:-8
from ,	1:-8 5:15 32:20
long did	32:8
really take	32:8
wire pleas	8:-17 32:54
enter==ed	29:-9 33:51 124:24
what @person	33:46
enter	29:-10 33:50 39:10 124:34
who put	26:11 33:29
^ log	33:141 39:12
log $	33:95
has anybody	20:-8 21:-9 33:29
touch the	20:-8 21:-9 33:24 90:17
explain==	35:68 98:-9
command==	35:82 38:16
explain	35:68 98:-9
^ explain	35:43
explain the	35:33
command	23:-8 25:-8 35:152 38:16
command $	35:50
command==s	23:-8 35:70
question==s	35:50
question $	7:-39 23:-8 35:87
more of	35:10 71:8
the command	35:32 38:17
, show	20:8 23:22 28:9 35:16
what #n	35:18 68:10
@job ;	0:24 16:13
tin have	0:15 81:11
after ,	0:68 105:22
mm finish	0:28
i still	0:-11 1:16 125:24
still make	0:-10 1:16
would go	0:15
#n read	3:16 41:15
read #d	3:17 41:-10
get away	2:14 3:21 30:-8
away with	2:14 3:21 30:-8 40:33 81:-9 100:39
shuffl==e	2:74 13:-17
shuffl	2:74 13:-17
shuffl the	2:14
nut ,	0:22 4:-13 16:10
, using	2:21
, dress	1:42 3:27 50:-14 80:-8
dress ,	1:35 3:30 39:-8 43:49 50:-14 80:-8 107:-18
fret length	4:16 41:-8
they come	4:20
else==	30:13 37:11 38:20 65:24 97:9 99:11 107:-11 113:12 125:-8
and noth	5:11
else	30:13 37:11 38:20 65:24 97:9 99:11 107:-11 113:12 125:-8
noth else	97:9
else ,	113:13
for cut	6:13 104:26
- millimetr	7:18
apart==	7:9 37:30
new drawer	7:12
drawer label	7:12
apart	7:9 37:30
mm apart	7:9
apart $	7:9
many week	8:-26 9:47
together==	5:19 8:-9 9:42 10:22 17:16 67:20
and all	8:-8 9:50 42:11 43:-8 45:30 114:-8
together	5:19 8:-9 9:42 10:22 17:16 67:20
together $	8:-8 9:50 10:9
on december	11:16 112:10
mess==ed	11:36
mess	11:36
moment==	12:40 25:22
fret at	3:17 12:30 41:12 42:-11
moment	12:40 25:22
the moment	12:42
moment $	12:28 25:22
point==	12:9 39:11 41:19 51:46 81:-9 82:29 88:20
point	12:9 39:11 41:19 51:46 81:-9 82:29 88:20
who sit	14:28 15:-14
sit at	14:27 15:-9 58:20 61:-8
every pass	16:22
, still	3:-18 16:29
sunk $	17:37 89:17 93:-9
high==s	17:33
low==s	17:33
and low	17:33
@job should	17:15 47:13 65:9
sit==	2:-14 18:33 58:10 74:-11 82:8 89:-8
^ with	0:19 27:14 30:8 33:-11 36:17 70:-8 89:9 96:9 97:9 114:12 121:35
bottom ,	0:-8 18:19 74:16
@wire sit	18:11 74:-11 82:9
sit in	18:9 75:24 78:-11 89:-9 91:23
hold in	8:42 18:51 22:-10
sum==	5:-8 20:43
: wire	20:11 21:16
scrap and	20:-11 21:24
week ,	28:12 29:11 30:41 52:-23 54:38 116:8 125:15
could be	0:18 91:19
@wire one	22:66 50:11
keep for	23:42 84:27
for whom	23:55
^ was	13:57 16:-9 28:-25 33:-10 44:-11 110:-23 125:53
asid ,	23:28
: how	24:8
up ,	14:13 16:15 31:23
uncertainty==	24:40
and give	24:10 40:13
uncertainty	24:40
uncertainty $	24:40
can work	1:-9 25:13 98:29
once $	25:13
edge==s	27:8 42:11
corner==s	27:45 103:26 104:34 108:-8 125:16
, usually	5:-13 27:49 104:13
usually $	5:-13 27:49 104:13
open time	28:18
and why	17:-10 29:27
why $	17:-10 29:27
overload==ed	29:11
overload	29:11
? how	29:11
so it	3:-20 24:15 29:11 41:25 59:10 75:10 89:-8 91:11 94:10 95:15 101:18 119:8
, glu	30:26
delivery date	11:12 30:15 118:23
refret ,	29:-8 30:30 48:16
would job	16:10 44:-9
someon==e	23:33 29:-9 30:21 35:20 38:23
someon	23:33 29:-9 30:21 35:20 38:23
if someon	30:13
drop off	50:28
they have	119:18
one as	16:19 31:45
averag==e	27:35 29:-13 32:38
is ferro	25:-9 29:-10 32:85
averag	27:35 29:-13 32:38
on averag	27:11 29:-11 32:39
averag $	27:11 29:-11 32:39
me everyth	23:29 33:33
enter $	33:32 124:24
report sinc	33:22
ever do	33:35 40:-8 55:12
anyth with	1:-9 28:10 29:-8 33:33 40:8
with piec	33:34 36:-11 40:-22 81:41
: who	25:12 33:18
book command	35:20
manual==	7:-39 14:-11 35:92
manual	7:-39 14:-11 35:92
in here	14:-11 35:41 45:10 58:15 115:13
tell you	35:21 113:20 119:8
you that	35:21 119:8
that a	35:14
august==	20:40 21:8 121:36
september ,	21:21
, with	0:-9 2:20 16:-10 17:-11 18:45 19:15 24:28 27:9 41:-8 42:8 44:-11 49:10 64:9 72:9 85:9 93:14
no .	0:10 15:11 23:-9 36:26 38:15 70:33 73:9 93:-12 102:22 106:21 117:11 125:-9
. #n	0:9 4:-8 15:10 23:-9 36:35 38:14 45:9 47:-8 70:32 73:8 77:-9 91:-8 92:27 98:12 102:20 106:19 117:23 120:14 125:-11
^ pleas	0:-8 1:10 3:-8 4:9 5:-15 6:-20 10:-12 12:-9 15:17 17:23 19:11 20:-13 23:21 26:9 28:-8 29:-19 32:-9 35:15 37:21 38:-10 40:31 41:11 42:-8 43:-19 45:-13 46:9 48:31 50:-8 53:10 57:25 58:8 62:11 64:-9 71:-8 77:-8 78:-11 82:-11 84:-15 93:9 96:10 98:9 100:-11 101:9 106:-8 108:18 110:13 115:17 122:-10 125:-16
^ go	33:10 36:14 37:-11 55:9 57:14
go ahead	36:14 37:-11 57:15
ahead and	36:25 37:-11 55:9 57:14
fill slot	0:22 36:12
yesterday afternoon	40:18
at half	36:9 43:9 107:12 111:12
===	36:41 51:20 70:-11
=	36:41 51:20 70:-11
, same	36:25 95:53
#n ther	36:23 125:-9
ther ,	10:11 25:27 36:23 125:-9
the other	1:10 6:10 14:33 17:-12 36:19 50:-12 83:-13 84:15 92:25 117:29 125:-17
other #n	36:18 50:-12 92:14 114:26 117:29 125:-17
have used	125:14
, but	1:10 16:9 43:15 71:8 87:-10 106:17 117:13 125:-16
be kept	37:16 83:29 84:-15
save the	1:9 2:15 36:-9 37:15
@job top	36:-9 37:15 41:9
top fret	36:-9 37:15 41:9
i've put	37:11
side for	23:22 37:10
to hold	35:18 37:-22 125:38
think==	0:-11 3:17 30:8 38:-13 89:-11 90:39 124:10 125:49
i be	29:17 125:15
think	0:-11 3:17 38:-13 55:9 62:-13 89:-11 90:39 124:10 125:87
you think	3:8 125:8
think $	0:-9 3:17 125:8
@wire again	38:21 51:16
kept any	38:18
on piec	1:-13 37:10 38:44 40:9
pool==	38:10 65:59 125:-9
go back	38:16 65:31 84:17
pool	38:10 65:59 125:-9
the pool	38:10 65:33
pool $	38:10 65:59 125:-9
someon else	30:13 38:23
may have	38:38
#d now	38:22
reservation==	25:-9 26:21 36:-10 38:55 40:-13 106:97
the reservation	23:70 26:-8 36:-9 38:58 40:-12 84:28 106:29
#d stick	38:20 70:17
would you	0:-23 3:12 9:10 13:10 26:15 38:20 124:9
we'd==	1:-9 31:-11 117:23 125:46
we'd	1:-9 31:-11 117:23 125:46
^ we'd	1:-9 125:34
cancel $	1:-8 106:28 125:18
new short	39:18
: @wire	2:-9 39:13 79:8
into drawer	36:-12 39:15 72:30 73:-8
get #n	2:9 32:17 39:14 120:-9 121:9
piece :	39:14
#d /	39:12 80:8
across ,	41:-9 42:25
, bend	80:16 82:-10
overall==	5:36 29:-10 39:9
was put	39:9 83:-10 84:20
overall	5:36 29:-10 39:9
^ in	2:10 16:9 18:10 20:11 32:12 45:17 76:19 89:-10
tin now	72:10 75:-9
now :	25:12
, raw	1:10
#n point	39:12 41:19 89:-10
point #n	39:11 41:19 88:21 89:-11
so call	39:12 119:10
)~",
R"~(leftover==	0:41 4:-13 21:9 39:20 70:14
i've got	16:15 39:12
a leftover	0:19
leftover of	39:9
i was	1:16 13:8 19:10 28:12 38:12 39:-25 43:14 87:12 125:18
was going	39:-14 125:22
tin but	39:-16 79:-19 125:49
but it	39:-14 112:10 124:-9 125:24
bit for	39:9 80:-10
for drawer	1:-11 39:21 80:-10
#d millimetre	1:10 16:10 18:11 39:8 41:13 80:-11 92:8
millimetre ,	18:11 39:17 80:-12
has gone	36:-10 75:11 77:22 100:-9 106:14 109:10 122:20
gone in	36:-10 45:10 75:11 81:10
scrap ,	20:29 21:-18
worn==	40:29 81:20
becaus of	40:8 53:15
worn	40:29 81:20
reason==	29:19 38:12 48:25 90:-10 91:49 94:-8
corrod==ed	40:30
scrap :	81:9
: piec	0:-8 36:21
reason	29:19 38:12 48:25 90:-10 91:49 94:-8
, reason	48:25
reason :	48:25
corrod	40:30
corrod $	40:30
mayb==e	125:31
mayb	125:31
^ mayb	125:31
point $	51:11 125:11
mm on	3:16 87:13
^ #p	0:42 3:10 16:-17 35:-14 36:-8 40:-9 41:49 42:8 44:17 70:21 77:47 78:17 82:-10 92:13 95:24
measur :	41:11
&#d#p	3:11 41:49 70:17
put down	3:-12 41:20 108:27
as the	3:-12 14:10 18:8 30:9 41:18 73:9 93:15
the length	3:-13 4:37 41:20 69:10 85:10
check==ed	41:26 45:18 74:10 76:-9 91:19 94:8 114:-8
caliper==s	41:45
and got	41:16
to measur	41:11 125:56
measur fret	3:8 125:28
measure ,	16:8 41:-19 77:-10 125:67
fret :	30:10 42:9
by half	42:22
millimetr $	24:11 42:20 55:46 88:23 92:13
lack==s	3:-22 41:-16 42:63
lack #d	3:-17 41:-16 42:64 78:-12
raw ,	1:-8 39:13
tang ,	42:10
, so	0:-9 1:-14 2:-35 3:-11 4:9 5:-13 8:8 15:-11 17:-14 25:10 27:-12 29:-13 35:9 37:9 40:8 44:-12 45:-11 48:32 50:-9 51:9 54:-9 57:22 58:15 64:17 65:12 66:-11 72:-11 73:22 78:-13 82:8 83:14 85:-12 87:15 89:-18 91:-15 98:-18 99:38 100:8 101:10 103:11 105:-10 106:15 109:-9 110:-9 111:8 112:17 115:16 116:9 117:-10 119:23 120:-8 122:10 125:-48
, number	42:11 98:12
: fret	41:-8 42:11 77:10
to a	0:-8 7:25 23:10 41:-8 42:9 58:10 65:24 74:10 99:10 120:-9 121:11 125:-16
#n did	42:-9 45:19 125:15
afraid==	42:-20 125:25
afraid	42:-20 125:25
are clean	13:-10 43:25
clean and	1:12 43:24
finish seat	43:14
, start	43:38 107:17
polish==ed	43:85
i've just	29:10 43:33 66:10 96:10
polish the	43:85
complet==e	13:-14 43:101 83:39 84:11 117:32
complet	2:-13 13:21 29:8 30:-14 43:147 64:-9 83:39 84:11 107:-21 117:32 125:-8
complet ,	29:10 30:-10 43:40
^ mark	6:14 43:21 62:28 63:-15
@job ?	0:8 43:10
yesterday at	43:25 44:18 117:12
complet==ed	2:-10 13:35 29:10 30:-13 43:47 107:-15
be clos	43:44 53:28
clos ,	43:23
, everyth	17:13 33:26 43:22 45:10
not finish	43:-21 108:38
will go	108:24 125:17
^ thos	43:26 80:9
fret have	45:18
been press	125:15
as of	8:10 67:14 98:27 107:12 121:14
gave==	16:-11 37:-11 44:20 70:71 95:13 97:8 100:17 125:-16
squeez==e	16:23 30:24 44:12
gave	16:-11 37:-11 44:20 70:71 95:13 97:8 100:17 125:-16
^ gave	44:12 95:14 97:8
#n a	44:12 69:10 78:16 95:14 97:8
ran==	39:13 44:18 48:13 67:14 68:-10 90:-13 96:34
ran	39:13 44:18 48:13 67:14 68:-10 90:-13 96:34
^ ran	44:18 90:-12 96:34
ran the	44:19
press yesterday	44:21
lot on	44:23
went up	44:16 117:-11 119:30
pass done	16:-26 44:33
lb ,	16:-8 85:8
had fret	44:14 77:16 95:9
under #c	44:15
not been	22:13 23:-8 31:26 125:27
action==	11:-8 44:-10 101:14 124:36 125:47
action	11:-8 44:-10 101:14 124:36 125:47
noth has	5:10 45:23
mov $	45:34
sprung==	2:-8 8:-12 13:-8 17:-15 24:105 43:-8 45:25
i had	5:8 23:10 69:19 78:17
sprung	2:-8 8:-12 13:-8 17:-15 24:105 43:-8 45:25
have sprung	45:15
sprung $	45:19
recheck ,	17:-8 45:27 89:-8
lift $	1:-16 45:70 84:31 112:40
humidity $	45:22
#n had	45:29 72:18 75:-10 89:-11 95:8 115:-13
: the	6:9 45:29 89:-8 94:8
mirjam==	87:-8 125:25
mirjam	87:-8 125:25
luka==	46:10 58:16
parlour @job	46:11
, owner	46:11
luka	46:10 58:16
&#c#d#n#o@job@wire	46:11
matej==	46:14 78:-10
matej	46:14 78:-10
matej ,	46:14 78:-10
: @job	46:11 48:10 78:-10 82:11
, bound	27:11
instrument==	11:16 17:8 30:8
, fret	2:10 3:-8 17:-11 20:22 21:-18 36:-10 37:49 42:9 90:17 92:43 93:-10
instrument	11:8 12:85 25:-8 29:-11 30:8 31:-8 32:-8
ebony==	46:10
ebony	46:10
, a	45:12 89:-8 98:10 120:10
instead of	47:51 54:27 109:-13 111:12
new date	30:-12 47:48 118:12
cancell ,	48:14 53:-8 112:12
ran out	39:13 48:14
money $	48:14
is broken	48:25 57:10
kill==	13:-18 48:120 50:17 66:10 67:29 121:34 122:-12 125:-10
com in	8:-23 11:-8 12:-12 31:58 48:12 62:18
kill	13:-19 48:120 50:17 66:10 67:29 110:12 121:34 122:-12 125:-10
@job took	48:24
took it	48:24
her==s	48:-10 60:11 125:33
might cancel	48:-11 119:-25 125:77
her $	48:-11 59:15 63:11 125:33
wire fine	49:11
fine ,	49:11
stainless steel	39:-9 49:13
nickel==	8:-8 49:23 125:43
silver==	8:-8 49:23 125:43
fret wire	49:11
low ,	17:18 92:24
nickel	8:-8 49:23 125:43
silver	8:-8 49:23 125:43
nickel silver	8:-8 49:23 125:43
silver ,	49:23
density==	49:12
brok ,	49:12
density	49:12
, density	49:12
density #d	49:12
'==	0:-8 2:8 10:10 28:-9 29:28 49:20 79:9 85:-11 92:14 95:21 100:32 104:12 107:10 114:19 125:-16
'	0:-8 2:8 10:10 28:-9 29:28 49:20 79:9 85:-11 92:14 95:21 100:32 104:12 107:10 114:19 125:-16
wire '	49:10
is new	49:10
, barb	49:14 88:12
barb #d	49:13 88:22
, come	49:31
defin -	85:9
hard ,	120:10
creat==e	49:16 58:24 60:-10 98:14
feet==	51:23 58:11 66:28
creat	49:16 58:24 60:-10 98:14
pleas creat	49:8 58:9
creat a	49:16 58:24 60:-10
crown ,	16:11 17:-8 39:-10 49:23 77:18 80:-10
stick length	49:8
feet	51:23 58:11 66:28
#n feet	49:8 51:23 66:28
feet $	49:8 66:32
mini==	49:22
mini	49:22
lindwurm $	8:-9 10:-8 25:-8 32:33 116:12 119:63 121:-11 122:40
stick ,	8:27 46:-10 50:23 66:-17 67:8 116:44 120:18 121:8
from ferro	5:9 50:31 66:-8 119:14 125:24
spool ,	50:18 67:-17
, tare	67:13
stock ,	2:-11 5:19
+==	50:16
+	50:16
stick @wire	50:43 117:-14
cm $	51:45 68:17
apiec ,	50:17
, book	105:12
fair==	29:9 50:27 53:11 112:13 116:-11
fair	29:9 50:27 53:11 112:13 116:-11
the fair	50:28 116:-11
fair ,	50:28 116:-11
take into	50:17 72:13
never order	50:30 116:-16
gross==	50:15 68:-12
came ,	50:31 67:-20 68:-11 117:9
gross	50:15 68:-12
gross ,	50:15 68:-12
the empty	50:31 67:-20 68:-11
#n g	50:12 66:-14 67:34 68:40
read to	17:12 50:18 68:-11
unpack #n	50:25 66:-8
just now	23:9 25:52 29:-23 35:-9 117:13 124:11
mean ,	50:12
, supplier	39:-8 50:19
supplier lindwurm	32:-15 39:-8 50:19 118:10 122:22
lindwurm ,	32:41 39:-10 50:20 116:16 120:-8 121:-13
, pric	39:-8 50:19 117:8
pric #d	39:-8 50:19 117:8
postman==	50:24 66:-15 117:11
postman	50:24 66:-15 117:11
postman brought	50:24 66:-15 117:11
took in	33:19 50:14
ferro $	50:42 66:-10 116:-13 125:26
hand==ed	13:-15 15:44 64:17
, each	7:8 97:11
long ,	44:11 101:14 104:8
, were	39:-11 71:11 72:12
hand in	66:12
been deliver	31:27 50:14 125:13
ought==	9:29 31:-12 125:51
ought	9:29 31:-12 125:51
we ought	10:13 125:15
ought to	9:29 31:-12 125:51
level for	125:38
count as	3:15 42:-13 51:19 55:15
as low	51:8
^ below	51:8
feet of	51:20 68:8
reorder $	2:18 9:31 51:16
again if	3:10 51:17 125:-11
#c cm	51:46
<==	51:10
<	51:10
wher it	1:-10 3:18 36:12 51:-16 125:38
@day and	11:9 29:8 52:10 109:38 110:-13 111:-16
and @day	11:9 29:8 109:38 110:-13 111:-16
@day :	52:30 105:-8 109:-35 111:49
#t and	52:14 54:-9 74:11 109:15 115:-8
the @day	52:32 54:-17 101:15
hour to	109:9
keep thes	52:10 88:10
week :	109:9
: @day	109:23 111:-10
the plac	14:32 28:13 53:18
nobody here	52:-8 53:22 55:10
open this	52:-24 54:12 125:42
from #t	52:-8 54:8 101:27 105:25 109:17 111:-10
tomorrow ,	10:11 18:-11 54:8 105:23 110:12 125:37
, until	30:9 54:8
we stay	54:32
stay open	54:26
open till	54:31
plac of	54:15
the usual	54:27 111:-9
usual hour	54:27 111:-9
normal==	28:-10 53:-12 54:11 112:55
of its	92:11
normal	28:-10 53:-12 54:11 112:55
normal hour	112:8
additional==	30:11 52:-42 54:63
o'clock==	29:-11 47:-8 52:12 54:18 111:37 115:35
additional	30:11 52:-42 54:63
^ additional	52:-42 54:62
additional open	52:-9 54:15
o'clock	29:-11 47:-8 52:12 54:18 111:37 115:35
#n o'clock	29:-11 47:-8 52:12 54:18 111:37 115:35
o'clock $	47:-8 52:12 111:23 115:37
door==s	52:-9 54:26 122:13
open until	52:-8 54:24
to open	28:-11 52:-13 125:76
nice==	54:-9 125:42
it would	26:10 54:-9 125:42
would be	26:10 54:-9 125:41
nice	54:-9 125:42
gaug read	55:22
)~",
R"~(#n lb	55:22
lb now	55:22
gaug division	55:22
to europ	55:15
currency==	55:54
gaug is	55:21
is rat	44:-9 55:18 85:13
dress loss	55:58
loss should	55:43
be #n	55:11
useful==	55:22
useful	55:22
least useful	55:22
not chang	58:16 125:13
perhap==s	55:-8 125:71
higher==	0:-9 18:19 55:-8 125:26
perhap	55:-8 125:71
higher	0:-9 18:19 55:-8 125:26
bar==s	2:10 4:17 16:-11 58:17 86:53
role ,	58:14
peopl ,	58:17
he may	58:28
urban==	58:10
urban	58:10
person of	14:-8 58:32 62:-16 63:29
shop ,	14:11 25:26 58:9 100:14
, work	2:10 16:-8 25:49 58:9
polona==	58:10
polona	58:10
register==	3:-9 14:28 41:23 44:-9 61:15 85:19 98:14 100:8 120:10
thing==s	11:15 29:-8 30:-10 35:32 58:19 84:31
register	3:-9 14:28 41:23 44:-9 61:15 85:19 98:14 100:8 120:10
pleas register	3:-9 41:23
thing ,	33:-8 35:8 55:12 83:14
klara==	58:74 60:-11
klara	58:74 60:-11
the user	59:15
user with	59:12
#c as	59:19
show up	117:10
id==	59:32 60:8
u==	59:13
id	59:32 60:8
u	59:13
@person ,	15:12 28:26 29:26 41:14 58:-8 59:22 62:-19 63:20 64:10 110:-11
, note	59:12 105:18 121:12
note that	33:-8 36:10 53:18 59:12 61:9 87:9 97:13 108:33
treat==	59:10 113:41
treat	59:10 113:41
^ treat	59:10 113:39
as @person	59:10
#c :	60:11 80:10 82:-10
nobody now	60:22 65:21
ditch==	59:-12 60:47 81:14
ditch	36:-9 40:-15 59:-12 60:47 81:55
^ ditch	36:-9 40:-15 59:-12 60:47 81:55
@person pleas	60:12
the uid	60:28
k==	61:9
k	61:9
k $	61:9
marri==ed	61:19 110:10
marri	61:19 110:10
got marri	61:19
her the	61:10
, window	58:10 61:10 64:33 79:9
^ perhap	125:44
should get	125:18
him==	15:13 30:11 47:8 58:12 61:8 62:41
let @person	61:36 62:19
, remov	48:11 57:16 62:38 63:-10 106:20 112:14
him	15:13 30:11 47:8 58:12 61:8 62:41
our peopl	63:34
retir==ing	63:-8 125:38
retir ,	62:12 63:21
longer #n	32:-8 62:45 63:-20 122:19
leav==ing	61:-8 62:36 63:-18 110:-11 125:28
stay==ing	62:-13 110:-8 125:34
not leav	62:-13 108:19 110:-9 125:29
think==ing	62:-12 125:38
think about	38:-13 62:-13 125:68
^ un	62:-19 63:33 83:-9 84:26
retirement==	61:-8 62:-14 63:59 83:11 110:-12
@person came	63:35 110:-10
retirement	61:-8 62:-14 63:59 83:11 110:-12
hir==ed	58:18 61:-8 63:12
reinstat==e	62:-14 63:44
hir	58:18 61:-8 63:12
reinstat	62:-14 63:44
, reinstat	63:28
in again	62:16 63:15 95:32
rejoin $	61:-8 62:-9 63:45
hand @job	13:-15 15:43 64:25
put @person	64:57 107:-9 111:17
belong==s	1:8 14:13 59:15 60:11 65:21
with @person	30:9 59:24 64:14
from here	8:10 52:33 64:47 65:-8 111:-14
assign==	61:-9 64:34
assign	1:28 10:-8 12:19 13:-15 15:38 47:-21 61:-10 64:40 65:45 125:-9
^ assign	61:-9 64:34
assign #n	61:-9 64:34
know==s	15:-8 33:-8 61:8 125:32
know ,	15:-8 29:18 33:-8 102:10 125:24
grab==s	23:-9 38:19 65:54 83:-11 84:14
grab	0:10 1:-8 23:-8 36:12 38:18 42:17 65:54 83:-11 84:14 105:8
for grab	23:-9 38:21 65:55 83:-10 84:15
grab $	0:12 65:55
, anyon	65:21
anyon can	38:28
can have	1:-13 38:24 39:13 65:13
may take	65:13
assign==ed	1:28 10:-8 12:19 13:-15 15:39 47:-21 65:46
no #n	47:-22 65:70 86:9
going up	65:40 107:-15
, somebody	65:28 102:10 107:-10
somebody else	65:28 107:-10
total==	8:26 10:8 66:40
total	8:26 10:22 66:40
in total	8:27 66:40
total ,	66:11
exactly==	39:-9 50:-12 66:39 68:44
rack hold	66:40
exactly	39:-9 50:-12 66:39 68:44
hold exactly	66:40
exactly #n	66:40 68:12
i just	0:-8 66:12 68:8 79:10 124:71
just went	66:13
through them	66:12
altogether ,	67:16 68:-15 106:15
scale==s	66:-11 67:28
scale	66:-11 67:28
better==	8:-8 125:57
could not	0:10 47:11 91:37 108:17
not weigh	125:11
better	8:-8 125:57
cut to	6:15 68:11
metr of	68:12 69:12
#d gram	39:-17 67:-10 68:75
weight==	50:-19 67:27 68:18
weight	50:-19 67:27 68:18
the weight	68:11
weight of	50:-19 67:27 68:18
is what	68:10 91:11 103:18
guess==	125:8
guess	125:8
@wire would	0:24 1:-14 125:8
that yet	3:10 125:8
is really	40:-13 69:34
miscount==ed	69:30
say #d	92:16
stick was	69:18
miscount	69:30
miscount $	69:30
be #c	51:14 69:24
written==	7:33 22:-16 40:21
longer than	38:-8 40:-8 69:53
written	7:33 22:-16 40:21
written down	69:13
knock==	28:27 29:-20 69:21 95:26
knock	28:27 29:-20 45:-8 69:21 75:-10 95:24 97:34 108:12
^ knock	69:21 108:12
m off	50:-10 69:40
all i	69:21
i know	33:-8 69:21 83:14
know $	11:13 25:19 26:9 69:21 110:-12 125:30
say ,	32:22 125:21
will check	115:27 125:15
gave me	70:45 125:-15
#n make	0:26 70:8
them from	32:-8 52:23 70:9 111:-10 122:17
from it	47:11 70:19
saw up	5:32 70:34
: slot	2:8 41:-12 42:16 70:10 71:30 80:-10 91:12
into fret	36:-8 70:41 82:-16
and cut	70:10 71:-9
cut #r	70:-9 71:9 125:23
but the	37:12 43:15 70:-8 79:-18 87:-10 117:10 125:48
#p -	0:45 35:-13 70:24 71:19
- #n	70:24 71:19
the top	2:-10 4:10 71:8 73:18 75:-16 97:51 104:10
were cut	71:11
morn at	40:16 71:11 74:11 76:-8 116:8
i pull	95:13
out again	3:10 72:26 75:-24 125:-10
again and	72:16 75:-14
and they'r	74:11
they'r in	72:17
fret pull	72:21
back out	72:36
has it	1:8 15:12 60:15
any fret	24:27 44:-8 72:-15 125:42
from delivery	39:13 73:25
all done	43:19
stick with	73:42
with delivery	73:21
delivery number	73:39
i saw	4:20 70:14 71:10 74:19
, flat	18:24 74:13
curv at	74:10
the bottom	74:17 91:8
slot :	74:11
sawn==	3:-10 18:9 74:38 76:-12
follow==s	18:8
sawn	3:-10 18:9 74:38 76:-12
bottom that	74:8
follow	69:9 74:13 75:16 93:20
follow the	74:13 75:16
i measur	74:8 78:16 88:12 92:12
each of	14:8 29:18 97:8
the shift	75:26
now sit	75:17 89:-8
ago i	36:11 44:20 75:25
slid==	49:10 92:10
down by	69:15 89:-12 92:12 125:35
width ,	76:10
caliper on	41:18 76:11
fingerboard==	41:-22 76:61 87:23
fingerboard	41:-22 76:61 87:23
@job fingerboard	41:-15 76:42 87:9
fingerboard is	76:10
: job	76:9
edge to	76:24
to edge	76:24
how wide	8:38 9:-12 19:-11 125:15
crush==ed	77:10
crush	77:10
snap==ped	61:10 64:-8 77:120
snap	61:10 64:-8 77:120
hammer==	27:9 35:-9 77:33 125:44
the hammer	35:-8 77:33 125:44
hammer $	35:-8 77:33 125:44
writ==e	10:18 40:25 55:12 77:55
mangl==ed	77:28
writ	10:18 40:25 55:12 77:55
^ writ	40:25 77:28
writ off	40:25 77:28
mangl	77:28
anew ,	2:10 101:-8 102:14
been made	72:-10 78:37
made again	78:45
replacement==	78:32
replacement	78:32
a replacement	78:29
is made	78:22 85:11
over again	16:23 42:-8 45:9 72:-10 78:28 89:-12 115:19
i think	124:10 125:12
, about	79:11
handful ,	50:-9 79:10 80:11
or so	2:10 26:10 50:-9 79:12 125:20
so ,	2:10 26:11 50:-9 79:12
, unmeasur	39:-8 50:-10 79:32
of pull	79:19
bunch==	79:13
bunch	79:13
a bunch	79:13
bunch of	79:13
measur ,	79:19 80:9
roughly==	79:21
roughly	79:21
roughly #n	79:21
unknown==	79:22
unknown	79:22
have put	79:-18 125:25
full $	79:-18 83:17 125:25
i've gone	42:11 116:9
unmeasur @wire	39:-15 79:12
handful across	80:16 82:-10
mm :	3:13 69:18
here is	63:14
, straight	52:39
was a	35:-9 112:16 117:-9 119:12 124:16
quiet==	33:12 89:12 125:11
somebody ought	125:38
quiet	33:12 89:12 125:11
is quiet	33:12 125:11
box==	0:14 7:30 40:-9 81:26 87:10
box	0:14 5:-8 7:76 22:-18 40:-9 81:26 87:10
worn through	40:24
scrap==ping	125:31
could do	29:18 125:24
a few	2:-8 27:10 125:31
pair==	82:12
took a	71:27
pair	82:12
pair of	82:12
s on	82:11 125:13
two==s	82:29
two	82:29
not using	82:-12 86:11 125:16
they'd==	116:9 118:27 120:17 125:10
we'd have	125:11
they'd	116:9 118:27 120:17 125:10
by all	83:36 84:-10
whatever==	5:-12 10:10 22:14 56:10 83:36 84:18 103:14 124:10
whatever	5:-12 10:10 22:14 56:10 83:36 84:18 103:14 124:10
whatever the	5:-12 83:35
: set	7:-11 55:19
want ,	36:11 83:14
, piece	2:11 8:10 82:9 83:13
and new	83:30
stuff==	5:16 16:-9 22:10 83:32 84:14 117:12
stuff	5:16 16:-9 22:10 83:32 84:14 117:12
the stuff	16:-8 83:23 117:13
whol lot	73:-16 83:18 84:62
nobody take	83:13
, keep	3:14 40:19 68:12
keep it	3:8 38:17 87:8 119:10
for that	18:12 31:8 43:-9 84:10 101:15
all hold	23:47 84:21
hold off	23:-15 38:19 84:31
noth need	84:27
need keep	84:27
oak==	85:15 125:32
press bar	85:9 86:29
oak	85:15 125:32
oak ,	85:17
neck and	85:17
bar is	85:15
nam==ed	49:39 57:43 85:15 98:29 99:24 103:-10
@wire bar	44:-9 85:23
nam	49:39 57:43 85:15 98:29 99:24 103:-10
bar nam	86:10
mm long	41:15 72:23
, hollow	16:9 85:13
long and	68:8 85:37
result==	50:-10 66:13 78:37
the sole	85:16
)~",
R"~(result	17:14 50:-10 66:13 78:37
- bar	98:27
might ,	85:8
grand==	3:10 39:-9 43:11 44:11 49:9
grand	3:10 39:-9 43:11 44:11 49:9
call grand	39:-9 49:9
caul==	40:-8 85:19 86:51
mapl==e	83:11 86:15 117:-9 118:15
^ register	44:-9 85:17 98:15 120:10
register a	3:-9 41:23 85:10 98:15
caul	40:-9 85:19 86:51 96:11
a caul	85:19
the name	7:13 58:13 61:15 65:23 121:10
name of	14:23 61:16
mapl	83:11 86:15 117:-9 118:15
length ,	69:8
bar :	85:23 86:-8
bar short	85:8 86:43
gone for	86:17 100:19
long from	86:17
of that	36:11 71:8
retir the	86:28 118:10
drop -	100:21
bar hollow	86:8
away ,	1:8 3:9 100:10
, strik	119:8
strik it	119:8
nam hollow	86:10
using it	86:15
neck lie	87:23 94:-10
took job	15:19 33:-14 87:25
measur from	87:10
hang==s	87:38
hang free	87:23
so a	87:26
over it	87:17 96:8
barb on	88:33
our @wire	1:-14 5:31 7:13 8:-17 19:26 20:18 23:-11 32:-8 88:12 118:10
thickness of	88:24
twic==e	113:12
twic	113:12
#r steady	89:52
, held	89:9
&#p@job	89:15
firm==	9:-15 19:-13 32:46 89:10 116:9 122:15
i laid	82:-10 89:31 95:-9
straightedg on	89:9
firm	9:-15 19:-13 32:46 89:10 116:9 122:15
^ around	89:16
, trebl	89:16
teeter==s	89:24
but not	58:16
, edge	89:14
look a	89:24
eye==	17:-9 37:12 79:14 89:45 92:-14
eye	17:-9 37:12 79:14 89:45 92:-14
by eye	17:-9 89:45 92:-14
eye ,	17:-9 79:14 89:45 92:-14
gap at	90:17 91:39
tippy==	89:21
tippy	89:21
side ,	17:-8 37:14 89:30
quickly==	29:10
quickly	29:10
light show	90:12
can slid	90:17
the feeler	90:14 92:11
^ under	51:14 90:9
the wood	90:46 95:-8
wood ,	90:13
gap ,	90:36
daylight==	90:8
^ you	36:11 90:8 102:15
you can	53:9 90:21 99:12 102:25
daylight	90:8
dirt in	0:-8 4:-9 36:-12 91:54
old glue	82:-10 91:44 96:-8
glue pick	96:11
stand up	91:21
not deep	91:27
check #n	91:19 114:14
and could	0:11 91:19
find any	91:19
hit==ting	91:22
hit	91:22 124:10
tang hit	91:22
hit bottom	91:14
sawdust==	4:-15 18:-11 91:49
sawdust	4:-15 18:-11 91:49
feeler==s	92:8
measur with	92:11
feeler $	92:11
hundredth==s	92:69
hundredth	92:69
#n hundredth	92:69
the line	41:-18 59:-14 60:17 92:64
lower than	41:-12 82:-10 92:47
than #n	41:-12 51:12 82:-10 92:35 93:17 104:18 120:17 125:-12
, below	92:18
a #o	0:-8 78:12 92:8 95:26 99:21 125:15
how low	92:20
too low	92:17
than the	55:12 69:14 92:28
end at	93:12
another fret	71:-9 78:22 93:16
final==	41:-12 77:-21 93:68
final	41:-12 77:-21 93:68
final fret	41:-10 77:-19 93:46
forever==	89:-8 93:47
goe up	93:35 94:9
forever	89:-8 93:47
forever $	93:47
its very	87:14
i straighten	94:25
rod==	5:27 68:8 94:22
tighten==ed	94:13
rod	5:27 8:11 9:-11 68:8 94:22 116:15
tighten	94:13
forward==	30:16 94:9 125:-9
forward	30:16 94:9 125:-9
a touch	2:25 13:-9 87:9
perfectly==	94:8
perfectly	94:8
and seat	95:31
seat it	95:21
reseat half	95:14
in their	2:-10 4:-9 18:22 95:9
their slot	2:-10 4:-9 18:22 95:9
#n reseat	15:9 46:-8 90:9 95:43
shim==	90:-8 95:39
gave fret	37:-11 44:9 70:26 95:15 97:9
a shim	90:-8 95:39
reseat==	43:21 95:11 124:33 125:21
did a	19:11 21:-10 95:19 97:12
reseat of	95:35
reseat==ing	15:9 95:46
put glue	82:-10 96:18
clamp them	82:-10 96:12
: #r	52:32 96:20 115:25
, got	41:-15 76:25
thin==	8:9 75:-14 89:12 95:11 96:10
thin	8:9 75:-14 89:12 95:11 96:10
, clamp	96:17
itself==	97:18
itself	97:18
top off	75:-9 97:34
off #n	75:-9 97:34
i levell	97:22
ston==ed	17:8 97:18
ston	45:-10 69:13 80:-9 97:101
individually==	97:11
individually	97:11
abrad==ed	17:-13 97:44
abrad	17:-13 97:44
, has	67:10 97:10
machin drill	98:12
bandsaw==s	98:38 100:18
jig==	98:22 100:38
new thing	98:33
jig	98:22 100:38
jig ,	98:23
wheel==	26:8
up a	1:-11 24:20 45:9 98:28 99:-11 103:12
wheel	26:8
singl==e	57:10
machin kind	98:13
kind nam	98:9 100:8
slot saw	4:-11 98:9 103:18
singl	57:10
a singl	57:10
singl #n	57:10
as many	58:-8 98:23 99:22
many as	58:-8 98:23 99:22
arbor press	99:14 101:-8 102:10
chang -	98:-10 99:16 121:13
- machin	98:-11 99:14 100:20
limit ,	16:67 17:-9 48:-9 99:23 114:-8
#o press	99:30 125:15
press has	99:16
arriv ,	88:-9 99:16 117:20 120:11
so we'v	99:27
minut==e	2:8 27:-9 99:15 104:29
make it	16:10 36:11 51:-8 65:18 69:42 99:14 113:10
minut	2:8 27:-9 99:15 104:29
#n minut	99:15 104:29
the number	12:-9 14:14 38:-10 55:-9 59:9 60:16 81:14 99:36 106:32 119:8 125:-8
number of	12:-9 14:14 60:12 98:11 99:44
workplac==e	99:31
machin nam	99:26
workplac	99:31
take them	32:8 50:8 100:25 122:31
them off	100:10 122:18
sander away	100:17
router==	98:12
router	98:12
it from	48:11 100:13
belt==s	101:10
nobody can	101:27
the belt	42:18 101:14
chang $	101:12
kaput==	25:-10 101:74
kaput	25:-10 101:74
usabl==e	3:17 41:-10 101:32 102:43
usabl	3:17 41:-10 101:32 102:43
, its	77:16 85:11 89:14 101:37
press can	101:14
used from	101:16
both sander	25:16 100:13 101:15 102:14
#o sander	101:15 102:67
mend==ed	25:-8 69:9 101:-9 102:50
mend	25:-8 69:9 101:-9 102:50
is mend	25:-8 101:-9 102:50
fil #n	97:16 103:11
polish==	43:9 103:19 104:16 107:27
nip==ping	27:12 43:66 71:-10 103:30 104:26 108:-9 125:-15
plac on	89:9 103:12
sav the	4:-11 72:23 103:18
saw $	4:-11 98:37 103:16
occupy==es	103:18
occupy	103:18
the time	43:-12 65:16 104:25 106:10 108:19
for crown	27:20 104:17
polish ,	27:18 43:17 104:12
hour ,	104:15 105:9
nip doe	104:27 125:-8
, make	51:10 69:17 99:11 113:11 125:-8
be plan	100:14 104:17
@person down	111:18
@day between	52:-9 101:14
keep a	105:13
book it	105:22
block==	16:19 17:-8 85:13 97:9 105:17
inspection==	90:10 105:20
block	16:19 17:-8 85:13 97:9 105:17
^ block	105:20
inspection	90:10 105:20
@job sander	106:57
sander time	106:57
time can	65:28 106:21
to seat	27:10 107:29 125:18
^ interrupt	108:64
interrupt the	108:39
the fil	27:10 108:20
off at	107:-8 108:16
unfinish==ed	3:9 12:39 48:-8 108:65
stop ther	93:10 108:21
unfinish	3:9 12:39 48:-8 108:65
unfinish $	12:39 48:-8 108:65
- @day	52:8 54:-23 109:38 111:-12
, day	28:-9 29:30
, hour	28:22
work hour	28:22
on holiday	33:-8 83:14 110:35 111:-17
holiday from	110:35 111:-17
sick==	61:-12 102:10 110:44
sick	61:-12 102:10 110:44
not here	109:-11 110:47 125:-16
give @person	110:30
@person the	110:30
afternoon of	11:24 110:30
off next	125:15
recital==	110:9
recital	110:9
^ off	48:-8 108:42 110:20
, me	110:41
of her	109:-12 111:14
in till	111:23
am only	111:23
not a	90:9 112:17
closur==e	112:123
closur	112:123
a mistak	35:-9 112:16 117:-9 119:12 124:16
remov it	48:11 57:15 106:20 112:14
eve==	112:23
be open	54:-9 112:13
eve	112:23
fall through	106:20 112:32 119:17
treat the	113:39
usual again	113:39
no rush	47:14 113:38
until @job	114:31
, other	114:27
let job	38:-13 65:26 114:29 125:-12
behind job	48:-8 65:-9 114:55 125:-10
lift==	95:25 112:28 114:37
^ lift	95:10 112:28 114:37
lift the	95:25 112:28 114:37
the wait	12:17 45:20 114:29
&#t@day@job	115:15
, they	70:12 72:12 75:-9 100:14 116:16 119:9 120:42
they say	32:10 116:27
say it	116:12
, promis	117:-9 118:23
promis in	117:-9 118:23
arriv==ing	116:10
plac an	116:17
with ferro	50:-8 116:20 121:34
a fortnight	10:19 116:10 120:16
fortnight $	116:10 120:17
^ lindwurm	32:10 50:-10 117:57 118:42 120:-15 121:32 122:24 125:-11
the parcel	117:17
the lindwurm	50:23 117:15 118:13 119:-10
lindwurm parcel	117:47
crown measur	88:-10 117:36
yesterday ,	116:8 117:20
com @day	118:8
lindwurm order	117:11 118:11
order :	116:11 118:13
order number	116:17 117:12 118:21 119:48
#n should	45:-8 89:-10 106:32 115:21 118:28
late ,	113:20 118:10
rang==	118:22 119:18
rang	51:29 118:18 119:16
lindwurm rang	118:22
rang ,	118:12
becaus they	75:-8 81:16 95:9 119:17
lindwurm can	119:18
not deliver	119:18
withdraw==	32:-19 48:20 119:45
withdraw	32:-19 48:20 119:45
^ withdraw	32:-18 119:45
withdraw the	119:17
told==	26:9 33:13 47:36 57:16 64:12 66:33 75:9 89:-9 100:-10 102:10 110:8 125:-8
told	26:9 33:13 47:36 57:16 64:12 66:33 75:9 89:-9 100:-10 102:10 110:8 125:-8
ferro we	116:9 122:15
, order	116:8
harbour==	120:16 122:35
metal==s	120:52 121:-8 122:34
harbour	120:16 122:35
metal	16:20 17:-9 82:-10 89:20 120:52 121:-8 122:34
harbour metal	120:16 122:35
copper==	122:15
lane==	120:12 122:15
copper	122:15
lane	120:12 122:15
copper lane	122:15
lane ,	120:12 122:15
)~",
R"~(sold in	120:12
at least	32:11 120:16 121:11
least #n	120:16 121:12
tool==s	25:57 108:18
tool	25:57 108:18
tool on	108:19
supplier list	122:8
, pack	32:34 120:28 121:-33
- supplier	121:10
, lead	121:20
lead day	121:12
kettl==e	12:10 29:10 120:20
kettl	12:10 29:10 120:20
week and	22:8 120:10
and want	48:8 120:10 121:15
want an	120:10 121:15
#n kg	120:11
wren==	120:14 121:-14 122:27
fretwir==e	8:28 18:34 49:8 120:14 121:-14 122:26
wren	120:14 121:-14 122:27
fretwir	8:28 18:34 49:8 120:14 121:-14 122:26
wren fretwir	120:14 121:-14 122:27
street==	53:9 120:29
street	53:9 120:29
week from	118:17 120:20
from order	117:9 120:20
order to	5:13 120:21
door $	53:11 120:10
metal ,	120:25
they need	27:8 100:14 120:28
dovetail==	120:11 121:-10
dovetail	120:11 121:-10
a minimum	120:13 121:-11
supplier ferro	120:-8 121:10 122:28
ferro ,	5:10 27:-13 32:28 116:8 120:-8 121:52
ask for	121:13
quicker==	32:29 121:8
quicker	32:29 121:8
quicker ,	121:10
buy from	120:10
business==	28:28 29:8 100:-9 122:23 124:9
ferro has	100:-9 122:20
gone out	62:19 63:-17 100:-9 122:20
business	28:28 29:8 100:-9 122:23 124:9
of business	100:-9 122:20
business ,	29:10 100:-9 122:20
plum==	122:27 125:-19
plum	122:27 125:-19
that supplier	122:23
no wait	124:21
wait ,	108:19 124:21
scratch that	87:40 106:10 124:58
said==	53:-12 54:11 66:12 69:13 112:27 118:10 124:17
what i	35:-14 124:72
said	53:-12 54:11 66:12 69:13 112:27 118:10 124:17
just said	124:27
to report	102:13 124:11
report that	102:13 124:11
that ,	87:42 124:11
cancel what	124:51
should not	25:14 51:11 60:9 65:9 125:-10
have gone	81:11
hook==	56:12 57:81 100:-9
receiver wall	57:9
hook	56:22 57:81 100:-9
/ hook	56:20
tablet==	57:61
tablet	57:61
tablet $	57:61
wire .	0:11 71:19
. low	51:13
desk==	57:45
tell http	56:10
whatever fall	10:11 56:10
desk	57:45
screen==	57:44 100:-8
notice==s	57:44
screen	57:44 100:-8
the screen	57:10
notice	57:44
receiver ,	57:10
, name	14:35
address==	32:13 56:20
longer ,	65:23 81:15
address	32:13 56:20
address http	56:8
kitchen==	57:39 67:11
you add	20:8
kitchen	57:39 67:11
the kitchen	67:12
receiver==s	57:28
offic==e	56:10 57:8
offic	56:10 57:8
offic $	56:10
will take	36:57 64:40 125:-32
and with	16:55 86:-25
^ its	87:34 91:24
, on	0:23 4:-13 27:16 29:-10 31:21 110:71
@person right	61:21 105:24
give it	15:12 38:11 40:11 64:26
they'v==e	52:-8 72:-10 81:31 82:12 110:10 118:52
they'v	52:-8 72:-10 81:31 82:12 110:10 118:52
^ they'v	52:-8 118:52
me #n	94:12 105:10 109:-9 111:10
well ,	36:10 42:39 48:11 54:8 78:-9 95:51 99:11
it has	50:14 65:-11 87:11 94:31 125:-8
stood==	17:-10 45:8 97:23
stood	17:-10 45:8 97:23
then $	0:-16 3:-12 16:8 27:11 125:36
bar #n	125:15
we never	96:-11 122:14 125:45
mind $	38:19 125:56
won==	14:-13 33:-12 125:53
match==	0:27 14:-13 18:11 33:-12 39:-10 73:39 125:53
won	14:-13 33:-12 125:53
match	0:46 4:-10 14:-13 33:-14 39:-10 73:39 125:53
coffe==e	29:-14 107:11 125:77
coffe	29:-14 107:11 125:77
glass==es	33:-9 125:46
glass	33:-9 125:46
joke==	25:-8 35:-13 125:82
joke	25:-8 35:-13 125:82
joke $	25:-8 35:-13 125:82
@person be	28:47 110:-14 125:-14
be off	28:36 29:-9 110:-32 125:37
she'll==	30:12 110:-12 125:24
she'll	30:12 110:-12 125:24
, she'll	110:-12 125:30
agre==ed	110:-8 125:18
@person want	106:17 110:-8 125:8
agre	28:10 29:-8 110:-8 125:18
, could	125:11
the date	47:22
nearly==	2:10 5:10 13:-8 43:-48 114:-9 125:89
nearly	2:10 5:10 13:-8 43:-48 114:-9 125:89
is nearly	13:-8 43:-46 114:-9 125:89
when i've	4:14 29:-10 114:-8 125:33
i've finish	4:14 29:-10 114:-8 125:33
not make	0:11 113:-18 125:22
if #n	17:-8 89:-17 125:32
be set	125:45
i'd rather	2:8 4:9 125:25
reseat it	125:25
fret were	17:-22 24:-17 33:64 45:8 97:-9
bar wide	86:-15 125:50
that @wire	3:-10 8:51 19:24 23:-8 31:20 71:8 88:-8
faster==	125:15
we bought	50:-15 116:27 125:14
faster	125:15
or more	22:18 104:-12 121:15 125:44
to say	35:13 104:-12 125:41
sell==	32:22
doe ferro	32:21
ferro sell	121:15
did ferro	19:33 33:-13
last time	19:33 26:10 33:-13
doe undo	35:40
the reminder	14:-16 32:-11 33:-9 57:42 125:50
reminder $	14:-16 32:-11 33:-9 57:42 125:50
the radius	74:8 85:10 125:40
let me	4:-9 6:10 7:9 10:24 12:13 13:-8 14:34 28:36 29:-8 33:36 38:-16 125:10
ask about	15:21 33:-8 125:36
@job phon	13:-38 15:-8 48:10 125:88
fix==	36:-8 40:-12 69:43 125:25
talk==	53:-8 55:20 112:-15 125:44
talk	53:-8 55:20 112:-15 125:44
the littl	2:10 4:19 7:11 40:16
bit in	7:13 18:8
tin can	22:9
for line	0:10
is about	0:10 8:18
the right	0:10 18:11
scrap of	79:19
@wire stuff	5:17
of thos	0:18 57:10 97:17
thos littl	21:11
littl bar	2:11 4:19
groov==e	1:9 3:21 4:26 41:8 75:19 89:-16 91:9 93:-9
groov	1:9 3:21 4:26 41:8 75:19 89:-16 91:9 93:-9
#o groov	0:11 3:24
groov of	0:11 3:24
of some	0:13
right up	0:23 4:-11 87:13
up by	0:23 4:-11 69:13
, long	0:15 1:9
long one	1:17
one too	0:17
tin bit	0:54 22:-9 39:-14
just tell	17:12
me which	13:-11 15:26 17:10 22:29
a wast	22:36
not mind	125:-8
^ as	0:-9 1:-8 13:8 14:9 17:25 18:9 19:8 22:8 23:12 26:10 28:9 35:14 55:14 100:12
as i've	28:10 35:15
a finish	0:20
finish fret	0:20
wee==	3:-8 8:9 13:8 23:21 26:19 41:20 67:8 78:-8 92:10 94:10 104:11 125:-9
wee	3:-8 8:9 13:8 23:21 26:19 41:20 67:8 78:-8 92:10 94:10 104:11 125:-9
wee bit	3:12 8:16 92:11
e'er==	26:19
e'er	26:19
e'er a	26:19
g'day==	0:10
that'll==	0:14
g'day	0:10
in ther	0:9 8:14
that'll	0:14
that'll do	0:14
y'all==	1:-11 3:8 5:16 8:13 9:-14 11:17 16:19 26:8 27:17 29:-11 39:13 42:-9 44:8 58:10 102:12 111:13 119:13
y'all	1:-11 3:8 5:16 8:13 9:-14 11:17 16:19 26:8 27:17 29:-11 39:13 42:-9 44:8 58:10 102:12 111:13 119:13
what y'all	0:14 5:17
y'all got	0:14 8:15 26:11
in that	0:15
that tin	0:15 21:8
in number	0:14 3:15 91:11
a wee	3:12 8:14 42:-8 92:11 104:11
you ,	0:-10 13:9 113:20
job number	6:12 13:24 26:9 37:15
fret number	13:-9 17:19
what from	0:23 5:38 19:-10
the box	0:26 7:46 22:-18
box of	0:26 7:34 22:-17
remainder==	0:19 1:9 110:16 112:18 117:13
match==es	0:19
^ to	0:18 2:-9 5:16 15:16 57:15 120:18
remainder	0:19 1:9 20:-9 21:9 110:16 112:18 117:13
search==	0:9
search	0:9
welcom $	0:-8 1:17
advis==e	15:21 29:20
item==	1:25 22:-9 23:13 33:39
suitabl==e	18:10
mr==	13:18 28:8 30:11
advis	15:21 29:16 101:12
pleas advis	15:21
advis which	15:21
item	1:24 11:36 22:-9 23:13 33:35 81:14
suitabl	18:10
mr	13:18 28:8 30:11
mr @job	13:18 30:11
record==s	0:26
remnant==	0:26
allocat==ed	0:26
position==	0:23 16:8
for our	0:25 7:14
record :	0:25
: which	0:29 24:24 27:9
remnant	0:26
allocat	0:26
position #n	0:24 4:8 41:-11
job no	0:25 15:11 23:-8
kindly==	0:10 5:11 11:30 17:15 28:11 29:9 33:22 36:12 40:13 60:11 61:12 62:17 63:-9 77:-8 98:8 99:-8 106:27 124:30 125:-11
availabl==e	0:17 35:32 101:9
exceed==ing	0:17
kindly	0:10 5:11 11:30 17:15 28:11 29:9 33:22 36:12 40:13 60:11 61:12 62:17 63:-9 77:-8 98:8 99:-8 106:27 124:30 125:-11
^ kindly	0:11 2:18 5:-8 11:30 17:15 28:11 29:9 33:22 36:12 40:13 60:11 61:15 77:-8 98:8 99:-8 106:27 124:30 125:-10
availabl	0:17 35:32 101:9
exceed	0:17
ask==ing	28:8 29:8
reus==e	21:33
exist==ing	8:12 9:-10
reus	21:33
exist	8:11 9:-11 26:15 100:10 121:15 122:-12
come slot	70:16 71:-8
identify==	0:19 8:-8 22:12
produc==ed	0:19 71:13
identify	0:19 8:-8 22:12
pleas identify	0:19 8:-8 22:12
stock in	0:17 8:-36 22:51 50:15
tin from	0:19 21:10
produc	0:19 22:-8 71:13
be produc	0:19
suppos==ed	4:31 9:-11 17:-10 29:14 31:19
guitar==s	8:-10 9:13 11:11 12:21
i suppos	29:17
suppos to	4:31 9:-11 17:-10 29:14 31:19
any of	8:11 23:10 65:15
guitar	8:-10 9:13 11:11 12:21
piec with	40:16 70:11
on it	1:11 15:23 27:10 33:10 46:-9 50:19 77:24 107:10
which groov	1:11
would wast	1:18
wast the	1:18
least of	1:18
small==	0:-8 7:16 30:14 42:12
rough==	1:9 39:9
small	0:-8 7:16 30:14 42:12
too small	1:9 42:13
small ,	1:9 42:13
end are	1:8
rough	1:9 39:9
still rough	1:9
could it	1:27 30:8 39:-10
whereabout==s	1:63 50:-13
whereabout	1:63 50:-13
and whereabout	1:12
whereabout on	1:22
goe wher	1:16 2:15
, whereabout	1:51 50:-13
whereabout $	1:41 50:-13
sweep==ing	1:10 39:-10
found this	1:10 39:-10
sweep	1:10 39:-10
was never	1:10 39:-10 97:10
never in	1:10 39:-10 109:24
)~",
R"~(you'r==e	2:9 103:8 113:20 120:-9 121:11
^ whil	7:10 20:8 33:12
you'r	2:9 103:8 113:20 120:-9 121:11
^ now	32:13
now that	32:13
on that	0:-8 3:9 64:21
though==	1:12
though	1:12
#o :	1:11 42:18
which i	0:-9 18:19
ye==	2:10 11:13 25:22
ye	2:10 11:13 25:22
would ye	2:10 11:13 25:22
mate==	1:-8 8:8 9:-12 12:15 17:8 19:20 20:-11 23:21 28:9 30:10 31:19 35:13 38:15 47:-15 48:16 69:12 101:12 110:24 116:8 125:-11
mil==	41:28 69:17
mate	1:-8 8:8 9:-12 12:15 17:8 19:20 20:-11 23:21 28:9 30:10 31:19 35:13 38:15 47:-15 48:16 69:12 101:12 110:24 116:8 125:-11
mate ,	27:11 29:17 30:-9 38:21 48:17 90:9 101:14
mil	41:28 69:17
job it	44:12
reckon==	8:-9 9:17 18:41 39:13 41:20 51:10 60:12 64:12 66:9 77:-8 92:14 104:42 106:10 114:13 118:9 125:-21
oughta==	1:12 11:20 51:10 64:15
someplac==e	1:12
reckon	8:-9 9:17 18:41 39:13 41:20 51:10 60:12 64:12 66:9 77:-8 92:14 104:42 106:10 114:13 118:9 125:-21
i reckon	1:12 41:28
reckon piec	69:10
oughta	1:12 11:20 51:10 64:15
someplac	1:12
the piec	0:-16 1:13 37:22 38:12 40:12 69:16 70:18
in which	0:-12 2:10 4:23 7:15 10:-16 13:20 16:10 27:29 109:15
remainder of	1:10 20:-9 21:9 110:17
it belong	1:10
finish ,	0:12 31:13 107:11
employ==ed	1:9 14:18 36:19 86:10
employ	1:9 14:18 36:19 86:10
be employ	1:8 86:10
employ $	1:9
indicat==e	1:28
indicat	1:28
to which	1:28 23:12
item #n	1:27 22:-9 23:14 33:39
tin should	1:28 5:-9 22:9
assign $	1:28 10:-8 15:16
view==	58:9
view	58:9
and which	0:-14 13:8 14:32 17:-12
^ some	2:11 22:-11 79:15
some of	2:11
bar i	2:11
them all	2:11 84:19
hardly==	2:11 51:8
i push	16:10 17:-8 24:-9 44:32 75:36 89:-9 97:-9
hardly	2:11 51:8
cut again	2:17
swap==	2:11
fewest==	2:106 13:-8 23:-10
and they	41:13 116:16 120:11
they are	70:12 72:10 113:20
swap	2:11
fewest	2:106 13:-8 23:-10
the fewest	2:20
groove==s	2:8 13:24 18:22 70:13 71:10 107:10
lie on	2:8 79:14
@job so	2:9 13:23 33:-12 73:20
groove	2:8 13:24 18:22 70:13 71:10 107:10
the groove	2:9 18:22 70:14 107:11
with noth	2:9 87:10
noth in	2:9 13:25
in them	2:9 13:25
can get	2:9
plan ,	2:12
^ re	2:21 63:38
which i'd	2:8 29:18
late in	2:8 98:44
how could	2:8 5:-11 21:-9 22:27
be laid	2:19 17:14
them are	2:8
over and	62:18
and said	118:10
half the	84:11
so what	4:14 16:14 26:8 29:-12 33:19
the best	2:29
best way	2:17
way to	2:17 5:38 9:-12 31:31
them along	75:10
if fret	3:12
calliper	3:8 41:56
the calliper	3:8 41:42
redistribut==e	2:13
a minut	2:10
minut ,	2:10
how to	2:10 5:44 8:-12 9:-14 35:18
redistribut	2:33
, tak	2:10 69:23
slot that	2:20
never had	2:9 35:15
had #n	2:10 66:10
how would	5:9 35:13 44:-9
so ther	2:9 5:8 87:10 99:12
how'd==	2:9 16:23
em==	0:-8 2:9 79:10 95:23 122:8
how'd	2:9 16:23
em	0:-8 2:9 79:10 95:23 122:8
' em	0:-8 2:9 79:10 95:23 122:8
em down	2:9
so we	2:10 68:13 112:14
the most	1:9 2:8 5:31 24:10 55:12
most $	2:9 24:12
along on	75:10
plac so	75:10
only a	27:11
manner==	2:11 16:10
newly==	2:11 72:-10 78:23 95:15
distribut==ed	2:11
manner	2:11 16:10
which manner	2:11 16:10
newly	2:11 72:-10 78:23 95:15
distribut	2:11
wish==	55:15 110:35 111:-11
@job i	71:26 75:27 94:13
wish	55:15 110:35 111:-11
i wish	55:15 110:35 111:-11
wish to	55:15 110:35 111:-11
; which	1:8 2:18 70:-8
which goe	2:15
measur ;	2:11
them the	2:11 25:11
let==s	2:16
gander==	2:15 115:15
gander	2:15 115:15
help of	2:16
rearrangement==	2:49
minimise==s	2:15
remake==s	2:92 13:-8 23:-10
rearrangement	2:49
minimise	2:15
remake	2:92 13:-8 23:-10
provid==e	2:20 17:19 27:10 33:30 35:28
redistribution==	2:20
consider==ed	2:20 5:-9 22:11
unfill==ed	2:20
provid	2:20 17:19 27:10 33:30 35:28
kindly provid	2:20 17:20
provid the	2:20 27:10 33:31 35:28
redistribution	2:20
, also	2:20 14:12 31:12
consider	2:20 5:-9 22:11
unfill	2:20
relocat==ed	75:11
to keep	38:17
relocat	75:11
made for	41:-8 42:26 77:10 85:19
bad==	3:23 41:-10 77:-8 78:36
bad	3:23 41:-10 77:-8 78:36
spac==e	22:36 90:8
and you	53:10
spac	0:-9 4:52 22:36 90:8
edge ,	92:10
so will	3:10 125:-10
calliper==s	3:8 41:56
anyhow==	3:10
the gap	3:9 90:-15 91:48
anyhow	3:10
#n do	3:10 114:19 125:-13
, y'all	0:-8 3:9 11:20 42:-8 44:9 78:11 117:10
y'all think	3:9 30:8
right at	3:19 42:-10 51:-21 69:51
or must	3:9
must it	18:9
go elsewher	3:12
; is	3:14
, hav	3:12 43:18
, stay	3:12 5:-8 24:20
permit==ted	3:10 58:9
a length	41:43
: is	3:10 29:18 125:-8
permit	3:10 58:9
toleranc==e	3:9
toleranc	3:9
confirm==	43:16 93:26
confirm	43:16 93:26
whether the	18:13
quantity==	5:9 8:8 9:33 10:-9 21:10 23:10 31:-11 121:15 122:-12
quantity	5:9 8:8 9:33 10:-9 21:10 23:10 31:-11 121:15 122:-12
measur at	76:9
@job .	43:16 73:-9 84:38 113:14
. is	18:12
that good	18:12
do all	4:19 103:10
line==s	4:12
not know	4:12 35:13
far from	4:23
they want	4:12 19:8 20:-8
a list	4:28 12:11 14:62 35:-9
mark out	4:48
so could	4:10
big==	4:31 16:-13 17:-10 44:16 50:13 67:-13 85:9 99:18
rang and	118:10
to know	11:12 13:23 16:-11 29:16 125:-8
big	4:31 16:-13 17:-10 44:16 50:13 67:-13 85:9 99:18
how big	4:34 17:-10
so how	8:17 9:-8 13:14 16:10 35:11
on his	12:28 29:-12
tea==	4:14 29:-8
tea	4:14 29:-8
the tabl	4:14 29:-8
wher they	45:9
depend==s	4:16 114:26
which length	0:-10 1:-9 4:42 8:27 22:-9
depend	4:16 114:26
specification==	4:22
pleas send	4:22 26:19
send me	4:22 26:19
specification	4:22
requir==e	4:12 14:18 27:11 41:-8
requir	4:12 14:18 27:11 41:-8
, position	4:12 16:10 41:-8
dimension==s	0:-17 4:65 75:-10
dimension	0:-17 4:65 75:-10
record for	0:-19 4:19 17:20 33:14 58:9 69:13
to saw	5:42
saw from	5:10 71:12
cut up	5:23 6:-13
up and	13:-8 43:10 102:33
not allow	23:26 125:-8
allow to	23:26 125:-8
open any	5:17
any new	5:17 23:12
make for	5:15
stuff $	5:17 84:17
bit ,	22:41 83:10
#c and	5:34 16:-8
from them	10:23 32:-13 121:14 122:-9
alon ,	5:33 13:-8
together ,	5:21
that take	5:9 27:11
for everybody	5:9 28:14 88:12
next to	5:8 92:14
outta==	5:17 21:8
outta	5:17 21:8
go with	18:10
, mate	1:-11 8:8 9:-11 12:15 17:8 19:20 20:-11 23:22 28:10 30:11 31:19 35:13 47:-15 48:16 69:13 101:12 110:24 116:9 125:-11
divid==ed	5:69 8:-13 9:-17 70:34 97:-8
smallest==	5:11 120:9 121:15
divid	5:69 8:-13 9:-17 70:34 97:-8
divid the	5:55 8:-12 9:-15
smallest	5:11 120:9 121:15
the smallest	5:11 121:19
separat==ed	5:27
separat	5:27
@job of	0:-8 4:-8 5:27 11:-8 13:12 17:-8 36:18 46:10 47:12 65:9 78:-12 82:12
sourc==e	6:30 73:9 121:-11 122:29
the material	83:32
@job instrument	11:17 17:8
sourc	6:30 73:9 121:-11 122:29
overall cut	5:36 29:-10
percent $	5:13 29:-8 45:9
new stock	2:-12 5:18 71:22
, kindly	2:-11 5:19 62:19
consum==e	5:13
in order	5:13 117:32
consum	5:13 36:11
as littl	5:13 121:14
paper==	6:15 87:10 88:9
ruler==	6:9 16:-11 17:17 89:12
paper	6:15 7:15 87:9 88:9
the paper	6:12 88:9
ruler	6:9 16:-11 17:17 89:12
the ruler	6:12 89:12
ruler ,	6:12
sheet==	5:-16 6:102 7:42 13:-16 121:14
tell==s	6:11
sheet	5:-16 6:102 7:42 13:-16 121:14
cut sheet	6:65 13:-12
printer==	7:10
printer	7:10
the printer	7:10
so let	55:10 61:8
me have	6:12 10:26 14:-9
her ,	60:11
like a	83:11 94:9
a good	83:10
i would	7:8 13:23 15:12 16:-11 19:10 49:10 55:20 85:12
of cut	6:27
i requir	14:18
, sourc	6:16
sourc by	6:16
by sourc	6:16
printabl==e	6:13
printabl	6:13
a printabl	6:13
box==es	7:46 22:-18
box in	7:12
tag==s	0:-8 7:59 20:-12
compartment==s	7:26
tag	0:-9 7:59 20:-12 36:-11 37:47
name tag	7:30 20:-9
tag for	0:-8 7:59 20:-12
compartment	7:26
the compartment	7:21
paper==s	7:16
warm==	7:8 30:9 110:11
whil the	7:10 12:10
warm	7:8 30:9 110:11
warm ,	7:8 30:9 110:11
label with	7:24
millimetre to	0:-8 7:26
#n mil	41:28
rang==e	51:29
instruction==s	26:-8 35:98
instruction	26:-8 35:98
the instruction	35:30
instruction for	35:30
produc==e	7:8
instrument==s	11:-8 12:86 25:-8 31:-8 32:-8
relabell==ed	7:9
relabell	7:9
label sheet	7:41
left and	8:12
left ,	8:16 39:10 50:-8 66:11
many $	8:17 25:24
ring==s	8:10 113:12
the phon	8:10 47:8 108:17
sinc i	8:10
both $	8:9 29:18
so tell	29:10
@wire ther	19:10
it look	8:9 17:10
plac at	14:33 25:-8
what'v==e	8:17 11:10
what'v	8:17 11:10
^ what'v	8:17 11:10
what'v we	8:17 11:10
mate $	1:-11 5:-8 8:10 9:-10 12:16 16:8 17:11 19:20 20:-9 23:23 24:8 28:11 29:-19 30:19 31:19 35:15 47:-14 69:13 97:9 105:8 110:25 116:9
)~",
R"~(^ y'all	8:15 26:10 29:-9 30:8 58:11 111:14 119:14
got any	8:15 26:10
possess==	8:14 9:-10 99:17
possess	8:14 9:-10 99:17
we possess	8:14 9:-10 99:17
stor==e	8:31
us in	8:27 21:25
stor	8:31
rod==s	8:11 9:-11 116:16
are exist	8:12 9:-10
current==	8:20 12:-9 13:18 14:13 20:22 21:8
inventory==	8:117 35:-9 53:17 66:29
figure==s	8:20
pleas give	8:20 13:18 25:9 83:-14 84:17
current	8:20 12:-9 13:18 14:13 20:22 21:8
the current	8:20 13:18 20:22 21:8
inventory	8:117 35:-9 53:17 66:29
figure	8:20
what quantity	8:8 9:34 10:-9 23:10 31:-9
quantity of	8:8 9:34 10:-9 23:10 31:-9
insuranc==e	8:14 22:-9
content==s	8:14 22:-9
insuranc	8:14 22:-9
content	8:14 22:-9
@wire going	9:10 39:13
last us	9:19
for how	8:-18 9:33 19:24
all gone	8:49 9:-15
gone and	42:11 116:9
last==s	9:18 27:10 98:13 104:16
such==	9:9 12:20
ukulele==s	9:10
such	9:9 12:20
ukulele	9:10
so when	9:10 28:9 29:9
reckon $	9:18 41:28
get==ting	13:21 29:-8 32:12 43:-8 51:10 107:28 110:10 125:-8
@wire see	9:18
see us	9:18
us through	9:18
through ,	53:9 106:20 111:17 112:-13
be get	32:12
the wee	3:-18 9:8 13:17 23:28 41:26 67:9 94:10
us ,	29:10 58:13 75:10 89:-9 98:-8 100:8 120:12
suffice==s	9:21
suffice	9:21
refretting==s	9:9
refretting	9:9
sort ,	9:9
must #n	9:9 10:9
coverag==e	8:-10 9:28
express==ed	8:-10 9:28
coverag	8:-10 9:28
express	8:-10 9:28
by which	9:16 33:15
in what	9:14 32:18
buy and	9:11
and from	10:18
which shop	20:-8 32:14
order==ing	9:-8 10:76
need order	10:12
day and	14:13 81:10
wher from	20:9
writ me	10:18 35:-9
phon in	57:10
bank==	10:11 18:-10 43:14
bank	10:11 18:-10 43:14
the bank	10:11 18:-10 43:14
as i	0:-12 13:10 19:8 22:9 51:8
gonna==	10:11 83:11 111:14 119:14
gonna	10:11 83:11 111:14 119:14
like $	10:11
the thing	57:16 83:-9 84:12 100:-10
thing to	85:11
issu==e	10:13
purchas==e	10:48
total==s	10:13
price==s	10:39 14:-14 19:22
issu	10:13
purchas	10:48
the purchas	10:48
purchas list	10:48
with supplier	10:13 19:18
price	10:39 14:-14 19:22
price $	10:40 14:-9
csv==	10:19
list as	10:19
csv	10:19
as csv	10:19
account	20:21 40:25 120:17
be look	45:-8 89:-9 115:21
they were	75:-8 81:17 95:9
which guitar	11:11 12:21
guitar and	11:11 12:21
man==	11:23 29:-15 30:16 121:9
man	11:23 29:-15 30:16 121:9
the man	11:23 29:-15 30:11
home ,	11:9 48:13
dentist==	29:-8 110:37 111:-8
be at	28:-10 29:10 111:20
dentist	29:-8 110:37 111:-8
the dentist	29:-8 110:37 111:-8
dentist on	110:24 111:-8
customer==s	10:-18 11:14 12:53
to customer	11:15
sister==	49:25 58:15 59:10 110:10
sister	49:25 58:15 59:10 110:10
and she	58:9 61:9 63:16
is get	51:11 110:11
morrow==	11:12 25:-9 28:34
anyth at	9:-14 10:31 11:9
all due	11:15
morrow	11:12 25:-9 28:34
the morrow	11:12 25:-9 28:34
ye know	11:13 25:22
fall==ing	11:29
behind that	11:20 93:11
we oughta	11:20 51:10
been done	11:18 13:22
y'all $	11:20 44:9 117:10
, say	11:11
become==s	29:29
become	29:29
summaris==e	2:-11 13:33 17:49
summaris	2:-11 13:33 17:49
promis to	1:-9 11:12 23:45 61:10 125:-10
within the	11:9
item==s	11:36 81:18
kindly report	11:36 21:9
wait to	11:-16 12:64 29:-9
job that	12:9
look after	13:-8 15:33 45:15 64:26
try==ing	12:10 35:15
try	12:10 35:15
try to	12:10 35:15
a pictur	12:10
the kettl	12:10 29:10
notic==e	29:-8 37:15 111:21
holiday==s	110:18
notic	1:-12 29:-8 37:15 39:11 111:21
the holiday	53:-16 112:26
holiday ,	53:17
book at	12:17 26:18
to her	110:14
her name	58:9 61:9
name ,	58:14
open at	12:11 52:11
window $	12:39
that are	2:10 25:56 31:17
which are	25:12
are they	25:12 32:11
the colleagu	12:11
colleagu @person	12:11
pleas provid	27:10 33:31 35:28
from customer	10:-15 12:53
customer ,	12:11
, earliest	12:11 30:34 58:-10
currently==	23:39 25:19
ms==	15:15 29:28
currently	23:39 25:19
assign to	12:20 13:-13 15:23
ms	15:15 29:28
ms @person	29:29
status $	13:76 25:9 62:19
certainly==	13:15
and will	13:14 93:8
certainly	13:15
ask ,	1:-8 13:15 29:9 40:15
his #n	0:-9 13:14 18:18 48:9
hear==	13:12 25:14 26:10
hear	13:12 25:14 26:10
are with	13:12
fill==	0:12 13:10
me in	0:-10 13:10 108:18 110:11
done and	0:-12 13:10 33:16
still lack	0:-11 13:18
com along	13:28
wee @job	11:-10 13:11 23:22 26:20 94:10
miss $	13:13 77:23
report on	13:18 33:13
progress on	13:46
outstand==ing	2:-10 13:35 17:18 31:8
outstand	2:-10 13:35 17:18 31:8
that work	28:-8 30:16
call and	14:33 17:-12 48:10
name==s	14:59
fix==ing	14:13 17:9 107:12
so who	14:13 28:10
this shop	14:24 100:22
card==s	14:10
the retir	14:9 63:19
retir one	14:39 62:10
workshop==	14:32 25:13 32:-9 52:9 53:31 58:9 63:19 115:-8
workshop	14:32 25:13 32:-9 52:9 53:31 58:9 63:19 115:-8
the workshop	14:24 25:13 32:-9 52:9 53:31 58:10 62:10 115:-8
workshop $	14:27 62:-9 63:21
which person	13:-10 15:26 33:15
workshop ,	25:14 32:-9 58:10
hous==e	8:32 65:16 120:19
hous	8:32 65:16 120:19
the hous	8:32 120:19
also thos	14:12 31:12
thos who	14:12
person ,	65:19
personnel==	14:67 125:-8
role==s	14:54
personnel	14:67 125:-8
the personnel	14:67 125:-8
show==ing	12:-9 14:14
archiv==e	14:17 57:19
archiv	14:17 57:19
includ retir	14:30
string ,	15:8
unless==	15:12
unless	15:12
somebody has	15:12
it already	15:12 107:12
phone==s	15:13
phone	15:13
he will	15:13 62:18
will ,	15:13 16:-9 44:11
put him	15:13 58:13 62:10
through to	15:13
for his	15:13 23:13 26:10 47:14
look==ing	4:-11 13:52 36:12 61:21 115:20
got @job	15:24 33:-8
do y'all	9:-10 27:18
whos hand	15:24
lie $	4:17 15:13
on which	14:13 25:39 28:16 29:-25
responsibl==e	12:57 15:24 23:-19 29:-18 64:28
responsibl	12:57 15:24 23:-19 29:-18 64:28
is responsibl	15:24 23:-9
responsibl for	12:57 15:24 23:-19 29:-17
member==	15:21 60:10 62:23 63:-8
member	15:21 60:10 62:23 63:-8
member of	15:21 60:10 62:23 63:-8
of staff	15:21 25:-11 29:13 60:10
metal==	16:21 17:-8 82:-10 89:21
sleeve==s	16:15
cradl and	16:15 87:10 94:-9
and my	16:15 88:9
sleeve	16:15
although==	16:10 29:10 44:-9
although	16:10 29:10 44:-9
^ although	16:10 29:10 44:-9
long #n	44:-11 86:19
already on	2:20 16:10 44:-9
, becaus	19:10 91:10
group==s	16:21
press off	100:11
me see	4:-9 12:15 14:43 33:41 125:-13
see all	31:8
even the	0:10
befor $	43:22 115:13
wrot==e	16:11 69:10
nobody ever	16:11
wrot	16:11 69:10
it #d	1:-9 16:11 66:11 69:35
^ how'd	16:24
direction==	16:10
direction	16:10
the full	16:20 33:31
n==	16:8
n	16:8
appli==ed	96:16
appli	96:16
is wrong	17:10 69:18
the side	23:22
the thin	89:13
too high	17:12 97:17
i've been	35:15 64:21
fool==	35:8
call @person	59:10 61:19
and look	107:13
fool	35:8
a fool	35:8
odd==	17:10
it up	17:10
odd	17:10 39:-8 79:21
so is	17:10 23:10 25:14
fix to	17:10
name the	15:61
it wrong	13:-9 17:20
as next	17:13 29:18
next ,	17:13 29:29
finding==s	17:52
finding	17:52
deviat==e	17:9
deviat	17:9
@job or	18:19
groove on	18:11 43:-12 107:11
properly==	18:8
properly	18:8
i hammer	17:-8 77:18
time ,	18:9 26:11 27:41 54:9 65:13 78:16 109:10
middl ,	18:10
had the	23:10 62:11 119:18
millimetr wide	74:9
brass'll==	18:42
^ reckon	1:-16 18:41 39:13 51:10 60:12 64:13 66:9 92:15 104:42 106:10 114:13 125:-20
brass'll	18:42
@job wee	26:22
them slot	43:-11 108:19
and to	18:9 23:12
appropriat==e	18:15
depth of	18:11 74:12
appropriat	18:15
verify==	18:10
compatibl==e	18:10
verify	18:10
compatibl	18:10
lot ,	19:23 38:17
delivery ,	19:38
wonder==ing	19:10
batch==	19:21 21:-10 73:39 111:9
wonder	19:10
batch	8:-33 19:89 21:-10 73:39 111:9
ther were	19:10 66:9 72:-10 82:12
how high	8:-10 19:25
hand on	64:21
each time	121:15
i never	19:8
@wire we'v	19:8 67:15 68:-10
from and	19:25
were the	21:8
see them	2:-11 4:39 19:11
good==s	19:18
pleas list	19:16 23:36
good receiv	19:18
pric $	19:35
audit==	4:-9 33:64
audit	4:-9 33:64
the audit	4:-9 33:64
: from	75:23
was @wire	19:33 31:-10
last month	9:-19 20:54 21:16
whol year	19:-11 20:30 21:-11
answer==	35:14
@person ask	88:12
ask me	88:12
someth about	33:14
answer	35:14
whil i	20:9 43:14
glue ,	20:9 96:10
of october	20:12
last of	20:9
than we	69:10
think ,	124:10
this year	20:22 21:24
@wire gone	8:-10 19:-8 20:38
gone this	110:12
month ,	20:13 26:10
out==s	8:-9 20:33
bin and	8:-9 20:33
year ,	20:9 53:15
retain==ed	37:15
the month	20:13
wher has	8:-9 19:-10 20:38
)~",
R"~(retain	37:15
coming==s	20:13
going==s	20:13
coming	20:13
and going	20:13 102:20
produc the	71:13
reconciliation==	20:27
reconciliation	20:27
current year	20:26 21:10
account==	20:21 40:25 120:17
the person	15:62 17:-9 20:12 62:20 63:-17
person #n	20:11 58:-14 59:31 60:-11 61:31 62:90 63:9
#n october	20:45 21:10
the leftover	8:-12 21:31
sav ,	21:42 40:12
and saving	20:-10 21:22
wast of	22:36
of time	26:12
auld==	21:14
auld	21:14
remainder==s	21:9
save in	20:-8 21:15
altogether in	25:-15 100:21
attributabl==e	21:10 91:14
the saving	20:-9 21:62
attributabl	21:10 91:14
attributabl to	21:10 91:14
annual==	20:-9 21:10 32:9 53:17 117:-11 119:58 124:38
reclaim==ed	20:-8 21:12
annual	20:-9 21:10 32:9 53:17 117:-11 119:58 124:38
the annual	20:-8 21:12 53:18
report ,	20:-8 21:12 124:10
reclaim	20:-8 21:12
nobody will	1:-8 22:16 40:15
is been	8:-37 9:-8 13:21 22:8 23:25 33:54
been lying	22:10
lying in	22:10 75:10
and nobody	1:-8 40:15 81:11
touch it	22:8 101:15
junk==	8:-36 22:74 81:25
junk	8:-36 22:74 81:25
junk ,	22:28 81:25
van==	22:9
van	22:9
of ,	22:9 122:15
or too	22:16
not touch	101:15
dead stock	8:-36 22:59
in our	22:11 60:9
be consider	22:11
for clean	22:11
becaus they'r	23:26
for somebody	23:59
somebody $	23:36
for anyon	23:13 38:11
anyon $	13:-31 15:75 23:10
is put	13:-14 23:36 84:20
, whos	15:9 23:27
grab==	0:11 36:13 105:9
i grab	0:12 105:9
grab the	36:13 105:9
the wrong	60:11 69:8 124:8
wrong #n	124:8
finger==s	23:10
finger	23:10
as @job	23:12 36:-11 37:47
been set	23:12
is spoken	23:22 36:-13 37:20
laid by	11:-9 23:39
whom is	15:21 23:20
#n reserv	23:19
which @wire	23:37
somebody ,	23:22 58:10
me pleas	23:22 124:37
forc==e	23:40
all reservation	23:38 84:31
forc	23:40
material==s	13:-12 23:42 83:17
earmark==ed	13:-11 23:55
earmark	13:-13 23:55 37:50 83:31
behalf==	23:14
behalf	23:14
up often	58:10
you have	10:-16 24:15 27:29 33:19 121:15
to push	24:16 85:11
remember==	33:14 59:10 125:-8
remember	33:14 59:10 125:-8
we wrot	69:10
i set	35:12
whenever it	51:10
that count	3:15 42:-13
on us	29:10
sprung back	24:26 45:8
frequently==	24:16
frequently	24:16
how frequently	24:16
frequently do	24:16
arrang	115:21
onward==	24:15
remain==s	24:15 53:14
onward	24:15
wire down	24:15
it happen	124:10
happen ,	33:24
record==ed	24:8 33:16 40:-11 69:33 99:15
record as	24:9 99:15
statistic==s	24:23
seat ,	104:19
to our	62:-9 63:21
statistic	24:23
statistic $	24:23
sand==ing	25:14 101:17 102:10 103:11 105:8 106:13
the sand	25:14 101:11 103:11 105:8
thing work	25:12 35:20
today or	25:30
grind==ing	25:14
grind	25:14
that should	25:14
right now	8:33 22:-16 25:10
visitor==s	28:8
visitor	28:8 50:-10 69:19
round ,	28:12 49:8
banjax==ed	25:11
press going	25:10 102:17
banjax	25:11
them sander	25:8 102:14
sander we	25:10 99:16 106:15
on them	25:11 43:-11 108:19
the now	25:11 67:9
function==	25:15 32:-10 35:20
they and	25:13
they all	25:15 32:-9
function	25:14 32:-10 35:52
function $	25:14 32:-10 35:52
an overview	8:8 12:21 25:23
overview of	8:8 12:21 25:23
our machine	25:11 100:25
and its	25:9 75:14
operational==	25:20 102:21
operational	25:20 102:21
insurer==	25:11
operat==e	25:11
insurer	25:11
operat	25:11
put their	26:20
their name	26:20
name down	26:20
any machin	26:11
machin book	26:11
booking ,	26:10 106:11
mine ,	12:26 26:9
for noth	17:-8 26:8 77:18
noth ,	68:8
lovely==	36:13 61:15 68:9
lovely	36:13 61:15 68:9
forget ,	16:-9 44:11
i told	26:10 33:14
told @job	26:11 47:36
if somebody	27:11
mix==	26:12
as ther	26:12
ther was	26:12 91:14
was that	26:11 33:19
mix	26:12
com ,	26:16 119:8
you know	26:16 36:11 102:10
machine for	26:12
book ,	25:22 32:13 69:34 106:8
exist==	26:15 100:10 121:15 122:-12
what time	26:9 28:42
time book	26:8 113:12
reservation for	26:19 84:28
calendar==	26:23
calendar	26:23
completely==	10:-15 27:30 77:46 114:11
completely	10:-15 27:30 77:46 114:11
stage ,	27:53
crown time	27:40 104:14
^ refret	30:27
i've never	35:15
the dress	27:10 55:29 107:-11 108:18
long would	5:-13 27:20
involv==e	27:12 30:-8
involv	27:12 30:-8
, step	27:15 30:-8
step by	27:15 30:-8
by step	27:15 30:-8
figur==e	9:-11 27:18 69:17
figur	9:-11 27:18 69:17
for bend	9:-10 27:18 98:19
partial==	30:8 117:10
partial	30:8 117:10
a partial	30:8 117:10
are to	81:18 83:17
fil $	27:10
standard==	27:11 104:15
standard	27:11 104:15
the standard	27:11 104:15
each stag	27:59
duration==	27:44 104:35
round==ing	27:22 103:10 104:19
duration	27:55 104:35
duration of	27:44 104:35
of round	27:23 104:19
round the	27:22 43:14 103:10 104:19
apply==	112:9
apply	112:9
report is	27:23
expect==ed	9:45 19:-27 27:10 31:66 117:9 125:-8
duration==s	27:11
with expect	27:11 31:8
day doe	28:18 32:11
open ,	12:25 28:57 30:-11 54:-18 112:-9
cake==	61:15 108:19
cake	61:15 108:19
cake ,	108:19
if @person	30:17
not in	55:20 110:15 113:20 125:-8
she work	58:8 63:10 110:-18 111:22
agre==e	28:10 29:-8
plumber==	28:9 29:-9 77:16
plumber	28:9 29:-9 77:16
the plumber	28:10 29:-8
fetch==	28:9 47:8
children==	28:10
fetch	28:9 47:8
children	28:10
on and	28:13 29:-11 107:13
and knock	28:13 29:-10 95:26
knock off	28:13 29:-10 108:12
me know	28:38
payroll==	28:9
payroll	28:9
be doing	29:17
@job going	27:14 29:14
, machine	29:35
^ ready	29:56
date ,	29:55 47:34
enough ,	3:10 29:10 91:12
it then	16:10 29:18
gonna be	29:12
be free	29:12 60:13
get going	29:14 43:-8 107:28
it ready	29:30 99:12
capacity==	25:-10 29:13
utilisation==	25:-10 29:13
capacity	25:-10 29:13
utilisation	25:-10 29:13
remain==ing	29:21 117:10 118:-9
what work	29:19
@job that	24:14
that want	79:19
want all	83:12
chang ,	118:10
we say	30:13
brand==	71:12
brand	71:12
a brand	71:12
brand new	71:12
board by	30:11
get it	30:12 32:14 47:18 65:18 99:12
earliest $	30:34 58:-10
woman==	30:9
woman	30:9
the count	8:-12 24:24 30:9
day i	30:9 55:15
could promis	30:9
, sinc	20:-13 33:14
love==	30:11 91:10
love	30:11 91:10
all have	33:13
fella==	58:14
fella	58:14
squeez in	30:24
hope==	30:21 47:-14
hope	30:21 47:-14
it possibl	30:16
fingerboard of	87:14
@person as	30:9 63:28
be possibl	30:10
quot==e	30:28
quot	30:28
an additional	30:11
. what	1:16 2:25 10:24 13:-9 32:-12 125:-9
i quot	30:17
quot for	30:17
the one	0:9 31:8 44:10 70:-8 71:12 92:14
one that	0:9 31:8
turn==ing	31:23 89:15
expect delivery	19:-20 31:69
has @wire	23:10
@wire been	23:10
sell us	32:47 33:-11
them in	50:8 63:11 72:20
they take	120:11
believ==e	88:9
believ	88:9
am doing	32:13 64:29
the address	32:13 56:8
than they	32:30 69:13
mob==	32:9
mob	32:9
@wire off	32:8 50:8 116:8
what pack	32:18
house==s	32:15
punctual==	32:15
house	32:15
punctual	32:15
of lindwurm	32:10 117:26 118:-9
to it	92:14
forgotten==	33:19 69:18
forgotten	33:19 69:18
forgotten $	33:19 69:18
happen $	8:-9 33:38 124:10
notic==ed	1:-11 39:11
notic ,	29:-8 111:21
anyon ,	33:13 40:10
told you	33:14
, read	33:12
is with	13:-10 15:26 33:23
activity==	33:31
activity	33:31
trash==	4:-9 33:65
trash	4:-9 33:65
entir==e	33:128 61:-8 62:-10 63:-9 83:11
entir	33:128 61:-8 62:-10 63:-9 83:11
document==	33:39
transaction==	33:39
concern==ing	33:39 48:11
document	33:39
transaction	33:39
concern	33:39 48:11
themselve==s	35:10
themselve	35:10
sort==s	35:14
told me	64:12 102:10 110:11
you could	35:8 59:-11 60:15
sort of	35:34 49:10
of thing	35:34
myself ,	35:8
ask you	35:13
undo work	35:32
befor ,	35:15 62:-9 63:13
me how	5:40 8:-18 9:15 35:26
@quoted	26:-8 35:84 86:21
the @quoted	35:36
goe ,	35:16
&@quoted	26:-8 35:84 86:21
what sort	35:26
thing can	35:26
@quoted ,	35:19
used $	35:19 82:11
explanation==	35:16
need an	35:10 104:10
explanation	35:16
function==s	35:33
guidanc==e	35:20
guidanc	35:20
pack ,	32:40 120:-8 121:-13
, minimum	32:40 121:-24
into job	36:17
. job	37:20 71:19 97:10
sit==ting	2:28 5:-10 36:12 92:16 96:10
is just	36:13 121:9
is wher	36:13 61:10
@wire nobody	36:11
, well	36:11 99:12
i went	36:11
up piec	36:22
record that	36:18 43:-9 62:23 63:-8 75:10 96:15 107:20
that piec	36:30
consum==ed	36:11
pleas note	33:-8 36:10 53:17 61:9 87:9 95:13 97:8 108:33 110:16
the bit	37:10 38:13 83:17
call #n	37:11 73:18
so nobody	37:11 83:11 101:10
nobody else	37:11
)~",
R"~(grab it	37:12 42:18
pleas put	37:13 55:14
. @job	37:19 48:28 83:42 84:-8
and somebody	68:13
so keep	33:-8 83:14
^ mind	105:9
pleas to	37:14 40:10 46:10 78:-10 83:13 98:15 100:-11 102:11 122:14 124:37
to reserv	37:15 83:14
hour the	37:8 101:15
kept by	21:11 37:8
by me	37:8 107:12
be reserv	37:13 83:17
further==	37:15
further	37:15
until further	37:15
further notic	37:15
notic $	37:15
be sav	38:12
. nobody	65:21
turn==s	41:-9 76:18 102:12
^ turn	23:-8 48:29 84:23
so give	38:12 84:11 106:12 115:14
worry==es	38:21
worry	38:21
pleas take	38:23 60:8 72:13 122:13
reservation $	23:74 38:23
reservation on	11:-9 26:39 38:26 101:-10
upon==	38:13 43:-9 45:9 94:10 114:21
hereby==	38:12 64:12 84:31 112:18 118:-10 119:21 124:30
effectiv==e	38:13
upon	38:13 43:-9 45:9 94:10 114:21
hereby	38:12 64:12 84:31 112:18 118:-10 119:21 124:30
is hereby	38:12 64:12 112:18 118:-10 119:21 124:30
hereby lift	38:13 84:31
lift ,	24:30 38:13
effectiv	38:13
drop it	100:27
now in	39:9 70:-9 75:31 82:-8
@wire .	1:-9 39:19 40:-10 51:11 81:22
. #d	1:-9 39:20 42:11 74:18
i dress	0:-18 1:-12 17:-10 36:32 39:11 97:12
so here	1:-11 39:11 88:12
me with	39:13 107:12
y'all can	1:-8 39:13 119:14
enter==	39:10
pleas enter	39:10
kindly add	98:12
tin an	72:20
item of	81:18
accident==	40:8
accident	40:8
it doe	40:8 42:11 113:20
not go	40:8 91:14
rubbish==	8:-35 22:49 38:-9 40:49 78:19
rubbish	8:-35 22:49 38:-9 40:49 78:19
the rubbish	8:-35 22:49 40:17 78:19
rubbish $	38:-9 40:49 78:19
so out	40:12 81:12
i @day	1:-8 40:15
@day on	1:-8 33:9 40:15
not ask	1:-8 40:15
, chuck	1:-10 40:25 81:25
chuck it	1:-10 40:25
ai==	40:20 43:-12 86:10 108:19 109:17 119:13 125:-11
lick==	40:20 83:11 97:9
that old	40:20
ai	40:20 43:-12 86:10 108:19 109:17 119:13 125:-11
ai not	40:20 43:-12 86:10 108:19 109:17 119:13 125:-11
lick	40:20 83:11 97:9
a lick	40:20 97:9
therefor==e	40:16
therefor	40:16
remov from	40:13 72:13
tin the	40:13 72:13
correction==	40:26 69:-8
be written	7:33 22:-16 40:26 69:-8
on account	40:25
account of	20:9 40:25
correction	40:26 69:-8
dispos==e	40:18 81:11 82:-8
discard==ed	40:18 81:18
dispos	40:18 81:11 82:-8
dispos of	40:18 81:11 82:-8
#n ;	40:18
discard	40:18 81:18
show==ed	41:13 117:10
i held	41:13 70:11
groov #n	41:14 75:21 89:-14
measur it	78:18
finally==	41:11 58:10 80:16
finally	41:11 58:10 80:16
i finally	41:14
finally got	41:14
the good	41:14 89:17
&#d#n@person	41:14
dot==	41:28
dot	41:28
^ across	25:-13 100:26
the record	4:-8 33:48 41:13 68:8 69:22
found to	41:14
much off	42:29
not reach	3:-14 42:36
short .	2:25 13:-9 42:12
grab==bed	42:18
shy==	42:18
and now	42:18 94:12
shy	42:18
and made	42:11
^ well	48:13 124:8
becom==e	1:31 42:10 52:11 70:-9 72:-10 82:26 84:13
short has	42:10 85:10
becom	1:31 42:10 52:11 70:-9 72:-10 82:26 84:13
regret==	77:30
regret	77:30
them out	2:-8 75:10 100:15
coffee==s	43:15 87:-9
took me	43:15 87:-9 94:12
all morn	43:14 87:-9 105:28
coffee	43:15 87:-9
is tru	23:27 43:15 87:-9
that stag	43:24
is over	43:14 62:18
with them	43:12
hallelujah==	43:22
am all	43:22 60:11
crown @job	43:19 107:22 108:-9
hallelujah	43:22
terminat==ed	43:35
terminat	43:35
is complet	43:67
commenc==ed	43:9 107:41
this is	43:18 59:10
confirm that	43:16 93:26
commenc	43:9 107:41
squash==ed	16:-8 44:16
squash	16:-8 44:16
big press	16:-8 44:16 99:18
one from	44:11 70:-8 72:18
went to	75:10
pig==	65:19
pig	65:19
a pig	65:19
but fret	71:8
, grand	44:12
was too	44:12
newton	55:33
yesterday the	78:25
#n took	44:12 75:-12 82:18
stay==ed	45:34 114:-8
me and	110:12
all stay	45:25 114:-8
stay wher	45:9
and would	102:10
would not	0:-10 24:15 102:10
not you	102:10
and still	3:10 45:10
come up	24:29 45:16
carri==ed	45:8 97:11
carri	45:8 97:11
was carri	45:8 97:11
carri out	45:8 97:11
were found	45:9
reinspection==	45:9 115:21
observ==ed	45:9
^ upon	45:9 94:11
reinspection	45:9 115:21
reinspection of	45:9 115:21
observ	45:9
#c long	50:26
nut and	46:14 78:-10
#n wide	85:25
new #n	78:31
in :	50:15
so put	58:11 64:12 69:13 103:8
start a	46:18
reckon we	51:10 106:12
it :	3:-11 41:-13 42:23 119:9
accept==	0:-11 3:12 46:10 78:-10
accept	0:-11 3:12 46:10 78:-10
accept a	0:-11 3:12 46:10 78:-10
lady==	47:18 121:14
lady	47:18 121:14
the lady	47:18 121:14
dec $	47:35 116:11
wed==ding	47:10 111:17 112:-11
bless==	47:10 118:9
wed	47:10 111:17 112:-11
bless	47:10 118:9
, bless	47:10 118:9
out by	47:39 116:9
not care	47:33
her at	47:16
we must	47:15 114:12
henceforth==	47:11 51:24 69:-9
#n shall	47:8 65:19 113:11
henceforth	47:11 51:24 69:-9
want his	48:21
so take	48:8 112:10
struck==	100:15
so job	65:19
struck	100:15
be struck	100:15
is crack	48:18
and @job	48:11
it home	48:13 95:25
bin that	40:31 48:20
annull==ed	48:11 106:33
annull	48:11 106:33
is annull	48:11 119:8
client==	48:31 125:-8
not to	48:31 125:-9
client	48:31 125:-8
request==	48:20
request	48:20
new sort	49:11
the round	49:10 88:12
round top	49:10 88:12
top is	49:10 88:12
^ everyon	14:13
so set	58:11 75:-10 115:10
wire nam	49:41
for us	63:9 120:17
, stainless	39:-9 49:14
larg==e	76:19 88:10 92:-9
larg	76:19 88:10 92:-9
depth $	49:12
designat==ed	86:10
designat	86:10
typ==ed	35:-9 49:22 60:11 124:11
typ	35:-9 49:22 60:11 124:11
wire typ	49:22
scal with	50:10 67:-25 68:17
spool and	50:11
in .	50:10 117:12
land==ed	31:-11 46:-9 50:21 117:28
micrometer==	46:-9 50:19 85:-13 88:33 117:-8
land	31:-11 46:-9 50:21 117:28
@wire land	46:-9 50:24
micrometer	46:-9 50:19 85:-13 88:33 117:-8
the micrometer	46:-9 50:20 88:15
&#d#n@person@wire	46:-9 50:19 68:8
land ,	31:-11 117:23
#c mil	69:17
gram==	50:12 67:-9 116:8 120:19
, begin	50:23 105:9 117:-13
begin to	50:23 117:-13
to no	50:23 65:19 117:-13
no order	50:38 117:-14
at a	103:18
is less	51:13
less than	51:32 120:17
as soon	51:14
soon as	51:14
going through	9:9
so count	77:10
count it	77:10
it as	77:10 107:13
zither==s	51:8
zither	51:8
as far	51:8
far as	51:8
metre ,	51:17 116:11 120:14
lad	103:17
lad $	103:17
call @wire	51:12
order again	51:19 102:10
again be	51:19 104:20
threshold==	51:45
pleas set	104:16
threshold	51:45
threshold for	51:45
be #d	41:-10 51:22 55:28 69:-13 76:16 88:8 125:-10
a @day	52:17 54:-9
so make	113:12
&#n#t@day	115:18
from half	109:8
half #n	52:10 109:8
will $	117:18
folk==s	52:10 112:11
folk	52:10 112:11
, folk	52:10 112:11
can find	52:10 72:9
open==ed	52:10
and clos	52:11
regular==	109:20
regular	109:20
shall be	43:-9 53:11 58:9 61:26 65:19 113:11 114:19
be #t	54:-13 111:26
shut @day	53:44 112:15
xma==s	53:15
jan==	53:15
xma	53:15
jan	53:15
dig==ging	53:10
bicycl==e	53:10
^ they'r	53:9 101:14
bicycl	53:10
be shut	112:18
and not	53:10 55:20 108:19
clos up	53:20
#o december	54:20 110:17 117:10 118:-9
owing==	53:18 81:11 82:-8 118:-10 119:20
owing	53:18 81:11 82:-8 118:-10 119:20
owing to	53:18 81:11 82:-8 118:-10 119:20
they said	54:11 69:13 112:9 124:-9
said we	53:-11 54:11 112:17
whol shop	54:11 55:23
of work	99:13
will open	54:11
, half	54:15
, this	20:9 97:10
door stay	53:21
exceptionally==	111:42
exceptionally	111:42
additionally==	54:20
additionally	54:20
that down	55:11 103:8
program==	55:19 61:26 98:18
program	55:19 61:26 98:18
the program	55:19 61:26 98:18
@person new	55:12
think==s	55:10
newton==s	55:33
load in	55:10 75:16
in newton	55:33
dublin==	55:11
dublin	55:11
new==s	102:14 118:10
being ,	43:-11 108:19
it the	36:13
name is	85:11
is lamp	115:14
http==s	56:18
exampl==e	56:18
bench .	100:15
exampl	56:18
. exampl	56:18
pocket==	57:10
her phon	57:10
pocket	57:10
call that	56:11
&#d#n#t	74:11
kitchen $	57:34
porch==	57:14
porch	57:14
beacon==	57:8
beacon	57:8
attach==	59:12
webhook==	57:85 100:-10
gong==	57:17
attach	59:12
webhook	57:85 100:-10
gong	57:17
hook==s	56:10
must not	57:16 100:-10 114:12
so pleas	57:10
pleas remov	57:32
remov that	57:11 100:15
that receiver	57:17
^ receiver	38:-12 57:47
bell .	57:15
message==s	57:11
message	57:11
hous $	8:32
plug==	57:15
plug	57:15
need more	9:11 57:10 104:19 125:-9
to delet	100:-11 122:15
delet $	100:-11 106:11 122:15
the webhook	57:51 100:-8
discontinu	108:34
and he	59:12 62:18
he work	61:10 109:-9 111:10
katja==	58:16
katja	58:16
)~",
R"~(anyth ,	58:16 75:-10 115:10
minka==	58:10
minka	58:10
she going	58:9 61:10
join==ing	58:14
join us	58:31
down as	58:13 64:11 98:13
as #n	58:13 62:-33 63:43 99:15
loretta==	58:11
loretta	58:11
lead ,	58:10 61:10
her up	58:11 91:11
is nam	98:19
, role	58:9
emil==	58:10
emil	58:10
error==	58:15 69:33 124:34
error	58:15 69:33 124:34
bench and	77:11
user number	58:15 59:17
ignac==	58:9
ignac	58:9
computer==	59:21 69:15
call==s	59:10
computer	59:21 69:15
the computer	59:21 69:15
laptop==	59:12
laptop	59:12
on as	59:10
#c belong	59:17 60:-8
associat==e	59:11
associat	59:11
advis==ed	101:12
be advis	101:12
advis that	101:12
pertain	77:9
pertain to	77:9
@person any	59:-15 60:26
, forget	53:-9 112:18 124:10
forget it	124:10
login with	59:10
our shop	60:9 62:20 63:-17
from whoever	60:15
thumb==s	60:11
i typ	35:-9 60:11 124:11
number for	19:29 60:11
thumb	60:11 85:8
thumb ,	60:11 85:8
unhitch==	59:-11 60:15
unhitch	59:-11 60:15
of user	60:29
from its	60:13
revok==e	60:15 112:8 124:33
assignment==	60:16
revok	60:15 112:8 124:33
kindly revok	60:15 124:33
revok the	60:16 112:9
assignment	60:16
association==	60:13
association	60:13
a member	60:13 62:23 63:-8
, door	53:21
watch==ing	61:8
@person been	61:8
watch	61:8
than i	61:8 71:8
report work	58:8 61:45 62:-8
odila from	61:35
him $	63:16
inset==	61:26 101:15
inset	61:26 101:15
transfer==red	61:10
to lead	61:13
lead and	61:13
transfer	61:10
amend==	61:16 69:13 99:10 121:11
tomislav==	61:16
amend	61:16 69:13 99:10 121:11
amend the	61:16 69:13 99:10
tomislav	61:16
the register	61:16 100:8
register $	14:30 61:16 100:8
good and	62:9
speech==es	62:11
officially==	62:11
pensioner==	62:11
speech	62:11
officially	62:11
pensioner	62:11
as retir	62:35 63:-21
definitively==	62:11 93:27
definitively	62:11 93:27
pleas record	17:-12 43:-10 62:23 63:-8 73:9 75:10 93:14 96:15 107:20 116:8
employment==	62:19
employment	62:19
hav end	62:19
us again	63:33
flat ,	63:9
the staff	14:21 58:11 62:35 63:28 110:-9
not stay	0:-10 24:29 45:19 125:-9
was retir	102:13
she has	110:12
thank==s	21:9 63:9
thank	21:9 63:9 68:13
return==ed	62:-13 63:37 65:25
return to	62:-13 63:37 65:25
previously==	63:16
previously	63:16
revers==ed	63:16
retirement of	63:16 83:11
revers	63:16 124:12
doing to	64:21 111:9
boyo==	64:21
boyo	64:21
reckon the	64:15
rest with	70:23 97:-8
particular==	65:22
particular	65:22
in particular	65:22
to anyon	15:21 40:10 60:20
general==	52:26 65:25
general	52:26 65:25
rod of	68:8
and ther	66:14 87:8
stick left	50:-8 66:16
and each	99:17
is half	88:23
metr long	68:13
count ,	66:10
win==	66:12
were #n	5:9 66:12 72:-10 82:12
i said	53:-9 66:12 112:18
win	66:12
&#n@person@wire	66:12
reckon ther	66:11
went and	66:10 118:9
and measur	66:11
amount==s	66:11
yesterday in	66:11
amount to	17:14 66:11
physical==	66:30
yield==ed	66:30
physical	66:30
yield	66:30
total $	8:27 10:9 66:29
stick together	67:20
kitchen scal	67:12
the bare	87:13
every stick	31:-11 67:14 68:-10 117:23
with ,	67:15 68:-10 85:11 114:28
&#c#n@person@wire	67:15 68:-10
, spool	50:14 67:-12
lie now	67:9 75:23
now the	67:9 94:12 118:16
it weigh	67:8 68:12
kg $	67:23
establish==ed	41:-9 91:19 92:21
coil was	50:28 69:11
establish	41:-9 91:19 92:21
was establish	41:-9 92:21
#n metr	39:-8 68:41
powder==	68:9
powder	68:9
balanc ,	35:11 68:8
thank==	68:13
@wire make	68:13
near==	68:12
a foot	68:20
foot of	68:20
near	68:12
a scal	68:19
scal that	68:19
: a	0:17 39:10
a mass	79:11
mass of	79:11
#d not	1:-10 38:-8 69:39
ston==e	17:-12 69:13 80:-9 97:83
place==s	14:-13 25:34 69:13 98:15
the ston	69:13 97:27
place	14:-13 25:34 69:13 98:15
by #c	69:27 120:19
believe==s	69:15
believe	69:15
clerical==	69:11
clerical	69:11
error $	69:34
follow==ing	69:9 75:16
remeasurement==	69:9
remeasurement	69:9
groove #n	70:13 71:10
good to	40:9 102:19
leav on	110:35 111:-11
breadth==	70:11 76:11
breadth	70:11 76:11
#n gave	37:-10 70:37
did ,	99:11 124:10
that slot	77:17
apportion==ed	70:13
apportion	70:13
for groove	71:12
decent==	71:9
decent	71:9
unroll==ed	71:8
unroll	71:8
to ,	71:8 88:12 102:10
so they	2:-8 75:10 116:10 122:14
wire i	71:12 73:10
#o stick	71:10
of delivery	71:14 73:15
was used	8:-8 20:25 21:-10 71:22
fret i	41:-8 42:27 72:10 75:-9 77:10 78:-12
yank==ed	72:39
yank	72:39
extract==ed	72:9
extract	72:9
have taken	63:17 72:19
remov==ed	32:-8 72:13 122:22
former==	39:-11 72:12
former	39:-11 72:12
top==s	73:18 97:17 104:10
the batch	8:-10 19:28 73:18
match $	73:39
: delivery	73:33
differ==	19:12 73:11
differ	19:12 73:11
will you	73:10 114:28
sourc of	73:9 121:-11 122:29
determin==ed	73:13 88:10
exclusively==	73:13
determin	73:13 88:10
was determin	73:13 88:10
exclusively	73:13
saw them	74:16
saw cut	74:23
a width	3:-11 76:12
and have	81:13 115:14
a depth	74:12
was in	75:21
displac==ed	75:23
displac	75:23
@job went	36:-10 44:8 75:12
respectively==	75:16
respectively	75:16
#n respectively	75:16
respectively $	75:16
that on	75:11
inch wide	85:9
a breadth	76:11
breadth of	76:11
the fingerboard	76:19 87:14
mm larg	76:19 88:10 92:-9
was measur	3:-11 76:12 92:10
measur yesterday	39:-8 68:20
hammer==ed	17:-8 77:30 95:29
crown==ed	17:-8 77:36
hammer it	17:-8 77:36
it crown	17:-8 77:36
snap $	77:72
vacuum==	77:17
breakfast==	77:17
vacuum	77:17
breakfast	77:17
pretzel==	77:10
@person stop	77:26
right on	77:10
pretzel	77:10
sign==	58:10
sign	58:10
overheat==ed	77:16
overheat	77:16
disappear==ed	77:18
probably==	77:18
disappear	77:18
probably	77:18
floor ,	77:18 101:12
pertain==ing	77:9
mislaid==	77:43 95:-10
regard==ed	77:9 102:22
mislaid	77:43 95:-10
regard	77:9 102:22
be regard	77:9 102:22
regard as	77:9 102:22
to scrap	78:12 81:12
predecessor==	78:17
#o time	0:-10 78:23 95:28
a newly	78:13
newly made	78:13
predecessor	78:17
its predecessor	78:17
y'all ,	29:-8 42:-8 78:11 102:14 111:14
fresh wire	72:-10 78:56
was made	78:30 124:30
; the	78:9
fret was	41:-10 71:-11 78:29 92:21
put them	98:19
odd==s	39:-8 79:21
piece ,	79:10
^ line	59:13
fistful==	79:17
fistful	79:17
a fistful	79:17
fistful of	79:17
dump==ed	79:11
of old	79:13
dump	79:11
piece from	2:11
some #n	39:-11 79:12
#n unmeasur	39:-11 79:12 80:9
handful and	80:8
all with	113:20
i've measur	3:8
right down	61:21
straight ,	94:11
replac the	71:-9 78:22
number==s	19:29 70:-27 75:-9 81:43 82:19 95:9
dustbin==	81:11
dustbin	81:11
grandmother==	81:12
grandmother	81:12
hon==	81:15
hon	81:15
surplus==	8:-21 9:-8 22:54 81:11 82:-8
surplus	8:-21 9:-8 22:54 81:11 82:-8
surplus $	8:-21 9:-8 22:54 81:11 82:-8
into @job	82:23
#n thing	72:-10 82:12 88:9
becom fret	70:-8 72:-10 82:26
drama==s	82:9
drama	82:9
with all	6:8
^ whatever	10:11 84:19
whatever is	84:20
all .	83:43 84:-8 112:14
a mapl	83:11 117:-9 118:15
girl==	83:10
girl	83:10
lick of	83:11 97:9
would $	53:-9 83:11 112:18
the complet	83:40 84:11
complet material	84:18
foreseen==	83:17
foreseen	83:17
in full	83:17 117:12
pleas free	84:9 106:8
asid half	84:11 108:24
put asid	23:12 83:-13 84:18
other $	83:-13 84:18 92:16
iron==	85:13
iron	85:13
filler==	44:-8 85:21
filler	44:-8 85:21
ourselve==s	85:9
bertha==	85:9
ourselve	85:9
call big	85:9 99:18
bertha	85:9
bar designat	86:10
bent the	91:10
. for	114:16
hurt==s	108:15 118:9
hurt	108:15 118:9
we ai	86:10 122:8
be remov	32:-8 122:22
for alway	86:12 122:13
our press	86:31
its cradl	87:9
took @job	87:19 94:-9 97:21
cradl under	87:21
its plac	87:8
ascertain==ed	87:13
ascertain	87:13
micrometer ,	88:21
my micrometer	85:-13 88:18
everybody ,	14:8 88:12
&#d@person@wire	88:12
note the	95:14 110:17
dimension of	4:43 75:-10
, steady	89:23
squint==ed	89:17
squint	89:17
and number	89:17
top of	97:17
, you	90:13 102:12
under them	75:-8 95:12
air==	87:15
air	87:15
crown on	8:-10 19:12 88:11 108:27
between crown	90:19
crown and	90:19
the groov	91:11
stay up	91:23
go down	91:14
slot loos	0:-16 91:58
up from	50:13 53:30 65:-9 91:10 116:-13
bent wrong	77:-8 91:38
wrong $	77:-8 91:38
muck==	91:11
muck	91:11
incorrectly==	91:14
incorrectly	91:14
deeper==	32:-8 49:-15 92:17 120:27 122:39
deeper	32:-8 49:-15 92:17 120:27 122:39
deeper than	92:17
hundredth of	92:23
#d under	41:-14 92:33
)~",
R"~(fattest==	92:10
feeler i	92:11
fattest	92:10
is how	92:11
low it	92:11
thousandth==s	74:15 92:16
thousandth	74:15 92:16
#n thousandth	74:15 92:16
to stand	92:10 114:16
depression==	41:-9 92:21
relativ==e	41:-9 92:21
adjacent==	41:-9 92:21
depression	41:-9 92:21
relativ	41:-9 92:21
adjacent	41:-9 92:21
end with	93:20
but she	106:17 125:-11
there'==s	54:11 93:13
there'	54:11 93:13
ever gonna	119:14
board after	87:11
follow==	74:8 93:20
the final	93:38
terminate==s	93:27
terminate	93:27
cat==	94:9
cat	94:9
got relief	94:58
evening==s	94:12
clamp==s	94:12
heat==	94:12
evening	94:12
heat	94:12
bow==	94:26
have made	94:13
examination==	94:11
exhibit==	94:11
examination	94:11
exhibit	94:11
and went	75:-8 95:12
pull '	95:11 122:8
i shim	0:-12 4:-10 95:69
withdrawn==	124:30
withdrawn	124:30
stuck==	96:31 97:-8
stuck	96:31 97:-8
glue and	96:14
and sit	58:10
under a	96:8
fasten==ed	96:9
fasten	96:9
adhesiv==e	96:16
adhesiv	96:16
rub==bed	97:9
rub	97:16
were too	81:19 97:15
thos #n	80:9 97:15
abrasiv==e	97:32
press was	97:10 102:13
abrasiv	97:32
with abrasiv	97:21
sandpaper==	97:9
sandpaper	97:9
else on	97:9 99:12
levell with	97:22
individual==	97:11
individual	97:11
a plac	1:-9 98:29
at an	117:12
for ,	36:-13 37:20
preparation==	98:25 99:10
preparation	98:25 99:10
category==	98:12
entitl==ed	98:12
unit==s	98:12
category	98:12
entitl	98:12
unit	55:10 98:12
can do	65:31 99:12
you need	99:12 103:11
doorstep==	99:12
cousin==	99:12
press==es	99:17
somebody left	1:8 99:11
left a	1:8 99:11
on our	99:12
doorstep	99:12
cousin	99:12
firewood==	99:12
firewood	99:12
take no	99:12
no time	99:12
pleas amend	99:10 121:11
scrapyard==	100:11
whistl==ing	100:11
scrapyard	100:11
whistl	100:11
delet it	100:23
eras==e	100:10
the kind	100:27
not exist	100:10 121:15 122:-12
exist anymor	100:10 121:15 122:-12
eras	100:10
entirely==	100:12 124:8
entirely	100:12 124:8
permanently==	100:15
permanently	100:15
coil on	101:12
bust==	25:-12 101:71 102:-17
bust	25:-12 101:71 102:-17
knacker==ed	101:15
knacker	101:15
unavailabl==e	101:12
throughout==	101:12
maintenanc==e	101:20
unavailabl	101:12
throughout	101:12
maintenanc	101:20
for maintenanc	101:20
maintenanc $	101:20
#t tomorrow	105:16
repair==ed	102:10
repair	30:14 101:-9 102:24
sand machin	102:11 103:11 105:8
mechanic==	102:29
gave it	100:17
mechanic	102:29
the mechanic	102:29
good new	102:14 118:10
are up	83:-10 84:18 102:14
repair==	30:14 101:-8 102:14
to servic	102:30
so seat	103:10
gently==	103:10
the arbor	102:12 103:10
gently	103:10
fil at	103:18
lad==s	103:17
need==ing	103:8
be need	22:23 103:8
board==s	103:28
necessary==	114:27
the tru	108:19 112:15
tru of	108:19
necessary	114:27
revert==	33:-8 103:14 124:26
customarily==	103:14
revert	33:-8 103:14 124:26
revert the	33:-8 103:14 124:26
stag to	103:14 104:15
customarily	103:14
a full	104:13
press stag	103:18 104:16
the report	104:46
pleas book	117:10
she doe	106:17 111:13 125:-11
be cancell	106:15 119:11
pity==	107:11 111:17 112:-11
, more	107:11 111:17 112:-11
pity	107:11 111:17 112:-11
the pity	107:11 111:17 112:-11
pity ,	107:11 111:17 112:-11
goggle==s	107:13
dangerous==	107:13
goggle	107:13
dangerous	107:13
of now	107:12 121:15
fact==	107:12
fact	107:12
hurt $	108:16 118:9
break==ing	108:73 110:-22
break off	108:73 110:-22
down==ed	108:19
halfway==	108:19
so i've	108:19 116:9
halfway	108:19
knock==ing	108:12
suspend==ed	107:-19 108:69
completion==	107:-12 108:18 114:31 125:-8
suspend	107:-19 108:69
completion	107:-12 108:18 114:31 125:-8
discontinu==ed	108:35
incomplet==e	108:35
the polish	43:-9 107:25 108:34
incomplet	108:35
contractual==	52:-11 109:12
contractual	52:-11 109:12
parent==s	110:15
with my	110:15
parent	110:15
kill==ing	110:12
mammy==	110:14
mammy	110:14
sicki==e	110:29
sicki	110:29
absenc==e	110:17
ground==s	110:17
illness==	110:17
absenc	110:17
illness	110:17
normally==	111:13
normally	111:13
vet==	111:9
the doing	77:15 111:9
vet	111:9
: only	42:18 111:9
&#n#t@day@person	109:-9 111:10
noon on	53:18 111:9
contrary==	29:-8 111:21
contrary	29:-8 111:21
not shut	53:-17 112:43
clos tomorrow	28:20 112:10 124:-9
, shop	54:8 112:10
as normal	112:26
open as	112:14
announc==ed	112:19
the closur	112:48
announc	112:19
studio==	113:12
studio	113:12
practic==e	114:14
practic	114:14
defer==red	114:31 125:-8
defer	114:31 125:-8
commencement==	43:-9 114:21
conditional==	43:-9 114:21
commencement	43:-9 114:21
conditional	43:-9 114:21
@job being	13:-11 15:36 43:-11 114:47
being finish	43:-11 114:47
a clear	22:19 115:14
bleary==	75:-10 115:10
bleary	75:-10 115:10
control==	115:23
control	115:23
arrang==e	115:21
telephon==ed	116:16
telephon	116:16
with lindwurm	116:30 119:32 122:8
lindwurm and	116:16 119:17
send us	116:23
, lindwurm	116:14
to ferro	116:8 121:26 122:-13
rate==	9:16 24:29 116:9
rate	9:16 24:29 116:9
this rate	9:16 116:9
christma ,	116:9
off lindwurm	116:18
, they'd	116:10 120:17
dozen==	22:-11 79:15 116:10
dozen	22:-11 79:15 116:10
the firm	116:9 122:15
, delivery	50:-15 116:34
for order	10:11 118:12
crown measure	50:12
, every	31:-11 117:23
invoic==ed	117:12
invoic	117:12
lindwurm has	118:10 121:15
that order	119:13
bundl==e	119:11
bundl	119:11
&@person@wire	119:11
lindwurm is	116:8
risen==	45:14 119:10
risen	45:14 119:10
risen $	45:14 119:10
delay==s	118:-8 119:21
can buy	120:21
old will	120:13
hobbin==	120:16
supplier .	10:23 32:-11 120:15
hobbin	120:16
sell by	121:15
furnisher==	122:15
furnisher	122:15
add==ed	120:19
moreau==	120:19
supplier must	120:19 122:14
moreau	120:19
wire by	20:21 120:19
minimum order	32:24 119:-9
account for	120:17
are sold	100:15
take at	5:16 121:15
lindwurm :	116:8 120:-9 121:60
: pack	121:21
the daughter	121:24
chang==ing	120:-8 121:11
smallest order	120:9 121:16
sell $	32:11 122:14
supply is	32:-12 121:-9 122:27
of supplier	122:19
nope==	124:19
nope	124:19
sleev==e	124:10
hit==	124:10
sleev	124:10
hit the	91:8 124:10
keep ,	21:17 22:-9 124:10
seven==	124:8
seven	124:8
enter==ing	124:10
thing i	124:32
preced==ing	124:30
preced	124:30
candidate==s	0:10
candidate	0:10
have someth	0:23 125:-11
suggest==	0:9
suggest	0:9
includ==e	0:9
overhang==	0:8 55:34
overhang	0:8 55:34
the overhang	0:8 55:34
end .	1:9 3:8
#p inch	1:16 7:16 41:24
reshuffl==e	2:57 108:-12
reshuffl	2:57 108:-12
fewest new	2:9
redistribut==ed	2:20
should they	2:28 70:-8
move to	2:16 61:13 64:-12 70:-8
cheapest==	2:18 21:9
reorder==ing	2:18
only :	2:18 3:9
cheapest	2:18 21:9
them can	2:17
hold a	3:10 35:18
mm .	3:10 18:11
#p is	3:12 77:16
doe that	3:15 30:16 42:-13
it have	0:-10 3:11 11:31 29:-16
me whether	3:15 9:21 23:-8
distance==s	4:35
distance	4:35
by slot	41:-15 76:25
layout==	4:67 27:-11 87:-8
layout	4:67 27:-11 87:-8
fretboard==	4:37 76:17
fretboard	4:37 76:17
@job fretboard	4:37 76:17
measurement==s	4:25 19:43
measurement	4:25 19:43
spac==ing	4:52
pull up	4:51 10:-14 12:42
optimis==e	5:42 6:-23
optimis	5:42 6:-23
plan job	5:20 16:36 44:-10
economical==	5:32
economical	5:32
scrap==s	5:31 79:19
piece go	5:10
schem==e	5:9
schem	5:9
rule for	6:26
a sheet	5:-8 6:31
i nip	5:-8 6:22 42:18
nip the	4:-8 5:-8 6:22 27:14
sheet of	6:36 13:-9
draw up	7:14 10:35
^ name	7:16 14:23 15:62 17:-9
and offcut	20:21 21:-18
reach==es	9:30
our next	10:26
me @person	12:9 33:37 110:-14
refret==ted	11:-8 12:42 29:-8 48:16
ther to	12:29
detail==s	4:-9 13:46
detail	4:-9 13:46
describ==e	13:63 48:-9
describ	13:63 48:-9
colleague==s	14:23
colleague	14:23
worker==s	14:63 35:-8
worker	14:63 35:-8
have ,	14:16
bar do	4:-10 16:16
group of	16:32 27:-9
stand for	59:32 60:-10
load be	16:9 55:23
push fret	16:24 75:27
span==s	13:-21 17:37
unread==	13:-21 17:37
unread	13:-21 17:37
evaluat==e	17:19
evaluat	17:19
result==s	17:14
levelness==	13:-15 17:99
levelness	13:-15 17:99
how well	18:12 21:10
on each	8:-9 19:13 80:10
shipment==	8:-12 19:40 118:20
shipment	8:-12 19:40 118:20
batch==es	8:-32 19:67
batch of	8:-32 19:78 21:-10
^ past	19:16 31:13
consignment==s	9:-11 19:34
consignment	9:-11 19:34
in november	8:-9 20:39 21:-10
what went	33:23
in october	21:27
consumption==	20:21
consumption	20:21
statement==	20:15
)~",
R"~(statement	20:15
turn into	20:22 21:-18 82:14
reconcil==e	9:-14 20:53
reconcil	9:-14 20:53
#n september	21:22
economis==e	20:-11 21:13
economis	20:-11 21:13
benefit==	21:33 22:-16
benefit	21:33 22:-16
idle in	22:9 55:16
has any	23:12 24:28
kept back	23:29 83:12
piece on	23:57
on hold	23:57
rose==	16:-12 24:52 33:-8
rose	16:-12 24:52 33:-8
lift==ing	24:30
pop up	24:21
reliabl==e	8:-13 24:24 25:-8 32:59
reliabl	8:-13 24:24 25:-8 32:59
stay seat	24:20
compar==e	24:26
lift==s	24:26
compar	24:26
condition==	25:15
condition	25:15
levell take	27:14 104:9
here next	28:41 29:-9
' work	28:-8 29:30 104:14
bring==s	30:9
manag==e	30:13
manag	30:13
vendor==s	32:48
vendor	32:48
fastest==	32:39
fastest	32:39
minimum==s	32:19 120:-11
lindwurm say	32:14 118:28
entir $	33:121 61:-8 62:-10 63:-9
book a	35:19
kind==s	35:11
you understand	35:37
stocktak ,	46:-8 66:41
fit==ted	36:13
earmark==	37:50 83:31
^ earmark	37:50 83:31
tag==	36:-11 37:48
>==	37:22
>	37:22
unreserv==e	38:72 73:-12 84:50
unreserv	38:72 73:-12 84:50
^ unreserv	38:72 73:-12 84:50
twist==ed	40:24
toss the	40:24 78:37
twist	40:24
bucket==	40:16
bucket	40:16
&#d#t@wire	40:16
, taken	41:11
taken straight	41:11
^ note	41:42 121:36
botch==ed	3:-11 42:22
botch	3:-11 42:22
&#c#d#n#o@job	42:15
complet $	43:45 117:32
&#c#r#t@job	44:8
we gave	44:9 100:17
@job held	13:-8 45:81 47:24
look over	45:11 89:-11 115:20
ticket==	46:10
dunja==	46:10
resonator==	46:10
ticket	46:10
dunja	46:10
resonator	46:10
note :	120:11
&#o@day@job	47:17
back as	48:10
abandon==	48:20
deposit==	48:20
abandon	48:20
deposit	48:20
pyramid==	49:9
pyramid	49:9
stainless ,	49:11
alloy==	81:12
alloy	81:12
on we	39:-9 49:9 120:18
as fret	82:20
^ creat	49:8 58:15 60:-10
courier==	50:14
courier	50:14
a kill	50:17 67:29 121:15
kill of	50:21
the regular	52:14
open==s	53:26 65:-9
tru fair	53:11 112:13
&#o#t@day	54:9
unit==	55:10
exampl .	56:12
a1==	56:10
a1	56:10
chip==s	57:21
chip	57:21
disconnect==	57:21
disconnect	57:21
anja==	58:8
anja	58:8
apprentic==e	58:14
apprentic	58:14
nejc==	58:12
nejc	58:12
zoran==	58:37
zoran	58:37
and uid	58:15 59:-17
^ user	59:19 60:9
user id	59:19 60:9
id #c	59:19 60:9
was $	60:8
clear the	60:12 65:23
unlink==	60:8
unlink	60:8
move==s	61:13 64:-12
right==s	61:21
retire==s	62:91
retire	62:91
apprenticeship==	62:18
apprenticeship	62:18
onto==	63:11
onto	63:11
hire==	63:38
hire	63:38
@person no	62:-61 63:68 109:-8 111:17
talli==ed	50:-11 66:23
talli	50:-11 66:23
add==s	51:-8 66:33
sampl==e	39:-8 68:20
sampl	39:-8 68:20
was bent	69:16 77:-8 91:27
said $	69:13 124:26
not #d	69:36
visitor==	50:-10 69:19
@wire a	70:16 118:17
slip==ped	71:11
made @job	71:20
sort==ed	74:10
kerf	41:-17 74:71 92:-11
kerf==	41:-17 74:65 92:-11
they'r #d	74:11
its #o	75:14 76:14 78:-8
, then	41:-8 70:-9 75:31 82:-10 114:27
#n board	87:13
wreck==ed	77:46
wreck	77:46
#n scrap	79:19
redid==	78:46
redid	78:46
in fresh	78:45
unsiz==ed	79:21
unsiz	79:21
ditch==ed	36:-9 40:-15 81:41
secur==e	83:9
secur	83:9
thumb==	85:8
deep :	92:16
bar @quoted	86:22
a press	100:23 125:-9
seen==	90:-10 91:28
seen	90:-10 91:28
&#d#n#p	82:-9 92:17
never get	93:27
tweak==ed	94:9
tweak	94:9
superglu==ed	77:-11 96:27
superglu	77:-11 96:27
caul==s	96:11
epoxy==	96:9
epoxy	96:9
knock==ed	75:-9 97:34
bender==s	98:19
install==ed	98:44
install	98:44
slotter==	98:9
slotter	98:9
minute '	98:8 104:13
changeover==	99:31
changeover	99:31
unusabl==e	101:41
unusabl	101:41
sander has	101:29 102:8
pencil==	105:8
pencil	105:8
tru @job	107:17 108:36
&#n#r@wire	50:-15 116:27
&#n#t@wire	116:8
brooksid==e	120:10
brooksid	120:10
wire deeper	32:-8 49:-15 120:27 122:39
supplier :	120:17
bluegat==e	120:11
pay==s	120:11
postag==e	120:11
bluegat	120:11
postag	120:11
pinwheel==	120:15
pinwheel	120:15
sandpiper==	120:27
sandpiper	120:27
wobbl==e	120:10
revers==e	124:8
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
